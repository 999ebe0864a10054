/** What whole animals really gave: read from the finished breakdowns of a kitchen, never kept twice. */
import { and, asc, desc, eq, gte, isNotNull, lt, sql } from 'drizzle-orm';
import type { BreakdownOutcome, TreeNode } from '../contract/breakdown.ts';
import type { CarcassBar, YieldsAnswer, YieldsQuery } from '../contract/yields.ts';
import { type FinishedBreakdown, yieldsFrom } from '../contract/yields-of.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type App, kitchenOf, look } from './app.ts';
import { beginOfDay, plusDays } from './civil-day.ts';
import { nameOf, namesIn } from './dishes.ts';

export const yields = (app: App, kitchenId: string, query: YieldsQuery): Promise<YieldsAnswer> =>
  look(app, async (db) => {
    const kitchen = await kitchenOf(db, kitchenId);
    const names = await namesIn(db, kitchenId);
    const suppliers = await supplierNames(db, kitchenId);
    const where = [
      eq(t.breakdown.kitchenId, kitchenId),
      eq(t.breakdown.status, 'finished'),
      isNotNull(t.breakdown.outcome),
      sql`lower(${t.breakdown.species}) = lower(${query.species})`,
    ];
    if (query.supplierId !== undefined) where.push(eq(t.breakdown.supplierId, query.supplierId));
    // What was brought in is under the name of who brought it in, whoever cut it.
    if (query.cutterId !== undefined)
      where.push(eq(t.breakdown.cutterId, query.cutterId), eq(t.breakdown.origin, 'here'));
    if (query.from !== undefined)
      where.push(gte(t.breakdown.startedAt, beginOfDay(kitchen.zone, query.from)));
    if (query.until !== undefined)
      where.push(lt(t.breakdown.startedAt, beginOfDay(kitchen.zone, plusDays(query.until, 1))));
    const rows = await db
      .select({
        id: t.breakdown.id,
        startedAt: t.breakdown.startedAt,
        animals: t.breakdown.animals,
        supplierId: t.breakdown.supplierId,
        cutterId: t.breakdown.cutterId,
        origin: t.breakdown.origin,
        nodes: t.breakdown.nodes,
        outcome: t.breakdown.outcome,
      })
      .from(t.breakdown)
      .where(and(...where))
      .orderBy(asc(t.breakdown.startedAt), asc(t.breakdown.id));
    const parts = await db
      .select({ name: t.part.name, valuePerKg: t.part.valuePerKg })
      .from(t.part)
      .where(and(eq(t.part.kitchenId, kitchenId), sql`lower(${t.part.species}) = lower(${query.species})`));
    return yieldsFrom(
      rows.map(
        (row): FinishedBreakdown => ({
          id: row.id,
          at: row.startedAt.toISOString(),
          animals: row.animals,
          supplier: row.supplierId === null ? null : (suppliers.get(row.supplierId) ?? null),
          cutter: row.origin === 'imported' ? null : nameOf(names, row.cutterId),
          nodes: row.nodes as TreeNode[],
          outcome: row.outcome as BreakdownOutcome,
        }),
      ),
      {
        ...query,
        valuePerKg: new Map(
          parts.flatMap((p) =>
            p.valuePerKg === null ? [] : [[p.name.toLowerCase(), p.valuePerKg] as const],
          ),
        ),
      },
    );
  });

const supplierNames = async (db: Db, kitchenId: string): Promise<Map<string, string>> =>
  new Map(
    (
      await db
        .select({ id: t.supplier.id, name: t.supplier.name })
        .from(t.supplier)
        .where(eq(t.supplier.kitchenId, kitchenId))
    ).map((s) => [s.id, s.name]),
  );

/** A bar is of the latest so many breakdowns of an animal. */
const latest = 12;

/** Every animal of the kitchen as one bar: as it was cut of late; as it was named, where it never was. */
export const carcassBars = (app: App, kitchenId: string): Promise<CarcassBar[]> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const parts = await db
      .select()
      .from(t.part)
      .where(eq(t.part.kitchenId, kitchenId))
      .orderBy(asc(t.part.createdAt), asc(t.part.id));
    const cut = await db
      .selectDistinct({ species: sql<string>`lower(${t.breakdown.species})` })
      .from(t.breakdown)
      .where(and(eq(t.breakdown.kitchenId, kitchenId), eq(t.breakdown.status, 'finished')));
    const species = [
      ...new Set([...parts.map((p) => p.species.toLowerCase()), ...cut.map((c) => c.species)]),
    ];
    const bars: CarcassBar[] = [];
    for (const animal of species.sort()) {
      const named = parts.filter((p) => p.species.toLowerCase() === animal);
      const rows = cut.some((c) => c.species === animal)
        ? await db
            .select({
              at: t.breakdown.startedAt,
              animals: t.breakdown.animals,
              species: t.breakdown.species,
              nodes: t.breakdown.nodes,
              outcome: t.breakdown.outcome,
            })
            .from(t.breakdown)
            .where(
              and(
                eq(t.breakdown.kitchenId, kitchenId),
                eq(t.breakdown.status, 'finished'),
                isNotNull(t.breakdown.outcome),
                sql`lower(${t.breakdown.species}) = ${animal}`,
              ),
            )
            .orderBy(desc(t.breakdown.startedAt))
            .limit(latest)
        : [];
      bars.push(
        barOf(
          named[0]?.species ?? rows[0]?.species ?? animal,
          named,
          rows.map((r) => ({
            ...r,
            nodes: r.nodes as TreeNode[],
            outcome: r.outcome as BreakdownOutcome,
          })),
        ),
      );
    }
    return bars;
  });

interface Cut {
  readonly at: Date;
  readonly animals: number;
  readonly nodes: readonly TreeNode[];
  readonly outcome: BreakdownOutcome;
}

function barOf(
  species: string,
  named: readonly (typeof t.part.$inferSelect)[],
  cuts: readonly Cut[],
): CarcassBar {
  const partOf = new Map(named.map((p) => [p.name.toLowerCase(), p]));
  const use = (value: string) => value as CarcassBar['parts'][number]['use'];
  const into = cuts.reduce((sum, c) => sum + c.outcome.inGrams, 0);
  if (into <= 0)
    return {
      species,
      from: 'named shares',
      breakdowns: 0,
      animals: 0,
      since: null,
      until: null,
      parts: named.map((p) => ({
        name: p.name,
        partId: p.id,
        use: use(p.use),
        sharePct: p.sharePct,
        moneyPct: null,
      })),
      pricedBreakdowns: 0,
      costBy: null,
    };
  // Money is told by those breakdowns of which it is known what was paid.
  const priced = new Set(cuts.filter((c) => (c.outcome.paid ?? 0) > 0));
  const found = new Map<string, { name: string; node: TreeNode; grams: number; cost: number }>();
  for (const cut of cuts) {
    const { nodes, outcome } = cut;
    const byId = new Map(outcome.nodes.map((n) => [n.node, n]));
    for (const node of nodes) {
      const out = byId.get(node.id);
      if (node.becomes === 'step' || out === undefined || !out.weighed) continue;
      const key = node.name.toLowerCase();
      const before = found.get(key) ?? { name: node.name, node, grams: 0, cost: 0 };
      found.set(key, {
        ...before,
        grams: before.grams + out.grams,
        cost: before.cost + (priced.has(cut) ? Math.max(0, out.cost ?? 0) : 0),
      });
    }
  }
  const carried = [...found.values()].reduce((sum, f) => sum + f.cost, 0);
  const rules = new Set([...priced].map((c) => c.outcome.costBy));
  const times = cuts.map((c) => c.at.getTime());
  return {
    species,
    from: 'breakdowns',
    breakdowns: cuts.length,
    animals: cuts.reduce((sum, c) => sum + c.animals, 0),
    since: new Date(Math.min(...times)).toISOString(),
    until: new Date(Math.max(...times)).toISOString(),
    parts: [...found].map(([key, { name, node, grams, cost }]) => {
      const part = partOf.get(key);
      const kept = node.becomes === 'part' || node.becomes === 'sold';
      return {
        name,
        partId: part?.id ?? null,
        // What the kitchen says today of a part it keeps; what leaves its food is thrown away.
        use: kept ? use(part?.use ?? node.use) : 'thrown away',
        sharePct: (100 * grams) / into,
        moneyPct: carried > 0 ? (100 * cost) / carried : null,
      };
    }),
    pricedBreakdowns: priced.size,
    costBy: rules.size === 1 ? ([...rules][0] ?? null) : null,
  };
}
