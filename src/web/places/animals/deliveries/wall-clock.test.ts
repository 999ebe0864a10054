import fc from 'fast-check';
import { expect, test } from 'vitest';
import { instantOf, onTheWall } from './wall-clock.ts';

test('there and back, in any zone, to the minute', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 60 * 24 * 365 * 3 }),
      fc.constantFrom('Europe/London', 'America/New_York', 'Asia/Kathmandu', 'Pacific/Auckland'),
      (minutes, zone) => {
        const instant = new Date(Date.UTC(2025, 0, 1) + minutes * 60_000).toISOString();
        const wall = onTheWall(instant, zone);
        expect(onTheWall(instantOf(wall, zone) as string, zone)).toBe(wall);
      },
    ),
  );
});
test('summer and winter', () => {
  expect(instantOf('2026-07-01T09:00', 'Europe/London')).toBe('2026-07-01T08:00:00.000Z');
  expect(instantOf('2026-12-01T09:00', 'Europe/London')).toBe('2026-12-01T09:00:00.000Z');
});
test('an hour that the clocks skip, and no time at all', () => {
  expect(instantOf('2026-03-29T01:30', 'Europe/London')).toBeNull();
  expect(instantOf('', 'Europe/London')).toBeNull();
});
