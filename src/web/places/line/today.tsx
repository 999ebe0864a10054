import { Link } from 'wouter';
import type { BatchSummary } from '../../../contract/records.ts';
import { at } from '../../addresses.ts';
import { useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { EmptyPlace } from '../../parts/empty-place.tsx';
import { Problem } from '../../parts/problem.tsx';
import { Verdict } from '../../parts/verdict.tsx';
import { clock, day, moment } from './clock.ts';
import { inOrderOfTime } from './order-of-time.ts';
import { useOutbox } from './outbox-driver.ts';
import { PutAway, WaitingBar } from './waiting-bar.tsx';

export function Today() {
  const kitchen = useKitchen();
  const batches = useOperation('batches', { params: { kitchenId: kitchen.id } });
  const now = new Date();
  const start = (
    <Link className="button button-strong button-line" href={at.startBatch(kitchen.id)}>
      Start a batch
    </Link>
  );
  if (batches.data === undefined)
    return (
      <div className="page line stack">
        <h1>Line</h1>
        {batches.error === null ? (
          <p className="quiet">Looking for today’s batches…</p>
        ) : (
          <Problem error={batches.error} retry={() => batches.refetch()} />
        )}
        <WaitingBar />
      </div>
    );
  const { open, closedToday, earlier } = inOrderOfTime(batches.data, kitchen.zone, now);
  return (
    <div className="page line stack">
      <div className="line-head">
        <div>
          <h1>Line</h1>
          <p className="quiet">{day(now, kitchen.zone)}</p>
        </div>
        {batches.data.length === 0 ? null : start}
      </div>
      <WaitingBar />
      {batches.data.length === 0 ? (
        <EmptyPlace title="What is being made today" action={start}>
          <p>
            A batch is one making of a signed dish: which lots went in, every weight and temperature as it was
            read, who read it, and what was done when something was out. It opens a step at a time, for one
            hand.
          </p>
          <p>
            A dish has to be signed first; that is done on its page under{' '}
            <Link href={at.place(kitchen.id, 'dishes')}>Dishes</Link>.
          </p>
        </EmptyPlace>
      ) : null}
      {batches.data.length > 0 && open.length === 0 ? (
        <p>Nothing is open. Everything begun has been closed.</p>
      ) : null}
      <BatchList batches={open} label="Open" />
      {closedToday.length === 0 ? null : (
        <section className="stack">
          <h2>Closed today</h2>
          <BatchList batches={closedToday} label="Closed today" />
        </section>
      )}
      {earlier.length === 0 ? null : (
        <details className="fold">
          <summary>Earlier ({earlier.length})</summary>
          <BatchList batches={earlier} label="Earlier" />
        </details>
      )}
      <PutAway />
    </div>
  );
}

export function BatchList({
  batches,
  label,
}: {
  readonly batches: readonly BatchSummary[];
  readonly label: string;
}) {
  const kitchen = useKitchen();
  const { entries } = useOutbox();
  if (batches.length === 0) return null;
  const now = new Date();
  return (
    <ul className="batches" aria-label={label}>
      {batches.map((b) => {
        const waiting = entries.filter((e) => e.batchId === b.id).length;
        return (
          <li key={b.id}>
            <Link href={at.batch(kitchen.id, b.id)} className="batch-link">
              <span className="batch-time">
                {day(b.startedAt, kitchen.zone) === day(now, kitchen.zone)
                  ? clock(b.startedAt, kitchen.zone)
                  : moment(b.startedAt, kitchen.zone, now)}
              </span>
              <span className="batch-name">
                {b.dishName}
                <span className="quiet small">
                  {b.code} · {b.pieces} {b.pieces === 1 ? 'piece' : 'pieces'} · {b.startedBy}
                </span>
              </span>
              <span className="batch-state">
                <BatchState batch={b} />
                {waiting === 0 ? null : <strong className="not-sent">{waiting} not sent yet</strong>}
              </span>
            </Link>
          </li>
        );
      })}
    </ul>
  );
}

export function BatchState({ batch }: { readonly batch: BatchSummary }) {
  if (batch.status === 'discarded') return <Verdict state="does not hold" word="thrown away" />;
  const out = batch.out === 0 ? null : `${batch.out} out of limit`;
  if (batch.status === 'closed')
    return <Verdict state="holds" word={out === null ? 'closed, fit' : `closed, fit; ${out}, decided`} />;
  if (out !== null) return <Verdict state="does not hold" word={`open; ${out}`} />;
  return (
    <Verdict
      state="not yet"
      word={batch.open === 0 ? 'open; all recorded' : `open; ${batch.open} to record`}
    />
  );
}
