/** Nitrite in a cure: what goes in, and the law of the place; what is over or not known is refused. */
import { z } from 'zod';
import { nitritePlaces, nitriteProducts } from '../core/properties/brine-nitrite.ts';
import { ingoingNitrite, ionOf, judgeNitrite, type NitriteCure } from '../core/salt/nitrite.ts';
import { cite } from '../core/sources.ts';
import { InputProblems } from './problem.ts';

const grams = z.number().positive().max(100_000_000);
const share = z.number().positive().max(100);
const common = {
  place: z.enum(nitritePlaces),
  product: z.enum(nitriteProducts),
  /** Sodium nitrite itself, or a curing salt and how much of it is sodium nitrite. In the whole of the pickle where there is one. */
  nitriteG: grams.optional(),
  blendG: grams.optional(),
  blendStrengthPct: share.optional(),
};

export const NitriteInput = z
  .discriminatedUnion('method', [
    z.strictObject({ method: z.enum(['dry', 'comminuted']), ...common }),
    z.strictObject({ method: z.literal('pumped'), ...common, pickleG: grams, pumpPct: share }),
    z.strictObject({ method: z.literal('immersion pick-up'), ...common, pickleG: grams, pickupPct: share }),
    z.strictObject({ method: z.literal('immersion to equilibrium'), ...common, pickleG: grams }),
  ])
  .superRefine((input, context) => {
    const complain = (key: string, found: string, allowed: string) =>
      context.addIssue({ code: 'custom', path: [key], message: allowed, params: { found } });
    const { nitriteG, blendG, blendStrengthPct } = input;
    if ((nitriteG === undefined) === (blendG === undefined))
      complain(
        'blendG',
        nitriteG === undefined ? 'nothing' : 'blendG beside nitriteG',
        'either nitriteG, or blendG with blendStrengthPct',
      );
    if (blendG !== undefined && blendStrengthPct === undefined)
      complain('blendStrengthPct', 'nothing', 'how much of the blend is sodium nitrite, in %');
    if (blendG === undefined && blendStrengthPct !== undefined)
      complain('blendStrengthPct', `${blendStrengthPct} %`, 'only beside blendG');
    if ('pickleG' in input && (nitriteG ?? ((blendG ?? 0) * (blendStrengthPct ?? 0)) / 100) > input.pickleG)
      complain('pickleG', `${input.pickleG} g`, 'at least the weight of the nitrite in it');
  });
export type NitriteInput = z.infer<typeof NitriteInput>;

export const NitriteAnswer = z.strictObject({
  /** To the green weight of the meat. */
  ingoingMgKgAsSodiumNitrite: z.number(),
  ingoingMgKgAsIon: z.number(),
  verdict: z.enum(['within', 'at the limit']),
  limitMgKg: z.number(),
  limitAs: z.enum(['sodium nitrite', 'nitrite ion']),
  place: z.string(),
  product: z.string(),
  type: z.literal('statutory'),
  note: z.string(),
  source: z.string(),
  sourceKey: z.string(),
  confidence: z.string(),
  cautions: z.array(z.string()),
});
export type NitriteAnswer = z.infer<typeof NitriteAnswer>;

function toCure(input: NitriteInput, massG: number): NitriteCure {
  const nitriteG = input.nitriteG ?? ((input.blendG ?? 0) * (input.blendStrengthPct ?? 0)) / 100;
  const uptake =
    input.method === 'pumped'
      ? input.pumpPct
      : input.method === 'immersion pick-up'
        ? input.pickupPct
        : undefined;
  return {
    method: input.method,
    nitrite: nitriteG / 1000,
    meat: massG / 1000,
    ...('pickleG' in input ? { pickle: input.pickleG / 1000 } : {}),
    ...(uptake === undefined ? {} : { uptake: uptake / 100 }),
  };
}

/** What goes into a piece of so many grams. Throws `InputProblems` where the law forbids it or is not known. */
export function nitriteAnswer(input: NitriteInput, massG: number): NitriteAnswer {
  const { place, product, method } = input;
  const ppm = ingoingNitrite(toCure(input, massG));
  const { verdict, amount, limit } = judgeNitrite(ppm, place, product, method);
  if (limit === null || amount === null || verdict === 'not known')
    throw new InputProblems([
      {
        path: 'nitrite.product',
        found: `${product}, ${method}, in ${place}: no published limit is known here`,
        allowed: 'a product whose limit is known; not known is not allowed: ask your local food authority',
      },
    ]);
  const limitAs = limit.as === 'NO2' ? 'nitrite ion' : 'sodium nitrite';
  if (verdict === 'over')
    throw new InputProblems([
      {
        path: input.blendG === undefined ? 'nitrite.nitriteG' : 'nitrite.blendG',
        found: `${Math.ceil(amount * 10) / 10} mg/kg of ${limitAs} going in`,
        allowed:
          limit.most === 0
            ? `none for a ${product} in ${place}: ${limit.note} (${cite(limit.source)})`
            : `at most ${limit.most} mg/kg of ${limitAs} for a ${product}, ${method}, in ${place} (${cite(limit.source)})`,
      },
    ]);
  return {
    ingoingMgKgAsSodiumNitrite: ppm,
    ingoingMgKgAsIon: ionOf('NaNO2', ppm),
    verdict,
    limitMgKg: limit.most,
    limitAs,
    place,
    product,
    type: limit.type,
    note: limit.note,
    source: cite(limit.source),
    sourceKey: limit.source,
    confidence: limit.confidence,
    cautions: [
      ...(verdict === 'at the limit' ? ['Over the limit by rounding: weigh in a little less.'] : []),
      ...(limit.confidence === 'read'
        ? []
        : ['This limit was taken from pages that reproduce it: check it against the text in force.']),
      'Nitrite is a poison: a few grams of the pure salt can kill. Use ready-mixed curing salt, coloured and labelled, weighed on a scale that reads a tenth of a gram, locked away from table salt.',
      'What may be left in the finished product is another limit, and is measured, not computed.',
    ],
  };
}
