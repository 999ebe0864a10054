import { describe, expect, test } from 'vitest';
import type { ProbeLog } from '../../../../contract/records.ts';
import type { StepOf } from '../../../../contract/steps.ts';
import type { CookVerdict } from '../../../../core/method/verdict.ts';
import { measuredLines, predictedLine, questionText, specificationText } from './request-draft.ts';

const step = { name: 'Steam', target: { referenceC: 70, zC: 7.5, min: 2 } } as StepOf<'cook'>;
const verdict = { word: 'holds', got: 179.99, gotAtLiftOut: 121, doubts: [] } as unknown as CookVerdict;

describe('predictedLine', () => {
  test('what is not there is not rounded up to be there', () => {
    expect(predictedLine(step, verdict, 'metric')).toContain('2.99 min at 70 °C');
    expect(predictedLine(step, verdict, 'metric')).toContain('not measured');
  });
  test('short and not known are said so', () => {
    expect(predictedLine(step, { ...verdict, word: 'short' } as CookVerdict, 'metric')).toContain(
      'NOT to hold',
    );
    const doubted = { ...verdict, word: 'unknown', doubts: [{ what: 'ice is not modelled' }] };
    const line = predictedLine(step, doubted as unknown as CookVerdict, 'metric');
    expect(line).toContain('ice is not modelled');
    expect(line).not.toContain('predicted to hold');
  });
});

test('measuredLines say of each rule what it said, undecided too', () => {
  const log = {
    name: 'probe 1',
    channel: 'core',
    startedAt: '2026-11-20T10:00:00.000Z',
    points: [
      { s: 0, C: 5 },
      { s: 60, C: 71.26 },
    ],
    judgements: [
      { title: 'Rule A', passes: false, why: 'too short' },
      { title: 'Rule B', passes: null, why: 'log ends early' },
    ],
  } as unknown as ProbeLog;
  const [line] = measuredLines([log]);
  expect(line).toContain('Rule A does NOT hold (too short)');
  expect(line).toContain('Rule B undecided');
  expect(line).toContain('warmest 71.3 °C');
});

test('without a specification of the animal nothing is claimed', () => {
  expect(specificationText([], 'goose', 'metric')).toEqual({ supplier: '', text: '' });
});

test('the question names animal, part and dish', () => {
  const question = questionText('goose', 'head', 'Heads');
  for (const word of ['goose', 'head', 'Heads', 'conditions']) expect(question).toContain(word);
});
