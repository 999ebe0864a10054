/** Dishes against the allergens of the place, in words. What nobody has said is not known, and never no. */
import { usAllergensOf } from '../core/filling/allergens.ts';
import { type Allergen, allergens as fourteen, usAllergens } from '../core/filling/food.ts';
import type { DishNumbers, Pantry, PantryDish } from './pantry-answer.ts';
import { lineOf } from './pantry-reckon.ts';

type MatrixWord = 'yes' | 'check label' | 'may' | 'not known' | 'no';

interface MatrixCell {
  readonly column: string;
  readonly word: MatrixWord;
  /** How it comes in, or why nobody can tell. */
  readonly why: readonly string[];
}

export interface MatrixRow {
  readonly dishId: string;
  readonly name: string;
  /** Version read, null where there is none. */
  readonly number: number | null;
  readonly signed: boolean;
  /** One for each column, in its order. */
  readonly cells: readonly MatrixCell[];
  /** What to ask before anything is said of the dish. */
  readonly ask: readonly string[];
}

type Held = Pick<Pantry, 'parts' | 'dishes' | 'ingredients' | 'risks'>;

interface Seen {
  readonly allergen: Allergen;
  readonly kinds: readonly string[];
  readonly kindNotSaid: boolean;
  readonly word: 'yes' | 'check label' | 'may';
  readonly why: string;
}

/** The fourteen of Annex II, or in the US the nine. */
export const matrixColumns = (place: string): readonly string[] => (place === 'US' ? usAllergens : fourteen);

const columnsOf = (place: string, { allergen, kinds, kindNotSaid }: Seen): readonly string[] =>
  place === 'US'
    ? usAllergensOf([{ allergen, certain: true, kinds, kindNotSaid, routes: [], more: 0 }])
    : [allergen];

const wayIn = (path: readonly string[]) => (path.length === 0 ? 'the dish as a whole' : path.join(' → '));

/** What a dish's trims take, which need not go into a mix. */
function trimmed(dish: PantryDish, held: Held, seen: Seen[], ask: string[]): void {
  for (const { name, of } of dish.bought) {
    const food =
      of === null
        ? held.parts.find(
            (p) => `${p.species} ${p.name}`.toLowerCase() === `${dish.species} ${name}`.toLowerCase(),
          )
        : of.kind === 'part'
          ? held.parts.find((p) => p.id === of.id)
          : of.kind === 'ingredient'
            ? held.ingredients.find((i) => i.id === of.id)
            : undefined;
    if (food === undefined || food.allergens === null) ask.push(`${name}: nobody has said what it holds`);
    else
      for (const { allergen, as, checkLabel } of food.allergens)
        seen.push({
          allergen,
          kinds: as === undefined ? [] : [as],
          kindNotSaid: as === undefined,
          word: checkLabel === true ? 'check label' : 'yes',
          why: name,
        });
  }
}

/** Down through dishes within dishes: their trims, and what labels say that an ingredient may contain. */
function below(dish: PantryDish, held: Held, seen: Seen[], ask: string[], been: Set<string>): void {
  if (been.has(dish.id)) return;
  been.add(dish.id);
  trimmed(dish, held, seen, ask);
  for (const line of dish.lines) {
    const of = lineOf(line);
    if (!(line.g > 0) || of === null) continue;
    if (of.kind === 'ingredient')
      for (const { allergen, as } of held.ingredients.find((i) => i.id === of.id)?.mayContain ?? [])
        seen.push({
          allergen,
          kinds: as === undefined ? [] : [as],
          kindNotSaid: as === undefined,
          word: 'may',
          why: `the label of ${line.ingredient} says that it may contain ${as ?? allergen}`,
        });
    if (of.kind !== 'dish') continue;
    const sub = held.dishes.find((d) => d.id === of.id);
    if (sub !== undefined) below(sub, held, seen, ask, been);
  }
}

/**
 * The row of one dish. `numbers`: what it comes to by the pantry of the same day; undefined where no version was reckoned.
 * A dish in which nothing is weighed in is not known in every column.
 */
export function matrixRow(
  dish: { readonly id: string; readonly name: string },
  numbers: DishNumbers | undefined,
  held: Held,
  place: string,
): MatrixRow {
  const seen: Seen[] = [];
  const ask: string[] = [];
  const counted = held.dishes.find((d) => d.id === dish.id);
  if (numbers === undefined || counted === undefined)
    ask.push('nothing is weighed in: no step says what the dish is made of');
  else below(counted, held, seen, ask, new Set());
  for (const name of numbers?.allergensNotSaid ?? []) ask.push(`${name}: nobody has said what it holds`);
  if ((numbers?.allergensNotSaidMore ?? 0) > 0)
    ask.push(`${numbers?.allergensNotSaidMore} more of which nobody has said what they hold`);
  for (const name of numbers?.putAway ?? []) ask.push(`${name}: put away, what stands for it now?`);
  ask.push(...(numbers?.problems ?? []));
  for (const { allergen, certain, kinds, kindNotSaid, via, moreWays } of numbers?.allergens ?? []) {
    const ways = [...via.map(wayIn), ...(moreWays > 0 ? [`${moreWays} more ways`] : [])].join('; ');
    const named = kinds.length === 0 ? '' : `${kinds.join(', ')}: `;
    seen.push({
      allergen,
      kinds,
      kindNotSaid,
      word: certain ? 'yes' : 'check label',
      why: `${named}${ways}`,
    });
  }
  for (const risk of held.risks)
    if (risk.ended === null && (risk.dishId === null || risk.dishId === dish.id))
      seen.push({
        allergen: risk.allergen,
        kinds: risk.as === null ? [] : [risk.as],
        kindNotSaid: risk.as === null,
        word: 'may',
        why: risk.reason,
      });
  const asks = [...new Set(ask)];
  return {
    dishId: dish.id,
    name: dish.name,
    number: numbers?.number ?? null,
    signed: numbers?.signed ?? false,
    cells: matrixColumns(place).map((column): MatrixCell => {
      const here = seen.filter((s) => columnsOf(place, s).includes(column));
      const found = (['yes', 'check label'] as const).find((w) => here.some((s) => s.word === w));
      const word = found ?? (asks.length > 0 ? 'not known' : here.length > 0 ? 'may' : 'no');
      const why = [...new Set(here.map((s) => s.why))];
      return { column, word, why: word === 'not known' ? [...asks, ...why] : why };
    }),
    ask: asks,
  };
}
