import { useState } from 'react';
import { Link } from 'wouter';
import { documents } from '../../../contract/document-paths.ts';
import type { DishSummary } from '../../../contract/records.ts';
import { at } from '../../addresses.ts';
import { useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Problem } from '../../parts/problem.tsx';
import { moment } from '../line/clock.ts';
import { KeptLogs } from '../line/kept-logs.tsx';
import { BatchState } from '../line/today.tsx';

export function BatchRecords() {
  const kitchen = useKitchen();
  const batches = useOperation('batches', { params: { kitchenId: kitchen.id } });
  if (batches.data === undefined) return <Reading of="batches" query={batches} />;
  if (batches.data.length === 0)
    return (
      <p>
        No batch has been made. Each leaves its record here; begin one at the{' '}
        <Link href={at.place(kitchen.id, 'line')}>Line</Link>.
      </p>
    );
  const now = new Date();
  const newestFirst = [...batches.data].sort((a, b) => Date.parse(b.startedAt) - Date.parse(a.startedAt));
  return (
    <ul className="papers">
      {newestFirst.map((b) => (
        <li key={b.id}>
          <span className="paper-name">
            <Link href={at.batch(kitchen.id, b.id)}>{b.dishName}</Link>
            <span className="quiet">
              {b.code} · version {b.versionNumber} · {b.pieces} {b.pieces === 1 ? 'piece' : 'pieces'} ·{' '}
              {moment(b.startedAt, kitchen.zone, now)}
              {b.closedAt === null ? '' : ` to ${moment(b.closedAt, kitchen.zone, now)}, ${b.closedBy}`}
            </span>
          </span>
          <BatchState batch={b} />
          <a className="paper-link" href={documents.batchRecord(kitchen.id, b.id)}>
            Batch record <span className="unseen">of {b.code}</span> (PDF)
          </a>
        </li>
      ))}
    </ul>
  );
}

export function MethodCards() {
  const kitchen = useKitchen();
  const dishes = useOperation('dishes', { params: { kitchenId: kitchen.id } });
  if (dishes.data === undefined) return <Reading of="dishes" query={dishes} />;
  const signed = dishes.data.filter((d) => d.signedVersion !== null);
  if (signed.length === 0)
    return (
      <p>
        No dish is signed. A signed dish has one page for the wall; sign one under{' '}
        <Link href={at.place(kitchen.id, 'dishes')}>Dishes</Link>.
      </p>
    );
  return (
    <ul className="papers">
      {signed.map((d) => (
        <MethodCard key={d.id} dish={d} />
      ))}
    </ul>
  );
}

function MethodCard({ dish }: { readonly dish: DishSummary }) {
  const kitchen = useKitchen();
  const full = useOperation('dish', { params: { kitchenId: kitchen.id, dishId: dish.id } });
  const version = full.data?.versions.find((v) => v.status === 'signed' && v.number === dish.signedVersion);
  return (
    <li>
      <span className="paper-name">
        <Link href={at.dish(kitchen.id, dish.id)}>{dish.name}</Link>
        <span className="quiet">
          version {dish.signedVersion}
          {version === undefined || version.signedAt === null
            ? ''
            : `, signed by ${version.signedBy}, ${moment(version.signedAt, kitchen.zone, new Date())}`}
        </span>
      </span>
      {version !== undefined ? (
        <a className="paper-link" href={documents.methodCard(kitchen.id, version.id)}>
          Method card <span className="unseen">of {dish.name}</span> (PDF)
        </a>
      ) : full.error !== null ? (
        <Problem error={full.error} retry={() => full.refetch()} />
      ) : null}
    </li>
  );
}

export function ProbeLogs() {
  const kitchen = useKitchen();
  const dishes = useOperation('dishes', { params: { kitchenId: kitchen.id } });
  if (dishes.data === undefined) return <Reading of="dishes" query={dishes} />;
  if (dishes.data.length === 0)
    return <p>No dish, so no logs. A core’s log is kept with its dish and its batch.</p>;
  return (
    <div>
      {dishes.data.map((d) => (
        <LogsOfDish key={d.id} dish={d} />
      ))}
    </div>
  );
}

function LogsOfDish({ dish }: { readonly dish: DishSummary }) {
  const kitchen = useKitchen();
  const [opened, setOpened] = useState(false);
  const logs = useOperation(
    'logs',
    opened ? { params: { kitchenId: kitchen.id }, query: { dishId: dish.id } } : null,
  );
  return (
    <details className="fold" onToggle={(e) => e.currentTarget.open && setOpened(true)}>
      <summary>{dish.name}</summary>
      {!opened ? null : logs.data === undefined ? (
        <Reading of="logs" query={logs} />
      ) : logs.data.length === 0 ? (
        <p>No log has been kept for this dish.</p>
      ) : (
        <KeptLogs logs={[...logs.data].reverse()} zone={kitchen.zone} />
      )}
    </details>
  );
}

interface Asked {
  readonly error: Error | null;
  readonly refetch: () => unknown;
}

function Reading({ of, query }: { readonly of: string; readonly query: Asked }) {
  return query.error === null ? (
    <p className="quiet">Reading the {of}…</p>
  ) : (
    <Problem error={query.error} retry={() => query.refetch()} />
  );
}
