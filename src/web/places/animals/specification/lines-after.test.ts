import { expect, test } from 'vitest';
import { linesAfter } from './lines-after.ts';

test('typing changes one line', () => {
  expect(linesAfter(['torn', 'warm'], 1, 'warmer', 30)).toEqual(['torn', 'warmer']);
});
test('a pasted list becomes lines, without its bullets and empty lines', () => {
  expect(linesAfter(['torn', ''], 1, '• warm\r\n\r\n- wet\n3) old', 30)).toEqual([
    'torn',
    'warm',
    'wet',
    'old',
  ]);
});
test('never more than the most', () => {
  expect(linesAfter(['a', 'b'], 1, 'c\nd\ne', 3)).toEqual(['a', 'c', 'd']);
});
