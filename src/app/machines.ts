/** The kitchen's machines: named once, and known better with every probe log that is fitted and kept. */
import { asc, desc, eq } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type { FitAnswer, FittedValue } from '../contract/fit.ts';
import type { Machine, MachineFit } from '../contract/machines.ts';
import type { BodyOf } from '../contract/operations.ts';
import type { ProbeLog } from '../contract/records.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, kitchenOf, look } from './app.ts';
import { readLogs } from './batches.ts';
import { digest } from './digest.ts';
import { nameOf, namesIn } from './dishes.ts';
import { AppError, notFound } from './errors.ts';
import { machineFitDigest } from './record-digests.ts';

type MachineRow = typeof t.machine.$inferSelect;
type Keep = BodyOf<'keepFit'>;

async function fitsOf(db: Db, kitchenId: string, where: ReturnType<typeof eq>): Promise<MachineFit[]> {
  const names = await namesIn(db, kitchenId);
  const rows = await db
    .select({ fit: t.machineFit, logName: t.probeLog.name })
    .from(t.machineFit)
    .innerJoin(t.probeLog, eq(t.probeLog.id, t.machineFit.logId))
    .where(where)
    .orderBy(desc(t.machineFit.line));
  return rows.flatMap(({ fit, logName }) =>
    fit.kitchenId === kitchenId
      ? [
          {
            id: fit.id,
            machineId: fit.machineId,
            logId: fit.logId,
            logName,
            stage: fit.stage,
            fromMin: fit.fromMin,
            hWm2K: fit.h as FittedValue,
            fitted: fit.fitted as MachineFit['fitted'],
            rmseC: fit.rmseC,
            warnings: fit.warnings as string[],
            engine: fit.engine,
            inputSha256: fit.inputSha256,
            at: fit.keptAt.toISOString(),
            by: nameOf(names, fit.personId),
          },
        ]
      : [],
  );
}

const asMachine = (row: MachineRow, fits: readonly MachineFit[]): Machine => ({
  id: row.id,
  name: row.name,
  medium: row.medium,
  note: row.note,
  createdAt: row.createdAt.toISOString(),
  fits: fits.length,
  latest: fits[0] ?? null,
});

async function machineRow(db: Db, kitchenId: string, machineId: string): Promise<MachineRow> {
  const [row] = await db.select().from(t.machine).where(eq(t.machine.id, machineId));
  if (row === undefined || row.kitchenId !== kitchenId) throw notFound('machine');
  return row;
}

export const listMachines = (app: App, kitchenId: string): Promise<Machine[]> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const rows = await db
      .select()
      .from(t.machine)
      .where(eq(t.machine.kitchenId, kitchenId))
      .orderBy(asc(t.machine.name), asc(t.machine.id));
    const fits = await fitsOf(db, kitchenId, eq(t.machineFit.kitchenId, kitchenId));
    return rows.map((row) =>
      asMachine(
        row,
        fits.filter((fit) => fit.machineId === row.id),
      ),
    );
  });

export const addMachine = (app: App, actor: Actor, input: BodyOf<'addMachine'>): Promise<Machine> =>
  change(app, actor, async ({ tx, kitchen, now, tell }) => {
    const row = { id: uuid(), kitchenId: kitchen.id, ...input, createdAt: now };
    const [same] = (
      await tx.select({ name: t.machine.name }).from(t.machine).where(eq(t.machine.kitchenId, kitchen.id))
    ).filter((m) => m.name === input.name);
    if (same !== undefined)
      throw new AppError('conflict', `This kitchen already has a machine called ${input.name}.`);
    await tx.insert(t.machine).values(row);
    await tell({
      action: 'added',
      subject: 'machine',
      subjectId: row.id,
      summary: `Machine ${row.name} (${row.medium}) added.`,
    });
    return asMachine(row, []);
  });

export const listFits = (app: App, kitchenId: string, machineId: string): Promise<MachineFit[]> =>
  look(app, async (db) => {
    await machineRow(db, kitchenId, machineId);
    return fitsOf(db, kitchenId, eq(t.machineFit.machineId, machineId));
  });

/** The fit that was kept before under this id, if it is of the same log for the same machine. */
async function keptBefore(db: Db, kitchenId: string, machineId: string, input: Keep) {
  const [fit] = await fitsOf(db, kitchenId, eq(t.machineFit.id, input.id));
  if (fit === undefined) return null;
  if (fit.machineId !== machineId || fit.logId !== input.logId)
    throw new AppError('conflict', 'A different fit was already kept under this id.');
  return fit;
}

async function logOf(db: Db, kitchenId: string, logId: string): Promise<ProbeLog> {
  const [log] = await readLogs(db, kitchenId, eq(t.probeLog.id, logId));
  if (log === undefined) throw notFound('probe log');
  return log;
}

/** The coefficient that is the machine's, among all that was fitted. */
function coefficientOf(fitted: FitAnswer['fitted'], input: Keep): FittedValue {
  const { hStages = [0], stages, fit } = input.input;
  if (!fit.includes('hWm2K') || !hStages.includes(input.stage))
    throw new AppError('invalid', 'What is kept for a machine is a surface coefficient that was fitted.', [
      {
        path: 'stage',
        found: `stage ${input.stage} (${stages[input.stage]?.name ?? 'not in the programme'})`,
        allowed: `one whose hWm2K is fitted: ${hStages.join(', ')}`,
      },
    ]);
  const value = fitted[input.stage === hStages[0] ? 'hWm2K' : `stages[${input.stage}].hWm2K`];
  if (value === undefined) throw new Error(`the fit has no coefficient of stage ${input.stage}`);
  if (!value.told && !(value.highOpen && !value.lowOpen))
    throw new AppError('invalid', 'This log does not tell the machine’s coefficient; nothing was kept.', [
      { path: 'input.fit', found: value.says, allowed: 'a log that tells it' },
    ]);
  return value;
}

/** Whole numbers of it, or two figures: for a line of the journal. */
const round = (x: number) => String(Number(x.toPrecision(3)));

export async function keepFit(app: App, actor: Actor, machineId: string, input: Keep): Promise<MachineFit> {
  const { before, log } = await look(app, async (db) => {
    await machineRow(db, actor.kitchenId, machineId);
    return {
      before: await keptBefore(db, actor.kitchenId, machineId, input),
      log: await logOf(db, actor.kitchenId, input.logId),
    };
  });
  if (before !== null) return before;
  const whole = {
    ...input.input,
    log: log.points.map(({ s, C }) => ({ min: s / 60 + input.fromMin, C })),
  };
  const answer = await app.engine.fit(whole);
  const h = coefficientOf(answer.fitted, input);
  return change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const machine = await machineRow(tx, kitchen.id, machineId);
    const again = await keptBefore(tx, kitchen.id, machineId, input);
    if (again !== null) return again;
    const row = {
      id: input.id,
      kitchenId: kitchen.id,
      machineId,
      logId: input.logId,
      stage: input.input.stages[input.stage]?.name ?? '',
      fromMin: input.fromMin,
      input: input.input,
      inputSha256: digest(whole),
      h,
      fitted: answer.fitted,
      rmseC: answer.rmseC,
      warnings: answer.warnings,
      engine: app.version,
      personId: person.id,
      keptAt: now,
    };
    await tx.insert(t.machineFit).values(row);
    const range = h.highOpen
      ? `at least ${round(h.low95)} W/(m² K)`
      : `${round(h.value)} W/(m² K), 95 in 100 between ${round(h.low95)} and ${round(h.high95)}`;
    await tell({
      action: 'fitted',
      subject: 'machine',
      subjectId: machineId,
      summary: `${machine.name}: ${range}, from log ${log.name}.`,
      records: [{ table: 'machine_fit', id: input.id, sha256: machineFitDigest(row) }],
    });
    const [kept] = await fitsOf(tx, kitchen.id, eq(t.machineFit.id, input.id));
    if (kept === undefined) throw new Error('the fit that was just kept is not there');
    return kept;
  });
}
