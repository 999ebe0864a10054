import { describe, expect, test } from 'vitest';
import { sources } from '../sources.ts';
import type { HoldRule } from './rule.ts';
import { findRule, rules } from './rules.ts';
import { meatRows } from './rules-meat-tables.ts';
import { chickenRows, turkeyRows } from './rules-poultry-tables.ts';
import { poultryRows } from './rules-us.ts';

/** Dwell of a row by its degrees Fahrenheit [s]. */
const dwell = (bird: 'chicken' | 'turkey' | 'other', F: number, fat: number) =>
  poultryRows(bird, fat)[F - 136]!.s;

describe('the rule book', () => {
  test('has unique ids of plain letters, and a source for every rule', () => {
    expect(new Set(rules.map((rule) => rule.id)).size).toBe(rules.length);
    for (const rule of rules) {
      expect(rule.id).toMatch(/^[a-z0-9][a-z0-9.-]*$/);
      expect(Object.keys(sources)).toContain(rule.source);
      expect(rule.cautions.length).toBeGreaterThan(0);
    }
  });
  test('never calls a memory or a common practice law it has read', () => {
    for (const rule of rules)
      if (rule.confidence === 'common practice') expect(rule.type).not.toBe('statutory');
  });
  test('says of every rule where and at which step it speaks, and what it may stand for there', () => {
    for (const { id, scope } of rules) {
      expect(scope.steps.length, id).toBeGreaterThan(0);
      // What one is held to is always held to somewhere; a single hazard's rule never stands for another.
      if (scope.role === 'usual') expect(scope.places.length, id).toBeGreaterThan(0);
      if (scope.role !== 'instead') expect(scope.insteadOf ?? [], id).toEqual([]);
      for (const other of scope.insteadOf ?? []) {
        const usual = findRule(other);
        expect(usual?.scope.role, `${id} for ${other}`).toBe('usual');
        expect(scope.places.every((place) => usual?.scope.places.includes(place))).toBe(true);
        expect(scope.steps.some((step) => usual?.scope.steps.includes(step))).toBe(true);
      }
    }
  });
  test('never holds anybody to a model', () => {
    for (const rule of rules) if (rule.type === 'model') expect(rule.scope.role, rule.id).toBe('beside');
  });
  test('holds rows that rise in temperature and fall in time', () => {
    for (const rule of rules) {
      if (rule.kind !== 'hold') continue;
      rule.rows.forEach((row, i) => {
        const before = rule.rows[i - 1];
        if (before === undefined) return;
        expect(row.C).toBeGreaterThan(before.C);
        expect(row.s).toBeLessThanOrEqual(before.s);
      });
    }
  });
});

describe('the poultry tables', () => {
  test('are complete: every degree from 136 to 165 °F, twelve fats', () => {
    for (const rows of [chickenRows, turkeyRows]) {
      expect(rows.map(([F]) => F)).toEqual(Array.from({ length: 30 }, (_, i) => 136 + i));
      for (const [, , , times] of rows) expect(times.length).toBe(12);
    }
  });
  test('print °C that are the °F, rounded to a tenth', () => {
    for (const [F, C] of [...chickenRows, ...turkeyRows])
      expect(Math.abs((F - 32) / 1.8 - C)).toBeLessThan(0.0501);
  });
  test('rise with fat but for the three roundings of the print', () => {
    const falls: string[] = [];
    for (const [bird, rows] of [
      ['chicken', chickenRows],
      ['turkey', turkeyRows],
    ] as const)
      for (const [F, , , times] of rows)
        times.forEach((t, i) => {
          if (i > 0 && t < times[i - 1]!) falls.push(`${bird} ${F}`);
        });
    expect(falls).toEqual(['chicken 151', 'turkey 150', 'turkey 151']);
  });
  test('at places looked up by hand', () => {
    expect(dwell('chicken', 136, 1)).toBe(63.3 * 60);
    expect(dwell('chicken', 150, 5)).toBe(2.8 * 60);
    expect(dwell('turkey', 150, 5)).toBe(3.7 * 60);
    expect(dwell('turkey', 160, 12)).toBe(26.9);
    expect(dwell('chicken', 160, 12)).toBe(16.9);
    expect(dwell('chicken', 160, 1)).toBe(13.7);
    expect(dwell('turkey', 165, 7)).toBe(0);
    expect(dwell('chicken', 162, 6)).toBe(0);
    expect(dwell('chicken', 162, 7)).toBe(9.6);
    expect(dwell('turkey', 164, 12)).toBe(11.7);
    expect(dwell('chicken', 154, 12)).toBe(66);
  });
  test('other birds take the longer of the two: chicken at 140 °F and 12 % fat, turkey at 145 °F', () => {
    expect(dwell('other', 140, 12)).toBe(35 * 60);
    expect(dwell('other', 145, 12)).toBe(13.8 * 60);
  });
  test('chicken is the longer only where the guideline’s two tables say so', () => {
    const longer = new Set<number>();
    for (let fat = 1; fat <= 12; fat++)
      for (let F = 136; F <= 165; F++) if (dwell('chicken', F, fat) > dwell('turkey', F, fat)) longer.add(F);
    expect(Math.max(...longer)).toBe(141);
  });
  test('have not been touched since they were transcribed (their sums; no check of the print)', () => {
    const sum = (rows: typeof chickenRows) =>
      rows.reduce(
        (s, [, , unit, times]) => s + times.reduce((a, b) => a + b, 0) * (unit === 'min' ? 60 : 1),
        0,
      );
    expect([Math.round(sum(chickenRows)), Math.round(sum(turkeyRows))]).toEqual([255_891, 264_084]);
  });
});

describe('the meat table', () => {
  test('has every degree from 130 to 160 °F', () =>
    expect(meatRows.map((row) => row.F)).toEqual(Array.from({ length: 31 }, (_, i) => 130 + i)));
  test('at places looked up by hand', () => {
    expect(meatRows[0]).toMatchObject({ C: 54.4, log65: 112, log7: 121, log5: 86, unit: 'min' });
    expect(meatRows[15]).toMatchObject({ F: 145, log65: 4, log7: 4, log5: 3, unit: 'min' });
    expect(meatRows[16]).toMatchObject({ F: 146, log65: 169, log7: 182, log5: 130, unit: 's' });
    expect(meatRows[27]).toMatchObject({ F: 157, log65: 14, log7: 15, log5: 11, unit: 's' });
    expect(meatRows[28]).toMatchObject({ F: 158, log65: 0, log7: 0, log5: 0 });
  });
  test('asks less for 5-log10 than for 6.5, and less for 6.5 than for 7', () => {
    for (const row of meatRows) {
      expect(row.log5).toBeLessThanOrEqual(row.log65);
      expect(row.log65).toBeLessThanOrEqual(row.log7);
    }
  });
  test('agrees with the retail code’s roasts where both print a row', () => {
    const roasts = findRule('us-food-code-roasts') as HoldRule;
    const table = findRule('us-meat-6.5log') as HoldRule;
    for (const row of roasts.rows)
      expect(table.rows.find((r) => Math.abs(r.C - row.C) < 0.01)?.s).toBe(row.s);
  });
});
