/** What the two studies of a programme have in common: begin, how far it is, stop, what went wrong. */
import type { ReactNode } from 'react';
import { Button } from '../../../parts/button.tsx';
import { StudyProblems } from '../../../workers/study.ts';
import type { StudyKind } from '../../../workers/study-messages.ts';
import { faultWords, whereWords } from './programme.ts';
import type { Studying } from './use-study.ts';
import './study.css';

export interface StudyBarProps<K extends StudyKind> {
  readonly study: Studying<K>;
  readonly ready: boolean;
  readonly children: ReactNode;
}

export function StudyBar<K extends StudyKind>({ study, ready, children }: StudyBarProps<K>) {
  const { progress, error } = study;
  return (
    <>
      {progress === null ? (
        <div className="row">
          <Button kind="strong" disabled={!ready} onPress={study.begin}>
            {children}
          </Button>
          {ready ? null : <span className="quiet">The programme above cannot be worked out yet.</span>}
        </div>
      ) : (
        <div className="row study-working">
          <label className="study-progress">
            <span>Working it out: {Math.round(100 * progress)} %</span>
            <progress value={progress} max={1} />
          </label>
          <Button onPress={study.stop}>Stop</Button>
        </div>
      )}
      {error === null ? null : <StudyFault error={error} />}
    </>
  );
}

function StudyFault({ error }: { readonly error: Error }) {
  const told =
    error instanceof StudyProblems
      ? error.problems.map((p) => `${whereWords(p.path)}: ${faultWords(p)}.`)
      : [error.message];
  return (
    <div className="field-error" role="alert">
      {told.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}

/** An answer that is not of the programme as it stands says so, and is drawn faint. */
export function Answered({
  current,
  label,
  children,
}: {
  readonly current: boolean;
  readonly label: string;
  readonly children: ReactNode;
}) {
  return (
    <section className="stack" aria-label={label} aria-live="polite">
      {current ? null : (
        <p className="cook-old">Of the programme as it was: something has been changed since.</p>
      )}
      <div className={current ? 'stack' : 'stack cook-old-drawn'}>{children}</div>
    </section>
  );
}
