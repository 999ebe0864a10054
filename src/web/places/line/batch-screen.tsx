import { Link } from 'wouter';
import { documents } from '../../../contract/document-paths.ts';
import type { Batch } from '../../../contract/records.ts';
import { at } from '../../addresses.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Problem } from '../../parts/problem.tsx';
import { moment } from './clock.ts';
import { CloseBatch } from './close-batch.tsx';
import { type StepProgress, stepNow } from './progress.ts';
import { StepView } from './step-view.tsx';
import { useBatch } from './use-batch.ts';
import { WaitingBar } from './waiting-bar.tsx';

/** One batch, a step at a time. Without a step in the address it opens where work is. */
export function BatchScreen({
  batchId,
  step,
}: {
  readonly batchId: string;
  readonly step: string | undefined;
}) {
  const { kitchen, query, batch, records, progress, waiting } = useBatch(batchId);
  if (batch === null || records === null)
    return (
      <div className="page line stack">
        {query.error === null ? (
          <p className="quiet">Opening the batch…</p>
        ) : (
          <Problem error={query.error} retry={() => query.refetch()} />
        )}
        <WaitingBar />
      </div>
    );
  const asked = Number(step);
  const index =
    step !== undefined && Number.isInteger(asked) && asked >= 1 && asked <= progress.length
      ? asked - 1
      : stepNow(progress);
  const over = batch.status !== 'open';
  return (
    <div className="page line stack">
      <Head batch={batch} zone={kitchen.zone} />
      <WaitingBar />
      {query.error === null ? null : (
        <p className="not-sent">
          The newest state of this batch cannot be read just now; what you type is kept and sent later.
        </p>
      )}
      {/* What became of it is the first thing asked of a batch that is over. */}
      {over ? <CloseBatch batch={batch} waiting={waiting.length} /> : null}
      {progress.length === 0 ? <p>This version has no steps.</p> : null}
      <StepNav batch={batch} progress={progress} index={index} />
      {progress[index] === undefined ? null : (
        <StepView key={progress[index].step.id} batch={batch} now={progress[index]} records={records} />
      )}
      <StepTurn batch={batch} progress={progress} index={index} />
      {over ? null : <CloseBatch batch={batch} waiting={waiting.length} />}
    </div>
  );
}

function Head({ batch, zone }: { readonly batch: Batch; readonly zone: string }) {
  const kitchen = useKitchen();
  return (
    <header className="batch-head">
      <h1>{batch.dishName}</h1>
      <p className="quiet">
        Batch {batch.code} · version {batch.versionNumber} · {batch.pieces}{' '}
        {batch.pieces === 1 ? 'piece' : 'pieces'} · begun {moment(batch.startedAt, zone, new Date())},{' '}
        {batch.startedBy}
        {batch.lots.length === 0 ? ' · no lot named' : ` · lots ${batch.lots.map((l) => l.code).join(', ')}`}{' '}
        · <a href={documents.batchRecord(kitchen.id, batch.id)}>Batch record (PDF)</a>
      </p>
    </header>
  );
}

const stepWord: Record<StepProgress['state'], string> = {
  'nothing to record': 'nothing to record',
  'to do': 'to do',
  begun: 'begun',
  done: 'done',
  'recorded, out': 'recorded, something was out of its limit',
  'needs a decision': 'needs a decision',
};
const stepShape: Record<StepProgress['state'], string> = {
  'nothing to record': '–',
  'to do': '○',
  begun: '◐',
  done: '●',
  'recorded, out': '◇',
  'needs a decision': '◆',
};

function StepNav({
  batch,
  progress,
  index,
}: {
  batch: Batch;
  progress: readonly StepProgress[];
  index: number;
}) {
  const kitchen = useKitchen();
  return (
    <nav aria-label="Steps of this batch" className="step-nav">
      <ol>
        {progress.map((p, i) => (
          <li key={p.step.id}>
            <Link
              href={at.batchStep(kitchen.id, batch.id, i + 1)}
              aria-current={i === index ? 'step' : undefined}
              className={`step-link step-${p.state.replaceAll(/\W+/g, '-')}`}
              aria-label={`Step ${i + 1}, ${p.step.name}: ${stepWord[p.state]}`}
              title={p.step.name}
            >
              <span className="step-number">{i + 1}</span>
              <span aria-hidden="true">{stepShape[p.state]}</span>
            </Link>
          </li>
        ))}
      </ol>
    </nav>
  );
}

function StepTurn({
  batch,
  progress,
  index,
}: {
  batch: Batch;
  progress: readonly StepProgress[];
  index: number;
}) {
  const kitchen = useKitchen();
  const before = progress[index - 1];
  const after = progress[index + 1];
  return (
    <nav aria-label="Step before and after" className="step-turn">
      {before === undefined ? null : (
        <Link className="button button-line" href={at.batchStep(kitchen.id, batch.id, index)}>
          ‹ {before.step.name}
        </Link>
      )}
      {after === undefined ? null : (
        <Link
          className={`button button-line step-turn-on${progress[index]?.left === 0 ? ' button-strong' : ''}`}
          href={at.batchStep(kitchen.id, batch.id, index + 2)}
        >
          {after.step.name} ›
        </Link>
      )}
    </nav>
  );
}
