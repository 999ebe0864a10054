/** Which readings of a log a fit uses: those within the programme, and of a long log the means of a few each. */
import { cook } from '../core/heat/cook.ts';
import type { CookProblem, Place, Stage } from '../core/heat/types.ts';

export interface UsedLog {
  /** Seconds from the start of the programme. */
  readonly t: Float64Array;
  readonly C: Float64Array;
  /** Readings before the start or after the end, left out. */
  readonly outside: number;
  /** How many readings each used one is the mean of. */
  readonly eachOf: number;
}

/** A logger that reads every second says no more of a coefficient by that; above this many, means of a few are fitted. */
const most = 600;

type Log = readonly { readonly min: number; readonly C: number }[];

/** The stages as they were run: a last one that ends by a temperature goes on as long as the log does. */
export function within(stages: readonly Stage[], log: Log): Stage[] {
  const last = stages.at(-1);
  if (last === undefined || last.until.kind === 'time') return [...stages];
  const before = stages.slice(0, -1);
  const began = before.reduce((sum, { until }) => sum + (until.kind === 'time' ? until.s : 0), 0);
  const end = 60 * (log.at(-1)?.min ?? 0);
  return [
    ...before,
    { ...last, until: { kind: 'time', s: Math.min(14 * 86_400, Math.max(60, end - began)) } },
  ];
}

/** When the programme ends [s]: by its times, or by what the engine says of the stages that end by a temperature. */
function endOf(stages: readonly Stage[], problem: CookProblem, place: Place): number {
  if (stages.every(({ until }) => until.kind === 'time'))
    return stages.reduce((sum, { until }) => sum + (until.kind === 'time' ? until.s : 0), 0);
  const { stages: ran } = cook(
    { ...problem, stages, probes: [{ name: 'probe', place }] },
    { mode: 'coarse' },
  );
  return ran.at(-1)?.end ?? 0;
}

/** The readings a fit uses. Nothing of the log that is kept is touched. */
export function usedLog(log: Log, stages: readonly Stage[], problem: CookProblem, place: Place): UsedLog {
  const end = endOf(stages, problem, place);
  const inside = log.flatMap(({ min, C }) =>
    min >= 0 && min * 60 <= end + 1e-6 ? [{ t: min * 60, C }] : [],
  );
  const outside = log.length - inside.length;
  const eachOf = Math.ceil(inside.length / most);
  if (eachOf <= 1)
    return {
      t: Float64Array.from(inside, (r) => r.t),
      C: Float64Array.from(inside, (r) => r.C),
      outside,
      eachOf: 1,
    };
  const count = Math.floor(inside.length / eachOf);
  const mean = (k: number, of: 't' | 'C') => {
    let sum = 0;
    for (let i = k * eachOf; i < (k + 1) * eachOf; i++) sum += inside[i]![of];
    return sum / eachOf;
  };
  return {
    t: Float64Array.from({ length: count }, (_, k) => mean(k, 't')),
    C: Float64Array.from({ length: count }, (_, k) => mean(k, 'C')),
    outside,
    eachOf,
  };
}
