/** `npm run -s fq -- VERB FILE`: the engine without a browser. Only the answer goes to standard output. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { ensureBuilt, ensureInstalled, orSay, root } from './setup.mjs';

orSay(
  (async () => {
    await ensureInstalled(console.error);
    await ensureBuilt(['cli'], () => {});
    const fq = spawn(process.execPath, [join(root, 'dist/cli/fq.js'), ...process.argv.slice(2)], {
      stdio: 'inherit',
      cwd: process.env.INIT_CWD ?? root,
    });
    for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => fq.kill(signal));
    fq.on('exit', (code, signal) => process.exit(code ?? (signal ? 1 : 0)));
  })(),
);
