import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findGrowthOrganism } from '../properties/organisms-growth.ts';
import type { RulePlace } from '../properties/rule.ts';
import { type Keeping, lifeOf, longerBy } from './keeping.ts';

const set = findGrowthOrganism('listeria-monocytogenes')!.sets[0]!;
/** The food that the published rate of cooked meats is taken to hold for. */
const asPublished = { pH: 6.2, waterActivity: 0.97 };
const food = (more: Partial<Keeping> = {}): Keeping => ({
  place: 'GB-ENG',
  ready: true,
  packed: 'without air',
  keptC: 5,
  pH: null,
  waterActivity: null,
  waterPhaseSalt: null,
  heat90: false,
  scheme: null,
  listeria: { set, startLog10: 0, limitLog10: 2, h0: 0 },
  ...more,
});
/** So little at the start that Listeria is not what decides. */
const noFew = { listeria: { set, startLog10: -6, limitLog10: 2, h0: 20 } };
const limitOf = (id: string, keeping: Keeping) => lifeOf(keeping).limits.find((l) => l.id === id);

describe('lifeOf', () => {
  it('gives ten days without air at 3 to 8 °C, and lifts them by each factor at its edge only', () => {
    const days = (more: Partial<Keeping>) => limitOf('gb-airless-10-days', food({ ...noFew, ...more }))?.days;
    expect(days({})).toBe(10);
    expect(days({ keptC: 8 })).toBe(10);
    expect(days({ keptC: 3 })).toBe(null);
    expect(days({ keptC: 3.01 })).toBe(10);
    expect([days({ pH: 5.0 }), days({ pH: 5.01 })]).toEqual([null, 10]);
    expect([days({ waterPhaseSalt: 0.035 }), days({ waterPhaseSalt: 0.0349 })]).toEqual([null, 10]);
    expect([days({ waterActivity: 0.97 }), days({ waterActivity: 0.971 })]).toEqual([null, 10]);
    expect([days({ heat90: true }), days({ packed: 'air' }), days({ packed: null })]).toEqual([
      null,
      null,
      10,
    ]);
  });

  it('3.5 % salt in the water is not water activity 0.97, and does not stop Listeria', () => {
    const life = lifeOf(food({ waterPhaseSalt: 0.035 }));
    expect(life.deciding?.id).toBe('listeria-limit');
    expect(life.deciding?.why).toMatch(/water activity 0\.980/);
  });

  it('names Listeria as published: 7.09 days at 5 °C and 3.21 at 8 °C', () => {
    const days = (keptC: number) => limitOf('listeria-limit', food({ ...asPublished, keptC }))!.days!;
    expect(days(5)).toBeCloseTo(7.092, 2);
    expect(days(8)).toBeCloseTo(3.214, 2);
    expect(lifeOf(food({ ...asPublished }))).toMatchObject({ days: 7, deciding: { id: 'listeria-limit' } });
  });

  it('gives no more than ten days on the model alone, and says so', () => {
    const sour = lifeOf(food({ keptC: 1, pH: 5.2, packed: 'air' }));
    expect(limitOf('listeria-limit', food({ keptC: 1, pH: 5.2, packed: 'air' }))!.days!).toBeGreaterThan(20);
    expect(sour).toMatchObject({ days: 10, deciding: { id: 'by-a-model-alone' } });
    expect(sour.why).toMatch(/shown by tests/);
    // A rule that gives more stands.
    const scheme = 'sealed at once and kept at 1 °C' as const;
    expect(lifeOf(food({ ...noFew, place: 'US', scheme, keptC: 1 })).days).toBe(30);
  });

  it('counts what was logged before', () => {
    const log = (C: number, h: number) => [
      { s: 0, C },
      { s: h * 3600, C },
    ];
    const whole = limitOf('listeria-limit', food(asPublished))!.days!;
    const split = limitOf('listeria-limit', food({ ...asPublished, before: log(5, 48) }))!.days!;
    expect(split).toBeCloseTo(whole, 6);
    const warm = limitOf('listeria-limit', food({ ...asPublished, before: log(20, 24) }))!.days!;
    expect(warm).toBeLessThan(2);
    expect(lifeOf(food({ ...asPublished, before: log(20, 72) })).days).toBe(0);
  });

  it('is seven days in the United States, thirty under its scheme at 1 °C, and nothing above 5 °C', () => {
    const us = (more: Partial<Keeping>) => lifeOf(food({ ...noFew, place: 'US', ...more }));
    expect(us({})).toMatchObject({ days: 7, deciding: { id: 'us-7-days', type: 'statutory' } });
    const scheme = 'sealed at once and kept at 1 °C' as const;
    expect(us({ scheme, keptC: 1 })).toMatchObject({ days: 30, deciding: { id: 'us-sealed-30-days' } });
    expect(us({ scheme, keptC: 2 })).toMatchObject({ days: 7 });
    expect(us({ scheme, keptC: 1, packed: 'air' })).toMatchObject({ days: 7 });
    expect(us({ keptC: 6 })).toMatchObject({ days: null, word: 'not known' });
  });

  it('five days by the cook-chill scheme, to 3 °C only', () => {
    const scheme = 'cook-chill' as const;
    expect(lifeOf(food({ ...noFew, scheme, keptC: 3 }))).toMatchObject({ days: 5 });
    expect(limitOf('gb-cook-chill-5-days', food({ ...noFew, scheme, keptC: 4 }))).toMatchObject({
      days: null,
    });
  });

  it('is not known where no rule limits it, and frozen is not called safe', () => {
    expect(lifeOf(food({ keptC: 9 })).word).toBe('not known');
    const raw = lifeOf(food({ ready: false, packed: 'air' }));
    expect(raw).toMatchObject({ days: null, word: 'not known' });
    expect(raw.why).toMatch(/no proof/);
    expect(lifeOf(food({ keptC: -18 }))).toMatchObject({ days: null, word: 'not limited by these rules' });
  });

  it('never lengthens when it is warmer, when something becomes unknown, or when more is there at the start', () => {
    const known = fc.record({
      place: fc.constantFrom<RulePlace>('GB-ENG', 'GB-SCT', 'EU', 'US'),
      packed: fc.constantFrom<Keeping['packed']>('air', 'without air', null),
      keptC: fc.double({ min: -2, max: 8, noNaN: true }),
      pH: fc.option(fc.double({ min: 4, max: 7, noNaN: true })),
      waterActivity: fc.option(fc.double({ min: 0.9, max: 1, noNaN: true })),
      waterPhaseSalt: fc.option(fc.double({ min: 0, max: 0.1, noNaN: true })),
      heat90: fc.boolean(),
    });
    const days = (k: Keeping) => {
      const life = lifeOf(k);
      if (life.word === 'not known' && life.limits.length === 0) return 0;
      return life.days ?? 1e9;
    };
    fc.assert(
      fc.property(known, fc.double({ min: 0, max: 5, noNaN: true }), (some, warmer) => {
        const now = food(some);
        const was = days(now);
        expect(days({ ...now, keptC: now.keptC + warmer })).toBeLessThanOrEqual(was);
        expect(days({ ...now, pH: null })).toBeLessThanOrEqual(was);
        expect(days({ ...now, packed: null })).toBeLessThanOrEqual(was);
        expect(days({ ...now, heat90: false })).toBeLessThanOrEqual(was);
        // Where salt is known too, it may say more than a water activity that lies above it.
        if (now.waterPhaseSalt === null)
          expect(days({ ...now, waterActivity: null })).toBeLessThanOrEqual(was);
        if (now.waterActivity === null)
          expect(days({ ...now, waterPhaseSalt: null })).toBeLessThanOrEqual(was);
        expect(days({ ...now, listeria: { ...now.listeria, startLog10: 1 } })).toBeLessThanOrEqual(was);
      }),
      { numRuns: 500 },
    );
  });
});

describe('longerBy', () => {
  it('says what would lengthen it, each by itself, the most first', () => {
    const longer = longerBy(food(asPublished));
    expect(longer.map((l) => l.what)).toContain('kept at 3 °C or below');
    for (const { life } of longer) expect(life.days).toBeGreaterThan(7);
    expect(longer.map((l) => l.life.days)).toEqual(longer.map((l) => l.life.days).sort((a, b) => b! - a!));
  });
  it('calls nothing longer that is unknown', () => expect(longerBy(food({ keptC: 12 }))).toEqual([]));
});
