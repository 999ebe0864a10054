import { useRef, useState } from 'react';
import type { Lot, Part, Supplier } from '../../../contract/records.ts';
import { call, queryClient } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { TextField } from '../../parts/field.tsx';
import { NumberField, unsettledIn } from '../../parts/number-field.tsx';
import { doubtTemperature } from '../../parts/quantity.ts';
import { say } from '../../parts/toast.tsx';
import { nextLotCode } from './lot-code.ts';

/** Meat comes in frozen, chilled or, straight from the slaughter, still warm. */
const LIKELY_ON_ARRIVAL = { low: -30, high: 15 };

export interface AddLotProps {
  readonly suppliers: readonly Supplier[];
  readonly parts: readonly Part[];
  readonly lots: readonly Lot[];
  readonly onDone: () => void;
}

export function AddLot({ suppliers, parts, lots, onDone }: AddLotProps) {
  const kitchen = useKitchen();
  const [code, setCode] = useState(() =>
    nextLotCode(
      new Date(),
      kitchen.zone,
      lots.map((l) => l.code),
    ),
  );
  const [what, setWhat] = useState('');
  const [partId, setPart] = useState('');
  const [supplierId, setSupplier] = useState('');
  const [grams, setGrams] = useState<number | null>(null);
  const [arrivalC, setArrival] = useState<number | null>(null);
  const [note, setNote] = useState('');
  const part = parts.find((p) => p.id === partId);
  const form = useRef<HTMLFormElement>(null);
  const take = async () => {
    const open = unsettledIn(form.current);
    if (open !== null) throw new Error(`${open}: what was typed is not settled yet. See beside the field.`);
    const named = what.trim() === '' && part !== undefined ? `${part.species} ${part.name}` : what.trim();
    if (code.trim() === '') throw new Error('The code is empty. Write one, or take the one on the label.');
    if (named === '') throw new Error('What came is empty. Choose a part, or write what it is.');
    if (grams === null || grams <= 0)
      throw new Error('The weight is empty. Weigh it; sums such as 3*4.2kg may be typed.');
    await call('addLot', {
      params: { kitchenId: kitchen.id },
      body: {
        code: code.trim(),
        what: named,
        partId: partId === '' ? null : partId,
        supplierId: supplierId === '' ? null : supplierId,
        grams,
        arrivedAt: new Date().toISOString(),
        arrivalC,
        note,
      },
    });
    await queryClient.invalidateQueries({ queryKey: ['lots'] });
    say(`Lot ${code.trim()} is taken in.`);
    onDone();
  };
  return (
    <form ref={form} className="entry" onSubmit={(e) => e.preventDefault()}>
      <h2>Take in a lot</h2>
      <div className="fields">
        <NumberField
          label="Weight"
          unit="g"
          value={grams}
          low={0.1}
          high={10_000_000}
          onChange={setGrams}
          hint="As weighed: 12.4kg, 3*4200, 2 lb 3 oz."
        />
        <NumberField
          label="Temperature on arrival"
          unit="°C"
          optional
          value={arrivalC}
          low={-60}
          high={60}
          onChange={setArrival}
          doubt={(value, stated) => doubtTemperature(value, stated, LIKELY_ON_ARRIVAL)}
          hint="Between two pieces. Leave empty where it was not measured."
        />
        <Choice
          label="Part"
          value={partId}
          onChange={setPart}
          options={[
            { value: '', label: 'none of the list' },
            ...parts.map((p) => ({ value: p.id, label: `${p.species}, ${p.name}` })),
          ]}
        />
        <TextField
          label="What came"
          value={what}
          onChange={setWhat}
          maxLength={120}
          hint={part === undefined ? undefined : `Empty: ${part.species} ${part.name}.`}
        />
        <Choice
          label="From"
          value={supplierId}
          onChange={setSupplier}
          options={[
            { value: '', label: 'not said' },
            ...suppliers.map((s) => ({ value: s.id, label: s.name })),
          ]}
        />
        <TextField
          label="Code"
          value={code}
          onChange={setCode}
          maxLength={60}
          hint="Or the one on the label."
        />
        <TextField
          className="whole"
          label="Note"
          value={note}
          onChange={setNote}
          lines={2}
          maxLength={4_000}
        />
      </div>
      <div className="row">
        <Button kind="strong" type="submit" onPress={take} busy="Writing…">
          Take it in
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </form>
  );
}
