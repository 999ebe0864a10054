/** The published table as the pantry uses it: a row by its id, as a food, and the rows that the name of a part may mean. */
import type { PantryFood } from '../core/filling/flatten.ts';
import type { AllergenMarks, Nutrients } from '../core/properties/food.ts';
import { findIngredient } from '../core/properties/ingredients/find.ts';
import { type Ingredient, type MeatSpecies, meatWords } from '../core/properties/ingredients/ingredient.ts';
import { ingredientById } from '../core/properties/ingredients/table.ts';

export interface TableRow {
  readonly id: string;
  readonly name: string;
  readonly nutrients: Nutrients;
  readonly allergens: AllergenMarks;
  readonly densityKgM3: number | null;
  readonly pieceG: number | null;
  /** Where it was published, in words. */
  readonly source: string;
}

/** One of it: the plain measure, or a large one where only that is published. */
const pieceOf = ({ measures }: Ingredient): number | null =>
  measures.each ?? measures['each large'] ?? measures['each medium'] ?? null;

function sourceOf(row: Ingredient): string {
  const from = row.source === 'usda-sr28' && row.row !== null ? `USDA SR28, NDB ${row.row}` : row.source;
  switch (row.had) {
    case 'published':
      return from;
    case 'derived':
      return `${from}, reckoned: ${row.equation ?? ''}`;
    case 'stand-in':
      return `${from} stands in${row.note === '' ? '' : `: ${row.note}`}`;
    case 'by definition':
      return 'by definition';
    default:
      return 'no published composition at hand';
  }
}

export function tableRow(id: string): TableRow | undefined {
  const row = ingredientById(id);
  return row === undefined
    ? undefined
    : {
        id: row.id,
        name: row.name,
        nutrients: row.nutrients,
        allergens: row.allergens,
        densityKgM3: row.densityKgM3,
        pieceG: pieceOf(row),
        source: sourceOf(row),
      };
}

export const tableHolds = (id: string): boolean => ingredientById(id) !== undefined;

/** A row as a food: what it costs nobody has said. */
export function tableFood(id: string): PantryFood | undefined {
  const row = ingredientById(id);
  return row === undefined
    ? undefined
    : {
        kind: 'food',
        id: row.id,
        name: row.name,
        nutrients: row.nutrients,
        allergens: row.allergens,
        costPerKg: null,
      };
}

/** The animals of the table by what a kitchen calls them. */
const animals: Readonly<Record<string, readonly MeatSpecies[]>> = {
  sheep: ['lamb', 'mutton'],
  lamb: ['lamb', 'mutton'],
  pork: ['pig'],
  cattle: ['beef', 'veal'],
  cow: ['beef', 'veal'],
  ox: ['beef'],
  calf: ['veal'],
  venison: ['deer'],
  hen: ['chicken'],
};

/** Below this a name is no guess worth showing first. */
const likely = 0.6;

/**
 * Rows that the name of a part may mean, the likeliest first, only of that animal: goose liver is never guessed for a
 * pig's. Raw before cooked. None where no name is near enough.
 */
export function guessRows(species: string, part: string): readonly TableRow[] {
  const key = `${species}\u0001${part}`.toLowerCase();
  const kept = guessed.get(key);
  if (kept !== undefined) return kept;
  if (guessed.size >= guessesKept) guessed.clear();
  const rows = guess(species, part);
  guessed.set(key, rows);
  return rows;
}

/** The table does not change while the program runs, so a name is searched for once. */
const guessed = new Map<string, readonly TableRow[]>();
const guessesKept = 5_000;

function guess(species: string, part: string): readonly TableRow[] {
  const asked = species.trim().toLowerCase();
  const of = animals[asked] ?? (asked in meatWords ? [asked as MeatSpecies] : []);
  if (of.length === 0) return [];
  const found = new Map<string, number>();
  for (const animal of of)
    for (const word of new Set([asked, animal, meatWords[animal]]))
      for (const { row, score } of findIngredient(`${word} ${part}`, 12))
        if (row.animal?.species === animal && score >= likely)
          found.set(row.id, Math.max(found.get(row.id) ?? 0, score));
  return [...found]
    .sort((a, b) => b[1] - a[1])
    .slice(0, 6)
    .flatMap(([id]) => tableRow(id) ?? []);
}
