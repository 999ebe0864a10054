import { useState } from 'react';
import { v7 as newId } from 'uuid';
import type { AuthorityAnswerInput, AuthorityRequest } from '../../../../contract/authority.ts';
import { call, queryClient } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Dialog } from '../../../parts/dialog.tsx';
import { Field, TextField } from '../../../parts/field.tsx';
import { say } from '../../../parts/toast.tsx';
import { dayIn, dayText } from '../shelf/civil.ts';

type Answer = AuthorityAnswerInput['answer'];
const answers: readonly { value: Answer | ''; label: string }[] = [
  { value: '', label: 'Choose…' },
  { value: 'agreed', label: 'Agreed' },
  { value: 'agreed on conditions', label: 'Agreed on conditions' },
  { value: 'refused', label: 'Refused' },
  { value: 'asked for more', label: 'Asked for more' },
];

/** Who answered what, when, under which reference, on which conditions, until when. */
export function AnswerDialog({
  request,
  onClose,
}: {
  readonly request: AuthorityRequest;
  readonly onClose: () => void;
}) {
  const kitchen = useKitchen();
  const today = dayIn(kitchen.zone, new Date());
  const [id] = useState(() => newId());
  const [answer, setAnswer] = useState<Answer | ''>('');
  const [authority, setAuthority] = useState('');
  const [saidBy, setSaidBy] = useState('');
  const [reference, setReference] = useState('');
  const [conditions, setConditions] = useState('');
  const [dated, setDated] = useState(today);
  const [until, setUntil] = useState('');
  const write = async () => {
    if (answer === '') throw new Error('Choose what they answered.');
    if (authority.trim() === '') throw new Error('The authority is empty. Write which office answered.');
    if (saidBy.trim() === '') throw new Error('Who answered is empty. Write the name on the letter.');
    if (reference.trim() === '')
      throw new Error('The reference is empty. Without one nobody finds the answer again.');
    if (answer === 'agreed on conditions' && conditions.trim() === '')
      throw new Error('The conditions are empty. Write them as they stand in the answer.');
    if (dated > today) throw new Error('The answer is dated to come. Write the day on the letter.');
    await call('answerAuthority', {
      params: { kitchenId: kitchen.id, requestId: request.id },
      body: {
        id,
        answer,
        authority: authority.trim(),
        saidBy: saidBy.trim(),
        reference: reference.trim(),
        conditions: conditions.trim(),
        dated,
        until: until === '' ? null : until,
      },
    });
    await Promise.all(
      ['authorityRequest', 'authorityRequests', 'dish', 'dishes'].map((key) =>
        queryClient.invalidateQueries({ queryKey: [key] }),
      ),
    );
    say('The answer is written down.');
    onClose();
  };
  return (
    <Dialog open onClose={onClose} title="What the authority answered">
      <p>
        Only what is in writing counts here. It lifts the stop for {request.part} of {request.species}
        {request.content.dishName === null ? '' : ` in ${request.content.dishName} alone`}, until its day, and
        a later refusal ends it.
      </p>
      <Choice label="Answer" value={answer} options={answers} onChange={setAnswer} />
      <TextField label="Authority" value={authority} onChange={setAuthority} maxLength={120} />
      <TextField label="Who answered" value={saidBy} onChange={setSaidBy} maxLength={120} />
      <TextField label="Reference" value={reference} onChange={setReference} maxLength={120} />
      <TextField label="Conditions" value={conditions} onChange={setConditions} lines={3} maxLength={2_000} />
      <DayField label="Dated" value={dated} onChange={setDated} />
      <DayField label="Until" value={until} onChange={setUntil} hint="Empty: no end was given." />
      <div className="row">
        <Button kind="strong" onPress={write} busy="Writing…">
          Write it down
        </Button>
        <Button kind="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </Dialog>
  );
}

function DayField(props: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (day: string) => void;
  readonly hint?: string;
}) {
  return (
    <Field label={props.label} hint={props.value === '' ? props.hint : dayText(props.value)}>
      {(tie) => (
        <input
          {...tie}
          className="control"
          type="date"
          value={props.value}
          onChange={(e) => props.onChange(e.target.value)}
        />
      )}
    </Field>
  );
}
