import type { Breakdown } from '../../../../contract/breakdown.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { moment } from '../../../parts/moment.ts';

/** Which animals, of whom, cut by whom, since when. */
export function BreakdownHead({ breakdown }: { readonly breakdown: Breakdown }) {
  const kitchen = useKitchen();
  return (
    <div className="cutting-head">
      <h2>
        {breakdown.animals} × {breakdown.species}
      </h2>
      <p className="quiet">
        {breakdown.lots.map((l) => l.code).join(', ')}
        {breakdown.supplierName === null ? '' : ` from ${breakdown.supplierName}`}
        {breakdown.origin === 'imported' ? ' brought in' : ` · cut by ${breakdown.cutter}`} ·{' '}
        {breakdown.origin === 'imported' ? 'of' : 'begun'} {moment(breakdown.startedAt, kitchen.zone)}
      </p>
    </div>
  );
}
