import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import type { Entry } from './outbox.ts';
import { putAway, sendAgain, sendNow, useOutbox } from './outbox-driver.ts';
import { readAside } from './outbox-storage.ts';
import { Hollow } from './readings-view.tsx';
import './waiting-bar.css';

const said = (e: Entry): string => {
  if (e.kind === 'reading')
    return e.reading.value === null ? e.reading.note : `${e.reading.kind} ${e.reading.value}`;
  if (e.kind === 'weighing')
    return `${e.weighing.node}, ${e.weighing.grossGrams - e.weighing.tareGrams} g${e.weighing.takenBack ? ', taken back' : ''}`;
  return e.kind === 'decision' ? `decision: ${e.decision.what}` : e.log.name;
};

/** What this device still has to send, and what the server would not take. Says nothing when there is nothing. */
export function WaitingBar() {
  const box = useOutbox();
  const waiting = box.entries.filter((e) => e.refused === null);
  const refused = box.entries.filter((e) => e.refused !== null);
  return (
    <div className="waiting-bar" aria-live="polite">
      {box.storable ? null : (
        <p className="not-sent not-sent-refused">
          This device cannot store what is typed. Keep this page open until everything has been sent.
        </p>
      )}
      {waiting.length === 0 ? null : (
        <p className="not-sent">
          <Hollow /> {waiting.length} {waiting.length === 1 ? 'line' : 'lines'} not sent yet
          {box.silence === null ? '' : `. ${box.silence} It is tried again by itself`}.{' '}
          {box.silence === null ? null : (
            <Button kind="quiet" onPress={sendNow}>
              Try now
            </Button>
          )}
        </p>
      )}
      {refused.map((e) => (
        <div key={e.id} className="not-sent not-sent-refused">
          <p>
            <Hollow /> The server would not take <strong>{said(e)}</strong> ({e.personName}): {e.refused}
          </p>
          <Button onPress={() => sendAgain(e.id)}>Send it again</Button>{' '}
          <Button kind="quiet" onPress={() => putAway(e)}>
            Put it away on this device
          </Button>
        </div>
      ))}
      {box.unreadable === 0 ? null : (
        <p className="not-sent not-sent-refused">
          {box.unreadable} {box.unreadable === 1 ? 'line' : 'lines'} stored on this device cannot be read by
          this version. They are left where they are.
        </p>
      )}
    </div>
  );
}

/** What was put away because the server would not have it: still on this device, word for word. */
export function PutAway() {
  const [entries] = useState(() => {
    try {
      return readAside(localStorage);
    } catch {
      return [];
    }
  });
  useOutbox();
  if (entries.length === 0) return null;
  return (
    <details className="fold">
      <summary>Put away on this device ({entries.length})</summary>
      <ul className="fold-list">
        {entries.map((e) => (
          <li key={e.id}>
            {said(e)}, {e.personName}. <span className="quiet">Refused: {e.refused}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
