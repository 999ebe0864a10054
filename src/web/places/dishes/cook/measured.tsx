/** What probes have said of this dish: earlier logs to lay over the prediction, and a new one to keep. */
import { lazy, memo, Suspense, useState } from 'react';
import type { Kitchen, ProbeLog } from '../../../../contract/records.ts';
import { useOperation } from '../../../api.ts';
import { Button } from '../../../parts/button.tsx';
import { Tick } from '../../../parts/field.tsx';
import { moment } from '../../../parts/moment.ts';
import { NumberField } from '../../../parts/number-field.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { Verdict } from '../../../parts/verdict.tsx';

const LogImport = lazy(async () => ({ default: (await import('../../../parts/log-import.tsx')).LogImport }));

/** A log laid over the prediction, and the minute of the programme at which it begins. */
export interface Overlay {
  readonly log: ProbeLog;
  readonly fromMin: number;
}

export interface MeasuredProps {
  readonly kitchen: Kitchen;
  readonly dishId: string;
  readonly stepId: string;
  readonly rules: readonly string[];
  readonly overlaid: readonly Overlay[];
  readonly onOverlay: (overlays: readonly Overlay[]) => void;
}

const when = (log: ProbeLog, zone: string) => moment(log.startedAt ?? log.importedAt, zone);

/** The channel is said only where the log's own name does not say it already. */
const nameOf = (log: ProbeLog) =>
  log.name.toLowerCase().includes(log.channel.toLowerCase()) ? log.name : `${log.name}, ${log.channel}`;

export const Measured = memo(function Measured({
  kitchen,
  dishId,
  stepId,
  rules,
  overlaid,
  onOverlay,
}: MeasuredProps) {
  const [open, setOpen] = useState(false);
  const logs = useOperation('logs', { params: { kitchenId: kitchen.id }, query: { dishId } });
  const mine = (logs.data ?? []).filter((log) => log.stepId === null || log.stepId === stepId);
  const lay = (log: ProbeLog, on: boolean) =>
    onOverlay([...overlaid.filter((o) => o.log.id !== log.id), ...(on ? [{ log, fromMin: 0 }] : [])]);
  const shift = (id: string, fromMin: number) =>
    onOverlay(overlaid.map((o) => (o.log.id === id ? { ...o, fromMin } : o)));
  return (
    <section className="stack" aria-labelledby="measured-heading">
      <h3 id="measured-heading">Measured</h3>
      <p>Lay the log of a probe over the prediction and judge it by the step’s rules.</p>
      <Button onPress={() => setOpen(!open)} expanded={open}>
        {open ? 'Put this away' : 'Bring in a probe log'}
      </Button>
      {open ? (
        <Suspense fallback={<p className="quiet">Opening…</p>}>
          <LogImport
            kitchen={kitchen}
            dishId={dishId}
            batchId={null}
            stepId={stepId}
            rules={rules}
            onKept={(log) => {
              setOpen(false);
              lay(log, true);
              void logs.refetch();
            }}
          />
        </Suspense>
      ) : null}
      {logs.error === null || logs.data !== undefined ? null : (
        <Problem error={logs.error} retry={() => logs.refetch()} />
      )}
      <ul className="measured">
        {mine.map((log) => (
          <li key={log.id}>
            <Tick
              label={`${nameOf(log)}, ${when(log, kitchen.zone)}`}
              value={overlaid.some((o) => o.log.id === log.id)}
              onChange={(on) => lay(log, on)}
            />
            {overlaid
              .filter((o) => o.log.id === log.id)
              .map((o) => (
                <NumberField
                  key={o.log.id}
                  className="measured-shift"
                  label="Its first reading is at minute"
                  hint="Less than 0 where the logger ran before the piece went in."
                  unit="min"
                  value={o.fromMin}
                  low={-1_440}
                  high={1_440}
                  onChange={(v) => v !== null && shift(log.id, v)}
                />
              ))}
            {log.judgements.map((j) => (
              <Verdict
                key={j.rule}
                state={j.passes === true ? 'holds' : j.passes === false ? 'does not hold' : 'unknown'}
                word={`${j.title}: ${j.passes === true ? 'holds' : j.passes === false ? 'does not hold' : 'not decided'}`}
              >
                {j.why}
              </Verdict>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
});
