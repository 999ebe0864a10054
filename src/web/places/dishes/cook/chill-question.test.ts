import { describe, expect, test } from 'vitest';
import { runChill } from '../../../../contract/chill.ts';
import type { Method, StepOf } from '../../../../contract/steps.ts';
import {
  type ChillAsked,
  chillingStage,
  chillQuestion,
  clockStartsAt,
  usualMachine,
} from './chill-question.ts';

const common = { name: 'x', how: '', handsMin: 0, asks: [] };
const composition = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const cookStep: StepOf<'cook'> = {
  kind: 'cook',
  id: '0190b6a0-0000-7000-8000-000000000001',
  ...common,
  body: { shape: 'cylinder', diameterMm: 50, layers: [{ name: 'filling', composition }] },
  startC: 4,
  stages: [{ name: 'steam', medium: 'steam', until: { min: 40 } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  rules: [],
};
const chillStep: StepOf<'chill'> = {
  kind: 'chill',
  id: '0190b6a0-0000-7000-8000-000000000002',
  ...common,
  stages: [
    { name: 'stand', medium: 'still air', mediumC: 20, until: { min: 5 } },
    { name: 'ice water', medium: 'ice water', until: { warmestC: 8 } },
  ],
  rules: ['gb-chill-90min-8c'],
};
const wrap: StepOf<'wrap'> = {
  kind: 'wrap',
  id: '0190b6a0-0000-7000-8000-000000000003',
  ...common,
  material: 'film',
  layers: 4,
  micrometres: 10,
  kWmK: 0.16,
};
const method: Method = [wrap, cookStep, chillStep];
const asked: ChillAsked = {
  stage: 1,
  startC: 80,
  kind: 'ice',
  powerKW: 1,
  ratedKg: 20,
  ratedMin: 90,
  iceKg: 5,
  waterKg: 10,
  waterC: 10,
  pieceG: 500,
  pieces: null,
};

describe('what the chill step asks', () => {
  test('is taken by the command as it stands, with the wrap before it in series', () => {
    const question = chillQuestion(method, chillStep.id, chillStep.rules, asked);
    expect(question?.stage.medium).toBe('ice water');
    expect(question?.stage.resistanceM2KW).toBeCloseTo(0.00025, 12);
    expect(question?.pieceG).toBe(500);
    expect(runChill(question).most?.pieces).toBeGreaterThan(0);
  });
  test('only the rules of cooling, and nothing where there are none', () => {
    const rules = ['gb-70c-2min', ...chillStep.rules];
    expect(chillQuestion(method, chillStep.id, rules, asked)?.rules).toEqual(chillStep.rules);
    expect(chillQuestion(method, chillStep.id, ['gb-70c-2min'], asked)).toBeNull();
    expect(clockStartsAt(rules)).toBe(63);
  });
  test('nothing without a cook before it, or where the medium follows a log', () => {
    expect(chillQuestion([chillStep], chillStep.id, chillStep.rules, asked)).toBeNull();
    const log = {
      ...chillStep,
      stages: [{ name: 'x', hWm2K: 9, mediumLog: [{ min: 0, C: 3 }], until: { min: 9 } }],
    };
    expect(chillQuestion([cookStep, log], log.id, log.rules, { ...asked, stage: 0 })).toBeNull();
  });
  test('the stage that chills is the first into something cold, and says what machine it is', () => {
    expect(chillingStage(chillStep.stages)).toBe(1);
    expect(usualMachine(chillStep.stages[1])).toBe('ice');
    expect(usualMachine({ name: 'x', medium: 'blast chiller', until: { min: 1 } })).toBe('rated');
    expect(usualMachine(undefined)).toBe('none');
  });
});
