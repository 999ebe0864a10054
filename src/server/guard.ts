/** What is looked at before any request is understood: where it was sent, where it came from, and how big it is. */
import type { MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { secureHeaders } from 'hono/secure-headers';

/**
 * A page of another site may aim its own name at this machine and read what it gets. It cannot change the name under which
 * the browser asks, so only our own names are answered.
 */
export const ownNameOnly =
  (names: ReadonlySet<string>): MiddlewareHandler =>
  async (c, next) => {
    const host = c.req.header('host') ?? '';
    const name = host
      .replace(/:\d+$/, '')
      .replace(/^\[|\]$/g, '')
      .toLowerCase();
    if (!names.has(name))
      return c.json(
        { code: 'forbidden', message: `This server does not answer to the name ${JSON.stringify(name)}.` },
        403,
      );
    return next();
  };

const safe = new Set(['GET', 'HEAD', 'OPTIONS']);

/** Browsers say where a request came from; one that changes something must come from our own pages, or from no page at all. */
export const ownPagesOnly: MiddlewareHandler = async (c, next) => {
  if (safe.has(c.req.method)) return next();
  const site = c.req.header('sec-fetch-site');
  const origin = c.req.header('origin');
  const ours =
    site !== undefined
      ? site === 'same-origin' || site === 'none'
      : origin === undefined ||
        origin === new URL(c.req.url).origin ||
        origin === `http://${c.req.header('host')}`;
  if (!ours) return c.json({ code: 'forbidden', message: 'A page of another site may not write here.' }, 403);
  return next();
};

export const limitBody = (megabytes: number): MiddlewareHandler =>
  bodyLimit({
    maxSize: megabytes * 1024 * 1024,
    onError: (c) => {
      c.header('Connection', 'close');
      return c.json(
        {
          code: 'too_large',
          message: `The message is too large: at most ${megabytes} MB. Nothing was kept.`,
        },
        413,
      );
    },
  });

export const headers = secureHeaders({
  contentSecurityPolicy: {
    defaultSrc: ["'self'"],
    scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
    workerSrc: ["'self'", 'blob:'],
    // Positions and sizes are set from data as style attributes; no style comes from elsewhere.
    styleSrc: ["'self'", "'unsafe-inline'"],
    imgSrc: ["'self'", 'data:', 'blob:'],
    fontSrc: ["'self'"],
    connectSrc: ["'self'"],
    objectSrc: ["'none'"],
    baseUri: ["'none'"],
    formAction: ["'self'"],
    frameAncestors: ["'none'"],
  },
  strictTransportSecurity: false,
  crossOriginResourcePolicy: 'same-origin',
  referrerPolicy: 'no-referrer',
});
