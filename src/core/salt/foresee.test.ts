import { describe, expect, it } from 'vitest';
import { type CureProblem, cure } from './cure.ts';
import { foreseeCure } from './foresee.ts';

const problem: CureProblem = {
  piece: { shape: 'slab', size: 0.03, exposedFaces: 2, mass: 1, water: 0.7, salt: 0 },
  stages: [{ medium: { kind: 'bath', mass: 1, salt: 0.06 }, temperature: 4, time: 12 * 3600 }],
};

describe('foreseeCure', () => {
  it('times stand to one another as the diffusivities do', () => {
    const { even, wanted } = foreseeCure(problem, 0.015);
    for (const span of [even, wanted?.time]) {
      expect((span?.usual ?? 0) / (span?.quickest ?? 1)).toBeCloseTo(4 / 2.5, 6);
      expect((span?.slowest ?? 0) / (span?.usual ?? 1)).toBeCloseTo(2.5 / 1.5, 6);
    }
  });

  it('even is nine tenths of the core’s way; in one stage the time `cure` gives it', () => {
    const { even } = foreseeCure(problem);
    expect(even.usual).toBeCloseTo(cure(problem).stages[0]?.coreTo90 ?? Number.NaN, 3);
  });

  it('a rest after the cure is counted from the first stage on', () => {
    const rested: CureProblem = {
      ...problem,
      stages: [
        { medium: { kind: 'dry', salt: 0.018 }, temperature: 4, time: 6 * 3600 },
        { medium: { kind: 'rest' }, temperature: 2, time: 3600 },
      ],
    };
    const { even, result } = foreseeCure(rested);
    const longer = foreseeCure({
      ...rested,
      stages: rested.stages.map((s, i) => (i === 1 ? { ...s, time: 90 * 3600 } : s)),
    });
    expect(even.usual).toBeGreaterThan(7 * 3600);
    expect(even.usual).toBeCloseTo(longer.even.usual ?? 0, 3);
    const at = longer.result.history.findIndex((s) => s.t >= (even.usual ?? 0));
    const state = longer.result.history[at];
    const end = result.stages[1]?.equilibrium.waterPhase ?? Number.NaN;
    expect((state?.coreWaterPhase ?? 0) / end).toBeGreaterThan(0.895);
    expect((longer.result.history[at - 1]?.coreWaterPhase ?? 1) / end).toBeLessThan(0.905);
  });

  it('no range where everything was given; no strength for dry salt; nothing where nothing reaches it', () => {
    const given = foreseeCure({ ...problem, diffusivity: 2e-10 }, 0.05);
    expect(given.ranged).toBe(false);
    expect(given.slowest).toBeNull();
    expect(given.wanted?.time.usual).toBeNull();
    const dry = foreseeCure(
      { ...problem, stages: [{ medium: { kind: 'dry', salt: 0.02 }, temperature: 4, time: 3600 }] },
      0.02,
    );
    expect(dry.wanted?.strength).toBeNull();
    expect(dry.wanted?.atRest?.strength).toBe(1);
  });

  it('coarse: within a hundredth of fine, and keeps salt as well', () => {
    const skinned = { ...problem.piece, skin: { thickness: 0.003, water: 0.5 } };
    for (const piece of [problem.piece, skinned]) {
      const fine = foreseeCure({ ...problem, piece }, 0.015);
      const coarse = foreseeCure({ ...problem, piece, detail: 'coarse' }, 0.015);
      expect(Math.abs(coarse.result.balance)).toBeLessThan(1e-9);
      const [a, b] = [fine.result.history.at(-1), coarse.result.history.at(-1)];
      for (const key of ['mean', 'core', 'surface'] as const)
        expect(Math.abs((b?.[key] ?? 0) - (a?.[key] ?? 1)), key).toBeLessThan(0.01 * (a?.mean ?? 0));
      expect((coarse.even.usual ?? 0) / (fine.even.usual ?? 1)).toBeCloseTo(1, 1.7);
      expect((coarse.wanted?.time.usual ?? 0) / (fine.wanted?.time.usual ?? 1)).toBeCloseTo(1, 1.7);
    }
  });

  it('frames: one for each moment, from the surface to the core, the last the profile', () => {
    const { history, frames, depths, profile } = foreseeCure(problem).result;
    expect(frames).toHaveLength(history.length);
    for (const [i, frame] of frames.entries()) {
      expect(frame).toHaveLength(depths.length);
      expect(frame[0]).toBe(history[i]?.surfaceWaterPhase);
      expect(frame.at(-1)).toBe(history[i]?.coreWaterPhase);
    }
    expect(profile.map((p) => p.waterPhase)).toEqual(frames.at(-1));
    expect(depths[0]).toBe(0);
    expect(depths.at(-1)).toBe(0.015);
    expect(depths.every((d, i) => i === 0 || d > (depths[i - 1] ?? 0))).toBe(true);
  });
});
