import { Link } from 'wouter';
import type { Dish, PartUsed, Place } from '../../../contract/records.ts';
import { at } from '../../addresses.ts';
import { useKitchen } from '../../kitchen.tsx';
import { confidenceWord } from '../../parts/basis.tsx';
import { Verdict } from '../../parts/verdict.tsx';
import { placeNames } from '../../shell/place-names.ts';
import { agreedWords, lawWordsOf, stoppedParts } from './stage-words.ts';

/** May I serve it? Of the dish's own part and of every other that its steps and lots use; open where one stops it. */
export function LawFold({ dish, place }: { readonly dish: Dish; readonly place: Place }) {
  const [own, ...others] = dish.partsUsed;
  if (own === undefined) return null;
  const loud = others.filter((u) => u.stops);
  const quiet = others.filter((u) => !u.stops);
  return (
    <section aria-label="May it be served?" className="stack">
      <PartVerdict used={own} dish={dish} place={place} />
      {loud.map((u) => (
        <PartVerdict key={`${u.species} ${u.part}`} used={u} dish={dish} place={place} />
      ))}
      {quiet.length === 0 ? null : (
        <details className="fold law-fold">
          <summary>
            {quiet.length === 1 ? 'One other part' : `${quiet.length} other parts`} that its steps and lots
            name
          </summary>
          <div className="stack">
            {quiet.map((u) => (
              <PartVerdict key={`${u.species} ${u.part}`} used={u} dish={dish} place={place} />
            ))}
          </div>
        </details>
      )}
    </section>
  );
}

function PartVerdict(props: { readonly used: PartUsed; readonly dish: Dish; readonly place: Place }) {
  const { used, dish, place } = props;
  const kitchen = useKitchen();
  const { law, agreed } = used;
  const words = lawWordsOf(law, agreed);
  const stops = used.stops && agreed === null;
  const askFor = { dish: dish.id, species: used.species, part: used.part };
  return (
    <Verdict state={words.state} word={words.word}>
      {agreed === null ? null : (
        <p>
          {agreedWords(agreed)}{' '}
          <Link href={at.authorityRequest(kitchen.id, agreed.requestId)}>The question and its answers</Link>
        </p>
      )}
      <details className="fold law-fold" open={stops}>
        <summary>
          {used.path === 'part' ? law.part : `${used.part} of ${used.species} (${used.from})`} in{' '}
          {placeNames[place]}: why
        </summary>
        <div className="stack">
          {agreed === null ? null : <p>The sources say: {law.status}.</p>}
          <p>{law.reason}</p>
          {words.todo === null ? null : (
            <p>
              <strong>{words.todo}</strong>
            </p>
          )}
          {stops && law.status !== 'prohibited' ? (
            <p className="not-on-paper">
              <Link className="button button-strong" href={at.askAuthority(kitchen.id, askFor)}>
                Ask the authority
              </Link>
            </p>
          ) : null}
          <p className="quiet small">
            {law.citation === '' || law.citation === 'none' ? 'No citation.' : law.citation} (
            {confidenceWord(law.confidence)}). The law as it stands today, read with your local authority,
            decides.
          </p>
        </div>
      </details>
    </Verdict>
  );
}

/** In a line, what stops the dish; null where nothing does. */
export function stopsLine(dish: Dish): string | null {
  const stopped = stoppedParts(dish);
  return stopped.length === 0
    ? null
    : stopped.map((u) => `${u.part} of ${u.species}: ${u.law.status}`).join('; ');
}
