import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactly, type WeightStep, weightsThrough } from './weights.ts';

const loss = (low: number, usual: number, high: number): WeightStep => ({
  kind: 'loss',
  loss: { low, usual, high },
});

describe('weightsThrough', () => {
  it('takes a filled piece from the part to the plate, as reckoned by hand', () => {
    const w = weightsThrough([
      { kind: 'part', mass: 4.2, kept: 0.24 },
      loss(-0.02, -0.01, 0),
      { kind: 'mix', mass: 2.112, carried: 0 },
      { kind: 'fill', perPiece: 0.335 },
      loss(0.02, 0.05, 0.1),
      { kind: 'plate', portion: 0.24, perPiece: 2 },
    ]);
    // 1.008 kg of skins take up 1 %; six pieces of 335 g take 2.01 kg and leave 102 g.
    expect(w.pieces).toBe(6);
    expect(w.leftFilling).toBeCloseTo(0.102, 12);
    expect(w.mass.usual).toBeCloseTo((1.008 * 1.01 + 2.01) * 0.95, 12);
    expect(w.piece?.usual).toBeCloseTo(((1.008 * 1.01 + 2.01) * 0.95) / 6, 12);
    expect(w.portions).toEqual(exactly(12));
    expect(w.portion?.usual).toBeCloseTo(((1.008 * 1.01 + 2.01) * 0.95) / 12, 12);
    expect(w.mass.low).toBeCloseTo((1.008 * 1 + 2.01) * 0.9, 12);
    expect(w.mass.high).toBeCloseTo((1.008 * 1.02 + 2.01) * 0.98, 12);
  });

  it('weighs in again what was cooked before it, and says what is left or too much', () => {
    const cooked: WeightStep[] = [{ kind: 'part', mass: 2, kept: 0.5 }, loss(0.3, 0.3, 0.3)];
    const some = weightsThrough([...cooked, { kind: 'mix', mass: 0.9, carried: 0.6 }]);
    expect(some.leftCarried.usual).toBeCloseTo(0.1, 12);
    expect(some.mass.usual).toBeCloseTo(0.9, 12);
    expect(some.overCarried).toBe(0);
    const more = weightsThrough([...cooked, { kind: 'mix', mass: 1.1, carried: 0.8 }]);
    expect(more.overCarried).toBeCloseTo(0.1, 12);
    expect(more.leftCarried.high).toBe(0);
  });

  it('makes portions by weight where nothing is filled', () => {
    const w = weightsThrough([
      { kind: 'part', mass: 1, kept: 0.82 },
      loss(0.38, 0.42, 0.46),
      { kind: 'plate', portion: 0.07, perPiece: 1 },
    ]);
    expect(w.pieces).toBeNull();
    expect(w.portions?.usual).toBeCloseTo((0.82 * 0.58) / 0.07, 10);
    expect(w.portions!.low).toBeLessThan(w.portions!.usual);
  });

  it('says from which step on the weight is too much, where a loss is not known', () => {
    const w = weightsThrough([
      { kind: 'part', mass: 1, kept: 1 },
      { kind: 'loss', loss: null },
      loss(0.1, 0.1, 0.1),
    ]);
    expect(w.steps.map((s) => s.known)).toEqual([true, false, false]);
  });

  const share = fc.double({ min: 0, max: 0.6, noNaN: true });
  const batch = fc.record({
    part: fc.double({ min: 0.1, max: 50, noNaN: true }),
    kept: fc.double({ min: 0.05, max: 1, noNaN: true }),
    mix: fc.double({ min: 0.1, max: 50, noNaN: true }),
    perPiece: fc.double({ min: 0.01, max: 2, noNaN: true }),
    losses: fc.array(fc.tuple(share, share, share), { maxLength: 4 }),
  });
  const methodOf = (b: typeof batch extends fc.Arbitrary<infer T> ? T : never, k = 1): WeightStep[] => [
    { kind: 'part', mass: b.part * k, kept: b.kept },
    { kind: 'mix', mass: b.mix * k, carried: 0 },
    { kind: 'fill', perPiece: b.perPiece * k },
    ...b.losses.map((l) => {
      const [low, usual, high] = [...l].sort((x, y) => x - y);
      return loss(low!, usual!, high!);
    }),
  ];

  it('loses no weight but what the losses take: in = out + left + lost', () => {
    fc.assert(
      fc.property(batch, (b) => {
        const w = weightsThrough(methodOf(b));
        const kept = b.losses.reduce((k, l) => k * (1 - [...l].sort((x, y) => x - y)[1]!), 1);
        const whole = b.part * b.kept + b.mix - w.leftFilling;
        expect(w.mass.usual).toBeCloseTo(whole * kept, 8);
        expect(w.mass.low).toBeLessThanOrEqual(w.mass.usual + 1e-12);
        expect(w.mass.usual).toBeLessThanOrEqual(w.mass.high + 1e-12);
      }),
    );
  });

  it('is twice as much of twice as much', () => {
    fc.assert(
      fc.property(batch, (b) => {
        const one = weightsThrough(methodOf(b));
        const two = weightsThrough(methodOf(b, 2));
        expect(two.pieces).toBe(one.pieces);
        expect(two.mass.usual).toBeCloseTo(2 * one.mass.usual, 8);
        expect(two.leftFilling).toBeCloseTo(2 * one.leftFilling, 8);
      }),
    );
  });

  it('refuses what no kitchen can mean, naming the step', () => {
    expect(() => weightsThrough([{ kind: 'part', mass: -1, kept: 0.5 }])).toThrow(/steps\[0\]\.mass/);
    expect(() => weightsThrough([{ kind: 'mix', mass: 1, carried: 2 }])).toThrow(/steps\[0\]\.carried/);
    expect(() => weightsThrough([loss(0.5, 0.2, 0.6)])).toThrow(/steps\[0\]\.loss/);
  });
});
