import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Method, Step } from '../../contract/steps.ts';
import { methodRibbon, methodRibbonScene } from './method-ribbon.ts';
import type { Scene } from './scene.ts';
import { stepLimits, stepTime, timeText } from './step-time.ts';
import { fitText } from './text-fit.ts';

const id = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`;
const common = (n: number, name = `Step ${n}`, handsMin = 10) => ({
  id: id(n),
  name,
  how: '',
  handsMin,
  asks: [],
});

const cure = (n: number, h: number, hands = 10, name?: string): Step => ({
  kind: 'cure',
  ...common(n, name, hands),
  by: 'dry cure',
  saltPct: 1.8,
  h,
  mediumC: 3,
});
const cook: Step = {
  kind: 'cook',
  ...common(90, 'Steam'),
  body: {
    shape: 'sphere',
    diameterMm: 40,
    layers: [{ name: 'x', properties: { kWmK: 0.5, rhoKgM3: 1000, cpJkgK: 3500 } }],
  },
  startC: 5,
  stages: [
    { name: 'steam', medium: 'steam', until: { coldestC: 65 } },
    { name: 'stand', mediumC: 20, hWm2K: 10, until: { min: 8 } },
  ],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  rules: [],
};

const finite = (scene: Scene) => {
  for (const mark of scene.marks) {
    const numbers = 'points' in mark ? mark.points.flat() : [mark.x, mark.y];
    for (const n of numbers) expect(Number.isFinite(n)).toBe(true);
  }
};

describe('methodRibbon', () => {
  it('never overlaps: boxes stand side by side, in order, and fill the width', () => {
    const steps = fc.array(
      fc.record({
        h: fc.double({ min: 0, max: 2000, noNaN: true }),
        hands: fc.double({ min: 0, max: 10_080, noNaN: true }),
        name: fc.string({ maxLength: 120 }),
      }),
      { minLength: 1, maxLength: 40 },
    );
    fc.assert(
      fc.property(steps, fc.integer({ min: 100, max: 2000 }), fc.boolean(), (rows, width, small) => {
        const method = rows.map((r, i) => cure(i, r.h, r.hands, r.name));
        const { boxes, scene } = methodRibbon(method, { width, small });
        expect(boxes.map((b) => b.stepId)).toEqual(method.map((s) => s.id));
        boxes.forEach((box, i) => {
          expect(box.width).toBeGreaterThanOrEqual(small ? 8 : 68);
          expect(box.x).toBeCloseTo(i === 0 ? 0 : boxes[i - 1]!.x + boxes[i - 1]!.width, 6);
        });
        expect(boxes.at(-1)!.x + boxes.at(-1)!.width).toBeCloseTo(scene.width, 6);
        finite(scene);
        for (const mark of scene.marks)
          if (mark.kind === 'polygon')
            for (const [x, y] of mark.points) {
              expect(x).toBeGreaterThanOrEqual(-1e-9);
              expect(x).toBeLessThanOrEqual(scene.width + 1e-9);
              expect(y).toBeLessThanOrEqual(scene.height);
            }
      }),
      { numRuns: 60 },
    );
  });

  it('keeps the words of a step inside its own column', () => {
    const method = [
      cure(1, 12, 5, 'An uncommonly long name for a step that nobody would give'),
      cook,
      cure(2, 1, 90, 'Unbreakablewordwithoutanyspaceatall'),
    ];
    const { boxes, scene } = methodRibbon(method, { width: 300 });
    for (const mark of scene.marks) {
      if (mark.kind !== 'text') continue;
      const box = boxes.findLast((b) => b.x <= mark.x + 1e-9)!;
      expect(mark.x + [...mark.text].length * mark.size * 0.5).toBeLessThanOrEqual(box.x + box.width + 1e-6);
    }
  });

  it('gives a longer wait a longer step, raises hands and lowers waiting', () => {
    const { boxes, scene } = methodRibbon([cure(1, 1), cure(2, 48)], { width: 600 });
    expect(boxes[1]!.width).toBeGreaterThan(boxes[0]!.width);
    const polygons = scene.marks.flatMap((m) => (m.kind === 'polygon' ? [m] : []));
    expect(Math.max(...polygons[0]!.points.map(([, y]) => y))).toBe(40);
    expect(Math.min(...polygons[1]!.points.map(([, y]) => y))).toBe(40);
  });

  it('has a table with every step, and draws an empty method', () => {
    const method: Method = [cure(1, 12), cook];
    expect(methodRibbonScene(method).table?.rows).toHaveLength(2);
    expect(methodRibbonScene([]).marks.length).toBeGreaterThan(0);
  });
});

describe('step times and limits', () => {
  it('says what is known of a time and what is not', () => {
    expect(timeText(stepTime(cure(1, 12)))).toBe('12 h');
    expect(timeText(stepTime(cook))).toBe('8 min or more');
  });
  it('counts the target of a cook step as a critical limit', () => {
    expect(stepLimits(cook, 'metric')[0]).toMatchObject({ text: '70 °C for 2 min', critical: true });
    expect(stepLimits(cook, 'US')[0]?.text).toBe('158 °F for 2 min');
  });
});

describe('fitText', () => {
  it('never makes a line longer than its width', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 200 }),
        fc.integer({ min: 12, max: 400 }),
        fc.integer({ min: 1, max: 4 }),
        (text, width, lines) => {
          const fitted = fitText(text, width, 12, lines);
          expect(fitted.length).toBeLessThanOrEqual(lines);
          for (const line of fitted) expect([...line].length * 6).toBeLessThanOrEqual(Math.max(width, 6));
        },
      ),
    );
  });
});
