/** A number that strays: normal about a mean, or anywhere between two ends. */
import { z } from 'zod';

export const MeanSd = z.strictObject({ mean: z.number(), sd: z.number().min(0) });
export const LowHigh = z
  .strictObject({ low: z.number(), high: z.number() })
  .refine((s) => s.high >= s.low, { message: 'high not below low' });
export const Spread = z.union([MeanSd, LowHigh]);
export type Spread = z.infer<typeof Spread>;
