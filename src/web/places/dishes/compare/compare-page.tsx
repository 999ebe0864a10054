import { useMemo } from 'react';
import { Link, useLocation } from 'wouter';
import { compareMethods, type StepChange } from '../../../../contract/compare-methods.ts';
import type { Dish, Kitchen, Version } from '../../../../contract/records.ts';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import { CookEffects } from './cook-effects.tsx';
import { PlainEffects } from './plain-effects.tsx';
import './compare.css';

export interface ComparePageProps {
  readonly dishId: string;
  /** The older of the two, and the newer. */
  readonly fromId: string;
  readonly toId: string;
}

/** Two versions of a dish: what was changed, line by line, and what it does to time, cost and safety. */
export function ComparePage({ dishId, fromId, toId }: ComparePageProps) {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id };
  const dish = useOperation('dish', { params: { ...params, dishId } });
  const from = useOperation('version', { params: { ...params, versionId: fromId } });
  const to = useOperation('version', { params: { ...params, versionId: toId } });
  const error = dish.error ?? from.error ?? to.error;
  if (error !== null)
    return (
      <div className="page">
        <Problem
          error={error}
          retry={() => {
            void dish.refetch();
            void from.refetch();
            void to.refetch();
          }}
        />
      </div>
    );
  if (dish.data === undefined || from.data === undefined || to.data === undefined)
    return <p className="page quiet">Fetching both versions…</p>;
  return <Compared kitchen={kitchen} dish={dish.data} from={from.data} to={to.data} />;
}

function Compared({
  kitchen,
  dish,
  from,
  to,
}: {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly from: Version;
  readonly to: Version;
}) {
  const [, navigate] = useLocation();
  const changes = useMemo(() => compareMethods(from.method, to.method), [from.method, to.method]);
  const options = dish.versions.map((v) => ({
    value: v.id,
    label: `Version ${v.number}${v.status === 'signed' ? ', signed' : ', a draft'}`,
  }));
  const go = (a: string, b: string) => navigate(at.compare(kitchen.id, dish.id, a, b));
  const touched = changes.filter((c) => c.how !== 'kept' || c.moved || c.changes.length > 0);
  return (
    <article className="page stack-wide compare">
      <header className="stack">
        <p className="not-on-paper">
          <Link href={at.dish(kitchen.id, dish.id)}>{dish.name}</Link>
        </p>
        <h1>
          Version {from.number} beside version {to.number}
        </h1>
        <div className="fields not-on-paper">
          <Choice label="Was" value={from.id} options={options} onChange={(v) => go(v, to.id)} />
          <Choice label="Is" value={to.id} options={options} onChange={(v) => go(from.id, v)} />
        </div>
        <p className="measure">
          {to.reason === '' ? 'No reason was given.' : `Version ${to.number} because: ${to.reason}`}
        </p>
      </header>
      <section className="stack" aria-labelledby="changed">
        <h2 id="changed">What was changed</h2>
        {touched.length === 0 ? (
          <p>Nothing: the two methods say the same.</p>
        ) : (
          <ol className="compare-steps">
            {touched.map((c) => (
              <li key={c.how === 'kept' ? c.after.id : `${c.how} ${c.step.id}`}>
                <Changed change={c} />
              </li>
            ))}
          </ol>
        )}
      </section>
      <PlainEffects kitchen={kitchen} dish={dish} from={from} to={to} />
      <CookEffects kitchen={kitchen} from={from} to={to} />
      <Caution place={kitchen.place}>
        <p>
          Both are predicted as they are written, by the engine of today; a signed version keeps what was said
          then.
        </p>
      </Caution>
    </article>
  );
}

/** One step that is not as it was. */
function Changed({ change }: { readonly change: StepChange }) {
  if (change.how !== 'kept')
    return (
      <h3>
        {change.step.name} <span className="quiet">({change.how})</span>
      </h3>
    );
  const { after, moved, changes } = change;
  return (
    <>
      <h3>
        {after.name} {moved ? <span className="quiet">(moved)</span> : null}
      </h3>
      {changes.length === 0 ? null : (
        <ScrollAcross label={`Changes of ${after.name}`}>
          <table>
            <caption className="unseen">Changes of {after.name}</caption>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">was</th>
                <th scope="col">is</th>
              </tr>
            </thead>
            <tbody>
              {changes.map((f, i) => (
                <tr key={`${f.of.join(' ')} ${f.field} ${i}`}>
                  <th scope="row">{[...f.of, f.field].join(', ')}</th>
                  <td>{f.before ?? 'not there'}</td>
                  <td>{f.after ?? 'not there'}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollAcross>
      )}
    </>
  );
}
