import { Link, Route, Switch } from 'wouter';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { EmptyPlace } from '../../../parts/empty-place.tsx';
import { Problem } from '../../../parts/problem.tsx';
import '../suppliers/supply.css';
import { DeliveryList } from './delivery-list.tsx';
import { DeliveryPage } from './delivery-page.tsx';
import { TakeIn } from './take-in.tsx';

const base = '/k/:kitchenId/animals/deliveries';

/** What came to the back door. */
export function DeliveryRooms() {
  return (
    <Switch>
      <Route path={base} component={Deliveries} />
      <Route path={`${base}/take-in`} component={TakeIn} />
      <Route path={`${base}/:deliveryId`}>
        {({ deliveryId }) => <DeliveryPage key={deliveryId} deliveryId={deliveryId} />}
      </Route>
    </Switch>
  );
}

function Deliveries() {
  const kitchen = useKitchen();
  const list = useOperation('deliveries', { params: { kitchenId: kitchen.id } });
  if (list.data === undefined)
    return list.error === null ? (
      <p className="quiet">Reading the deliveries…</p>
    ) : (
      <Problem error={list.error} retry={() => list.refetch()} />
    );
  const take = (
    <Link className="button button-strong button-line" href={at.takeIn(kitchen.id)}>
      Take in a delivery
    </Link>
  );
  return (
    <div className="stack-wide">
      {list.data.length === 0 ? (
        <EmptyPlace title="What came, checked at the door" action={take}>
          <p>
            Weigh it, measure it, look at it point by point against what was agreed, and decide. What is
            accepted becomes lots; what is refused is written down with the reason.
          </p>
        </EmptyPlace>
      ) : (
        <>
          <div>{take}</div>
          <DeliveryList deliveries={list.data} kitchen={kitchen} withSupplier />
          {list.data.length >= 200 ? <p className="quiet">The last 200.</p> : null}
        </>
      )}
      <Caution place={kitchen.place}>
        <p>
          A temperature on arrival is one place in one piece. It does not say how warm the rest is, or was.
        </p>
      </Caution>
    </div>
  );
}
