import { describe, expect, it } from 'vitest';
import { doubtTemperature, readNumber, showNumber, showQuantity, unitLabel } from './quantity.ts';

describe('readNumber', () => {
  it('gives the held unit whatever unit was typed', () => {
    expect(readNumber('3*420g', 'g', 'metric')).toMatchObject({ ok: true, value: 1260, stated: true });
    expect(readNumber('165', '°C', 'US')).toMatchObject({ ok: true, stated: false });
    const f = readNumber('165', '°C', 'US');
    expect(f.ok && f.value).toBeCloseTo(73.889, 3);
    expect(readNumber('2 d', 'h', 'metric')).toMatchObject({ ok: true, value: 48 });
    expect(readNumber('12 µm', 'µm', 'US')).toMatchObject({ ok: true, value: 12 });
    expect(readNumber('6 pieces', 'pieces', 'metric')).toMatchObject({ ok: true, value: 6 });
    expect(readNumber('1000 W/(m² K)', 'W/(m² K)', 'metric')).toMatchObject({ ok: true, value: 1000 });
  });
  it('names the bound in the unit that is shown', () => {
    expect(readNumber('400', '°C', 'metric', { low: -80, high: 300 })).toEqual({
      ok: false,
      message: 'at most 300 °C',
    });
    expect(readNumber('4', '°C', 'US', { low: 0 })).toEqual({ ok: false, message: 'at least 32 °F' });
  });
});

describe('showNumber', () => {
  it('shows the kitchen’s unit with few figures', () => {
    expect(showNumber(71.3982, '°C', 'metric')).toBe('71.4');
    expect(showQuantity(4, '°C', 'US')).toBe('39.2 °F');
    expect(unitLabel('g', 'US')).toBe('oz');
    expect(unitLabel('µm', 'US')).toBe('µm');
    expect(showNumber(null, 'g', 'metric')).toBe('');
  });
});

describe('doubtTemperature', () => {
  const fridge = { low: -30, high: 15 };
  it('asks where a bare number only makes sense in °F', () => {
    const doubt = doubtTemperature(38, false, fridge);
    expect(doubt?.instead.value).toBeCloseTo(3.333, 3);
  });
  it('does not ask where the unit was typed, or the number is likely as it stands, or neither scale helps', () => {
    expect(doubtTemperature(38, true, fridge)).toBeNull();
    expect(doubtTemperature(3, false, fridge)).toBeNull();
    expect(doubtTemperature(200, false, fridge)).toBeNull();
  });
});
