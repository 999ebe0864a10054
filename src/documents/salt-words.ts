/** Salt and its hours in words, rounded so that nothing looks saltier, drier or sooner than it is. */
import type { Span } from '../core/salt/foresee.ts';
import { saltWaterActivity } from '../core/salt/water-activity.ts';
import { plainNumber } from '../core/units.ts';

/** Salt, rounded down to a hundredth of a per cent. */
export const saltWords = (share: number): string =>
  `${plainNumber(Math.floor(share * 1e4 + 1e-9) / 100, 2)} %`;

/** Water activity by salt alone, rounded up to a thousandth. */
export const activityWords = (waterPhase: number): string =>
  (Math.ceil(saltWaterActivity(Math.min(waterPhase, 0.2655)) * 1000 - 1e-9) / 1000).toFixed(3);

/** A time that is needed, rounded up: minutes, hours, days. */
export function neededWords(s: number): string {
  const up = (x: number, digits: number) =>
    plainNumber(Math.ceil(x * 10 ** digits - 1e-9) / 10 ** digits, digits);
  if (s < 2 * 3600) return `${up(s / 60, 0)} min`;
  if (s < 10 * 3600) return `${up(s / 3600, 1)} h`;
  if (s < 96 * 3600) return `${up(s / 3600, 0)} h`;
  return `${up(s / 86_400, s < 10 * 86_400 ? 1 : 0)} days`;
}

/** `31 h (20 to 52 h)`. */
export function spanWords({ usual, quickest, slowest }: Span): string {
  if (usual === null) return 'never, as it stands';
  const [low, high] = [quickest, slowest];
  if (low === null && high === null) return neededWords(usual);
  return `${neededWords(usual)} (${low === null ? 'less' : neededWords(low)} to ${high === null ? 'much longer' : neededWords(high)})`;
}

const places: readonly (readonly [RegExp, string])[] = [
  [/skin\.thickness$/, 'The skin'],
  [/piece\.size$/, 'The piece, across'],
  [/piece\.water$/, 'Water in the meat'],
  [/medium\.salt$/, 'The brine’s strength'],
  [/medium\.mass$/, 'The brine’s weight'],
  [/temperature$/, 'The temperature'],
  [/time$/, 'The hours'],
  [/^wanted/, 'The salt wanted'],
];

/** A number with its unit as the engine says it, in a kitchen's own. */
const inKitchenUnits = (words: string, path: string): string =>
  /(skin\.thickness|piece\.size)$/.test(path)
    ? words.replaceAll(/(\d[\d.e-]*)( to (\d[\d.e-]*))? m\b/g, (_, a: string, __, b?: string) =>
        [a, b]
          .flatMap((n) => (n === undefined ? [] : [plainNumber(Number(n) * 1000, 2)]))
          .join(' to ')
          .concat(' mm'),
      )
    : /(medium\.salt|piece\.water|wanted)$/.test(path)
      ? words.replaceAll(/\b0?\.\d+|\b0\b(?! °)/g, (n) => `${plainNumber(Number(n) * 100, 2)} %`)
      : words;

/** Why the engine would not reckon it: what, found, allowed. */
export function cureFaultWords(fault: {
  readonly message: string;
  readonly path?: string;
  readonly found?: string;
  readonly allowed?: string;
}): string {
  const { path, found, allowed, message } = fault;
  if (path === undefined || found === undefined || allowed === undefined) return message;
  const where = places.find(([pattern]) => pattern.test(path))?.[1] ?? path;
  return `${where}: ${inKitchenUnits(found, path)}. Allowed: ${inKitchenUnits(allowed, path)}.`;
}
