import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareMethods } from './compare-methods.ts';
import type { Method, Step } from './steps.ts';

const id = (n: number) => `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const rinse = (n: number, rinseMin = 2, name = `step ${n}`): Step => ({
  kind: 'rinse and dry',
  id: id(n),
  name,
  how: '',
  handsMin: 0,
  asks: [],
  rinseMin,
  dryMin: 20,
});
const steam = (minutes: number, until: object = { min: minutes }): Step => ({
  kind: 'cook',
  id: id(90),
  name: 'Steam',
  how: '',
  handsMin: 10,
  asks: [],
  body: {
    shape: 'slab',
    thicknessMm: 40,
    layers: [{ name: 'm', properties: { kWmK: 0.5, rhoKgM3: 1050, cpJkgK: 3500 } }],
  },
  startC: 6,
  stages: [{ name: 'steam', mediumC: 100, until: until as { min: number } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  rules: ['gb-70c-2min'],
});
const mix = (lines: [string, number][]): Step => ({
  kind: 'mix',
  id: id(91),
  name: 'Forcemeat',
  how: '',
  handsMin: 0,
  asks: [],
  lines: lines.map(([ingredient, g]) => ({ ingredient, g })),
  maxC: 12,
});

describe('compareMethods', () => {
  it('says what changed, with its unit and where', () => {
    const [change] = compareMethods([steam(34)], [{ ...steam(37), handsMin: 12 }]);
    expect(change).toMatchObject({
      how: 'kept',
      moved: false,
      changes: [
        { of: [], field: 'hands', before: '10 min', after: '12 min' },
        { of: ['stage steam'], field: 'time', before: '34 min', after: '37 min' },
      ],
    });
  });

  it('names a line of a mix by what it is, wherever it stands', () => {
    const [change] = compareMethods(
      [
        mix([
          ['Salt', 21],
          ['Hock', 980],
          ['Brandy', 26],
        ]),
      ],
      [
        mix([
          ['Hock', 980],
          ['Salt', 18],
          ['Cream', 100],
        ]),
      ],
    );
    expect(change?.how === 'kept' ? change.changes : []).toEqual([
      { of: ['Salt'], field: 'weight', before: '21 g', after: '18 g' },
      { of: ['Cream'], field: 'added', before: null, after: 'ingredient Cream, weight 100 g' },
      { of: ['Brandy'], field: 'taken out', before: 'ingredient Brandy, weight 26 g', after: null },
    ]);
  });

  it('keeps what ends a stage apart from how long', () => {
    const [change] = compareMethods([steam(34)], [steam(0, { coldestC: 72, atMostMin: 90 })]);
    expect(change?.how === 'kept' ? change.changes : []).toEqual([
      { of: ['stage steam'], field: 'time', before: '34 min', after: null },
      { of: ['stage steam'], field: 'until the coldest point has', before: null, after: '72 °C' },
      { of: ['stage steam'], field: 'at the most', before: null, after: '90 min' },
    ]);
  });

  it('knows what is to be recorded by its words, whatever its id', () => {
    const ask = (n: number, high: number) => ({
      id: id(n),
      kind: 'temperature' as const,
      label: 'Core',
      high,
    });
    const [same] = compareMethods(
      [{ ...steam(34), asks: [ask(1, 8)] }],
      [{ ...steam(34), asks: [ask(2, 8)] }],
    );
    expect(same).toMatchObject({ changes: [] });
    const [other] = compareMethods(
      [{ ...steam(34), asks: [ask(1, 8)] }],
      [{ ...steam(34), asks: [ask(2, 5)] }],
    );
    expect(other).toMatchObject({ changes: [{ of: ['Core'], before: '8', after: '5' }] });
  });

  it('moves one step, not all that it passed', () => {
    const moved = compareMethods(
      [rinse(1), rinse(2), rinse(3), rinse(4)],
      [rinse(4), rinse(1), rinse(2), rinse(3)],
    );
    expect(moved.map((c) => c.how === 'kept' && c.moved)).toEqual([true, false, false, false]);
  });

  it('leaves what was taken out where it was', () => {
    const got = compareMethods([rinse(1), rinse(2), rinse(3)], [rinse(1), rinse(3), rinse(4)]);
    expect(got.map((c) => [c.how, c.how === 'kept' ? c.after.name : c.step.name])).toEqual([
      ['kept', 'step 1'],
      ['taken out', 'step 2'],
      ['kept', 'step 3'],
      ['added', 'step 4'],
    ]);
  });

  const methods = fc
    .uniqueArray(fc.integer({ min: 1, max: 12 }), { maxLength: 8 })
    .map((ns): Method => ns.map((n) => rinse(n)));

  it('finds nothing between a method and itself, and loses no step of either', () => {
    fc.assert(
      fc.property(methods, methods, (a, b) => {
        for (const change of compareMethods(a, a))
          expect(change).toMatchObject({ how: 'kept', moved: false, changes: [] });
        const got = compareMethods(a, b);
        const of = (how: string) =>
          got.flatMap((c) => (c.how === how ? [c.how === 'kept' ? c.after.id : c.step.id] : []));
        expect([...of('kept'), ...of('added')].sort()).toEqual(b.map((s) => s.id).sort());
        expect([...of('kept'), ...of('taken out')].sort()).toEqual(a.map((s) => s.id).sort());
        expect(
          got.filter((c) => c.how !== 'taken out').map((c) => (c.how === 'kept' ? c.after : c.step)),
        ).toEqual(b);
      }),
    );
  });
});
