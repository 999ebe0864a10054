/** The published sets that the tests of growth speak of, and a comparison of many numbers at once. */
import { expect } from 'vitest';
import { findGrowthOrganism, type GrowthSet } from '../src/core/properties/organisms-growth.ts';

export const set = (organism: string, id: string): GrowthSet => {
  const found = findGrowthOrganism(organism)?.sets.find((s) => s.id === id);
  if (found === undefined) throw new RangeError(`no set ${id}`);
  return found;
};

/** Expected values, each within a relative tolerance. */
export function near(
  pairs: readonly (readonly [ours: number, expected: number])[],
  relative: number,
  floor = 0,
) {
  for (const [ours, expected] of pairs)
    expect(Math.abs(ours - expected), `${ours} for ${expected}`).toBeLessThanOrEqual(
      Math.max(floor, relative * Math.abs(expected)),
    );
}
