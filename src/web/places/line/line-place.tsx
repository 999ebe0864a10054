import { Route, Switch } from 'wouter';
import { BatchScreen } from './batch-screen.tsx';
import './line.css';
import { StartBatch } from './start-batch.tsx';
import { Today } from './today.tsx';

export function LinePlace() {
  const base = '/k/:kitchenId/line';
  return (
    <Switch>
      <Route path={base} component={Today} />
      <Route path={`${base}/start`} component={StartBatch} />
      <Route path={`${base}/:batchId/:step?`}>
        {({ batchId, step }) => <BatchScreen key={batchId} batchId={batchId} step={step} />}
      </Route>
    </Switch>
  );
}
