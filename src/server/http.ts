/** The HTTP face of the program: guards, the operations of the contract, documents, live changes, the web app. */
import { Hono } from 'hono';
import type { App } from '../app/app.ts';
import type { Changes } from '../app/changes.ts';
import { AppError } from '../app/errors.ts';
import { type Operation, type OperationName, operations } from '../contract/operations.ts';
import { docsRoutes } from './api-docs.ts';
import { readCall } from './call.ts';
import { documentRoutes } from './documents.ts';
import { headers, limitBody, ownNameOnly, ownPagesOnly } from './guard.ts';
import { type Around, handlersOf } from './handlers.ts';
import { type Live, liveRoute } from './live.ts';
import type { PrintTask } from './printing.ts';
import { refuse } from './refusals.ts';
import { webRoutes } from './web-app.ts';

export interface HttpParts extends Around {
  readonly changes: Changes;
  readonly print: (task: PrintTask) => Promise<Uint8Array>;
  readonly names?: ReadonlySet<string>;
  /** Check every answer against the contract too; on in tests. */
  readonly checkAnswers?: boolean;
}

const loopbackNames = new Set(['127.0.0.1', 'localhost', '::1']);
const logMegabytes = 25;
const photoMegabytes = 3;
const otherMegabytes = 2;

export function openHttp(parts: HttpParts): { http: Hono; live: Live } {
  const http = new Hono();
  const app: App = parts.app;
  http.onError(refuse);
  http.use(headers);
  http.use(ownNameOnly(parts.names ?? loopbackNames));
  http.use(ownPagesOnly);
  const small = limitBody(otherMegabytes);
  const large = limitBody(logMegabytes);
  const middling = limitBody(photoMegabytes);
  http.use('/api/*', (c, next) => {
    const what = /^\/api\/kitchens\/[^/]+\/(logs|photos)$/.exec(c.req.path)?.[1];
    return (what === 'logs' ? large : what === 'photos' ? middling : small)(c, next);
  });
  http.use('/api/*', async (c, next) => {
    await next();
    if (!c.res.headers.has('Cache-Control')) c.header('Cache-Control', 'no-store');
  });
  const handlers = handlersOf(parts) as unknown as Record<OperationName, (call: unknown) => Promise<unknown>>;
  for (const [name, operation] of Object.entries(operations) as [OperationName, Operation][])
    http.on(operation.method, operation.path, async (c) => {
      const answer = await handlers[name](await readCall(c, operation));
      if (parts.checkAnswers === true) operation.result.parse(answer);
      return c.json(answer as object);
    });
  const live = liveRoute(http, app, parts.changes);
  documentRoutes(http, app, parts.print);
  docsRoutes(http, app.version);
  http.all('/api/*', (c) => {
    throw new AppError(
      'not_found',
      `There is no ${c.req.method} ${c.req.path} in this API; what there is stands at /api/docs.`,
    );
  });
  webRoutes(http);
  return { http, live };
}
