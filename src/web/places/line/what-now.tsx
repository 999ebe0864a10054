import { useId, useState } from 'react';
import type { Decision } from '../../../contract/records.ts';
import type { Ask, Step } from '../../../contract/steps.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/field.tsx';

type What = Decision['what'];

const courses: readonly { readonly what: What; readonly words: string }[] = [
  { what: 'held longer', words: 'Held longer, at the same heat' },
  { what: 'cooked again', words: 'Cooked again from here' },
  { what: 'chilled faster', words: 'Chilled faster: ice, smaller, blast' },
  { what: 'portioned smaller', words: 'Portioned smaller' },
  { what: 'kept back to ask', words: 'Kept back: nobody eats it until somebody qualified has said so' },
  { what: 'discarded', words: 'Thrown away' },
];

/** Which courses can be meant for a step; keeping back and throwing away are always open. */
function open(step: Step, what: What): boolean {
  if (what === 'held longer' || what === 'cooked again')
    return step.kind === 'cook' || step.kind === 'finish';
  if (what === 'chilled faster') return step.kind !== 'cook' && step.kind !== 'finish';
  return true;
}

export interface WhatNowProps {
  readonly step: Step;
  readonly ask: Ask;
  /** What is out of which limit, in words. */
  readonly finding: string;
  /** What the engine or the rule says would put it right, where it can say. */
  readonly advice: string | null;
  readonly onDecide: (what: What, reason: string) => Promise<void>;
}

/** A critical limit is broken: nothing goes on until somebody has said what was done, and why. */
export function WhatNow({ step, ask, finding, advice, onDecide }: WhatNowProps) {
  const [what, setWhat] = useState<What | null>(null);
  const [reason, setReason] = useState('');
  const [missing, setMissing] = useState<string | null>(null);
  const id = useId();
  const decide = async () => {
    if (what === null) return setMissing('Choose what was done.');
    if (reason.trim() === '') return setMissing('Say why, in a few words.');
    setMissing(null);
    return onDecide(what, reason.trim());
  };
  return (
    <section className="what-now" aria-labelledby={`${id}-title`}>
      <div role="alert">
        <h3 id={`${id}-title`}>Out of limit: {finding}. What now?</h3>
      </div>
      <p>
        {ask.basis === undefined || ask.basis === ''
          ? 'This is a critical limit.'
          : `Why the limit: ${ask.basis.replace(/\.$/, '')}.`}
      </p>
      {advice === null ? null : <p className="what-now-advice">{advice}</p>}
      <fieldset className="courses">
        <legend>What was done</legend>
        {courses
          .filter((c) => open(step, c.what))
          .map((c) => (
            <label key={c.what} className="course">
              <input type="radio" name={id} checked={what === c.what} onChange={() => setWhat(c.what)} />
              <span>{c.words}</span>
            </label>
          ))}
      </fieldset>
      <TextField label="Why" value={reason} onChange={setReason} lines={2} maxLength={1_000} />
      {missing === null ? null : (
        <p className="pad-wrong" role="alert">
          ◆ {missing}
        </p>
      )}
      <Button kind="strong" size="line" onPress={decide}>
        Sign this decision
      </Button>
      <p className="quiet small">
        If in doubt keep it back. A decision is written down with your name; it does not make food safe. The
        word of your local authority and of qualified people stands above it.
      </p>
    </section>
  );
}
