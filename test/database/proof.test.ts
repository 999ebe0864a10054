import { v7 as uuid } from 'uuid';
import { beforeAll, expect, it } from 'vitest';
import { openChanges } from '../../src/app/changes.ts';
import { importLog } from '../../src/app/logs.ts';
import { checkJournal, readJournal } from '../../src/app/proof.ts';
import { decide, record } from '../../src/app/readings.ts';
import type { Change } from '../../src/contract/operations.ts';
import { JournalLine } from '../../src/contract/records.ts';
import type { Store } from '../../src/store/store.ts';
import {
  appOn,
  hotLog,
  openBatch,
  openKitchen,
  reading,
  signedDish,
  stepIds,
  type TestKitchen,
} from './kitchen.ts';
import { eachStore } from './stores.ts';

eachStore('the journal', (making) => {
  let store: Store;
  let k: TestKitchen;
  let batchId: string;
  const sql = (text: string, values: unknown[] = []) => store.session((s) => s.query(text, values));
  beforeAll(async () => {
    store = await making.fresh();
    k = await openKitchen(appOn(store));
    const { version } = await signedDish(k);
    batchId = (await openBatch(k, version.id)).id;
    await record(k.app, k.actor, batchId, {
      readings: [reading({ value: 9, note: 'é “x” \u2028 0' }), reading({ value: 0.1 + 0.2 })],
    });
    await decide(k.app, k.actor, batchId, {
      id: uuid(),
      stepId: stepIds.trim,
      askId: null,
      what: 'chilled faster',
      reason: 'Warm.',
      at: '2026-11-20T09:00:00.000Z',
    });
    await importLog(k.app, k.actor, {
      id: uuid(),
      batchId,
      trialId: null,
      dishId: null,
      stepId: stepIds.cook,
      name: 'p',
      text: hotLog,
      channel: 'core',
      correction: {},
      rules: [],
    });
  });

  it('has a line for everything that was done, newest first, by pages', async () => {
    const lines = await readJournal(k.app, k.kitchen.id, {});
    expect(lines.map((l) => JournalLine.parse(l).action)).toEqual([
      'kept',
      'decided',
      'recorded',
      'started',
      'signed',
      'began',
      'set up',
    ]);
    expect(lines.map((l) => l.seq)).toEqual([7, 6, 5, 4, 3, 2, 1]);
    expect((await readJournal(k.app, k.kitchen.id, { before: 4, limit: 2 })).map((l) => l.seq)).toEqual([
      3, 2,
    ]);
    expect(lines[2]!.summary).toContain('Trim: Arrival, 9 °C');
  });

  it('holds as it was written', async () => {
    expect(await checkJournal(k.app, k.kitchen.id)).toMatchObject({ lines: 7, holds: true, brokenAt: null });
  });

  it('stays whole when many write at once', async () => {
    await Promise.all(
      Array.from({ length: 12 }, () => record(k.app, k.actor, batchId, { readings: [reading()] })),
    );
    expect(await checkJournal(k.app, k.kitchen.id)).toMatchObject({ lines: 19, holds: true });
  });

  it('is refused by the database itself to be changed, emptied or shortened, and so are the records', async () => {
    for (const table of ['journal', 'reading', 'decision', 'probe_log', 'version_save']) {
      const column = table === 'journal' ? 'summary' : table === 'version_save' ? 'rev' : 'kitchen_id';
      await expect(sql(`UPDATE ${table} SET ${column} = ${column}`), `UPDATE ${table}`).rejects.toMatchObject(
        { code: 'FQ001' },
      );
      await expect(sql(`DELETE FROM ${table}`), `DELETE ${table}`).rejects.toMatchObject({ code: 'FQ001' });
      await expect(sql(`TRUNCATE ${table} CASCADE`), `TRUNCATE ${table}`).rejects.toMatchObject({
        code: 'FQ001',
      });
    }
    for (const table of ['version', 'batch', 'batch_lot', 'trial', 'kitchen'])
      if ((await sql(`SELECT 1 FROM ${table} LIMIT 1`)).length > 0)
        await expect(sql(`DELETE FROM ${table}`), `DELETE ${table}`).rejects.toMatchObject({ code: 'FQ001' });
  });

  /** Does what only somebody with the database's own keys can do, looks whether it is found, and puts it back. */
  const tamper = async (change: string, undo: string) => {
    await store.session((s) =>
      s.script(`SET session_replication_role = replica; ${change}; SET session_replication_role = origin`),
    );
    const found = await checkJournal(k.app, k.kitchen.id);
    await store.session((s) =>
      s.script(`SET session_replication_role = replica; ${undo}; SET session_replication_role = origin`),
    );
    expect(await checkJournal(k.app, k.kitchen.id)).toMatchObject({ holds: true });
    return found;
  };

  it('shows a changed line, a line taken out, and lines cut off the end', async () => {
    const id = k.kitchen.id;
    expect(
      await tamper(
        `UPDATE journal SET summary = summary || '!' WHERE seq = 5 AND kitchen_id = '${id}'`,
        `UPDATE journal SET summary = left(summary, -1) WHERE seq = 5 AND kitchen_id = '${id}'`,
      ),
    ).toMatchObject({ holds: false, brokenAt: 5 });
    expect(
      await tamper(
        `UPDATE journal SET at = at + interval '1 hour' WHERE seq = 2`,
        `UPDATE journal SET at = at - interval '1 hour' WHERE seq = 2`,
      ),
    ).toMatchObject({ holds: false, brokenAt: 2 });
    expect(
      await tamper(
        `UPDATE journal SET seq = -seq + 1000 WHERE seq = 6`,
        `UPDATE journal SET seq = 6 WHERE seq = 994`,
      ),
    ).toMatchObject({ holds: false, brokenAt: 6 });
    expect(
      await tamper(
        `UPDATE journal SET kitchen_id = '${uuid()}' WHERE seq = 19`,
        `UPDATE journal SET kitchen_id = '${id}' WHERE seq = 19`,
      ),
    ).toMatchObject({ holds: false, brokenAt: 19 });
  });

  it('shows a record that was changed behind it, taken away, or slipped in', async () => {
    expect(
      await tamper(
        'UPDATE reading SET value = 2 WHERE value = 9',
        "UPDATE reading SET value = 9 WHERE note <> ''",
      ),
    ).toMatchObject({ holds: false, brokenAt: 5 });
    expect(
      await tamper("UPDATE decision SET what = 'discarded'", "UPDATE decision SET what = 'chilled faster'"),
    ).toMatchObject({ holds: false, brokenAt: 6 });
    expect(
      await tamper(
        "UPDATE probe_log SET judgements = '[]'::jsonb || judgements || '[1]'::jsonb",
        'UPDATE probe_log SET judgements = judgements - 1',
      ),
    ).toMatchObject({ holds: false, brokenAt: 7 });
    expect(
      await tamper(
        'UPDATE version SET method = method - 1 || (method -> 0)',
        'UPDATE version SET method = (SELECT method FROM version_save WHERE version_id = version.id)',
      ),
    ).toMatchObject({ holds: false, brokenAt: 3 });
    expect(
      await tamper('UPDATE batch SET pieces = pieces + 1', 'UPDATE batch SET pieces = pieces - 1'),
    ).toMatchObject({ holds: false, brokenAt: 4 });
    expect(
      await tamper(
        "UPDATE batch SET status = 'closed', closed_at = started_at, closed_by = started_by, closing_note = ''",
        "UPDATE batch SET status = 'open', closed_at = NULL, closed_by = NULL, closing_note = NULL",
      ),
    ).toMatchObject({ holds: false });
    const slipped = uuid();
    expect(
      await tamper(
        `INSERT INTO reading (id, kitchen_id, batch_id, step_id, ask_id, kind, value, note, at, person_id, recorded_at, holds) SELECT '${slipped}', kitchen_id, batch_id, step_id, ask_id, kind, value, note, at, person_id, recorded_at, holds FROM reading LIMIT 1`,
        `DELETE FROM reading WHERE id = '${slipped}'`,
      ),
    ).toMatchObject({ holds: false, brokenAt: 20 });
  });

  it('is one chain for each kitchen', async () => {
    const other = await openKitchen(k.app);
    expect(await readJournal(other.app, other.kitchen.id, {})).toHaveLength(1);
    expect(await checkJournal(other.app, other.kitchen.id)).toMatchObject({ lines: 1, holds: true });
  });

  it('announces a change after its commit to who follows that kitchen, and to nobody else', async () => {
    const changes = await openChanges(store);
    const heard: Change[] = [];
    const elsewhere: Change[] = [];
    changes.follow(k.kitchen.id, (c) => heard.push(c));
    const stop = changes.follow(uuid(), (c) => elsewhere.push(c));
    const before = (await readJournal(k.app, k.kitchen.id, { limit: 1 }))[0]!.seq;
    await record(k.app, k.actor, batchId, { readings: [reading()] });
    await expect(
      record(k.app, k.actor, batchId, { readings: [reading({ kind: 'weight' })] }),
    ).rejects.toThrow();
    for (let i = 0; i < 100 && heard.length === 0; i++)
      await new Promise((resolve) => setTimeout(resolve, 20));
    expect(heard).toEqual([{ subject: 'batch', subjectId: batchId, seq: before + 1 }]);
    expect(elsewhere).toEqual([]);
    stop();
    await changes.close();
  });
});
