import { useState } from 'react';
import { Link } from 'wouter';
import type { Specification } from '../../../../contract/specification.ts';
import { at } from '../../../addresses.ts';
import { call, queryClient, useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { EmptyPlace } from '../../../parts/empty-place.tsx';
import { TextField } from '../../../parts/field.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import { say } from '../../../parts/toast.tsx';

/** Who the animals come from. */
export function Suppliers() {
  const kitchen = useKitchen();
  const suppliers = useOperation('suppliers', { params: { kitchenId: kitchen.id } });
  const specifications = useOperation('specifications', { params: { kitchenId: kitchen.id } });
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
        <ScrollAcross label="Table: suppliers">
          <table>
            <thead>
              <tr>
                <th scope="col">Supplier</th>
                <th scope="col">Asked in writing</th>
                <th scope="col">Note</th>
              </tr>
            </thead>
            <tbody>
              {suppliers.data.map((s) => (
                <tr key={s.id}>
                  <th scope="row">
                    <Link className="supply-what" href={at.supplier(kitchen.id, s.id)}>
                      {s.name}
                    </Link>
                  </th>
                  <td>{askedOf(specifications.data?.filter((x) => x.supplierId === s.id))}</td>
                  <td className="supply-note">{s.note}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollAcross>
      )}
      {adding ? (
        <AddSupplier onDone={() => setAdding(false)} />
      ) : suppliers.data.length === 0 ? null : (
        <div>{add}</div>
      )}
    </>
  );
}

function askedOf(own: readonly Specification[] | undefined): string {
  if (own === undefined) return '';
  const live = own.filter((s) => s.endedAt === null);
  if (live.length === 0) return 'nothing';
  const agreed = live.filter((s) => s.inForce !== null).length;
  return agreed === live.length ? `${agreed} agreed` : `${agreed} agreed, ${live.length - agreed} not yet`;
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
        hint="Who to ring and when, the approval number, the days they kill and drive. One thing a line."
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
