/** The numbers of the contract: finite, with the range a kitchen can mean, each with its unit in the key that holds it. */
import { z } from 'zod';

export const celsius = (low = -80, high = 300) => z.number().min(low).max(high);
export const minutes = (high = 10_080) => z.number().min(0).max(high);
export const millimetres = (low = 0, high = 2_000) => z.number().min(low).max(high);
export const grams = (high = 1_000_000) => z.number().min(0).max(high);
export const fraction = () => z.number().min(0).max(1);
export const percent = () => z.number().min(0).max(100);

export const Composition = z.strictObject({
  water: fraction(),
  protein: fraction(),
  fat: fraction(),
  carbohydrate: fraction(),
  fibre: fraction(),
  ash: fraction(),
});
export type Composition = z.infer<typeof Composition>;

/** Time-ordered identifiers; the client may make them, so that what is sent twice is written once. */
export const Id = z.uuid().toLowerCase();
export const Instant = z.iso.datetime({ offset: true });
export const Text = (max = 200) => z.string().trim().min(1).max(max);
export const Note = (max = 4_000) => z.string().max(max);
/** Money in minor units (pence, cents). */
export const Minor = z.int().min(0).max(1_000_000_000);
