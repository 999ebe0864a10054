/** The salt that a cure before a step has left in the least salted place, as reckoned; it stands in for nothing that was measured. */
import { useMemo } from 'react';
import { saltHandedOn } from '../../../../contract/handed-on.ts';
import { cureProblemOf } from '../../../../contract/method-cure.ts';
import type { Method } from '../../../../contract/steps.ts';
import { saltCarried } from '../../../../core/method/salt-carried.ts';
import { saltWaterActivity } from '../../../../core/salt/water-activity.ts';
import { mixSums } from './mix-sums.ts';
import { useCure } from './use-cure.ts';

export interface SaltBefore {
  /** The cure it comes from. */
  readonly from: string;
  /** In the water of the least salted place, rounded down [%]; null where it cannot be counted on or is not worked out yet. */
  readonly pct: number | null;
  readonly waterActivity: number | null;
  /** Why not; empty while it is being worked out. */
  readonly why: string;
}

/** No published model of growth is wetter than this. */
export const wettest = 0.997;

export function useSaltBefore(method: Method, stepId: string): SaltBefore | null {
  const handed = useMemo(() => saltHandedOn(method, stepId), [method, stepId]);
  const cure = useMemo(
    () => (handed === null || handed.why !== '' ? null : cureProblemOf(method, handed.from)),
    [method, handed],
  );
  const { answered, current, fault } = useCure(cure, undefined);
  if (handed === null) return null;
  const from = handed.from.name;
  const none = (why: string): SaltBefore => ({ from, pct: null, waterActivity: null, why });
  if (handed.why !== '') return none(handed.why);
  if (fault !== null) return none(fault);
  let beside = Number.POSITIVE_INFINITY;
  if (handed.beside !== null) {
    const { mixture, unknown, saltUnknown } = mixSums(handed.beside.lines);
    const salt = mixture?.waterPhaseSalt ?? null;
    if (salt === null || unknown.length > 0 || saltUnknown.length > 0)
      return none(`the salt in the water of “${handed.beside.name}” is not known`);
    beside = salt;
  }
  if (answered === null || !current) return none('');
  const least = Math.min(saltCarried(answered.foreseen).waterPhase, beside);
  const pct = Math.floor(1_000 * least) / 10;
  return { from, pct, waterActivity: Math.min(wettest, saltWaterActivity(pct / 100)), why: '' };
}
