/**
 * Reads the log of any probe: delimited text as loggers write it. It says how it read the file, so that every choice can be
 * corrected and the file read again, and it tells every line it left out. What it cannot know it asks; it does not guess
 * where a wrong guess could make an unsafe cook look safe.
 */

import { readChannel } from './probe-log/channels.ts';
import { columnKinds } from './probe-log/columns.ts';
import { findHow, findRows } from './probe-log/how.ts';
import { findDialect, linesOf } from './probe-log/lines.ts';
import { inOrder, runsBackwards, tellGaps, warningsFor } from './probe-log/order.ts';
import { readTimes } from './probe-log/times.ts';
import type {
  Channel,
  ChannelColumn,
  Correction,
  Limits,
  ProbeLog,
  TemperatureUnit,
} from './probe-log/types.ts';
import { isZone } from './probe-log/zones.ts';
import type { Problem } from './problem.ts';

export { CorrectionInput } from './probe-log/correction.ts';
export { thin } from './probe-log/thin.ts';
export type * from './probe-log/types.ts';

export const defaultLimits: Limits = { maxBytes: 20_000_000, maxPoints: 200_000 };

const refused = (problems: Problem[]): ProbeLog => ({
  how: null,
  channels: [],
  warnings: [],
  questions: [],
  problems,
});

const lookedFor =
  'delimited text (comma, semicolon, tab, bar or spaces) whose lines hold a time and at least one temperature';

export function readProbeLog(
  text: string,
  correction: Correction = {},
  limits: Limits = defaultLimits,
): ProbeLog {
  const tooMuch = tooBig(text, limits);
  if (tooMuch !== null) return refused([tooMuch]);
  const { lines, comments, endsInBreak } = linesOf(text);
  if (lines.length === 0) return refused([{ path: 'text', found: 'nothing to read', allowed: lookedFor }]);
  if (correction.zone != null && !isZone(correction.zone))
    return refused([
      { path: 'zone', found: JSON.stringify(correction.zone), allowed: 'an IANA zone such as Europe/London' },
    ]);

  const { warn, all } = warningsFor();
  const marked = /^sep=(.)\s*$/i.exec(lines[0]!.text)?.[1];
  const dialect = findDialect(lines, {
    delimiter: correction.delimiter ?? delimiterOf(marked),
    decimal: correction.decimal,
  });
  if (dialect === null || dialect.rows < 2)
    return refused([
      {
        path: 'text',
        found: `${lines.length} lines, ${dialect === null ? 'none' : 'only one'} of them a reading`,
        allowed: lookedFor,
      },
    ]);
  const table = findRows(lines, comments, dialect, endsInBreak, correction, warn);
  if ('path' in table) return refused([table]);
  const kinds = columnKinds(table.rows, dialect.decimal);
  const { how, questions } = findHow(table, dialect, kinds, correction);
  const done = (channels: Channel[], problems: Problem[] = []): ProbeLog => ({
    how,
    channels,
    warnings: all(),
    questions,
    problems,
  });
  if (how.channels.length === 0)
    return done(
      [],
      [
        {
          path: 'channels',
          found: 'no column of temperatures',
          allowed: 'at least one column of numbers beside the time',
        },
      ],
    );
  const open = questions.filter((question) => question.needed);
  if (open.length > 0)
    return done(
      [],
      open.map((question) => ({
        path: question.field,
        found: question.why,
        allowed: `say which: ${question.options.join(', ')}`,
      })),
    );

  const read = readTimes(table.rows, how, warn);
  const reversed = correction.reversed ?? runsBackwards(read.seconds);
  let timed = table.rows.flatMap((row, i) => {
    const s = read.seconds[i]!;
    if (Number.isFinite(s)) return [{ row, s }];
    warn({ line: row.line, what: 'its time cannot be read: left out' });
    return [];
  });
  if (reversed) {
    timed = timed.reverse();
    warn({ line: null, what: 'the file runs from the newest reading to the oldest and was turned round' });
  }
  timed = inOrder(timed, warn);
  tellGaps(timed, warn);
  if (timed.length < 2)
    return done(
      [],
      [{ path: 'text', found: `${timed.length} readings in order of time`, allowed: 'at least two' }],
    );
  const start = read.absolute ? new Date(Math.round(timed[0]!.s * 1000)).toISOString() : null;
  const channels: Channel[] = [];
  for (const channel of how.channels) {
    if (!hasUnit(channel)) continue;
    const points = readChannel(channel, timed, how.decimal, start, warn);
    if (points.points.length > 0) channels.push(points);
    else warn({ line: null, what: `${channel.name}: not one temperature in it` });
  }
  const result = done(
    channels,
    channels.length > 0
      ? []
      : [
          {
            path: 'channels',
            found: 'no temperature that can be read',
            allowed: 'at least one channel with readings',
          },
        ],
  );
  return { ...result, how: { ...how, reversed } };
}

function hasUnit(channel: ChannelColumn): channel is ChannelColumn & { readonly unit: TemperatureUnit } {
  return channel.unit !== null;
}

function delimiterOf(mark: string | undefined) {
  return mark === ',' || mark === ';' || mark === '\t' || mark === '|' ? mark : undefined;
}

/** Refuses what is too long before any of it is parsed, and what is no text. */
function tooBig(text: string, { maxBytes, maxPoints }: Limits): Problem | null {
  const bytes = text.length * 3 <= maxBytes ? text.length : new TextEncoder().encode(text).length;
  if (bytes > maxBytes)
    return {
      path: 'text',
      found: `${(bytes / 1e6).toFixed(1)} MB`,
      allowed: `at most ${(maxBytes / 1e6).toFixed(1)} MB: cut the log or thin it out in the logger’s own program`,
    };
  let breaks = 0;
  for (let i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) breaks++;
  if (breaks === 0) for (let i = text.indexOf('\r'); i >= 0; i = text.indexOf('\r', i + 1)) breaks++;
  if (breaks > maxPoints + 1000)
    return { path: 'text', found: `${breaks} lines`, allowed: `at most ${maxPoints} readings` };
  if (text.includes('\u0000'))
    return {
      path: 'text',
      found: 'bytes that are no text (a spreadsheet or a logger’s own format?)',
      allowed: lookedFor,
    };
  return null;
}
