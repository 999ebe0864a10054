import { useRef, useState } from 'react';
import type { Part } from '../../../contract/records.ts';
import { carcassBarScene, carcassSegments } from '../../../documents/pictures/carcass-bar.ts';
import { call, queryClient, useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { EmptyPlace } from '../../parts/empty-place.tsx';
import { TextField } from '../../parts/field.tsx';
import { Figure } from '../../parts/figure.tsx';
import { NumberField, unsettledIn } from '../../parts/number-field.tsx';
import { Problem } from '../../parts/problem.tsx';
import { say } from '../../parts/toast.tsx';
import { useWidth } from '../../pictures/use-width.ts';

/** Every animal as one bar: what is sold, what is used, what is thrown away. */
export function Parts() {
  const kitchen = useKitchen();
  const parts = useOperation('parts', { params: { kitchenId: kitchen.id } });
  const [adding, setAdding] = useState(false);
  if (parts.error !== null && parts.data === undefined)
    return <Problem error={parts.error} retry={() => parts.refetch()} />;
  if (parts.data === undefined) return <p className="quiet">Reading the parts…</p>;
  const all = parts.data;
  const animals = [...new Set(all.map((p) => p.species))];
  const name = (
    <Button kind={all.length === 0 ? 'strong' : 'plain'} onPress={() => setAdding(true)}>
      Name a part
    </Button>
  );
  return (
    <>
      {all.length === 0 && !adding ? (
        <EmptyPlace title="The whole animal as one bar" action={name}>
          <p>
            Name its parts and their shares. What is on the menu is solid, what goes into stock is hatched,
            what is thrown away is empty.
          </p>
        </EmptyPlace>
      ) : null}
      {animals.map((species) => (
        <Animal key={species} species={species} parts={all.filter((p) => p.species === species)} />
      ))}
      {adding ? (
        <AddPart animals={animals} onDone={() => setAdding(false)} />
      ) : all.length === 0 ? null : (
        <div>{name}</div>
      )}
    </>
  );
}

function Animal({ species, parts }: { readonly species: string; readonly parts: readonly Part[] }) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const { total, unknown, segments } = carcassSegments(parts);
  return (
    <section className="animal" ref={ref}>
      <h2>{species}</h2>
      {width === 0 || segments.length === 0 ? null : (
        <Figure
          scene={carcassBarScene(species, parts, { width })}
          caption="Each part as long as its share of the dressed weight."
        />
      )}
      {unknown.length === 0 ? null : <p className="quiet">No share known: {unknown.join(', ')}.</p>}
      {total > 100.5 ? (
        <Problem
          error={`The shares of the ${species} sum to ${total.toFixed(1)} %, more than the whole animal.`}
          todo="One of them is of another whole, or is counted twice."
        />
      ) : null}
    </section>
  );
}

const uses: readonly { value: Part['use']; label: string }[] = [
  { value: 'menu', label: 'On the menu' },
  { value: 'kitchen', label: 'In stock or staff food' },
  { value: 'thrown away', label: 'Thrown away' },
];

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
    await queryClient.invalidateQueries({ queryKey: ['parts'] });
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
        <Choice label="What becomes of it" value={use} options={uses} onChange={setUse} />
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
