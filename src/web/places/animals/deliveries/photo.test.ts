import fc from 'fast-check';
import { expect, test } from 'vitest';
import { longestSide, sizeWithin } from './photo.ts';

test('made small in its own proportions, never larger, never nothing', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 12_000 }), fc.integer({ min: 1, max: 12_000 }), (w, h) => {
      const s = sizeWithin(w, h);
      expect(Math.max(s.width, s.height)).toBeLessThanOrEqual(longestSide);
      expect(s.width).toBeLessThanOrEqual(w);
      expect(s.height).toBeLessThanOrEqual(h);
      expect(Math.min(s.width, s.height)).toBeGreaterThanOrEqual(1);
      if (Math.max(w, h) <= longestSide) expect(s).toEqual({ width: w, height: h });
    }),
  );
  expect(sizeWithin(4032, 3024)).toEqual({ width: 1600, height: 1200 });
});
