/** The operations of Animals: specifications, deliveries, lots, breakdowns, questions to the authority. */
import { z } from 'zod';
import { AuthorityAnswerInput, AuthorityRequest, AuthorityRequestContent } from './authority.ts';
import {
  Breakdown,
  BreakdownSummary,
  BreakdownTree,
  CostBy,
  CostPreview,
  TreeNode,
  WeighingInput,
} from './breakdown.ts';
import { Delivery, DeliveryInput, DeliverySummary, PhotoInput, SupplierTrend } from './delivery.ts';
import { Id, Instant, Note, Text } from './quantities.ts';
import { Supplier, SupplierChange } from './records.ts';
import { LotMoveInput, ShelfLot, ShelfLotDetail } from './shelf.ts';
import { Specification, SpecificationAnswer, SpecificationContent } from './specification.ts';
import { CarcassBar, YieldsAnswer, YieldsQuery } from './yields.ts';

const K = '/api/kitchens/:kitchenId';
const get = <const P extends string, R extends z.ZodType>(path: P, summary: string, result: R) =>
  ({ method: 'GET', path: `${K}${path}`, summary, result }) as const;
const post = <const P extends string, B extends z.ZodType, R extends z.ZodType>(
  path: P,
  summary: string,
  body: B,
  result: R,
) => ({ method: 'POST', path: `${K}${path}`, summary, body, result, signed: true }) as const;

export const animalOperations = {
  changeSupplier: {
    method: 'PUT',
    path: `${K}/suppliers/:supplierId`,
    summary: 'Change a supplier’s record; what it was before stands in the journal.',
    body: SupplierChange,
    result: Supplier,
    signed: true,
  },
  supplierHistory: get(
    '/suppliers/:supplierId/history',
    'What was written of a supplier’s record, newest first.',
    z.array(z.strictObject({ seq: z.int(), at: Instant, by: z.string(), summary: z.string() })),
  ),
  specifications: get(
    '/specifications',
    'What is asked of suppliers in writing, with every version.',
    z.array(Specification),
  ),
  specification: get('/specifications/:specificationId', 'One specification.', Specification),
  addSpecification: post(
    '/specifications',
    'Begin a specification to a supplier.',
    z.strictObject({ supplierId: Id, species: Text(40), name: Text(120), content: SpecificationContent }),
    Specification,
  ),
  saveSpecification: {
    method: 'PUT',
    path: `${K}/specification-versions/:versionId`,
    summary:
      'Save a draft; `rev` is the count the edit started from (409 when somebody saved in between; a sent version is frozen).',
    body: z.strictObject({ rev: z.int().min(0), content: SpecificationContent }),
    result: Specification,
    signed: true,
  },
  newSpecificationVersion: post(
    '/specifications/:specificationId/versions',
    'Begin a new version, saying why.',
    z.strictObject({ reason: Text(500) }),
    Specification,
  ),
  sendSpecification: post(
    '/specification-versions/:versionId/send',
    'Send a draft: it never changes again.',
    z.strictObject({ rev: z.int().min(0) }),
    Specification,
  ),
  answerSpecification: post(
    '/specification-versions/:versionId/answers',
    'Write down what the supplier answered.',
    SpecificationAnswer.omit({ by: true }),
    Specification,
  ),
  endSpecification: post(
    '/specifications/:specificationId/end',
    'End a specification.',
    z.strictObject({}),
    Specification,
  ),

  deliveries: get('/deliveries', 'Deliveries, newest first; the last 200.', z.array(DeliverySummary)),
  delivery: get('/deliveries/:deliveryId', 'One delivery with its points and lots.', Delivery),
  takeDelivery: post(
    '/deliveries',
    'Take in or refuse a delivery: its points, its decision and its lots, all of it or nothing. Sent again under the same id it is one delivery.',
    DeliveryInput,
    Delivery,
  ),
  supplierTrend: get('/suppliers/:supplierId/trend', 'A supplier over time.', SupplierTrend),
  addPhoto: post(
    '/photos',
    'Keep a picture of a delivery, a lot or a specification.',
    PhotoInput,
    z.strictObject({ id: Id, sha256: z.string() }),
  ),

  shelf: get('/shelf', 'Lots with something left, what runs out first standing first.', z.array(ShelfLot)),
  lot: get(
    '/lots/:lotId',
    'One lot: what is left, what was done with it, where it came from and went.',
    ShelfLotDetail,
  ),
  moveLot: post(
    '/lots/:lotId/moves',
    'Draw, throw away, freeze, thaw, weigh again, shorten the use-by, or mark as a by-product for good.',
    LotMoveInput,
    ShelfLotDetail,
  ),

  trees: get('/trees', 'The kitchen’s own breakdown trees.', z.array(BreakdownTree)),
  addTree: post(
    '/trees',
    'Keep a breakdown tree.',
    z.strictObject({ species: Text(40), name: Text(120), nodes: z.array(TreeNode).min(1).max(200) }),
    BreakdownTree,
  ),
  breakdowns: get('/breakdowns', 'Breakdowns, newest first.', z.array(BreakdownSummary)),
  breakdown: get('/breakdowns/:breakdownId', 'One breakdown as it stands.', Breakdown),
  breakdownCosts: get(
    '/breakdowns/:breakdownId/costs',
    'What the parts would carry by each rule of cost, side by side.',
    z.array(CostPreview),
  ),
  startBreakdown: post(
    '/breakdowns',
    'Begin to cut up lots by a tree.',
    z.strictObject({
      id: Id,
      species: Text(40),
      animals: z.int().min(1).max(10_000),
      nodes: z.array(TreeNode).min(1).max(200),
      lots: z
        .array(z.strictObject({ lotId: Id, grams: z.number().positive().max(10_000_000) }))
        .min(1)
        .max(50),
      cutterId: Id.nullable(),
    }),
    Breakdown,
  ),
  weigh: post(
    '/breakdowns/:breakdownId/weighings',
    'Weigh parts; parts heavier than what they came from are refused and nothing is kept.',
    z.strictObject({ weighings: z.array(WeighingInput).min(1).max(500) }),
    Breakdown,
  ),
  finishBreakdown: post(
    '/breakdowns/:breakdownId/finish',
    'Finish: the lots are drawn, the money is carried, the parts become lots. Or give it up.',
    z.strictObject({ as: z.enum(['finished', 'given up']), costBy: CostBy, note: Note(1_000) }),
    Breakdown,
  ),
  importBreakdowns: post(
    '/breakdowns/import',
    'Keep past breakdowns for the yields.',
    z.strictObject({
      species: Text(40),
      supplierId: Id.nullable(),
      note: Note(500),
      rows: z
        .array(
          z.strictObject({
            at: Instant,
            animals: z.int().min(1).max(10_000),
            inGrams: z.number().positive().max(100_000_000),
            parts: z
              .array(
                z.strictObject({
                  name: Text(80),
                  grams: z.number().min(0).max(100_000_000),
                  becomes: z.enum(['part', 'bone', 'drip', 'bin', 'by-product', 'sold']),
                }),
              )
              .min(1)
              .max(80),
          }),
        )
        .min(1)
        .max(5_000),
    }),
    z.strictObject({ imported: z.int() }),
  ),
  yields: {
    ...get('/yields', 'What an animal really gave, by part, over the finished breakdowns.', YieldsAnswer),
    query: YieldsQuery,
  },
  carcassBars: get(
    '/carcass-bars',
    'Every animal as one bar: as it was cut of late, or as it was named.',
    z.array(CarcassBar),
  ),

  authorityRequests: get(
    '/authority-requests',
    'What the authority was asked, newest first.',
    z.array(AuthorityRequest),
  ),
  authorityRequest: get('/authority-requests/:requestId', 'One question with its answers.', AuthorityRequest),
  askAuthority: post(
    '/authority-requests',
    'Keep a question to the authority as it is printed.',
    z.strictObject({
      dishId: Id.nullable(),
      species: Text(40),
      part: Text(80),
      content: AuthorityRequestContent.omit({ kitchenName: true, place: true, law: true, dishName: true }),
    }),
    AuthorityRequest,
  ),
  answerAuthority: post(
    '/authority-requests/:requestId/answers',
    'Write down what the authority answered.',
    AuthorityAnswerInput,
    AuthorityRequest,
  ),
} as const;
