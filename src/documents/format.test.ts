import fc from 'fast-check';
import { expect, test } from 'vitest';
import { duration, moment, momentAfter, number, temperature, tied, weight, worth } from './format.ts';
import { limitText, valueText } from './steps-in-words.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

test('number: no trailing zeros, a true minus, no minus zero, thousands apart', () => {
  expect(number(71.4, 2)).toBe('71.4');
  expect(number(-3.5, 1)).toBe('−3.5');
  expect(number(-0.04, 1)).toBe('0');
  expect(plain(number(27_100))).toBe('27 100');
});

test('temperature and weight in the kitchen’s units', () => {
  expect(plain(temperature(70, 'metric'))).toBe('70 °C');
  expect(plain(temperature(70, 'US'))).toBe('158 °F');
  expect(plain(weight(18.2, 'metric'))).toBe('18.2 g');
  expect(plain(weight(27_100, 'metric'))).toBe('27.1 kg');
  expect(plain(weight(453.59237, 'US'))).toBe('1 lb 0 oz');
});

test('weight: never sixteen ounces beside a pound', () => {
  fc.assert(
    fc.property(fc.double({ min: 454, max: 20_000, noNaN: true }), (g) => {
      expect(plain(weight(g, 'US'))).not.toMatch(/ 16(\.\d)? oz/);
    }),
  );
});

test('duration as it is said', () => {
  expect([0.5, 45, 80, 120, 2_880].map((m) => plain(duration(m)))).toEqual([
    '0.5 min',
    '45 min',
    '80 min',
    '2 h',
    '2 days',
  ]);
  expect(plain(duration(210))).toBe('3 h 30 min');
});

test('moment on the kitchen’s clock, summer time too', () => {
  expect(moment('2026-11-25T10:30:00Z', 'Europe/London')).toBe('25 Nov 2026, 10:30');
  expect(moment('2026-07-01T23:30:00Z', 'Europe/London')).toBe('2 Jul 2026, 00:30');
  expect(momentAfter('2026-11-25T10:30:00Z', '2026-11-25T08:00:00Z', 'Europe/London')).toBe('10:30');
  expect(momentAfter('2026-11-26T10:30:00Z', '2026-11-25T08:00:00Z', 'Europe/London')).toBe('26 Nov, 10:30');
  expect(momentAfter('2027-01-01T10:30:00Z', '2026-12-31T08:00:00Z', 'Europe/London')).toBe(
    '1 Jan 2027, 10:30',
  );
});

test('tied keeps a number with its unit and touches nothing else', () => {
  expect(tied('at 170 °C for 12 min, 3 geese, 5 minutes')).toBe(
    'at 170\u00a0°C for 12\u00a0min, 3 geese, 5 minutes',
  );
});

test('limits and values in words', () => {
  expect(plain(limitText({ kind: 'temperature', high: 3 }, 'metric'))).toBe('at most 3 °C');
  expect(plain(limitText({ kind: 'temperature', low: 70 }, 'US'))).toBe('at least 158 °F');
  expect(plain(limitText({ kind: 'weight', low: 440, high: 500 }, 'metric'))).toBe('440 g to 500 g');
  expect(limitText({ kind: 'tick' }, 'metric')).toBe('');
  expect(valueText('tick', 0, 'metric')).toBe('not done');
  expect(valueText('note', null, 'metric')).toBe('');
});

test('a reading just out of its limit is not printed as if it were on it', () => {
  expect(plain(valueText('temperature', 69.96, 'metric'))).toBe('69.96 °C');
});

test('worth: rounded down, no precise figure far beyond the need, and a long need is still told apart', () => {
  const said = (min: number, needed?: number) => plain(worth(min, needed));
  expect([193.7, 100, 12.9, 1.96, 0.129, 0].map((m) => said(m, 2))).toEqual([
    'over 100 min',
    '100 min',
    '12 min',
    '1.9 min',
    '0.12 min',
    'next to nothing',
  ]);
  expect([105, 1300].map((m) => said(m, 112))).toEqual(['105 min', 'over 1200 min']);
  expect(worth(Number.NaN)).toBe('an unknown time');
});
