import { expect, test } from 'vitest';
import { SpecificationContent } from '../../../../contract/specification.ts';
import { fieldAt } from './field-at.ts';

test('every key of a specification has a name on screen', () => {
  for (const key of Object.keys(SpecificationContent.shape)) expect(fieldAt(key), key).not.toBe(key);
});
test('a line of a list is counted from one', () => {
  expect(fieldAt('content.refusedIf[2]')).toBe('Refused if, line 3');
  expect(fieldAt('dimensions[0].name')).toBe('Length, line 1');
});
