/**
 * A piece as it is asked for, sketched, with the lengths that are asked as dimension lines. The outline says what the piece
 * is, not how large: only the lines stand in proportion to one another.
 */
import { formatQuantity, toBase, type UnitSystem } from '../../core/units.ts';
import type { Mark, Scene } from './scene.ts';
import { fitText, textWidth } from './text-fit.ts';

export interface AskedLength {
  readonly name: string;
  readonly lowMm: number | null;
  readonly highMm: number | null;
}

export interface PieceOutlineOptions {
  readonly width: number;
  readonly units: UnitSystem;
}

type Points = readonly (readonly [number, number])[];
interface Outline {
  /** In a box 100 wide and 40 high. */
  readonly body: Points;
  readonly strokes?: readonly Points[];
}

/** Half an outline from the left to the right, above the middle, mirrored below. */
const mirrored = (half: Points): Points => [
  ...half,
  ...[...half].reverse().map(([x, y]) => [x, 40 - y] as const),
];

const outlines: readonly { readonly named: RegExp; readonly outline: Outline }[] = [
  {
    named: /\bneck/,
    outline: {
      body: mirrored([
        [0, 14],
        [12, 13],
        [40, 12],
        [70, 9],
        [88, 4],
        [100, 1],
      ]),
      strokes: [
        [
          [8, 20],
          [92, 20],
        ],
      ],
    },
  },
  {
    named: /\btrotter|\bpig.*\b(foot|feet)\b|\b(lamb|sheep|calf|ox|cow).*\b(foot|feet)\b|\bheel\b/,
    outline: {
      body: [
        [0, 14],
        [4, 6],
        [22, 3],
        [30, 8],
        [60, 8],
        [84, 4],
        [100, 2],
        [100, 38],
        [84, 35],
        [60, 31],
        [30, 32],
        [22, 37],
        [4, 34],
        [0, 26],
        [14, 20],
      ],
      strokes: [
        [
          [14, 20],
          [26, 20],
        ],
      ],
    },
  },
  {
    named: /\b(foot|feet|paws?)\b/,
    outline: {
      body: [
        [0, 3],
        [4, 0],
        [34, 15],
        [2, 18],
        [0, 22],
        [34, 25],
        [4, 38],
        [8, 40],
        [44, 27],
        [100, 26],
        [100, 14],
        [44, 13],
      ],
    },
  },
  {
    named: /\bhead|\bcheek|\bface\b/,
    outline: {
      body: [
        [0, 22],
        [6, 14],
        [40, 8],
        [58, 4],
        [62, 0],
        [80, 0],
        [78, 8],
        [100, 6],
        [100, 38],
        [70, 40],
        [30, 33],
        [4, 30],
      ],
      strokes: [
        [
          [3, 27],
          [26, 27],
        ],
        [
          [46, 15],
          [50, 15],
        ],
      ],
    },
  },
  {
    named: /\bblood\b/,
    outline: {
      body: [
        [30, 0],
        [70, 0],
        [67, 40],
        [33, 40],
      ],
      strokes: [
        [
          [31, 9],
          [69, 9],
        ],
      ],
    },
  },
  {
    named: /\bskin|\bhide|\bcaul/,
    outline: {
      body: [
        [0, 5],
        [30, 2],
        [66, 6],
        [100, 1],
        [97, 36],
        [60, 39],
        [28, 35],
        [3, 38],
      ],
    },
  },
  {
    named: /^whole\b|\bcarcass|\bcarcase/,
    outline: {
      body: mirrored([
        [0, 16],
        [18, 16],
        [28, 5],
        [56, 1],
        [80, 6],
        [90, 13],
        [100, 17],
      ]),
    },
  },
];

const plainPiece: Outline = {
  body: mirrored([
    [0, 12],
    [8, 4],
    [30, 1],
    [70, 1],
    [92, 4],
    [100, 12],
  ]),
};

const acrossName = /\b(across|wide|width|thick|diameter|round)\b/i;

/** A length as it is asked, in the kitchen's units. */
export function lengthWords({ lowMm, highMm }: AskedLength, units: UnitSystem): string {
  const say = (mm: number) => formatQuantity(toBase(mm, 'length', 'mm'), 'length', units);
  if (lowMm !== null && highMm !== null)
    return lowMm === highMm ? say(lowMm) : `${say(lowMm)} to ${say(highMm)}`;
  if (lowMm !== null) return `at least ${say(lowMm)}`;
  return highMm === null ? 'how long is not said' : `at most ${say(highMm)}`;
}

const line = (points: Points, dash?: readonly number[], width = 1): Mark => ({
  kind: 'polyline',
  points,
  stroke: { ink: 'ink', width, ...(dash === undefined ? {} : { dash }) },
});

const arrow = (x: number, y: number, towards: 1 | -1): Mark => ({
  kind: 'polyline',
  points: [
    [x - 6 * towards, y - 3.5],
    [x, y],
    [x - 6 * towards, y + 3.5],
  ],
  stroke: { ink: 'ink', width: 1 },
});

/** The sketch with its dimension lines: along the piece under it, across it at its wide end. */
export function pieceOutlineScene(
  species: string,
  what: string,
  dimensions: readonly AskedLength[],
  { width, units }: PieceOutlineOptions,
): Scene {
  const name = what.toLowerCase();
  const outline =
    outlines.find((o) => o.named.test(name) || o.named.test(`${species.toLowerCase()} ${name}`))?.outline ??
    plainPiece;
  const across = dimensions.filter((d) => acrossName.test(d.name));
  const along = dimensions.filter((d) => !acrossName.test(d.name));
  const right = across.length > 0 ? 34 * across.length + 8 : 8;
  const [x0, y0] = [8, 10];
  const pieceWidth = Math.min(width - x0 - right, 560);
  const pieceHeight = Math.min(150, pieceWidth * 0.3);
  const x = (u: number) => x0 + (pieceWidth * u) / 100;
  const y = (v: number) => y0 + (pieceHeight * v) / 40;
  const at = (points: Points) => points.map(([u, v]) => [x(u), y(v)] as const);
  const marks: Mark[] = [
    { kind: 'polygon', points: at(outline.body), fill: 'bone', stroke: { ink: 'ink', width: 1.5 } },
    ...(outline.strokes ?? []).map((s) => line(at(s))),
  ];
  const longest = Math.max(1, ...along.map((d) => d.highMm ?? d.lowMm ?? 0));
  const size = 14;
  let down = y0 + pieceHeight + 22;
  for (const d of along) {
    const end = d.highMm ?? d.lowMm ?? longest;
    const to = x(100) - (pieceWidth * end) / longest;
    const sure = d.highMm === null ? to : x(100) - (pieceWidth * (d.lowMm ?? 0)) / longest;
    marks.push(
      line([
        [x(100), y0 + pieceHeight],
        [x(100), down + 5],
      ]),
      line([
        [to, down - 6],
        [to, down + 6],
      ]),
      line([
        [sure, down],
        [x(100), down],
      ]),
      arrow(x(100), down, 1),
      arrow(to, down, -1),
    );
    if (sure !== to)
      marks.push(
        line(
          [
            [to, down],
            [sure, down],
          ],
          [5, 4],
        ),
      );
    for (const words of fitText(`${d.name}: ${lengthWords(d, units)}`, width - x0 - 8, size, 2)) {
      down += 18;
      marks.push({ kind: 'text', x: x0, y: down, text: words, size, ink: 'ink' });
    }
    down += 22;
  }
  across.forEach((d, i) => {
    const px = x(100) + 20 + 34 * i;
    marks.push(
      line([
        [px, y0],
        [px, y0 + pieceHeight],
      ]),
      line([
        [px - 6, y0],
        [px + 6, y0],
      ]),
      line([
        [px - 6, y0 + pieceHeight],
        [px + 6, y0 + pieceHeight],
      ]),
      {
        kind: 'text',
        x: px + 5,
        y: y0 + pieceHeight / 2 + 4,
        text: String.fromCharCode(97 + i),
        size,
        ink: 'ink',
        weight: 'strong',
      },
    );
    const words = `${String.fromCharCode(97 + i)}  ${d.name}: ${lengthWords(d, units)}`;
    for (const part of fitText(words, width - x0 - 8, size, 2)) {
      marks.push({ kind: 'text', x: x0, y: down, text: part, size, ink: 'ink' });
      down += 18;
    }
  });
  const sketch = 'A sketch. Only its lines stand in proportion.';
  marks.push({ kind: 'text', x: x0, y: down + 4, text: sketch, size: 12, ink: 'faded' });
  return {
    width: Math.max(width, x0 + textWidth(sketch, 12)),
    height: down + 12,
    title: `${species}, ${what}: ${dimensions.length === 0 ? 'no length is asked' : dimensions.map((d) => `${d.name} ${lengthWords(d, units)}`).join(', ')}`,
    marks,
    table: {
      head: ['From where to where', 'How long'],
      rows: dimensions.map((d) => [d.name, lengthWords(d, units)]),
    },
  };
}
