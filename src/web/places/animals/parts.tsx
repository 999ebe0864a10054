import { useRef, useState } from 'react';
import type { Part } from '../../../contract/records.ts';
import type { CarcassBar } from '../../../contract/yields.ts';
import { plainNumber } from '../../../core/units.ts';
import { carcassBarScene, carcassSegments } from '../../../documents/pictures/carcass-bar.ts';
import { call, queryClient, useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { EmptyPlace } from '../../parts/empty-place.tsx';
import { TextField } from '../../parts/field.tsx';
import { Figure } from '../../parts/figure.tsx';
import { moment } from '../../parts/moment.ts';
import { money } from '../../parts/money.ts';
import { NumberField, unsettledIn } from '../../parts/number-field.tsx';
import { Problem } from '../../parts/problem.tsx';
import { ScrollAcross } from '../../parts/scroll-across.tsx';
import { say } from '../../parts/toast.tsx';
import { useWidth } from '../../pictures/use-width.ts';
import { PartDialog, partUses } from './part-dialog.tsx';

/** Which breakdowns the money is of, and how it was carried. */
const moneyWords = (bar: CarcassBar): string => {
  if (bar.pricedBreakdowns === 0) return '';
  const of =
    bar.pricedBreakdowns === bar.breakdowns ? '' : ` of the ${bar.pricedBreakdowns} whose price is known`;
  return ` Money${of} carried ${bar.costBy === null ? 'by more than one rule' : ruleWords[bar.costBy]}.`;
};

/** Every animal as one bar: what is sold, what is used, what is thrown away; by weight, and by money below it. */
export function Parts() {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id };
  const parts = useOperation('parts', { params });
  const bars = useOperation('carcassBars', { params });
  const [adding, setAdding] = useState(false);
  const [opened, setOpened] = useState<Part | null>(null);
  if (parts.data === undefined || bars.data === undefined)
    return parts.error === null && bars.error === null ? (
      <p className="quiet">Reading the parts…</p>
    ) : (
      <Problem
        error={parts.error ?? bars.error}
        retry={() => void Promise.all([parts.refetch(), bars.refetch()])}
      />
    );
  const all = parts.data;
  const animals = [...new Set(all.map((p) => p.species))];
  const name = (
    <Button kind={all.length === 0 ? 'strong' : 'plain'} onPress={() => setAdding(true)}>
      Name a part
    </Button>
  );
  return (
    <>
      {bars.data.length === 0 && !adding ? (
        <EmptyPlace title="The whole animal as one bar" action={name}>
          <p>
            Name its parts and their shares, or cut one up at the scale. What is on the menu is solid, what
            goes into stock is hatched, what is thrown away is empty.
          </p>
        </EmptyPlace>
      ) : null}
      {bars.data.map((bar) => (
        <Animal
          key={bar.species}
          bar={bar}
          parts={all.filter((p) => p.species.toLowerCase() === bar.species.toLowerCase())}
          onOpen={setOpened}
        />
      ))}
      {opened === null ? null : <PartDialog part={opened} onClose={() => setOpened(null)} />}
      {adding ? (
        <AddPart animals={animals} onDone={() => setAdding(false)} />
      ) : bars.data.length === 0 ? null : (
        <div>{name}</div>
      )}
    </>
  );
}

const ruleWords = {
  weight: 'by weight',
  value: 'by what each part is worth',
  shares: 'by the kitchen’s own shares',
} as const;

function Animal(props: {
  readonly bar: CarcassBar;
  readonly parts: readonly Part[];
  readonly onOpen: (part: Part) => void;
}) {
  const { bar, parts } = props;
  const kitchen = useKitchen();
  const [ref, width] = useWidth<HTMLDivElement>();
  const { total, unknown, segments } = carcassSegments(bar.parts);
  const used = segments
    .filter((s) => s.use === 'menu' || s.use === 'kitchen')
    .reduce((sum, s) => sum + s.share, 0);
  const caption =
    bar.from === 'named shares'
      ? 'Each part as long as its share of the dressed weight, as it was named here.'
      : `${plainNumber(used, 1)} % used. From the latest ${bar.breakdowns === 1 ? 'breakdown' : `${bar.breakdowns} breakdowns`}, ${bar.animals} ${bar.animals === 1 ? 'animal' : 'animals'}${bar.until === null ? '' : `, up to ${moment(bar.until, kitchen.zone)}`}.${moneyWords(bar)}`;
  return (
    <section className="animal" ref={ref}>
      <h2>{bar.species}</h2>
      {width === 0 || segments.length === 0 ? null : (
        <Figure scene={carcassBarScene(bar.species, bar.parts, { width })} caption={caption} />
      )}
      {unknown.length === 0 ? null : <p className="quiet">No share known: {unknown.join(', ')}.</p>}
      {total > 100.5 ? (
        <Problem
          error={`The shares of the ${bar.species} sum to ${total.toFixed(1)} %, more than the whole animal.`}
          todo="One of them is of another whole, or is counted twice."
        />
      ) : null}
      <details className="fold">
        <summary>
          {parts.length} {parts.length === 1 ? 'part' : 'parts'}: what they are worth, how long they keep
        </summary>
        <PartTable parts={parts} onOpen={props.onOpen} />
      </details>
    </section>
  );
}

function PartTable(props: { readonly parts: readonly Part[]; readonly onOpen: (part: Part) => void }) {
  const kitchen = useKitchen();
  const unsaid = <span className="quiet">not said</span>;
  return (
    <ScrollAcross label={`Table: parts of ${props.parts[0]?.species ?? 'the animal'}`}>
      <table>
        <thead>
          <tr>
            <th scope="col">Part</th>
            <th scope="col">What becomes of it</th>
            <th scope="col">Limits</th>
            <th scope="col" className="number">
              Keeps
            </th>
            <th scope="col" className="number">
              Worth a kg
            </th>
            <th scope="col" className="number">
              Own share
            </th>
          </tr>
        </thead>
        <tbody>
          {props.parts.map((p) => (
            <tr key={p.id}>
              <th scope="row">
                <button type="button" className="part-name" onClick={() => props.onOpen(p)}>
                  {p.name}
                </button>
              </th>
              <td>{partUses.find((u) => u.value === p.use)?.label}</td>
              <td>{p.class ?? unsaid}</td>
              <td className="number">
                {p.lifeDays === null ? unsaid : `${plainNumber(p.lifeDays, 1)} days`}
              </td>
              <td className="number">
                {p.valuePerKg === null ? unsaid : money(p.valuePerKg, kitchen.currency)}
              </td>
              <td className="number">{p.costShare === null ? unsaid : plainNumber(p.costShare, 2)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollAcross>
  );
}

function AddPart({ animals, onDone }: { readonly animals: readonly string[]; readonly onDone: () => void }) {
  const kitchen = useKitchen();
  const [species, setSpecies] = useState(animals[0] ?? '');
  const [name, setName] = useState('');
  const [sharePct, setShare] = useState<number | null>(null);
  const [use, setUse] = useState<Part['use']>('thrown away');
  const form = useRef<HTMLFormElement>(null);
  const add = async () => {
    const open = unsettledIn(form.current);
    if (open !== null) throw new Error(`${open}: what was typed is not settled yet. See beside the field.`);
    if (species.trim() === '') throw new Error('The animal is empty. Write which animal the part is of.');
    if (name.trim() === '') throw new Error('The part is empty. Write it by the name the trade uses.');
    await call('addPart', {
      params: { kitchenId: kitchen.id },
      body: { species: species.trim(), name: name.trim(), sharePct, use },
    });
    await Promise.all(
      ['parts', 'carcassBars'].map((key) => queryClient.invalidateQueries({ queryKey: [key] })),
    );
    say(`${name.trim()} of ${species.trim()} is in the list.`);
    setName('');
    setShare(null);
  };
  return (
    <form ref={form} className="entry" onSubmit={(e) => e.preventDefault()}>
      <h2>Name a part</h2>
      <div className="fields">
        <TextField
          label="Animal"
          value={species}
          onChange={setSpecies}
          maxLength={40}
          suggestions={animals}
        />
        <TextField label="Part" value={name} onChange={setName} maxLength={80} autoFocus />
        <NumberField
          label="Share of the weight"
          unit="%"
          optional
          value={sharePct}
          low={0}
          high={100}
          onChange={setShare}
          hint="Leave empty where nobody has weighed it."
        />
        <Choice label="What becomes of it" value={use} options={partUses} onChange={setUse} />
      </div>
      <div className="row">
        <Button kind="strong" type="submit" onPress={add} busy="Writing…">
          Write it down
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Done
        </Button>
      </div>
    </form>
  );
}
