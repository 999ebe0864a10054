/** The correction of how a log is read, as it comes over a wire. */
import { z } from 'zod';
import type { Correction } from './types.ts';

const column = z.int().min(0).max(10_000);
const line = z.int().min(1).max(1_000_000);
const unit = z.enum(['C', 'F']).nullable();

export const CorrectionInput = z
  .strictObject({
    delimiter: z.enum([',', ';', '\t', '|', ' ']),
    decimal: z.enum(['.', ',']),
    headerLine: line.nullable(),
    firstDataLine: line,
    timeColumn: column.nullable(),
    dateColumn: column.nullable(),
    time: z
      .enum(['s', 'min', 'h', 'elapsed clock', 'time of day', 'instant', 'unix', 'unix ms', 'local'])
      .nullable(),
    twoParts: z.enum(['hh:mm', 'mm:ss']).nullable(),
    dateOrder: z.enum(['ymd', 'dmy', 'mdy']).nullable(),
    zone: z.string().min(1).max(60).nullable(),
    everyS: z.number().positive().max(604_800).nullable(),
    channels: z.array(z.strictObject({ column, name: z.string().min(1).max(120), unit })).max(200),
    unit: z.enum(['C', 'F', 'mixed']).nullable(),
    reversed: z.boolean(),
  })
  .partial() satisfies z.ZodType<Correction>;
