/** One case, run: its rows and what is wrong with it. */
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { sources } from '../src/core/sources.ts';
import { deviation, difference, type Example, holds, type Row } from './case.ts';
import { figures } from './figures.ts';
import { subjectOf } from './subjects.ts';

const folder = dirname(fileURLToPath(import.meta.url));

export interface Outcome {
  readonly file: string;
  readonly example: Example;
  readonly rows: readonly Row[];
  readonly skipped?: string;
  readonly problems: readonly string[];
}

/** Sources that are no publication: what is held against them is no outside check. */
const ownSources: readonly string[] = ['own-computation', 'own-assumption', 'user-input'];
const practice: readonly string[] = ['common-practice', 'from-memory'];

export type Kind = 'read' | 'secondary' | 'memory' | 'equation' | 'own' | 'practice';

/** What a row is worth as a check: how its expected value was had, and whether a publication stands behind it. */
export function kindOf(row: Row): Kind {
  if (ownSources.includes(row.source)) return 'own';
  if (practice.includes(row.source) || row.confidence === 'common practice') return 'practice';
  if (row.confidence === 'computed') return 'equation';
  return row.confidence === 'assumption' ? 'own' : row.confidence;
}

export function exampleFiles(only: readonly string[] = []): string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.example.ts'))
    .filter((name) => only.length === 0 || only.some((part) => name.includes(part)))
    .sort();
}

function problemsOf(row: Row): string[] {
  const problems: string[] = [];
  if (!Object.hasOwn(sources, row.source)) problems.push(`source ${row.source} is not in the bibliography`);
  if (row.why.trim().length < 3) problems.push('its tolerance has no reason');
  if (!(row.tolerance >= 0)) problems.push(`tolerance: found ${row.tolerance}, allowed 0 or more`);
  if (row.confidence === undefined) problems.push('does not say how its expected value was had');
  if (!holds(row))
    problems.push(
      row.differs === undefined
        ? `off by ${figures(deviation(row))} ${row.unit}, allowed ${row.tolerance}`
        : `said to differ by ${row.differs.by} ${row.unit}, differs by ${figures(difference(row))}`,
    );
  return problems.map((problem) => `${row.quantity}: ${problem}`);
}

/** Runs one case. A thrown error is a problem of the case, not of the runner. */
export async function runExample(file: string): Promise<Outcome> {
  const { example } = (await import(pathToFileURL(join(folder, file)).href)) as { example: Example };
  const skipped = example.skipped?.();
  if (skipped !== undefined) return { file, example, rows: [], skipped, problems: [] };
  const problems: string[] = [];
  let rows: readonly Row[] = [];
  try {
    rows = await example.run();
  } catch (error) {
    problems.push(`did not run: ${error instanceof Error ? error.message : String(error)}`);
  }
  if (subjectOf(file) === undefined) problems.push(`belongs to no chapter of subjects.ts`);
  if (rows.length === 0 && problems.length === 0) problems.push('has no rows');
  for (const key of example.sources)
    if (!Object.hasOwn(sources, key)) problems.push(`source ${key} is not in the bibliography`);
  problems.push(...rows.flatMap(problemsOf));
  return { file, example, rows, problems };
}
