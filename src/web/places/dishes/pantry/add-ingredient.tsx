import { useEffect, useState } from 'react';
import type { PantryIngredient } from '../../../../contract/pantry.ts';
import { call, queryClient } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { TextField } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { say } from '../../../parts/toast.tsx';

type Find = typeof import('../../../../core/properties/ingredients/find.ts').findIngredient;

/** The search over the published table, a download of its own. */
function useFind(): Find | null {
  const [find, setFind] = useState<Find | null>(null);
  useEffect(() => {
    let here = true;
    void import('../../../../core/properties/ingredients/find.ts').then((m) => {
      if (here) setFind(() => m.findIngredient);
    });
    return () => {
      here = false;
    };
  }, []);
  return find;
}

/** A new ingredient: its name, the published row that it is, and what a pack costs. */
export function AddIngredient({ known }: { readonly known: readonly PantryIngredient[] }) {
  const kitchen = useKitchen();
  const find = useFind();
  const [name, setName] = useState('');
  const [row, setRow] = useState<string | null>(null);
  const [packG, setPackG] = useState<number | null>(1000);
  const [price, setPrice] = useState<number | null>(null);
  const [error, setError] = useState<unknown>(null);
  const found = find === null || name.trim().length < 3 ? [] : find(name, 6);
  const tableId = row ?? found[0]?.row.id ?? 'none';
  const twice = known.some((i) => i.name.toLowerCase() === name.trim().toLowerCase());
  const add = async () => {
    setError(null);
    try {
      if (name.trim() === '') throw new Error('Give it a name.');
      await call('addIngredient', {
        params: { kitchenId: kitchen.id },
        body: {
          name: name.trim(),
          tableId: tableId === 'none' ? null : tableId,
          ...(price === null || packG === null
            ? {}
            : { price: { packG, price: Math.round(price * 100), supplierId: null, note: '' } }),
        } as never,
      });
      await queryClient.invalidateQueries({ queryKey: ['pantry'] });
      await queryClient.invalidateQueries({ queryKey: ['ingredients'] });
      say(`${name.trim()} is in the pantry.`);
      setName('');
      setRow(null);
      setPrice(null);
    } catch (caught) {
      setError(caught);
    }
  };
  return (
    <section className="stack not-on-paper" aria-labelledby="add-ingredient">
      <h2 id="add-ingredient">Add an ingredient</h2>
      <div className="fields">
        <TextField
          label="Name"
          value={name}
          onChange={(v) => {
            setName(v);
            setRow(null);
          }}
          maxLength={120}
          autoComplete="off"
          error={twice ? 'There is one of that name.' : undefined}
        />
        <Choice
          label="It is, in the published table"
          value={tableId}
          options={[
            ...found.map((f) => ({ value: f.row.id, label: f.row.name })),
            { value: 'none', label: 'none of these: nothing is known of it yet' },
          ]}
          onChange={setRow}
          hint={
            name.trim().length < 3
              ? 'Type its name: rows that it may be are offered.'
              : 'Composition and allergens follow from the row; look at the label all the same.'
          }
        />
        <NumberField
          label="A pack weighs"
          unit="g"
          value={packG}
          low={0.1}
          high={10_000_000}
          optional
          onChange={setPackG}
        />
        <NumberField
          label="A pack costs (may stay empty)"
          unit={kitchen.currency}
          value={price}
          low={0}
          high={1_000_000}
          optional
          onChange={setPrice}
        />
      </div>
      {error === null ? null : <Problem error={error} />}
      <p>
        <Button kind="strong" onPress={add} busy="Adding…" disabled={twice}>
          Add it
        </Button>
      </p>
    </section>
  );
}
