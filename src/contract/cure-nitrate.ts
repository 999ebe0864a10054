/** Nitrate in a cure: what goes in, and the law of the place; what is over or not known is refused. */
import { z } from 'zod';
import { nitrateProducts, nitritePlaces } from '../core/properties/brine-nitrite.ts';
import { ionOf, judgeNitrate } from '../core/salt/nitrite.ts';
import { cite } from '../core/sources.ts';
import { InputProblems } from './problem.ts';

export const NitrateInput = z.strictObject({
  place: z.enum(nitritePlaces),
  product: z.enum(nitrateProducts),
  /** Sodium nitrate, or potassium nitrate, that goes into the meat. */
  nitrateG: z.number().positive().max(100_000_000),
  of: z.enum(['NaNO3', 'KNO3']),
});
export type NitrateInput = z.infer<typeof NitrateInput>;

export const NitrateAnswer = z.strictObject({
  /** To the green weight of the meat. */
  ingoingMgKgAsSodiumNitrate: z.number(),
  limitMgKg: z.number(),
  note: z.string(),
  source: z.string(),
  confidence: z.string(),
  cautions: z.array(z.string()),
});
export type NitrateAnswer = z.infer<typeof NitrateAnswer>;

/** What goes into a piece of so many grams. Throws `InputProblems` where the law forbids it or is not known. */
export function nitrateAnswer({ place, product, nitrateG, of }: NitrateInput, massG: number): NitrateAnswer {
  const asSodium = (ionOf(of, nitrateG) / ionOf('NaNO3', 1) / massG) * 1e6;
  const { verdict, limit } = judgeNitrate(asSodium, place, product);
  if (limit === null)
    throw new InputProblems([
      {
        path: 'nitrate.product',
        found: `${product} in ${place}: no published limit is known here`,
        allowed: 'a product whose limit is known; not known is not allowed: ask your local food authority',
      },
    ]);
  if (verdict !== 'within')
    throw new InputProblems([
      {
        path: 'nitrate.nitrateG',
        found: `${Math.ceil(asSodium * 10) / 10} mg/kg of sodium nitrate going in`,
        allowed: `at most ${limit.most} mg/kg of sodium nitrate for a ${product} in ${place} (${cite(limit.source)})`,
      },
    ]);
  return {
    ingoingMgKgAsSodiumNitrate: asSodium,
    limitMgKg: limit.most,
    note: limit.note,
    source: cite(limit.source),
    confidence: limit.confidence,
    cautions: [
      'Nitrate works only after bacteria have made nitrite of it, at a pace that nobody can reckon: it is for long, dry, raw cures in trained hands.',
    ],
  };
}
