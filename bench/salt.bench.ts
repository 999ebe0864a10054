/** A week in brine, computed. */
import os from 'node:os';
import { cure } from '../src/core/salt/cure.ts';

const week = () =>
  cure({
    piece: { shape: 'slab', size: 0.05, exposedFaces: 2, mass: 1, water: 0.75, salt: 0 },
    stages: [{ medium: { kind: 'bath', mass: 2, salt: 0.08 }, temperature: 4, time: 7 * 86_400 }],
  });
const began = performance.now();
week();
const first = performance.now() - began;
const times = Array.from({ length: 40 }, () => {
  const start = performance.now();
  week();
  return performance.now() - start;
}).sort((a, b) => a - b);
console.log(`salt (${os.cpus()[0]?.model}, ${os.cpus().length} cores, Node ${process.versions.node})`);
console.log(`  a week in brine, first call: ${first.toFixed(1)} ms`);
console.log(
  `  warm, median of 40: ${times[20]?.toFixed(1)} ms, slowest ${times[39]?.toFixed(1)} ms (wanted ≤ 20 ms)`,
);
