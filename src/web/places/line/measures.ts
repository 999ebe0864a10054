/** The units on the pad's keys, and how a value and its limit are said. Values are kept in g, °C, min and pieces. */
import type { Kitchen } from '../../../contract/records.ts';
import type { Ask, Step } from '../../../contract/steps.ts';
import { toBase as baseOf, inUnit, type QuantityKind } from '../../../core/units.ts';

export type Unit = 'g' | 'kg' | 'oz' | 'lb' | '°C' | '°F' | 'min' | 'h' | 'pieces';
export type Units = Kitchen['units'];
/** What an ask measures; a core log is read as temperatures. */
export type Measure = 'weight' | 'temperature' | 'duration' | 'count';

const kinds: Record<Unit, QuantityKind> = {
  g: 'mass',
  kg: 'mass',
  oz: 'mass',
  lb: 'mass',
  '°C': 'temperature',
  '°F': 'temperature',
  min: 'time',
  h: 'time',
  pieces: 'number',
};

const spelled = (unit: Unit): string => (unit === 'pieces' ? '' : unit);
/** Ten millionths are no reading: 12 figures keep 41 °F at 5 °C. */
const tidy = (n: number): number => Number(n.toPrecision(12));

export const toBase = (n: number, unit: Unit): number => tidy(baseOf(n, kinds[unit], spelled(unit)));
export const fromBase = (value: number, unit: Unit): number =>
  tidy(inUnit(value, kinds[unit], spelled(unit)));

export function measureOf(kind: Ask['kind']): Measure | null {
  if (kind === 'core log') return 'temperature';
  return kind === 'tick' || kind === 'note' ? null : kind;
}

/** The units that the pad offers, the likeliest first: the kitchen's own system, and big units for big limits. */
export function unitsFor(measure: Measure, units: Units, limit: number | undefined): Unit[] {
  if (measure === 'count') return ['pieces'];
  if (measure === 'temperature') return units === 'US' ? ['°F', '°C'] : ['°C', '°F'];
  if (measure === 'duration') return limit !== undefined && limit >= 300 ? ['h', 'min'] : ['min', 'h'];
  const big = limit !== undefined && limit >= 2_000;
  if (units === 'US') return big ? ['lb', 'oz', 'g'] : ['oz', 'lb', 'g'];
  return big ? ['kg', 'g'] : ['g', 'kg'];
}

/** Decimals worth showing: 71.4 °C, 1.245 kg, 430 g. */
const decimals: Record<Unit, number> = {
  g: 1,
  kg: 3,
  oz: 2,
  lb: 3,
  '°C': 1,
  '°F': 1,
  min: 1,
  h: 2,
  pieces: 0,
};

export function say(value: number, unit: Unit): string {
  const n = fromBase(value, unit);
  const shown = Number(n.toFixed(decimals[unit]));
  const text = String(Object.is(shown, -0) ? 0 : shown).replace('-', '−');
  if (unit === 'pieces') return `${text} ${shown === 1 ? 'piece' : 'pieces'}`;
  return `${text} ${unit}`;
}

/** The unit a value reads best in. */
export function naturalUnit(measure: Measure, units: Units, value: number): Unit {
  if (measure === 'weight') {
    if (units === 'US') return Math.abs(fromBase(value, 'lb')) >= 1 ? 'lb' : 'oz';
    return Math.abs(value) >= 2_000 ? 'kg' : 'g';
  }
  if (measure === 'duration') return Math.abs(value) >= 300 ? 'h' : 'min';
  if (measure === 'count') return 'pieces';
  return units === 'US' ? '°F' : '°C';
}

export function sayNaturally(measure: Measure, units: Units, value: number): string {
  return say(value, naturalUnit(measure, units, value));
}

/** A reading out of its limit is never rounded until it looks as if it were in. */
export function sayReading(ask: Ask, units: Units, value: number): string {
  const measure = measureOf(ask.kind);
  if (measure === null) return '';
  const unit = naturalUnit(measure, units, value);
  const shown = say(value, unit);
  const limits = [ask.low, ask.high].filter((l) => l !== undefined && l !== value);
  return limits.some((l) => say(l as number, unit) === shown)
    ? `${minus(fromBase(value, unit), 3)} ${unit}`
    : shown;
}

const minus = (n: number, figures: number): string => String(Number(n.toFixed(figures))).replace('-', '−');

/** The limit in words, or null where the method sets none. */
export function limitWords(ask: Ask, units: Units): string | null {
  const measure = measureOf(ask.kind);
  if (measure === null || (ask.low === undefined && ask.high === undefined)) return null;
  const word = (v: number) => sayNaturally(measure, units, v);
  if (ask.low !== undefined && ask.high !== undefined) {
    return ask.low === ask.high ? `exactly ${word(ask.low)}` : `${word(ask.low)} to ${word(ask.high)}`;
  }
  return ask.low !== undefined ? `at least ${word(ask.low)}` : `at most ${word(ask.high as number)}`;
}

/** What the step itself says a weight or a number of pieces should be near, where the ask sets no limit. */
export function expectedOf(step: Step, ask: Ask, pieces: number): number | null {
  if (ask.low !== undefined && ask.high !== undefined) return (ask.low + ask.high) / 2;
  if (ask.kind === 'count') return pieces;
  if (ask.kind === 'weight' && step.kind === 'fill') return step.gramsPerPiece;
  if (ask.kind === 'weight' && step.kind === 'trim') return step.weightG;
  if (ask.kind === 'weight' && step.kind === 'mix')
    return step.lines.reduce((sum, l) => sum + l.g, 0) || null;
  return null;
}
