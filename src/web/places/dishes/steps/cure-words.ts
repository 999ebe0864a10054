/** What a cure comes to, in words; rounded so that nothing looks saltier, drier or sooner than it is. Pure. */
import type { SaltState } from '../../../../core/salt/cure.ts';
import type { Foreseen } from '../../../../core/salt/foresee.ts';
import { duration } from '../../../../documents/format.ts';
import { activityWords, saltWords, spanWords } from '../../../../documents/salt-words.ts';

export interface EvenWords {
  readonly state: 'neutral' | 'not yet';
  readonly word: string;
  readonly why: string;
}

/** Whether the middle has caught up by the end of the programme; never drawn as a thing that is safe. */
export function evenWords({ even, result, ranged }: Foreseen): EvenWords {
  const end = result.history.at(-1);
  const total = end?.t ?? 0;
  const middle =
    end === undefined
      ? ''
      : `The middle has ${saltWords(end.coreWaterPhase)} salt in its water, the mean is ${saltWords(end.meanWaterPhase)}.`;
  if (even.usual === null) return { state: 'not yet', word: 'No salt on its way to the middle', why: middle };
  const when = `The middle has gone nine tenths of its way after ${spanWords(even)}; all of it takes ${duration(total / 60)}.`;
  if (even.usual > total) return { state: 'not yet', word: 'Not even yet', why: `${middle} ${when}` };
  if (ranged && (even.slowest === null || even.slowest > total))
    return { state: 'not yet', word: 'Even, unless the salt is slow', why: `${middle} ${when}` };
  return { state: 'neutral', word: 'Even by then', why: `${middle} ${when}` };
}

/** Rows of the table: where, salt of the flesh there, salt in its water, activity. */
export function saltRows(end: SaltState): readonly (readonly [string, string, string, string])[] {
  const row = (name: string, share: number, waterPhase: number) =>
    [name, saltWords(share), saltWords(waterPhase), activityWords(waterPhase)] as const;
  return [
    row('Middle', end.core, end.coreWaterPhase),
    row('Mean', end.mean, end.meanWaterPhase),
    row('Surface', end.surface, end.surfaceWaterPhase),
  ];
}
