import { useState } from 'react';
import type { Lot } from '../../../contract/records.ts';
import { formatQuantity } from '../../../core/units.ts';
import { useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { EmptyPlace } from '../../parts/empty-place.tsx';
import { moment } from '../../parts/moment.ts';
import { Problem } from '../../parts/problem.tsx';
import { AddLot } from './add-lot.tsx';

/** What is in the house, newest first. */
export function Lots() {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id };
  const lots = useOperation('lots', { params });
  const suppliers = useOperation('suppliers', { params });
  const parts = useOperation('parts', { params });
  const [adding, setAdding] = useState(false);
  if (lots.error !== null && lots.data === undefined)
    return <Problem error={lots.error} retry={() => lots.refetch()} />;
  if (lots.data === undefined) return <p className="quiet">Reading the lots…</p>;
  const take = (
    <Button kind="strong" onPress={() => setAdding(true)}>
      Take in a lot
    </Button>
  );
  return (
    <>
      {adding ? (
        <AddLot
          suppliers={suppliers.data ?? []}
          parts={parts.data ?? []}
          lots={lots.data}
          onDone={() => setAdding(false)}
        />
      ) : lots.data.length === 0 ? (
        <EmptyPlace title="What is in the house" action={take}>
          <p>
            A lot is what came together: one code, one weight, one arrival temperature. Batches name the lots
            they used.
          </p>
        </EmptyPlace>
      ) : (
        <div>{take}</div>
      )}
      {lots.data.length === 0 ? null : (
        <div className="scroll-x">
          <table>
            <thead>
              <tr>
                <th scope="col">Lot</th>
                <th scope="col">What</th>
                <th scope="col" className="number">
                  Weight
                </th>
                <th scope="col" className="number">
                  On arrival
                </th>
                <th scope="col">Came</th>
                <th scope="col">From</th>
                <th scope="col">Note</th>
              </tr>
            </thead>
            <tbody>
              {lots.data.map((lot) => (
                <LotRow
                  key={lot.id}
                  lot={lot}
                  supplier={suppliers.data?.find((s) => s.id === lot.supplierId)?.name}
                />
              ))}
            </tbody>
          </table>
        </div>
      )}
      <Caution place={kitchen.place}>
        <p>
          A temperature on arrival is one place in one piece. It does not say how warm the rest is, or was.
        </p>
      </Caution>
    </>
  );
}

function LotRow({ lot, supplier }: { readonly lot: Lot; readonly supplier: string | undefined }) {
  const kitchen = useKitchen();
  return (
    <tr id={`lot-${lot.id}`} className="lot">
      <th scope="row">{lot.code}</th>
      <td>{lot.what}</td>
      <td className="number">{formatQuantity(lot.grams, 'mass', kitchen.units)}</td>
      <td className="number">
        {lot.arrivalC === null ? 'not measured' : formatQuantity(lot.arrivalC, 'temperature', kitchen.units)}
      </td>
      <td>{moment(lot.arrivedAt, kitchen.zone)}</td>
      <td>{supplier ?? 'not said'}</td>
      <td>{lot.note}</td>
    </tr>
  );
}
