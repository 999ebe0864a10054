import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brineDensity, brineFreezing } from './brine.ts';
import {
  type BrineScale,
  brineReading,
  brineScales,
  saltOfDensity,
  saltOfFreezing,
  saltOnScale,
} from './brine-readings.ts';

/** Rows worked out beforehand from the published tables by a cubic and a quartic: salometer, %, SG, °Bé, g/L, g/kg water, °C. */
const rows = [
  [5, 1.32, 1.0095, 1.36, 13.3, 13.4, -0.74],
  [20, 5.279, 1.0383, 5.35, 54.8, 55.7, -3.16],
  [50, 13.198, 1.0977, 12.9, 144.7, 152.0, -9.2],
  [70, 18.477, 1.1389, 17.69, 210.2, 226.6, -14.6],
  [80, 21.116, 1.1602, 20.02, 244.7, 267.7, -17.94],
] as const;

const on = (scale: BrineScale, saltPct: number) => {
  const r = brineReading(saltPct);
  return { '%': r.saltPct, salometer: r.salometer, gravity: r.gravity, Baumé: r.baume, density: r.density }[
    scale
  ];
};

describe('brineReading', () => {
  it.each(rows)('%d degrees of the salometer', (degrees, pct, gravity, baume, litre, water, freezes) => {
    const r = brineReading(saltOnScale('salometer', degrees));
    expect(Math.abs(r.saltPct - pct)).toBeLessThan(0.001);
    expect(Math.abs(r.gravity - gravity)).toBeLessThan(0.002);
    expect(Math.abs(r.baume - baume)).toBeLessThan(0.2);
    expect(Math.abs(r.gPerLitre - litre)).toBeLessThan(0.3);
    expect(Math.abs(r.gPerKgWater - water)).toBeLessThan(0.2);
    expect(Math.abs(r.comesOutC - freezes)).toBeLessThan(0.05);
    expect(r.comesOut).toBe('ice');
  });

  it('past the eutectic salt comes out first: at −18.3 °C from 90 degrees, at −9.7 °C from 95', () => {
    for (const [degrees, C] of [
      [90, -18.3],
      [95, -9.7],
    ] as const) {
      const r = brineReading(saltOnScale('salometer', degrees));
      expect(r.comesOut).toBe('salt');
      expect(Math.abs(r.comesOutC - C)).toBeLessThan(0.1);
    }
  });
});

describe('scales', () => {
  it('go both ways', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...brineScales),
        fc.double({ min: 0, max: 26.395, noNaN: true }),
        (scale, w) => {
          expect(Math.abs(saltOnScale(scale, on(scale, w)) - w)).toBeLessThan(1e-6);
        },
      ),
    );
  });

  it('density at any temperature and freezing go both ways', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 23.3, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (w, C) => {
          expect(Math.abs(saltOfDensity(brineDensity(w, C), C) - w)).toBeLessThan(1e-6);
          // Between 9 and 15 % the quartic stands in for a table without rows: there its ends leave steps of 0.03 K.
          expect(Math.abs(brineFreezing(saltOfFreezing(brineFreezing(w))) - brineFreezing(w))).toBeLessThan(
            0.04,
          );
        },
      ),
    );
  });

  it.each([
    ['salometer', 101],
    ['gravity', 0.98],
    ['gravity', 1.3],
    ['density', 1300],
    ['%', 27],
    ['Baumé', Number.NaN],
  ] as const)('%s %d is refused', (scale, value) => {
    expect(() => saltOnScale(scale, value)).toThrow(RangeError);
  });
});
