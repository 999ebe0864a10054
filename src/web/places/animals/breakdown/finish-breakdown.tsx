import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { Breakdown, CostBy, CostPreview } from '../../../../contract/breakdown.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { at } from '../../../addresses.ts';
import { call, queryClient, useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { TextField } from '../../../parts/field.tsx';
import { money } from '../../../parts/money.ts';
import { Problem } from '../../../parts/problem.tsx';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import { say } from '../../../parts/toast.tsx';
import { WaitingBar } from '../../line/waiting-bar.tsx';
import { BreakdownHead } from './breakdown-head.tsx';
import { useBreakdown } from './use-breakdown.ts';

/** More than this in none of the parts is worth a word [%]; common practice, no source. */
const muchGone = 3;

const rules: Readonly<Record<CostBy, { readonly name: string; readonly means: string }>> = {
  weight: { name: 'By weight', means: 'every kilogram costs the same, neck or fillet' },
  value: { name: 'By value', means: 'who would pay more carries more; prices are in Parts' },
  shares: { name: 'By own shares', means: 'as this kitchen has set it in Parts' },
};

/** Before it is finished: what stands in the way, what each rule of cost gives, then the lots. */
export function FinishBreakdown({ breakdownId }: { readonly breakdownId: string }) {
  const { kitchen, query, breakdown, lines, live } = useBreakdown(breakdownId);
  const params = { kitchenId: kitchen.id, breakdownId };
  const [, navigate] = useLocation();
  const open = breakdown?.status === 'open';
  const costs = useOperation('breakdownCosts', open ? { params } : null);
  const [chosen, setBy] = useState<CostBy | null>(null);
  const [note, setNote] = useState('');
  // By value where every part has one; where the rule would fall back on weight, weight is what is offered.
  const byValue = costs.data?.find((p) => p.by === 'value');
  const by =
    chosen ?? (byValue?.warnings.some((w) => w.includes('carried by weight')) === true ? 'weight' : 'value');
  if (breakdown === null || live === null)
    return query.error === null ? (
      <p className="quiet">Reading the breakdown…</p>
    ) : (
      <Problem error={query.error} retry={() => query.refetch()} />
    );
  const here = at.breakdown(kitchen.id, breakdownId);
  if (!open)
    return (
      <p>
        This breakdown is {breakdown.status}. <Link href={here}>See it</Link>.
      </p>
    );
  const unsent = lines.filter((l) => l.sending !== 'sent').length;
  const gonePct = live.inGrams === 0 ? 0 : (100 * live.unaccountedGrams) / live.inGrams;
  const finish = async (as: 'finished' | 'given up') => {
    if (unsent > 0 && as === 'finished')
      throw new Error(`${unsent} weighings are not sent yet. Finish when they have been.`);
    if (as === 'finished' && gonePct > muchGone && note.trim() === '')
      throw new Error(`More than ${muchGone} % is in none of the parts. Write why, as far as you know.`);
    if (as === 'given up' && note.trim() === '') throw new Error('Write why it is given up.');
    const done = await call('finishBreakdown', { params, body: { as, costBy: by, note: note.trim() } });
    await queryClient.invalidateQueries();
    say(
      as === 'finished'
        ? `Finished: ${done.made.length} lots are on the shelf.`
        : 'Given up. Its weighings stay on record.',
    );
    navigate(here);
  };
  return (
    <div className="stack-wide">
      <BreakdownHead breakdown={breakdown} />
      <WaitingBar />
      {breakdown.blocking.length === 0 ? null : (
        <section className="stack">
          <h3>Before it can be finished</h3>
          <ul>
            {breakdown.blocking.map((b) => (
              <li key={b}>{b}</li>
            ))}
          </ul>
          <div>
            <Link className="button button-strong" href={here}>
              Back to the scale
            </Link>
          </div>
        </section>
      )}
      <p>
        {formatQuantity(live.inGrams, 'mass', kitchen.units)} in,{' '}
        {formatQuantity(Math.abs(live.unaccountedGrams), 'mass', kitchen.units)}{' '}
        {live.unaccountedGrams < 0 ? 'too much, within the scales' : 'in none of the parts'} (
        {plainNumber(gonePct, 1)} %).
        {gonePct > muchGone
          ? ' That is worth a look: drip, bone and trim weighed too? A tray with its tare?'
          : ''}
      </p>
      {breakdown.blocking.length > 0 ? (
        <p className="quiet">What the parts cost is shown by each rule once all of them are weighed.</p>
      ) : costs.data === undefined ? (
        costs.error === null ? (
          <p className="quiet">Working out the three rules…</p>
        ) : (
          <Problem error={costs.error} retry={() => costs.refetch()} />
        )
      ) : (
        <Rules previews={costs.data} chosen={by} onChoose={setBy} />
      )}
      <div className="measure stack">
        <TextField
          label={gonePct > muchGone ? 'Why so much is missing' : 'Note'}
          value={note}
          onChange={setNote}
          lines={2}
          maxLength={1_000}
        />
        <div className="row">
          <Button
            kind="strong"
            onPress={() => finish('finished')}
            busy="Making the lots…"
            disabled={breakdown.blocking.length > 0}
          >
            Finish {rules[by].name.toLowerCase()}
          </Button>
          <Link className="button" href={here}>
            Back to the scale
          </Link>
          <Button kind="quiet" onPress={() => finish('given up')}>
            Give it up
          </Button>
        </div>
        <p className="quiet small">
          Finishing draws {breakdown.lots.map((l: Breakdown['lots'][number]) => l.code).join(', ')} and makes
          a lot of every part. No rule of cost is true: each is a convention; keep to one and your dishes can
          be compared.
        </p>
      </div>
    </div>
  );
}

function Rules(props: {
  readonly previews: readonly CostPreview[];
  readonly chosen: CostBy;
  readonly onChoose: (by: CostBy) => void;
}) {
  const kitchen = useKitchen();
  const { previews } = props;
  const cost = (value: number | null) =>
    value === null ? 'not known' : money(Math.round(value), kitchen.currency);
  const warnings = [...new Set(previews.flatMap((p) => p.warnings))];
  const names = previews[0]?.nodes ?? [];
  return (
    <section className="stack">
      <h3>What the parts cost, by each rule</h3>
      <fieldset className="rules">
        <legend className="unseen">Rule of cost</legend>
        {previews.map((p) => (
          <label key={p.by} className="tick">
            <input
              type="radio"
              name="rule"
              checked={props.chosen === p.by}
              onChange={() => props.onChoose(p.by)}
            />
            <span>
              <strong>{rules[p.by].name}</strong>: {rules[p.by].means}
            </span>
          </label>
        ))}
      </fieldset>
      <ScrollAcross label="Table: cost of each part by each rule">
        <table>
          <caption>
            {previews[0]?.paid === null || previews[0] === undefined
              ? 'What was paid is not known, so the parts carry no cost.'
              : `${money(previews[0].paid, kitchen.currency)} paid, shared out to the penny; per kg in brackets.`}
          </caption>
          <thead>
            <tr>
              <th scope="col">Part</th>
              <th scope="col" className="number">
                Weight
              </th>
              {previews.map((p) => (
                <th key={p.by} scope="col" className="number">
                  {rules[p.by].name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {names.map((n, i) => (
              <tr key={n.node}>
                <th scope="row">{n.name}</th>
                <td className="number">{formatQuantity(n.grams, 'mass', kitchen.units)}</td>
                {previews.map((p) => (
                  <td key={p.by} className="number">
                    {cost(p.nodes[i]?.cost ?? null)}
                    {p.nodes[i]?.perKg == null ? '' : ` (${cost(p.nodes[i].perKg)})`}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollAcross>
      {warnings.length === 0 ? null : (
        <ul>
          {warnings.map((w) => (
            <li key={w}>{w}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
