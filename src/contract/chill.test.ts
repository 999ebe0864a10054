import { describe, expect, test } from 'vitest';
import { runChill } from './chill.ts';
import { InputProblems } from './problem.ts';

const composition = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const layers = [{ name: 'forcemeat', composition }];
const roll = {
  shape: 'revolved',
  profile: [
    { atMm: 0, diameterMm: 50 },
    { atMm: 200, diameterMm: 56 },
  ],
  layers,
};
const input = { body: roll, startC: 75, stage: { medium: 'ice water' }, rules: ['gb-chill-90min-8c'] };
const problemOf = (bad: unknown) => {
  try {
    runChill(bad);
  } catch (error) {
    if (error instanceof InputProblems) return error.problems[0];
    throw error;
  }
  return undefined;
};

describe('chill', () => {
  test('one piece: time, verdict, weight, heat, and the largest of its shape', () => {
    const a = runChill(input);
    expect(a.asDrawn.passes).toBe(true);
    expect(a.asDrawn.min).toBeGreaterThan(40);
    expect(a.asDrawn.verdicts[0]?.rule).toBe('gb-chill-90min-8c');
    // 0.45 kg by 67 K at some 3.6 kJ/(kg K).
    expect(a.asDrawn.heatKJ).toBeGreaterThan(95);
    expect(a.asDrawn.heatKJ).toBeLessThan(125);
    const scale = a.largest?.scale ?? Number.NaN;
    expect(scale).toBeGreaterThan(1.2);
    expect(a.largest?.sizes.diameterMm).toBeCloseTo(56 * scale, 6);
    expect(a.largest?.massG).toBeCloseTo((a.asDrawn.massG ?? 0) * scale ** 3, 3);
    expect(a.most).toBeUndefined();
  });
  test('ice: so many pieces, the ice that one melts, and as many as were asked about', () => {
    const a = runChill({ ...input, machine: { iceKg: 5, waterKg: 10 }, pieces: 60 });
    expect(a.most?.pieces).toBeGreaterThan(5);
    expect(a.most?.load.passes).toBe(true);
    expect(a.iceKgPerPiece).toBeCloseTo((a.most?.load.heatKJ ?? 0) / (a.most?.pieces ?? 1) / 333.6, 6);
    expect(a.iceKgForWater).toBeCloseTo((10 * 4.19 * 10) / 333.6, 6);
    expect(a.asked?.passes).toBe(false);
    expect(a.asked?.mediumPeakC).toBeGreaterThan(10);
  });
  test('a wrap takes time and size', () => {
    const wrapped = runChill({ ...input, stage: { ...input.stage, resistanceM2KW: 0.01 } });
    const bare = runChill(input);
    expect(wrapped.asDrawn.min ?? 0).toBeGreaterThan((bare.asDrawn.min ?? 0) + 5);
    expect(wrapped.largest?.scale ?? 9).toBeLessThan(bare.largest?.scale ?? 0);
  });
  test('a rated machine is counted by its even power', () => {
    const a = runChill({
      ...input,
      stage: { medium: 'blast chiller', mediumC: -5, hWm2K: 45 },
      machine: { ratedKg: 20 },
    });
    expect(a.powerKW).toBeCloseTo((20 * 3.6 * 67) / 5400, 6);
    expect(a.most?.pieces).toBeGreaterThan(10);
    expect(a.basis.some((b) => b.source === 'common-practice')).toBe(true);
  });
  test('a piece that is too thick: not one, and that is said first', () => {
    const a = runChill({
      ...input,
      body: { shape: 'cylinder', diameterMm: 160, layers },
      stage: { medium: 'still fridge' },
      machine: { powerKW: 1 },
      pieceG: 2000,
    });
    expect(a.asDrawn.passes).toBe(false);
    expect(a.most?.pieces).toBe(0);
    expect(a.most?.load.passes).toBe(false);
    expect(a.cautions[0]).toContain('does not cool as the rules ask');
  });
  test.each([
    ['rules[0]', { ...input, rules: ['gb-70c-2min'] }],
    ['rules[0]', { ...input, rules: ['gb-chill-90min'] }],
    ['startC', { ...input, startC: 40 }],
    ['stage.mediumC', { ...input, stage: { hWm2K: 20, mediumC: 10 } }],
    ['stage.hWm2K', { ...input, stage: { mediumC: 1 } }],
    ['stage.mediumC', { ...input, stage: { medium: 'ice water', mediumC: 20 } }],
    ['pieceG', { ...input, pieceG: 300 }],
    ['pieceG', { ...input, body: { shape: 'slab', thicknessMm: 40, layers }, machine: { powerKW: 1 } }],
    ['machine', { ...input, pieces: 4 }],
    ['machine', { ...input, machine: { iceKg: 0, waterKg: 0 } }],
    ['machine.ratedFromC', { ...input, machine: { ratedKg: 10, ratedFromC: 20, ratedToC: 20 } }],
    ['stage.until', { ...input, stage: { medium: 'ice water', until: { min: 3 } } }],
    ['body.layers', { ...input, body: { ...roll, layers: [{ ...layers[0], thicknessMm: 40 }, ...layers] } }],
  ])('refuses what is wrong at %s', (path, bad) => {
    expect(problemOf(bad)?.path).toBe(path);
  });
});
