import { ensureInstalled, orSay, run } from './setup.mjs';

orSay(
  (async () => {
    await ensureInstalled(console.error);
    process.exitCode = await run('npx', ['--no-install', 'tsx', 'examples/run.ts', ...process.argv.slice(2)]);
  })(),
);
