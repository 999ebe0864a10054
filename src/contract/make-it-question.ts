/** What is asked when a mix is to be made otherwise, what it may be held to, and what is answered. */
import type { GoodRange, Quantity } from '../core/filling/formulate-model.ts';
import type { Pantry } from './pantry-answer.ts';
import type { MixLine } from './steps.ts';

export const makeGoals = ['cheaper', 'leaner', 'less salty', 'better bound'] as const;
export type MakeGoal = (typeof makeGoals)[number];

/** Limits that a chef may set. Values in the unit that `heldUnits` names. */
export const heldNames = ['fat', 'protein', 'salt', 'water to protein', 'cost'] as const;
export type HeldName = (typeof heldNames)[number];
export interface Held {
  readonly low: number | null;
  readonly high: number | null;
}

export interface MakeQuestion {
  readonly lines: readonly MixLine[];
  readonly pantry: Pick<Pantry, 'ingredients' | 'parts' | 'dishes'>;
  readonly goal: MakeGoal;
  /** What is not named here stays close to what it is, by `usualNear`. */
  readonly held: Readonly<Partial<Record<HeldName, Held>>>;
  /** How far a line may move from what it weighs, %. */
  readonly movePct: number;
  /** Of the lines that count as meat, at least so much of what they weigh together, %. */
  readonly meatPct: number;
  /** The keeping rests on the salt in the water: it may not fall. */
  readonly saltIsKept: boolean;
}

/** How each is told to the engine: the quantity, and what a fraction is multiplied with to be shown. */
export const heldAs: Readonly<
  Record<HeldName, { quantity: Quantity; per: number; unit: '%' | ': 1' | 'a kg' }>
> = {
  fat: { quantity: { of: 'nutrient', nutrient: 'fat' }, per: 100, unit: '%' },
  protein: { quantity: { of: 'nutrient', nutrient: 'protein' }, per: 100, unit: '%' },
  salt: { quantity: { of: 'nutrient', nutrient: 'salt' }, per: 100, unit: '%' },
  'water to protein': { quantity: { of: 'ratio', over: 'water', under: 'protein' }, per: 1, unit: ': 1' },
  /** Minor units. */
  cost: { quantity: { of: 'cost' }, per: 1, unit: 'a kg' },
};

/** Common practice, no source: where a raw forcemeat binds well. */
export const bindRanges: readonly (GoodRange & { readonly shown: HeldName | null })[] = [
  { name: 'fat', shown: 'fat', quantity: heldAs.fat.quantity, low: 0.12, high: 0.3 },
  {
    name: 'water to protein',
    shown: 'water to protein',
    quantity: heldAs['water to protein'].quantity,
    low: 3.5,
    high: 5.5,
  },
  { name: 'salt', shown: 'salt', quantity: heldAs.salt.quantity, low: 0.012, high: 0.02 },
];

/** How far from what it is, where nobody says otherwise: common practice, no source. In the unit shown; absent: no limit on that side. */
export const usualNear: Readonly<
  Partial<Record<HeldName, { readonly less?: number; readonly more?: number }>>
> = {
  fat: { less: 3, more: 3 },
  protein: { less: 1.5 },
  salt: { less: 0.1, more: 0.1 },
  'water to protein': { less: 0.4, more: 0.4 },
};
/** What a goal is about is not held close; better bound is about three of them. */
export const about: Readonly<Record<MakeGoal, readonly HeldName[]>> = {
  cheaper: [],
  leaner: ['fat'],
  'less salty': ['salt'],
  'better bound': ['fat', 'water to protein'],
};

export interface MadeLine {
  readonly ingredient: string;
  readonly nowG: number;
  readonly newG: number;
  /** Why it was left as it is; null where it was free to move. */
  readonly fixed: string | null;
}

export interface LimitCost {
  readonly name: string;
  readonly side: 'low' | 'high';
  /** What one unit of the limit less lenient or more, in the goal's unit for each kilogram, adds. */
  readonly each: number;
  readonly hard: string | null;
}

export type Made =
  | {
      readonly status: 'made';
      readonly goal: MakeGoal;
      readonly lines: readonly MadeLine[];
      /** What is held or wanted, now and then, as shown; null where it is not known. */
      readonly figures: readonly {
        readonly name: HeldName;
        readonly before: number | null;
        readonly after: number | null;
      }[];
      /** What was held to, as shown. */
      readonly held: readonly (Held & { readonly name: HeldName })[];
      readonly costs: readonly LimitCost[];
      readonly notes: readonly string[];
      readonly proven: boolean;
    }
  | {
      readonly status: 'impossible';
      readonly clash: readonly {
        readonly words: string;
        readonly becomes: string | null;
        readonly hard: string | null;
      }[];
      readonly together: readonly string[];
    }
  | { readonly status: 'not known'; readonly why: string };
