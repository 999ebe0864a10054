/** The built web app: hashed files for ever, the page itself never from a cache, and the page for every address of its own. */
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { serveStatic } from '@hono/node-server/serve-static';
import type { Hono } from 'hono';

/** Beside the bundle, or where the build puts it when run from source. */
export function webFolder(): string | null {
  const here = path.dirname(fileURLToPath(import.meta.url));
  for (const folder of [path.join(here, '..', 'web'), path.join(here, '..', '..', 'dist', 'web')])
    if (existsSync(path.join(folder, 'index.html'))) return folder;
  return null;
}

export function webRoutes(http: Hono, folder = webFolder()): void {
  if (folder !== null)
    http.use(
      '*',
      serveStatic({
        root: folder,
        onFound: (file, c) => {
          const hashed = /\/assets\/[^/]+-[\w-]{6,}\.\w+$/.test(file);
          c.header('Cache-Control', hashed ? 'public, max-age=31536000, immutable' : 'no-cache');
        },
      }),
    );
  http.get('*', (c) => {
    const found = folder ?? webFolder();
    c.header('Cache-Control', 'no-cache');
    if (path.extname(c.req.path) !== '') return c.text('There is no such file.', 404);
    if (found === null)
      return c.text('The web app is not built yet: npm run build. The API is at /api/docs.', 503);
    return c.html(readFileSync(path.join(found, 'index.html'), 'utf8'));
  });
}
