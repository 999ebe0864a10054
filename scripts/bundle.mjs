/** Bundles the server (with its engine worker) or the command line into dist/, beside the files they read at run time. */
import { cpSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { rolldown } from 'rolldown';
import { root } from './setup.mjs';

const targets = {
  server: {
    input: { main: 'src/server/main.ts', 'engine-worker': 'src/server/engine-worker.ts' },
    copy: [['src/store/migrations', 'migrations']],
  },
  cli: { input: { fq: 'src/cli/fq.ts', 'task-worker': 'src/cli/task-worker.ts' }, copy: [] },
};

const name = process.argv[2];
const target = targets[name];
if (!target) throw new Error(`bundle: found ${name}, allowed ${Object.keys(targets).join(', ')}`);

const out = join(root, 'dist', name);
const fresh = `${out}.${process.pid}`;
const bundle = await rolldown({
  cwd: root,
  input: target.input,
  platform: 'node',
  // Packages stay packages: they find their own WebAssembly, fonts and native parts.
  external: (id) => !id.startsWith('.') && !id.startsWith('/') && !id.startsWith('\0'),
  onwarn: (warning) => {
    throw new Error(`bundle: ${warning.message}`);
  },
});
await bundle.write({ dir: fresh, format: 'esm', sourcemap: true, entryFileNames: '[name].js' });
await bundle.close();
for (const [from, to] of target.copy) {
  if (existsSync(join(root, from))) cpSync(join(root, from), join(fresh, to), { recursive: true });
}
mkdirSync(join(root, 'dist'), { recursive: true });
const old = `${out}.old.${process.pid}`;
if (existsSync(out)) renameSync(out, old);
renameSync(fresh, out);
rmSync(old, { recursive: true, force: true });
