import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, orSay, root, run } from './setup.mjs';

orSay(
  (async () => {
    await ensureInstalled(console.error);
    const wanted = process.argv[2] ?? '';
    const files = readdirSync(join(root, 'bench')).filter(
      (f) => f.endsWith('.bench.ts') && f.includes(wanted),
    );
    if (files.length === 0) throw new Error(`bench: nothing matches "${wanted}"`);
    for (const file of files) {
      const code = await run('npx', ['--no-install', 'tsx', `bench/${file}`]);
      if (code !== 0) process.exitCode = code;
    }
  })(),
);
