/** The piece and its programme as the headless contract and the dish's cook step both write them (millimetres, minutes, °C). */
import { z } from 'zod';
import { freezingFoods } from '../core/properties/freezing-points.ts';
import { mixtureRules } from '../core/properties/mixture-conductivity.ts';
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
    /** First ice, where it is known better than from the composition: salt, sugar and drying lower it. */
    freezingPointC: celsius(-10, -0.1).optional(),
    /** Instead of it, a food of the table whose first ice it has. */
    freezesAs: z.enum(Object.keys(freezingFoods) as [string, ...string[]]).optional(),
    /** How the conductivities of its components are put together; Levy's rule where it is not said. For comparing with what used another. */
    conductivityBy: z.enum(mixtureRules).optional(),
  })
  .refine((l) => (l.composition === undefined) !== (l.properties === undefined), {
    message: 'either composition or properties, not both',
  })
  .refine((l) => l.conductivityBy === undefined || l.composition !== undefined, {
    path: ['conductivityBy'],
    message: 'none beside constant properties, which give the conductivity: give the composition',
  })
  .refine((l) => l.freezingPointC === undefined || l.composition !== undefined, {
    path: ['freezingPointC'],
    message: 'none beside constant properties, which know no ice: give the composition',
  })
  .refine(
    (l) => l.freezesAs === undefined || (l.composition !== undefined && l.freezingPointC === undefined),
    {
      path: ['freezesAs'],
      message: 'either freezingPointC or freezesAs, and only beside a composition',
    },
  );

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
  /** Where `hWm2K` comes from, as long as it is still this number: a fitted log, say. */
  hFrom: z
    .strictObject({ hWm2K: z.number().positive().max(100_000), text: z.string().min(1).max(300) })
    .optional(),
  /** Film, mould wall, cloth between medium and food, in series with the surface coefficient [m² K/W]. */
  resistanceM2KW: z.number().min(0).max(1).optional(),
  /** What lies between medium and food, by its name in the table of wraps: in series too, and nothing dries off through it. */
  wraps: z
    .array(
      z.strictObject({
        of: z.string().max(40),
        thicknessMm: z.number().positive().max(99),
        layers: z.int().min(1).max(100).optional(),
      }),
    )
    .max(8)
    .optional(),
  /** Nothing can dry off the food: film, bag, foil, a lid on it. Default: whether `wraps` has any. */
  wrapped: z.boolean().optional(),
  /** Where the kitchen is, or the pressure in the vessel: what steam, boiling water and humid air follow. Default sea level. */
  altitudeM: z.number().min(-450).max(6_000).optional(),
  pressureKPa: z.number().min(20).max(400).optional(),
  /** Boiling water: its salt, % of the brine. */
  brineSaltPct: z.number().min(0).max(26.4).optional(),
  /** Air: one of relative humidity (above boiling: share of steam), dew point, wet bulb. Its vapour then condenses, and the surface dries. */
  humidityPct: z.number().min(0).max(100).optional(),
  dewPointC: celsius(-60, 143).optional(),
  wetBulbC: celsius(0, 143).optional(),
  /** Beside a humidity: water activity of the surface as it dries, default 1 (wet). */
  surfaceWaterActivity: z.number().min(0).max(1).optional(),
  /** Beside a humidity or a radiant source: emissivity, default 0.9, and the walls' temperature, default that of the air. */
  emissivity: z.number().min(0).max(1).optional(),
  wallC: celsius(-80, 500).optional(),
  /** Grill: radiant heat absorbed [W/m²], or the temperature of its source and the share of its radiation that is exchanged. */
  fluxWm2: z.number().min(0).max(100_000).optional(),
  radiantC: celsius(50, 1_500).optional(),
  radiantShare: z.number().min(0).max(1).optional(),
  /** Hot fat ladled over it for `onS` of every `everyS` seconds. */
  ladle: z
    .strictObject({
      fatC: celsius(20, 250),
      onS: z.number().positive().max(3_600),
      everyS: z.number().positive().max(3_600),
      hWm2K: z.number().min(1).max(5_000).optional(),
    })
    .optional(),
  until: UntilInput,
});
export type StageInput = z.infer<typeof StageInput>;

export const TargetInput = z.strictObject({
  referenceC: celsius(0, 150),
  zC: z.number().min(1).max(50),
  min: z.number().positive().max(10_000),
});
export type TargetInput = z.infer<typeof TargetInput>;
