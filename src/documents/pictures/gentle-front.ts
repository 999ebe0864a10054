/** Minutes against what is overcooked: the curve along which a chef can only trade one for the other. */
import type { GentleAnswer } from '../../contract/gentle.ts';
import type { Mark, Scene } from './scene.ts';
import { ticksFor } from './sure-strip.ts';

export interface GentlePoint {
  readonly steps: readonly { readonly mediumC: number; readonly min: number }[];
  readonly min: number;
  readonly overcookedPct: number;
  readonly meanLossPct: number;
  readonly saltedLossPct: number;
  readonly coreC: number;
  readonly recommended: boolean;
}

/** One and two temperatures in one list, the slowest first. */
export function gentlePoints(answer: GentleAnswer): GentlePoint[] {
  const { recommended, recommendedTwoSteps } = answer;
  const one = answer.front.map(
    (p): GentlePoint => ({
      ...p,
      steps: [{ mediumC: p.mediumC, min: p.min }],
      recommended:
        recommendedTwoSteps === null && p.mediumC === recommended?.mediumC && p.min === recommended.min,
    }),
  );
  const two = answer.twoSteps.map(
    (p): GentlePoint => ({
      ...p,
      recommended:
        recommendedTwoSteps !== null && JSON.stringify(p.steps) === JSON.stringify(recommendedTwoSteps.steps),
    }),
  );
  return [...one, ...two].sort((a, b) => b.min - a.min);
}

export interface GentleFrontOptions {
  readonly width?: number;
  readonly chosen: number;
  readonly overcooked: string;
}

const size = 14;

export function gentleFrontScene(
  points: readonly GentlePoint[],
  stepsText: (p: GentlePoint) => string,
  { width = 640, chosen, overcooked }: GentleFrontOptions,
): Scene {
  const left = 44;
  const top = 30;
  const plot = 200;
  const bottom = top + plot;
  const from = Math.floor(Math.min(...points.map((p) => p.min)) - 1);
  const to = Math.ceil(Math.max(...points.map((p) => p.min)) + 1);
  const x = (min: number) => left + ((min - from) / (to - from)) * (width - left - 8);
  // Where all of them overcook as much, what tells them apart is what they lose.
  const shares = points.map((p) => p.overcookedPct);
  const alike = Math.max(...shares) - Math.min(...shares) < 2;
  const of = (p: GentlePoint) => (alike ? p.meanLossPct : p.overcookedPct);
  const most = Math.max(10, ...points.map(of));
  const y = (pct: number) => bottom - (pct / most) * plot;
  const marks: Mark[] = [
    {
      kind: 'text',
      x: 0,
      y: 14,
      text: alike ? 'Water lost, at most, % of the piece' : `Hotter than ${overcooked}, % of the piece`,
      size,
      ink: 'faded',
    },
    {
      kind: 'polyline',
      points: [
        [left, top],
        [left, bottom],
        [width, bottom],
      ],
      stroke: { ink: 'ink', width: 1 },
    },
  ];
  for (const pct of most > 50
    ? [0, 25, 50, 75, 100]
    : most > 20
      ? [0, 10, 20, 30, 40, 50]
      : [0, 5, 10, 15, 20]) {
    if (pct > most) continue;
    marks.push({
      kind: 'polyline',
      points: [
        [left - 5, y(pct)],
        [left, y(pct)],
      ],
      stroke: { ink: 'ink', width: 1 },
    });
    marks.push({
      kind: 'text',
      x: left - 9,
      y: y(pct) + 5,
      text: String(pct),
      size,
      ink: 'ink',
      anchor: 'end',
    });
  }
  for (const min of ticksFor(from, to, width - left)) {
    marks.push({
      kind: 'polyline',
      points: [
        [x(min), bottom],
        [x(min), bottom + 6],
      ],
      stroke: { ink: 'ink', width: 1 },
    });
    marks.push({
      kind: 'text',
      x: x(min),
      y: bottom + 22,
      text: String(min),
      size,
      ink: 'ink',
      anchor: 'middle',
    });
  }
  marks.push({ kind: 'text', x: width, y: bottom + 40, text: 'minutes', size, ink: 'faded', anchor: 'end' });
  const single = points.filter((p) => p.steps.length === 1);
  marks.push({
    kind: 'polyline',
    points: single.map((p): [number, number] => [x(p.min), y(of(p))]),
    stroke: { ink: 'slate', width: 2 },
  });
  points.forEach((p, i) => {
    const two = p.steps.length > 1;
    const [cx, cy] = [x(p.min), y(of(p))];
    const r = i === chosen ? 9 : 5;
    const ink = i === chosen ? 'oxblood' : 'slate';
    // One temperature is a round mark, two are a square.
    if (two)
      marks.push({
        kind: 'polygon',
        points: [
          [cx - r, cy - r],
          [cx + r, cy - r],
          [cx + r, cy + r],
          [cx - r, cy + r],
        ],
        fill: i === chosen ? 'oxblood' : 'paper',
        stroke: { ink, width: 2 },
      });
    else marks.push({ kind: 'circle', x: cx, y: cy, r, fill: ink });
  });
  return {
    width,
    height: bottom + 46,
    title: `Programmes that pass, from ${points[0]?.min ?? 0} min down to ${points.at(-1)?.min ?? 0} min: the quicker, the more of the piece is hotter than ${overcooked}. Round: one temperature. Square: two.`,
    marks,
    table: {
      head: [
        'Programme',
        'min',
        `hotter than ${overcooked}`,
        'water lost, at most',
        'lost, ground and salted',
      ],
      rows: points.map((p) => [
        `${stepsText(p)}${p.recommended ? ' (the gentlest)' : ''}`,
        p.min.toFixed(1),
        `${p.overcookedPct.toFixed(1)} %`,
        `${p.meanLossPct.toFixed(1)} %`,
        `${p.saltedLossPct.toFixed(1)} %`,
      ]),
    },
  };
}
