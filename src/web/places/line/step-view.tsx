import { useEffect, useRef, useState } from 'react';
import { listRules } from '../../../contract/judge.ts';
import type { Batch } from '../../../contract/records.ts';
import type { Ask, Step } from '../../../contract/steps.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Verdict } from '../../parts/verdict.tsx';
import { AskView } from './ask-view.tsx';
import { rulesOf } from './core-log.ts';
import { limitWords, measureOf, sayReading } from './measures.ts';
import { Programme } from './programme-view.tsx';
import { type AskState, holdsAgainst, type Records, type StepProgress, standing } from './progress.ts';
import { useRecorder } from './use-batch.ts';
import { weightsWords } from './written-for.ts';

const askWords: Record<
  AskState,
  { state: 'holds' | 'not yet' | 'does not hold' | 'unknown' | 'neutral'; word: string }
> = {
  'to do': { state: 'not yet', word: 'to do' },
  in: { state: 'holds', word: 'in' },
  recorded: { state: 'neutral', word: 'recorded' },
  'going on': { state: 'not yet', word: 'going on' },
  out: { state: 'does not hold', word: 'out of limit' },
  decide: { state: 'does not hold', word: 'out: what now?' },
  decided: { state: 'does not hold', word: 'out, decided' },
  undecided: { state: 'unknown', word: 'not decided' },
};

const notRecorded = { state: 'unknown', word: 'not recorded' } as const;

/** The rules that a core is held to, by name. */
const ruleTitles = (step: Step): string => {
  const ids = rulesOf(step);
  const titles = new Map(listRules().map((r) => [r.id, r.title]));
  return ids.length === 0 ? 'the method names no rule' : ids.map((id) => titles.get(id) ?? id).join('; ');
};

/** One step: what to do, and everything it asks for, one thing open at a time. */
export function StepView(props: {
  readonly batch: Batch;
  readonly now: StepProgress;
  readonly records: Records;
}) {
  const { batch, now, records } = props;
  const kitchen = useKitchen();
  const recorder = useRecorder(batch);
  const first =
    now.asks.find((a) => a.state === 'decide') ??
    now.asks.find((a) => a.state === 'to do' || a.state === 'going on');
  const [chosen, setChosen] = useState<string | null>(null);
  const openId = chosen ?? first?.ask.id ?? null;
  const list = useRef<HTMLUListElement>(null);
  // The next thing opens by itself under the thumb once one has been recorded; what is out stays open.
  const moved = useRef(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only when another thing has opened
  useEffect(() => {
    if (moved.current) list.current?.querySelector('.ask-open')?.scrollIntoView({ block: 'start' });
    moved.current = false;
  }, [openId]);
  const recorded = (ask: Ask, value: number | null) => {
    const stays = ask.kind === 'core log' || holdsAgainst(ask, value) === 'out';
    moved.current = !stays;
    setChosen(stays ? ask.id : null);
  };
  const { step } = now;
  const readOnly = batch.status !== 'open';
  const weights = readOnly ? null : weightsWords(batch.method, step, batch.pieces);
  return (
    <section className="step stack" aria-labelledby={`step-${step.id}`}>
      <h2 id={`step-${step.id}`}>
        {batch.method.indexOf(step) + 1}. {step.name}
      </h2>
      {step.how === '' ? null : <p className="step-how">{step.how}</p>}
      <Programme step={step} units={kitchen.units} />
      {weights === null ? null : (
        <Verdict state="not yet" word="Mind the weights">
          {weights}
        </Verdict>
      )}
      {now.asks.length === 0 ? <p className="quiet">Nothing to record at this step.</p> : null}
      <ul className="asks" ref={list}>
        {now.asks.map(({ ask, state }) => {
          const open = openId === ask.id;
          const limit = limitWords(ask, kitchen.units);
          const value = standing(records, ask.id).at(-1)?.value ?? null;
          return (
            <li key={ask.id} className={open ? 'ask ask-open' : 'ask'}>
              <button
                type="button"
                className="ask-head"
                aria-expanded={open}
                aria-controls={`ask-${ask.id}`}
                onClick={() => setChosen(open ? 'none' : ask.id)}
              >
                <span className="ask-what">
                  <span className="ask-label">
                    {ask.label}
                    {ask.critical === true ? <em> critical</em> : null}
                  </span>
                  <span className="ask-limit">
                    {ask.kind === 'core log'
                      ? ruleTitles(step)
                      : (limit ?? (measureOf(ask.kind) === null ? '' : 'no limit set'))}
                  </span>
                </span>
                <span className="ask-state">
                  {value === null || measureOf(ask.kind) === null ? null : (
                    <strong>{sayReading(ask, kitchen.units, value)}</strong>
                  )}
                  <Verdict {...(readOnly && state === 'to do' ? notRecorded : askWords[state])} />
                </span>
              </button>
              <div id={`ask-${ask.id}`} hidden={!open} className="ask-body">
                {open ? (
                  <AskView
                    {...{ kitchen, batch, step, ask, state, records, readOnly }}
                    recorder={{
                      ...recorder,
                      record: async (r) => {
                        await recorder.record(r);
                        recorded(r.ask, r.value);
                      },
                    }}
                  />
                ) : null}
                {ask.basis === undefined || ask.basis === '' ? null : (
                  <p className="quiet small">Why this limit: {ask.basis}</p>
                )}
              </div>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
