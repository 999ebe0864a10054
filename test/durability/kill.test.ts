import { v7 as uuid } from 'uuid';
import { afterAll, expect, it } from 'vitest';
import type { Batch, Dish, Kitchen, Person, Version } from '../../src/contract/records.ts';
import { goodMethod, reading } from '../database/kitchen.ts';
import { call, clearAway, killedStart, startServer, temporaryFolder } from './server.ts';

afterAll(clearAway);

/** Repeatable moments: the same kills in every run (mulberry32). */
function moments(seed: number): () => number {
  let a = seed;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

it('loses no acknowledged reading in twenty kills, and starts again by itself each time', async () => {
  const env = { FQ_DATA: temporaryFolder() };
  const random = moments(20);
  let server = await startServer(env);
  const { kitchen, person } = await call<{ kitchen: Kitchen; person: Person }>(
    `${server.url}/api/kitchens`,
    'POST',
    {
      name: 'Killed',
      place: 'GB-ENG',
      zone: 'Europe/London',
      currency: 'GBP',
      units: 'metric',
      person: 'Petra Invented',
    },
  );
  const path = `/api/kitchens/${kitchen.id}`;
  const post = <T>(at: string, body: unknown) =>
    call<T>(`${server.url}${path}${at}`, 'POST', body, person.id);
  const dish = await post<Dish>('/dishes', {
    name: 'Heart',
    species: 'pig',
    part: 'heart',
    story: '',
    method: goodMethod(),
  });
  const version = await post<Version>(`/versions/${dish.current.id}/sign`, { rev: 0 });

  const batches: { id: string; acknowledged: string[]; sent: Set<string> }[] = [];
  for (let round = 0; round < 20; round++) {
    const batch = { id: uuid(), acknowledged: [] as string[], sent: new Set<string>() };
    batches.push(batch);
    await post<Batch>('/batches', { id: batch.id, versionId: version.id, pieces: 1, lotIds: [] });
    let dead: Promise<void> | undefined;
    for (;;) {
      const readings = Array.from({ length: 1 + Math.floor(random() * 3) }, () => reading());
      for (const one of readings) batch.sent.add(one.id);
      try {
        const { recorded } = await post<{ recorded: string[] }>(`/batches/${batch.id}/readings`, {
          readings,
        });
        batch.acknowledged.push(...recorded);
        // The clock runs from the first answer: a server that is still warming up has nothing to lose.
        dead ??= new Promise((resolve) =>
          setTimeout(() => void server.kill().then(resolve), 5 + random() * 500),
        );
      } catch {
        break;
      }
    }
    await dead;
    server = await startServer(env);
    const kept = await call<Batch>(`${server.url}${path}/batches/${batch.id}`, 'GET');
    const ids = new Set(kept.readings.map((r) => r.id));
    expect(
      batch.acknowledged.filter((id) => !ids.has(id)),
      `round ${round}: acknowledged and lost`,
    ).toEqual([]);
    expect(
      [...ids].filter((id) => !batch.sent.has(id)),
      `round ${round}: never sent`,
    ).toEqual([]);
  }
  const total = batches.reduce((sum, b) => sum + b.acknowledged.length, 0);
  expect(total).toBeGreaterThan(60);
  for (const batch of batches) {
    const kept = await call<Batch>(`${server.url}${path}/batches/${batch.id}`, 'GET');
    const ids = new Set(kept.readings.map((r) => r.id));
    expect(batch.acknowledged.every((id) => ids.has(id))).toBe(true);
  }
  expect(await call(`${server.url}${path}/journal/check`, 'GET')).toMatchObject({ holds: true });
  console.log(`${total} readings acknowledged over 20 kills, 0 lost`);
  expect(await server.stop()).toBe(0);
});

it('begins again after being killed in its very first start, wherever that was', async () => {
  const env = { FQ_DATA: temporaryFolder() };
  for (const after of [250, 700, 1200, 1800, 2500, 3300, 4200, 5200]) await killedStart(env, after);
  const server = await startServer(env);
  const kitchens = await call<Kitchen[]>(`${server.url}/api/kitchens`, 'GET');
  expect(kitchens.map((k) => k.demo)).toEqual([true]);
  expect(await call(`${server.url}/api/kitchens/${kitchens[0]!.id}/journal/check`, 'GET')).toMatchObject({
    holds: true,
  });
  expect(await server.stop()).toBe(0);
});
