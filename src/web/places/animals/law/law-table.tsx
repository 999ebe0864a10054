import { useState } from 'react';
import { Link, useSearch } from 'wouter';
import type { AuthorityRequest } from '../../../../contract/authority.ts';
import type { Place } from '../../../../contract/records.ts';
import type { PartLaw } from '../../../../core/properties/parts-law.ts';
import { lawNotes } from '../../../../core/properties/parts-law-notes.ts';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { confidenceWord } from '../../../parts/basis.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { TextField } from '../../../parts/field.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { placeNames } from '../../../shell/place-names.ts';
import { lawWords } from '../../dishes/stage-words.ts';
import { dayText } from '../shelf/civil.ts';
import { animalsIn, answerFor, partText, rowsFor } from './law-rows.ts';
import { requestWords } from './request-words.ts';

const PAGE = 40;

/** May I serve it? What the sources say of a part, by animal and place, and what the authority was asked. */
export function LawTable() {
  const kitchen = useKitchen();
  const from = new URLSearchParams(useSearch());
  const [place, setPlace] = useState<Place>(kitchen.place);
  const [species, setSpecies] = useState(from.get('species') ?? '');
  const [part, setPart] = useState(from.get('part') ?? '');
  const answer = answerFor(species, part, place);
  const places = [kitchen.place, ...(Object.keys(placeNames) as Place[]).filter((p) => p !== kitchen.place)];
  return (
    <div className="stack-wide">
      <section className="stack" aria-labelledby="law-ask">
        <h2 id="law-ask">May I serve it?</h2>
        <div className="fields">
          <TextField label="Animal" value={species} onChange={setSpecies} maxLength={40} />
          <TextField
            label="Part"
            value={part}
            onChange={setPart}
            maxLength={80}
            hint="By the name the trade uses."
          />
          <Choice
            label="Place"
            value={place}
            options={places.map((p) => ({
              value: p,
              label: p === kitchen.place ? `${placeNames[p]} (this kitchen)` : placeNames[p],
            }))}
            onChange={setPlace}
          />
        </div>
        {answer === null ? (
          <p className="quiet">Name the animal and the part, or look through the table below.</p>
        ) : (
          <div role="status">
            <Verdict state={lawWords(answer).state} word={lawWords(answer).word} size="large">
              <div className="stack">
                <p>{answer.reason}</p>
                <p className="quiet small">
                  {answer.citation === 'none' ? 'No citation.' : answer.citation} (
                  {confidenceWord(answer.confidence)}
                  {answer.checked === null ? '' : `; checked ${dayText(answer.checked)}`})
                </p>
                <Notes species={species.trim()} part={part.trim()} place={place} />
                {place === kitchen.place && lawWords(answer).stops && answer.status !== 'prohibited' ? (
                  <p>
                    <Link
                      className="button button-strong"
                      href={at.askAuthority(kitchen.id, { species: species.trim(), part: part.trim() })}
                    >
                      Ask the authority
                    </Link>
                  </p>
                ) : null}
              </div>
            </Verdict>
          </div>
        )}
        {place === kitchen.place ? null : (
          <p>
            <strong>This is not your kitchen’s place.</strong> What is reported for {placeNames[place]} says
            nothing about {placeNames[kitchen.place]}.
          </p>
        )}
      </section>
      <Requests />
      <Rows place={place} />
      <Caution place={kitchen.place}>
        <p>
          Reported as the sources have it on the day a row was checked; texts change, and a row from memory
          was not read again. Confirm with your authority before you buy. What is in no row is not known,
          which is not the same as allowed.
        </p>
      </Caution>
    </div>
  );
}

/** What else the law says of such a part: what may not be made of it, what goes with it. */
function Notes({
  species,
  part,
  place,
}: {
  readonly species: string;
  readonly part: string;
  readonly place: Place;
}) {
  const notes = lawNotes(species, part, place);
  if (notes.length === 0) return null;
  return (
    <details className="fold">
      <summary>
        {notes.length === 1 ? 'One more thing' : `${notes.length} more things`} the law says of it
      </summary>
      <ul className="fold-list">
        {notes.map((n) => (
          <li key={`${n.about} ${n.text}`}>
            <strong>{n.about}:</strong> {n.text}{' '}
            <span className="quiet small">
              {n.citation} ({confidenceWord(n.confidence)})
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}

function Requests() {
  const kitchen = useKitchen();
  const asked = useOperation('authorityRequests', { params: { kitchenId: kitchen.id } });
  if (asked.data === undefined)
    return asked.error === null ? null : <Problem error={asked.error} retry={() => asked.refetch()} />;
  return (
    <section className="stack" aria-labelledby="law-asked">
      <h2 id="law-asked">Asked of the authority</h2>
      {asked.data.length === 0 ? (
        <p className="quiet">
          Nothing has been asked. A question is begun at a part above, or at a dish that the law stops.
        </p>
      ) : (
        <ol className="law-requests">
          {asked.data.map((r) => (
            <RequestRow key={r.id} request={r} />
          ))}
        </ol>
      )}
    </section>
  );
}

function RequestRow({ request }: { readonly request: AuthorityRequest }) {
  const kitchen = useKitchen();
  const words = requestWords(request);
  return (
    <li>
      <Link href={at.authorityRequest(kitchen.id, request.id)}>
        {request.part} of {request.species}
        {request.content.dishName === null ? '' : `, for ${request.content.dishName}`}
      </Link>
      <Verdict state={words.state} word={words.word} />
      <span className="quiet small">
        asked {dayText(request.askedAt.slice(0, 10))} by {request.askedBy}
      </span>
    </li>
  );
}

function Rows({ place }: { readonly place: Place }) {
  const [animal, setAnimal] = useState('');
  const [asked, setAsked] = useState('');
  const [status, setStatus] = useState('');
  const [shown, setShown] = useState(PAGE);
  const rows = rowsFor({ place, animal, asked, status });
  const change = (set: () => void) => {
    set();
    setShown(PAGE);
  };
  return (
    <section className="stack" aria-labelledby="law-table">
      <h2 id="law-table">The table, {placeNames[place]}</h2>
      <div className="fields not-on-paper">
        <TextField label="Find" value={asked} onChange={(v) => change(() => setAsked(v))} />
        <Choice
          label="Of which animal"
          value={animal}
          options={[
            { value: '', label: 'Every animal' },
            ...animalsIn(place).map((a) => ({ value: a, label: a === 'any' ? 'any animal' : a })),
          ]}
          onChange={(v) => change(() => setAnimal(v))}
        />
        <Choice
          label="Status"
          value={status}
          options={[
            { value: '', label: 'Every status' },
            { value: 'food', label: 'Food' },
            { value: 'food on conditions', label: 'Food on conditions' },
            { value: 'by-product by default: ask', label: 'By-product by default: ask' },
            { value: 'prohibited', label: 'Prohibited' },
          ]}
          onChange={(v) => change(() => setStatus(v))}
        />
      </div>
      <p role="status">
        {rows.length === 0
          ? 'In no row of the table, so not known: ask.'
          : `${rows.length} ${rows.length === 1 ? 'row' : 'rows'}.`}
      </p>
      <ol className="law-rows">
        {rows.slice(0, shown).map((row) => (
          <Row key={`${row.species} ${row.names.join()} ${row.books.join()} ${row.status}`} row={row} />
        ))}
      </ol>
      {shown < rows.length ? (
        <Button onPress={() => setShown(shown + PAGE)}>
          Show {Math.min(PAGE, rows.length - shown)} more
        </Button>
      ) : null}
    </section>
  );
}

function Row({ row }: { readonly row: PartLaw }) {
  const words = lawWords({ ...row, part: '', reason: row.condition });
  return (
    <li className="law-row">
      <p>
        <strong>{partText(row)}</strong>
        <br />
        <span className="quiet">{row.species === 'any' ? 'any animal' : row.species}</span>
      </p>
      <Verdict state={words.state} word={words.word}>
        <p>
          {row.condition}
          {row.uncookedRule === true
            ? ' In Great Britain not in an uncooked product that contains meat.'
            : ''}
        </p>
        <p className="quiet small">
          {row.citation} ({confidenceWord(row.confidence)}; checked {dayText(row.checked)})
        </p>
      </Verdict>
    </li>
  );
}
