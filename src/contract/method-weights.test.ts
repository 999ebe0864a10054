import { describe, expect, it } from 'vitest';
import { cookedBy, methodWeights } from './method-weights.ts';
import type { Method, Step } from './steps.ts';

const common = (id: string) => ({ id, name: id, how: '', handsMin: 0, asks: [] });
const trim = (part: string, weightG: number, yieldPct: number): Step => ({
  kind: 'trim',
  ...common('trim'),
  part,
  weightG,
  yieldPct,
});
const simmer = (lossPct?: number): Step => ({
  kind: 'cook',
  ...common('cook'),
  body: {
    shape: 'slab',
    thicknessMm: 20,
    layers: [{ name: 'meat', properties: { kWmK: 0.5, rhoKgM3: 1050, cpJkgK: 3500 } }],
  },
  startC: 4,
  stages: [{ name: 'simmer', medium: 'water bath', mediumC: 90, until: { min: 90 } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  rules: [],
  ...(lossPct === undefined ? {} : { lossPct }),
});
const mix = (lines: { g: number; carried?: true; toPct?: number }[]): Step => ({
  kind: 'mix',
  ...common('mix'),
  lines: lines.map(({ g, carried, toPct }) => ({
    ingredient: 'x',
    g,
    ...(carried === undefined ? {} : { carried }),
    ...(toPct === undefined ? {} : { reduced: { toPct } }),
  })),
  maxC: 12,
});
const plate = (portionG: number, portionsPerPiece = 1): Step => ({
  kind: 'plate',
  ...common('plate'),
  portionG,
  portionsPerPiece,
  lossPct: 0,
});

describe('methodWeights', () => {
  it('takes a published yield where nothing was weighed, and says whose', () => {
    const w = methodWeights({ species: 'pig', part: 'heart' }, [
      trim('heart', 1000, 80),
      simmer(),
      plate(73),
    ]);
    expect(w.losses[1]).toMatchObject({ kind: 'cook', known: true });
    expect(w.losses[1]?.loss?.usual).toBeCloseTo(0.27, 10);
    expect(w.losses[1]?.why).toMatch(/pig heart, braised: 73 %/);
    expect(w.portions?.usual).toBeCloseTo(8, 6);
  });

  it('lets what was weighed here go before it', () => {
    const w = methodWeights({ species: 'pig', part: 'heart' }, [trim('heart', 1000, 80), simmer(40)]);
    expect(w.losses[1]).toMatchObject({ why: 'as weighed here', loss: { low: 0.4, usual: 0.4, high: 0.4 } });
    expect(w.mass.usual).toBeCloseTo(0.48, 12);
  });

  it('never takes what nobody knows for no loss', () => {
    const w = methodWeights({ species: 'pig', part: 'ear' }, [trim('ear', 1000, 100), simmer()]);
    expect(w.losses[1]).toMatchObject({ loss: null, known: false });
    expect(w.losses[1]?.why).toMatch(/weigh it in and out/);
  });

  it('weighs what is carried once, and what is cooked down as it is left', () => {
    const method: Method = [
      trim('heart', 1000, 80),
      simmer(40),
      mix([
        { g: 480, carried: true },
        { g: 200, toPct: 25 },
      ]),
    ];
    const w = methodWeights({ species: 'pig', part: 'heart' }, method);
    expect(w.mass.usual).toBeCloseTo(0.53, 12);
    expect(w.remarks.join(' ')).not.toMatch(/more of what was prepared/);
  });

  it('names a portion that is not what is written', () => {
    const fill: Step = {
      kind: 'fill',
      ...common('fill'),
      casing: 'skin',
      profile: [
        { atMm: 0, diameterMm: 40 },
        { atMm: 100, diameterMm: 40 },
      ],
      skinMm: 3,
      gramsPerPiece: 100,
      headSpacePct: 5,
    };
    const w = methodWeights({ species: 'pig', part: 'heart' }, [
      trim('heart', 500, 100),
      mix([{ g: 1050 }]),
      fill,
      plate(100, 1),
    ]);
    expect(w.pieces).toBe(10);
    expect(w.remarks).toEqual([
      '50 g of the filling is left over.',
      'A portion is written as 100 g and comes to about 150 g: 50 g more.',
    ]);
  });

  it('reads how a part is cooked from its media', () => {
    expect(cookedBy([{ name: 'in the oven', mediumC: 180, until: { min: 20 } }])).toBe('roasted');
    expect(cookedBy([{ name: 'steam', mediumC: 100, until: { min: 20 } }])).toBe('simmered');
  });
});
