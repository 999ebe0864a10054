import { v7 as uuid } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Changes, openChanges } from '../../src/app/changes.ts';
import { addMachine } from '../../src/app/machines.ts';
import { ApiError, type OperationName, operations } from '../../src/contract/operations.ts';
import { openApi } from '../../src/server/api-docs.ts';
import { openHttp } from '../../src/server/http.ts';
import { oneOfEach } from './animals.ts';
import { appOn, coolLog, openBatch, openKitchen, reading, signedDish, type TestKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

eachStore('the API', (making) => {
  let k: TestKitchen;
  let changes: Changes;
  let http: ReturnType<typeof openHttp>['http'];
  let batchId: string;
  let versionId: string;
  beforeAll(async () => {
    const app = appOn(await making.fresh());
    k = await openKitchen(app);
    const { version } = await signedDish(k);
    versionId = version.id;
    batchId = (await openBatch(k, version.id)).id;
    changes = await openChanges(app.store);
    const made = openHttp({
      app,
      changes,
      checkAnswers: true,
      print: async () => new Uint8Array([37, 80, 68, 70]),
      resetDemo: async () => k.kitchen,
    });
    http = made.http;
  });
  afterAll(() => changes.close());

  const base = () => `/api/kitchens/${k.kitchen.id}`;
  const ask = async (
    path: string,
    init: {
      method?: string;
      body?: unknown;
      headers?: Record<string, string>;
      raw?: string | Uint8Array<ArrayBuffer>;
    } = {},
  ) => {
    const { method = init.body === undefined && init.raw === undefined ? 'GET' : 'POST', body, raw } = init;
    const response = await http.request(`http://127.0.0.1:3000${path}`, {
      method,
      headers: {
        host: '127.0.0.1:3000',
        'content-type': 'application/json',
        'x-person': k.person.id,
        ...init.headers,
      },
      ...(raw !== undefined ? { body: raw } : body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    return {
      status: response.status,
      headers: response.headers,
      json: (await response.json().catch(() => null)) as Record<string, unknown> & {
        code?: string;
        problems?: { path: string }[];
      },
    };
  };

  it('answers every operation that reads, in the shape of the contract', async () => {
    const dishId = ((await ask(`${base()}/dishes`)).json as unknown as { id: string }[])[0]!.id;
    const ids: Record<string, string> = {
      kitchenId: k.kitchen.id,
      dishId,
      versionId,
      batchId,
      ...(await oneOfEach(k)),
      machineId: (await addMachine(k.app, k.actor, { name: 'Steamer', medium: 'steam', note: '' })).id,
    };
    const read = Object.entries(operations).filter(([, o]) => o.method === 'GET');
    expect(read.length).toBeGreaterThan(12);
    for (const [name, operation] of read) {
      const path = operation.path.replace(/:(\w+)/g, (_, key: string) => ids[key] ?? '');
      const query = name === 'logs' ? `?dishId=${dishId}` : name === 'yields' ? '?species=goose' : '';
      const { status, json, headers } = await ask(path + query);
      expect(status, `${name}: ${JSON.stringify(json)}`).toBe(200);
      expect(() => operation.result.parse(json)).not.toThrow();
      expect(headers.get('cache-control')).toBe('no-store');
    }
  });

  it('records over HTTP and says what is wrong, by meaning', async () => {
    const one = reading();
    const good = await ask(`${base()}/batches/${batchId}/readings`, { body: { readings: [one] } });
    expect(good).toMatchObject({ status: 200, json: { recorded: [one.id] } });
    const cases: [number, string, string, Parameters<typeof ask>[1]][] = [
      [404, 'not_found', `/api/kitchens/${uuid()}/dishes`, {}],
      [404, 'not_found', '/api/kitchens/nonsense/dishes', {}],
      [404, 'not_found', '/api/nothing', {}],
      [404, 'not_found', `${base()}/batches/${uuid()}`, {}],
      [
        401,
        'unsigned',
        `${base()}/suppliers`,
        { body: { name: 'S', note: '' }, headers: { 'x-person': '' } },
      ],
      [
        401,
        'unsigned',
        `${base()}/suppliers`,
        { body: { name: 'S', note: '' }, headers: { 'x-person': uuid() } },
      ],
      [400, 'invalid', `${base()}/suppliers`, { body: { name: '', note: '' } }],
      [
        409,
        'conflict',
        `${base()}/batches/${batchId}/readings`,
        { body: { readings: [{ ...one, value: 1 }] } },
      ],
      [409, 'frozen', `${base()}/versions/${versionId}`, { method: 'PUT', body: { rev: 0, method: [] } }],
      [409, 'blocked', `${base()}/batches/${batchId}/close`, { body: { as: 'closed', note: '' } }],
      [400, 'invalid', '/api/judge', { body: { log: [], rules: ['gb-70c-2min'] } }],
      [400, 'invalid', '/api/cook', { body: { body: { shape: 'cube' } } }],
      [
        413,
        'too_large',
        `${base()}/suppliers`,
        { raw: JSON.stringify({ name: 'S', note: 'x'.repeat(2.2e6) }) },
      ],
      [413, 'too_large', `${base()}/logs`, { raw: '{', headers: { 'content-length': '200000000' } }],
    ];
    for (const [status, code, path, init] of cases) {
      const got = await ask(path, init);
      expect([got.status, got.json?.code], `${path} ${JSON.stringify(got.json)}`).toEqual([status, code]);
      expect(() => ApiError.parse(got.json)).not.toThrow();
    }
    const bad = await ask(`${base()}/suppliers`, { body: { name: 7, colour: 'red' } });
    expect(bad.json.problems?.map((p) => p.path).sort()).toEqual(['colour', 'name', 'note']);
  });

  it('never answers a malformed message with a fault', async () => {
    const writes = (
      Object.entries(operations) as [OperationName, (typeof operations)[OperationName]][]
    ).filter(([name, o]) => o.method !== 'GET' && name !== 'resetDemo');
    const bodies: (string | Uint8Array<ArrayBuffer>)[] = [
      '',
      '{',
      'null',
      '[]',
      '"x"',
      '{"a":',
      '\u0000',
      '{"name":"\\u0000"}',
      '{"name":"\\ud800"}',
      `{"x":${'['.repeat(500)}${']'.repeat(500)}}`,
      new Uint8Array([0xff, 0xfe, 0x7b]),
      '{"__proto__":{"a":1}}',
      '1e999',
    ];
    for (const [name, operation] of writes) {
      const path = operation.path.replace(/:kitchenId/, k.kitchen.id).replace(/:\w+/g, batchId);
      for (const raw of bodies) {
        const got = await ask(path, { method: operation.method, raw });
        expect(got.status, `${name} ${String(raw).slice(0, 30)}`).toBeGreaterThanOrEqual(400);
        expect(got.status, `${name} ${String(raw).slice(0, 30)} ${JSON.stringify(got.json)}`).toBeLessThan(
          500,
        );
      }
      const typed = await ask(path, {
        method: operation.method,
        raw: '{}',
        headers: { 'content-type': 'text/plain' },
      });
      expect(typed.status, name).toBe(400);
    }
  });

  it('keeps what the schema lets through but the database would not', async () => {
    const at = await ask(`${base()}/batches/${batchId}/readings`, {
      body: { readings: [reading({ at: '0000-01-01T00:00:00Z' })] },
    });
    expect(at.status, JSON.stringify(at.json)).toBeLessThan(500);
    const upper = reading();
    const sent = await ask(`${base()}/batches/${batchId}/readings`, {
      body: { readings: [{ ...upper, id: upper.id.toUpperCase(), stepId: upper.stepId.toUpperCase() }] },
    });
    expect(sent).toMatchObject({ status: 200, json: { recorded: [upper.id] } });
    const words = { name: "Ω “quoted” \\ ' ; DROP TABLE reading; --", note: '\u2028\n\t😀' };
    expect((await ask(`${base()}/suppliers`, { body: words })).json).toMatchObject(words);
  });

  it('takes a probe log and refuses what is none', async () => {
    const log = {
      id: uuid(),
      batchId,
      trialId: null,
      dishId: null,
      stepId: null,
      name: 'p.csv',
      text: coolLog,
      channel: 'core',
      correction: {},
      rules: ['gb-70c-2min'],
    };
    expect(await ask(`${base()}/logs`, { body: log })).toMatchObject({
      status: 200,
      json: { judgements: [{ passes: false }] },
    });
    expect((await ask(`${base()}/logs`, { body: { ...log, id: uuid(), text: 'nothing' } })).status).toBe(400);
    for (const correction of [
      { delimiter: 7 },
      { timeColumn: -1 },
      { channels: 'x' },
      { zone: 'Nowhere' },
      { firstDataLine: 1e9 },
      { nonsense: true },
    ]) {
      const got = await ask(`${base()}/logs`, { body: { ...log, id: uuid(), correction } });
      expect(got.status, JSON.stringify([correction, got.json])).toBeLessThan(500);
    }
  });

  it('answers only to its own name and lets only its own pages write', async () => {
    const path = `${base()}/suppliers`;
    const body = { name: 'S', note: '' };
    expect((await ask('/api/health', { headers: { host: 'evil.example' } })).status).toBe(403);
    expect((await ask('/', { headers: { host: 'evil.example:3000' } })).status).toBe(403);
    expect((await ask('/api/health', { headers: { host: 'localhost:5173' } })).status).toBe(200);
    const from = async (headers: Record<string, string>) => (await ask(path, { body, headers })).status;
    expect(await from({ origin: 'https://evil.example' })).toBe(403);
    expect(await from({ origin: 'null' })).toBe(403);
    expect(await from({ origin: 'http://127.0.0.1:9999' })).toBe(403);
    expect(await from({ 'sec-fetch-site': 'cross-site' })).toBe(403);
    expect(await from({ 'sec-fetch-site': 'same-site', origin: 'http://127.0.0.1:3000' })).toBe(403);
    expect(await from({ 'sec-fetch-site': 'same-origin', origin: 'http://127.0.0.1:3000' })).toBe(200);
    expect(await from({ origin: 'http://127.0.0.1:3000' })).toBe(200);
    expect(await from({})).toBe(200);
  });

  it('sends the headers that keep other people’s code out', async () => {
    const { headers } = await ask('/api/health');
    const policy = headers.get('content-security-policy') ?? '';
    expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval'");
    expect(policy.match(/script-src[^;]*/)?.[0]).not.toContain('unsafe-inline');
    expect(policy).toContain("frame-ancestors 'none'");
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('access-control-allow-origin')).toBeNull();
  });

  it('streams committed changes of one kitchen', async () => {
    const response = await http.request(`http://127.0.0.1:3000${base()}/live`, {
      headers: { host: '127.0.0.1' },
    });
    expect(response.headers.get('content-type')).toContain('text/event-stream');
    const reader = response.body!.getReader();
    const decoder = new TextDecoder();
    let text = '';
    const until = async (what: string) => {
      while (!text.includes(what)) {
        const { value, done } = await reader.read();
        if (done) throw new Error(`the stream ended with ${text}`);
        text += decoder.decode(value);
      }
    };
    await until('event: open');
    await ask(`${base()}/people`, { body: { name: 'New Invented', role: 'cook' } });
    await until('"subject":"person"');
    await reader.cancel();
    expect((await ask(`/api/kitchens/${uuid()}/live`)).status).toBe(404);
  });
});

describe('openApi', () => {
  it('holds every operation with its bodies and answers', () => {
    const document = openApi('1.2.3') as {
      paths: Record<
        string,
        Record<string, { operationId: string; requestBody?: object; parameters: { name: string }[] }>
      >;
    };
    const found = Object.values(document.paths).flatMap((path) => Object.values(path));
    expect(found.map((o) => o.operationId).sort()).toEqual(Object.keys(operations).sort());
    for (const [name, operation] of Object.entries(operations)) {
      const entry = found.find((o) => o.operationId === name)!;
      expect(entry.requestBody !== undefined, name).toBe('body' in operation);
      expect(
        entry.parameters.some((p) => p.name === 'X-Person'),
        name,
      ).toBe('signed' in operation);
    }
    expect(JSON.stringify(document)).toContain('"saltPct"');
  });
});
