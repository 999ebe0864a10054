import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FitInput } from '../../../../contract/fit.ts';
import type { ProbeLog } from '../../../../contract/records.ts';
import { logOf, orderOf, probeKeys, type Run, roundedDown, stagesSeen } from './fit-order.ts';

const muscle = { water: 0.74, protein: 0.21, fat: 0.04, carbohydrate: 0, fibre: 0, ash: 0.01 };
const run: Run = {
  body: { shape: 'cylinder', diameterMm: 50, layers: [{ name: 'meat', composition: muscle }] },
  startC: 5,
  stages: [
    { name: 'steam', medium: 'steam', until: { lethalityMin: 2 } },
    { name: 'ice', medium: 'ice water', until: { warmestC: 5 } },
  ],
};
const overlay = {
  log: { points: Array.from({ length: 31 }, (_, i) => ({ s: 60 * i, C: 5 + i })) } as unknown as ProbeLog,
  fromMin: -2,
};

describe('orderOf', () => {
  test('is what the engine takes, every stage with the minutes it lasted', () => {
    const order = orderOf({
      run,
      lasted: [20, 15],
      probe: { radiusMm: 0 },
      hStages: [0, 1],
      also: ['diffusivity'],
    });
    const asked = FitInput.parse({ ...order, log: logOf(overlay) });
    expect(asked.stages.map((s) => s.until)).toEqual([{ min: 20 }, { min: 15 }]);
    expect(asked.fit).toEqual(['hWm2K', 'diffusivity']);
  });

  test('names no stage where no coefficient is fitted', () => {
    const order = orderOf({ run, lasted: [20, 15], probe: {}, hStages: [], also: ['radiusMm'] });
    expect(order).not.toHaveProperty('hStages');
    expect(order.fit).toEqual(['radiusMm']);
  });
});

test('logOf puts the log on the clock of the programme', () => {
  expect(logOf(overlay)[2]).toEqual({ min: 0, C: 7 });
});

test('stagesSeen counts readings within each stage', () => {
  expect(stagesSeen(overlay, [20, 15])).toEqual([0, 1]);
  expect(stagesSeen(overlay, [26, 15])).toEqual([0]);
  expect(stagesSeen({ ...overlay, fromMin: 100 }, [20, 15])).toEqual([]);
});

test('every shape has its distances', () => {
  expect(probeKeys('revolved')).toEqual(['atMm', 'radiusMm']);
  expect(probeKeys('block')).toEqual(['xMm', 'yMm']);
});

test('roundedDown never rounds up, and loses less than a hundredth', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 20_000, noNaN: true }), (h) => {
      const down = roundedDown(h);
      expect(down).toBeLessThanOrEqual(h * (1 + 1e-9));
      expect(down).toBeGreaterThan(h * 0.989);
    }),
  );
  expect(roundedDown(418.4)).toBe(418);
});
