import { ensureBuilt, ensureInstalled, orSay } from './setup.mjs';

orSay(
  (async () => {
    await ensureInstalled(console.log);
    await ensureBuilt(['web', 'server', 'cli'], console.log);
    console.log('Built: dist/web, dist/server, dist/cli.');
  })(),
);
