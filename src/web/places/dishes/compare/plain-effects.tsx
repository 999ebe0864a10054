import { useMemo } from 'react';
import { dishCosts, dishPrice } from '../../../../contract/dish-price.ts';
import { methodWeights } from '../../../../contract/method-weights.ts';
import type { Dish, Kitchen, Version } from '../../../../contract/records.ts';
import { plainNumber } from '../../../../core/units.ts';
import { duration, weight } from '../../../../documents/format.ts';
import { useOperation } from '../../../api.ts';
import { money } from '../../../parts/money.ts';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import { pricedBy } from '../price/priced-by.ts';

export interface EffectsProps {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly from: Version;
  readonly to: Version;
}

interface Row {
  readonly what: string;
  readonly was: number | null;
  readonly is: number | null;
  readonly say: (x: number) => string;
}

/** What the changes do to hands, weights and cost, by today's prices. */
export function PlainEffects({ kitchen, dish, from, to }: EffectsProps) {
  const params = { kitchenId: kitchen.id };
  const pantry = useOperation('pantry', { params });
  const numbers = useOperation('dishNumbers', { params });
  const rows = useMemo((): Row[] => {
    const of = (version: Version) => {
      const weights = methodWeights(dish, version.method);
      const hands = version.method.reduce((sum, s) => sum + s.handsMin, 0);
      const priced =
        pantry.data === undefined || numbers.data === undefined
          ? null
          : dishPrice(
              dishCosts(
                version.method,
                weights,
                pantry.data.rates,
                pricedBy(dish.species, pantry.data, numbers.data),
              ),
              weights.portions,
              pantry.data.rates,
            );
      return { weights, hands, priced };
    };
    const a = of(from);
    const b = of(to);
    const whole = (p: typeof a.priced) => (p === null || p.missing.length > 0 ? null : p.perPortion.usual);
    const g = (kg: number) => weight(kg * 1000, kitchen.units);
    return [
      { what: 'Hands, for the batch', was: a.hands, is: b.hands, say: duration },
      {
        what: 'Portions',
        was: a.weights.portions?.usual ?? null,
        is: b.weights.portions?.usual ?? null,
        say: (x) => plainNumber(x, 1),
      },
      {
        what: 'A portion weighs',
        was: a.weights.portion?.usual ?? null,
        is: b.weights.portion?.usual ?? null,
        say: g,
      },
      {
        what: 'A portion costs',
        was: whole(a.priced),
        is: whole(b.priced),
        say: (x) => money(Math.round(x), kitchen.currency),
      },
    ];
  }, [dish, from, to, pantry.data, numbers.data, kitchen.units, kitchen.currency]);
  return (
    <section className="stack" aria-labelledby="effects">
      <h2 id="effects">What it does to time and cost</h2>
      <ScrollAcross label="Time and cost of both versions">
        <table>
          <caption className="unseen">Time and cost of both versions</caption>
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col" className="number">
                version {from.number}
              </th>
              <th scope="col" className="number">
                version {to.number}
              </th>
              <th scope="col" className="number">
                difference
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((r) => (
              <tr key={r.what}>
                <th scope="row">{r.what}</th>
                <td className="number">{r.was === null ? 'not known' : r.say(r.was)}</td>
                <td className="number">{r.is === null ? 'not known' : r.say(r.is)}</td>
                <td className="number">
                  {r.was === null || r.is === null
                    ? 'not known'
                    : r.say(r.was) === r.say(r.is)
                      ? 'none'
                      : `${r.is > r.was ? '+' : '−'}${r.say(Math.abs(r.is - r.was))}`}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollAcross>
    </section>
  );
}
