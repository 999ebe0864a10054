import { lazy, Suspense } from 'react';
import { Link, Route, Switch, useSearch } from 'wouter';
import { at } from '../../../addresses.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { LawTable } from './law-table.tsx';
import { RequestPage } from './request-page.tsx';
import './law.css';

/** Brings the engine with it, so only where a question is asked. */
const AskAuthority = lazy(async () => ({
  default: (await import('./ask-authority.tsx')).AskAuthority,
}));

const base = '/k/:kitchenId/animals/law';

/** May I serve it?, the question to the authority, and its answer. */
export function LawRooms() {
  return (
    <Switch>
      <Route path={base} component={LawTable} />
      <Route path={`${base}/ask`} component={Ask} />
      <Route path={`${base}/asked/:requestId`}>
        {({ requestId }) => <RequestPage key={requestId} requestId={requestId} />}
      </Route>
    </Switch>
  );
}

function Ask() {
  const kitchen = useKitchen();
  const asked = new URLSearchParams(useSearch());
  const species = asked.get('species') ?? '';
  const part = asked.get('part') ?? '';
  if (species === '' || part === '')
    return (
      <p>
        A question is begun at a part: <Link href={at.law(kitchen.id)}>May I serve it?</Link>
      </p>
    );
  return (
    <Suspense fallback={<p className="quiet">Opening…</p>}>
      <AskAuthority
        key={`${asked.get('dish')} ${species} ${part}`}
        dishId={asked.get('dish')}
        species={species}
        part={part}
      />
    </Suspense>
  );
}
