import { Link } from 'wouter';
import type { DishCostLine } from '../../../../contract/dish-price.ts';
import type { Dish, Kitchen } from '../../../../contract/records.ts';
import type { Spread } from '../../../../core/method/weights.ts';
import { at } from '../../../addresses.ts';
import { money } from '../../../parts/money.ts';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import { kindWords, moneySpread } from './price-words.ts';

/** Every line of cost of the batch as written, the dearest first within its kind. */
export function CostTable({
  kitchen,
  dish,
  costs,
  portions,
}: {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly costs: readonly DishCostLine[];
  readonly portions: Spread | null;
}) {
  if (costs.length === 0) return null;
  const each = (usual: number) =>
    portions === null || portions.usual === 0
      ? ''
      : money(Math.round(usual / portions.usual), kitchen.currency);
  const sorted = [...costs].sort((a, b) => (b.cost?.usual ?? Infinity) - (a.cost?.usual ?? Infinity));
  return (
    <section className="stack" aria-labelledby="costs">
      <h2 id="costs">What the batch costs</h2>
      <ScrollAcross label="Costs of the batch">
        <table>
          <caption className="unseen">Costs of the batch</caption>
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col">Kind</th>
              <th scope="col" className="number">
                batch
              </th>
              <th scope="col" className="number">
                portion
              </th>
              <th scope="col">how it is had</th>
            </tr>
          </thead>
          <tbody>
            {sorted.map((l, i) => (
              <tr key={`${l.stepId} ${l.name} ${i}`}>
                <th scope="row">
                  <Link href={at.step(kitchen.id, dish.id, l.stepId)}>{l.name}</Link>
                </th>
                <td>{kindWords[l.kind]}</td>
                <td className="number">
                  {l.cost === null ? 'not known' : moneySpread(l.cost, kitchen.currency)}
                </td>
                <td className="number">{l.cost === null ? '' : each(l.cost.usual)}</td>
                <td className="small">{l.why}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollAcross>
      <p className="small quiet measure">
        Hands are taken to vary from 15 % under to 25 % over, energy from 30 % under to 60 % over: assumed, no
        source. Salt of cures, water and what is carried from earlier steps are not counted again.
      </p>
    </section>
  );
}
