/** Deliveries: checked point by point against what was agreed, decided on, and made into lots, all of it or nothing. */
import { and, asc, desc, eq, inArray, sql } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type {
  Delivery,
  DeliveryCheck,
  DeliveryInput,
  DeliveryLine,
  DeliverySummary,
  SupplierTrend,
} from '../contract/delivery.ts';
import { doubtfulArrivals, measuredChecks, pointsOf, tooWarm } from '../contract/delivery-points.ts';
import { unprovenOrigins } from '../contract/lot-origin.ts';
import type { Problem } from '../contract/problem.ts';
import type { SpecificationContent } from '../contract/specification.ts';
import { formatQuantity, type UnitSystem } from '../core/units.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, kitchenOf, look } from './app.ts';
import { dayIn, plusDays } from './civil-day.ts';
import { nameOf, namesIn } from './dishes.ts';
import { AppError, invalid, notFound } from './errors.ts';
import { deliveryDigest } from './record-digests.ts';
import { versionInForce } from './specifications.ts';

type Row = typeof t.delivery.$inferSelect;
type Lot = typeof t.lot.$inferInsert;

export const takeDelivery = (app: App, actor: Actor, input: DeliveryInput): Promise<Delivery> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const [before] = await tx.select().from(t.delivery).where(eq(t.delivery.id, input.id));
    // Sent twice: the first one counted.
    if (before !== undefined) {
      if (before.kitchenId !== kitchen.id) throw new AppError('conflict', 'Another record has this id.');
      return readDelivery(tx, kitchen.id, before.id);
    }
    const doubted = doubtfulArrivals(input.lines);
    if (doubted.length > 0)
      invalid('Nothing arrives that warm or that cold: was it read in another unit?', doubted);
    const unproven = unprovenOrigins(input.lines);
    if (unproven.length > 0) invalid('Where was it born and raised?', unproven);
    const [supplier] = await tx
      .select()
      .from(t.supplier)
      .where(and(eq(t.supplier.kitchenId, kitchen.id), eq(t.supplier.id, input.supplierId)));
    if (supplier === undefined)
      return invalid('The delivery names a supplier that this kitchen does not have.', [
        { path: 'supplierId', found: input.supplierId, allowed: 'the id of a supplier of this kitchen' },
      ]);
    const agreed =
      input.specificationVersionId === null
        ? null
        : await versionInForce(tx, kitchen.id, supplier.id, input.specificationVersionId);
    const checks = checksOf(agreed?.version.content ?? null, input, kitchen.zone);
    const wrong = checks.filter((c) => c.met === 'not met');
    const warm = tooWarm(
      input.lines.filter((l) => !l.refused),
      kitchen.place,
    );
    const deviations = [
      ...wrong.map((c) => `${c.asked}: ${c.found}`),
      ...warm.map((w) => `${w.found}, limit ${w.limit}`),
    ];
    if (input.decision === 'accepted' && deviations.length > 0)
      invalid(`This delivery is not as it was asked: ${deviations.join('; ')}.`, [
        {
          path: 'decision',
          found: 'accepted',
          allowed: 'accepted with deviation, with the reason, or refused',
        },
      ]);
    if (input.decision !== 'accepted' && input.reason.trim() === '')
      invalid('Say why.', [{ path: 'reason', found: 'nothing', allowed: 'a reason' }]);
    const taken = input.decision === 'refused' ? [] : input.lines.filter((l) => !l.refused);
    if (input.decision !== 'refused' && taken.length === 0)
      invalid('Every line is refused.', [
        { path: 'decision', found: input.decision, allowed: 'refused, or a line that is taken in' },
      ]);
    const parts = await partsOf(tx, kitchen.id, input.lines);
    await checkCodesAndTags(tx, kitchen.id, taken, input.lines);
    const known = input.lines.flatMap((l) => (l.arrivalC === null ? [] : [l.arrivalC]));
    const costs = input.lines.map((l) => l.cost);
    const [row] = await tx
      .insert(t.delivery)
      .values({
        id: input.id,
        kitchenId: kitchen.id,
        supplierId: supplier.id,
        specificationVersionId: input.specificationVersionId,
        arrivedAt: new Date(input.arrivedAt),
        documents: input.documents,
        lines: input.lines,
        checks,
        decision: input.decision,
        reason: input.reason,
        pointsMet: checks.filter((c) => c.met === 'met').length,
        pointsAsked: checks.length,
        warmestC: known.length === 0 ? null : Math.max(...known),
        grams: input.lines.reduce((sum, l) => sum + l.grams, 0),
        cost: costs.every((c) => c === null) ? null : costs.reduce<number>((sum, c) => sum + (c ?? 0), 0),
        personId: person.id,
        recordedAt: now,
      })
      .returning();
    if (row === undefined) throw new Error('the delivery was not written');
    const today = dayIn(kitchen.zone, row.arrivedAt);
    for (const line of taken) {
      const part = line.partId === null ? undefined : parts.get(line.partId);
      const life = part?.lifeDays ?? null;
      const own = life === null || line.frozen ? null : plusDays(today, life);
      const lot: Lot = {
        id: uuid(),
        kitchenId: kitchen.id,
        code: line.code,
        supplierId: supplier.id,
        partId: line.partId,
        what: line.what,
        grams: line.grams,
        arrivedAt: row.arrivedAt,
        arrivalC: line.arrivalC,
        note: line.note,
        createdAt: now,
        kind: line.kind,
        species: line.species ?? part?.species ?? null,
        count: line.count,
        ageMonthsAtMost: line.ageMonthsAtMost,
        bornIn: line.origin?.bornIn ?? null,
        raisedIn: line.origin?.raisedIn ?? null,
        bse: line.origin?.bse ?? null,
        tradeLot: line.tradeLot,
        slaughteredOn: line.slaughteredOn,
        useBy: [line.useBy, own].filter((d): d is string => d !== null).sort()[0] ?? null,
        cost: line.cost,
        deliveryId: row.id,
        leftGrams: line.grams,
        frozenAt: line.frozen ? row.arrivedAt : null,
        thawedAt: null,
        byProductAt: null,
      };
      await tx.insert(t.lot).values(lot);
      if (line.tags.length > 0)
        await tx
          .insert(t.animalTag)
          .values(line.tags.map((tag) => ({ kitchenId: kitchen.id, tag, lotId: lot.id })));
    }
    const units = kitchen.units as UnitSystem;
    await tell({
      action: input.decision === 'refused' ? 'refused' : 'took in',
      subject: 'delivery',
      subjectId: row.id,
      summary: `Delivery from ${supplier.name}, ${formatQuantity(row.grams, 'mass', units)}: ${input.decision}, ${row.pointsMet} of ${row.pointsAsked} points met${deviations.length === 0 ? '' : ` (${deviations.slice(0, 3).join('; ')})`}${input.reason === '' ? '' : `: ${input.reason.slice(0, 200)}`}`,
      records: [{ table: 'delivery', id: row.id, sha256: deliveryDigest(row) }],
    });
    return readDelivery(tx, kitchen.id, row.id);
  });

/** Every point of the specification, once: what was measured is decided by the figures, whatever was ticked. */
function checksOf(content: SpecificationContent | null, input: DeliveryInput, zone: string): DeliveryCheck[] {
  if (content === null) {
    if (input.checks.length > 0)
      invalid('Points were checked although no specification is named.', [
        { path: 'checks', found: `${input.checks.length} points`, allowed: 'none, or a specification' },
      ]);
    return [];
  }
  const points = pointsOf(content);
  for (const [i, check] of input.checks.entries())
    if (!points.some((p) => p.point === check.point))
      invalid('A point was checked that this version does not ask for.', [
        {
          path: `checks[${i}].point`,
          found: check.point,
          allowed: points.map((p) => p.point).join(', '),
        },
      ]);
  const measured = measuredChecks(content, input.lines, input.arrivedAt, zone);
  return points.map(
    (p) =>
      measured.find((c) => c.point === p.point) ?? {
        point: p.point,
        asked: p.asked,
        met: input.checks.find((c) => c.point === p.point)?.met ?? 'not looked at',
        found: input.checks.find((c) => c.point === p.point)?.found ?? '',
      },
  );
}

async function partsOf(tx: Db, kitchenId: string, lines: readonly DeliveryLine[]) {
  const ids = [...new Set(lines.flatMap((l) => (l.partId === null ? [] : [l.partId])))];
  const rows =
    ids.length === 0
      ? []
      : await tx
          .select()
          .from(t.part)
          .where(and(eq(t.part.kitchenId, kitchenId), inArray(t.part.id, ids)));
  const found = new Map(rows.map((r) => [r.id, r]));
  for (const [i, l] of lines.entries())
    if (l.partId !== null && !found.has(l.partId))
      invalid('A line names a part that this kitchen does not have.', [
        { path: `lines[${i}].partId`, found: l.partId, allowed: 'the id of a part of this kitchen, or null' },
      ]);
  return found;
}

async function checkCodesAndTags(
  tx: Db,
  kitchenId: string,
  taken: readonly DeliveryLine[],
  all: readonly DeliveryLine[],
): Promise<void> {
  const pathOf = (line: DeliveryLine) => `lines[${all.indexOf(line)}]`;
  const codes = new Map<string, string>();
  const tags = new Map<string, string>();
  const problems: Problem[] = [];
  for (const line of taken) {
    const before = codes.get(line.code);
    if (before !== undefined)
      problems.push({
        path: `${pathOf(line)}.code`,
        found: `${line.code}, the code of ${before} too`,
        allowed: 'a code of its own',
      });
    codes.set(line.code, pathOf(line));
    for (const [j, tag] of line.tags.entries()) {
      const twice = tags.get(tag);
      if (twice !== undefined)
        problems.push({
          path: `${pathOf(line)}.tags[${j}]`,
          found: `${tag}, which is ${twice} too`,
          allowed: 'each tag once: one tag, one animal',
        });
      tags.set(tag, `${pathOf(line)}.tags[${j}]`);
    }
  }
  const taking = [...codes.keys()];
  if (taking.length > 0)
    for (const row of await tx
      .select({ code: t.lot.code })
      .from(t.lot)
      .where(and(eq(t.lot.kitchenId, kitchenId), inArray(t.lot.code, taking))))
      problems.push({
        path: `${codes.get(row.code)}.code`,
        found: `${row.code}, which another lot has`,
        allowed: 'a code that was never used: lots are traced by it',
      });
  const tagged = [...tags.keys()];
  if (tagged.length > 0)
    for (const row of await tx
      .select({ tag: t.animalTag.tag, code: t.lot.code })
      .from(t.animalTag)
      .innerJoin(t.lot, eq(t.lot.id, t.animalTag.lotId))
      .where(and(eq(t.animalTag.kitchenId, kitchenId), inArray(t.animalTag.tag, tagged))))
      problems.push({
        path: tags.get(row.tag) ?? 'lines',
        found: `${row.tag}, an animal of lot ${row.code}`,
        allowed: 'each tag once: one tag, one animal',
      });
  if (problems.length > 0)
    invalid(`The delivery cannot be traced like this: ${problems[0]?.found}.`, problems);
}

const summaryFields = {
  delivery: t.delivery,
  supplierName: t.supplier.name,
  specificationName: t.specification.name,
  specificationNumber: t.specificationVersion.number,
};

const selectDeliveries = (db: Db) =>
  db
    .select(summaryFields)
    .from(t.delivery)
    .innerJoin(t.supplier, eq(t.supplier.id, t.delivery.supplierId))
    .leftJoin(t.specificationVersion, eq(t.specificationVersion.id, t.delivery.specificationVersionId))
    .leftJoin(t.specification, eq(t.specification.id, t.specificationVersion.specificationId));

type Joined = {
  delivery: Row;
  supplierName: string;
  specificationName: string | null;
  specificationNumber: number | null;
};

const asSummary = (
  { delivery: d, supplierName, specificationName, specificationNumber }: Joined,
  by: string,
): DeliverySummary => ({
  id: d.id,
  supplierId: d.supplierId,
  specificationVersionId: d.specificationVersionId,
  arrivedAt: d.arrivedAt.toISOString(),
  documents: d.documents,
  decision: d.decision as Delivery['decision'],
  reason: d.reason,
  supplierName,
  specificationName,
  specificationNumber,
  pointsMet: d.pointsMet,
  pointsAsked: d.pointsAsked,
  warmestC: d.warmestC,
  grams: d.grams,
  cost: d.cost,
  recordedAt: d.recordedAt.toISOString(),
  by,
});

/** The newest first; the last 200. */
export const listDeliveries = (app: App, kitchenId: string): Promise<DeliverySummary[]> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const names = await namesIn(db, kitchenId);
    const rows = await selectDeliveries(db)
      .where(eq(t.delivery.kitchenId, kitchenId))
      .orderBy(desc(t.delivery.arrivedAt), desc(t.delivery.line))
      .limit(200);
    return rows.map((row) => asSummary(row, nameOf(names, row.delivery.personId)));
  });

export const getDelivery = (app: App, kitchenId: string, id: string): Promise<Delivery> =>
  look(app, (db) => readDelivery(db, kitchenId, id));

async function readDelivery(db: Db, kitchenId: string, id: string): Promise<Delivery> {
  const [row] = await selectDeliveries(db).where(
    and(eq(t.delivery.kitchenId, kitchenId), eq(t.delivery.id, id)),
  );
  if (row === undefined) throw notFound('delivery');
  const names = await namesIn(db, kitchenId);
  const lots = await db
    .select({ id: t.lot.id, code: t.lot.code })
    .from(t.lot)
    .where(eq(t.lot.deliveryId, id))
    .orderBy(asc(t.lot.code));
  const photos = await db
    .select({ id: t.photo.id })
    .from(t.photo)
    .where(and(eq(t.photo.kitchenId, kitchenId), eq(t.photo.subjectId, id)))
    .orderBy(asc(t.photo.takenAt));
  return {
    ...asSummary(row, nameOf(names, row.delivery.personId)),
    lines: row.delivery.lines as DeliveryLine[],
    checks: row.delivery.checks as DeliveryCheck[],
    lotIds: lots.map((l) => l.id),
    lots,
    photos: photos.map((p) => p.id),
  };
}

/** Deliveries of a supplier, oldest first, with what became of them. */
export const supplierTrend = (app: App, kitchenId: string, supplierId: string): Promise<SupplierTrend> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const rows = await db
      .select()
      .from(t.delivery)
      .where(and(eq(t.delivery.kitchenId, kitchenId), eq(t.delivery.supplierId, supplierId)))
      .orderBy(asc(t.delivery.arrivedAt), asc(t.delivery.line))
      .limit(2_000);
    const used = await db
      .select({
        deliveryId: t.lot.deliveryId,
        // Weighted by what went in, over the finished breakdowns of its lots.
        usedPct: sql<number>`sum((${t.breakdown.outcome}->>'usedPct')::float8 * ${t.breakdownLot.grams}) / sum(${t.breakdownLot.grams})`,
      })
      .from(t.breakdownLot)
      .innerJoin(t.lot, eq(t.lot.id, t.breakdownLot.lotId))
      .innerJoin(t.breakdown, eq(t.breakdown.id, t.breakdownLot.breakdownId))
      .where(
        and(
          eq(t.breakdownLot.kitchenId, kitchenId),
          eq(t.lot.supplierId, supplierId),
          eq(t.breakdown.status, 'finished'),
        ),
      )
      .groupBy(t.lot.deliveryId);
    return {
      supplierId,
      deliveries: rows.map((d) => ({
        deliveryId: d.id,
        arrivedAt: d.arrivedAt.toISOString(),
        decision: d.decision as Delivery['decision'],
        pointsMet: d.pointsMet,
        pointsAsked: d.pointsAsked,
        warmestC: d.warmestC,
        grams: d.grams,
        costPerKg: d.cost === null || d.grams === 0 ? null : d.cost / (d.grams / 1000),
        usedPct: used.find((u) => u.deliveryId === d.id)?.usedPct ?? null,
      })),
    };
  });
