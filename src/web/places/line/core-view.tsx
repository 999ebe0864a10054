import { lazy, Suspense, useEffect, useMemo, useState } from 'react';
import type { RuleVerdict } from '../../../contract/judge.ts';
import type { Batch, Kitchen } from '../../../contract/records.ts';
import type { Ask, Step } from '../../../contract/steps.ts';
import { Basis } from '../../parts/basis.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Verdict, type VerdictState } from '../../parts/verdict.tsx';
import { clock } from './clock.ts';
import {
  type CoreReading,
  cautiousFor,
  coreChannel,
  deadlineOf,
  judgeSeries,
  type LiveWord,
  liveWord,
  logText,
  rulesOf,
  seriesOf,
} from './core-log.ts';
import { KeptLogs } from './kept-logs.tsx';
import { limitWords, sayNaturally } from './measures.ts';
import { Pad } from './pad-view.tsx';
import { type Line, type Records, standing } from './progress.ts';
import { Readings } from './readings-view.tsx';
import type { Recorder } from './use-batch.ts';

const LogImport = lazy(async () => ({ default: (await import('../../parts/log-import.tsx')).LogImport }));

const states: Record<LiveWord['tone'], VerdictState> = {
  holds: 'holds',
  'not yet': 'not yet',
  'does not hold': 'does not hold',
};
const worst: readonly LiveWord['tone'][] = ['does not hold', 'not yet', 'holds'];

export interface CoreProps {
  readonly kitchen: Kitchen;
  readonly batch: Batch;
  readonly step: Step;
  readonly ask: Ask;
  readonly records: Records;
  readonly recorder: Recorder;
  readonly correcting: Line | null;
  /** Why the line is corrected; throws while nobody has said. */
  readonly whyCorrect: () => string;
  readonly onCorrect: (line: Line | null) => void;
  readonly readOnly: boolean;
}

/** The core as it is read: each reading judged as it is typed, or a probe's own file; both kept as a log. */
export function CoreView(props: CoreProps) {
  const { kitchen, batch, step, ask, records, recorder, correcting, whyCorrect, onCorrect, readOnly } = props;
  const rules = rulesOf(step);
  const stands = standing(records, ask.id);
  const series = seriesOf(stands, cautiousFor(step));
  const { verdicts, fault } = useMemo(() => judgeSeries(series, rules), [series, rules]);
  const last = series.at(-1);
  const heat = (C: number) => sayNaturally('temperature', kitchen.units, C);
  const decidingAt = verdicts.find((v) => v.decidingIndex !== null)?.decidingIndex;

  return (
    <div className="stack">
      {last === undefined ? (
        <p>
          Put the probe where the piece is thickest and coldest, and type what it shows. Each reading is
          judged at once.
        </p>
      ) : (
        <Live
          verdicts={verdicts}
          fault={fault}
          noRules={rules.length === 0}
          last={last}
          first={series[0] as CoreReading}
          heat={heat}
          zone={kitchen.zone}
        />
      )}
      {readOnly ? null : (
        <Pad
          key={correcting?.id ?? ask.id}
          ask={ask}
          measure="temperature"
          units={kitchen.units}
          expected={null}
          limit={limitWords(ask, kitchen.units)}
          keepWord={correcting === null ? 'Keep' : 'Correct to'}
          onKeep={async (value) => {
            await recorder.record({
              step,
              ask,
              value,
              ...(correcting === null ? {} : { corrects: correcting.id, note: whyCorrect() }),
            });
            onCorrect(null);
          }}
        />
      )}
      <Readings
        ask={ask}
        lines={records.lines.filter((l) => l.askId === ask.id)}
        units={kitchen.units}
        zone={kitchen.zone}
        decidingAt={decidingAt === undefined || decidingAt === null ? null : (series[decidingAt]?.at ?? null)}
        {...(readOnly ? {} : { onCorrect })}
      />
      {readOnly ? null : (
        <KeepLog step={step} series={series} rules={rules} records={records} recorder={recorder} />
      )}
      <KeptLogs logs={records.logs.filter((l) => l.stepId === step.id)} zone={kitchen.zone} />
      {readOnly ? null : (
        <details className="fold from-file">
          <summary>From a probe’s own file</summary>
          <Suspense fallback={<p className="quiet">Opening…</p>}>
            <LogImport
              kitchen={kitchen}
              dishId={batch.dishId}
              batchId={batch.id}
              stepId={step.id}
              rules={[...rules]}
              onKept={() => void recorder.reread()}
            />
          </Suspense>
        </details>
      )}
      <Caution place={kitchen.place}>
        {[...new Set(verdicts.flatMap((v) => v.cautions))].map((c) => (
          <p key={c}>{c}</p>
        ))}
        <p>
          A few readings show only those moments; between them the colder is taken when cooking, the warmer
          when chilling.
        </p>
      </Caution>
    </div>
  );
}

interface LiveProps {
  readonly verdicts: readonly RuleVerdict[];
  readonly fault: string | null;
  readonly noRules: boolean;
  readonly first: CoreReading;
  readonly last: CoreReading;
  readonly heat: (C: number) => string;
  readonly zone: string;
}

/** The rule that is furthest from holding speaks first; every rule has its line. */
function Live({ verdicts, fault, noRules, first, last, heat, zone }: LiveProps) {
  const words = verdicts.map((verdict) => {
    const deadline = deadlineOf(verdict, first.at);
    return {
      verdict,
      word: liveWord(verdict, last.C, heat, deadline === null ? null : clock(deadline, zone)),
    };
  });
  words.sort((a, b) => worst.indexOf(a.word.tone) - worst.indexOf(b.word.tone));
  const lead = words[0];
  return (
    <section className="live" aria-live="polite">
      <p className="live-number">{heat(last.C)}</p>
      <p className="quiet">
        core at {clock(last.at, zone, true)}
        <Since at={last.at} ask={lead?.word.tone !== 'holds'} />
      </p>
      {lead === undefined ? (
        <Verdict state="unknown" size="large" word="Not judged">
          {noRules ? 'The method names no rule for this core, so nothing here says that it is safe.' : fault}
        </Verdict>
      ) : (
        <>
          <p className={`live-big live-${lead.word.tone.replaceAll(' ', '-')}`}>{lead.word.big}</p>
          {words.map(({ verdict, word }) => (
            <Verdict key={verdict.rule} state={states[word.tone]} word={verdict.title}>
              {word.words}
            </Verdict>
          ))}
          <Basis
            title="The rules and where they stand"
            items={verdicts.map((v) => ({
              what: `${v.title} (${v.type}, ${v.place}): ${v.appliesTo}`,
              source: v.sourceKey === '' ? v.source : v.sourceKey,
              confidence: v.confidence,
            }))}
          />
        </>
      )}
    </section>
  );
}

/** An old reading says nothing about now: after this long the screen asks for another [min]. */
const staleMin = 2;

/** How long ago the core was last read. */
function Since({ at, ask }: { readonly at: string; readonly ask: boolean }) {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 10_000);
    return () => clearInterval(timer);
  }, []);
  const min = Math.max(0, (now - Date.parse(at)) / 60_000);
  if (min > 720) return null;
  return (
    <span aria-live="off">
      , {min < 1 ? 'less than a minute ago' : `${Math.floor(min)} min ago`}
      {ask && min >= staleMin ? <strong className="stale">. Read it again</strong> : null}
    </span>
  );
}

function KeepLog(props: {
  readonly step: Step;
  readonly series: readonly CoreReading[];
  readonly rules: readonly string[];
  readonly records: Records;
  readonly recorder: Recorder;
}) {
  const { step, series, rules, records, recorder } = props;
  const waiting = records.logsWaiting.find((l) => l.stepId === step.id);
  const kept = records.logs.filter((l) => l.stepId === step.id && l.channel.startsWith(coreChannel)).at(-1);
  if (waiting !== undefined)
    return (
      <p className={waiting.refusal === null ? 'not-sent' : 'not-sent not-sent-refused'}>
        {waiting.refusal === null ? 'The log is not sent yet.' : `The log was refused: ${waiting.refusal}`}
      </p>
    );
  const { verdicts } = judgeSeries(series, rules);
  const holds = verdicts.length > 0 && verdicts.every((v) => v.passes === true);
  if (series.length < 2 || !holds || kept?.points.length === series.length) return null;
  return (
    <div className="stack">
      <Button
        kind="strong"
        size="line"
        onPress={() => recorder.keepLog(step, logText(series), coreChannel, rules)}
      >
        Keep these {series.length} readings as the core log
      </Button>
      <p className="quiet small">
        The readings count without this too; kept as a log they are drawn against the limit in the batch’s
        record.
      </p>
    </div>
  );
}
