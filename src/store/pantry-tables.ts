/** The tables of the pantry: ingredients, what they cost, their labels, the kitchen's rates and risks. */
import { bigint, date, doublePrecision, integer, jsonb, pgTable, text, uuid } from 'drizzle-orm/pg-core';
import { id, instant, kitchenId, line } from './columns.ts';

export const ingredient = pgTable('ingredient', {
  id: id(),
  kitchenId: kitchenId(),
  name: text('name').notNull(),
  source: text('source').notNull(),
  createdAt: instant('created_at').notNull(),
  labelName: text('label_name'),
  tableId: text('table_id'),
  nutrients: jsonb('nutrients').notNull(),
  allergens: jsonb('allergens'),
  trimPct: doublePrecision('trim_pct').notNull(),
  densityKgM3: doublePrecision('density_kg_m3'),
  pieceG: doublePrecision('piece_g'),
  madeOf: text('made_of'),
  note: text('note').notNull(),
  rev: integer('rev').notNull(),
  putAwayAt: instant('put_away_at'),
});

export const ingredientPrice = pgTable('ingredient_price', {
  id: id(),
  kitchenId: kitchenId(),
  ingredientId: uuid('ingredient_id').notNull(),
  packG: doublePrecision('pack_g').notNull(),
  price: bigint('price', { mode: 'number' }).notNull(),
  supplierId: uuid('supplier_id'),
  fromDay: date('from_day', { mode: 'string' }).notNull(),
  note: text('note').notNull(),
  /** Null only in rows that were entered before prices were kept by the pack. */
  personId: uuid('person_id'),
  recordedAt: instant('recorded_at').notNull(),
  line: line(),
});

export const ingredientChange = pgTable('ingredient_change', {
  id: id(),
  kitchenId: kitchenId(),
  ingredientId: uuid('ingredient_id').notNull(),
  rev: integer('rev').notNull(),
  became: jsonb('became').notNull(),
  reason: text('reason').notNull(),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
  line: line(),
});

export const allergenLooked = pgTable('allergen_looked', {
  id: id(),
  kitchenId: kitchenId(),
  ingredientId: uuid('ingredient_id').notNull(),
  product: text('product').notNull(),
  supplierId: uuid('supplier_id'),
  says: text('says').notNull(),
  marks: jsonb('marks').notNull(),
  mayContain: jsonb('may_contain').notNull(),
  at: instant('at').notNull(),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
  line: line(),
});

export const declaredRisk = pgTable('declared_risk', {
  id: id(),
  kitchenId: kitchenId(),
  allergen: text('allergen').notNull(),
  kind: text('kind'),
  dishId: uuid('dish_id'),
  reason: text('reason').notNull(),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
  line: line(),
});

export const declaredRiskEnd = pgTable('declared_risk_end', {
  id: id(),
  kitchenId: kitchenId(),
  riskId: uuid('risk_id').notNull(),
  reason: text('reason').notNull(),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
  line: line(),
});

export const kitchenRates = pgTable('kitchen_rates', {
  id: id(),
  kitchenId: kitchenId(),
  fromDay: date('from_day', { mode: 'string' }).notNull(),
  content: jsonb('content').notNull(),
  note: text('note').notNull(),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
  line: line(),
});
