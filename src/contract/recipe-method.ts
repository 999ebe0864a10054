/** A recipe that was read, laid out as a method: what can be weighed as lines, the words of its steps beside them. */
import type { UnitSystem } from '../core/units.ts';
import { type KnownFood, type ReadIngredient, readIngredients } from './ingredient-text.ts';
import type { ReadRecipe } from './recipe-ld.ts';
import type { Method, MixLine, Step } from './steps.ts';

export interface RecipeMethod {
  readonly method: Method;
  readonly read: readonly ReadIngredient[];
  readonly said: readonly string[];
}

export interface RecipeReading {
  readonly system: UnitSystem;
  readonly known: readonly KnownFood[];
  readonly newId: () => string;
}

/** Room of the words of one step [characters]. */
const room = 2_000;

/** Sentences of any length in pieces that a step has room for; nothing is cut away. */
function inPieces(paragraphs: readonly string[]): string[] {
  const pieces: string[] = [];
  for (const whole of paragraphs)
    for (let from = 0; from < whole.length; from += room) {
      const part = whole.slice(from, from + room);
      const last = pieces.at(-1);
      if (last !== undefined && from === 0 && last.length + part.length + 1 <= room)
        pieces[pieces.length - 1] = `${last}\n${part}`;
      else pieces.push(part);
    }
  return pieces;
}

const weighed = (r: ReadIngredient): r is ReadIngredient & { g: number } => r.g !== null && r.g <= 1_000_000;

/** A food is pointed at only where the name leaves no doubt; else the line has the words, and is to be settled on the bench. */
const lineOfRead = (r: ReadIngredient & { g: number }): MixLine => ({
  ingredient: (r.name === '' ? r.text : r.name).slice(0, 200),
  g: r.g,
  ...(r.sure === 'sure' && r.guess !== null ? { of: r.guess.of } : {}),
});

/** No weight is made up: what says none stands in the words of the step. No cook step is laid out: a recipe has no core. */
export function methodOfRecipe(recipe: ReadRecipe, { system, known, newId }: RecipeReading): RecipeMethod {
  const read = recipe.ingredients.flatMap((text) => readIngredients(text, { system, known }));
  const lines = read.filter(weighed).map(lineOfRead);
  const without = read.filter((r) => !weighed(r));
  const said = [
    'No step of heat or cold is laid out: the recipe gives no size and no core. Nothing is shown as safe until you have added them on the bench.',
    'A recipe in this form has no allergens: each line is as the pantry has it, or not known.',
    'The mix is held to 12 °C: common practice, no source.',
  ];
  if (without.length > 0)
    said.push(`Without a weight, so in the words of the step: ${without.map((r) => r.text).join('; ')}.`);
  if (recipe.left.length > 0) said.push(`Not read: ${recipe.left.slice(0, 40).join(', ')}.`);
  if (lines.length > 100)
    said.push('More than 100 ingredients have a weight: the rest stand in the words of the step.');
  const words = [
    ...(without.length > 0 ? [`Not weighed: ${without.map((r) => r.text).join('; ')}`] : []),
    ...(lines.length > 100
      ? [
          `Also: ${lines
            .slice(100)
            .map((l) => `${l.g} g ${l.ingredient}`)
            .join('; ')}`,
        ]
      : []),
    ...(recipe.yield === '' ? [] : [`Makes ${recipe.yield}.`]),
    ...recipe.steps.map(
      ({ name, text }, i) => `${i + 1}. ${name === '' || name === text ? '' : `${name}: `}${text}`,
    ),
  ];
  const pieces = inPieces(words);
  const step = (name: string, how: string, own: MixLine[]): Step => ({
    kind: 'mix',
    id: newId(),
    name,
    how,
    handsMin: 0,
    asks: [],
    lines: own,
    maxC: 12,
  });
  const method: Method = [
    step('Mix', pieces[0] ?? '', lines.slice(0, 100)),
    ...pieces.slice(1, 39).map((how, i) => step(`The recipe’s words, ${i + 2}`, how, [])),
  ];
  if (pieces.length > 39)
    said.push('The words of the recipe are longer than a method has room for: their end is left out.');
  return { method, read, said };
}
