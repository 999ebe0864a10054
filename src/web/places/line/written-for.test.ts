import { expect, test } from 'vitest';
import type { Method, Step } from '../../../contract/steps.ts';
import { newStep } from '../dishes/bench/new-step.ts';
import { weightsWords, writtenFor } from './written-for.ts';

const lines = [
  { ingredient: 'hock', g: 1_400 },
  { ingredient: 'cream', g: 700 },
];
const trim = newStep('trim', 'GB-ENG');
const mix = newStep('mix', 'GB-ENG', { lines });
const fill = newStep('fill', 'GB-ENG', { gramsPerPiece: 340 });
const method: Method = [trim, mix, fill];

test('writtenFor: what the mix fills, in whole pieces; not known without both', () => {
  expect(writtenFor(method)).toBe(6);
  expect(writtenFor([trim, mix])).toBeNull();
  expect(writtenFor([trim, { ...mix, lines: [] } as Step, fill])).toBeNull();
});

test('weightsWords: silent where it fits, else by how much; unknown is said; only where weights are the whole', () => {
  expect(weightsWords(method, mix, 6)).toBeNull();
  const ofThirteen: Method = [trim, { ...mix, lines: [{ ingredient: 'liver', g: 4_420 }] } as Step, fill];
  expect(writtenFor(ofThirteen)).toBe(13);
  expect(weightsWords(ofThirteen, trim, 12)).toBeNull();
  expect(weightsWords(method, mix, 12)).toMatch(/about 6 pieces.*making 12: take 2 times/);
  expect(weightsWords(method, trim, 4)).toMatch(/take 0\.67 times/);
  expect(weightsWords(method, fill, 12)).toBeNull();
  expect(weightsWords([trim], trim, 12)).toMatch(/not reckoned for 12/);
});
