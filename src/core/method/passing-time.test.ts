import { describe, expect, test } from 'vitest';
import { cook } from '../heat/cook.ts';
import type { CookProblem } from '../heat/types.ts';
import { findRule } from '../properties/rules.ts';
import { withHeating } from './advice.ts';
import { foreseenCooking } from './foreseen-rules.ts';
import { passingTime } from './passing-time.ts';

const slab = (medium: number, over: Partial<CookProblem> = {}): CookProblem => ({
  body: {
    shape: 'slab',
    thickness: 0.04,
    layers: [{ name: 'meat', material: { properties: { k: 0.48, rho: 1050, cp: 3500 } } }],
  },
  start: 5,
  stages: [
    { name: 'bath', medium, h: 400, until: { kind: 'time', s: 600 } },
    { name: 'ice water', medium: 1, h: 400, until: { kind: 'time', s: 3600 } },
  ],
  target: { reference: 70, z: 7.5, s: 120 },
  ...over,
});
const usual = findRule('gb-70c-2min');
const rules = usual === undefined ? [] : [usual];

describe('passingTime', () => {
  test('is the end of the stage when it ends by lethality', () => {
    const problem = slab(90);
    const byItself = cook({
      ...problem,
      stages: problem.stages
        .slice(0, 1)
        .map((s) => ({ ...s, until: { kind: 'lethality' as const, s: 120 } })),
    });
    expect(passingTime(problem, { stage: 0 })).toBe(byItself.stages[0]?.end);
  });

  test('the cook of that length holds at lifting out, and one shorter by 2 s does not', () => {
    const problem = slab(85);
    const s = passingTime(problem, { stage: 0 });
    const gotBy = (t: number) =>
      cook({ ...withHeating(problem, 0, t), stages: withHeating(problem, 0, t).stages.slice(0, 1) }).lethality
        .s;
    expect(gotBy(s + 0.1)).toBeGreaterThanOrEqual(120);
    expect(gotBy(s - 2)).toBeLessThan(120);
  });

  test('a rule that counts from 60 °C asks for more than the sum of a bath that creeps', () => {
    const problem = slab(60.5);
    expect(rules).toHaveLength(1);
    const bySum = passingTime(problem, { stage: 0 });
    const byRule = passingTime(problem, { stage: 0, rules });
    expect(byRule).toBeGreaterThan(bySum + 60);
    const held = (t: number) =>
      foreseenCooking(cook({ ...problem, stages: withHeating(problem, 0, t).stages.slice(0, 1) }), rules)[0]
        ?.passes;
    expect(held(byRule * 1.01)).toBe(true);
    expect(held(byRule * 0.97)).toBe(false);
  });

  test('with a rule it is never less than without, and hardly more where the bath is hot', () => {
    for (const medium of [75, 85, 98]) {
      const problem = slab(medium);
      const bySum = passingTime(problem, { stage: 0 });
      const byRule = passingTime(problem, { stage: 0, rules });
      // What the sum has from below 60 °C is worth little here.
      expect(byRule).toBeGreaterThanOrEqual(bySum - 0.05);
      expect(byRule).toBeLessThan(1.015 * bySum);
    }
  });

  test('what has passed before the stage begins needs none of it', () => {
    const [bath] = slab(95).stages;
    const twice = slab(95, {
      stages: [
        { name: 'bath', medium: 95, h: 400, until: { kind: 'time', s: 3600 } },
        { ...bath, name: 'again' } as NonNullable<typeof bath>,
      ],
    });
    expect(passingTime(twice, { stage: 1, rules })).toBe(0);
  });

  test('a probe that reads high asks for 10^(e/z) of the lethality, one that reads low for less', () => {
    const problem = slab(85);
    const scaled = { ...problem, target: { ...problem.target, s: 120 * 10 ** (1 / 7.5) } };
    expect(passingTime(problem, { stage: 0, probeError: 1 })).toBe(passingTime(scaled, { stage: 0 }));
    expect(passingTime(problem, { stage: 0, probeError: -1 })).toBeLessThan(
      passingTime(problem, { stage: 0 }),
    );
  });

  test('a bath that is never hot enough takes for ever', () => {
    expect(passingTime(slab(40), { stage: 0 })).toBe(Number.POSITIVE_INFINITY);
    expect(passingTime(slab(58), { stage: 0, rules })).toBe(Number.POSITIVE_INFINITY);
  });
});
