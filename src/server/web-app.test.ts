import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { Hono } from 'hono';
import { afterAll, describe, expect, it } from 'vitest';
import { webRoutes } from './web-app.ts';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'fifth-quarter-web-'));
fs.mkdirSync(path.join(folder, 'web', 'assets'), { recursive: true });
fs.writeFileSync(path.join(folder, 'web', 'index.html'), '<!doctype html><title>page</title>');
fs.writeFileSync(path.join(folder, 'web', 'assets', 'main-a1B2c3D4.js'), 'export {};');
fs.writeFileSync(path.join(folder, 'web', 'sw.js'), '// worker');
fs.writeFileSync(path.join(folder, 'secret.txt'), 'secret');
afterAll(() => fs.rmSync(folder, { recursive: true }));

describe('webRoutes', () => {
  const http = new Hono();
  let there = false;
  webRoutes(http, () => (there ? path.join(folder, 'web') : null));
  const get = async (at: string) => {
    const response = await http.request(at);
    return {
      status: response.status,
      cache: response.headers.get('cache-control'),
      text: await response.text(),
    };
  };

  it('says that the web app is not built, until it is', async () => {
    expect((await get('/')).status).toBe(503);
    there = true;
    expect(await get('/')).toMatchObject({ status: 200, cache: 'no-cache' });
  });

  it('gives the page for every address of the web app', async () => {
    expect(await get('/k/1/dishes/2')).toMatchObject({
      status: 200,
      cache: 'no-cache',
      text: expect.stringContaining('<title>page'),
    });
  });

  it('keeps files named after their contents for ever, and no others', async () => {
    expect((await get('/assets/main-a1B2c3D4.js')).cache).toContain('immutable');
    expect((await get('/sw.js')).cache).toBe('no-cache');
    expect((await get('/assets/gone-a1B2c3D4.js')).status).toBe(404);
  });

  it('gives nothing from outside its folder', async () => {
    for (const at of [
      '/../secret.txt',
      '/%2e%2e/secret.txt',
      '/..%2fsecret.txt',
      '/assets/..%5c..%5csecret.txt',
      '/%2e%2e%2fsecret.txt',
    ])
      expect((await get(at)).text, at).not.toContain('secret');
  });
});
