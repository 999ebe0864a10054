import { type ReactNode, useState } from 'react';
import type { Batch } from '../../../contract/records.ts';
import { call, keyOf, queryClient } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { TextField } from '../../parts/field.tsx';
import { say } from '../../parts/toast.tsx';
import { Verdict } from '../../parts/verdict.tsx';
import { moment } from './clock.ts';

const outWords = (out: number) =>
  `${out} ${out === 1 ? 'reading or log was' : 'readings or logs were'} out of limit, and decided on`;

/** The end of a batch: fit to serve when nothing stands in the way, or thrown away with the reason; signed either way. */
export function CloseBatch({ batch, waiting }: { readonly batch: Batch; readonly waiting: number }) {
  const kitchen = useKitchen();
  const [note, setNote] = useState('');
  const [reason, setReason] = useState('');
  const [discarding, setDiscarding] = useState(false);
  const [missing, setMissing] = useState(false);
  const close = async (as: 'closed' | 'discarded', text: string) => {
    const params = { kitchenId: kitchen.id, batchId: batch.id };
    const closed = await call('closeBatch', { params, body: { as, note: text } });
    queryClient.setQueryData(keyOf('batch', { params }), closed);
    void queryClient.invalidateQueries({ queryKey: ['batches'] });
    say(as === 'closed' ? `Batch ${batch.code} is closed.` : `Batch ${batch.code} is written off.`);
  };

  const out = batch.out + batch.logs.filter((log) => log.judgements.some((j) => j.passes === false)).length;
  if (batch.status !== 'open')
    return (
      <section className="close stack">
        <Verdict
          size="large"
          state={batch.status !== 'closed' ? 'does not hold' : out > 0 ? 'not yet' : 'holds'}
          word={batch.status === 'closed' ? 'Closed as fit to serve' : 'Thrown away'}
        >
          <p>
            {batch.closedBy},{' '}
            {batch.closedAt === null ? '' : moment(batch.closedAt, kitchen.zone, new Date())}
          </p>
          {batch.status === 'closed' && out > 0 ? <p>{outWords(out)}</p> : null}
          {batch.closingNote === null || batch.closingNote === '' ? null : <p>“{batch.closingNote}”</p>}
        </Verdict>
        <Caution place={kitchen.place} />
      </section>
    );

  const blocked = waiting > 0 || batch.blocking.length > 0;
  return (
    <section className="close stack" aria-labelledby="close-title">
      <h2 id="close-title">Close the batch</h2>
      {blocked ? (
        <>
          <Verdict state="not yet" word="Not fit to close yet" />
          <Missing count={batch.blocking.length}>
            {waiting === 0 ? null : (
              <li>
                {waiting} {waiting === 1 ? 'line has' : 'lines have'} not been sent from this device.
              </li>
            )}
            {batch.blocking.map((b) => (
              <li key={b}>{b}</li>
            ))}
          </Missing>
        </>
      ) : (
        <>
          {out === 0 ? (
            <p>Nothing stands in the way. Closing says, under your name, that it is fit to serve.</p>
          ) : (
            <Verdict state="not yet" word={outWords(out)}>
              Closing says, under your name, that it is fit to serve all the same. The record shows both.
            </Verdict>
          )}
          <TextField label="Anything to add" value={note} onChange={setNote} maxLength={1_000} />
          <Button kind="strong" size="line" onPress={() => close('closed', note.trim())}>
            Close as fit to serve
          </Button>
        </>
      )}
      {discarding ? (
        <div className="stack">
          <TextField
            label="Why it is thrown away"
            value={reason}
            onChange={(text) => {
              setReason(text);
              setMissing(false);
            }}
            lines={2}
            maxLength={1_000}
            error={missing ? 'Say why, in a few words.' : null}
          />
          <div className="row">
            <Button
              kind="danger"
              size="line"
              onPress={async () => {
                if (reason.trim() === '') setMissing(true);
                else await close('discarded', reason.trim());
              }}
            >
              Throw it away
            </Button>
            <Button kind="quiet" size="line" onPress={() => setDiscarding(false)}>
              Not now
            </Button>
          </div>
        </div>
      ) : (
        <Button size="line" onPress={() => setDiscarding(true)}>
          Throw it away…
        </Button>
      )}
      <Caution place={kitchen.place} />
    </section>
  );
}

/** A few reasons stand open; a long list, as on a batch just begun, folds under its number. */
function Missing({ count, children }: { readonly count: number; readonly children: ReactNode }) {
  const list = <ul className="blocking">{children}</ul>;
  return count <= 4 ? (
    list
  ) : (
    <details className="fold">
      <summary>{count} things are still missing</summary>
      {list}
    </details>
  );
}
