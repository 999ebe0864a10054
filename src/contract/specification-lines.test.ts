import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sources } from '../core/sources.ts';
import { SpecificationContent } from './specification.ts';
import { compareSpecifications, specificationGroups, specificationLines } from './specification-lines.ts';
import {
  beginSpecification,
  openSpecification,
  specificationStarts,
  startBasis,
} from './specification-starts.ts';

const places = ['GB-ENG', 'EU', 'US'];

describe('specification-starts', () => {
  test('every beginning is a specification that can be saved, in every place', () => {
    for (const start of specificationStarts)
      for (const place of places) {
        const content = beginSpecification(start, place);
        expect(SpecificationContent.parse(content)).toEqual(content);
        expect(content.arrivesAtMostC, `${start.id} ${place}`).not.toBeNull();
        expect(content.refusedIf.length, start.id).toBeGreaterThan(0);
      }
  });

  test('each says what it rests on: the words as common practice, the cold with its citation', () => {
    for (const start of specificationStarts) {
      const basis = startBasis(start, 'GB-ENG');
      expect(basis[0]?.confidence).toBe('common practice');
      expect(basis[1]?.what).toMatch(/853\/2004/);
      for (const b of basis) expect(sources[b.source], b.source).toBeDefined();
    }
  });

  test('nothing is asked where nothing was filled in, but what it is', () => {
    expect(specificationLines(openSpecification, 'metric').map((l) => l.key)).toEqual(['what']);
  });

  test('ids are told apart', () => {
    expect(new Set(specificationStarts.map((s) => s.id)).size).toBe(specificationStarts.length);
  });
});

describe('compareSpecifications', () => {
  const neck = beginSpecification(specificationStarts[0]!, 'GB-ENG');

  test('a changed length, a new refusal and one that is gone are told apart', () => {
    const later = {
      ...neck,
      dimensions: [{ ...neck.dimensions[0]!, lowMm: 200 }],
      refusedIf: ['frozen', ...neck.refusedIf.slice(1)],
    };
    const changed = compareSpecifications(neck, later, 'metric').filter((l) => l.change !== 'same');
    expect(changed.map((l) => [l.change, l.before, l.after])).toEqual([
      ['changed', 'at least 180 mm', 'at least 200 mm'],
      ['new', null, 'frozen'],
      ['gone', 'skin slit or torn', null],
    ]);
  });

  test('the same version against itself is the same in every line', () => {
    for (const start of specificationStarts) {
      const c = beginSpecification(start, 'US');
      expect(compareSpecifications(c, c, 'US').every((l) => l.change === 'same')).toBe(true);
    }
  });

  test('turned round, what was new is gone and what was gone is new', () => {
    const text = fc.constantFrom('torn', 'warm', 'wet', 'old', 'no mark');
    const list = fc.uniqueArray(text, { maxLength: 5 });
    fc.assert(
      fc.property(list, list, (a, b) => {
        const there = compareSpecifications({ ...neck, refusedIf: a }, { ...neck, refusedIf: b }, 'metric');
        const back = compareSpecifications({ ...neck, refusedIf: b }, { ...neck, refusedIf: a }, 'metric');
        const of = (lines: typeof there, change: string) =>
          lines
            .filter((l) => l.change === change)
            .map((l) => l.key)
            .sort();
        expect(of(there, 'new')).toEqual(of(back, 'gone'));
        expect(of(there, 'gone')).toEqual(of(back, 'new'));
        expect(of(there, 'new')).toEqual(
          b
            .filter((x) => !a.includes(x))
            .map((x) => `refused ${x}`)
            .sort(),
        );
      }),
    );
  });

  test('lines stand in the order of the job', () => {
    const order = compareSpecifications(openSpecification, neck, 'metric').map((l) =>
      specificationGroups.indexOf(l.group),
    );
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  test('read in the units of the kitchen', () => {
    const cold = specificationLines(neck, 'US').find((l) => l.key === 'arrivesAtMostC');
    expect(cold?.text).toBe('39.2 °F or colder');
  });
});
