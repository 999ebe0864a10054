import { describe, expect, it } from 'vitest';
import { readSettings } from './settings.ts';

describe('readSettings', () => {
  it('serves this machine only, from ./data, on the first free port from 3000 to 3020', () => {
    const settings = readSettings({});
    expect(settings).toMatchObject({ host: '127.0.0.1', store: { dataDir: './data' } });
    expect([settings.ports[0], settings.ports.at(-1), settings.ports.length]).toEqual([3000, 3020, 21]);
  });

  it('takes exactly the port and the store it is given', () => {
    expect(readSettings({ PORT: '4100' }).ports).toEqual([4100]);
    expect(readSettings({ DATABASE_URL: 'postgresql://x/y', FQ_DATA: '/elsewhere' }).store).toEqual({
      url: 'postgresql://x/y',
    });
    expect(readSettings({ FQ_DATA: '/elsewhere' }).store).toEqual({ dataDir: '/elsewhere' });
  });

  it('refuses what would let others in, and what is no port', () => {
    for (const HOST of ['0.0.0.0', '::', '192.168.1.4', 'kitchen.local', ''])
      expect(() => readSettings({ HOST }), HOST).toThrow(/no log-in yet/);
    for (const PORT of ['-1', '65536', '3000.5', 'http', '0x10'])
      expect(() => readSettings({ PORT }), PORT).toThrow(/is no port/);
  });
});
