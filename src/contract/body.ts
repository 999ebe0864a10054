/** The piece and its programme as the headless contract and the dish's cook step both write them (millimetres, minutes, °C). */
import { z } from 'zod';
import { Composition, celsius, millimetres, minutes } from './quantities.ts';

export const LayerInput = z
  .strictObject({
    name: z.string().min(1).max(80),
    thicknessMm: millimetres(0.05, 1_000).optional(),
    composition: Composition.optional(),
    properties: z
      .strictObject({
        kWmK: z.number().min(0.01).max(500),
        rhoKgM3: z.number().min(10).max(20_000),
        cpJkgK: z.number().min(50).max(10_000),
      })
      .optional(),
  })
  .refine((l) => (l.composition === undefined) !== (l.properties === undefined), {
    message: 'either composition or properties, not both',
  });

const layers = z.array(LayerInput).min(1).max(4);
const size = millimetres(1, 2_000);

export const ProfilePointInput = z.strictObject({ atMm: millimetres(), diameterMm: millimetres() });

export const BodyInput = z.discriminatedUnion('shape', [
  z.strictObject({
    shape: z.literal('revolved'),
    lengthMm: size.optional(),
    profile: z.array(ProfilePointInput).min(2).max(400),
    layers,
  }),
  z.strictObject({ shape: z.literal('cylinder'), diameterMm: size, layers }),
  z.strictObject({ shape: z.literal('sphere'), diameterMm: size, layers }),
  z.strictObject({ shape: z.literal('slab'), thicknessMm: size, layers }),
  z.strictObject({ shape: z.literal('block'), widthMm: size, heightMm: size, layers }),
]);
export type BodyInput = z.infer<typeof BodyInput>;

const atMost = { atMostMin: minutes().optional() };
export const UntilInput = z.union(
  [
    z.strictObject({ min: minutes() }),
    z.strictObject({ coldestC: celsius(), ...atMost }),
    z.strictObject({ warmestC: celsius(), ...atMost }),
    z.strictObject({ lethalityMin: minutes(), ...atMost }),
  ],
  { error: 'exactly one of min, coldestC, warmestC, lethalityMin; the last three may have atMostMin' },
);
export type UntilInput = z.infer<typeof UntilInput>;

export const StageInput = z.strictObject({
  name: z.string().min(1).max(80),
  /** A named medium from the published table; fills in `hWm2K`. */
  medium: z.string().max(40).optional(),
  mediumC: celsius().optional(),
  mediumLog: z
    .array(z.strictObject({ min: z.number().min(0), C: celsius() }))
    .min(1)
    .max(100_000)
    .optional(),
  hWm2K: z.number().positive().max(100_000).optional(),
  /** Film, mould wall, cloth between medium and food, in series with the surface coefficient [m² K/W]. */
  resistanceM2KW: z.number().min(0).max(1).optional(),
  until: UntilInput,
});
export type StageInput = z.infer<typeof StageInput>;

export const TargetInput = z.strictObject({
  referenceC: celsius(0, 150),
  zC: z.number().min(1).max(50),
  min: z.number().positive().max(10_000),
});
export type TargetInput = z.infer<typeof TargetInput>;
