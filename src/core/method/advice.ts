/** How long the heat must last for the coldest point to hold, and so how much is wanting or could be spared. */
import { cook } from '../heat/cook.ts';
import type { CookOptions, CookProblem, CookResult } from '../heat/types.ts';

/** The engine, or something that answers like it. */
export type Cook = (problem: CookProblem, options?: CookOptions) => CookResult;

export interface HeatingTime {
  /**
   * `found`: the shortest heating that holds, to within the tolerance and on the safe side.
   * `never`: not even `atMost` of it would do. `no time needed`: holds without it.
   */
  readonly status: 'found' | 'never' | 'no time needed';
  /** Duration of the heating stage [s]; NaN where `never`. */
  readonly duration: number;
  /** Lethality at the coldest point with that duration, by the end of the programme [s at the reference]. */
  readonly lethality: number;
  /** Runs of the engine that it took. */
  readonly runs: number;
}

export interface AdviceOptions {
  readonly mode?: 'coarse' | 'fine';
  /** How near the answer must be [s]; default 3 s. */
  readonly tolerance?: number;
  /** Longest heating considered [s]; default 24 h. */
  readonly atMost?: number;
  /** A first guess of the duration [s]. */
  readonly guess?: number;
  readonly cook?: Cook;
}

/**
 * The programme with its heating stage lasting exactly so long [s].
 * Parameters: `heatingStage` an index of its stages; `duration` [s], ≥ 0.
 * @example withHeating({ stages: [{ until: { kind: 'coldest', C: 70 } }] }, 0, 600).stages[0].until.s // → 600
 * Source: own-computation
 */
export function withHeating(problem: CookProblem, heatingStage: number, duration: number): CookProblem {
  const stages = problem.stages.map((stage, i) =>
    i === heatingStage ? { ...stage, until: { kind: 'time', s: duration } as const } : stage,
  );
  return { ...problem, stages };
}

/**
 * The search for the shortest heating [s], one engine run at a time, so that a caller may stop between two runs.
 * Yields the count of runs so far; returns the answer. Equation, assumptions and checks: see `heatingTime`.
 * Source: own-computation
 */
export function* heatingTimeSearch(
  problem: CookProblem,
  heatingStage: number,
  options: AdviceOptions = {},
): Generator<number, HeatingTime> {
  const run = options.cook ?? cook;
  const tolerance = options.tolerance ?? 3;
  const atMost = options.atMost ?? 86_400;
  const wanted = Math.log(problem.target.s);
  let runs = 0;
  const excessAt = (duration: number) => {
    runs++;
    const P = run(withHeating(problem, heatingStage, duration), { mode: options.mode ?? 'fine' }).lethality.s;
    return { duration, P, f: Math.log(Math.max(P, 1e-300)) - wanted };
  };
  const answer = (status: HeatingTime['status'], at: { duration: number; P: number }): HeatingTime => ({
    status,
    duration: status === 'never' ? Number.NaN : at.duration,
    lethality: at.P,
    runs,
  });

  // Bracket: from the guess outwards, doubling or halving the time, until one end is short and the other holds.
  let short = { duration: 0, P: 0, f: Number.NEGATIVE_INFINITY };
  let holds = excessAt(Math.min(atMost, Math.max(60, options.guess ?? 1_800)));
  yield runs;
  while (holds.f < 0) {
    if (holds.duration >= atMost) return answer('never', holds);
    short = holds;
    holds = excessAt(Math.min(atMost, holds.duration * 1.5));
    yield runs;
  }
  while (short.duration === 0) {
    const earlier = excessAt(holds.duration > 30 ? holds.duration / 1.5 : 0);
    yield runs;
    if (earlier.f < 0) short = earlier;
    else if (earlier.duration === 0) return answer('no time needed', earlier);
    else holds = earlier;
    if (short.duration === 0 && earlier.f < 0) break;
  }

  // Ln P is smooth and nearly straight in the time: false position (Illinois), halving where it creeps.
  let weightShort = 1;
  let weightHolds = 1;
  let side = 0;
  while (holds.duration - short.duration > tolerance && runs < 60) {
    const width = holds.duration - short.duration;
    const a = Math.max(short.f, -40) * weightShort;
    const b = holds.f * weightHolds;
    let next = holds.duration - (b * width) / (b - a);
    // Aim a little to the far side of the root, so that the bracket closes from both ends.
    next += 0.4 * tolerance * (side <= 0 ? 1 : -1);
    const edge = Math.min(0.4 * tolerance, 0.25 * width);
    next = Math.min(holds.duration - edge, Math.max(short.duration + edge, next));
    const middle = excessAt(next);
    yield runs;
    if (middle.f < 0) {
      short = middle;
      weightShort = 1;
      weightHolds = side < 0 ? weightHolds / 2 : 1;
      side = -1;
    } else {
      holds = middle;
      weightHolds = 1;
      weightShort = side > 0 ? weightShort / 2 : 1;
      side = 1;
    }
  }
  return answer('found', holds);
}

/**
 * Runs a search to its end and gives its answer [the search's own unit].
 * Source: own-computation
 */
export function finish<T>(search: Generator<unknown, T>): T {
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}

/**
 * The shortest duration of the heating stage with which the coldest point holds by the end of the programme [s].
 * Equation: the root of ln P(duration) = ln P wanted, P at the point that gets least, all later stages included.
 * Parameters: `problem`; `heatingStage` the index of the stage that is lengthened or shortened; `options.tolerance`
 * [s], default 3; `options.atMost` [s], default 86 400; `options.mode` of the engine, default fine.
 * Assumptions: P rises with the duration (checked as a property of the engine); later stages keep their own conditions.
 * Checked: running the programme for the answer holds, and for the answer less the tolerance does not.
 * @example heatingTime(problem, 0).duration // seconds of steam
 * Source: own-computation
 */
export function heatingTime(
  problem: CookProblem,
  heatingStage: number,
  options: AdviceOptions = {},
): HeatingTime {
  return finish(heatingTimeSearch(problem, heatingStage, options));
}

export interface Advice {
  readonly heating: HeatingTime;
  /** How much longer the heat must last for the coldest point to hold [s]; 0 where it holds; NaN where it never would. */
  readonly more: number;
  /** How much could be spared and it would still hold [s]; 0 where it does not hold. */
  readonly spare: number;
}

/**
 * How much longer the heat must last, or how much of it could be spared [s].
 * Equation: more = max(0, shortest − now), spare = max(0, now − shortest), shortest from `heatingTime`.
 * Parameters: `heating` from `heatingTime`; `now` the duration of the heating stage as it stands [s], ≥ 0.
 * Assumptions: none beyond those of `heatingTime`; both are on its safe side by up to its tolerance.
 * Checked: one of the two is always 0; the programme lengthened by `more` holds.
 * @example adviceFrom({ status: 'found', duration: 2400, lethality: 121, runs: 7 }, 1800).more // → 600
 * Source: own-computation
 */
export function adviceFrom(heating: HeatingTime, now: number): Advice {
  if (heating.status === 'never') return { heating, more: Number.NaN, spare: 0 };
  return {
    heating,
    more: Math.max(0, heating.duration - now),
    spare: Math.max(0, now - heating.duration),
  };
}
