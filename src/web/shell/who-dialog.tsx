import { useId, useState } from 'react';
import type { Person } from '../../contract/records.ts';
import { call, queryClient, useOperation } from '../api.ts';
import { Button } from '../parts/button.tsx';
import { Choice } from '../parts/choice.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { TextField } from '../parts/field.tsx';
import { Problem } from '../parts/problem.tsx';
import { useAsking } from '../person.ts';
import './who-dialog.css';

export const roles: readonly { value: Person['role']; label: string }[] = [
  { value: 'head chef', label: 'Head chef' },
  { value: 'cook', label: 'Cook' },
  { value: 'buyer', label: 'Buyer' },
  { value: 'auditor', label: 'Auditor: reads, signs nothing' },
];

/** Asked once, before the first write: every record carries a name. */
export function WhoDialog() {
  const asking = useAsking();
  if (asking === null) return null;
  return (
    <Dialog open title="Who is working here?" onClose={() => asking.answer(null)}>
      <p className="quiet">Every record carries a name. This device remembers yours until you change it.</p>
      <People kitchenId={asking.kitchenId} chosen={null} onChoose={(id) => asking.answer(id)} />
    </Dialog>
  );
}

export interface PeopleProps {
  readonly kitchenId: string;
  readonly chosen: string | null;
  readonly onChoose: (personId: string) => void;
}

/** The people of a kitchen, one tap each, and a way to add somebody. */
export function People({ kitchenId, chosen, onChoose }: PeopleProps) {
  const people = useOperation('people', { params: { kitchenId } });
  const [adding, setAdding] = useState(false);
  const form = useId();
  if (people.error !== null) return <Problem error={people.error} retry={() => people.refetch()} />;
  if (people.data === undefined) return <p className="quiet">Reading who works here…</p>;
  return (
    <div className="stack">
      <ul className="who-list">
        {people.data.map((p) => (
          <li key={p.id}>
            <button
              type="button"
              className="who"
              aria-pressed={p.id === chosen}
              onClick={() => onChoose(p.id)}
            >
              <span className="serif">{p.name}</span> <span className="quiet small">{p.role}</span>
              {p.id === chosen ? <span className="who-here">this device</span> : null}
            </button>
          </li>
        ))}
      </ul>
      {adding ? (
        <AddPerson id={form} kitchenId={kitchenId} people={people.data} by={chosen} onAdded={onChoose} />
      ) : (
        <Button kind="quiet" onPress={() => setAdding(true)}>
          I am not in this list
        </Button>
      )}
    </div>
  );
}

interface AddPersonProps {
  readonly id: string;
  readonly kitchenId: string;
  readonly people: readonly Person[];
  readonly by: string | null;
  readonly onAdded: (personId: string) => void;
}

function AddPerson({ id, kitchenId, people, by, onAdded }: AddPersonProps) {
  const [name, setName] = useState('');
  const [role, setRole] = useState<Person['role']>('cook');
  const [sponsor, setSponsor] = useState(by ?? people[0]?.id ?? '');
  const add = async () => {
    if (name.trim() === '')
      throw new Error('Your name is empty. Write it as it should stand on the records.');
    const person = await call('addPerson', {
      params: { kitchenId },
      body: { name: name.trim(), role },
      as: sponsor,
    });
    await queryClient.invalidateQueries({ queryKey: ['people'] });
    onAdded(person.id);
  };
  return (
    <form id={id} className="stack" onSubmit={(e) => e.preventDefault()}>
      <TextField label="Name" value={name} onChange={setName} maxLength={80} autoComplete="name" />
      <div className="fields">
        <Choice label="Work" value={role} options={roles} onChange={setRole} />
        <Choice
          label="Who lets you in"
          value={sponsor}
          options={people.map((p) => ({ value: p.id, label: p.name }))}
          onChange={setSponsor}
          hint="Stands in the journal beside your name."
        />
      </div>
      <Button kind="strong" onPress={add} busy="Adding…">
        Add me
      </Button>
    </form>
  );
}
