import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cook } from './cook.ts';
import type { CookProblem, Layer } from './types.ts';
import { bounded } from './water.ts';

describe('bounded', () => {
  test('never more than there is; nothing changed where it is less; in the order of the stages', () => {
    const kg = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(kg, { maxLength: 8 }), kg, (lost, there) => {
        const own = bounded(lost, there);
        const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
        expect(sum(own)).toBeLessThanOrEqual(there * (1 + 1e-12));
        if (sum(lost) < there * (1 - 1e-12)) expect(own).toEqual(lost);
        else expect(sum(own)).toBeCloseTo(Math.min(there, sum(lost)), 9);
        for (const [i, x] of own.entries()) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(lost[i] ?? 0);
        }
      }),
    );
  });
});

/** A thin piece in dry moving air of an oven: two stages, so that the second finds what the first left. */
const drying = (layer: Layer['material'], mm: number, C: number, hours: number): CookProblem => {
  const stage = {
    name: 'oven',
    medium: C,
    h: 25,
    surface: { vapour: { pressure: 101_325, relative: 0.02, activity: 1 } },
    until: { kind: 'time' as const, s: 1_800 * hours },
  };
  return {
    body: { shape: 'slab', thickness: mm / 1000, layers: [{ name: 'meat', material: layer }] },
    start: 20,
    stages: [stage, stage],
    target: { reference: 70, z: 10, s: 120 },
  };
};
const lostOf = ({ stages }: { stages: readonly { water?: { lost: number } }[] }) =>
  stages.reduce((sum, { water }) => sum + (water?.lost ?? 0), 0);

describe('what dries off a piece', () => {
  const composition = (water: number) => ({
    composition: {
      water,
      protein: 0.8 * (1 - water),
      fat: 0.2 * (1 - water),
      carbohydrate: 0,
      fibre: 0,
      ash: 0,
    },
  });

  test('is never more than the water that is in it, whatever the oven', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.9, noNaN: true }),
        fc.double({ min: 1, max: 20, noNaN: true }),
        fc.double({ min: 90, max: 250, noNaN: true }),
        fc.double({ min: 0.2, max: 12, noNaN: true }),
        (water, mm, C, hours) => {
          const result = cook(drying(composition(water), mm, C, hours), { mode: 'coarse' });
          expect(lostOf(result)).toBeLessThanOrEqual(water * result.mass * (1 + 1e-9));
        },
      ),
      { numRuns: 40 },
    );
  });

  test('where it would be more, the answer says so and what a wet surface would have lost', () => {
    const dry = cook(drying(composition(0.7), 2, 200, 6), { mode: 'coarse' });
    expect(lostOf(dry) / dry.mass).toBeCloseTo(0.7, 6);
    expect(dry.basis.map((b) => b.what).join('\n')).toMatch(
      /NOT VALID: a surface that stayed wet would lose \d{3,} % of the weight, and there is no more than 70 %/,
    );
    const moist = cook(drying(composition(0.7), 20, 120, 0.3), { mode: 'coarse' });
    expect(lostOf(moist)).toBeGreaterThan(0);
    expect(moist.basis.map((b) => b.what).join('\n')).not.toMatch(/NOT VALID/);
  });

  test('of constant properties, whose water nobody knows, no more than all of it', () => {
    const dry = cook(drying({ properties: { k: 0.48, rho: 1050, cp: 3500 } }, 2, 200, 6), { mode: 'coarse' });
    expect(lostOf(dry) / dry.mass).toBeCloseTo(1, 9);
  });
});

test('a layer that is said to conduct by a factor does, and by no other', () => {
  const layer = {
    name: 'meat',
    material: { composition: { water: 0.7, protein: 0.2, fat: 0.1, carbohydrate: 0, fibre: 0, ash: 0 } },
  };
  const end = (conducts: number | undefined, h: number, s: number) =>
    cook({
      body: {
        shape: 'cylinder',
        diameter: 0.05,
        layers: [{ ...layer, ...(conducts === undefined ? {} : { conducts }) }],
      },
      start: 4,
      stages: [{ name: 'bath', medium: 90, h, until: { kind: 'time', s } }],
      target: { reference: 70, z: 10, s: 120 },
    }).stages[0]?.coldest;
  expect(end(1, 500, 1_500)).toBe(end(undefined, 500, 1_500));
  // Conductivity and coefficient by a factor, and time by its inverse, is the same piece.
  expect(end(1.1, 550, 1_500 / 1.1)).toBeCloseTo(end(undefined, 500, 1_500) ?? Number.NaN, 1);
  expect(end(0.9, 450, 1_500 / 0.9)).toBeCloseTo(end(undefined, 500, 1_500) ?? Number.NaN, 1);
});
