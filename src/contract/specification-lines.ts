/** A specification as lines in words, grouped as the job goes, and two of them line by line. Pure. */
import { formatQuantity, toBase, type UnitSystem } from '../core/units.ts';
import type { SpecificationContent } from './specification.ts';

export const specificationGroups = [
  'the animal',
  'slaughter',
  'dressing',
  'where it is cut',
  'blood',
  'cold',
  'packed and labelled',
  'when it comes',
  'refused if',
  'note',
] as const;
export type SpecificationGroup = (typeof specificationGroups)[number];

export interface SpecificationLine {
  /** The same for the same thing in any version. */
  readonly key: string;
  readonly group: SpecificationGroup;
  readonly label: string;
  readonly text: string;
}

export const weekdays = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const;

const between = (low: string | null, high: string | null): string =>
  low !== null && high !== null
    ? low === high
      ? low
      : `${low} to ${high}`
    : low !== null
      ? `at least ${low}`
      : high !== null
        ? `at most ${high}`
        : '';

/** Everything that is asked, a line each; what is left open has no line. */
export function specificationLines(c: SpecificationContent, units: UnitSystem): SpecificationLine[] {
  const lines: SpecificationLine[] = [];
  const add = (group: SpecificationGroup, key: string, label: string, text: string) => {
    if (text.trim() !== '') lines.push({ group, key, label, text: text.trim() });
  };
  const grams = (g: number | null) => (g === null ? null : formatQuantity(g, 'mass', units));
  const celsius = (t: number | null) => (t === null ? '' : formatQuantity(t, 'temperature', units));
  const mm = (x: number | null) =>
    x === null ? null : formatQuantity(toBase(x, 'length', 'mm'), 'length', units);
  const open = (word: string) => (word === 'not asked' ? '' : word);

  add('the animal', 'what', 'What', c.what);
  add('the animal', 'ageClass', 'Age or class', c.ageClass);
  add(
    'the animal',
    'ageMonthsAtMost',
    'Not older than',
    c.ageMonthsAtMost === null ? '' : `${c.ageMonthsAtMost} months`,
  );
  add('the animal', 'breedOrSystem', 'Breed, how it is kept', c.breedOrSystem);
  add('the animal', 'pieceGrams', 'Weight each', between(grams(c.pieceGrams.low), grams(c.pieceGrams.high)));
  add('slaughter', 'stunning', 'Stunning', c.stunning);
  add('slaughter', 'bleeding', 'Bleeding', c.bleeding);
  add('dressing', 'skin', 'Skin, in this order', c.skin.join(', '));
  add('dressing', 'head', 'Head', open(c.head));
  add('dressing', 'feet', 'Feet', open(c.feet));
  add('dressing', 'drawn', 'Drawn or not', open(c.drawn));
  add('where it is cut', 'cut', 'Cut', c.cut);
  for (const d of c.dimensions)
    add('where it is cut', `dimension ${d.name}`, d.name, between(mm(d.lowMm), mm(d.highMm)));
  add('blood', 'blood', 'Blood', open(c.blood));
  add('blood', 'bloodHow', 'How it is kept', c.bloodHow);
  add('cold', 'chilledToC', 'Chilled to', c.chilledToC === null ? '' : `${celsius(c.chilledToC)} or colder`);
  add(
    'cold',
    'chilledWithinHours',
    'Within',
    c.chilledWithinHours === null ? '' : `${c.chilledWithinHours} h of slaughter`,
  );
  add(
    'cold',
    'arrivesAtMostC',
    'Arrives at',
    c.arrivesAtMostC === null ? '' : `${celsius(c.arrivesAtMostC)} or colder`,
  );
  add('packed and labelled', 'packed', 'Packed', c.packed);
  for (const text of c.labelled) add('packed and labelled', `labelled ${text}`, 'On the label', text);
  for (const text of c.documents) add('packed and labelled', `document ${text}`, 'Paper', text);
  const days = [...c.days].sort((a, b) => a - b).map((d) => weekdays[d] ?? '');
  add('when it comes', 'days', 'On', days.join(', '));
  add('when it comes', 'clock', 'Between', c.from === null && c.until === null ? '' : clock(c));
  for (const text of c.refusedIf) add('refused if', `refused ${text}`, 'Refused if', text);
  add('note', 'note', 'Note', c.note);
  return lines;
}

const clock = (c: SpecificationContent) =>
  c.from !== null && c.until !== null
    ? `${c.from} and ${c.until}`
    : c.from !== null
      ? `from ${c.from}`
      : `until ${c.until}`;

export interface ComparedLine {
  readonly key: string;
  readonly group: SpecificationGroup;
  readonly label: string;
  /** Null: it was not asked. */
  readonly before: string | null;
  /** Null: it is no longer asked. */
  readonly after: string | null;
  readonly change: 'same' | 'new' | 'gone' | 'changed';
}

/** Two versions line by line, in the order of the later one; what is gone stands in its group. */
export function compareSpecifications(
  before: SpecificationContent,
  after: SpecificationContent,
  units: UnitSystem,
): ComparedLine[] {
  const was = specificationLines(before, units);
  const is = specificationLines(after, units);
  return specificationGroups.flatMap((group) => {
    const now = is
      .filter((l) => l.group === group)
      .map((l): ComparedLine => {
        const old = was.find((w) => w.key === l.key)?.text ?? null;
        return {
          key: l.key,
          group,
          label: l.label,
          before: old,
          after: l.text,
          change: old === null ? 'new' : old === l.text ? 'same' : 'changed',
        };
      });
    const gone = was
      .filter((w) => w.group === group && !is.some((l) => l.key === w.key))
      .map(
        (w): ComparedLine => ({
          key: w.key,
          group,
          label: w.label,
          before: w.text,
          after: null,
          change: 'gone',
        }),
      );
    return [...now, ...gone];
  });
}
