/**
 * One process to a data folder: two embedded databases on the same files destroy one another's rows without a word.
 * On Linux the lock is an abstract socket named after the folder's device and inode: the kernel lets go of it when the
 * process dies, however it dies. Elsewhere it is a file with the holder's process id and start time.
 */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import net from 'node:net';
import path from 'node:path';
import { StoreProblem } from './store.ts';

export interface FolderLock {
  release(): Promise<void>;
}

const held = (folder: string, pid: string) =>
  new StoreProblem(
    `The data folder ${folder} is in use by another Fifth Quarter server (process ${pid}); stop that one first, or give this one a folder of its own with FQ_DATA.`,
  );

export function lockFolder(folder: string): Promise<FolderLock> {
  return process.platform === 'linux' ? lockBySocket(folder) : lockByFile(folder);
}

export async function lockBySocket(folder: string): Promise<FolderLock> {
  const { dev, ino } = fs.statSync(folder);
  const name = `\0fifth-quarter-${dev}-${ino}`;
  const server = net.createServer((socket) => {
    socket.on('error', () => {});
    socket.end(String(process.pid));
  });
  try {
    await new Promise<void>((resolve, reject) => {
      server.once('error', reject);
      server.listen(name, resolve);
    });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE') throw error;
    throw held(folder, await askHolder(name));
  }
  server.unref();
  return { release: () => new Promise((resolve) => server.close(() => resolve())) };
}

/** The process id that the holder of the socket tells. */
function askHolder(name: string): Promise<string> {
  return new Promise((resolve) => {
    let said = '';
    const socket = net.connect(name);
    const done = () => {
      socket.destroy();
      resolve(/^\d+$/.test(said) ? said : 'unknown');
    };
    socket.setTimeout(2_000, done);
    socket.on('data', (data) => {
      said += data.toString();
    });
    socket.on('error', done);
    socket.on('end', done);
  });
}

export async function lockByFile(folder: string): Promise<FolderLock> {
  const file = path.join(folder, 'LOCK');
  const mine = JSON.stringify({ pid: process.pid, started: startOf(process.pid) });
  for (let attempt = 0; attempt < 5; attempt++) {
    try {
      fs.writeFileSync(file, mine, { flag: 'wx', mode: 0o600 });
      return { release: async () => fs.rmSync(file, { force: true }) };
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
    const holder = readHolder(file);
    if (holder !== null && isAlive(holder)) throw held(folder, String(holder.pid));
    // Left behind by a process that is gone. Whoever renames it first may take its place.
    try {
      const gone = `${file}.${process.pid}.${attempt}`;
      fs.renameSync(file, gone);
      fs.rmSync(gone, { force: true });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    }
  }
  throw held(folder, 'unknown');
}

interface Holder {
  readonly pid: number;
  readonly started: string | null;
}

function readHolder(file: string): Holder | null {
  try {
    const { pid, started } = JSON.parse(fs.readFileSync(file, 'utf8')) as Partial<Holder>;
    return typeof pid === 'number' && pid > 0 ? { pid, started: started ?? null } : null;
  } catch {
    return null;
  }
}

function isAlive(holder: Holder): boolean {
  try {
    process.kill(holder.pid, 0);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EPERM') return false;
  }
  const started = startOf(holder.pid);
  // The same number may belong to another process by now; unknown start times count as the same process.
  return started === null || holder.started === null || started === holder.started;
}

/** When a process began, in the system's own words; null where it cannot be told. */
function startOf(pid: number): string | null {
  try {
    const stat = fs.readFileSync(`/proc/${pid}/stat`, 'utf8');
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? null;
  } catch {
    try {
      return execFileSync('ps', ['-o', 'lstart=', '-p', String(pid)], { encoding: 'utf8' }).trim() || null;
    } catch {
      return null;
    }
  }
}
