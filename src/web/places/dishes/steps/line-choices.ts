/** What a line of a mix can be: the kitchen's own ingredients, its parts, its dishes, and the published table. */
import type { LineOf } from '../../../../contract/pantry.ts';
import type { Pantry } from '../../../../contract/pantry-answer.ts';
import { lineOf } from '../../../../contract/pantry-reckon.ts';
import type { MixLine } from '../../../../contract/steps.ts';

export interface LineChoice {
  readonly of: LineOf;
  readonly name: string;
  /** Minor units a kilogram weighed in; null: not known; undefined: not to be said here. */
  readonly costPerKg?: number | null;
  /** Only of parts [g]. */
  readonly onShelfG?: number;
}

export interface ChoiceGroup {
  readonly title: string;
  readonly choices: readonly LineChoice[];
}

export interface TableRow {
  readonly id: string;
  readonly name: string;
}

/** Everything whose name holds every word that was typed, grouped; of each group the first few. A dish is never made of itself. */
export function lineChoices(
  text: string,
  pantry: Pick<Pantry, 'ingredients' | 'parts' | 'dishes'>,
  rows: readonly TableRow[],
  dishId: string,
  most = 8,
): ChoiceGroup[] {
  const words = text.trim().toLowerCase().split(/\s+/);
  const named = (name: string) => words.every((word) => name.toLowerCase().includes(word));
  const group = (title: string, choices: readonly LineChoice[]): ChoiceGroup => ({ title, choices });
  return [
    group(
      'Ingredients of the kitchen',
      pantry.ingredients
        .filter((i) => !i.putAway && named(i.name))
        .map((i) => ({
          of: { kind: 'ingredient' as const, id: i.id },
          name: i.name,
          costPerKg: i.costPerKg,
        })),
    ),
    group(
      'Parts of animals',
      pantry.parts
        .map((p) => ({
          of: { kind: 'part' as const, id: p.id },
          name: `${p.species}, ${p.name}`,
          costPerKg: p.costPerKg,
          onShelfG: p.onShelfG,
        }))
        .filter((p) => named(p.name)),
    ),
    group(
      'Dishes as ingredients',
      pantry.dishes
        .filter((d) => d.id !== dishId && named(d.name))
        .map((d) => ({ of: { kind: 'dish' as const, id: d.id }, name: d.name })),
    ),
    group(
      'The published table, which has no prices',
      rows.map((row) => ({ of: { kind: 'table' as const, id: row.id }, name: row.name })),
    ),
  ]
    .map(({ title, choices }) => ({ title, choices: choices.slice(0, most) }))
    .filter(({ choices }) => choices.length > 0);
}

/** What a line is, in the kitchen's own words; null where it points at nothing, or at what is not there. */
export function lineIs(
  line: Pick<MixLine, 'of' | 'ingredientId'>,
  pantry: Pick<Pantry, 'ingredients' | 'parts' | 'dishes'>,
  tableName: (id: string) => string | undefined,
): string | null {
  const of = lineOf(line);
  if (of === null) return null;
  if (of.kind === 'table') {
    const name = tableName(of.id);
    return name === undefined ? null : `${name}, by the published table`;
  }
  if (of.kind === 'ingredient') {
    const found = pantry.ingredients.find((i) => i.id === of.id);
    return found === undefined ? null : `${found.name}${found.putAway ? ', put away' : ''}`;
  }
  if (of.kind === 'part') {
    const found = pantry.parts.find((p) => p.id === of.id);
    return found === undefined ? null : `${found.species}, ${found.name}`;
  }
  const found = pantry.dishes.find((d) => d.id === of.id);
  return found === undefined ? null : `${found.name}, a dish${found.signed ? '' : ' that nobody has signed'}`;
}

/**
 * The line as what was chosen. Figures of what it was before do not stay with it;
 * allergens that were put on a line which pointed at nothing do: the pantry's are added to them.
 */
export function chosen(line: MixLine, choice: LineChoice): MixLine {
  const { composition: _c, salt: _s, pricePerKg: _p, allergens, ingredientId: _i, of: _o, ...rest } = line;
  const keep = lineOf(line) === null && allergens !== undefined && allergens.length > 0;
  return { ...rest, ingredient: choice.name, of: choice.of, ...(keep ? { allergens } : {}) };
}

/** What was measured or paid for this dish alone is taken off a line; what was said of its allergens stays. */
export function ownFiguresGone(line: MixLine): MixLine {
  const { composition: _c, salt: _s, pricePerKg: _p, ...rest } = line;
  return rest;
}
