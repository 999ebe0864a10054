/**
 * Every operation of the HTTP API, once: the server checks with it, the browser calls with it, the API's own
 * documentation is printed from it. Paths are under `/api`; `:name` parts are UUIDs.
 */
import { z } from 'zod';
import { animalOperations } from './animal-operations.ts';
import { BatchDraw } from './batch-draws.ts';
import { exchangeOperations } from './exchange-operations.ts';
import { machineOperations } from './machines.ts';
import { pantryOperations } from './pantry-operations.ts';
import { Id, Instant, Note, Text } from './quantities.ts';
import {
  Batch,
  BatchSummary,
  Decision,
  Dish,
  DishSummary,
  Ingredient,
  JournalLine,
  Judgement,
  Kitchen,
  Lot,
  LotInput,
  Part,
  PartChange,
  PartInput,
  Person,
  Place,
  ProbeLog,
  Reading,
  Supplier,
  SupplierInput,
  Trial,
  Version,
} from './records.ts';
import { Method } from './steps.ts';

export interface Operation {
  readonly method: 'GET' | 'POST' | 'PUT';
  readonly path: string;
  readonly summary: string;
  readonly body?: z.ZodType;
  readonly query?: z.ZodObject;
  readonly result: z.ZodType;
  /** Writes name who does it: the `X-Person` header holds a person's id. */
  readonly signed?: true;
}

const op = <const O extends Operation>(o: O): O => o;
const K = '/api/kitchens/:kitchenId';

export const operations = {
  health: op({
    method: 'GET',
    path: '/api/health',
    summary: 'Is the server up, which store it writes to and whether that store has proved itself durable.',
    result: z.strictObject({
      ok: z.literal(true),
      version: z.string(),
      store: z.enum(['embedded', 'postgresql']),
      durable: z.boolean(),
    }),
  }),

  kitchens: op({
    method: 'GET',
    path: '/api/kitchens',
    summary: 'The kitchens on this server.',
    result: z.array(Kitchen),
  }),
  createKitchen: op({
    method: 'POST',
    path: '/api/kitchens',
    summary: 'Set up a kitchen of your own, empty, with you as its head chef.',
    body: z.strictObject({
      name: Text(80),
      place: Place,
      zone: Text(60),
      currency: z.string().regex(/^[A-Z]{3}$/, 'three capital letters, e.g. GBP'),
      units: z.enum(['metric', 'US']),
      person: Text(80),
    }),
    result: z.strictObject({ kitchen: Kitchen, person: Person }),
  }),
  resetDemo: op({
    method: 'POST',
    path: '/api/demo/reset',
    summary: 'Lay the demo kitchen again as it was on the first day. The old one is put away, not deleted.',
    result: Kitchen,
  }),

  people: op({ method: 'GET', path: `${K}/people`, summary: 'Who works here.', result: z.array(Person) }),
  addPerson: op({
    method: 'POST',
    path: `${K}/people`,
    summary: 'Add somebody.',
    body: Person.omit({ id: true }),
    result: Person,
    signed: true,
  }),

  suppliers: op({ method: 'GET', path: `${K}/suppliers`, summary: 'Suppliers.', result: z.array(Supplier) }),
  addSupplier: op({
    method: 'POST',
    path: `${K}/suppliers`,
    summary: 'Add a supplier.',
    body: SupplierInput,
    result: Supplier,
    signed: true,
  }),
  parts: op({
    method: 'GET',
    path: `${K}/parts`,
    summary: 'The parts of each animal and what becomes of them.',
    result: z.array(Part),
  }),
  addPart: op({
    method: 'POST',
    path: `${K}/parts`,
    summary: 'Name a part of an animal.',
    body: PartInput,
    result: Part,
    signed: true,
  }),
  lots: op({
    method: 'GET',
    path: `${K}/lots`,
    summary: 'Lots that were taken in or made, newest first; the last 2,000.',
    result: z.array(Lot),
  }),
  addLot: op({
    method: 'POST',
    path: `${K}/lots`,
    summary: 'Take in a lot.',
    body: LotInput,
    result: Lot,
    signed: true,
  }),
  changePart: op({
    method: 'PUT',
    path: `${K}/parts/:partId`,
    summary: 'Say what becomes of a part, how long it keeps, what it is worth.',
    body: PartChange,
    result: Part,
    signed: true,
  }),
  ...animalOperations,
  ...machineOperations,
  ...pantryOperations,
  ...exchangeOperations,
  ingredients: op({
    method: 'GET',
    path: `${K}/ingredients`,
    summary: 'Ingredients with their composition, those put away left out.',
    result: z.array(Ingredient),
  }),

  dishes: op({ method: 'GET', path: `${K}/dishes`, summary: 'The dishes.', result: z.array(DishSummary) }),
  addDish: op({
    method: 'POST',
    path: `${K}/dishes`,
    summary: 'Begin a dish; it starts as an idea with one draft version.',
    body: z.strictObject({
      name: Text(120),
      species: Text(40),
      part: Text(80),
      story: Note(1_000),
      method: Method,
    }),
    result: Dish,
    signed: true,
  }),
  dish: op({
    method: 'GET',
    path: `${K}/dishes/:dishId`,
    summary: 'One dish with its newest version.',
    result: Dish,
  }),
  version: op({
    method: 'GET',
    path: `${K}/versions/:versionId`,
    summary: 'One version with its method.',
    result: Version,
  }),
  saveVersion: op({
    method: 'PUT',
    path: `${K}/versions/:versionId`,
    summary:
      'Save a draft. `rev` is the count the edit started from; 409 when somebody saved in between. A signed version is frozen (409).',
    body: z.strictObject({ rev: z.int().min(0), method: Method }),
    result: Version,
    signed: true,
  }),
  newVersion: op({
    method: 'POST',
    path: `${K}/dishes/:dishId/versions`,
    summary: 'Begin a new draft from the newest version, or from the one named, saying why.',
    body: z.strictObject({ reason: Text(500), from: Id.optional() }),
    result: Version,
    signed: true,
  }),
  signVersion: op({
    method: 'POST',
    path: `${K}/versions/:versionId/sign`,
    summary:
      'Sign a draft: the engine is run on every cook step; refused (409) when the coldest point does not hold, or the law stops the part.',
    body: z.strictObject({ rev: z.int().min(0) }),
    result: Version,
    signed: true,
  }),

  trials: op({
    method: 'GET',
    path: `${K}/dishes/:dishId/trials`,
    summary: 'Trials of a dish.',
    result: z.array(Trial),
  }),
  addTrial: op({
    method: 'POST',
    path: `${K}/dishes/:dishId/trials`,
    summary: 'Begin a trial of a version.',
    body: z.strictObject({ versionId: Id, name: Text(120), expect: Note(1_000) }),
    result: Trial,
    signed: true,
  }),
  closeTrial: op({
    method: 'POST',
    path: `${K}/trials/:trialId/close`,
    summary: 'Close a trial with what was learnt.',
    body: z.strictObject({ conclusion: Text(2_000) }),
    result: Trial,
    signed: true,
  }),

  batches: op({
    method: 'GET',
    path: `${K}/batches`,
    summary: 'Batches, newest first.',
    result: z.array(BatchSummary),
  }),
  startBatch: op({
    method: 'POST',
    path: `${K}/batches`,
    summary: 'Start a batch from a signed version (409 from a draft).',
    body: z.strictObject({
      id: Id,
      versionId: Id,
      pieces: z.int().min(1).max(10_000),
      lotIds: z.array(Id).max(50),
      /** What is taken out of the lots, all of it or nothing; a lot that is drawn on need not be named again. */
      draws: z.array(BatchDraw).max(50).optional(),
    }),
    result: Batch,
    signed: true,
  }),
  batch: op({
    method: 'GET',
    path: `${K}/batches/:batchId`,
    summary: 'One batch with all its records.',
    result: Batch,
  }),
  record: op({
    method: 'POST',
    path: `${K}/batches/:batchId/readings`,
    summary:
      'Record readings. Acknowledged only when they are on disk; a reading sent again under the same id is not written twice.',
    body: z.strictObject({ readings: z.array(Reading).min(1).max(500) }),
    result: z.strictObject({ recorded: z.array(Id), batch: Batch }),
    signed: true,
  }),
  decide: op({
    method: 'POST',
    path: `${K}/batches/:batchId/decisions`,
    summary: 'Say what was done about a reading out of its limit.',
    body: Decision.omit({ by: true }),
    result: Batch,
    signed: true,
  }),
  closeBatch: op({
    method: 'POST',
    path: `${K}/batches/:batchId/close`,
    summary: 'Close a batch: fit to serve (409 while anything blocks it) or discarded.',
    body: z.strictObject({ as: z.enum(['closed', 'discarded']), note: Note(1_000) }),
    result: Batch,
    signed: true,
  }),

  importLog: op({
    method: 'POST',
    path: `${K}/logs`,
    summary: 'Keep a probe log as it was read: the original text, how it was read, and its rules’ judgement.',
    body: z.strictObject({
      id: Id,
      batchId: Id.nullable(),
      trialId: Id.nullable(),
      dishId: Id.nullable(),
      stepId: Id.nullable(),
      name: Text(200),
      /** The file as it came. */
      text: z.string().min(1).max(20_000_000),
      /** Which channel, and any correction of how the file was read. */
      channel: Text(120),
      correction: z.record(z.string(), z.unknown()),
      rules: z.array(z.string().max(80)).max(8),
    }),
    result: ProbeLog,
    signed: true,
  }),
  logs: op({
    method: 'GET',
    path: `${K}/logs`,
    summary: 'Probe logs of a dish, newest first.',
    query: z.strictObject({ dishId: Id }),
    result: z.array(ProbeLog),
  }),

  journal: op({
    method: 'GET',
    path: `${K}/journal`,
    summary: 'Who did what when, newest first.',
    query: z.strictObject({
      before: z.coerce.number().int().optional(),
      limit: z.coerce.number().int().min(1).max(500).optional(),
    }),
    result: z.array(JournalLine),
  }),
  checkJournal: op({
    method: 'GET',
    path: `${K}/journal/check`,
    summary: 'Walk the whole hash chain.',
    result: z.strictObject({
      lines: z.int(),
      holds: z.boolean(),
      brokenAt: z.int().nullable(),
      checkedAt: Instant,
    }),
  }),

  judge: op({
    method: 'POST',
    path: '/api/judge',
    summary: 'Judge a log against named rules (the same as the command of that name).',
    body: z.unknown(),
    result: z.array(Judgement),
  }),
  cook: op({
    method: 'POST',
    path: '/api/cook',
    summary: 'Temperature and lethality in a body (the same as the command of that name).',
    body: z.unknown(),
    result: z.unknown(),
  }),
} as const;

export type Operations = typeof operations;
export type OperationName = keyof Operations;
export type BodyOf<N extends OperationName> = Operations[N] extends { body: infer B extends z.ZodType }
  ? z.input<B>
  : undefined;
export type QueryOf<N extends OperationName> = Operations[N] extends { query: infer Q extends z.ZodType }
  ? z.input<Q>
  : undefined;
export type ResultOf<N extends OperationName> = z.output<Operations[N]['result']>;

/** Every failure the API answers with. `problems` names each offending value: where, what was found, what is allowed. */
export const ApiError = z.strictObject({
  code: z.string(),
  message: z.string(),
  problems: z.array(z.strictObject({ path: z.string(), found: z.string(), allowed: z.string() })).optional(),
});
export type ApiError = z.infer<typeof ApiError>;

/** Server-sent events at `/api/kitchens/:kitchenId/live`: one per committed change, naming what changed. */
export const Change = z.strictObject({ subject: z.string(), subjectId: z.string(), seq: z.int() });
export type Change = z.infer<typeof Change>;
