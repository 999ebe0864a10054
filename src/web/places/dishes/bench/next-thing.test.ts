import { expect, test } from 'vitest';
import type { Method } from '../../../../contract/steps.ts';
import { newStep } from './new-step.ts';
import { missingIn } from './next-thing.tsx';

test('missingIn: no cook step, then a cook without stages, then a log without a rule, then nothing', () => {
  const cook = newStep('cook', 'GB-ENG');
  const chill = newStep('chill', 'GB-ENG');
  if (cook.kind !== 'cook' || chill.kind !== 'chill') throw new Error('asked for a cook and a chill');
  const log = { id: chill.id, label: 'Core', kind: 'core log' as const };
  const said = (method: Method) => missingIn(method)?.words ?? null;
  expect(said([newStep('trim', 'GB-ENG')])).toMatch(/no cook step/);
  expect(said([{ ...cook, stages: [] }])).toMatch(/how it is cooked/);
  expect(said([cook, { ...chill, rules: [], asks: [log] }])).toMatch(/names no rule/);
  expect(said([cook, chill])).toBeNull();
});
