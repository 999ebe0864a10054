import { describe, expect, it } from 'vitest';
import { rulesHeld, rulesOfStep, withRules } from './step-rules.ts';
import type { Method, StepOf } from './steps.ts';

const common = { name: 'a step', how: '', handsMin: 0, asks: [] };
const cook: StepOf<'cook'> = {
  kind: 'cook',
  id: 'c',
  ...common,
  body: {
    shape: 'cylinder',
    diameterMm: 50,
    layers: [{ name: 'meat', properties: { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 } }],
  },
  startC: 5,
  stages: [],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  rules: [],
};
const fill: StepOf<'fill'> = {
  kind: 'fill',
  id: 'f',
  ...common,
  casing: 'skin',
  profile: [],
  skinMm: 1,
  gramsPerPiece: 300,
  headSpacePct: 0,
};
const finish: StepOf<'finish'> = { kind: 'finish', id: 'x', ...common, by: 'oven', mediumC: 200, min: 10 };
const at = (place: 'GB-ENG' | 'GB-SCT' | 'US', species = 'goose', part = 'neck') => ({
  species,
  part,
  place,
});

describe('rulesHeld', () => {
  it('is what is usual in the kitchen’s place for what the method makes', () => {
    const method: Method = [fill, cook];
    expect(rulesHeld(cook, method, at('GB-ENG'))).toEqual(['gb-70c-2min']);
    expect(rulesHeld(cook, method, at('US'))).toEqual(['us-food-code-165f-stuffed']);
    expect(rulesHeld(cook, method, at('GB-ENG', 'lamb', 'heart'))).toEqual(['gb-70c-2min-comminuted']);
    expect(rulesHeld(cook, [cook], at('US', 'beef', 'cheek'))).toContain('us-food-code-155f-comminuted');
  });
  it('listens to what the step says of its food', () => {
    const whole = { ...cook, food: { injectedOrTenderised: false } };
    expect(rulesHeld(whole, [whole], at('US', 'beef', 'cheek'))).toEqual(['us-food-code-145f-whole']);
    const open = { ...cook, food: { stuffedOrRolled: false, minced: false, injectedOrTenderised: false } };
    expect(rulesHeld(open, [fill, open], at('GB-ENG', 'lamb', 'heart'))).toEqual(['gb-70c-2min']);
  });
  it('counts what is mixed in: pork with chicken in it is poultry', () => {
    const mix: StepOf<'mix'> = {
      kind: 'mix',
      id: 'm',
      ...common,
      lines: [{ ingredient: 'Chicken liver', g: 100 }],
      maxC: 10,
    };
    expect(rulesHeld(cook, [mix, cook], at('US', 'pig', 'shoulder'))).toContain('us-food-code-165f-stuffed');
  });
  it('fills every cook step and leaves the others as they are', () => {
    const filled = withRules([fill, cook, finish], at('US'));
    expect(filled.map((s) => ('rules' in s ? s.rules : null))).toEqual([
      null,
      ['us-food-code-165f-stuffed'],
      null,
    ]);
    expect(withRules(filled, at('US'))).toEqual(filled);
  });
});

describe('rulesOfStep', () => {
  it('judges a log of reheating by rules of reheating, not by those of keeping hot', () => {
    const both = { ...finish, rules: ['scotland-reheat-82c', 'scotland-hot-hold-63c'] };
    expect(rulesOfStep(both)).toEqual(['scotland-reheat-82c']);
  });
});
