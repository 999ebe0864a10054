/** Probe logs: the file as it came is kept, read again here, and judged here; what a browser made of it is not trusted. */
import { and, desc, eq, ne } from 'drizzle-orm';
import type { BodyOf } from '../contract/operations.ts';
import type { ProbeLog } from '../contract/records.ts';
import { rulesHeld, rulesOfStep } from '../contract/step-rules.ts';
import type { Method, Step } from '../contract/steps.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, asKitchen, change, kitchenOf, look } from './app.ts';
import { type BatchRow, batchRow, readBatch, readLogs, shut } from './batches.ts';
import { sha256 } from './digest.ts';
import { dishRow, versionRow } from './dishes.ts';
import { AppError, notFound } from './errors.ts';
import { probeLogDigest } from './record-digests.ts';

type Input = BodyOf<'importLog'>;

export async function importLog(app: App, actor: Actor, input: Input): Promise<ProbeLog> {
  const print = sha256(input.text);
  const { dishId, rules, before } = await look(app, async (db) => ({
    before: await sameLog(db, actor.kitchenId, input, print),
    ...(await subjectOf(db, actor.kitchenId, input)),
  }));
  if (before !== null) return before;
  const read = await app.engine.readLog({
    text: input.text,
    channel: input.channel,
    correction: input.correction,
    rules,
  });
  return change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const again = await sameLog(tx, kitchen.id, input, print);
    if (again !== null) return again;
    let doubts: string[] = [];
    if (input.batchId !== null) {
      const batch = await batchRow(tx, kitchen.id, input.batchId);
      if (batch.status !== 'open') throw new AppError('frozen', shut(await readBatch(tx, batch)));
      doubts = await whoseLog(tx, batch, input, print, read.startedAt, now);
    }
    const row = {
      id: input.id,
      kitchenId: kitchen.id,
      batchId: input.batchId,
      trialId: input.trialId,
      dishId,
      stepId: input.stepId,
      name: input.name,
      channel: input.channel,
      original: input.text,
      sha256: print,
      how: read.how,
      points: read.points,
      startedAt: read.startedAt === null ? null : new Date(read.startedAt),
      warnings: [...read.warnings, ...doubts],
      judgements: read.judgements,
      personId: person.id,
      importedAt: now,
    };
    await tx.insert(t.probeLog).values(row);
    const verdicts = read.judgements.map(
      (j) =>
        `${j.title}: ${j.passes === true ? 'holds' : j.passes === false ? 'does not hold' : 'undecided'}`,
    );
    await tell({
      action: 'kept',
      subject: 'probe log',
      subjectId: input.id,
      summary: `Probe log ${input.name}, ${read.points.length} readings${verdicts.length > 0 ? `; ${verdicts.join('; ')}` : ''}.`,
      records: [{ table: 'probe_log', id: input.id, sha256: probeLogDigest(row) }],
    });
    return one(tx, kitchen.id, input.id);
  });
}

const halfADay = 43_200_000;

/** Whether this file can be this batch's: it is for a person to judge, but never to find out afterwards. */
async function whoseLog(
  db: Db,
  batch: BatchRow,
  input: Input,
  print: string,
  startedAt: string | null,
  now: Date,
): Promise<string[]> {
  const said: string[] = [];
  if (startedAt !== null) {
    const began = Date.parse(startedAt);
    if (began < batch.startedAt.getTime() - halfADay)
      said.push(
        `By its own clock this log begins at ${startedAt}, more than half a day before the batch was begun: is it this batch’s?`,
      );
    if (began > now.getTime() + halfADay)
      said.push(
        `By its own clock this log begins at ${startedAt}, which is yet to come: is its clock right?`,
      );
  }
  const kept = await db
    .select({ code: t.batch.code })
    .from(t.probeLog)
    .innerJoin(t.batch, eq(t.batch.id, t.probeLog.batchId))
    .where(
      and(
        eq(t.probeLog.kitchenId, batch.kitchenId),
        eq(t.probeLog.sha256, print),
        eq(t.probeLog.channel, input.channel),
        ne(t.probeLog.batchId, batch.id),
      ),
    );
  for (const code of new Set(kept.map((row) => row.code)))
    said.push(`The same channel of the same file was kept for batch ${code}: whose log is it?`);
  return said;
}

async function one(db: Db, kitchenId: string, logId: string): Promise<ProbeLog> {
  const [log] = await readLogs(db, kitchenId, eq(t.probeLog.id, logId));
  if (log === undefined) throw notFound('probe log');
  return log;
}

/** The log that was kept before under this id, if it is the same one. */
async function sameLog(db: Db, kitchenId: string, input: Input, print: string): Promise<ProbeLog | null> {
  const [row] = await db
    .select({
      kitchenId: t.probeLog.kitchenId,
      sha256: t.probeLog.sha256,
      channel: t.probeLog.channel,
      batchId: t.probeLog.batchId,
      stepId: t.probeLog.stepId,
    })
    .from(t.probeLog)
    .where(eq(t.probeLog.id, input.id));
  if (row === undefined) return null;
  const same =
    row.kitchenId === kitchenId &&
    row.sha256 === print &&
    row.channel === input.channel &&
    row.batchId === input.batchId &&
    row.stepId === input.stepId;
  if (!same) throw new AppError('conflict', 'A different log was already kept under this id.');
  return one(db, kitchenId, input.id);
}

/** Which dish the log belongs to, and every rule it must answer to: those asked for and those its step names. */
async function subjectOf(
  db: Db,
  kitchenId: string,
  input: Input,
): Promise<{ dishId: string | null; rules: string[] }> {
  let dishId = input.dishId;
  let method: Method | null = null;
  const follow = async (versionId: string) => {
    const version = await versionRow(db, kitchenId, versionId);
    if (dishId !== null && dishId !== version.dishId)
      throw new AppError('invalid', 'The log names a dish and a batch or trial of another dish.', [
        { path: 'dishId', found: dishId, allowed: version.dishId },
      ]);
    dishId = version.dishId;
    method = version.method as Method;
  };
  if (input.batchId !== null) await follow((await batchRow(db, kitchenId, input.batchId)).versionId);
  if (input.trialId !== null) {
    const [trial] = await db.select().from(t.trial).where(eq(t.trial.id, input.trialId));
    if (trial === undefined || trial.kitchenId !== kitchenId) throw notFound('trial');
    await follow(trial.versionId);
  }
  if (dishId !== null && method === null) {
    await dishRow(db, kitchenId, dishId);
    const [newest] = await db
      .select()
      .from(t.version)
      .where(eq(t.version.dishId, dishId))
      .orderBy(desc(t.version.number))
      .limit(1);
    method = (newest?.method ?? null) as Method | null;
  }
  const step = (method as Method | null)?.find((s) => s.id === input.stepId);
  if (input.batchId !== null && input.stepId !== null && step === undefined)
    throw new AppError('invalid', 'The log names a step that the batch does not have.', [
      { path: 'stepId', found: input.stepId, allowed: 'the id of a step of the batch, or null' },
    ]);
  const named =
    step === undefined || method === null ? [] : await heldHere(db, kitchenId, dishId, step, method);
  return { dishId, rules: [...new Set([...named, ...input.rules])] };
}

/** A draft is judged by what it would be signed by: the rules usual in the kitchen's place included. */
async function heldHere(
  db: Db,
  kitchenId: string,
  dishId: string | null,
  step: Step,
  method: Method,
): Promise<readonly string[]> {
  if (dishId === null) return rulesOfStep(step);
  const { place } = asKitchen(await kitchenOf(db, kitchenId));
  const { species, part } = await dishRow(db, kitchenId, dishId);
  return rulesHeld(step, method, { species, part, place });
}

export const listLogs = (app: App, kitchenId: string, dishId: string): Promise<ProbeLog[]> =>
  look(app, async (db) => {
    await dishRow(db, kitchenId, dishId);
    return (await readLogs(db, kitchenId, eq(t.probeLog.dishId, dishId))).reverse();
  });
