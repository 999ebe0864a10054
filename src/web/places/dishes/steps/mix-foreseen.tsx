/** What a mix comes to, by the pantry as it stands today: live, with what nobody has said named. */
import { useMemo } from 'react';
import { bindRanges } from '../../../../contract/make-it-question.ts';
import type { StepOf } from '../../../../contract/steps.ts';
import { routeWords } from '../../../../core/filling/allergens.ts';
import { alcoholBasis } from '../../../../core/filling/evaporation.ts';
import type { Nutrient } from '../../../../core/filling/food.ts';
import { energyBasis, type Figure, type Nutrition } from '../../../../core/filling/nutrition.ts';
import { cite } from '../../../../core/sources.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { useOperation } from '../../../api.ts';
import { money } from '../../../parts/money.ts';
import { Problem } from '../../../parts/problem.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { Foreseen } from './foreseen.tsx';
import { itemsFor, type MixReckoned, mixReckoned } from './mix-reckoned.ts';
import type { StepForm } from './step-form.ts';
import { useTable } from './use-table.ts';
import './mix.css';

export function MixForeseen({ kitchen, step }: StepForm<StepOf<'mix'>>) {
  const pantry = useOperation('pantry', { params: { kitchenId: kitchen.id } });
  const table = useTable();
  const items = useMemo(
    () => (pantry.data === undefined || table === null ? null : itemsFor(pantry.data, table)),
    [pantry.data, table],
  );
  const { name, lines } = step;
  const got = useMemo((): MixReckoned | string | null => {
    if (pantry.data === undefined || items === null || table === null) return null;
    try {
      return mixReckoned({ name, lines }, pantry.data, items, table);
    } catch (error) {
      if (error instanceof Error) return error.message;
      throw error;
    }
  }, [pantry.data, items, table, name, lines]);
  if (lines.every((l) => l.g === 0))
    return (
      <Foreseen>
        <p className="quiet">Weigh in the first line to see what the filling is made of and what it costs.</p>
      </Foreseen>
    );
  return (
    <Foreseen>
      {pantry.error === null ? null : <Problem error={pantry.error} retry={() => pantry.refetch()} />}
      {got === null ? (
        pantry.error === null ? (
          <p className="quiet">Reading the pantry…</p>
        ) : null
      ) : typeof got === 'string' ? (
        <Verdict state="unknown" word="It cannot be reckoned">
          <p>{got}</p>
        </Verdict>
      ) : (
        <>
          <Made got={got} grams={got.outcome.mass * 1000} units={kitchen.units} />
          <Cost got={got} currency={kitchen.currency} />
          <Allergens got={got} />
          <p className="small quiet">
            Never warmer than {formatQuantity(step.maxC, 'temperature', kitchen.units)} while it is mixed, or
            it does not bind and what lives in it grows: common practice, no source. The good ranges of fat,
            salt and water to protein are common practice too. Energy: {cite(energyBasis[0].source)} Water
            activity is of the salt alone.
            {lines.some((l) => l.reduced?.alcohol !== undefined)
              ? ` Alcohol that is left: ${cite(alcoholBasis.source)}`
              : ''}
          </p>
        </>
      )}
    </Foreseen>
  );
}

const main: readonly Nutrient[] = [
  'water',
  'protein',
  'fat',
  'saturates',
  'carbohydrate',
  'sugars',
  'fibre',
  'ash',
  'alcohol',
];

/** Whether a figure lies in its known-good range, in a word; nothing where none is known. */
function rangeWord(name: string, value: readonly [number, number] | null, percent: boolean): string {
  const range = bindRanges.find((r) => r.name === name);
  if (range === undefined || value === null) return '';
  const k = percent ? 100 : 1;
  const span = `${plainNumber((range.low ?? 0) * k, 1)} to ${plainNumber((range.high ?? 0) * k, 1)}${percent ? ' %' : ''}`;
  const low = range.low === undefined ? Number.NEGATIVE_INFINITY : range.low * k;
  const high = range.high === undefined ? Number.POSITIVE_INFINITY : range.high * k;
  if (value[1] < low) return `under the usual ${span}`;
  if (value[0] > high) return `over the usual ${span}`;
  return value[0] >= low && value[1] <= high ? `within the usual ${span}` : `usual: ${span}`;
}

function Made({
  got,
  grams,
  units,
}: {
  readonly got: MixReckoned;
  readonly grams: number;
  readonly units: 'metric' | 'US';
}) {
  const { per100 } = got;
  if (per100 === null) return null;
  const say = ({ value, atLeast }: Figure, unit: string, digits = 1) =>
    `${atLeast ? 'at least ' : ''}${plainNumber(value, digits)}${unit}`;
  // Of what is not known, all or nothing may be any one component: the ends between which a ratio lies.
  const blank = (n: Nutrient) => (got.outcome.nutrients[n].unknown / got.outcome.mass) * 100;
  const ends = (n: Nutrient): [number, number] => [
    per100.nutrients[n].value,
    per100.nutrients[n].value + blank(n),
  ];
  const ratio = (over: Nutrient, under: Nutrient): [number, number] | null => {
    const [a, b] = [ends(over), ends(under)];
    return b[0] > 0 ? [a[0] / b[1], a[1] / b[0]] : null;
  };
  const between = (span: [number, number] | null, unit: string, digits: number): string => {
    if (span === null) return 'not known';
    const [low, high] = span.map((x) => plainNumber(x, digits));
    if (low === high) return `${low}${unit}`;
    return span[1] > 2 * span[0] ? 'not known' : `${low} to ${high}${unit}`;
  };
  const wetness = ratio('water', 'protein');
  const fatness = ratio('fat', 'protein');
  const salts = ends('salt');
  const [dry, wet] = ends('water');
  const phase: [number, number] | null =
    dry > 0 ? [(100 * salts[0]) / (salts[0] + wet), (100 * salts[1]) / (salts[1] + dry)] : null;
  const rows: [string, string, string][] = [
    ...main.map((n): [string, string, string] => [
      n,
      say(per100.nutrients[n], ' %'),
      n === 'fat' ? rangeWord('fat', ends('fat'), true) : '',
    ]),
    ['salt', between(salts, ' %', 2), rangeWord('salt', salts, true)],
    ['salt in its water', between(phase, ' %', 2), ''],
    ['water activity', got.waterActivity === null ? 'not known' : plainNumber(got.waterActivity, 3), ''],
    ['water to protein', between(wetness, ' : 1', 2), rangeWord('water to protein', wetness, false)],
    ['fat to protein', between(fatness, ' : 1', 2), ''],
    ['energy, 100 g', say(per100.energyKj, ' kJ', 0), ''],
    ['the same in kcal', say(per100.energyKcal, ' kcal', 0), ''],
  ];
  return (
    <>
      <table>
        <caption>All {formatQuantity(grams, 'mass', units)}</caption>
        <tbody>
          {rows.map(([what, value, range]) => (
            <tr key={what}>
              <th scope="row">
                {what}
                {range === '' ? null : <span className="mix-range small quiet">{range}</span>}
              </th>
              <td className="number">{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Closing per100={per100} />
      {got.outcome.missing.length === 0 ? null : (
        <Verdict state="unknown" word="A line points at what is not there">
          <p>{got.outcome.missing.length} of its lines: choose the ingredient again.</p>
        </Verdict>
      )}
    </>
  );
}

function Closing({ per100 }: { readonly per100: Nutrition }) {
  const { closes, sum, unknown } = per100.closing;
  if (closes) return null;
  return (
    <Verdict state="unknown" word="Composition not known in whole">
      <p>
        What is known sums to {plainNumber(sum, 1)} g of 100 g.
        {unknown.length === 0
          ? ' The published figures do not close better.'
          : ` Not known of every line: ${unknown.join(', ')}.`}
      </p>
    </Verdict>
  );
}

function Cost({ got, currency }: { readonly got: MixReckoned; readonly currency: string }) {
  const { known, unknown } = got.outcome.cost;
  const { mass } = got.outcome;
  const say = (minor: number) => money(Math.round(minor), currency);
  if (known === 0 && unknown > 0)
    return <p>What it costs is not known: no price for {got.unpriced.join(', ')}.</p>;
  return (
    <p>
      Costs {unknown > 0 ? 'at least ' : ''}
      <strong>{say(known)}</strong>
      {mass > 0 ? `, ${say(known / mass)} a kilogram` : ''}, by today’s prices.
      {got.unpriced.length === 0 ? '' : ` No price for ${got.unpriced.join(', ')}.`}
    </p>
  );
}

function Allergens({ got }: { readonly got: MixReckoned }) {
  const { contains, notSaid } = got.allergens;
  return (
    <>
      <p>
        Allergens:{' '}
        {contains.length === 0
          ? 'none named'
          : contains
              .map(
                (f) =>
                  `${f.allergen}${f.certain ? '' : ' (a label decides: look)'} from ${[...new Set(f.routes.map((r) => routeWords(r.path)))].slice(0, 3).join(', ')}`,
              )
              .join('; ')}
        .
      </p>
      {notSaid.length === 0 ? null : (
        <Verdict state="unknown" word="Nobody has said which allergens it holds">
          <p>Of {notSaid.map((path) => routeWords(path)).join(', ')}: not said is not none. Ask.</p>
        </Verdict>
      )}
    </>
  );
}
