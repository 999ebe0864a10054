import { v7 as uuid } from 'uuid';
import { beforeAll, expect, it } from 'vitest';
import { addPerson } from '../../src/app/kitchens.ts';
import { importLog } from '../../src/app/logs.ts';
import { addMachine, keepFit, listFits, listMachines } from '../../src/app/machines.ts';
import { checkJournal, readJournal } from '../../src/app/proof.ts';
import { Machine, MachineFit } from '../../src/contract/machines.ts';
import { cook } from '../../src/core/heat/cook.ts';
import type { CookProblem } from '../../src/core/heat/types.ts';
import type { Store } from '../../src/store/store.ts';
import { appOn, coreLog, muscle, openKitchen, type TestKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

const refused = (code: string) => expect.objectContaining({ name: 'AppError', code });

const body = { shape: 'cylinder' as const, diameterMm: 50, layers: [{ name: 'meat', composition: muscle }] };
const stages = [{ name: 'steam', mediumC: 100, hWm2K: 600, until: { min: 40 } }];
const input = { body, startC: 5, stages, probe: { radiusMm: 10 }, fit: ['hWm2K' as const] };

/** What a probe would have read in a steamer of 180 W/(m² K), to a tenth of a degree. */
function steamerLog(): string {
  const times = Array.from({ length: 81 }, (_, i) => i * 30);
  const problem: CookProblem = {
    body: {
      shape: 'cylinder',
      diameter: 0.05,
      layers: [{ name: 'meat', material: { composition: muscle } }],
    },
    start: 5,
    stages: [{ name: 'steam', medium: 100, h: 180, until: { kind: 'time', s: 2400 } }],
    target: { reference: 70, z: 7.5, s: 120 },
    probes: [{ name: 'core', place: { radius: 0.01 } }],
  };
  const C = cook(problem, { at: times }).readings![0]!;
  return coreLog(times.map((s, i) => [s / 60, Math.round(C[i]! * 10) / 10] as const));
}

eachStore('machines', (making) => {
  let store: Store;
  let k: TestKitchen;
  let other: TestKitchen;
  let machine: Machine;
  let logId: string;
  const sql = (text: string) => store.session((s) => s.query(text, []));
  const log = async (of: TestKitchen, text = steamerLog()) => {
    const id = uuid();
    await importLog(of.app, of.actor, {
      id,
      batchId: null,
      trialId: null,
      dishId: null,
      stepId: null,
      name: 'Tuesday.csv',
      text,
      channel: 'core',
      correction: {},
      rules: [],
    });
    return id;
  };
  const keep = (more: object = {}) =>
    keepFit(k.app, k.actor, machine.id, { id: uuid(), logId, fromMin: 0, stage: 0, input, ...more });

  beforeAll(async () => {
    store = await making.fresh();
    const app = appOn(store);
    k = await openKitchen(app);
    other = await openKitchen(app);
    machine = await addMachine(k.app, k.actor, { name: 'Big steamer', medium: 'steam', note: 'Left wall.' });
    logId = await log(k);
  });

  it('are kept by name, once', async () => {
    expect(Machine.parse(machine)).toMatchObject({ name: 'Big steamer', fits: 0, latest: null });
    await expect(
      addMachine(k.app, k.actor, { name: 'Big steamer', medium: 'steam', note: '' }),
    ).rejects.toEqual(refused('conflict'));
    expect(await listMachines(other.app, other.kitchen.id)).toEqual([]);
    await addMachine(other.app, other.actor, { name: 'Big steamer', medium: 'steam', note: '' });
  });

  it('learn from a kept log, fitted here: the newest is offered, the history stays', async () => {
    const first = MachineFit.parse(await keep());
    expect(first.hWm2K.low95).toBeLessThan(180);
    expect(first.hWm2K.high95).toBeGreaterThan(180);
    expect(first).toMatchObject({
      logName: 'Tuesday.csv',
      stage: 'steam',
      by: 'Petra Invented',
      engine: k.app.version,
    });
    const second = await keep({ input: { ...input, fit: ['hWm2K', 'diffusivity'] } });
    expect(Object.keys(second.fitted)).toEqual(['hWm2K', 'diffusivity']);
    expect(second.inputSha256).not.toBe(first.inputSha256);
    expect((await listFits(k.app, k.kitchen.id, machine.id)).map((f) => f.id)).toEqual([second.id, first.id]);
    const [listed] = await listMachines(k.app, k.kitchen.id);
    expect(listed).toMatchObject({ fits: 2, latest: { id: second.id } });
    const [line] = await readJournal(k.app, k.kitchen.id, { limit: 1 });
    expect(line!.summary).toMatch(/^Big steamer: 1[78]\d W.*95 in 100 between .* from log Tuesday\.csv\.$/);
  });

  it('keep what is sent twice once, and not another under the same id', async () => {
    const id = uuid();
    const one = await keep({ id });
    expect(await keep({ id })).toEqual(one);
    const logs = await log(k);
    await expect(keep({ id, logId: logs })).rejects.toEqual(refused('conflict'));
  });

  it('keep nothing that the log does not tell, or that is no coefficient', async () => {
    const before = await listFits(k.app, k.kitchen.id, machine.id);
    await expect(keep({ stage: 1 })).rejects.toEqual(refused('invalid'));
    await expect(keep({ input: { ...input, fit: ['diffusivity'] } })).rejects.toEqual(refused('invalid'));
    await expect(
      keep({ input: { ...input, probe: { radiusMm: 0 }, fit: ['hWm2K', 'diffusivity', 'radiusMm'] } }),
    ).rejects.toEqual(refused('invalid'));
    await expect(keep({ fromMin: 300 })).rejects.toEqual(refused('invalid'));
    expect(await listFits(k.app, k.kitchen.id, machine.id)).toEqual(before);
  });

  it('are written by nobody of another kitchen, nor by an auditor, nor from another kitchen’s log', async () => {
    const auditor = await addPerson(k.app, k.actor, { name: 'Ada Invented', role: 'auditor' });
    const as = (personId: string, kitchenId = k.kitchen.id) => ({ kitchenId, personId });
    const asked = { id: uuid(), logId, fromMin: 0, stage: 0, input };
    await expect(keepFit(k.app, as(auditor.id), machine.id, asked)).rejects.toEqual(refused('forbidden'));
    await expect(addMachine(k.app, as(auditor.id), { name: 'M', medium: 'steam', note: '' })).rejects.toEqual(
      refused('forbidden'),
    );
    await expect(keepFit(k.app, as(other.person.id), machine.id, asked)).rejects.toEqual(refused('unsigned'));
    await expect(keepFit(k.app, as(other.person.id, other.kitchen.id), machine.id, asked)).rejects.toEqual(
      refused('not_found'),
    );
    await expect(keep({ logId: await log(other) })).rejects.toEqual(refused('not_found'));
    await expect(listFits(other.app, other.kitchen.id, machine.id)).rejects.toEqual(refused('not_found'));
  });

  it('have a history that the database itself only adds to, and that the journal vouches for', async () => {
    for (const change of [
      'UPDATE machine_fit SET rmse_c = 0',
      'DELETE FROM machine_fit',
      'TRUNCATE machine_fit CASCADE',
      'DELETE FROM machine',
    ])
      await expect(sql(change), change).rejects.toMatchObject({ code: 'FQ001' });
    expect(await checkJournal(k.app, k.kitchen.id)).toMatchObject({ holds: true });
    const behind = (change: string) =>
      store.session((s) =>
        s.script(`SET session_replication_role = replica; ${change}; SET session_replication_role = origin`),
      );
    await behind('UPDATE machine_fit SET from_min = from_min + 1');
    expect(await checkJournal(k.app, k.kitchen.id)).toMatchObject({ holds: false });
    await behind('UPDATE machine_fit SET from_min = from_min - 1');
    expect(await checkJournal(k.app, k.kitchen.id)).toMatchObject({ holds: true });
  });
});
