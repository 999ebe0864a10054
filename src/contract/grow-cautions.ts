/** What is told with growth and with its limits: what the answer rests on and what it leaves out. */
import { checkGrowthLimits, type FactorLimit } from '../core/microbes/growth-limits.ts';
import { formCorners } from '../core/microbes/growth-rate.ts';
import type { GrowthSet } from '../core/properties/organisms-growth.ts';

/** A log as the contract has it. */
type Readings = readonly { readonly min: number; readonly C: number }[];

/** What was asked, with the settings that were used. */
export interface Asked {
  readonly organism: string;
  readonly log: Readings;
  readonly h0: number;
  readonly maxLog10: number;
}

export const standing = [
  'This says how much one organism would grow by a published model. It says nothing of whether the food may be eaten: other organisms, toxins and what was there before are not in it.',
  'Advice, not a licence: your local authority and qualified people decide, and a laboratory can measure.',
];

const words: Record<FactorLimit['factor'], string> = {
  C: 'the temperature',
  pH: 'the pH',
  waterActivity: 'the water activity',
  waterPhaseSalt: 'the salt in the water phase',
};

/** Words for the factors that stop growth, each by itself. */
export const stoppedBy = (found: readonly FactorLimit[]) =>
  found.filter((limit) => !limit.growthPossible).map((limit) => words[limit.factor]);

export const stillAlive =
  'Where growth is not expected the organism may still live, and grow again when the food is warmed, thinned or mixed. The limits are those of the wettest and mildest foods studied; measure, do not guess, what they are compared with.';

/** Two readings further apart than this may hide a warm spell [min]. */
const longGap = 60;

/** Time that a log spends from `low` up to but not at `high` [min]. */
function minutesBetween(log: Readings, low: number, high: number): number {
  if (!(high > low)) return 0;
  return log.reduce((sum, b, i) => {
    const a = log[i - 1];
    if (a === undefined) return sum;
    const dt = b.min - a.min;
    if (a.C === b.C) return a.C >= low && a.C <= high ? sum + dt : sum;
    const [from, to] = [Math.min(a.C, b.C), Math.max(a.C, b.C)];
    const inside = Math.max(0, Math.min(to, high) - Math.max(from, low));
    return sum + (dt * inside) / (to - from);
  }, 0);
}

/** Longer than this where the set has no growth but the tables do is told [min]. */
const longBetween = 60;

function betweenCaution(log: Readings, set: GrowthSet, organism: string): string[] {
  const limit = checkGrowthLimits(organism, { C: 0 })[0];
  const corners = formCorners(set.temperature);
  if (limit === undefined || limit.low === null || limit.high === null) return [];
  const spent =
    minutesBetween(log, limit.low, corners[0]!) + minutesBetween(log, corners.at(-1)!, limit.high);
  if (!(spent > longBetween)) return [];
  return [
    `${Math.round(spent)} min of the log lie where this set has no growth (to ${corners[0]} and from ${corners.at(-1)} °C) but growth has been reported (${limit.low} to ${limit.high} °C): that growth is not in this answer.`,
  ];
}

function withoutEffect(set: GrowthSet): string[] {
  const factors = [
    ...(set.effect?.pH === undefined ? ['pH'] : []),
    ...(set.effect === undefined ? ['water activity'] : []),
  ];
  if (factors.length === 0) return [];
  return [
    `What ${factors.join(' and ')} would take off the rate was not published with this set: it counts only where it stops growth.`,
  ];
}

/** Everything that must be read with an answer of `grow`; what weighs most comes first. */
export function growCautions(
  asked: Asked,
  set: GrowthSet,
  found: readonly FactorLimit[],
  end: number,
): string[] {
  const { log } = asked;
  const corners = formCorners(set.temperature);
  const hottest = log.reduce((most, { C }) => Math.max(most, C), Number.NEGATIVE_INFINITY);
  const gap = log.reduce((most, { min }, i) => (i === 0 ? 0 : Math.max(most, min - log[i - 1]!.min)), 0);
  const stopped = stoppedBy(found);
  return [
    ...(stopped.length > 0 ? [`No growth because of ${stopped.join(' and ')} alone. ${stillAlive}`] : []),
    ...(stopped.length === 0 ? withoutEffect(set) : []),
    ...(hottest >= corners.at(-1)!
      ? [`No death is counted: above ${corners.at(-1)} °C the number only stands still.`]
      : []),
    ...betweenCaution(log, set, asked.organism),
    ...(gap > longGap
      ? [
          `Readings lie up to ${Math.round(gap)} min apart; between them a straight line is assumed, and a warm spell would not be seen.`,
        ]
      : []),
    ...(asked.maxLog10 - end < 0.5 ? ['At the end the number is close to the most there can be.'] : []),
    ...(asked.h0 > 0
      ? [
          `The lag (h0 ${asked.h0}) decides most of this answer, and an hour of lag more or less changes it greatly: see growth without it (log10IncreaseWithoutLag).`,
        ]
      : []),
    'The log must be of the place that stays warm longest; elsewhere less has grown.',
    ...set.cautions,
    ...standing,
  ];
}
