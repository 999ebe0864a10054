import { Link } from 'wouter';
import type { DishWeights } from '../../../../contract/method-weights.ts';
import type { Dish, Kitchen } from '../../../../contract/records.ts';
import { cite } from '../../../../core/sources.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { weightFallScene } from '../../../../documents/pictures/weight-fall.ts';
import { at } from '../../../addresses.ts';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import { SceneView } from '../../../pictures/SceneView.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import { lossWords, spreadWords } from './price-words.ts';

export interface WeightTableProps {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly weights: DishWeights;
}

/** What goes into each step and comes out, what it loses and on what that rests. */
export function WeightTable({ kitchen, dish, weights }: WeightTableProps) {
  const [box, width] = useWidth<HTMLDivElement>();
  const mass = (kg: number) => formatQuantity(kg * 1000, 'mass', kitchen.units);
  const columns = weights.losses
    .filter((l) => l.out.high > 0)
    .map((l) => ({
      name: l.name,
      low: l.out.low,
      usual: l.out.usual,
      high: l.out.high,
      known: l.known,
    }));
  const unknown = weights.losses.filter((l) => l.loss === null);
  return (
    <section className="stack" aria-labelledby="weights">
      <h2 id="weights">From the part to the plate</h2>
      <p className="measure">
        {weights.pieces === null ? '' : `${weights.pieces} pieces. `}
        {weights.portions === null
          ? ''
          : `${spreadWords(weights.portions, (x) => plainNumber(x, x < 20 ? 1 : 0))} portions`}
        {weights.portion === null ? '' : ` of ${spreadWords(weights.portion, mass)}`}
        {weights.portions === null ? '' : '.'}
      </p>
      {unknown.length === 0 ? null : (
        <p className="measure">
          <strong>Too much from here on:</strong> what {unknown.map((l) => l.name).join(', ')}{' '}
          {unknown.length === 1 ? 'loses is' : 'lose is'} not known and is taken for nothing. Weigh it in and
          out once, and enter the loss on the step.
        </p>
      )}
      {weights.remarks.length === 0 ? null : (
        <ul className="measure">
          {weights.remarks.map((r) => (
            <li key={r}>{r}</li>
          ))}
        </ul>
      )}
      <div ref={box} className="price-picture">
        {columns.length === 0 || width < 480 ? null : (
          <SceneView scene={weightFallScene(columns, { width, units: kitchen.units })} table="none" />
        )}
      </div>
      <ScrollAcross label="Weights by step">
        <table>
          <caption className="unseen">Weights by step</caption>
          <thead>
            <tr>
              <th scope="col">Step</th>
              <th scope="col" className="number">
                comes out
              </th>
              <th scope="col">takes</th>
              <th scope="col">on what it rests</th>
            </tr>
          </thead>
          <tbody>
            {weights.losses.map((l) => (
              <tr key={l.stepId}>
                <th scope="row">
                  <Link href={at.step(kitchen.id, dish.id, l.stepId)}>{l.name}</Link>
                </th>
                <td className="number">
                  {l.known ? '' : 'at most '}
                  {spreadWords(l.out, mass)}
                </td>
                <td>{lossWords(l.loss)}</td>
                <td className="small">
                  {l.why}
                  {l.basis.source === 'common-practice' || l.basis.source === 'user-input'
                    ? ''
                    : ` (${cite(l.basis.source)})`}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollAcross>
    </section>
  );
}
