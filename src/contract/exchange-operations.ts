/** The operations that take a dish away as a file and bring one in. */
import { z } from 'zod';
import { DishFile } from './exchange.ts';
import { longestText } from './incoming-text.ts';
import { Id, Text } from './quantities.ts';
import { Dish } from './records.ts';
import { Method } from './steps.ts';

const K = '/api/kitchens/:kitchenId';

/** A recipe in the open vocabulary of schema.org, as it is written here. */
const RecipeLd = z.strictObject({
  '@context': z.literal('https://schema.org'),
  '@type': z.literal('Recipe'),
  name: z.string(),
  description: z.string(),
  recipeYield: z.string().optional(),
  /** ISO 8601. */
  totalTime: z.string().optional(),
  recipeIngredient: z.array(z.string()),
  recipeInstructions: z.array(
    z.strictObject({ '@type': z.literal('HowToStep'), name: z.string(), text: z.string() }),
  ),
});

export const BroughtDish = z.strictObject({
  from: z.enum(['dish file', 'recipe']),
  name: z.string(),
  /** Empty where it does not say: a recipe names no animal. */
  species: z.string(),
  part: z.string(),
  story: z.string(),
  /** Of a dish file: the version that is taken, and all it has. */
  version: z.int().nullable(),
  versions: z.array(z.int()),
  method: Method,
  /** Of a recipe: each ingredient as it was written, and what it was taken for. */
  ingredients: z.array(
    z.strictObject({
      text: z.string(),
      taken: z.string().nullable(),
      g: z.number().nullable(),
      how: z.string(),
      sure: z.enum(['sure', 'likely', 'guess', 'not understood']),
      why: z.string(),
    }),
  ),
  said: z.array(z.string()),
});
export type BroughtDish = z.infer<typeof BroughtDish>;

export const exchangeOperations = {
  exportDish: {
    method: 'GET',
    path: `${K}/dishes/:dishId/file`,
    summary:
      'A dish as a file, all its versions or one, with the foods it points at and without prices. It can be brought into any kitchen.',
    query: z.strictObject({ version: Id.optional() }),
    result: DishFile,
  },
  exportRecipe: {
    method: 'GET',
    path: `${K}/dishes/:dishId/recipe`,
    summary:
      'A version of a dish (the newest where none is named) as a schema.org Recipe in JSON-LD. It carries no limits and no proof of safety.',
    query: z.strictObject({ version: Id.optional() }),
    result: RecipeLd,
  },
  importDish: {
    method: 'POST',
    path: `${K}/dishes/brought`,
    summary:
      'Read a dish file, a JSON-LD recipe or a saved page with one. With `keep` false nothing is written; with `keep` true one new dish with one draft is begun.',
    body: z.strictObject({
      text: z.string().min(1).max(longestText),
      keep: z.boolean(),
      name: Text(120).optional(),
      species: Text(40).optional(),
      part: Text(80).optional(),
      /** Of a dish file with several; the newest where none is named. */
      version: z.int().min(1).optional(),
    }),
    result: z.strictObject({ read: BroughtDish, dish: Dish.nullable() }),
    signed: true,
  },
} as const;
