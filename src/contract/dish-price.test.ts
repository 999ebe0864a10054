import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dishCosts, dishPrice, energyUseOf } from './dish-price.ts';
import { methodWeights } from './method-weights.ts';
import type { KitchenRates } from './rates.ts';
import type { Method } from './steps.ts';

const rates: KitchenRates = {
  from: '2026-01-01',
  labour: [
    { grade: 'chef', perHour: 1800 },
    { grade: 'apprentice', perHour: 1200 },
  ],
  electricityPerKwh: 30,
  gasPerKwh: 10,
  machines: [
    { use: 'steamer', fuel: 'electricity', efficiencyPct: 50 },
    { use: 'oven', fuel: 'gas', efficiencyPct: 25 },
  ],
  packagingPerPortion: 12,
  overheadPct: null,
  fixedPerService: 20_000,
  vatPct: 20,
  pricesIncludeVat: true,
  servicePct: null,
  marginPct: 70,
  marginAfter: 'food',
  priceStep: 50,
};
const common = (id: string, handsMin = 0) => ({ id, name: id, how: '', handsMin, asks: [] });
const method = (k = 1): Method => [
  { kind: 'trim', ...common('trim', 30 * k), part: 'heart', weightG: 1000 * k, yieldPct: 80 },
  {
    kind: 'cook',
    ...common('cook', 10 * k),
    grade: 'apprentice',
    lossPct: 25,
    body: {
      shape: 'slab',
      thicknessMm: 20,
      layers: [{ name: 'm', properties: { kWmK: 0.5, rhoKgM3: 1050, cpJkgK: 3500 } }],
    },
    startC: 5,
    stages: [{ name: 'steam', medium: 'steam', mediumC: 100, until: { min: 60 } }],
    target: { referenceC: 70, zC: 7.5, min: 2 },
    rules: [],
  },
  {
    kind: 'mix',
    ...common('mix'),
    lines: [
      { ingredient: 'cooked heart', g: 600 * k, carried: true },
      { ingredient: 'onion', g: 100 * k },
    ],
    maxC: 12,
  },
  { kind: 'plate', ...common('plate'), portionG: 70, portionsPerPiece: 1, lossPct: 0 },
];
const dish = { species: 'pig', part: 'heart' };
const priced = { lineCostPerKg: () => 200, trimCostPerKg: () => 500 };
const of = (m: Method, r: KitchenRates | null = rates, p: Parameters<typeof dishCosts>[3] = priced) => {
  const weights = methodWeights(dish, m);
  const lines = dishCosts(m, weights, r, p);
  return { weights, lines, price: dishPrice(lines, weights.portions, r) };
};

describe('dishCosts', () => {
  it('counts what is carried once, hands by their grade, packaging by the portion', () => {
    const { lines, weights } = of(method());
    expect(weights.portions?.usual).toBeCloseTo(10, 6);
    const cost = Object.fromEntries(lines.map((l) => [l.name, l.cost?.usual]));
    expect(cost.heart).toBe(500);
    expect(cost.onion).toBe(20);
    expect(cost['cooked heart']).toBeUndefined();
    expect(cost['trim: hands']).toBe(900);
    expect(cost['cook: hands']).toBe(200);
    expect(cost.Packaging).toBeCloseTo(120, 6);
    // 0.8 kg from 5 to 100 °C, half of what is paid reaching it: about 0.15 kWh at 30.
    expect(cost['cook: energy']).toBeGreaterThan(3);
    expect(cost['cook: energy']).toBeLessThan(6);
  });

  it('never takes an unknown price for nothing: no menu price then', () => {
    const { price } = of(method(), rates, { ...priced, trimCostPerKg: () => null });
    expect(price?.missing).toEqual(['heart']);
    expect(price?.wanted).toBeNull();
    expect(of(method(), null).price?.wanted).toBeNull();
  });

  it('names a machine whose efficiency nobody has entered', () => {
    const { lines } = of(method(), { ...rates, machines: [] });
    expect(lines.find((l) => l.kind === 'energy')).toMatchObject({
      cost: null,
      why: 'no efficiency or tariff for the steamer',
    });
  });

  it('is linear: k times the batch costs k times, and a portion the same', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 20, noNaN: true }), (k) => {
        const one = of(method());
        const many = of(method(k));
        expect(many.price!.total.usual / one.price!.total.usual).toBeCloseTo(k, 6);
        expect(many.price!.perPortion.usual).toBeCloseTo(one.price!.perPortion.usual, 6);
        expect(many.price!.wanted!.price).toBe(one.price!.wanted!.price);
        expect(many.price!.wanted!.margin).toBeCloseTo(one.price!.wanted!.margin, 9);
      }),
    );
  });
});

describe('dishPrice', () => {
  it('leaves the margin that is wanted after food, and breaks even after everything', () => {
    const { price } = of(method());
    expect(price?.counted).toBeCloseTo(52, 6);
    // 52 / 0.3 = 173.33 net, 208 with tax, up to the next 50.
    expect(price?.wanted?.price).toBe(250);
    expect(price?.wanted?.margin).toBeGreaterThanOrEqual(0.7);
    const at = price!.at(1200)!;
    expect(at.net).toBe(1000);
    const variable = price!.perPortion.usual;
    expect(at.breakEven).toBe(Math.ceil(20_000 / (1000 - variable)));
    expect(price!.sensitive[0]?.name).toBe('trim: hands');
    expect(price!.sensitive[0]?.tenthMore).toBeCloseTo(9, 6);
    expect(price!.rest(4200, 2000)).toBeCloseTo(12_000, 6);
  });
});

describe('energyUseOf', () => {
  it('reads the machine from the medium', () => {
    const stage = (name: string) => ({ name, mediumC: 90, until: { min: 1 } });
    expect(energyUseOf(stage('steam'), false)).toBe('steamer');
    expect(energyUseOf(stage('hot oven'), false)).toBe('oven');
    expect(energyUseOf(stage('simmering stock'), false)).toBe('hob');
    expect(energyUseOf(stage('ice water'), true)).toBe('chiller');
  });
});
