/** The built web app: hashed files for ever, the page itself never from a cache, and the page for every address of its own. */
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { serveStatic } from '@hono/node-server/serve-static';
import type { Hono, MiddlewareHandler } from 'hono';

/** Beside the bundle, or where the build puts it when run from source. */
function webFolder(): string | null {
  const here = path.dirname(fileURLToPath(import.meta.url));
  for (const folder of [path.join(here, '..', 'web'), path.join(here, '..', '..', 'dist', 'web')])
    if (existsSync(path.join(folder, 'index.html'))) return folder;
  return null;
}

/** The build names these after their contents. */
const hashed = /\/assets\/[^/]+-[\w-]{6,}\.\w+$/;

export function webRoutes(http: Hono, find = webFolder): void {
  let files: { folder: string; serve: MiddlewareHandler } | null = null;
  // Looked for until it is there: the server may be started before the web app is built.
  const built = () => {
    const folder = files?.folder ?? find();
    if (folder === null) return null;
    files ??= { folder, serve: serveStatic({ root: folder }) };
    return files;
  };
  http.get('*', async (c) => {
    const app = built();
    if (app === null)
      return c.text('The web app is not built yet: npm run build. The API is described at /api/docs.', 503);
    const file = await app.serve(c, async () => {});
    if (file instanceof Response) {
      file.headers.set(
        'Cache-Control',
        hashed.test(c.req.path) ? 'public, max-age=31536000, immutable' : 'no-cache',
      );
      return file;
    }
    c.header('Cache-Control', 'no-cache');
    if (path.extname(c.req.path) !== '') return c.text('There is no such file.', 404);
    return c.html(readFileSync(path.join(app.folder, 'index.html'), 'utf8'));
  });
}
