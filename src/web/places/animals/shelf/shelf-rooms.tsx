import { Route, Switch } from 'wouter';
import { LotPage } from './lot-page.tsx';
import { Shelf } from './shelf.tsx';
import './shelf.css';

const base = '/k/:kitchenId/animals/shelf';

/** The shelf, and each lot on it. */
export function ShelfRooms() {
  return (
    <Switch>
      <Route path={base} component={Shelf} />
      <Route path={`${base}/:lotId`}>{({ lotId }) => <LotPage key={lotId} lotId={lotId} />}</Route>
    </Switch>
  );
}
