import { describe, expect, it } from 'vitest';
import { cure } from '../core/salt/cure.ts';
import { brineFor, cureProblemOf, nitriteOfStep, nitriteProblems } from './method-cure.ts';
import { CureStep, type Method, type StepOf } from './steps.ts';

const id = (n: number) => `0198c0de-0000-7000-8000-00000000000${n}`;
const step = (more: Partial<StepOf<'cure'>> = {}): StepOf<'cure'> =>
  CureStep.parse({
    kind: 'cure',
    id: id(1),
    name: 'Cure',
    how: '',
    handsMin: 5,
    asks: [],
    by: 'brine',
    saltPct: 6,
    brinePerKg: 2,
    h: 12,
    mediumC: 4,
    piece: { shape: 'slab', acrossMm: 20, faces: 2, waterPct: 75 },
    ...more,
  });
const rinse: StepOf<'rinse and dry'> = {
  kind: 'rinse and dry',
  id: id(2),
  name: 'Rinse',
  how: '',
  handsMin: 2,
  asks: [],
  rinseMin: 2,
  dryMin: 20,
};

describe('brineFor', () => {
  it('weighs out salt and water for a kilogram of meat', () => {
    expect(brineFor(step())).toMatchObject({ saltKg: 0.12, waterKg: 1.88, strength: 0.06 });
    expect(brineFor(step({ by: 'dry cure', saltPct: 2 }))).toMatchObject({ saltKg: 0.02, bathKg: 0 });
    const even = brineFor(step({ by: 'equilibrium', saltPct: 2, brinePerKg: 0.5 }));
    expect(even.saltKg).toBeCloseTo(0.03, 12);
    expect(even.bathKg).toBeCloseTo(0.53, 12);
    expect(even.strength * even.bathKg).toBeCloseTo(0.03, 12);
  });
});

describe('cureProblemOf', () => {
  it('goes on through the rinse that follows and the rest', () => {
    const cured = step({ rest: { h: 24, mediumC: 2 } });
    const { problem, names } = cureProblemOf([cured, rinse], cured) ?? {};
    expect(names).toEqual(['in brine', 'rinsed', 'drying', 'resting']);
    const result = cure(problem ?? { piece: {} as never, stages: [] });
    expect(result.history.at(-1)?.t).toBeCloseTo(12 * 3600 + 120 + 1200 + 24 * 3600, 6);
    expect(result.stages[1]?.takenKg).toBeLessThan(0);
  });

  it('an equilibrium cure ends with so much salt in meat and water together', () => {
    const cured = step({ by: 'equilibrium', saltPct: 2, brinePerKg: 1, h: 1_900 });
    const end = cure(cureProblemOf([cured], cured)!.problem).history.at(-1)!;
    expect(end.meanWaterPhase).toBeCloseTo(0.04 / (0.04 + 0.75 + 1), 6);
  });

  it('nothing, where nobody has said how thick the piece is, or no time is given', () => {
    const { piece, ...bare } = step();
    expect(piece).toBeDefined();
    expect(cureProblemOf([bare], bare)).toBeNull();
    const none = step({ h: 0 });
    expect(cureProblemOf([none], none)).toBeNull();
  });
});

describe('nitrite of a step', () => {
  const curingSalt = { gPerKg: 20, nitritePct: 0.6, product: 'meat product' } as const;
  const dry = step({ by: 'dry cure', saltPct: 2, curingSalt });
  it('is reckoned by the way of curing and held to the law of the kitchen', () => {
    expect(nitriteOfStep(step(), 'EU')).toBeNull();
    expect(nitriteOfStep(dry, 'EU')).toMatchObject({ method: 'dry', verdict: 'at the limit' });
    expect(nitriteOfStep(dry, 'EU')?.ppm).toBeCloseTo(120, 9);
    expect(nitriteOfStep(dry, 'GB-SCT')?.verdict).toBe('within');
    expect(nitriteOfStep(dry, 'GB-NIR')?.verdict).toBe('not known');
    const wet = nitriteOfStep(step({ curingSalt: { ...curingSalt, gPerKg: 60 } }), 'GB-ENG');
    expect(wet?.ppm).toBeCloseTo((0.06 * 0.006 * 2 * 1e6) / 3, 6);
    expect(wet?.verdict).toBe('over');
    const even = nitriteOfStep(step({ by: 'equilibrium', saltPct: 2, brinePerKg: 1, curingSalt }), 'GB-ENG');
    expect(even?.ppm).toBeCloseTo((0.02 * 0.006 * 2 * 1e6) / 2.04, 6);
  });

  it('over, or not known, stops the signature', () => {
    const method: Method = [rinse, dry];
    expect(nitriteProblems(method, 'EU')).toEqual([]);
    expect(nitriteProblems(method, 'GB-NIR')[0]).toMatchObject({ path: 'method[1].curingSalt' });
    const raw = step({ by: 'dry cure', curingSalt: { ...curingSalt, product: 'raw meat preparation' } });
    expect(nitriteProblems([raw], 'GB-ENG')[0]?.allowed).toContain('none for a raw meat preparation');
    expect(nitriteProblems([step()], 'US')).toEqual([]);
  });
});
