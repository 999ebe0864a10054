import { Link, useLocation } from 'wouter';
import type { DishSummary } from '../../../contract/records.ts';
import { methodRibbonScene } from '../../../documents/pictures/method-ribbon.ts';
import { useActions } from '../../actions.ts';
import { at } from '../../addresses.ts';
import { useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { EmptyPlace } from '../../parts/empty-place.tsx';
import { Problem } from '../../parts/problem.tsx';
import { Verdict } from '../../parts/verdict.tsx';
import { SceneView } from '../../pictures/SceneView.tsx';
import { useWidth } from '../../pictures/use-width.ts';
import { lawWordsOf, stageWords } from './stage-words.ts';
import './dishes.css';

/** All dishes, each drawn by its method. */
export function DishList() {
  const kitchen = useKitchen();
  const [, navigate] = useLocation();
  const dishes = useOperation('dishes', { params: { kitchenId: kitchen.id } });
  useActions([
    {
      id: 'new dish',
      label: 'Add a dish',
      run: () => navigate(at.newDish(kitchen.id)),
    },
  ]);
  const add = (
    <Link href={at.newDish(kitchen.id)} className="button button-strong">
      Add a dish
    </Link>
  );
  return (
    <div className="page stack-wide">
      <div className="dishes-head">
        <div className="stack">
          <h1>Dishes</h1>
          <p className="row not-on-paper">
            <Link href={at.ingredients(kitchen.id)}>Ingredients</Link>
            <Link href={at.rates(kitchen.id)}>Rates</Link>
            <Link href={at.allergens(kitchen.id)}>Allergens</Link>
          </p>
        </div>
        {dishes.data !== undefined && dishes.data.length > 0 ? add : null}
      </div>
      {dishes.error === null ? null : <Problem error={dishes.error} retry={() => dishes.refetch()} />}
      {dishes.isPending ? <p className="quiet">Reading the dishes…</p> : null}
      {dishes.data?.length === 0 ? (
        <EmptyPlace
          title="A dish is a method: steps in order, each with its settings and its limits."
          action={add}
        >
          <p>
            Begin with the part that is thrown away. Here it is cured, filled, cooked on screen, chilled and
            kept, until its coldest point is safe and it is worth a place on the menu.
          </p>
        </EmptyPlace>
      ) : null}
      <ol className="dish-list">
        {(dishes.data ?? []).map((dish) => (
          <DishRow key={dish.id} dish={dish} />
        ))}
      </ol>
    </div>
  );
}

function DishRow({ dish }: { readonly dish: DishSummary }) {
  const kitchen = useKitchen();
  const law = lawWordsOf(dish.law, dish.agreed);
  return (
    <li className="dish-row">
      <div className="dish-row-words">
        <h2>
          <Link href={at.dish(kitchen.id, dish.id)} className="dish-link">
            {dish.name}
          </Link>
        </h2>
        <p className="quiet">
          {dish.species}, {dish.part} · <strong className="dish-stage">{stageWords[dish.stage]}</strong>
          {dish.signedVersion === null ? '' : `, version ${dish.signedVersion}`}
        </p>
        {dish.law.status === 'food' ? null : (
          <Verdict state={law.state} word={law.word}>
            {law.stops ? <p className="small">Stays an idea. {dish.law.reason}</p> : null}
          </Verdict>
        )}
      </div>
      <SmallRibbon dish={dish} />
    </li>
  );
}

function SmallRibbon({ dish }: { readonly dish: DishSummary }) {
  const kitchen = useKitchen();
  const [ref, width] = useWidth<HTMLDivElement>();
  const whole = useOperation('dish', { params: { kitchenId: kitchen.id, dishId: dish.id } });
  const method = whole.data?.current.method;
  return (
    <div className="dish-ribbon" ref={ref}>
      {method === undefined || width === 0 ? null : method.length === 0 ? (
        <p className="quiet small">No steps yet.</p>
      ) : (
        <SceneView
          scene={methodRibbonScene(method, { width, small: true, units: kitchen.units })}
          table="none"
        />
      )}
      {dish.stepKinds.length === 0 ? null : <p className="quiet small">{dish.stepKinds.join(' · ')}</p>}
    </div>
  );
}
