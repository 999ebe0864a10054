/**
 * A dish is a method: an ordered list of typed steps. One schema per kind of step; what a step asks of whoever makes
 * the batch (weights, temperatures, times) stands in `asks`, with the limits that the record is held against.
 */
import { z } from 'zod';
import { alcoholTreatments } from '../core/filling/evaporation.ts';
import { BodyInput, ProfilePointInput, StageInput, TargetInput } from './body.ts';
import { CuredPiece, CureRest, CuringSalt } from './cure-parts.ts';
import { LineOf } from './pantry.ts';
import {
  Composition,
  celsius,
  grams,
  Id,
  Minor,
  millimetres,
  minutes,
  Note,
  percent,
  Text,
} from './quantities.ts';

/** One thing to record. `low`/`high` are in the unit of the kind: weight g, temperature °C, duration min, count pieces. */
export const Ask = z.strictObject({
  id: Id,
  kind: z.enum(['weight', 'temperature', 'duration', 'count', 'tick', 'note', 'core log']),
  label: Text(120),
  low: z.number().optional(),
  high: z.number().optional(),
  /** A critical control point: out of limit stops the batch until somebody has decided what now. */
  critical: z.boolean().optional(),
  /** Why this limit: a rule of the book, the law's figure, or common practice. */
  basis: z.string().max(300).optional(),
});
export type Ask = z.infer<typeof Ask>;

const common = {
  id: Id,
  name: Text(120),
  /** What to do, in the words of the method card. */
  how: Note(2_000),
  /** Minutes of somebody's hands. */
  handsMin: minutes(),
  /** Whose hands: a grade of the kitchen's rates; absent: the first of them. */
  grade: Text(40).optional(),
  /** What the step takes from the weight that goes into it, %, as weighed here; negative where it takes up. Absent: as it is reckoned. */
  lossPct: z.number().min(-300).max(99).optional(),
  asks: z.array(Ask).max(20),
};

export const TrimStep = z.strictObject({
  kind: z.literal('trim'),
  ...common,
  part: Text(),
  /** The part on the shelf that it is, by which it has its price. */
  of: LineOf.optional(),
  /** For the batch as it is written, as bought. */
  weightG: grams(),
  yieldPct: percent(),
});

export const CureStep = z.strictObject({
  kind: z.literal('cure'),
  ...common,
  by: z.enum(['dry cure', 'brine', 'equilibrium']),
  /** Dry cure: salt as % of the meat's weight. Brine: strength, % w/w of the brine. Equilibrium: salt as % of meat and water together. */
  saltPct: percent(),
  /** For each kilogram of meat: weight of the brine, or of the water at equilibrium. */
  brinePerKg: z.number().positive().max(100).optional(),
  h: z.number().min(0).max(2_000),
  mediumC: celsius(-5, 30),
  piece: CuredPiece.optional(),
  rest: CureRest.optional(),
  /** Mean salt that is wanted in the end, % of the cured piece. */
  wantedSaltPct: z.number().positive().max(26).optional(),
  curingSalt: CuringSalt.optional(),
});

export const RinseStep = z.strictObject({
  kind: z.literal('rinse and dry'),
  ...common,
  rinseMin: minutes(),
  dryMin: minutes(),
});

/** What was done to the alcohol: the treatments of the published table. */
export const AlcoholTreatment = z.enum(alcoholTreatments);
export type AlcoholTreatment = z.infer<typeof AlcoholTreatment>;

export const MixLine = z.strictObject({
  ingredient: Text(),
  /** What it is: the pantry knows the rest, as it stands today. Absent: only what the line itself says. */
  of: LineOf.optional(),
  /** An ingredient of the kitchen's own, as older methods name it: read as `of` where there is none. */
  ingredientId: Id.optional(),
  /** Weighed in, for the mix as it is written. */
  g: grams(),
  /** How it was meant, where not by weight: the weight follows when the mix is scaled. */
  amount: z
    .discriminatedUnion('by', [
      z.strictObject({ by: z.literal('pct of the meat'), pct: z.number().min(0).max(1_000) }),
      z.strictObject({ by: z.literal('per piece'), g: grams(100_000) }),
    ])
    .optional(),
  /** What comes from the steps before (trimmed, cured, cooked): weighed in again, not bought again. */
  carried: z.literal(true).optional(),
  /** Counts as the meat that percentages are taken of. */
  meat: z.literal(true).optional(),
  /** Cooked down before it goes in: what is left of its weight, and what was done to its alcohol. */
  reduced: z
    .strictObject({ toPct: z.number().min(0.1).max(100), alcohol: AlcoholTreatment.optional() })
    .optional(),
  /** Named in the dish's name, or what it is bought for: its quantity is declared. */
  declared: z.literal(true).optional(),
  /** As measured here, over what the pantry has. */
  composition: Composition.optional(),
  /** Salt within the ash, as a fraction of the line's weight, where known. */
  salt: z.number().min(0).max(1).optional(),
  pricePerKg: Minor.optional(),
  allergens: z.array(z.string().max(60)).max(14).optional(),
});
export type MixLine = z.infer<typeof MixLine>;

export const MixStep = z.strictObject({
  kind: z.literal('mix'),
  ...common,
  lines: z.array(MixLine).max(100),
  maxC: celsius(-5, 40),
  /** Smallest step of the scale that it is weighed on [g]; absent: 1 g. Salt and cure may have a finer one. */
  scaleStepG: z.number().min(0.01).max(100).optional(),
  fineScaleStepG: z.number().min(0.001).max(10).optional(),
});

export const FillStep = z.strictObject({
  kind: z.literal('fill'),
  ...common,
  casing: Text(),
  /** Filled outer shape of one piece. */
  profile: z.array(ProfilePointInput).min(2).max(60),
  skinMm: millimetres(0, 50),
  gramsPerPiece: grams(100_000),
  /** How many pieces the batch as written makes; absent: as many whole ones as the mix gives. */
  pieces: z.int().min(1).max(10_000).optional(),
  headSpacePct: percent(),
  /** How much the filling swells in the heat, % of its volume, as the kitchen has measured it. */
  swellPct: percent().optional(),
});

export const WrapStep = z.strictObject({
  kind: z.literal('wrap'),
  ...common,
  material: Text(),
  layers: z.int().min(0).max(40),
  /** Thickness of one layer [µm] and its conductivity, where the wrap is a heat resistance. */
  micrometres: z.number().min(0).max(2_000),
  kWmK: z.number().min(0.01).max(500),
});

/** What a rule may ask about a food. Absent: as the method shows it, and where that shows nothing, not known. */
export const Food = z.strictObject({
  minced: z.boolean().optional(),
  stuffedOrRolled: z.boolean().optional(),
  injectedOrTenderised: z.boolean().optional(),
  fatPct: percent().optional(),
  /** Nitrite put in, mg NaNO2 per kg. */
  nitritePpm: z.number().min(0).max(5_000).optional(),
});
export type Food = z.infer<typeof Food>;

export const CookStep = z.strictObject({
  kind: z.literal('cook'),
  ...common,
  body: BodyInput,
  startC: celsius(-40, 60),
  stages: z.array(StageInput).max(12),
  target: TargetInput,
  /** Rules of the book the core is held to. */
  rules: z.array(z.string().max(80)).max(12),
  /** What the food is, where the method does not show it: it decides which rules it is held to. */
  food: Food.optional(),
});
export type CookStep = z.infer<typeof CookStep>;

export const ChillStep = z.strictObject({
  kind: z.literal('chill'),
  ...common,
  stages: z.array(StageInput).max(12),
  rules: z.array(z.string().max(80)).max(8),
});

export const KeepStep = z.strictObject({
  kind: z.literal('keep'),
  ...common,
  maxC: celsius(-30, 20),
  days: z.number().min(0).max(365),
  packed: z.enum(['open or covered', 'vacuum-packed', 'gas-packed']),
  /** As measured, where they are known. */
  pH: z.number().min(1).max(12).optional(),
  waterActivity: z.number().min(0.2).max(1).optional(),
  waterPhaseSaltPct: percent().optional(),
  /** Rules of the book that a log of the keeping is held to. */
  rules: z.array(z.string().max(80)).max(8).optional(),
});

export const FinishStep = z.strictObject({
  kind: z.literal('finish'),
  ...common,
  by: Text(),
  mediumC: celsius(),
  min: minutes(),
  coreC: celsius(0, 100).optional(),
  /** As it goes in; absent: at the temperature of the keep step before it, if there is one. Below its first ice it thaws as it is computed. */
  startC: celsius(-40, 60).optional(),
  /** The portion as it is warmed: sliced, halved. Absent: the piece of the cook step before it. */
  body: BodyInput.optional(),
  /** Thawing, where it comes from the freezer, then the heat. Absent: nothing is computed. */
  stages: z.array(StageInput).max(12).optional(),
  /** Rules of the book for reheating and for keeping hot. */
  rules: z.array(z.string().max(80)).max(8).optional(),
});

export type FinishStep = z.infer<typeof FinishStep>;

export const PlateStep = z.strictObject({
  kind: z.literal('plate'),
  ...common,
  portionG: grams(5_000),
  portionsPerPiece: z.number().positive().max(1_000),
});

export const Step = z.discriminatedUnion('kind', [
  TrimStep,
  CureStep,
  RinseStep,
  MixStep,
  FillStep,
  WrapStep,
  CookStep,
  ChillStep,
  KeepStep,
  FinishStep,
  PlateStep,
]);
export type Step = z.infer<typeof Step>;
export type StepKind = Step['kind'];
export const stepKinds = Step.options.map((o) => o.shape.kind.value) as StepKind[];
export type StepOf<K extends StepKind> = Extract<Step, { kind: K }>;

export const Method = z.array(Step).max(40);
export type Method = z.infer<typeof Method>;
