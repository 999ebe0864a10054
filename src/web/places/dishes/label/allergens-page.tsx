import { useMemo } from 'react';
import { Link } from 'wouter';
import { type MatrixRow, matrixColumns, matrixRow } from '../../../../contract/allergen-matrix.ts';
import { deference } from '../../../../documents/cautions.ts';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { EmptyPlace } from '../../../parts/empty-place.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import './allergens.css';

/** Dishes against the allergens of the place: words in every cell, the way each comes in, what is still to be asked. */
export function AllergensPage() {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id };
  const dishes = useOperation('dishes', { params });
  const numbers = useOperation('dishNumbers', { params });
  const pantry = useOperation('pantry', { params });
  const rows = useMemo(() => {
    const held = pantry.data;
    if (dishes.data === undefined || numbers.data === undefined || held === undefined) return null;
    const of = new Map(numbers.data.map((n) => [n.dishId, n]));
    return dishes.data
      .filter((d) => d.stage !== 'retired')
      .map((d) => matrixRow(d, of.get(d.id), held, kitchen.place));
  }, [dishes.data, numbers.data, pantry.data, kitchen.place]);
  const error = dishes.error ?? numbers.error ?? pantry.error;
  const columns = matrixColumns(kitchen.place);
  const caution = (
    <>
      {pantry.data?.day}. Not known is never none: ask before you serve. Read from what is weighed into a mix
      or trimmed; what is brushed on, coated with, fried in or served beside it counts only where it is a
      line. Look at every label; equipment and hands may add others. {deference(kitchen.place)}
    </>
  );
  return (
    <article className="page stack-wide allergens">
      <header className="stack">
        <p className="not-on-paper">
          <Link href={at.place(kitchen.id, 'dishes')}>Dishes</Link>
        </p>
        <h1>Allergens</h1>
        <p className="quiet">
          {kitchen.name}
          {pantry.data === undefined ? '' : `; as the pantry stands on ${pantry.data.day}`}
        </p>
      </header>
      {error === null ? null : (
        <Problem
          error={error}
          retry={() => {
            void dishes.refetch();
            void numbers.refetch();
            void pantry.refetch();
          }}
        />
      )}
      {rows === null && error === null ? <p className="quiet">Reading the dishes…</p> : null}
      {rows?.length === 0 ? (
        <EmptyPlace
          title="There is no dish yet"
          action={
            <Link className="button button-strong" href={at.newDish(kitchen.id)}>
              Add a dish
            </Link>
          }
        >
          <p>
            Each dish has a line here once it has a method; what is weighed in says which allergens it holds.
          </p>
        </EmptyPlace>
      ) : null}
      {rows === null || rows.length === 0 ? null : (
        <>
          <p className="measure not-on-paper">{caution}</p>
          <p className="not-on-paper">
            <button type="button" className="button" onClick={() => window.print()}>
              Print for the pass
            </button>
          </p>
          <ScrollAcross label="Dishes and allergens">
            <table>
              <thead>
                <tr>
                  <th scope="col">Dish</th>
                  {columns.map((c) => (
                    <th scope="col" key={c}>
                      {c}
                    </th>
                  ))}
                </tr>
              </thead>
              <tfoot>
                <tr>
                  <td colSpan={columns.length + 1}>{caution}</td>
                </tr>
              </tfoot>
              <tbody>
                {rows.map((row) => (
                  <tr key={row.dishId}>
                    <th scope="row">
                      <Link href={at.dish(kitchen.id, row.dishId)}>{row.name}</Link>
                      <span className="quiet allergens-version">{versionWords(row)}</span>
                    </th>
                    {row.cells.map((cell) => (
                      <td key={cell.column} data-word={cell.word}>
                        {cell.word}
                      </td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </ScrollAcross>
          <Ways rows={rows} />
        </>
      )}
    </article>
  );
}

const versionWords = ({ number, signed }: MatrixRow) =>
  number === null ? 'no version' : `version ${number}, ${signed ? 'signed' : 'a draft'}`;

/** By which way each comes in, dish by dish. */
function Ways({ rows }: { readonly rows: readonly MatrixRow[] }) {
  return (
    <section className="stack not-on-paper" aria-labelledby="ways">
      <h2 id="ways">The way it comes in</h2>
      {rows.map((row) => {
        const there = row.cells.filter((c) => c.word !== 'no' && c.word !== 'not known');
        return (
          <details key={row.dishId}>
            <summary>
              {row.name}
              {row.ask.length === 0 ? '' : `: ${row.ask.length} to ask`}
            </summary>
            {row.ask.length === 0 ? null : (
              <>
                <p>
                  <strong>To ask, before anything is said of this dish:</strong>
                </p>
                <ul>
                  {row.ask.map((a) => (
                    <li key={a}>{a}</li>
                  ))}
                </ul>
              </>
            )}
            {there.length === 0 ? (
              <p>
                {row.ask.length === 0
                  ? 'Nothing that was read holds any of them.'
                  : 'Nothing else was found.'}
              </p>
            ) : (
              <ul>
                {there.map((c) => (
                  <li key={c.column}>
                    <strong>{c.column}</strong>, {c.word}: {c.why.join('; ')}
                  </li>
                ))}
              </ul>
            )}
          </details>
        );
      })}
    </section>
  );
}
