import { useMemo, useState } from 'react';
import { v7 as newId } from 'uuid';
import { Link, useLocation, useSearch } from 'wouter';
import type { ShelfLot } from '../../../contract/shelf.ts';
import { at } from '../../addresses.ts';
import { call, queryClient, useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { EmptyPlace } from '../../parts/empty-place.tsx';
import { Tick } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';
import { Verdict } from '../../parts/verdict.tsx';
import { dayText } from '../animals/shelf/civil.ts';
import { stopsLine } from '../dishes/law-fold.tsx';
import { moment } from './clock.ts';
import { sayNaturally } from './measures.ts';
import { Pad } from './pad-view.tsx';
import { writtenFor } from './written-for.ts';

/** When it must be used by; what nobody has written is said as not known. */
const lastDay = (lot: ShelfLot): string =>
  lot.useBy === null
    ? 'last day not known'
    : lot.standing === 'last day'
      ? 'last day today'
      : `last day ${dayText(lot.useBy)}`;

/** Start a batch: which signed dish, how many pieces, out of which lots. */
export function StartBatch() {
  const kitchen = useKitchen();
  const [, navigate] = useLocation();
  const asked = new URLSearchParams(useSearch()).get('dish');
  const dishes = useOperation('dishes', { params: { kitchenId: kitchen.id } });
  const lots = useOperation('shelf', { params: { kitchenId: kitchen.id } });
  const parts = useOperation('parts', { params: { kitchenId: kitchen.id } });
  const signed = (dishes.data ?? []).filter((d) => d.signedVersion !== null && d.stage !== 'retired');
  const [picked, setPicked] = useState<string | null>(null);
  const dishId = picked ?? signed.find((d) => d.id === asked)?.id ?? signed[0]?.id ?? '';
  const summary = signed.find((d) => d.id === dishId);
  const dish = useOperation('dish', dishId === '' ? null : { params: { kitchenId: kitchen.id, dishId } });
  const version = dish.data?.versions.find(
    (v) => v.status === 'signed' && v.number === summary?.signedVersion,
  );
  const [pieces, setPieces] = useState<number | null>(null);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const partOf = new Map((parts.data ?? []).map((p) => [p.id, p]));
  /** What the dish is made of comes first, then the same animal, then the rest; each as it was, the newest first. */
  const far = (partId: string | null) => {
    const part = partId === null ? undefined : partOf.get(partId);
    if (part === undefined || part.species !== summary?.species) return 2;
    return part.name === summary.part ? 0 : 1;
  };
  const current = dish.data?.current;
  const written = current === undefined || current.id !== version?.id ? null : writtenFor(current.method);
  // One id for one filled-in form: pressing twice, or again after a lost answer, starts one batch.
  // biome-ignore lint/correctness/useExhaustiveDependencies: other contents are another batch
  const id = useMemo(() => newId(), [dishId, pieces, chosen]);
  const now = new Date();
  const usable = (lots.data ?? []).filter((l) => l.blocked === null);
  const blocked = (lots.data ?? []).filter((l) => l.blocked !== null);
  const stops = dish.data === undefined ? null : stopsLine(dish.data);

  if (dishes.data === undefined || lots.data === undefined) {
    const error = dishes.error ?? lots.error;
    return (
      <div className="page line stack">
        <h1>Start a batch</h1>
        {error === null ? (
          <p className="quiet">Opening…</p>
        ) : (
          <Problem error={error} retry={() => dishes.refetch()} />
        )}
      </div>
    );
  }
  if (signed.length === 0)
    return (
      <div className="page line">
        <EmptyPlace
          title="No dish is signed yet"
          action={
            <Link className="button button-strong button-line" href={at.place(kitchen.id, 'dishes')}>
              See the dishes
            </Link>
          }
        >
          <p>
            A batch is made from a signed version: its steps and limits then stand still while it is made.
          </p>
        </EmptyPlace>
      </div>
    );
  const start = async () => {
    if (version === undefined || pieces === null) return;
    const body = { id, versionId: version.id, pieces, lotIds: [...chosen] };
    const batch = await call('startBatch', { params: { kitchenId: kitchen.id }, body });
    void queryClient.invalidateQueries({ queryKey: ['batches'] });
    navigate(at.batch(kitchen.id, batch.id), { replace: true });
  };
  return (
    <div className="page line stack-wide">
      <h1>Start a batch</h1>
      <Choice
        label="Dish"
        value={dishId}
        options={signed.map((d) => ({ value: d.id, label: `${d.name} (version ${d.signedVersion})` }))}
        onChange={(v) => {
          setPicked(v);
          setChosen(new Set());
        }}
        {...(version === undefined || version.signedAt === null
          ? {}
          : { hint: `Signed by ${version.signedBy}, ${moment(version.signedAt, kitchen.zone, now)}` })}
      />
      {dish.error === null ? null : <Problem error={dish.error} retry={() => dish.refetch()} />}
      <section className="stack">
        <h2>How many pieces</h2>
        {written === null ? null : (
          <p className="quiet">The weights of the method are written for about {written}.</p>
        )}
        {pieces === null ? (
          <Pad
            ask={{ id, kind: 'count', label: 'Pieces', low: 1, high: 2_000 }}
            measure="count"
            units={kitchen.units}
            expected={null}
            limit={null}
            keepWord="Make"
            onKeep={async (n) => {
              if (n < 1 || n > 10_000) throw new Error('Between 1 and 10000 pieces.');
              setPieces(n);
            }}
          />
        ) : (
          <p className="row">
            <span className="big-number">{pieces}</span> {pieces === 1 ? 'piece' : 'pieces'}
            <Button kind="quiet" size="line" onPress={() => setPieces(null)}>
              Change
            </Button>
          </p>
        )}
      </section>
      <section className="stack">
        <h2>Out of which lots</h2>
        {lots.data.length === 0 ? (
          <p>
            No lot is in the house. Take one in under <Link href={at.shelf(kitchen.id)}>Animals</Link>, or go
            on without: the record will say that no lot was named.
          </p>
        ) : null}
        <ul className="lots">
          {usable
            .sort((a, b) => far(a.partId) - far(b.partId))
            .map((lot) => (
              <li key={lot.id}>
                <Tick
                  label={
                    <>
                      <strong>{lot.code}</strong> {lot.what},{' '}
                      {sayNaturally('weight', kitchen.units, lot.leftGrams)} left{' '}
                      <span className="quiet">
                        {moment(lot.arrivedAt, kitchen.zone, now)}, {lastDay(lot)}
                      </span>
                    </>
                  }
                  value={chosen.has(lot.id)}
                  onChange={(on) => {
                    const next = new Set(chosen);
                    if (on) next.add(lot.id);
                    else next.delete(lot.id);
                    setChosen(next);
                  }}
                />
              </li>
            ))}
        </ul>
        {blocked.length === 0 ? null : (
          <details className="fold" open={usable.length === 0}>
            <summary>
              {blocked.length} {blocked.length === 1 ? 'lot' : 'lots'} that may not be used now
            </summary>
            <ul className="lots">
              {blocked.map((lot) => (
                <li key={lot.id} className="lot-blocked">
                  <Verdict state="does not hold" word={lot.code}>
                    <p>
                      {lot.what}. {lot.blocked} <Link href={at.lot(kitchen.id, lot.id)}>The lot</Link>
                    </p>
                  </Verdict>
                </li>
              ))}
            </ul>
          </details>
        )}
        {lots.data.length > 0 && chosen.size === 0 ? (
          <p className="quiet">
            None ticked: the record will say that no lot was named, and nothing leads back to the animal.
          </p>
        ) : null}
      </section>
      {stops === null ? null : (
        <Verdict state="does not hold" word="The law stops this dish now">
          <p>
            {stops}. <Link href={at.dish(kitchen.id, dishId)}>See the dish for the way on</Link>
          </p>
        </Verdict>
      )}
      {pieces === null ? (
        <p className="quiet">Say how many pieces first.</p>
      ) : (
        <Button kind="strong" size="line" onPress={start} disabled={version === undefined}>
          Start {pieces} {pieces === 1 ? 'piece' : 'pieces'} of {summary?.name}
        </Button>
      )}
    </div>
  );
}
