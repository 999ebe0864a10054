/** Parts of the shelf as ingredients: composition by a row of the published table, cost by the kitchen's own breakdowns. */
import { and, asc, eq, gt, isNull, or, sql } from 'drizzle-orm';
import type { BreakdownOutcome } from '../contract/breakdown.ts';
import type { PantryPart } from '../contract/pantry.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { unknownNutrients } from './pantry-ingredient.ts';
import { guessRows, tableRow } from './pantry-table.ts';

type PartRow = typeof t.part.$inferSelect;

/** The cost of a part is of the latest so many breakdowns of its animal of which it is known what was paid. */
const latest = 12;

interface Carried {
  cost: number;
  grams: number;
  breakdowns: number;
  readonly by: Set<BreakdownOutcome['costBy']>;
}

/** What each part carried of what was paid, by `species name` in lower case. */
async function carriedBy(db: Db, kitchenId: string): Promise<Map<string, Carried>> {
  const { rows } = (await db.execute(sql`
    SELECT species, outcome FROM (
      SELECT lower(species) AS species, outcome,
        row_number() OVER (PARTITION BY lower(species) ORDER BY started_at DESC, id DESC) AS nth
      FROM breakdown
      WHERE kitchen_id = ${kitchenId} AND status = 'finished' AND (outcome ->> 'paid')::numeric > 0
    ) AS priced WHERE nth <= ${latest}`)) as unknown as {
    rows: { species: string; outcome: BreakdownOutcome }[];
  };
  const found = new Map<string, Carried>();
  for (const { species, outcome } of rows) {
    const here = new Set<string>();
    for (const node of outcome.nodes) {
      if (node.becomes !== 'part' || !node.weighed || node.grams <= 0 || node.cost === null) continue;
      const key = `${species} ${node.name.toLowerCase()}`;
      const sum = found.get(key) ?? { cost: 0, grams: 0, breakdowns: 0, by: new Set() };
      sum.cost += node.cost;
      sum.grams += node.grams;
      if (!here.has(key)) sum.breakdowns += 1;
      sum.by.add(outcome.costBy);
      here.add(key);
      found.set(key, sum);
    }
  }
  return found;
}

const byWords = { weight: 'by weight', value: 'by value', shares: 'by the chef’s shares' } as const;

function costOf(part: PartRow, carried: Carried | undefined): { asCut: number | null; basis: string } {
  if (carried !== undefined) {
    const [only, ...more] = carried.by;
    const by = only === undefined || more.length > 0 ? 'by more than one rule' : byWords[only];
    const perKg = carried.cost / (carried.grams / 1000);
    const n = `from ${carried.breakdowns} ${carried.breakdowns === 1 ? 'breakdown' : 'breakdowns'}, ${by}`;
    return perKg < 0
      ? { asCut: 0, basis: `${n}; what was sold brought more than was paid: counted as nothing` }
      : { asCut: perKg, basis: n };
  }
  if (part.valuePerKg !== null)
    return {
      asCut: part.valuePerKg,
      basis: 'as entered: what a kilogram would fetch; no breakdown carries a cost to it',
    };
  return { asCut: null, basis: 'not known' };
}

/** Of these classes nothing is among the fourteen: Annex II of Regulation (EU) 1169/2011 names no meat. */
const meat = new Set([
  'poultry',
  'red meat',
  'offal',
  'blood',
  'large game',
  'small game',
  'rabbit',
  'fat and bone',
]);

function foodOf(
  part: PartRow,
): Pick<PantryPart, 'tableId' | 'tableBy' | 'tableGuesses' | 'nutrients' | 'source' | 'allergens'> {
  const guesses = guessRows(part.species, part.name);
  const chosen = part.tableId === null || part.tableId === 'none' ? undefined : tableRow(part.tableId);
  const row = chosen ?? (part.tableId === null ? guesses[0] : undefined);
  const free = part.class !== null && meat.has(part.class);
  return {
    tableId: row?.id ?? null,
    tableBy: row === undefined ? null : chosen === undefined ? 'guessed' : 'chosen',
    tableGuesses: guesses.filter((g) => g.id !== row?.id).map(({ id, name }) => ({ id, name })),
    nutrients: row?.nutrients ?? unknownNutrients,
    source:
      row === undefined
        ? ''
        : chosen === undefined
          ? `guessed by its name: ${row.name} (${row.source})`.slice(0, 400)
          : `${row.name} (${row.source})`.slice(0, 400),
    allergens: row?.allergens == null ? (free ? [] : null) : row.allergens.map((m) => ({ ...m })),
  };
}

export async function readParts(db: Db, kitchenId: string, day: string): Promise<PantryPart[]> {
  const parts = await db
    .select()
    .from(t.part)
    .where(eq(t.part.kitchenId, kitchenId))
    .orderBy(asc(t.part.species), asc(t.part.createdAt), asc(t.part.id));
  const carried = await carriedBy(db, kitchenId);
  const shelf = await db
    .select({ partId: t.lot.partId, grams: sql<number>`sum(${t.lot.leftGrams})` })
    .from(t.lot)
    .where(
      and(
        eq(t.lot.kitchenId, kitchenId),
        gt(t.lot.leftGrams, 0),
        isNull(t.lot.byProductAt),
        isNull(t.lot.frozenAt),
        or(isNull(t.lot.useBy), sql`${t.lot.useBy} >= ${day}`),
      ),
    )
    .groupBy(t.lot.partId);
  const onShelf = new Map(shelf.map((s) => [s.partId, Number(s.grams)]));
  return parts.map((part) => {
    const { asCut, basis } = costOf(part, carried.get(`${part.species} ${part.name}`.toLowerCase()));
    const trimmed = part.trimPct !== null && part.trimPct > 0;
    return {
      id: part.id,
      species: part.species,
      name: part.name,
      ...foodOf(part),
      trimPct: part.trimPct,
      costPerKg: asCut === null ? null : asCut / (1 - (part.trimPct ?? 0) / 100),
      costPerKgAsCut: asCut,
      costBasis: asCut === null || !trimmed ? basis : `${basis}; ${part.trimPct} % is trimmed away`,
      onShelfG: onShelf.get(part.id) ?? 0,
    };
  });
}
