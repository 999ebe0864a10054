/**
 * Composition of foods as published by the United States Department of Agriculture, National Nutrient Database for
 * Standard Reference, Release 28 (public domain), g per 100 g edible. The five analyses of a food are made separately and
 * rarely sum to exactly 100: they are scaled to 1 here. Carbohydrate is by difference and contains the fibre there; here
 * they are apart.
 */
import type { Composition } from '../src/contract/quantities.ts';

export interface Published {
  readonly composition: Composition;
  readonly source: string;
}

interface Row {
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  readonly carbohydrate: number;
  readonly fibre?: number;
  readonly ash: number;
  readonly alcohol?: number;
}

const keys = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const;

/** Fractions to four figures that sum to exactly 1; the rounding goes into the water. */
export function rounded(parts: Composition): Composition {
  const total = keys.reduce((sum, key) => sum + parts[key], 0);
  const four = (x: number) => Math.round((x / total) * 1e4) / 1e4;
  const rest = {
    protein: four(parts.protein),
    fat: four(parts.fat),
    carbohydrate: four(parts.carbohydrate),
    fibre: four(parts.fibre),
    ash: four(parts.ash),
  };
  const others = rest.protein + rest.fat + rest.carbohydrate + rest.fibre + rest.ash;
  return { water: Math.round((1 - others) * 1e4) / 1e4, ...rest };
}

/** A food of the database by its number. `standsFor` says what it is used in place of, where that is another thing. */
export function sr28(number: string, row: Row, standsFor?: string): Published {
  const fibre = row.fibre ?? 0;
  const composition = rounded({
    // The engine knows no alcohol: it is counted as water.
    water: row.water + (row.alcohol ?? 0),
    protein: row.protein,
    fat: row.fat,
    carbohydrate: row.carbohydrate - fibre,
    fibre,
    ash: row.ash,
  });
  const notes = [
    ...(standsFor === undefined ? [] : [standsFor]),
    ...(row.alcohol === undefined ? [] : ['alcohol counted as water']),
    'scaled to 100 %',
  ];
  return { composition, source: `USDA SR28, NDB ${number} (${notes.join('; ')})` };
}

/** Composition of a mixture by weight. Lines without a composition are left out; `leftOutG` says how much that is. */
export function blend(
  lines: readonly { readonly g: number; readonly composition?: Composition | undefined }[],
): {
  readonly composition: Composition;
  readonly leftOutG: number;
} {
  const sum = { water: 0, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
  let leftOutG = 0;
  for (const line of lines) {
    if (line.composition === undefined) leftOutG += line.g;
    else for (const key of keys) sum[key] += line.g * line.composition[key];
  }
  return { composition: rounded(sum), leftOutG };
}
