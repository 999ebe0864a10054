import { describe, expect, it } from 'vitest';
import { chainWords } from './chain.ts';

const check = { lines: 40, holds: true, brokenAt: null, checkedAt: '2030-11-02T10:00:00Z' };

describe('chainWords', () => {
  it('holds only when the server says so and names no break', () => {
    expect(chainWords(check).holds).toBe(true);
    expect(chainWords({ ...check, holds: false, brokenAt: 7 }).holds).toBe(false);
    expect(chainWords({ ...check, holds: true, brokenAt: 7 }).holds).toBe(false);
    expect(chainWords({ ...check, holds: false }).holds).toBe(false);
  });
  it('says where', () =>
    expect(chainWords({ ...check, holds: false, brokenAt: 7 }).words).toContain('at line 7'));
  it('nothing to check is not a journal that holds', () => {
    expect(chainWords({ ...check, lines: 0 }).holds).toBe(false);
  });
});
