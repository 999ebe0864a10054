/**
 * What a filling may be made of: foods of the published table, the kitchen's own ingredients, parts of the shelf and other
 * dishes. The pantry holds everything that a line can point at, so that a screen reckons with it without asking again.
 */
import { z } from 'zod';
import { allergens } from '../core/filling/food.ts';
import { Id, Instant, Minor, Note, percent, Text } from './quantities.ts';

const part = z.number().min(0).max(1).nullable();

/** Mass fractions of the edible weight; null is not known, never zero (see core/filling/food.ts). */
export const NutrientsInput = z.strictObject({
  water: part,
  protein: part,
  fat: part,
  saturates: part,
  carbohydrate: part,
  sugars: part,
  fibre: part,
  ash: part,
  salt: part,
  alcohol: part,
});
export type NutrientsInput = z.infer<typeof NutrientsInput>;

export const AllergenMarkInput = z.strictObject({
  allergen: z.enum(allergens),
  as: Text(40).optional(),
  checkLabel: z.literal(true).optional(),
});
export type AllergenMarkInput = z.infer<typeof AllergenMarkInput>;

/** What a line of a mix points at. A `table` id is the published table's own ('duck-liver-raw'); the others are the kitchen's. */
export const LineOf = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('table'), id: z.string().regex(/^[a-z0-9-]{2,80}$/) }),
  z.strictObject({ kind: z.literal('ingredient'), id: Id }),
  z.strictObject({ kind: z.literal('part'), id: Id }),
  z.strictObject({ kind: z.literal('dish'), id: Id }),
]);
export type LineOf = z.infer<typeof LineOf>;

/** What was paid: a pack of so much for so much, from that day on. Prices are only added to. */
export const PackPrice = z.strictObject({
  id: Id,
  ingredientId: Id,
  /** Weight of the pack [g] as bought, before trimming. */
  packG: z.number().positive().max(10_000_000),
  /** What the pack costs, without tax that can be reclaimed. */
  price: Minor,
  supplierId: Id.nullable(),
  /** First day it holds. */
  from: z.iso.date(),
  note: Note(300),
  recordedAt: Instant,
  by: z.string(),
});
export type PackPrice = z.infer<typeof PackPrice>;

/** An ingredient of the kitchen's own: what it rests on, what differs, what it costs. */
export const PantryIngredient = z.strictObject({
  id: Id,
  name: Text(120),
  /** Its name in a list of ingredients; null: as it is called here. */
  labelName: Text(120).nullable(),
  /** Row of the published table that it rests on. */
  tableId: z.string().nullable(),
  nutrients: NutrientsInput,
  /** Where the composition was published or measured; empty when nobody has said. */
  source: z.string().max(200),
  /** Null: nobody has said. */
  allergens: z.array(AllergenMarkInput).max(30).nullable(),
  /** Of the weight as bought, what is cut away before it is weighed in. */
  trimPct: percent(),
  /** Of what is poured or measured by volume [kg/m³]. */
  densityKgM3: z.number().min(50).max(3_000).nullable(),
  /** One of it, where it is counted (an egg white), edible weight [g]. */
  pieceG: z.number().positive().max(100_000).nullable(),
  /** Of the weight weighed in, after trimming; null where nobody has said. Minor units per kg, not rounded. */
  costPerKg: z.number().min(0).nullable(),
  prices: z.array(PackPrice),
  /** A compound ingredient bought ready (a sausage, a stock cube): its own list, as its label has it. */
  madeOf: Note(2_000).nullable(),
  putAway: z.boolean(),
});
export type PantryIngredient = z.infer<typeof PantryIngredient>;

/** A part of the shelf as an ingredient: what it really costs by the kitchen's own breakdowns. */
export const PantryPart = z.strictObject({
  id: Id,
  species: z.string(),
  name: z.string(),
  tableId: z.string().nullable(),
  nutrients: NutrientsInput,
  source: z.string().max(200),
  allergens: z.array(AllergenMarkInput).nullable(),
  costPerKg: z.number().min(0).nullable(),
  /** How the cost was had: 'from 6 breakdowns, by value', 'as entered', 'not known'. */
  costBasis: z.string().max(200),
  /** What is on the shelf and may be drawn today [g]. */
  onShelfG: z.number().min(0),
});
export type PantryPart = z.infer<typeof PantryPart>;
