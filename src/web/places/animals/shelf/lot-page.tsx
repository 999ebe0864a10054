import { useState } from 'react';
import { Link } from 'wouter';
import { documents } from '../../../../contract/document-paths.ts';
import type { ShelfLotDetail } from '../../../../contract/shelf.ts';
import { lawOf } from '../../../../core/properties/parts-law.ts';
import { formatQuantity } from '../../../../core/units.ts';
import { lotTraceScene } from '../../../../documents/pictures/lot-trace.ts';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { moment } from '../../../parts/moment.ts';
import { money } from '../../../parts/money.ts';
import { Problem } from '../../../parts/problem.tsx';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import { lawWords } from '../../dishes/stage-words.ts';
import { dayIn, dayText } from './civil.ts';
import { MoveDialog, moveWords } from './move-dialog.tsx';
import { ageWords, type MoveWhat, movesFor, standingWords } from './shelf-words.ts';

/** One lot: what is left and until when, what may be done with it, where it came from and where it went. */
export function LotPage({ lotId }: { readonly lotId: string }) {
  const kitchen = useKitchen();
  const lot = useOperation('lot', { params: { kitchenId: kitchen.id, lotId } });
  if (lot.data === undefined)
    return lot.error === null ? (
      <p className="quiet">Reading the lot…</p>
    ) : (
      <Problem error={lot.error} retry={() => lot.refetch()} />
    );
  return <Whole lot={lot.data} />;
}

function Whole({ lot }: { readonly lot: ShelfLotDetail }) {
  const kitchen = useKitchen();
  const [move, setMove] = useState<MoveWhat | null>(null);
  const [ref, width] = useWidth<HTMLDivElement>();
  const today = dayIn(kitchen.zone, new Date());
  const words = standingWords(lot, today);
  const mass = (g: number) => formatQuantity(g, 'mass', kitchen.units);
  return (
    <article className="stack-wide">
      <header className="stack">
        <p className="not-on-paper">
          <Link href={at.shelf(kitchen.id)}>The shelf</Link>
        </p>
        <h2>
          Lot {lot.code}, {lot.what}
        </h2>
        <p className="lot-left">
          <span className="big-number">{mass(lot.leftGrams)}</span>{' '}
          <span className="quiet">
            left of {mass(lot.grams)}
            {lot.count === null ? '' : `, came as ${lot.count}`}
          </span>
        </p>
        <Verdict state={words.state} word={words.word}>
          <p>{words.why}</p>
          {lot.blocked === null ? null : <p>{lot.blocked}</p>}
          {lot.thawedAt === null ? null : (
            <p>Thawed {moment(lot.thawedAt, kitchen.zone)}: it is not frozen again.</p>
          )}
        </Verdict>
        <LawOfLot lot={lot} />
      </header>
      <div className="row not-on-paper">
        {movesFor(lot).map((what, i) => (
          <Button
            key={what}
            kind={what === 'made a by-product' ? 'danger' : i === 0 ? 'strong' : 'plain'}
            onPress={() => setMove(what)}
          >
            {moveWords[what].press}
          </Button>
        ))}
        {lot.blocked === null && lot.kind !== 'other' && lot.species !== null ? (
          <Link className="button" href={at.startBreakdown(kitchen.id, lot.id)}>
            Cut it up
          </Link>
        ) : null}
      </div>
      {move === null ? null : <MoveDialog lot={lot} what={move} onClose={() => setMove(null)} />}
      <section className="stack" ref={ref} aria-labelledby="lot-trace">
        <h3 id="lot-trace">Where it came from, where it went</h3>
        {width === 0 ? null : (
          <Figure
            scene={lotTraceScene(
              {
                from: lot.supplierName,
                above: lot.ancestors,
                here: lot,
                below: lot.descendants,
                batches: lot.batches.map((b) => ({ code: b.code, what: b.dishName })),
              },
              { width: Math.min(width, 720) },
            )}
          />
        )}
        <TraceLinks lot={lot} />
      </section>
      <Facts lot={lot} today={today} />
      <Moves lot={lot} />
      {lot.photos.length === 0 ? null : (
        <section className="stack">
          <h3>Photos</h3>
          <div className="row">
            {lot.photos.map((id, i) => (
              <a key={id} href={documents.photo(kitchen.id, id)}>
                <img
                  className="lot-photo"
                  src={documents.photo(kitchen.id, id)}
                  alt={`Lot ${lot.code}, ${i + 1}`}
                />
              </a>
            ))}
          </div>
        </section>
      )}
      <Caution place={kitchen.place}>
        <p>
          What the records say of a lot is what was weighed, measured and written. Look at it and smell it
          too.
        </p>
      </Caution>
    </article>
  );
}

function LawOfLot({ lot }: { readonly lot: ShelfLotDetail }) {
  const kitchen = useKitchen();
  if (lot.species === null || lot.partName === null || lot.byProduct) return null;
  const law = lawOf(lot.species, lot.partName, kitchen.place, { ageMonths: lot.ageMonthsAtMost });
  const words = lawWords(law);
  return (
    <Verdict state={words.state} word={words.word}>
      <p className="small">
        {law.reason} {law.citation === 'none' ? '' : `${law.citation}.`}{' '}
        <Link href={at.law(kitchen.id, { species: lot.species, part: lot.partName })}>May I serve it?</Link>
      </p>
    </Verdict>
  );
}

function TraceLinks({ lot }: { readonly lot: ShelfLotDetail }) {
  const kitchen = useKitchen();
  const lots = (title: string, rows: ShelfLotDetail['ancestors']) =>
    rows.length === 0 ? null : (
      <p>
        {title}{' '}
        {rows.map((r, i) => (
          <span key={r.id}>
            {i === 0 ? '' : ', '}
            <Link href={at.lot(kitchen.id, r.id)}>{r.code}</Link>
          </span>
        ))}
      </p>
    );
  return (
    <div className="stack">
      {lots('Cut from', lot.ancestors)}
      {lots('Cut into', lot.descendants)}
      {lot.batches.length === 0 ? (
        <p className="quiet">No batch has named it.</p>
      ) : (
        <p>
          Used in{' '}
          {lot.batches.map((b, i) => (
            <span key={b.id}>
              {i === 0 ? '' : ', '}
              <Link href={at.batch(kitchen.id, b.id)}>{b.code}</Link> ({b.dishName})
            </span>
          ))}
        </p>
      )}
      {lot.dishes.length === 0 ? null : (
        <p>
          Can become{' '}
          {lot.dishes.map((d, i) => (
            <span key={d.id}>
              {i === 0 ? '' : ', '}
              <Link href={at.dish(kitchen.id, d.id)}>{d.name}</Link>
            </span>
          ))}
        </p>
      )}
    </div>
  );
}

function Facts({ lot, today }: { readonly lot: ShelfLotDetail; readonly today: string }) {
  const kitchen = useKitchen();
  const rows: [string, React.ReactNode][] = [
    [
      'Came',
      `${moment(lot.arrivedAt, kitchen.zone)}, ${ageWords(dayIn(kitchen.zone, new Date(lot.arrivedAt)), today)}`,
    ],
    ['From', lot.supplierName ?? 'nobody named'],
    [
      'On arrival',
      lot.arrivalC === null
        ? 'temperature not measured'
        : formatQuantity(lot.arrivalC, 'temperature', kitchen.units),
    ],
    [
      'Delivery',
      lot.deliveryId === null ? (
        'taken in by itself, or cut here'
      ) : (
        <Link key="d" href={at.delivery(kitchen.id, lot.deliveryId)}>
          as it was checked at the door
        </Link>
      ),
    ],
    ['Slaughtered', lot.slaughteredOn === null ? 'not written' : dayText(lot.slaughteredOn)],
    [
      'Age of the animal',
      lot.ageMonthsAtMost === null ? 'not written' : `at most ${lot.ageMonthsAtMost} months`,
    ],
    ['Trade lot', lot.tradeLot ?? 'none written'],
    ['Tags', lot.tags.length === 0 ? 'none written' : lot.tags.join(', ')],
    [
      'Cost',
      lot.cost === null
        ? 'not known'
        : `${money(lot.cost, kitchen.currency)}${lot.costPerKg === null ? '' : `, ${money(lot.costPerKg, kitchen.currency)} a kg`}`,
    ],
    ...(lot.note === '' ? [] : [['Note', lot.note] as [string, string]]),
  ];
  return (
    <section className="stack">
      <h3>What is written of it</h3>
      <dl className="lot-facts">
        {rows.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function Moves({ lot }: { readonly lot: ShelfLotDetail }) {
  const kitchen = useKitchen();
  const mass = (g: number) => formatQuantity(g, 'mass', kitchen.units);
  if (lot.moves.length === 0) return <p className="quiet">Nothing has been done with it yet.</p>;
  return (
    <section className="stack">
      <h3>What was done with it</h3>
      <ScrollAcross label="Table: what was done with it">
        <table className="animals-wide">
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">What</th>
              <th scope="col" className="number">
                How much
              </th>
              <th scope="col" className="number">
                Left
              </th>
              <th scope="col">Last day</th>
              <th scope="col">By, and why</th>
            </tr>
          </thead>
          <tbody>
            {lot.moves.map((m) => (
              <tr key={m.id}>
                <td>{moment(m.at, kitchen.zone)}</td>
                <td>
                  {m.breakdownId === null ? (
                    m.what
                  ) : (
                    <Link href={at.breakdown(kitchen.id, m.breakdownId)}>{m.what}</Link>
                  )}
                </td>
                <td className="number">{m.grams === null ? '' : mass(m.grams)}</td>
                <td className="number">{mass(m.leftGrams)}</td>
                <td>{m.useBy === null ? '' : dayText(m.useBy)}</td>
                <td>
                  {m.by}
                  {m.reason === '' ? '' : `: ${m.reason}`}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollAcross>
    </section>
  );
}
