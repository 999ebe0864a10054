import { useState } from 'react';
import { Link } from 'wouter';
import type { DishSummary } from '../../../../contract/records.ts';
import type { ShelfLot } from '../../../../contract/shelf.ts';
import { formatQuantity } from '../../../../core/units.ts';
import { shelfDaysScene } from '../../../../documents/pictures/shelf-days.ts';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { EmptyPlace } from '../../../parts/empty-place.tsx';
import { TextField } from '../../../parts/field.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import { AddLot } from '../add-lot.tsx';
import { dayIn, daysBetween } from './civil.ts';
import {
  ageWords,
  dishesFor,
  partsOf,
  type Standing,
  speciesOf,
  standingChoices,
  standingWords,
  wantedLots,
} from './shelf-words.ts';
import { usePrinting } from './use-printing.ts';

const PAGE = 80;

/** What is in the house: what runs out first stands first. */
export function Shelf() {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id };
  const shelf = useOperation('shelf', { params });
  const dishes = useOperation('dishes', { params });
  const [adding, setAdding] = useState(false);
  if (shelf.data === undefined)
    return shelf.error === null ? (
      <p className="quiet">Reading the shelf…</p>
    ) : (
      <Problem error={shelf.error} retry={() => shelf.refetch()} />
    );
  const take = (
    <div className="row">
      <Link className="button button-strong" href={at.takeIn(kitchen.id)}>
        Take in a delivery
      </Link>
      <Button onPress={() => setAdding(true)}>Take in a lot by itself</Button>
    </div>
  );
  return (
    <>
      {adding ? (
        <Adding onDone={() => setAdding(false)} />
      ) : shelf.data.length === 0 ? (
        <EmptyPlace title="What is in the house" action={take}>
          <p>
            A lot is what came together or was cut together: one code, one weight, one last day. What runs out
            first stands first. Nothing is here yet.
          </p>
        </EmptyPlace>
      ) : (
        take
      )}
      {shelf.data.length === 0 ? null : <OnTheShelf lots={shelf.data} dishes={dishes.data ?? []} />}
      <Caution place={kitchen.place}>
        <p>
          A last day counts days, not temperatures: it holds only for what was kept cold enough all along. A
          lot whose last day is not known is not known to be fit.
        </p>
      </Caution>
    </>
  );
}

function Adding({ onDone }: { readonly onDone: () => void }) {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id };
  const lots = useOperation('lots', { params });
  const suppliers = useOperation('suppliers', { params });
  const parts = useOperation('parts', { params });
  if (lots.data === undefined)
    return lots.error === null ? <p className="quiet">Opening…</p> : <Problem error={lots.error} />;
  return (
    <AddLot suppliers={suppliers.data ?? []} parts={parts.data ?? []} lots={lots.data} onDone={onDone} />
  );
}

function OnTheShelf({
  lots,
  dishes,
}: {
  readonly lots: readonly ShelfLot[];
  readonly dishes: readonly DishSummary[];
}) {
  const kitchen = useKitchen();
  const [ref, width] = useWidth<HTMLDivElement>();
  const [asked, setAsked] = useState('');
  const [species, setSpecies] = useState('');
  const [part, setPart] = useState('');
  const [standing, setStanding] = useState<Standing | ''>('');
  const [sought, setShown] = useState(PAGE);
  const printing = usePrinting();
  const shown = printing ? Number.POSITIVE_INFINITY : sought;
  const today = dayIn(kitchen.zone, new Date());
  const wanted = wantedLots(lots, { asked, species, part, standing });
  const grams = wanted.reduce((sum, l) => sum + (l.byProduct ? 0 : l.leftGrams), 0);
  const food = wanted.filter((l) => !l.byProduct);
  const change = (set: () => void) => {
    set();
    setShown(PAGE);
  };
  return (
    <section className="stack" aria-label="On the shelf" ref={ref}>
      {width === 0 ? null : (
        <Figure
          scene={shelfDaysScene(
            food.map((l) => ({
              grams: l.leftGrams,
              daysLeft: l.useBy === null ? null : daysBetween(today, l.useBy),
              frozen: l.frozenAt !== null,
            })),
            { width, units: kitchen.units },
          )}
          caption="Weight by the days it has left after today. Hatched: past. Outlined: nobody has written how long it keeps."
        />
      )}
      <div className="fields shelf-filter not-on-paper">
        <TextField label="Find" value={asked} onChange={(v) => change(() => setAsked(v))} />
        <Choice
          label="Animal"
          value={species}
          options={[
            { value: '', label: 'Every animal' },
            ...speciesOf(lots).map((s) => ({ value: s, label: s })),
          ]}
          onChange={(v) =>
            change(() => {
              setSpecies(v);
              setPart('');
            })
          }
        />
        <Choice
          label="Part"
          value={part}
          options={[
            { value: '', label: 'Every part' },
            ...partsOf(lots, species).map((s) => ({ value: s, label: s })),
          ]}
          onChange={(v) => change(() => setPart(v))}
        />
        <Choice
          label="How it stands"
          value={standing}
          options={standingChoices}
          onChange={(v) => change(() => setStanding(v))}
        />
      </div>
      <p role="status">
        {wanted.length === 0
          ? 'Nothing on the shelf is like this.'
          : `${wanted.length} ${wanted.length === 1 ? 'lot' : 'lots'}, ${formatQuantity(grams, 'mass', kitchen.units)}${lots.length >= 2_000 ? '; the first 2,000 of the house are looked through' : ''}.`}
      </p>
      <ol className="shelf-list" aria-label="Lots, what runs out first standing first">
        {wanted.slice(0, shown).map((lot) => (
          <ShelfRow key={lot.id} lot={lot} today={today} dishes={dishesFor(lot, dishes)} />
        ))}
      </ol>
      {shown < wanted.length ? (
        <div className="row">
          <Button onPress={() => setShown(sought + PAGE)}>
            Show {Math.min(PAGE, wanted.length - shown)} more
          </Button>
          <span className="quiet">
            {shown} of {wanted.length}
          </span>
        </div>
      ) : null}
    </section>
  );
}

function ShelfRow({
  lot,
  today,
  dishes,
}: {
  readonly lot: ShelfLot;
  readonly today: string;
  readonly dishes: readonly DishSummary[];
}) {
  const kitchen = useKitchen();
  const words = standingWords(lot, today);
  return (
    <li className="shelf-lot">
      <div className="shelf-name">
        <Link className="shelf-code" href={at.lot(kitchen.id, lot.id)}>
          {lot.code}
        </Link>
        <p>{lot.what}</p>
      </div>
      <div className="shelf-standing">
        <Verdict state={words.state} word={words.word}>
          <p className="small">{words.why}</p>
        </Verdict>
      </div>
      <p className="shelf-left">
        <strong>{formatQuantity(lot.leftGrams, 'mass', kitchen.units)}</strong>
        <span className="quiet small">
          {lot.leftGrams < lot.grams ? `of ${formatQuantity(lot.grams, 'mass', kitchen.units)}` : 'whole'}
          {lot.count === null ? '' : `, came as ${lot.count}`}
        </span>
      </p>
      <p className="quiet small shelf-from">
        {ageWords(dayIn(kitchen.zone, new Date(lot.arrivedAt)), today)}
        {lot.supplierName === null ? ', from nobody named' : `, ${lot.supplierName}`}
        {dishes.length === 0 ? null : (
          <>
            {' · for '}
            {dishes.map((d, i) => (
              <span key={d.id}>
                {i === 0 ? '' : ', '}
                <Link href={at.dish(kitchen.id, d.id)}>{d.name}</Link>
              </span>
            ))}
          </>
        )}
      </p>
    </li>
  );
}
