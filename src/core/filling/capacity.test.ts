import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { capacityOf, volumeOf } from './capacity.ts';

describe('volumeOf', () => {
  it('is exact for a cylinder and a cone', () => {
    expect(
      volumeOf([
        { at: 0, diameter: 0.04 },
        { at: 0.1, diameter: 0.04 },
      ]),
    ).toBeCloseTo(Math.PI * 0.02 ** 2 * 0.1, 15);
    expect(
      volumeOf([
        { at: 0, diameter: 0 },
        { at: 0.3, diameter: 0.2 },
      ]),
    ).toBeCloseTo((Math.PI * 0.1 ** 2 * 0.3) / 3, 15);
  });

  it('nears a sphere of many points from below', () => {
    const R = 0.03;
    const points = Array.from({ length: 401 }, (_, i) => {
      const at = (2 * R * i) / 400;
      return { at, diameter: 2 * Math.sqrt(Math.max(0, R * R - (at - R) ** 2)) };
    });
    const exact = (4 / 3) * Math.PI * R ** 3;
    expect(volumeOf(points)).toBeLessThan(exact);
    expect(volumeOf(points) / exact).toBeGreaterThan(0.9999);
  });

  it('does not change when a point is added on a straight side', () => {
    const size = fc.double({ min: 0.001, max: 1, noNaN: true });
    fc.assert(
      fc.property(size, size, size, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (d1, d2, length, f) => {
        const whole = volumeOf([
          { at: 0, diameter: d1 },
          { at: length, diameter: d2 },
        ]);
        const cut = volumeOf([
          { at: 0, diameter: d1 },
          { at: f * length, diameter: d1 + f * (d2 - d1) },
          { at: length, diameter: d2 },
        ]);
        expect(cut / whole).toBeCloseTo(1, 9);
      }),
    );
  });

  it('refuses a profile out of order, naming the point', () => {
    expect(() =>
      volumeOf([
        { at: 0, diameter: 0.1 },
        { at: 0, diameter: 0.1 },
      ]),
    ).toThrow('profile[1].at');
    expect(() => volumeOf([{ at: 0, diameter: 0.1 }])).toThrow('at least 2 points');
    expect(() =>
      volumeOf([
        { at: 0, diameter: -0.1 },
        { at: 1, diameter: 0.1 },
      ]),
    ).toThrow('profile[0].diameter');
  });
});

describe('capacityOf', () => {
  const tube = [
    { at: 0, diameter: 0.05 },
    { at: 0.1, diameter: 0.05 },
  ];

  it('weighs what a plain tube holds', () => {
    expect(capacityOf({ profile: tube, skin: 0, density: 1000, headSpace: 0 }).mass).toBeCloseTo(
      0.1963495,
      6,
    );
    expect(capacityOf({ profile: tube, skin: 0.005, density: 1000, headSpace: 0.1 }).mass).toBeCloseTo(
      Math.PI * 0.02 ** 2 * 0.1 * 1000 * 0.9,
      12,
    );
  });

  it('holds less the thicker the skin and the larger the head space', () => {
    const unit = fc.double({ min: 0, max: 0.4, noNaN: true });
    fc.assert(
      fc.property(unit, unit, (s, e) => {
        const base = capacityOf({ profile: tube, skin: 0.05 * s, density: 1040, headSpace: e });
        const thicker = capacityOf({ profile: tube, skin: 0.05 * s + 0.001, density: 1040, headSpace: e });
        expect(thicker.mass).toBeLessThan(base.mass);
        expect(base.filling).toBeLessThanOrEqual(base.inner);
        expect(base.inner).toBeLessThanOrEqual(base.outer);
      }),
    );
  });

  it('refuses a skin that leaves no room, naming where', () => {
    expect(() => capacityOf({ profile: tube, skin: 0.026, density: 1000, headSpace: 0 })).toThrow(
      'profile[0].diameter',
    );
  });
});
