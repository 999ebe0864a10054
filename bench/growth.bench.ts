/**
 * Times growth along a log of 24 h read every minute: the engine alone, and the whole verb from JSON to JSON.
 *
 *     npx tsx bench/growth.bench.ts [repeats]
 */
import { cpus } from 'node:os';
import { runGrow } from '../src/contract/grow.ts';
import { growthAlong } from '../src/core/microbes/growth.ts';
import { growthOrganisms } from '../src/core/properties/organisms-growth.ts';

const repeats = Number(process.argv[2] ?? 200);
const readings = Array.from({ length: 1440 }, (_, i) => ({ min: i, C: 4 + 56 * Math.exp(-i / 240) }));
const log = readings.map(({ min, C }) => ({ s: min * 60, C }));

/** Median and slowest of the repeats [ms]; the first call is told apart. */
function timed(what: () => unknown) {
  const times: number[] = [];
  for (let i = 0; i < repeats; i++) {
    const began = performance.now();
    what();
    times.push(performance.now() - began);
  }
  const [first] = times;
  times.sort((a, b) => a - b);
  return `first ${first?.toFixed(2)} ms, median ${times[times.length >> 1]?.toFixed(2)} ms, slowest ${times.at(-1)?.toFixed(2)} ms`;
}

console.log(
  `growth along 1,440 readings (${cpus()[0]?.model}, Node ${process.versions.node}), wanted ≤ 5 ms`,
);
for (const organism of growthOrganisms)
  for (const set of organism.sets) {
    const conditions = { pH: 6.3, waterActivity: 0.98, startLog10: 1 };
    console.log(`  ${organism.id} ${set.id}: ${timed(() => growthAlong(log, set, conditions))}`);
  }
const input = {
  organism: 'clostridium-perfringens',
  pH: 6.3,
  waterActivity: 0.98,
  log: readings,
  startLog10: 1,
};
console.log(`  the whole verb: ${timed(() => runGrow(input))}`);
