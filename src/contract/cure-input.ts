/** What `cure` is asked: the piece, what it lies in, and for how long (mm, g, h, %). */
import { z } from 'zod';
import { muscleDiffusivity } from '../core/properties/brine.ts';
import { NitrateInput } from './cure-nitrate.ts';
import { NitriteInput } from './cure-nitrite.ts';
import { celsius, fraction, grams, millimetres, Text } from './quantities.ts';

const positive = (most: number) => z.number().positive().max(most);
const diffusivity = () => z.number().min(1e-15).max(2e-9);

const PieceInput = z.strictObject({
  shape: z.enum(['slab', 'cylinder', 'sphere']),
  /** Slab. */
  thicknessMm: millimetres(0.1).optional(),
  /** Cylinder (without ends) and sphere. */
  diameterMm: millimetres(0.1).optional(),
  /** Slab: by how many faces salt can enter; 2 where nothing is said. Without meaning for the others. */
  exposedFaces: z.union([z.literal(1), z.literal(2)], 'one face or two: 1 or 2').optional(),
  massG: positive(10_000_000),
  /** Mass fractions before the cure. */
  water: fraction().min(0.02),
  /** 0 where nothing is said. */
  salt: fraction().max(0.3).optional(),
  /** Sugars evenly in the water of the piece from the start, as in a farce; they lower the water activity. */
  sugars: z
    .array(
      z.strictObject({
        sugar: z.enum(['sucrose', 'glucose']),
        gPerKgWater: z.number().min(0).max(1000),
      }),
    )
    .max(2)
    .optional(),
  /** Brine driven in through needles before all else, of the green weight; `massG`, `water` and `salt` are those before it. */
  pumped: z
    .strictObject({ pumpPct: z.number().min(0).max(100), brineSaltPct: z.number().min(0).max(26) })
    .optional(),
  /** A skin around the piece that slows the salt; its water is the piece's where nothing is said. */
  skin: z
    .strictObject({
      thicknessMm: positive(50),
      water: fraction().min(0.02).optional(),
      diffusivityM2s: diffusivity().optional(),
    })
    .optional(),
});

const BathInput = z.union(
  [
    z.strictObject({ massG: positive(1_000_000_000), saltPct: z.number().min(0).max(27) }),
    z.strictObject({ saltPct: z.number().min(0).max(27), strengthKept: z.literal(true) }),
    z.strictObject({ drySaltG: grams(10_000_000) }),
    z.strictObject({ rest: z.literal(true) }),
  ],
  'massG and saltPct, or saltPct and strengthKept: true, or drySaltG, or rest: true',
);
export type BathInput = z.infer<typeof BathInput>;

const hours = () => z.number().min(0.001).max(8_784);
const temperature = () => celsius(muscleDiffusivity.coldest, muscleDiffusivity.hottest);

const CureFields = z.strictObject({
  piece: PieceInput,
  /** One stage, or `stages` for several. */
  bath: BathInput.optional(),
  temperatureC: temperature().optional(),
  h: hours().optional(),
  stages: z
    .array(z.strictObject({ name: Text(80), bath: BathInput, temperatureC: temperature(), h: hours() }))
    .min(1)
    .max(20)
    .optional(),
  /** Of the flesh, at every temperature; the published default by temperature where nothing is said. */
  diffusivityM2s: z.number().min(1e-13).max(2e-9).optional(),
  /** Nitrite that goes in with the cure, to be held against the law of a place; `massG` is the green weight. */
  nitrite: NitriteInput.optional(),
  /** Nitrate likewise, as sodium nitrate. */
  nitrate: NitrateInput.optional(),
  /** The mean salt that is wanted, % of the salted piece: how long, or how strong a brine. */
  wanted: z.strictObject({ saltPct: z.number().positive().max(26) }).optional(),
});

export const CureInput = CureFields.superRefine((input, context) => {
  const complain = (path: string[], found: string, allowed: string) =>
    context.addIssue({ code: 'custom', path, message: allowed, params: { found } });
  const { shape } = input.piece;
  const [needed, other] =
    shape === 'slab' ? (['thicknessMm', 'diameterMm'] as const) : (['diameterMm', 'thicknessMm'] as const);
  if (input.piece[needed] === undefined)
    complain(['piece', needed], 'nothing', `a length in mm: a ${shape} needs it`);
  if (input.piece[other] !== undefined)
    complain(['piece', other], `${input.piece[other]} mm`, `only ${needed} for a ${shape}`);
  const names = (input.piece.sugars ?? []).map(({ sugar }) => sugar);
  if (new Set(names).size < names.length)
    complain(['piece', 'sugars'], `${names[0]} twice`, 'each sugar once');
  for (const key of ['bath', 'temperatureC', 'h'] as const) {
    if (input.stages === undefined && input[key] === undefined)
      complain([key], 'nothing', `${key}, or a list of stages that each have it`);
    if (input.stages !== undefined && input[key] !== undefined)
      complain([key], `${key} beside stages`, `either stages or bath, temperatureC and h`);
  }
});
export type CureInput = z.infer<typeof CureInput>;
