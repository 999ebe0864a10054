/** What the competent authority was asked about a part, and what it answered. */
import { z } from 'zod';
import { CivilDate } from './delivery.ts';
import { Id, Instant, Note, Text } from './quantities.ts';
import { LawStatus } from './records.ts';

/** What the paper says, kept as it was when it was printed. */
export const AuthorityRequestContent = z.strictObject({
  kitchenName: z.string(),
  place: z.string(),
  law: LawStatus,
  dishName: z.string().nullable(),
  versionNumber: z.int().nullable(),
  /** From whom, and under which specification. */
  supplier: Note(300),
  specification: Note(2_000),
  /** What is done with it, a step a line. */
  process: z.array(z.string().max(500)).max(60),
  /** What the engine foresees and what was measured, each with its basis. */
  predicted: z.array(z.string().max(500)).max(40),
  measured: z.array(z.string().max(500)).max(40),
  laboratory: Note(2_000),
  question: Text(2_000),
});
export type AuthorityRequestContent = z.infer<typeof AuthorityRequestContent>;

export const AuthorityAnswerInput = z.strictObject({
  id: Id,
  answer: z.enum(['agreed', 'agreed on conditions', 'refused', 'asked for more']),
  authority: Text(120),
  saidBy: Text(120),
  reference: Text(120),
  conditions: Note(2_000),
  dated: CivilDate,
  until: CivilDate.nullable(),
});
export type AuthorityAnswerInput = z.infer<typeof AuthorityAnswerInput>;

export const AuthorityRequest = z.strictObject({
  id: Id,
  dishId: Id.nullable(),
  species: Text(40),
  part: Text(80),
  content: AuthorityRequestContent,
  askedAt: Instant,
  askedBy: z.string(),
  answers: z.array(z.strictObject({ ...AuthorityAnswerInput.shape, by: z.string(), recordedAt: Instant })),
  /** Does the last answer lift a stop today? Never for what is prohibited. */
  lifts: z.boolean(),
});
export type AuthorityRequest = z.infer<typeof AuthorityRequest>;
