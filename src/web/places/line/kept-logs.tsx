import type { ProbeLog } from '../../../contract/records.ts';
import { Verdict } from '../../parts/verdict.tsx';
import { moment } from './clock.ts';
import { logHolds } from './progress.ts';

const stateOf = (holds: boolean | null) => (holds === null ? 'unknown' : holds ? 'holds' : 'does not hold');

/** Logs that the server has kept, newest first, each with every rule's word on it. */
export function KeptLogs({ logs, zone }: { readonly logs: readonly ProbeLog[]; readonly zone: string }) {
  if (logs.length === 0) return null;
  const now = new Date();
  return (
    <section className="stack" aria-label="Logs kept">
      {[...logs].reverse().map((log) => {
        const holds = logHolds(log.judgements);
        return (
          <article key={log.id} className="kept-log">
            <Verdict
              state={stateOf(holds)}
              size="large"
              word={holds === null ? 'Not decided' : holds ? 'Log holds' : 'Log does not hold'}
            />
            <p className="quiet">
              {log.name} · {log.points.length} readings · kept by {log.importedBy},{' '}
              {moment(log.importedAt, zone, now)}
            </p>
            <ul className="log-rules">
              {log.judgements.map((j) => (
                <li key={j.rule}>
                  <Verdict state={stateOf(j.passes)} word={j.title}>
                    {j.why}
                  </Verdict>
                </li>
              ))}
              {log.judgements.length === 0 ? (
                <li>No rule was named for it: it shows nothing to be safe.</li>
              ) : null}
              {log.warnings.map((w) => (
                <li key={w} className="quiet">
                  {w}
                </li>
              ))}
            </ul>
          </article>
        );
      })}
    </section>
  );
}
