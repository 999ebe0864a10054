/** Brings a store's tables up to this program: plain SQL files, forward only, each applied once and never edited. */
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Session, StoreProblem } from './store.ts';

export interface Migration {
  readonly number: number;
  readonly name: string;
  readonly sql: string;
  readonly sha256: string;
}

/** Any number that no other program on the same database would choose. */
const lockKey = 5_412_540_325;

/** The folder of the SQL files, beside the source and beside the bundle. */
export function migrationsFolder(): string {
  const here = path.dirname(fileURLToPath(import.meta.url));
  for (const folder of [path.join(here, 'migrations'), path.join(here, '..', 'migrations')])
    if (fs.existsSync(folder)) return folder;
  throw new StoreProblem(
    `The SQL files that make the tables are missing beside ${here}; install the program again.`,
  );
}

export function readMigrations(folder = migrationsFolder()): Migration[] {
  const names = fs
    .readdirSync(folder)
    .filter((name) => name.endsWith('.sql'))
    .sort();
  return names.map((name, index) => {
    if (!name.startsWith(`${String(index + 1).padStart(4, '0')}_`))
      throw new StoreProblem(`The SQL file ${name} is out of order: number ${index + 1} was expected.`);
    const sql = fs.readFileSync(path.join(folder, name), 'utf8');
    return { number: index + 1, name, sql, sha256: createHash('sha256').update(sql).digest('hex') };
  });
}

/** Applies what is missing, under a lock that simultaneous starts wait for; answers how many were applied. */
export async function migrate(session: Session, migrations = readMigrations()): Promise<number> {
  await session.query('SELECT pg_advisory_lock($1)', [lockKey]);
  try {
    await session.script(`CREATE TABLE IF NOT EXISTS applied_migration (
      number integer PRIMARY KEY, name text NOT NULL, sha256 text NOT NULL, applied_at timestamptz NOT NULL DEFAULT now())`);
    const applied = await session.query<{ number: number; name: string; sha256: string }>(
      'SELECT number, name, sha256 FROM applied_migration ORDER BY number',
    );
    if (applied.length > migrations.length)
      throw new StoreProblem(
        `This store was made by a newer version of Fifth Quarter: it knows ${applied.length} steps of the tables, this program ${migrations.length}. Start the newer program; nothing was changed.`,
      );
    for (const [index, row] of applied.entries()) {
      const ours = migrations[index];
      if (ours === undefined || row.number !== ours.number || row.sha256 !== ours.sha256)
        throw new StoreProblem(
          `This store's tables were made by other SQL than this program's: ${row.name} differs. Nothing was changed.`,
        );
    }
    const missing = migrations.slice(applied.length);
    for (const { number, name, sql, sha256 } of missing) {
      await session.script('BEGIN');
      try {
        await session.script(sql);
        await session.query('INSERT INTO applied_migration (number, name, sha256) VALUES ($1, $2, $3)', [
          number,
          name,
          sha256,
        ]);
        await session.script('COMMIT');
      } catch (error) {
        await session.script('ROLLBACK');
        throw error;
      }
    }
    return missing.length;
  } finally {
    await session.query('SELECT pg_advisory_unlock($1)', [lockKey]);
  }
}
