import { describe, expect, test } from 'vitest';
import { sources } from '../sources.ts';
import { forcedConvectionOnCylinder, freeConvectionOnCylinder } from './humid-air-convection.ts';
import {
  filmResistance,
  type Medium,
  media,
  mediumNamed,
  temperatureOf,
  throughResistance,
} from './media.ts';

describe('media', () => {
  test.each(Object.entries<Medium>(media))(
    '%s: default within its range, a source that exists',
    (_, medium) => {
      expect(medium.low).toBeLessThanOrEqual(medium.h);
      expect(medium.h).toBeLessThanOrEqual(medium.high);
      expect(medium.coldest).toBeLessThan(medium.hottest);
      if (medium.usual !== undefined) {
        expect(medium.usual).toBeGreaterThanOrEqual(medium.coldest);
        expect(medium.usual).toBeLessThanOrEqual(medium.hottest);
      }
      expect(Object.hasOwn(sources, medium.source)).toBe(true);
    },
  );
  test.each([
    ['steam', 400],
    ['water bath', 130],
    ['ice water', 20],
    ['steam', Number.NaN],
  ])('%s at %s °C is refused, saying what is allowed', (name, C) => {
    expect(() => temperatureOf(name, C, 'here')).toThrow(/here: found .* allowed/);
  });
  test('an unknown medium is refused, naming the known', () => {
    expect(() => mediumNamed('stean')).toThrow(/steam, low-temperature steam/);
    expect(() => mediumNamed('toString')).toThrow('allowed');
  });
});

describe('air without its vapour and its radiation', () => {
  const dry = Object.entries<Medium>(media).flatMap(([name, { dry: air }]) =>
    air === undefined ? [] : [[name, air] as const],
  );
  test.each(dry)('%s: default within its range, a source that exists', (_, air) => {
    expect(air.low).toBeLessThanOrEqual(air.h);
    expect(air.h).toBeLessThanOrEqual(air.high);
    expect(Object.hasOwn(sources, air.source)).toBe(true);
  });
  // Speeds [m/s] and mean temperature of the film that the words beside the figures name, across a cylinder of 40 mm.
  test.each([
    ['low-temperature steam', 0.25, 2, 65],
    ['fan oven', 0.5, 4, 100],
    ['blast chiller', 1, 5, 5],
  ] as const)('%s: the ends of its range are those of its words', (name, slow, fast, film) => {
    const air = (media as Record<string, Medium>)[name]?.dry;
    const blown = (speed: number) => forcedConvectionOnCylinder(0.04, speed, film);
    expect(Math.abs((air?.low ?? 0) - blown(slow))).toBeLessThan(2);
    expect(Math.abs((air?.high ?? 0) - blown(fast))).toBeLessThan(1.5);
    expect(air?.h).toBeGreaterThan(blown(slow));
    expect(air?.h).toBeLessThan(blown(fast));
  });
  test.each([
    ['still fridge', 20, 3],
    ['still air', 25, 60],
    ['still oven', 30, 180],
    ['radiant grill', 100, 30],
    ['ladled fat', 100, 30],
  ] as const)('%s: what rises by itself is within half of it', (name, surface, air) => {
    const { h = 0 } = (media as Record<string, Medium>)[name]?.dry ?? {};
    expect(Math.abs(h / freeConvectionOnCylinder(0.04, surface, air) - 1)).toBeLessThan(0.5);
  });
});

describe('film in series', () => {
  test.each([
    [10, 0.3, 1000, 750.0],
    [10, 0.13, 1000, 565.2],
    [3, 0.13, 300, 280.58],
    [20, 0.3, 20, 19.74],
  ])('%s layers of 10 µm at %s W/(m K): %s becomes %s', (n, k, h, wanted) => {
    const got = throughResistance(h, filmResistance(10e-6, k, n));
    expect(Math.abs(got - wanted)).toBeLessThan(0.06);
  });
  test('a tenth of a millimetre of air takes 1000 to about 206', () => {
    expect(throughResistance(1000, filmResistance(1e-4, 0.026))).toBeCloseTo(206.3, 0);
  });
});
