/** How old the animals of a lot may be, where they were born and raised, and what the law makes of it. */
import { z } from 'zod';
import type { Origin } from '../core/properties/parts-law.ts';
import type { Problem } from './problem.ts';
import { Text } from './quantities.ts';

/** The standing of a country for BSE by the list of the World Organisation for Animal Health. */
export const BseStanding = z.enum(['negligible', 'controlled', 'undetermined']);
export type BseStanding = z.infer<typeof BseStanding>;

/** As the papers say it; null where they do not. Nothing said is the full list of risk material. */
export const LotOrigin = z.strictObject({
  bornIn: Text(60).nullable(),
  raisedIn: Text(60).nullable(),
  bse: BseStanding.nullable(),
});
export type LotOrigin = z.infer<typeof LotOrigin>;

export interface LotPapers {
  readonly ageMonthsAtMost: number | null;
  readonly bse: string | null;
}

/** The oldest of the animals [months]; null as soon as the age of one is not shown. */
export const oldestOf = (ages: readonly (number | null)[]): number | null =>
  ages.length === 0 || ages.includes(null) ? null : Math.max(...(ages as number[]));

/** What the papers of several lots prove together: the oldest animal, and a negligible standing only where all have it. */
export const provenBy = (lots: readonly LotPapers[]): Origin => ({
  ageMonths: oldestOf(lots.map((l) => l.ageMonthsAtMost)),
  negligible: lots.length > 0 && lots.every((l) => l.bse === 'negligible'),
});

const worst: readonly (string | null)[] = [null, 'undetermined', 'controlled', 'negligible'];

/** The origin of what was cut of several lots: a country only where it is the same, the worst standing of all. */
export function jointOrigin(lots: readonly LotOrigin[]): LotOrigin {
  const same = (of: (l: LotOrigin) => string | null) => {
    const said = [...new Set(lots.map(of))];
    return said.length === 1 ? (said[0] ?? null) : null;
  };
  const bse = lots.map((l) => l.bse).sort((a, b) => worst.indexOf(a) - worst.indexOf(b))[0] ?? null;
  return { bornIn: same((l) => l.bornIn), raisedIn: same((l) => l.raisedIn), bse };
}

/** A negligible standing without the countries it is said of proves nothing. */
export function unprovenOrigins(
  lines: readonly { readonly origin?: LotOrigin | null | undefined }[],
): Problem[] {
  return lines.flatMap(({ origin }, i): Problem[] => {
    if (origin === undefined || origin === null || origin.bse !== 'negligible') return [];
    return (['bornIn', 'raisedIn'] as const)
      .filter((key) => origin[key] === null)
      .map((key) => ({
        path: `lines[${i}].origin.${key}`,
        found: 'nothing, beside a negligible BSE standing',
        allowed:
          'the country as the papers have it, or no standing: then the full list of risk material holds',
      }));
  });
}
