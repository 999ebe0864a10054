/** The validation report: all cases and what they found, in Markdown, for somebody who did not write the program. */
import { cite } from '../src/core/sources.ts';
import { difference, type Row } from './case.ts';
import { expectedText, figures, measured } from './figures.ts';
import { kindOf, type Outcome } from './outcome.ts';
import { type Difference, kinds, type Summary, summaryOf, unitText, wide } from './report-summary.ts';
import { notValidated, preface } from './report-words.ts';
import { subjectOf, subjects } from './subjects.ts';

const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('*', '\\*').replaceAll('\n', ' ');
const line = (...cells: readonly string[]) => `| ${cells.join(' | ')} |`;
const table = (head: readonly string[], body: readonly string[]) => [
  line(...head),
  line(...head.map(() => '---')),
  ...body,
];
const anchor = (title: string) =>
  title
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}\s-]/gu, '')
    .replaceAll(' ', '-');
const letterOf = (i: number): string =>
  (i < 26 ? '' : letterOf(Math.floor(i / 26) - 1)) + String.fromCharCode(97 + (i % 26));
/** Sources in the order of their citations, numbered from 1. */
function bibliography(outcomes: readonly Outcome[]): Map<string, number> {
  const keys = new Set(outcomes.flatMap((o) => o.rows).map((row) => row.source));
  const ordered = [...keys].sort((a, b) => (cite(a) < cite(b) ? -1 : 1));
  return new Map(ordered.map((key, i) => [key, i + 1]));
}

function glance(summary: Summary): string[] {
  const { had, published, all, subjects, differs } = summary;
  const bold = (text: string | number) => `**${text}**`;
  const [own, practice] = [had.at(-2), had.at(-1)];
  const counted = (row: (typeof had)[number] | undefined) =>
    row === undefined ? [] : [line(row.how, String(row.checks), String(row.sources ?? '–'))];
  return [
    ...table(
      ['how the expected value was had', 'checks', 'sources'],
      [
        ...had.slice(0, -2).flatMap(counted),
        line(bold('against publications, together'), bold(published.checks), bold(published.sources)),
        ...counted(own),
        ...counted(practice),
        line(bold('all'), bold(all), bold('–')),
      ],
    ),
    '',
    `${differs.length} of them are known not to agree; they come next.`,
    '',
    ...table(
      ['subject', 'cases', 'checks against publications', 'other checks'],
      subjects.map(({ title, cases, published, other }) =>
        line(`[${title}](#${anchor(title)})`, String(cases), String(published), String(other)),
      ),
    ),
  ];
}

const different = (found: readonly Difference[]) =>
  found.map(({ what, title, expected, ours, why }) =>
    line(`${cell(what)} ([${cell(title)}](#${anchor(title)}))`, expected, ours, cell(why)),
  );

function differences(outcomes: readonly Outcome[], summary: Summary): string[] {
  return [
    'Outside what was allowed, and why. Nothing was widened to make these pass: they fail if they ever change by more than a tenth.',
    '',
    ...table(['what', 'expected', 'ours', 'why'], different(summary.differs)),
    '',
    'Inside what was allowed, but more than one per cent away:',
    '',
    ...table(['what', 'expected', 'ours', 'why so much is allowed'], different(wide(outcomes))),
  ];
}

/** A longer table is folded, so that a reader gets past it. */
const longest = 24;

function chapter(outcome: Outcome, numbers: ReadonlyMap<string, number>): string[] {
  const { example, rows, file } = outcome;
  const reasons = [...new Set(rows.map((row) => row.why))];
  const letter = (row: Row) => letterOf(reasons.indexOf(row.why));
  const all = table(
    ['what', 'expected', 'ours', 'difference', 'allowed', 'how had', 'source'],
    rows.map((row) =>
      line(
        cell(row.quantity),
        `${expectedText(row, '*')}${unitText(row)}`,
        `*${measured(row.ours, row)}*`,
        `*${measured(difference(row), row)}*${row.differs === undefined ? '' : ' differs'}`,
        `${figures(row.tolerance, 2)} ${letter(row)}`,
        kinds[kindOf(row)].short,
        `[${numbers.get(row.source)}](#s${numbers.get(row.source)})`,
      ),
    ),
  );
  const apart = rows.filter((row) => row.differs !== undefined).length;
  const folded = [
    `<details><summary>${rows.length} checks, ${apart === 0 ? 'all within what is allowed' : `${apart} of them known not to agree`}</summary>`,
    '',
    ...all,
    '',
    '</details>',
  ];
  return [
    `### ${example.title}`,
    '',
    cell(example.story),
    '',
    `    ${example.equation.replaceAll('\n', '\n    ')}`,
    '',
    ...(rows.length > longest ? folded : all),
    '',
    ...reasons.map((why, i) => `${i === 0 ? '' : '<br>'}${letterOf(i)}: ${cell(why)}`),
    '',
    `<sub>examples/${file}</sub>`,
    '',
  ];
}

function index(outcomes: readonly Outcome[], numbers: ReadonlyMap<string, number>): string[] {
  return [...numbers].map(([key, n]) => {
    const cases = outcomes
      .map((o) => ({ title: o.example.title, count: o.rows.filter((row) => row.source === key).length }))
      .filter(({ count }) => count > 0);
    const total = cases.reduce((sum, { count }) => sum + count, 0);
    const where = cases.map(({ title }) => `[${title}](#${anchor(title)})`).join(', ');
    return `- <a id="s${n}"></a>**${n}** ${cite(key)} — ${total} ${total === 1 ? 'check' : 'checks'}: ${where}`;
  });
}

export function reportOf(outcomes: readonly Outcome[]): string {
  const numbers = bibliography(outcomes);
  const summary = summaryOf(outcomes);
  const chapters = subjects
    .map((subject) => ({ subject, cases: outcomes.filter((o) => subjectOf(o.file) === subject) }))
    .filter(({ cases }) => cases.length > 0);
  return [
    '# How the engine was checked',
    '',
    preface,
    '',
    '## At a glance',
    '',
    ...glance(summary),
    '',
    '## Where we differ, and why',
    '',
    ...differences(outcomes, summary),
    '',
    '## What has not been validated',
    '',
    ...notValidated.map((item) => `- ${item}`),
    '',
    ...chapters.flatMap(({ subject, cases }) => [
      `## ${subject.title}`,
      '',
      subject.intro,
      '',
      ...cases.flatMap((o) => chapter(o, numbers)),
    ]),
    '## Sources, and what each was used for',
    '',
    ...index(outcomes, numbers),
    '',
  ].join('\n');
}
