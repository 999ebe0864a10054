/** The tables as the queries see them. The migrations are what makes them; a test holds the two together. */
import {
  bigint,
  boolean,
  date,
  doublePrecision,
  integer,
  jsonb,
  pgTable,
  text,
  uuid,
} from 'drizzle-orm/pg-core';
import { id, instant, kitchenId, line } from './columns.ts';

export * from './animal-tables.ts';
export * from './pantry-tables.ts';

export const kitchen = pgTable('kitchen', {
  id: id(),
  name: text('name').notNull(),
  demo: boolean('demo').notNull(),
  place: text('place').notNull(),
  zone: text('zone').notNull(),
  currency: text('currency').notNull(),
  units: text('units').notNull(),
  createdAt: instant('created_at').notNull(),
  putAwayAt: instant('put_away_at'),
});

export const person = pgTable('person', {
  id: id(),
  kitchenId: kitchenId(),
  name: text('name').notNull(),
  role: text('role').notNull(),
  createdAt: instant('created_at').notNull(),
});

export const journal = pgTable('journal', {
  kitchenId: kitchenId(),
  seq: integer('seq').notNull(),
  at: instant('at').notNull(),
  personId: uuid('person_id').notNull(),
  byName: text('by_name').notNull(),
  action: text('action').notNull(),
  subject: text('subject').notNull(),
  subjectId: uuid('subject_id').notNull(),
  summary: text('summary').notNull(),
  details: jsonb('details').notNull(),
  prevHash: text('prev_hash').notNull(),
  hash: text('hash').notNull(),
});

export const supplier = pgTable('supplier', {
  id: id(),
  kitchenId: kitchenId(),
  name: text('name').notNull(),
  note: text('note').notNull(),
  createdAt: instant('created_at').notNull(),
  contact: text('contact').notNull(),
  address: text('address').notNull(),
  approval: text('approval').notNull(),
});

export const part = pgTable('part', {
  id: id(),
  kitchenId: kitchenId(),
  species: text('species').notNull(),
  name: text('name').notNull(),
  sharePct: doublePrecision('share_pct'),
  use: text('use').notNull(),
  createdAt: instant('created_at').notNull(),
  class: text('class'),
  lifeDays: doublePrecision('life_days'),
  valuePerKg: bigint('value_per_kg', { mode: 'number' }),
  costShare: doublePrecision('cost_share'),
  trimPct: doublePrecision('trim_pct'),
  cookingLossPct: doublePrecision('cooking_loss_pct'),
  labourMinPerKg: doublePrecision('labour_min_per_kg'),
  tableId: text('table_id'),
});

export const lot = pgTable('lot', {
  id: id(),
  kitchenId: kitchenId(),
  code: text('code').notNull(),
  supplierId: uuid('supplier_id'),
  partId: uuid('part_id'),
  what: text('what').notNull(),
  grams: doublePrecision('grams').notNull(),
  arrivedAt: instant('arrived_at').notNull(),
  arrivalC: doublePrecision('arrival_c'),
  note: text('note').notNull(),
  createdAt: instant('created_at').notNull(),
  kind: text('kind').notNull(),
  species: text('species'),
  count: integer('count'),
  ageMonthsAtMost: doublePrecision('age_months_at_most'),
  tradeLot: text('trade_lot'),
  slaughteredOn: date('slaughtered_on', { mode: 'string' }),
  useBy: date('use_by', { mode: 'string' }),
  cost: bigint('cost', { mode: 'number' }),
  deliveryId: uuid('delivery_id'),
  leftGrams: doublePrecision('left_grams').notNull(),
  frozenAt: instant('frozen_at'),
  thawedAt: instant('thawed_at'),
  byProductAt: instant('by_product_at'),
  bornIn: text('born_in'),
  raisedIn: text('raised_in'),
  bse: text('bse'),
});

export const dish = pgTable('dish', {
  id: id(),
  kitchenId: kitchenId(),
  name: text('name').notNull(),
  species: text('species').notNull(),
  part: text('part').notNull(),
  story: text('story').notNull(),
  stage: text('stage').notNull(),
  createdAt: instant('created_at').notNull(),
  updatedAt: instant('updated_at').notNull(),
});

export const version = pgTable('version', {
  id: id(),
  kitchenId: kitchenId(),
  dishId: uuid('dish_id').notNull(),
  number: integer('number').notNull(),
  rev: integer('rev').notNull(),
  status: text('status').notNull(),
  reason: text('reason').notNull(),
  method: jsonb('method').notNull(),
  createdAt: instant('created_at').notNull(),
  createdBy: uuid('created_by').notNull(),
  savedAt: instant('saved_at').notNull(),
  savedBy: uuid('saved_by').notNull(),
  signedAt: instant('signed_at'),
  signedBy: uuid('signed_by'),
  evidence: jsonb('evidence'),
});

export const versionSave = pgTable('version_save', {
  kitchenId: kitchenId(),
  versionId: uuid('version_id').notNull(),
  rev: integer('rev').notNull(),
  method: jsonb('method').notNull(),
  savedAt: instant('saved_at').notNull(),
  savedBy: uuid('saved_by').notNull(),
});

export const trial = pgTable('trial', {
  id: id(),
  kitchenId: kitchenId(),
  dishId: uuid('dish_id').notNull(),
  versionId: uuid('version_id').notNull(),
  name: text('name').notNull(),
  expect: text('expect').notNull(),
  startedAt: instant('started_at').notNull(),
  startedBy: uuid('started_by').notNull(),
  conclusion: text('conclusion'),
  closedAt: instant('closed_at'),
  closedBy: uuid('closed_by'),
});

export const batch = pgTable('batch', {
  id: id(),
  kitchenId: kitchenId(),
  versionId: uuid('version_id').notNull(),
  code: text('code').notNull(),
  pieces: integer('pieces').notNull(),
  startedAt: instant('started_at').notNull(),
  startedBy: uuid('started_by').notNull(),
  status: text('status').notNull(),
  closedAt: instant('closed_at'),
  closedBy: uuid('closed_by'),
  closingNote: text('closing_note'),
});

export const batchLot = pgTable('batch_lot', {
  kitchenId: kitchenId(),
  batchId: uuid('batch_id').notNull(),
  lotId: uuid('lot_id').notNull(),
});

export const reading = pgTable('reading', {
  id: id(),
  kitchenId: kitchenId(),
  batchId: uuid('batch_id').notNull(),
  stepId: uuid('step_id').notNull(),
  askId: uuid('ask_id').notNull(),
  kind: text('kind').notNull(),
  value: doublePrecision('value'),
  note: text('note').notNull(),
  at: instant('at').notNull(),
  corrects: uuid('corrects'),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
  holds: text('holds').notNull(),
  line: line(),
});

export const decision = pgTable('decision', {
  id: id(),
  kitchenId: kitchenId(),
  batchId: uuid('batch_id').notNull(),
  stepId: uuid('step_id').notNull(),
  askId: uuid('ask_id'),
  what: text('what').notNull(),
  reason: text('reason').notNull(),
  at: instant('at').notNull(),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
  line: line(),
});

export const probeLog = pgTable('probe_log', {
  id: id(),
  kitchenId: kitchenId(),
  batchId: uuid('batch_id'),
  trialId: uuid('trial_id'),
  dishId: uuid('dish_id'),
  stepId: uuid('step_id'),
  name: text('name').notNull(),
  channel: text('channel').notNull(),
  original: text('original').notNull(),
  sha256: text('sha256').notNull(),
  how: jsonb('how').notNull(),
  points: jsonb('points').notNull(),
  startedAt: instant('started_at'),
  warnings: jsonb('warnings').notNull(),
  judgements: jsonb('judgements').notNull(),
  personId: uuid('person_id').notNull(),
  importedAt: instant('imported_at').notNull(),
  line: line(),
});

export const machine = pgTable('machine', {
  id: id(),
  kitchenId: kitchenId(),
  name: text('name').notNull(),
  medium: text('medium').notNull(),
  note: text('note').notNull(),
  createdAt: instant('created_at').notNull(),
});

export const machineFit = pgTable('machine_fit', {
  id: id(),
  kitchenId: kitchenId(),
  machineId: uuid('machine_id').notNull(),
  logId: uuid('log_id').notNull(),
  stage: text('stage').notNull(),
  fromMin: doublePrecision('from_min').notNull(),
  input: jsonb('input').notNull(),
  inputSha256: text('input_sha256').notNull(),
  h: jsonb('h').notNull(),
  fitted: jsonb('fitted').notNull(),
  rmseC: doublePrecision('rmse_c').notNull(),
  warnings: jsonb('warnings').notNull(),
  engine: text('engine').notNull(),
  personId: uuid('person_id').notNull(),
  keptAt: instant('kept_at').notNull(),
  line: line(),
});
