/** A thousand pieces of a stuffed trotter, and its gentlest programme: what they cost in processor time and on the clock. */

import { openTaskPool } from '../src/cli/task-pool.ts';
import { runGentle } from '../src/contract/gentle.ts';
import { runSure } from '../src/contract/sure.ts';

const trotter = {
  body: {
    shape: 'revolved',
    profile: [
      { atMm: 0, diameterMm: 40 },
      { atMm: 120, diameterMm: 56 },
      { atMm: 180, diameterMm: 50 },
    ],
    layers: [
      {
        name: 'skin',
        thicknessMm: 3,
        composition: { water: 0.6, protein: 0.15, fat: 0.24, carbohydrate: 0, fibre: 0, ash: 0.01 },
      },
      {
        name: 'filling',
        composition: { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 },
      },
    ],
  },
  startC: { low: 2, high: 6 },
  stages: [
    { name: 'steam', mediumC: { mean: 98, sd: 0.7 }, hWm2K: { low: 600, high: 3000 }, until: { min: 40 } },
    { name: 'ice water', mediumC: 1, hWm2K: 400, until: { warmestC: 5 } },
  ],
  target: { referenceC: 70, zC: 7.5, min: 2 },
};
const sure = {
  ...trotter,
  thickerMm: { mean: 0, sd: 1 },
  probeErrorC: 0.25,
  confidence: 0.95,
  pieces: 24,
  samples: 1000,
};
const gentle = {
  ...trotter,
  startC: 4,
  stages: [{ ...trotter.stages[0], hWm2K: 1000, mediumC: { low: 65, high: 100 } }, trotter.stages[1]],
  atMostMin: 45,
};

async function timed<T>(
  what: string,
  work: () => Promise<T> | T,
  told: (answer: T) => string,
): Promise<void> {
  const clock = performance.now();
  const cpu = process.cpuUsage();
  const answer = await work();
  const { user, system } = process.cpuUsage(cpu);
  const seconds = ((performance.now() - clock) / 1000).toFixed(1);
  console.log(
    `${what}: ${seconds} s on the clock, ${((user + system) / 1e6).toFixed(1)} s of processor; ${told(answer)}`,
  );
}

for (const threads of [1, 2])
  await timed(
    `sure, 1000 pieces, ${threads} ${threads === 1 ? 'thread' : 'threads'}`,
    async () => {
      const pool = openTaskPool(sure, threads);
      try {
        return await runSure(sure, { run: pool.run });
      } finally {
        await pool.close();
      }
    },
    (a) => `${a.minutesForConfidence} min`,
  );
await timed(
  'gentle',
  () => runGentle(gentle),
  (a) => `${a.recommended?.mediumC} °C, ${a.recommended?.min} min`,
);
