import { useEffect, useRef, useState } from 'react';
import type { Batch, Kitchen } from '../../../contract/records.ts';
import type { Ask, Step } from '../../../contract/steps.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/field.tsx';
import { clock } from './clock.ts';
import { CoreView } from './core-view.tsx';
import { expectedOf, limitWords, measureOf, sayReading } from './measures.ts';
import { Pad } from './pad-view.tsx';
import { type AskState, type Line, type Records, standing } from './progress.ts';
import { Readings } from './readings-view.tsx';
import type { Recorder } from './use-batch.ts';
import { WhatNow } from './what-now.tsx';

const reasons = ['typed wrongly', 'wrong unit', 'probe in the wrong place', 'read twice'] as const;

export interface AskProps {
  readonly kitchen: Kitchen;
  readonly batch: Batch;
  readonly step: Step;
  readonly ask: Ask;
  readonly state: AskState;
  readonly records: Records;
  readonly recorder: Recorder;
  readonly readOnly: boolean;
}

/** One thing to record, open: the pad or the tick, what was recorded before, and what now where it is out. */
export function AskView(props: AskProps) {
  const { kitchen, batch, step, ask, state, records, recorder, readOnly } = props;
  const [correcting, setCorrecting] = useState<Line | null>(null);
  const [why, setWhy] = useState('');
  const whyCorrect = () => {
    if (why.trim() === '') throw new Error('Say why the old line is wrong; the record keeps both.');
    return why.trim();
  };
  const correction = useRef<HTMLElement>(null);
  useEffect(() => {
    if (correcting !== null) correction.current?.scrollIntoView({ block: 'nearest' });
  }, [correcting]);
  const correct = (line: Line | null) => {
    setCorrecting(line);
    setWhy('');
  };
  const lines = records.lines.filter((l) => l.askId === ask.id);
  const measure = measureOf(ask.kind);
  const rulings = records.rulings.filter(
    (d) => d.stepId === step.id && (d.askId === ask.id || d.askId === null),
  );

  return (
    <div className="stack">
      {state === 'decide' && !readOnly ? (
        <WhatNow
          step={step}
          ask={ask}
          finding={findingOf(props)}
          advice={adviceOf(props)}
          onDecide={(what, reason) => recorder.decide(step, ask, what, reason)}
        />
      ) : null}
      {rulings.map((d) => (
        <p key={d.id} className="ruling">
          <strong>{d.what}</strong>: {d.reason}{' '}
          <span className="quiet">
            ({d.by}, {clock(d.at, kitchen.zone)})
          </span>
          {d.sending === 'sent' ? null : (
            <strong className="not-sent">
              {' '}
              {d.sending === 'refused' ? `refused: ${d.refusal}` : 'not sent yet'}
            </strong>
          )}
        </p>
      ))}
      {correcting === null ? null : (
        <section className="correcting stack" aria-label="Correction" ref={correction}>
          <p>
            Correcting{' '}
            <strong>
              {correcting.value === null ? 'the note' : sayReading(ask, kitchen.units, correcting.value)}
            </strong>{' '}
            of {clock(correcting.at, kitchen.zone)}, {correcting.by}. The old line stays in the record, struck
            through.
          </p>
          {correcting.kind === 'note' ? null : (
            <>
              <TextField label="Why it is wrong" value={why} onChange={setWhy} maxLength={1_000} />
              <div className="row">
                {reasons.map((r) => (
                  <Button key={r} pressed={why === r} onPress={() => setWhy(r)}>
                    {r}
                  </Button>
                ))}
              </div>
            </>
          )}
          <Button kind="quiet" onPress={() => correct(null)}>
            Leave it as it is
          </Button>
        </section>
      )}
      {ask.kind === 'core log' ? (
        <CoreView
          {...{ kitchen, batch, step, ask, records, recorder, readOnly, correcting }}
          {...{ whyCorrect }}
          onCorrect={correct}
        />
      ) : (
        <>
          {readOnly ? null : measure !== null ? (
            <Pad
              key={correcting?.id ?? ask.id}
              ask={ask}
              measure={measure}
              units={kitchen.units}
              expected={expectedOf(step, ask, batch.pieces)}
              limit={limitWords(ask, kitchen.units)}
              keepWord={correcting === null ? 'Keep' : 'Correct to'}
              onKeep={async (value) => {
                await recorder.record({
                  step,
                  ask,
                  value,
                  ...(correcting === null ? {} : { corrects: correcting.id, note: whyCorrect() }),
                });
                correct(null);
              }}
            />
          ) : ask.kind === 'tick' ? (
            <Tick
              done={standing(records, ask.id).length > 0}
              onDone={() => recorder.record({ step, ask, value: 1 })}
            />
          ) : (
            <NotePad
              key={correcting?.id ?? ask.id}
              label={ask.label}
              start={correcting?.note ?? ''}
              onKeep={async (note) => {
                await recorder.record({
                  step,
                  ask,
                  value: null,
                  note,
                  ...(correcting === null ? {} : { corrects: correcting.id }),
                });
                correct(null);
              }}
            />
          )}
          <Readings
            ask={ask}
            lines={lines}
            units={kitchen.units}
            zone={kitchen.zone}
            {...(readOnly ? {} : { onCorrect: correct })}
          />
        </>
      )}
    </div>
  );
}

function Tick({ done, onDone }: { readonly done: boolean; readonly onDone: () => Promise<void> }) {
  return (
    <Button kind={done ? 'plain' : 'strong'} size="line" className="pad-keep" onPress={onDone}>
      {done ? 'Done once more' : 'Done'}
    </Button>
  );
}

function NotePad(props: {
  readonly label: string;
  readonly start: string;
  readonly onKeep: (note: string) => Promise<void>;
}) {
  const [note, setNote] = useState(props.start);
  const [missing, setMissing] = useState(false);
  return (
    <div className="stack">
      <TextField
        label={props.label}
        value={note}
        onChange={(text) => {
          setNote(text);
          setMissing(false);
        }}
        lines={3}
        maxLength={1_000}
        error={missing ? 'Write something first.' : null}
      />
      <Button
        kind="strong"
        size="line"
        className="pad-keep"
        onPress={async () => {
          if (note.trim() === '') {
            setMissing(true);
            return;
          }
          await props.onKeep(note.trim());
          setNote('');
        }}
      >
        Keep
      </Button>
    </div>
  );
}

/** What is out of which limit, in words. */
function findingOf({ step, ask, records, kitchen }: AskProps): string {
  if (ask.kind === 'core log') {
    const log = records.logs.filter((l) => l.stepId === step.id).at(-1);
    return (
      log?.judgements
        .filter((j) => j.passes === false)
        .map((j) => j.title)
        .join('; ') ?? 'the core log does not hold'
    );
  }
  const out = standing(records, ask.id)
    .filter((l) => l.holds === 'out')
    .at(-1);
  const limit = limitWords(ask, kitchen.units);
  const value =
    out === undefined || out.value === null ? 'a reading' : sayReading(ask, kitchen.units, out.value);
  return `${ask.label} ${value}, limit ${limit ?? 'not said'}`;
}

function adviceOf({ step, ask, records, kitchen }: AskProps): string | null {
  if (ask.kind === 'core log') {
    const log = records.logs.filter((l) => l.stepId === step.id).at(-1);
    return log?.judgements.find((j) => j.passes === false)?.why ?? null;
  }
  if (ask.kind !== 'temperature') return null;
  const limit = limitWords({ ...ask }, kitchen.units);
  if (ask.high !== undefined && ask.high <= 15) {
    return `Get it to ${limit} at once and read it again. If nobody knows how long it has been warm, keep it back or throw it away.`;
  }
  if (ask.low !== undefined && ask.low >= 55)
    return `Go on heating until it shows ${limit}, then read it again.`;
  return null;
}
