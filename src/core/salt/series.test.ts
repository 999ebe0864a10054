import { describe, expect, it } from 'vitest';
import { middleInEndlessBath, type SaltShape, uptakeInEndlessBath, uptakeInLimitedBath } from './series.ts';

describe('uptakeInEndlessBath', () => {
  it.each([
    ['cylinder', 0.001, 0.070359],
    ['cylinder', 0.005, 0.154507],
    ['cylinder', 0.01, 0.215474],
    ['cylinder', 0.02, 0.298564],
    ['cylinder', 0.05, 0.452121],
    ['cylinder', 0.1, 0.605824],
    ['cylinder', 0.2, 0.782148],
    ['cylinder', 0.3, 0.877972],
    ['cylinder', 0.5, 0.961621],
    ['cylinder', 1, 0.99787],
    ['slab', 0.001, 0.035682],
    ['slab', 0.01, 0.112838],
    ['slab', 0.05, 0.252313],
    ['slab', 0.1, 0.356823],
    ['slab', 0.2, 0.504088],
    ['slab', 0.3, 0.613236],
    ['slab', 0.5, 0.76395],
    ['slab', 1, 0.93126],
    ['slab', 2, 0.99417],
  ] as const)('%s at Fo %f', (shape, Fo, expected) => {
    expect(Math.abs(uptakeInEndlessBath(shape, Fo) - expected)).toBeLessThan(1e-6);
  });

  it.each([
    [0.01, 1e-10, 0.570828],
    [0.01, 2e-10, 0.744705],
    [0.01, 5e-10, 0.94313],
    [0.02, 2e-10, 0.423876],
  ])('cylinder of radius %f m, D %f, 24 h', (R, D, expected) => {
    expect(Math.abs(uptakeInEndlessBath('cylinder', (D * 86_400) / R ** 2) - expected)).toBeLessThan(1e-6);
  });

  it('skin of 2.5 mm by one face in 24 h', () => {
    expect(Math.abs(uptakeInEndlessBath('slab', (1e-10 * 86_400) / 0.0025 ** 2) - 0.973243)).toBeLessThan(
      1e-6,
    );
  });

  it('refuses a time too early for the series', () => {
    expect(() => uptakeInEndlessBath('slab', 1e-6)).toThrow('Fo');
  });
});

describe('uptakeInLimitedBath', () => {
  it.each([
    ['cylinder', 1, 0.05, 0.653602],
    ['cylinder', 1, 0.1, 0.79301],
    ['cylinder', 1, 0.2, 0.915715],
    ['cylinder', 5, 0.05, 0.505043],
    ['cylinder', 5, 0.1, 0.659922],
    ['slab', 1, 0.1, 0.552841],
    ['slab', 5, 0.1, 0.405284],
  ] as const)('%s, α %f, Fo %f', (shape, alpha, Fo, expected) => {
    expect(Math.abs(uptakeInLimitedBath(shape, alpha, Fo) - expected)).toBeLessThan(1e-6);
  });

  it.each(['slab', 'cylinder', 'sphere'] as SaltShape[])('%s in a huge bath is the endless bath', (shape) => {
    for (const Fo of [0.01, 0.1, 0.4])
      expect(uptakeInLimitedBath(shape, 1e7, Fo)).toBeCloseTo(uptakeInEndlessBath(shape, Fo), 5);
  });
});

describe('middleInEndlessBath', () => {
  it('cylinder of radius 10 mm, D 2e-10, 24 h', () => {
    expect(Math.abs(middleInEndlessBath('cylinder', 0.1728) - 0.415774)).toBeLessThan(1e-6);
  });
  it.each(['slab', 'cylinder', 'sphere'] as SaltShape[])('%s: nothing at first, all in the end', (shape) => {
    expect(Math.abs(middleInEndlessBath(shape, 0.005))).toBeLessThan(1e-5);
    expect(middleInEndlessBath(shape, 8)).toBeCloseTo(1, 6);
  });
});
