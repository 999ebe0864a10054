/**
 * Reads the tables of the ingredients. A row is a line, its cells parted by ` | `:
 *
 * published   id | name | row | water protein fat saturates carbohydrate-with-fibre sugars fibre ash sodium alcohol kcal
 *             (g per 100 g, sodium mg, `-` not published) | refuse % and what | kind | measures | allergens | also | note
 * stand-in    id | name | id of the row that stands in | kind | measures | allergens | also | why
 * definition  id | name | the eleven figures | kind | measures | allergens | also | note
 * none        id | name | kind | measures | allergens | also | note
 *
 * kind: `duck:M` species and what it is of it (M muscle, F fat, S skin, O named as itself, X mechanically separated, P made
 * product), `liquid`, `animal` (not plant, in a group of plants), `no-fibre`
 * (refined: an empty cell of fibre is none), `not-eaten`. An allergen with `?` in front: the label
 * decides; `gluten:wheat` says which kind; `us+tree nuts` is counted in the US only. In stand-ins `=` in the cells of kind,
 * measures or allergens: as the row that stands in.
 */
import type { Allergen, AllergenMark, Nutrients, UsAllergen } from '../food.ts';
import { allergens as fourteen } from '../food.ts';
import type { AnimalKind, Ingredient, MeatSpecies, OfAnimal } from './ingredient.ts';
import { measureMl, meatWords } from './ingredient.ts';

/** Where the foods of a group come from: what is left empty of an animal is none, of a plant not known. */
export interface Group {
  readonly name: string;
  readonly from: 'animal' | 'plant';
  /** Whether a food of it can hold alcohol: if it cannot, an empty cell is none. */
  readonly mayHoldAlcohol?: true;
}

const kinds: Record<string, AnimalKind> = {
  M: 'muscle',
  F: 'fat',
  S: 'skin',
  O: 'named as itself',
  X: 'mechanically separated',
  P: 'made product',
};

const linesOf = (text: string): string[][] =>
  text
    .trim()
    .split('\n')
    .map((line) => line.split('|').map((cell) => cell.trim()));

const listOf = (cell: string | undefined): string[] =>
  (cell ?? '') === '' ? [] : cell!.split(',').map((word) => word.trim());

/** Per 100 g to a mass fraction, without the dust of division. */
const part = (per100: number | null): number | null =>
  per100 === null ? null : Math.round(per100 * 1e6) / 1e8;

interface Kind {
  readonly animal: OfAnimal | null;
  readonly liquid: boolean;
  readonly ofAnimal: boolean;
  readonly noFibre: boolean;
  readonly notEaten: boolean;
}

function kindOf(cell: string | undefined, id: string): Kind {
  const words = (cell ?? '')
    .split(/\s(?=liquid|animal|no-fibre|not-eaten)|^(?=liquid|animal|no-fibre|not-eaten)/)
    .filter(Boolean);
  const of = words.find((word) => word.includes(':'))?.split(':');
  const kind = kinds[of?.[1] ?? ''];
  if (of !== undefined && (kind === undefined || !Object.hasOwn(meatWords, of[0]!)))
    throw new RangeError(`${id}: no such animal or kind: ${cell}`);
  return {
    animal: of === undefined ? null : { species: of[0] as MeatSpecies, kind: kind! },
    liquid: words.includes('liquid'),
    ofAnimal: words.includes('animal'),
    noFibre: words.includes('no-fibre'),
    notEaten: words.includes('not-eaten'),
  };
}

function marksOf(cell: string | undefined, id: string) {
  const allergens: AllergenMark[] = [];
  const usOnly: UsAllergen[] = [];
  for (const word of listOf(cell)) {
    if (word.startsWith('us+')) {
      usOnly.push(word.slice(3) as UsAllergen);
      continue;
    }
    const [allergen, as] = word.replace('?', '').split(':') as [Allergen, string | undefined];
    if (!fourteen.includes(allergen)) throw new RangeError(`${id}: no such allergen: ${word}`);
    allergens.push({
      allergen,
      ...(as === undefined ? {} : { as }),
      ...(word.startsWith('?') ? { checkLabel: true as const } : {}),
    });
  }
  return { allergens, usOnly };
}

const measuresOf = (cell: string | undefined): Record<string, number> =>
  Object.fromEntries(
    listOf(cell).map((word) => {
      const cut = word.lastIndexOf(' ');
      return [word.slice(0, cut), Number(word.slice(cut + 1))];
    }),
  );

function densityOf(measures: Readonly<Record<string, number>>): number | null {
  for (const [name, ml] of [
    ['cup', measureMl.cup],
    ['quart', measureMl.quart],
    ['fl oz', measureMl['fl oz']],
    ['tbsp', measureMl.tbsp],
  ] as const)
    if (measures[name] !== undefined) return Math.round((1_000 * measures[name]) / ml);
  return null;
}

function figuresOf(cell: string, id: string): (number | null)[] {
  const figures = cell.split(/\s+/).map((word) => (word === '-' ? null : Number(word)));
  if (figures.length !== 11 || figures.some((f) => Number.isNaN(f)))
    throw new RangeError(`${id}: eleven figures are asked for, found: ${cell}`);
  return figures;
}

/** Eleven figures as they are published, as the fractions that a kitchen reckons with. */
function compositionOf(cell: string, id: string, noFibre: boolean, noAlcohol: boolean) {
  const [water, protein, fat, saturatesIn, carb, sugarsIn, fibreIn, ash, sodium, alcoholIn, kcal] = figuresOf(
    cell,
    id,
  ) as [...(number | null)[]];
  const taken0: (keyof Nutrients)[] = [];
  const taken = (key: keyof Nutrients, value: number | null, none: boolean): number | null => {
    if (value !== null || !none) return value;
    taken0.push(key);
    return 0;
  };
  const fibre = taken('fibre', fibreIn!, noFibre || carb === 0);
  const saturates = taken('saturates', saturatesIn!, fat === 0);
  const alcohol = taken('alcohol', alcoholIn!, noAlcohol);
  const sugars = taken('sugars', sugarsIn!, carb === 0);
  const nutrients: Nutrients = {
    water: part(water!),
    protein: part(protein!),
    fat: part(fat!),
    saturates: part(saturates),
    carbohydrate: carb === null || fibre === null ? null : part(Math.max(0, carb! - fibre)),
    sugars: part(sugars),
    fibre: part(fibre),
    ash: part(ash!),
    salt: part(sodium === null ? null : (sodium! / 1_000) * 2.5),
    alcohol: part(alcohol),
  };
  return {
    nutrients,
    carbohydrateWithFibre: part(carb!),
    taken0,
    energy: kcal === null ? null : { kcal: kcal!, kJ: Math.round(kcal! * 4.184) },
  };
}

function labelNameOf(name: string, animal: OfAnimal | null): string {
  if (animal?.kind === 'muscle') return meatWords[animal.species];
  if (animal?.kind === 'fat') return `${meatWords[animal.species]} fat`;
  return name.split(',')[0]!;
}

function common(
  id: string,
  name: string,
  kind: Kind,
  measures: string,
  marks: string,
  also: string,
  note: string,
) {
  const read = measuresOf(measures);
  return {
    id,
    name,
    also: listOf(also),
    ...marksOf(marks, id),
    measures: read,
    measuresFrom: 'common practice' as 'source' | 'common practice',
    liquid: kind.liquid,
    densityKgM3: kind.liquid ? densityOf(read) : null,
    animal: kind.animal,
    labelName: labelNameOf(name, kind.animal),
    note,
    ...(kind.notEaten ? { notEaten: true as const } : {}),
  };
}

const plain = { refuse: null, equation: null } as const;
const unknown: Nutrients = {
  water: null,
  protein: null,
  fat: null,
  saturates: null,
  carbohydrate: null,
  sugars: null,
  fibre: null,
  ash: null,
  salt: null,
  alcohol: null,
};

/**
 * Rows of the published table, as mass fractions [kg/kg].
 * Equation: carbohydrate = by difference − fibre; salt = 2.5·sodium; kJ = 4.184·kcal. Parameters: a group and its text.
 * Assumptions: empty cells are not known, except what follows from what the food is (`taken0`). Checked: closure and
 * energy of every row in ingredients.test.ts. Source: usda-sr28
 */
export function publishedRows(group: Group, text: string): Ingredient[] {
  return linesOf(text).map(([id, name, row, figures, refuse, kindCell, measures, marks, also, note]) => {
    const kind = kindOf(kindCell, id!);
    const noFibre = group.from === 'animal' || kind.ofAnimal || kind.noFibre;
    const cut = /^([\d.]+) ?(.*)$/.exec(refuse ?? '');
    return {
      ...common(id!, name!, kind, measures ?? '', marks ?? '', also ?? '', note ?? ''),
      group: group.name,
      ...compositionOf(figures!, id!, noFibre, group.mayHoldAlcohol !== true),
      refuse: cut === null ? null : { fraction: Number(cut[1]) / 100, what: cut[2]! },
      measuresFrom: 'source',
      had: 'published',
      source: 'usda-sr28',
      row: row!,
      confidence: 'secondary',
      equation: null,
    };
  });
}

/**
 * Rows that another stands in for: its composition as mass fractions [kg/kg], under the name that was asked for.
 * Parameters: a group, its text, and how to find the row. Source: usda-sr28
 */
export function standInRows(group: string, text: string, byId: (id: string) => Ingredient): Ingredient[] {
  return linesOf(text).map(([id, name, of, kindCell, measures, marks, also, why]) => {
    const from = byId(of!);
    const kind = kindOf(kindCell === '=' ? '' : kindCell, id!);
    const own = common(
      id!,
      name!,
      kind,
      measures === '=' ? '' : measures!,
      marks === '=' ? '' : marks!,
      also!,
      '',
    );
    const animal = kindCell === '=' ? from.animal : kind.animal;
    const liquid = kindCell === '=' ? from.liquid : kind.liquid;
    return {
      ...own,
      animal,
      liquid,
      densityKgM3: liquid ? from.densityKgM3 : null,
      labelName: labelNameOf(name!, animal),
      measures: measures === '=' ? from.measures : own.measures,
      measuresFrom: measures === '=' ? 'source' : 'common practice',
      ...(marks === '=' ? { allergens: from.allergens, usOnly: from.usOnly } : {}),
      group,
      nutrients: from.nutrients,
      carbohydrateWithFibre: from.carbohydrateWithFibre,
      taken0: from.taken0,
      energy: from.energy,
      ...plain,
      had: 'stand-in',
      source: from.source,
      row: from.row,
      confidence: 'assumption',
      note: `${from.name} stands in: ${why}`,
    };
  });
}

/** Rows whose composition is what the substance is, as mass fractions [kg/kg]. Source: own-computation */
export function definedRows(group: string, text: string): Ingredient[] {
  return linesOf(text).map(([id, name, figures, kind, measures, marks, also, note]) => ({
    ...common(id!, name!, kindOf(kind, id!), measures ?? '', marks ?? '', also ?? '', note ?? ''),
    group,
    ...compositionOf(figures!, id!, true, true),
    ...plain,
    had: 'by definition' as const,
    source: 'own-computation',
    row: null,
    confidence: 'computed' as const,
  }));
}

/** Rows without a published composition: every mass fraction [kg/kg] is null, which is never zero. Source: common-practice */
export function unknownRows(group: string, text: string): Ingredient[] {
  return linesOf(text).map(([id, name, kind, measures, marks, also, note]) => ({
    ...common(id!, name!, kindOf(kind, id!), measures ?? '', marks ?? '', also ?? '', note ?? ''),
    group,
    nutrients: unknown,
    carbohydrateWithFibre: null,
    taken0: [],
    energy: null,
    ...plain,
    had: 'none' as const,
    source: 'common-practice',
    row: null,
    confidence: 'common practice' as const,
  }));
}
