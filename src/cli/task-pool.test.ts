import { afterEach, describe, expect, test } from 'vitest';
import { InputProblems } from '../contract/problem.ts';
import { runSure } from '../contract/sure.ts';
import { openTaskPool, type TaskPool } from './task-pool.ts';

const slab = {
  body: {
    shape: 'slab',
    thicknessMm: { mean: 30, sd: 1 },
    layers: [{ name: 'meat', properties: { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 } }],
  },
  startC: 5,
  stages: [{ name: 'bath', mediumC: { mean: 88, sd: 1 }, hWm2K: 400, until: { min: 30 } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  confidence: 0.95,
  pieces: 6,
  samples: 64,
};

describe('openTaskPool', () => {
  let pool: TaskPool | null = null;
  afterEach(() => pool?.close());

  test('three threads say what one does, to the last digit', async () => {
    pool = openTaskPool(slab, 3);
    expect(await runSure(slab, { run: pool.run })).toEqual(await runSure(slab));
  });

  test('what is wrong with the input comes back as such', async () => {
    pool = openTaskPool({ ...slab, startC: 'cold' }, 1);
    await expect(pool.run([{ kind: 'time', values: [], mode: 'coarse' }])).rejects.toBeInstanceOf(
      InputProblems,
    );
  });
});
