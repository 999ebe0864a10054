import { describe, expect, it } from 'vitest';
import { KeepAnswer, runKeep } from './keep.ts';
import { InputProblems } from './problem.ts';

const parfait = { place: 'GB-ENG', ready: true, packed: 'vacuum', keptC: 5 };
const problems = (input: unknown) => {
  try {
    runKeep(input);
    return [];
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    return error.problems.map((p) => `${p.path}: ${p.found} | ${p.allowed}`);
  }
};

describe('runKeep', () => {
  it('answers with the limit that decides, the others, what would lengthen it and what was assumed', () => {
    const answer = runKeep({ ...parfait, madeOn: '2026-03-30' });
    expect(KeepAnswer.safeParse(answer).success).toBe(true);
    expect(answer.deciding).toBe('listeria-limit');
    expect(answer.days).toBeGreaterThanOrEqual(2);
    expect(answer.limits.map((l) => l.id)).toContain('gb-airless-10-days');
    expect(answer.assumed.join()).toMatch(/pH not known/);
    expect(answer.cautions.join()).toMatch(/local authority/);
    for (const text of [answer.why, ...answer.limits.map((l) => l.why), ...answer.cautions])
      expect(text).not.toMatch(/\bis safe\b|NaN|undefined|Infinity/);
  });
  it('the day of making is the first, over the end of a month; frozen days do not count', () => {
    const us = { ...parfait, place: 'US', pH: 5, waterActivity: 0.93, madeOn: '2026-02-25' };
    expect(runKeep(us)).toMatchObject({ days: 7, useBy: '2026-03-03' });
    expect(runKeep({ ...us, frozenDays: 14.5 })).toMatchObject({ useBy: '2026-03-17' });
  });
  it('takes the fastest of the published rates where none is named', () => {
    const days = (like?: string) =>
      runKeep({
        ...parfait,
        pH: 6.2,
        waterActivity: 0.975,
        ...(like === undefined ? {} : { like }),
      }).limits.find((l) => l.id === 'listeria-limit')!.days!;
    expect(days()).toBe(days('deli-meat'));
    expect(days('smoked-seafood')).toBeGreaterThan(days());
  });
  it('refuses what it does not know, and a start above the limit', () => {
    expect(problems({ ...parfait, pack: 'vacuum' })[0]).toMatch(/pack/);
    expect(problems({ ...parfait, startLog10: 3 })[0]).toMatch(/^startLog10: 3 \| less than 2/);
    expect(problems({ ...parfait, madeOn: '2026-02-30' })[0]).toMatch(/^madeOn/);
    const log = [
      { min: 0, C: 5 },
      { min: 0, C: 6 },
    ];
    expect(problems({ ...parfait, log })[0]).toMatch(/log\[1\]\.min/);
  });
});
