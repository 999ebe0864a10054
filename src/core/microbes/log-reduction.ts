/** How far a log brings an organism down by its published D-values: between the temperatures they were measured at, and no further. */
import { OutOfRange } from '../errors.ts';
import type { HeatResistance } from '../properties/organisms-heat.ts';
import { type RateCurve, rateByTable } from './lethal-rate.ts';
import { stretchLethality } from './lethality.ts';
import { checkLog, type Log, stretches } from './log.ts';

/** Beyond so many decades no data reach: more is not told [log10]. */
export const mostReductions = 12;

export interface Reduction {
  /** Decades killed, at most `mostReductions` [log10]. */
  readonly log10: number;
  readonly capped: boolean;
  /** Temperatures between which D was measured [°C]: below nothing is counted, above the rate stays as at the highest. */
  readonly fromC: number;
  readonly toC: number;
}

/** Decades a second over temperature: straight in log D between measured values, nothing below, flat above. */
function decadesCurve(resistance: HeatResistance): RateCurve {
  return rateByTable(resistance.D, 1);
}

/**
 * Decades that a log takes off an organism [log10].
 *
 *     S = ∫ dt/D(T(t)), log D straight in temperature between the published values
 *
 * @param log seconds and °C of the point that got least, times rising
 * @param resistance published D-values with rising temperatures and falling times
 * @param gap readings further apart than this are a hole, across which the colder end counts [s]
 * Assumes log-linear death without shoulder or tail, cells as resistant as those measured, in such a food. Nothing is counted below
 * the lowest temperature measured, and above the highest no more than there. A slow warming up may make them more resistant.
 * Checked: one D at each published temperature takes off one decade.
 * @example logReduction([{ s: 0, C: 60 }, { s: 318, C: 60 }], { D: [{ C: 55, s: 1296 }, { C: 60, s: 318 }] }, 600).log10 // → 1
 * Source: bigelow-1921
 */
export function logReduction(log: Log, resistance: HeatResistance, gap: number): Reduction {
  checkLog(log);
  if (!(gap > 0)) throw new OutOfRange('gap', `${gap} s`, 'more than 0 s');
  const curve = decadesCurve(resistance);
  const sum = stretches(log, gap).reduce((total, { s1, s2, C1, C2, hole }) => {
    const lower = Math.min(C1, C2);
    return total + stretchLethality(curve, s2 - s1, hole ? lower : C1, hole ? lower : C2);
  }, 0);
  return {
    log10: Math.min(sum, mostReductions),
    capped: sum > mostReductions,
    fromC: resistance.D[0]!.C,
    toC: resistance.D.at(-1)!.C,
  };
}
