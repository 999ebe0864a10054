/** The answer of an authority by which a stop of the law is lifted, as it is shown wherever the part is used. */
import { z } from 'zod';
import { CivilDate } from './delivery.ts';
import { Id } from './quantities.ts';

export const Agreement = z.strictObject({
  requestId: Id,
  answer: z.enum(['agreed', 'agreed on conditions']),
  authority: z.string(),
  saidBy: z.string(),
  reference: z.string(),
  conditions: z.string(),
  dated: CivilDate,
  /** The last day it holds; null: no end was given. */
  until: CivilDate.nullable(),
});
export type Agreement = z.infer<typeof Agreement>;
