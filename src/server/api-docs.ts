/** The API described by its own schemas: as OpenAPI for programs, and as a page for people. Nothing is loaded from elsewhere. */
import type { Hono } from 'hono';
import { html, raw } from 'hono/html';
import { z } from 'zod';
import { ApiError, type Operation, operations } from '../contract/operations.ts';

type Schema = Record<string, unknown>;

const schemaOf = (type: z.ZodType, io: 'input' | 'output'): Schema => {
  const { $schema: _, ...schema } = z.toJSONSchema(type, { io, unrepresentable: 'any' }) as Schema;
  return schema;
};

const json = (schema: Schema) => ({ 'application/json': { schema } });
const named = Object.entries(operations) as [string, Operation][];

export function openApi(version: string): Schema {
  const paths: Record<string, Record<string, unknown>> = {};
  for (const [name, operation] of named) {
    const path = operation.path.replace(/:(\w+)/g, '{$1}');
    const parameters: Schema[] = [...operation.path.matchAll(/:(\w+)/g)].map(([, parameter]) => ({
      name: parameter,
      in: 'path',
      required: true,
      schema: { type: 'string', format: 'uuid' },
    }));
    if (operation.signed === true)
      parameters.push({
        name: 'X-Person',
        in: 'header',
        required: true,
        description: 'Who is writing.',
        schema: { type: 'string', format: 'uuid' },
      });
    if (operation.query !== undefined) {
      const query = schemaOf(operation.query, 'input') as {
        properties?: Record<string, Schema>;
        required?: string[];
      };
      for (const [key, schema] of Object.entries(query.properties ?? {}))
        parameters.push({ name: key, in: 'query', required: query.required?.includes(key) ?? false, schema });
    }
    paths[path] = {
      ...paths[path],
      [operation.method.toLowerCase()]: {
        operationId: name,
        summary: operation.summary,
        parameters,
        ...(operation.body === undefined
          ? {}
          : { requestBody: { required: true, content: json(schemaOf(operation.body, 'input')) } }),
        responses: {
          200: { description: 'Done, and on disk.', content: json(schemaOf(operation.result, 'output')) },
          default: {
            description: 'Refused, or a fault.',
            content: json({ $ref: '#/components/schemas/ApiError' }),
          },
        },
      },
    };
  }
  return {
    openapi: '3.1.0',
    info: { title: 'Fifth Quarter', version, description: 'The same operations that the web app uses.' },
    paths,
    components: { schemas: { ApiError: schemaOf(ApiError, 'output') } },
  };
}

export function docsRoutes(http: Hono, version: string): void {
  let document: Schema | undefined;
  http.get('/api/openapi.json', (c) => {
    document ??= openApi(version);
    return c.json(document);
  });
  http.get('/api/docs', (c) => c.html(page(version)));
}

const style = `body{font:16px/1.5 Georgia,serif;max-width:52rem;margin:2rem auto;padding:0 1rem;color:#241c17;background:#f7f1e6}
h1{font-size:2rem;margin:0 0 .5rem}h2{font-size:1.15rem;margin:2rem 0 .25rem;border-top:1px solid #cbbca6;padding-top:1rem}
code,pre{font:14px/1.45 ui-monospace,monospace}pre{overflow:auto;border-left:3px solid #cbbca6;padding-left:.75rem}
@media (prefers-color-scheme:dark){body{background:#171310;color:#eee4d6}h2,pre{border-color:#554a40}}`;

const shown = (schema: Schema) => JSON.stringify(schema, null, 2);

const page = (version: string) => html`<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Fifth Quarter: the API</title><style>${raw(style)}</style></head>
<body>
<h1>The API</h1>
<p>Fifth Quarter ${version}. JSON in, JSON out; numbers carry their unit in their key. What is refused says what was found and what is allowed. For programs: <a href="/api/openapi.json">OpenAPI</a>.</p>
<p>Changes as they happen: <code>GET /api/kitchens/:kitchenId/live</code> (server-sent events). Documents: <code>GET /api/kitchens/:kitchenId/versions/:versionId/method-card.pdf</code> and <code>GET /api/kitchens/:kitchenId/batches/:batchId/batch-record.pdf</code>.</p>
<p>Results about safety and law are reported as their sources have them; the word of your local authority and of qualified people stands above them.</p>
${named.map(
  ([name, operation]) => html`<h2 id="${name}"><code>${operation.method} ${operation.path}</code></h2>
<p>${operation.summary}${operation.signed === true ? ' Signed: needs the header X-Person.' : ''}</p>
${operation.query === undefined ? '' : html`<details><summary>Query</summary><pre>${shown(schemaOf(operation.query, 'input'))}</pre></details>`}
${operation.body === undefined ? '' : html`<details><summary>Body</summary><pre>${shown(schemaOf(operation.body, 'input'))}</pre></details>`}
<details><summary>Answer</summary><pre>${shown(schemaOf(operation.result, 'output'))}</pre></details>`,
)}
</body></html>`;
