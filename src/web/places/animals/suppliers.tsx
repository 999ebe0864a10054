import { useState } from 'react';
import { call, queryClient, useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Button } from '../../parts/button.tsx';
import { EmptyPlace } from '../../parts/empty-place.tsx';
import { TextField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';
import { say } from '../../parts/toast.tsx';

/** Who the animals come from. */
export function Suppliers() {
  const kitchen = useKitchen();
  const suppliers = useOperation('suppliers', { params: { kitchenId: kitchen.id } });
  const [adding, setAdding] = useState(false);
  if (suppliers.error !== null && suppliers.data === undefined)
    return <Problem error={suppliers.error} retry={() => suppliers.refetch()} />;
  if (suppliers.data === undefined) return <p className="quiet">Reading the suppliers…</p>;
  const add = (
    <Button kind={suppliers.data.length === 0 ? 'strong' : 'plain'} onPress={() => setAdding(true)}>
      Add a supplier
    </Button>
  );
  return (
    <>
      {suppliers.data.length === 0 && !adding ? (
        <EmptyPlace title="Who the animals come from" action={add}>
          <p>A lot names its supplier, so that a plate can be followed back to the farm.</p>
        </EmptyPlace>
      ) : (
        <div className="scroll-x">
          <table>
            <thead>
              <tr>
                <th scope="col">Supplier</th>
                <th scope="col">Note</th>
              </tr>
            </thead>
            <tbody>
              {suppliers.data.map((s) => (
                <tr key={s.id}>
                  <th scope="row">{s.name}</th>
                  <td>{s.note}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {adding ? (
        <AddSupplier onDone={() => setAdding(false)} />
      ) : suppliers.data.length === 0 ? null : (
        <div>{add}</div>
      )}
    </>
  );
}

function AddSupplier({ onDone }: { readonly onDone: () => void }) {
  const kitchen = useKitchen();
  const [name, setName] = useState('');
  const [note, setNote] = useState('');
  const add = async () => {
    if (name.trim() === '') throw new Error('The name is empty. Write it as it stands on their documents.');
    await call('addSupplier', { params: { kitchenId: kitchen.id }, body: { name: name.trim(), note } });
    await queryClient.invalidateQueries({ queryKey: ['suppliers'] });
    say(`${name.trim()} is in the list.`);
    onDone();
  };
  return (
    <form className="entry measure" onSubmit={(e) => e.preventDefault()}>
      <h2>Add a supplier</h2>
      <TextField label="Name" value={name} onChange={setName} maxLength={120} autoFocus />
      <TextField
        label="Note"
        value={note}
        onChange={setNote}
        lines={3}
        maxLength={4_000}
        hint="What was agreed: how it is killed, cut, packed, how cold it arrives."
      />
      <div className="row">
        <Button kind="strong" type="submit" onPress={add} busy="Writing…">
          Write it down
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </form>
  );
}
