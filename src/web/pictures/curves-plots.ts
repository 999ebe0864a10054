/** The two charts of a cook as uPlot wants them: temperatures, and the lethality that has built up. */
import uPlot from 'uplot';
import type { CookResult, Target } from '../../core/heat/types.ts';
import { type Curve, type MeasuredCurve, spread, wordsBelow } from '../../documents/pictures/curves.ts';
import { toUnit } from '../../documents/pictures/cut-through.ts';
import type { LengthUnits } from '../../documents/pictures/piece-layout.ts';
import type { Palette } from '../../documents/pictures/svg.ts';

const LABEL_ROOM = 104;
const LEFT = 46;
const font = (size: number) => `${size}px "Source Sans 3 Variable", "Source Sans 3", sans-serif`;

interface EndLabel {
  readonly text: string;
  readonly colour: string;
  readonly value: number;
  readonly scale: string;
}

/** Writes each line's name where it ends, so that no legend has to be looked up. */
function writeLabels(u: uPlot, labels: readonly EndLabel[]): void {
  const { ctx, bbox } = u;
  const ratio = devicePixelRatio || 1;
  const ys = spread(
    labels.map((l) =>
      Math.min(bbox.top + bbox.height, Math.max(bbox.top, u.valToPos(l.value, l.scale, true))),
    ),
    15 * ratio,
    bbox.top + 4 * ratio,
    bbox.top + bbox.height,
  );
  ctx.save();
  ctx.font = font(13 * ratio);
  ctx.textAlign = 'left';
  ctx.textBaseline = 'middle';
  labels.forEach((label, i) => {
    ctx.fillStyle = label.colour;
    ctx.fillText(label.text, bbox.left + bbox.width + 6 * ratio, ys[i]!, (LABEL_ROOM - 10) * ratio);
  });
  ctx.restore();
}

function axes(palette: Palette, y: (v: number) => string, time: boolean, decades = false): uPlot.Axis[] {
  const usual = { stroke: palette.faded, font: font(12), grid: { stroke: palette.bone, width: 1 } };
  return [
    {
      ...usual,
      show: time,
      size: 30,
      grid: { show: false },
      ticks: { stroke: palette.faded, width: 1, size: 4 },
      incrs: [1, 2, 5, 10, 15, 20, 30, 60, 120, 240, 480, 1440].map((m) => m * 60),
      values: (_, splits) => splits.map((s) => (s === 0 ? '0 min' : String(Math.round(s / 60)))),
    },
    {
      ...usual,
      size: LEFT,
      ticks: { show: false },
      values: (_, splits) => splits.map((v) => (v == null ? '' : y(v))),
      ...(decades
        ? {
            splits: (_u: uPlot, _axis: number, low: number, high: number) => decadesIn(low, high),
            filter: (_u: uPlot, splits: number[]) => splits,
          }
        : {}),
    },
  ];
}

/** Powers of ten within a range, at most five of them. */
function decadesIn(low: number, high: number): number[] {
  const from = Math.ceil(Math.log10(low) - 1e-9);
  const to = Math.floor(Math.log10(high) + 1e-9);
  const every = Math.max(1, Math.ceil((to - from) / 4));
  const decades: number[] = [];
  for (let d = from; d <= to; d += every) decades.push(10 ** d);
  return decades;
}

/** What the charts show; the plots read it when they draw, so that a new answer needs new data and no new chart. */
export interface Shown {
  readonly result: CookResult;
  readonly curves: readonly Curve[];
  readonly target: Target;
  readonly units: LengthUnits;
  readonly measured: readonly MeasuredCurve[];
}

export interface Plot {
  readonly options: uPlot.Options;
  readonly data: (shown: Shown) => uPlot.AlignedData;
}

const inkOf = (curve: Curve, palette: Palette) => palette[curve.ink as keyof Palette];

function temperatureData({ result, curves, units, measured }: Shown): uPlot.AlignedData {
  const shown = (C: ArrayLike<number>) => Array.from(C, (v) => toUnit(v, units));
  const predicted: uPlot.AlignedData = [Array.from(result.history.t), ...curves.map((c) => shown(c.C))];
  if (measured.length === 0) return predicted;
  return uPlot.join([
    predicted,
    ...measured.map(
      (m): uPlot.AlignedData => [m.points.map((p) => p.s), m.points.map((p) => toUnit(p.C, units))],
    ),
  ]);
}

function temperatureLabels({ curves, units, measured }: Shown, palette: Palette): EndLabel[] {
  return [
    ...curves.map((c) => ({
      text: c.name,
      colour: inkOf(c, palette),
      value: toUnit(c.C[c.C.length - 1]!, units),
      scale: 'y',
    })),
    ...measured.map((m) => ({
      text: m.name,
      colour: palette.herb,
      value: toUnit(m.points.at(-1)?.C ?? 0, units),
      scale: 'y',
    })),
  ];
}

/** Rings the reading that decides, on every log laid over. */
function markDeciding(u: uPlot, { measured, units }: Shown, palette: Palette): void {
  const ratio = devicePixelRatio || 1;
  for (const log of measured) {
    const point = log.decidingS == null ? undefined : log.points.find((p) => p.s >= log.decidingS! - 1e-6);
    if (point === undefined) continue;
    const x = u.valToPos(point.s, 'x', true);
    const y = u.valToPos(toUnit(point.C, units), 'y', true);
    u.ctx.save();
    u.ctx.beginPath();
    u.ctx.arc(x, y, 5 * ratio, 0, 2 * Math.PI);
    u.ctx.fillStyle = palette.paper;
    u.ctx.fill();
    u.ctx.lineWidth = 2.5 * ratio;
    u.ctx.strokeStyle = palette.herb;
    u.ctx.stroke();
    u.ctx.font = font(13 * ratio);
    u.ctx.fillStyle = palette.herb;
    const late = x > u.bbox.left + u.bbox.width * 0.6;
    u.ctx.textAlign = late ? 'right' : 'left';
    const dy = wordsBelow(log.points, point.s, late) ? 16 : -8;
    u.ctx.fillText('this reading decides', x + (late ? -9 : 9) * ratio, y + dy * ratio);
    u.ctx.restore();
  }
}

/** A line where each stage ends. */
function markStages(u: uPlot, { result }: Shown, palette: Palette): void {
  const ratio = devicePixelRatio || 1;
  u.ctx.save();
  u.ctx.strokeStyle = palette.faded;
  u.ctx.lineWidth = ratio;
  u.ctx.setLineDash([2 * ratio, 4 * ratio]);
  for (const stage of result.stages) {
    const x = Math.round(u.valToPos(stage.end, 'x', true));
    u.ctx.beginPath();
    u.ctx.moveTo(x, u.bbox.top);
    u.ctx.lineTo(x, u.bbox.top + u.bbox.height);
    u.ctx.stroke();
  }
  u.ctx.restore();
}

export function temperaturePlot(now: () => Shown, palette: Palette, width: number): Plot {
  const { curves, measured } = now();
  const options: uPlot.Options = {
    width,
    height: 240,
    padding: [10, LABEL_ROOM, 12, 0],
    legend: { show: false },
    cursor: { show: false },
    scales: { x: { time: false } },
    axes: axes(palette, (v) => `${Math.round(v)}°`, false),
    series: [
      {},
      ...curves.map(
        (c): uPlot.Series => ({
          label: c.name,
          stroke: inkOf(c, palette),
          width: c.width,
          spanGaps: true,
          points: { show: false },
          ...(c.dash === undefined ? {} : { dash: [...c.dash] }),
        }),
      ),
      ...measured.map(
        (m): uPlot.Series => ({
          label: m.name,
          stroke: palette.herb,
          width: 2,
          spanGaps: true,
          points: { show: false },
        }),
      ),
    ],
    hooks: {
      draw: [
        (u) => markStages(u, now(), palette),
        (u) => markDeciding(u, now(), palette),
        (u) => writeLabels(u, temperatureLabels(now(), palette)),
      ],
    },
  };
  return { options, data: temperatureData };
}

const floorMin = (target: Target) => target.s / 60 / 100;

function lethalityData({ result, target }: Shown): uPlot.AlignedData {
  const t = Array.from(result.history.t);
  const floor = floorMin(target);
  return [
    t,
    Array.from(result.history.lethality, (s) => Math.max(floor, s / 60)),
    t.map(() => target.s / 60),
  ];
}

function lethalityLabels({ result, target }: Shown, palette: Palette): EndLabel[] {
  const need = target.s / 60;
  const had = Math.max(floorMin(target), result.lethality.s / 60);
  return [
    { text: `needs ${Number(need.toPrecision(3))} min`, colour: palette.rust, value: need, scale: 'y' },
    { text: 'has had', colour: palette.oxblood, value: had, scale: 'y' },
  ];
}

export function lethalityPlot(now: () => Shown, palette: Palette, width: number): Plot {
  const range = (): [number, number] => {
    const { result, target } = now();
    const most = Math.max(target.s / 6, result.lethality.s / 60);
    return [floorMin(target), 10 ** Math.ceil(Math.log10(most))];
  };
  const options: uPlot.Options = {
    width,
    height: 132,
    padding: [10, LABEL_ROOM, 0, 0],
    legend: { show: false },
    cursor: { show: false },
    scales: { x: { time: false }, y: { distr: 3, range } },
    axes: axes(
      palette,
      (v) => (v >= 1e5 ? v.toExponential(0) : String(Number(v.toPrecision(1)))),
      true,
      true,
    ),
    series: [
      {},
      { label: 'has had', stroke: palette.oxblood, width: 2.4, points: { show: false } },
      { label: 'needs', stroke: palette.rust, width: 1.4, dash: [6, 4], points: { show: false } },
    ],
    hooks: { draw: [(u) => writeLabels(u, lethalityLabels(now(), palette))] },
  };
  return { options, data: lethalityData };
}
