/**
 * Times a mix of 60 ingredients made cheapest, then least changed: in any weight, in steps of a scale, and one that is impossible.
 *
 *     npx tsx bench/formulate.bench.ts [repeats]
 */
import { cpus, loadavg } from 'node:os';
import { loadSolver } from '../src/contract/solver.ts';
import { nutrients } from '../src/core/filling/food.ts';
import { formulate } from '../src/core/filling/formulate.ts';
import type { Choosable, MixProblem, Quantity } from '../src/core/filling/formulate-model.ts';

const repeats = Number(process.argv[2] ?? 10);
let state = 11;
/** Even numbers from 0 to 1, from a seed. */
const even = () => {
  state = (state * 48_271) % 2_147_483_647;
  return state / 2_147_483_647;
};

function ingredient(i: number): Choosable {
  const parts = [even() ** 2, even() ** 2, even() ** 2];
  const sum = parts.reduce((s, p) => s + p, 0) / 0.99;
  const has: Partial<Record<(typeof nutrients)[number], number>> = {
    water: parts[0]! / sum,
    protein: parts[1]! / sum,
    fat: parts[2]! / sum,
    salt: 0.01 * even(),
  };
  return {
    id: String(i),
    name: `food ${i}`,
    per: {
      mass: 1,
      nutrients: Object.fromEntries(
        nutrients.map((n) => [n, { known: has[n] ?? 0, unknown: 0 }]),
      ) as Choosable['per']['nutrients'],
      cost: { known: Math.round(100 + 2900 * even()), unknown: 0 },
    },
    low: 0,
    high: 0.05 + 0.3 * even(),
    now: even() / 20,
  };
}
const ingredients = Array.from({ length: 60 }, (_, i) => ingredient(i));
const share = (nutrient: 'fat' | 'protein' | 'salt'): Quantity => ({ of: 'nutrient', nutrient });
const mix = (fatLow: number, step?: number): MixProblem => ({
  ingredients: ingredients.map((c) => ({ ...c, step })),
  limits: [
    { id: 'fat', name: 'fat', quantity: share('fat'), low: fatLow, high: Math.max(0.28, fatLow) },
    { id: 'protein', name: 'protein', quantity: share('protein'), low: 0.14 },
    { id: 'salt', name: 'salt', quantity: share('salt'), high: 0.006 },
    {
      id: 'bind',
      name: 'bind',
      quantity: { of: 'ratio', over: 'water', under: 'protein' },
      low: 3,
      high: 4.5,
    },
  ],
  total: { low: 3, high: 3 },
  goals: [{ make: 'least', quantity: { of: 'cost' } }, { make: 'least change' }],
});

const began = performance.now();
const solve = await loadSolver();
console.log(`${cpus()[0]?.model}, load ${loadavg()[0]?.toFixed(1)}`);
console.log(`solver loaded in ${(performance.now() - began).toFixed(0)} ms`);
for (const [name, problem] of [
  ['any weight', mix(0.2)],
  ['steps of 10 g', mix(0.2, 0.01)],
  ['steps of 1 g', mix(0.2, 0.001)],
  ['impossible', mix(0.7)],
] as const) {
  const times: number[] = [];
  let said = '';
  for (let i = 0; i < repeats; i++) {
    const from = performance.now();
    const answer = formulate(problem, solve, { gap: 1e-4, seconds: 0.4 });
    times.push(performance.now() - from);
    said = answer.status === 'found' ? `found, ${answer.proven ? 'proven' : 'not proven'}` : answer.status;
  }
  const [first] = times;
  times.sort((a, b) => a - b);
  console.log(
    `${name}: ${said}, first ${first?.toFixed(0)} ms, median ${times[times.length >> 1]?.toFixed(0)} ms, slowest ${times.at(-1)?.toFixed(0)} ms`,
  );
}
