/** `sure`: the time with which the worst piece of a batch passes, as often as is asked. */
import { z } from 'zod';
import { quantileOf, type SureOrder, sureTime } from '../core/method/sure.ts';
import { standardOf } from '../core/method/sure-surface.ts';
import { randomFrom } from '../core/numerics/random.ts';
import { mixed, sobol, sobolDimensions } from '../core/numerics/sobol.ts';
import { cookingRules } from './cooking-rules.ts';
import { basisOf } from './sure-basis.ts';
import { type Study, studyOf, type Variable } from './sure-input.ts';
import { type RunTasks, type SureTask, taskRunner } from './sure-tasks.ts';

const number = z.number();
const Quantiles = z.object({
  p01: number,
  p05: number,
  p25: number,
  p50: number,
  p75: number,
  p95: number,
  p99: number,
});

export const SureAnswer = z.object({
  /** The stage whose time this is. */
  stage: z.string(),
  confidence: number,
  pieces: number,
  /** How long that stage must last; rounded up. null where no time gives that confidence. */
  minutesForConfidence: number.nullable(),
  /** The estimate itself and its standard error; `minutesForConfidence` lies above it by 1.645 of them. */
  estimateMin: number.nullable(),
  standardErrorMin: number.nullable(),
  /** The time of the piece that is as its middle values say, not rounded. */
  nominalMin: number.nullable(),
  why: z.string(),
  /** Times that a piece needs, and that the worst of a batch needs [min]. */
  time: z.object({
    meanMin: number,
    sdMin: number,
    piece: Quantiles,
    worst: Quantiles,
    /** Shares of pieces and of batches in equal steps. */
    histogram: z.object({ fromMin: number, toMin: number, piece: z.array(number), worst: z.array(number) }),
    /** Pieces that no time makes pass [%]. */
    neverPct: number,
  }),
  /** Lethality at the coldest point of a piece whose stage lasts `atMin`, by the coarse engine. */
  lethality: z
    .object({
      atMin: number,
      /** At lifting out [min at the target's reference]. */
      liftOut: Quantiles,
      /** By the end of the programme. */
      end: Quantiles,
      /** Pieces, and batches whose worst piece, pass when lifted out [%]. */
      passesPct: number,
      batchPassesPct: number,
      runs: number,
    })
    .nullable(),
  /** What matters most first: shares of the variance of ln time, alone and with all it shares with others. */
  sensitivity: z.array(
    z.object({
      input: z.string(),
      shared: z.boolean(),
      firstOrder: number,
      firstOrderSe: number,
      total: number,
      totalSe: number,
      /** What one standard deviation of it is worth [min]. */
      minutesPerSd: number,
    }),
  ),
  engine: z.object({
    samples: number,
    fineRuns: number,
    /** What the fine engine says beside the coarse one, and how far that differs from piece to piece [%]. */
    finePct: number,
    fineSdPct: number,
    /** What the smooth stand-in misses by at pieces it has not seen, root mean square [%]. */
    surfacePct: number,
    seed: number,
  }),
  basis: z.array(z.object({ what: z.string(), source: z.string(), confidence: z.string() })),
});
export type SureAnswer = z.infer<typeof SureAnswer>;

export interface SureOptions {
  /** Does the runs; default one after another, here. */
  readonly run?: RunTasks;
  /** Called with how much of the work is done, 0 to 1, and what is being done. */
  readonly onProgress?: (done: number, words: string) => void;
}

/** Fine runs beside the coarse ones, and at the worst pieces close to the answer. */
const besides = 24;
const nearby = 24;
const seen = 64;

export const oneAfterAnother = (input: unknown): RunTasks => {
  const one = taskRunner(input);
  return async (tasks, onDone) =>
    tasks.map((task) => {
      const answer = one(task);
      onDone?.(1);
      return answer;
    });
};

/** Points of the standard coordinates, spread evenly. */
function pointsFor(study: Study): Float64Array[] {
  const { variables, samples, seed } = study;
  const even = Math.min(variables.length, sobolDimensions);
  const points = sobol(samples, Math.max(1, even), seed);
  const random = randomFrom(mixed(seed, 99));
  return points.map((u) =>
    Float64Array.from(variables, (v, i) => standardOf(v.kind, (i < even ? u[i] : undefined) ?? random())),
  );
}

const valuesAt = (variables: readonly Variable[], x: ArrayLike<number>): number[] =>
  variables.map((v, i) => v.middle + v.reach * (x[i] ?? 0));

const up = (min: number) => Math.ceil(min * 100 - 1e-7) / 100;
const mean = (list: readonly number[]) => list.reduce((a, b) => a + b, 0) / list.length;
const sd = (list: readonly number[]) => {
  const m = mean(list);
  return list.length < 2 ? 0 : Math.sqrt(list.reduce((s, v) => s + (v - m) ** 2, 0) / (list.length - 1));
};

function quantiles(sorted: ArrayLike<number>): z.infer<typeof Quantiles> {
  const q = (p: number) => quantileOf(sorted, p);
  return { p01: q(0.01), p05: q(0.05), p25: q(0.25), p50: q(0.5), p75: q(0.75), p95: q(0.95), p99: q(0.99) };
}

/** Runs `sure` from JSON to JSON. Throws `InputProblems` for anything wrong with the input. The same input has the same answer, whoever does the runs. */
export async function runSure(input: unknown, options: SureOptions = {}): Promise<SureAnswer> {
  const study = studyOf(input);
  cookingRules(study.rules);
  const { variables, confidence, pieces, seed } = study;
  const run = options.run ?? oneAfterAnother(input);
  const tell = options.onProgress ?? (() => undefined);
  const points = variables.length === 0 ? [new Float64Array(0)] : pointsFor(study);
  const task = (x: ArrayLike<number>, mode: 'coarse' | 'fine'): SureTask => ({
    kind: 'time',
    values: valuesAt(variables, x),
    mode,
  });
  const total = points.length + 4 * (besides + nearby) + 2 * seen;
  let done = 0;
  const runAll = async (tasks: readonly SureTask[], weight: number, words: string) => {
    const answers = await run(tasks, (more) => {
      done += weight * more;
      tell(Math.min(1, done / total), words);
    });
    return answers.map((a) => a[0] as number);
  };

  const [nominal = Number.POSITIVE_INFINITY] = await runAll(
    [task(new Float64Array(variables.length), 'fine')],
    3,
    'the piece as drawn',
  );
  const still = variables.length === 0;
  const coarse = still
    ? [nominal]
    : await runAll(
        points.map((x) => task(x, 'coarse')),
        1,
        `${points.length} pieces`,
      );
  const beside = still ? [] : points.slice(0, besides);
  const fine = await runAll(
    beside.map((x) => task(x, 'fine')),
    3,
    'some of them again, finely',
  );
  const offs = beside.flatMap((_, i) => {
    const off = Math.log((fine[i] as number) / (coarse[i] as number));
    return Number.isFinite(off) ? [off] : [];
  });
  const shift = offs.length === 0 ? 0 : mean(offs);
  const order: SureOrder = {
    inputs: variables,
    points,
    lnTimes: coarse.map((min) =>
      min === Number.POSITIVE_INFINITY ? min : Math.log(Math.max(min, 1e-3)) + shift,
    ),
    pieces,
    confidence,
    seed,
  };
  const estimate = sureTime(order);

  // The worst pieces close to the answer, asked of the fine engine: what it says there is what counts.
  const worst = still || !Number.isFinite(estimate.lnTime) ? [] : estimate.nearby.slice(0, nearby);
  const checked = await runAll(
    worst.map(({ x }) => task(x, 'fine')),
    3,
    'the worst of them, finely',
  );
  const misses = worst.map(({ y }, i) => Math.log(checked[i] as number) - y);
  const lost = misses.some((m) => !Number.isFinite(m));
  const correction = misses.length === 0 || lost ? 0 : mean(misses);
  const rough = estimate.surfaceError > 0.02;
  const error = Math.hypot(
    estimate.error,
    misses.length === 0 || lost ? 0 : sd(misses) / Math.sqrt(misses.length),
  );
  const ln = lost
    ? Number.POSITIVE_INFINITY
    : Math.max(estimate.lnTime + correction, rough ? estimate.lnIndependent : 0);
  const answer = Number.isFinite(ln) && coarse.length > 0 ? Math.exp(ln) : null;
  const limit = answer === null ? null : up(still ? answer : answer * Math.exp(1.645 * error));

  const atMin = writtenMin(study) ?? limit ?? (Number.isFinite(nominal) ? nominal : null);
  const got = atMin === null ? null : await lethalityAt(study, points, atMin, run);
  tell(1, 'done');
  const minutes = (list: Float64Array) => list.map((y) => Math.exp(y));
  const single = minutes(estimate.single);
  const worsts = minutes(estimate.worst);
  const passes = (list: Float64Array) =>
    atMin === null ? 0 : (100 * (1 - estimate.never) * below(list, atMin)) / list.length;
  const middleMin = Number.isFinite(nominal) ? nominal : Math.exp(estimate.surface.mean);
  const ranked = estimate.sensitivity
    .flatMap((s, i) => {
      const variable = variables[i];
      return variable === undefined ? [] : [{ s, variable }];
    })
    .sort((a, b) => b.s.total - a.s.total);
  return {
    stage: study.nominal.stages[study.stage]?.name ?? '',
    confidence,
    pieces,
    minutesForConfidence: limit,
    estimateMin: answer,
    standardErrorMin: answer === null ? null : answer * error,
    nominalMin: Number.isFinite(nominal) ? nominal : null,
    why: whyOf(study, limit, estimate.never),
    time: {
      meanMin: mean([...single]),
      sdMin: sd([...single]),
      piece: quantiles(single),
      worst: quantiles(worsts),
      histogram: histogramOf(single, worsts),
      neverPct: 100 * estimate.never,
    },
    lethality:
      got === null || atMin === null
        ? null
        : {
            atMin,
            liftOut: quantiles(Float64Array.from(got, (g) => g[0] as number).sort()),
            end: quantiles(Float64Array.from(got, (g) => g[1] as number).sort()),
            passesPct: still ? (nominal <= atMin + 1e-9 ? 100 : 0) : passes(single),
            batchPassesPct: still
              ? nominal <= atMin + 1e-9
                ? 100
                : 0
              : passes(worsts) * (1 - estimate.never) ** (pieces - 1),
            runs: got.length,
          },
    sensitivity: ranked.map(({ s, variable }) => ({
      input: variable.input,
      shared: variable.shared,
      firstOrder: s.first,
      firstOrderSe: s.firstError,
      total: s.total,
      totalSe: s.totalError,
      minutesPerSd: (middleMin * (Math.exp(s.perSd) - Math.exp(-s.perSd))) / 2,
    })),
    engine: {
      samples: points.length,
      fineRuns: 1 + fine.length + checked.length,
      finePct: 100 * (Math.exp(shift + correction) - 1),
      fineSdPct: 100 * sd(offs),
      surfacePct: 100 * estimate.surfaceError,
      seed,
    },
    basis: basisOf(study, rough),
  };
}

/** How long the stage lasts as it is written, where it ends by time. */
function writtenMin({ nominal, stage }: Study): number | null {
  const until = nominal.stages[stage]?.until;
  return until !== undefined && 'min' in until ? until.min : null;
}

async function lethalityAt(study: Study, points: readonly Float64Array[], min: number, run: RunTasks) {
  const tasks = points
    .slice(0, seen)
    .map((x): SureTask => ({ kind: 'lethality', values: valuesAt(study.variables, x), min }));
  return run(tasks);
}

/** How many of rising values are not above a limit. */
function below(sorted: Float64Array, limit: number): number {
  const over = sorted.findIndex((v) => v > limit);
  return over < 0 ? sorted.length : over;
}

function histogramOf(piece: Float64Array, worst: Float64Array) {
  const fromMin = Math.floor(Math.min(quantileOf(piece, 0.001), quantileOf(worst, 0.001)));
  const toMin = Math.max(
    fromMin + 1,
    Math.ceil(Math.max(quantileOf(piece, 0.999), quantileOf(worst, 0.999))),
  );
  const steps = 40;
  const share = (list: Float64Array) => {
    const bins = new Float64Array(steps);
    for (const min of list) {
      const at = Math.floor(((min - fromMin) / (toMin - fromMin)) * steps);
      const bin = Math.max(0, Math.min(steps - 1, at));
      bins[bin] = (bins[bin] ?? 0) + 1 / list.length;
    }
    return [...bins];
  };
  return { fromMin, toMin, piece: share(piece), worst: share(worst) };
}

function whyOf({ nominal, stage, pieces, confidence }: Study, min: number | null, never: number): string {
  const name = nominal.stages[stage]?.name ?? 'the stage';
  const who = pieces === 1 ? 'a piece' : `the worst of ${pieces} pieces`;
  const times = Number((confidence * 100).toPrecision(4));
  if (min === null)
    return `No length of “${name}” makes ${who} pass ${times} times in 100: with these spreads ${(never * 100).toFixed(1)} % of the pieces tried never pass, and others may not.`;
  return `“${name}” for ${min} min: ${who} passes ${times} times in 100, if the spreads are as stated. Counted when lifted out; what comes after is not.`;
}
