import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import type { Kitchen, Place } from '../../../contract/records.ts';
import { at } from '../../addresses.ts';
import { call, queryClient, useOperation } from '../../api.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { TextField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';
import { setPerson } from '../../person.ts';
import { placeNames, suggested } from '../../shell/place-names.ts';
import './doorstep.css';

/** The first screen: look round, or begin. */
export function Doorstep() {
  const kitchens = useOperation('kitchens', {});
  const [own, setOwn] = useState(() => new URLSearchParams(window.location.search).has('own'));
  const [, navigate] = useLocation();
  useEffect(() => {
    document.title = 'Fifth Quarter';
  }, []);
  const demo = kitchens.data?.find((k) => k.demo);
  const mine = (kitchens.data ?? []).filter((k) => !k.demo);
  return (
    <main className="door page">
      <header className="door-head">
        <WholeAnimal />
        <h1>Fifth Quarter</h1>
        <p className="door-lead">
          For the kitchen that buys animals whole and means to sell all of them. Design a dish from a part
          that others throw away, cook it here first, make it as a batch, and keep the proof.
        </p>
      </header>
      {kitchens.error === null ? null : <Problem error={kitchens.error} retry={() => kitchens.refetch()} />}
      {mine.length === 0 ? null : (
        <section className="door-choice">
          <h2>Your kitchens</h2>
          <ul className="door-kitchens">
            {mine.map((k) => (
              <li key={k.id}>
                <a href={at.place(k.id, 'dishes')}>{k.name}</a>{' '}
                <span className="quiet">{placeNames[k.place]}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section className="door-choice">
        <h2>Look round the demo kitchen</h2>
        <p className="measure">
          A small riverside dining room with a stuffed trotter on its way to the menu. Everything in it is
          invented, and everything can be changed.
        </p>
        {demo === undefined ? (
          <p className="quiet">
            {kitchens.isPending ? 'Reading…' : 'There is no demo kitchen on this server.'}
          </p>
        ) : (
          <Button
            kind={mine.length === 0 ? 'strong' : 'plain'}
            onPress={() => navigate(at.place(demo.id, 'dishes'))}
          >
            Look round {demo.name}
          </Button>
        )}
      </section>
      <section className="door-choice">
        <h2>Set up your own kitchen</h2>
        {own ? (
          <OwnKitchen />
        ) : (
          <>
            <p className="measure">Its name, where it is, and your name. Nothing else is needed to begin.</p>
            <Button onPress={() => setOwn(true)}>Set up my own kitchen</Button>
          </>
        )}
      </section>
      <p className="door-foot quiet small measure">
        It advises; it does not license. Measure with a checked probe, and take the word of your local
        authority and of qualified people above anything shown here.
      </p>
    </main>
  );
}

const deviceZone = () => Intl.DateTimeFormat().resolvedOptions().timeZone;
const unitsOptions: readonly { value: Kitchen['units']; label: string }[] = [
  { value: 'metric', label: 'Metric: g, mm, °C' },
  { value: 'US', label: 'US: lb, in, °F' },
];
const placeOptions = (Object.keys(placeNames) as Place[]).map((value) => ({
  value,
  label: placeNames[value],
}));

function OwnKitchen() {
  const [name, setName] = useState('');
  const [person, setOwnName] = useState('');
  const [place, setPlace] = useState<Place>('GB-ENG');
  const [hints, setHints] = useState(() => suggested('GB-ENG', deviceZone()));
  const [missing, setMissing] = useState<'name' | 'person' | null>(null);
  const [, navigate] = useLocation();
  const begin = async () => {
    if (name.trim() === '') return setMissing('name');
    if (person.trim() === '') return setMissing('person');
    setMissing(null);
    const made = await call('createKitchen', {
      body: { name: name.trim(), place, ...hints, person: person.trim() },
    });
    setPerson(made.kitchen.id, made.person.id);
    await queryClient.invalidateQueries({ queryKey: ['kitchens'] });
    navigate(at.place(made.kitchen.id, 'dishes'));
  };
  return (
    <form className="stack door-form" onSubmit={(e) => e.preventDefault()}>
      <TextField
        label="Kitchen’s name"
        value={name}
        onChange={setName}
        maxLength={80}
        autoFocus
        error={missing === 'name' ? 'Give it the name your cooks call it.' : undefined}
      />
      <TextField
        label="Your name"
        value={person}
        onChange={setOwnName}
        maxLength={80}
        autoComplete="name"
        hint="Stands on what you record."
        error={missing === 'person' ? 'Every record carries a name; write yours.' : undefined}
      />
      <div className="fields">
        <Choice
          label="Where"
          value={place}
          options={placeOptions}
          hint="Whose law and guidance is read."
          onChange={(p) => {
            setPlace(p);
            setHints(suggested(p, deviceZone()));
          }}
        />
        <Choice
          label="Units"
          value={hints.units}
          options={unitsOptions}
          onChange={(units) => setHints({ ...hints, units })}
        />
        <TextField
          label="Currency"
          value={hints.currency}
          maxLength={3}
          onChange={(c) => setHints({ ...hints, currency: c.toUpperCase() })}
        />
        <TextField
          label="Time zone"
          value={hints.zone}
          maxLength={60}
          suggestions={Intl.supportedValuesOf('timeZone')}
          onChange={(zone) => setHints({ ...hints, zone })}
        />
      </div>
      <Button kind="strong" type="submit" onPress={begin} busy="Setting up…">
        Open the kitchen
      </Button>
    </form>
  );
}

/** Four quarters and the fifth, as one bar. */
function WholeAnimal() {
  return (
    <svg className="door-mark" viewBox="0 0 500 34" aria-hidden="true" preserveAspectRatio="none">
      {[0, 100, 200, 300].map((x) => (
        <rect key={x} x={x + 1} y="1" width="96" height="32" fill="var(--ink)" />
      ))}
      <rect x="401" y="1" width="98" height="32" fill="var(--oxblood)" />
    </svg>
  );
}
