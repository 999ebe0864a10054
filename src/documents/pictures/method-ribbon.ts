/**
 * The method ribbon: a method from left to right, each step as long as its time on a log scale; what hands do is raised,
 * what waits is lowered; the limits of the control points stand on it.
 */
import type { Method, Step } from '../../contract/steps.ts';
import type { UnitSystem } from '../../core/units.ts';
import type { Ink, Mark, Scene } from './scene.ts';
import { type StepTime, stepLimits, stepTime, timeText } from './step-time.ts';
import { fitText } from './text-fit.ts';

export interface RibbonOptions {
  /** Width wanted [px]; grows where the steps would become too narrow. */
  readonly width?: number;
  /** Narrowest step [px]. */
  readonly narrowest?: number;
  readonly units?: UnitSystem;
  /** Without words, for a list: a strip a line high. */
  readonly small?: boolean;
}

export interface RibbonBox {
  readonly stepId: string;
  readonly x: number;
  readonly width: number;
}

export interface Ribbon {
  readonly scene: Scene;
  /** One box a step, in order, side by side, over the whole height. */
  readonly boxes: readonly RibbonBox[];
}

/** A wait of unknown length is drawn as if it took half an hour, with an open end. */
const NOMINAL_OPEN_MIN = 30;
const length = (minutes: number) => Math.log10(1 + minutes);

function shares(time: StepTime): { hands: number; wait: number } {
  const wait = time.waitMin === 0 && time.open ? NOMINAL_OPEN_MIN : time.waitMin;
  return { hands: length(time.handsMin), wait: length(wait) };
}

/** Widths of the steps [px]: each at least `narrowest`, the rest shared by the logarithm of its time. */
export function ribbonWidths(times: readonly StepTime[], width: number, narrowest: number): number[] {
  const lengths = times.map((t) => {
    const { hands, wait } = shares(t);
    return Math.max(0.15, hands + wait);
  });
  const total = lengths.reduce((s, l) => s + l, 0);
  const spare = Math.max(0, width - narrowest * times.length);
  return lengths.map((l) => narrowest + (spare * l) / total);
}

const waitInk: Partial<Record<Step['kind'], Ink>> = { cook: 'ember', chill: 'slate' };

const rect = (x: number, y: number, w: number, h: number): [number, number][] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];

interface Measures {
  readonly base: number;
  readonly raised: number;
  readonly lowered: number;
}

function blocks(step: Step, time: StepTime, x: number, width: number, m: Measures): Mark[] {
  const { hands, wait } = shares(time);
  const inside = Math.max(2, width - 3);
  const least = Math.min(6, inside / 2);
  let handsWidth = hands === 0 ? 0 : wait === 0 ? inside : (inside * hands) / (hands + wait);
  if (hands > 0 && wait > 0) handsWidth = Math.min(Math.max(handsWidth, least), inside - least);
  const marks: Mark[] = [];
  if (handsWidth > 0)
    marks.push({ kind: 'polygon', points: rect(x, m.base - m.raised, handsWidth, m.raised), fill: 'ink' });
  if (wait > 0) {
    const ink = waitInk[step.kind];
    marks.push({
      kind: 'polygon',
      points: rect(x + handsWidth, m.base, inside - handsWidth, m.lowered),
      fill: ink ?? 'bone',
      stroke: { ink: ink ?? 'faded', width: 1, ...(time.open || time.upTo ? { dash: [3, 2] } : {}) },
    });
  }
  if (hands === 0 && wait === 0)
    marks.push({
      kind: 'polyline',
      points: [
        [x, m.base],
        [x + inside, m.base],
      ],
      stroke: { ink: 'faded', width: 1, dash: [2, 3] },
    });
  return marks;
}

function flag(x: number, y: number, size: number, critical: boolean): Mark {
  const points: [number, number][] = [
    [x, y - size],
    [x + size, y],
    [x, y + size],
    [x - size, y],
  ];
  return critical
    ? { kind: 'polygon', points, fill: 'oxblood', stroke: { ink: 'paper', width: 1 } }
    : { kind: 'polygon', points, fill: 'paper', stroke: { ink: 'oxblood', width: 1.2 } };
}

function words(
  step: Step,
  index: number,
  time: StepTime,
  x: number,
  width: number,
  top: number,
  units: UnitSystem,
): { marks: Mark[]; bottom: number } {
  const size = 12;
  const leading = 15;
  const room = width - 8;
  const marks: Mark[] = [];
  let y = top;
  const put = (text: string, ink: Ink, weight: 'regular' | 'strong') => {
    marks.push({ kind: 'text', x, y, text, size, ink, weight });
    y += leading;
  };
  for (const line of fitText(`${index + 1} ${step.name}`, room, size * 1.06, 3)) put(line, 'ink', 'strong');
  for (const line of fitText(timeText(time), room, size, 2)) put(line, 'faded', 'regular');
  for (const limit of stepLimits(step, units)
    .filter((l) => l.critical)
    .slice(0, 2))
    for (const line of fitText(`◆ ${limit.text}`, room, size, 2)) put(line, 'oxblood', 'regular');
  return { marks, bottom: y };
}

const titleOf = (method: Method): string =>
  method.length === 0
    ? 'A method without steps'
    : `The method in ${method.length} steps, from ${method[0]!.name} to ${method.at(-1)!.name}`;

/** The ribbon of a method and where each step lies on it. */
export function methodRibbon(method: Method, options: RibbonOptions = {}): Ribbon {
  const small = options.small === true;
  const units = options.units ?? 'metric';
  const narrowest = options.narrowest ?? (small ? 8 : 68);
  const width = Math.max(options.width ?? 960, narrowest * method.length, 1);
  const m: Measures = small ? { base: 18, raised: 14, lowered: 9 } : { base: 40, raised: 26, lowered: 18 };
  const times = method.map(stepTime);
  const widths = ribbonWidths(times, width, narrowest);
  const marks: Mark[] = [
    {
      kind: 'polyline',
      points: [
        [0, m.base],
        [width, m.base],
      ],
      stroke: { ink: 'ink', width: small ? 0.75 : 1 },
    },
  ];
  const boxes: RibbonBox[] = [];
  let x = 0;
  let bottom = m.base + m.lowered + (small ? 3 : 6);
  method.forEach((step, i) => {
    const w = widths[i]!;
    marks.push(...blocks(step, times[i]!, x, w, m));
    const limits = stepLimits(step, units);
    if (limits.length > 0)
      marks.push(
        flag(
          x + Math.max(2, w - 3) - (small ? 4 : 8),
          m.base,
          small ? 3 : 5.5,
          limits.some((l) => l.critical),
        ),
      );
    if (!small) {
      const said = words(step, i, times[i]!, x, w, m.base + m.lowered + 20, units);
      marks.push(...said.marks);
      bottom = Math.max(bottom, said.bottom);
    }
    boxes.push({ stepId: step.id, x, width: w });
    x += w;
  });
  return {
    boxes,
    scene: {
      width,
      height: bottom,
      title: titleOf(method),
      marks,
      table: {
        head: ['Step', 'Kind', 'Hands', 'Time', 'Limits'],
        rows: method.map((step, i) => [
          `${i + 1} ${step.name}`,
          step.kind,
          `${step.handsMin} min`,
          timeText(times[i]!),
          stepLimits(step, units)
            .map((l) => `${l.what}: ${l.text}${l.critical ? ' (critical)' : ''}`)
            .join('; ') || 'none',
        ]),
      },
    },
  };
}

export const methodRibbonScene = (method: Method, options: RibbonOptions = {}): Scene =>
  methodRibbon(method, options).scene;
