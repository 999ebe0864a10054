import { Link } from 'wouter';
import type { BreakdownSummary } from '../../../../contract/breakdown.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { EmptyPlace } from '../../../parts/empty-place.tsx';
import { moment } from '../../../parts/moment.ts';
import { Problem } from '../../../parts/problem.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { WaitingBar } from '../../line/waiting-bar.tsx';
import './breakdown.css';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';

/** Every breakdown, the open ones first. */
export function Breakdowns() {
  const kitchen = useKitchen();
  const list = useOperation('breakdowns', { params: { kitchenId: kitchen.id } });
  if (list.data === undefined)
    return list.error === null ? (
      <p className="quiet">Reading the breakdowns…</p>
    ) : (
      <Problem error={list.error} retry={() => list.refetch()} />
    );
  const start = (
    <Link className="button button-strong" href={at.startBreakdown(kitchen.id)}>
      Cut up animals
    </Link>
  );
  const past = (
    <Link className="button" href={at.importBreakdowns(kitchen.id)}>
      Bring in past breakdowns
    </Link>
  );
  const open = list.data.filter((b) => b.status === 'open');
  const done = list.data.filter((b) => b.status !== 'open');
  return (
    <div className="stack-wide">
      {list.data.length === 0 ? (
        <EmptyPlace
          title="What an animal is cut into, by weight"
          action={
            <>
              {start}
              {past}
            </>
          }
        >
          <p>
            Weigh what goes on the table and every part that comes off it. What is missing is shown; what was
            paid is carried to the parts; the parts become lots that can be followed back to the animal.
          </p>
        </EmptyPlace>
      ) : (
        <div className="row">
          {start}
          {past}
        </div>
      )}
      <WaitingBar />
      {open.length === 0 ? null : <List title="On the table" breakdowns={open} />}
      {done.length === 0 ? null : <List title="Done" breakdowns={done} />}
    </div>
  );
}

function List({
  title,
  breakdowns,
}: {
  readonly title: string;
  readonly breakdowns: readonly BreakdownSummary[];
}) {
  const kitchen = useKitchen();
  return (
    <section className="stack">
      <h2>{title}</h2>
      <ScrollAcross label="Table: breakdowns">
        <table className="animals-wide">
          <thead>
            <tr>
              <th scope="col">Animals</th>
              <th scope="col">Begun</th>
              <th scope="col">Cut by</th>
              <th scope="col" className="number">
                In
              </th>
              <th scope="col" className="number">
                Used
              </th>
              <th scope="col" className="number">
                Missing
              </th>
              <th scope="col">State</th>
            </tr>
          </thead>
          <tbody>
            {breakdowns.map((b) => (
              <tr key={b.id}>
                <th scope="row">
                  <Link href={at.breakdown(kitchen.id, b.id)}>
                    {b.animals} × {b.species}
                  </Link>
                  {b.supplierName === null ? null : <span className="quiet small"> {b.supplierName}</span>}
                </th>
                <td>{moment(b.startedAt, kitchen.zone)}</td>
                <td>{b.origin === 'imported' ? <span className="quiet">not known</span> : b.cutter}</td>
                <td className="number">
                  {b.inGrams === 0 ? '' : formatQuantity(b.inGrams, 'mass', kitchen.units)}
                </td>
                <td className="number">{b.usedPct === null ? '' : `${plainNumber(b.usedPct, 1)} %`}</td>
                <td className="number">
                  {b.unaccountedPct === null ? '' : `${plainNumber(b.unaccountedPct, 1)} %`}
                </td>
                <td>
                  {b.status === 'open' ? (
                    <Verdict state="not yet" word="open" />
                  ) : b.status === 'finished' ? (
                    <Verdict state="holds" word={b.origin === 'imported' ? 'brought in' : 'finished'} />
                  ) : (
                    <Verdict state="neutral" word="given up" />
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollAcross>
    </section>
  );
}
