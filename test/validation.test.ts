/** The validation report as it is committed: its claims are counted again from its own rows. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { holds, type Row } from '../examples/case.ts';
import { measured } from '../examples/figures.ts';
import { staleness } from '../examples/stale.ts';
import { cite, sources } from '../src/core/sources.ts';

const report = readFileSync(join(import.meta.dirname, '../docs/validation.md'), 'utf8');
const outside = ['read', 'copy', 'memory', 'equation'];
const kinds = [...outside, 'own', 'practice'];
const cells = (line: string) =>
  line
    .split(/(?<!\\)\|/)
    .map((cell) => cell.trim())
    .slice(1, -1);

/** Every row of every case: seven cells, the sixth one of the kinds. */
const cases = report.split(/^### /m).slice(1);
const rowsOf = (text: string) =>
  text
    .split('\n')
    .filter((line) => line.startsWith('|'))
    .map(cells)
    .filter((row) => row.length === 7 && kinds.includes(row[5] ?? ''));
const rows = cases.flatMap(rowsOf);
const numberOf = (row: readonly string[]) => /\[(\d+)\]/.exec(row[6] ?? '')?.[1] ?? '';

const glance = report.slice(report.indexOf('## At a glance'), report.indexOf('## Where we differ'));
const claims = glance
  .split('\n')
  .filter((line) => line.startsWith('|'))
  .map(cells);
const claimed = (words: string) => {
  const found = claims.find((row) => row[0]?.includes(words));
  return found?.slice(1).map((cell) => Number(cell.replaceAll('*', '')));
};

describe('docs/validation.md', () => {
  test('has more than sixty checks against more than fifteen publications', () => {
    const held = rows.filter((row) => outside.includes(row[5] ?? ''));
    expect(held.length).toBeGreaterThan(60);
    expect(new Set(held.map(numberOf)).size).toBeGreaterThan(15);
    const printed = held.filter((row) => row[5] === 'read' || row[5] === 'copy');
    expect(printed.length).toBeGreaterThan(60);
    expect(new Set(printed.map(numberOf)).size).toBeGreaterThan(15);
  });

  test.each(kinds)('counts its rows that are %s right', (kind) => {
    const found = rows.filter((row) => row[5] === kind);
    expect(claimed(`(*${kind}*)`)?.[0]).toBe(found.length);
    if (outside.includes(kind)) expect(claimed(`(*${kind}*)`)?.[1]).toBe(new Set(found.map(numberOf)).size);
  });

  test('adds them up right', () => {
    const held = rows.filter((row) => outside.includes(row[5] ?? ''));
    expect(claimed('against publications, together')).toEqual([
      held.length,
      new Set(held.map(numberOf)).size,
    ]);
    expect(claimed('**all**')?.[0]).toBe(rows.length);
    const differ = rows.filter((row) => row[3]?.endsWith('differs')).length;
    expect(glance).toContain(`\n${differ} of them are known not to agree`);
  });

  test('gives every row a source with its full citation', () => {
    const citations = Object.keys(sources).map(cite);
    const index = report.slice(report.indexOf('## Sources, and'));
    const entries = new Map(
      [...index.matchAll(/<a id="s(\d+)"><\/a>\*\*\d+\*\* (.+) — (\d+) checks?: /g)].map((m) => [
        m[1] ?? '',
        { citation: m[2] ?? '', count: Number(m[3]) },
      ]),
    );
    for (const row of rows) expect(entries.has(numberOf(row)), row.join(' | ')).toBe(true);
    for (const [number, { citation, count }] of entries) {
      expect(citations, citation).toContain(citation);
      expect(rows.filter((row) => numberOf(row) === number).length, citation).toBe(count);
    }
  });

  test('gives every row a tolerance and its reason', () => {
    for (const text of cases)
      for (const row of rowsOf(text)) {
        const letter = /^[\d.·⁰¹²³⁴⁵⁶⁷⁸⁹⁻−]+ ([a-z]+)$/.exec(row[4] ?? '')?.[1];
        expect(letter, row.join(' | ')).toBeDefined();
        expect(new RegExp(`^(<br>)?${letter}: .{3,}`, 'm').test(text), row.join(' | ')).toBe(true);
      }
  });
});

describe('staleness', () => {
  const page = 'a\n| what | 69.9 °C | *69.95* | *−3.1·10⁻⁷* |\nb';
  test('a page that says the same stands, and one whose last place moved', () => {
    expect(staleness(page, page)).toEqual([]);
    expect(staleness(page, page.replace('*69.95*', '*69.96*'))).toEqual([]);
  });
  test.each([
    ['a computed number that moved', page.replace('*69.95*', '*72.00*')],
    ['another expected number', page.replace('69.9 °C', '69.8 °C')],
    ['another word', page.replace('what', 'which')],
    ['a row more', page.replace('b', '| more | 1 | *1* | *0* |\nb')],
    ['a row less', page.replace('\nb', '')],
    ['another power of ten', page.replace('10⁻⁷', '10⁻⁵')],
  ])('%s is found', (_, now) => {
    expect(staleness(page, now).length).toBeGreaterThan(0);
  });
});

describe('a row', () => {
  const row: Row = {
    quantity: 'q',
    source: 'choi-okos-1986',
    confidence: 'read',
    expected: 10,
    ours: 10.4,
    tolerance: 0.5,
    unit: 'K',
    why: 'because',
  };
  test('holds within its tolerance and not beyond', () => {
    expect(holds(row)).toBe(true);
    expect(holds({ ...row, ours: 10.6 })).toBe(false);
    expect(holds({ ...row, ours: Number.NaN })).toBe(false);
    expect(holds({ ...row, expected: { low: 9, high: 10 }, tolerance: 0.5 })).toBe(true);
    expect(holds({ ...row, expected: { low: 9, high: 9.8 }, tolerance: 0.5 })).toBe(false);
  });
  test('that is known to differ fails when it differs otherwise, or no more', () => {
    const differs = { by: 2, why: 'because' };
    expect(holds({ ...row, ours: 12, differs })).toBe(true);
    expect(holds({ ...row, ours: 12.3, differs })).toBe(false);
    expect(holds({ ...row, ours: 8, differs })).toBe(false);
    expect(holds({ ...row, ours: 10.1, differs })).toBe(false);
    expect(holds({ ...row, ours: Number.NaN, differs })).toBe(false);
  });
  test('is printed no finer than its tolerance is worth', () => {
    expect(measured(69.948274, { ...row, tolerance: 0.05 })).toBe('69.948');
    expect(measured(4.4e-9, { ...row, tolerance: 0.05 })).toBe('0');
    expect(measured(2638897.76, { ...row, tolerance: 6 })).toBe('2638897.8');
  });
});
