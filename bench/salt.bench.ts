/** A week in brine and a keystroke on the bench, computed. */
import os from 'node:os';
import { type CureProblem, cure } from '../src/core/salt/cure.ts';
import { foreseeCure } from '../src/core/salt/foresee.ts';

const week: CureProblem = {
  piece: { shape: 'slab', size: 0.05, exposedFaces: 2, mass: 1, water: 0.75, salt: 0 },
  stages: [{ medium: { kind: 'bath', mass: 2, salt: 0.08 }, temperature: 4, time: 7 * 86_400 }],
};
/** As the bench asks it: skin over flesh, through brine, rinse and rest, with its range and the salt that is wanted. */
const keystroke: CureProblem = {
  piece: { ...week.piece, size: 0.03, skin: { thickness: 0.003, water: 0.6 } },
  stages: [
    { medium: { kind: 'bath', mass: 1, salt: 0.06 }, temperature: 4, time: 12 * 3600 },
    { medium: { kind: 'bath', mass: 5, salt: 0 }, temperature: 10, time: 120 },
    { medium: { kind: 'rest' }, temperature: 4, time: 24 * 3600 },
  ],
  withoutNineTenths: true,
};

function timed(name: string, wanted: string, run: () => unknown): void {
  const began = performance.now();
  run();
  const first = performance.now() - began;
  const times = Array.from({ length: 40 }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  console.log(
    `  ${name}: first call ${first.toFixed(1)} ms; warm, median of 40: ${times[20]?.toFixed(1)} ms, slowest ${times[39]?.toFixed(1)} ms${wanted}`,
  );
}

console.log(`salt (${os.cpus()[0]?.model}, ${os.cpus().length} cores, Node ${process.versions.node})`);
timed('a week in brine, profile', ' (wanted ≤ 20 ms)', () => cure({ ...week, withoutNineTenths: true }));
timed('the same with both nine-tenths times', ' (wanted ≤ 20 ms)', () => cure(week));
timed('a keystroke, coarse', ' (wanted ≤ 50 ms)', () =>
  foreseeCure({ ...keystroke, detail: 'coarse' }, 0.015),
);
timed('and when the hand rests, fine', '', () => foreseeCure(keystroke, 0.015));
