/** What is on the shelf, as weight by the days it has left: past, today, and on; what nobody has dated stands apart. */
import { formatQuantity, type UnitSystem } from '../../core/units.ts';
import type { Ink, Mark, Scene } from './scene.ts';

export interface ShelfWeight {
  readonly grams: number;
  /** Whole days after today until the last day; null: not known. */
  readonly daysLeft: number | null;
  readonly frozen: boolean;
}

interface Column {
  readonly label: string;
  readonly ink: Ink;
  readonly hatch?: boolean;
  readonly hollow?: boolean;
  readonly takes: (lot: ShelfWeight) => boolean;
}

const within = (low: number, high: number) => (lot: ShelfWeight) =>
  !lot.frozen && lot.daysLeft !== null && lot.daysLeft >= low && lot.daysLeft <= high;

const columns: readonly Column[] = [
  { label: 'past', ink: 'rust', hatch: true, takes: (l) => l.daysLeft !== null && l.daysLeft < 0 },
  { label: 'today', ink: 'ember', takes: within(0, 0) },
  { label: '1 day', ink: 'herb', takes: within(1, 1) },
  { label: '2 days', ink: 'herb', takes: within(2, 2) },
  { label: '3–4', ink: 'herb', takes: within(3, 4) },
  { label: '5–7', ink: 'herb', takes: within(5, 7) },
  { label: 'later', ink: 'herb', takes: within(8, Number.POSITIVE_INFINITY) },
  { label: 'frozen', ink: 'slate', takes: (l) => l.frozen && (l.daysLeft === null || l.daysLeft >= 0) },
  { label: 'not known', ink: 'slate', hollow: true, takes: (l) => !l.frozen && l.daysLeft === null },
];

/** To three figures, where there is little room. */
const roundTo = (grams: number): number => Number(grams.toPrecision(grams >= 100_000 ? 3 : 2));

export function shelfDaysScene(
  lots: readonly ShelfWeight[],
  options: { readonly width: number; readonly units: UnitSystem },
): Scene {
  const { width, units } = options;
  const sums = columns.map((c) => {
    const own = lots.filter(c.takes);
    return { ...c, count: own.length, grams: own.reduce((sum, l) => sum + l.grams, 0) };
  });
  const most = Math.max(1, ...sums.map((c) => c.grams));
  const narrow = width < 520;
  const [top, high, foot] = [22, 84, 40];
  const floor = top + high;
  const room = width / sums.length;
  const size = narrow ? 10 : 13;
  const marks: Mark[] = [
    {
      kind: 'polyline',
      points: [
        [0, floor],
        [width, floor],
      ],
      stroke: { ink: 'faded', width: 1 },
    },
  ];
  sums.forEach((c, i) => {
    const middle = room * (i + 0.5);
    const half = room * (narrow ? 0.36 : 0.32);
    const rise = c.grams <= 0 ? 0 : Math.max(3, (high * c.grams) / most);
    if (rise > 0) {
      marks.push({
        kind: 'polygon',
        points: [
          [middle - half, floor],
          [middle - half, floor - rise],
          [middle + half, floor - rise],
          [middle + half, floor],
        ],
        ...(c.hollow === true ? {} : { fill: c.ink }),
        ...(c.hatch === true ? { hatch: true } : {}),
        stroke: { ink: c.ink, width: 1.5, ...(c.hollow === true ? { dash: [4, 3] } : {}) },
      });
      marks.push({
        kind: 'text',
        x: middle,
        y: floor - rise - 6,
        text: formatQuantity(narrow ? roundTo(c.grams) : c.grams, 'mass', units).replace(
          ' ',
          narrow ? '' : ' ',
        ),
        size,
        ink: 'ink',
        anchor: 'middle',
        weight: 'strong',
      });
    }
    const words = narrow ? c.label.split(' ') : [c.label];
    words.forEach((word, j) => {
      marks.push({
        kind: 'text',
        x: middle,
        y: floor + 16 + j * 12,
        text: word,
        size,
        ink: c.count > 0 ? 'ink' : 'faded',
        anchor: 'middle',
      });
    });
  });
  const dated = sums.filter((c) => c.count > 0);
  return {
    width,
    height: floor + foot - (narrow ? 0 : 12),
    title:
      dated.length === 0
        ? 'Nothing is on the shelf.'
        : `On the shelf by the days left: ${dated.map((c) => `${c.label} ${formatQuantity(c.grams, 'mass', units)}`).join(', ')}.`,
    marks,
    table: {
      head: ['Days left', 'Lots', 'Weight'],
      rows: sums.map((c) => [c.label, String(c.count), formatQuantity(c.grams, 'mass', units)]),
    },
  };
}
