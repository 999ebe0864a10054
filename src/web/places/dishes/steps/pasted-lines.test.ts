import { describe, expect, it } from 'vitest';
import { isTable, readPasted } from './pasted-lines.ts';

describe('readPasted', () => {
  it('reads names and weights in either order, in any unit', () => {
    expect(readPasted('Hock meat\t980\n1.5 kg\tBack fat\n\nCream\t2 x 105g', 'metric')).toEqual({
      lines: [
        { ingredient: 'Hock meat', g: 980 },
        { ingredient: 'Back fat', g: 1500 },
        { ingredient: 'Cream', g: 210 },
      ],
      left: [],
    });
  });
  it('hands back what it cannot read', () => {
    expect(readPasted('Ingredient\tWeight\nSalt\t21', 'metric')).toEqual({
      lines: [{ ingredient: 'Salt', g: 21 }],
      left: ['Ingredient\tWeight'],
    });
    expect(readPasted('Flour\t1,200', 'metric').left).toEqual(['Flour\t1,200']);
  });
  it('takes bare numbers in the kitchen’s unit', () => {
    expect(readPasted('Salt; 2', 'US').lines[0]?.g).toBeCloseTo(56.699, 3);
  });
  it('does not take a single word for a table', () => {
    expect(isTable('juniper')).toBe(false);
    expect(isTable('juniper\t4')).toBe(true);
    expect(isTable('a\nb')).toBe(true);
  });
});
