/** A trial is one run of one version: what was expected, and what was learnt. */
import { and, desc, eq } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type { BodyOf } from '../contract/operations.ts';
import type { Trial } from '../contract/records.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, look } from './app.ts';
import { dishRow, nameOf, namesIn, versionRow } from './dishes.ts';
import { AppError, notFound } from './errors.ts';

async function read(db: Db, kitchenId: string, where: ReturnType<typeof eq>): Promise<Trial[]> {
  const names = await namesIn(db, kitchenId);
  const rows = await db
    .select({ trial: t.trial, number: t.version.number })
    .from(t.trial)
    .innerJoin(t.version, eq(t.version.id, t.trial.versionId))
    .where(and(eq(t.trial.kitchenId, kitchenId), where))
    .orderBy(desc(t.trial.startedAt), desc(t.trial.id));
  return rows.map(({ trial, number }) => ({
    id: trial.id,
    dishId: trial.dishId,
    versionId: trial.versionId,
    versionNumber: number,
    name: trial.name,
    expect: trial.expect,
    startedAt: trial.startedAt.toISOString(),
    startedBy: nameOf(names, trial.startedBy),
    conclusion: trial.conclusion,
    closedAt: trial.closedAt?.toISOString() ?? null,
  }));
}

async function readOne(db: Db, kitchenId: string, trialId: string): Promise<Trial> {
  const [trial] = await read(db, kitchenId, eq(t.trial.id, trialId));
  if (trial === undefined) throw notFound('trial');
  return trial;
}

export const listTrials = (app: App, kitchenId: string, dishId: string): Promise<Trial[]> =>
  look(app, async (db) => {
    await dishRow(db, kitchenId, dishId);
    return read(db, kitchenId, eq(t.trial.dishId, dishId));
  });

export const addTrial = (app: App, actor: Actor, dishId: string, input: BodyOf<'addTrial'>): Promise<Trial> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const dish = await dishRow(tx, kitchen.id, dishId);
    const version = await versionRow(tx, kitchen.id, input.versionId);
    if (version.dishId !== dish.id)
      throw new AppError('invalid', 'A trial is of a version of its own dish.', [
        { path: 'versionId', found: 'a version of another dish', allowed: `a version of ${dish.name}` },
      ]);
    const id = uuid();
    await tx.insert(t.trial).values({
      id,
      kitchenId: kitchen.id,
      dishId: dish.id,
      versionId: version.id,
      name: input.name,
      expect: input.expect,
      startedAt: now,
      startedBy: person.id,
    });
    if (dish.stage === 'idea')
      await tx.update(t.dish).set({ stage: 'in trial', updatedAt: now }).where(eq(t.dish.id, dish.id));
    await tell({
      action: 'began',
      subject: 'trial',
      subjectId: id,
      summary: `Trial ${input.name} of ${dish.name}, version ${version.number}, begun.`,
    });
    return readOne(tx, kitchen.id, id);
  });

export const closeTrial = (
  app: App,
  actor: Actor,
  trialId: string,
  input: BodyOf<'closeTrial'>,
): Promise<Trial> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const trial = await readOne(tx, kitchen.id, trialId);
    if (trial.closedAt !== null)
      throw new AppError(
        'frozen',
        `Trial ${trial.name} was closed at ${trial.closedAt} with: ${trial.conclusion}`,
      );
    await tx
      .update(t.trial)
      .set({ conclusion: input.conclusion, closedAt: now, closedBy: person.id })
      .where(eq(t.trial.id, trialId));
    await tell({
      action: 'closed',
      subject: 'trial',
      subjectId: trialId,
      summary: `Trial ${trial.name} closed: ${input.conclusion.slice(0, 200)}`,
    });
    return readOne(tx, kitchen.id, trialId);
  });
