/** A dish as a Recipe in the open vocabulary of schema.org (JSON-LD), and such a recipe read. Pure. */
import { foundText, pathText } from './problem.ts';
import { refuse } from './refuse.ts';
import type { Method, Step } from './steps.ts';

export interface RecipeOf {
  readonly name: string;
  readonly story: string;
  readonly method: Method;
  /** Names of the allergens as the kitchen has them; of `notSaid` nobody has said. */
  readonly allergens: readonly string[];
  readonly notSaid: readonly string[];
}

const grams = (g: number) => `${Number(g.toPrecision(6))} g`;

function ingredientsOf(method: Method): string[] {
  return method.flatMap((step) => {
    if (step.kind === 'trim') return [`${grams(step.weightG)} ${step.part}, as bought`];
    if (step.kind !== 'mix') return [];
    return step.lines.flatMap((l) => (l.carried === true ? [] : [`${grams(l.g)} ${l.ingredient}`]));
  });
}

type Stages = Extract<Step, { kind: 'cook' }>['stages'];

const stagesText = (stages: Stages) =>
  stages.map((s) => `${s.name}${'min' in s.until ? `, ${s.until.min} min` : ''}`).join('; ');

/** What the step says and its settings that another kitchen needs. */
function textOf(step: Step): string {
  const more =
    step.kind === 'cook' || step.kind === 'chill'
      ? stagesText(step.stages)
      : step.kind === 'keep'
        ? `At ${step.maxC} °C or colder, ${step.days} days at most.`
        : step.kind === 'finish'
          ? `${step.by}, ${step.mediumC} °C, ${step.min} min.`
          : step.kind === 'cure'
            ? `${step.by}, ${step.saltPct} % salt, ${step.h} h at ${step.mediumC} °C.`
            : '';
  const text = [step.how.trim(), more].filter((t) => t !== '').join(' ');
  return text === '' ? step.name : text;
}

/** Minutes of a step beside the hands; null where it ends by a temperature and nobody knows when. */
function waitOf(step: Step): number | null {
  if (step.kind === 'cure') return step.h * 60;
  if (step.kind === 'rinse and dry') return step.rinseMin + step.dryMin;
  if (step.kind === 'finish') return step.min;
  if (step.kind !== 'cook' && step.kind !== 'chill') return 0;
  let sum = 0;
  for (const { until } of step.stages) {
    if (!('min' in until)) return null;
    sum += until.min;
  }
  return sum;
}

function totalTime(method: Method): string | null {
  let sum = 0;
  for (const step of method) {
    const wait = waitOf(step);
    if (wait === null) return null;
    sum += wait + step.handsMin;
  }
  const whole = Math.round(sum);
  return whole === 0 ? null : `PT${Math.floor(whole / 60)}H${whole % 60}M`;
}

function yieldOf(method: Method): string | null {
  const fill = method.findLast((s) => s.kind === 'fill');
  const plate = method.findLast((s) => s.kind === 'plate');
  if (fill?.pieces === undefined) return null;
  return plate === undefined
    ? `${fill.pieces} pieces`
    : `${Number((fill.pieces * plate.portionsPerPiece).toPrecision(6))} portions`;
}

/** What is not known (how long until a core temperature, how many portions) is left out, never guessed. */
export function recipeOf({ name, story, method, allergens, notSaid }: RecipeOf) {
  const time = totalTime(method);
  const serves = yieldOf(method);
  const holds =
    allergens.length === 0
      ? 'Allergens: none is on record.'
      : `Allergens, as the kitchen has them: ${allergens.join(', ')}.`;
  const open = notSaid.length === 0 ? '' : `Allergens not known of: ${notSaid.join(', ')}.`;
  return {
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    name,
    description: [story.trim(), holds, open].filter((t) => t !== '').join(' '),
    ...(serves === null ? {} : { recipeYield: serves }),
    ...(time === null ? {} : { totalTime: time }),
    recipeIngredient: ingredientsOf(method),
    recipeInstructions: method.map((step) => ({
      '@type': 'HowToStep' as const,
      name: step.name,
      text: textOf(step),
    })),
  } as const;
}

export interface ReadRecipe {
  readonly name: string;
  readonly description: string;
  readonly ingredients: readonly string[];
  readonly steps: readonly { readonly name: string; readonly text: string }[];
  readonly yield: string;
  readonly totalTime: string;
  /** Keys that were not read. */
  readonly left: readonly string[];
}

type Thing = Readonly<Record<string, unknown>>;
const isThing = (v: unknown): v is Thing => typeof v === 'object' && v !== null && !Array.isArray(v);
const listOf = (v: unknown): readonly unknown[] => (v === undefined || v === null ? [] : [v].flat());
const hasType = (v: Thing, type: string) =>
  listOf(v['@type']).some(
    (t) => typeof t === 'string' && t.replace(/^(https?:\/\/schema\.org\/|schema:)/, '') === type,
  );

const entities: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
  deg: '°',
  frac12: '½',
  frac14: '¼',
  frac34: '¾',
  '#39': "'",
};

/** Plain words: markup and control characters out. It is shown as text and never as markup. */
const plain = (text: string): string =>
  text
    .replace(/<[^<>]{0,2000}>/g, ' ')
    .replace(/&(#?\w{1,8});/g, (all, name: string) => entities[name.toLowerCase()] ?? all)
    .replace(/\p{Cc}|\p{Cs}/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();

function textAt(value: unknown, path: readonly PropertyKey[]): string {
  if (value === undefined || value === null) return '';
  if (typeof value === 'number' && Number.isFinite(value)) return String(value);
  if (typeof value === 'string') return plain(value);
  return refuse(pathText(path), foundText(value), 'a text');
}

const textsAt = (value: unknown, path: readonly PropertyKey[]): string[] =>
  listOf(value)
    .map((v, i) => textAt(v, [...path, i]))
    .filter((t) => t !== '');

function stepsAt(value: unknown, path: readonly PropertyKey[]): { name: string; text: string }[] {
  return listOf(value).flatMap((item, i) => {
    const here = [...path, i];
    if (!isThing(item)) {
      const text = textAt(item, here);
      return text === '' ? [] : [{ name: '', text }];
    }
    const within = item.itemListElement;
    if (within !== undefined && item.text === undefined) return stepsAt(within, [...here, 'itemListElement']);
    const name = textAt(item.name, [...here, 'name']);
    const text = textAt(item.text, [...here, 'text']);
    return name === '' && text === '' ? [] : [{ name, text: text === '' ? name : text }];
  });
}

const known = new Set([
  '@context',
  '@type',
  '@id',
  'name',
  'description',
  'recipeIngredient',
  'ingredients',
  'recipeInstructions',
  'recipeYield',
  'totalTime',
]);

/** Every Recipe in the values, however it is wrapped. */
export function recipesIn(values: readonly unknown[]): Thing[] {
  const found: Thing[] = [];
  let level: unknown[] = [...values];
  while (level.length > 0) {
    const next: unknown[] = [];
    for (const value of level) {
      if (isThing(value) && hasType(value, 'Recipe')) found.push(value);
      else if (typeof value === 'object' && value !== null)
        for (const v of Object.values(value)) next.push(v);
    }
    level = next;
  }
  return found;
}

/** Keys that it does not know are left, and said; what it knows has to be of the right type. */
export function readRecipe(recipe: Thing): ReadRecipe {
  const name = textAt(recipe.name, ['name']);
  if (name === '') refuse('name', 'nothing', 'the name of the recipe');
  const written = recipe.recipeIngredient === undefined ? 'ingredients' : 'recipeIngredient';
  const ingredients = textsAt(recipe[written], [written]);
  if (ingredients.length > 100) refuse(written, `a list of ${ingredients.length}`, 'at most 100 entries');
  const steps = stepsAt(recipe.recipeInstructions, ['recipeInstructions']);
  if (steps.length > 200) refuse('recipeInstructions', `${steps.length} steps`, 'at most 200 steps');
  return {
    name,
    description: textAt(recipe.description, ['description']),
    ingredients,
    steps,
    yield: textsAt(recipe.recipeYield, ['recipeYield']).join(', '),
    totalTime: textAt(recipe.totalTime, ['totalTime']),
    left: Object.keys(recipe).filter((key) => !known.has(key)),
  };
}
