/** The contract of `which`: the rules of the book that a food is held to at a step and a place, and why the others are not. */
import { z } from 'zod';
import { type RuleForFood, rulesFor } from '../core/method/rules-for.ts';
import { timeAsked } from '../core/microbes/asked-time.ts';
import type { Animal } from '../core/properties/product.ts';
import { type Basis, cite } from '../core/sources.ts';
import { accept } from './problem.ts';
import { percent } from './quantities.ts';

const animals = [
  'chicken',
  'turkey',
  'other bird',
  'game bird',
  'cattle',
  'sheep or goat',
  'deer',
  'pig',
  'wild boar',
  'horse',
  'farmed rabbit',
  'small game',
  'fish',
] as const satisfies readonly Animal[];

/** What is left out is not known, and the stricter answer counts. */
export const WhichInput = z.strictObject({
  place: z.enum(['GB-ENG', 'GB-SCT', 'GB-WLS', 'GB-NIR', 'EU', 'US']),
  step: z.enum(['cook', 'chill', 'keep', 'keep hot', 'reheat', 'freeze']),
  animals: z.array(z.enum(animals)).max(13).optional(),
  minced: z.boolean().optional(),
  stuffedOrRolled: z.boolean().optional(),
  injectedOrTenderised: z.boolean().optional(),
  fatPct: percent().optional(),
  nitritePpm: z.number().min(0).max(5_000).optional(),
  packed: z.enum(['air', 'without air']).optional(),
  cooked: z.boolean().optional(),
  offal: z.boolean().optional(),
  /** A core temperature held: how long each rule of cooking asks for there. */
  atC: z.number().min(-80).max(200).optional(),
});
export type WhichInput = z.infer<typeof WhichInput>;

export const WhichAnswer = z.strictObject({
  rules: z.array(
    z.strictObject({
      rule: z.string(),
      title: z.string(),
      place: z.string(),
      /** Law, an authority's advice, or a model: three different things. */
      type: z.enum(['statutory', 'guidance', 'model']),
      standing: z.enum([
        'held to',
        'covered',
        'may stand instead',
        'one hazard',
        'another place',
        'not for this food',
      ]),
      /** null: something about the food is not known, and the rule is taken to apply. */
      applies: z.boolean().nullable(),
      why: z.string(),
      /** What a kitchen must have before it may stand instead. */
      needs: z.string().optional(),
      /** Minutes that it asks for at `atC`; null where no time is enough. */
      asksMin: z.number().nullable().optional(),
      citation: z.string(),
      confidence: z.string(),
    }),
  ),
  basis: z.array(
    z.strictObject({ what: z.string(), source: z.string(), citation: z.string(), confidence: z.string() }),
  ),
  cautions: z.array(z.string()),
});
export type WhichAnswer = z.infer<typeof WhichAnswer>;

function asksMin({ rule }: RuleForFood, atC: number | undefined): { asksMin?: number | null } {
  if (atC === undefined || (rule.kind !== 'lethality' && rule.kind !== 'hold')) return {};
  const s = timeAsked(rule, atC);
  return { asksMin: Number.isFinite(s) ? s / 60 : null };
}

const order: readonly RuleForFood['standing'][] = [
  'held to',
  'covered',
  'may stand instead',
  'one hazard',
  'another place',
  'not for this food',
];

/** The rules around a food as the contract states them. Throws `InputProblems` for an input that it does not allow. */
export function runWhich(raw: unknown): WhichAnswer {
  const input = accept(WhichInput, raw);
  const found = rulesFor(
    {
      animals: input.animals ?? [],
      forms: {
        minced: input.minced ?? null,
        'stuffed or rolled': input.stuffedOrRolled ?? null,
        'injected or tenderised': input.injectedOrTenderised ?? null,
      },
      fatPct: input.fatPct ?? null,
      nitritePpm: input.nitritePpm ?? null,
      packed: input.packed ?? null,
      cooked: input.cooked ?? null,
      offal: input.offal ?? null,
    },
    input.place,
    input.step,
  ).sort((a, b) => order.indexOf(a.standing) - order.indexOf(b.standing));
  const basis = found
    .filter((r) => r.standing === 'held to')
    .map(({ rule }): Basis => ({ what: rule.title, source: rule.source, confidence: rule.confidence }));
  return {
    rules: found.map((entry) => ({
      rule: entry.rule.id,
      title: entry.rule.title,
      place: entry.rule.place,
      type: entry.rule.type,
      standing: entry.standing,
      applies: entry.applies,
      why: entry.why,
      ...(entry.rule.scope.needs === undefined ? {} : { needs: entry.rule.scope.needs }),
      ...asksMin(entry, input.atC),
      citation: cite(entry.rule.source),
      confidence: entry.rule.confidence,
    })),
    basis: basis.map((b) => ({ ...b, citation: cite(b.source) })),
    cautions: [
      ...(found.some((r) => r.standing === 'held to')
        ? []
        : ['No rule known here is held to at this step: that is no proof that none is in force. Ask.']),
      'What is not known about the food counts as the stricter answer. Several rules may be held to at once: each must hold.',
      'Advice, not a licence: which rule binds your kitchen is for your local authority to say.',
    ],
  };
}
