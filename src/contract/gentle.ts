/** `gentle`: the temperature, or the two, and the time with which the piece is safe and least overcooked. */
import { z } from 'zod';
import { lessThanUsual } from '../core/method/foreseen-rules.ts';
import { type Gentle, gentleSearch, type Programme, type Step } from '../core/method/gentle.ts';
import type { Basis } from '../core/sources.ts';
import { StageInput } from './body.ts';
import { refuseComparedOnly } from './compared-only.ts';
import { CookInput, toProblem } from './cook.ts';
import { cookingRules } from './cooking-rules.ts';
import { accept, InputProblems } from './problem.ts';
import { celsius, minutes } from './quantities.ts';
import { usualCooking } from './step-rules.ts';

const Range = z
  .strictObject({ low: celsius(), high: celsius() })
  .refine((r) => r.high >= r.low, { message: 'high not below low' });

export const GentleInput = z.strictObject({
  ...CookInput.shape,
  stages: z
    .array(z.strictObject({ ...StageInput.shape, mediumC: z.union([celsius(), Range]).optional() }))
    .min(1)
    .max(100),
  /** Longest that the stage, or the two steps in its place, may last. */
  atMostMin: minutes().min(1),
  /** Above this a place counts as overcooked; default 75 °C, or 5 °C above the target's reference where that is more. */
  overcookedC: celsius(40, 150).optional(),
  /** Rules of cooking that a programme must pass as well as the target; default 70 °C for 2 min and six hours for the way up. */
  rules: z.array(z.string().min(1).max(80)).max(20).optional(),
  /** Look at two temperatures, one after the other, too; default true. */
  twoSteps: z.boolean().optional(),
});
export type GentleInput = z.infer<typeof GentleInput>;

const number = z.number();
const point = {
  /** Of two steps: the first. */
  mediumC: number,
  min: number,
  overcookedPct: number,
  /** Water no longer held by unsalted lean meat at rest, no more than is in the piece, % of the raw weight: the most that can be lost. */
  meanLossPct: number,
  /** Loss of a ground meat with 2 % salt, as measured: the other end. */
  saltedLossPct: number,
  coreC: number,
  lethalityMin: number,
  /** The red of beef that is left at the coldest point. A sign of colour, never of safety. */
  redLeftPct: number,
};
const Point = z.object(point);
const TwoStep = z.object({ ...point, steps: z.array(z.object({ mediumC: number, min: number })) });

export const GentleAnswer = z.object({
  stage: z.string(),
  overcookedC: number,
  front: z.array(Point),
  recommended: Point.nullable(),
  twoSteps: z.array(TwoStep),
  /** null where two temperatures are no gentler than one. */
  recommendedTwoSteps: TwoStep.nullable(),
  why: z.string(),
  runs: number,
  basis: z.array(z.object({ what: z.string(), source: z.string(), confidence: z.string() })),
});
export type GentleAnswer = z.infer<typeof GentleAnswer>;

export const usualRules = [usualCooking, 'us-come-up-6h'] as const;

const min = (s: number) => s / 60;
const tidy = (x: number) => Number(x.toPrecision(9));

function pointOf(p: Programme): z.infer<typeof Point> {
  return {
    mediumC: p.steps[0]?.medium ?? Number.NaN,
    min: tidy(min(p.s)),
    overcookedPct: 100 * p.overcooked,
    meanLossPct: 100 * p.loss,
    saltedLossPct: 100 * p.saltedLoss,
    coreC: p.core,
    lethalityMin: min(p.lethality),
    redLeftPct: 100 * p.red,
  };
}

const twoStepOf = (p: Programme): z.infer<typeof TwoStep> => ({
  ...pointOf(p),
  steps: p.steps.map((step) => ({ mediumC: step.medium, min: tidy(min(step.s)) })),
});

/** The cook with one or two steps in place of a stage. */
export function inSteps(
  cook: CookInput,
  stage: number,
  steps: readonly { mediumC: number; min: number }[],
): CookInput {
  const own = cook.stages[stage];
  if (own === undefined) return cook;
  const put = steps.map(({ mediumC, min: minute }, i) => ({
    ...own,
    name: steps.length > 1 ? `${own.name.slice(0, 70)}, ${i === 0 ? 'first' : 'then'}` : own.name,
    mediumC,
    until: { min: minute },
  }));
  return { ...cook, stages: [...cook.stages.slice(0, stage), ...put, ...cook.stages.slice(stage + 1)] };
}

const refuse = (path: string, found: string, allowed: string) =>
  new InputProblems([{ path, found, allowed }]);

interface Accepted {
  readonly cook: CookInput;
  readonly stage: number;
  readonly low: number;
  readonly high: number;
  readonly input: GentleInput;
}

function accepted(raw: unknown): Accepted {
  const input = accept(GentleInput, raw);
  refuseComparedOnly(input.body);
  const ranges = input.stages.flatMap((s, i) =>
    typeof s.mediumC === 'object' ? [{ i, range: s.mediumC }] : [],
  );
  const [only, another] = ranges;
  if (only === undefined)
    throw refuse(
      'stages',
      'no mediumC that is { low, high }',
      'one stage with mediumC {"low", "high"}: the one that is looked for',
    );
  if (another !== undefined)
    throw refuse(
      `stages[${another.i}].mediumC`,
      'a second range',
      'one stage with a range; the others with a temperature',
    );
  const { atMostMin: _1, overcookedC: _2, rules: _3, twoSteps: _4, probes: _5, mode: _6, ...rest } = input;
  const at = (mediumC: number) =>
    accept(CookInput, {
      ...rest,
      stages: rest.stages.map((s, i) => (i === only.i ? { ...s, mediumC } : s)),
    });
  const { low, high } = only.range;
  for (const end of [low, high])
    try {
      toProblem(at(end));
    } catch (error) {
      if (!(error instanceof InputProblems)) throw error;
      throw new InputProblems(
        error.problems.map((p) =>
          p.path === `stages[${only.i}].mediumC`
            ? { ...p, path: `${p.path}.${end === low ? 'low' : 'high'}` }
            : p,
        ),
      );
    }
  return { cook: at(high), stage: only.i, low, high, input };
}

export interface GentleOptions {
  /** Called with how much of the work is done, 0 to 1. */
  readonly onProgress?: (done: number) => void;
}

/** Runs `gentle` from JSON to JSON. Throws `InputProblems` for anything wrong with the input. */
export function runGentle(raw: unknown, options: GentleOptions = {}): GentleAnswer {
  const { cook, stage, low, high, input } = accepted(raw);
  const rules = cookingRules(input.rules ?? usualRules);
  const overcookedC = input.overcookedC ?? Math.max(75, cook.target.referenceC + 5);
  const search = gentleSearch({
    problemWith: (steps: readonly Step[]) =>
      toProblem(
        inSteps(
          cook,
          stage,
          steps.map((s) => ({ mediumC: s.medium, min: min(s.s) })),
        ),
      ),
    stage,
    low,
    high,
    atMost: input.atMostMin * 60,
    rules,
    overcooked: overcookedC,
    twoSteps: input.twoSteps ?? true,
  });
  let found: Gentle;
  for (;;) {
    const step = search.next();
    if (step.done === true) {
      found = step.value;
      break;
    }
    options.onProgress?.(step.value);
  }
  const name = cook.stages[stage]?.name ?? 'the stage';
  return {
    stage: name,
    overcookedC,
    front: found.front.map(pointOf),
    recommended: found.recommended === null ? null : pointOf(found.recommended),
    twoSteps: found.twoSteps.map(twoStepOf),
    recommendedTwoSteps: found.recommendedTwoSteps === null ? null : twoStepOf(found.recommendedTwoSteps),
    why: whyOf(found, name, high, input.atMostMin),
    runs: found.runs,
    basis: basisOf(cook, rules, overcookedC),
  };
}

function whyOf(
  { recommended, recommendedTwoSteps }: Gentle,
  name: string,
  high: number,
  atMostMin: number,
): string {
  if (recommended === null)
    return `“${name}” cannot be done in ${atMostMin} min at all: not even at ${high} °C does the coldest point pass by the target and the rules.`;
  const one = `“${name}” at ${recommended.steps[0]?.medium} °C for ${tidy(min(recommended.s))} min: of what passes within ${atMostMin} min, least of it is overcooked; of those as little, least is lost; of those, the shortest.`;
  if (recommendedTwoSteps === null) return one;
  const [first, then] = recommendedTwoSteps.steps;
  return `${one} Gentler in two steps: ${first?.medium} °C for ${tidy(min(first?.s ?? 0))} min, then ${then?.medium} °C for ${tidy(min(then?.s ?? 0))} min.`;
}

function basisOf(cook: CookInput, rules: ReturnType<typeof cookingRules>, overcookedC: number): Basis[] {
  const target = toProblem(cook).target;
  const basis: Basis[] = [
    {
      what: 'every programme passes when lifted out, run on the fine engine: by the target at its coldest point, and by every rule below; nothing that comes after lifting out is counted towards it',
      source: 'bigelow-1921',
      confidence: 'secondary',
    },
    ...rules.map(
      (rule): Basis => ({ what: `rule: ${rule.title}`, source: rule.source, confidence: rule.confidence }),
    ),
    {
      what: `overcooked: the share of the piece that is ever hotter than ${overcookedC} °C, later stages included; actin, the last of the muscle’s two great proteins to go, is gone by 66 to 73 °C in a slow cook (80 to 83 °C in a quick one), titin in beef at 75.6 °C`,
      source: 'palka-wesierska-2014',
      confidence: 'secondary',
    },
    {
      what: 'loss: water that unsalted lean beef no longer holds at the hottest each place has been, when it has had time to settle: the most that can be lost; fat and skin are counted as lean, but no more than the water that is in the piece',
      source: 'van-der-sman-2007',
      confidence: 'secondary',
    },
    {
      what: 'salted loss: yields of ground chicken breast with 2 % salt measured at 70 to 85 °C; cooler and hotter counted as those ends',
      source: 'bae-2018',
      confidence: 'read',
    },
    {
      what: 'red: myoglobin of beef, measured from 50 to 80 °C; colour is no sign that a piece is safe',
      source: 'geileskey-1998',
      confidence: 'read',
    },
    {
      what: 'what is gentle to the piece may be slow: germs grow on the way up; the slower the cook, the more its way up must be watched',
      source: 'common-practice',
      confidence: 'common practice',
    },
  ];
  if (rules.length === 0)
    basis.push({
      what: 'no rule of the book was asked for: the target alone decides',
      source: 'user-input',
      confidence: 'assumption',
    });
  if (lessThanUsual(target))
    basis.push({
      what: 'the target is the kitchen’s own, and less than 70 °C for 2 min',
      source: 'user-input',
      confidence: 'assumption',
    });
  return basis;
}
