/** The first thing to do next with a version, said above the bench. */
import { Link } from 'wouter';
import type { Dish, Kitchen, Version } from '../../../../contract/records.ts';
import type { Method, Step } from '../../../../contract/steps.ts';
import { at } from '../../../addresses.ts';
import { stoppedParts } from '../stage-words.ts';

/** The step that a draft's signature still waits for, and why; null where nothing that can be seen here is missing. */
export function missingIn(method: Method): { readonly step: Step | null; readonly words: string } | null {
  if (!method.some((step) => step.kind === 'cook'))
    return { step: null, words: 'it has no cook step yet, so it cannot be signed.' };
  for (const step of method)
    if (step.kind === 'cook' && step.stages.length === 0)
      return { step, words: 'does not say yet how it is cooked, so it cannot be signed.' };
  for (const step of method)
    if (step.kind === 'chill' && step.rules.length === 0 && step.asks.some((ask) => ask.kind === 'core log'))
      return { step, words: 'asks for a core log but names no rule to judge it by.' };
  return null;
}

export interface NextThingProps {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly version: Version;
  readonly method: Method;
  readonly hrefOf: (stepId: string) => string;
}

export function NextThing({ kitchen, dish, version, method, hrefOf }: NextThingProps) {
  if (version.status === 'signed')
    return version.number === dish.signedVersion ? (
      <p className="next-thing not-on-paper">
        <Link className="button button-strong" href={at.startBatch(kitchen.id, dish.id)}>
          Start a batch
        </Link>
      </p>
    ) : null;
  if (method.length === 0) return null;
  const stopped = stoppedParts(dish).length > 0;
  const missing = missingIn(method);
  return (
    <p className="next-thing not-on-paper">
      <strong>Next:</strong>{' '}
      {stopped ? (
        <>the law stops a part of this dish; see above what to ask. Until then it cannot be signed.</>
      ) : missing === null ? (
        <>
          look at each step, then <a href="#versions">sign it</a>.
        </>
      ) : missing.step === null ? (
        missing.words
      ) : (
        <>
          <Link href={hrefOf(missing.step.id)}>{missing.step.name}</Link> {missing.words}
        </>
      )}
    </p>
  );
}
