import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Contradiction, OutOfRange } from '../errors.ts';
import { type CostedNode, type CostRule, jointCost, type PieceMoney, usableCost } from './joint-cost.ts';
import { keptFromBin } from './kept-from-bin.ts';
import { type BalancedNode, type BreakdownNode, balanceOf, type Weighing } from './mass-balance.ts';
import { shareOut } from './share-out.ts';
import { milligrams } from './weight.ts';

const part = (id: string, children?: readonly BreakdownNode[]): BreakdownNode => ({
  id,
  name: id,
  becomes: 'part',
  ...(children === undefined ? {} : { children }),
});
const goose: BreakdownNode = part('goose', [
  part('legs'),
  part('crown', [part('breasts'), { id: 'frame', name: 'frame', becomes: 'bone and waste' }]),
  part('neck'),
  { id: 'drip', name: 'drip', becomes: 'drip' },
]);
const scale = (node: string, grams: number): Weighing => ({ node, grams, accuracy: 1 });
const weighed = [
  scale('goose', 3700),
  scale('legs', 800),
  scale('crown', 2600.5),
  scale('breasts', 1100),
  scale('frame', 1490),
  scale('neck', 210),
  scale('drip', 20),
];
const find = (node: BalancedNode, id: string): BalancedNode | undefined =>
  node.id === id ? node : node.children.map((c) => find(c, id)).find((c) => c !== undefined);

describe('milligrams', () => {
  test('three decimals come back exactly, finer ones are refused', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e10 }), (mg) => {
        expect(milligrams(mg / 1000, 'x')).toBe(mg);
      }),
    );
    for (const wrong of [0.0004, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e8])
      expect(() => milligrams(wrong, 'x')).toThrow(OutOfRange);
  });
});

describe('balanceOf', () => {
  test('a goose by hand', () => {
    const { balance, children } = balanceOf(goose, weighed);
    expect(balance).toEqual({
      in: 3_700_000,
      parts: 3_610_500,
      drip: 20_000,
      waste: 0,
      unaccounted: 69_500,
      tolerance: 5_000,
      notWeighed: [],
    });
    expect(children[1]?.balance).toMatchObject({ waste: 1_490_000, parts: 1_100_000, unaccounted: 10_500 });
  });
  test('a later weighing stands and the earlier ones stay', () => {
    const again = balanceOf(goose, [...weighed, scale('neck', 190), scale('neck', 195)]);
    const neck = find(again, 'neck');
    expect(neck?.mg).toBe(195_000);
    expect(neck?.superseded.map((w) => w.grams)).toEqual([210, 190]);
    expect(again.balance?.unaccounted).toBe(84_500);
  });
  test('parts heavier than what they came from are refused and named, beyond the scales', () => {
    const heavier = (grams: number) => balanceOf(goose, [...weighed, scale('frame', grams)]);
    expect(heavier(1503.5).children[1]?.balance?.unaccounted).toBe(-3000);
    expect(() => heavier(1503.6)).toThrow(
      /goose › crown: found pieces of 2603\.6 g together \(breasts 1100 g/,
    );
  });
  test('what is not weighed stays unknown, is named, and its weight is not made up', () => {
    const half = balanceOf(goose, [scale('goose', 3700), scale('legs', 800), scale('breasts', 1100)]);
    expect(find(half, 'crown')).toMatchObject({ mg: null, weighed: false });
    expect(half.balance).toMatchObject({ unaccounted: 1_800_000, notWeighed: ['crown', 'neck', 'drip'] });
    expect(() => jointCost(half, 4200, { by: 'weight' })).toThrow(Contradiction);
  });
  test('a piece cut without being weighed whole weighs its pieces', () => {
    const sum = balanceOf(
      goose,
      weighed.filter((w) => w.node !== 'crown'),
    );
    expect(find(sum, 'crown')).toMatchObject({ mg: 2_590_000, weighed: false });
    expect(find(sum, 'crown')?.balance?.unaccounted).toBe(0);
  });
  test('an unknown piece, a double id and bone that is cut on are refused', () => {
    expect(() => balanceOf(goose, [scale('tail', 3)])).toThrow(/weighings\[0\]\.node: found "tail"/);
    expect(() => balanceOf(part('a', [part('a')]), [])).toThrow(Contradiction);
    expect(() =>
      balanceOf(part('a', [{ id: 'b', name: 'b', becomes: 'drip', children: [part('c')] }]), []),
    ).toThrow(Contradiction);
  });
});

describe('shareOut', () => {
  test('sums exactly, stays within one of the quota, keeps the order of the weights', () => {
    fc.assert(
      fc.property(
        fc.maxSafeInteger(),
        fc.array(fc.bigInt({ min: 0n, max: 10n ** 18n }), { minLength: 1, maxLength: 12 }),
        (amount, weights) => {
          const sum = weights.reduce((a, b) => a + b, 0n);
          fc.pre(sum > 0n);
          const shares = shareOut(amount, weights);
          expect(shares.reduce((a, b) => a + BigInt(b), 0n)).toBe(BigInt(amount));
          const size = BigInt(Math.abs(amount));
          const fair = shares.every((share, i) => {
            const low = (size * weights[i]!) / sum;
            const near = [low, low + 1n].includes(BigInt(Math.abs(share)));
            const ordered = weights.every(
              (w, j) => w <= weights[i]! || Math.abs(shares[j]!) >= Math.abs(share),
            );
            return near && ordered && (weights[i] !== 0n || share === 0);
          });
          expect(fair).toBe(true);
        },
      ),
      { numRuns: 10_000 },
    );
  });
  test('by hand, and nothing that carries', () => {
    // Quotas 24.02, 10.66, 4.575, 3.5705, 1.17: the two left over go to the second and the third.
    expect(shareOut(44, [21_878n, 9_713n, 4_167n, 3_252n, 1_065n])).toEqual([24, 11, 5, 3, 1]);
    expect(shareOut(-100, [1n, 1n, 1n])).toEqual([-34, -33, -33]);
    expect(shareOut(0, [0n])).toEqual([0]);
    expect(() => shareOut(1, [0n])).toThrow(Contradiction);
    expect(() => shareOut(0.5, [1n])).toThrow(OutOfRange);
  });
});

const costs = (node: CostedNode): Record<string, number> =>
  Object.assign({ [node.id]: node.cost }, ...node.children.map(costs));
const closes = (node: CostedNode): void => {
  if (node.children.length > 0) expect(node.children.reduce((sum, c) => sum + c.cost, 0)).toBe(node.cost);
  node.children.forEach(closes);
};

describe('jointCost', () => {
  const balanced = balanceOf(goose, weighed);
  const money: Record<string, PieceMoney> = {
    legs: { pricePerKg: 1400 },
    breasts: { pricePerKg: 2600, finishingPerKg: 100 },
    neck: { pricePerKg: 300 },
  };
  test('a goose by hand, by all three rules', () => {
    // 4200 over 800 + 2600.5 + 210 g.
    expect(costs(jointCost(balanced, 4200, { by: 'weight' }))).toEqual({
      goose: 4200,
      legs: 931,
      crown: 3025,
      breasts: 3025,
      frame: 0,
      neck: 244,
      drip: 0,
    });
    // Worth 1120 + 2750 + 63 = 3933.
    expect(costs(jointCost(balanced, 4200, { by: 'value' }, money))).toMatchObject({
      legs: 1196,
      crown: 2937,
      neck: 67,
    });
    expect(jointCost(balanced, 4200, { by: 'value' }, money).children[0]?.perKg).toBeCloseTo(
      (4200 * 1120) / 3933 / 0.8,
      8,
    );
    const shares = { legs: 1, breasts: 3, neck: 0 };
    expect(costs(jointCost(balanced, 4200, { by: 'shares', shares }))).toMatchObject({
      legs: 1050,
      breasts: 3150,
      neck: 0,
    });
  });
  test('a credit is taken off the rest, disposal is put on it', () => {
    const frame = (pricePerKg: number) => ({ ...money, frame: { pricePerKg } });
    const sold = jointCost(balanced, 4200, { by: 'weight' }, { neck: { pricePerKg: 300, credited: true } });
    expect(costs(sold)).toMatchObject({ neck: 63, legs: 973, crown: 3164 });
    const away = jointCost(balanced, 4200, { by: 'value' }, frame(-50));
    expect(costs(away)).toMatchObject({ frame: -75, breasts: costs(away).crown! + 75 });
    closes(away);
  });
  test('drip and bone that nobody weighed cost nothing; with a price they must be weighed', () => {
    const dry = balanceOf(
      goose,
      weighed.filter((w) => w.node !== 'drip'),
    );
    const free = jointCost(dry, 4200, { by: 'value' }, money);
    expect(free.children[3]).toMatchObject({ name: 'drip', mg: null, cost: 0, perKg: null, how: 'nothing' });
    closes(free);
    expect(() => jointCost(dry, 4200, { by: 'weight' }, { drip: { pricePerKg: -5 } })).toThrow(
      /goose › drip/,
    );
  });
  test('a part without price or share is refused and named', () => {
    expect(() => jointCost(balanced, 4200, { by: 'value' }, {})).toThrow(/goose › legs/);
    expect(() => jointCost(balanced, 4200, { by: 'shares', shares: { legs: 1, neck: 1 } })).toThrow(
      /breasts/,
    );
  });

  /** Random trees, everything weighed, pieces never heavier than their whole. */
  interface Grown {
    readonly tree: BreakdownNode;
    readonly weighings: Weighing[];
    readonly money: Record<string, PieceMoney>;
    readonly shares: Record<string, number>;
  }
  const grown = fc
    .record({
      seeds: fc.infiniteStream(fc.integer({ min: 0, max: 2 ** 31 - 1 })),
      depth: fc.integer({ min: 1, max: 4 }),
      total: fc.integer({ min: 1000, max: 500_000_000 }),
    })
    .map(({ seeds, depth, total }): Grown => {
      const next = (below: number) => (seeds.next().value as number) % below;
      const weighings: Weighing[] = [];
      const money: Record<string, PieceMoney> = {};
      const shares: Record<string, number> = {};
      let ids = 0;
      const grow = (mg: number, level: number): BreakdownNode => {
        const id = `p${ids++}`;
        const kind = next(10);
        const wide = level > 0 && kind > 3 ? 1 + next(5) : 0;
        weighings.push({ node: id, grams: mg / 1000, accuracy: 0 });
        const becomes = wide > 0 || kind > 1 || ids === 1 ? 'part' : kind === 1 ? 'drip' : 'bone and waste';
        if (wide === 0) {
          shares[id] = next(1000);
          if (becomes === 'part' || next(4) === 0)
            money[id] = {
              pricePerKg: next(6) === 0 ? -next(200) : next(5000) / 10,
              finishingPerKg: next(3) === 0 ? next(100) : 0,
              credited: next(6) === 0,
            };
        }
        let rest = mg;
        const children = Array.from({ length: wide }, () => {
          const piece = next(rest + 1);
          rest -= piece;
          return grow(piece, level - 1);
        });
        return { id, name: id, becomes, ...(wide > 0 ? { children } : {}) };
      };
      const tree = grow(total, depth);
      return { tree, weighings, money, shares };
    });

  test('10,000 random trees: mass and money close at every cut, by every rule', () => {
    let refused = 0;
    let shared = 0;
    fc.assert(
      fc.property(
        grown,
        fc.integer({ min: 0, max: 10_000_000 }),
        ({ tree, weighings, money, shares }, cost) => {
          const balanced = balanceOf(tree, weighings);
          const close = (node: BalancedNode): void => {
            const b = node.balance;
            if (b !== null) expect(b.parts + b.drip + b.waste + b.unaccounted).toBe(node.mg);
            node.children.forEach(close);
          };
          close(balanced);
          const rules: CostRule[] = [{ by: 'weight' }, { by: 'value' }, { by: 'shares', shares }];
          for (const rule of rules)
            try {
              const costed = jointCost(balanced, cost, rule, money);
              expect(costed.cost).toBe(cost);
              closes(costed);
              shared++;
            } catch (error) {
              // Nothing in the tree can carry the cost: said, never lost.
              if (!(error instanceof Contradiction)) throw error;
              refused++;
            }
        },
      ),
      { numRuns: 10_000 },
    );
    expect(shared).toBeGreaterThan(15_000);
    expect(refused).toBeLessThan(shared);
  });
});

describe('usableCost', () => {
  test('a free part costs its labour', () => {
    const { kg, perKg, labourPerKg } = usableCost({
      cost: 0,
      kg: 0.2,
      trimLoss: 0.1,
      cookingLoss: 0.27,
      labourMin: 6,
      labourPerHour: 1500,
    });
    expect(kg).toBeCloseTo(0.1314, 10);
    expect(perKg).toBeCloseTo(150 / 0.1314, 8);
    expect(labourPerKg).toBe(perKg);
  });
  test('a loss of all is refused', () => {
    const base = { cost: 1, kg: 1, trimLoss: 0, cookingLoss: 0, labourMin: 0, labourPerHour: 0 };
    expect(() => usableCost({ ...base, cookingLoss: 1 })).toThrow(OutOfRange);
    expect(() => usableCost({ ...base, kg: 0 })).toThrow(OutOfRange);
  });
});

describe('keptFromBin', () => {
  test('one figure, and nothing where none was published', () => {
    expect(keptFromBin('goose', 3.2)).toMatchObject({
      kgCO2e: 6,
      perKg: 1.84,
      meaning: expect.stringMatching(/proxy.*no saving/),
    });
    expect(keptFromBin('lamb', 0)?.kgCO2e).toBe(0);
    expect(keptFromBin('deer', 3)).toBe(null);
    expect(keptFromBin('constructor', 3)).toBe(null);
    expect(() => keptFromBin('pig', -1)).toThrow(OutOfRange);
  });
});
