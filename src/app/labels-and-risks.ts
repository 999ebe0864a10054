/** Who looked at which label and what it says; and what the kitchen knows it cannot keep out of a dish. */
import { and, desc, eq } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type { BodyOf } from '../contract/operations.ts';
import type { DeclaredRisk, PantryIngredient } from '../contract/pantry.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change } from './app.ts';
import { dishRow, nameOf, namesIn } from './dishes.ts';
import { AppError, notFound } from './errors.ts';
import { ingredientRow, readIngredient, supplierIsHere } from './ingredients.ts';
import { allergenLookedDigest, declaredRiskDigest, declaredRiskEndDigest } from './record-digests.ts';

export const lookAtLabel = (
  app: App,
  actor: Actor,
  ingredientId: string,
  input: BodyOf<'lookAtLabel'>,
): Promise<PantryIngredient> =>
  change(app, actor, async (w) => {
    const { tx, kitchen, person, now, tell } = w;
    const { name } = await ingredientRow(tx, kitchen.id, ingredientId);
    const [before] = await tx.select().from(t.allergenLooked).where(eq(t.allergenLooked.id, input.id));
    if (before !== undefined) {
      if (before.kitchenId !== kitchen.id || before.ingredientId !== ingredientId)
        throw new AppError('conflict', 'A look at another label was already kept under this id.');
      return readIngredient(w, ingredientId);
    }
    const at = new Date(input.at);
    if (at.getTime() > now.getTime() + 60_000)
      throw new AppError('invalid', 'A label cannot have been looked at later than now.', [
        { path: 'at', found: input.at, allowed: `at most ${now.toISOString()}` },
      ]);
    if (input.supplierId !== null) await supplierIsHere(w, input.supplierId, 'supplierId');
    const row = {
      ...input,
      kitchenId: kitchen.id,
      ingredientId,
      at,
      personId: person.id,
      recordedAt: now,
    };
    await tx.insert(t.allergenLooked).values(row);
    const said = input.marks.map((m) => m.as ?? m.allergen);
    await tell({
      action: 'looked at the label of',
      subject: 'ingredient',
      subjectId: ingredientId,
      summary: `Label of ${input.product} for ${name}: ${said.length === 0 ? 'none of the fourteen emphasised' : said.join(', ')}.`,
      records: [{ table: 'allergen_looked', id: row.id, sha256: allergenLookedDigest(row) }],
    });
    return readIngredient(w, ingredientId);
  });

/** The newest first; those that were ended stand with why. */
export async function readRisks(db: Db, kitchenId: string): Promise<DeclaredRisk[]> {
  const names = await namesIn(db, kitchenId);
  const rows = await db
    .select({ risk: t.declaredRisk, end: t.declaredRiskEnd })
    .from(t.declaredRisk)
    .leftJoin(t.declaredRiskEnd, eq(t.declaredRiskEnd.riskId, t.declaredRisk.id))
    .where(eq(t.declaredRisk.kitchenId, kitchenId))
    .orderBy(desc(t.declaredRisk.line));
  return rows.map(({ risk, end }) => ({
    id: risk.id,
    allergen: risk.allergen as DeclaredRisk['allergen'],
    as: risk.kind,
    dishId: risk.dishId,
    reason: risk.reason,
    at: risk.recordedAt.toISOString(),
    by: nameOf(names, risk.personId),
    ended:
      end === null
        ? null
        : { at: end.recordedAt.toISOString(), by: nameOf(names, end.personId), reason: end.reason },
  }));
}

async function readRisk(db: Db, kitchenId: string, id: string): Promise<DeclaredRisk> {
  const found = (await readRisks(db, kitchenId)).find((r) => r.id === id);
  if (found === undefined) throw notFound('declared risk');
  return found;
}

export const declareRisk = (app: App, actor: Actor, input: BodyOf<'declareRisk'>): Promise<DeclaredRisk> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const [before] = await tx.select().from(t.declaredRisk).where(eq(t.declaredRisk.id, input.id));
    if (before !== undefined) {
      if (before.kitchenId !== kitchen.id || before.allergen !== input.allergen)
        throw new AppError('conflict', 'Another risk was already declared under this id.');
      return readRisk(tx, kitchen.id, input.id);
    }
    const dishId = input.dishId ?? null;
    const dish = dishId === null ? null : await dishRow(tx, kitchen.id, dishId);
    const row = {
      id: input.id,
      kitchenId: kitchen.id,
      allergen: input.allergen,
      kind: input.as ?? null,
      dishId,
      reason: input.reason,
      personId: person.id,
      recordedAt: now,
    };
    await tx.insert(t.declaredRisk).values(row);
    await tell({
      action: 'declared',
      subject: 'risk',
      subjectId: row.id,
      summary: `May contain ${row.kind ?? row.allergen}, ${dish === null ? 'every dish' : dish.name}: ${row.reason}`,
      records: [{ table: 'declared_risk', id: row.id, sha256: declaredRiskDigest(row) }],
    });
    return readRisk(tx, kitchen.id, row.id);
  });

export const withdrawRisk = (
  app: App,
  actor: Actor,
  riskId: string,
  input: BodyOf<'withdrawRisk'>,
): Promise<DeclaredRisk> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const [risk] = await tx
      .select()
      .from(t.declaredRisk)
      .where(and(eq(t.declaredRisk.kitchenId, kitchen.id), eq(t.declaredRisk.id, riskId)));
    if (risk === undefined) throw notFound('declared risk');
    const standing = await readRisk(tx, kitchen.id, riskId);
    if (standing.ended !== null) return standing;
    const row = {
      id: uuid(),
      kitchenId: kitchen.id,
      riskId,
      reason: input.reason,
      personId: person.id,
      recordedAt: now,
    };
    await tx.insert(t.declaredRiskEnd).values(row);
    await tell({
      action: 'ended',
      subject: 'risk',
      subjectId: riskId,
      summary: `May contain ${risk.kind ?? risk.allergen}, no longer: ${input.reason}`,
      records: [{ table: 'declared_risk_end', id: row.id, sha256: declaredRiskEndDigest(row) }],
    });
    return readRisk(tx, kitchen.id, riskId);
  });
