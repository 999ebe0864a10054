import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import { documents } from '../../../../contract/document-paths.ts';
import { formatQuantity } from '../../../../core/units.ts';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { moment } from '../../../parts/moment.ts';
import { money } from '../../../parts/money.ts';
import { Problem } from '../../../parts/problem.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { dayText } from '../shelf/civil.ts';
import { countWords, decided, metState, pointsWords } from './delivery-words.ts';
import { useKeptPhotos } from './kept-photos.ts';

/** A delivery as it was decided: what became lots, what was found, point by point. */
export function DeliveryPage({ deliveryId }: { readonly deliveryId: string }) {
  const kitchen = useKitchen();
  const found = useOperation('delivery', { params: { kitchenId: kitchen.id, deliveryId } });
  if (found.data === undefined)
    return found.error === null ? (
      <p className="quiet">Reading the delivery…</p>
    ) : (
      <Problem error={found.error} retry={() => found.refetch()} />
    );
  const d = found.data;
  const { word, state } = decided(d);
  const lotOf = (code: string) => d.lots.find((l) => l.code === code);
  return (
    <article className="stack-wide">
      <header className="stack">
        <p className="small">
          <Link href={at.supplier(kitchen.id, d.supplierId)}>{d.supplierName}</Link>
        </p>
        <h2 className="supply-name">{moment(d.arrivedAt, kitchen.zone)}</h2>
        <Verdict state={state} word={word} size="large">
          <p>
            {pointsWords(d)}
            {d.specificationName === null
              ? ''
              : `, against ${d.specificationName}, version ${d.specificationNumber}`}
            . By {d.by}, {moment(d.recordedAt, kitchen.zone)}.
          </p>
          {d.reason === '' ? undefined : <p>{d.reason}</p>}
        </Verdict>
      </header>
      <section className="stack" aria-labelledby="lots">
        <h2 id="lots">{d.lots.length === 0 ? 'No lot was made' : 'On the shelf now'}</h2>
        <ol className="supply-list">
          {d.lines.map((l) => {
            const lot = lotOf(l.code);
            return (
              <li key={l.id} className="made-lot">
                <p>
                  {lot === undefined ? (
                    <span>{l.what}</span>
                  ) : (
                    <Link className="made-code" href={at.lot(kitchen.id, lot.id)}>
                      {l.code}
                    </Link>
                  )}{' '}
                  {lot === undefined ? null : l.what}
                </p>
                <p>
                  {formatQuantity(l.grams, 'mass', kitchen.units)}
                  {l.count === null ? '' : `, ${countWords(l.kind, l.count)}`},{' '}
                  {l.arrivalC === null
                    ? 'temperature not measured'
                    : formatQuantity(l.arrivalC, 'temperature', kitchen.units)}
                  {l.arrivalCMeant ? ' (said twice)' : ''}
                  {l.frozen ? ', frozen' : ''}
                  {l.tradeLot === null ? '' : `, their lot ${l.tradeLot}`}
                  {l.useBy === null ? '' : `, use by ${dayText(l.useBy)}`}
                  {l.cost === null ? '' : `, ${money(l.cost, kitchen.currency)}`}
                  {l.tags.length === 0 ? '' : `, ${l.tags.length} ${l.tags.length === 1 ? 'tag' : 'tags'}`}
                </p>
                {lot === undefined ? (
                  <p>
                    <strong>{d.decision === 'refused' ? 'Not taken in.' : 'This line was refused.'}</strong>{' '}
                    {l.note}
                  </p>
                ) : (
                  <p className="not-on-paper">
                    {l.kind === 'whole' ? (
                      <Link className="button" href={at.startBreakdown(kitchen.id, lot.id)}>
                        Break it down
                      </Link>
                    ) : null}
                  </p>
                )}
              </li>
            );
          })}
        </ol>
        {d.lots.length === 0 ? null : <p className="quiet">Write the code on every crate.</p>}
      </section>
      {d.checks.length === 0 ? null : (
        <section className="stack" aria-labelledby="points">
          <h2 id="points">Point by point</h2>
          <ol className="points">
            {d.checks.map((c) => (
              <li key={c.point} className="point">
                <p className="point-asked">{c.asked}</p>
                <Verdict
                  state={metState(c.met)}
                  word={`${c.met.replace(/^./, (x) => x.toUpperCase())}${c.found === '' ? '' : `: ${c.found}`}`}
                />
              </li>
            ))}
          </ol>
        </section>
      )}
      <Pictures deliveryId={d.id} photos={d.photos} />
      {d.documents === '' ? null : <p>Papers: {d.documents}</p>}
      <Caution place={kitchen.place}>
        <p>
          A temperature on arrival is one place in one piece. It does not say how warm the rest is, or was.
        </p>
      </Caution>
    </article>
  );
}

/** The pictures that the server has, and those that are still on their way from this device. */
function Pictures({
  deliveryId,
  photos,
}: {
  readonly deliveryId: string;
  readonly photos: readonly string[];
}) {
  const kitchen = useKitchen();
  const kept = useKeptPhotos(kitchen.id, deliveryId);
  const [error, setError] = useState<unknown>(null);
  const tried = useRef(false);
  const send = async () => {
    setError(null);
    try {
      await kept.sendAll();
    } catch (caught) {
      setError(caught);
    }
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the kept pictures have been found
  useEffect(() => {
    if (tried.current || kept.photos.length === 0) return;
    tried.current = true;
    void send();
  }, [kept.photos.length]);
  if (photos.length === 0 && kept.photos.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="pictures">
      <h2 id="pictures">Pictures</h2>
      {kept.photos.length === 0 ? null : (
        <div role="status">
          <p>
            {kept.photos.length} {kept.photos.length === 1 ? 'picture is' : 'pictures are'} still on this
            device only.
          </p>
        </div>
      )}
      {error === null ? null : <Problem error={error} retry={send} />}
      <ul className="photos">
        {photos.map((id, i) => (
          <li key={id}>
            <a href={documents.photo(kitchen.id, id)}>
              <img
                src={documents.photo(kitchen.id, id)}
                alt={`${i + 1} of ${photos.length} of this delivery`}
                loading="lazy"
              />
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
