import { useState } from 'react';
import { Link } from 'wouter';
import type { YieldsAnswer } from '../../../../contract/yields.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Basis } from '../../../parts/basis.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { EmptyPlace } from '../../../parts/empty-place.tsx';
import { moment } from '../../../parts/moment.ts';
import { NumberField } from '../../../parts/number-field.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { KeptFromBin, UsedOverTime } from './kept-from-bin.tsx';
import { Learning } from './learning.tsx';
import { UsableCost } from './usable-cost.tsx';
import { YieldTable } from './yield-table.tsx';
import './yields.css';

type Period = 'all' | 'year' | 'quarter';
const periods: readonly { value: Period; label: string; days: number | null }[] = [
  { value: 'all', label: 'All that was ever weighed', days: null },
  { value: 'year', label: 'The last twelve months', days: 365 },
  { value: 'quarter', label: 'The last thirteen weeks', days: 91 },
];

const daysAgo = (days: number) => new Date(Date.now() - days * 86_400_000).toISOString().slice(0, 10);

/** What whole animals really give, how sure that is, what it costs and what was kept from the bin. */
export function Yields() {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id };
  const bars = useOperation('carcassBars', { params });
  const suppliers = useOperation('suppliers', { params });
  const people = useOperation('people', { params });
  const [picked, setPicked] = useState<string | null>(null);
  const [supplierId, setSupplier] = useState('');
  const [cutterId, setCutter] = useState('');
  const [period, setPeriod] = useState<Period>('all');
  const [precisionPct, setPrecision] = useState(5);
  const [publishedAnimals, setPublished] = useState<number | null>(null);
  const [part, setPart] = useState<string | null>(null);
  const cut = (bars.data ?? []).filter((b) => b.from === 'breakdowns').map((b) => b.species);
  const species = picked ?? cut[0] ?? null;
  const days = periods.find((p) => p.value === period)?.days ?? null;
  const query =
    species === null
      ? null
      : {
          species,
          precisionPct,
          ...(supplierId === '' ? {} : { supplierId }),
          ...(cutterId === '' ? {} : { cutterId }),
          ...(days === null ? {} : { from: daysAgo(days) }),
          ...(publishedAnimals === null || publishedAnimals < 1 ? {} : { publishedAnimals }),
          ...(part === null ? {} : { part }),
        };
  const yields = useOperation('yields', query === null ? null : { params, query });
  const [held, setHeld] = useState<YieldsAnswer | null>(null);
  if (yields.data !== undefined && yields.data !== held) setHeld(yields.data);
  const answer = yields.data ?? (held?.species.toLowerCase() === species?.toLowerCase() ? held : null);

  if (bars.data === undefined)
    return bars.error === null ? (
      <p className="quiet">Reading the breakdowns…</p>
    ) : (
      <Problem error={bars.error} retry={() => bars.refetch()} />
    );
  if (species === null)
    return (
      <EmptyPlace
        title="What an animal really gives"
        action={
          <>
            <Link className="button button-strong" href={at.startBreakdown(kitchen.id)}>
              Cut up animals
            </Link>
            <Link className="button" href={at.importBreakdowns(kitchen.id)}>
              Bring in past breakdowns
            </Link>
          </>
        }
      >
        <p>
          Every finished breakdown adds to it: what each part weighs of the whole, how much that differs from
          animal to animal, and how many more it takes until you can count on it.
        </p>
      </EmptyPlace>
    );
  const any = { value: '', label: 'Everybody' };
  return (
    <div className="stack-wide">
      <section className="fields" aria-label="Which breakdowns">
        <Choice
          label="Animal"
          value={species}
          options={cut.map((s) => ({ value: s, label: s }))}
          onChange={(s) => {
            setPicked(s);
            setPart(null);
          }}
        />
        <Choice
          label="From"
          value={supplierId}
          options={[any, ...(suppliers.data ?? []).map((s) => ({ value: s.id, label: s.name }))]}
          onChange={setSupplier}
        />
        <Choice
          label="Cut by"
          value={cutterId}
          options={[any, ...(people.data ?? []).map((p) => ({ value: p.id, label: p.name }))]}
          onChange={setCutter}
        />
        <Choice label="When" value={period} options={periods} onChange={setPeriod} />
        <NumberField
          label="Wanted to within ±"
          unit="%"
          value={precisionPct}
          low={0.1}
          high={100}
          onChange={(v) => v !== null && setPrecision(v)}
        />
        <NumberField
          label="Published figures count as"
          unit="animals"
          optional
          whole
          value={publishedAnimals}
          low={1}
          high={1_000}
          onChange={setPublished}
        />
      </section>
      {answer === null ? (
        yields.error === null ? (
          <p className="quiet">Working it out…</p>
        ) : (
          <Problem error={yields.error} retry={() => yields.refetch()} />
        )
      ) : answer.parts.length === 0 ? (
        <p>Nothing was finished of this kind. Choose everybody, or a longer time.</p>
      ) : (
        <Answer answer={answer} part={part} onPart={setPart} />
      )}
    </div>
  );
}

function Answer(props: {
  readonly answer: YieldsAnswer;
  readonly part: string | null;
  readonly onPart: (part: string) => void;
}) {
  const kitchen = useKitchen();
  const { answer } = props;
  return (
    <>
      <p className="lead">
        {answer.animals} {answer.animals === 1 ? 'animal' : 'animals'} in {answer.breakdowns}{' '}
        {answer.breakdowns === 1 ? 'breakdown' : 'breakdowns'},{' '}
        {formatQuantity(answer.inKg * 1_000, 'mass', kitchen.units)} on the table
        {answer.unaccountedPct === null
          ? ''
          : `; ${plainNumber(answer.unaccountedPct, 1)} % of it in none of the parts`}
        .
      </p>
      <YieldTable answer={answer} />
      {answer.apart.length === 0 ? null : (
        <section className="stack">
          <h2>Worth another look</h2>
          <p>
            These lie far from the others: a slip of the scale, another cut, another animal. They stay in all
            figures.
          </p>
          <ul>
            {answer.apart.map((a) => (
              <li key={`${a.breakdownId} ${a.part} ${a.who} ${a.pct}`}>
                <Link href={at.breakdown(kitchen.id, a.breakdownId)}>
                  {a.part}, {plainNumber(a.pct, 1)} %
                </Link>
                : {a.who}, {moment(a.at, kitchen.zone)}; {a.score > 0 ? 'more' : 'less'} than the others
              </li>
            ))}
          </ul>
        </section>
      )}
      <Learning answer={answer} part={props.part} onPart={props.onPart} />
      <UsedOverTime answer={answer} />
      <KeptFromBin answer={answer} />
      <UsableCost answer={answer} />
      <section className="stack">
        <ul>
          {answer.cautions.map((c) => (
            <li key={c}>{c}</li>
          ))}
        </ul>
        <Caution place={kitchen.place} />
        <Basis items={answer.basis} />
      </section>
    </>
  );
}
