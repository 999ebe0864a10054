/**
 * The gate: formatter and linter, types, unused code. Each says how many files it read; a tool that read none has failed.
 * Prints one line per tool and `N passed, N failed`.
 */
import { spawnSync } from 'node:child_process';
import { pathToFileURL } from 'node:url';
import { ensureInstalled, orSay, root } from './setup.mjs';

function tool(command, args) {
  const got = spawnSync('npx', ['--no-install', command, ...args], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 64e6,
  });
  return { code: got.status ?? 1, text: `${got.stdout ?? ''}${got.stderr ?? ''}` };
}

function formatAndLint() {
  const { code, text } = tool('biome', [
    'check',
    '--error-on-warnings',
    '--colors=off',
    '--max-diagnostics=40',
  ]);
  const read = Number(/Checked (\d+) files?/.exec(text)?.[1] ?? 0);
  return { name: 'format and lint', ok: code === 0 && read > 50, read, text };
}

function types() {
  const built = tool('tsc', [
    '-b',
    'tsconfig.json',
    'src/web/tsconfig.json',
    'test/browser/tsconfig.json',
    '--pretty',
    'false',
  ]);
  let read = 0;
  for (const project of [
    'src/core/tsconfig.json',
    'tsconfig.json',
    'src/web/tsconfig.json',
    'test/browser/tsconfig.json',
  ]) {
    const listed = tool('tsc', ['-p', project, '--listFilesOnly'])
      .text.split('\n')
      .filter((f) => f.startsWith(root) && !f.includes('node_modules'));
    if (listed.length < 5)
      return {
        name: 'types',
        ok: false,
        read: listed.length,
        text: `${project}: the compiler read ${listed.length} files`,
      };
    read += listed.length;
  }
  return { name: 'types', ok: built.code === 0, read, text: built.text };
}

function unused() {
  const { code, text } = tool('knip', ['--no-progress', '--reporter', 'compact']);
  return { name: 'unused code and packages', ok: code === 0, read: null, text };
}

export function check() {
  let passed = 0;
  let failed = 0;
  for (const step of [formatAndLint, types, unused]) {
    const got = step();
    console.log(
      `${got.ok ? 'ok  ' : 'FAIL'} ${got.name}${got.read === null ? '' : ` (${got.read} files read)`}`,
    );
    if (!got.ok) console.log(got.text.slice(0, 20_000));
    if (got.ok) passed++;
    else failed++;
  }
  return { passed, failed };
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
  orSay(
    (async () => {
      await ensureInstalled(console.log);
      const { passed, failed } = check();
      console.log(`${passed} passed, ${failed} failed`);
      process.exitCode = failed === 0 ? 0 : 1;
    })(),
  );
}
