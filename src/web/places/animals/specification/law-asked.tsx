import { lawOf } from '../../../../core/properties/parts-law.ts';
import { supplierDuties } from '../../../../core/properties/supplier-duties.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { confidenceWord } from '../../../parts/basis.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { placeNames } from '../../../shell/place-names.ts';
import { lawWords } from '../../dishes/stage-words.ts';

/** What the sources say of the part here, and ask of whoever supplies it; unknown is said as unknown. */
export function LawAsked({ species, what }: { readonly species: string; readonly what: string }) {
  const { place } = useKitchen();
  const whole = /^whole\b/i.test(what.trim());
  const law = lawOf(species, what, place);
  const words = lawWords(law);
  const duties = supplierDuties(species, what, place);
  return (
    <section className="stack" aria-labelledby="law-asks">
      <h2 id="law-asks">What the law asks, as its sources have it</h2>
      {whole ? (
        <p className="measure">
          A whole animal: each of its parts has an answer of its own, and not every one may be eaten.
        </p>
      ) : (
        <Verdict state={words.state} word={words.word}>
          <div className="stack measure">
            <p>
              {law.part}, {placeNames[place]}: {law.reason}
            </p>
            {words.stops ? (
              <p>
                <strong>
                  Ask before the day of slaughter, in writing: what was once sent off as a by-product does not
                  become food again.
                </strong>
              </p>
            ) : null}
            <p className="quiet small">
              {law.citation === '' ? 'No citation.' : law.citation} ({confidenceWord(law.confidence)}).
            </p>
          </div>
        </Verdict>
      )}
      {duties.length === 0 ? (
        <Verdict state="unknown" word="What is asked of the supplier is not known here">
          <p>
            {species} is not in the table for {placeNames[place]}. Ask your authority, and the plant’s own
            official.
          </p>
        </Verdict>
      ) : (
        <ol className="law-duties">
          {duties.map((d) => (
            <li key={d.text}>
              <p>
                <strong>{d.about.replace(/^./, (c) => c.toUpperCase())}.</strong> {d.text}
              </p>
              <p className="quiet small">
                {d.citation} ({confidenceWord(d.confidence)}; looked up {d.checked}).
              </p>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
