/**
 * What a data folder says about itself before anything in it is opened: which program wrote it last, with which major
 * release of the database. A folder from the future is refused and left exactly as it was.
 */
import fs from 'node:fs';
import path from 'node:path';
import { syncPath } from './durable-fs.ts';
import { StoreProblem } from './store.ts';

export interface Stamp {
  readonly program: string;
  readonly postgres: number;
}

/** How a folder is found: `new` may be filled, `unfinished` was never served from and may be begun again. */
export type FolderState =
  | { readonly state: 'new' | 'unfinished' }
  | { readonly state: 'made'; readonly stamp: Stamp };

const stampFile = 'VERSION';
const beginning = 'BEGUN';
export const databaseFolder = (folder: string) => path.join(folder, 'database');

export function readFolder(folder: string, program: string, postgres: number): FolderState {
  if (!fs.existsSync(folder)) return { state: 'new' };
  if (!fs.statSync(folder).isDirectory())
    throw new StoreProblem(`${folder} is a file, not a folder; give the data folder with FQ_DATA.`);
  const entries = fs.readdirSync(folder).filter((name) => !name.startsWith('LOCK'));
  if (!entries.includes(stampFile)) {
    if (entries.length === 0) return { state: 'new' };
    if (entries.includes(beginning)) return { state: 'unfinished' };
    if (entries.includes('database'))
      throw new StoreProblem(
        `The data folder ${folder} holds a database but its ${stampFile} file is missing; put that file back from a copy, nothing was changed.`,
      );
    throw new StoreProblem(
      `${folder} is not empty and is no data folder of Fifth Quarter; give an empty or a new folder with FQ_DATA.`,
    );
  }
  const stamp = parseStamp(folder);
  if (isNewer(stamp.program, program))
    throw new StoreProblem(
      `The data folder ${folder} was written by Fifth Quarter ${stamp.program}; this is ${program}. Start the newer program; nothing was changed.`,
    );
  if (stamp.postgres !== postgres || majorOf(folder) !== postgres)
    throw new StoreProblem(
      `The data folder ${folder} holds a database of PostgreSQL ${stamp.postgres}; this program brings PostgreSQL ${postgres}. Nothing was changed.`,
    );
  return { state: 'made', stamp };
}

function parseStamp(folder: string): Stamp {
  const text = fs.readFileSync(path.join(folder, stampFile), 'utf8');
  try {
    const { program, postgres } = JSON.parse(text) as Partial<Stamp>;
    if (typeof program === 'string' && /^\d+\.\d+\.\d+/.test(program) && Number.isInteger(postgres))
      return { program, postgres: postgres as number };
  } catch {
    // Told below.
  }
  throw new StoreProblem(
    `The ${stampFile} file of the data folder ${folder} is damaged; put it back from a copy, nothing was changed.`,
  );
}

/** The database's own word on its major release; 0 where it cannot be read. */
function majorOf(folder: string): number {
  try {
    return Number.parseInt(fs.readFileSync(path.join(databaseFolder(folder), 'PG_VERSION'), 'utf8'), 10) || 0;
  } catch {
    return 0;
  }
}

function isNewer(found: string, ours: string): boolean {
  const parts = (version: string) => version.split(/[.+-]/).slice(0, 3).map(Number);
  const [a, b] = [parts(found), parts(ours)];
  for (let i = 0; i < 3; i++) if ((a[i] ?? 0) !== (b[i] ?? 0)) return (a[i] ?? 0) > (b[i] ?? 0);
  return false;
}

/** Marks a folder as begun, after clearing away what an interrupted beginning left. Nothing in it was ever acknowledged. */
export function beginFolder(folder: string): void {
  fs.mkdirSync(folder, { recursive: true, mode: 0o700 });
  fs.writeFileSync(path.join(folder, beginning), 'This data folder is being made for the first time.\n', {
    mode: 0o600,
  });
  syncPath(path.join(folder, beginning));
  syncPath(folder);
  fs.rmSync(databaseFolder(folder), { recursive: true, force: true });
}

/** Writes the stamp so that it is either the old one or the new one, whatever happens; then the folder is made. */
export function stampFolder(folder: string, stamp: Stamp): void {
  const fresh = path.join(folder, `${stampFile}.new`);
  fs.writeFileSync(fresh, `${JSON.stringify(stamp)}\n`, { mode: 0o600 });
  syncPath(fresh);
  fs.renameSync(fresh, path.join(folder, stampFile));
  syncPath(folder);
  fs.rmSync(path.join(folder, beginning), { force: true });
}
