/** The real server as a process of its own, so that it can be killed. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
export const fromSource: readonly string[] = ['--import', 'tsx', path.join(root, 'src/server/main.ts')];

let built: string | undefined;
/** The server as it is shipped, bundled from these sources, in a folder that nobody builds into meanwhile. */
function fromBundle(): readonly string[] {
  if (built === undefined) {
    const own = path.join(root, 'dist', `server-under-test-${process.pid}`);
    execFileSync(process.execPath, [path.join(root, 'scripts/bundle.mjs'), 'server'], {
      cwd: root,
      stdio: 'pipe',
    });
    fs.cpSync(path.join(root, 'dist/server'), own, { recursive: true });
    built = own;
  }
  return [path.join(built, 'main.js')];
}

/** To be called when a file's tests are done. */
export function clearAway(): void {
  for (const folder of folders.splice(0)) fs.rmSync(folder, { recursive: true, force: true });
  if (built !== undefined) fs.rmSync(built, { recursive: true, force: true });
  built = undefined;
}

const folders: string[] = [];
export function temporaryFolder(): string {
  const made = fs.mkdtempSync(path.join(os.tmpdir(), 'fifth-quarter-durability-'));
  folders.push(made);
  return made;
}

export interface Running {
  readonly child: ChildProcess;
  readonly url: string;
  readonly said: () => string;
  /** As a power cut would: no handler runs. */
  kill(): Promise<void>;
  /** As whoever runs it would; answers the exit code. */
  stop(): Promise<number | null>;
}

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

function launch(env: Record<string, string>, args: readonly string[]) {
  const { DATABASE_URL: _, ...inherited } = process.env;
  const child = spawn(process.execPath, [...args], {
    cwd: root,
    env: { ...inherited, PORT: '0', ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let out = '';
  let err = '';
  child.stdout.on('data', (data: Buffer) => {
    out += data.toString();
  });
  child.stderr.on('data', (data: Buffer) => {
    err += data.toString();
  });
  const ended = new Promise<Ended>((resolve) => child.once('close', (code) => resolve({ code, out, err })));
  return { child, ended, said: () => `${out}${err}` };
}

export async function startServer(
  env: Record<string, string>,
  args: readonly string[] = fromSource,
): Promise<Running> {
  const { child, ended, said } = launch(env, args);
  const url = await Promise.race([
    new Promise<string>((resolve) => {
      child.stdout?.on('data', () => {
        const found = /Fifth Quarter is at (http:\S+)\//.exec(said());
        if (found?.[1] !== undefined) resolve(found[1]);
      });
    }),
    ended.then((e) => {
      throw new Error(`the server ended with ${e.code}: ${e.err}${e.out}`);
    }),
  ]);
  return {
    child,
    url,
    said,
    kill: async () => {
      child.kill('SIGKILL');
      await ended;
    },
    stop: async () => {
      child.kill('SIGTERM');
      return (await ended).code;
    },
  };
}

/** Starts a server that is expected to refuse; answers what it said. */
export async function refusedStart(env: Record<string, string>): Promise<Ended> {
  const { child, ended } = launch(env, fromBundle());
  const timer = setTimeout(() => child.kill('SIGKILL'), 60_000);
  const end = await ended;
  clearTimeout(timer);
  return end;
}

/** Starts a server and kills it after a while, wherever it is by then. */
export async function killedStart(env: Record<string, string>, afterMs: number): Promise<void> {
  const { child, ended } = launch(env, fromBundle());
  setTimeout(() => child.kill('SIGKILL'), afterMs);
  await ended;
}

export async function call<T>(
  url: string,
  method: 'GET' | 'POST',
  body?: unknown,
  personId?: string,
): Promise<T> {
  const response = await fetch(url, {
    method,
    headers: {
      'content-type': 'application/json',
      ...(personId === undefined ? {} : { 'x-person': personId }),
    },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  const text = await response.text();
  if (!response.ok) throw new Error(`${response.status} ${text}`);
  return JSON.parse(text) as T;
}
