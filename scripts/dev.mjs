/** The server from its bundle and the web app from its sources, reloading as they change. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { ensureBuilt, ensureInstalled, orSay, root } from './setup.mjs';

orSay(
  (async () => {
    await ensureInstalled(console.log);
    await ensureBuilt(['server'], console.log);
    const port = process.env.PORT ?? '3000';
    const children = [
      spawn(process.execPath, [join(root, 'dist/server/main.js')], {
        cwd: root,
        stdio: 'inherit',
        env: { ...process.env, PORT: port },
      }),
      spawn(process.execPath, [join(root, 'node_modules/vite/bin/vite.js')], {
        cwd: root,
        stdio: 'inherit',
        env: { ...process.env, FQ_API: `http://127.0.0.1:${port}` },
      }),
    ];
    const stopAll = () => {
      for (const child of children) child.kill();
    };
    for (const child of children) child.on('exit', stopAll);
  })(),
);
