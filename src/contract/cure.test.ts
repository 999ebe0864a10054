import { describe, expect, it } from 'vitest';
import { runCure } from './cure.ts';
import { InputProblems } from './problem.ts';

const piece = { shape: 'cylinder', diameterMm: 20, massG: 1000, water: 0.7576, salt: 0 };
const input = { piece, bath: { massG: 1000, saltPct: 6 }, temperatureC: 4, h: 24 };
const problems = (json: unknown) => {
  try {
    runCure(json);
  } catch (error) {
    if (error instanceof InputProblems) return error.problems;
    throw error;
  }
  throw new Error('was accepted');
};

describe('runCure', () => {
  it('1 : 1 in brine of 6 %', () => {
    const answer = runCure(input);
    expect(answer.equilibriumWaterPhaseSaltPct).toBeCloseTo(3.41375, 4);
    expect(answer.equilibriumSaltGPerKg).toBeCloseTo(26.7766, 3);
    expect(answer.equilibriumSaltPct).toBeCloseTo(2.6078, 3);
    expect(answer.coreSaltPct).toBeLessThan(answer.meanSaltPct);
    expect(answer.coreWaterActivity).toBeGreaterThan(answer.waterActivity);
    expect(answer.history.h.at(-1)).toBe(24);
    expect(answer.history.meanSaltPct.at(-1)).toBe(answer.meanSaltPct);
    expect(answer.profile[0]?.saltPct).toBe(answer.surfaceSaltPct);
    expect(answer.profile.at(-1)?.depthMm).toBe(10);
    expect(answer.basis.length).toBeGreaterThan(3);
    expect(answer.hoursTo90PctRange?.low).toBeLessThan(answer.hoursTo90Pct ?? 0);
    expect(answer.cautions.some((c) => c.includes('Do not count on salt'))).toBe(true);
    expect(answer.cautions.some((c) => c.includes('handled as raw'))).toBe(true);
  });

  it('sugar in the piece lowers the water activity by its own factor and is told', () => {
    const sugars = [{ sugar: 'sucrose', gPerKgWater: 342.3 }];
    const plain = runCure(input);
    const sweet = runCure({ ...input, piece: { ...piece, sugars } });
    // 1 mol/kg: ln a_w = ln(55.508/56.508) − 6.47 (1/56.508)²
    const factor = (55.508 / 56.508) * Math.exp(-6.47 / 56.508 ** 2);
    expect(sweet.waterActivity / plain.waterActivity).toBeCloseTo(factor, 5);
    expect(sweet.basis.map((b) => b.source)).toContain('norrish-1966');
    const twice = problems({ ...input, piece: { ...piece, sugars: [...sugars, ...sugars] } });
    expect(twice[0]?.path).toBe('piece.sugars');
  });

  it('says that a core is behind, also where it never arrives', () => {
    const block = { shape: 'slab', thicknessMm: 2000, massG: 5000, water: 0.7 };
    const answer = runCure({ piece: block, bath: { drySaltG: 500 }, temperatureC: 3, h: 500 });
    expect(answer.coreHoursTo90Pct).toBeNull();
    expect(answer.cautions.some((c) => c.includes('Judge the piece by its core'))).toBe(true);
  });

  it('never takes 3.5 % for safety', () => {
    const { cautions } = runCure({ ...input, bath: { saltPct: 20, strengthKept: true }, h: 2000 });
    expect(cautions[0]).toContain('one factor among several');
    expect(cautions[0]).toContain('Listeria');
  });

  it('tells of the slowest salt published, and does not count on the core where only that falls short', () => {
    const brine = { ...input, bath: { saltPct: 6, strengthKept: true } };
    const answer = runCure({ ...brine, h: 40 });
    expect(answer.coreWaterPhaseSaltPct).toBeGreaterThan(3.5);
    expect(answer.slowest?.coreWaterPhaseSaltPct).toBeLessThan(3.5);
    expect(answer.cautions[0]).toContain('Do not count on salt');
    const again = runCure({ ...brine, h: 40, diffusivityM2s: (answer.stages[0]?.diffusivityM2s ?? 0) * 0.6 });
    expect(again.slowest).toBeNull();
    expect(again.coreSaltPct).toBeCloseTo(answer.slowest?.coreSaltPct ?? 0, 9);
    const skin = { ...brine, piece: { ...piece, skin: { thicknessMm: 2 } }, diffusivityM2s: 2e-10 };
    const skinned = runCure(skin);
    expect(skinned.slowest?.meanSaltPct).toBeLessThan(skinned.meanSaltPct / 1.5);
  });

  it('stages, and dry salt', () => {
    const answer = runCure({
      piece: { ...piece, shape: 'slab', diameterMm: undefined, thicknessMm: 30, exposedFaces: 1 },
      stages: [
        { name: 'salt', bath: { drySaltG: 25 }, temperatureC: 3, h: 48 },
        { name: 'rinse', bath: { massG: 4000, saltPct: 0 }, temperatureC: 10, h: 0.1 },
        { name: 'rest', bath: { rest: true }, temperatureC: 3, h: 72 },
      ],
      diffusivityM2s: 2e-10,
    });
    expect(answer.stages.map((s) => s.name)).toEqual(['salt', 'rinse', 'rest']);
    expect(answer.equilibriumSaltPct).toBeCloseTo(answer.meanSaltPct, 9);
    expect(Math.abs(answer.saltBalancePct)).toBeLessThan(1e-8);
    expect(answer.hoursTo90PctRange).toBeNull();
    // A rinse of six minutes is no cure in the warm; a day at 10 °C is.
    expect(answer.cautions.some((c) => c.includes('At 10 °C'))).toBe(false);
    expect(runCure({ ...input, temperatureC: 10 }).cautions.some((c) => c.includes('At 10 °C'))).toBe(true);
  });

  it.each([
    ['piece.diameterMm', { ...input, piece: { ...piece, diameterMm: undefined } }],
    ['piece.thicknessMm', { ...input, piece: { ...piece, thicknessMm: 5 } }],
    ['piece.diameterMm', { ...input, piece: { ...piece, diameterMm: -4 } }],
    ['piece.colour', { ...input, piece: { ...piece, colour: 'red' } }],
    ['bath.saltPct', { ...input, bath: { massG: 1000, saltPct: 26.9 } }],
    ['bath', { ...input, bath: { massG: 1000, saltPt: 6 } }],
    ['bath', { ...input, bath: undefined }],
    ['bath.massG', { ...input, bath: { massG: 1e-6, saltPct: 6 } }],
    ['piece.massG', { ...input, piece: { ...piece, massG: 1e-6 } }],
    ['temperatureC', { ...input, temperatureC: 60 }],
    ['temperatureC', { ...input, bath: { massG: 1000, saltPct: 0.5 }, temperatureC: -1 }],
    ['h', { ...input, h: Number.POSITIVE_INFINITY }],
    ['h', { ...input, stages: [{ name: 'a', bath: { rest: true }, temperatureC: 3, h: 1 }] }],
    ['piece.skin.thicknessMm', { ...input, piece: { ...piece, skin: { thicknessMm: 10 } } }],
    ['piece.salt', { ...input, piece: { ...piece, water: 0.2, salt: 0.2 } }],
  ])('refuses %s', (path, json) => {
    expect(problems(json).map((p) => p.path)).toContain(path);
  });

  it('says the bound in the input’s own unit', () => {
    expect(problems({ ...input, bath: { massG: 1000, saltPct: 26.9 } })[0]).toEqual({
      path: 'bath.saltPct',
      found: '26.9 %',
      allowed: '0 to 26.33 %, saturation at 4 °C',
    });
  });
});

describe('nitrite in a cure', () => {
  const nitrite = { place: 'GB', product: 'meat product', method: 'dry', blendG: 20, blendStrengthPct: 0.6 };
  it('is answered within the limit and at it', () => {
    expect(runCure(input).nitrite).toBeNull();
    const gb = runCure({ ...input, nitrite });
    expect(gb.nitrite?.ingoingMgKgAsSodiumNitrite).toBeCloseTo(120, 9);
    expect(gb.nitrite?.verdict).toBe('within');
    expect(gb.cautions.some((c) => c.includes('poison'))).toBe(true);
    const eu = runCure({ ...input, nitrite: { ...nitrite, place: 'EU' } });
    expect(eu.nitrite?.ingoingMgKgAsIon).toBeCloseTo(80.02, 2);
    expect(eu.nitrite?.verdict).toBe('at the limit');
    expect(eu.cautions[0]).toContain('a little less');
  });

  it.each([
    ['nitrite.blendG', { ...nitrite, blendG: 26 }],
    ['nitrite.nitriteG', { ...nitrite, blendG: undefined, blendStrengthPct: undefined, nitriteG: 20 }],
    ['nitrite.blendG', { ...nitrite, product: 'raw meat preparation', blendG: 0.01 }],
    ['nitrite.product', { ...nitrite, product: 'traditional cured product' }],
    ['nitrite.place', { ...nitrite, place: 'GB-NIR' }],
    ['nitrite.blendStrengthPct', { ...nitrite, blendStrengthPct: undefined }],
    ['nitrite.pickleG', { ...nitrite, method: 'immersion to equilibrium' }],
    ['nitrite.pumpPct', { ...nitrite, pumpPct: 10 }],
    ['nitrite.method', { ...nitrite, method: 'smoked' }],
  ])('refuses %s', (path, wrong) => {
    expect(problems({ ...input, nitrite: wrong }).map((p) => p.path)).toContain(path);
  });
});

describe('nitrate in a cure', () => {
  const nitrate = { place: 'GB', product: 'meat product, not heated', nitrateG: 0.14, of: 'NaNO3' };
  it('is answered within the limit, potassium nitrate as sodium nitrate', () => {
    const answer = runCure({ ...input, piece: { ...piece, massG: 1000 }, nitrate });
    expect(answer.nitrate?.ingoingMgKgAsSodiumNitrate).toBeCloseTo(140, 9);
    expect(answer.cautions.some((c) => c.includes('Nitrate works only'))).toBe(true);
    const potassium = runCure({
      ...input,
      piece: { ...piece, massG: 1000 },
      nitrate: { ...nitrate, of: 'KNO3' },
    });
    expect(potassium.nitrate?.ingoingMgKgAsSodiumNitrate).toBeCloseTo((140 * 84.9947) / 101.1032, 3);
  });

  it.each([
    ['nitrate.nitrateG', { ...nitrate, nitrateG: 50 }],
    ['nitrate.product', { ...nitrate, place: 'EU' }],
    ['nitrate.nitrateG', { ...nitrate, product: 'raw meat preparation' }],
    ['nitrate.of', { ...nitrate, of: 'saltpetre' }],
  ])('refuses %s', (path, wrong) => {
    expect(
      problems({ ...input, piece: { ...piece, massG: 1000 }, nitrate: wrong }).map((p) => p.path),
    ).toContain(path);
  });
});

describe('the salt that is wanted', () => {
  it('the hours it says are the hours that give it', () => {
    const strong = { ...input, bath: { massG: 2 * piece.massG, saltPct: 8 } };
    const { wanted } = runCure({ ...strong, wanted: { saltPct: 1.5 } });
    expect(runCure({ ...strong, h: wanted?.hours }).meanSaltPct).toBeCloseTo(1.5, 3);
    expect(wanted?.hoursRange?.low).toBeLessThan(wanted?.hours ?? 0);
    expect(wanted?.hoursRange?.high).toBeGreaterThan(wanted?.hours ?? 0);
    const { strengthPct } = wanted ?? {};
    const again = runCure({ ...strong, bath: { ...strong.bath, saltPct: strengthPct } });
    expect(again.meanSaltPct).toBeCloseTo(1.5, 3);
    const atRest = runCure({ ...strong, bath: { ...strong.bath, saltPct: wanted?.atRest?.strengthPct } });
    expect(atRest.equilibriumSaltPct).toBeCloseTo(1.5, 9);
  });

  it('none was asked: none is answered', () => {
    expect(runCure(input).wanted).toBeNull();
  });
});

describe('a pumped piece', () => {
  it('begins with the brine in it, and says what needles do', () => {
    const answer = runCure({
      piece: { ...piece, salt: 0, pumped: { pumpPct: 10, brineSaltPct: 20 } },
      bath: { rest: true },
      temperatureC: 3,
      h: 24,
    });
    expect(answer.meanSaltPct).toBeCloseTo((0.02 / 1.1) * 100, 6);
    expect(answer.cautions.some((c) => c.includes('Needles'))).toBe(true);
  });
});
