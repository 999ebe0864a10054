/** A mix as the pantry has it today: what it comes to through dishes within dishes, down to foods. */
import type { LineOf } from '../../../../contract/pantry.ts';
import type { Pantry } from '../../../../contract/pantry-answer.ts';
import {
  boughtPrices,
  itemId,
  itemsOf,
  lineOf,
  recipeOf,
  type TableFood,
} from '../../../../contract/pantry-reckon.ts';
import type { StepOf } from '../../../../contract/steps.ts';
import { type AllergensFound, allergensOf } from '../../../../core/filling/allergens.ts';
import {
  type Pantry as Items,
  type Outcome,
  pantryOf,
  pantryWith,
  reckon,
} from '../../../../core/filling/flatten.ts';
import { type Nutrition, nutritionOf } from '../../../../core/filling/nutrition.ts';
import { saltWaterActivity } from '../../../../core/salt/water-activity.ts';

export interface MixReckoned {
  readonly outcome: Outcome;
  /** In 100 g; null where nothing is weighed in. */
  readonly per100: Nutrition | null;
  readonly allergens: AllergensFound;
  /** Salt in the water and water activity by the salt alone; null where salt or water is not known in whole. */
  readonly waterPhaseSalt: number | null;
  readonly waterActivity: number | null;
  /** Lines that nobody has priced, by their names. */
  readonly unpriced: readonly string[];
}

/** Everything that a line can point at, made once for a pantry: a keystroke only adds the mix itself. */
export const itemsFor = (pantry: Pantry, table: TableFood): Items => pantryOf(itemsOf(pantry, table));

const mixId = '00000000-0000-0000-0000-000000000000';

/** Throws what the engine throws: more boiled away than there is, a circle of dishes. */
export function mixReckoned(
  step: Pick<StepOf<'mix'>, 'name' | 'lines'>,
  pantry: Pantry,
  items: Items,
  table: TableFood,
): MixReckoned {
  const { recipe, own } = recipeOf(boughtPrices(pantry), {
    id: mixId,
    name: step.name,
    species: '',
    part: '',
    versionId: mixId,
    number: 0,
    signed: false,
    lines: [...step.lines],
    bought: [],
    yieldPct: 100,
    lossNotSaid: [],
  });
  // A row of the published table that no other dish uses yet.
  const rows = step.lines.flatMap((l) => {
    const food = l.of?.kind === 'table' ? table(l.of.id) : undefined;
    return food === undefined || l.of === undefined ? [] : [{ ...food, id: itemId(l.of) }];
  });
  const held = pantryWith(items, [recipe, ...own, ...rows]);
  const outcome = reckon(recipe, held);
  const per100 = nutritionOf(outcome);
  const of = (n: 'salt' | 'water') =>
    per100 === null || per100.nutrients[n].atLeast ? null : per100.nutrients[n].value;
  const salt = of('salt');
  const water = of('water');
  const phase = salt === null || water === null || water <= 0 ? null : salt / (salt + water);
  return {
    outcome,
    per100,
    allergens: allergensOf(recipe, held),
    waterPhaseSalt: phase,
    waterActivity: phase === null || phase > 0.26 ? null : saltWaterActivity(phase),
    unpriced: step.lines
      .filter((l) => l.g > 0 && l.carried !== true && !priced(l, pantry))
      .map((l) => l.ingredient),
  };
}

function priced(line: StepOf<'mix'>['lines'][number], pantry: Pantry): boolean {
  if (line.pricePerKg !== undefined) return true;
  const of: LineOf | null = lineOf(line);
  if (of === null || of.kind === 'table') return false;
  if (of.kind === 'ingredient') return pantry.ingredients.some((i) => i.id === of.id && i.costPerKg !== null);
  if (of.kind === 'part') return pantry.parts.some((p) => p.id === of.id && p.costPerKg !== null);
  return pantry.dishes.some((d) => itemId({ kind: 'dish', id: d.id }) === itemId(of));
}
