/** One piece chilled from an even temperature, judged by rules of cooling; and how large a piece of its shape still meets them. */
import { Contradiction, OutOfRange } from '../errors.ts';
import { limits } from '../heat/check.ts';
import { cook } from '../heat/cook.ts';
import type { Body, CookResult, MediumTemperature, Stage } from '../heat/types.ts';
import type { Verdict } from '../microbes/judge.ts';
import type { CoolingRule } from '../properties/rule.ts';
import { foreseenCooling } from './foreseen-rules.ts';

export interface Chilling {
  readonly body: Body;
  /** Even temperature at which it goes into the medium [°C]. */
  readonly start: number;
  /** The medium; its temperature is what the machine is set to, or that of a bath with ice in it. */
  readonly stage: Omit<Stage, 'until' | 'medium'> & { readonly medium: number };
  readonly rules: readonly CoolingRule[];
}

export interface Chilled {
  readonly result: CookResult;
  readonly verdicts: readonly Verdict[];
  /** Every rule holds. */
  readonly meets: boolean;
}

export type Mode = 'coarse' | 'fine';

/** Nothing is counted by it: a chill has no target. */
const target = { reference: 70, z: 7.5, s: 120 } as const;
/** Longest that is looked at [s]: so long that what is late is seen to be late. */
const longest = 2 * 86_400;

/** How long the medium is followed where it moves [s]: well past every limit; then it stays. Source: own-assumption */
export function horizonOf(rules: readonly CoolingRule[]): number {
  let most = 0;
  for (const rule of rules)
    for (const limb of rule.limbs) most = limb.s === null ? longest : Math.max(most, limb.s);
  return Math.min(longest, 2.5 * most);
}

/** The lowest temperature that any of the rules asks for [°C]. Source: own-computation */
export function coldestAsked(rules: readonly CoolingRule[]): number {
  return Math.min(...rules.flatMap((rule) => rule.limbs.map((limb) => limb.toC)));
}

/**
 * Refuses a chill that its rules say nothing about [-].
 * @param chilling with at least one rule of cooling, a start at or above where they begin, a medium below what they ask for
 * Source: own-assumption
 */
export function checkChilling({ start, stage, rules }: Chilling): void {
  if (rules.length === 0) throw new OutOfRange('rules', 'none', 'at least one rule of cooling');
  const top = Math.max(...rules.flatMap((rule) => rule.limbs.map((limb) => limb.fromC)));
  if (!(start >= top))
    throw new OutOfRange(
      'start',
      `${start} °C`,
      `${top.toFixed(1)} °C or more, where the clock of the rules begins`,
    );
  const least = coldestAsked(rules);
  if (!(stage.medium < least))
    throw new Contradiction(
      'medium',
      `${stage.medium} °C`,
      `colder than the ${least.toFixed(1)} °C that must be reached`,
    );
}

/** One chill with its verdicts [-], the clock of the rules running from the moment it goes in. Source: own-computation */
export function chill(
  chilling: Chilling,
  mode: Mode,
  medium: MediumTemperature = chilling.stage.medium,
): Chilled {
  const { body, start, stage, rules } = chilling;
  const result = cook(
    {
      body,
      start,
      stages: [{ ...stage, medium, until: { kind: 'warmest', C: coldestAsked(rules), atMost: longest } }],
      target,
    },
    { mode },
  );
  const verdicts = foreseenCooling(result, rules, { cookEnd: 0, chillStart: 0 });
  return { result, verdicts, meets: verdicts.every((v) => v.outcome === 'holds') };
}

/**
 * The same shape, every length times a factor [m].
 * @param body in SI
 * @param factor above 0
 * Assumes that layers and casing grow with it.
 * @example scaledBody({ shape: 'sphere', diameter: 0.04, layers: [] }, 2).diameter // → 0.08
 * Source: own-computation
 */
export function scaledBody<B extends Body>(body: B, factor: number): B {
  const layers = body.layers.map((layer) =>
    layer.thickness === undefined ? layer : { ...layer, thickness: layer.thickness * factor },
  );
  switch (body.shape) {
    case 'revolved':
      return {
        ...body,
        layers,
        profile: body.profile.map((p) => ({ at: p.at * factor, diameter: p.diameter * factor })),
      };
    case 'slab':
      return { ...body, layers, thickness: body.thickness * factor };
    case 'block':
      return { ...body, layers, width: body.width * factor, height: body.height * factor };
    default:
      return { ...body, layers, diameter: body.diameter * factor };
  }
}

/** The longest measure of a body [m]. */
function largestMeasure(body: Body): number {
  switch (body.shape) {
    case 'revolved':
      return Math.max(body.profile[body.profile.length - 1].at, ...body.profile.map((p) => p.diameter));
    case 'slab':
      return body.thickness;
    case 'block':
      return Math.max(body.width, body.height);
    default:
      return body.diameter;
  }
}

export interface LargestScale {
  /** Of every length; null where not even a thirtieth of the size meets the rules. */
  readonly scale: number | null;
  /** It is as large as the engine computes, and a larger one may meet them too. */
  readonly atLimit: boolean;
  /** The piece at that scale, in the fine mode. */
  readonly chilled: Chilled | null;
  readonly body: Body | null;
}

const smallest = 1 / 30;

/** The search behind `largestScale` [-], one engine run at a time, so that a caller may stop between two runs. Source: own-computation */
export function* largestScaleSearch(chilling: Chilling): Generator<number, LargestScale> {
  checkChilling(chilling);
  const most = limits.size.high / largestMeasure(chilling.body);
  const of = (scale: number, mode: Mode) =>
    chill({ ...chilling, body: scaledBody(chilling.body, scale) }, mode);
  let runs = 0;
  let low = 0;
  let high = 0;
  for (let scale = Math.min(1, most); ; ) {
    yield ++runs;
    if (of(scale, 'coarse').meets) {
      low = scale;
      if (high > 0 || scale >= most) break;
      scale = Math.min(most, 2 * scale);
    } else {
      high = scale;
      if (low > 0 || scale <= smallest) break;
      scale = Math.max(smallest, scale / 2);
    }
  }
  if (low === 0) return { scale: null, atLimit: false, chilled: null, body: null };
  while (high > 0 && high / low > 1.004) {
    const middle = Math.sqrt(low * high);
    yield ++runs;
    if (of(middle, 'coarse').meets) low = middle;
    else high = middle;
  }
  // The coarse answer is tried on the fine mesh, and taken down until it holds there.
  for (let scale = low, tries = 0; tries < 40; scale *= 0.995, tries++) {
    yield ++runs;
    const chilled = of(scale, 'fine');
    if (chilled.meets)
      return { scale, atLimit: high === 0 && tries === 0, chilled, body: scaledBody(chilling.body, scale) };
  }
  return { scale: null, atLimit: false, chilled: null, body: null };
}

/**
 * The largest piece of this shape that meets the rules in this medium, as a factor of every length [-].
 *
 *     largest s with the verdict of every rule at the warmest point of the body times s: holds
 *
 * @param chilling body, even start [°C], medium with its coefficient, rules of cooling
 * Assumes that a larger piece of the same shape is never quicker; the medium stays at its temperature; the casing grows with the piece.
 * The factor is found to half a per cent and rounded down by the fine mesh.
 * Checked: with a very good medium it is √(limit/time), with a very poor one limit/time.
 * Source: own-computation
 */
export function largestScale(chilling: Chilling): LargestScale {
  return finished(largestScaleSearch(chilling));
}

/** What a search finds [-], run to its end. Source: own-computation */
export function finished<T>(search: Generator<unknown, T>): T {
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}
