/** What the report says at its head, as data: counted from the rows, and read by the page in the program as well. */
import { deviation, difference, type Row } from './case.ts';
import { expectedText, measured } from './figures.ts';
import { type Kind, kindOf, type Outcome } from './outcome.ts';
import { notValidated } from './report-words.ts';
import { subjectOf, subjects } from './subjects.ts';

export const kinds: Record<Kind, { readonly short: string; readonly long: string }> = {
  read: { short: 'read', long: 'printed in the publication, and read there' },
  secondary: { short: 'copy', long: 'printed in the publication, read in a copy or an abstract of it' },
  memory: {
    short: 'memory',
    long: 'from a publication as it is remembered, or worked out from constants that are',
  },
  equation: { short: 'equation', long: 'worked out apart from the engine from a published equation' },
  own: { short: 'own', long: 'another method or program of our own, or the engine’s own refined limit' },
  practice: { short: 'practice', long: 'what kitchens say; it proves nothing and must not be contradicted' },
};
const outside: readonly Kind[] = ['read', 'secondary', 'memory', 'equation'];
const inside: readonly Kind[] = ['own', 'practice'];

export interface Difference {
  readonly what: string;
  readonly title: string;
  readonly expected: string;
  readonly ours: string;
  readonly why: string;
}

export interface Summary {
  /** `sources` is null where no publication stands behind a check. */
  readonly had: readonly { readonly how: string; readonly checks: number; readonly sources: number | null }[];
  readonly published: { readonly checks: number; readonly sources: number };
  readonly all: number;
  readonly subjects: readonly {
    readonly title: string;
    readonly cases: number;
    readonly published: number;
    readonly other: number;
  }[];
  readonly differs: readonly Difference[];
  readonly notValidated: readonly { readonly what: string }[];
}

export const unitText = (row: Row) => (row.unit === '' || row.unit === '-' ? '' : ` ${row.unit}`);

const entry = (row: Row, title: string, why: string): Difference => ({
  what: row.quantity,
  title,
  expected: `${expectedText(row, '*')}${unitText(row)}`,
  ours: `*${measured(row.ours, row)}*`,
  why,
});

const withTitles = (outcomes: readonly Outcome[]) =>
  outcomes.flatMap((o) => o.rows.map((row) => ({ row, title: o.example.title })));

export const isPublished = (row: Row) => outside.includes(kindOf(row));

/** Rows that hold, but by more than one per cent of what a publication says. */
export function wide(outcomes: readonly Outcome[]): Difference[] {
  const share = ({ expected, unit }: Row, by: number) =>
    typeof expected === 'number' && expected !== 0 && unit !== '°C' && unit !== '%'
      ? by / Math.abs(expected)
      : 0;
  return withTitles(outcomes)
    .filter(({ row }) => row.differs === undefined && isPublished(row))
    .filter(({ row }) => share(row, Math.abs(difference(row))) > 0.01 && deviation(row) > row.tolerance / 50)
    .map(({ row, title }) => entry(row, title, row.why));
}

export function summaryOf(outcomes: readonly Outcome[]): Summary {
  const rows = outcomes.flatMap((o) => o.rows);
  const sourcesOf = (some: readonly Row[]) => new Set(some.map((row) => row.source)).size;
  const of = (kind: Kind) => rows.filter((row) => kindOf(row) === kind);
  const published = rows.filter(isPublished);
  return {
    had: [...outside, ...inside].map((kind) => ({
      how: `${kinds[kind].long} (*${kinds[kind].short}*)`,
      checks: of(kind).length,
      sources: outside.includes(kind) ? sourcesOf(of(kind)) : null,
    })),
    published: { checks: published.length, sources: sourcesOf(published) },
    all: rows.length,
    subjects: subjects.flatMap((subject) => {
      const cases = outcomes.filter((o) => subjectOf(o.file) === subject);
      const held = cases.flatMap((o) => o.rows);
      const published = held.filter(isPublished).length;
      return cases.length === 0
        ? []
        : [{ title: subject.title, cases: cases.length, published, other: held.length - published }];
    }),
    differs: withTitles(outcomes)
      .flatMap(({ row, title }) => (row.differs === undefined ? [] : [{ row, title, differs: row.differs }]))
      .sort((a, b) => Number(b.differs.unsafe ?? false) - Number(a.differs.unsafe ?? false))
      .map(({ row, title, differs: { why, unsafe } }) =>
        entry(row, title, unsafe === true ? `On the unsafe side: ${why}` : why),
      ),
    notValidated: notValidated.map((what) => ({ what })),
  };
}
