/**
 * Times a breakdown of 10,000 animals of twelve parts: the whole verb from JSON to JSON, and balance and cost of one deep tree.
 *
 *     npx tsx bench/carcass.bench.ts [repeats]
 */
import { cpus } from 'node:os';
import { runCarve } from '../src/contract/carve.ts';
import { jointCost } from '../src/core/carcass/joint-cost.ts';
import { type BreakdownNode, balanceOf, type Weighing } from '../src/core/carcass/mass-balance.ts';

const repeats = Number(process.argv[2] ?? 10);

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
  return `first ${first?.toFixed(1)} ms, median ${times[times.length >> 1]?.toFixed(1)} ms, slowest ${times.at(-1)?.toFixed(1)} ms`;
}

let state = 7;
/** Even numbers from 0 to 1, from a seed. */
const even = () => {
  state = (state * 48_271) % 2_147_483_647;
  return state / 2_147_483_647;
};
const names = Array.from({ length: 12 }, (_, i) => `part ${i + 1}`);
const animals = Array.from({ length: 10_000 }, (_, i) => ({
  dressedKg: 3.5 + even(),
  costTotal: Math.round(3000 + 1500 * even()) / 100,
  supplier: `supplier ${i % 4}`,
  cutter: `cutter ${i % 3}`,
  parts: names.map((part) => ({ part, kg: Math.round(200 + 60 * even()) / 1000 })),
}));
const values = Object.fromEntries(names.map((name, i) => [name, i]));
const text = JSON.stringify({ species: 'goose', animals, values });

const weighings: Weighing[] = [];
function grow(id: string, grams: number, level: number): BreakdownNode {
  weighings.push({ node: id, grams, accuracy: 0.5 });
  const children =
    level === 0
      ? []
      : Array.from({ length: 5 }, (_, i) => grow(`${id}/${i}`, Math.floor(grams / 5), level - 1));
  return { id, name: id, becomes: 'part', ...(children.length > 0 ? { children } : {}) };
}
const tree = grow('whole', 5_000_000, 5);

console.log(
  `breakdowns (${cpus()[0]?.model}, Node ${process.versions.node}); ${(text.length / 1e6).toFixed(1)} MB of JSON`,
);
console.log(`  10,000 animals of 12 parts, the whole verb: ${timed(() => runCarve(JSON.parse(text)))}`);
console.log(`  a tree of ${weighings.length} pieces, balance: ${timed(() => balanceOf(tree, weighings))}`);
const balanced = balanceOf(tree, weighings);
console.log(`  the same, cost by weight: ${timed(() => jointCost(balanced, 12_345_678, { by: 'weight' }))}`);
