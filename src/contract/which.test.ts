import { describe, expect, it } from 'vitest';
import { InputProblems } from './problem.ts';
import { runWhich, WhichAnswer } from './which.ts';

const neck = { animals: ['other bird'], minced: true, stuffedOrRolled: true, injectedOrTenderised: false };

describe('runWhich', () => {
  it('says what is held to, what may stand instead and what it asks at one temperature', () => {
    const answer = runWhich({ place: 'US', step: 'cook', ...neck, atC: 60 });
    expect(WhichAnswer.safeParse(answer).success).toBe(true);
    expect(answer.rules[0]).toMatchObject({
      rule: 'us-food-code-165f-stuffed',
      standing: 'held to',
      type: 'statutory',
      asksMin: null,
    });
    const table = answer.rules.find((r) => r.rule === 'us-poultry-7log-other-12pct-fat');
    expect(table).toMatchObject({ standing: 'may stand instead', asksMin: 35 });
    expect(table?.needs).toMatch(/variance/);
    expect(answer.rules.find((r) => r.rule === 'gb-70c-2min')).toMatchObject({ standing: 'another place' });
    expect(answer.basis.map((b) => b.source)).toContain('us-food-code');
  });
  it('says that nothing known is not nothing in force', () => {
    const answer = runWhich({ place: 'EU', step: 'keep hot' });
    expect(answer.rules.every((r) => r.standing !== 'held to')).toBe(true);
    expect(answer.cautions.join()).toMatch(/no proof that none is in force/);
  });
  it('refuses what it does not know', () => {
    const wrong = (more: object) => () => runWhich({ place: 'US', step: 'cook', ...more });
    expect(wrong({ animals: ['goose'] })).toThrow(InputProblems);
    expect(wrong({ stuffed: true })).toThrow(/stuffed/);
  });
});
