import { describe, expect, it } from 'vitest';
import { Ask } from '../../../../contract/steps.ts';
import type { Rule } from '../../../../core/properties/rule.ts';
import { findRule, rules } from '../../../../core/properties/rules.ts';
import { askFor, asksWith, asksWithout } from './rule-asks.ts';

const id = '01890000-0000-7000-8000-000000000000';
const rule = (name: string) => findRule(name) as Rule;

describe('askFor', () => {
  it('turns a rule into the limit that is recorded', () => {
    expect(askFor(rule('gb-hot-hold-63c'), id)).toMatchObject({
      kind: 'temperature',
      low: 63,
      critical: true,
    });
    expect(askFor(rule('scotland-hot-hold-63c'), id).low).toBeGreaterThan(63);
    expect(askFor(rule('us-cold-hold-5c'), id)).toMatchObject({ kind: 'temperature', high: 5 });
    expect(askFor(rule('scotland-reheat-82c'), id)).toMatchObject({ kind: 'temperature', low: 82 });
    // A time at a temperature is not shown by one reading.
    expect(askFor(rule('gb-70c-2min'), id).kind).toBe('core log');
    expect(askFor(rule('us-food-code-reheat-165f'), id).kind).toBe('core log');
  });
  it('is an entry the contract takes, for every rule of the book', () => {
    for (const one of rules) expect(Ask.safeParse(askFor(one, id)).success, one.id).toBe(true);
  });
  it('is put in once, and taken out again without the others', () => {
    const own: Ask = { id, kind: 'temperature', label: 'Cold room', high: 5 };
    const with_ = asksWith([own], rule('gb-cold-hold-8c'), id);
    expect(with_).toHaveLength(2);
    expect(asksWith(with_, rule('gb-cold-hold-8c'), id)).toHaveLength(2);
    expect(asksWithout(with_, rule('gb-cold-hold-8c'))).toEqual([own]);
  });
});
