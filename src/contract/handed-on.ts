/** What a cure hands on to the steps after it, and where it may not be counted on. Whoever reads it is told where it comes from. */
import { nitriteOfStep } from './method-cure.ts';
import type { Method, Step, StepOf } from './steps.ts';

type Cure = StepOf<'cure'>;

function before(method: Method, stepId: string): readonly Step[] {
  return method.slice(
    0,
    Math.max(
      0,
      method.findIndex((s) => s.id === stepId),
    ),
  );
}

export interface NitriteHandedOn {
  readonly from: Cure;
  /** Put in, as sodium nitrite to the green weight [mg/kg], rounded down; null where less may have gone in. */
  readonly ppm: number | null;
  /** Why it is not counted on; empty where it is. */
  readonly why: string;
}

/**
 * Nitrite that a cure before this step put in; null where none of them has any. Rules that ask for nitrite ask for so much in
 * all of the food: what is reckoned as the most that can go in, or is in a part of it only, is not handed on.
 */
export function nitriteHandedOn(method: Method, stepId: string): NitriteHandedOn | null {
  const steps = before(method, stepId);
  const at = steps.findLastIndex((s) => s.kind === 'cure' && s.curingSalt !== undefined);
  const from = steps[at];
  if (from?.kind !== 'cure') return null;
  const nitrite = nitriteOfStep(from, 'GB-ENG');
  if (nitrite === null) return null;
  const other = steps.find((s) => s.kind === 'mix' || s.kind === 'fill');
  if (other !== undefined)
    return { from, ppm: null, why: `what “${other.name}” adds to it was not in that cure` };
  if (from.by === 'brine')
    return { from, ppm: null, why: 'of a brine only the most that can go in is known, not the least' };
  return { from, ppm: Math.floor(nitrite.ppm), why: '' };
}

export interface SaltHandedOn {
  readonly from: Cure;
  /** Why its salt cannot be counted on here; empty where it can be reckoned from the cure. */
  readonly why: string;
  /** A filling or mix that is in the piece too: it has its own salt, and the less salted of the two decides. */
  readonly beside: StepOf<'mix'> | null;
}

/** Takes boiling or simmering in water salt out of it? What is wrapped, and what is steamed, keeps it. */
const leaches = (step: Step): boolean =>
  step.kind === 'cook' &&
  step.stages.some(
    (stage) =>
      /water|stock|broth/i.test(`${stage.medium ?? ''} ${stage.name}`) &&
      stage.wrapped !== true &&
      (stage.wraps ?? []).length === 0,
  );

/** Where the salt at this step comes from; null where nothing before it was cured. */
export function saltHandedOn(method: Method, stepId: string): SaltHandedOn | null {
  const steps = before(method, stepId);
  const at = steps.findLastIndex((s) => s.kind === 'cure');
  const from = steps[at];
  if (from?.kind !== 'cure') return null;
  const later = steps.slice(at + 1);
  const beside = steps.findLast((s) => s.kind === 'mix') ?? null;
  const wrapped = later.some((s) => s.kind === 'wrap' || s.kind === 'fill');
  const boiled = later.find(leaches);
  const why =
    from.piece === undefined || from.h <= 0
      ? `“${from.name}” does not say how thick the piece is or how long it lies`
      : boiled !== undefined && !wrapped
        ? `“${boiled.name}” takes salt out into its water, and how much is not computed`
        : '';
  return { from, why, beside };
}
