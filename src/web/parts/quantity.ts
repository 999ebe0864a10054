/** From the unit in which the contract holds a number to what a field shows and takes; pure. */
import {
  inUnit,
  parseQuantity,
  plainNumber,
  type QuantityKind,
  toBase,
  type UnitSystem,
  usualUnit,
} from '../../core/units.ts';

/** The unit in which a field's value is held. Any other text is a label beside a plain number. */
export type HeldUnit = 'g' | '°C' | 'mm' | 'µm' | 's' | 'min' | 'h' | 'days' | '%' | (string & {});

interface Held {
  readonly kind: QuantityKind;
  /** The unit's name in core/units. */
  readonly unit: string;
  /** Follows the kitchen's units: °C shows as °F in a US kitchen, µm stays µm. */
  readonly follows: boolean;
  readonly decimals: number;
}

const held: Record<string, Held> = {
  g: { kind: 'mass', unit: 'g', follows: true, decimals: 1 },
  '°C': { kind: 'temperature', unit: '°C', follows: true, decimals: 1 },
  mm: { kind: 'length', unit: 'mm', follows: true, decimals: 1 },
  µm: { kind: 'length', unit: 'µm', follows: false, decimals: 1 },
  s: { kind: 'time', unit: 's', follows: false, decimals: 0 },
  min: { kind: 'time', unit: 'min', follows: false, decimals: 1 },
  h: { kind: 'time', unit: 'h', follows: false, decimals: 2 },
  days: { kind: 'time', unit: 'd', follows: false, decimals: 2 },
  '%': { kind: 'share', unit: '%', follows: false, decimals: 2 },
};

const asHeld = (unit: HeldUnit): Held =>
  held[unit] ?? { kind: 'number', unit: '', follows: false, decimals: 3 };

const shownIn = (h: Held, system: UnitSystem): string => (h.follows ? usualUnit(h.kind, system) : h.unit);

/** The unit written beside the field. */
export function unitLabel(unit: HeldUnit, system: UnitSystem): string {
  const h = asHeld(unit);
  if (h.kind === 'number') return unit;
  const shown = shownIn(h, system);
  return shown === 'd' ? 'days' : shown;
}

/** The number written in the field. */
export function showNumber(value: number | null, unit: HeldUnit, system: UnitSystem): string {
  if (value === null || !Number.isFinite(value)) return '';
  const h = asHeld(unit);
  const shown = inUnit(toBase(value, h.kind, h.unit), h.kind, shownIn(h, system));
  const decimals = h.follows && system === 'US' && h.kind !== 'temperature' ? 2 : h.decimals;
  return plainNumber(shown, decimals);
}

/** A number with its unit, for reading: `63 °C`, `145.4 °F`. */
export function showQuantity(value: number, unit: HeldUnit, system: UnitSystem): string {
  const label = unitLabel(unit, system);
  return label === '' ? showNumber(value, unit, system) : `${showNumber(value, unit, system)} ${label}`;
}

export interface Bounds {
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

export type ReadNumber =
  | { readonly ok: true; readonly value: number; readonly stated: boolean }
  | { readonly ok: false; readonly message: string };

/** What was typed, in the held unit, within its bounds; or what is wrong and what is allowed. */
export function readNumber(
  text: string,
  unit: HeldUnit,
  system: UnitSystem,
  { low, high }: Bounds = {},
): ReadNumber {
  const h = asHeld(unit);
  const label = unitLabel(unit, system);
  // "2.5 pieces", "1000 W/(m² K)": the label itself may be typed after a plain number.
  const bare =
    h.kind === 'number' && label !== '' && text.trim().endsWith(label)
      ? text.trim().slice(0, -label.length)
      : text;
  const parsed = parseQuantity(bare, h.kind, shownIn(h, system));
  if (!parsed.ok) return { ok: false, message: parsed.message };
  const value = h.kind === 'number' ? parsed.value : inUnit(parsed.value, h.kind, h.unit);
  const rounding = 1e-9 * Math.max(1, Math.abs(value));
  if (low !== undefined && value < low - rounding)
    return { ok: false, message: `at least ${showQuantity(low, unit, system)}` };
  if (high !== undefined && value > high + rounding)
    return { ok: false, message: `at most ${showQuantity(high, unit, system)}` };
  return { ok: true, value, stated: parsed.stated };
}

export interface Doubt {
  readonly ask: string;
  /** What it may have been instead. */
  readonly instead: { readonly label: string; readonly value: number };
}

/**
 * A temperature typed without its unit that is only likely on the other scale: asked, never assumed.
 * `likely`: the temperatures [°C] that make sense here.
 */
export function doubtTemperature(
  value: number,
  stated: boolean,
  likely: { low: number; high: number },
): Doubt | null {
  if (stated || (value >= likely.low && value <= likely.high)) return null;
  const asFahrenheit = inUnit(value, 'temperature', '°C') * (5 / 9) - 160 / 9;
  if (asFahrenheit < likely.low || asFahrenheit > likely.high) return null;
  return {
    ask: `${plainNumber(value, 1)} °C is unlikely here. Did you mean °F?`,
    instead: {
      label: `${plainNumber(value, 1)} °F, which is ${plainNumber(asFahrenheit, 1)} °C`,
      value: asFahrenheit,
    },
  };
}
