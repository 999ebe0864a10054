import { describe, expect, test } from 'vitest';
import type { GentleAnswer } from '../../contract/gentle.ts';
import type { SureAnswer } from '../../contract/sure.ts';
import { gentleFrontScene, gentlePoints } from './gentle-front.ts';
import type { Scene } from './scene.ts';
import { mattersScene, sureStripScene, timesWords } from './sure-strip.ts';

const q = { p01: 30, p05: 31, p25: 32, p50: 33, p75: 34, p95: 36, p99: 37 };
const sure: SureAnswer = {
  stage: 'steam',
  confidence: 0.95,
  pieces: 24,
  minutesForConfidence: 37.81,
  estimateMin: 37.7,
  standardErrorMin: 0.05,
  nominalMin: 33,
  why: '',
  time: {
    meanMin: 33,
    sdMin: 1.4,
    piece: q,
    worst: { ...q, p50: 36 },
    histogram: { fromMin: 29, toMin: 40, piece: Array(40).fill(1 / 40), worst: Array(40).fill(1 / 40) },
    neverPct: 0,
  },
  lethality: null,
  sensitivity: [
    {
      input: 'thickerMm',
      shared: false,
      firstOrder: 0.8,
      firstOrderSe: 0.01,
      total: 0.82,
      totalSe: 0.01,
      minutesPerSd: 1.3,
    },
    {
      input: 'startC',
      shared: false,
      firstOrder: 0.001,
      firstOrderSe: 0,
      total: 0.002,
      totalSe: 0,
      minutesPerSd: -0.1,
    },
  ],
  engine: { samples: 1000, fineRuns: 49, finePct: -0.3, fineSdPct: 0.02, surfacePct: 0.1, seed: 1 },
  basis: [],
};

const inside = (scene: Scene) => {
  for (const mark of scene.marks)
    if (mark.kind === 'polygon' || mark.kind === 'polyline')
      for (const [x, y] of mark.points) {
        expect(x).toBeGreaterThanOrEqual(-0.5);
        expect(x).toBeLessThanOrEqual(scene.width + 0.5);
        expect(y).toBeLessThanOrEqual(scene.height);
      }
};
const texts = (scene: Scene) => scene.marks.flatMap((m) => (m.kind === 'text' ? [m.text] : []));

describe('sureStripScene', () => {
  test.each([330, 720])('fits %d, says the time rounded up and what is written', (width) => {
    const scene = sureStripScene(sure, { width, writtenMin: 34 });
    inside(scene);
    expect(texts(scene)).toContain('95 times in 100: 38 min');
    expect(texts(scene)).toContain('as written: 34 min');
    expect(scene.table?.rows).toHaveLength(2);
  });

  test('without a time that does, none is drawn', () => {
    const scene = sureStripScene({ ...sure, minutesForConfidence: null }, { writtenMin: null });
    expect(texts(scene).some((t) => t.includes('times in'))).toBe(false);
  });

  test.each([
    [0.9, '9 times in 10'],
    [0.95, '95 times in 100'],
    [0.999, '999 times in 1000'],
  ])('%d is %s', (confidence, words) => {
    expect(timesWords(confidence)).toBe(words);
  });
});

test('mattersScene leaves out what hardly matters and keeps every bar within', () => {
  const scene = mattersScene(sure.sensitivity, (i) => i, 300);
  inside(scene);
  expect(scene.table?.rows.map((r) => r[0])).toEqual(['thickerMm']);
});

describe('gentleFrontScene', () => {
  const point = (mediumC: number, min: number, overcookedPct: number, meanLossPct = 20) => ({
    mediumC,
    min,
    overcookedPct,
    meanLossPct,
    saltedLossPct: 2,
    coreC: 67,
    lethalityMin: 2.2,
    redLeftPct: 4,
  });
  const answer: GentleAnswer = {
    stage: 'steam',
    overcookedC: 75,
    front: [point(75, 54.9, 0), point(85, 43, 90, 28)],
    recommended: point(75, 54.9, 0),
    twoSteps: [
      {
        ...point(90, 48, 20, 25),
        steps: [
          { mediumC: 90, min: 12 },
          { mediumC: 74, min: 36 },
        ],
      },
    ],
    recommendedTwoSteps: null,
    why: '',
    runs: 100,
    basis: [],
  };

  test('the slowest comes first, and the gentlest is marked once', () => {
    const points = gentlePoints(answer);
    expect(points.map((p) => p.min)).toEqual([54.9, 48, 43]);
    expect(points.map((p) => p.recommended)).toEqual([true, false, false]);
  });

  test('fits, with a row for each', () => {
    const scene = gentleFrontScene(gentlePoints(answer), (p) => p.steps.map((s) => s.mediumC).join(), {
      width: 330,
      chosen: 1,
      overcooked: '75 °C',
    });
    inside(scene);
    expect(scene.table?.rows).toHaveLength(3);
  });

  test('where all overcook alike, the loss tells them apart', () => {
    const alike = { ...answer, twoSteps: [], front: [point(75, 54.9, 100, 20), point(85, 43, 100, 28)] };
    const scene = gentleFrontScene(gentlePoints(alike), () => '', { chosen: 0, overcooked: '75 °C' });
    expect(texts(scene)[0]).toMatch(/Water lost/);
  });
});
