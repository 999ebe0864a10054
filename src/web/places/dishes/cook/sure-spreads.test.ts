import { describe, expect, test } from 'vitest';
import { studyOf } from '../../../../contract/sure-input.ts';
import { heatOf, type ProgrammeInput, sureInput, usualSpreads, varyingWords } from './sure-spreads.ts';

const steam = { name: 'steam', medium: 'steam', mediumC: 100, until: { min: 34 } };
const programme = {
  body: {
    shape: 'revolved',
    profile: [
      { atMm: 0, diameterMm: 44 },
      { atMm: 180, diameterMm: 60 },
    ],
    layers: [
      { name: 'skin', thicknessMm: 3, properties: { kWmK: 0.4, rhoKgM3: 1050, cpJkgK: 3200 } },
      { name: 'filling', properties: { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 } },
    ],
  },
  startC: 4,
  stages: [steam, { name: 'ice water', medium: 'ice water', until: { warmestC: 8 } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
} satisfies ProgrammeInput;

describe('sureInput', () => {
  test('is a question that the engine takes, with everything that strays in it', () => {
    const study = studyOf(sureInput(programme, 0, usualSpreads, ['gb-70c-2min']));
    expect(study.variables.map((v) => [v.input, v.shared])).toEqual([
      ['body.layers[0].thicknessMm', false],
      ['startC', false],
      ['stages[0].mediumC', true],
      ['stages[0].hWm2K', true],
      ['thickerMm', false],
      ['probeErrorC', true],
    ]);
    expect(study.stage).toBe(0);
    for (const v of study.variables) expect(varyingWords(v.input, programme)).not.toBe(v.input);
  });

  test('nothing strays where it is said that nothing does', () => {
    const still = {
      ...usualSpreads,
      thickMm: 0,
      skinMm: 0,
      startC: 0,
      mediumC: 0,
      probeC: 0,
      published: false,
      hPct: 0,
    };
    expect(studyOf(sureInput(programme, 0, still, [])).variables).toEqual([]);
  });

  test('what is worked out from a mix may conduct worse or better, unless it is said not to', () => {
    const composition = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
    const [skin] = programme.body.layers;
    const mixed = {
      ...programme,
      body: { ...programme.body, layers: [skin, { name: 'filling', composition }] },
    } as ProgrammeInput;
    const of = (conductPct: number) => {
      const study = studyOf(sureInput(mixed, 0, { ...usualSpreads, conductPct }, []));
      return {
        usual: study.usualConductivity,
        reach: study.variables.find((v) => v.input === 'conductivityFactor')?.reach,
      };
    };
    expect(of(10).usual).toBe(true);
    expect(of(10).reach).toBeCloseTo(0.1, 12);
    expect(of(5).usual).toBe(false);
    expect(of(5).reach).toBeCloseTo(0.05, 12);
    expect(of(0)).toEqual({ usual: false, reach: undefined });
    expect(varyingWords('conductivityFactor', mixed)).toMatch(/conducts heat/);
  });

  test('a quick look has enough pieces for all that can stray', () => {
    const study = studyOf(sureInput(programme, 0, { ...usualSpreads, samples: 100 }, []));
    expect(study.samples).toBe(100);
  });

  test('a stage with a coefficient of its own strays about that one', () => {
    const own = { ...programme, stages: [{ ...steam, hWm2K: 800 }] };
    const study = studyOf(sureInput(own, 0, usualSpreads, []));
    expect(study.variables.find((v) => v.input === 'stages[0].hWm2K')).toMatchObject({
      kind: 'normal',
      middle: 800,
      reach: 160,
    });
  });

  test('how hot a stage is follows its medium where it says nothing itself', () => {
    const { mediumC: _, ...plain } = steam;
    expect(heatOf(plain)).toBeCloseTo(100, 0);
    expect(heatOf({ ...plain, altitudeM: 1_500 })).toBeCloseTo(95, 0);
  });
});
