import { describe, expect, it } from 'vitest';
import { Method, Step, stepKinds } from '../../../../contract/steps.ts';
import { mediumNamed } from '../../../../core/properties/media.ts';
import { duplicateOf, moved, newStep, startingMethods } from './new-step.ts';

describe('newStep', () => {
  it.each(stepKinds)('a new %s keeps the contract', (kind) => {
    for (const place of ['GB-ENG', 'US'] as const)
      expect(Step.safeParse(newStep(kind, place)).error).toBeUndefined();
  });
});

describe('startingMethods', () => {
  it.each(startingMethods.map((s) => [s.id, s] as const))(
    '%s keeps the contract and names real media',
    (_, start) => {
      const method = start.method('GB-ENG');
      expect(Method.safeParse(method).error).toBeUndefined();
      expect(new Set(method.map((s) => s.id)).size).toBe(method.length);
      for (const step of method)
        if (step.kind === 'cook' || step.kind === 'chill')
          for (const stage of step.stages) expect(mediumNamed(stage.medium!).h).toBeDefined();
    },
  );
});

describe('duplicateOf', () => {
  it('shares no id with the step it came from', () => {
    const step = newStep('cook', 'GB-ENG');
    const again = duplicateOf(step);
    expect(again.id).not.toBe(step.id);
    expect(again.asks[0]?.id).not.toBe(step.asks[0]?.id);
    expect(Step.safeParse(again).success).toBe(true);
  });
});

describe('moved', () => {
  const method = [newStep('trim', 'GB-ENG'), newStep('cure', 'GB-ENG'), newStep('cook', 'GB-ENG')];
  const kinds = (m: Method) => m.map((s) => s.kind);
  it('moves one step and keeps the others in order', () => {
    expect(kinds(moved(method, 0, 2))).toEqual(['cure', 'cook', 'trim']);
    expect(kinds(moved(method, 2, 0))).toEqual(['cook', 'trim', 'cure']);
    expect(kinds(moved(method, 1, 9))).toEqual(['trim', 'cook', 'cure']);
    expect(moved(method, 0, -3)).toBe(method);
    expect(moved(method, 7, 0)).toBe(method);
  });
});
