import { describe, expect, test } from 'vitest';
import type { FreezeRule, Rule } from '../properties/rule.ts';
import { findRule, rules } from '../properties/rules.ts';
import { judge } from './judge.ts';

const hour = 3600;
/** Hourly readings at one temperature. */
const kept = (C: number, h: number, from = 0) =>
  Array.from({ length: h + 1 }, (_, i) => ({ s: (from + i) * hour, C }));
const said = (id: string, log: readonly { s: number; C: number }[], gap?: number) =>
  judge(log, [findRule(id) as Rule], gap === undefined ? {} : { gap })[0]!;

describe('judgeFreeze', () => {
  test('a printed row holds for exactly its time, and a minute less does not, every row of every table', () => {
    const tables = rules.filter((r): r is FreezeRule => r.kind === 'freeze');
    expect(tables.length).toBe(8);
    for (const rule of tables)
      for (const { C, s } of rule.rows) {
        const at = (end: number) =>
          judge(
            [
              { s: 0, C },
              { s: end, C },
            ],
            [rule],
            { gap: 1e9 },
          )[0]!;
        expect(at(s).passes).toBe(true);
        expect(at(s - 60)).toMatchObject({ passes: false });
        expect(at(s - 60).more).toBeCloseTo(60, 6);
      }
  });
  test('a thaw in between starts the time again', () => {
    const log = [...kept(-18, 60), { s: 60.5 * hour, C: -10 }, ...kept(-18, 60, 61)];
    expect(said('eu-trichinella-freezing-middle', log)).toMatchObject({ outcome: 'does not hold' });
    expect(said('eu-trichinella-freezing-middle', kept(-18, 106)).outcome).toBe('holds');
  });
  test('colder than a row uses that row, not one further down', () => {
    expect(said('eu-trichinella-freezing-middle', kept(-20, 82)).passes).toBe(false);
    expect(said('eu-trichinella-freezing-middle', kept(-20, 106)).passes).toBe(true);
  });
  test('through a hole the warmer end counts', () => {
    const log = [
      { s: 0, C: -25 },
      { s: 30 * hour, C: -10 },
      { s: 31 * hour, C: -25 },
    ];
    expect(said('eu-fish-parasites-freezing', log).passes).toBe(false);
  });
  test('too warm for every row is not covered, whatever the time', () => {
    const verdict = said('us-trichinella-freezing-to-6in', kept(-12, 2000));
    expect(verdict).toMatchObject({ outcome: 'not covered', passes: false });
    expect(verdict.why).toMatch(/warmest row/);
  });
});
