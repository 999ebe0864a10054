/**
 * Runs every narrated case in this folder, prints what was expected and what came out, and fails if a row is out of its
 * tolerance, if a case has no rows, if no case ran at all, or if the report of a whole run no longer says what was found.
 *
 *     npx tsx examples/run.ts [part of a file name …] [--json where the counts go] [--report]
 *
 * `--report` runs all of them and writes docs/validation.md.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { holds } from './case.ts';
import { expectedText, figures, measured } from './figures.ts';
import { exampleFiles, type Outcome, runExample } from './outcome.ts';
import { recompute } from './recompute.ts';
import { reportOf } from './report.ts';
import { summaryOf } from './report-summary.ts';
import { staleness } from './stale.ts';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');

/** What a whole run writes, and is held against: the page for a reader, and its head as data for the program's own page. */
const written: readonly (readonly [file: string, text: (outcomes: readonly Outcome[]) => string])[] = [
  ['docs/validation.md', reportOf],
  ['src/documents/validation.json', (outcomes) => `${JSON.stringify(summaryOf(outcomes), null, 2)}\n`],
];

function print(outcome: Outcome): void {
  const { example, rows, file } = outcome;
  console.log(`\n${example.title}  (${file})\n${example.story}\n  ${example.equation}`);
  if (outcome.skipped !== undefined) console.log(`  SKIPPED: ${outcome.skipped}`);
  const lines = rows.map((row) => [
    holds(row) ? (row.differs === undefined ? 'ok ' : 'dif') : 'OUT',
    row.quantity,
    expectedText(row),
    measured(row.ours, row),
    `± ${figures(row.tolerance, 2)}`,
    row.unit,
    row.source,
    row.confidence,
  ]);
  const widths = lines[0]?.map((_, i) => Math.max(...lines.map((line) => line[i]?.length ?? 0))) ?? [];
  for (const line of lines) console.log(`  ${line.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join('  ')}`);
  for (const problem of outcome.problems) console.log(`  !! ${problem}`);
}

async function main(): Promise<number> {
  const words = process.argv.slice(2);
  const take = (flag: string, count: number) => {
    const at = words.indexOf(flag);
    return at < 0 ? undefined : words.splice(at, count);
  };
  const counts = take('--json', 2)?.[1];
  const write = take('--report', 1) !== undefined;
  const files = exampleFiles(write ? [] : words);
  const whole = files.length === exampleFiles().length;
  const outcomes: Outcome[] = [];
  for (const file of files) {
    const outcome = await runExample(file);
    print(outcome);
    outcomes.push(outcome);
  }
  const ran = outcomes.filter((o) => o.rows.length > 0).length;
  const skipped = outcomes.filter((o) => o.skipped !== undefined).length;
  const bad = outcomes.filter((o) => o.problems.length > 0).length;
  let passed = outcomes.flatMap((o) => o.rows).filter(holds).length;
  let failed = outcomes.reduce(
    (sum, o) => sum + Math.max(o.rows.filter((row) => !holds(row)).length, o.problems.length),
    0,
  );
  if (whole) {
    const again = recompute();
    console.log(`\n${again.said}`);
    for (const problem of again.problems) console.log(`  !! ${problem}`);
    passed += again.same;
    failed += again.problems.length;
    if (write && failed > 0) console.log('The report is not written while something is wrong.');
    for (const [file, text] of written) {
      const now = text(outcomes);
      if (write && failed === 0) writeFileSync(join(root, file), now);
      const stale = staleness(readFileSync(join(root, file), 'utf8'), now);
      for (const found of stale) console.log(`  !! ${file}: ${found}`);
      if (stale.length > 0) console.log(`${file} is old: node scripts/examples.mjs --report`);
      if (stale.length > 0) failed++;
      else passed++;
    }
  }
  if (counts !== undefined) writeFileSync(counts, JSON.stringify({ passed, failed }));
  console.log(
    `\n${ran} cases ran, ${bad} with problems${skipped > 0 ? `, ${skipped} skipped` : ''}; ${passed} checks passed, ${failed} failed.`,
  );
  if (ran === 0) console.log('No case ran: that is a failure.');
  return failed > 0 || ran === 0 ? 1 : 0;
}

process.exitCode = await main();
