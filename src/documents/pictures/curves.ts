/**
 * Temperatures and lethality against time: what the engine says, what a probe said, and the reading that decides.
 * Lines are labelled where they end; the lethality has its own strip below, on a log scale, with the line it must cross.
 */
import type { CookResult, Target } from '../../core/heat/types.ts';
import { worth } from '../format.ts';
import { toUnit } from './cut-through.ts';
import { type LengthUnits, niceStep } from './piece-layout.ts';
import type { Point } from './piece-section.ts';
import type { Ink, Mark, Scene, Stroke } from './scene.ts';

export interface MeasuredCurve {
  readonly name: string;
  readonly points: readonly { readonly s: number; readonly C: number }[];
  /** Time of the reading that decides [s]. */
  readonly decidingS?: number | null;
}

export interface CurvesOptions {
  readonly width: number;
  readonly height?: number;
  readonly units?: LengthUnits;
  readonly target: Target;
  readonly measured?: readonly MeasuredCurve[];
  readonly title?: string;
}

export interface Curve {
  readonly name: string;
  readonly ink: Ink;
  readonly width: number;
  readonly dash?: readonly number[];
  readonly t: ArrayLike<number>;
  readonly C: ArrayLike<number>;
}

/** The predicted curves, heaviest first: what decides is drawn thickest; each also differs by its dash. */
export function curvesOf(result: CookResult): Curve[] {
  const { history: h } = result;
  return [
    { name: 'coldest point', ink: 'oxblood', width: 2.4, t: h.t, C: h.coldSpot },
    { name: 'mean', ink: 'ember', width: 1.4, dash: [6, 3], t: h.t, C: h.mean },
    { name: 'surface', ink: 'ink', width: 1.2, dash: [2, 2], t: h.t, C: h.surface },
    { name: 'medium', ink: 'slate', width: 1.2, dash: [8, 3, 2, 3], t: h.t, C: h.medium },
  ];
}

/** Spreads labels so that they stand at least `gap` apart, each as near as can be to where it wants to be. */
export function spread(wanted: readonly number[], gap: number, low: number, high: number): number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]!);
  const placed = new Array<number>(wanted.length).fill(0);
  let floor = low;
  for (const i of order) {
    placed[i] = Math.max(wanted[i]!, floor);
    floor = placed[i]! + gap;
  }
  let ceiling = high;
  for (const i of [...order].reverse()) {
    placed[i] = Math.min(placed[i]!, ceiling);
    ceiling = placed[i]! - gap;
  }
  return placed;
}

/** Should words beside a reading stand below it (or above), so that the line does not run through them? */
export function wordsBelow(points: MeasuredCurve['points'], s: number, toTheLeft: boolean): boolean {
  const span = ((points.at(-1)?.s ?? 0) - (points[0]?.s ?? 0)) * 0.05;
  const before = points.findLast((p) => p.s <= s - span) ?? points[0];
  const after = points.find((p) => p.s >= s + span) ?? points.at(-1);
  const rising = (after?.C ?? 0) >= (before?.C ?? 0);
  return rising !== toTheLeft;
}

/** Drops points that lie within `within` of the straight line between those kept (in picture units). */
export function thinned(points: readonly Point[], within = 0.15): Point[] {
  if (points.length < 3) return [...points];
  const kept: Point[] = [points[0]!];
  let from = 0;
  for (let i = 2; i < points.length; i++) {
    const [x0, y0] = points[from]!;
    const [x1, y1] = points[i]!;
    let straight = i - from < 200;
    for (let k = from + 1; straight && k < i; k++) {
      const [x, y] = points[k]!;
      const on = x1 > x0 ? y0 + ((y1 - y0) * (x - x0)) / (x1 - x0) : y1;
      if (!(Math.abs(y - on) <= within)) straight = false;
    }
    if (straight) continue;
    from = i - 1;
    kept.push(points[from]!);
  }
  kept.push(points.at(-1)!);
  return kept;
}

interface Panel {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (s: number) => number;
  readonly y: (value: number) => number;
}

const line = (a: Point, b: Point, stroke: Stroke): Mark => ({ kind: 'polyline', points: [a, b], stroke });
const text = (
  x: number,
  y: number,
  words: string,
  ink: Ink,
  anchor: 'start' | 'middle' | 'end' = 'start',
  size = 12,
): Mark => ({
  kind: 'text',
  x,
  y,
  text: words,
  size,
  ink,
  anchor,
});

function timeAxis(panel: Panel, end: number, labels: boolean): Mark[] {
  const minutes = end / 60;
  const least = (minutes * 52) / (panel.right - panel.left);
  const step =
    [1, 2, 5, 10, 15, 20, 30, 60, 120, 180, 240, 360, 720, 1440].find((m) => m >= least) ?? niceStep(least);
  const marks: Mark[] = [
    line([panel.left, panel.bottom], [panel.right, panel.bottom], { ink: 'ink', width: 1 }),
  ];
  for (let m = 0; m <= minutes + 1e-9; m += step) {
    const x = panel.x(m * 60);
    marks.push(line([x, panel.bottom], [x, panel.bottom + 4], { ink: 'ink', width: 1 }));
    if (labels) marks.push(text(x, panel.bottom + 17, m === 0 ? '0 min' : String(m), 'ink', 'middle'));
  }
  return marks;
}

function temperatureAxis(panel: Panel, low: number, high: number, units: LengthUnits): Mark[] {
  const from = toUnit(low, units);
  const to = toUnit(high, units);
  const step = niceStep(((to - from) * 26) / (panel.bottom - panel.top));
  const marks: Mark[] = [];
  for (let v = Math.ceil(from / step) * step; v <= to + 1e-9; v += step) {
    const y = panel.y(units === 'US' ? (v - 32) / 1.8 : v);
    marks.push(line([panel.left, y], [panel.right, y], { ink: 'bone', width: 0.8 }));
    marks.push(text(panel.left - 5, y + 4, `${Math.round(v)}°`, 'faded', 'end'));
  }
  marks.push(text(panel.left - 5, panel.top - 12, units === 'US' ? '°F' : '°C', 'faded', 'end'));
  return marks;
}

/** Where the curves, labels and stages of the temperature panel stand. */
function temperatureMarks(panel: Panel, result: CookResult, options: CurvesOptions): Mark[] {
  const marks: Mark[] = [];
  const curves = curvesOf(result);
  for (const stage of result.stages) {
    const x = panel.x(stage.end);
    marks.push(line([x, panel.top], [x, panel.bottom], { ink: 'faded', width: 0.7, dash: [1, 3] }));
    const room = x - panel.x(stage.start);
    const most = Math.floor(room / 6.2);
    if (most >= 4) {
      const name = stage.name.length > most ? `${stage.name.slice(0, most - 1)}…` : stage.name;
      marks.push(text(panel.x(stage.start) + 3, panel.top - 6, name, 'faded'));
    }
  }
  for (const curve of [...curves].reverse()) {
    const points = thinned(Array.from(curve.t, (s, i): Point => [panel.x(s), panel.y(curve.C[i]!)]));
    marks.push({
      kind: 'polyline',
      points,
      stroke: {
        ink: curve.ink,
        width: curve.width,
        ...(curve.dash === undefined ? {} : { dash: curve.dash }),
      },
    });
  }
  const measured = options.measured ?? [];
  for (const log of measured) {
    const points = log.points.filter((p) => p.s <= result.history.t.at(-1)! + 1e-9);
    marks.push({
      kind: 'polyline',
      points: thinned(points.map((p): Point => [panel.x(p.s), panel.y(p.C)])),
      stroke: { ink: 'herb', width: 1.8 },
    });
    const deciding = log.decidingS == null ? undefined : log.points.find((p) => p.s >= log.decidingS! - 1e-6);
    if (deciding !== undefined && deciding.s <= result.history.t.at(-1)!) {
      const x = panel.x(deciding.s);
      const y = panel.y(deciding.C);
      marks.push({ kind: 'circle', x, y, r: 5, fill: 'paper', stroke: { ink: 'herb', width: 2 } });
      const late = x > panel.left + 0.6 * (panel.right - panel.left);
      const dy = wordsBelow(log.points, deciding.s, late) ? 18 : -9;
      marks.push(text(x + (late ? -9 : 9), y + dy, 'this reading decides', 'herb', late ? 'end' : 'start'));
    }
  }
  const ends = [
    ...curves.map((c) => ({ name: c.name, ink: c.ink, C: c.C[c.C.length - 1]! })),
    ...measured.map((m) => ({ name: m.name, ink: 'herb' as const, C: m.points.at(-1)?.C ?? Number.NaN })),
  ].filter((e) => Number.isFinite(e.C));
  const ys = spread(
    ends.map((e) => panel.y(e.C) + 4),
    14,
    panel.top + 8,
    panel.bottom + 2,
  );
  ends.forEach((e, i) => {
    const name = e.name.length > 17 ? `${e.name.slice(0, 16)}…` : e.name;
    marks.push(text(panel.right + 6, ys[i]!, name, e.ink));
  });
  return marks;
}

function lethalityMarks(panel: Panel, result: CookResult, target: Target, high: number, low: number): Mark[] {
  const { t, lethality } = result.history;
  const marks: Mark[] = [];
  const every = Math.ceil((high - low) / 4);
  for (let decade = high - ((high - low) % every); decade >= low; decade -= every) {
    const y = panel.y(10 ** decade * 60);
    marks.push(line([panel.left, y], [panel.right, y], { ink: 'bone', width: 0.8 }));
    marks.push(text(panel.left - 5, y + 4, `${10 ** decade}`, 'faded', 'end'));
  }
  const points = thinned(Array.from(t, (s, i): Point => [panel.x(s), panel.y(lethality[i]!)]));
  const need = panel.y(target.s);
  marks.push(line([panel.left, need], [panel.right, need], { ink: 'rust', width: 1.2, dash: [5, 3] }));
  marks.push({ kind: 'polyline', points, stroke: { ink: 'oxblood', width: 2.2 } });
  const last = panel.y(lethality[lethality.length - 1]!);
  const [a, b] = spread([need + 4, last + 4], 14, panel.top + 8, panel.bottom + 2);
  marks.push(text(panel.right + 6, a!, `needs ${Number((target.s / 60).toPrecision(3))} min`, 'rust'));
  marks.push(text(panel.right + 6, b!, 'has had', 'oxblood'));
  return marks;
}

export function curvesTable(result: CookResult, units: LengthUnits): NonNullable<Scene['table']> {
  const degree = (C: number) => toUnit(C, units).toFixed(1);
  const unit = units === 'US' ? '°F' : '°C';
  return {
    head: [
      'Stage',
      'Ends at, min',
      `Coldest point, ${unit}`,
      `Surface, ${unit}`,
      `Mean, ${unit}`,
      'Lethality so far, min',
    ],
    rows: result.stages.map((stage) => {
      const { t, lethality } = result.history;
      let i = t.length - 1;
      while (i > 0 && t[i]! > stage.end + 1e-6) i--;
      return [
        stage.reached ? stage.name : `${stage.name} (not reached)`,
        (stage.end / 60).toFixed(1),
        degree(stage.coldSpot),
        degree(stage.surface),
        degree(stage.mean),
        worth((lethality[i] ?? 0) / 60).replace(/\s?min$/, ''),
      ];
    }),
  };
}

export function curvesScene(result: CookResult, options: CurvesOptions): Scene {
  const units = options.units ?? 'metric';
  const height = options.height ?? 320;
  const end = Math.max(1, result.history.t.at(-1) ?? 1);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  const see = (C: number) => {
    low = Math.min(low, C);
    high = Math.max(high, C);
  };
  for (const curve of curvesOf(result)) for (let i = 0; i < curve.C.length; i++) see(curve.C[i]!);
  for (const log of options.measured ?? []) for (const p of log.points) see(p.C);
  low = Math.floor(low / 10) * 10;
  high = Math.max(low + 10, Math.ceil(high / 10) * 10);
  const left = 40;
  const right = options.width - 108;
  const x = (s: number) => left + ((right - left) * Math.min(s, end)) / end;
  const split = height * 0.66;
  const upper: Panel = {
    left,
    right,
    top: 24,
    bottom: split,
    x,
    y: (C) => split - ((split - 24) * (C - low)) / (high - low),
  };
  const most = Math.max(options.target.s, result.lethality.s) / 60;
  const highDecade = Math.ceil(Math.log10(most) + 0.05);
  const lowDecade = Math.min(highDecade - 2, Math.floor(Math.log10(options.target.s / 60)) - 2);
  const bottom = height - 24;
  const top = split + 22;
  const lower: Panel = {
    left,
    right,
    top,
    bottom,
    x,
    y: (P) => {
      const decades = Math.log10(Math.max(P / 60, 10 ** lowDecade));
      return bottom - ((bottom - top) * (decades - lowDecade)) / (highDecade - lowDecade);
    },
  };
  const ref = `${toUnit(options.target.reference, units).toFixed(0)} ${units === 'US' ? '°F' : '°C'}`;
  return {
    width: options.width,
    height,
    title: options.title ?? 'Temperatures and lethality against time',
    marks: [
      ...temperatureAxis(upper, low, high, units),
      ...timeAxis(upper, end, false),
      ...temperatureMarks(upper, result, options),
      ...lethalityMarks(lower, result, options.target, highDecade, lowDecade),
      ...timeAxis(lower, end, true),
      text(left, top - 6, `lethality at the coldest point, min at ${ref}`, 'faded'),
    ],
    table: curvesTable(result, units),
  };
}
