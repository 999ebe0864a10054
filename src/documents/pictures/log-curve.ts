/** A measured core log over the limits it is held to, with the reading that decides marked: for paper and screen. */
import type { Judgement, ProbeLog } from '../../contract/records.ts';
import type { Rule } from '../../core/properties/rule.ts';
import { findRule } from '../../core/properties/rules.ts';
import { spread, thinned } from './curves.ts';
import { degrees, toUnit } from './cut-through.ts';
import { type LengthUnits, niceStep } from './piece-layout.ts';
import type { Point } from './piece-section.ts';
import type { Ink, Mark, Scene } from './scene.ts';

export interface LogCurveOptions {
  readonly width: number;
  readonly height?: number;
  readonly units?: LengthUnits;
}

type DrawnLog = Pick<ProbeLog, 'name' | 'points' | 'judgements'>;

interface Level {
  readonly C: number;
  readonly words: string;
}

/** The temperatures a rule speaks of, as lines to be drawn. */
function levelsOf(rule: Rule, units: LengthUnits): Level[] {
  const at = (C: number) => degrees(C, units).replace('.0 ', ' ');
  switch (rule.kind) {
    case 'lethality':
      return [{ C: rule.referenceC, words: `${at(rule.referenceC)}: ${rule.s / 60} min` }];
    case 'hold': {
      const row = rule.rows.at(-1);
      return row === undefined ? [] : [{ C: row.C, words: at(row.C) }];
    }
    case 'cooling':
      return rule.limbs.flatMap((limb) => [
        { C: limb.fromC, words: `from ${at(limb.fromC)}` },
        {
          C: limb.toC,
          words: limb.s === null ? `to ${at(limb.toC)}` : `to ${at(limb.toC)}: ${limb.s / 60} min`,
        },
      ]);
    case 'keep':
      return [{ C: rule.C, words: `${rule.side} ${at(rule.C)}` }];
    case 'freeze': {
      const row = rule.rows[0];
      return row === undefined ? [] : [{ C: row.C, words: at(row.C) }];
    }
    case 'come-up':
      return [
        { C: rule.lowC, words: at(rule.lowC) },
        { C: rule.highC, words: at(rule.highC) },
      ];
  }
}

/** Temperature of the log at a time, straight between its readings. */
function logAt(points: DrawnLog['points'], s: number): number | null {
  const next = points.findIndex((p) => p.s >= s - 1e-9);
  const b = points[next];
  if (b === undefined) return null;
  const a = points[next - 1];
  if (a === undefined) return b.C;
  return a.C + ((b.C - a.C) * (s - a.s)) / (b.s - a.s);
}

const text = (
  x: number,
  y: number,
  words: string,
  ink: Ink,
  anchor: 'start' | 'middle' | 'end' = 'start',
): Mark => ({
  kind: 'text',
  x,
  y,
  text: words,
  size: 12,
  ink,
  anchor,
});

/** Rings round what decides: filled for what holds, a square for what does not, so that no colour is needed. */
function decidingMarks(
  j: Judgement,
  log: DrawnLog,
  x: (s: number) => number,
  y: (C: number) => number,
  right: number,
  bottom: number,
): Mark[] {
  const minute = j.passes === true ? j.decidingMin : (j.failedAtMin ?? j.decidingMin);
  if (minute === null) return [];
  const C = logAt(log.points, minute * 60);
  if (C === null) return [];
  const [px, py] = [x(minute * 60), y(C)];
  const ink = j.passes === true ? 'herb' : 'rust';
  const words =
    j.passes === true ? 'decides: holds' : j.passes === false ? 'decides: does not hold' : 'undecided here';
  // To the right where there is room, or to the left; above the curve's tail where the axis would be in the way.
  const near = px + 9 + words.length * 6 > right;
  const low = py > bottom - 30;
  const beside = low ? py - (near ? 22 : 8) : py + 16;
  const shape: Mark =
    j.passes === true
      ? { kind: 'circle', x: px, y: py, r: 4.5, fill: 'paper', stroke: { ink, width: 2 } }
      : {
          kind: 'polygon',
          points: [
            [px - 5, py - 5],
            [px + 5, py - 5],
            [px + 5, py + 5],
            [px - 5, py + 5],
          ],
          fill: 'paper',
          stroke: { ink, width: 2 },
        };
  return [shape, text(near ? px - 9 : px + 9, beside, words, ink, near ? 'end' : 'start')];
}

/** The log as a scene. `judgements` of rules that the book no longer holds are drawn without their lines. */
export function logCurveScene(log: DrawnLog, options: LogCurveOptions): Scene {
  const units = options.units ?? 'metric';
  const height = options.height ?? 220;
  const levels = log.judgements.flatMap((j) => {
    const rule = findRule(j.rule);
    return rule === undefined ? [] : levelsOf(rule, units);
  });
  const temperatures = [...log.points.map((p) => p.C), ...levels.map((l) => l.C)];
  const low = Math.floor(Math.min(...temperatures, 0) / 10) * 10;
  const high = Math.max(low + 10, Math.ceil(Math.max(...temperatures, 0) / 10) * 10);
  const first = log.points[0]?.s ?? 0;
  const last = Math.max(first + 60, log.points.at(-1)?.s ?? 0);
  const [left, right, top, bottom] = [40, options.width - 96, 12, height - 26];
  const x = (s: number) => left + ((right - left) * (s - first)) / (last - first);
  const y = (C: number) => bottom - ((bottom - top) * (C - low)) / (high - low);
  const marks: Mark[] = [];

  const [from, to] = [toUnit(low, units), toUnit(high, units)];
  const step = niceStep(((to - from) * 26) / (bottom - top));
  for (let v = Math.ceil(from / step) * step; v <= to + 1e-9; v += step) {
    const py = y(units === 'US' ? (v - 32) / 1.8 : v);
    marks.push({
      kind: 'polyline',
      points: [
        [left, py],
        [right, py],
      ],
      stroke: { ink: 'bone', width: 0.8 },
    });
    marks.push(text(left - 5, py + 4, `${Math.round(v)}°`, 'faded', 'end'));
  }
  marks.push(text(left + 5, top + 14, units === 'US' ? '°F' : '°C', 'faded', 'start'));
  const minutes = (last - first) / 60;
  const every = niceStep(Math.max(1, (minutes * 44) / (right - left)));
  marks.push({
    kind: 'polyline',
    points: [
      [left, bottom],
      [right, bottom],
    ],
    stroke: { ink: 'ink', width: 1 },
  });
  for (let m = 0; m <= minutes + 1e-9; m += every) {
    const px = x(first + m * 60);
    marks.push({
      kind: 'polyline',
      points: [
        [px, bottom],
        [px, bottom + 4],
      ],
      stroke: { ink: 'ink', width: 1 },
    });
    marks.push(text(px, bottom + 18, m === 0 ? '0 min' : String(m), 'ink', 'middle'));
  }

  const seen = levels.filter((l, i) => levels.findIndex((k) => k.C === l.C && k.words === l.words) === i);
  const labels = spread(
    seen.map((l) => y(l.C) + 4),
    14,
    top + 8,
    bottom + 2,
  );
  seen.forEach((level, i) => {
    const py = y(level.C);
    marks.push({
      kind: 'polyline',
      points: [
        [left, py],
        [right, py],
      ],
      stroke: { ink: 'rust', width: 1, dash: [5, 3] },
    });
    marks.push(text(right + 6, labels[i]!, level.words, 'rust'));
  });
  const line = thinned(log.points.map((p): Point => [x(p.s), y(p.C)]));
  if (line.length > 1) marks.push({ kind: 'polyline', points: line, stroke: { ink: 'ink', width: 1.8 } });
  for (const j of log.judgements) marks.push(...decidingMarks(j, log, x, y, right, bottom));

  return {
    width: options.width,
    height,
    title: `${log.name}: measured temperature against time, over its limits`,
    marks,
    table: {
      head: ['Rule', 'Holds', 'Value', 'Limit', 'Decided at, min'],
      rows: log.judgements.map((j) => [
        j.title,
        j.passes === null ? 'undecided' : j.passes ? 'yes' : 'no',
        j.value === null ? '' : `${j.value} ${j.unit}`,
        j.limit === null ? '' : `${j.limit} ${j.unit}`,
        j.decidingMin === null ? '' : String(j.decidingMin),
      ]),
    },
  };
}
