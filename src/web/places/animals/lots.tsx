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
        <ol className="lot-list" aria-label="Lots, newest first">
          {lots.data.map((lot) => (
            <LotRow
              key={lot.id}
              lot={lot}
              supplier={suppliers.data?.find((s) => s.id === lot.supplierId)?.name}
            />
          ))}
        </ol>
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
    <li id={`lot-${lot.id}`} className="lot">
      <strong className="lot-code">{lot.code}</strong>
      <div>
        <p>{lot.what}</p>
        {lot.note === '' ? null : <p className="quiet small">{lot.note}</p>}
      </div>
      <span className="number lot-weight">{formatQuantity(lot.grams, 'mass', kitchen.units)}</span>
      <span className="lot-arrival">
        {lot.arrivalC === null
          ? 'temperature not measured'
          : `${formatQuantity(lot.arrivalC, 'temperature', kitchen.units)} on arrival`}
      </span>
      <span className="quiet small">
        {moment(lot.arrivedAt, kitchen.zone)}, from {supplier ?? 'nobody named'}
      </span>
    </li>
  );
}
