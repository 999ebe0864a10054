/**
 * What a rule of the book is. A rule is data: where it holds, what it applies to, whether it is law, advice or a model,
 * its numbers, and where they come from. SI: seconds and °C.
 */

import type { Animal, Form } from './product.ts';

/** Law; an authority's or the trade's advice; the output of a model or of single studies. Never mixed. */
export type RuleType = 'statutory' | 'guidance' | 'model';

/**
 * How a figure is known: read in the publication itself, in a page that reproduces it, from memory, worked out here,
 * handed down in the trade, or assumed by this program.
 */
export type RuleConfidence = 'read' | 'secondary' | 'memory' | 'computed' | 'common practice' | 'assumption';

export type RulePlace = 'GB-ENG' | 'GB-SCT' | 'GB-WLS' | 'GB-NIR' | 'EU' | 'US';

export type RuleStep = 'cook' | 'chill' | 'keep' | 'keep hot' | 'reheat' | 'freeze';

/** What a food must be for a rule to speak of it. Every condition that is stated must be met. */
export interface ProductTest {
  /** One of these animals is in it. */
  readonly animals?: readonly Animal[];
  /** None of these is. */
  readonly noneOf?: readonly Animal[];
  /** It was treated in one of these ways; or, where the rule names animals `orOf`, one of those is in it. */
  readonly forms?: readonly Form[];
  readonly orOf?: readonly Animal[];
  /** It was treated in none of these ways. */
  readonly noForms?: readonly Form[];
  /** Fat [%]: above `over`, up to `upTo` (null: any amount, or unknown). */
  readonly fat?: { readonly over: number; readonly upTo: number | null };
  /** At least so much nitrite was put in [mg NaNO2/kg]. */
  readonly nitritePpm?: number;
  readonly packed?: 'without air';
  readonly cooked?: boolean;
  readonly offal?: boolean;
}

/** Where, at which step and for which food a rule speaks, and whether it is what one is held to there. */
export interface RuleScope {
  /** Empty: everywhere. */
  readonly places: readonly RulePlace[];
  readonly steps: readonly RuleStep[];
  /** What law, code or authority there ask of such food; what may be named instead of that; or one hazard beside it. */
  readonly role: 'usual' | 'instead' | 'beside';
  /** Ids of the rules that it may stand for. */
  readonly insteadOf?: readonly string[];
  /** What a kitchen must have before it may. */
  readonly needs?: string;
  readonly product?: ProductTest;
}

interface RuleBase {
  readonly id: string;
  readonly title: string;
  /** Where it is in force, or for whom it was published. */
  readonly place: string;
  readonly appliesTo: string;
  readonly scope: RuleScope;
  readonly type: RuleType;
  /** Key of the bibliography. */
  readonly source: string;
  readonly confidence: RuleConfidence;
  /** What the reader of a verdict must also know; printed with it. */
  readonly cautions: readonly string[];
}

/** Temperature and the time at it that have the same effect. */
export interface TimeAtTemperature {
  readonly C: number;
  readonly s: number;
  /** As printed, for messages: "145 °F (62.8 °C)". */
  readonly printed?: string;
}

/**
 * Process lethality: ∫ L dt must reach `s` at the reference temperature. `z` below and above the reference, or the
 * published equivalents themselves, straight in log time between rows. Below `floorC` nothing is published and nothing counts.
 */
export interface LethalityRule extends RuleBase {
  readonly kind: 'lethality';
  readonly referenceC: number;
  readonly s: number;
  readonly floorC: number;
  readonly rate:
    | { readonly by: 'z'; readonly below: number; readonly above: number }
    | { readonly by: 'table'; readonly rows: readonly TimeAtTemperature[] };
  /** Lethality gathered only below this temperature is met with a caution. */
  readonly doubtfulBelow?: { readonly C: number; readonly why: string };
}

/**
 * Hold: for some row the coldest point must stay at or above its temperature, without a break, for its time. The row used is
 * the one at or below the measured temperature; below the lowest row the rule covers nothing. No summing over rows.
 */
export interface HoldRule extends RuleBase {
  readonly kind: 'hold';
  readonly rows: readonly TimeAtTemperature[];
  /** Total time between two temperatures on the way up [s]; broken, the table may not be used. */
  readonly comeUp?: ComeUp;
  /** The hold must be complete within this time of leaving `fromC` [s]. */
  readonly within?: { readonly fromC: number; readonly s: number };
}

export interface ComeUp {
  readonly lowC: number;
  readonly highC: number;
  readonly s: number;
}

export interface CoolingLimb {
  readonly fromC: number;
  readonly toC: number;
  /** Longest time allowed [s]; null: the temperature must be reached, in no stated time. */
  readonly s: number | null;
}

/** Cooling: each limb runs from the first fall through `fromC` to the first fall through `toC` after the first limb began. */
export interface CoolingRule extends RuleBase {
  readonly kind: 'cooling';
  readonly limbs: readonly CoolingLimb[];
  /** Chilling must begin within this time of the end of cooking, and may be timed from its own beginning [s]. */
  readonly startWithin?: number;
  /** The limb whose time is counted from the start of chilling instead of from its `fromC`. */
  readonly fromChillStart?: boolean;
}

/** Keeping: never below (hot) or above (cold) a temperature, save one single spell shorter than `spell` [s] where the rule has one. */
export interface KeepRule extends RuleBase {
  readonly kind: 'keep';
  readonly side: 'at least' | 'above' | 'at most';
  readonly C: number;
  readonly spell: number | null;
}

/** Time spent between two temperatures on the way up. */
export interface ComeUpRule extends RuleBase, ComeUp {
  readonly kind: 'come-up';
}

/** Freezing against parasites: for some row at or below its temperature, without a break, for its time [s]. */
export interface FreezeRule extends RuleBase {
  readonly kind: 'freeze';
  /** Coldest last; what the temperature is of: the middle of the piece, or the air of the store. */
  readonly of: 'the middle of the piece' | 'the air of the freezer';
  readonly rows: readonly TimeAtTemperature[];
}

export type Rule = LethalityRule | HoldRule | CoolingRule | KeepRule | ComeUpRule | FreezeRule;

export const britain: readonly RulePlace[] = ['GB-ENG', 'GB-SCT', 'GB-WLS', 'GB-NIR'];

/** Degrees Celsius of a temperature in degrees Fahrenheit, for rules that were written in those. */
export const fahrenheit = (F: number): number => (F - 32) / 1.8;

/** Minutes and hours as seconds, so that the data below read as they are printed. */
export const minutes = (n: number): number => n * 60;
export const hours = (n: number): number => n * 3600;
