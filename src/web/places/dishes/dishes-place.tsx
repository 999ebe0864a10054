import { lazy } from 'react';
import { Route, Switch } from 'wouter';
import { DishList } from './dish-list.tsx';

/** The bench is a download of its own: the list does not wait for it. */
const DishPage = lazy(async () => ({ default: (await import('./dish-page.tsx')).DishPage }));
const NewDish = lazy(async () => ({ default: (await import('./new-dish.tsx')).NewDish }));

const PricePage = lazy(async () => ({ default: (await import('./price/price-page.tsx')).PricePage }));
const ComparePage = lazy(async () => ({
  default: (await import('./compare/compare-page.tsx')).ComparePage,
}));
const IngredientsPage = lazy(async () => ({
  default: (await import('./pantry/ingredients-page.tsx')).IngredientsPage,
}));
const IngredientPage = lazy(async () => ({
  default: (await import('./pantry/ingredient-page.tsx')).IngredientPage,
}));
const RatesPage = lazy(async () => ({ default: (await import('./price/rates-page.tsx')).RatesPage }));
const AllergensPage = lazy(async () => ({
  default: (await import('./label/allergens-page.tsx')).AllergensPage,
}));

const base = '/k/:kitchenId/dishes';

/** Dishes: the list, and the bench of each. */
export function DishesPlace() {
  return (
    <Switch>
      <Route path={base} component={DishList} />
      <Route path={`${base}/new`}>
        <NewDish />
      </Route>
      <Route path={`${base}/ingredients`}>
        <IngredientsPage />
      </Route>
      <Route path={`${base}/ingredients/:ingredientId`}>
        {(p) => <IngredientPage ingredientId={p.ingredientId} />}
      </Route>
      <Route path={`${base}/rates`}>
        <RatesPage />
      </Route>
      <Route path={`${base}/allergens`}>
        <AllergensPage />
      </Route>
      <Route path={`${base}/:dishId/compare/:fromId/:toId`}>
        {(p) => <ComparePage dishId={p.dishId} fromId={p.fromId} toId={p.toId} />}
      </Route>
      <Route path={`${base}/:dishId/price`}>{(p) => <PricePage dishId={p.dishId} />}</Route>
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
