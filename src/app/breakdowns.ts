/** Cutting up: begun on lots, weighed a part at a time, finished when the mass closes; then the parts are lots of their own. */
import { and, asc, desc, eq, inArray, sql } from 'drizzle-orm';
import type {
  Breakdown,
  BreakdownOutcome,
  BreakdownSummary,
  CostPreview,
  TreeNode,
  Weighing,
} from '../contract/breakdown.ts';
import { animalByAnimal, standingWeights, wholeMissing } from '../contract/breakdown-balance.ts';
import type { BodyOf } from '../contract/operations.ts';
import type { Place } from '../contract/records.ts';
import { formatQuantity, type UnitSystem } from '../core/units.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, kitchenOf, look } from './app.ts';
import { checkTree, costPreviews, outcomeOf, type PartMoney, paidFor } from './breakdown-standing.ts';
import { checkLaw } from './breakdown-trees.ts';
import { dayIn } from './civil-day.ts';
import { nameOf, namesIn } from './dishes.ts';
import { AppError, invalid, notFound } from './errors.ts';
import { blockedWhy } from './lot-rules.ts';
import { weighingDigest } from './record-digests.ts';
import { lotRow } from './shelf.ts';

export type BreakdownRow = typeof t.breakdown.$inferSelect;
type LotRow = typeof t.lot.$inferSelect;

export async function breakdownRow(db: Db, kitchenId: string, id: string): Promise<BreakdownRow> {
  const [row] = await db
    .select()
    .from(t.breakdown)
    .where(and(eq(t.breakdown.kitchenId, kitchenId), eq(t.breakdown.id, id)));
  if (row === undefined) throw notFound('breakdown');
  return row;
}

export const lotsOf = (db: Db, id: string) =>
  db
    .select({ lot: t.lot, grams: t.breakdownLot.grams })
    .from(t.breakdownLot)
    .innerJoin(t.lot, eq(t.lot.id, t.breakdownLot.lotId))
    .where(eq(t.breakdownLot.breakdownId, id))
    .orderBy(asc(t.lot.code));

const weighingsOf = (db: Db, id: string) =>
  db.select().from(t.weighing).where(eq(t.weighing.breakdownId, id)).orderBy(asc(t.weighing.line));

export async function moneyOf(db: Db, kitchenId: string, species: string): Promise<PartMoney[]> {
  const rows = await db
    .select()
    .from(t.part)
    .where(and(eq(t.part.kitchenId, kitchenId), sql`lower(${t.part.species}) = lower(${species})`));
  return rows.map((p) => ({ name: p.name, valuePerKg: p.valuePerKg, costShare: p.costShare }));
}

export async function readBreakdown(db: Db, kitchenId: string, row: BreakdownRow): Promise<Breakdown> {
  const names = await namesIn(db, kitchenId);
  const lots = await lotsOf(db, row.id);
  const weighings = (await weighingsOf(db, row.id)).map(
    (w): Weighing => ({
      id: w.id,
      node: w.node,
      animal: w.animal,
      grossGrams: w.grossGrams,
      tareGrams: w.tareGrams,
      pieces: w.pieces,
      corrects: w.corrects,
      takenBack: w.takenBack,
      at: w.at.toISOString(),
      grams: w.grossGrams - w.tareGrams,
      by: nameOf(names, w.personId),
      recordedAt: w.recordedAt.toISOString(),
    }),
  );
  const nodes = row.nodes as TreeNode[];
  const { outcome, blocking } =
    row.outcome === null
      ? outcomeOf({ ...(await standingInput(db, kitchenId, row, lots, weighings)), costBy: 'weight' })
      : { outcome: row.outcome as BreakdownOutcome, blocking: [] };
  const whole = wholeMissing(nodes, row.animals, weighings);
  return {
    ...(await summaryOf(db, row, names, outcome)),
    nodes,
    lots: lots.map(({ lot, grams }) => ({
      lotId: lot.id,
      code: lot.code,
      what: lot.what,
      grams,
      cost: paidFor(lot, grams),
    })),
    made: await madeOf(db, outcome),
    weighings,
    standing: outcome,
    blocking: row.status === 'open' ? [...blocking, ...(whole === null ? [] : [whole])] : [],
    note: row.note,
  };
}

async function madeOf(db: Db, { nodes }: BreakdownOutcome): Promise<Breakdown['made']> {
  const ids = nodes.flatMap((n) => n.lotId ?? []);
  if (ids.length === 0) return [];
  const rows = await db.select().from(t.lot).where(inArray(t.lot.id, ids)).orderBy(asc(t.lot.code));
  return rows.map(({ id, code, what, grams, useBy, cost }) => ({
    lotId: id,
    code,
    what,
    grams,
    useBy,
    cost,
  }));
}

async function standingInput(
  db: Db,
  kitchenId: string,
  row: BreakdownRow,
  lots: Awaited<ReturnType<typeof lotsOf>>,
  weighings: readonly Weighing[],
) {
  const nodes = row.nodes as TreeNode[];
  const paid = lots.map((l) => paidFor(l.lot, l.grams));
  return {
    nodes,
    inGrams: lots.reduce((sum, l) => sum + l.grams, 0),
    weights: standingWeights(weighings),
    byAnimal: animalByAnimal(nodes, row.animals, weighings),
    paid: paid.some((p) => p === null) ? null : paid.reduce<number>((sum, p) => sum + (p ?? 0), 0),
    money: await moneyOf(db, kitchenId, row.species),
  };
}

/** What each rule of cost would give, before one is chosen. Of a breakdown that is done, by the rule it was done by. */
export const breakdownCosts = (app: App, kitchenId: string, id: string): Promise<CostPreview[]> =>
  look(app, async (db) => {
    const row = await breakdownRow(db, kitchenId, id);
    if (row.status !== 'open') throw new AppError('frozen', `This breakdown is ${row.status}.`);
    const { weighings } = await readBreakdown(db, kitchenId, row);
    return costPreviews(await standingInput(db, kitchenId, row, await lotsOf(db, id), weighings));
  });

async function summaryOf(
  db: Db,
  row: BreakdownRow,
  names: ReadonlyMap<string, string>,
  outcome: BreakdownOutcome | null,
  suppliers?: ReadonlyMap<string, string>,
): Promise<BreakdownSummary> {
  const supplierName =
    row.supplierId === null
      ? null
      : (suppliers?.get(row.supplierId) ??
        (
          await db.select({ name: t.supplier.name }).from(t.supplier).where(eq(t.supplier.id, row.supplierId))
        )[0]?.name ??
        null);
  return {
    id: row.id,
    species: row.species,
    supplierId: row.supplierId,
    supplierName,
    origin: row.origin as BreakdownSummary['origin'],
    animals: row.animals,
    status: row.status as BreakdownSummary['status'],
    startedAt: row.startedAt.toISOString(),
    startedBy: nameOf(names, row.startedBy),
    cutter: nameOf(names, row.cutterId),
    finishedAt: row.finishedAt?.toISOString() ?? null,
    inGrams: outcome?.inGrams ?? 0,
    unaccountedPct:
      outcome === null || outcome.inGrams === 0 ? null : (100 * outcome.unaccountedGrams) / outcome.inGrams,
    usedPct: outcome?.usedPct ?? null,
  };
}

/** The newest first; the last 500. */
export const listBreakdowns = (app: App, kitchenId: string): Promise<BreakdownSummary[]> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const names = await namesIn(db, kitchenId);
    const suppliers = new Map(
      (await db.select().from(t.supplier).where(eq(t.supplier.kitchenId, kitchenId))).map((s) => [
        s.id,
        s.name,
      ]),
    );
    const rows = await db
      .select()
      .from(t.breakdown)
      .where(eq(t.breakdown.kitchenId, kitchenId))
      .orderBy(desc(t.breakdown.startedAt), desc(t.breakdown.id))
      .limit(500);
    const open = rows.filter((r) => r.status === 'open').map((r) => r.id);
    const into =
      open.length === 0
        ? []
        : await db
            .select({ id: t.breakdownLot.breakdownId, grams: sql<number>`sum(${t.breakdownLot.grams})` })
            .from(t.breakdownLot)
            .where(inArray(t.breakdownLot.breakdownId, open))
            .groupBy(t.breakdownLot.breakdownId);
    return Promise.all(
      rows.map(async (row) => ({
        ...(await summaryOf(db, row, names, row.outcome as BreakdownOutcome | null, suppliers)),
        ...(row.outcome === null ? { inGrams: into.find((i) => i.id === row.id)?.grams ?? 0 } : {}),
      })),
    );
  });

export const getBreakdown = (app: App, kitchenId: string, id: string): Promise<Breakdown> =>
  look(app, async (db) => readBreakdown(db, kitchenId, await breakdownRow(db, kitchenId, id)));

export const startBreakdown = (app: App, actor: Actor, input: BodyOf<'startBreakdown'>): Promise<Breakdown> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const [before] = await tx.select().from(t.breakdown).where(eq(t.breakdown.id, input.id));
    // Sent twice: the first one counted.
    if (before !== undefined) {
      if (before.kitchenId !== kitchen.id) throw new AppError('conflict', 'Another record has this id.');
      return readBreakdown(tx, kitchen.id, before);
    }
    checkTree(input.nodes);
    const names = await namesIn(tx, kitchen.id);
    const cutterId = input.cutterId ?? person.id;
    if (!names.has(cutterId))
      invalid('Nobody of this kitchen has that id.', [
        { path: 'cutterId', found: cutterId, allowed: 'the id of somebody of this kitchen' },
      ]);
    const today = dayIn(kitchen.zone, now);
    const lots: { lot: LotRow; grams: number }[] = [];
    for (const [i, { lotId, grams }] of input.lots.entries()) {
      if (input.lots.findIndex((l) => l.lotId === lotId) !== i)
        invalid('The same lot is named twice.', [
          { path: `lots[${i}].lotId`, found: lotId, allowed: 'each lot once' },
        ]);
      const lot = await lotRow(tx, kitchen.id, lotId);
      const blocked = blockedWhy(lot, today);
      if (blocked !== null)
        throw new AppError('blocked', blocked, [
          { path: `lots[${i}].lotId`, found: blocked, allowed: 'a lot that may be used' },
        ]);
      if (lot.species !== null && lot.species.toLowerCase() !== input.species.toLowerCase())
        invalid('The animal is another one.', [
          {
            path: `lots[${i}].lotId`,
            found: `${lot.code}, of ${lot.species}`,
            allowed: `a lot of ${input.species}`,
          },
        ]);
      const [held] = await tx
        .select({ grams: sql<number>`coalesce(sum(${t.breakdownLot.grams}), 0)` })
        .from(t.breakdownLot)
        .innerJoin(t.breakdown, eq(t.breakdown.id, t.breakdownLot.breakdownId))
        .where(and(eq(t.breakdownLot.lotId, lotId), eq(t.breakdown.status, 'open')));
      const free = lot.leftGrams - (held?.grams ?? 0);
      if (grams > free + 1e-9)
        invalid(`There is not that much of lot ${lot.code}.`, [
          { path: `lots[${i}].grams`, found: `${grams} g`, allowed: `at most ${Math.max(0, free)} g` },
        ]);
      lots.push({ lot, grams });
    }
    checkLaw(input.nodes, input.species, kitchen.place as Place, {
      lots: lots.map((l) => l.lot),
    });
    const suppliers = [...new Set(lots.map((l) => l.lot.supplierId))];
    const [row] = await tx
      .insert(t.breakdown)
      .values({
        id: input.id,
        kitchenId: kitchen.id,
        species: input.species,
        supplierId: suppliers.length === 1 ? (suppliers[0] ?? null) : null,
        origin: 'here',
        animals: input.animals,
        nodes: input.nodes,
        status: 'open',
        startedAt: now,
        startedBy: person.id,
        cutterId,
        finishedAt: null,
        finishedBy: null,
        note: '',
        outcome: null,
      })
      .returning();
    if (row === undefined) throw new Error('the breakdown was not written');
    await tx
      .insert(t.breakdownLot)
      .values(
        lots.map(({ lot, grams }) => ({ kitchenId: kitchen.id, breakdownId: row.id, lotId: lot.id, grams })),
      );
    const units = kitchen.units as UnitSystem;
    await tell({
      action: 'began',
      subject: 'breakdown',
      subjectId: row.id,
      summary: `Breakdown of ${input.animals} × ${input.species} begun, ${formatQuantity(
        lots.reduce((sum, l) => sum + l.grams, 0),
        'mass',
        units,
      )} of ${lots.map((l) => l.lot.code).join(', ')}, cut by ${nameOf(names, cutterId)}.`,
    });
    return readBreakdown(tx, kitchen.id, row);
  });

export const weigh = (
  app: App,
  actor: Actor,
  breakdownId: string,
  input: BodyOf<'weigh'>,
): Promise<Breakdown> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const row = await breakdownRow(tx, kitchen.id, breakdownId);
    const nodes = row.nodes as TreeNode[];
    const before = new Map<string, { readonly node: string }>(
      (await weighingsOf(tx, breakdownId)).map((w) => [w.id, w]),
    );
    const fresh = input.weighings.filter((w) => !before.has(w.id));
    if (fresh.length === 0) return readBreakdown(tx, kitchen.id, row);
    if (row.status !== 'open')
      throw new AppError('frozen', `This breakdown is ${row.status} and takes no more weighings.`);
    const rows: (typeof t.weighing.$inferInsert)[] = [];
    const said: string[] = [];
    const units = kitchen.units as UnitSystem;
    for (const [i, w] of input.weighings.entries()) {
      if (before.has(w.id)) continue;
      const node = nodes.find((n) => n.id === w.node);
      if (node === undefined)
        return invalid('There is no such part in this tree.', [
          { path: `weighings[${i}].node`, found: w.node, allowed: nodes.map((n) => n.id).join(', ') },
        ]);
      if (w.tareGrams > w.grossGrams)
        invalid('The tare is heavier than the whole.', [
          {
            path: `weighings[${i}].tareGrams`,
            found: `${w.tareGrams} g`,
            allowed: `at most ${w.grossGrams} g`,
          },
        ]);
      if (w.animal !== null && w.animal > row.animals)
        invalid('There are not that many animals.', [
          { path: `weighings[${i}].animal`, found: String(w.animal), allowed: `1 to ${row.animals}` },
        ]);
      if (w.takenBack && w.corrects === null)
        invalid('What is taken back is not named.', [
          { path: `weighings[${i}].corrects`, found: 'nothing', allowed: 'the id of a weighing' },
        ]);
      if (w.corrects !== null && before.get(w.corrects)?.node !== w.node)
        invalid('A weighing corrects one of the same part of this breakdown.', [
          { path: `weighings[${i}].corrects`, found: w.corrects, allowed: `a weighing of ${node.name}` },
        ]);
      before.set(w.id, w);
      rows.push({
        ...w,
        kitchenId: kitchen.id,
        breakdownId,
        at: new Date(w.at),
        personId: person.id,
        recordedAt: now,
      });
      said.push(
        w.takenBack
          ? `${node.name} taken back`
          : `${node.name} ${formatQuantity(w.grossGrams - w.tareGrams, 'mass', units)}${w.corrects === null ? '' : ', corrected'}`,
      );
    }
    // In one statement, in the order in which they were weighed.
    const written = await tx.insert(t.weighing).values(rows).returning();
    const records = written.map((row) => ({
      table: 'weighing' as const,
      id: row.id,
      sha256: weighingDigest(row),
    }));
    // Throws where the parts are heavier than what they came from: nothing of it is kept then.
    const after = await readBreakdown(tx, kitchen.id, row);
    await tell({
      action: 'weighed',
      subject: 'breakdown',
      subjectId: breakdownId,
      summary: `Breakdown of ${row.species}: ${said.slice(0, 8).join('; ')}${said.length > 8 ? `; and ${said.length - 8} more` : ''}.`,
      records,
    });
    return after;
  });
