import { describe, expect, test } from 'vitest';
import { sources } from '../sources.ts';
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
