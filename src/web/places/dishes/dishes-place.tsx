import { Route, Switch } from 'wouter';
import { DishList } from './dish-list.tsx';
import { DishPage } from './dish-page.tsx';
import { NewDish } from './new-dish.tsx';

const base = '/k/:kitchenId/dishes';

/** Dishes: the list, and the bench of each. */
export function DishesPlace() {
  return (
    <Switch>
      <Route path={base} component={DishList} />
      <Route path={`${base}/new`} component={NewDish} />
      <Route path={`${base}/:dishId/versions/:versionId/steps/:stepId`}>
        {(p) => <DishPage dishId={p.dishId} versionId={p.versionId} stepId={p.stepId} />}
      </Route>
      <Route path={`${base}/:dishId/versions/:versionId`}>
        {(p) => <DishPage dishId={p.dishId} versionId={p.versionId} />}
      </Route>
      <Route path={`${base}/:dishId/steps/:stepId`}>
        {(p) => <DishPage dishId={p.dishId} stepId={p.stepId} />}
      </Route>
      <Route path={`${base}/:dishId`}>{(p) => <DishPage dishId={p.dishId} />}</Route>
    </Switch>
  );
}
