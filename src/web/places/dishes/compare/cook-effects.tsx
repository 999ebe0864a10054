import { useMemo } from 'react';
import type { Kitchen, Version } from '../../../../contract/records.ts';
import type { StepOf } from '../../../../contract/steps.ts';
import { plainNumber } from '../../../../core/units.ts';
import { Verdict } from '../../../parts/verdict.tsx';
import { temperatureWords } from '../../../pictures/words.ts';
import { programmeWith } from '../cook/programme.ts';
import { useCooking } from '../cook/use-cooking.ts';
import { verdictWords } from '../cook/verdict-words.ts';

const cooksOf = (version: Version) =>
  version.method.filter((s): s is StepOf<'cook'> => s.kind === 'cook' && s.stages.length > 0);

/** Every cook step of either version, the same step of both beside one another. */
export function CookEffects({
  kitchen,
  from,
  to,
}: {
  readonly kitchen: Kitchen;
  readonly from: Version;
  readonly to: Version;
}) {
  const before = cooksOf(from);
  const after = cooksOf(to);
  const ids = [...new Set([...after, ...before].map((s) => s.id))];
  return (
    <section className="stack" aria-labelledby="safety">
      <h2 id="safety">What it does to safety</h2>
      {ids.length === 0 ? <p>Neither version cooks anything: nothing is known of its safety.</p> : null}
      {ids.map((id) => {
        const a = before.find((s) => s.id === id);
        const b = after.find((s) => s.id === id);
        return (
          <div key={id} className="stack">
            <h3>{(b ?? a)?.name}</h3>
            <div className="compare-pair">
              {a === undefined ? (
                <p className="quiet">Not in version {from.number}.</p>
              ) : (
                <CookSide kitchen={kitchen} version={from} step={a} />
              )}
              {b === undefined ? (
                <p className="quiet">Not in version {to.number}.</p>
              ) : (
                <CookSide kitchen={kitchen} version={to} step={b} />
              )}
            </div>
          </div>
        );
      })}
    </section>
  );
}

/** One version's cook as the engine of today predicts it. */
function CookSide({
  kitchen,
  version,
  step,
}: {
  readonly kitchen: Kitchen;
  readonly version: Version;
  readonly step: StepOf<'cook'>;
}) {
  const programme = useMemo(() => programmeWith(version.method, step), [version.method, step]);
  const { cooked, current, failure } = useCooking(programme);
  const title = `Version ${version.number}`;
  if (!programme.ok)
    return (
      <Verdict state="unknown" word={`${title}: cannot be predicted`}>
        <ul>
          {programme.faults.map((f) => (
            <li key={`${f.path} ${f.found}`}>
              {f.path}: {f.found}; allowed: {f.allowed}
            </li>
          ))}
        </ul>
      </Verdict>
    );
  if (failure !== null)
    return (
      <Verdict state="unknown" word={`${title}: cannot be predicted`}>
        <p>{failure}</p>
      </Verdict>
    );
  if (cooked === null || !current || cooked.mode !== 'fine')
    return <p className="quiet">{title}: working it out…</p>;
  const { verdict, problem, result } = cooked;
  const told = verdictWords({
    verdict,
    problem,
    result,
    units: kitchen.units,
    advice: null,
    coarse: false,
  });
  const min = (s: number) => `${plainNumber(Math.floor((s / 60) * 100) / 100, 2)} min`;
  const end = result.stages.at(-1)?.end ?? 0;
  return (
    <Verdict state={told.state} word={`${title}: ${told.word}`}>
      <dl className="compare-facts">
        <dt>Lifted out after</dt>
        <dd>{plainNumber(verdict.liftOut / 60, 1)} min</dd>
        <dt>Coldest point then</dt>
        <dd>{temperatureWords(verdict.coreAtLiftOut, kitchen.units)}</dd>
        <dt>Worth by then, of {min(verdict.needed)} needed</dt>
        <dd>{min(verdict.gotAtLiftOut)}</dd>
        <dt>Worth by the end</dt>
        <dd>{min(verdict.got)}</dd>
        <dt>Heat and chill together</dt>
        <dd>{plainNumber(end / 60, 0)} min</dd>
      </dl>
    </Verdict>
  );
}
