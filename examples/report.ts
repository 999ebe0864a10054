/** The validation report: all cases and what they found, in Markdown, for somebody who did not write the program. */
import { cite } from '../src/core/sources.ts';
import { deviation, difference, type Row } from './case.ts';
import { expectedText, figures, measured } from './figures.ts';
import { type Kind, kindOf, type Outcome } from './outcome.ts';
import { notValidated, preface } from './report-words.ts';
import { subjectOf, subjects } from './subjects.ts';

const kinds: Record<Kind, { short: string; long: string }> = {
  read: { short: 'read', long: 'printed in the publication, and read there' },
  secondary: { short: 'copy', long: 'printed in the publication, read in a copy or an abstract of it' },
  memory: {
    short: 'memory',
    long: 'from a publication as it is remembered, or worked out from constants that are',
  },
  equation: {
    short: 'equation',
    long: 'worked out apart from the engine from a published equation',
  },
  own: { short: 'own', long: 'another method or program of our own, or the engine’s own refined limit' },
  practice: { short: 'practice', long: 'what kitchens say; it proves nothing and must not be contradicted' },
};
const outside: readonly Kind[] = ['read', 'secondary', 'memory', 'equation'];

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
const unit = (row: Row) => (row.unit === '' || row.unit === '-' ? '' : ` ${row.unit}`);
const percent = (row: Row) =>
  typeof row.expected === 'number' && row.expected !== 0 && row.unit !== '°C' && row.unit !== '%'
    ? (100 * Math.abs(difference(row))) / Math.abs(row.expected)
    : 0;

/** Sources in the order of their citations, numbered from 1. */
function bibliography(outcomes: readonly Outcome[]): Map<string, number> {
  const keys = new Set(outcomes.flatMap((o) => o.rows).map((row) => row.source));
  const ordered = [...keys].sort((a, b) => (cite(a) < cite(b) ? -1 : 1));
  return new Map(ordered.map((key, i) => [key, i + 1]));
}

function glance(rows: readonly Row[]): string[] {
  const of = (wanted: readonly Kind[]) => rows.filter((row) => wanted.includes(kindOf(row)));
  const count = (name: string, wanted: readonly Kind[], bold = '') => {
    const found = of(wanted);
    const published = wanted.every((kind) => outside.includes(kind));
    const sources = published ? String(new Set(found.map((row) => row.source)).size) : '–';
    return line(`${bold}${name}${bold}`, `${bold}${found.length}${bold}`, `${bold}${sources}${bold}`);
  };
  return [
    ...table(
      ['how the expected value was had', 'checks', 'sources'],
      [
        ...outside.map((kind) => count(`${kinds[kind].long} (*${kinds[kind].short}*)`, [kind])),
        count('against publications, together', outside, '**'),
        ...(['own', 'practice'] as const).map((kind) =>
          count(`${kinds[kind].long} (*${kinds[kind].short}*)`, [kind]),
        ),
        count('all', [...outside, 'own', 'practice'], '**'),
      ],
    ),
    '',
    `${rows.filter((row) => row.differs !== undefined).length} of them are known not to agree; they come next.`,
  ];
}

function differences(outcomes: readonly Outcome[]): string[] {
  const all = outcomes.flatMap((o) => o.rows.map((row) => ({ row, title: o.example.title })));
  const known = all.filter(({ row }) => row.differs !== undefined);
  const wide = all.filter(
    ({ row }) =>
      row.differs === undefined &&
      outside.includes(kindOf(row)) &&
      percent(row) > 1 &&
      deviation(row) > row.tolerance / 50,
  );
  const entry = (row: Row, title: string, why: string) =>
    line(
      `${cell(row.quantity)} ([${cell(title)}](#${anchor(title)}))`,
      `${expectedText(row, '*')}${unit(row)}`,
      `*${measured(row.ours, row)}*`,
      cell(why),
    );
  return [
    'Outside what was allowed, and why. Nothing was widened to make these pass: they fail if they ever change by more than a tenth.',
    '',
    ...table(
      ['what', 'expected', 'ours', 'why'],
      known.map(({ row, title }) => entry(row, title, row.differs?.why ?? '')),
    ),
    '',
    'Inside what was allowed, but more than one per cent away:',
    '',
    ...table(
      ['what', 'expected', 'ours', 'why so much is allowed'],
      wide.map(({ row, title }) => entry(row, title, row.why)),
    ),
  ];
}

function chapter(outcome: Outcome, numbers: ReadonlyMap<string, number>): string[] {
  const { example, rows, file } = outcome;
  const reasons = [...new Set(rows.map((row) => row.why))];
  const letter = (row: Row) => letterOf(reasons.indexOf(row.why));
  return [
    `### ${example.title}`,
    '',
    cell(example.story),
    '',
    `    ${example.equation.replaceAll('\n', '\n    ')}`,
    '',
    ...table(
      ['what', 'expected', 'ours', 'difference', 'allowed', 'how had', 'source'],
      rows.map((row) =>
        line(
          cell(row.quantity),
          `${expectedText(row, '*')}${unit(row)}`,
          `*${measured(row.ours, row)}*`,
          `*${measured(difference(row), row)}*${row.differs === undefined ? '' : ' differs'}`,
          `${figures(row.tolerance, 2)} ${letter(row)}`,
          kinds[kindOf(row)].short,
          `[${numbers.get(row.source)}](#s${numbers.get(row.source)})`,
        ),
      ),
    ),
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
  const rows = outcomes.flatMap((o) => o.rows);
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
    ...glance(rows),
    '',
    ...table(
      ['subject', 'cases', 'checks against publications', 'other checks'],
      chapters.map(({ subject, cases }) => {
        const held = cases.flatMap((o) => o.rows);
        const published = held.filter((row) => outside.includes(kindOf(row))).length;
        return line(
          `[${subject.title}](#${anchor(subject.title)})`,
          String(cases.length),
          String(published),
          String(held.length - published),
        );
      }),
    ),
    '',
    '## Where we differ, and why',
    '',
    ...differences(outcomes),
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
