/** How long it may be kept: the day it must be used by, the rule that decides, what would lengthen it, and every other limit beneath. */
import { useMemo } from 'react';
import { type KeepAnswer, runKeep } from '../../../../contract/keep.ts';
import { keepInputOf } from '../../../../contract/keep-step.ts';
import { InputProblems } from '../../../../contract/problem.ts';
import type { StepOf } from '../../../../contract/steps.ts';
import { Basis, confidenceWord } from '../../../parts/basis.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { Foreseen } from './foreseen.tsx';
import type { StepForm } from './step-form.ts';

const typeWords = { statutory: 'law', guidance: 'guidance', model: 'a model' } as const;

function lifeFor(input: object): KeepAnswer | string {
  try {
    return runKeep(input);
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    return error.problems.map((p) => `${p.path}: ${p.found}, allowed ${p.allowed}`).join('; ');
  }
}

const tenths = (days: number) => `${(Math.floor(days * 10) / 10).toFixed(1).replace('.0', '')} days`;

export function LifePanel(form: StepForm<StepOf<'keep'>>) {
  const { kitchen, dish, method, step } = form;
  const answer = useMemo(
    () => lifeFor(keepInputOf(step, method, kitchen.place)),
    [step, method, kitchen.place],
  );
  if (typeof answer === 'string')
    return (
      <Foreseen>
        <Verdict state="unknown" word="How long it may be kept is not known">
          <p>{answer}</p>
        </Verdict>
      </Foreseen>
    );
  const { days, word, deciding, limits } = answer;
  const decides = limits.find((l) => l.id === deciding);
  const over = days !== null && step.days > days;
  return (
    <>
      <Foreseen>
        {days === null ? (
          <Verdict
            state="unknown"
            word={
              word === 'not known' ? 'How long it may be kept is not known' : 'Frozen: no day by these rules'
            }
          >
            <p>{answer.why}</p>
          </Verdict>
        ) : (
          <>
            <p className="life">
              <span className="life-days">{days}</span> {days === 1 ? 'day' : 'days'}, that of making being
              the first
            </p>
            <p>
              Decided by <strong>{decides?.title}</strong> ({decides?.place},{' '}
              {typeWords[decides?.type ?? 'model']}). {answer.why}
            </p>
            {over ? (
              <Verdict state="does not hold" word={`The method says ${step.days} days: longer than this`} />
            ) : (
              <Verdict
                state="neutral"
                word={step.days === 0 ? 'The method names no days' : `The method says ${step.days} days`}
              >
                <p>
                  No longer than the earliest of the limits below. That is no proof that it keeps so long.
                </p>
              </Verdict>
            )}
          </>
        )}
        {answer.assumed.length === 0 ? null : (
          <p className="small">Not known, and counted as the worst: {answer.assumed.join('; ')}.</p>
        )}
      </Foreseen>
      {limits.length === 0 ? null : (
        <section className="stack" aria-label="Every limit of the life">
          <h3>Every limit of it</h3>
          <table className="life-limits">
            <thead>
              <tr>
                <th scope="col">To</th>
                <th scope="col">By</th>
              </tr>
            </thead>
            <tbody>
              {limits.map((limit) => (
                <tr key={limit.id}>
                  <td>{limit.days === null ? 'no limit by it' : tenths(limit.days)}</td>
                  <td>
                    <strong>{limit.title}</strong>
                    {limit.id === deciding ? <span className="rule-decides">decides</span> : null}
                    <br />
                    {limit.why}{' '}
                    <span className="quiet small">
                      {limit.place}, {typeWords[limit.type]}: {limit.citation} (
                      {confidenceWord(limit.confidence)})
                    </span>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          {answer.longer.length === 0 ? null : (
            <>
              <h4>What would lengthen it, each by itself</h4>
              <ul className="fold-list">
                {answer.longer.map((l) => (
                  <li key={l.what}>
                    {l.what}: {l.days} days
                  </li>
                ))}
              </ul>
            </>
          )}
          <Caution place={kitchen.place}>
            {answer.cautions
              // The place's own words for this stand below.
              .filter((c) => !c.startsWith('Advice, not a licence'))
              .map((c) => (
                <p key={c}>{c}</p>
              ))}
          </Caution>
          <Basis items={answer.basis} title={`What the days of ${dish.name} rest on`} />
        </section>
      )}
    </>
  );
}
