/** `fit`: the kitchen's own coefficients from a probe log, as the headless contract asks for it (mm, min, °C). */
import { qt } from 'lib-r-math.js';
import { z } from 'zod';
import { Contradiction, OutOfRange } from '../core/errors.ts';
import type { CookProblem } from '../core/heat/types.ts';
import { type FitParameter, type FitProblem, type FitResult, fitLog } from '../core/method/fit.ts';
import { type MediumName, media } from '../core/properties/media.ts';
import type { Basis } from '../core/sources.ts';
import { BodyInput, StageInput } from './body.ts';
import { inInputTerms, toProblem } from './cook.ts';
import { type UsedLog, usedLog, within } from './fit-log.ts';
import { fittedValues, type Named } from './fit-values.ts';
import { correlationsOf, fitCautions, fitWarnings } from './fit-words.ts';
import { leastSquares } from './least-squares.ts';
import { accept, InputProblems, type Problem } from './problem.ts';
import { celsius, millimetres } from './quantities.ts';

const fittable = ['hWm2K', 'diffusivity', 'radiusMm', 'probeMm'] as const;

const FitFields = z.strictObject({
  body: BodyInput,
  startC: celsius(-40, 150),
  /** The programme as it was run. Where a stage's coefficient is fitted and nothing is given for it, the search begins at 300. */
  stages: z.array(StageInput).min(1).max(100),
  /** Where the probe's tip was; keys as for the probes of `cook`. */
  probe: z.strictObject({
    atMm: millimetres().nullish(),
    radiusMm: millimetres().optional(),
    xMm: millimetres(-2_000).optional(),
    yMm: millimetres(-2_000).optional(),
  }),
  /** Minutes from the start of the first stage, rising. */
  log: z
    .array(
      z.strictObject({ min: z.number().min(-1_000_000).max(10_000_000), C: z.number().min(-80).max(400) }),
    )
    .min(4)
    .max(200_000),
  /**
   * `hWm2K`: surface coefficient. `diffusivity`: of the innermost layer, all conductivities scaled alike. `radiusMm`: outer radius beside
   * the probe (half the thickness of slab and block), all diameters scaled alike. `probeMm`: the probe's distance from the middle.
   */
  fit: z.array(z.enum(fittable)).min(1).max(4),
  /** Whose surface coefficients `hWm2K` means, counted from 0; the first stage alone where not given. */
  hStages: z.array(z.int().min(0).max(99)).min(1).max(4).optional(),
  /** Standard deviation of a reading where it is known; else it is estimated from the residuals. */
  noiseC: z.number().min(0.001).max(20).optional(),
});

export const FitWithoutLog = FitFields.omit({ log: true });

type Complain = (path: (string | number)[], found: string, allowed: string) => void;

function checkTwice(list: readonly (string | number)[], key: string, complain: Complain): void {
  list.forEach((name, i) => {
    if (list.indexOf(name) < i) complain([key, i], `${JSON.stringify(name)} a second time`, 'each once');
  });
}

export const FitInput = FitFields.superRefine((input, context) => {
  const complain: Complain = (path, found, allowed) =>
    context.addIssue({ code: 'custom', path, message: allowed, params: { found } });
  let wrong = 0;
  for (let i = 1; i < input.log.length && wrong < 5; i++) {
    const [before, now] = [input.log[i - 1]!.min, input.log[i]!.min];
    if (now > before) continue;
    wrong++;
    complain(['log', i, 'min'], `${now} min after ${before} min`, 'times that rise from reading to reading');
  }
  checkTwice(input.fit, 'fit', complain);
  const { hStages = [], stages } = input;
  checkTwice(hStages, 'hStages', complain);
  if (input.hStages !== undefined && !input.fit.includes('hWm2K'))
    complain(['hStages'], 'stages whose coefficient is not fitted', 'only beside "hWm2K" in fit');
  hStages.forEach((stage, i) => {
    if (stage >= stages.length)
      complain(
        ['hStages', i],
        `${stage}`,
        `0 to ${stages.length - 1}: the programme has ${stages.length} stages`,
      );
  });
  stages.forEach(({ until }, i) => {
    if ('lethalityMin' in until)
      complain(
        ['stages', i, 'until'],
        'lethalityMin',
        'the minutes it lasted, {"min"}: a log is of what was done',
      );
  });
});
export type FitInput = z.infer<typeof FitInput>;

const list = z.array(z.number());
export const FittedValue = z.strictObject({
  value: z.number(),
  low95: z.number(),
  high95: z.number(),
  unit: z.string(),
  /** The log does not object as far as was looked: this end is the bound of the search, not of the value. */
  lowOpen: z.boolean(),
  highOpen: z.boolean(),
  /** The best fit itself stands at a bound of the search: take the end of the interval that is not open. */
  atBound: z.boolean(),
  /** False where the log cannot tell this value, or not from another; see `warnings`. */
  told: z.boolean(),
  /** In words, one-sided where only one side is known. */
  says: z.string(),
  /** What was given, for comparison. */
  given: z.number(),
  /** Diffusivity: at which temperature it is stated, and the factor on all conductivities. */
  atC: z.number().optional(),
  factor: z.strictObject({ value: z.number(), low95: z.number(), high95: z.number() }).optional(),
  /** Surface coefficient: its stage, and h·R/k. */
  stage: z.string().optional(),
  biot: z.number().optional(),
});
export type FittedValue = z.infer<typeof FittedValue>;

export const FitAnswer = z.strictObject({
  /** By name: `hWm2K` (further stages as `stages[1].hWm2K`), `diffusivity` [m²/s], `radiusMm`, `probeMm`. */
  fitted: z.record(z.string(), FittedValue),
  rmseC: z.number(),
  /** Measured − model, at `residualsMin`. */
  residuals: list,
  residualsMin: list,
  predictedC: list,
  measuredC: list,
  readings: z.strictObject({ given: z.int(), outside: z.int(), used: z.int(), eachOf: z.int() }),
  noiseC: z.number(),
  /** Of a residual with the next, and how many independent readings the log is worth for it. */
  autocorrelation: z.number(),
  effectiveReadings: z.number(),
  correlations: z.array(z.strictObject({ between: z.tuple([z.string(), z.string()]), r: z.number() })),
  stageEndsMin: list,
  converged: z.boolean(),
  runs: z.int(),
  warnings: z.array(z.string()),
  cautions: z.array(z.string()),
  basis: z.array(z.object({ what: z.string(), source: z.string(), confidence: z.string() })),
});
export type FitAnswer = z.infer<typeof FitAnswer>;

export interface FitOptions {
  /** Runs of the engine so far and the share of the work done; return false to stop. */
  readonly onProgress?: (runs: number, share: number) => boolean | undefined;
}

const firstGuess = 300;

function parametersOf({ fit, hStages = [0] }: FitInput): FitParameter[] {
  return fit.flatMap((name): FitParameter[] =>
    name === 'hWm2K'
      ? hStages.map((stage) => ({ kind: 'h', stage }))
      : [{ kind: name === 'radiusMm' ? 'radius' : name === 'probeMm' ? 'probe' : 'diffusivity' }],
  );
}

const mended = ({ path, ...rest }: Problem, fit: FitInput['fit']): Problem => ({
  ...rest,
  path: path
    .replace(/^probes\[0\]/, 'probe')
    .replace(/^fit\[\d+\]$/, fit.length === 1 ? 'fit[0]' : 'fit')
    .replace(/\.place\.(\w+)$/, '.$1Mm'),
});

/** Runs something of the engine; what it refuses becomes problems in the input's own terms. */
function inTerms<T>(input: FitInput, problem: CookProblem | undefined, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const problems =
      error instanceof InputProblems
        ? error.problems
        : error instanceof OutOfRange || error instanceof Contradiction
          ? [inInputTerms(error, problem)]
          : null;
    if (problems === null) throw error;
    throw new InputProblems(problems.map((p) => mended(p, input.fit)));
  }
}

const tabled = (medium: string | undefined): number | undefined =>
  medium !== undefined && Object.hasOwn(media, medium) ? media[medium as MediumName].h : undefined;

/**
 * The programme as it is fitted: a coefficient that is sought stands in its stage as a number, so that what is found means the
 * same when it is written there (low-temperature steam then is its one coefficient, and no longer humid air).
 */
function asRun(input: FitInput, parameters: readonly FitParameter[]): StageInput[] {
  const sought = new Set(parameters.flatMap((p) => (p.kind === 'h' ? [p.stage] : [])));
  return input.stages.map((stage, i) =>
    sought.has(i) ? { ...stage, hWm2K: stage.hWm2K ?? tabled(stage.medium) ?? firstGuess } : stage,
  );
}

function basisOf(input: FitInput, result: FitResult, used: UsedLog): Basis[] {
  return [
    ...result.basis,
    {
      what: `least squares by Levenberg–Marquardt over ${used.C.length} readings; 95 % intervals by profile likelihood with Student’s t`,
      source: 'bates-watts-1988',
      confidence: 'memory',
    },
    {
      what:
        input.noiseC === undefined
          ? `scatter of a reading estimated from the residuals, ${result.noise.sd.toFixed(2)} K`
          : `scatter of a reading, ${input.noiseC} K, as given`,
      source: input.noiseC === undefined ? 'own-computation' : 'user-input',
      confidence: input.noiseC === undefined ? 'computed' : 'assumption',
    },
    {
      what: `residuals correlated ${result.noise.autocorrelation.toFixed(2)} with the next count as ${Math.round(result.noise.effective)} independent ones`,
      source: 'bayley-hammersley-1946',
      confidence: 'memory',
    },
    {
      what: 'everything that was not fitted (size, composition, start, temperatures of the media, times) as given',
      source: 'user-input',
      confidence: 'assumption',
    },
  ];
}

/** Fits a log as the contract states it. Throws `InputProblems` for an input that it does not allow, `Cancelled` when stopped. */
export function runFit(raw: unknown, options: FitOptions = {}): FitAnswer {
  const input = accept(FitInput, raw);
  const parameters = parametersOf(input);
  const stages = asRun(input, parameters);
  const problem = inTerms(input, undefined, () =>
    toProblem({
      body: input.body,
      startC: input.startC,
      stages,
      target: { referenceC: 70, zC: 7.5, min: 2 },
      probes: [{ name: 'probe', ...input.probe }],
    }),
  );
  const place = problem.probes?.[0]?.place;
  if (place === undefined) throw new Error('the problem lost its probe');
  const ran = within(problem.stages, input.log);
  const used = inTerms(input, problem, () => usedLog(input.log, ran, problem, place));
  const order: FitProblem = {
    body: problem.body,
    start: problem.start,
    stages: ran,
    place,
    t: used.t,
    C: used.C,
    parameters,
  };
  const result = inTerms(input, problem, () =>
    fitLog(
      order,
      { leastSquares, tQuantile: (p, freedom) => qt(p, freedom) },
      {
        ...(input.noiseC === undefined ? {} : { noise: input.noiseC / Math.sqrt(used.eachOf) }),
        ...(options.onProgress === undefined ? {} : { onProgress: options.onProgress }),
      },
    ),
  );
  const values: Named[] = fittedValues(order, result, input);
  const [first] = used.C;
  return {
    fitted: Object.fromEntries(values.map(({ name, value }) => [name, value])),
    rmseC: result.rmse,
    residuals: [...result.residuals],
    residualsMin: Array.from(used.t, (t) => t / 60),
    predictedC: [...result.predicted],
    measuredC: [...used.C],
    readings: {
      given: input.log.length,
      outside: used.outside,
      used: used.C.length,
      eachOf: used.eachOf,
    },
    noiseC: result.noise.sd,
    autocorrelation: result.noise.autocorrelation,
    effectiveReadings: result.noise.effective,
    correlations: correlationsOf(values, result),
    stageEndsMin: result.stageEnds.map((s) => s / 60),
    converged: result.converged,
    runs: result.runs,
    warnings: fitWarnings({ input, order, result, values, used, first: first ?? input.startC }),
    cautions: [...fitCautions],
    basis: basisOf(input, result, used),
  };
}
