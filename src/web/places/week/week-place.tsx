import { Link } from 'wouter';
import { at } from '../../addresses.ts';
import { useKitchen } from '../../kitchen.tsx';

/** Week: said plainly for what it is, until it is here. */
export function WeekPlace() {
  const { id } = useKitchen();
  return (
    <div className="page stack-wide">
      <h1>Week</h1>
      <section className="stack measure">
        <p className="lead">
          The week begins with the covers: so many portions of each dish, on each day. From them this place
          will say how many animals to buy, from whom and for which day, so that every part finds a use before
          its life runs out; and then the prep, counted backwards from service.
        </p>
        <p>
          It is not built yet. Nothing here is planned for you, and nothing you do elsewhere depends on it.
        </p>
      </section>
      <section className="stack measure">
        <h2>Meanwhile</h2>
        <ul>
          <li>
            <Link href={at.animals(id, 'parts')}>Parts</Link> shows how much of each animal is on the menu,
            how much goes into stock and how much is thrown away.
          </li>
          <li>
            <Link href={at.shelf(id)}>The shelf</Link> lists what is in the house and when it came.
          </li>
          <li>
            Each <Link href={at.place(id, 'dishes')}>dish</Link> shows the hours of its method and the minutes
            of hands in it: count them back from service by hand.
          </li>
          <li>
            <Link href={at.place(id, 'line')}>Line</Link> holds today’s batches.
          </li>
        </ul>
      </section>
    </div>
  );
}
