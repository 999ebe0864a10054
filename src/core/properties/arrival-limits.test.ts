import { expect, test } from 'vitest';
import { sources } from '../sources.ts';
import { arrivalLimit, arrivalLimits, frozenAtMostC, plausibleArrival } from './arrival-limits.ts';

test('arrivalLimits: every class has a limit in both books, cited, inside of what is plausible', () => {
  const classes = [...new Set(arrivalLimits.map((row) => row.class))];
  expect(arrivalLimits).toHaveLength(2 * classes.length);
  for (const row of arrivalLimits) {
    expect(sources[row.source]).toBeDefined();
    expect(row.citation).toMatch(/\d/);
    expect(row.atMostC).toBeLessThan(plausibleArrival.highC);
    expect(row.atMostC).toBeGreaterThan(frozenAtMostC);
  }
});

test('arrivalLimit: the place chooses the book', () => {
  expect(arrivalLimit('red meat', 'GB-SCT')?.atMostC).toBe(7);
  expect(arrivalLimit('red meat', 'EU')?.atMostC).toBe(7);
  expect(arrivalLimit('red meat', 'US')?.atMostC).toBe(5);
});
