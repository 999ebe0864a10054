import { describe, expect, test } from 'vitest';
import { OutOfRange } from '../errors.ts';
import {
  dryingSurfaceHeat,
  humidAirExchange,
  humidAirHeat,
  restingSurface,
  settlingWater,
} from './evaporation.ts';
import { dewPoint, humidityRatio, vapourPressure, wetBulb } from './humid-air.ts';
import { latentHeat, saturationPressure } from './saturation.ts';
import { steamOnCylinder, waterViscosity } from './saturation-film.ts';

const P = 101325;
const stream = (air: number, relative = 1, h = 15) => ({
  air,
  vapour: vapourPressure(air, relative),
  pressure: P,
  h,
});

describe('humidAirHeat', () => {
  // q/(Ta − Ts) in saturated air at 15 W/(m² K) dry, worked out from the film with Stefan's flow.
  test.each([
    [60, [117, 157, 226]],
    [80, [224, 288, 395, 601]],
    [85, [274, 349, 474, 716]],
    [90, [349, 441, 593, 891]],
    [95, [488, 611, 817, 1228]],
    [98, [686, 856, 1145, 1736]],
  ])('saturated air at %d °C within 1 %', (air, expected) => {
    expected.forEach((h, i) => {
      const surface = 10 + 20 * i;
      expect(Math.abs(humidAirHeat(stream(air), surface) / (air - surface) / h - 1)).toBeLessThan(0.01);
    });
  });
  test('half saturated at 80 °C: 104 at 10 °C, 122 at 50 °C', () => {
    expect(humidAirHeat(stream(80, 0.5), 10) / 70).toBeCloseTo(104, 0);
    expect(humidAirHeat(stream(80, 0.5), 50) / 30).toBeCloseTo(122, 0);
  });
  test('water settles below the dew point, none at it, dries above it; heat stops near the wet bulb', () => {
    const s = stream(80, 0.5);
    const dew = dewPoint(s.vapour);
    expect(dew).toBeCloseTo(63.7, 0);
    expect(settlingWater(s, dew - 5)).toBeGreaterThan(0);
    expect(Math.abs(settlingWater(s, dew))).toBeLessThan(1e-10);
    expect(settlingWater(s, dew + 5)).toBeLessThan(0);
    expect(humidAirHeat(s, 63)).toBeGreaterThan(0);
    expect(humidAirHeat(s, 66)).toBeLessThan(0);
  });
  test('a cooked piece in a blast of cold air loses heat and water, the more the warmer', () => {
    const cold = { air: -20, vapour: vapourPressure(-20, 0.8), pressure: P, h: 25 };
    expect(settlingWater(cold, 60)).toBeLessThan(settlingWater(cold, 30));
    expect(humidAirHeat(cold, 60)).toBeLessThan(2 * 25 * (cold.air - 60));
    expect(settlingWater(cold, 5)).toBeLessThan(0);
  });
  test('a drier surface dries less', () => {
    const dry = stream(120, 0.01);
    expect(settlingWater(dry, 60, 0.5)).toBeGreaterThan(settlingWater(dry, 60, 1));
  });
  test('refuses a boiling surface, an activity above one, air that is all vapour', () => {
    expect(() => humidAirHeat(stream(120, 0.1), 100)).toThrow(/below boiling, 100.0 °C/);
    expect(() => settlingWater(stream(80), 30, 1.2)).toThrow(/water activity/);
    expect(() => settlingWater({ air: 110, vapour: P, pressure: P, h: 15 }, 30)).toThrow(OutOfRange);
    expect(() => settlingWater(stream(80, 1, 0), 30)).toThrow(/h: found 0/);
  });
});

describe('dryingSurfaceHeat and restingSurface', () => {
  const oven = { air: 150, vapour: 12350, pressure: P, h: 20, walls: 150, hRadiation: 0 };
  test('the balance term by term at 60 °C', () => {
    const Ya = humidityRatio(12350, P);
    const kY = 20 / ((1006 + 1860 * Ya) * humidAirExchange.lewis ** (2 / 3));
    const away = kY * latentHeat(60) * (humidityRatio(saturationPressure(60), P) - Ya);
    expect(dryingSurfaceHeat({ ...oven, hRadiation: 10 }, 60)).toBeCloseTo(20 * 90 + 10 * 90 - away, 6);
  });
  test('rests within 1 K of the thermodynamic wet bulb without radiation, higher with it, higher when drier', () => {
    const wet = wetBulb(150, 12350, P);
    const bare = restingSurface(oven);
    expect(Math.abs(bare - wet)).toBeLessThan(1);
    const warmed = restingSurface({ ...oven, hRadiation: 12 });
    expect(warmed).toBeGreaterThan(bare + 1);
    expect(warmed).toBeLessThan(bare + 8);
    expect(restingSurface(oven, 0.5)).toBeGreaterThan(bare + 5);
  });
  test('refuses an oven in which nothing rests below boiling', () => {
    expect(() => restingSurface({ ...oven, walls: 1000, hRadiation: 900 }, 0.01)).toThrow(/rests between/);
    expect(() => restingSurface(oven, 0)).toThrow(/water activity/);
    expect(() => dryingSurfaceHeat({ ...oven, hRadiation: -1 }, 50)).toThrow(/hRadiation/);
  });
});

describe('steamOnCylinder', () => {
  // Worked out from the published equation, film of water from a handbook.
  test.each([
    [0.04, 20, 5948],
    [0.04, 60, 7590],
    [0.04, 90, 11166],
    [0.02, 60, 9026],
  ])('%d m across, surface %d °C: %d within 1 %', (D, surface, h) => {
    expect(Math.abs(steamOnCylinder(D, surface, 100) / h - 1)).toBeLessThan(0.01);
  });
  // The release SR6-08 at 298.15 K, from memory.
  test('waterViscosity at 25 °C', () => {
    expect(waterViscosity(25) * 1e6).toBeCloseTo(889.997, 2);
  });
  test('refuses a surface as hot as the steam', () => {
    expect(() => steamOnCylinder(0.04, 100, 100)).toThrow(/surface/);
    expect(() => steamOnCylinder(0, 50, 100)).toThrow(/diameter/);
    expect(() => waterViscosity(120)).toThrow(OutOfRange);
  });
});
