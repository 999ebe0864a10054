import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ScaledLine, scaleMix } from './scale.ts';
import { saltTolerance, weighed } from './weighing.ts';

const mix: ScaledLine[] = [
  { name: 'goose', mass: 2, meat: true },
  { name: 'cream', mass: 0.5 },
  { name: 'salt', mass: 0.04, amount: { by: 'of the meat', share: 0.018 }, salt: true },
  { name: 'bay leaf', mass: 0.001, amount: { by: 'per piece', mass: 0.0002 } },
];

describe('scaleMix', () => {
  it('takes shares of the meat and weights for each piece as they were meant', () => {
    const { masses, pieces } = scaleMix(mix, { by: 'pieces', pieces: 30 }, 10);
    expect(masses[0]).toBeCloseTo(6, 12);
    expect(masses[2]).toBeCloseTo(0.108, 12);
    expect(masses[3]).toBeCloseTo(0.006, 12);
    expect(pieces).toBeCloseTo(30, 12);
  });

  it('fills so many casings and no more', () => {
    const { total, pieces, masses } = scaleMix(mix, { by: 'casings', pieces: 12, capacity: 0.25 });
    expect(total).toBeCloseTo(3, 12);
    expect(pieces).toBe(12);
    expect(masses[3]).toBeCloseTo(0.0024, 12);
  });

  it('takes as much as the scarcest allows, and names it', () => {
    const lines = mix.map((l, i) => ({ ...l, available: [3, 0.6, 1, undefined][i] }));
    const out = scaleMix(lines, { by: 'scarcest' }, 10);
    expect(lines[out.scarcest!]?.name).toBe('cream');
    expect(out.times).toBeCloseTo(1.2, 12);
  });

  it('refuses what it cannot mean, by name', () => {
    expect(() => scaleMix(mix, { by: 'batch', mass: 3 })).toThrow('bay leaf');
    expect(() => scaleMix(mix.slice(0, 3), { by: 'pieces', pieces: 3 })).toThrow('how many pieces');
    expect(() => scaleMix(mix.slice(2, 3), { by: 'batch', mass: 1 })).toThrow('no line counts as meat');
    expect(() => scaleMix(mix, { by: 'casings', pieces: 10, capacity: 0.0001 })).toThrow('larger casings');
    expect(() => scaleMix(mix, { by: 'scarcest' }, 10)).toThrow('nobody has said what there is');
    expect(() => scaleMix(mix, { by: 'times', times: Number.NaN }, 10)).toThrow('times');
    expect(() => scaleMix([{ name: 'x', mass: 1, available: 0 }], { by: 'scarcest' })).toThrow('none of it');
  });

  const lines = fc.array(
    fc.record({
      mass: fc.double({ min: 0.001, max: 9, noNaN: true }),
      kind: fc.constantFrom('plain', 'meat', 'share', 'piece'),
      available: fc.option(fc.double({ min: 0.01, max: 20, noNaN: true }), { nil: undefined }),
    }),
    { minLength: 1, maxLength: 8 },
  );
  const made = lines.map((list): ScaledLine[] => [
    { name: 'meat', mass: 1, meat: true, available: 10 },
    ...list.map(({ mass, kind, available }, i) => ({
      name: `l${i}`,
      mass,
      available,
      meat: kind === 'meat',
      amount:
        kind === 'share'
          ? ({ by: 'of the meat', share: mass / 100 } as const)
          : kind === 'piece'
            ? ({ by: 'per piece', mass: mass / 1000 } as const)
            : undefined,
    })),
  ]);

  it('is linear, sums to what is asked, and stays within what there is', () => {
    fc.assert(
      fc.property(made, fc.double({ min: 0.05, max: 50, noNaN: true }), (mixed, wanted) => {
        const one = scaleMix(mixed, { by: 'times', times: 1 }, 8);
        const more = scaleMix(mixed, { by: 'times', times: wanted }, 8);
        for (const [i, m] of more.masses.entries()) expect(m).toBeCloseTo(one.masses[i]! * wanted, 8);
        expect(scaleMix(mixed, { by: 'batch', mass: wanted }, 8).total).toBeCloseTo(wanted, 8);
        const scarce = scaleMix(mixed, { by: 'scarcest' }, 8);
        for (const [i, m] of scarce.masses.entries())
          expect(m).toBeLessThanOrEqual((mixed[i]!.available ?? Number.POSITIVE_INFINITY) * (1 + 1e-9));
      }),
    );
  });
});

describe('weighed', () => {
  it('says by name what a scale cannot show, and which could', () => {
    const out = weighed(
      [
        { name: 'goose', mass: 1.2346 },
        { name: 'curing salt', mass: 0.0024, salt: true },
        { name: 'mace', mass: 0.0003 },
      ],
      0.001,
    );
    expect(out.problems).toEqual([
      '2.4 g of curing salt on a 1 g scale is 17 % off: use a scale that reads 0.1 g',
      '0.3 g of mace does not show on a 1 g scale: use a scale that reads 0.01 g',
    ]);
    expect(out.lines.map((l) => l.weighable)).toEqual([true, false, false]);
    expect(out.lines[1]?.mass).toBe(0.0024);
  });

  it('weighs salt on the finer scale', () => {
    const out = weighed([{ name: 'salt', mass: 0.01846, salt: true }], 0.005, 0.0001);
    expect(out.lines[0]).toEqual({ mass: 0.0185, step: 0.0001, weighable: true });
    expect(out.problems).toEqual([]);
  });

  it('keeps the sum within a step and salt within a hundredth, or names it', () => {
    const line = fc.record({ mass: fc.double({ min: 0.0006, max: 5, noNaN: true }), salt: fc.boolean() });
    fc.assert(
      fc.property(
        fc.array(line, { minLength: 1, maxLength: 12 }),
        fc.constantFrom(0.001, 0.002, 0.005),
        (list, step) => {
          const lines = list.map((l, i) => ({ ...l, name: `l${i}` }));
          const out = weighed(lines, step, step / 10);
          const wanted = lines.reduce((s, l) => s + l.mass, 0);
          if (!out.problems.some((p) => p.startsWith('The whole')))
            expect(Math.abs(out.total - wanted)).toBeLessThanOrEqual(step * (1 + 1e-6));
          out.lines.forEach((l, i) => {
            const { mass, salt, name } = lines[i]!;
            expect(l.mass).toBeGreaterThan(0);
            if (!l.weighable) expect(out.problems.some((p) => p.includes(`of ${name} `))).toBe(true);
            else expect(Math.abs(l.mass / l.step - Math.round(l.mass / l.step))).toBeLessThan(1e-5);
            if (l.weighable && salt === true)
              expect(Math.abs(l.mass - mass) / mass).toBeLessThanOrEqual(saltTolerance + 1e-6);
            if (l.weighable && salt !== true)
              expect(Math.abs(l.mass - mass)).toBeLessThanOrEqual(step * (1 + 1e-6));
          });
        },
      ),
    );
  });

  it('names the whole as off rather than a line by more than a step', () => {
    const out = weighed(
      [
        { name: 'a', mass: 0.010000005 },
        { name: 'salt', mass: 2.4363, salt: true },
        { name: 'b', mass: 0.0025 },
        { name: 'c', mass: 0.0006 },
      ],
      0.005,
      0.0005,
    );
    expect(out.lines[0]?.mass).toBe(0.01);
    expect(out.problems.some((p) => p.startsWith('The whole'))).toBe(true);
  });

  it('does not round over what there is', () => {
    const out = weighed([{ name: 'neck', mass: 0.9998, available: 0.9998 }], 0.001);
    expect(out.lines[0]?.mass).toBe(0.999);
  });
});
