import type { LawStatus, Place } from '../../../contract/records.ts';
import { confidenceWord } from '../../parts/basis.tsx';
import { Verdict } from '../../parts/verdict.tsx';
import { placeNames } from '../../shell/place-names.ts';
import { lawWords } from './stage-words.ts';

/** May I serve it? The answer, and folded: why, what to do, where it is written. Open where it stops the dish. */
export function LawFold({ law, place }: { readonly law: LawStatus; readonly place: Place }) {
  const words = lawWords(law);
  return (
    <section aria-label="May it be served?">
      <Verdict state={words.state} word={words.word}>
        <details className="fold law-fold" open={words.stops}>
          <summary>
            {law.part} in {placeNames[place]}: why
          </summary>
          <div className="stack">
            <p>{law.reason}</p>
            {words.todo === null ? null : (
              <p>
                <strong>{words.todo}</strong>
              </p>
            )}
            <p className="quiet small">
              {law.citation === '' ? 'No citation.' : law.citation} ({confidenceWord(law.confidence)}). The
              law as it stands today, read with your local authority, decides.
            </p>
          </div>
        </details>
      </Verdict>
    </section>
  );
}
