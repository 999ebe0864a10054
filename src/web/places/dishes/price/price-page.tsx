import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { dishCosts, dishPrice } from '../../../../contract/dish-price.ts';
import { methodWeights } from '../../../../contract/method-weights.ts';
import type { Dish, Kitchen, Version } from '../../../../contract/records.ts';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { EmptyPlace } from '../../../parts/empty-place.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { CostTable } from './cost-table.tsx';
import { PriceAnswer } from './price-answer.tsx';
import { pricedBy } from './priced-by.ts';
import { WeightTable } from './weight-table.tsx';
import './price.css';

/** A dish's weights from the part to the plate, what a portion costs, and what it must be sold for. */
export function PricePage({ dishId }: { readonly dishId: string }) {
  const kitchen = useKitchen();
  const dish = useOperation('dish', { params: { kitchenId: kitchen.id, dishId } });
  if (dish.error !== null && dish.data === undefined)
    return (
      <div className="page">
        <Problem error={dish.error} retry={() => dish.refetch()} />
      </div>
    );
  if (dish.data === undefined) return <p className="page quiet">Fetching the dish…</p>;
  return <Priced kitchen={kitchen} dish={dish.data} version={dish.data.current} />;
}

function Priced({
  kitchen,
  dish,
  version,
}: {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly version: Version;
}) {
  const params = { kitchenId: kitchen.id };
  const pantry = useOperation('pantry', { params });
  const numbers = useOperation('dishNumbers', { params });
  const bars = useOperation('carcassBars', { params });
  /** What the scarcest part costs, against what it costs today. */
  const [dearer, setDearer] = useState(100);
  const weights = useMemo(() => methodWeights(dish, version.method), [dish, version.method]);
  const costs = useMemo(() => {
    if (pantry.data === undefined || numbers.data === undefined) return null;
    const lines = dishCosts(
      version.method,
      weights,
      pantry.data.rates,
      pricedBy(dish.species, pantry.data, numbers.data),
    );
    const first = lines.find((l) => l.kind === 'part');
    return lines.map((l) =>
      l === first && l.cost !== null
        ? {
            ...l,
            cost: {
              low: (l.cost.low * dearer) / 100,
              usual: (l.cost.usual * dearer) / 100,
              high: (l.cost.high * dearer) / 100,
            },
          }
        : l,
    );
  }, [pantry.data, numbers.data, version.method, weights, dish.species, dearer]);
  const price = useMemo(
    () => (costs === null ? null : dishPrice(costs, weights.portions, pantry.data?.rates ?? null)),
    [costs, weights.portions, pantry.data?.rates],
  );
  const error = pantry.error ?? numbers.error;
  return (
    <article className="page stack-wide price">
      <header className="stack">
        <p className="not-on-paper">
          <Link href={at.dish(kitchen.id, dish.id)}>{dish.name}</Link>
        </p>
        <h1>Weights and price</h1>
        <p className="quiet">
          {dish.name}, version {version.number}
          {version.status === 'signed' ? ', signed' : ', a draft'}
          {pantry.data === undefined ? '' : `; prices of ${pantry.data.day}`}
        </p>
      </header>
      {version.method.length === 0 ? (
        <EmptyPlace
          title="There is no method yet"
          action={
            <Link className="button button-strong" href={at.dish(kitchen.id, dish.id)}>
              Open the bench
            </Link>
          }
        >
          <p>Weights and prices follow from the steps: trim, mix, cook, plate.</p>
        </EmptyPlace>
      ) : (
        <>
          {error === null ? null : (
            <Problem
              error={error}
              retry={() => {
                void pantry.refetch();
                void numbers.refetch();
              }}
            />
          )}
          {costs === null ? (
            <p className="quiet">Reading the prices…</p>
          ) : (
            <PriceAnswer
              kitchen={kitchen}
              dish={dish}
              weights={weights}
              price={price}
              costs={costs}
              rates={pantry.data?.rates ?? null}
              bars={bars.data ?? []}
              dearer={dearer}
              onDearer={setDearer}
            />
          )}
          {costs === null ? null : (
            <CostTable kitchen={kitchen} dish={dish} costs={costs} portions={weights.portions} />
          )}
          <WeightTable kitchen={kitchen} dish={dish} weights={weights} />
          <Caution place={kitchen.place}>
            <p>
              Costs are reckoned, not counted: what was not entered is named, never taken for nothing. Tax is
              as the kitchen entered it; whether it is right for this place is your accountant’s word.
            </p>
          </Caution>
        </>
      )}
    </article>
  );
}
