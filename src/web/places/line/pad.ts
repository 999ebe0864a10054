/**
 * The number pad: a text made of keys, its arithmetic, and the one question it asks when a value cannot well be meant. It
 * asks, it never changes what was typed: a true reading that looks odd is kept with the second press.
 */
import type { Ask } from '../../../contract/steps.ts';
import { parseQuantity } from '../../../core/units.ts';
import { type Measure, measureOf, say, toBase, type Unit } from './measures.ts';

export type Key =
  | '0'
  | '1'
  | '2'
  | '3'
  | '4'
  | '5'
  | '6'
  | '7'
  | '8'
  | '9'
  | '.'
  | '+'
  | '−'
  | '×'
  | '÷'
  | '⌫';

const digit = /^[0-9]$/;
const operator = /^[+−×÷]$/;
const longest = 40;

/** The text after one more key. A key that makes no sense there does nothing. */
export function press(text: string, key: Key): string {
  if (key === '⌫') return text.slice(0, -1);
  if (text.length >= longest) return text;
  const last = text.at(-1) ?? '';
  if (digit.test(key)) {
    const started = /(^|[^0-9.])0$/.test(text);
    return started ? text.slice(0, -1) + key : text + key;
  }
  if (key === '.') {
    if (/\.[0-9]*$/.test(text)) return text;
    return digit.test(last) ? `${text}.` : `${text}0.`;
  }
  if (key === '−' && (last === '' || last === '×' || last === '÷')) return `${text}−`;
  if (last === '' || text === '−') return text;
  return operator.test(last) ? text.replace(/[+−×÷]+$/, key) : text.replace(/\.$/, '') + key;
}

/** From a keyboard: what a key there means on the pad, or null. */
export function keyOfKeyboard(key: string): Key | null {
  if (digit.test(key) || key === '+') return key as Key;
  if (key === ',' || key === '.' || key === 'Decimal') return '.';
  if (key === '-' || key === '−') return '−';
  if (key === '*' || key === 'x' || key === '×') return '×';
  if (key === '/' || key === '÷') return '÷';
  return key === 'Backspace' ? '⌫' : null;
}

export const isSum = (text: string): boolean => /[0-9.][+−×÷]/.test(text);

/** What the text comes to: × and ÷ before + and −; null while it is unfinished or cannot be worked out. */
export function total(text: string): number | null {
  const parsed = parseQuantity(text.replace(/\.$/, ''), 'number');
  return parsed.ok && Number.isFinite(parsed.value) ? Number(parsed.value.toPrecision(12)) : null;
}

/** Why a number cannot be a reading at all; null when it can. */
export function impossible(measure: Measure, n: number, unit: Unit): string | null {
  const value = toBase(n, unit);
  if (measure === 'temperature') return value < -273.15 ? 'Nothing is that cold.' : null;
  if (value < 0)
    return measure === 'duration' ? 'A time cannot be below nothing.' : 'Below nothing: check the sign.';
  if (measure === 'count' && !Number.isInteger(value)) return 'Whole pieces only.';
  return Math.abs(value) > 1e9 ? 'Too large to be recorded.' : null;
}

export interface Alternative {
  readonly label: string;
  readonly n: number;
  readonly unit: Unit;
}

export interface Doubt {
  readonly question: string;
  /** What may have been meant instead; keeping what was typed is always one of the answers. */
  readonly instead: readonly Alternative[];
}

/** Own assumptions of what a kitchen's probe can meet: food at atmospheric pressure, a freezer, an oven. */
const band = (ask: Ask) => (ask.kind === 'core log' ? { low: -5, high: 105 } : { low: -45, high: 260 });
/** Further than this from the limit [°C] is asked about once. */
const farC = 25;
/** More than this many times too much or too little is asked about once. */
const farTimes = 5;

const outside = (ask: Pick<Ask, 'low' | 'high'>, v: number): number =>
  Math.max(0, (ask.low ?? Number.NEGATIVE_INFINITY) - v, v - (ask.high ?? Number.POSITIVE_INFINITY));

/**
 * The question to ask before a value is kept, or null.
 * @param expected what the step says it should be near, in the ask's unit; null where it says nothing
 */
export function doubtOf(ask: Ask, n: number, unit: Unit, expected: number | null): Doubt | null {
  const measure = measureOf(ask.kind);
  if (measure === null) return null;
  return measure === 'temperature' ? doubtHeat(ask, n, unit) : doubtAmount(ask, measure, n, unit, expected);
}

function doubtHeat(ask: Ask, n: number, unit: Unit): Doubt | null {
  const value = toBase(n, unit);
  const may = band(ask);
  // A core on its way up or down is far from its limit by nature.
  const limit: Pick<Ask, 'low' | 'high'> = ask.kind === 'core log' ? {} : ask;
  const off = outside(limit, value);
  const hard = value < may.low || value > may.high;
  const frozen =
    limit.low === undefined && limit.high !== undefined && limit.high >= 0 && limit.high <= 15 && value < -3;
  if (!hard && off <= farC && !frozen) return null;
  const other: Unit = unit === '°C' ? '°F' : '°C';
  const options: Alternative[] = [
    { n, unit: other, label: '' },
    { n: n / 10, unit, label: '' },
  ];
  const instead = options
    .filter((o) => {
      const v = toBase(o.n, o.unit);
      if (v < may.low || v > may.high) return false;
      return frozen ? v >= -3 : hard || outside(limit, v) < off;
    })
    .map((o) => ({ ...o, label: labelOf(o.n, o.unit, unit) }));
  const why = hard
    ? 'A probe in a kitchen does not often show that.'
    : frozen
      ? 'That is frozen.'
      : 'That is a long way from the limit.';
  return { question: `${say(value, unit)}? ${why}`, instead };
}

function doubtAmount(
  ask: Ask,
  measure: Measure,
  n: number,
  unit: Unit,
  expected: number | null,
): Doubt | null {
  const value = toBase(n, unit);
  const low = ask.low ?? expected ?? undefined;
  const high = ask.high ?? expected ?? undefined;
  const tooMuch = high !== undefined && high > 0 && value > high * farTimes;
  const tooLittle = low !== undefined && low > 0 && value < low / farTimes;
  const absurd =
    measure === 'weight' ? value > 500_000 : measure === 'duration' ? value > 43_200 : value > 10_000;
  const nothing = value === 0 && measure !== 'count' && low === undefined;
  if (!tooMuch && !tooLittle && !absurd && !nothing) return null;
  const near = (v: number) =>
    v > 0 && (high === undefined || v <= high * 1.5) && (low === undefined || v >= low / 1.5);
  const others: Record<Unit, readonly Unit[]> = {
    g: ['kg'],
    kg: ['g'],
    oz: ['lb', 'g'],
    lb: ['oz', 'g'],
    min: ['h'],
    h: ['min'],
    '°C': [],
    '°F': [],
    pieces: [],
  };
  const options = [
    ...others[unit].map((u) => ({ n, unit: u })),
    ...[n / 10, n * 10].map((m) => ({ n: Number(m.toPrecision(12)), unit })),
  ];
  const known = low !== undefined || high !== undefined;
  const instead = options
    .filter((o) => known && near(toBase(o.n, o.unit)) && impossible(measure, o.n, o.unit) === null)
    .map((o) => ({ ...o, label: labelOf(o.n, o.unit, o.unit) }));
  const why = nothing ? 'That is nothing.' : tooLittle ? 'That is far too little.' : 'That is far too much.';
  return { question: `${say(value, unit)}? ${why}`, instead };
}

/** "165 °F (73.9 °C)" where the unit changes, else plainly. */
function labelOf(n: number, unit: Unit, typed: Unit): string {
  const value = toBase(n, unit);
  return unit === typed ? say(value, unit) : `${say(value, unit)} (${say(value, typed)})`;
}
