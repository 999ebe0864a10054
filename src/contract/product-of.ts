/** What a dish is to the rule book: read from its animal, its part and its method, and from what its cook step says of the food. */
import { animalsIn, isOffal, type Product } from '../core/properties/product.ts';
import type { RuleStep } from '../core/properties/rule.ts';
import { nitriteHandedOn } from './handed-on.ts';
import type { Food, Method, Step } from './steps.ts';

/** Whose food it is and where it is made. */
export interface Subject {
  readonly species: string;
  readonly part: string;
  readonly place: 'GB-ENG' | 'GB-SCT' | 'GB-WLS' | 'GB-NIR' | 'EU' | 'US';
}

/** What rules a step of the method may answer to. */
export function ruleStepsOf(step: Step): readonly RuleStep[] {
  switch (step.kind) {
    case 'cook':
      return ['cook'];
    case 'chill':
      return ['chill'];
    case 'keep':
      return step.maxC < 0 ? ['keep', 'freeze'] : ['keep'];
    case 'finish':
      return ['reheat', 'keep hot'];
    default:
      return [];
  }
}

/** Without a cook step of its own, a later step takes the food as the last cook step before it has it. */
function foodAt(method: Method, i: number): Food {
  for (const step of method.slice(0, i + 1).reverse()) if (step.kind === 'cook') return step.food ?? {};
  return {};
}

/** Salt, spice and cream name no animal; "chicken liver" and "pork back fat" do. */
export function productOf(
  { species, part }: Omit<Subject, 'place'>,
  method: Method,
  stepId: string,
): Product {
  const at = method.findIndex((step) => step.id === stepId);
  const before = method.slice(0, Math.max(0, at));
  const food = foodAt(method, at);
  const mixed = before.flatMap((step) => (step.kind === 'mix' ? step.lines.map((l) => l.ingredient) : []));
  const kept = method.slice(Math.max(0, at)).find((step) => step.kind === 'keep');
  const has = (kind: Step['kind']) => before.some((step) => step.kind === kind);
  return {
    animals: [...new Set([...animalsIn(species), ...animalsIn(part), ...mixed.flatMap(animalsIn)])],
    forms: {
      // What is mixed before it is cooked is taken to be minced, which is the stricter answer.
      minced: food.minced ?? has('mix'),
      'stuffed or rolled': food.stuffedOrRolled ?? has('fill'),
      'injected or tenderised': food.injectedOrTenderised ?? null,
    },
    fatPct: food.fatPct ?? null,
    // What the step says itself overrules what a cure before it has put in.
    nitritePpm: food.nitritePpm ?? nitriteHandedOn(method, stepId)?.ppm ?? null,
    packed: kept?.kind !== 'keep' ? null : kept.packed === 'open or covered' ? 'air' : 'without air',
    cooked: has('cook'),
    offal: isOffal(part),
  };
}
