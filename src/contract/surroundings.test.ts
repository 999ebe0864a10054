import { describe, expect, test } from 'vitest';
import { pressureAtHeight, saturationTemperature } from '../core/properties/saturation.ts';
import type { StageInput } from './body.ts';
import { runCook, toProblem } from './cook.ts';
import { InputProblems } from './problem.ts';
import { stageBasis } from './stage-basis.ts';
import { surroundingsOf } from './surroundings.ts';

const until = { min: 30 };
const stage = (over: Partial<StageInput>): StageInput => ({ name: 'stage', until, ...over });
const body = {
  shape: 'cylinder',
  diameterMm: 50,
  layers: [{ name: 'meat', properties: { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 } }],
};
const cookOf = (...stages: object[]) =>
  runCook({
    body,
    startC: 4,
    stages: stages.map((s) => ({ name: 'stage', until, ...s })),
    target: { referenceC: 70, zC: 7.5, min: 2 },
  });
const refusalOf = (over: object) => {
  try {
    cookOf(over);
  } catch (error) {
    if (error instanceof InputProblems) return error.message;
    throw error;
  }
  return 'accepted';
};

describe('surroundingsOf', () => {
  test('a plain stage stays what it was: its coefficient and its resistance in one number, no law', () => {
    expect(surroundingsOf(stage({ medium: 'steam', mediumC: 100 }), 's')).toEqual({ medium: 100, h: 1000 });
    expect(surroundingsOf(stage({ medium: 'fan oven', mediumC: 180 }), 's')).toEqual({ medium: 180, h: 30 });
    expect(
      surroundingsOf(stage({ mediumC: 80, hWm2K: 300, resistanceM2KW: 1e-3, wrapped: true }), 's').h,
    ).toBeCloseTo(1 / (1 / 300 + 1e-3), 9);
    // A coefficient of one's own for low-temperature steam is still that.
    expect(surroundingsOf(stage({ medium: 'low-temperature steam', mediumC: 85, hWm2K: 350 }), 's')).toEqual({
      medium: 85,
      h: 350,
    });
  });

  test('steam and boiling water follow altitude, pressure and salt', () => {
    const at = (over: Partial<StageInput>) => surroundingsOf(stage(over), 's').medium as number;
    expect(at({ medium: 'steam' })).toBe(100);
    expect(at({ medium: 'steam', altitudeM: 1500 })).toBeCloseTo(94.983, 2);
    expect(at({ medium: 'boiling water', altitudeM: 3000 })).toBeCloseTo(89.972, 2);
    expect(at({ medium: 'steam', pressureKPa: 101.325 })).toBeCloseTo(99.974, 3);
    expect(at({ medium: 'steam', pressureKPa: 180 })).toBeCloseTo(saturationTemperature(180e3), 9);
    // Saturated brine boils at 108.7 °C, published; its water activity at 25 °C gives half a degree less.
    expect(Math.abs(at({ medium: 'boiling water', brineSaltPct: 26.4 }) - 108.7)).toBeLessThan(0.7);
  });

  test('low-temperature steam where no coefficient is given: saturated air, with its film and its walls', () => {
    const { h, surface } = surroundingsOf(stage({ medium: 'low-temperature steam', mediumC: 85 }), 's');
    expect(h).toBe(15);
    expect(surface?.vapour).toMatchObject({ relative: 1, activity: 1, condensate: 5000 });
    expect(surface?.radiators).toEqual([{ emissivity: 0.9 }]);
  });

  test('dew point and wet bulb become the vapour they mean, at the pressure of the place', () => {
    const dew = surroundingsOf(stage({ medium: 'fan oven', mediumC: 150, dewPointC: 50 }), 's').surface
      ?.vapour;
    expect(dew?.partial).toBeCloseTo(12_351, 0);
    const wet = surroundingsOf(
      stage({ medium: 'fan oven', mediumC: 150, wetBulbC: 57.48, altitudeM: 0 }),
      's',
    ).surface?.vapour;
    expect(Math.abs((wet?.partial ?? 0) - 12_350)).toBeLessThan(20);
    const high = surroundingsOf(
      stage({ medium: 'fan oven', mediumC: 150, humidityPct: 30, altitudeM: 2000 }),
      's',
    );
    expect(high.surface?.vapour?.pressure).toBeCloseTo(pressureAtHeight(2000), 6);
  });

  test('wrapped: nothing dries; a source takes the place of the walls it hides', () => {
    expect(
      surroundingsOf(stage({ medium: 'fan oven', mediumC: 150, humidityPct: 20, wrapped: true }), 's').surface
        ?.vapour?.activity,
    ).toBe(0);
    const { surface, h } = surroundingsOf(
      stage({ medium: 'radiant grill', radiantC: 700, radiantShare: 0.4 }),
      's',
    );
    expect(h).toBe(7);
    expect(surface?.radiators).toEqual([{ C: 700, emissivity: 0.4 }, { emissivity: 0.5 }]);
    expect(surroundingsOf(stage({ medium: 'radiant grill', fluxWm2: 5000 }), 's').surface?.flux).toBe(5000);
  });

  test('wraps of the table stand in series, and nothing dries off through them', () => {
    const wraps = [{ of: 'polyvinylidene chloride', thicknessMm: 0.01, layers: 10 }];
    // Published: ten layers of 10 µm at 0.13 W/(m K) take 1000 to 565.2.
    expect(surroundingsOf(stage({ mediumC: 100, hWm2K: 1000, wraps }), 's').h).toBeCloseTo(565.2, 1);
    const { surface } = surroundingsOf(
      stage({ medium: 'fan oven', mediumC: 150, humidityPct: 20, wraps }),
      's',
    );
    expect(surface?.resistance).toBeCloseTo(7.692e-4, 7);
    expect(surface?.vapour?.activity).toBe(0);
    const open = stage({ medium: 'fan oven', mediumC: 150, humidityPct: 20, wraps, wrapped: false });
    expect(surroundingsOf(open, 's').surface?.vapour?.activity).toBe(1);
    expect(stageBasis(open).some((b) => /10 × 0\.01 mm of polyvinylidene chloride/.test(b.what))).toBe(true);
  });

  test('ladled fat: its share of the time', () => {
    const { surface } = surroundingsOf(
      stage({ medium: 'ladled fat', ladle: { fatC: 180, onS: 4, everyS: 10 } }),
      's',
    );
    expect(surface?.ladle).toMatchObject({ C: 180, share: 0.4 });
    // Of the 300 under the fat the surface's own warming under each ladle takes a tenth.
    expect(surface?.ladle?.h).toBeCloseTo(271.1, 1);
  });
});

describe('cook with a surface', () => {
  test('an answer says what dried off and what settled; a plain one does not', () => {
    const wet = cookOf({ medium: 'fan oven', mediumC: 150, humidityPct: 10 });
    expect(wet.waterLostPct).toBeGreaterThan(5);
    expect(wet.stages[0]?.waterLostG).toBeCloseTo(wet.waterLostPct! * wet.massKg * 10, 6);
    const plain = cookOf({ medium: 'fan oven', mediumC: 150 });
    expect(plain.waterLostPct).toBeUndefined();
    expect(plain.stages[0]).not.toHaveProperty('waterLostG');
    expect(plain.stages[0]!.surfaceC).toBeGreaterThan(wet.stages[0]!.surfaceC + 20);
    const steamed = cookOf({ medium: 'low-temperature steam', mediumC: 85 });
    expect(steamed.stages[0]?.waterLostG).toBe(0);
    expect(steamed.stages[0]?.waterSettledG).toBeGreaterThan(50);
    for (const { heatBalancePct } of [wet, plain, steamed]) expect(heatBalancePct).toBeLessThan(0.1);
  });

  test('more vapour heats sooner; what is wrapped in steam is still steamed on', () => {
    const coldest = (over: object) =>
      cookOf({ medium: 'fan oven', mediumC: 85, ...over }).stages[0]!.coldestC;
    expect(coldest({ humidityPct: 90 })).toBeGreaterThan(coldest({ humidityPct: 50 }) + 3);
    expect(coldest({ humidityPct: 100, wrapped: true })).toBeCloseTo(coldest({ humidityPct: 100 }), 6);
    expect(coldest({ humidityPct: 10, wrapped: true })).toBeGreaterThan(coldest({ humidityPct: 10 }) + 2);
  });

  test('the basis names correlation, pressure and what was taken for granted', () => {
    const said = (over: Partial<StageInput>) =>
      stageBasis(stage(over))
        .map((b) => b.what)
        .join('\n');
    expect(said({ medium: 'steam' })).toMatch(/sea level, as no altitude is given/);
    expect(said({ medium: 'steam', altitudeM: 1500 })).toMatch(/boils there at 95\.0 °C/);
    expect(said({ medium: 'steam', mediumC: 95 })).toMatch(/16 % air by volume/);
    expect(said({ medium: 'steam', mediumC: 120 })).toMatch(/closed vessel at 198\.\d kPa/);
    expect(said({ medium: 'fan oven', mediumC: 150, humidityPct: 30 })).toMatch(/30 % humidity as given/);
    expect(said({ medium: 'low-temperature steam', mediumC: 85 })).toMatch(/saturated with steam/);
    expect(said({ medium: 'ladled fat', ladle: { fatC: 180, onS: 4, everyS: 10 } })).toMatch(
      /40 % of the time/,
    );
    expect(said({ medium: 'radiant grill', fluxWm2: 5000 })).toMatch(/5000 W\/m²/);
  });

  test.each<[string, object, RegExp]>([
    [
      'both humidity and dew point',
      { medium: 'fan oven', mediumC: 150, humidityPct: 30, dewPointC: 50 },
      /stages\[0\]\.dewPointC: found dewPointC beside humidityPct/,
    ],
    [
      'humidity above 100 %',
      { medium: 'fan oven', mediumC: 150, humidityPct: 130 },
      /stages\[0\]\.humidityPct: found 130, allowed at most 100/,
    ],
    [
      'a dew point above the air',
      { medium: 'fan oven', mediumC: 60, dewPointC: 70 },
      /dewPointC: found a dew point of 70 °C in air of 60 °C/,
    ],
    [
      'a dew point above boiling',
      { medium: 'fan oven', mediumC: 180, dewPointC: 120 },
      /below boiling \(100\.0 °C\)/,
    ],
    [
      'a wet bulb above the air',
      { medium: 'fan oven', mediumC: 60, wetBulbC: 70 },
      /wetBulbC: found 70 °C in air of 60 °C/,
    ],
    [
      'a wet bulb colder than dry air gives',
      { medium: 'fan oven', mediumC: 150, wetBulbC: 20 },
      /wetBulbC: .*that of air without vapour/,
    ],
    [
      'one wet bulb beside a log',
      {
        medium: 'fan oven',
        mediumLog: [
          { min: 0, C: 100 },
          { min: 9, C: 150 },
        ],
        wetBulbC: 50,
      },
      /wetBulbC: found one wet bulb beside a log/,
    ],
    [
      'humidity of a liquid',
      { medium: 'water bath', mediumC: 60, humidityPct: 50 },
      /stages\[0\]\.medium: found water bath with humidity/,
    ],
    [
      'steam hotter than its pressure allows',
      { medium: 'steam', mediumC: 105, pressureKPa: 101.3 },
      /mediumC: found steam at 105 °C, allowed at most 100\.0 °C/,
    ],
    [
      'steam hotter than its height allows',
      { medium: 'steam', mediumC: 98, altitudeM: 1500 },
      /at most 95\.0 °C, where it boils/,
    ],
    [
      'low-temperature steam hotter than its height allows',
      { medium: 'low-temperature steam', mediumC: 97, altitudeM: 3000 },
      /at most 90\.0 °C/,
    ],
    [
      'altitude and pressure',
      { medium: 'steam', altitudeM: 100, pressureKPa: 100 },
      /pressureKPa: found a pressure beside altitudeM/,
    ],
    ['salt in steam', { medium: 'steam', brineSaltPct: 5 }, /brineSaltPct: found salt in steam/],
    ['a grill without its heat', { medium: 'radiant grill', mediumC: 30 }, /fluxWm2: found nothing/],
    [
      'flux and source',
      { medium: 'radiant grill', fluxWm2: 3000, radiantC: 700, radiantShare: 0.4 },
      /radiantC: found a source beside fluxWm2/,
    ],
    ['a source without its share', { medium: 'radiant grill', radiantC: 700 }, /radiantShare: found nothing/],
    [
      'a ladle longer than its turn',
      { medium: 'ladled fat', ladle: { fatC: 180, onS: 12, everyS: 10 } },
      /ladle\.onS: found 12 s, allowed at most everyS, 10 s/,
    ],
    ['ladled fat without fat', { medium: 'ladled fat' }, /ladle: found nothing/],
    [
      'emissivity where it is in the coefficient',
      { medium: 'fan oven', mediumC: 150, emissivity: 0.9 },
      /emissivity: .*only beside/,
    ],
    [
      'a dry surface where nothing dries',
      { medium: 'fan oven', mediumC: 150, surfaceWaterActivity: 0.9 },
      /surfaceWaterActivity: .*only beside/,
    ],
    ['a coefficient of water in air', { mediumC: 80, hWm2K: 4000, humidityPct: 80 }, /hWm2K: found 4000/],
    [
      'a fierce fire on a dry surface',
      { medium: 'radiant grill', fluxWm2: 60_000 },
      /stages: found a surface that reaches \d+ °C/,
    ],
    [
      'an unknown wrap',
      { medium: 'steam', wraps: [{ of: 'paper', thicknessMm: 0.1 }] },
      /stages\[0\]\.wraps\[0\]\.of: found "paper", allowed one of polyethylene/,
    ],
    ['an unknown key', { medium: 'fan oven', mediumC: 150, humidity: 50 }, /unknown key/],
  ])('%s is refused by path', (_, over, message) => {
    expect(refusalOf(over)).toMatch(message);
  });
});

describe('mediaRanges', () => {
  test('only where asked for, only for what the table gave, in minutes', () => {
    const input = {
      body,
      startC: 4,
      stages: [
        { name: 'steam', medium: 'steam', until: { min: 40 } },
        { name: 'ice water', medium: 'ice water', hWm2K: 210, until: { warmestC: 5 } },
      ],
      target: { referenceC: 70, zC: 7.5, min: 2 },
    };
    expect(runCook(input)).not.toHaveProperty('mediaRanges');
    const { mediaRanges } = runCook({ ...input, mediaRanges: true });
    expect(mediaRanges?.map((row) => [row.name, row.lowWm2K, row.highWm2K])).toEqual([['steam', 400, 5000]]);
    const [row] = mediaRanges ?? [];
    expect(row?.lowMin).toBeGreaterThan(row?.usualMin as number);
    expect(row?.usualMin).toBeGreaterThan(row?.highMin as number);
    expect(row?.source).toBe('pannu-castaigne-arul');
  });
});

describe('a hot oven of which nothing is said', () => {
  const doubts = (over: object) =>
    toProblem({
      body,
      startC: 4,
      stages: [{ name: 'stage', until, ...over }],
      target: { referenceC: 70, zC: 7.5, min: 2 },
    }).doubts ?? [];
  test('is computed as if nothing dried, which is not on the safe side: doubted, and said in the basis', () => {
    expect(doubts({ medium: 'fan oven', mediumC: 180 })[0]?.what).toMatch(/as if nothing dried off/);
    expect(doubts({ medium: 'radiant grill', fluxWm2: 5000 })).toHaveLength(1);
    expect(doubts({ medium: 'ladled fat', ladle: { fatC: 180, onS: 4, everyS: 10 } })).toHaveLength(1);
    expect(
      stageBasis(stage({ medium: 'fan oven', mediumC: 180 })).some((b) =>
        /as if nothing dried off/.test(b.what),
      ),
    ).toBe(true);
  });
  test.each<[string, object]>([
    ['vapour told', { medium: 'fan oven', mediumC: 180, humidityPct: 20 }],
    ['wrapped', { medium: 'fan oven', mediumC: 180, wrapped: true }],
    ['a coefficient of one’s own', { medium: 'fan oven', mediumC: 180, hWm2K: 12 }],
    ['steam', { medium: 'steam' }],
    ['cold air', { medium: 'blast chiller' }],
    ['a rest', { medium: 'still air', mediumC: 22 }],
    ['low-temperature steam', { medium: 'low-temperature steam', mediumC: 80 }],
  ])('not where it is: %s', (_, over) => {
    expect(doubts(over)).toEqual([]);
  });
});
