import { Link } from 'wouter';
import type { Breakdown, NodeOutcome } from '../../../../contract/breakdown.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import {
  type BalancePiece,
  balanceBarScene,
  balanceKindOf,
} from '../../../../documents/pictures/balance-bar.ts';
import { at } from '../../../addresses.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { moment } from '../../../parts/moment.ts';
import { money } from '../../../parts/money.ts';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import { dayText } from '../shelf/civil.ts';
import { BreakdownHead } from './breakdown-head.tsx';

const ruleWords = {
  weight: 'by weight',
  value: 'by what each part is worth',
  shares: 'by the kitchen’s own shares',
} as const;

/** What a part carries, and a kilogram of it; nothing for what carries none. */
function costOf({ becomes, cost, grams }: NodeOutcome, currency: string): string {
  const carries = becomes === 'part' || becomes === 'step' || becomes === 'sold';
  if (!carries || cost === null) return '';
  const perKg = grams > 0 ? ` (${money(Math.round((cost * 1000) / grams), currency)}/kg)` : '';
  return `${money(cost, currency)}${perKg}`;
}

/** A breakdown as it was finished or given up: what went in, what came out, which lots it made. */
export function DoneBreakdown({ breakdown }: { readonly breakdown: Breakdown }) {
  const kitchen = useKitchen();
  const [ref, width] = useWidth<HTMLDivElement>();
  const { standing, made } = breakdown;
  const mass = (grams: number) => formatQuantity(grams, 'mass', kitchen.units);
  const lotOf = new Map(made.map((m) => [m.lotId, m]));
  const pieces = standing.nodes.flatMap((n): BalancePiece[] => {
    const kind = balanceKindOf(n.becomes);
    return kind === null ? [] : [{ kind, grams: n.grams }];
  });
  const given = breakdown.status === 'given up';
  return (
    <div className="stack-wide" ref={ref}>
      <BreakdownHead breakdown={breakdown} />
      <p className="lead">
        {given ? 'Given up' : 'Finished'}
        {breakdown.finishedAt === null ? '' : ` ${moment(breakdown.finishedAt, kitchen.zone)}`}
        {given ? '. No lot was drawn and none was made.' : `. Cost carried ${ruleWords[standing.costBy]}.`}
        {breakdown.note === '' ? null : <> “{breakdown.note}”</>}
      </p>
      {width === 0 || standing.inGrams === 0 ? null : (
        <Figure
          scene={balanceBarScene(
            standing.inGrams,
            [...pieces, { kind: 'unaccounted', grams: Math.max(0, standing.unaccountedGrams) }],
            { width, units: kitchen.units },
          )}
          caption={`${mass(standing.inGrams)} went in; ${plainNumber(standing.usedPct, 1)} % of it is used; ${mass(standing.unaccountedGrams)} is in none of the parts.`}
        />
      )}
      <ScrollAcross label="Table: what came out">
        <table className="animals-wide">
          <caption>What came out</caption>
          <thead>
            <tr>
              <th scope="col">Part</th>
              <th scope="col" className="number">
                Weight
              </th>
              <th scope="col" className="number">
                Of the whole
              </th>
              <th scope="col" className="number">
                Cost
              </th>
              <th scope="col">Lot and last day</th>
            </tr>
          </thead>
          <tbody>
            {standing.nodes.map((n) => {
              const lot = n.lotId === null ? undefined : lotOf.get(n.lotId);
              return (
                <tr key={n.node}>
                  <th scope="row">{n.name}</th>
                  <td className="number">{n.weighed ? mass(n.grams) : 'not weighed'}</td>
                  <td className="number">{n.weighed ? `${plainNumber(n.pct, 1)} %` : ''}</td>
                  <td className="number">{given ? '' : costOf(n, kitchen.currency)}</td>
                  <td>
                    {lot === undefined ? (
                      <span className="quiet">{n.becomes === 'step' ? 'cut further' : n.becomes}</span>
                    ) : (
                      <>
                        {lot.code}
                        {lot.useBy === null ? ', last day not known' : `, until ${dayText(lot.useBy)}`}
                      </>
                    )}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </ScrollAcross>
      {standing.warnings.length === 0 ? null : (
        <ul>
          {standing.warnings.map((w) => (
            <li key={w}>{w}</li>
          ))}
        </ul>
      )}
      <Caution place={kitchen.place}>
        <p>
          A last day here is the earliest of the animal’s own and of what the kitchen says the part keeps.
        </p>
      </Caution>
      <div className="row">
        <Link className="button" href={at.breakdowns(kitchen.id)}>
          All breakdowns
        </Link>
        <Link className="button" href={at.animals(kitchen.id, 'yields')}>
          What it yields
        </Link>
      </div>
    </div>
  );
}
