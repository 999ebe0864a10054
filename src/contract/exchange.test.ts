import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DishFile, type FileFood, methodHere, readDishFile, withoutPrices } from './exchange.ts';
import { deepestValue, longestText, valuesIn } from './incoming-text.ts';
import type { Method, MixLine } from './steps.ts';

const id = (n: number) => `0192f3a0-0000-7000-8000-${String(n).padStart(12, '0')}`;
const counter = () => {
  let n = 1_000;
  return () => id(n++);
};
const mix = (lines: MixLine[]): Method[number] => ({
  kind: 'mix',
  id: id(1),
  name: 'Mix',
  how: 'Cold.',
  handsMin: 5,
  asks: [{ id: id(2), kind: 'tick', label: 'Bound' }],
  lines,
  maxC: 12,
});
const food: FileFood = {
  of: { kind: 'ingredient', id: id(7) },
  name: 'Invented crumb',
  tableId: null,
  nutrients: null,
  allergens: [{ allergen: 'gluten', as: 'wheat' }],
  mayContain: [{ allergen: 'sesame' }],
  allergensKnown: true,
  source: '',
};
const file = (method: Method, foods: FileFood[] = [food]): DishFile => ({
  format: 'fifth-quarter-dish',
  formatVersion: 1,
  dish: { name: 'Invented heart', species: 'pig', part: 'heart', story: '' },
  versions: [{ number: 1, status: 'signed', reason: 'First.', createdAt: '2026-11-01T08:00:00Z', method }],
  foods,
});
const crumb: MixLine = { ingredient: 'crumb', g: 100, of: food.of };
const nowhere = () => null;
const everywhere = () => ({ allergens: ['gluten', 'sesame'], known: true });
const linesOf = (method: Method) => method.flatMap((s) => (s.kind === 'mix' ? s.lines : []));
const withoutIds = (method: Method) =>
  method.map(({ id: _, asks, ...s }) => ({ ...s, asks: asks.map(({ id: _ask, ...a }) => a) }));

const line: fc.Arbitrary<MixLine> = fc
  .record({
    ingredient: fc.stringMatching(/^[a-z<>"é½]{1,40}$/),
    g: fc.double({ min: 0, max: 1e6, noNaN: true }).map((g) => g + 0),
    of: fc.constantFrom(food.of, { kind: 'table' as const, id: 'duck-liver-raw' }),
    pricePerKg: fc.nat(9_999),
    allergens: fc.uniqueArray(fc.constantFrom('milk', 'celery', 'mustard'), { maxLength: 3 }),
  })
  .map((l) => ({ ...l, g: Math.abs(l.g) }));

describe('a dish file', () => {
  test('written and read again is the same dish but for its ids and without prices', () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 12 }), (lines) => {
        const method: Method = [mix(lines)];
        const text = JSON.stringify(file(withoutPrices(method)));
        expect(text).not.toContain('pricePerKg');
        const read = readDishFile(valuesIn(text)[0]);
        const brought = methodHere(read, read.versions[0]!.method, everywhere, counter());
        expect(withoutIds(brought.method)).toEqual(withoutIds(withoutPrices(method)));
        expect(brought.said).toEqual([]);
        expect(JSON.stringify(brought.method)).not.toContain(id(1));
        expect(JSON.stringify(brought.method)).not.toContain(id(2));
      }),
    );
  });

  test('keeps every allergen that it states where the food is not known, and points at nothing', () => {
    const { method, said } = methodHere(
      file([]),
      [mix([{ ...crumb, allergens: ['milk'] }])],
      nowhere,
      counter(),
    );
    const [kept] = linesOf(method);
    expect(kept?.of).toBeUndefined();
    expect(kept?.allergens).toEqual(['milk', 'gluten', 'sesame']);
    expect(said.join(' ')).toContain('wheat');
  });

  test('keeps a food of which not all is said as one that is not known', () => {
    const partly = { ...food, allergensKnown: false };
    for (const foods of [[partly], []]) {
      const { method } = methodHere(
        file([], foods),
        [mix([{ ...crumb, allergens: ['milk'] }])],
        nowhere,
        counter(),
      );
      expect(linesOf(method)[0]?.allergens).toContain('milk');
      expect(linesOf(method)[0]?.allergens).toContain('others not said');
    }
  });

  test('adds to the line what the kitchen’s own record does not have', () => {
    const here = () => ({ allergens: ['gluten'], known: true });
    const { method, said } = methodHere(file([]), [mix([crumb])], here, counter());
    expect(linesOf(method)[0]).toEqual({ ...crumb, allergens: ['sesame'] });
    expect(said).toHaveLength(1);
  });

  test('is refused when it is newer, has keys of its own, or texts that cannot be kept', () => {
    const good = file([mix([crumb])]);
    expect(() => readDishFile({ ...good, formatVersion: 2 })).toThrow(/newer program/);
    expect(() => readDishFile({ ...good, surprise: 1 })).toThrow(/surprise/);
    expect(() =>
      readDishFile(JSON.parse(`${JSON.stringify(good).slice(0, -1)},"__proto__":{"x":1}}`)),
    ).toThrow();
    expect(() => readDishFile({ ...good, dish: { ...good.dish, story: 'a\0b' } })).toThrow(/null character/);
    expect(() => readDishFile({ ...good, dish: { ...good.dish, story: '\ud800' } })).toThrow(/half/);
    expect(() => readDishFile({ ...good, versions: [] })).toThrow(/versions/);
    expect(() => readDishFile(file([mix([{ ...crumb, g: -1 }])]))).toThrow(/lines\[0\]\.g/);
  });
});

describe('a text brought in', () => {
  test('is refused in words when it is too long, too deep, cut off, empty or no JSON', () => {
    expect(() => valuesIn(' '.repeat(longestText + 1))).toThrow(/characters/);
    expect(() => valuesIn(`${'['.repeat(200_000)}${']'.repeat(200_000)}`)).toThrow(/deep|JSON/);
    expect(() => valuesIn('['.repeat(deepestValue + 2) + ']'.repeat(deepestValue + 2))).toThrow(/deep/);
    expect(() => valuesIn('{"format":')).toThrow(/not JSON/);
    expect(() => valuesIn('  ')).toThrow(/nothing/);
    expect(() => valuesIn('Take a heart.')).toThrow(/neither JSON/);
  });

  test('of a page gives its JSON-LD blocks and nothing else', () => {
    const page =
      '<html><script>var a = "{}";</script><script type="application/ld+json">{"a":1}</script><script type=\'application/ld+json\'>{oops</script></html>';
    expect(valuesIn(page)).toEqual([{ a: 1 }]);
    expect(() => valuesIn('<script type="application/ld+json">{oops</script>')).toThrow(/block 1/);
    expect(() => valuesIn('<script type="application/ld+json">'.repeat(20_000))).toThrow(/neither/);
  });

  test('is read or refused with a reason, whatever it is', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        try {
          for (const value of valuesIn(text)) readDishFile(value);
        } catch (error) {
          expect((error as Error).name).toBe('InputProblems');
        }
      }),
    );
  });
});
