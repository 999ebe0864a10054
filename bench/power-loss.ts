/**
 * Power loss, as nearly as one machine can play it: the store on a file system of its own, the server frozen while it
 * takes readings, the disk copied as it then is (so with what was never told to reach it missing), the copy mounted
 * and opened. Every acknowledged reading must be there. A file written without a sync is laid beside the store each
 * round: if it survived, the play would prove nothing. Needs Linux, root and loop devices:
 *
 *     node scripts/build.mjs && npx tsx bench/power-loss.ts [rounds]
 */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { v7 as uuid } from 'uuid';
import type { Batch, Dish, Kitchen, Person, Version } from '../src/contract/records.ts';
import { goodMethod, reading } from '../test/database/kitchen.ts';
import { call, startServer } from '../test/durability/server.ts';

const rounds = Number(process.argv[2] ?? 10);
const main = [fileURLToPath(new URL('../dist/server/main.js', import.meta.url))];
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'fifth-quarter-power-'));
const at = (name: string) => path.join(folder, name);
const sh = (command: string, ...args: string[]) =>
  execFileSync(command, args, { stdio: ['ignore', 'ignore', 'inherit'] });
for (const name of ['live', 'copy']) fs.mkdirSync(at(name));

let acknowledgedInAll = 0;
let lostInAll = 0;
let unsyncedKept = 0;
let opened = 0;
for (let round = 0; round < rounds; round++) {
  sh('dd', 'if=/dev/zero', `of=${at('disk')}`, 'bs=1M', 'count=500', 'status=none');
  sh('mkfs.ext4', '-q', at('disk'));
  sh('mount', '-o', 'loop', at('disk'), at('live'));
  const server = await startServer({ FQ_DATA: at('live/data') }, main);
  const begun = await call<{ kitchen: Kitchen; person: Person }>(`${server.url}/api/kitchens`, 'POST', {
    name: 'In the dark',
    place: 'GB-ENG',
    zone: 'Europe/London',
    currency: 'GBP',
    units: 'metric',
    person: 'Petra Invented',
  });
  const route = `/api/kitchens/${begun.kitchen.id}`;
  const post = <T>(to: string, body: unknown) =>
    call<T>(`${server.url}${route}${to}`, 'POST', body, begun.person.id);
  const dish = await post<Dish>('/dishes', {
    name: 'Heart',
    species: 'pig',
    part: 'heart',
    story: '',
    method: goodMethod(),
  });
  const version = await post<Version>(`/versions/${dish.current.id}/sign`, { rev: 0 });
  const batchId = uuid();
  await post<Batch>('/batches', { id: batchId, versionId: version.id, pieces: 1, lotIds: [] });
  const acknowledged: string[] = [];
  const until = Date.now() + 500 + Math.random() * 2500;
  while (Date.now() < until) {
    const { recorded } = await post<{ recorded: string[] }>(`/batches/${batchId}/readings`, {
      readings: [reading()],
    });
    acknowledged.push(...recorded);
  }
  fs.writeFileSync(at('live/unsynced'), 'x'.repeat(65_536));
  process.kill(server.child.pid as number, 'SIGSTOP');
  fs.copyFileSync(at('disk'), at('cut'));
  await server.kill();
  sh('umount', at('live'));

  sh('mount', '-o', 'loop', at('cut'), at('copy'));
  const unsynced = at('copy/unsynced');
  if (fs.existsSync(unsynced) && fs.readFileSync(unsynced, 'utf8').includes('x')) unsyncedKept++;
  const again = await startServer({ FQ_DATA: at('copy/data') }, main);
  opened++;
  const kept = await call<Batch>(`${again.url}${route}/batches/${batchId}`, 'GET');
  const ids = new Set(kept.readings.map((r) => r.id));
  const lost = acknowledged.filter((id) => !ids.has(id)).length;
  const { holds } = await call<{ holds: boolean }>(`${again.url}${route}/journal/check`, 'GET');
  console.log(
    `  round ${round + 1}: ${acknowledged.length} acknowledged, ${lost} lost, journal ${holds ? 'holds' : 'BROKEN'}`,
  );
  acknowledgedInAll += acknowledged.length;
  lostInAll += lost;
  await again.stop();
  sh('umount', at('copy'));
}
fs.rmSync(folder, { recursive: true, force: true });
console.log(
  `power loss: ${acknowledgedInAll} acknowledged in ${rounds} rounds, ${lostInAll} lost, opened ${opened} of ${rounds}`,
);
console.log(
  `  a file never synced was whole after ${unsyncedKept} of ${rounds} (the play discriminates only if this is few)`,
);
process.exitCode = lostInAll === 0 && opened === rounds && unsyncedKept < rounds ? 0 : 1;
