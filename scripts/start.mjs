/** From a fresh clone to a page: installs if needed, builds what changed, starts the server on the embedded store. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { ensureBuilt, ensureInstalled, orSay, root } from './setup.mjs';

orSay(
  (async () => {
    await ensureInstalled(console.log);
    await ensureBuilt(['server', 'web'], console.log);
    const server = spawn(process.execPath, [join(root, 'dist/server/main.js'), ...process.argv.slice(2)], {
      cwd: root,
      stdio: 'inherit',
      env: { NODE_ENV: 'production', ...process.env },
    });
    // Ctrl-C reaches the server from the terminal itself; waiting here lets it finish what it has in hand.
    process.on('SIGINT', () => {});
    for (const signal of ['SIGTERM', 'SIGHUP']) process.on(signal, () => server.kill(signal));
    server.on('exit', (code, signal) => process.exit(code ?? (signal ? 1 : 0)));
  })(),
);
