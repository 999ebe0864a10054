import { useRef, useState } from 'react';
import type { Part } from '../../../../contract/records.ts';
import type { YieldPart, YieldsAnswer } from '../../../../contract/yields.ts';
import { usableCost } from '../../../../core/carcass/joint-cost.ts';
import { plainNumber } from '../../../../core/units.ts';
import { call, queryClient, useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { money } from '../../../parts/money.ts';
import { NumberField, unsettledIn } from '../../../parts/number-field.tsx';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import { say } from '../../../parts/toast.tsx';

const wageKey = (kitchenId: string) => `fq.wage.${kitchenId}`;

/** A kilogram that can be served: what was paid for it, what trim and cooking take, and the work in a part that was “free”. */
export function UsableCost({ answer }: { readonly answer: YieldsAnswer }) {
  const kitchen = useKitchen();
  const parts = useOperation('parts', { params: { kitchenId: kitchen.id } });
  const own = (parts.data ?? []).filter((p) => p.species.toLowerCase() === answer.species.toLowerCase());
  const costed = answer.parts.filter((p) => p.becomes === 'part');
  const [chosen, setChosen] = useState('');
  const [wage, setWage] = useState<number | null>(() => {
    const kept = Number(localStorage.getItem(wageKey(kitchen.id)));
    return Number.isFinite(kept) && kept > 0 ? kept : null;
  });
  const named = (p: YieldPart) => own.find((o) => o.name.toLowerCase() === p.part.toLowerCase());
  const current = costed.find((p) => p.part === chosen);
  const record = current === undefined ? undefined : named(current);
  return (
    <section className="stack">
      <h2>A kilogram to serve</h2>
      <p className="measure">
        A part that cost nothing still costs its work. Say what trimming and cooking take of it and how long a
        kilogram keeps a cook busy; the cost is carried as it was in the breakdowns.
      </p>
      <div className="fields">
        <Choice
          label="Part"
          value={chosen}
          options={costed.map((p) => ({ value: p.part, label: p.part }))}
          onChange={setChosen}
        />
        <NumberField
          label={`What an hour of work costs (${kitchen.currency})`}
          unit="an hour"
          optional
          value={wage}
          low={0}
          high={10_000}
          onChange={(v) => {
            setWage(v);
            if (v === null) localStorage.removeItem(wageKey(kitchen.id));
            else localStorage.setItem(wageKey(kitchen.id), String(v));
          }}
          hint="Kept on this device."
        />
      </div>
      {current === undefined ? null : record === undefined ? (
        <p>Name {current.part} in Parts first; what is lost of it is kept there.</p>
      ) : (
        <Losses key={record.id} part={record} />
      )}
      <ScrollAcross label="Table: what a kilogram to serve costs">
        <table>
          <caption>Cost of a kilogram that can be served</caption>
          <thead>
            <tr>
              <th scope="col">Part</th>
              <th scope="col" className="number">
                As cut
              </th>
              <th scope="col" className="number">
                Left to serve
              </th>
              <th scope="col" className="number">
                Of it, work
              </th>
              <th scope="col" className="number">
                A kg to serve
              </th>
            </tr>
          </thead>
          <tbody>
            {costed.map((p) => (
              <CostRow key={p.part} part={p} record={named(p)} wage={wage} />
            ))}
          </tbody>
        </table>
      </ScrollAcross>
    </section>
  );
}

function CostRow(props: {
  readonly part: YieldPart;
  readonly record: Part | undefined;
  readonly wage: number | null;
}) {
  const kitchen = useKitchen();
  const { part, record, wage } = props;
  const said =
    record !== undefined &&
    (record.trimPct !== null || record.cookingLossPct !== null || record.labourMinPerKg !== null);
  const needsWage = (record?.labourMinPerKg ?? 0) > 0 && wage === null;
  const cost =
    part.costPerKg === null || !said || needsWage
      ? null
      : usableCost({
          cost: Math.max(0, part.costPerKg),
          kg: 1,
          trimLoss: (record.trimPct ?? 0) / 100,
          cookingLoss: (record.cookingLossPct ?? 0) / 100,
          labourMin: record.labourMinPerKg ?? 0,
          labourPerHour: (wage ?? 0) * 100,
        });
  const show = (minor: number) => money(Math.round(minor), kitchen.currency);
  return (
    <tr>
      <th scope="row">{part.part}</th>
      <td className="number">{part.costPerKg === null ? 'not known' : show(part.costPerKg)}</td>
      <td className="number">{cost === null ? '' : `${plainNumber(cost.kg * 100, 0)} %`}</td>
      <td className="number">{cost === null ? '' : show(cost.labourPerKg)}</td>
      <td className="number">
        {cost !== null ? (
          <strong>{show(cost.perKg)}</strong>
        ) : (
          <span className="quiet">
            {needsWage ? 'what an hour costs?' : part.costPerKg === null ? 'not known' : 'losses not said'}
          </span>
        )}
      </td>
    </tr>
  );
}

function Losses({ part }: { readonly part: Part }) {
  const kitchen = useKitchen();
  const [trimPct, setTrim] = useState(part.trimPct);
  const [cookingLossPct, setCooking] = useState(part.cookingLossPct);
  const [labourMinPerKg, setLabour] = useState(part.labourMinPerKg);
  const form = useRef<HTMLDivElement>(null);
  const keep = async () => {
    const open = unsettledIn(form.current);
    if (open !== null) throw new Error(`${open}: what was typed is not settled yet. See beside the field.`);
    await call('changePart', {
      params: { kitchenId: kitchen.id, partId: part.id },
      body: { trimPct, cookingLossPct, labourMinPerKg },
    });
    await queryClient.invalidateQueries({ queryKey: ['parts'] });
    say(`${part.name}: kept.`);
  };
  return (
    <div className="fields" ref={form}>
      <NumberField
        label={`Trim off ${part.name}`}
        unit="%"
        optional
        value={trimPct}
        low={0}
        high={99}
        onChange={setTrim}
      />
      <NumberField
        label="Then lost in cooking"
        unit="%"
        optional
        value={cookingLossPct}
        low={0}
        high={99}
        onChange={setCooking}
      />
      <NumberField
        label="Work on a kilogram"
        unit="min"
        optional
        value={labourMinPerKg}
        low={0}
        high={1_000}
        onChange={setLabour}
      />
      <div className="row">
        <Button onPress={keep} busy="Keeping…">
          Keep it
        </Button>
      </div>
    </div>
  );
}
