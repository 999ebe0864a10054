/** A breakdown's end: the lots are drawn, the money is carried, the parts become lots of their own; or it is given up. */
import { and, eq, sql } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type { Breakdown, CostBy, TreeNode } from '../contract/breakdown.ts';
import { animalByAnimal, standingWeights } from '../contract/breakdown-balance.ts';
import { cutCode } from '../contract/cut-code.ts';
import { jointOrigin, type LotOrigin, oldestOf } from '../contract/lot-origin.ts';
import type { BodyOf } from '../contract/operations.ts';
import type { Place } from '../contract/records.ts';
import { formatQuantity, type UnitSystem } from '../core/units.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, type Writing } from './app.ts';
import { outcomeOf, paidFor } from './breakdown-standing.ts';
import { checkLaw } from './breakdown-trees.ts';
import { type BreakdownRow, breakdownRow, lotsOf, moneyOf, readBreakdown } from './breakdowns.ts';
import { dayIn, plusDays } from './civil-day.ts';
import { AppError, invalid } from './errors.ts';
import { blockedWhy } from './lot-rules.ts';
import { breakdownDigest } from './record-digests.ts';
import { writeMove } from './shelf.ts';

export const finishBreakdown = (
  app: App,
  actor: Actor,
  breakdownId: string,
  input: BodyOf<'finishBreakdown'>,
): Promise<Breakdown> =>
  change(app, actor, async (w) => {
    const { tx, kitchen, person, now, tell } = w;
    const row = await breakdownRow(tx, kitchen.id, breakdownId);
    if (row.status === input.as) return readBreakdown(tx, kitchen.id, row);
    if (row.status !== 'open')
      throw new AppError('frozen', `This breakdown is ${row.status} and does not change.`);
    if (input.as === 'given up') {
      if (input.note.trim() === '')
        invalid('Say why it is given up.', [{ path: 'note', found: 'nothing', allowed: 'a reason' }]);
      await tx
        .update(t.breakdown)
        .set({ status: 'given up', finishedAt: now, finishedBy: person.id, note: input.note })
        .where(eq(t.breakdown.id, breakdownId));
      const given = await breakdownRow(tx, kitchen.id, breakdownId);
      await tell({
        action: 'gave up',
        subject: 'breakdown',
        subjectId: breakdownId,
        summary: `Breakdown of ${row.species} given up: ${input.note.slice(0, 200)}`,
        records: [{ table: 'breakdown', id: breakdownId, sha256: breakdownDigest(given) }],
      });
      return readBreakdown(tx, kitchen.id, given);
    }
    const before = await readBreakdown(tx, kitchen.id, row);
    if (before.blocking.length > 0)
      throw new AppError(
        'blocked',
        `This breakdown cannot be finished: ${before.blocking.join(' ')}`,
        before.blocking.map((found) => ({ path: 'as', found, allowed: 'nothing that stands in the way' })),
      );
    const nodes = row.nodes as TreeNode[];
    const cut = await lotsOf(tx, row.id);
    checkLaw(nodes, row.species, kitchen.place as Place, { lots: cut.map((l) => l.lot) });
    const { outcome, lots } = await settle(w, row, before, nodes, input.costBy);
    const [finished] = await tx
      .update(t.breakdown)
      .set({ status: 'finished', finishedAt: now, finishedBy: person.id, note: input.note, outcome })
      .where(eq(t.breakdown.id, breakdownId))
      .returning();
    if (finished === undefined) throw new Error('the breakdown was not finished');
    const units = kitchen.units as UnitSystem;
    await tell({
      action: 'finished',
      subject: 'breakdown',
      subjectId: breakdownId,
      summary: `Breakdown of ${row.animals} × ${row.species} finished: ${formatQuantity(outcome.inGrams, 'mass', units)} in, ${lots.made} lots made, ${formatQuantity(outcome.unaccountedGrams, 'mass', units)} unaccounted.`,
      records: [{ table: 'breakdown', id: breakdownId, sha256: breakdownDigest(finished) }, ...lots.moves],
    });
    return readBreakdown(tx, kitchen.id, finished);
  });

/** Draws what went in, carries the money, makes the parts' lots. */
async function settle(
  w: Writing,
  row: BreakdownRow,
  before: Breakdown,
  nodes: readonly TreeNode[],
  costBy: CostBy,
) {
  const { tx, kitchen, now } = w;
  const taken = await lotsOf(tx, row.id);
  const today = dayIn(kitchen.zone, now);
  const moves: Awaited<ReturnType<typeof writeMove>>[] = [];
  let paid: number | null = 0;
  for (const { lot, grams } of taken) {
    const blocked = blockedWhy(lot, today);
    if (blocked !== null && !(lot.leftGrams > 0 && lot.leftGrams < grams))
      throw new AppError('blocked', blocked, [
        { path: 'as', found: blocked, allowed: 'lots that may be used' },
      ]);
    if (grams > lot.leftGrams + 1e-9)
      invalid(`Lot ${lot.code} has been drawn on since: there is not that much left.`, [
        { path: 'as', found: `${grams} g of ${lot.code}`, allowed: `at most ${lot.leftGrams} g` },
      ]);
    const cost = paidFor(lot, grams);
    paid = paid === null || cost === null ? null : paid + cost;
    moves.push(
      await writeMove(w, lot, {
        what: 'broken down',
        grams,
        leftGrams: Math.max(0, lot.leftGrams - grams),
        breakdownId: row.id,
        reason: '',
      }),
    );
  }
  const { outcome } = outcomeOf({
    nodes,
    inGrams: taken.reduce((sum, l) => sum + l.grams, 0),
    weights: standingWeights(before.weighings),
    byAnimal: animalByAnimal(nodes, row.animals, before.weighings),
    paid,
    costBy,
    money: await moneyOf(tx, kitchen.id, row.species),
  });
  const parts = await tx
    .select()
    .from(t.part)
    .where(and(eq(t.part.kitchenId, kitchen.id), sql`lower(${t.part.species}) = lower(${row.species})`));
  const codes = new Set(
    (
      await tx
        .select({ code: t.lot.code })
        .from(t.lot)
        .where(
          and(
            eq(t.lot.kitchenId, kitchen.id),
            sql`starts_with(${t.lot.code}, ${`${taken[0]?.lot.code ?? ''}/`})`,
          ),
        )
    ).map((r) => r.code),
  );
  const ages = taken.map((l) => l.lot.ageMonthsAtMost);
  const parentUseBy = taken.flatMap((l) => (l.lot.useBy === null ? [] : [l.lot.useBy])).sort()[0] ?? null;
  let made = 0;
  for (const node of outcome.nodes) {
    const tree = nodes.find((n) => n.id === node.node);
    if (node.becomes !== 'part' || tree === undefined || node.grams <= 0) continue;
    let part = parts.find((p) => p.name.toLowerCase() === node.name.toLowerCase());
    if (part === undefined) {
      [part] = await tx
        .insert(t.part)
        .values({
          id: uuid(),
          kitchenId: kitchen.id,
          species: row.species,
          name: node.name,
          sharePct: null,
          use: tree.use,
          createdAt: now,
          class: tree.class,
          lifeDays: null,
          valuePerKg: null,
          costShare: null,
          trimPct: null,
          cookingLossPct: null,
          labourMinPerKg: null,
          tableId: null,
        })
        .returning();
      if (part === undefined) throw new Error('the part was not written');
      parts.push(part);
    }
    const code = cutCode(taken[0]?.lot.code ?? 'lot', node.name, codes);
    codes.add(code);
    const life = part.lifeDays === null ? null : plusDays(today, part.lifeDays);
    const id = uuid();
    await tx.insert(t.lot).values({
      id,
      kitchenId: kitchen.id,
      code,
      supplierId: row.supplierId,
      partId: part.id,
      what: `${row.species}, ${node.name}`.slice(0, 120),
      grams: node.grams,
      arrivedAt: now,
      arrivalC: null,
      note: '',
      createdAt: now,
      kind: 'part',
      species: row.species,
      count: node.pieces !== null && node.pieces >= 1 ? node.pieces : null,
      ageMonthsAtMost: oldestOf(ages),
      ...jointOrigin(taken.map(({ lot }) => ({ ...lot, bse: lot.bse as LotOrigin['bse'] }))),
      tradeLot: null,
      slaughteredOn: taken.map((l) => l.lot.slaughteredOn).sort()[0] ?? null,
      useBy: [parentUseBy, life].filter((d): d is string => d !== null).sort()[0] ?? null,
      cost: node.cost === null ? null : Math.max(0, node.cost),
      deliveryId: null,
      leftGrams: node.grams,
      frozenAt: null,
      thawedAt: null,
      byProductAt: null,
    });
    await tx
      .insert(t.lotParent)
      .values(
        taken.map((l) => ({ kitchenId: kitchen.id, lotId: id, parentId: l.lot.id, breakdownId: row.id })),
      );
    made++;
    node.lotId = id;
  }
  return { outcome, lots: { made, moves } };
}
