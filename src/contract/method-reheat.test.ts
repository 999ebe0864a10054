import { describe, expect, test } from 'vitest';
import { cook } from '../core/heat/cook.ts';
import { foreseenReheat } from '../core/method/reheat.ts';
import { findRule } from '../core/properties/rules.ts';
import { reheatInputOf, reheatProblemOf, reheatStartOf } from './method-reheat.ts';
import { InputProblems } from './problem.ts';
import { isReheating, rulesHeld, withRules } from './step-rules.ts';
import { type FinishStep, type Method, Step, type StepOf } from './steps.ts';

const common = (n: number, name: string) => ({
  id: `01900000-0000-7000-8000-${String(n).padStart(12, '0')}`,
  name,
  how: '',
  handsMin: 0,
  asks: [],
});
const composition = { water: 0.74, protein: 0.21, fat: 0.04, carbohydrate: 0, fibre: 0, ash: 0.01 };
const cooked: StepOf<'cook'> = {
  kind: 'cook',
  ...common(1, 'steam'),
  body: { shape: 'cylinder', diameterMm: 60, layers: [{ name: 'meat', composition }] },
  startC: 4,
  stages: [{ name: 'steam', mediumC: 100, hWm2K: 1000, until: { min: 60 } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  rules: ['gb-70c-2min'],
};
const keep = (maxC: number): StepOf<'keep'> => ({
  kind: 'keep',
  ...common(2, 'hold'),
  maxC,
  days: 3,
  packed: 'vacuum-packed',
});
const heat = (min: number) => [{ name: 'bath', mediumC: 85, hWm2K: 500, until: { min } }];
const finish = (over: Partial<FinishStep> = {}): FinishStep => ({
  kind: 'finish',
  ...common(3, 'warm through'),
  by: 'bath',
  mediumC: 85,
  min: 40,
  stages: heat(60),
  ...over,
});
const ribbon = (step: FinishStep, kept: Step = keep(3)): Method => [cooked, kept, step];
const slice = { shape: 'slab' as const, thicknessMm: 20, layers: [{ name: 'meat', composition }] };

function seen(method: Method, place: 'GB-ENG' | 'GB-SCT' | 'EU' = 'GB-ENG') {
  const held = withRules(method, { species: 'pig', part: 'loin', place });
  const step = held.at(-1) as FinishStep;
  const problem = reheatProblemOf(held, step.id);
  const rules = rulesHeld(step, held, { species: 'pig', part: 'loin', place });
  return {
    rules,
    result: foreseenReheat(
      problem,
      cook(problem, { mode: 'coarse' }),
      rules.flatMap((id) => findRule(id) ?? []),
      step.coreC ?? null,
    ),
  };
}

describe('reheatInputOf', () => {
  test('takes the piece of the cook and the cold of the keep, unless the step says its own', () => {
    expect(reheatInputOf(ribbon(finish()), finish().id)).toMatchObject({ body: cooked.body, startC: 3 });
    const own = finish({ body: slice, startC: 12 });
    expect(reheatInputOf(ribbon(own), own.id)).toMatchObject({ body: slice, startC: 12 });
    expect(reheatStartOf(ribbon(finish()), finish())?.from).toEqual(keep(3));
    expect(reheatStartOf(ribbon(own), own)?.from).toBeNull();
  });

  test('a pack put on after the cook is still on it; the wrap it was cooked in is off', () => {
    const film: Step = {
      kind: 'wrap',
      ...common(9, 'film'),
      material: 'film',
      layers: 10,
      micrometres: 10,
      kWmK: 0.3,
    };
    const step = finish();
    expect(reheatInputOf([film, cooked, keep(3), step], step.id).stages[0]?.resistanceM2KW).toBeUndefined();
    expect(reheatInputOf([cooked, film, keep(3), step], step.id).stages[0]).toMatchObject({
      wrapped: true,
      resistanceM2KW: expect.closeTo(3.333e-4, 7),
    });
  });

  test('names everything that is missing, and where', () => {
    const step = finish({ stages: [] });
    expect(() => reheatInputOf([step], step.id)).toThrow(InputProblems);
    try {
      reheatInputOf([step], step.id);
    } catch (error) {
      expect((error as InputProblems).problems.map((p) => p.path)).toEqual(['stages', 'startC', 'body']);
    }
  });

  test('a finish as it was written before is still a finish, and is no reheating that is computed', () => {
    const { stages: _, ...old } = finish();
    expect(Step.parse(old)).toEqual(old);
    expect(isReheating(old, ribbon(old))).toBe(false);
    expect(isReheating(finish(), [cooked, finish()])).toBe(false);
    expect(isReheating(finish(), ribbon(finish()))).toBe(true);
  });
});

describe('a reheating in the engine', () => {
  test('is held to what is usual in its place for reheating, and signed with it', () => {
    expect(seen(ribbon(finish()), 'GB-SCT').rules).toContain('scotland-reheat-82c');
    expect(seen(ribbon(finish())).rules).toContain('gb-70c-2min');
    expect(withRules([cooked, finish()], { species: 'pig', part: 'loin', place: 'GB-SCT' })[1]).toEqual(
      finish(),
    );
  });

  test('an hour in a bath warms a roll of 60 mm through, ten minutes do not', () => {
    expect(seen(ribbon(finish())).result.word).toBe('holds');
    expect(seen(ribbon(finish({ stages: heat(10) }))).result.word).toBe('short');
  });

  test('82 °C asks for more than 70 °C for two minutes', () => {
    const step = finish({ stages: heat(45) });
    expect(seen(ribbon(step), 'GB-ENG').result.word).toBe('holds');
    expect(seen(ribbon(step), 'GB-SCT').result.word).toBe('short');
  });

  test('a slice is through where the whole piece is not', () => {
    expect(seen(ribbon(finish({ stages: heat(15) }))).result.word).toBe('short');
    expect(seen(ribbon(finish({ stages: heat(15), body: slice }))).result.word).toBe('holds');
  });

  test('from the freezer it thaws in the solver and takes longer', () => {
    const frozen = seen(ribbon(finish({ stages: heat(120) }), keep(-18))).result;
    expect(frozen.thawed).toBeGreaterThan(0);
    expect(frozen.word).toBe('holds');
    const chilled = seen(ribbon(finish({ stages: heat(40) }))).result;
    expect(chilled.thawed).toBeNull();
    const soon = seen(ribbon(finish({ stages: heat(40) }), keep(-18))).result;
    expect(soon.coldest).toBeLessThan(chilled.coldest);
  });

  test('constant properties know no ice: from the freezer that is unknown, never fine', () => {
    const plain = {
      ...slice,
      layers: [{ name: 'meat', properties: { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 } }],
    };
    expect(seen(ribbon(finish({ body: plain, startC: -18 }))).result.word).toBe('unknown');
  });

  test('where no rule is known and no core is wanted, nothing is called fine; a core that is wanted is judged', () => {
    const { rules, result } = seen(ribbon(finish()), 'EU');
    expect(rules).toEqual([]);
    expect(result.word).toBe('not asked');
    expect(seen(ribbon(finish({ coreC: 70 })), 'EU').result.word).toBe('holds');
    expect(seen(ribbon(finish({ coreC: 86 })), 'EU').result.word).toBe('short');
  });
});
