import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Ask } from '../../../contract/steps.ts';
import { fromBase, limitWords, type Measure, say, toBase, type Unit, unitsFor } from './measures.ts';
import { doubtOf, impossible, type Key, press, total } from './pad.ts';

const ask = (kind: Ask['kind'], more: Partial<Ask> = {}): Ask => ({
  id: '00000000-0000-7000-8000-000000000001',
  kind,
  label: 'x',
  ...more,
});
const fridge = ask('temperature', { high: 5 });
const typed = (keys: string): string => [...keys].reduce((t, k) => press(t, k as Key), '');

describe('press and total', () => {
  it('works a sum as it is said: × before +', () => {
    expect(total(typed('3×420'))).toBe(1_260);
    expect(total(typed('420+2×380−15'))).toBe(1_165);
    expect(total(typed('1.2÷4'))).toBe(0.3);
  });
  it('0.1 + 0.2 is 0.3', () => expect(total('0.1+0.2')).toBe(0.3));
  it('an unfinished or impossible sum has no total, so that it cannot be kept', () => {
    for (const t of ['', '−', '3+', '3×', '5÷0', '3××4', 'abc', '1e400']) expect(total(t)).toBeNull();
  });
  it('keys that make no sense do nothing', () => {
    expect(typed('1.2.3')).toBe('1.23');
    expect(typed('+5')).toBe('5');
    expect(typed('3+×2')).toBe('3×2');
    expect(typed('007')).toBe('7');
    expect(typed('.5')).toBe('0.5');
    expect(typed('12⌫')).toBe('1');
  });
  it('minus begins a number below nothing', () => expect(total(typed('−18'))).toBe(-18));
  it('what the keys can make is a number or no total, never NaN', () => {
    const key = fc.constantFrom<Key>('0', '1', '7', '9', '.', '+', '−', '×', '÷', '⌫');
    fc.assert(
      fc.property(fc.array(key, { maxLength: 60 }), (keys) => {
        const n = total(keys.reduce(press, ''));
        expect(n === null || Number.isFinite(n)).toBe(true);
      }),
    );
  });
});

describe('toBase and fromBase', () => {
  it('32 °F is 0 °C, 165 °F is 73.9 °C, 1 lb is 453.59237 g', () => {
    expect(toBase(32, '°F')).toBe(0);
    expect(toBase(41, '°F')).toBe(5);
    expect(say(toBase(165, '°F'), '°C')).toBe('73.9 °C');
    expect(toBase(1, 'lb')).toBe(453.59237);
  });
  it('there and back is the same', () => {
    const unit = fc.constantFrom<Unit>('g', 'kg', 'oz', 'lb', '°C', '°F', 'min', 'h', 'pieces');
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), unit, (n, u) => {
        expect(fromBase(toBase(n, u), u)).toBeCloseTo(n, 4);
      }),
    );
  });
});

describe('limitWords', () => {
  it('says the limit in the kitchen’s units', () => {
    expect(limitWords(fridge, 'metric')).toBe('at most 5 °C');
    expect(limitWords(fridge, 'US')).toBe('at most 41 °F');
    expect(limitWords(ask('weight', { low: 2_800, high: 3_500 }), 'metric')).toBe('2.8 kg to 3.5 kg');
    expect(limitWords(ask('tick'), 'metric')).toBeNull();
  });
});

describe('unitsFor', () => {
  it('offers the kitchen’s unit first and the other beside it', () => {
    expect(unitsFor('temperature', 'metric', 5)).toEqual(['°C', '°F']);
    expect(unitsFor('temperature', 'US', 5)).toEqual(['°F', '°C']);
    expect(unitsFor('weight', 'metric', 3_000)[0]).toBe('kg');
  });
});

describe('doubtOf', () => {
  const labels = (a: Ask, n: number, unit: Unit, expected: number | null = null) =>
    doubtOf(a, n, unit, expected)?.instead.map((i) => i.label);

  it('165 °C in a fridge: °F?', () => {
    expect(labels(fridge, 165, '°C')).toContain('165 °F (73.9 °C)');
  });
  it('41 °C in a fridge: °F?', () => {
    expect(labels(fridge, 41, '°C')).toContain('41 °F (5 °C)');
  });
  it('a fridge that is merely too warm is not argued with', () => {
    for (const n of [5.1, 8, 12, 21, 29]) expect(doubtOf(fridge, n, '°C', null)).toBeNull();
  });
  it('a chilled limit met by frost is asked about: 12 typed as °F', () => {
    expect(labels(fridge, 12, '°F')).toContain('12 °C (53.6 °F)');
  });
  it('a core far below its target is on its way, not a mistake; 714 is a slipped point', () => {
    const core = ask('core log', { low: 70 });
    expect(doubtOf(core, 4, '°C', null)).toBeNull();
    expect(doubtOf(core, 99, '°C', null)).toBeNull();
    expect(labels(core, 714, '°C')).toEqual(['71.4 °C']);
    expect(labels(core, 165, '°C')).toEqual(['165 °F (73.9 °C)', '16.5 °C']);
  });
  it('kilograms typed as grams, and the other way', () => {
    const weight = ask('weight', { low: 2_800, high: 3_500 });
    expect(labels(weight, 3.2, 'g')).toContain('3.2 kg');
    expect(labels(weight, 3_200, 'kg')).toContain('3200 g');
    expect(doubtOf(weight, 2.5, 'kg', null)).toBeNull();
  });
  it('with no limit the step’s own figure is what it is held against', () => {
    expect(labels(ask('weight'), 0.45, 'g', 450)).toContain('0.45 kg');
    expect(doubtOf(ask('weight'), 430, 'g', 450)).toBeNull();
  });
  it('hours typed as minutes', () => {
    expect(labels(ask('duration', { low: 600, high: 960 }), 14, 'min')).toContain('14 h');
  });
  it('never offers what is no reading, and never offers what was typed as if it were something else', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Measure>('weight', 'temperature', 'duration', 'count'),
        fc.double({ min: 0, max: 1e7, noNaN: true }),
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        (kind, n, low) => {
          const a = ask(kind, { low, high: low * 1.2 });
          const unit: Unit =
            kind === 'weight' ? 'g' : kind === 'duration' ? 'min' : kind === 'count' ? 'pieces' : '°C';
          for (const i of doubtOf(a, n, unit, null)?.instead ?? []) {
            expect(i.n === n && i.unit === unit).toBe(false);
            if (kind !== 'temperature') expect(impossible(kind, i.n, i.unit)).toBeNull();
          }
        },
      ),
    );
  });
});

describe('impossible', () => {
  it('below nothing and half a piece are refused, a freezer is not', () => {
    expect(impossible('weight', -1, 'g')).not.toBeNull();
    expect(impossible('count', 1.5, 'pieces')).not.toBeNull();
    expect(impossible('temperature', -18, '°C')).toBeNull();
    expect(impossible('temperature', -300, '°C')).not.toBeNull();
  });
});
