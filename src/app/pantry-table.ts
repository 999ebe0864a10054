/** The published table as the pantry uses it: a row by its id, as a food, and the rows that the name of a part may mean. */
import type { PantryFood } from '../core/filling/flatten.ts';
import type { AllergenMarks, Nutrients } from '../core/properties/food.ts';
import type { Ingredient } from '../core/properties/ingredients/ingredient.ts';
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

export const guessRows = (_species: string, _part: string): readonly TableRow[] => [];
