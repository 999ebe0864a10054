/**
 * The salt front: salt in the water right across the piece at one hour, with what it lies in on either side and the
 * hours before as thin lines; where it will end as a line across. One scale for all hours, so that it is seen to move.
 */
import type { CureResult } from '../../core/salt/cure.ts';
import type { CurePiece } from '../../core/salt/cure-piece.ts';
import { saltWaterActivity } from '../../core/salt/water-activity.ts';
import { number } from '../format.ts';
import { spread } from './curves.ts';
import { type LengthUnits, niceStep } from './piece-layout.ts';
import type { Point } from './piece-section.ts';
import type { Ink, Mark, Scene, Stroke } from './scene.ts';

export interface SaltFrontOptions {
  readonly width: number;
  readonly height?: number;
  readonly units?: LengthUnits;
  /** The moment drawn [s]. */
  readonly time: number;
}

type Cured = Pick<CureResult, 'history' | 'frames' | 'depths' | 'stages'>;

export interface SaltMoment {
  readonly time: number;
  /** Water-phase salt from the surface to the core, mass fractions. */
  readonly waterPhase: readonly number[];
  readonly mean: number;
  /** Of the bath; null where nothing touches the surface. */
  readonly bath: number | null;
}

/** Salt at a time [s]: straight between the engine's moments; held at the ends. */
export function saltAt({ history, frames }: Cured, time: number): SaltMoment | null {
  const after = history.findIndex((state) => state.t >= time - 1e-9);
  const b = after < 0 ? history.length - 1 : after;
  // Where a stage begins the moment stands twice: the surface steps, and the later one holds from there on.
  const a = Math.max(0, b - 1);
  const [from, to] = [history[a], history[b]];
  const [fa, fb] = [frames[a], frames[b]];
  if (from === undefined || to === undefined || fa === undefined || fb === undefined) return null;
  const w = to.t > from.t ? Math.min(1, Math.max(0, (time - from.t) / (to.t - from.t))) : 1;
  const mix = (p: number, q: number) => p + (q - p) * w;
  return {
    time: Math.min(time, history.at(-1)?.t ?? time),
    waterPhase: fa.map((v, i) => mix(v, fb[i] ?? v)),
    mean: mix(from.meanWaterPhase, to.meanWaterPhase),
    bath: to.bath === null || from.bath === null ? to.bath : mix(from.bath, to.bath),
  };
}

/** Rounded down: nothing looks saltier than it is. */
const pct = (share: number) => {
  const figures = share < 0.1 ? 100 : 10;
  return `${number(Math.floor(share * 100 * figures + 1e-9) / figures, 2)} %`;
};
export const hoursText = (s: number): string => {
  const h = s / 3600;
  if (h < 2) return `${Math.round(s / 60)} min`;
  return h < 72 ? `${number(h, h < 10 ? 1 : 0)} h` : `${number(h / 24, 1)} days`;
};
const lengthText = (m: number, units: LengthUnits) =>
  units === 'US' ? `${(m / 0.0254).toFixed(2)} in` : `${number(m * 1000, 1)} mm`;

const line = (points: readonly Point[], stroke: Stroke): Mark => ({ kind: 'polyline', points, stroke });
const text = (
  x: number,
  y: number,
  words: string,
  ink: Ink,
  anchor: 'start' | 'middle' | 'end' = 'start',
  strong = false,
): Mark => ({
  kind: 'text',
  x,
  y,
  text: words,
  size: 12,
  ink,
  anchor,
  ...(strong ? { weight: 'strong' } : {}),
});

/** The highest of the scale: what matters in the piece, not the saturated skin of brine on dry salt. */
function scaleOf(cured: Cured): number {
  const end = cured.stages.at(-1)?.equilibrium.waterPhase ?? 0;
  const core = cured.history.at(-1)?.coreWaterPhase ?? 0;
  let most = 0;
  for (const { surfaceWaterPhase } of cured.history) most = Math.max(most, surfaceWaterPhase);
  // Only what lies in dry salt is so much stronger at its skin than within that the front would be lost.
  const wanted =
    (most > 0.15 ? Math.min(most, Math.max(3 * end, 2 * core, 0.01)) : Math.max(most, 0.01)) * 1.04;
  const step = niceStep((wanted * 100) / 4);
  return (Math.ceil((wanted * 100) / step - 1e-9) * step) / 100;
}

export function saltFrontTable(
  cured: Cured,
  piece: CurePiece,
  time: number,
  units: LengthUnits,
): NonNullable<Scene['table']> {
  const moment = saltAt(cured, time);
  const { depths } = cured;
  const extent = depths.at(-1) ?? 0;
  // The places nearest to nine even steps from the surface to the middle: the engine's own lie close under the surface.
  const wanted = Array.from({ length: 9 }, (_, k) => (extent * k) / 8);
  const nearest = wanted.map((depth) =>
    depths.reduce(
      (best, d, i) => (Math.abs(d - depth) < Math.abs((depths[best] ?? 0) - depth) ? i : best),
      0,
    ),
  );
  const rows = [...new Set(nearest)]
    .map((i) => ({ waterPhase: moment?.waterPhase[i] ?? 0, depth: depths[i] ?? 0 }))
    .map(({ waterPhase, depth }) => [
      lengthText(depth, units),
      pct(waterPhase),
      saltWaterActivity(Math.min(waterPhase, 0.2655)).toFixed(3),
      piece.skin !== undefined && depth < piece.skin.thickness ? 'skin' : '',
    ]);
  return { head: ['Below the surface', 'Salt in the water', 'Water activity by salt', 'In the'], rows };
}

/** Salt across the piece at a moment. */
export function saltFrontScene(cured: Cured, piece: CurePiece, options: SaltFrontOptions): Scene {
  const units = options.units ?? 'metric';
  const { width } = options;
  const height = options.height ?? 260;
  const moment = saltAt(cured, options.time);
  const { depths } = cured;
  const extent = depths.at(-1) ?? piece.size;
  const oneSided = piece.shape === 'slab' && piece.exposedFaces === 1;
  const across = oneSided ? extent : 2 * extent;
  const top = scaleOf(cured);
  const bathRoom = 30;
  const [left, right] = [40 + bathRoom, width - 96 - (oneSided ? 0 : bathRoom)];
  const [above, floor] = [26, height - 44];
  const x = (m: number) => left + ((right - left) * m) / across;
  const y = (share: number) => floor - ((floor - above) * Math.min(share, top)) / top;
  const marks: Mark[] = [];

  const step = niceStep((top * 100) / Math.max(2, Math.floor((floor - above) / 34)));
  for (let v = 0; v <= top * 100 + 1e-9; v += step) {
    const py = y(v / 100);
    marks.push(
      line(
        [
          [left - bathRoom, py],
          [right + (oneSided ? 0 : bathRoom), py],
        ],
        { ink: 'bone', width: 0.8 },
      ),
    );
    marks.push(text(left - bathRoom - 5, py + 4, number(v, 2), 'faded', 'end'));
  }
  marks.push(text(left - bathRoom - 5, above - 12, '%', 'faded', 'end'));
  marks.push(text(left - bathRoom, above - 12, 'salt in the water', 'faded'));

  /** The whole way across, mirrored where salt comes from both sides. */
  const acrossPoints = (values: readonly number[]): Point[] => {
    const half = values.map((v, i): Point => [x(depths[i] ?? 0), y(v)]);
    return oneSided ? half : [...half, ...half.map(([px, py]): Point => [left + right - px, py]).reverse()];
  };

  const dotted: string[] = [];
  if (moment !== null) {
    const points = acrossPoints(moment.waterPhase);
    marks.push({
      kind: 'polygon',
      points: [[left, floor], ...points, [right, floor]],
      fill: 'bone',
    });
    for (const part of [1 / 16, 1 / 4]) {
      const earlier = saltAt(cured, options.time * part);
      if (earlier === null || options.time <= 0) continue;
      marks.push(line(acrossPoints(earlier.waterPhase), { ink: 'faded', width: 0.8, dash: [2, 3] }));
      dotted.push(hoursText(earlier.time));
    }
    if (moment.bath !== null)
      for (const side of oneSided ? [left - bathRoom] : [left - bathRoom, right])
        marks.push({
          kind: 'polygon',
          points: [
            [side, y(moment.bath)],
            [side + bathRoom, y(moment.bath)],
            [side + bathRoom, floor],
            [side, floor],
          ],
          fill: 'slate',
          hatch: true,
          stroke: { ink: 'slate', width: 1 },
        });
    marks.push(line(points, { ink: 'slate', width: 2.4 }));
  }

  // The piece: its two faces, its skin, its middle.
  for (const face of [left, right])
    marks.push(
      line(
        [
          [face, above - 4],
          [face, floor],
        ],
        { ink: 'ink', width: 1.6 },
      ),
    );
  const skin = piece.skin?.thickness;
  if (skin !== undefined) {
    for (const m of oneSided ? [skin] : [skin, across - skin])
      marks.push(
        line(
          [
            [x(m), above],
            [x(m), floor],
          ],
          { ink: 'oxblood', width: 1, dash: [4, 3] },
        ),
      );
    marks.push(text(x(skin) + 3, above + 8, 'skin', 'oxblood'));
  }
  marks.push(
    line(
      [
        [left - bathRoom, floor],
        [right + (oneSided ? 0 : bathRoom), floor],
      ],
      { ink: 'ink', width: 1 },
    ),
  );

  const end = cured.stages.at(-1)?.equilibrium.waterPhase ?? 0;
  const core = moment?.waterPhase.at(-1) ?? 0;
  const surface = moment?.waterPhase[0] ?? 0;
  marks.push(
    line(
      [
        [left, y(end)],
        [right, y(end)],
      ],
      { ink: 'herb', width: 1.4, dash: [7, 4] },
    ),
  );
  const labelled: { words: string; ink: Ink; at: number }[] = [
    { words: `even ${pct(end)}`, ink: 'herb', at: end },
    { words: `mean ${pct(moment?.mean ?? 0)}`, ink: 'ink', at: moment?.mean ?? 0 },
    { words: `middle ${pct(core)}`, ink: 'oxblood', at: core },
  ];
  const stand = spread(
    labelled.map((l) => y(l.at) + 4),
    15,
    above + 6,
    floor + 2,
  );
  const wordsAt = right + (oneSided ? 0 : bathRoom) + 6;
  labelled.forEach((l, i) => void marks.push(text(wordsAt, stand[i]!, l.words, l.ink)));
  const middle = oneSided ? right : (left + right) / 2;
  marks.push({
    kind: 'circle',
    x: middle,
    y: y(core),
    r: 4.5,
    fill: 'paper',
    stroke: { ink: 'oxblood', width: 2 },
  });
  if (surface > top)
    marks.push(
      text(
        left + 4,
        above + (skin === undefined ? 8 : 22),
        `▲ ${pct(surface)} at the surface`,
        'slate',
        'start',
        true,
      ),
    );

  // The ruler, from the surface.
  const inUnits = units === 'US' ? 0.0254 : 0.001;
  const ruler = niceStep(
    Math.max((across / inUnits) * (44 / Math.max(60, right - left)), units === 'US' ? 0.05 : 1),
  );
  for (let v = 0; v * inUnits <= across + 1e-9; v += ruler) {
    const px = x(v * inUnits);
    const last = (v + ruler) * inUnits > across + 1e-9;
    marks.push(
      line(
        [
          [px, floor],
          [px, floor + 5],
        ],
        { ink: 'ink', width: 1 },
      ),
    );
    marks.push(
      text(px, floor + 18, `${number(v, 2)}${last ? (units === 'US' ? ' in' : ' mm') : ''}`, 'ink', 'middle'),
    );
  }
  marks.push(
    text(
      (left + right) / 2,
      floor + 36,
      `${oneSided ? 'from the salted face to the closed one' : 'right across the piece'}${dotted.length > 0 ? `; dotted, after ${dotted.join(' and ')}` : ''}`,
      'faded',
      'middle',
    ),
  );
  return {
    width,
    height,
    title: `Salt across the piece after ${hoursText(moment?.time ?? 0)}: surface ${pct(surface)}, mean ${pct(moment?.mean ?? 0)}, middle ${pct(core)} of its water`,
    marks,
    table: saltFrontTable(cured, piece, options.time, units),
  };
}
