import { lazy } from 'react';
import { Link, Route, Switch } from 'wouter';
import { at } from '../../addresses.ts';
import { useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Caution } from '../../parts/caution.tsx';
import { ChainCheck } from './chain-check.tsx';
import { Journal, JournalLines } from './journal.tsx';
import { BatchRecords, MethodCards, ProbeLogs } from './papers.tsx';
import './proof.css';

const Checks = lazy(async () => ({ default: (await import('./checks.tsx')).Checks }));

export function ProofPlace() {
  const base = '/k/:kitchenId/proof';
  return (
    <Switch>
      <Route path={`${base}/journal`} component={Journal} />
      <Route path={`${base}/checks`} component={Checks} />
      <Route component={Proof} />
    </Switch>
  );
}

/** What can be shown today: each record with its paper, then the journal that holds them together. */
function Proof() {
  const kitchen = useKitchen();
  const journal = useOperation('journal', { params: { kitchenId: kitchen.id }, query: { limit: 8 } });
  return (
    <div className="page proof stack-wide">
      <header className="stack measure">
        <h1>Proof</h1>
        <p>
          What this kitchen can show: the record of every batch, the card each dish is made by, the logs its
          cores were judged by, and the journal of who did what when. Records are added to, never overwritten.
        </p>
        {kitchen.demo ? <p>Everything here is invented for the demo. It is evidence of nothing.</p> : null}
        <Caution place={kitchen.place} />
      </header>
      <section className="stack" aria-labelledby="proof-batches">
        <h2 id="proof-batches">Batches</h2>
        <BatchRecords />
      </section>
      <section className="stack" aria-labelledby="proof-cards">
        <h2 id="proof-cards">Method cards</h2>
        <MethodCards />
      </section>
      <section className="stack" aria-labelledby="proof-logs">
        <h2 id="proof-logs">Probe logs</h2>
        <ProbeLogs />
      </section>
      <section className="stack" aria-labelledby="proof-journal">
        <h2 id="proof-journal">Journal</h2>
        <ChainCheck />
        <JournalLines lines={journal.data} error={journal.error} retry={() => journal.refetch()} />
        {journal.data === undefined || journal.data.length === 0 ? null : (
          <p>
            <Link href={at.journal(kitchen.id)}>The whole journal</Link>
          </p>
        )}
      </section>
      <section className="stack measure" aria-labelledby="proof-engine">
        <h2 id="proof-engine">The engine itself</h2>
        <p>
          Its predictions are held against published figures, one by one, and where they do not agree it says
          so. <Link href={at.checks(kitchen.id)}>How the engine was checked</Link>
        </p>
      </section>
      <section className="stack" aria-labelledby="proof-later">
        <h2 id="proof-later">Not here yet</h2>
        <dl className="proof-later">
          <dt>Safety plan</dt>
          <dd>Per dish: its flow, hazards step by step, control points and limits. Not built yet.</dd>
          <dt>Trace</dt>
          <dd>From a plate back to the animal, and from a lot to every portion. Not built yet.</dd>
          <dt>Lab results</dt>
          <dd>Results of samples, held against their sampling plans. Not built yet.</dd>
          <dt>Inspector’s file</dt>
          <dd>
            Plan, evidence and a period’s records as one file. Not built yet; until then print the records
            above.
          </dd>
        </dl>
      </section>
    </div>
  );
}
