import { describe, expect, test } from 'vitest';
import { specificationStarts } from '../../contract/specification-starts.ts';
import { lengthWords, pieceOutlineScene } from './piece-outline.ts';

const metric = { width: 600, units: 'metric' as const };

describe('pieceOutlineScene', () => {
  test('stays in its frame for every beginning, narrow and wide', () => {
    for (const start of specificationStarts)
      for (const width of [320, 700, 1_200]) {
        const scene = pieceOutlineScene(start.species, start.words.what ?? '', start.words.dimensions ?? [], {
          width,
          units: 'metric',
        });
        for (const mark of scene.marks) {
          const points: (readonly [number, number])[] =
            'points' in mark ? [...mark.points] : [[mark.x, mark.y]];
          for (const [x, y] of points) {
            expect(x, start.id).toBeGreaterThanOrEqual(0);
            expect(x, start.id).toBeLessThanOrEqual(scene.width);
            expect(y, start.id).toBeGreaterThanOrEqual(0);
            expect(y, start.id).toBeLessThanOrEqual(scene.height);
          }
        }
      }
  });

  test('half as long is drawn half as long', () => {
    const scene = pieceOutlineScene(
      'pig',
      'trotter',
      [
        { name: 'toes to cut', lowMm: 300, highMm: null },
        { name: 'toes to hock', lowMm: 150, highMm: null },
      ],
      metric,
    );
    // A dimension line lies flat, two points, below the piece.
    const flat = scene.marks.flatMap((m) =>
      m.kind === 'polyline' &&
      m.points.length === 2 &&
      m.points[0]![1] === m.points[1]![1] &&
      m.points[0]![1] > 150
        ? [Math.abs(m.points[0]![0] - m.points[1]![0])]
        : [],
    );
    expect(flat).toHaveLength(2);
    expect(flat[0]! / flat[1]!).toBeCloseTo(2, 6);
  });

  test('every length is in the words and in the table, in the units of the kitchen', () => {
    const scene = pieceOutlineScene('goose', 'neck', [{ name: 'skin', lowMm: 180, highMm: 200 }], {
      width: 600,
      units: 'US',
    });
    expect(scene.title).toContain('7.09 in to 7.87 in');
    expect(scene.table?.rows).toEqual([['skin', '7.09 in to 7.87 in']]);
  });

  test('a neck is not drawn as a head', () => {
    const body = (what: string) => pieceOutlineScene('goose', what, [], metric).marks[0];
    expect(body('neck with skin')).not.toEqual(body('head'));
    expect(body('something nobody drew')).toEqual(body('another such thing'));
  });
});

test('lengthWords', () => {
  expect(lengthWords({ name: '', lowMm: 180, highMm: null }, 'metric')).toBe('at least 180 mm');
  expect(lengthWords({ name: '', lowMm: null, highMm: 40 }, 'metric')).toBe('at most 40 mm');
  expect(lengthWords({ name: '', lowMm: 40, highMm: 40 }, 'metric')).toBe('40 mm');
  expect(lengthWords({ name: '', lowMm: null, highMm: null }, 'metric')).toBe('how long is not said');
});
