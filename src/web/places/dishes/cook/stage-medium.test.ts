import { describe, expect, test } from 'vitest';
import { StageInput } from '../../../../contract/body.ts';
import { surroundingsOf } from '../../../../contract/surroundings.ts';
import { media } from '../../../../core/properties/media.ts';
import { rangeWords } from './range-words.ts';
import {
  glowing,
  measureOf,
  OWN,
  put,
  underPressure,
  wetnessOf,
  withMeasure,
  withMedium,
  withWetness,
} from './stage-medium.ts';

const steam: StageInput = { name: 'steam', medium: 'steam', mediumC: 100, until: { min: 30 } };
const names = [...Object.keys(media), OWN];

describe('a change of medium', () => {
  test.each(names)('%s: the engine takes the stage as it then stands, whatever it was before', (to) => {
    for (const from of names) {
      const between = withMedium(withMedium(steam, from), to);
      expect(StageInput.safeParse(between).success).toBe(true);
      expect(() => surroundingsOf(between, 'stage')).not.toThrow();
    }
  });
  test('beside what glows or is ladled the air is a kitchen’s, not that of the oven before', () => {
    const hot = { ...withMedium(steam, 'fan oven'), mediumC: 200 };
    for (const name of ['radiant grill', 'ladled fat']) expect(withMedium(hot, name).mediumC).toBe(30);
  });
  test('a kitchen’s height stays, what only the old medium had goes, the name follows', () => {
    const oven = withMeasure(withMedium({ ...steam, altitudeM: 900 }, 'fan oven'), 'humidityPct');
    const fried = withMedium(oven, 'frying oil');
    expect(fried).toEqual({
      name: 'frying oil',
      medium: 'frying oil',
      mediumC: 180,
      altitudeM: 900,
      until: { min: 30 },
    });
    // Back in steam it is as hot as it boils there.
    expect(withMedium(fried, 'steam')).not.toHaveProperty('mediumC');
  });
});

describe('vapour', () => {
  const oven = withMedium(steam, 'fan oven');
  test.each(['humidityPct', 'dewPointC', 'wetBulbC', 'none'] as const)(
    'by %s: one measure at most, and one the air can have',
    (by) => {
      const told = withMeasure(withMeasure({ ...oven, mediumC: 150 }, 'dewPointC'), by);
      expect(measureOf(told)).toBe(by);
      expect(() => surroundingsOf(told, 'stage')).not.toThrow();
    },
  );
  test('without vapour there is no water activity, and nothing is left of it', () => {
    const drier = withWetness(withMeasure(oven, 'humidityPct'), 'drier');
    expect(wetnessOf(drier)).toBe('drier');
    expect(withMeasure(drier, 'none')).not.toHaveProperty('surfaceWaterActivity');
    expect(wetnessOf(withWetness(drier, 'wrapped'))).toBe('wrapped');
    expect(withWetness(drier, 'wrapped')).not.toHaveProperty('surfaceWaterActivity');
  });
});

describe('pressure', () => {
  test('steam follows a height or a vessel, and is told its temperature again without either', () => {
    const high = underPressure(steam, { altitudeM: 1500 });
    expect(surroundingsOf(high, 'stage').medium).toBeCloseTo(94.983, 2);
    const closed = underPressure(high, { pressureKPa: 180 });
    expect(closed).not.toHaveProperty('altitudeM');
    expect(surroundingsOf(closed, 'stage').medium).toBeGreaterThan(116);
    expect(underPressure(closed, {}).mediumC).toBe(100);
  });
  test('air keeps its temperature', () => {
    expect(underPressure(withMedium(steam, 'fan oven'), { altitudeM: 1500 }).mediumC).toBe(100);
  });
});

test('a grill glows by one of two measures; a key can be put and taken away', () => {
  const grill = withMedium(steam, 'radiant grill');
  const source = glowing(grill, 'source');
  expect(source).not.toHaveProperty('fluxWm2');
  expect(glowing(source, 'flux')).not.toHaveProperty('radiantShare');
  expect(put(put(steam, 'hWm2K', 900), 'hWm2K', null)).toEqual(steam);
});

describe('rangeWords', () => {
  const range = { low: 400, usual: 1000, high: 5000, source: 'pannu-castaigne-arul', dry: false };
  const words = (low: number, usual: number, high: number) =>
    rangeWords({ stage: 0, low: low * 60, usual: usual * 60, high: high * 60 }, range);
  test('minutes longer and shorter, to a half where they are few', () => {
    expect(words(47.2, 40, 38.6)).toBe(
      'At 400: 7 min longer; at 5000: 1.5 min shorter. One probe log settles it.',
    );
  });
  test('nothing to settle where both ends agree; what never gets there is said', () => {
    expect(words(40.1, 40, 39.9)).toBe('At 400: no different; at 5000: no different.');
    expect(words(Number.NaN, 40, 30)).toBe(
      'At 400: it never gets there; at 5000: 10 min shorter. One probe log settles it.',
    );
    expect(words(10, Number.NaN, 5)).toBeNull();
  });
});
