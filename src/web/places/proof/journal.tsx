import { Link, useSearch } from 'wouter';
import type { JournalLine } from '../../../contract/records.ts';
import { at } from '../../addresses.ts';
import { useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Problem } from '../../parts/problem.tsx';
import { clock, day } from '../line/clock.ts';
import { ChainCheck } from './chain-check.tsx';

const pageLines = 100;

/** The journal, newest first, a page at a time; each page has its own address. */
export function Journal() {
  const kitchen = useKitchen();
  const asked = Number(new URLSearchParams(useSearch()).get('before'));
  const before = Number.isInteger(asked) && asked > 0 ? asked : undefined;
  const journal = useOperation('journal', {
    params: { kitchenId: kitchen.id },
    query: before === undefined ? { limit: pageLines } : { limit: pageLines, before },
  });
  const lines = journal.data;
  const last = lines?.at(-1);
  const here = at.journal(kitchen.id);
  return (
    <div className="page proof stack-wide">
      <header className="stack">
        <h1>Journal</h1>
        <p>
          Who did what when, newest first. <Link href={at.place(kitchen.id, 'proof')}>Back to Proof</Link>
        </p>
        <ChainCheck />
      </header>
      <JournalLines lines={lines} error={journal.error} retry={() => journal.refetch()} whole />
      <nav className="row" aria-label="Pages of the journal">
        {before === undefined ? null : (
          <Link className="button" href={here}>
            Newest
          </Link>
        )}
        {lines === undefined || last === undefined || lines.length < pageLines || last.seq <= 1 ? null : (
          <Link className="button" href={`${here}?before=${last.seq}`}>
            Older than line {last.seq}
          </Link>
        )}
      </nav>
    </div>
  );
}

interface LinesProps {
  readonly lines: readonly JournalLine[] | undefined;
  readonly error: Error | null;
  readonly retry: () => unknown;
  /** With the number and fingerprint of each line. */
  readonly whole?: boolean;
}

export function JournalLines({ lines, error, retry, whole }: LinesProps) {
  const kitchen = useKitchen();
  if (lines === undefined)
    return error === null ? (
      <p className="quiet">Reading the journal…</p>
    ) : (
      <Problem error={error} retry={retry} />
    );
  if (lines.length === 0) return <p>Nothing has been written yet.</p>;
  const byDay = new Map<string, JournalLine[]>();
  for (const l of lines) {
    const date = day(l.at, kitchen.zone);
    byDay.set(date, [...(byDay.get(date) ?? []), l]);
  }
  return (
    <div className="journal stack">
      {[...byDay].map(([date, those]) => (
        <section key={date} aria-label={date}>
          {whole === true ? <h2 className="journal-day">{date}</h2> : <h3 className="journal-day">{date}</h3>}
          <ol className="journal-lines">
            {those.map((l) => (
              <li key={l.seq}>
                <span className="journal-when">{clock(l.at, kitchen.zone)}</span>
                <span className="journal-what">
                  <Subject line={l} />
                  <span className="quiet"> {l.by}</span>
                </span>
                {whole === true ? (
                  <span className="journal-print quiet">
                    line {l.seq} · <code title={l.hash}>{l.hash.slice(0, 12)}</code>
                  </span>
                ) : null}
              </li>
            ))}
          </ol>
        </section>
      ))}
    </div>
  );
}

function Subject({ line }: { readonly line: JournalLine }) {
  const kitchen = useKitchen();
  if (line.subject === 'batch')
    return <Link href={at.batch(kitchen.id, line.subjectId)}>{line.summary}</Link>;
  if (line.subject === 'dish') return <Link href={at.dish(kitchen.id, line.subjectId)}>{line.summary}</Link>;
  return <>{line.summary}</>;
}
