/** How a log was read: what could be wrong first, then every choice, open to correction; then every line left out. */
import type { Correction, HowRead, ProbeLog, Question, TimeKind } from '../../contract/probe-log.ts';
import { Choice } from './choice.tsx';
import { TextField } from './field.tsx';
import { NumberField } from './number-field.tsx';
import './fold.css';

export interface LogReadingProps {
  readonly log: ProbeLog;
  readonly correction: Correction;
  readonly onCorrect: (correction: Correction) => void;
}

const delimiters: readonly { value: HowRead['delimiter']; label: string }[] = [
  { value: ',', label: 'comma' },
  { value: ';', label: 'semicolon' },
  { value: '\t', label: 'tab' },
  { value: '|', label: 'bar |' },
  { value: ' ', label: 'spaces' },
];
const times: readonly { value: TimeKind; label: string }[] = [
  { value: 's', label: 'seconds since the start' },
  { value: 'min', label: 'minutes since the start' },
  { value: 'h', label: 'hours since the start' },
  { value: 'elapsed clock', label: 'a stopwatch, hh:mm:ss' },
  { value: 'time of day', label: 'the time of day' },
  { value: 'instant', label: 'date and time with its offset' },
  { value: 'local', label: 'date and time on the wall clock' },
  { value: 'unix', label: 'seconds since 1970' },
  { value: 'unix ms', label: 'milliseconds since 1970' },
];
const orders: readonly { value: NonNullable<HowRead['dateOrder']>; label: string }[] = [
  { value: 'ymd', label: 'year, month, day' },
  { value: 'dmy', label: 'day, month, year' },
  { value: 'mdy', label: 'month, day, year' },
];
const units = [
  { value: 'C', label: '°C' },
  { value: 'F', label: '°F' },
] as const;
const parts = [
  { value: 'hh:mm', label: 'hours and minutes' },
  { value: 'mm:ss', label: 'minutes and seconds' },
] as const;
const decimals = [
  { value: '.', label: 'a point, 71.5' },
  { value: ',', label: 'a comma, 71,5' },
] as const;

const SHOWN = 6;

export function LogReading({ log, correction, onCorrect }: LogReadingProps) {
  const { how, problems, warnings, questions } = log;
  const needed = questions.filter((q) => q.needed);
  const rest = questions.filter((q) => !q.needed);
  const readings = log.channels[0]?.points.length ?? 0;
  return (
    <div className="stack">
      {problems.length === 0 ? null : (
        <div className="problem" role="alert">
          <p className="problem-what">
            {needed.length > 0 ? 'Before it can be read, say:' : 'This cannot be read as a log.'}
          </p>
          {needed.length > 0 ? null : (
            <ul className="problem-list">
              {problems.map((p) => (
                <li key={`${p.path} ${p.found}`}>
                  Found {p.found}. Wanted: {p.allowed}.
                </li>
              ))}
            </ul>
          )}
        </div>
      )}
      {problems.length > 0 ? null : (
        <p>
          {log.channels.length} {log.channels.length === 1 ? 'channel' : 'channels'}, {readings} readings.
        </p>
      )}
      {how === null
        ? null
        : [...needed, ...rest].map((q) => (
            <Correcting
              key={q.field}
              field={q.field}
              why={q}
              how={how}
              correction={correction}
              onCorrect={onCorrect}
            />
          ))}
      {how === null ? null : (
        <details className="fold">
          <summary>How it was read: {howWords(how)}</summary>
          <div className="fields">
            {(['decimal', 'time', 'twoParts', 'dateOrder', 'zone', 'unit'] as const)
              .filter((field) => !questions.some((q) => q.field === field))
              .map((field) => (
                <Correcting
                  key={field}
                  field={field}
                  how={how}
                  correction={correction}
                  onCorrect={onCorrect}
                />
              ))}
            <Choice
              label="Columns are parted by"
              value={how.delimiter}
              options={delimiters}
              onChange={(delimiter) => onCorrect({ ...correction, delimiter })}
            />
            <NumberField
              label="First reading stands on line"
              unit=""
              whole
              low={1}
              value={how.firstDataLine}
              onChange={(v) => v !== null && onCorrect({ ...correction, firstDataLine: v })}
            />
          </div>
        </details>
      )}
      {warnings.length === 0 ? null : (
        <details className="fold" open={warnings.length <= 3}>
          <summary>
            {warnings.length} {warnings.length === 1 ? 'thing' : 'things'} to know
          </summary>
          <ul>
            {warnings.slice(0, 200).map((w, i) => (
              <li key={i}>
                {w.line === null ? '' : `Line ${w.line}: `}
                {w.what}
              </li>
            ))}
            {warnings.length > 200 ? <li>and {warnings.length - 200} more.</li> : null}
          </ul>
        </details>
      )}
    </div>
  );
}

function howWords(how: HowRead): string {
  const time = times.find((t) => t.value === how.time)?.label ?? 'time not known';
  const unit =
    how.unit === 'C' ? '°C' : how.unit === 'F' ? '°F' : how.unit === 'mixed' ? '°C and °F' : 'unit not known';
  const names = how.channels.slice(0, SHOWN).map((c) => c.name);
  return `${time}; ${unit}; ${names.join(', ')}${how.channels.length > SHOWN ? '…' : ''}`;
}

interface CorrectingProps extends Omit<LogReadingProps, 'log'> {
  readonly field: Question['field'];
  readonly how: HowRead;
  readonly why?: Question;
}

/** One choice of how it was read, to be made or changed. */
function Correcting({ field, how, why, correction, onCorrect }: CorrectingProps) {
  const hint = why === undefined ? {} : { hint: `${why.why}.` };
  const put = (change: Correction) => onCorrect({ ...correction, ...change });
  switch (field) {
    case 'unit':
      return (
        <Choice
          label="Temperatures are in"
          value={how.unit === 'C' || how.unit === 'F' ? how.unit : ''}
          options={units}
          onChange={(unit) => (unit === 'C' || unit === 'F') && put({ unit })}
          {...hint}
        />
      );
    case 'time':
      return (
        <Choice
          label="The time is"
          value={how.time ?? ''}
          options={times}
          onChange={(time) => time !== '' && put({ time })}
          {...hint}
        />
      );
    case 'twoParts':
      return how.twoParts === null && why === undefined ? null : (
        <Choice
          label="12:30 means"
          value={how.twoParts ?? ''}
          options={parts}
          onChange={(twoParts) => (twoParts === 'hh:mm' || twoParts === 'mm:ss') && put({ twoParts })}
          {...hint}
        />
      );
    case 'dateOrder':
      return how.dateOrder === null && why === undefined ? null : (
        <Choice
          label="Dates are written"
          value={how.dateOrder ?? ''}
          options={orders}
          onChange={(dateOrder) => dateOrder !== '' && put({ dateOrder })}
          {...hint}
        />
      );
    case 'decimal':
      return (
        <Choice
          label="Decimals are written with"
          value={how.decimal}
          options={decimals}
          onChange={(decimal) => put({ decimal })}
          {...hint}
        />
      );
    case 'zone':
      return how.time !== 'local' ? null : (
        <TextField
          label="Clock of"
          value={correction.zone ?? ''}
          onChange={(zone) => put({ zone })}
          suggestions={[
            'Europe/London',
            'Europe/Paris',
            'America/New_York',
            'America/Chicago',
            'America/Los_Angeles',
          ]}
          {...hint}
        />
      );
    case 'everyS':
      return (
        <NumberField
          label="Seconds from reading to reading"
          unit="s"
          value={correction.everyS ?? null}
          low={0.1}
          onChange={(v) => v !== null && put({ everyS: v })}
          {...hint}
        />
      );
    case 'timeColumn':
      return (
        <NumberField
          label="The time stands in column"
          unit=""
          whole
          low={1}
          value={how.timeColumn === null ? null : how.timeColumn + 1}
          onChange={(v) => v !== null && put({ timeColumn: v - 1 })}
          {...hint}
        />
      );
  }
}
