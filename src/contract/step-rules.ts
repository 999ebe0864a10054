/** Which rules the core is held to at a step: those it names, and for cooking always one that speaks of cooking. */
import { heldTo, type RuleForFood, rulesFor } from '../core/method/rules-for.ts';
import { findRule } from '../core/properties/rules.ts';
import { productOf, ruleStepsOf, type Subject } from './product-of.ts';
import type { Method, Step, StepOf } from './steps.ts';

/** What a cook step is held to when it names nothing that would make food safe by itself and nothing is known of its food. */
export const usualCooking = 'gb-70c-2min';

function isCooking(id: string): boolean {
  const rule = findRule(id);
  return (rule?.kind === 'lethality' || rule?.kind === 'hold') && rule.scope.role !== 'beside';
}

/** A log of the core shows that food was reheated; that it is kept hot afterwards is shown by its own readings. */
const inLogOf = (kind: 'keep' | 'finish') => (id: string) => kind === 'keep' || findRule(id)?.kind !== 'keep';

/** The rules that a log of a step's core is judged by, as the step itself has them. A step of a signed version names all that it was signed by. */
export function rulesOfStep(step: Step): readonly string[] {
  if (step.kind === 'chill') return step.rules;
  if (step.kind === 'keep' || step.kind === 'finish') return (step.rules ?? []).filter(inLogOf(step.kind));
  if (step.kind !== 'cook') return [];
  return step.rules.some(isCooking) ? step.rules : [...step.rules, usualCooking];
}

/** The rules that a step of this dish is held to in this kitchen's place: those it names, and what is usual there for such food. */
export function rulesHeld(step: Step, method: Method, subject: Subject): readonly string[] {
  if (step.kind === 'cook') return named(step, method, subject);
  return isReheating(step, method)
    ? named(step, method, subject).filter(inLogOf('finish'))
    : rulesOfStep(step);
}

/** Is this a finish whose heat is computed, of food that was cooked and has been chilled or kept since? */
export function isReheating(step: Step, method: Method): step is StepOf<'finish'> {
  if (step.kind !== 'finish' || (step.stages ?? []).length === 0) return false;
  const at = method.findIndex((s) => s.id === step.id);
  const before = method.slice(0, Math.max(0, at));
  const cooked = before.findLastIndex((s) => s.kind === 'cook');
  return cooked >= 0 && before.slice(cooked).some((s) => s.kind === 'chill' || s.kind === 'keep');
}

/** What a step names, and what it is held to besides. */
const named = (step: StepOf<'cook' | 'finish'>, method: Method, subject: Subject) =>
  heldTo(
    step.rules ?? [],
    productOf(subject, method, step.id),
    subject.place,
    step.kind === 'cook' ? 'cook' : 'reheat',
  );

/** The method with every cook step, and every reheating that is computed, naming all the rules it is held to: what is signed, printed and judged. */
export function withRules(method: Method, subject: Subject): Method {
  return method.map((step) =>
    step.kind === 'cook' || isReheating(step, method)
      ? { ...step, rules: [...named(step, method, subject)] }
      : step,
  );
}

/** Every rule that speaks of a step, and how it stands to this dish here. */
export function rulesAround(step: Step, method: Method, subject: Subject): RuleForFood[] {
  const product = productOf(subject, method, step.id);
  return ruleStepsOf(step).flatMap((kind) => rulesFor(product, subject.place, kind));
}

/** A single reading that is to stand for a cooked core is at least this hot: the lowest published temperature of the usual rule [°C]. */
export const leastCore = 60;

/** Does a batch of this step show how hot the core was: a log, or a critical reading with a lower limit that means something? */
export const measuresCore = (step: Step): boolean =>
  step.asks.some(
    (ask) =>
      ask.kind === 'core log' ||
      (ask.kind === 'temperature' && ask.critical === true && (ask.low ?? 0) >= leastCore),
  );
