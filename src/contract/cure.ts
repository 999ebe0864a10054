/** `cure`: salt into a piece by brine or dry salt, as the headless contract asks for it (mm, g, h, %). */
import { z } from 'zod';
import { Contradiction, OutOfRange } from '../core/errors.ts';
import { diffusivityBasis, muscleDiffusivity, skinBasis } from '../core/properties/brine.ts';
import type { CureProblem, CureStageResult, SaltState } from '../core/salt/cure.ts';
import type { CureMedium, CurePiece } from '../core/salt/cure-piece.ts';
import { foreseeCure, type Span, type Wanted } from '../core/salt/foresee.ts';
import { pumpedPiece } from '../core/salt/pumped.ts';
import { saltWaterActivity, sugarWaterActivity, togetherActivity } from '../core/salt/water-activity.ts';
import type { Basis } from '../core/sources.ts';
import { cureCautions, pumpedCaution } from './cure-cautions.ts';
import { type BathInput, CureInput } from './cure-input.ts';
import { NitrateAnswer, nitrateAnswer } from './cure-nitrate.ts';
import { NitriteAnswer, nitriteAnswer } from './cure-nitrite.ts';
import { accept, InputProblems, type Problem } from './problem.ts';

const list = z.array(z.number());
const Hours = z.number().nullable();

const CureStageAnswer = z.strictObject({
  name: z.string(),
  endH: z.number(),
  /** At the stage's end. */
  meanSaltPct: z.number(),
  coreSaltPct: z.number(),
  surfaceSaltPct: z.number(),
  bathSaltPct: z.number().nullable(),
  /** Where it would end if it went on for ever. */
  equilibriumSaltPct: z.number(),
  equilibriumWaterPhaseSaltPct: z.number(),
  /** From the stage's start; null where there is no way to go, or not within 20 years. */
  hoursTo90Pct: Hours,
  coreHoursTo90Pct: Hours,
  takenUpG: z.number(),
  /** Dry salt left on the piece, and when all of it was dissolved, from the stage's start. */
  undissolvedG: z.number(),
  dissolvedAtH: Hours,
  diffusivityM2s: z.number(),
});

export const CureAnswer = z.strictObject({
  /** % of the salted piece, where the last stage would end if it went on for ever. */
  equilibriumSaltPct: z.number(),
  equilibriumWaterPhaseSaltPct: z.number(),
  /** Salt in the piece at that end, to a kilogram of the piece before the cure. */
  equilibriumSaltGPerKg: z.number(),
  /** % of the salted piece at the end of the last stage. */
  meanSaltPct: z.number(),
  coreSaltPct: z.number(),
  surfaceSaltPct: z.number(),
  /** Salt/(salt + water) of the whole piece, and at its core. */
  waterPhaseSaltPct: z.number(),
  coreWaterPhaseSaltPct: z.number(),
  /** By salt, and sugars where given, at 25 °C: of the whole piece as if it were even, and at its core, where it is highest. */
  waterActivity: z.number(),
  coreWaterActivity: z.number(),
  /** Of the last stage, from its start: nine tenths of the salt on its way are in; the core has gone nine tenths of its way. null: no way to go, or not within 20 years. */
  hoursTo90Pct: Hours,
  coreHoursTo90Pct: Hours,
  /** The same for the fastest and the slowest diffusivity published; null where one was given, with a skin, or with several stages. */
  hoursTo90PctRange: z.strictObject({ low: z.number(), high: z.number() }).nullable(),
  /** The end again with the lowest of the published diffusivities, for whoever counts on the core; null where all were given. */
  slowest: z
    .strictObject({
      meanSaltPct: z.number(),
      coreSaltPct: z.number(),
      coreWaterPhaseSaltPct: z.number(),
      coreWaterActivity: z.number(),
    })
    .nullable(),
  stages: z.array(CureStageAnswer),
  profile: z.array(
    z.strictObject({
      depthMm: z.number(),
      saltPct: z.number(),
      waterPhaseSaltPct: z.number(),
      waterActivity: z.number(),
    }),
  ),
  history: z.strictObject({
    h: list,
    meanSaltPct: list,
    coreSaltPct: list,
    surfaceSaltPct: list,
    waterPhaseSaltPct: list,
    coreWaterPhaseSaltPct: list,
    bathSaltPct: z.array(z.number().nullable()),
  }),
  /** Salt that the computation has made or lost, % of all there was. */
  saltBalancePct: z.number(),
  /** null where none was asked about. */
  nitrite: NitriteAnswer.nullable(),
  nitrate: NitrateAnswer.nullable(),
  /** The core has gone nine tenths of its way to where the last stage would end, from the start of all, the last stage going on; with the range of the published diffusivities. */
  evenH: Hours,
  evenHRange: z.strictObject({ low: Hours, high: Hours }).nullable(),
  /** The way to the salt wanted, of the first stage; null where none was. Hours null: never; strength null: none does it. */
  wanted: z
    .strictObject({
      saltPct: z.number(),
      hours: Hours,
      hoursRange: z.strictObject({ low: Hours, high: Hours }).nullable(),
      coreHours: Hours,
      /** Brine that brings the mean there in the first stage's hours. */
      strengthPct: z.number().nullable(),
      /** Brine, or dry salt, that ends there however long the piece lies in it. */
      atRest: z.strictObject({ strengthPct: z.number(), saltG: z.number() }).nullable(),
    })
    .nullable(),
  basis: z.array(z.object({ what: z.string(), source: z.string(), confidence: z.string() })),
  cautions: z.array(z.string()),
});
export type CureAnswer = z.infer<typeof CureAnswer>;

function toMedium(bath: BathInput): CureMedium {
  if ('rest' in bath) return { kind: 'rest' };
  if ('drySaltG' in bath) return { kind: 'dry', salt: bath.drySaltG / 1000 };
  const salt = bath.saltPct / 100;
  return 'massG' in bath ? { kind: 'bath', mass: bath.massG / 1000, salt } : { kind: 'kept', salt };
}

type Stage = NonNullable<CureInput['stages']>[number];

const stagesOf = ({ stages, bath, temperatureC, h }: CureInput): Stage[] =>
  stages ??
  (bath === undefined || temperatureC === undefined || h === undefined
    ? []
    : [{ name: 'cure', bath, temperatureC, h }]);

function toProblem(input: CureInput): CureProblem {
  const { piece } = input;
  const core: CurePiece = {
    shape: piece.shape,
    size: (piece.thicknessMm ?? piece.diameterMm ?? Number.NaN) / 1000,
    exposedFaces: piece.exposedFaces ?? 2,
    mass: piece.massG / 1000,
    water: piece.water,
    salt: piece.salt ?? 0,
    ...(piece.skin === undefined
      ? {}
      : {
          skin: {
            thickness: piece.skin.thicknessMm / 1000,
            water: piece.skin.water ?? piece.water,
            ...(piece.skin.diffusivityM2s === undefined ? {} : { diffusivity: piece.skin.diffusivityM2s }),
          },
        }),
  };
  const { pumped } = piece;
  return {
    piece: pumped === undefined ? core : pumpedPiece(core, pumped.pumpPct / 100, pumped.brineSaltPct / 100),
    stages: stagesOf(input).map(({ bath, temperatureC, h }) => ({
      medium: toMedium(bath),
      temperature: temperatureC,
      time: h * 3600,
    })),
    ...(input.diffusivityM2s === undefined ? {} : { diffusivity: input.diffusivityM2s }),
  };
}

/** The engine's paths and units in the input's: suffix, the input's key, and what a number is multiplied by. */
const terms: readonly (readonly [RegExp, string, number, string])[] = [
  [/\.skin\.thickness$/, '.skin.thicknessMm', 1000, 'mm'],
  [/\.size$/, '.sizeMm', 1000, 'mm'],
  [/\.medium\.mass$/, '.bath.massG', 1000, 'g'],
  [/\.mass$/, '.massG', 1000, 'g'],
  [/\.medium\.salt$/, '.bath.saltPct', 100, '%'],
  [/\.medium$/, '.bath', 1, ''],
  [/\.temperature$/, '.temperatureC', 1, ''],
  [/\.time$/, '.h', 1 / 3600, 'h'],
  [/iffusivity$/, 'iffusivityM2s', 1, ''],
  [/^wanted$/, 'wanted.saltPct', 100, '%'],
];

function inInputTerms(error: OutOfRange | Contradiction, input: CureInput): Problem {
  const found = terms.find(([suffix]) => suffix.test(error.path));
  if (found === undefined) return { path: error.path, found: error.found, allowed: error.allowed };
  const [suffix, key, factor, unit] = found;
  let path = error.path.replace(suffix, key);
  if (input.stages === undefined) path = path.replace(/^stages\[0\]\./, '');
  path = path.replace('sizeMm', input.piece.shape === 'slab' ? 'thicknessMm' : 'diameterMm');
  if (factor === 1) return { path, found: error.found, allowed: error.allowed };
  // Only the value itself and its bounds, not the temperature that a bound is said to hold at.
  const words = (text: string) =>
    text.replace(
      /^(-?[\d.]+(?:e-?\d+)?)( to (-?[\d.]+(?:e-?\d+)?))?( \w+)?(?=,|$)/,
      (_, a: string, __, b?: string) =>
        [a, b]
          .filter((n) => n !== undefined)
          .map((n) => Number((Number(n) * factor).toPrecision(6)))
          .join(' to ')
          .concat(` ${unit}`),
    );
  return { path, found: words(error.found), allowed: words(error.allowed) };
}

const pct = (x: number) => x * 100;
const inHours = (s: number | null) => (s === null ? null : s / 3600);

function stageAnswer(name: string, stage: CureStageResult): z.infer<typeof CureStageAnswer> {
  const { end, equilibrium } = stage;
  return {
    name,
    endH: end.t / 3600,
    meanSaltPct: pct(end.mean),
    coreSaltPct: pct(end.core),
    surfaceSaltPct: pct(end.surface),
    bathSaltPct: end.bath === null ? null : pct(end.bath),
    equilibriumSaltPct: pct(equilibrium.salt),
    equilibriumWaterPhaseSaltPct: pct(equilibrium.waterPhase),
    hoursTo90Pct: inHours(stage.to90),
    coreHoursTo90Pct: inHours(stage.coreTo90),
    takenUpG: stage.takenKg * 1000,
    undissolvedG: stage.undissolvedKg * 1000,
    dissolvedAtH: inHours(stage.usedUpAt),
    diffusivityM2s: stage.diffusivity,
  };
}

function basisOf(input: CureInput): Basis[] {
  const { piece } = input;
  const given = (what: string): Basis => ({ what, source: 'user-input', confidence: 'assumption' });
  const assumed = (what: string): Basis => ({ what, source: 'own-assumption', confidence: 'assumption' });
  return [
    {
      what: 'diffusion of salt in the water of the piece, with the balance of mass between piece and bath',
      source: 'crank-1975',
      confidence: 'computed',
    },
    ...(input.diffusivityM2s === undefined
      ? diffusivityBasis
      : [given(`diffusivity of salt ${input.diffusivityM2s} m²/s as given, at every temperature`)]),
    ...(piece.skin === undefined
      ? []
      : piece.skin.diffusivityM2s === undefined
        ? [skinBasis]
        : [given(`diffusivity of salt in the skin ${piece.skin.diffusivityM2s} m²/s as given`)]),
    ...(piece.skin !== undefined && piece.skin.water === undefined
      ? [assumed('as much water in the skin as in the piece')]
      : []),
    ...(piece.pumped === undefined
      ? []
      : [assumed('pumped brine taken as spread evenly through the piece, none of it dripping out')]),
    ...(piece.salt === undefined ? [assumed('no salt in the piece before the cure')] : []),
    ...(piece.shape === 'slab' && piece.exposedFaces === undefined
      ? [assumed('salt enters by both faces')]
      : []),
    ...(piece.shape !== 'slab' && piece.exposedFaces !== undefined
      ? [assumed(`exposedFaces is without meaning for a ${piece.shape}: salt enters all around`)]
      : []),
    assumed(
      'the piece keeps its water (meat swells in weak brine and shrinks in strong), the bath is stirred, edges and ends take nothing up',
    ),
    {
      what: '3.5 % salt in the water phase throughout: one of several controlling factors in UK guidance on vacuum-packed chilled food',
      source: 'fsa-vacuum-packing-2020',
      confidence: 'secondary',
    },
    {
      what: 'water activity by salt at 25 °C, to 0.0007',
      source: 'pitzer-mayorga-1973',
      confidence: 'computed',
    },
    ...(piece.sugars === undefined || piece.sugars.length === 0
      ? []
      : ([
          {
            what: 'water activity of sugars at 25 °C, constants 6.47 (sucrose) and 2.25 (glucose)',
            source: 'norrish-1966',
            confidence: 'memory',
          },
          {
            what: 'activities of salt and sugars multiplied, as if they did not act on one another',
            source: 'ross-1975',
            confidence: 'memory',
          },
        ] as const)),
  ];
}

const rangeOf = ({ quickest, slowest }: Span) =>
  quickest === null && slowest === null ? null : { low: inHours(quickest), high: inHours(slowest) };

function wantedAnswer(wanted: Wanted | null): CureAnswer['wanted'] {
  if (wanted === null) return null;
  const { salt, time, coreTime, strength, atRest } = wanted;
  return {
    saltPct: pct(salt),
    hours: inHours(time.usual),
    hoursRange: rangeOf(time),
    coreHours: inHours(coreTime),
    strengthPct: strength === null ? null : pct(strength),
    atRest: atRest === null ? null : { strengthPct: pct(atRest.strength), saltG: atRest.saltKg * 1000 },
  };
}

/** Runs `cure` from JSON to JSON. Throws `InputProblems` for anything wrong with the input. */
export function runCure(json: unknown): CureAnswer {
  const input = accept(CureInput, json);
  const problem = toProblem(input);
  const nitrite = input.nitrite === undefined ? null : nitriteAnswer(input.nitrite, input.piece.massG);
  const nitrate = input.nitrate === undefined ? null : nitrateAnswer(input.nitrate, input.piece.massG);
  const sugars = (input.piece.sugars ?? []).map(({ sugar, gPerKgWater }) =>
    sugarWaterActivity(sugar, gPerKgWater / 1000),
  );
  const activity = (waterPhase: number) => togetherActivity([saltWaterActivity(waterPhase), ...sugars]);
  try {
    const foreseen = foreseeCure(
      problem,
      input.wanted === undefined ? undefined : input.wanted.saltPct / 100,
    );
    const { stages, history, profile, balance } = foreseen.result;
    const last = stages.at(-1);
    if (last === undefined) throw new Error('a cure without a stage');
    const { end, equilibrium } = last;
    const slow = foreseen.slowest ?? undefined;
    const column = (pick: (state: SaltState) => number) => history.map((state) => pct(pick(state)));
    const hoursTo90 = inHours(last.to90);
    const spread =
      input.diffusivityM2s === undefined && input.piece.skin === undefined && stages.length === 1;
    const { at5C, low, high } = muscleDiffusivity;
    return {
      equilibriumSaltPct: pct(equilibrium.salt),
      equilibriumWaterPhaseSaltPct: pct(equilibrium.waterPhase),
      equilibriumSaltGPerKg: (equilibrium.saltKg / problem.piece.mass) * 1000,
      meanSaltPct: pct(end.mean),
      coreSaltPct: pct(end.core),
      surfaceSaltPct: pct(end.surface),
      waterPhaseSaltPct: pct(end.meanWaterPhase),
      coreWaterPhaseSaltPct: pct(end.coreWaterPhase),
      waterActivity: activity(end.meanWaterPhase),
      coreWaterActivity: activity(end.coreWaterPhase),
      hoursTo90Pct: hoursTo90,
      coreHoursTo90Pct: inHours(last.coreTo90),
      hoursTo90PctRange:
        spread && hoursTo90 !== null
          ? { low: (hoursTo90 * at5C) / high, high: (hoursTo90 * at5C) / low }
          : null,
      slowest:
        slow === undefined
          ? null
          : {
              meanSaltPct: pct(slow.mean),
              coreSaltPct: pct(slow.core),
              coreWaterPhaseSaltPct: pct(slow.coreWaterPhase),
              coreWaterActivity: activity(slow.coreWaterPhase),
            },
      stages: stages.map((stage, i) => stageAnswer(stagesOf(input)[i]?.name ?? '', stage)),
      profile: profile.map(({ depth, salt, waterPhase }) => ({
        depthMm: depth * 1000,
        saltPct: pct(salt),
        waterPhaseSaltPct: pct(waterPhase),
        waterActivity: activity(waterPhase),
      })),
      history: {
        h: history.map(({ t }) => t / 3600),
        meanSaltPct: column((s) => s.mean),
        coreSaltPct: column((s) => s.core),
        surfaceSaltPct: column((s) => s.surface),
        waterPhaseSaltPct: column((s) => s.meanWaterPhase),
        coreWaterPhaseSaltPct: column((s) => s.coreWaterPhase),
        bathSaltPct: history.map(({ bath }) => (bath === null ? null : pct(bath))),
      },
      saltBalancePct: pct(balance),
      nitrite,
      nitrate,
      evenH: inHours(foreseen.even.usual),
      evenHRange: rangeOf(foreseen.even),
      wanted: wantedAnswer(foreseen.wanted),
      basis: basisOf(input),
      cautions: [
        ...(nitrite?.cautions ?? []),
        ...(nitrate?.cautions ?? []),
        ...(input.piece.pumped === undefined ? [] : [pumpedCaution]),
        ...cureCautions(stages, problem, slow),
      ],
    };
  } catch (error) {
    if (!(error instanceof OutOfRange || error instanceof Contradiction)) throw error;
    throw new InputProblems([inInputTerms(error, input)]);
  }
}
