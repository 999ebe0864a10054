import { Link } from 'wouter';
import type { DeliverySummary } from '../../../../contract/delivery.ts';
import type { Kitchen } from '../../../../contract/records.ts';
import { formatQuantity } from '../../../../core/units.ts';
import { at } from '../../../addresses.ts';
import { moment } from '../../../parts/moment.ts';
import { money } from '../../../parts/money.ts';
import { Verdict } from '../../../parts/verdict.tsx';
import { decided, pointsWords } from './delivery-words.ts';

export interface DeliveryListProps {
  readonly deliveries: readonly DeliverySummary[];
  readonly kitchen: Kitchen;
  readonly withSupplier: boolean;
}

/** Deliveries, newest first: what was decided, what was met, how warm, how much. */
export function DeliveryList({ deliveries, kitchen, withSupplier }: DeliveryListProps) {
  return (
    <ol className="supply-list">
      {deliveries.map((d) => {
        const { word, state } = decided(d);
        return (
          <li key={d.id} className="delivery-row">
            <p>
              <Link className="supply-what" href={at.delivery(kitchen.id, d.id)}>
                {withSupplier ? d.supplierName : moment(d.arrivedAt, kitchen.zone)}
              </Link>
              {withSupplier ? <span className="quiet"> {moment(d.arrivedAt, kitchen.zone)}</span> : null}
              {d.specificationName === null ? null : (
                <span className="quiet">
                  {' '}
                  {d.specificationName}, version {d.specificationNumber}
                </span>
              )}
            </p>
            <Verdict state={state} word={word}>
              <p>
                {pointsWords(d)}, {formatQuantity(d.grams, 'mass', kitchen.units)},{' '}
                {d.warmestC === null
                  ? 'temperature not measured'
                  : `warmest ${formatQuantity(d.warmestC, 'temperature', kitchen.units)}`}
                {d.cost === null ? '' : `, ${money(d.cost, kitchen.currency)}`}
              </p>
              {d.reason === '' ? undefined : <p>{d.reason}</p>}
            </Verdict>
          </li>
        );
      })}
    </ol>
  );
}
