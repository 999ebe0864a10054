/** What a cure step may say beyond salt and hours: the piece as the salt meets it, the rest after, the salt wanted, curing salt. */
import { z } from 'zod';
import { nitriteProducts } from '../core/properties/brine-nitrite.ts';
import { celsius, millimetres } from './quantities.ts';

/** The piece as the salt meets it: how far the salt has to go, and through what. */
export const CuredPiece = z.strictObject({
  shape: z.enum(['slab', 'cylinder', 'sphere']),
  /** Thickness of a slab, diameter of the others. */
  acrossMm: millimetres(1, 1_000),
  /** Slab: by how many faces the salt gets in. */
  faces: z.union([z.literal(1), z.literal(2)], 'one face or two: 1 or 2'),
  waterPct: z.number().min(20).max(95),
  /** A skin with its fat around it, which slows the salt. */
  skinMm: millimetres(0.1, 50).optional(),
});
export type CuredPiece = z.infer<typeof CuredPiece>;

/** Curing salt: how much of it to a kilogram (of meat when dry, of brine, of meat and water together), and its sodium nitrite. */
export const CuringSalt = z.strictObject({
  gPerKg: z.number().positive().max(1_000),
  nitritePct: z.number().positive().max(100),
  product: z.enum(nitriteProducts),
});
export type CuringSalt = z.infer<typeof CuringSalt>;

/** After the cure, the salt off, until the next step: the salt goes on evening out. */
export const CureRest = z.strictObject({ h: z.number().positive().max(2_000), mediumC: celsius(-5, 30) });
