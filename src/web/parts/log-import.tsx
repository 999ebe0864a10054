/**
 * A probe's log, dropped, chosen or pasted: shown as it was read with every choice open to correction, judged by the
 * step's rules, and kept as it came. Nothing is kept that could not be read, and nothing that was typed is thrown away.
 */
import { useMemo, useState } from 'react';
import { v7 as newId } from 'uuid';
import { judgePoints } from '../../contract/judge.ts';
import { type Channel, type Correction, readProbeLog } from '../../contract/probe-log.ts';
import type { Kitchen, ProbeLog } from '../../contract/records.ts';
import { findRule } from '../../core/properties/rules.ts';
import { call } from '../api.ts';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { Choice } from './choice.tsx';
import { TextField } from './field.tsx';
import { LogPicture } from './log-picture.tsx';
import { LogReading } from './log-reading.tsx';
import { Verdict } from './verdict.tsx';
import './log-import.css';

export interface LogImportProps {
  readonly kitchen: Kitchen;
  readonly dishId: string;
  readonly batchId: string | null;
  readonly stepId: string;
  readonly rules: readonly string[];
  readonly onKept: (log: ProbeLog) => void;
}

const MOST_BYTES = 20_000_000;

interface Taken {
  /** Made once for a text, so that sending it twice keeps it once. */
  readonly id: string;
  readonly name: string;
  readonly text: string;
}

export function LogImport(props: LogImportProps) {
  const [taken, setTaken] = useState<Taken | null>(null);
  return (
    <div className="log-import stack">
      {taken === null ? (
        <TakeText onText={(name, text) => setTaken({ id: newId(), name, text })} />
      ) : (
        <ReadText key={taken.id} {...props} taken={taken} onBack={() => setTaken(null)} />
      )}
    </div>
  );
}

function TakeText({ onText }: { readonly onText: (name: string, text: string) => void }) {
  const [pasted, setPasted] = useState('');
  const [over, setOver] = useState(false);
  const [wrong, setWrong] = useState<string | null>(null);
  const take = async (file: File) => {
    if (file.size > MOST_BYTES) {
      setWrong(
        `${file.name}: ${(file.size / 1e6).toFixed(0)} MB. At most 20 MB is read: cut the log in the logger’s own program.`,
      );
      return;
    }
    try {
      onText(file.name, await file.text());
    } catch (error) {
      setWrong(`${file.name} could not be read: ${error instanceof Error ? error.message : String(error)}`);
    }
  };
  return (
    <>
      <label
        className={over ? 'log-drop log-drop-over' : 'log-drop'}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          const file = event.dataTransfer.files[0];
          if (file !== undefined) void take(file);
        }}
      >
        <span>Drop the logger’s file here, or choose it. Any text with a time and temperatures will do.</span>
        <input
          type="file"
          accept=".csv,.txt,.tsv,.log,.asc,text/*"
          onChange={(event) => {
            const file = event.target.files?.[0];
            if (file !== undefined) void take(file);
          }}
        />
      </label>
      {wrong === null ? null : (
        <p className="field-error" role="alert">
          {wrong}
        </p>
      )}
      <TextField
        label="Or paste the readings"
        value={pasted}
        lines={4}
        onChange={setPasted}
        hint="From a spreadsheet or a message: one reading a line, the time first."
      />
      <Button onPress={() => onText('pasted readings', pasted)} disabled={pasted.trim() === ''}>
        Read what I pasted
      </Button>
    </>
  );
}

interface ReadTextProps extends LogImportProps {
  readonly taken: Taken;
  readonly onBack: () => void;
}

function ReadText({ kitchen, dishId, batchId, stepId, rules, onKept, taken, onBack }: ReadTextProps) {
  const [correction, setCorrection] = useState<Correction>({ zone: kitchen.zone });
  const [channelName, setChannel] = useState<string | null>(null);
  const [name, setName] = useState(taken.name);
  const log = useMemo(() => readProbeLog(taken.text, correction), [taken.text, correction]);
  const channel = log.channels.find((c) => c.name === channelName) ?? log.channels[0];
  const keep = async () => {
    if (channel === undefined) return;
    const kept = await call('importLog', {
      params: { kitchenId: kitchen.id },
      body: {
        id: taken.id,
        batchId,
        trialId: null,
        dishId,
        stepId,
        name: name.trim() === '' ? taken.name : name.trim(),
        text: taken.text,
        channel: channel.name,
        correction: { ...correction },
        rules: [...rules],
      },
    });
    onKept(kept);
  };
  return (
    <>
      <LogReading log={log} correction={correction} onCorrect={setCorrection} />
      {channel === undefined ? (
        <Button onPress={onBack}>Take another file</Button>
      ) : (
        <>
          {log.channels.length > 1 ? (
            <Choice
              label="Which probe was in the core"
              value={channel.name}
              options={log.channels.map((c) => ({ value: c.name, label: c.name }))}
              onChange={setChannel}
            />
          ) : null}
          <Judged channel={channel} rules={rules} kitchen={kitchen} />
          <TextField label="Call it" value={name} maxLength={200} onChange={setName} />
          <div className="row">
            <Button kind="strong" onPress={keep} busy="Keeping it…">
              Keep this log
            </Button>
            <Button onPress={onBack}>Take another file</Button>
          </div>
        </>
      )}
    </>
  );
}

interface JudgedProps {
  readonly channel: Channel;
  readonly rules: readonly string[];
  readonly kitchen: Kitchen;
}

function Judged({ channel, rules, kitchen }: JudgedProps) {
  const verdicts = useMemo(
    () =>
      judgePoints(
        channel.points,
        rules.flatMap((id) => findRule(id) ?? []),
      ),
    [channel, rules],
  );
  const unknown = rules.filter((id) => findRule(id) === undefined);
  const deciding = verdicts.find((v) => v.decidingMin !== null)?.decidingMin ?? null;
  return (
    <section className="stack" aria-label="The log and what it shows">
      <LogPicture channel={channel} decidingS={deciding === null ? null : deciding * 60} />
      {verdicts.map((v) => (
        <Verdict
          key={v.rule}
          state={v.passes === true ? 'holds' : v.passes === false ? 'does not hold' : 'unknown'}
          word={`${v.title}: ${v.verdict === 'undecided' ? 'not decided by this log' : v.verdict}`}
        >
          <p>{v.why}</p>
          <p className="small quiet">{v.source}</p>
        </Verdict>
      ))}
      {rules.length === 0 ? <p>The step names no rule, so the log is kept without a judgement.</p> : null}
      {unknown.length === 0 ? null : (
        <Verdict state="unknown" word="Not judged">
          Not in the rule book: {unknown.join(', ')}.
        </Verdict>
      )}
      <Caution place={kitchen.place} />
    </section>
  );
}
