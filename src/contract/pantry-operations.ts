/** The operations of the pantry: ingredients, prices, labels, rates, risks, and what the dishes come to. */
import { z } from 'zod';
import {
  AllergenMarkInput,
  DeclaredRisk,
  IngredientInput,
  LabelLook,
  PantryIngredient,
  PriceInput,
} from './pantry.ts';
import { DishNumbers, Pantry } from './pantry-answer.ts';
import { Id, Note, Text } from './quantities.ts';
import { KitchenRates, RatesEntry } from './rates.ts';

const K = '/api/kitchens/:kitchenId';

export const pantryOperations = {
  pantry: {
    method: 'GET',
    path: `${K}/pantry`,
    summary:
      'All that a mix can be made of, as it stands today: ingredients with prices and labels, parts with what they really cost, dishes usable as ingredients, rates and declared risks.',
    result: Pantry,
  },
  dishNumbers: {
    method: 'GET',
    path: `${K}/dish-numbers`,
    summary:
      'Of every dish: cost of the food, allergens with the way they come in, and what nobody has said.',
    result: z.array(DishNumbers),
  },
  addIngredient: {
    method: 'POST',
    path: `${K}/ingredients`,
    summary: 'Add an ingredient of your own, with its first price if there is one.',
    body: IngredientInput.extend({ price: PriceInput.optional() }),
    result: PantryIngredient,
    signed: true,
  },
  changeIngredient: {
    method: 'PUT',
    path: `${K}/ingredients/:ingredientId`,
    summary:
      'Change an ingredient; what is left out stays. `rev` is the count the change started from; 409 when somebody changed it in between.',
    body: z.strictObject({
      rev: z.int().min(0),
      reason: Note(300).default(''),
      set: z
        .strictObject({
          name: IngredientInput.shape.name,
          labelName: PantryIngredient.shape.labelName,
          tableId: IngredientInput.shape.tableId.unwrap(),
          nutrients: IngredientInput.shape.nutrients.unwrap(),
          source: IngredientInput.shape.source.unwrap(),
          allergens: IngredientInput.shape.allergens.unwrap(),
          trimPct: IngredientInput.shape.trimPct.unwrap(),
          densityKgM3: PantryIngredient.shape.densityKgM3,
          pieceG: PantryIngredient.shape.pieceG,
          madeOf: PantryIngredient.shape.madeOf,
          note: PantryIngredient.shape.note,
        })
        .partial(),
    }),
    result: PantryIngredient,
    signed: true,
  },
  priceIngredient: {
    method: 'POST',
    path: `${K}/ingredients/:ingredientId/prices`,
    summary:
      'Write down what a pack costs, from a day on. Nothing is overwritten; the same id sent again is one price.',
    body: PriceInput.extend({ id: Id }),
    result: PantryIngredient,
    signed: true,
  },
  lookAtLabel: {
    method: 'POST',
    path: `${K}/ingredients/:ingredientId/labels`,
    summary: 'Write down what the label of an ingredient says, and that you looked.',
    body: LabelLook.omit({ ingredientId: true, by: true }),
    result: PantryIngredient,
    signed: true,
  },
  putAwayIngredient: {
    method: 'POST',
    path: `${K}/ingredients/:ingredientId/put-away`,
    summary:
      'Put an ingredient away, or take it out again. It is not deleted: dishes that use it still reckon with it.',
    body: z.strictObject({ rev: z.int().min(0), away: z.boolean(), reason: Note(300) }),
    result: PantryIngredient,
    signed: true,
  },
  setRates: {
    method: 'POST',
    path: `${K}/rates`,
    summary:
      'Write down what hands, energy and the rest cost from a day on. The same id sent again is one entry.',
    body: KitchenRates.extend({ id: Id, note: Note(300) }),
    result: RatesEntry,
    signed: true,
  },
  declareRisk: {
    method: 'POST',
    path: `${K}/risks`,
    summary: 'Declare that an allergen may get into a dish, or into every dish, and why.',
    body: z.strictObject({
      id: Id,
      allergen: AllergenMarkInput.shape.allergen,
      as: DeclaredRisk.shape.as.default(null),
      dishId: Id.nullable().default(null),
      reason: Text(500),
    }),
    result: DeclaredRisk,
    signed: true,
  },
  withdrawRisk: {
    method: 'POST',
    path: `${K}/risks/:riskId/end`,
    summary: 'End a declared risk, saying why it is gone.',
    body: z.strictObject({ reason: Text(500) }),
    result: DeclaredRisk,
    signed: true,
  },
} as const;
