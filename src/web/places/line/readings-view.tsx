import type { ReactNode } from 'react';
import type { Ask } from '../../../contract/steps.ts';
import { Button } from '../../parts/button.tsx';
import { Verdict } from '../../parts/verdict.tsx';
import { clock, moment } from './clock.ts';
import { sayReading, type Units } from './measures.ts';
import type { Line } from './progress.ts';

export interface ReadingsProps {
  readonly ask: Ask;
  readonly lines: readonly Line[];
  readonly units: Units;
  readonly zone: string;
  /** Absent: the batch takes no more. */
  readonly onCorrect?: (line: Line) => void;
  /** The line on which the judgement turns. */
  readonly decidingAt?: string | null;
}

const verdicts = {
  in: { state: 'holds', word: 'in' },
  out: { state: 'does not hold', word: 'out' },
  'no limit': { state: 'neutral', word: 'recorded' },
} as const;

/** Everything recorded for one ask, newest first: who, when, in or out, sent or not; corrected lines stay, struck through. */
export function Readings({ ask, lines, units, zone, onCorrect, decidingAt }: ReadingsProps) {
  if (lines.length === 0) return null;
  const now = new Date();
  const byId = new Map(lines.map((l) => [l.id, l]));
  return (
    <ol className="readings" aria-label={`Recorded for ${ask.label}, newest first`}>
      {[...lines].reverse().map((line) => {
        const value = line.value === null || line.kind === 'tick' ? null : sayReading(ask, units, line.value);
        const old = line.corrects === null ? undefined : byId.get(line.corrects);
        const struck = line.correctedBy !== null;
        return (
          <li key={line.id} className={struck ? 'reading reading-struck' : 'reading'}>
            <span className="reading-value">
              {struck ? <s>{value ?? 'done'}</s> : (value ?? (line.kind === 'tick' ? 'done' : line.note))}
            </span>
            <span className="reading-word">
              {struck ? <span className="quiet">corrected</span> : <Verdict {...verdicts[line.holds]} />}
            </span>
            <span className="reading-who">
              {line.by}, {ask.kind === 'core log' ? clock(line.at, zone, true) : moment(line.at, zone, now)}
              {decidingAt === line.at ? (
                <strong>
                  <Deciding /> this reading decides
                </strong>
              ) : null}
              {old === undefined || old.value === null ? null : (
                <span>in place of {sayReading(ask, units, old.value)}</span>
              )}
              {line.note === '' || line.kind === 'note' ? null : <q>{line.note}</q>}
              <Sending line={line} />
            </span>
            {onCorrect === undefined ||
            struck ||
            line.sending === 'refused' ||
            line.kind === 'tick' ? null : (
              <Button kind="quiet" onPress={() => onCorrect(line)} label={`Correct ${value ?? 'this line'}`}>
                Correct
              </Button>
            )}
          </li>
        );
      })}
    </ol>
  );
}

export function Sending({ line }: { readonly line: Pick<Line, 'sending' | 'refusal'> }): ReactNode {
  if (line.sending === 'sent') return null;
  return line.sending === 'refused' ? (
    <strong className="not-sent not-sent-refused">
      <Hollow /> refused: {line.refusal}
    </strong>
  ) : (
    <strong className="not-sent">
      <Hollow /> not sent yet
    </strong>
  );
}

export function Hollow() {
  return (
    <svg className="mark" viewBox="0 0 16 16" aria-hidden="true">
      <circle
        cx="8"
        cy="8"
        r="6.5"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeDasharray="4 2.8"
      />
    </svg>
  );
}

function Deciding() {
  return (
    <svg className="mark" viewBox="0 0 16 16" aria-hidden="true">
      <path d="M1 8h11M7.5 3l5 5-5 5" fill="none" stroke="currentColor" strokeWidth="2" />
    </svg>
  );
}
