/** What a fit left over: measured less model against time, with the band that mere scatter would fill. */
import { niceStep } from './piece-layout.ts';
import type { Ink, Mark, Scene } from './scene.ts';

export interface Residuals {
  readonly min: readonly number[];
  /** Measured − model [K]. */
  readonly K: readonly number[];
  /** Standard deviation of a reading [K]. */
  readonly sd: number;
  /** When stages ended [min]. */
  readonly stageEndsMin: readonly number[];
}

export interface ResidualsOptions {
  readonly width: number;
  readonly height?: number;
  readonly units?: 'metric' | 'US';
}

const rows = 12;

const text = (x: number, y: number, words: string, ink: Ink, anchor: 'start' | 'middle' | 'end'): Mark => ({
  kind: 'text',
  x,
  y,
  text: words,
  size: 12,
  ink,
  anchor,
});

const line = (
  a: readonly [number, number],
  b: readonly [number, number],
  ink: Ink,
  dash?: number[],
): Mark => ({
  kind: 'polyline',
  points: [a, b],
  stroke: { ink, width: 1, ...(dash === undefined ? {} : { dash }) },
});

const signed = (v: number, decimals: number) =>
  `${v > 0 ? '+' : v < 0 ? '−' : ''}${Math.abs(v).toFixed(decimals)}`;

/** Dots about a line: what follows no rhythm is scatter, what runs together is something the model misses. */
export function residualsScene(residuals: Residuals, options: ResidualsOptions): Scene {
  const { min, K, sd, stageEndsMin } = residuals;
  const { width, height = 170, units = 'metric' } = options;
  const scale = units === 'US' ? 1.8 : 1;
  const unit = units === 'US' ? '°F' : '°C';
  const [left, right, top, bottom] = [52, width - 12, 22, height - 26];
  const first = Math.min(0, min[0] ?? 0);
  const last = Math.max(first + 1, min.at(-1) ?? 1);
  const furthest = K.reduce((m, v) => Math.max(m, Math.abs(v)), 2.5 * sd) * scale;
  const step = niceStep(Math.max(0.02, furthest / 2));
  const most = Math.max(step, Math.ceil(furthest / step) * step);
  const x = (m: number) => left + ((right - left) * (m - first)) / (last - first);
  const y = (v: number) => (top + bottom) / 2 - ((bottom - top) / 2) * (v / most);
  const decimals = step < 0.1 ? 2 : step < 1 ? 1 : 0;
  const marks: Mark[] = [];
  const band = Math.min(most, 2 * sd * scale);
  marks.push({
    kind: 'polygon',
    points: [
      [left, y(band)],
      [right, y(band)],
      [right, y(-band)],
      [left, y(-band)],
    ],
    fill: 'bone',
  });
  for (let v = -most; v <= most + 1e-9; v += step)
    marks.push(text(left - 6, y(v) + 4, signed(Math.abs(v) < 1e-9 ? 0 : v, decimals), 'faded', 'end'));
  marks.push(text(left, top - 8, `${unit}, measured less model`, 'faded', 'start'));
  marks.push(line([left, y(0)], [right, y(0)], 'ink'));
  for (const end of stageEndsMin.slice(0, -1))
    if (end > first && end < last) marks.push(line([x(end), top], [x(end), bottom], 'faded', [3, 3]));
  const every = niceStep(Math.max(1, ((last - first) * 56) / (right - left)));
  for (let m = Math.ceil(first / every) * every; m <= last + 1e-9; m += every)
    marks.push(text(x(m), height - 8, m === 0 ? '0 min' : String(m), 'faded', 'middle'));
  const r = K.length > 250 ? 1.3 : 2;
  K.forEach((v, i) => {
    marks.push({ kind: 'circle', x: x(min[i] ?? 0), y: y(v * scale), r, fill: 'oxblood' });
  });
  const sample = Array.from({ length: Math.min(rows, K.length) }, (_, q) =>
    Math.round((q * (K.length - 1)) / Math.max(1, Math.min(rows, K.length) - 1)),
  );
  return {
    width,
    height,
    title: `Measured less model in ${unit}; the band holds 95 in 100 readings if they only scatter`,
    marks,
    table: {
      head: ['Minute', `Measured less model, ${unit}`],
      rows: sample.map((i) => [(min[i] ?? 0).toFixed(1), signed((K[i] ?? 0) * scale, 2)]),
    },
  };
}
