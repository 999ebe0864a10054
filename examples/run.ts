/**
 * Runs every narrated case in this folder, prints what was expected and what came out, and fails if a row is out of its
 * tolerance, if a case has no rows, or if no case ran at all.
 *
 *     npx tsx examples/run.ts [part of a file name …] [--json where the counts go]
 */
import { readdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { sources } from '../src/core/sources.ts';
import { deviation, difference, type Example, holds, type Row } from './case.ts';

const folder = dirname(fileURLToPath(import.meta.url));

export interface Outcome {
  readonly file: string;
  readonly example: Example;
  readonly rows: readonly Row[];
  readonly skipped?: string;
  readonly problems: readonly string[];
}

export function exampleFiles(only: readonly string[] = []): string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.example.ts'))
    .filter((name) => only.length === 0 || only.some((part) => name.includes(part)))
    .sort();
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
  if (rows.length === 0 && problems.length === 0) problems.push('has no rows');
  for (const key of [...example.sources, ...rows.map((row) => row.source)])
    if (!(key in sources)) problems.push(`source ${key} is not in the bibliography`);
  for (const row of rows)
    if (!holds(row))
      problems.push(
        row.differs === undefined
          ? `${row.quantity}: off by ${figures(deviation(row))} ${row.unit}, allowed ${row.tolerance}`
          : `${row.quantity}: said to differ by ${row.differs.by} ${row.unit}, differs by ${figures(difference(row))}`,
      );
  return { file, example, rows, problems };
}

function figures(value: number): string {
  if (!Number.isFinite(value)) return String(value);
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-3 || size >= 1e6)) return value.toExponential(3);
  return String(Number(value.toPrecision(7)));
}

function expectedText(row: Row): string {
  return typeof row.expected === 'number'
    ? figures(row.expected)
    : `${figures(row.expected.low)} … ${figures(row.expected.high)}`;
}

function print(outcome: Outcome): void {
  const { example, rows, file } = outcome;
  console.log(`\n${example.title}  (${file})\n${example.story}\n  ${example.equation}`);
  if (outcome.skipped !== undefined) console.log(`  SKIPPED: ${outcome.skipped}`);
  const lines = rows.map((row) => [
    holds(row) ? (row.differs === undefined ? 'ok ' : 'dif') : 'OUT',
    row.quantity,
    expectedText(row),
    figures(row.ours),
    `± ${figures(row.tolerance)}`,
    row.unit,
    row.source,
  ]);
  const widths = lines[0]?.map((_, i) => Math.max(...lines.map((line) => line[i]?.length ?? 0))) ?? [];
  for (const line of lines) console.log(`  ${line.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join('  ')}`);
  for (const problem of outcome.problems) console.log(`  !! ${problem}`);
}

async function main(): Promise<number> {
  const words = process.argv.slice(2);
  const at = words.indexOf('--json');
  const [, counts] = at < 0 ? [] : words.splice(at, 2);
  const files = exampleFiles(words);
  let ran = 0;
  let failed = 0;
  let rowsHeld = 0;
  let rowsOut = 0;
  for (const file of files) {
    const outcome = await runExample(file);
    print(outcome);
    if (outcome.rows.length > 0) ran++;
    if (outcome.problems.length > 0) failed++;
    rowsHeld += outcome.rows.filter(holds).length;
    rowsOut += Math.max(outcome.rows.filter((row) => !holds(row)).length, outcome.problems.length);
  }
  if (counts !== undefined) writeFileSync(counts, JSON.stringify({ passed: rowsHeld, failed: rowsOut }));
  const skipped = files.length - ran - failed;
  console.log(`\n${ran} cases ran, ${failed} with problems${skipped > 0 ? `, ${skipped} skipped` : ''}.`);
  if (ran === 0) console.log('No case ran: that is a failure.');
  return failed > 0 || ran === 0 ? 1 : 0;
}

if (process.argv[1] !== undefined && fileURLToPath(import.meta.url) === process.argv[1])
  process.exitCode = await main();
