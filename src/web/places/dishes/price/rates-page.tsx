import { useState } from 'react';
import { v7 as uuid } from 'uuid';
import type { KitchenRates, RatesEntry } from '../../../../contract/rates.ts';
import { EnergyUse } from '../../../../contract/rates.ts';
import { call, queryClient, useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Field, TextField } from '../../../parts/field.tsx';
import { moment } from '../../../parts/moment.ts';
import { money } from '../../../parts/money.ts';
import { NumberField } from '../../../parts/number-field.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { say } from '../../../parts/toast.tsx';
import './price.css';

const empty = (from: string): KitchenRates => ({
  from,
  labour: [],
  electricityPerKwh: null,
  gasPerKwh: null,
  machines: [],
  packagingPerPortion: null,
  overheadPct: null,
  fixedPerService: null,
  vatPct: null,
  pricesIncludeVat: true,
  servicePct: null,
  marginPct: null,
  marginAfter: 'food',
  priceStep: 50,
});

const ratesOf = ({ id, recordedAt, by, note, ...rates }: RatesEntry): KitchenRates => rates;

/** What hands, energy and the place add to the price of food. Entries are only added: what held before still stands. */
export function RatesPage() {
  const kitchen = useKitchen();
  const pantry = useOperation('pantry', { params: { kitchenId: kitchen.id } });
  if (pantry.error !== null && pantry.data === undefined)
    return (
      <div className="page">
        <Problem error={pantry.error} retry={() => pantry.refetch()} />
      </div>
    );
  if (pantry.data === undefined) return <p className="page quiet">Reading the rates…</p>;
  const { rates, ratesHistory, day } = pantry.data;
  return (
    <article className="page stack-wide price">
      <header className="stack">
        <h1>Rates</h1>
        <p className="measure">
          What an hour, a kilowatt-hour and the place itself add to the price of food. A new entry holds from
          its first day; what held before stays on the list.
        </p>
      </header>
      <RatesForm
        key={rates?.id ?? 'none'}
        start={rates === null ? empty(day) : { ...ratesOf(rates), from: day }}
        first={rates === null}
      />
      {ratesHistory.length === 0 ? null : (
        <section className="stack">
          <h2>Entered so far</h2>
          <ul>
            {ratesHistory.map((r) => (
              <li key={r.id}>
                From {r.from}
                {r.id === rates?.id ? ' (holds today)' : ''}:{' '}
                {r.labour.map((l) => `${l.grade} ${money(l.perHour, kitchen.currency)} an hour`).join(', ') ||
                  'no pay entered'}
                ; margin {r.marginPct === null ? 'not entered' : `${r.marginPct} %`}; tax{' '}
                {r.vatPct === null ? 'not entered' : `${r.vatPct} %`}.{' '}
                <span className="quiet small">
                  {r.by}, {moment(r.recordedAt, kitchen.zone)}
                  {r.note === '' ? '' : `: ${r.note}`}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
    </article>
  );
}

function RatesForm({ start, first }: { readonly start: KitchenRates; readonly first: boolean }) {
  const kitchen = useKitchen();
  const [rates, put] = useState(start);
  const [note, setNote] = useState('');
  const [error, setError] = useState<unknown>(null);
  const [id, setId] = useState(() => uuid());
  const set = (part: Partial<KitchenRates>) => put((r) => ({ ...r, ...part }));
  const major = (minor: number | null) => (minor === null ? null : minor / 100);
  const minor = (v: number | null) => (v === null ? null : Math.round(v * 100));
  const sum = (label: string, key: 'packagingPerPortion' | 'fixedPerService', hint?: string) => (
    <NumberField
      label={label}
      unit={kitchen.currency}
      value={major(rates[key])}
      low={0}
      high={1_000_000}
      optional
      onChange={(v) => set({ [key]: minor(v) })}
      hint={hint}
    />
  );
  const percent = (
    label: string,
    key: 'overheadPct' | 'vatPct' | 'servicePct' | 'marginPct',
    high: number,
    hint?: string,
  ) => (
    <NumberField
      label={label}
      unit="%"
      value={rates[key]}
      low={0}
      high={high}
      optional
      onChange={(v) => set({ [key]: v })}
      hint={hint}
    />
  );
  const keep = async () => {
    setError(null);
    try {
      await call('setRates', { params: { kitchenId: kitchen.id }, body: { ...rates, id, note } });
      await queryClient.invalidateQueries({ queryKey: ['pantry'] });
      setId(uuid());
      say(`Rates from ${rates.from} are kept.`);
    } catch (caught) {
      setError(caught);
    }
  };
  const free = EnergyUse.options.filter((use) => !rates.machines.some((m) => m.use === use));
  return (
    <section className="stack" aria-labelledby="new-rates">
      <h2 id="new-rates">{first ? 'Enter the first rates' : 'New rates'}</h2>
      <Field label="First day they hold">
        {(tie) => (
          <input
            {...tie}
            className="control"
            type="date"
            value={rates.from}
            onChange={(e) => set({ from: e.target.value })}
          />
        )}
      </Field>
      <h3>Hands</h3>
      {rates.labour.map((l, i) => (
        <div className="fields" key={i}>
          <TextField
            label="Grade"
            value={l.grade}
            onChange={(grade) => set({ labour: rates.labour.map((x, j) => (j === i ? { ...x, grade } : x)) })}
          />
          <NumberField
            label={`An hour of ${l.grade || 'this grade'}, with everything on top`}
            unit={kitchen.currency}
            value={l.perHour / 100}
            low={0}
            high={1_000}
            onChange={(v) =>
              v !== null &&
              set({
                labour: rates.labour.map((x, j) => (j === i ? { ...x, perHour: Math.round(v * 100) } : x)),
              })
            }
          />
          <Button kind="quiet" onPress={() => set({ labour: rates.labour.filter((_, j) => j !== i) })}>
            Take out {l.grade || 'this grade'}
          </Button>
        </div>
      ))}
      {rates.labour.length >= 12 ? null : (
        <p>
          <Button
            onPress={() =>
              set({
                labour: [...rates.labour, { grade: rates.labour.length === 0 ? 'chef' : '', perHour: 0 }],
              })
            }
          >
            Add a grade
          </Button>
        </p>
      )}
      <h3>Energy</h3>
      <div className="fields">
        {(['electricityPerKwh', 'gasPerKwh'] as const).map((key) => (
          <NumberField
            key={key}
            label={`${key === 'gasPerKwh' ? 'Gas' : 'Electricity'}, a kilowatt-hour`}
            unit={`${kitchen.currency} / kWh`}
            value={major(rates[key])}
            low={0}
            high={100}
            optional
            onChange={(v) => set({ [key]: v === null ? null : v * 100 })}
          />
        ))}
      </div>
      <p className="small quiet measure">
        What reaches the food, from the machine’s meter and what it cooked: warming up and standing idle count
        against it. Of a chiller or freezer, heat moved for each unit paid for: often over 100 %.
      </p>
      {rates.machines.map((m, i) => (
        <div className="fields" key={m.use}>
          <Choice
            label={`The ${m.use} runs on`}
            value={m.fuel}
            options={[
              { value: 'electricity', label: 'electricity' },
              { value: 'gas', label: 'gas' },
            ]}
            onChange={(fuel) =>
              set({ machines: rates.machines.map((x, j) => (j === i ? { ...x, fuel } : x)) })
            }
          />
          <NumberField
            label={`Of what the ${m.use} takes, reaches the food`}
            unit="%"
            value={m.efficiencyPct}
            low={1}
            high={600}
            onChange={(v) =>
              v !== null &&
              set({ machines: rates.machines.map((x, j) => (j === i ? { ...x, efficiencyPct: v } : x)) })
            }
          />
          <Button kind="quiet" onPress={() => set({ machines: rates.machines.filter((_, j) => j !== i) })}>
            Take out the {m.use}
          </Button>
        </div>
      ))}
      {free.length === 0 ? null : (
        <Choice
          label="Add a machine"
          value=""
          options={free.map((use) => ({ value: use as string, label: use }))}
          onChange={(use) =>
            set({
              machines: [
                ...rates.machines,
                {
                  use: use as EnergyUse,
                  fuel: 'electricity',
                  efficiencyPct: 50,
                },
              ],
            })
          }
        />
      )}
      <h3>What the place adds</h3>
      <div className="fields">
        {percent(
          'Tax on food served here',
          'vatPct',
          100,
          'Look it up for this place: it changes, and differs for food taken away.',
        )}
        <Choice
          label="Menu prices are"
          value={rates.pricesIncludeVat ? 'with' : 'before'}
          options={[
            { value: 'with', label: 'with tax' },
            { value: 'before', label: 'before tax' },
          ]}
          onChange={(v) => set({ pricesIncludeVat: v === 'with' })}
        />
        {percent('Service added to the bill', 'servicePct', 100)}
        {sum('Packaging of a portion', 'packagingPerPortion')}
        {percent('Overheads on food and hands', 'overheadPct', 500)}
        {sum(
          'Fixed costs of a service',
          'fixedPerService',
          'What has to be paid however few come: for the break-even.',
        )}
      </div>
      <h3>What is to be left</h3>
      <div className="fields">
        {percent('Margin wanted, of the price without tax', 'marginPct', 99)}
        <Choice
          label="Taken after"
          value={rates.marginAfter}
          options={[
            { value: 'food', label: 'food' },
            { value: 'food, hands and energy', label: 'food, hands and energy' },
          ]}
          onChange={(marginAfter) => set({ marginAfter })}
        />
        <NumberField
          label="Menu prices end on a multiple of"
          unit={kitchen.currency}
          value={rates.priceStep / 100}
          low={0.01}
          high={1_000}
          onChange={(v) => v !== null && set({ priceStep: Math.max(1, Math.round(v * 100)) })}
        />
      </div>
      <TextField label="Note (may stay empty)" value={note} onChange={setNote} maxLength={300} />
      {error === null ? null : <Problem error={error} />}
      <p>
        <Button kind="strong" onPress={keep} busy="Keeping…">
          Keep these rates
        </Button>
      </p>
    </section>
  );
}
