import { v7 as uuid } from 'uuid';
import { beforeAll, beforeEach, expect, it } from 'vitest';
import { addLot } from '../../src/app/animals.ts';
import { closeBatch, getBatch, listBatches, startBatch } from '../../src/app/batches.ts';
import { addDish } from '../../src/app/dishes.ts';
import { importLog, listLogs } from '../../src/app/logs.ts';
import { readJournal } from '../../src/app/proof.ts';
import { decide, record } from '../../src/app/readings.ts';
import { signVersion } from '../../src/app/sign.ts';
import { Batch, BatchSummary, ProbeLog, type Version } from '../../src/contract/records.ts';
import {
  appOn,
  askIds,
  coolLog,
  goodMethod,
  hotLog,
  openBatch,
  openKitchen,
  reading,
  signedDish,
  stepIds,
  type TestKitchen,
} from './kitchen.ts';
import { eachStore } from './stores.ts';

const refused = (code: string) => expect.objectContaining({ name: 'AppError', code });

eachStore('a batch', (making) => {
  let k: TestKitchen;
  let version: Version;
  let dishId: string;
  let batch: Batch;
  beforeAll(async () => {
    k = await openKitchen(appOn(await making.fresh()));
    const signed = await signedDish(k);
    version = signed.version;
    dishId = signed.dish.id;
  });
  beforeEach(async () => {
    batch = await openBatch(k, version.id);
  });
  const write = (...readings: ReturnType<typeof reading>[]) => record(k.app, k.actor, batch.id, { readings });
  const importOne = (text: string, more: object = {}) =>
    importLog(k.app, k.actor, {
      id: uuid(),
      batchId: batch.id,
      trialId: null,
      dishId: null,
      stepId: stepIds.cook,
      name: 'probe.csv',
      text,
      channel: 'core',
      correction: {},
      rules: [],
      ...more,
    });
  const decideOn = (
    what: 'cooked again' | 'chilled faster' | 'discarded' | 'kept back to ask',
    stepId = stepIds.cook,
    askId: string | null = null,
  ) =>
    decide(k.app, k.actor, batch.id, {
      id: uuid(),
      stepId,
      askId,
      what,
      reason: 'Because.',
      at: '2026-11-20T09:00:00.000Z',
    });
  const close = (as: 'closed' | 'discarded' = 'closed', note = 'Done.') =>
    closeBatch(k.app, k.actor, batch.id, { as, note });

  it('starts from a signed version only, once for each id', async () => {
    const draft = await addDish(k.app, k.actor, {
      name: 'Draft',
      species: 'pig',
      part: 'heart',
      story: '',
      method: goodMethod(),
    });
    await expect(openBatch(k, draft.current.id)).rejects.toEqual(refused('conflict'));
    const lot = await addLot(k.app, k.actor, {
      code: `L${uuid()}`,
      supplierId: null,
      partId: null,
      what: 'Hearts',
      grams: 1000,
      arrivedAt: '2026-11-19T09:00:00Z',
      arrivalC: 2,
      note: '',
    });
    const input = { id: uuid(), versionId: version.id, pieces: 3, lotIds: [lot.id, lot.id] };
    const first = await startBatch(k.app, k.actor, input);
    expect(Batch.parse(first)).toMatchObject({
      pieces: 3,
      status: 'open',
      lots: [{ id: lot.id }],
      method: version.method,
    });
    expect(first.code).toMatch(/^261120-\d+$/);
    expect(await startBatch(k.app, k.actor, input)).toEqual(first);
    await expect(startBatch(k.app, k.actor, { ...input, pieces: 4 })).rejects.toEqual(refused('conflict'));
    await expect(startBatch(k.app, k.actor, { ...input, id: uuid(), lotIds: [uuid()] })).rejects.toEqual(
      refused('invalid'),
    );
    const direct = k.app.store.session((s) =>
      s.query(
        'INSERT INTO batch SELECT $1, kitchen_id, $2, code || $3, pieces, started_at, started_by, status FROM batch WHERE id = $4',
        [uuid(), draft.current.id, 'x', first.id],
      ),
    );
    await expect(direct).rejects.toThrow(/signed version/);
  });

  it('numbers the batches of a day, also when they start at once', async () => {
    const made = await Promise.all(Array.from({ length: 5 }, () => openBatch(k, version.id)));
    expect(new Set(made.map((b) => b.code)).size).toBe(5);
  });

  it('records against the limits, by whom and when, and answers with what is on disk', async () => {
    const inside = reading({ value: 3 });
    const outside = reading({ value: 3.01 });
    const free = reading({ askId: askIds.note, kind: 'note', value: null, note: 'A nick in one.' });
    const { recorded, batch: after } = await write(inside, outside, free);
    expect(recorded).toEqual([inside.id, outside.id, free.id]);
    expect(Batch.parse(after).readings.map((r) => [r.value, r.holds, r.by])).toEqual([
      [3, 'in', 'Petra Invented'],
      [3.01, 'out', 'Petra Invented'],
      [null, 'no limit', 'Petra Invented'],
    ]);
    expect(after.out).toBe(1);
    expect(await getBatch(k.app, k.kitchen.id, batch.id)).toEqual(after);
  });

  it('writes a reading once however often it is sent, and refuses another under its id', async () => {
    const one = reading();
    await write(one);
    await write(one, reading({ askId: askIds.weight, kind: 'weight', value: 250 }));
    const { batch: after } = await write(one, one);
    expect(after.readings).toHaveLength(2);
    await expect(write({ ...one, value: 2.5 })).rejects.toEqual(refused('conflict'));
    const another = await openBatch(k, version.id);
    await expect(record(k.app, k.actor, another.id, { readings: [one] })).rejects.toEqual(
      refused('conflict'),
    );
    const raced = reading();
    await Promise.all(Array.from({ length: 4 }, () => write(raced)));
    expect(
      (await getBatch(k.app, k.kitchen.id, batch.id)).readings.filter((r) => r.id === raced.id),
    ).toHaveLength(1);
  });

  it('refuses what was not asked for, by path, and writes nothing of that message', async () => {
    const bad = [
      reading({ askId: uuid() }),
      reading({ kind: 'weight' }),
      reading({ value: null }),
      reading({ askId: askIds.tick, kind: 'tick', value: 2 }),
      reading({ askId: askIds.note, kind: 'note', value: null, note: ' ' }),
      reading({ at: '2027-11-20T08:30:00.000Z' }),
      reading({ at: '2020-01-01T08:30:00.000Z' }),
      reading({ value: 5_000 }),
      reading({ value: -273 }),
      reading({ askId: askIds.weight, kind: 'weight', value: -1 }),
      // Two of these would be a log that no judge can read.
      reading({ stepId: stepIds.cook, askId: askIds.core, value: 401 }),
      reading({ corrects: uuid(), note: 'why' }),
    ];
    for (const one of bad)
      await expect(write(reading(), one), JSON.stringify(one)).rejects.toEqual(refused('invalid'));
    await expect(write(reading(), bad[1]!)).rejects.toMatchObject({
      problems: [{ path: 'readings[1].kind', found: 'weight', allowed: 'temperature' }],
    });
    expect((await getBatch(k.app, k.kitchen.id, batch.id)).readings).toEqual([]);
  });

  it('corrects by a new line that says why; the old line stays', async () => {
    const wrong = reading({ value: 38 });
    await write(wrong);
    await expect(write(reading({ corrects: wrong.id }))).rejects.toEqual(refused('invalid'));
    const { batch: after } = await write(
      reading({ corrects: wrong.id, note: 'Slip of the thumb: 3.8 was meant, measured again 2.' }),
    );
    expect(after.readings.map((r) => [r.value, r.holds])).toEqual([
      [38, 'out'],
      [2, 'in'],
    ]);
    expect(after.out).toBe(0);
    expect(after.blocking.join()).not.toContain('Arrival');
  });

  it('says what blocks it, and closes only when nothing does', async () => {
    expect(batch.blocking).toEqual([
      'Trim: "Arrival" has not been recorded.',
      'Steam: there is no core log yet ("Core while cooking").',
    ]);
    await expect(close()).rejects.toEqual(refused('blocked'));
    await write(reading({ value: 6 }));
    await importOne(hotLog);
    const held = await getBatch(k.app, k.kitchen.id, batch.id);
    expect(held.blocking).toEqual(['Trim: "Arrival" is 6 °C, allowed at most 3 °C; say what was done.']);
    await expect(close()).rejects.toMatchObject({ code: 'blocked', problems: [{ found: held.blocking[0] }] });
    await decideOn('chilled faster', stepIds.trim, askIds.arrival);
    await expect(close()).rejects.toThrow(/not been measured again/);
    await write(reading({ value: 2 }));
    const closed = await close();
    const [told] = await readJournal(k.app, k.kitchen.id, { limit: 1 });
    expect(told?.summary).toContain('with 1 out of limit and decided on (Trim: "Arrival" was 6 °C');
    expect(Batch.parse(closed)).toMatchObject({
      status: 'closed',
      closedBy: 'Petra Invented',
      closingNote: 'Done.',
      blocking: [],
    });
    expect(await close()).toEqual(closed);
    await expect(close('discarded')).rejects.toEqual(refused('frozen'));
    await expect(write(reading())).rejects.toEqual(refused('frozen'));
    await expect(decideOn('cooked again')).rejects.toEqual(refused('frozen'));
    await expect(importOne(coolLog)).rejects.toEqual(refused('frozen'));
    const forced = k.app.store.session((s) =>
      s.query(
        "UPDATE batch SET status = 'open', closed_at = NULL, closed_by = NULL, closing_note = NULL WHERE id = $1",
        [batch.id],
      ),
    );
    await expect(forced).rejects.toThrow(/is closed/);
  });

  it('lets a reading that was on disk before the batch was closed be acknowledged again', async () => {
    const first = reading();
    await write(first);
    await importOne(hotLog);
    await close();
    expect((await write(first)).recorded).toEqual([first.id]);
  });

  it('does not take a log that fails for one that holds', async () => {
    await write(reading());
    const failing = await importOne(coolLog);
    expect(ProbeLog.parse(failing).judgements).toMatchObject([{ rule: 'gb-70c-2min', passes: false }]);
    await expect(close()).rejects.toEqual(refused('blocked'));
    await decideOn('cooked again');
    await expect(close()).rejects.toThrow(/no core log holds/);
    await importOne(hotLog);
    expect(await close()).toMatchObject({ status: 'closed' });
  });

  it('never closes as fit what was discarded or is kept back', async () => {
    await write(reading());
    await importOne(hotLog);
    await decideOn('kept back to ask');
    await expect(close()).rejects.toThrow(/kept back to ask/);
    await decideOn('cooked again');
    await decideOn('discarded');
    await expect(close()).rejects.toThrow(/only be closed as discarded/);
    await expect(close('discarded', ' ')).rejects.toEqual(refused('invalid'));
    expect(await close('discarded', 'Too long in the danger zone.')).toMatchObject({ status: 'discarded' });
  });

  it('takes core readings typed one by one as a log', async () => {
    await write(reading());
    const core = (min: number, C: number) =>
      reading({
        stepId: stepIds.cook,
        askId: askIds.core,
        value: C,
        at: new Date(Date.parse('2026-11-20T08:30:00Z') + min * 60_000).toISOString(),
      });
    await write(core(0, 71), core(1, 71));
    expect((await getBatch(k.app, k.kitchen.id, batch.id)).blocking.join()).toContain('no core log holds');
    await write(core(2, 71));
    expect((await getBatch(k.app, k.kitchen.id, batch.id)).blocking).toEqual([]);
  });

  it('keeps a probe log as it came, reads it itself, and judges it by the rules of its step whatever was asked', async () => {
    const id = uuid();
    const log = await importOne(hotLog, { id });
    expect(ProbeLog.parse(log)).toMatchObject({
      id,
      batchId: batch.id,
      dishId,
      channel: 'core',
      importedBy: 'Petra Invented',
    });
    expect(log.points[0]).toEqual({ s: 0, C: 5 });
    expect(log.points).toHaveLength(33);
    expect(log.judgements.map((j) => [j.rule, j.passes])).toEqual([['gb-70c-2min', true]]);
    const [row] = await k.app.store.session((s) =>
      s.query<{ original: string; sha256: string }>('SELECT original, sha256 FROM probe_log WHERE id = $1', [
        id,
      ]),
    );
    expect(row!.original).toBe(hotLog);
    expect(log.sha256).toBe(row!.sha256);
    expect(await importOne(hotLog, { id })).toEqual(log);
    await expect(importOne(coolLog, { id })).rejects.toEqual(refused('conflict'));
    expect((await listLogs(k.app, k.kitchen.id, dishId)).map((l) => l.id)).toContain(id);
  });

  it('refuses a file that is no log, a channel it does not have, a rule that is not in the book', async () => {
    await expect(importOne('Dear Petra,\nthe hearts will be late.\n')).rejects.toEqual(refused('invalid'));
    await expect(importOne(hotLog, { channel: 'oven' })).rejects.toMatchObject({
      code: 'invalid',
      problems: [{ path: 'channel' }],
    });
    await expect(importOne(hotLog, { rules: ['no-such-rule'] })).rejects.toEqual(refused('invalid'));
    await expect(importOne(hotLog, { stepId: uuid() })).rejects.toEqual(refused('invalid'));
    expect((await getBatch(k.app, k.kitchen.id, batch.id)).logs).toEqual([]);
  });

  it('says when a log can hardly be this batch’s: kept for another, or begun on another day', async () => {
    const mine = `${hotLog}36,${70.123456}\n`;
    const first = await importOne(mine);
    expect(first.warnings.join()).not.toContain('whose log');
    const code = batch.code;
    const other = await openBatch(k, version.id);
    const again = await importOne(mine, { batchId: other.id });
    expect(again.warnings).toContainEqual(expect.stringContaining(`was kept for batch ${code}`));
    const dated = (day: string) =>
      `time,core (°C)\n${[0, 1, 2].map((m) => `${day}T09:0${m}:00Z,80`).join('\n')}\n`;
    const old = await importOne(dated('2026-10-01'));
    expect(old.warnings).toContainEqual(expect.stringContaining('more than half a day before the batch'));
    const coming = await importOne(dated('2027-10-01'));
    expect(coming.warnings).toContainEqual(expect.stringContaining('yet to come'));
    const own = await importOne(dated('2026-11-20'));
    expect(own.warnings.join()).not.toContain('By its own clock');
  });

  it('lists the newest first with what is open and out', async () => {
    await write(reading({ value: 9 }));
    const [newest] = await listBatches(k.app, k.kitchen.id);
    expect(BatchSummary.parse(newest)).toMatchObject({ id: batch.id, open: 4, out: 1 });
  });

  it('is unknown to another kitchen', async () => {
    const other = await openKitchen(k.app);
    await expect(getBatch(other.app, other.kitchen.id, batch.id)).rejects.toEqual(refused('not_found'));
    await expect(record(other.app, other.actor, batch.id, { readings: [reading()] })).rejects.toEqual(
      refused('not_found'),
    );
    await expect(signVersion(other.app, other.actor, version.id, 0)).rejects.toEqual(refused('not_found'));
  });
});
