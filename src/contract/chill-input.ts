/** `chill`: a piece that comes hot from the cook, what it goes into, and the rules it is held to (mm, °C, kW, kg). */
import { z } from 'zod';
import { BodyInput, StageInput } from './body.ts';
import { celsius, grams } from './quantities.ts';

const kilograms = () => z.number().min(0).max(10_000);

/** A machine by its power, or by what its maker rates it for. */
const ByPower = z.strictObject({ powerKW: z.number().min(0.01).max(1_000) });
const ByRating = z.strictObject({
  ratedKg: z.number().min(0.1).max(10_000),
  /** What the rating is for; default 70 to 3 °C in 90 min, as machines are usually rated. */
  ratedFromC: celsius(20, 100).optional(),
  ratedToC: celsius(-40, 20).optional(),
  ratedMin: z.number().min(5).max(1_440).optional(),
});
/** A bath of water with ice in it. */
const ByIce = z.strictObject({
  iceKg: kilograms(),
  waterKg: kilograms(),
  /** The water before the ice goes in; default 10 °C. */
  waterC: celsius(0, 40).optional(),
});
export type MachineInput = z.infer<typeof ByPower> | z.infer<typeof ByRating> | z.infer<typeof ByIce>;

export const ChillInput = z.strictObject({
  body: BodyInput,
  /** The same throughout when it goes in: as hot as its hottest place, for the safe side. */
  startC: celsius(0, 150),
  /** As a stage of `cook`: what it goes into. */
  stage: StageInput.pick({ medium: true, mediumC: true, hWm2K: true, resistanceM2KW: true, wraps: true }),
  /** Rules of cooling, all of which must hold. */
  rules: z.array(z.string().min(1).max(80)).min(1).max(8),
  /** How many at once: what the machine takes away, or the ice and water of the bath. */
  machine: z
    .union([ByPower, ByRating, ByIce], {
      error: 'one of powerKW; ratedKg with ratedFromC, ratedToC, ratedMin; iceKg with waterKg and waterC',
    })
    .optional(),
  /** Weight of one piece, where the shape is endless (cylinder, slab, block). */
  pieceG: grams(1_000_000).optional(),
  /** Judge so many as well, beside the most. */
  pieces: z.int().min(1).max(4_096).optional(),
});
export type ChillInput = z.infer<typeof ChillInput>;
