/** `sure`: what may vary about a cook, and how a drawn piece is put in its place. */
import { z } from 'zod';
import type { CookProblem } from '../core/heat/types.ts';
import { cutAt, type SpreadKind } from '../core/method/sure-surface.ts';
import { media, mediumNamed } from '../core/properties/media.ts';
import { refuseComparedOnly } from './compared-only.ts';
import { CookInput, toProblem } from './cook.ts';
import { accept, InputProblems, type Problem, pathText } from './problem.ts';
import { conducting, conductivityLimits, conductivitySpread } from './sure-conductivity.ts';
import { LowHigh, MeanSd, Spread } from './sure-spread.ts';
import { boilingOf } from './surroundings.ts';

/** The same schema, with every number in it open to a spread. */
function spreadable(schema: z.ZodType): z.ZodType {
  const inner = (s: unknown) => spreadable(s as z.ZodType);
  const like = (change: object) => schema.clone({ ...schema.def, ...change } as typeof schema.def);
  if (schema instanceof z.ZodNumber) return z.union([schema, MeanSd, LowHigh]);
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable)
    return like({ innerType: inner(schema.def.innerType) });
  if (schema instanceof z.ZodArray) return like({ element: inner(schema.def.element) });
  if (schema instanceof z.ZodUnion) return like({ options: schema.def.options.map(inner) });
  if (schema instanceof z.ZodObject)
    return like({ shape: Object.fromEntries(Object.entries(schema.shape).map(([k, v]) => [k, inner(v)])) });
  return schema;
}

const { probes: _, mode: __, ...cookShape } = CookInput.shape;
const varying = Object.fromEntries(
  Object.entries(cookShape).map(([key, schema]) => [key, spreadable(schema)]),
);

export const SureInput = z.strictObject({
  ...varying,
  /** How often the worst piece of a batch must pass, 0.5 to 0.9999. */
  confidence: z.number().min(0.5).max(0.9999),
  /** Runs of the engine; default 1000. */
  samples: z.int().min(16).max(20_000).optional(),
  /** Pieces in a batch; default 1. */
  pieces: z.int().min(1).max(1_000).optional(),
  seed: z
    .int()
    .min(0)
    .max(2 ** 31 - 1)
    .optional(),
  /** By how much the whole piece is thicker than drawn: added to every diameter, or to thickness, width and height. */
  thickerMm: Spread.optional(),
  /** By how much the probe that the model was fitted to reads high; a number is a standard deviation about 0. */
  probeErrorC: z.union([z.number().min(0).max(10), Spread]).optional(),
  /**
   * What the conductivity of every layer with a composition is multiplied by. Default 0.9 to 1.1, as far as the rule was out beside
   * measurements; 1 for none. Where a log was fitted, the `factor` of its `diffusivity` takes the default's place.
   */
  conductivityFactor: z.union([z.number(), Spread]).optional(),
  /** Paths, or beginnings of them, of what is the same for all pieces of a batch; in place of what is usual. */
  shared: z.array(z.string().min(1).max(200)).max(200).optional(),
  /** The stage whose time is wanted, by name or by number from 0; default the first that ends by time or lethality. */
  stage: z.union([z.string().min(1).max(80), z.int().min(0).max(99)]).optional(),
  /** Rules of cooking that must pass as well as the target. */
  rules: z.array(z.string().min(1).max(80)).max(20).optional(),
  /** Accepted as in `cook`, and of no effect here. */
  probes: CookInput.shape.probes,
  mode: CookInput.shape.mode,
});

type Key = string | number;

/** One thing that varies. */
export interface Variable {
  /** As in the input, e.g. `body.profile[2].diameterMm`. */
  readonly input: string;
  readonly keys: readonly Key[];
  readonly kind: SpreadKind;
  readonly middle: number;
  /** Standard deviation, or half of the distance between the ends. */
  readonly reach: number;
  readonly shared: boolean;
}

const isSpread = (value: unknown): value is Spread => Spread.safeParse(value).success;

const variableOf = (keys: readonly Key[], spread: Spread): Omit<Variable, 'shared'> => ({
  input: pathText(keys),
  keys,
  ...('mean' in spread
    ? { kind: 'normal' as const, middle: spread.mean, reach: spread.sd }
    : {
        kind: 'uniform' as const,
        middle: (spread.low + spread.high) / 2,
        reach: (spread.high - spread.low) / 2,
      }),
});

/** Spreads found in a piece of input, and the same with each replaced by its middle. */
function found(value: unknown, keys: readonly Key[], into: Omit<Variable, 'shared'>[]): unknown {
  if (isSpread(value)) {
    const variable = variableOf(keys, value);
    if (variable.reach > 0) into.push(variable);
    return variable.middle;
  }
  if (Array.isArray(value)) return value.map((v, i) => found(v, [...keys, i], into));
  if (value !== null && typeof value === 'object')
    return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, found(v, [...keys, k], into)]));
  return value;
}

/** What a batch has in common unless it is said otherwise: its heat, its mix and the probe. What each piece has for itself: its size and how cold it is. */
const usuallyShared = (input: string) =>
  /^(stages|target|probeErrorC|conductivityFactor)\b/.test(input) ||
  /^body\.layers\[\d+\]\.(composition|properties)\b/.test(input);

const within = (input: string, beginnings: readonly string[]) =>
  beginnings.some((b) => input === b || input.startsWith(`${b}.`) || input.startsWith(`${b}[`));

function put(target: unknown, keys: readonly Key[], value: number): void {
  let at = target as Record<Key, unknown>;
  for (const key of keys.slice(0, -1)) at = at[key] as Record<Key, unknown>;
  at[keys.at(-1) ?? ''] = value;
}

/** A medium of the table is never hotter or colder than it can be; one that boils in the open no hotter than it boils. */
function keepMedia(input: CookInput, nominal: CookInput): void {
  input.stages.forEach((stage, i) => {
    if (stage.medium === undefined || !Object.hasOwn(media, stage.medium) || stage.mediumC === undefined)
      return;
    const { coldest, hottest, boils } = mediumNamed(stage.medium);
    const drawn = nominal.stages[i]?.mediumC ?? stage.mediumC;
    const most = boils === true ? Math.min(hottest, Math.max(drawn, boilingOf(stage))) : hottest;
    stage.mediumC = Math.min(most, Math.max(coldest, stage.mediumC));
  });
}

/** Fractions that were drawn stay as drawn; the others of the same mixture make room. */
function keepSums(input: CookInput, nominal: CookInput, variables: readonly Variable[]): void {
  input.body.layers.forEach((layer, i) => {
    const before = nominal.body.layers[i]?.composition;
    const { composition } = layer;
    if (before === undefined || composition === undefined) return;
    const drawn = new Set(
      variables.flatMap((v) =>
        within(v.input, [`body.layers[${i}].composition`]) ? [String(v.keys.at(-1))] : [],
      ),
    );
    if (drawn.size === 0) return;
    const names = Object.keys(composition) as (keyof typeof composition)[];
    const whole = names.reduce((s, n) => s + before[n], 0);
    const taken = names.reduce((s, n) => s + (drawn.has(n) ? composition[n] : 0), 0);
    const rest = names.reduce((s, n) => s + (drawn.has(n) ? 0 : before[n]), 0);
    for (const n of names)
      if (!drawn.has(n)) composition[n] = rest > 0 ? (before[n] * (whole - taken)) / rest : 0;
  });
}

function thicken(body: CookInput['body'], mm: number): void {
  if (body.shape === 'revolved') for (const point of body.profile) point.diameterMm += mm;
  else if (body.shape === 'slab') body.thicknessMm += mm;
  else if (body.shape === 'block') {
    body.widthMm += mm;
    body.heightMm += mm;
  } else body.diameterMm += mm;
}

/** What is drawn, as the engine takes it. */
export const drawnProblem = ({ cook, conducts }: Drawn): CookProblem => conducting(toProblem(cook), conducts);

export interface Drawn {
  readonly cook: CookInput;
  /** What its composed layers' conductivity is multiplied by. */
  readonly conducts: number;
  /** How much the probe reads high [K]. */
  readonly probeError: number;
  /** By how much the stage really lasts longer than it is set to [min]. */
  readonly late: number;
}

export interface Study {
  readonly nominal: CookInput;
  readonly variables: readonly Variable[];
  readonly stage: number;
  readonly confidence: number;
  readonly samples: number;
  readonly pieces: number;
  readonly seed: number;
  readonly rules: readonly string[];
  /** Is the spread of conductivity the one that is taken where none is given? */
  readonly usualConductivity: boolean;
  /** The cook with its numbers as drawn, one value a variable. */
  readonly draw: (values: readonly number[]) => Drawn;
}

function stageOf(cook: CookInput, wanted: string | number | undefined): number {
  const { stages } = cook;
  if (wanted === undefined) {
    const first = stages.findIndex(({ until }) => 'min' in until || 'lethalityMin' in until);
    return Math.max(0, first);
  }
  const index = typeof wanted === 'number' ? wanted : stages.findIndex((s) => s.name === wanted);
  if (stages[index] === undefined)
    throw new InputProblems([
      {
        path: 'stage',
        found: JSON.stringify(wanted),
        allowed: `one of ${stages.map((s) => JSON.stringify(s.name)).join(', ')}, or its number from 0`,
      },
    ]);
  return index;
}

/** What is asked of `sure`, checked: also that every spread stays within what the cook allows. Throws `InputProblems`. */
export function studyOf(input: unknown): Study {
  const accepted = accept(SureInput, input) as z.infer<typeof SureInput> & Record<string, unknown>;
  const {
    confidence,
    samples = 1_000,
    pieces = 1,
    seed = 1,
    shared,
    rules = [],
    probeErrorC,
    thickerMm,
    conductivityFactor,
  } = accepted;
  const { stage: wanted, probes: _probes, mode: _mode, ...rest } = accepted;
  const plain: Record<string, unknown> = Object.fromEntries(
    Object.entries(rest).filter(([k]) => k in cookShape),
  );
  const spreads: Omit<Variable, 'shared'>[] = [];
  const nominal = accept(CookInput, found(plain, [], spreads));
  refuseComparedOnly(nominal.body);
  const stage = stageOf(nominal, wanted);
  if (thickerMm !== undefined) spreads.push(variableOf(['thickerMm'], thickerMm));
  const error = typeof probeErrorC === 'number' ? { mean: 0, sd: probeErrorC } : probeErrorC;
  if (error !== undefined) spreads.push(variableOf(['probeErrorC'], error));
  const conductivity = conductivitySpread(nominal.body, conductivityFactor);
  const factor = variableOf(['conductivityFactor'], conductivity.spread);
  const variables = [
    ...spreads.filter((v) => v.reach > 0 || v.middle !== 0),
    ...(factor.reach > 0 || factor.middle !== 1 ? [factor] : []),
  ].map(
    (v): Variable => ({
      ...v,
      shared: shared === undefined ? usuallyShared(v.input) : within(v.input, shared),
    }),
  );
  unknownPaths(shared ?? [], variables);
  const own = pathText(['stages', stage, 'until', 'min']);
  const draw = (values: readonly number[]): Drawn => {
    const cook = structuredClone(nominal);
    let probeError = 0;
    let thicker = 0;
    let late = 0;
    let conducts = 1;
    variables.forEach((variable, i) => {
      const value = values[i] ?? variable.middle;
      if (variable.input === 'probeErrorC') probeError = value;
      else if (variable.input === 'thickerMm') thicker = value;
      else if (variable.input === 'conductivityFactor') conducts = value;
      else if (variable.input === own) late = value - variable.middle;
      else put(cook, variable.keys, value);
    });
    thicken(cook.body, thicker);
    keepSums(cook, nominal, variables);
    keepMedia(cook, nominal);
    return { cook, conducts, probeError, late };
  };
  const usual = conductivity.usual;
  const study = {
    nominal,
    variables,
    stage,
    confidence,
    samples,
    pieces,
    seed,
    rules,
    draw,
    usualConductivity: usual,
  };
  // What nobody asked for does not make an input too small.
  const least = 4 * (variables.length + (usual ? 0 : 1));
  if (samples < least)
    throw new InputProblems([
      {
        path: 'samples',
        found: String(samples),
        allowed: `at least ${least} where ${variables.length} numbers vary`,
      },
    ]);
  checkReach(study);
  return study;
}

function unknownPaths(shared: readonly string[], variables: readonly Variable[]): void {
  const idle = shared.flatMap((path, i): Problem[] =>
    variables.some((v) => within(v.input, [path])) ||
    within(path, [...Object.keys(cookShape), 'thickerMm', 'probeErrorC', 'conductivityFactor'])
      ? []
      : [
          {
            path: `shared[${i}]`,
            found: JSON.stringify(path),
            allowed: `the beginning of something that varies: ${variables.map((v) => v.input).join(', ') || 'nothing does'}`,
          },
        ],
  );
  if (idle.length > 0) throw new InputProblems(idle);
}

/** Every spread at either end, the others at their middles, must be a cook. */
function checkReach({ variables, draw }: Study): void {
  const middle = variables.map((v) => v.middle);
  toProblem(draw(middle).cook);
  const problems: Problem[] = [];
  variables.forEach((variable, i) => {
    for (const side of [-1, 1]) {
      const at = variable.middle + side * variable.reach * (variable.kind === 'normal' ? cutAt : 1);
      try {
        toProblem(draw(middle.map((m, j) => (j === i ? at : m))).cook);
        if (variable.input === 'probeErrorC' && Math.abs(at) > 20)
          throw new InputProblems([{ path: 'probeErrorC', found: `${at} K`, allowed: '−20 to 20 K' }]);
        const { low, high } = conductivityLimits;
        if (variable.input === 'conductivityFactor' && !(at >= low && at <= high))
          throw new InputProblems([{ path: variable.input, found: `${at}`, allowed: `${low} to ${high}` }]);
      } catch (error) {
        if (!(error instanceof InputProblems)) throw error;
        const end =
          variable.kind === 'uniform'
            ? side < 0
              ? 'low'
              : 'high'
            : `${cutAt} standard deviations ${side < 0 ? 'below' : 'above'} the mean`;
        problems.push({
          path: variable.input,
          found: `${Number(at.toPrecision(6))} (${end})`,
          allowed: error.problems.map((p) => `${p.path}: ${p.allowed}`).join('; '),
        });
        break;
      }
    }
  });
  if (problems.length > 0) throw new InputProblems(problems);
}
