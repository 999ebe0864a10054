/** A dish taken away as a file or a recipe, and one brought in: read first, kept only when somebody says so. */
import { asc, eq } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import {
  type DishFile,
  dishFileFormat,
  dishFileVersion,
  type FileFood,
  type Here,
  isDishFile,
  methodHere,
  pointedAt,
  readDishFile,
  withoutPrices,
} from '../contract/exchange.ts';
import type { BroughtDish } from '../contract/exchange-operations.ts';
import { valuesIn } from '../contract/incoming-text.ts';
import type { KnownFood } from '../contract/ingredient-text.ts';
import type { BodyOf } from '../contract/operations.ts';
import type { LineOf } from '../contract/pantry.ts';
import type { DishNumbers, Pantry } from '../contract/pantry-answer.ts';
import { readRecipe, recipeOf, recipesIn } from '../contract/recipe-ld.ts';
import { methodOfRecipe } from '../contract/recipe-method.ts';
import type { Dish } from '../contract/records.ts';
import { refuse } from '../contract/refuse.ts';
import type { Method } from '../contract/steps.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, kitchenOf, look } from './app.ts';
import { dishNumbers } from './dish-numbers.ts';
import { dishRow, layDish } from './dishes.ts';
import { notFound } from './errors.ts';
import { pantry } from './pantry.ts';
import { tableRow } from './pantry-table.ts';

interface Asked {
  readonly version?: string | undefined;
}

/** The dish and those of its versions that are asked for, the oldest first. */
const versionsOf = (app: App, kitchenId: string, dishId: string, { version }: Asked) =>
  look(app, async (db) => {
    const dish = await dishRow(db, kitchenId, dishId);
    const rows = await db
      .select()
      .from(t.version)
      .where(eq(t.version.dishId, dish.id))
      .orderBy(asc(t.version.number));
    const versions = version === undefined ? rows : rows.filter((row) => row.id === version);
    if (versions.length === 0) throw notFound('version of this dish');
    return { dish, versions };
  });

type Held = Pick<Pantry, 'ingredients' | 'parts'>;

function foodOf(of: LineOf, held: Held, numbers: readonly DishNumbers[]): FileFood[] {
  if (of.kind === 'ingredient') {
    const i = held.ingredients.find((x) => x.id === of.id);
    if (i === undefined) return [];
    const { name, tableId, nutrients, allergens, mayContain, source } = i;
    const known = allergens !== null;
    return [
      { of, name, tableId, nutrients, allergens: allergens ?? [], mayContain, allergensKnown: known, source },
    ];
  }
  if (of.kind === 'part') {
    const p = held.parts.find((x) => x.id === of.id);
    if (p === undefined) return [];
    const { tableId, nutrients, allergens, source } = p;
    const name = `${p.species} ${p.name}`;
    const known = allergens !== null;
    return [
      {
        of,
        name,
        tableId,
        nutrients,
        allergens: allergens ?? [],
        mayContain: [],
        allergensKnown: known,
        source,
      },
    ];
  }
  const d = of.kind === 'dish' ? numbers.find((x) => x.dishId === of.id) : undefined;
  if (d === undefined) return [];
  return [
    {
      of,
      name: d.name,
      tableId: null,
      nutrients: null,
      allergens: d.allergens.map((a) => ({
        allergen: a.allergen,
        ...(a.certain ? {} : { checkLabel: true as const }),
      })),
      mayContain: [],
      allergensKnown:
        d.problems.length === 0 && d.allergensNotSaid.length === 0 && d.allergensNotSaidMore === 0,
      source: '',
    },
  ];
}

export async function exportDish(
  app: App,
  kitchenId: string,
  dishId: string,
  asked: Asked,
): Promise<DishFile> {
  const { dish, versions } = await versionsOf(app, kitchenId, dishId, asked);
  const held = await pantry(app, kitchenId);
  const numbers = await dishNumbers(app, kitchenId);
  const { name, species, part, story } = dish;
  return {
    format: dishFileFormat,
    formatVersion: dishFileVersion,
    dish: { name, species, part, story },
    versions: versions.map((v) => ({
      number: v.number,
      status: v.status as 'draft' | 'signed',
      reason: v.reason,
      createdAt: v.createdAt.toISOString(),
      method: withoutPrices(v.method as Method),
    })),
    foods: pointedAt(versions.map((v) => v.method as Method)).flatMap((of) => foodOf(of, held, numbers)),
  };
}

/** Allergens of a method by the foods that its lines point at: what is certain, and what nobody has said. */
function allergensOf(method: Method, here: Here): { allergens: string[]; notSaid: string[] } {
  const allergens = new Set<string>();
  const notSaid = new Set<string>();
  for (const step of method)
    if (step.kind === 'mix')
      for (const line of step.lines) {
        const [of] = pointedAt([[{ ...step, lines: [line] }]]);
        const found = of === undefined ? null : here(of);
        for (const word of [...(line.allergens ?? []), ...(found?.allergens ?? [])]) allergens.add(word);
        if (found === null ? line.allergens === undefined : !found.known) notSaid.add(line.ingredient);
      }
  return { allergens: [...allergens], notSaid: [...notSaid] };
}

export async function exportRecipe(app: App, kitchenId: string, dishId: string, asked: Asked) {
  const { dish, versions } = await versionsOf(app, kitchenId, dishId, asked);
  const newest = versions.at(-1);
  if (newest === undefined) throw notFound('version of this dish');
  const method = newest.method as Method;
  const here = await hereIn(app, kitchenId);
  const { name, story } = dish;
  return recipeOf({ name, story, method, ...allergensOf(method, here.find) });
}

/** What this kitchen has, looked up once. */
async function hereIn(app: App, kitchenId: string): Promise<{ find: Here; foods: KnownFood[] }> {
  const held = await pantry(app, kitchenId);
  const numbers = await dishNumbers(app, kitchenId);
  const there = await look(app, (db) =>
    db.select({ id: t.dish.id }).from(t.dish).where(eq(t.dish.kitchenId, kitchenId)),
  );
  const dishes = new Set(there.map((d) => d.id));
  const find: Here = (of) => {
    if (of.kind === 'table') {
      const row = tableRow(of.id);
      return row === undefined
        ? null
        : { allergens: row.allergens?.map((m) => m.allergen) ?? [], known: row.allergens !== null };
    }
    const [food] = foodOf(of, held, numbers);
    if (food === undefined) return dishes.has(of.id) ? { allergens: [], known: false } : null;
    return {
      allergens: [...food.allergens, ...food.mayContain].map((m) => m.allergen),
      known: food.allergensKnown,
    };
  };
  const own = held.ingredients
    .filter((i) => !i.putAway)
    .map(({ id, name, tableId, pieceG, densityKgM3 }) => ({
      of: { kind: 'ingredient', id } as const,
      name,
      tableId,
      pieceG,
      densityKgM3,
    }));
  return { find, foods: own };
}

type Incoming = BodyOf<'importDish'>;

function fromFile(value: unknown, here: Here, input: Incoming): BroughtDish {
  const file = readDishFile(value);
  const numbers = file.versions.map((v) => v.number);
  const wanted = input.version ?? Math.max(...numbers);
  const taken = file.versions.find((v) => v.number === wanted);
  if (taken === undefined) return refuse('version', String(wanted), `one of ${numbers.join(', ')}`);
  const { method, said } = methodHere(file, taken.method, here, uuid);
  return {
    from: 'dish file',
    ...file.dish,
    version: wanted,
    versions: numbers,
    method,
    ingredients: [],
    said: [
      ...(taken.status === 'signed'
        ? [
            'It was signed where it comes from. Here it is a draft: nobody has signed it, and no log of this kitchen stands behind it.',
          ]
        : []),
      ...(numbers.length > 1
        ? [`Of ${numbers.length} versions, ${wanted} is brought in; the others stay in the file.`]
        : []),
      ...said,
    ],
  };
}

function fromRecipe(
  values: readonly unknown[],
  known: readonly KnownFood[],
  system: 'metric' | 'US',
): BroughtDish {
  const found = recipesIn(values);
  const first = found[0];
  if (first === undefined)
    return refuse('text', 'JSON with neither a dish file nor a Recipe in it', 'a dish file or a Recipe');
  const recipe = readRecipe(first);
  const { method, read, said } = methodOfRecipe(recipe, { system, known, newId: uuid });
  const long = recipe.description.length > 1_000;
  return {
    from: 'recipe',
    name: recipe.name.slice(0, 120).trim(),
    species: '',
    part: '',
    story: recipe.description.slice(0, 1_000),
    version: null,
    versions: [],
    method,
    ingredients: read.map(({ text, guess, g, how, sure, why }) => ({
      text,
      taken: guess?.name ?? null,
      g,
      how,
      sure,
      why,
    })),
    said: [
      ...(found.length > 1 ? [`There are ${found.length} recipes in it; the first is read.`] : []),
      ...(recipe.name.length > 120 ? ['Its name is longer than 120 characters: its end is left out.'] : []),
      ...(long ? ['Its description is longer than 1,000 characters: its end is left out.'] : []),
      ...said,
    ],
  };
}

export async function importDish(
  app: App,
  actor: Actor,
  input: Incoming,
): Promise<{ read: BroughtDish; dish: Dish | null }> {
  const values = valuesIn(input.text);
  const here = await hereIn(app, actor.kitchenId);
  const { units } = await look(app, (db) => kitchenOf(db, actor.kitchenId));
  const file = values.find(isDishFile);
  const read =
    file === undefined
      ? fromRecipe(values, here.foods, units as 'metric' | 'US')
      : fromFile(file, here.find, input);
  if (!input.keep) return { read, dish: null };
  const name = input.name ?? read.name;
  const species = input.species ?? read.species;
  const part = input.part ?? read.part;
  if (species === '') refuse('species', 'nothing', 'the animal: the law is read by it');
  if (part === '') refuse('part', 'nothing', 'the part: the law is read by it');
  const from = read.version === null ? '' : `, version ${read.version} there`;
  const dish = await change(app, actor, (w) =>
    layDish(
      w,
      { name, species, part, story: read.story, method: read.method },
      `Brought in from a ${read.from}: ${read.name}${from}.`,
      'brought in',
    ),
  );
  return { read, dish };
}
