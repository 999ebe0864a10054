import type { YieldsAnswer } from '../../../../contract/yields.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { shareDotsScene } from '../../../../documents/pictures/share-dots.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { moment } from '../../../parts/moment.ts';
import { money } from '../../../parts/money.ts';
import { useWidth } from '../../../pictures/use-width.ts';

/** How much of the animal is used, breakdown by breakdown. */
export function UsedOverTime({ answer }: { readonly answer: YieldsAnswer }) {
  const kitchen = useKitchen();
  const [ref, width] = useWidth<HTMLElement>();
  const { used } = answer;
  const first = used[0];
  const last = used.at(-1);
  if (first === undefined || last === undefined) return null;
  const day = (instant: string) =>
    new Intl.DateTimeFormat('en-GB', {
      timeZone: kitchen.zone,
      day: 'numeric',
      month: 'short',
      year: 'numeric',
    }).format(new Date(instant));
  return (
    <section className="stack" ref={ref}>
      <h2>How much is used</h2>
      <p>
        {plainNumber(last.usedPct, 1)} % of the last one
        {used.length > 1 ? `, ${plainNumber(first.usedPct, 1)} % of the first` : ''}.
      </p>
      {width === 0 || used.length < 2 ? null : (
        <Figure
          scene={shareDotsScene(
            used.map((u) => ({
              x: Date.parse(u.at),
              pct: u.usedPct,
              series: '',
              what: moment(u.at, kitchen.zone),
            })),
            {
              width,
              title: 'Share of the animal that is used, breakdown by breakdown',
              ends: [day(first.at), day(last.at)],
              what: 'Breakdown',
              joined: used.length < 80,
            },
          )}
          caption="In per cent of what went on the table: parts on the menu, in stock or sold."
        />
      )}
    </section>
  );
}

/** Weight, money and greenhouse gas of what is no dressed meat and was used all the same. */
export function KeptFromBin({ answer }: { readonly answer: YieldsAnswer }) {
  const kitchen = useKitchen();
  const { kept } = answer;
  return (
    <section className="stack">
      <h2>Kept from the bin</h2>
      <p>
        <span className="big-number">{formatQuantity(kept.kg * 1_000, 'mass', kitchen.units)}</span>
      </p>
      <p>
        of head, neck, feet, tail, skin, offal, blood, fat and bone that were used
        {kept.parts.length === 0 ? '' : `: ${kept.parts.join(', ')}`}.
      </p>
      <p>
        {kept.worth === null
          ? 'What they are worth nobody has said: set what a kilogram fetches in Parts.'
          : `Worth ${money(kept.worth, kitchen.currency)} at the prices set in Parts.`}
        {kept.worth !== null && kept.unpriced.length > 0
          ? ` Without a price and not in it: ${kept.unpriced.join(', ')}.`
          : ''}
      </p>
      {kept.kgCO2e === null ? (
        <p className="quiet">No figure of greenhouse gas was published for parts of this animal.</p>
      ) : (
        <p>
          About {plainNumber(kept.kgCO2e, 0)} kg CO₂e ({plainNumber(kept.perKg ?? 0, 2)} kg a kg).{' '}
          <span className="quiet">{kept.meaning}</span>
        </p>
      )}
    </section>
  );
}
