/** `cook`: temperature and lethality in a body, as the headless contract, the server and the pages ask for it (mm, min, °C). */
import { z } from 'zod';
import { Contradiction, OutOfRange } from '../core/errors.ts';
import { checkProblem } from '../core/heat/check.ts';
import { cook } from '../core/heat/cook.ts';
import type { Basis, Body, CookProblem, CookResult, Layer, Place, Until } from '../core/heat/types.ts';
import { verdictOf } from '../core/method/verdict.ts';
import { BodyInput, StageInput, TargetInput, type UntilInput } from './body.ts';
import { mediaRangesOf } from './media-range.ts';
import { accept, InputProblems, type Problem } from './problem.ts';
import { celsius, millimetres } from './quantities.ts';
import { refuse } from './refuse.ts';
import { dryingDoubt, stageBasis } from './stage-basis.ts';
import { surroundingsOf } from './surroundings.ts';

export const ProbeInput = z.strictObject({
  name: z.string().min(1).max(80),
  /** Body of revolution: distance along the axis and from it. Cylinder, sphere: `radiusMm`. */
  atMm: millimetres().nullish(),
  radiusMm: millimetres().optional(),
  /** Slab: `xMm` from the middle. Block: `xMm` and `yMm` from the middle. */
  xMm: millimetres(-2_000).optional(),
  yMm: millimetres(-2_000).optional(),
});
export type ProbeInput = z.infer<typeof ProbeInput>;

export const CookInput = z.strictObject({
  body: BodyInput,
  startC: celsius(-40, 150),
  stages: z.array(StageInput).min(1).max(100),
  target: TargetInput,
  probes: z.array(ProbeInput).max(50).optional(),
  /** `coarse` answers a slider at once; `fine`, the default, is the answer that is kept and judged. */
  mode: z.enum(['coarse', 'fine']).optional(),
  /** Ask also what the published range of each medium means in minutes. */
  mediaRanges: z.boolean().optional(),
});
export type CookInput = z.infer<typeof CookInput>;

const list = z.array(z.number());
const BasisAnswer = z.object({ what: z.string(), source: z.string(), confidence: z.string() });

export const CookAnswer = z.object({
  /** The point that has received least lethality. Slab and block: `xMm`, `yMm` from the middle; else `atMm`, `radiusMm`. */
  coldSpot: z.union([
    z.object({ atMm: z.number(), radiusMm: z.number() }),
    z.object({ xMm: z.number(), yMm: z.number() }),
  ]),
  stages: z.array(
    z.object({
      name: z.string(),
      startMin: z.number(),
      endMin: z.number(),
      reached: z.boolean(),
      coldestC: z.number(),
      warmestC: z.number(),
      surfaceC: z.number(),
      meanC: z.number(),
      coldSpotC: z.number(),
      /** Where the programme can freeze a layer: how much of the water of what freezes is ice. */
      icePct: z.number().optional(),
      /** Where vapour is exchanged: what dried off and what settled, as `massKg` (per metre for cylinder and block, per m² for slab). */
      waterLostG: z.number().optional(),
      waterSettledG: z.number().optional(),
    }),
  ),
  lethality: z.object({
    min: z.number(),
    reachedAtMin: z.number().nullable(),
    /** True only where the target is met and nothing below takes away from the result its standing as an answer. */
    passes: z.boolean(),
    verdict: z.enum(['holds', 'short', 'unknown']),
    /** Why a number that would do is `unknown`, and does not pass. */
    doubts: z.array(z.string()),
  }),
  history: z.object({
    min: list,
    coldestC: list,
    warmestC: list,
    surfaceC: list,
    meanC: list,
    coldSpotC: list,
    mediumC: list,
    lethalityMin: list,
    icePct: list.optional(),
  }),
  heatBalancePct: z.number(),
  massKg: z.number(),
  /** What dried off over all stages, in per cent of the mass, where vapour is exchanged at all. */
  waterLostPct: z.number().optional(),
  probes: z.array(z.object({ name: z.string(), C: list, lethalityMin: z.number() })),
  basis: z.array(BasisAnswer),
  /** How long a stage takes at the low end, the default and the high end of its medium's range; null where it never gets there. */
  mediaRanges: z
    .array(
      z.object({
        stage: z.int(),
        name: z.string(),
        medium: z.string(),
        lowWm2K: z.number(),
        usualWm2K: z.number(),
        highWm2K: z.number(),
        lowMin: z.number().nullable(),
        usualMin: z.number().nullable(),
        highMin: z.number().nullable(),
        source: z.string(),
      }),
    )
    .optional(),
});
export type CookAnswer = z.infer<typeof CookAnswer>;

const metres = (mm: number) => mm / 1000;
const seconds = (min: number) => min * 60;

/** A body in the engine's terms; refuses what the engine would, in the input's terms. */
export function toBody(body: BodyInput): Body {
  const layers = body.layers.map(
    (layer): Layer => ({
      name: layer.name,
      ...(layer.thicknessMm === undefined ? {} : { thickness: metres(layer.thicknessMm) }),
      ...(layer.freezingPointC === undefined ? {} : { freezing: layer.freezingPointC }),
      ...(layer.freezesAs === undefined ? {} : { freezesAs: layer.freezesAs }),
      ...(layer.conductivityBy === undefined ? {} : { conductivityBy: layer.conductivityBy }),
      material:
        layer.composition === undefined
          ? {
              properties: {
                k: layer.properties?.kWmK ?? Number.NaN,
                rho: layer.properties?.rhoKgM3 ?? Number.NaN,
                cp: layer.properties?.cpJkgK ?? Number.NaN,
              },
            }
          : { composition: layer.composition },
    }),
  );
  switch (body.shape) {
    case 'revolved': {
      const end = Math.max(...body.profile.map((p) => p.atMm));
      if (body.lengthMm !== undefined && Math.abs(body.lengthMm - end) > 1e-6 * end)
        refuse('body.lengthMm', `${body.lengthMm} mm`, `the last profile point's distance, ${end} mm`);
      return {
        shape: 'revolved',
        profile: body.profile.map((p) => ({ at: metres(p.atMm), diameter: metres(p.diameterMm) })),
        layers,
      };
    }
    case 'slab':
      return { shape: 'slab', thickness: metres(body.thicknessMm), layers };
    case 'block':
      return { shape: 'block', width: metres(body.widthMm), height: metres(body.heightMm), layers };
    default:
      return { shape: body.shape, diameter: metres(body.diameterMm), layers };
  }
}

function toUntil(until: UntilInput): Until {
  if ('min' in until) return { kind: 'time', s: seconds(until.min) };
  const bound = until.atMostMin === undefined ? {} : { atMost: seconds(until.atMostMin) };
  if ('coldestC' in until) return { kind: 'coldest', C: until.coldestC, ...bound };
  if ('warmestC' in until) return { kind: 'warmest', C: until.warmestC, ...bound };
  return { kind: 'lethality', s: seconds(until.lethalityMin), ...bound };
}

function toPlace(probe: ProbeInput, shape: Body['shape'], path: string): Place {
  const need = (key: 'atMm' | 'radiusMm' | 'xMm' | 'yMm') => {
    const value = probe[key];
    if (value === undefined || value === null)
      refuse(`${path}.${key}`, 'nothing', `a distance in mm: a ${shape} needs it`);
    return metres(value);
  };
  if (shape === 'revolved') return { at: need('atMm'), radius: need('radiusMm') };
  if (shape === 'block') return { x: need('xMm'), y: need('yMm') };
  if (shape === 'slab')
    return { x: probe.xMm === undefined && probe.radiusMm !== undefined ? need('radiusMm') : need('xMm') };
  return { radius: need('radiusMm') };
}

const untilKey = {
  time: 'min',
  lethality: 'lethalityMin',
  coldest: 'coldestC',
  warmest: 'warmestC',
} as const;

/** The engine's paths and units turned into those of the input. */
export function inInputTerms(error: OutOfRange | Contradiction, problem?: CookProblem): Problem {
  const units = (text: string) =>
    text
      .replace(/(-?\d[\d.]*(?:e[+-]?\d+)?) m(?![²³\w/])/g, (_, n: string) => `${tidy(Number(n) * 1000)} mm`)
      .replace(/(-?\d[\d.]*(?:e[+-]?\d+)?) s(?![\w/])/g, (_, n: string) => `${tidy(Number(n) / 60)} min`);
  const stage = /^stages\[(\d+)\]/.exec(error.path)?.[1];
  const kind = stage === undefined ? undefined : problem?.stages[Number(stage)]?.until.kind;
  const path = error.path
    .replace(/\.medium(\[\d+\])\.t$/, '.mediumLog$1.min')
    .replace(/\.medium(\[\d+\])\.C$/, '.mediumLog$1.C')
    .replace(
      /\.medium$/,
      stage !== undefined && typeof problem?.stages[Number(stage)]?.medium === 'object'
        ? '.mediumLog'
        : '.mediumC',
    )
    .replace(/\.until\.(s|C)$/, kind === undefined ? '.until' : `.until.${untilKey[kind]}`)
    .replace(/\.until\.atMost$/, '.until.atMostMin')
    .replace(/\.surface\.ladle\.C$/, '.ladle.fatC')
    .replace(/\.surface\.(ladle\.h)$/, '.$1')
    .replace(/\.surface\.vapour\.pressure$/, '.pressureKPa')
    .replace(/\.surface\.vapour\.partial$/, '.dewPointC')
    .replace(/\.surface\.vapour\.\w+$/, '.humidityPct')
    .replace(/\.surface\.radiators\[0\]\.C$/, '.radiantC')
    .replace(/\.surface\.flux$/, '.fluxWm2')
    .replace(/\.surface\.resistance$/, '.resistanceM2KW')
    .replace(/\.h$/, '.hWm2K')
    .replace(/\.place\.(\w+)$/, '.$1Mm')
    .replace(/\.(at|diameter|thickness|width|height)$/, '.$1Mm')
    .replace(/\.properties\.k$/, '.properties.kWmK')
    .replace(/\.properties\.rho$/, '.properties.rhoKgM3')
    .replace(/\.properties\.cp$/, '.properties.cpJkgK')
    .replace(/^start$/, 'startC')
    .replace(/^target\.reference$/, 'target.referenceC')
    .replace(/^target\.z$/, 'target.zC')
    .replace(/^target\.s$/, 'target.min');
  return { path, found: units(error.found), allowed: units(error.allowed) };
}

const tidy = (x: number) => String(Number(x.toPrecision(9)));

/** Runs something of the engine; what it refuses becomes `InputProblems` in the input's own terms. */
function inTerms<T>(work: () => T, problem?: CookProblem): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof OutOfRange || error instanceof Contradiction)) throw error;
    // The contract's own checks already speak the input's terms.
    const own = /(Mm|C|Min|Wm2K|medium)$/.test(error.path) && problem === undefined;
    throw new InputProblems([
      own ? { path: error.path, found: error.found, allowed: error.allowed } : inInputTerms(error, problem),
    ]);
  }
}

function convert(input: CookInput): CookProblem {
  const body = toBody(input.body);
  const stages = input.stages.map((stage, i) => ({
    name: stage.name,
    ...inTerms(() => surroundingsOf(stage, `stages[${i}]`)),
    until: toUntil(stage.until),
  }));
  const doubts = input.stages.flatMap((stage) => dryingDoubt(stage) ?? []);
  return {
    body,
    start: input.startC,
    stages,
    ...(doubts.length === 0 ? {} : { doubts }),
    target: { reference: input.target.referenceC, z: input.target.zC, s: seconds(input.target.min) },
    ...(input.probes === undefined
      ? {}
      : {
          probes: input.probes.map((probe, i) => ({
            name: probe.name,
            place: toPlace(probe, body.shape, `probes[${i}]`),
          })),
        }),
  };
}

/** The engine's problem for an input of the contract. Throws `InputProblems` for anything wrong with it. */
export function toProblem(input: unknown): CookProblem {
  const problem = convert(accept(CookInput, input));
  inTerms(() => checkProblem(problem), problem);
  return problem;
}

const mm = (m: number | undefined) => (m ?? 0) * 1000;
const min = (s: number) => s / 60;

/** The engine's result in the contract's terms. */
function toAnswer(problem: CookProblem, result: CookResult, more: readonly Basis[]): CookAnswer {
  const { coldSpot, history: h, mesh } = result;
  const { word, doubts } = verdictOf(problem, result, problem.stages.length);
  const flat = mesh.shape === 'slab' || mesh.shape === 'block';
  const exchanging = result.stages.flatMap(({ water }) => water ?? []);
  const lost = exchanging.reduce((sum, water) => sum + water.lost, 0);
  return {
    coldSpot: flat
      ? { xMm: mm(coldSpot.x), yMm: mm(coldSpot.y) }
      : { atMm: mm(coldSpot.at), radiusMm: mm(coldSpot.radius) },
    stages: result.stages.map((stage) => ({
      name: stage.name,
      startMin: min(stage.start),
      endMin: min(stage.end),
      reached: stage.reached,
      coldestC: stage.coldest,
      warmestC: stage.warmest,
      surfaceC: stage.surface,
      meanC: stage.mean,
      coldSpotC: stage.coldSpot,
      ...(stage.ice === undefined ? {} : { icePct: 100 * stage.ice }),
      ...(stage.water === undefined
        ? {}
        : { waterLostG: 1000 * stage.water.lost, waterSettledG: 1000 * stage.water.settled }),
    })),
    lethality: {
      min: min(result.lethality.s),
      reachedAtMin: result.lethality.reachedAt === null ? null : min(result.lethality.reachedAt),
      passes: result.lethality.passes && word === 'holds',
      verdict: word,
      doubts: doubts.map(({ what }) => what),
    },
    history: {
      min: Array.from(h.t, min),
      coldestC: [...h.coldest],
      warmestC: [...h.warmest],
      surfaceC: [...h.surface],
      meanC: [...h.mean],
      coldSpotC: [...h.coldSpot],
      mediumC: [...h.medium],
      lethalityMin: Array.from(h.lethality, min),
      ...(h.ice === undefined ? {} : { icePct: Array.from(h.ice, (x) => 100 * x) }),
    },
    heatBalancePct: result.heatBalancePct,
    massKg: result.mass,
    ...(exchanging.length === 0 ? {} : { waterLostPct: (100 * lost) / result.mass }),
    probes: result.probes.map((probe) => ({
      name: probe.name,
      C: [...probe.C],
      lethalityMin: min(probe.lethality.at(-1) ?? 0),
    })),
    basis: [...result.basis, ...more],
  };
}

export interface RunOptions {
  /** Called now and then with the simulated time [s]; return false to stop. */
  readonly onProgress?: (simulatedS: number) => boolean | undefined;
}

/** Runs `cook` from JSON to JSON. Throws `InputProblems` for anything wrong with the input. */
export function runCook(input: unknown, options: RunOptions = {}): CookAnswer {
  const accepted = accept(CookInput, input);
  const problem = convert(accepted);
  const result = inTerms(
    () =>
      cook(problem, {
        ...(accepted.mode === undefined ? {} : { mode: accepted.mode }),
        ...(options.onProgress === undefined ? {} : { onProgress: options.onProgress }),
      }),
    problem,
  );
  const answer = toAnswer(problem, result, accepted.stages.flatMap(stageBasis));
  if (accepted.mediaRanges !== true) return answer;
  return { ...answer, mediaRanges: mediaRangesOf(accepted.stages, problem, result) };
}
