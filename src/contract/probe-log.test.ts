import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Correction, CorrectionInput, readProbeLog, thin } from './probe-log.ts';

/** Reads a text that must be understood and gives its first channel as pairs of minutes and °C. */
function pairs(text: string, correction: Correction = {}, channel = 0): [number, number][] {
  const log = readProbeLog(text, correction);
  expect(log.problems).toEqual([]);
  return (log.channels[channel]?.points ?? []).map(({ s, C }) => [s / 60, Math.round(C * 1000) / 1000]);
}

const wanted: [number, number][] = [
  [0, 4.5],
  [10, 31.2],
  [20, 58.9],
  [30, 71.4],
];

/** The same four readings as different loggers write them. */
const dialects: Record<string, string> = {
  'comma, minutes, °C in the name': 'min,Core °C\n0,4.5\n10,31.2\n20,58.9\n30,71.4\n',
  'comma, seconds, name with underscore': 'time_s,core_C\n0,4.5\n600,31.2\n1200,58.9\n1800,71.4\n',
  'hours with decimals':
    'Elapsed (h),Core (degC)\n0,4.5\n0.16666666666666666,31.2\n0.3333333333333333,58.9\n0.5,71.4\n',
  'semicolon and decimal comma': 'Zeit (min);Kern (°C)\n0;4,5\n10;31,2\n20;58,9\n30;71,4\n',
  'tab and decimal comma': 'min\tkern °C\n0\t4,5\n10\t31,2\n20\t58,9\n30\t71,4\n',
  'bar between cells, spaces round them': 'min | core °C\n0 | 4.5\n10 | 31.2\n20 | 58.9\n30 | 71.4\n',
  'spaces between columns': 'min C\n0   4.5\n10  31.2\n20  58.9\n30  71.4\n',
  'quoted decimal commas between commas':
    '"min","Core °C"\n"0","4,5"\n"10","31,2"\n"20","58,9"\n"30","71,4"\n',
  'byte order mark and CRLF': '\uFEFFmin,Core °C\r\n0,4.5\r\n10,31.2\r\n20,58.9\r\n30,71.4\r\n',
  'old line ends': 'min,Core °C\r0,4.5\r10,31.2\r20,58.9\r30,71.4\r',
  'units in a row of their own':
    'Time,Core,Oven\nmin,°C,°C\n0,4.5,90\n10,31.2,98\n20,58.9,100\n30,71.4,100\n',
  'Fahrenheit in the name': 'min,Core °F\n0,40.1\n10,88.16\n20,138.02\n30,160.52\n',
  'Fahrenheit behind every number': 'min,core\n0,40.1 F\n10,88.16 F\n20,138.02 F\n30,160.52 F\n',
  'degrees behind every number': 'min;core\n0;4.5 °C\n10;31.2 °C\n20;58.9 °C\n30;71.4 °C\n',
  'elapsed hh:mm:ss': 'Elapsed,Core °C\n0:00:00,4.5\n0:10:00,31.2\n0:20:00,58.9\n0:30:00,71.4\n',
  'elapsed mm:ss, said so': 'Elapsed (mm:ss),Core °C\n00:00,4.5\n10:00,31.2\n20:00,58.9\n30:00,71.4\n',
  'time of day past midnight': 'Time,Core °C\n23:45:00,4.5\n23:55:00,31.2\n00:05:00,58.9\n00:15:00,71.4\n',
  'time of day with am and pm':
    'Time,Core °C\n11:50:00 AM,4.5\n12:00:00 PM,31.2\n12:10:00 PM,58.9\n12:20:00 PM,71.4\n',
  'ISO with Z':
    'time,core C\n2026-11-25T10:00:00Z,4.5\n2026-11-25T10:10:00Z,31.2\n2026-11-25T10:20:00Z,58.9\n2026-11-25T10:30:00Z,71.4\n',
  'ISO with offset and thousandths':
    'time,core C\n2026-11-25T10:00:00.000+01:00,4.5\n2026-11-25T10:10:00.000+01:00,31.2\n2026-11-25T10:20:00.000+01:00,58.9\n2026-11-25T10:30:00.000+01:00,71.4\n',
  'day first with slashes':
    'Date/Time,Core C\n25/11/2026 10:00,4.5\n25/11/2026 10:10,31.2\n25/11/2026 10:20,58.9\n25/11/2026 10:30,71.4\n',
  'month first with am and pm':
    'Date/Time,Core C\n11/25/2026 9:50:00 AM,4.5\n11/25/2026 10:00:00 AM,31.2\n11/25/2026 10:10:00 AM,58.9\n11/25/2026 10:20:00 AM,71.4\n',
  'day first with dots':
    'Datum;Kern °C\n25.11.2026 10:00:00;4,5\n25.11.2026 10:10:00;31,2\n25.11.2026 10:20:00;58,9\n25.11.2026 10:30:00;71,4\n',
  'date and clock in two columns':
    'Date;Time;Core °C\n25.11.2026;23:50;4,5\n26.11.2026;00:00;31,2\n26.11.2026;00:10;58,9\n26.11.2026;00:20;71,4\n',
  'month as a word':
    'When,Core C\n25-Nov-2026 10:00:00,4.5\n25-Nov-2026 10:10:00,31.2\n25-Nov-2026 10:20:00,58.9\n25-Nov-2026 10:30:00,71.4\n',
  'seconds since 1970':
    'timestamp,core C\n1790000000,4.5\n1790000600,31.2\n1790001200,58.9\n1790001800,71.4\n',
  'row number first': 'No.,min,Core °C\n1,0,4.5\n2,10,31.2\n3,20,58.9\n4,30,71.4\n',
  'text above and comments between':
    'Logger report\nSerial; 12345\nInterval; 10 min\n\nmin;Core °C\n0;4.5\n# lid opened\n10;31.2\n20;58.9\n30;71.4\n',
  'names in a comment': '# min,Core °C\n0,4.5\n10,31.2\n20,58.9\n30,71.4\n',
  'separator stated': 'sep=;\nmin;Core °C\n0;4,5\n10;31,2\n20;58,9\n30;71,4\n',
  'empty columns at the end': 'min,Core °C,,,\n0,4.5,,,\n10,31.2,,,\n20,58.9,,,\n30,71.4,,,\n',
  'humidity and battery beside it':
    'min,Core °C,RH %,Battery V\n0,4.5,80,3.1\n10,31.2,81,3.1\n20,58.9,82,3.0\n30,71.4,83,3.0\n',
  'a column of words': 'min,Core °C,Status\n0,4.5,OK\n10,31.2,OK\n20,58.9,ALARM\n30,71.4,OK\n',
  'newest first': 'min,Core °C\n30,71.4\n20,58.9\n10,31.2\n0,4.5\n',
  'date, clock and reading between spaces':
    '2026-11-25 10:00:00 4.5 C\n2026-11-25 10:10:00 31.2 C\n'.replaceAll(' C', '') +
    '2026-11-25 10:20:00 58.9\n2026-11-25 10:30:00 71.4\n',
  'names of several words between spaces': 'Elapsed min   Core C\n0  4.5\n10  31.2\n20  58.9\n30  71.4\n',
  'names in camel case, milliseconds since 1970':
    'ts,coreC\n1790000000000,4.5\n1790000600000,31.2\n1790001200000,58.9\n1790001800000,71.4\n',
  'units that stand for names': 'min;°C\n0;4,5\n10;31,2\n20;58,9\n30;71,4\n',
  'a first row that holds a word': 'min,Core °C\n0,starting up\n0,4.5\n10,31.2\n20,58.9\n30,71.4\n',
  'no line break at the end': 'min,Core °C\n0,4.5\n10,31.2\n20,58.9\n30,71.4',
};

describe('readProbeLog reads the same four readings', () => {
  for (const [name, text] of Object.entries(dialects)) test(name, () => expect(pairs(text)).toEqual(wanted));
});

describe('readProbeLog gives back what was written', () => {
  const decimals = (n: number, mark: string) => n.toFixed(2).replace('.', mark);
  const two = (n: number) => String(n).padStart(2, '0');
  const clock = (s: number) => `${two(Math.floor(s / 3600))}:${two(Math.floor(s / 60) % 60)}:${two(s % 60)}`;
  const dialect = fc.record({
    delimiter: fc.constantFrom(',', ';', '\t', '|'),
    mark: fc.constantFrom('.', ','),
    fahrenheit: fc.boolean(),
    end: fc.constantFrom('\n', '\r\n'),
    bom: fc.boolean(),
    time: fc.constantFrom('s', 'min', 'elapsed', 'iso', 'dmy'),
    note: fc.boolean(),
    trailing: fc.boolean(),
  });
  const log = fc.record({
    steps: fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 4, maxLength: 40 }),
    hundredths: fc.array(fc.integer({ min: -2000, max: 12000 }), { minLength: 41, maxLength: 41 }),
  });
  test('in any dialect', () => {
    fc.assert(
      fc.property(dialect, log, (d, { steps, hundredths }) => {
        const seconds = [0];
        for (const step of steps) seconds.push(seconds.at(-1)! + step);
        const start = Date.UTC(2026, 10, 25, 9);
        const times = seconds.map((s) => {
          if (d.time === 's') return String(s);
          if (d.time === 'min') return String(s / 60).replace('.', d.mark);
          if (d.time === 'elapsed') return clock(s);
          const iso = new Date(start + s * 1000).toISOString();
          const day = iso.slice(0, 10).split('-').reverse().join('/');
          return d.time === 'iso' ? iso : `${day} ${iso.slice(11, 19)}`;
        });
        const names = { s: 'Time s', min: 'Time min', elapsed: 'Elapsed', iso: 'When', dmy: 'When' };
        const quote = (cell: string) => (cell.includes(d.delimiter) ? `"${cell}"` : cell);
        const tail = d.trailing ? d.delimiter : '';
        const shown = seconds
          .map((_, i) => hundredths[i]! / 100)
          .map((C) => (d.fahrenheit ? C * 1.8 + 32 : C));
        const rows = times.map((t, i) => quote(t) + d.delimiter + quote(decimals(shown[i]!, d.mark)) + tail);
        const text = `${d.bom ? '\uFEFF' : ''}${[
          ...(d.note ? ['# made up for a test'] : []),
          `${names[d.time]}${d.delimiter}Core ${d.fahrenheit ? '°F' : '°C'}${tail}`,
          ...rows,
        ].join(d.end)}${d.end}`;
        const read = readProbeLog(text);
        expect(read.problems).toEqual([]);
        const points = read.channels[0]!.points;
        expect(points.length).toBe(seconds.length);
        points.forEach((p, i) => {
          expect(Math.abs(p.s - seconds[i]!)).toBeLessThan(1e-6);
          const written = Number(shown[i]!.toFixed(2));
          expect(Math.abs(p.C - (d.fahrenheit ? (written - 32) / 1.8 : written))).toBeLessThan(1e-9);
        });
      }),
      { numRuns: 300 },
    );
  });
  test('and never throws, whatever the text', () => {
    const piece = fc.constantFrom(
      ',',
      ';',
      '\n',
      '0',
      '12',
      '-',
      '.',
      ':',
      '°C',
      'min',
      'F',
      '"',
      '#',
      ' ',
      '2026-11-25',
      'err',
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(piece, { maxLength: 60 }).map((p) => p.join('')),
        ),
        (text) => {
          const read = readProbeLog(text);
          expect(read.problems.length > 0).toBe(read.channels.length === 0);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('readProbeLog asks', () => {
  test('whether commas before three digits are decimal commas', () => {
    expect(
      readProbeLog('s,core C\n"1,000",60\n"1,010",61\n"1,020",62\n').problems.map((p) => p.path),
    ).toEqual(['decimal']);
  });
  test('for the unit of elapsed time, and reads once it is told', () => {
    const text = 'Time,Core °C\n0,4.5\n600,31.2\n1200,58.9\n1800,71.4\n';
    const log = readProbeLog(text);
    expect(log.channels).toEqual([]);
    expect(log.problems.map((p) => p.path)).toEqual(['time']);
    expect(pairs(text, { time: 's' })).toEqual(wanted);
    expect(pairs(text, { time: 'min' }).at(-1)?.[0]).toBe(1800);
  });
  test('for °C or °F where the values could be either', () => {
    const text = 'min,fridge\n0,38\n10,40\n20,41\n';
    expect(readProbeLog(text).problems.map((p) => p.path)).toEqual(['unit']);
    expect(pairs(text, { unit: 'F' })[1]).toEqual([10, 4.444]);
  });
  test('for the unit of a log that is hot in °C and merely cool in °F', () => {
    for (const values of ['100,80,60,40', '60,70,75,72', '50,80,104,104'])
      expect(
        readProbeLog(
          `min,core\n${values
            .split(',')
            .map((v, i) => `${i},${v}`)
            .join('\n')}\n`,
        ).problems.map((p) => p.path),
      ).toEqual(['unit']);
    expect(readProbeLog('min,core\n0,4\n10,40\n20,75\n').how?.unit).toBe('C');
  });
  test('not for °F where 165 could be no core in °C, but shows the choice', () => {
    const log = readProbeLog('min,core\n0,40\n10,100\n20,165\n');
    expect(log.how?.unit).toBe('F');
    expect(log.questions).toMatchObject([{ field: 'unit', needed: false }]);
  });
  test('for minutes or seconds of elapsed times in two parts', () => {
    const text = 'Elapsed,Core °C\n0:00,4.5\n10:00,31.2\n20:00,58.9\n30:00,71.4\n'.replace('30:00', '23:00');
    expect(readProbeLog(text).problems.map((p) => p.path)).toEqual(['twoParts']);
    expect(pairs(text, { twoParts: 'mm:ss' }).at(-1)).toEqual([23, 71.4]);
  });
  test('for the interval where there is no time', () => {
    const text = 'Core °C\n4.5\n31.2\n58.9\n71.4\n';
    expect(readProbeLog(text).problems.map((p) => p.path)).toEqual(['everyS']);
    expect(pairs(text, { everyS: 600 })).toEqual(wanted);
  });
  test('shows a date that could be day or month first, and takes a correction', () => {
    const text = 'When,Core C\n03/04/2026 10:00,4.5\n03/04/2026 10:10,31.2\n';
    const log = readProbeLog(text, { zone: 'Europe/London' });
    expect(log.questions).toMatchObject([{ field: 'dateOrder', needed: false }]);
    expect(log.channels[0]?.start).toBe('2026-04-03T09:00:00.000Z');
    const other = readProbeLog(text, { zone: 'Europe/London', dateOrder: 'mdy' });
    expect(other.channels[0]?.start).toBe('2026-03-04T10:00:00.000Z');
  });
  test('not about the order of dates where midnight tells', () => {
    const log = readProbeLog(
      'When,Core C\n03/04/2026 23:50,4.5\n04/04/2026 00:10,31.2\n04/04/2026 00:20,32\n',
    );
    expect(log.how?.dateOrder).toBe('dmy');
    expect(log.channels[0]?.points.map((p) => p.s)).toEqual([0, 1200, 1800]);
  });
});

describe('readProbeLog through a change of clock', () => {
  const line = (day: string, clock: string, C: number) => `${day} ${clock},${C}`;
  const log = (day: string, clocks: string[]) =>
    readProbeLog(`When,Core C\n${clocks.map((c, i) => line(day, c, 60 + i)).join('\n')}\n`, {
      zone: 'Europe/London',
    });

  test('reads a repeated hour twice and says so', () => {
    const read = log('2026-10-25', ['00:40', '01:00', '01:20', '01:40', '01:00', '01:20', '01:40', '02:00']);
    expect(read.problems).toEqual([]);
    expect(read.channels[0]?.points.map((p) => p.s / 60)).toEqual([0, 20, 40, 60, 80, 100, 120, 140]);
    expect(read.warnings.some((w) => w.line === 6 && w.what.includes('second time'))).toBe(true);
  });
  test('counts the skipped hour', () => {
    const read = log('2026-03-29', ['00:20', '00:40', '02:00', '02:20']);
    expect(read.channels[0]?.points.map((p) => p.s / 60)).toEqual([0, 20, 40, 60]);
    expect(read.channels[0]?.start).toBe('2026-03-29T00:20:00.000Z');
  });
  test('sees from an hour that does not exist that the clock was not changed', () => {
    const read = log('2026-03-29', ['00:40', '01:00', '01:20', '01:40', '02:00']);
    expect(read.channels[0]?.points.map((p) => p.s / 60)).toEqual([0, 20, 40, 60, 80]);
    expect(read.warnings.some((w) => w.line === 3 && w.what.includes('does not exist'))).toBe(true);
  });
  test('tells an hour shown once where it should be twice', () => {
    const read = log('2026-10-25', ['00:40', '01:00', '01:20', '01:40', '02:00', '02:20']);
    expect(read.channels[0]?.points.map((p) => p.s / 60)).toEqual([0, 20, 40, 60, 140, 160]);
    expect(read.warnings.some((w) => w.line === 6 && w.what.includes('once only'))).toBe(true);
  });
  test('refuses a zone that there is not', () => {
    const read = readProbeLog('When,C\n2026-10-25 10:00,4\n2026-10-25 10:01,5\n', { zone: 'Europe/Nowhere' });
    expect(read.problems.map((p) => p.path)).toEqual(['zone']);
  });
});

describe('readProbeLog tells what it leaves out', () => {
  const told = (text: string) => {
    const log = readProbeLog(text);
    return { log, lines: log.warnings.map((w) => w.line), points: log.channels[0]?.points.length };
  };
  test('cells that hold nothing', () => {
    const { log, lines, points } = told('min,Core °C\n0,4.5\n1,---\n2,NaN\n3,err\n4,31\n5,58\n');
    expect([points, log.channels[0]?.dropped]).toEqual([3, 3]);
    expect(lines).toEqual(expect.arrayContaining([3, 4, 5]));
  });
  test('impossible temperatures', () => {
    const { lines, points } = told('min,Core °C\n0,4.5\n1,-200\n2,20\n3,4000\n4,31\n5,58\n');
    expect(points).toBe(4);
    expect(lines).toEqual(expect.arrayContaining([3, 5]));
  });
  test('a time given twice, keeping the first', () => {
    const { log, lines } = told('min,Core °C\n0,4.5\n1,10\n1,99\n2,20\n3,30\n');
    expect(log.channels[0]?.points.map((p) => p.C)).toEqual([4.5, 10, 20, 30]);
    expect(lines).toContain(4);
  });
  test('a single row out of order, and nothing else', () => {
    const { log, lines } = told('min,Core °C\n0,4.5\n1,10\n999,15\n2,20\n3,30\n4,40\n');
    expect(log.channels[0]?.points.map((p) => p.s / 60)).toEqual([0, 1, 2, 3, 4]);
    expect(lines).toContain(4);
  });
  test('a gap', () => {
    expect(told('min,Core °C\n0,4\n1,5\n2,6\n3,7\n60,60\n61,61\n').lines).toContain(6);
  });
  test('a last line cut short, in a cell or between cells', () => {
    expect(told('min,Core °C,Oven °C\n0,4.5,90\n1,5.5,91\n2,6.5,92\n3,7.5').points).toBe(3);
    const mid = told('min,Core °C\n0,64.5\n1,65.5\n2,66.5\n3,6');
    expect([mid.points, mid.lines.at(-1)]).toEqual([3, 5]);
  });
  test('a spike, which stays', () => {
    const { lines, points } = told('min,Core °C\n0,20\n1,21\n2,95\n3,22\n4,23\n');
    expect([points, lines]).toEqual([5, [4]]);
  });
  test('a line of words among the readings', () => {
    const { lines, points } = told('min,Core °C\n0,20\n1,21\nprobe moved to the second tray\n2,22\n3,23\n');
    expect([points, lines]).toEqual([4, [4]]);
  });
});

describe('readProbeLog refuses', () => {
  const path = (text: string, limits?: { maxBytes: number; maxPoints: number }) => {
    const log = readProbeLog(text, {}, limits);
    expect(log.channels).toEqual([]);
    return log.problems.map((p) => p.path);
  };
  test('an empty text, prose, a web page, a program', () => {
    expect(path('')).toEqual(['text']);
    expect(path('Dear chef,\nthe geese come on Tuesday.\nYours,\nthe farm\n')).toEqual(['text']);
    expect(path('<html>\n<body>\n<p>Hello</p>\n</body>\n</html>\n')).toEqual(['text']);
    expect(path('{"log": [{"min": 0, "C": 4}]}')).toEqual(['text']);
  });
  test('bytes that are no text', () => expect(path('PK\u0003\u0004\u0000\u0000\n1,2\n')).toEqual(['text']));
  test('too many bytes and too many lines, before reading any', () => {
    expect(path('0,1\n'.repeat(100), { maxBytes: 200, maxPoints: 1000 })).toEqual(['text']);
    expect(path('0,1\n'.repeat(5000), { maxBytes: 1e6, maxPoints: 1000 })).toEqual(['text']);
  });
  test('decimal commas between commas', () =>
    expect(path('min,Core °C\n0,4,5\n10,31,2\n20,58,9\n30,71,4\n')).toEqual(['decimal']));
  test('a table without temperatures', () => {
    expect(path('min,RH %\n0,80\n1,81\n2,82\n')).toEqual(['channels']);
  });
});

describe('readProbeLog with several channels', () => {
  test('names them and keeps each one’s own unit', () => {
    const log = readProbeLog('min,Core (°C),Oven (°F)\n0,4,212\n10,30,212\n20,60,221\n');
    expect(log.channels.map((c) => [c.name, c.points.at(-1)?.C])).toEqual([
      ['Core', 60],
      ['Oven', 105],
    ]);
    expect(log.how?.unit).toBe('mixed');
  });
  test('takes a correction of its own reading back unchanged', () => {
    const text = dialects['row number first']!;
    const first = readProbeLog(text);
    expect(readProbeLog(text, first.how!)).toEqual(first);
    expect(readProbeLog(text, CorrectionInput.parse(first.how))).toEqual(first);
  });
});

describe('readProbeLog read again by its own reading', () => {
  for (const [name, text] of Object.entries(dialects))
    test(`${name} gives the same points`, () => {
      const first = readProbeLog(text);
      const again = readProbeLog(text, CorrectionInput.parse(first.how));
      expect(again.channels).toEqual(first.channels);
    });
});

describe('thin', () => {
  const points = Array.from({ length: 5000 }, (_, i) => ({
    s: i,
    C: 20 + 10 * Math.sin(i / 100) + (i === 3210 ? 50 : 0),
  }));
  test('keeps the ends and the peak within the count', () => {
    const few = thin(points, 200);
    expect(few.length).toBeLessThanOrEqual(200);
    expect([few[0], few.at(-1)]).toEqual([points[0], points.at(-1)]);
    expect(Math.max(...few.map((p) => p.C))).toBe(Math.max(...points.map((p) => p.C)));
    expect(few.every((p, i) => i === 0 || p.s > few[i - 1]!.s)).toBe(true);
  });
});
