/** Numbers and times as they are printed: the kitchen's units, its own clock, a sensible number of figures. */
import type { Kitchen } from '../contract/records.ts';

export type Units = Kitchen['units'];

/** No line ends between a number and its unit. */
const nbsp = '\u00a0';

/** The same for what people have typed: `170 °C`, `12 min`. */
export const tied = (text: string): string =>
  text.replace(/(\d) (?=(?:°[CF]|%|k?g|mm|cm|ml|l|min|h|lb|oz|in)(?![A-Za-z]))/g, `$1${nbsp}`);

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** A number with at most so many decimals, no trailing zeros, a true minus sign, thin spaces between thousands. */
export function number(value: number, decimals = 0): string {
  const [whole = '0', rest] = Math.abs(value).toFixed(decimals).split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, nbsp) : whole;
  const fraction = (rest ?? '').replace(/0+$/, '');
  const text = fraction === '' ? grouped : `${grouped}.${fraction}`;
  return value < 0 && Number(text.replace(/\s/g, '')) !== 0 ? `−${text}` : text;
}

/** A limit of temperature; decimals enough that the limit itself is not rounded away. */
export function temperature(C: number, units: Units, decimals = 1): string {
  return units === 'US' ? `${number(C * 1.8 + 32, decimals)}${nbsp}°F` : `${number(C, decimals)}${nbsp}°C`;
}

export function weight(g: number, units: Units): string {
  if (units === 'metric')
    return g >= 10_000 ? `${number(g / 1000, 2)}${nbsp}kg` : `${number(g, g < 100 ? 1 : 0)}${nbsp}g`;
  const ounces = g / 28.349523125;
  if (ounces < 16) return `${number(ounces, ounces < 1 ? 2 : 1)}${nbsp}oz`;
  const tenths = Math.round(ounces * 10);
  return `${number(Math.floor(tenths / 160))}${nbsp}lb ${number((tenths % 160) / 10, 1)}${nbsp}oz`;
}

export function length(mm: number, units: Units): string {
  return units === 'US' ? `${number(mm / 25.4, 2)}${nbsp}in` : `${number(mm, mm < 10 ? 1 : 0)}${nbsp}mm`;
}

/** Minutes as a person says them: 45 min, 1 h 20 min, 3 days. */
export function duration(minutes: number): string {
  if (minutes < 10 && minutes !== Math.round(minutes)) return `${number(minutes, 1)}${nbsp}min`;
  const whole = Math.round(minutes);
  if (whole < 100) return `${whole}${nbsp}min`;
  if (whole >= 2_880 && whole % 1_440 === 0) return `${whole / 1_440} days`;
  const hours = Math.floor(whole / 60);
  return whole % 60 === 0 ? `${hours}${nbsp}h` : `${hours}${nbsp}h ${whole % 60}${nbsp}min`;
}

/** Lethality had, in minutes at the reference: rounded down, and no precise figure far beyond what is needed. */
export function worth(minutes: number, needed = 0): string {
  if (!(minutes >= 0)) return 'an unknown time';
  const far = 100 * Math.max(1, Math.ceil(needed / 10));
  if (minutes > far) return `over ${number(far)}${nbsp}min`;
  if (minutes < 0.01) return 'next to nothing';
  const digits = minutes >= 10 ? 0 : minutes >= 1 ? 1 : 2;
  return `${(Math.floor(minutes * 10 ** digits) / 10 ** digits).toFixed(digits)}${nbsp}min`;
}

function clockParts(instant: string, zone: string) {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).formatToParts(new Date(instant));
  const part = (type: Intl.DateTimeFormatPartTypes) => Number(parts.find((p) => p.type === type)?.value);
  const two = (n: number) => String(n).padStart(2, '0');
  return {
    day: `${part('day')} ${months[part('month') - 1]} ${part('year')}`,
    clock: `${two(part('hour'))}:${two(part('minute'))}`,
  };
}

/** `25 Nov 2026, 14:10` on the kitchen's clock. */
export function moment(instant: string, zone: string): string {
  const { day, clock } = clockParts(instant, zone);
  return `${day}, ${clock}`;
}

export const day = (instant: string, zone: string): string => clockParts(instant, zone).day;

/** The clock alone where the day is that of another instant; `26 Nov, 08:30` in the same year; else the whole moment. */
export function momentAfter(instant: string, start: string, zone: string): string {
  const here = clockParts(instant, zone);
  const there = clockParts(start, zone);
  if (here.day === there.day) return here.clock;
  const sameYear = here.day.slice(-4) === there.day.slice(-4);
  return `${sameYear ? here.day.slice(0, -5) : here.day}, ${here.clock}`;
}
