import { describe, expect, it } from 'vitest';
import { runBrine } from './brine.ts';
import { InputProblems } from './problem.ts';

describe('runBrine', () => {
  it.each([
    { saltPct: 5.279 },
    { salometer: 20 },
    { gravity: 1.0384 },
    { baume: 5.36 },
    { densityKgM3: 1036.1 },
    { densityKgM3: 1037.5, atC: 15.56 },
    { freezesC: -3.154 },
  ])('%j is a brine of 5.3 %%', (input) => {
    const answer = runBrine(input);
    expect(Math.abs(answer.saltPct - 5.279)).toBeLessThan(0.03);
    expect(Math.abs(answer.comesOutC + 3.16)).toBeLessThan(0.05);
    expect(answer.comesOut).toBe('ice');
  });

  it.each([
    ['salometer', { salometer: 120 }],
    ['saltPct', { saltPct: -1 }],
    ['baume', { baume: 40 }],
    ['densityKgM3', { densityKgM3: 900 }],
    ['atC', { densityKgM3: 1040, atC: 80 }],
    ['freezesC', { freezesC: 3 }],
  ])('refuses %s', (path, input) => {
    try {
      runBrine(input);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(InputProblems);
      expect((error as InputProblems).problems[0]?.path).toBe(path);
    }
  });

  it('refuses two at once, none, and what it does not know', () => {
    for (const input of [{ saltPct: 3, salometer: 5 }, {}, { degrees: 4 }, { saltPct: Number.NaN }])
      expect(() => runBrine(input)).toThrow(InputProblems);
  });
});
