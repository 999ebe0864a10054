import { expect, test } from 'vitest';
import { surroundingsInWords } from './surroundings-in-words.ts';

const words = (over: object) =>
  surroundingsInWords({ name: 's', until: { min: 1 }, ...over }, (C) => `${C} °C`).join(', ');

test('says what a stage asks of its medium, and nothing of a plain one', () => {
  expect(words({ medium: 'steam', mediumC: 100 })).toBe('');
  expect(words({ medium: 'fan oven', mediumC: 150, humidityPct: 40, wrapped: true })).toBe(
    '40 % humidity, wrapped',
  );
  expect(words({ dewPointC: 50, altitudeM: 1500 })).toBe('dew point 50 °C, at 1500 m above the sea');
  expect(words({ wetBulbC: 60, pressureKPa: 101.3 })).toBe('wet bulb 60 °C, under 101.3 kPa');
  expect(words({ medium: 'boiling water', brineSaltPct: 5 })).toBe('5 % salt');
  expect(words({ wraps: [{ of: 'polyethylene', thicknessMm: 0.01, layers: 10 }] })).toBe(
    'in 10 × 0.01 mm of polyethylene',
  );
  expect(words({ fluxWm2: 6500 })).toBe('6.5 kW/m² of radiant heat');
  expect(words({ radiantC: 700, radiantShare: 0.4 })).toBe('a source at 700 °C');
  expect(words({ ladle: { fatC: 180, onS: 4, everyS: 10 } })).toBe('fat of 180 °C ladled 4 s in every 10 s');
});
