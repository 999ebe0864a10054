import { useState } from 'react';
import { Link } from 'wouter';
import type { DishCostLine, DishPrice } from '../../../../contract/dish-price.ts';
import type { DishWeights } from '../../../../contract/method-weights.ts';
import type { KitchenRates } from '../../../../contract/rates.ts';
import type { Dish, Kitchen } from '../../../../contract/records.ts';
import type { CarcassBar } from '../../../../contract/yields.ts';
import type { CostKind } from '../../../../core/filling/price.ts';
import { plainNumber } from '../../../../core/units.ts';
import { at } from '../../../addresses.ts';
import { money } from '../../../parts/money.ts';
import { NumberField } from '../../../parts/number-field.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { kindWords, moneySpread } from './price-words.ts';
import { RestOfAnimal } from './rest-of-animal.tsx';

export interface PriceAnswerProps {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly weights: DishWeights;
  readonly price: DishPrice | null;
  readonly costs: readonly DishCostLine[];
  readonly rates: KitchenRates | null;
  readonly bars: readonly CarcassBar[];
  readonly dearer: number;
  readonly onDearer: (pct: number) => void;
}

/** A portion with everything on it [minor units]. */
const allOf = (price: DishPrice) => price.perPortion.usual;
const pct = (x: number) => `${plainNumber(x * 100, 0)} %`;

/** What a portion costs, and the prices that follow: the answer first, the lines below it. */
export function PriceAnswer(props: PriceAnswerProps) {
  const { kitchen, price, rates } = props;
  if (price === null)
    return (
      <Verdict state="unknown" word="A portion has no price yet">
        <p>
          The method does not say what a portion is. Add a plate step with its weight and how many come of a
          piece.
        </p>
      </Verdict>
    );
  return (
    <section className="stack" aria-labelledby="portion">
      <h2 id="portion">A portion</h2>
      <p>
        <strong className="price-number">
          {money(Math.round(price.perPortion.usual), kitchen.currency)}
        </strong>{' '}
        {price.missing.length === 0 ? 'it costs' : 'at least'}
        {price.perPortion.high - price.perPortion.low < 1
          ? ''
          : `, between ${money(Math.round(price.perPortion.low), kitchen.currency)} and ${money(Math.round(price.perPortion.high), kitchen.currency)}`}
        .
      </p>
      <KindBar byKind={price.byKind} currency={kitchen.currency} />
      {price.missing.length === 0 ? null : (
        <Verdict state="unknown" word="Not all of it is known">
          <p>
            Nobody has said what {price.missing.join(', ')} {price.missing.length === 1 ? 'costs' : 'cost'}:
            the true cost is higher.
          </p>
        </Verdict>
      )}
      {rates === null ? (
        <p>
          <Link className="button button-strong" href={at.rates(kitchen.id)}>
            Enter what hands, energy and tax come to
          </Link>
        </p>
      ) : (
        <Prices {...props} price={price} rates={rates} />
      )}
    </section>
  );
}

const inks: Readonly<Record<CostKind, string>> = {
  part: 'var(--oxblood)',
  ingredient: 'var(--herb)',
  hands: 'var(--slate)',
  energy: 'var(--ember)',
  packaging: 'var(--faded)',
  overhead: 'var(--ink)',
};

/** One bar, as long as the cost of a portion, each kind as long as its share; the words carry the figures. */
function KindBar({ byKind, currency }: { readonly byKind: DishPrice['byKind']; readonly currency: string }) {
  const kinds = (Object.keys(byKind) as CostKind[]).filter((k) => byKind[k] > 0);
  const total = kinds.reduce((sum, k) => sum + byKind[k], 0);
  if (total === 0) return null;
  return (
    <div className="price-kinds">
      <div className="price-bar" aria-hidden="true">
        {kinds.map((k) => (
          <span key={k} style={{ flexGrow: byKind[k] / total, background: inks[k] }} />
        ))}
      </div>
      <ul>
        {kinds.map((k) => (
          <li key={k}>
            <span className="price-dot" style={{ background: inks[k] }} aria-hidden="true" />
            {kindWords[k]}: {money(Math.round(byKind[k]), currency)} ({pct(byKind[k] / total)})
          </li>
        ))}
      </ul>
    </div>
  );
}

function Prices({
  kitchen,
  dish,
  bars,
  price,
  rates,
  costs,
  dearer,
  onDearer,
}: PriceAnswerProps & { readonly price: DishPrice; readonly rates: KitchenRates }) {
  const [asked, setAsked] = useState<number | null>(null);
  const named = asked ?? price.wanted?.price ?? null;
  const at1 = named === null ? null : price.at(named);
  const part = costs.find((l) => l.kind === 'part' && l.cost !== null);
  const tax = rates.vatPct === null ? null : rates.pricesIncludeVat ? 'with tax' : 'before tax';
  return (
    <>
      {price.wanted === null ? (
        <Verdict state="unknown" word="No menu price can be named">
          <p>
            {rates.vatPct === null
              ? 'The rates do not say what tax is on food served here. '
              : rates.marginPct === null
                ? 'The rates do not say what margin is wanted. '
                : 'A cost is not known, and what is not known is not nothing. '}
            <Link href={at.rates(kitchen.id)}>Open the rates</Link>
          </p>
        </Verdict>
      ) : (
        <p className="measure">
          For {plainNumber(rates.marginPct ?? 0, 0)} % after {rates.marginAfter}:{' '}
          <strong>
            {money(price.wanted.price, kitchen.currency)} on the menu ({tax})
          </strong>
          , which leaves {pct(price.wanted.margin)}
          {rates.servicePct === null ? '' : `; service of ${plainNumber(rates.servicePct, 1)} % comes on top`}
          .
        </p>
      )}
      <div className="fields">
        <NumberField
          label={`At a price of (${tax ?? 'tax not entered'})`}
          unit={kitchen.currency}
          value={named === null ? null : named / 100}
          low={0.01}
          high={10_000}
          optional
          onChange={(v) => setAsked(v === null ? null : Math.round(v * 100))}
        />
        {part === undefined ? null : (
          <label className="price-slider">
            <span>
              If {part.name} cost {dearer === 100 ? 'what it does' : `${dearer} % of what it does`}
            </span>
            <input
              type="range"
              min={0}
              max={300}
              step={5}
              value={dearer}
              aria-label={`Price of ${part.name}, % of today’s`}
              onChange={(e) => onDearer(Number(e.target.value))}
            />
          </label>
        )}
      </div>
      {at1 === null || named === null ? null : (
        <p className="measure" aria-live="polite">
          At {money(named, kitchen.currency)} a portion leaves <strong>{pct(at1.margin)}</strong> of{' '}
          {money(Math.round(at1.net), kitchen.currency)} without tax, after {rates.marginAfter}.{' '}
          {rates.fixedPerService === null
            ? ''
            : at1.breakEven === null
              ? 'No number of portions pays for a service at that price.'
              : `${at1.breakEven} portions pay for a service’s fixed costs.`}
        </p>
      )}
      {at1 !== null && named !== null && at1.net < allOf(price) ? (
        <Verdict state="does not hold" word="It costs more than it brings">
          <p>
            With hands, energy and overheads a portion at {money(named, kitchen.currency)} loses{' '}
            {money(Math.round(allOf(price) - at1.net), kitchen.currency)}.
          </p>
        </Verdict>
      ) : null}
      {price.sensitive.length === 0 ? null : (
        <div>
          <h3>What a tenth more on each does to a portion</h3>
          <ul className="measure">
            {price.sensitive.slice(0, 4).map((s) => (
              <li key={s.name}>
                {s.name}: {money(Math.round(s.tenthMore), kitchen.currency)} ({pct(s.shareOfCost)} of the
                cost)
              </li>
            ))}
          </ul>
        </div>
      )}
      {part === undefined ? null : (
        <RestOfAnimal
          kitchen={kitchen}
          dish={dish}
          price={price}
          part={part}
          bars={bars}
          marginPct={rates.marginPct}
        />
      )}
      <p className="small quiet">The batch as written costs {moneySpread(price.total, kitchen.currency)}.</p>
    </>
  );
}
