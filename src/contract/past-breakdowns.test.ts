import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guessRole, pastRows, readPast } from './past-breakdowns.ts';

const today = '2026-11-25';
const good = [
  'Date\tBirds\tWhole (kg)\tBreast (kg)\tNeck skin (g)\tDrip\tNotes',
  '01/03/2025\t1\t4.1\t0.82\t92\t0.04\tfirst',
  '08/03/2025\t2\t8.4\t1.7\t180\t\t',
  '',
  '15/03/2025\t\t4,0\t0.79\t88\t0\t',
].join('\n');

describe('readPast', () => {
  it('guesses what each column is, its unit, and the order of a date', () => {
    const table = readPast(good)!;
    expect(table.columns.map((c) => [c.name, c.role, c.unit])).toEqual([
      ['Date', 'date', null],
      ['Birds', 'animals', null],
      ['Whole', 'whole', 'kg'],
      ['Breast', 'part', 'kg'],
      ['Neck skin', 'part', 'g'],
      ['Drip', 'drip', null],
      ['Notes', 'leave out', null],
    ]);
    expect(table.unit).toBe('kg');
    expect(table.order).toBe('day first');
    expect(table.rows.map((r) => r.line)).toEqual([2, 3, 5]);
    expect(readPast('Date,Whole\n03/25/2025,4.1')?.order).toBe('month first');
    expect(readPast('Date,Whole\n2025-03-25,4100')).toMatchObject({ order: 'year first', unit: 'g' });
  });
  it('a text without rows is no table', () => {
    expect(readPast('')).toBeNull();
    expect(readPast('Date,Whole')).toBeNull();
    expect(readPast('Date,Whole\n,\n')).toBeNull();
  });
  it.each([
    ['neck bone', 'part'],
    ['Bones', 'bone'],
    ['feathers', 'by-product'],
    ['Trim', 'bin'],
    ['breast %', 'leave out'],
    ['supplier', 'leave out'],
    ['dressed weight (g)', 'whole'],
  ])('%s is %s', (header, role) => expect(guessRole(header)).toBe(role));
});

describe('pastRows', () => {
  it('brings every weight to grams; an empty cell was not weighed, 0 was none', () => {
    const { rows, problems } = pastRows(readPast(good)!, today);
    expect(problems).toEqual([]);
    expect(rows).toEqual([
      {
        line: 2,
        at: '2025-03-01T12:00:00.000Z',
        animals: 1,
        inGrams: 4_100,
        parts: [
          { name: 'Breast', grams: 820, becomes: 'part' },
          { name: 'Neck skin', grams: 92, becomes: 'part' },
          { name: 'Drip', grams: 40, becomes: 'drip' },
        ],
      },
      {
        line: 3,
        at: '2025-03-08T12:00:00.000Z',
        animals: 2,
        inGrams: 8_400,
        parts: [
          { name: 'Breast', grams: 1_700, becomes: 'part' },
          { name: 'Neck skin', grams: 180, becomes: 'part' },
        ],
      },
      expect.objectContaining({ line: 5, animals: 1, inGrams: 4_000 }),
    ]);
  });
  it('a bad cell is named by its line and column, and then nothing is offered to be kept', () => {
    const text = [
      'date,animals,whole,breast,legs',
      '2025-03-01,1,4.1,0.8,0.9',
      '2025-02-30,1,4.1,0.8,0.9',
      '2025-03-02,0,4.1,0.8,0.9',
      '2025-03-03,1,4.1,heavy,-1',
      '2025-03-04,1,4.1,3.0,2.0',
      '2027-01-01,1,4.1,0.8,0.9',
      '2025-03-05,1,,0.8,0.9',
      '2025-03-06,1,4.1,,',
    ].join('\n');
    const { rows, problems } = pastRows(readPast(text)!, today);
    expect(rows).toEqual([]);
    expect(problems.map((p) => [p.line, p.column])).toEqual([
      [3, 'date'],
      [4, 'animals'],
      [5, 'breast'],
      [5, 'legs'],
      [6, 'parts'],
      [7, 'date'],
      [8, 'weight of the whole'],
      [9, 'parts'],
    ]);
  });
  it('a table without a date, a whole or a part says which', () => {
    const { problems } = pastRows(readPast('a,b\n1,2')!, today);
    expect(problems.map((p) => p.column)).toEqual(['date', 'weight of the whole']);
  });
  it('never throws, whatever is pasted', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), (text) => {
        const table = readPast(text);
        if (table !== null) pastRows(table, today);
      }),
    );
  });
});
