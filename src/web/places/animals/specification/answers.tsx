import { useMemo, useState } from 'react';
import { v7 as newId } from 'uuid';
import type {
  Specification,
  SpecificationAnswer,
  SpecificationVersion,
} from '../../../../contract/specification.ts';
import { call, queryClient } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { TextField } from '../../../parts/field.tsx';
import { moment } from '../../../parts/moment.ts';
import { say } from '../../../parts/toast.tsx';
import { Verdict, type VerdictState } from '../../../parts/verdict.tsx';

const shapes: Record<SpecificationAnswer['answer'], VerdictState> = {
  agreed: 'holds',
  'agreed with changes': 'not yet',
  declined: 'does not hold',
};

export interface AnswersProps {
  readonly specification: Specification;
  readonly version: SpecificationVersion;
}

/** What the supplier said to this version, each answer as it was given; the last one counts. */
export function Answers({ specification, version }: AnswersProps) {
  const kitchen = useKitchen();
  const [answering, setAnswering] = useState(false);
  if (version.status !== 'sent') return null;
  const { answers } = version;
  return (
    <section className="stack" aria-labelledby="answers">
      <h2 id="answers">What they answered to version {version.number}</h2>
      {answers.length === 0 ? (
        <p>Nothing yet. It is in force once they agree.</p>
      ) : (
        <ol className="supply-list">
          {answers.map((a, i) => (
            <li key={a.id}>
              <Verdict
                state={shapes[a.answer]}
                word={`${a.answer.replace(/^./, (c) => c.toUpperCase())}${i < answers.length - 1 ? ' (before)' : ''}`}
              >
                <p>
                  {a.saidBy}, {moment(a.at, kitchen.zone)}; written down by {a.by}.
                </p>
                {a.note === '' ? null : <p>{a.note}</p>}
              </Verdict>
            </li>
          ))}
        </ol>
      )}
      {specification.endedAt !== null ? null : answering ? (
        <Answer version={version} onDone={() => setAnswering(false)} />
      ) : (
        <div className="not-on-paper">
          <Button kind={answers.length === 0 ? 'strong' : 'plain'} onPress={() => setAnswering(true)}>
            Write down what they answered
          </Button>
        </div>
      )}
    </section>
  );
}

function Answer({
  version,
  onDone,
}: {
  readonly version: SpecificationVersion;
  readonly onDone: () => void;
}) {
  const kitchen = useKitchen();
  const [answer, setAnswer] = useState<SpecificationAnswer['answer'] | ''>('');
  const [saidBy, setSaidBy] = useState('');
  const [note, setNote] = useState('');
  // One id for one filled-in form: sent again after a lost answer, it is one line.
  // biome-ignore lint/correctness/useExhaustiveDependencies: other words are another line
  const id = useMemo(() => newId(), [answer, saidBy, note]);
  const keep = async () => {
    if (answer === '') throw new Error('Choose what they answered.');
    if (saidBy.trim() === '') throw new Error('Say who at the supplier said it.');
    if (answer === 'agreed with changes' && note.trim() === '')
      throw new Error('Say which changes: they are part of what was agreed.');
    await call('answerSpecification', {
      params: { kitchenId: kitchen.id, versionId: version.id },
      body: { id, answer, saidBy: saidBy.trim(), note, at: new Date().toISOString() },
    });
    await Promise.all(
      ['specification', 'specifications'].map((name) => queryClient.invalidateQueries({ queryKey: [name] })),
    );
    say('Written down.');
    onDone();
  };
  return (
    <form className="entry measure" onSubmit={(e) => e.preventDefault()}>
      <h3>What they answered</h3>
      <Choice
        label="Answer"
        value={answer}
        options={[
          { value: 'agreed', label: 'agreed' },
          { value: 'agreed with changes', label: 'agreed with changes' },
          { value: 'declined', label: 'declined' },
        ]}
        onChange={setAnswer}
      />
      <TextField label="Who said it" value={saidBy} onChange={setSaidBy} maxLength={120} />
      <TextField
        label="In their words"
        value={note}
        onChange={setNote}
        lines={3}
        maxLength={1_000}
        hint={
          answer === 'agreed with changes'
            ? 'Points are still checked as this version has them; where a change is to last, write a new version.'
            : undefined
        }
      />
      <div className="row">
        <Button kind="strong" type="submit" onPress={keep} busy="Writing…">
          Write it down
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </form>
  );
}
