import { lazy, Suspense, useEffect, useState } from 'react';
import type { JudgeAnswer, RuleVerdict } from '../../../contract/judge.ts';
import type { Batch, Kitchen } from '../../../contract/records.ts';
import type { Ask, Step } from '../../../contract/steps.ts';
import { Basis } from '../../parts/basis.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Verdict, type VerdictState } from '../../parts/verdict.tsx';
import { clock } from './clock.ts';
import {
  type CoreReading,
  coreChannel,
  deadlineOf,
  type LiveWord,
  liveWord,
  logText,
  seriesOf,
} from './core-log.ts';
import { KeptLogs } from './kept-logs.tsx';
import { limitWords, sayNaturally } from './measures.ts';
import { Pad } from './pad-view.tsx';
import { type Line, type Records, standing } from './progress.ts';
import { Readings } from './readings-view.tsx';
import type { Recorder } from './use-batch.ts';

const LogImport = lazy(async () => ({ default: (await import('../../parts/log-import.tsx')).LogImport }));

export const rulesOf = (step: Step): readonly string[] =>
  step.kind === 'cook' || step.kind === 'chill' ? step.rules : [];

type Judged =
  | { readonly of: string; readonly verdicts: JudgeAnswer }
  | { readonly of: string; readonly fault: string }
  | null;

/** Judges the readings so far in the browser, by the same code as the server; null while nothing can be judged. */
function useJudged(series: readonly CoreReading[], rules: readonly string[]): Judged {
  const [judged, setJudged] = useState<Judged>(null);
  const of = JSON.stringify([series, rules]);
  useEffect(() => {
    let stale = false;
    const [log, ids] = JSON.parse(of) as [CoreReading[], string[]];
    if (log.length === 0 || ids.length === 0) {
      setJudged(null);
      return undefined;
    }
    import('../../../contract/judge.ts')
      .then(({ runJudge }) => runJudge({ log: log.map(({ min, C }) => ({ min, C })), rules: ids }))
      .then(
        (verdicts) => !stale && setJudged({ of, verdicts }),
        (error) => !stale && setJudged({ of, fault: error instanceof Error ? error.message : String(error) }),
      );
    return () => {
      stale = true;
    };
  }, [of]);
  return judged !== null && judged.of === of ? judged : null;
}

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
  readonly onCorrect: (line: Line | null) => void;
  readonly readOnly: boolean;
}

/** The core as it is read: each reading judged as it is typed, or a probe's own file; both kept as a log. */
export function CoreView(props: CoreProps) {
  const { kitchen, batch, step, ask, records, recorder, correcting, onCorrect, readOnly } = props;
  const rules = rulesOf(step);
  const stands = standing(records, ask.id);
  const series = seriesOf(stands, step.kind === 'chill' ? 'warmer' : 'colder');
  const judged = useJudged(series, rules);
  const last = series.at(-1);
  const heat = (C: number) => sayNaturally('temperature', kitchen.units, C);
  const verdicts = judged !== null && 'verdicts' in judged ? judged.verdicts : [];
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
          fault={judged !== null && 'fault' in judged ? judged.fault : null}
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
              ...(correcting === null ? {} : { corrects: correcting.id }),
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
        <details className="fold">
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
  const words = verdicts.map((v) => ({ verdict: v, word: liveWord(v, last.C, heat) }));
  words.sort((a, b) => worst.indexOf(a.word.tone) - worst.indexOf(b.word.tone));
  const lead = words[0];
  return (
    <section className="live" aria-live="polite">
      <p className="live-number">{heat(last.C)}</p>
      <p className="quiet">
        core at {clock(last.at, zone, true)}
        <Since at={last.at} />
      </p>
      {lead === undefined ? (
        <Verdict
          state="unknown"
          size="large"
          word={noRules ? 'Not judged' : fault === null ? 'Judging…' : 'Not judged'}
        >
          {noRules ? 'The method names no rule for this core, so nothing here says that it is safe.' : fault}
        </Verdict>
      ) : (
        <>
          <p className={`live-big live-${lead.word.tone.replaceAll(' ', '-')}`}>{lead.word.big}</p>
          {words.map(({ verdict, word }) => {
            const by = deadlineOf(verdict, first.at);
            return (
              <Verdict key={verdict.rule} state={states[word.tone]} word={verdict.title}>
                {word.words}
                {by === null || word.tone !== 'not yet' ? null : (
                  <strong> The limit is broken at {clock(by, zone)}.</strong>
                )}
                {verdict.cautions.map((c) => (
                  <span key={c} className="live-caution">
                    {' '}
                    {c}
                  </span>
                ))}
              </Verdict>
            );
          })}
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

/** How long ago the core was last read: an old reading says nothing about now. */
function Since({ at }: { readonly at: string }) {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 10_000);
    return () => clearInterval(timer);
  }, []);
  const s = Math.max(0, (now - Date.parse(at)) / 1_000);
  if (s > 12 * 3_600) return null;
  const ago = s < 60 ? 'less than a minute ago' : `${Math.floor(s / 60)} min ago`;
  return <span aria-live="off">, {ago}</span>;
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
  if (series.length < 2 || kept?.points.length === series.length) return null;
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
        The server judges the log for itself; the batch’s record shows it against the limit.
      </p>
    </div>
  );
}
