/**
 * What a filling may be made of: foods of the published table, the kitchen's own ingredients, parts of the shelf and other
 * dishes. The pantry holds everything that a line can point at, so that a screen reckons with it without asking again.
 */
import { z } from 'zod';
import { allergens, nutrients } from '../core/filling/food.ts';
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

/** A row of the published table ('duck-liver-raw'). */
export const TableId = z.string().regex(/^[a-z0-9-]{2,80}$/, 'the id of a row of the published table');

/** What a line of a mix points at. A `table` id is the published table's own ('duck-liver-raw'); the others are the kitchen's. */
export const LineOf = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('table'), id: TableId }),
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

/** Somebody looked at a label. What it emphasises stands in for *check the label* of the row that the ingredient rests on. */
export const LabelLook = z.strictObject({
  id: Id,
  ingredientId: Id,
  /** What was looked at: the product as it is sold. */
  product: Text(200),
  supplierId: Id.nullable(),
  /** The list of ingredients as it is printed. */
  says: Note(4_000),
  /** All that it emphasises; empty: none of the fourteen. */
  marks: z.array(AllergenMarkInput).max(30),
  /** What it says that it may contain. */
  mayContain: z.array(AllergenMarkInput).max(30),
  at: Instant,
  by: z.string(),
});
export type LabelLook = z.infer<typeof LabelLook>;

/** An ingredient of the kitchen's own: what it rests on, what differs, what it costs. */
export const PantryIngredient = z.strictObject({
  id: Id,
  name: Text(120),
  /** Its name in a list of ingredients; null: as it is called here. */
  labelName: Text(120).nullable(),
  /** Row of the published table that it rests on. */
  tableId: z.string().nullable(),
  nutrients: NutrientsInput,
  /** Which of these are the kitchen's own figures and not the row's. */
  own: z.array(z.enum(nutrients)),
  /** Where the composition was published or measured; empty when nobody has said. */
  source: z.string().max(400),
  /** As it stands today, by row, kitchen and label together. Null: nobody has said. */
  allergens: z.array(AllergenMarkInput).max(60).nullable(),
  /** What the kitchen itself has entered; null: nothing. */
  allergensEntered: z.array(AllergenMarkInput).max(30).nullable(),
  /** The newest look at a label, and whether it counts: not where it was of another supplier's than the one who has its price today. */
  looked: LabelLook.nullable(),
  lookCounts: z.boolean(),
  /** What its label, where it counts, says that it may contain. */
  mayContain: z.array(AllergenMarkInput).max(30),
  /** Of the weight as bought, what is cut away before it is weighed in. */
  trimPct: percent(),
  /** Of what is poured or measured by volume [kg/m³]. */
  densityKgM3: z.number().min(50).max(3_000).nullable(),
  /** One of it, where it is counted (an egg white), edible weight [g]. */
  pieceG: z.number().positive().max(100_000).nullable(),
  /** Of the weight weighed in, after trimming; null where nobody has said. Minor units per kg, not rounded. */
  costPerKg: z.number().min(0).nullable(),
  /** Which of the prices holds today. */
  priceId: Id.nullable(),
  /** The newest first, also those whose day has not come. */
  prices: z.array(PackPrice),
  /** A compound ingredient bought ready (a sausage, a stock cube): its own list, as its label has it. */
  madeOf: Note(2_000).nullable(),
  note: Note(1_000),
  /** Counts the changes: one names the count it started from, so that two hands do not overwrite one another. */
  rev: z.int().min(0),
  putAway: z.boolean(),
});
export type PantryIngredient = z.infer<typeof PantryIngredient>;

/** An ingredient as it is entered. What is left out is not known, or as the row that it rests on has it. */
export const IngredientInput = z.strictObject({
  name: Text(120),
  labelName: Text(120).nullable().default(null),
  tableId: TableId.nullable().default(null),
  /** What differs from the row; without one, all that is known. */
  nutrients: NutrientsInput.partial().default({}),
  source: z.string().max(200).default(''),
  allergens: z.array(AllergenMarkInput).max(30).nullable().default(null),
  trimPct: z.number().min(0).max(99).default(0),
  densityKgM3: PantryIngredient.shape.densityKgM3.default(null),
  pieceG: PantryIngredient.shape.pieceG.default(null),
  madeOf: PantryIngredient.shape.madeOf.default(null),
  note: PantryIngredient.shape.note.default(''),
});
export type IngredientInput = z.infer<typeof IngredientInput>;

export const PriceInput = z.strictObject({
  packG: PackPrice.shape.packG,
  price: Minor,
  supplierId: Id.nullable().default(null),
  /** First day it holds; left out: today, where the kitchen is. */
  from: z.iso.date().optional(),
  note: Note(300).default(''),
});

/** A part of the shelf as an ingredient: what it really costs by the kitchen's own breakdowns. */
export const PantryPart = z.strictObject({
  id: Id,
  species: z.string(),
  name: z.string(),
  /** The row of the published table that it is reckoned by. */
  tableId: z.string().nullable(),
  /** Chosen by somebody, or guessed by its name and to be looked at; null where there is none. */
  tableBy: z.enum(['chosen', 'guessed']).nullable(),
  /** Other rows that its name may mean, the likeliest first. */
  tableGuesses: z.array(z.strictObject({ id: z.string(), name: z.string() })).max(8),
  nutrients: NutrientsInput,
  source: z.string().max(400),
  allergens: z.array(AllergenMarkInput).nullable(),
  /** Of its weight as it lies on the shelf, what is cut away before it is weighed in; null where nobody has said. */
  trimPct: percent().nullable(),
  /** A kilogram weighed in, after trimming: dearer than as cut. Minor units, not rounded. */
  costPerKg: z.number().min(0).nullable(),
  /** A kilogram as it lies on the shelf: what a trim step takes, which says its own yield. */
  costPerKgAsCut: z.number().min(0).nullable(),
  /** How the cost was had: 'from 6 breakdowns, by value', 'as entered', 'not known'. */
  costBasis: z.string().max(300),
  /** What is on the shelf and may be drawn today [g]. */
  onShelfG: z.number().min(0),
});
export type PantryPart = z.infer<typeof PantryPart>;

/** A risk that the kitchen has declared: what it cannot keep out. Null dish: of every dish. */
export const DeclaredRisk = z.strictObject({
  id: Id,
  allergen: AllergenMarkInput.shape.allergen,
  as: Text(40).nullable(),
  dishId: Id.nullable(),
  reason: Text(500),
  at: Instant,
  by: z.string(),
  ended: z.strictObject({ at: Instant, by: z.string(), reason: Text(500) }).nullable(),
});
export type DeclaredRisk = z.infer<typeof DeclaredRisk>;
