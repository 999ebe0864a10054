import { describe, expect, test } from 'vitest';
import { nitriteHandedOn, saltHandedOn } from './handed-on.ts';
import { productOf } from './product-of.ts';
import type { Step, StepOf } from './steps.ts';

const common = (n: number, name: string) => ({
  id: `01900000-0000-7000-8000-${String(n).padStart(12, '0')}`,
  name,
  how: '',
  handsMin: 0,
  asks: [],
});
const cure = (over: Partial<StepOf<'cure'>> = {}): StepOf<'cure'> => ({
  kind: 'cure',
  ...common(1, 'cure'),
  by: 'dry cure',
  saltPct: 3,
  h: 48,
  mediumC: 3,
  piece: { shape: 'slab', acrossMm: 40, faces: 2, waterPct: 74 },
  curingSalt: { gPerKg: 25, nitritePct: 0.6, product: 'meat product' },
  ...over,
});
const mix: Step = { kind: 'mix', ...common(2, 'forcemeat'), lines: [], maxC: 4 };
const cook = (over: Partial<StepOf<'cook'>> = {}): StepOf<'cook'> => ({
  kind: 'cook',
  ...common(3, 'cook'),
  body: {
    shape: 'cylinder',
    diameterMm: 50,
    layers: [{ name: 'meat', properties: { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 } }],
  },
  startC: 4,
  stages: [{ name: 'steam', mediumC: 100, hWm2K: 1000, until: { min: 30 } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  rules: [],
  ...over,
});
const keep: Step = { kind: 'keep', ...common(4, 'keep'), maxC: 3, days: 3, packed: 'vacuum-packed' };
const pig = { species: 'pig', part: 'loin' };

describe('nitriteHandedOn', () => {
  test('a dry cure hands on what was weighed in: 25 g/kg of 0.6 % are 150 mg/kg', () => {
    expect(nitriteHandedOn([cure(), cook()], cook().id)?.ppm).toBe(150);
    expect(productOf(pig, [cure(), cook()], cook().id).nitritePpm).toBe(150);
  });

  test('what the cook step says overrules it', () => {
    expect(productOf(pig, [cure(), cook({ food: { nitritePpm: 40 } })], cook().id).nitritePpm).toBe(40);
  });

  test('a brine not at rest, and a filling that was not cured, hand on nothing, and say why', () => {
    const brine = nitriteHandedOn([cure({ by: 'brine' }), cook()], cook().id);
    expect(brine).toMatchObject({ ppm: null, why: expect.stringContaining('most that can go in') });
    const filled = nitriteHandedOn([cure(), mix, cook()], cook().id);
    expect(filled).toMatchObject({ ppm: null, why: expect.stringContaining('forcemeat') });
    expect(productOf(pig, [cure(), mix, cook()], cook().id).nitritePpm).toBeNull();
  });

  test('without curing salt, or with the cure after the step, there is none', () => {
    const { curingSalt: _, ...plain } = cure();
    expect(nitriteHandedOn([plain, cook()], cook().id)).toBeNull();
    expect(nitriteHandedOn([cook(), cure()], cook().id)).toBeNull();
  });
});

describe('saltHandedOn', () => {
  test('comes from the last cure, with a mix beside it where there is one', () => {
    expect(saltHandedOn([cure(), cook(), keep], keep.id)).toMatchObject({
      from: cure(),
      why: '',
      beside: null,
    });
    expect(saltHandedOn([cure(), mix, cook(), keep], keep.id)?.beside).toEqual(mix);
    expect(saltHandedOn([cook(), keep], keep.id)).toBeNull();
  });

  test('is not counted on where the piece is not known, or boiling takes it out', () => {
    const { piece: _, ...thin } = cure();
    expect(saltHandedOn([thin, cook(), keep], keep.id)?.why).toContain('how thick');
    const boiled = cook({
      stages: [{ name: 'pot', medium: 'simmering water', mediumC: 90, until: { min: 60 } }],
    });
    expect(saltHandedOn([cure(), boiled, keep], keep.id)?.why).toContain('takes salt out');
    const film: Step = {
      kind: 'wrap',
      ...common(9, 'film'),
      material: 'film',
      layers: 4,
      micrometres: 10,
      kWmK: 0.3,
    };
    expect(saltHandedOn([cure(), film, boiled, keep], keep.id)?.why).toBe('');
  });
});
