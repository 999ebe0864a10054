import { useLocation } from 'wouter';
import type { Kitchen } from '../../contract/records.ts';
import { at } from '../addresses.ts';
import { call, queryClient, useOperation } from '../api.ts';
import { setShownUnits, useKitchen } from '../kitchen.tsx';
import { setTheme, type Theme, useTheme } from '../look/theme.ts';
import { Button } from '../parts/button.tsx';
import { say } from '../parts/toast.tsx';
import { setPerson, usePersonId } from '../person.ts';
import { Machines } from './machines.tsx';
import { placeNames } from './place-names.ts';
import { People } from './who-dialog.tsx';
import './settings.css';

const themes: readonly { value: Theme; label: string }[] = [
  { value: 'device', label: 'As the device' },
  { value: 'day', label: 'Day' },
  { value: 'night', label: 'Night' },
];
const units: readonly { value: Kitchen['units']; label: string }[] = [
  { value: 'metric', label: 'Metric: g, mm, °C' },
  { value: 'US', label: 'US: lb, in, °F' },
];

/** What hangs off the kitchen's name. */
export function Settings() {
  const kitchen = useKitchen();
  const kitchens = useOperation('kitchens', {});
  const personId = usePersonId(kitchen.id);
  const theme = useTheme();
  const [, navigate] = useLocation();
  const others = (kitchens.data ?? []).filter((k) => k.id !== kitchen.id);
  const layAgain = async () => {
    const before = kitchen.id;
    const fresh = await call('resetDemo', {});
    await queryClient.invalidateQueries();
    navigate(at.place(fresh.id, 'dishes'));
    say('The demo kitchen is laid as on its first day. The old one is put away, not deleted.', () =>
      navigate(at.place(before, 'dishes')),
    );
  };
  return (
    <div className="page settings stack-wide">
      <div>
        <h1>{kitchen.name}</h1>
        <p className="quiet">
          {placeNames[kitchen.place]} · {kitchen.zone} · {kitchen.currency}
          {kitchen.demo ? ' · demo kitchen, invented data' : ''}
        </p>
      </div>
      <section className="stack">
        <h2>Who works at this device</h2>
        <div className="measure">
          <People
            kitchenId={kitchen.id}
            chosen={personId}
            onChoose={(id) => {
              setPerson(kitchen.id, id);
              say('From now on what you record carries your name.');
            }}
          />
        </div>
      </section>
      <Switches
        title="Units on this device"
        hint="Type any unit anywhere; this is what is shown back."
        value={kitchen.units}
        options={units}
        onChange={(u) => setShownUnits(kitchen.id, u)}
      />
      <Switches title="Light" value={theme} options={themes} onChange={setTheme} />
      <Machines kitchen={kitchen} />
      <section className="stack">
        <h2>Other kitchens</h2>
        {others.length === 0 ? <p className="quiet">There is no other kitchen on this server.</p> : null}
        <ul className="plain-list">
          {others.map((k) => (
            <li key={k.id}>
              <a href={at.place(k.id, 'dishes')}>{k.name}</a>{' '}
              {k.demo ? <span className="quiet">invented data</span> : null}
            </li>
          ))}
          <li>
            <a href={`${at.door()}?own`}>Set up a kitchen of your own</a>
          </li>
        </ul>
      </section>
      {kitchen.demo ? (
        <section className="stack">
          <h2>Lay the demo again</h2>
          <p className="measure">
            Puts out a fresh demo kitchen as it was on the first day. This one is put away, not deleted; your
            own kitchens are not touched.
          </p>
          <Button onPress={layAgain} busy="Laying…">
            Lay the demo kitchen again
          </Button>
        </section>
      ) : null}
      <section className="stack">
        <h2>For other programs</h2>
        <p>
          <a href="/api/docs">What the programming interface offers</a>, and its{' '}
          <a href="/api/openapi.json">machine-readable description</a>.
        </p>
      </section>
    </div>
  );
}

interface SwitchesProps<V extends string> {
  readonly title: string;
  readonly hint?: string;
  readonly value: V;
  readonly options: readonly { value: V; label: string }[];
  readonly onChange: (value: V) => void;
}

function Switches<V extends string>({ title, hint, value, options, onChange }: SwitchesProps<V>) {
  return (
    <fieldset className="stack">
      <legend>
        <h2>{title}</h2>
      </legend>
      {hint === undefined ? null : <p className="quiet">{hint}</p>}
      <div className="row">
        {options.map((o) => (
          <label key={o.value} className="switch">
            <input type="radio" name={title} checked={o.value === value} onChange={() => onChange(o.value)} />
            <span>{o.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
