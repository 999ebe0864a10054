/** The tables of what comes in and is cut up. */
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
import { bytea, id, instant, kitchenId, line } from './columns.ts';

export const specification = pgTable('specification', {
  id: id(),
  kitchenId: kitchenId(),
  supplierId: uuid('supplier_id').notNull(),
  species: text('species').notNull(),
  name: text('name').notNull(),
  createdAt: instant('created_at').notNull(),
  createdBy: uuid('created_by').notNull(),
  endedAt: instant('ended_at'),
});

export const specificationVersion = pgTable('specification_version', {
  id: id(),
  kitchenId: kitchenId(),
  specificationId: uuid('specification_id').notNull(),
  number: integer('number').notNull(),
  rev: integer('rev').notNull(),
  status: text('status').notNull(),
  reason: text('reason').notNull(),
  content: jsonb('content').notNull(),
  createdAt: instant('created_at').notNull(),
  createdBy: uuid('created_by').notNull(),
  savedAt: instant('saved_at').notNull(),
  savedBy: uuid('saved_by').notNull(),
  sentAt: instant('sent_at'),
  sentBy: uuid('sent_by'),
});

export const specificationAnswer = pgTable('specification_answer', {
  id: id(),
  kitchenId: kitchenId(),
  versionId: uuid('version_id').notNull(),
  answer: text('answer').notNull(),
  saidBy: text('said_by').notNull(),
  note: text('note').notNull(),
  at: instant('at').notNull(),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
  line: line(),
});

export const delivery = pgTable('delivery', {
  id: id(),
  kitchenId: kitchenId(),
  supplierId: uuid('supplier_id').notNull(),
  specificationVersionId: uuid('specification_version_id'),
  arrivedAt: instant('arrived_at').notNull(),
  documents: text('documents').notNull(),
  lines: jsonb('lines').notNull(),
  checks: jsonb('checks').notNull(),
  decision: text('decision').notNull(),
  reason: text('reason').notNull(),
  pointsMet: integer('points_met').notNull(),
  pointsAsked: integer('points_asked').notNull(),
  warmestC: doublePrecision('warmest_c'),
  grams: doublePrecision('grams').notNull(),
  cost: bigint('cost', { mode: 'number' }),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
  line: line(),
});

export const photo = pgTable('photo', {
  id: id(),
  kitchenId: kitchenId(),
  subject: text('subject').notNull(),
  subjectId: uuid('subject_id').notNull(),
  mime: text('mime').notNull(),
  bytes: bytea('bytes').notNull(),
  sha256: text('sha256').notNull(),
  caption: text('caption').notNull(),
  takenAt: instant('taken_at').notNull(),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
});

export const animalTag = pgTable('animal_tag', {
  kitchenId: kitchenId(),
  tag: text('tag').notNull(),
  lotId: uuid('lot_id').notNull(),
});

export const breakdownTree = pgTable('breakdown_tree', {
  id: id(),
  kitchenId: kitchenId(),
  species: text('species').notNull(),
  name: text('name').notNull(),
  nodes: jsonb('nodes').notNull(),
  createdAt: instant('created_at').notNull(),
  createdBy: uuid('created_by').notNull(),
  putAwayAt: instant('put_away_at'),
});

export const breakdown = pgTable('breakdown', {
  id: id(),
  kitchenId: kitchenId(),
  species: text('species').notNull(),
  supplierId: uuid('supplier_id'),
  origin: text('origin').notNull(),
  animals: integer('animals').notNull(),
  nodes: jsonb('nodes').notNull(),
  status: text('status').notNull(),
  startedAt: instant('started_at').notNull(),
  startedBy: uuid('started_by').notNull(),
  cutterId: uuid('cutter_id').notNull(),
  finishedAt: instant('finished_at'),
  finishedBy: uuid('finished_by'),
  note: text('note').notNull(),
  outcome: jsonb('outcome'),
});

export const breakdownLot = pgTable('breakdown_lot', {
  kitchenId: kitchenId(),
  breakdownId: uuid('breakdown_id').notNull(),
  lotId: uuid('lot_id').notNull(),
  grams: doublePrecision('grams').notNull(),
});

export const weighing = pgTable('weighing', {
  id: id(),
  kitchenId: kitchenId(),
  breakdownId: uuid('breakdown_id').notNull(),
  node: text('node').notNull(),
  animal: integer('animal'),
  grossGrams: doublePrecision('gross_grams').notNull(),
  tareGrams: doublePrecision('tare_grams').notNull(),
  pieces: integer('pieces'),
  corrects: uuid('corrects'),
  takenBack: boolean('taken_back').notNull(),
  at: instant('at').notNull(),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
  line: line(),
});

export const lotParent = pgTable('lot_parent', {
  kitchenId: kitchenId(),
  lotId: uuid('lot_id').notNull(),
  parentId: uuid('parent_id').notNull(),
  breakdownId: uuid('breakdown_id'),
});

export const lotMove = pgTable('lot_move', {
  id: id(),
  kitchenId: kitchenId(),
  lotId: uuid('lot_id').notNull(),
  what: text('what').notNull(),
  grams: doublePrecision('grams'),
  leftGrams: doublePrecision('left_grams').notNull(),
  useBy: date('use_by', { mode: 'string' }),
  batchId: uuid('batch_id'),
  breakdownId: uuid('breakdown_id'),
  reason: text('reason').notNull(),
  at: instant('at').notNull(),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
  line: line(),
});

export const authorityRequest = pgTable('authority_request', {
  id: id(),
  kitchenId: kitchenId(),
  dishId: uuid('dish_id'),
  species: text('species').notNull(),
  part: text('part').notNull(),
  content: jsonb('content').notNull(),
  askedAt: instant('asked_at').notNull(),
  askedBy: uuid('asked_by').notNull(),
  line: line(),
});

export const authorityAnswer = pgTable('authority_answer', {
  id: id(),
  kitchenId: kitchenId(),
  requestId: uuid('request_id').notNull(),
  answer: text('answer').notNull(),
  authority: text('authority').notNull(),
  saidBy: text('said_by').notNull(),
  reference: text('reference').notNull(),
  conditions: text('conditions').notNull(),
  dated: date('dated', { mode: 'string' }).notNull(),
  untilDate: date('until_date', { mode: 'string' }),
  personId: uuid('person_id').notNull(),
  recordedAt: instant('recorded_at').notNull(),
  line: line(),
});
