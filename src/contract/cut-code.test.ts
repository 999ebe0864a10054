import { expect, it } from 'vitest';
import { cutCode } from './cut-code.ts';

it('a part is named in full beside the code of its animal', () => {
  expect(cutCode('R-0051', 'neck and breast', new Set())).toBe('R-0051/neck-and-breast');
  expect(cutCode('G-0208', 'Pâté trimmings’ fat', new Set())).toBe('G-0208/pate-trimmings-fat');
  expect(cutCode('G-0208', '首', new Set())).toBe('G-0208/part');
});

it('a long name ends at a word, and the whole never passes 60 characters with its number', () => {
  const long = 'shoulder with the blade bone and the whole of the neck left on it for the pot';
  const taken = new Set<string>();
  for (let n = 0; n < 12; n++) taken.add(cutCode('P-0420', long, taken));
  const codes = [...taken];
  expect(codes).toHaveLength(12);
  expect(codes[0]).toBe('P-0420/shoulder-with-the-blade-bone-and-the-whole-of-the');
  expect(Math.max(...codes.map((c) => c.length))).toBeLessThanOrEqual(60);
  expect(cutCode('x'.repeat(60), 'y'.repeat(80), new Set()).length).toBeLessThanOrEqual(56);
});
