import { Link } from 'wouter';
import type { DishCostLine, DishPrice } from '../../../../contract/dish-price.ts';
import type { Dish, Kitchen } from '../../../../contract/records.ts';
import { animalOf } from '../../../../contract/tree-edit.ts';
import type { CarcassBar } from '../../../../contract/yields.ts';
import { plainNumber } from '../../../../core/units.ts';
import { at } from '../../../addresses.ts';
import { money } from '../../../parts/money.ts';

/** What this part carries of its animal's price, of finished breakdowns; null where none says. */
export function moneyShareOf(
  bars: readonly CarcassBar[],
  dish: Pick<Dish, 'species'>,
  part: string,
): number | null {
  const bar = bars.find((b) => animalOf(b.species) === animalOf(dish.species));
  const found = bar?.parts.filter((p) => p.name.toLowerCase() === part.toLowerCase()) ?? [];
  const pct = found.reduce((sum, p) => sum + (p.moneyPct ?? 0), 0);
  return pct > 0 ? pct / 100 : null;
}

/** A dish of one part is a promise to sell the others: how much they must bring in. */
export function RestOfAnimal({
  kitchen,
  dish,
  price,
  part,
  bars,
  marginPct,
}: {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly price: DishPrice;
  readonly part: DishCostLine;
  readonly bars: readonly CarcassBar[];
  readonly marginPct: number | null;
}) {
  const share = moneyShareOf(bars, dish, part.name);
  const carried = part.cost?.usual ?? 0;
  const say = (x: number) => money(Math.round(x), kitchen.currency);
  if (share === null || carried === 0)
    return (
      <p className="measure">
        What the rest of the animal must earn is not known: no finished breakdown says what share of the price{' '}
        {part.name} carries. <Link href={at.breakdowns(kitchen.id)}>Breakdowns</Link>
      </p>
    );
  const paid = carried / share;
  const rest = marginPct === null ? null : price.rest(paid, carried / (1 - Math.min(0.99, marginPct / 100)));
  return (
    <p className="measure">
      {part.name} of this batch carries {say(carried)}, {plainNumber(share * 100, 1)} % of what its animals
      cost. The other parts of them carry {say(paid - carried)}
      {rest === null || marginPct === null ? (
        ''
      ) : (
        <>
          {' '}
          and must bring in <strong>{say(rest)}</strong> without tax to leave {plainNumber(marginPct, 0)} %
          after food
        </>
      )}
      .
    </p>
  );
}
