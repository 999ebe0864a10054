import { type ComponentType, lazy, type ReactNode, Suspense } from 'react';
import { Redirect, Route, Switch } from 'wouter';
import { useOperation } from './api.ts';
import { KitchenProvider } from './kitchen.tsx';
import { Problem } from './parts/problem.tsx';
import { Toasts } from './parts/toast.tsx';
import { Fault } from './shell/fault.tsx';
import { Frame } from './shell/frame.tsx';

/** Each place is its own download, fetched when it is first opened. */
const page = <N extends string>(load: () => Promise<{ readonly [K in N]: ComponentType }>, name: N) =>
  lazy(async () => ({ default: (await load())[name] }));

const Doorstep = page(() => import('./places/doorstep/doorstep.tsx'), 'Doorstep');
const Settings = page(() => import('./shell/settings.tsx'), 'Settings');
const Animals = page(() => import('./places/animals/animals-place.tsx'), 'AnimalsPlace');
const Dishes = page(() => import('./places/dishes/dishes-place.tsx'), 'DishesPlace');
const Week = page(() => import('./places/week/week-place.tsx'), 'WeekPlace');
const Line = page(() => import('./places/line/line-place.tsx'), 'LinePlace');
const Proof = page(() => import('./places/proof/proof-place.tsx'), 'ProofPlace');

export function App() {
  return (
    <>
      <Fault>
        <Switch>
          <Route path="/">
            <Waiting>
              <Doorstep />
            </Waiting>
          </Route>
          <Route path="/k/:kitchenId/*?">
            {({ kitchenId }) => <InKitchen key={kitchenId} kitchenId={kitchenId} />}
          </Route>
          <Route>
            <NoSuchPage />
          </Route>
        </Switch>
      </Fault>
      <Toasts />
    </>
  );
}

function InKitchen({ kitchenId }: { readonly kitchenId: string }) {
  const kitchens = useOperation('kitchens', {});
  if (kitchens.error !== null && kitchens.data === undefined)
    return (
      <main className="page">
        <Problem error={kitchens.error} retry={() => kitchens.refetch()} />
      </main>
    );
  if (kitchens.data === undefined) return <p className="page quiet">Opening the kitchen…</p>;
  const kitchen = kitchens.data.find((k) => k.id === kitchenId);
  if (kitchen === undefined)
    return (
      <main className="page stack">
        <h1>No such kitchen here</h1>
        <p>
          This server has no kitchen at this address. It may have been put away.{' '}
          <a href="/">See the kitchens there are</a>.
        </p>
      </main>
    );
  const base = '/k/:kitchenId';
  return (
    <KitchenProvider kitchen={kitchen}>
      <Frame>
        <Fault>
          <Waiting>
            <Switch>
              <Route path={base}>
                <Redirect to={`/k/${kitchenId}/dishes`} replace />
              </Route>
              <Route path={`${base}/animals/*?`} component={Animals} />
              <Route path={`${base}/dishes/*?`} component={Dishes} />
              <Route path={`${base}/week/*?`} component={Week} />
              <Route path={`${base}/line/*?`} component={Line} />
              <Route path={`${base}/proof/*?`} component={Proof} />
              <Route path={`${base}/settings`} component={Settings} />
              <Route>
                <NoSuchPage />
              </Route>
            </Switch>
          </Waiting>
        </Fault>
      </Frame>
    </KitchenProvider>
  );
}

function Waiting({ children }: { readonly children: ReactNode }) {
  return <Suspense fallback={<p className="page quiet waiting">Opening…</p>}>{children}</Suspense>;
}

function NoSuchPage() {
  return (
    <section className="page stack">
      <h1>Nothing at this address</h1>
      <p>
        The address may have been typed wrongly, or what stood here has moved. Go back, or{' '}
        <a href="/">start at the door</a>.
      </p>
    </section>
  );
}
