import { describe, expect, it } from 'vitest';
import { nextLotCode } from './lot-code.ts';

describe('nextLotCode', () => {
  const late = new Date('2026-11-25T23:30:00Z');
  it('takes the day on the kitchen’s own clock', () => {
    expect(nextLotCode(late, 'Europe/London', [])).toBe('261125-A');
    expect(nextLotCode(late, 'Europe/Dublin', ['261125-A', '261125-B'])).toBe('261125-C');
    expect(nextLotCode(late, 'Asia/Tokyo', [])).toBe('261126-A');
  });
  it('never gives a code that is taken', () => {
    const taken: string[] = [];
    for (let i = 0; i < 60; i += 1) taken.push(nextLotCode(late, 'UTC', taken));
    expect(new Set(taken).size).toBe(60);
  });
});
