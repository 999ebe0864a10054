/** What a cook's result means: whether the coldest point holds, when, and what the carry-over did. */
import { conductivityDoubts } from '../heat/conductivity-basis.ts';
import { restingAt } from '../heat/surface.ts';
import type { CookProblem, CookResult, Place, Stage } from '../heat/types.ts';

/** Why a result must not be read as an answer, although the arithmetic came to an end. */
export interface Doubt {
  readonly what: string;
  readonly source: string;
}

/**
 * What a cook that holds rests on. `lift-out`: the target was met by lifting out, with a little in hand.
 * `barely`: met by lifting out, with less in hand than a probe may be wrong.
 * `after`: met only thanks to what comes after lifting out (rest, the first minutes in ice).
 */
export type RestsOn = 'lift-out' | 'barely' | 'after';

/** What a good probe thermometer may be out [°C]; common practice, no source. */
const PROBE_TOLERANCE = 0.5;

/**
 * What a cook that holds rests on: the heat itself, hardly that, or what comes after it [-].
 * Equation: P at lifting out against the wanted P, and against wanted P × 10^(0.5 °C / z), the worth of half a degree.
 * Parameters: `gotAtLiftOut`, `needed` lethality in the same unit, ≥ 0; `z` of the target [°C], > 0.
 * Assumptions: half a degree is what a good probe may be out (common practice, no source).
 * Checked: less than wanted is never `lift-out` (property test); at z 7.5 °C the step is at 1.166 of what is wanted.
 * @example restsOn(2.4, 2, 7.5) // → 'lift-out'
 * @example restsOn(2.1, 2, 7.5) // → 'barely'
 * @example restsOn(1.9, 2, 7.5) // → 'after'
 * Source: own-computation
 */
export function restsOn(gotAtLiftOut: number, needed: number, z: number): RestsOn {
  if (!(gotAtLiftOut >= needed)) return 'after';
  return gotAtLiftOut >= needed * 10 ** (PROBE_TOLERANCE / z) ? 'lift-out' : 'barely';
}

export interface CookVerdict {
  /**
   * `holds`: the coldest point has had what the target asks by the end of the programme.
   * `short`: it has not. `unknown`: the result cannot be relied on, whatever its number says.
   */
  readonly word: 'holds' | 'short' | 'unknown';
  /** Lethality at the coldest point by the end of the programme [s at the reference]. */
  readonly got: number;
  /** Lethality wanted [s at the reference]. */
  readonly needed: number;
  /** `got` / `needed` [1]. */
  readonly margin: number;
  /** Time at which the coldest point had what it needs [s]; null where never. */
  readonly reachedAt: number | null;
  /** Index of the stage after which the piece is lifted out of the heat. */
  readonly heatingStage: number;
  /** End of that stage [s]. */
  readonly liftOut: number;
  /** Temperature at the cold spot at lifting out [°C]. */
  readonly coreAtLiftOut: number;
  /** Lethality at the cold spot at lifting out [s at the reference]. */
  readonly gotAtLiftOut: number;
  /** Would it hold if nothing after lifting out were counted? */
  readonly holdsAtLiftOut: boolean;
  /** What it rests on, should it hold. */
  readonly restsOn: RestsOn;
  /** Highest temperature the cold spot comes to, and when [°C, s]. */
  readonly peak: { readonly C: number; readonly t: number };
  /** Share of `got` that is added after lifting out [0–1]. */
  readonly carryOverShare: number;
  readonly coldSpot: Place;
  /** Stages whose condition was not met in the time they may take (their names). */
  readonly notReached: readonly string[];
  readonly doubts: readonly Doubt[];
}

/**
 * Temperature of a stage's medium at its end [°C].
 * Equation: the constant, or the log straight between its points and held after the last.
 * Parameters: `stage`; `duration` how long it lasted [s], ≥ 0.
 * Assumptions: the log's times count from the stage's beginning.
 * Checked: between two points of a log, their weighted mean.
 * @example mediumAtEnd({ medium: [{ t: 0, C: 20 }, { t: 100, C: 40 }] }, 25) // → 25
 * Source: own-computation
 */
export function mediumAtEnd(stage: Stage, duration: number): number {
  if (typeof stage.medium === 'number') return stage.medium;
  const log = stage.medium;
  const after = log.findIndex((point) => point.t >= duration);
  if (after < 0) return log[log.length - 1].C;
  if (after === 0) return log[0].C;
  const a = log[after - 1];
  const b = log[after];
  return a.C + ((b.C - a.C) * (duration - a.t)) / (b.t - a.t);
}

/**
 * Index of the stage that ends with lifting out of the heat [-].
 * Equation: the last stage whose medium (or, where more than the medium acts on it, whose resting surface), at its end, is
 * hotter than the body's mean was at its beginning.
 * Parameters: `problem`, and `result` of that same problem; `cookStages` how many of the stages are the cook's own
 * (1 … number of stages), the answer when no stage heats.
 * Assumptions: a stage that only holds what it found (rest in a warm place) does not heat.
 * Checked: steam, rest and ice water give the steam stage; a hot finish after a cooler stage gives the finish.
 * @example heatingStageOf(problem, result, 1) // 0 for steam 100 °C then ice water 1 °C
 * Source: own-computation
 */
export function heatingStageOf(problem: CookProblem, result: CookResult, cookStages: number): number {
  for (let i = result.stages.length - 1; i >= 0; i--) {
    const { start, end } = result.stages[i];
    const mean = i === 0 ? problem.start : result.stages[i - 1].mean;
    const stage = problem.stages[i];
    // What a surface is warmed or cooled towards: the medium, or where it rests that is grilled, basted, or dries.
    if (end > start && restingAt(stage, mediumAtEnd(stage, end - start)) > mean) return i;
  }
  return Math.max(0, Math.min(cookStages, result.stages.length) - 1);
}

/**
 * A history column at a time, straight between its points [the column's unit].
 * Equation: linear interpolation, held at both ends.
 * Parameters: `t` increasing times [s]; `column` of the same length; `at` any time [s].
 * Assumptions: the engine's history loses less than 0.05 °C between its points.
 * Checked: at its points the column's own value; between two, their weighted mean.
 * @example historyAt(Float64Array.of(0, 10), Float64Array.of(4, 8), 5) // → 6
 * Source: own-computation
 */
export function historyAt(t: Float64Array, column: Float64Array, at: number): number {
  let low = 0;
  let high = t.length - 1;
  if (high < 0) return Number.NaN;
  if (at <= t[0]) return column[0];
  if (at >= t[high]) return column[high];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (t[middle] <= at) low = middle;
    else high = middle;
  }
  const span = t[high] - t[low];
  return span > 0 ? column[low] + ((column[high] - column[low]) * (at - t[low])) / span : column[high];
}

/** Below this a food may begin to freeze, which constant properties do not know [°C]. */
const FREEZING = -0.5;

/** Was nothing frozen up to the moment at which the lethality was had? What comes later cannot take it away again. */
function thawedWhenReached(result: CookResult): boolean {
  const { reachedAt } = result.lethality;
  if (reachedAt === null) return false;
  const { t, coldest } = result.history;
  for (let i = 0; i < t.length && t[i] <= reachedAt; i++) if (coldest[i] < FREEZING) return false;
  return true;
}

/** What takes away from a result its standing as an answer. */
function doubtsOf(problem: CookProblem, result: CookResult): Doubt[] {
  const thawed = thawedWhenReached(result);
  const doubts: Doubt[] = [
    ...(problem.doubts ?? []),
    ...conductivityDoubts(problem.body.layers),
    ...result.basis
      .filter((b) => /\bnot valid\b/i.test(b.what) && !thawed)
      .map(({ what, source }) => ({ what, source })),
  ];
  if (!(Math.abs(result.heatBalancePct) < 1))
    doubts.push({
      what: `the heat put in and the heat stored differ by ${result.heatBalancePct.toPrecision(2)} %: the run did not close`,
      source: 'own-computation',
    });
  if (!Number.isFinite(result.lethality.s))
    doubts.push({ what: 'the lethality is not a finite number', source: 'own-computation' });
  return doubts;
}

/**
 * The verdict on a cook [times s, temperatures °C, lethality s at the reference].
 * Equation: holds ⇔ P(cold spot, end) ≥ wanted P; carry-over share = (P(end) − P(lift-out)) / P(end).
 * Parameters: `problem` and `result` of that problem; `cookStages` how many stages are the cook step's own.
 * Assumptions: the cold spot is the point with least lethality by the end, so it decides; lethality keeps counting
 * after lifting out, while the outside already cools.
 * Checked: never `holds` while P < wanted (property test); what would hold but is in doubt is `unknown`.
 * @example verdictOf(problem, result, 1).word // 'holds' | 'short' | 'unknown'
 * Source: own-computation
 */
export function verdictOf(problem: CookProblem, result: CookResult, cookStages: number): CookVerdict {
  const { history } = result;
  const got = result.lethality.s;
  const needed = problem.target.s;
  const heatingStage = heatingStageOf(problem, result, cookStages);
  const liftOut = result.stages[heatingStage]?.end ?? 0;
  const gotAtLiftOut = historyAt(history.t, history.lethality, liftOut);
  let hottest = 0;
  for (let i = 1; i < history.t.length; i++) if (history.coldSpot[i] > history.coldSpot[hottest]) hottest = i;
  const doubts = doubtsOf(problem, result);
  const { node: _, ...coldSpot } = result.coldSpot;
  return {
    word: got < needed ? 'short' : doubts.length === 0 ? 'holds' : 'unknown',
    got,
    needed,
    margin: got / needed,
    reachedAt: result.lethality.reachedAt,
    heatingStage,
    liftOut,
    coreAtLiftOut: historyAt(history.t, history.coldSpot, liftOut),
    gotAtLiftOut,
    holdsAtLiftOut: gotAtLiftOut >= needed,
    restsOn: restsOn(gotAtLiftOut, needed, problem.target.z),
    peak: { C: history.coldSpot[hottest], t: history.t[hottest] },
    carryOverShare: got > 0 ? Math.max(0, (got - gotAtLiftOut) / got) : 0,
    coldSpot,
    notReached: result.stages.filter((s) => !s.reached).map((s) => s.name),
    doubts,
  };
}
