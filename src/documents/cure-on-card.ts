/** What is printed under a cure step: how far the salt is reckoned to get, and what the law says of its nitrite. */
import { nitriteOfStep } from '../contract/method-cure.ts';
import type { Place } from '../contract/records.ts';
import type { StepOf } from '../contract/steps.ts';
import type { Foreseen } from '../core/salt/foresee.ts';
import { cite } from '../core/sources.ts';
import { duration, number } from './format.ts';
import { activityWords, saltWords, spanWords } from './salt-words.ts';

/** A cure step with the engine's answer, or why there is none. */
export type CuredStep =
  | { readonly stepId: string; readonly foreseen: Foreseen }
  | { readonly stepId: string; readonly why: string };

export interface CureOnCard {
  readonly word: string;
  readonly colour: 'ember' | 'rust';
  readonly text: string;
}

const raw = 'Salt does not cook and does not kill: raw until it has been cooked.';

function saltText(foreseen: Foreseen): string {
  const end = foreseen.result.history.at(-1);
  if (end === undefined) return '';
  const slow =
    foreseen.slowest === null ? '' : `, ${saltWords(foreseen.slowest.coreWaterPhase)} where the salt is slow`;
  return `After ${duration(end.t / 60)} in all the middle has ${saltWords(end.coreWaterPhase)} salt in its water${slow}, the mean ${saltWords(end.meanWaterPhase)}; water activity in the middle by salt ${activityWords(end.coreWaterPhase)}. The middle has gone nine tenths of its way after ${spanWords(foreseen.even)}. Computed, not measured.`;
}

/** Null where nothing has been reckoned and there is no nitrite. */
export function cureOnCard(
  step: StepOf<'cure'>,
  cured: CuredStep | undefined,
  place: Place,
): CureOnCard | null {
  const nitrite = nitriteOfStep(step, place);
  const going =
    nitrite === null
      ? ''
      : `${number(Math.ceil(nitrite.ppm * 10 - 1e-6) / 10, 1)} mg/kg of sodium nitrite go in (${nitrite.method})`;
  if (nitrite !== null && (nitrite.limit === null || nitrite.verdict === 'not known'))
    return {
      word: 'Nitrite: no limit known',
      colour: 'rust',
      text: `${going}; no published limit is known for it here. Not known is not allowed: ask your local authority. Not to be made as it stands.`,
    };
  if (nitrite?.verdict === 'over')
    return {
      word: nitrite.limit?.most === 0 ? 'Nitrite is not let in' : 'Too much nitrite',
      colour: 'rust',
      text: `${going}; at most ${nitrite.limit?.most ?? 0} mg/kg ${nitrite.limit?.as === 'NO2' ? 'as the ion ' : ''}may (${cite(nitrite.limit?.source ?? '')}). Not to be made as it stands.`,
    };
  const within =
    nitrite?.limit == null
      ? ''
      : `${going}, ${nitrite.verdict}${nitrite.verdict === 'within' ? ' the limit' : ''} of ${nitrite.limit.most} mg/kg ${nitrite.limit.as === 'NO2' ? 'as the ion' : 'as sodium nitrite'} for a ${nitrite.limit.product}; what may be left in it is another limit. `;
  if (cured === undefined)
    return within === '' ? null : { word: 'Curing salt', colour: 'ember', text: `${within}${raw}` };
  if ('why' in cured)
    return { word: 'Salt: not known', colour: 'rust', text: `${within}${cured.why} ${raw}` };
  return { word: 'Salt, reckoned', colour: 'ember', text: `${within}${saltText(cured.foreseen)} ${raw}` };
}
