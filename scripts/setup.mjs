/**
 * What every command needs before it can do its work: a Node that is new enough, the packages of the lock file, and
 * bundles that are as new as their sources. Plain JavaScript with nothing but Node, because nothing else may be there yet.
 */
import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmdirSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));
const stamps = join(root, 'dist', '.stamps');

export class CannotGoOn extends Error {}

export function checkNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  const fits = (major === 20 && minor >= 19) || (major > 20 && major < 25);
  if (!fits) {
    throw new CannotGoOn(
      `Node ${process.versions.node} is running; Fifth Quarter needs Node 20.19 to 24. Install one of those and run the same command again.`,
    );
  }
}

function filesUnder(path) {
  const full = join(root, path);
  if (!existsSync(full)) return [];
  if (statSync(full).isFile()) return [full];
  return readdirSync(full, { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile())
    .map((e) => join(e.parentPath ?? e.path, e.name))
    .sort();
}

/** One hash over the contents of files and folders; changes exactly when something in them does. */
export function hashOf(...paths) {
  const hash = createHash('sha256');
  for (const file of paths.flatMap(filesUnder)) {
    hash.update(relative(root, file));
    hash.update('\0');
    hash.update(readFileSync(file));
  }
  return hash.digest('hex');
}

const stampOf = (name) => {
  try {
    return readFileSync(join(stamps, name), 'utf8');
  } catch {
    return '';
  }
};

function setStamp(name, value) {
  mkdirSync(stamps, { recursive: true });
  writeFileSync(join(stamps, name), value);
}

const sleep = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/** Two commands started together do the work once: the second waits for the first. */
async function alone(name, work) {
  const lock = join(root, 'dist', `.lock-${name}`);
  mkdirSync(dirname(lock), { recursive: true });
  const until = Date.now() + 300_000;
  for (;;) {
    try {
      mkdirSync(lock);
      break;
    } catch {
      let age = 0;
      try {
        age = Date.now() - statSync(lock).mtimeMs;
      } catch {
        continue;
      }
      if (age > 240_000 || Date.now() > until) {
        try {
          rmdirSync(lock);
        } catch {}
      }
      await sleep(150);
    }
  }
  try {
    return await work();
  } finally {
    try {
      rmdirSync(lock);
    } catch {}
  }
}

/** Runs a command; resolves with its exit code. Output goes where `stdio` says. */
export function run(command, args, options = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, { cwd: root, stdio: 'inherit', ...options });
    child.on('error', () => resolve(127));
    child.on('exit', (code, signal) => resolve(code ?? (signal ? 1 : 0)));
  });
}

/** The packages of the lock file, exactly; installs them when they are missing or the lock file has changed. */
export async function ensureInstalled(say) {
  checkNode();
  const wanted = hashOf('package-lock.json');
  const there = () =>
    existsSync(join(root, 'node_modules', '.package-lock.json')) && stampOf('packages') === wanted;
  if (there()) return;
  await alone('packages', async () => {
    if (there()) return;
    say('Installing the packages of the lock file (npm ci) …');
    const got = spawnSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
      cwd: root,
      stdio: ['ignore', 2, 2],
      shell: process.platform === 'win32',
    });
    if (got.error || got.status !== 0) {
      throw new CannotGoOn(
        'The packages could not be installed (npm ci failed, see above). Most often the package registry cannot be reached: check the network, then run the same command again.',
      );
    }
    setStamp('packages', wanted);
  });
}

const sources = {
  web: ['src/web', 'src/core', 'src/contract', 'src/documents', 'vite.config.ts', 'package-lock.json'],
  server: [
    'src/server',
    'src/app',
    'src/store',
    'src/documents',
    'src/contract',
    'src/core',
    'demo',
    'scripts/bundle.mjs',
    'package-lock.json',
  ],
  cli: ['src/cli', 'src/documents', 'src/contract', 'src/core', 'scripts/bundle.mjs', 'package-lock.json'],
};

/** The named bundles (`web`, `server`, `cli`), rebuilt when any of their sources changed. */
export async function ensureBuilt(names, say) {
  for (const name of names) {
    const wanted = hashOf(...sources[name]);
    if (stampOf(name) === wanted) continue;
    await alone(name, async () => {
      if (stampOf(name) === wanted) return;
      say(`Building ${name} …`);
      const code =
        name === 'web'
          ? await run(
              process.execPath,
              [join(root, 'node_modules/vite/bin/vite.js'), 'build', '--logLevel', 'error'],
              {
                stdio: ['ignore', 2, 2],
              },
            )
          : await run(process.execPath, [join(root, 'scripts/bundle.mjs'), name], {
              stdio: ['ignore', 2, 2],
            });
      if (code !== 0) throw new CannotGoOn(`Building ${name} failed (see above).`);
      setStamp(name, wanted);
    });
  }
}

/** Ends the process with a plain sentence when something is missing, and with the fault itself when it is ours. */
export function orSay(promise) {
  promise.catch((error) => {
    if (error instanceof CannotGoOn) console.error(error.message);
    else console.error(error);
    process.exit(1);
  });
}
