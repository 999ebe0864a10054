/** The whole pantry in one answer, and what every dish comes to by it. */
import { z } from 'zod';
import { AllergenMarkInput, DeclaredRisk, LineOf, PantryIngredient, PantryPart } from './pantry.ts';
import { Id } from './quantities.ts';
import { RatesEntry } from './rates.ts';
import { MixLine } from './steps.ts';

/** A dish as an ingredient of another: the lines of the version that counts, and what comes of them. */
export const PantryDish = z.strictObject({
  id: Id,
  name: z.string(),
  species: z.string(),
  part: z.string(),
  versionId: Id,
  number: z.int(),
  /** The newest signed version; where none is signed, the newest draft, which may change under those who use it. */
  signed: z.boolean(),
  /** All that is weighed in, over all of its mix steps. */
  lines: z.array(MixLine),
  /** What its trim steps take, as bought: it costs money, and goes into the mix by the lines that are `carried`. */
  bought: z.array(z.strictObject({ name: z.string(), of: LineOf.nullable(), g: z.number().min(0) })),
  /** Of the weight of the lines, as reduced, what is left after the steps that follow; 100 where none takes anything. */
  yieldPct: z.number().positive(),
  /** Steps after the mix of which nobody knows what they take from the weight: counted as taking nothing. */
  lossNotSaid: z.array(z.string()),
});
export type PantryDish = z.infer<typeof PantryDish>;

export const Pantry = z.strictObject({
  /** The day that prices and rates are of, where the kitchen is. */
  day: z.iso.date(),
  ingredients: z.array(PantryIngredient),
  parts: z.array(PantryPart),
  /** Dishes with anything weighed in. */
  dishes: z.array(PantryDish),
  /** What holds today; null where nobody has said anything. */
  rates: RatesEntry.nullable(),
  /** Every entry, the newest day first. */
  ratesHistory: z.array(RatesEntry),
  /** Those that stand, and those that were ended, the newest first. */
  risks: z.array(DeclaredRisk),
});
export type Pantry = z.infer<typeof Pantry>;

/** What a dish comes to by today's prices and labels. Food alone: hands, energy and what the place adds are not in it. */
export const DishNumbers = z.strictObject({
  dishId: Id,
  name: z.string(),
  versionId: Id,
  number: z.int(),
  signed: z.boolean(),
  /** What the batch as written weighs when it is done; null where nothing is weighed in, or where lines do not hold together. */
  weightG: z.number().min(0).nullable(),
  portions: z.number().min(0).nullable(),
  /** Minor units, not rounded; null while a price is not known: then `atLeast` holds. */
  cost: z.number().min(0).nullable(),
  costPerKg: z.number().min(0).nullable(),
  costPerPortion: z.number().min(0).nullable(),
  /** What is known of the cost [minor units for the batch]. */
  atLeast: z.number().min(0),
  /** Everything that is in it or may be, in the order of the law's list. */
  allergens: z.array(
    z.strictObject({
      allergen: AllergenMarkInput.shape.allergen,
      /** False: only by what a label decides, at which nobody has looked. */
      certain: z.boolean(),
      /** Wheat, hazelnut; `kindNotSaid`: some of it comes without its kind. */
      kinds: z.array(z.string()),
      kindNotSaid: z.boolean(),
      /** From the line of this dish down to what holds it; some of the ways, the others counted. */
      via: z.array(z.array(z.string())),
      moreWays: z.int(),
    }),
  ),
  /** Of these nobody has said which allergens they hold, or what was said is not understood: ask before anything is said of the dish. */
  allergensNotSaid: z.array(z.string()),
  /** So many ways more to what nobody has said. */
  allergensNotSaidMore: z.int(),
  priceNotSaid: z.array(z.string()),
  /** No part of their composition is known, or not all of it. */
  compositionNotSaid: z.array(z.string()),
  /** Used, and put away since. */
  putAway: z.array(z.string()),
  /** Why it cannot be reckoned at all, in words; empty where it can. */
  problems: z.array(z.string()),
});
export type DishNumbers = z.infer<typeof DishNumbers>;
