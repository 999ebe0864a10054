import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TreeNode, WeighingInput } from './breakdown.ts';
import {
  animalByAnimal,
  balanceOfTree,
  standingLines,
  standingWeights,
  wholeMissing,
} from './breakdown-balance.ts';

const node = (id: string, parent: string | null, becomes: TreeNode['becomes']): TreeNode => ({
  id,
  parent,
  name: id,
  becomes,
  class: null,
  use: 'menu',
  piecesPerAnimal: null,
});
const tree = [
  node('goose', null, 'step'),
  node('breast', 'goose', 'part'),
  node('neck', 'goose', 'step'),
  node('skin', 'neck', 'part'),
  node('bone', 'neck', 'bone'),
  node('drip', 'goose', 'drip'),
];
let count = 0;
const line = (place: string, grams: number, more: Partial<WeighingInput> = {}): WeighingInput => {
  count += 1;
  return {
    id: `00000000-0000-7000-8000-${String(count).padStart(12, '0')}`,
    node: place,
    animal: null,
    grossGrams: grams,
    tareGrams: 0,
    pieces: null,
    corrects: null,
    takenBack: false,
    at: '2026-11-20T10:00:00.000Z',
    ...more,
  };
};

describe('standingLines', () => {
  it('a corrected line and one taken back do not stand; what took its place does', () => {
    const a = line('breast', 800);
    const b = line('breast', 810, { corrects: a.id });
    const c = line('skin', 90);
    const d = line('skin', 90, { corrects: c.id, takenBack: true });
    expect(standingLines([a, b, c, d])).toEqual([b]);
    expect(standingWeights([a, b, c, d]).get('breast')?.grams).toBe(810);
    expect(standingWeights([a, b, c, d]).has('skin')).toBe(false);
  });
  it('trays of one part are summed without binary dust', () => {
    const sum = standingWeights([line('breast', 0.1), line('breast', 0.2, { pieces: 2 })]);
    expect(sum.get('breast')).toEqual({ grams: 0.3, pieces: 2, weighings: 2 });
  });
});

describe('balanceOfTree', () => {
  it('in = out + unaccounted at every cut, to the milligram', () => {
    const mg = fc.integer({ min: 0, max: 2_000_000 });
    fc.assert(
      fc.property(mg, mg, mg, mg, (breast, skin, bone, drip) => {
        const weights = standingWeights([
          line('breast', breast / 1000),
          line('skin', skin / 1000),
          line('bone', bone / 1000),
          line('drip', drip / 1000),
        ]);
        const { byId } = balanceOfTree(tree, 9_000, weights);
        for (const { balance: b, mg: own } of byId.values())
          if (b !== null) {
            expect(b.parts + b.drip + b.waste + b.unaccounted).toBe(b.in);
            expect(b.in).toBe(own);
          }
      }),
    );
  });
  it('parts heavier than what they came from are named with their path', () => {
    expect(() => balanceOfTree(tree, 4_000, standingWeights([line('breast', 4_003)]))).toThrow(/goose/);
    expect(() => balanceOfTree(tree, 4_000, standingWeights([line('breast', 4_002)]))).not.toThrow();
  });
});

describe('animalByAnimal', () => {
  const one = (animal: number) => [
    line('goose', 4_000 + animal, { animal }),
    line('breast', 800, { animal }),
    line('skin', 90, { animal }),
  ];
  it('gives every animal where each was weighed by itself', () => {
    expect(animalByAnimal(tree, 2, [...one(1), ...one(2)])).toEqual([
      { animal: 1, inGrams: 4_001, grams: { breast: 800, skin: 90 } },
      { animal: 2, inGrams: 4_002, grams: { breast: 800, skin: 90 } },
    ]);
  });
  it('says nothing where something was weighed together, or is missing', () => {
    expect(animalByAnimal(tree, 2, [...one(1), ...one(2), line('drip', 40)])).toBeNull();
    expect(animalByAnimal(tree, 3, [...one(1), ...one(2)])).toBeNull();
    expect(animalByAnimal(tree, 1, [line('breast', 800, { animal: 1 })])).toBeNull();
  });
  it('the whole weighed for some and not for all is told', () => {
    expect(wholeMissing(tree, 2, one(1))).toMatch(/1 of 2/);
    expect(wholeMissing(tree, 2, [...one(1), ...one(2)])).toBeNull();
    expect(wholeMissing(tree, 2, [line('breast', 800)])).toBeNull();
  });
});
