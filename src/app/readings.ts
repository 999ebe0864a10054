/** What is recorded while a batch is made: readings, their corrections, and decisions. Only ever added to. */
import { asc, eq, inArray } from 'drizzle-orm';
import type { BodyOf } from '../contract/operations.ts';
import type { Problem } from '../contract/problem.ts';
import type { Batch, Reading } from '../contract/records.ts';
import type { Ask, Method, Step } from '../contract/steps.ts';
import { formatQuantity, plainNumber, type UnitSystem } from '../core/units.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change } from './app.ts';
import { holdsOf } from './batch-state.ts';
import { batchRow, readBatch, shut } from './batches.ts';
import { versionRow } from './dishes.ts';
import { AppError } from './errors.ts';
import { decisionDigest, readingDigest } from './record-digests.ts';

type Row = typeof t.reading.$inferSelect;

/** A value with its unit, as a line of the journal ends in it. */
function asRead(kind: Ask['kind'], value: number | null, units: UnitSystem): string {
  if (value === null) return '';
  switch (kind) {
    case 'temperature':
    case 'core log':
      // Two decimals, as on the batch record: 69.96 °C is not 70 °C.
      return units === 'US' ? `, ${plainNumber(value * 1.8 + 32, 2)} °F` : `, ${plainNumber(value, 2)} °C`;
    case 'weight':
      return `, ${formatQuantity(value, 'mass', units)}`;
    case 'duration':
      return `, ${plainNumber(value, 1)} min`;
    case 'tick':
      return ', done';
    default:
      return `, ${plainNumber(value, 3)}`;
  }
}

export const record = (
  app: App,
  actor: Actor,
  batchId: string,
  input: BodyOf<'record'>,
): Promise<{ recorded: string[]; batch: Batch }> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const batch = await batchRow(tx, kitchen.id, batchId);
    const method = (await versionRow(tx, kitchen.id, batch.versionId)).method as Method;
    const fresh = await notYetWritten(tx, batchId, input.readings);
    if (fresh.length > 0 && batch.status !== 'open')
      throw new AppError('frozen', shut(await readBatch(tx, batch)));
    const known = new Map<string, Row | Reading>(
      (
        await tx.select().from(t.reading).where(eq(t.reading.batchId, batchId)).orderBy(asc(t.reading.line))
      ).map((r) => [r.id, r]),
    );
    const problems: Problem[] = [];
    const rows: (typeof t.reading.$inferInsert)[] = [];
    const labels: string[] = [];
    for (const { reading, index } of fresh) {
      const found = askOf(method, reading);
      const wrong =
        found === null
          ? [noAsk(reading)]
          : wrongs(found.ask, reading, known, { now, begun: batch.startedAt });
      problems.push(...wrong.map((p) => ({ ...p, path: `readings[${index}].${p.path}` })));
      if (found === null || wrong.length > 0) continue;
      known.set(reading.id, reading);
      labels.push(
        `${found.step.name}: ${found.ask.label}${asRead(found.ask.kind, reading.value, kitchen.units as UnitSystem)}`,
      );
      rows.push({
        ...reading,
        kitchenId: kitchen.id,
        batchId,
        at: new Date(reading.at),
        personId: person.id,
        recordedAt: now,
        holds: holdsOf(found.ask, reading.value),
      });
    }
    if (problems.length > 0)
      throw new AppError(
        'invalid',
        `${problems.length === 1 ? 'A reading was' : 'Readings were'} refused; nothing of this message was written.`,
        problems,
      );
    if (rows.length > 0) {
      await tx.insert(t.reading).values(rows);
      await tell({
        action: rows.some((r) => r.corrects != null) ? 'corrected' : 'recorded',
        subject: 'batch',
        subjectId: batchId,
        summary: `Batch ${batch.code}: ${labels.slice(0, 5).join('; ')}${labels.length > 5 ? ` and ${labels.length - 5} more` : ''}.`,
        records: rows.map((row) => ({ table: 'reading', id: row.id, sha256: readingDigest(row as Row) })),
      });
    }
    return { recorded: [...new Set(input.readings.map((r) => r.id))], batch: await readBatch(tx, batch) };
  });

/** Readings that are new here; one that was written before under the same id must say the same. */
async function notYetWritten(tx: Db, batchId: string, readings: readonly Reading[]) {
  const before = new Map<string, Pick<Row, 'batchId'> & Reading>();
  for (const row of await tx
    .select()
    .from(t.reading)
    .where(
      inArray(
        t.reading.id,
        readings.map((r) => r.id),
      ),
    ))
    before.set(row.id, { ...row, kind: row.kind as Reading['kind'], at: row.at.toISOString() });
  const fresh: { reading: Reading; index: number }[] = [];
  for (const [index, reading] of readings.entries()) {
    const other = before.get(reading.id);
    if (other === undefined) {
      before.set(reading.id, { ...reading, batchId });
      fresh.push({ reading, index });
    } else if (other.batchId !== batchId || !sameReading(other, reading))
      throw new AppError(
        'conflict',
        'A different reading was already written under this id; the one that was written stands.',
        [
          {
            path: `readings[${index}].id`,
            found: reading.id,
            allowed: 'a new id, or the same reading again',
          },
        ],
      );
  }
  return fresh;
}

const sameReading = (a: Reading, b: Reading) =>
  a.stepId === b.stepId &&
  a.askId === b.askId &&
  a.kind === b.kind &&
  a.value === b.value &&
  a.note === b.note &&
  a.corrects === b.corrects &&
  Date.parse(a.at) === Date.parse(b.at);

function askOf(method: Method, reading: { stepId: string; askId: string }): { step: Step; ask: Ask } | null {
  const step = method.find((s) => s.id === reading.stepId);
  const ask = step?.asks.find((a) => a.id === reading.askId);
  return step === undefined || ask === undefined ? null : { step, ask };
}

const noAsk = (reading: Reading): Problem => ({
  path: 'askId',
  found: reading.askId,
  allowed: 'something that this step of the version asks for',
});

const dayAhead = 86_400_000;
/** What is begun before the batch is (a cure, a delivery) is read no longer before it than this [ms]. */
const weekBefore = 7 * 86_400_000;

/** What can be read at all, in the unit of the kind; a slip of the thumb is caught before it is kept. */
const possible: Readonly<
  Record<string, { readonly low: number; readonly high: number; readonly words: string }>
> = {
  temperature: { low: -80, high: 400, words: '-80 to 400 °C' },
  weight: { low: 0, high: 1e8, words: '0 g or more, at most 100 t' },
  duration: { low: 0, high: 1e6, words: '0 min or more, at most a million' },
  count: { low: 0, high: 1e7, words: '0 or more, at most ten million' },
};

function wrongs(
  ask: Ask,
  reading: Reading,
  known: ReadonlyMap<string, { askId: string }>,
  { now, begun }: { readonly now: Date; readonly begun: Date },
): Problem[] {
  const problems: Problem[] = [];
  const wanted = ask.kind === 'core log' ? 'temperature' : ask.kind;
  if (reading.kind !== wanted) problems.push({ path: 'kind', found: reading.kind, allowed: wanted });
  if ((reading.value === null) !== (reading.kind === 'note'))
    problems.push({
      path: 'value',
      found: String(reading.value),
      allowed: reading.kind === 'note' ? 'null, with the words in note' : 'a number',
    });
  if (reading.kind === 'tick' && reading.value !== 1)
    problems.push({ path: 'value', found: String(reading.value), allowed: '1' });
  if (reading.kind === 'note' && reading.note.trim() === '')
    problems.push({ path: 'note', found: 'nothing', allowed: 'the words' });
  const range = possible[reading.kind];
  if (
    range !== undefined &&
    reading.value !== null &&
    !(reading.value >= range.low && reading.value <= range.high)
  )
    problems.push({ path: 'value', found: String(reading.value), allowed: range.words });
  if (Date.parse(reading.at) < begun.getTime() - weekBefore)
    problems.push({
      path: 'at',
      found: reading.at,
      allowed: `not more than a week before the batch was begun, ${begun.toISOString()}; look at the clock of the device`,
    });
  if (Date.parse(reading.at) > now.getTime() + dayAhead)
    problems.push({
      path: 'at',
      found: reading.at,
      allowed: `not more than a day after ${now.toISOString()}; look at the clock of the device`,
    });
  if (reading.corrects !== null) {
    if (known.get(reading.corrects)?.askId !== reading.askId)
      problems.push({
        path: 'corrects',
        found: reading.corrects,
        allowed: 'the id of an earlier reading of the same thing in this batch',
      });
    if (reading.note.trim() === '')
      problems.push({ path: 'note', found: 'nothing', allowed: 'why the earlier reading is corrected' });
  }
  return problems;
}

export const decide = (app: App, actor: Actor, batchId: string, input: BodyOf<'decide'>): Promise<Batch> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const batch = await batchRow(tx, kitchen.id, batchId);
    const [before] = await tx.select().from(t.decision).where(eq(t.decision.id, input.id));
    if (before !== undefined) {
      const same =
        before.batchId === batchId &&
        before.stepId === input.stepId &&
        before.askId === input.askId &&
        before.what === input.what &&
        before.reason === input.reason &&
        before.at.getTime() === Date.parse(input.at);
      if (!same) throw new AppError('conflict', 'A different decision was already written under this id.');
      return readBatch(tx, batch);
    }
    if (batch.status !== 'open') throw new AppError('frozen', shut(await readBatch(tx, batch)));
    const method = (await versionRow(tx, kitchen.id, batch.versionId)).method as Method;
    const step = method.find((s) => s.id === input.stepId);
    if (step === undefined || (input.askId !== null && !step.asks.some((ask) => ask.id === input.askId)))
      throw new AppError('invalid', 'The decision is about something that this version does not ask for.', [
        {
          path: step === undefined ? 'stepId' : 'askId',
          found: (step === undefined ? input.stepId : input.askId) ?? '',
          allowed: 'a step of the version, and an ask of that step or null',
        },
      ]);
    const row = {
      ...input,
      kitchenId: kitchen.id,
      batchId,
      at: new Date(input.at),
      personId: person.id,
      recordedAt: now,
    };
    await tx.insert(t.decision).values(row);
    await tell({
      action: 'decided',
      subject: 'batch',
      subjectId: batchId,
      summary: `Batch ${batch.code}, ${step.name}: ${input.what}. ${input.reason.slice(0, 200)}`,
      records: [{ table: 'decision', id: input.id, sha256: decisionDigest(row) }],
    });
    return readBatch(tx, batch);
  });
