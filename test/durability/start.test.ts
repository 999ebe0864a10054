import { createHash } from 'node:crypto';
import fs from 'node:fs';
import net from 'node:net';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Kitchen, Person, Supplier } from '../../src/contract/records.ts';
import { lockByFile } from '../../src/store/folder-lock.ts';
import { readFolder } from '../../src/store/stamp.ts';
import { type Cluster, freePort, startCluster, urlOf } from '../database/cluster.ts';
import {
  call,
  clearAway,
  fromSource,
  type Running,
  refusedStart,
  startServer,
  temporaryFolder,
} from './server.ts';

afterAll(clearAway);

/** Everything in a folder: names, modes, contents. */
function printOf(folder: string): string {
  const hash = createHash('sha256');
  for (const entry of fs
    .readdirSync(folder, { recursive: true, withFileTypes: true })
    .sort((a, b) => (`${a.parentPath}/${a.name}` < `${b.parentPath}/${b.name}` ? -1 : 1))) {
    const file = path.join(entry.parentPath, entry.name);
    hash.update(`${file} ${fs.statSync(file).mode} `);
    if (entry.isFile()) hash.update(fs.readFileSync(file));
  }
  return hash.digest('hex');
}

describe('a folder of records', () => {
  const home = temporaryFolder();
  const data = path.join(home, 'kitchen');
  let server: Running;
  beforeAll(async () => {
    server = await startServer({ FQ_DATA: data });
  });
  afterAll(async () => {
    await server.kill();
  });
  const say = async (env: Record<string, string>) => {
    const end = await refusedStart(env);
    expect(end.code, end.out + end.err).toBe(1);
    expect(end.err.trim().split('\n'), end.err).toHaveLength(1);
    expect(end.err).not.toMatch(/\bat .*:\d+:\d+/);
    return end.err;
  };

  it('is closed to everybody else, whatever is in it', () => {
    expect(fs.statSync(data).mode & 0o777).toBe(0o700);
    const open = fs
      .readdirSync(data, { recursive: true, withFileTypes: true })
      .filter(
        (e) =>
          !e.isSymbolicLink() &&
          (fs.statSync(path.join(e.parentPath, e.name)).mode & 0o077) !== 0 &&
          e.isDirectory(),
      );
    expect(open).toEqual([]);
  });

  it('is served by one server: the second is told the folder and the process, and changes nothing', async () => {
    const message = await say({ FQ_DATA: data });
    expect(message).toContain(data);
    expect(message).toContain(`process ${server.child.pid}`);
    const link = path.join(home, 'link');
    fs.symlinkSync(data, link);
    expect(await say({ FQ_DATA: link })).toContain(`process ${server.child.pid}`);
    expect(await call(`${server.url}/api/health`, 'GET')).toMatchObject({
      ok: true,
      store: 'embedded',
      durable: true,
    });
  });

  it('stops cleanly when told to, and opens again with everything in it', async () => {
    const { kitchen, person } = await call<{ kitchen: Kitchen; person: Person }>(
      `${server.url}/api/kitchens`,
      'POST',
      {
        name: 'Kept',
        place: 'EU',
        zone: 'Europe/Paris',
        currency: 'EUR',
        units: 'metric',
        person: 'Petra Invented',
      },
    );
    const live = await fetch(`${server.url}/api/kitchens/${kitchen.id}/live`);
    const supplier = await call<Supplier>(
      `${server.url}/api/kitchens/${kitchen.id}/suppliers`,
      'POST',
      { name: 'S', note: '' },
      person.id,
    );
    expect(await server.stop()).toBe(0);
    await live.body?.cancel().catch(() => {});
    server = await startServer({ FQ_DATA: data });
    expect(await call(`${server.url}/api/kitchens/${kitchen.id}/suppliers`, 'GET')).toEqual([supplier]);
    expect(await call<Kitchen[]>(`${server.url}/api/kitchens`, 'GET')).toHaveLength(2);
  });

  it('lays the demo again without touching anybody’s own kitchen', async () => {
    const before = await call<Kitchen[]>(`${server.url}/api/kitchens`, 'GET');
    const laid = await call<Kitchen>(`${server.url}/api/demo/reset`, 'POST');
    const after = await call<Kitchen[]>(`${server.url}/api/kitchens`, 'GET');
    expect(laid.demo).toBe(true);
    expect(after.filter((k) => !k.demo)).toEqual(before.filter((k) => !k.demo));
    expect(after.filter((k) => k.demo).map((k) => k.id)).toEqual([laid.id]);
    const old = before.find((k) => k.demo)!;
    const people = await call<Person[]>(`${server.url}/api/kitchens/${old.id}/people`, 'GET');
    await expect(
      call(`${server.url}/api/kitchens/${old.id}/suppliers`, 'POST', { name: 'S', note: '' }, people[0]!.id),
    ).rejects.toThrow(/put away/);
  });

  it('is refused, untouched, when a newer program or another database wrote it, or its stamp is damaged or gone', async () => {
    await server.stop();
    const stamp = path.join(data, 'VERSION');
    const good = fs.readFileSync(stamp, 'utf8');
    const cases: [string | null, RegExp][] = [
      [JSON.stringify({ ...JSON.parse(good), program: '999.0.0' }), /written by Fifth Quarter 999\.0\.0/],
      [JSON.stringify({ ...JSON.parse(good), postgres: 19 }), /PostgreSQL 19/],
      ['{"program": "0.1', /damaged/],
      ['', /damaged/],
      [null, /VERSION file is missing/],
    ];
    for (const [text, expected] of cases) {
      if (text === null) fs.rmSync(stamp);
      else fs.writeFileSync(stamp, text);
      const before = printOf(data);
      expect(await say({ FQ_DATA: data })).toMatch(expected);
      expect(printOf(data), String(text)).toBe(before);
    }
    fs.writeFileSync(stamp, good);
    server = await startServer({ FQ_DATA: data });
  });

  it('is not made of a folder that is something else', async () => {
    const foreign = path.join(home, 'papers');
    fs.mkdirSync(foreign);
    fs.writeFileSync(path.join(foreign, 'letter.txt'), 'Dear Petra');
    expect(await say({ FQ_DATA: foreign })).toMatch(/not empty and is no data folder/);
    expect(fs.readdirSync(foreign)).toEqual(['letter.txt']);
    expect(await say({ FQ_DATA: path.join(foreign, 'letter.txt') })).toMatch(/is a file/);
  });

  it('takes no port that is taken and no address that others can reach', async () => {
    const port = await freePort();
    const holder = net.createServer().listen(port, '127.0.0.1');
    expect(await say({ FQ_DATA: path.join(home, 'elsewhere'), PORT: String(port) })).toContain(
      `Port ${port} is taken`,
    );
    holder.close();
    expect(await say({ FQ_DATA: path.join(home, 'elsewhere'), HOST: '0.0.0.0' })).toMatch(/no log-in yet/);
    expect(await say({ FQ_DATA: path.join(home, 'elsewhere'), PORT: 'http' })).toMatch(/is no port/);
  });

  it('keeps nothing of a message that is too large or breaks off', async () => {
    const [kitchen] = await call<Kitchen[]>(`${server.url}/api/kitchens`, 'GET');
    const [person] = await call<Person[]>(`${server.url}/api/kitchens/${kitchen!.id}/people`, 'GET');
    const lines = async () =>
      (await call<{ lines: number }>(`${server.url}/api/kitchens/${kitchen!.id}/journal/check`, 'GET')).lines;
    const before = await lines();
    const { port } = new URL(server.url);
    const send = (length: number, body: string) =>
      new Promise<string>((resolve) => {
        const socket = net.connect(Number(port), '127.0.0.1');
        let answer = '';
        socket.on('data', (data) => {
          answer += data.toString();
          if (answer.includes('\r\n\r\n')) socket.end();
        });
        socket.on('close', () => resolve(answer));
        socket.on('error', () => resolve(answer));
        socket.write(
          `POST /api/kitchens/${kitchen!.id}/logs HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nContent-Type: application/json\r\nX-Person: ${person!.id}\r\nContent-Length: ${length}\r\n\r\n${body}`,
        );
        if (length < 200_000_000) setTimeout(() => socket.destroy(), 200);
      });
    // Answered from its length alone: not one byte of the 200 MB was sent.
    expect(await send(200_000_000, '')).toMatch(/^HTTP\/1\.1 413 /);
    await send(1_000, '{"id":"');
    expect(await call(`${server.url}/api/health`, 'GET')).toMatchObject({ ok: true });
    expect(await lines()).toBe(before);
  });
});

describe('a PostgreSQL server', () => {
  let cluster: Cluster;
  beforeAll(async () => {
    cluster = await startCluster();
  });
  afterAll(() => cluster?.stop());
  const say = async (url: string) => {
    const end = await refusedStart({ DATABASE_URL: url });
    expect(end.code, end.out + end.err).toBe(1);
    expect(end.err.trim().split('\n'), end.err).toHaveLength(1);
    return end.err;
  };

  it('that cannot be used is named in one plain sentence, without its password', async () => {
    expect(await say('my database')).toMatch(/not a connection URL/);
    expect(await say('mysql://chef@127.0.0.1/kitchen')).toMatch(/begins with mysql:/);
    expect(await say(urlOf(await freePort(), 'kitchen'))).toMatch(
      /No PostgreSQL server answers at 127\.0\.0\.1/,
    );
    expect(await say('postgresql://chef:x@no-such-host.invalid/kitchen')).toMatch(/No host of that name/);
    const wrong = await say(urlOf(cluster.port, 'postgres', 'open-sesame'));
    expect(wrong).toMatch(/refuses the user or the password/);
    expect(wrong).not.toContain('open-sesame');
    expect(await say(urlOf(cluster.port, 'no_such_kitchen'))).toMatch(/no such database/);
  });

  it('that drops its connections is found again: nothing is acknowledged meanwhile, and changes are heard after', async () => {
    const DATABASE_URL = await cluster.createDatabase();
    const server = await startServer({ DATABASE_URL });
    const [kitchen] = await call<Kitchen[]>(`${server.url}/api/kitchens`, 'GET');
    const base = `${server.url}/api/kitchens/${kitchen!.id}`;
    const [person] = await call<Person[]>(`${base}/people`, 'GET');
    cluster.restart();
    const add = (name: string) =>
      fetch(`${base}/suppliers`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'x-person': person!.id },
        body: JSON.stringify({ name, note: '' }),
      });
    const acknowledged: string[] = [];
    const statuses = new Set<number>();
    for (let i = 0; i < 20; i++) {
      const { status } = await add(`S${i}`);
      statuses.add(status);
      if (status === 200) acknowledged.push(`S${i}`);
    }
    expect([...statuses].filter((s) => s !== 200 && s !== 503)).toEqual([]);
    const kept = (await call<Supplier[]>(`${base}/suppliers`, 'GET')).map((s) => s.name);
    expect(acknowledged.length).toBeGreaterThan(0);
    expect(acknowledged.filter((name) => !kept.includes(name))).toEqual([]);
    const live = await fetch(`${base}/live`);
    const reader = live.body!.getReader();
    let heard = '';
    const listening = (async () => {
      while (!heard.includes('"subject":"supplier"'))
        heard += new TextDecoder().decode((await reader.read()).value);
    })();
    for (let i = 0; i < 40 && !heard.includes('"subject":"supplier"'); i++) {
      await add(`Later ${i}`);
      await new Promise((resolve) => setTimeout(resolve, 250));
    }
    await listening;
    await reader.cancel();
    expect(await server.stop()).toBe(0);
  });

  it('serves several servers of one kitchen, each hearing the others', async () => {
    const DATABASE_URL = await cluster.createDatabase();
    const [one, two] = await Promise.all([startServer({ DATABASE_URL }), startServer({ DATABASE_URL })]);
    const kitchens = await call<Kitchen[]>(`${one.url}/api/kitchens`, 'GET');
    expect(kitchens).toHaveLength(1);
    expect(await call<Kitchen[]>(`${two.url}/api/kitchens`, 'GET')).toEqual(kitchens);
    const [person] = await call<Person[]>(`${one.url}/api/kitchens/${kitchens[0]!.id}/people`, 'GET');
    const live = await fetch(`${two.url}/api/kitchens/${kitchens[0]!.id}/live`);
    const reader = live.body!.getReader();
    await call(
      `${one.url}/api/kitchens/${kitchens[0]!.id}/suppliers`,
      'POST',
      { name: 'S', note: '' },
      person!.id,
    );
    let heard = '';
    while (!heard.includes('"subject":"supplier"'))
      heard += new TextDecoder().decode((await reader.read()).value);
    await reader.cancel();
    expect(await Promise.all([one.stop(), two.stop()])).toEqual([0, 0]);
  });
});

describe('lockByFile', () => {
  it('is met by a second taker and left behind by a process that is gone', async () => {
    const folder = temporaryFolder();
    const lock = await lockByFile(folder);
    await expect(lockByFile(folder)).rejects.toThrow(`process ${process.pid}`);
    await lock.release();
    fs.writeFileSync(
      path.join(folder, 'LOCK'),
      JSON.stringify({ pid: process.pid, started: 'another time' }),
    );
    const second = await lockByFile(folder);
    await second.release();
    fs.writeFileSync(path.join(folder, 'LOCK'), 'torn');
    await (await lockByFile(folder)).release();
    expect(fs.readdirSync(folder)).toEqual([]);
    expect(readFolder(folder, '0.1.0', 18)).toEqual({ state: 'new' });
  });
});

const sphere = {
  body: {
    shape: 'sphere',
    diameterMm: 30,
    layers: [{ name: 'meat', properties: { kWmK: 0.5, rhoKgM3: 1050, cpJkgK: 3500 } }],
  },
  startC: 5,
  stages: [{ name: 'water', mediumC: 90, hWm2K: 500, until: { min: 30 } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
};

describe.each([
  ['as it is shipped', undefined],
  ['from its sources', fromSource],
])('the server %s', (_, args) => {
  it('runs the engine in a thread of its own, refuses through it, and prints', async () => {
    const folder = temporaryFolder();
    const server = await startServer({ FQ_DATA: folder }, args);
    const cook = (input: unknown) =>
      call<{ lethality: { passes: boolean } }>(`${server.url}/api/cook`, 'POST', input);
    expect((await cook(sphere)).lethality.passes).toBe(true);
    await expect(cook({ ...sphere, startC: 'cold' })).rejects.toThrow(/400 .*startC/);
    const [kitchen] = await call<Kitchen[]>(`${server.url}/api/kitchens`, 'GET');
    const base = `${server.url}/api/kitchens/${kitchen!.id}`;
    const [first] = await call<{ id: string }[]>(`${base}/dishes`, 'GET');
    const dish = await call<{ current: { id: string } }>(`${base}/dishes/${first!.id}`, 'GET');
    const [batch] = await call<{ id: string }[]>(`${base}/batches`, 'GET');
    for (const path of [
      `versions/${dish.current.id}/method-card.pdf`,
      `batches/${batch!.id}/batch-record.pdf`,
    ]) {
      const printed = await fetch(`${base}/${path}`);
      expect([printed.status, printed.headers.get('content-type')], path).toEqual([200, 'application/pdf']);
      expect(
        Buffer.from(await printed.arrayBuffer())
          .subarray(0, 5)
          .toString(),
      ).toBe('%PDF-');
    }
    expect(await server.stop()).toBe(0);
  });
});
