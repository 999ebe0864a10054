import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jsonFault, lineAndColumn } from './json-text.ts';

describe('jsonFault', () => {
  test('finds none in any JSON', () => {
    fc.assert(
      fc.property(fc.json(), (text) => jsonFault(text) === null),
      { numRuns: 500 },
    );
  });
  test('finds one exactly where JSON.parse does, in any damaged JSON', () => {
    const damaged = fc.tuple(
      fc.json(),
      fc.nat(),
      fc.constantFrom('', ',', '"', '}', ']', '\n', 'x', '\\', '\u0001', ' '),
    );
    fc.assert(
      fc.property(damaged, ([text, n, put]) => {
        const at = n % (text.length + 1);
        const hurt = text.slice(0, at) + put + text.slice(at + 1);
        let parses = true;
        try {
          JSON.parse(hurt);
        } catch {
          parses = false;
        }
        const fault = jsonFault(hurt);
        return (fault === null) === parses || (parses && fault?.allowed === 'every key once');
      }),
      { numRuns: 2000 },
    );
  });
  test('names the place in the data', () => {
    expect(jsonFault('{"log":[{"min":0,"C":4},{"min":1,"C":NaN}]}')).toMatchObject({
      path: 'log[1].C',
      found: '"NaN"',
    });
    expect(jsonFault('[1,2')).toMatchObject({ path: '$', found: 'the end of the text' });
  });
  test('refuses a key given twice, which JSON.parse would pass over', () => {
    expect(jsonFault('{"a":{"b":1,"b":2}}')).toMatchObject({ path: 'a', found: 'the key "b" a second time' });
  });
  test('refuses a text too deep instead of exhausting the stack', () => {
    expect(jsonFault('['.repeat(100_000))?.allowed).toContain('levels');
  });
});

test('lineAndColumn counts from 1', () => {
  expect(lineAndColumn('ab\ncd', 4)).toEqual({ line: 2, column: 2 });
});
