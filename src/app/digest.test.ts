import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonical, digest } from './digest.ts';

describe('canonical', () => {
  it('does not depend on the order of keys, and keeps the order of lists', () => {
    expect(canonical({ b: 1, a: { d: [2, 1], c: null } })).toBe('{"a":{"c":null,"d":[2,1]},"b":1}');
    expect(canonical([1, 2])).not.toBe(canonical([2, 1]));
    expect(canonical(new Date(0))).toBe('"1970-01-01T00:00:00.000Z"');
  });

  it('is the same again after a trip through JSON, and another for another value', () => {
    fc.assert(fc.property(fc.jsonValue(), (v) => canonical(JSON.parse(JSON.stringify(v))) === canonical(v)));
    fc.assert(
      fc.property(fc.integer(), fc.integer(), (a, b) => (a === b) === (digest({ a }) === digest({ a: b }))),
    );
  });
});
