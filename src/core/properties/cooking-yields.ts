/** What is left of a part's weight when it is cooked: published yields, and what the food tables' own pairs of rows imply. */
import type { Confidence } from '../sources.ts';

export type CookedBy = 'roasted' | 'simmered' | 'braised' | 'fried' | 'grilled';

/** How a yield was had: weighed; from two unit weights of the same bird; or from protein that is taken to stay in the meat. */
export type YieldHad = 'measured' | 'unit weights' | 'protein balance';

export interface CookingYield {
  readonly species: string;
  readonly part: string;
  readonly by: CookedBy;
  /** Cooked weight of raw weight, both without bone unless the part says so [%]. */
  readonly pct: number;
  readonly had: YieldHad;
  /** How many were weighed; null where the table does not say. */
  readonly n: number | null;
  /** Rows of the food table: cooked, or raw>cooked. */
  readonly rows: string;
  readonly source: string;
  readonly confidence: Confidence;
}

type Row = readonly [
  species: string,
  part: string,
  by: CookedBy,
  pct: number,
  had: YieldHad,
  n: number | null,
  rows: string,
];

const rows: readonly Row[] = [
  ['chicken', 'breast with skin', 'roasted', 72, 'measured', null, '05060'],
  ['chicken', 'breast with skin', 'simmered', 77, 'measured', null, '05061'],
  ['chicken', 'thigh with skin', 'roasted', 69, 'measured', null, '05094'],
  ['chicken', 'thigh with skin', 'simmered', 74, 'measured', null, '05095'],
  ['chicken', 'thigh with skin', 'braised', 68, 'measured', 1, '05677'],
  ['chicken', 'wing with skin', 'roasted', 78, 'measured', 1, '05103'],
  ['chicken', 'whole with skin', 'roasted', 78, 'measured', null, '05004'],
  ['chicken', 'whole with skin', 'simmered', 75, 'measured', null, '05010'],
  ['chicken', 'liver', 'fried', 62, 'measured', 4, '05661'],
  ['turkey', 'breast with skin', 'roasted', 72, 'measured', 1, '05733'],
  ['turkey', 'thigh with skin', 'roasted', 83, 'measured', 1, '05743'],
  ['turkey', 'whole with skin', 'roasted', 71, 'measured', 1, '05166'],
  ['pig', 'loin chop', 'fried', 80, 'measured', 1, '10189'],
  ['pig', 'loin on the bone', 'roasted', 77, 'measured', 12, '10039'],
  ['pig', 'tenderloin', 'roasted', 80, 'measured', 1, '10218'],
  ['pig', 'blade chop on the bone', 'grilled', 83, 'measured', 12, '10030'],
  ['pig', 'blade chop on the bone', 'fried', 82, 'measured', 12, '10178'],
  ['pig', 'blade chop on the bone', 'braised', 78, 'measured', 12, '10029'],
  ['pig', 'spare ribs', 'roasted', 76, 'measured', 12, '10940'],
  ['cattle', 'cuts of all kinds', 'grilled', 78, 'measured', 458, ''],
  ['cattle', 'boned cuts', 'roasted', 79, 'measured', 71, ''],
  ['cattle', 'boned cuts', 'braised', 67, 'measured', 361, ''],
  ['cattle', 'tenderloin steak', 'grilled', 80, 'measured', 19, '13918'],
  ['cattle', 'tenderloin', 'roasted', 82, 'measured', 1, '23345'],
  ['cattle', 'loose mince', 'fried', 67, 'measured', 4, '23575'],
  ['cattle', 'mince in patties', 'grilled', 69, 'measured', 4, '23573'],
  ['cattle', 'mince in a loaf', 'roasted', 70, 'measured', 4, '23576'],
  ['sheep', 'roasting cuts', 'roasted', 74, 'measured', null, ''],
  ['sheep', 'shoulder, shank, breast or flank', 'braised', 60, 'measured', null, ''],
  ['duck', 'meat with skin', 'roasted', 60, 'unit weights', null, '05139>05140'],
  ['duck', 'meat without skin', 'roasted', 73, 'unit weights', null, '05141>05142'],
  ['goose', 'meat with skin', 'roasted', 59, 'unit weights', null, '05146>05147'],
  ['goose', 'meat without skin', 'roasted', 77, 'unit weights', null, '05148>05149'],
  ['chicken', 'meat with skin', 'roasted', 64, 'unit weights', null, '05006>05009'],
  ['chicken', 'meat with skin', 'simmered', 72, 'unit weights', null, '05006>05010'],
  ['chicken', 'meat without skin', 'roasted', 74, 'unit weights', null, '05011>05013'],
  ['chicken', 'meat without skin', 'simmered', 80, 'unit weights', null, '05011>05014'],
  ['chicken', 'skin', 'roasted', 72, 'unit weights', null, '05015>05018'],
  ['chicken', 'skin', 'simmered', 94, 'unit weights', null, '05015>05019'],
  ['chicken', 'neck with skin', 'simmered', 73, 'unit weights', null, '05084>05087'],
  ['chicken', 'neck without skin', 'simmered', 83, 'unit weights', null, '05088>05090'],
  ['chicken', 'giblets', 'fried', 57, 'unit weights', null, '05020>05021'],
  ['chicken', 'giblets of a roasting bird', 'simmered', 60, 'unit weights', null, '05115>05116'],
  ['spent hen', 'giblets', 'simmered', 61, 'unit weights', null, '05127>05128'],
  ['chicken', 'giblets of a capon', 'simmered', 61, 'unit weights', null, '05137>05138'],
  ['spent hen', 'meat with skin', 'simmered', 66, 'unit weights', null, '05123>05124'],
  ['spent hen', 'meat without skin', 'simmered', 71, 'unit weights', null, '05125>05126'],
  ['spent hen', 'light meat', 'simmered', 72, 'unit weights', null, '05129>05130'],
  ['spent hen', 'dark meat', 'simmered', 70, 'unit weights', null, '05131>05132'],
  ['turkey', 'breast with skin', 'roasted', 77, 'unit weights', null, '05191>05192'],
  ['turkey', 'leg with skin', 'roasted', 68, 'unit weights', null, '05193>05194'],
  ['turkey', 'wing with skin', 'roasted', 73, 'unit weights', null, '05195>05196'],
  ['chicken', 'back with skin', 'simmered', 61, 'unit weights', null, '05048>05052'],
  ['duck', 'skin and fat', 'roasted', 49, 'unit weights', null, '05139-05141>05140-05142'],
  ['pig', 'heart', 'braised', 73, 'protein balance', null, '10103>10104'],
  ['pig', 'kidney', 'braised', 65, 'protein balance', null, '10106>10107'],
  ['pig', 'liver', 'braised', 82, 'protein balance', null, '10110>10111'],
  ['pig', 'tongue', 'braised', 68, 'protein balance', null, '10121>10122'],
  ['pig', 'gut', 'simmered', 61, 'protein balance', null, '10098>10099'],
  ['pig', 'spleen', 'braised', 63, 'protein balance', null, '10117>10118'],
  ['chicken', 'gizzard', 'simmered', 58, 'protein balance', null, '05023>05024'],
  ['chicken', 'heart', 'simmered', 59, 'protein balance', null, '05025>05026'],
  ['chicken', 'liver', 'simmered', 69, 'protein balance', null, '05027>05028'],
  ['chicken', 'liver', 'fried', 66, 'protein balance', null, '05027>05661'],
  ['turkey', 'gizzard', 'simmered', 71, 'protein balance', null, '05173>05174'],
  ['turkey', 'heart', 'simmered', 67, 'protein balance', null, '05175>05176'],
  ['turkey', 'liver', 'simmered', 68, 'protein balance', null, '05177>05178'],
  ['turkey', 'neck without skin', 'simmered', 73, 'protein balance', null, '05179>05180'],
  ['cattle', 'heart', 'simmered', 62, 'protein balance', null, '13321>13322'],
  ['cattle', 'kidney', 'simmered', 64, 'protein balance', null, '13323>13324'],
  ['cattle', 'liver', 'braised', 70, 'protein balance', null, '13325>13326'],
  ['cattle', 'tongue', 'simmered', 77, 'protein balance', null, '13339>13340'],
  ['sheep', 'heart', 'braised', 66, 'protein balance', null, '17191>17192'],
  ['sheep', 'kidney', 'braised', 67, 'protein balance', null, '17195>17196'],
  ['sheep', 'liver', 'braised', 67, 'protein balance', null, '17199>17200'],
  ['sheep', 'liver', 'fried', 80, 'protein balance', null, '17199>17201'],
  ['sheep', 'tongue', 'braised', 73, 'protein balance', null, '17220>17221'],
  ['calf', 'liver', 'braised', 70, 'protein balance', null, '17202>17203'],
  ['calf', 'sweetbread', 'braised', 76, 'protein balance', null, '17218>17219'],
  ['deer', 'meat', 'roasted', 76, 'protein balance', null, '17164>17165'],
  ['rabbit', 'meat', 'roasted', 69, 'protein balance', null, '17177>17178'],
  ['rabbit', 'meat', 'simmered', 66, 'protein balance', null, '17177>17179'],
  ['rabbit', 'meat of a wild one', 'simmered', 66, 'protein balance', null, '17180>17181'],
  ['wild boar', 'meat', 'roasted', 76, 'protein balance', null, '17158>17159'],
];

/**
 * All rows. A balance of protein takes it that none passes into the liquor, so it reads low where much does; feet, ears,
 * tails and tripe come out above all they weighed by it, and are left out: of gelatinous parts it says nothing.
 */
export const cookingYields: readonly CookingYield[] = rows.map(([species, part, by, pct, had, n, refs]) => ({
  species,
  part,
  by,
  pct,
  had,
  n,
  rows: refs,
  source: had === 'measured' ? 'usda-cooking-yields-2014' : 'usda-sr28-2015',
  confidence: had === 'measured' ? 'secondary' : 'computed',
}));

/** Between two ways of having the same yield: duck 60 and 61, chicken liver 62 and 66, goose 59 and 63 [points]. */
export const yieldSpreadPoints = 4;

const words = (s: string) =>
  s
    .toLowerCase()
    .replace(/[^a-z ]/g, ' ')
    .split(/\s+/)
    .filter((w) => w.length > 2 && !['with', 'without', 'the', 'and', 'for', 'raw'].includes(w))
    .map((w) => (w.endsWith('s') && !w.endsWith('ss') ? w.slice(0, -1) : w));

/**
 * Published cooking yield of a part [-], the row and how near it is.
 * Equation: the row of the same animal, way of cooking and the most words of the part's name in common; else of the same part of other animals, their mean.
 * Parameters: `species` as the kitchen's animals are called, `part` any name, `by` how it is cooked.
 * Assumptions: without a word in common there is no answer (`null`), never a guess; the spread is four points either way, or that of the rows.
 * Checked: heart of pig braised is its own row; goose gizzard is had from chicken and turkey.
 * @example cookingYieldOf('pig', 'heart', 'braised')?.usual // → 0.73
 * Source: usda-cooking-yields-2014
 * Source: usda-sr28-2015
 */
export function cookingYieldOf(
  species: string,
  part: string,
  by: CookedBy,
): {
  readonly low: number;
  readonly usual: number;
  readonly high: number;
  /** Of another animal than was asked for. */
  readonly borrowed: boolean;
  readonly rows: readonly CookingYield[];
} | null {
  const asked = new Set(words(part));
  const common = (row: CookingYield) => words(row.part).filter((w) => asked.has(w)).length;
  // A braise and a simmer are both wet and slow: where one is not there the other stands for it.
  const ways: readonly CookedBy[] =
    by === 'simmered' ? ['simmered', 'braised'] : by === 'braised' ? ['braised', 'simmered'] : [by];
  for (const own of [true, false])
    for (const way of ways) {
      const near = cookingYields.filter(
        (row) => row.by === way && (row.species === species) === own && common(row) > 0,
      );
      if (near.length === 0) continue;
      const most = Math.max(...near.map(common));
      const best = near.filter((row) => common(row) === most);
      const pcts = best.map((row) => row.pct);
      const usual = pcts.reduce((a, b) => a + b, 0) / pcts.length;
      return {
        low: Math.max(0, Math.min(usual - yieldSpreadPoints, ...pcts)) / 100,
        usual: usual / 100,
        high: Math.max(usual + yieldSpreadPoints, ...pcts) / 100,
        borrowed: !own,
        rows: best,
      };
    }
  return null;
}
