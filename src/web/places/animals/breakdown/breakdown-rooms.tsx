import { lazy, Suspense } from 'react';
import { Route, Switch } from 'wouter';
import { Breakdowns } from './breakdowns.tsx';
import { FinishBreakdown } from './finish-breakdown.tsx';
import { StartBreakdown } from './start-breakdown.tsx';
import { BreakdownScreen } from './weigh-screen.tsx';

const ImportBreakdowns = lazy(async () => ({
  default: (await import('./import-breakdowns.tsx')).ImportBreakdowns,
}));

const base = '/k/:kitchenId/animals/breakdowns';

/** Cutting up: the list, the beginning, the scale, the end. */
export function BreakdownRooms() {
  return (
    <Switch>
      <Route path={base} component={Breakdowns} />
      <Route path={`${base}/start`} component={StartBreakdown} />
      <Route path={`${base}/import`}>
        <Suspense fallback={<p className="quiet">Opening…</p>}>
          <ImportBreakdowns />
        </Suspense>
      </Route>
      <Route path={`${base}/:breakdownId/finish`}>
        {({ breakdownId }) => <FinishBreakdown key={breakdownId} breakdownId={breakdownId} />}
      </Route>
      <Route path={`${base}/:breakdownId`}>
        {({ breakdownId }) => <BreakdownScreen key={breakdownId} breakdownId={breakdownId} />}
      </Route>
    </Switch>
  );
}
