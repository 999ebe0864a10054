import { Link, Redirect, Route, Switch } from 'wouter';
import { at } from '../../addresses.ts';
import { useKitchen } from '../../kitchen.tsx';
import { BreakdownRooms } from './breakdown/breakdown-rooms.tsx';
import { DeliveryRooms } from './deliveries/delivery-rooms.tsx';
import { LawRooms } from './law/law-rooms.tsx';
import { Parts } from './parts.tsx';
import { ShelfRooms } from './shelf/shelf-rooms.tsx';
import { SupplierRooms } from './suppliers/supplier-rooms.tsx';
import { Yields } from './yields/yields.tsx';
import './animals.css';

const base = '/k/:kitchenId/animals';
const rooms = [
  { slug: 'parts', name: 'Parts' },
  { slug: 'shelf', name: 'Shelf' },
  { slug: 'breakdowns', name: 'Breakdown' },
  { slug: 'yields', name: 'Yields' },
  { slug: 'suppliers', name: 'Suppliers' },
  { slug: 'deliveries', name: 'Deliveries' },
  { slug: 'law', name: 'May I serve it?' },
] as const;

/** Animals: what comes in, and what becomes of it. */
export function AnimalsPlace() {
  const kitchen = useKitchen();
  return (
    <div className="page stack-wide">
      <Switch>
        <Route path={`${base}/:room/*?`}>{({ room }) => <Head room={room} />}</Route>
      </Switch>
      <Switch>
        <Route path={`${base}/parts`} component={Parts} />
        <Route path={`${base}/shelf/*?`} component={ShelfRooms} />
        <Route path={`${base}/lots`}>
          <Redirect to={at.shelf(kitchen.id)} replace />
        </Route>
        <Route path={`${base}/law/*?`} component={LawRooms} />
        <Route path={`${base}/breakdowns/*?`} component={BreakdownRooms} />
        <Route path={`${base}/yields`} component={Yields} />
        <Route path={`${base}/suppliers/*?`} component={SupplierRooms} />
        <Route path={`${base}/deliveries/*?`} component={DeliveryRooms} />
        <Route path={base}>
          <Redirect to={at.animals(kitchen.id, 'parts')} replace />
        </Route>
        <Route>
          <p>Nothing at this address.</p>
        </Route>
      </Switch>
    </div>
  );
}

function Head({ room }: { readonly room: string }) {
  const kitchen = useKitchen();
  return (
    <header className="stack">
      <h1>Animals</h1>
      <nav className="rooms" aria-label="In this place">
        {rooms.map((r) => (
          <Link
            key={r.slug}
            href={r.slug === 'breakdowns' ? at.breakdowns(kitchen.id) : at.animals(kitchen.id, r.slug)}
            aria-current={r.slug === room ? 'page' : undefined}
          >
            {r.name}
          </Link>
        ))}
      </nav>
    </header>
  );
}
