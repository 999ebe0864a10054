import { Link } from 'wouter';
import type { Kitchen } from '../../../../contract/records.ts';
import type { Specification } from '../../../../contract/specification.ts';
import { supplierTrendScene } from '../../../../documents/pictures/supplier-trend.ts';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { dayOf } from '../../../parts/moment.ts';
import { money } from '../../../parts/money.ts';
import { Problem } from '../../../parts/problem.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import { DeliveryList } from '../deliveries/delivery-list.tsx';
import { StandingOf } from '../specification/standing.tsx';

/** One supplier: who to ring, what is asked of them, what came, and which way it goes. */
export function SupplierPage({ supplierId }: { readonly supplierId: string }) {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id };
  const suppliers = useOperation('suppliers', { params });
  const specifications = useOperation('specifications', { params });
  const deliveries = useOperation('deliveries', { params });
  if (suppliers.data === undefined)
    return suppliers.error === null ? (
      <p className="quiet">Reading the supplier…</p>
    ) : (
      <Problem error={suppliers.error} retry={() => suppliers.refetch()} />
    );
  const supplier = suppliers.data.find((s) => s.id === supplierId);
  if (supplier === undefined)
    return (
      <p>
        This kitchen has no such supplier.{' '}
        <Link href={at.animals(kitchen.id, 'suppliers')}>All suppliers</Link>
      </p>
    );
  const own = specifications.data?.filter((s) => s.supplierId === supplierId) ?? [];
  const came = deliveries.data?.filter((d) => d.supplierId === supplierId) ?? [];
  return (
    <article className="stack-wide">
      <header className="stack">
        <p className="small">
          <Link href={at.animals(kitchen.id, 'suppliers')}>All suppliers</Link>
        </p>
        <h2 className="supply-name">{supplier.name}</h2>
        {supplier.note === '' ? (
          <p className="quiet">No note: who to ring, when they kill, when they drive.</p>
        ) : (
          <p className="measure supply-note">{supplier.note}</p>
        )}
        <div className="row not-on-paper">
          <Link className="button button-strong" href={at.takeIn(kitchen.id, supplierId)}>
            Take in a delivery
          </Link>
          <Link className="button" href={at.newSpecification(kitchen.id, supplierId)}>
            Ask for something in writing
          </Link>
        </div>
      </header>
      <section className="stack" aria-labelledby="asked">
        <h2 id="asked">Asked in writing</h2>
        {specifications.data === undefined ? (
          specifications.error === null ? (
            <p className="quiet">Reading what was asked…</p>
          ) : (
            <Problem error={specifications.error} retry={() => specifications.refetch()} />
          )
        ) : own.length === 0 ? (
          <p className="measure">
            Nothing yet. Most of what is thrown away at slaughter is thrown away because nobody asked for it
            before: how it is bled, dressed, cut, cooled and packed has to be written down and agreed.
          </p>
        ) : (
          <ul className="supply-list">
            {own.map((s) => (
              <SpecificationRow key={s.id} specification={s} kitchen={kitchen} />
            ))}
          </ul>
        )}
      </section>
      <Trend supplierId={supplierId} kitchen={kitchen} />
      <section className="stack" aria-labelledby="came">
        <h2 id="came">Deliveries</h2>
        {deliveries.data === undefined ? (
          deliveries.error === null ? (
            <p className="quiet">Reading the deliveries…</p>
          ) : (
            <Problem error={deliveries.error} retry={() => deliveries.refetch()} />
          )
        ) : came.length === 0 ? (
          <p className="quiet">None among the last {deliveries.data.length} of the kitchen.</p>
        ) : (
          <DeliveryList deliveries={came} kitchen={kitchen} withSupplier={false} />
        )}
      </section>
      <Caution place={kitchen.place}>
        <p>What a supplier agreed to is not what came: look at every delivery.</p>
      </Caution>
    </article>
  );
}

function SpecificationRow({
  specification: s,
  kitchen,
}: {
  readonly specification: Specification;
  readonly kitchen: Kitchen;
}) {
  const newest = s.versions.at(-1);
  return (
    <li>
      <p>
        <Link className="supply-what" href={at.specification(kitchen.id, s.supplierId, s.id)}>
          {s.name}
        </Link>{' '}
        <span className="quiet">
          {s.species}, {newest?.content.what}
        </span>
      </p>
      <StandingOf specification={s} />
    </li>
  );
}

function Trend({ supplierId, kitchen }: { readonly supplierId: string; readonly kitchen: Kitchen }) {
  const trend = useOperation('supplierTrend', { params: { kitchenId: kitchen.id, supplierId } });
  const [ref, width] = useWidth<HTMLDivElement>();
  const rows = trend.data?.deliveries ?? [];
  return (
    <section className="stack" aria-labelledby="trend">
      <h2 id="trend">Which way it goes</h2>
      <div ref={ref}>
        {trend.data === undefined ? (
          trend.error === null ? (
            <p className="quiet">Reading what came of it…</p>
          ) : (
            <Problem error={trend.error} retry={() => trend.refetch()} />
          )
        ) : rows.length === 0 ? (
          <p className="measure quiet">
            Drawn from the first delivery on: points met, how warm it came, the price of a kilogram, and how
            much of it was used.
          </p>
        ) : width === 0 ? null : (
          <Figure
            scene={supplierTrendScene(rows, {
              width,
              units: kitchen.units,
              day: (instant) => dayOf(instant, kitchen.zone),
              money: (minor) => money(minor, kitchen.currency),
            })}
            caption="Dot: accepted. Triangle: accepted with a deviation. Cross: refused. A gap: nobody measured it. Used: of what was broken down of that delivery, weighed."
          />
        )}
      </div>
    </section>
  );
}
