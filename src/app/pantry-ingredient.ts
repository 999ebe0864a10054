/** One ingredient as it stands on a day: the row it rests on, what the kitchen says, what a label says, what is paid. */
import type {
  AllergenMarkInput,
  LabelLook,
  NutrientsInput,
  PackPrice,
  PantryIngredient,
} from '../contract/pantry.ts';
import { type Nutrient, nutrients } from '../core/filling/food.ts';
import type * as t from '../store/tables.ts';
import { nameOf } from './dishes.ts';
import { type TableRow, tableRow } from './pantry-table.ts';

export type IngredientRow = typeof t.ingredient.$inferSelect;
export type PriceRow = typeof t.ingredientPrice.$inferSelect;
export type LookRow = typeof t.allergenLooked.$inferSelect;

export const unknownNutrients = Object.fromEntries(nutrients.map((n) => [n, null])) as NutrientsInput;

/** What the kitchen says over what the row says; what neither says is not known. */
export const nutrientsOver = (
  row: TableRow | undefined,
  own: Partial<Record<Nutrient, number | null | undefined>>,
): NutrientsInput =>
  Object.fromEntries(
    nutrients.map((n) => [n, own[n] === undefined ? (row?.nutrients[n] ?? null) : own[n]]),
  ) as NutrientsInput;

const key = (m: AllergenMarkInput) => `${m.allergen} ${m.as ?? ''}`;

/** Both, each once; what one of them is sure of is not left to the label. */
export function unionOf(...lists: readonly (readonly AllergenMarkInput[])[]): AllergenMarkInput[] {
  const found = new Map<string, AllergenMarkInput>();
  for (const mark of lists.flat()) {
    const before = found.get(key(mark));
    const sure = mark.checkLabel !== true || (before !== undefined && before.checkLabel !== true);
    const { checkLabel: _, ...plain } = mark;
    found.set(key(mark), sure ? plain : { ...plain, checkLabel: true });
  }
  return [...found.values()];
}

/**
 * A label that counts answers what was left to the label, and adds what it emphasises. It takes nothing away that the row
 * or the kitchen is sure of: whoever read it may have overlooked a word.
 */
export function allergensOf(
  row: TableRow | undefined,
  entered: readonly AllergenMarkInput[] | null,
  label: readonly AllergenMarkInput[] | null,
): AllergenMarkInput[] | null {
  const published = row?.allergens ?? null;
  if (published === null && entered === null && label === null) return null;
  const known = unionOf([...(published ?? [])], entered ?? []);
  return label === null
    ? known
    : unionOf(
        known.filter((m) => m.checkLabel !== true),
        label,
      );
}

/** The newest price whose day has come; of two from one day, the later entry. */
export const holdingPrice = (prices: readonly PriceRow[], day: string): PriceRow | undefined =>
  prices
    .filter((p) => p.fromDay <= day)
    .reduce<PriceRow | undefined>(
      (best, p) =>
        best === undefined || p.fromDay > best.fromDay || (p.fromDay === best.fromDay && p.line > best.line)
          ? p
          : best,
      undefined,
    );

const asPrice = (row: PriceRow, names: ReadonlyMap<string, string>): PackPrice => ({
  id: row.id,
  ingredientId: row.ingredientId,
  packG: row.packG,
  price: row.price,
  supplierId: row.supplierId,
  from: row.fromDay,
  note: row.note,
  recordedAt: row.recordedAt.toISOString(),
  by: nameOf(names, row.personId),
});

const asLook = (row: LookRow, names: ReadonlyMap<string, string>): LabelLook => ({
  id: row.id,
  ingredientId: row.ingredientId,
  product: row.product,
  supplierId: row.supplierId,
  says: row.says,
  marks: row.marks as AllergenMarkInput[],
  mayContain: row.mayContain as AllergenMarkInput[],
  at: row.at.toISOString(),
  by: nameOf(names, row.personId),
});

/** `look`: the newest look at its label. */
export function asIngredient(
  row: IngredientRow,
  prices: readonly PriceRow[],
  look: LookRow | undefined,
  names: ReadonlyMap<string, string>,
  day: string,
): PantryIngredient {
  const rests = row.tableId === null ? undefined : tableRow(row.tableId);
  const own = row.nutrients as Partial<Record<Nutrient, number | null>>;
  const price = holdingPrice(prices, day);
  const otherSupplier =
    look !== undefined &&
    look.supplierId !== null &&
    price !== undefined &&
    price.supplierId !== null &&
    price.supplierId !== look.supplierId;
  const lookCounts = look !== undefined && !otherSupplier;
  const entered = row.allergens as AllergenMarkInput[] | null;
  return {
    id: row.id,
    name: row.name,
    labelName: row.labelName,
    tableId: row.tableId,
    nutrients: nutrientsOver(rests, own),
    own: nutrients.filter((n) => own[n] !== undefined),
    source: [row.source, rests?.source ?? '']
      .filter((s) => s !== '')
      .join(' · ')
      .slice(0, 400),
    allergens: allergensOf(rests, entered, lookCounts ? (look.marks as AllergenMarkInput[]) : null),
    allergensEntered: entered,
    looked: look === undefined ? null : asLook(look, names),
    lookCounts,
    mayContain: lookCounts ? (look.mayContain as AllergenMarkInput[]) : [],
    trimPct: row.trimPct,
    densityKgM3: row.densityKgM3 ?? rests?.densityKgM3 ?? null,
    pieceG: row.pieceG ?? rests?.pieceG ?? null,
    costPerKg: price === undefined ? null : price.price / (price.packG / 1000) / (1 - row.trimPct / 100),
    priceId: price?.id ?? null,
    prices: [...prices]
      .sort((a, b) => (a.fromDay === b.fromDay ? b.line - a.line : a.fromDay < b.fromDay ? 1 : -1))
      .map((p) => asPrice(p, names)),
    madeOf: row.madeOf,
    note: row.note,
    rev: row.rev,
    putAway: row.putAwayAt !== null,
  };
}
