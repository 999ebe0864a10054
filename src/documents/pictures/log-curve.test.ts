import { expect, test } from 'vitest';
import type { Judgement } from '../../contract/records.ts';
import { logCurveScene } from './log-curve.ts';
import { toSvg } from './svg.ts';

const judgement = (over: Partial<Judgement>): Judgement => ({
  rule: 'gb-70c-2min',
  title: '70 °C for 2 minutes',
  type: 'guidance',
  place: 'United Kingdom',
  passes: true,
  value: 3,
  limit: 2,
  unit: 'min',
  failedAtMin: null,
  decidingMin: 31,
  why: '',
  source: '',
  ...over,
});
const points = Array.from({ length: 61 }, (_, i) => ({
  s: i * 60,
  C: 5 + 70 * Math.sin((Math.PI * i) / 60),
}));
const words = (judgements: Judgement[], log = points) =>
  logCurveScene({ name: 'core', points: log, judgements }, { width: 600 }).marks.flatMap((m) =>
    m.kind === 'text' ? [m.text] : [],
  );

test('the limit’s own temperatures are drawn and the deciding reading says which way it decides', () => {
  expect(words([judgement({})])).toEqual(expect.arrayContaining(['70 °C: 2 min', 'decides: holds']));
  expect(words([judgement({ passes: false, failedAtMin: 60 })])).toContain('decides: does not hold');
  expect(words([judgement({ passes: null })])).toContain('undecided here');
  expect(words([judgement({ rule: 'gb-chill-90min-8c', decidingMin: 58 })])).toEqual(
    expect.arrayContaining(['from 63 °C', 'to 8 °C: 90 min']),
  );
});

test('what does not hold is never marked as what holds', () => {
  for (const passes of [false, null]) {
    const marks = logCurveScene(
      { name: 'core', points, judgements: [judgement({ passes })] },
      { width: 600 },
    ).marks;
    expect(marks.some((m) => m.kind === 'circle')).toBe(false);
    expect(marks.some((m) => m.kind === 'polygon' && m.stroke?.ink === 'rust')).toBe(true);
  }
});

test('stays inside its box and draws one reading, no judgement, or a rule that the book no longer holds', () => {
  for (const log of [points, [{ s: 0, C: 20 }], []])
    for (const judgements of [[], [judgement({})], [judgement({ rule: 'gone' })]]) {
      const scene = logCurveScene({ name: 'core', points: log, judgements }, { width: 600, height: 200 });
      expect(toSvg(scene)).not.toContain('NaN');
      for (const mark of scene.marks)
        for (const [x, y] of 'points' in mark ? mark.points : [[mark.x, mark.y] as const]) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(600);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(200);
        }
    }
});
