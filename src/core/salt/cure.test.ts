import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cure } from './cure.ts';
import type { CureMedium, CurePiece, CureStage } from './cure-piece.ts';
import { cureEquilibrium } from './equilibrium.ts';
import {
  earlyDepth,
  middleInEndlessBath,
  type SaltShape,
  uptakeInEndlessBath,
  uptakeInLimitedBath,
} from './series.ts';

const shapes: SaltShape[] = ['slab', 'cylinder', 'sphere'];
const D = 2e-10;
const R = 0.01;
const at = (Fo: number) => (Fo * R * R) / D;
const piece = (shape: SaltShape, more: Partial<CurePiece> = {}): CurePiece => ({
  shape,
  size: 2 * R,
  exposedFaces: 2,
  mass: 1,
  water: 0.7576,
  salt: 0,
  ...more,
});
const one = (p: CurePiece, medium: CureMedium, time: number, temperature = 5) =>
  cure({ piece: p, stages: [{ medium, temperature, time }], diffusivity: D });
const firstOf = (result: ReturnType<typeof cure>) => {
  const [stage] = result.stages;
  if (stage === undefined) throw new Error('no stage');
  return stage;
};
const uptake = (p: CurePiece, medium: CureMedium, time: number) => {
  const stage = firstOf(one(p, medium, time));
  return stage.takenKg / (stage.equilibrium.saltKg - p.mass * p.salt);
};
const kept: CureMedium = { kind: 'kept', salt: 0.06 };

describe('cure against the series', () => {
  it.each(shapes)('%s in an endless bath, to 1e-4', (shape) => {
    for (const Fo of [0.001, 0.01, 0.05, 0.1728, 0.5, 1])
      expect(
        Math.abs(uptake(piece(shape), kept, at(Fo)) - uptakeInEndlessBath(shape, Fo)),
        `Fo ${Fo}`,
      ).toBeLessThan(1e-4);
  });

  it.each(shapes)('%s in a limited bath, to 1e-4', (shape) => {
    for (const alpha of [0.3, 1, 5])
      for (const Fo of [0.01, 0.1, 0.3]) {
        const bath: CureMedium = { kind: 'bath', mass: (alpha * 0.7576) / 0.92, salt: 0.08 };
        expect(
          Math.abs(uptake(piece(shape), bath, at(Fo)) - uptakeInLimitedBath(shape, alpha, Fo)),
          `α ${alpha}, Fo ${Fo}`,
        ).toBeLessThan(1e-4);
      }
  });

  it('a cylinder of 20 mm in 24 h: 0.744705 of its salt, 0.415774 at the middle', () => {
    expect(Math.abs(uptake(piece('cylinder'), kept, 86_400) - 0.744705)).toBeLessThan(1e-4);
  });

  it.each(shapes)('%s: the core', (shape) => {
    const { end } = firstOf(one(piece(shape), kept, at(0.1728)));
    const ratio = (w: number) => w / (1 - w);
    const core = ratio(end.coreWaterPhase) / ratio(0.06);
    expect(Math.abs(core - middleInEndlessBath(shape, 0.1728))).toBeLessThan(1e-4);
  });

  it('a slab with one face is half of one twice as thick', () => {
    const single = uptake(piece('slab', { size: R, exposedFaces: 1 }), kept, at(0.2));
    expect(single).toBeCloseTo(uptake(piece('slab'), kept, at(0.2)), 9);
  });

  it('early, under a flat surface: erfc to 0.5 % of the bath', () => {
    const time = at(0.01);
    const { profile } = one(piece('slab', { size: 0.02 }), kept, time);
    const ratio = (w: number) => w / (1 - w);
    let compared = 0;
    for (const { depth, waterPhase } of profile) {
      const exact = earlyDepth(depth, D, time);
      if (exact < 1e-3) continue;
      compared++;
      expect(Math.abs(ratio(waterPhase) / ratio(0.06) - exact), `${depth} m`).toBeLessThan(0.005);
    }
    expect(compared).toBeGreaterThan(10);
    expect(Math.abs(uptake(piece('slab'), kept, time) / (2 * Math.sqrt(0.01 / Math.PI)) - 1)).toBeLessThan(
      0.005,
    );
  });

  it('nine tenths: the time at which the series says 0.9', () => {
    for (const shape of shapes) {
      const stage = firstOf(one(piece(shape), kept, 3600));
      expect(uptakeInEndlessBath(shape, ((stage.to90 ?? 0) * D) / R ** 2)).toBeCloseTo(0.9, 3);
      expect(middleInEndlessBath(shape, ((stage.coreTo90 ?? 0) * D) / R ** 2)).toBeCloseTo(0.9, 3);
    }
  });
});

describe('the end of a cure is the balance of mass', () => {
  it.each(shapes)('%s in a limited bath, to 1e-9', (shape) => {
    const bath: CureMedium = { kind: 'bath', mass: 1, salt: 0.06 };
    const { end } = firstOf(one(piece(shape), bath, at(60)));
    const rest = cureEquilibrium({ meat: 1, water: 0.7576, medium: 1, mediumSalt: 0.06 });
    expect(Math.abs(end.meanWaterPhase - rest.waterPhaseSalt)).toBeLessThan(1e-9);
    expect(Math.abs(end.coreWaterPhase - rest.waterPhaseSalt)).toBeLessThan(1e-9);
    expect(Math.abs(end.mean - rest.saltOfSalted)).toBeLessThan(1e-9);
  });

  it('dry salt: all of it goes in, then the piece evens out', () => {
    const result = one(piece('slab', { salt: 0.002 }), { kind: 'dry', salt: 0.03 }, at(60));
    const stage = firstOf(result);
    expect(stage.undissolvedKg).toBe(0);
    expect(stage.usedUpAt).toBeGreaterThan(0);
    expect(Math.abs(stage.takenKg - 0.03)).toBeLessThan(1e-12);
    const rest = cureEquilibrium({ meat: 1, water: 0.7576, medium: 0.03, mediumSalt: 1, saltBefore: 0.002 });
    expect(Math.abs(stage.end.coreWaterPhase - rest.waterPhaseSalt)).toBeLessThan(1e-9);
    expect(Math.abs(stage.end.surfaceWaterPhase - rest.waterPhaseSalt)).toBeLessThan(1e-9);
  });

  it('dry salt, while some is left, is a bath kept at saturation', () => {
    const dry = firstOf(one(piece('cylinder'), { kind: 'dry', salt: 1 }, at(0.05)));
    const full = firstOf(one(piece('cylinder'), { kind: 'kept', salt: 0.2633 }, at(0.05)));
    expect(dry.takenKg).toBeCloseTo(full.takenKg, 4);
    expect(dry.takenKg / dry.equilibrium.saltKg).toBeCloseTo(uptakeInEndlessBath('cylinder', 0.05), 4);
  });

  it('more dry salt than the water dissolves stays on the piece', () => {
    const stage = firstOf(one(piece('sphere'), { kind: 'dry', salt: 1 }, at(20)));
    expect(stage.end.coreWaterPhase).toBeCloseTo(0.2633, 3);
    expect(stage.undissolvedKg + stage.takenKg).toBeCloseTo(1, 12);
    expect(stage.usedUpAt).toBeNull();
  });

  it('cure, rinse, rest: rinsing takes salt from the surface, resting evens out and loses none', () => {
    const stages: CureStage[] = [
      { medium: { kind: 'bath', mass: 1, salt: 0.1 }, temperature: 4, time: at(0.1) },
      { medium: { kind: 'bath', mass: 5, salt: 0 }, temperature: 10, time: at(0.002) },
      { medium: { kind: 'rest' }, temperature: 2, time: at(20) },
    ];
    const { stages: results, balance, history } = cure({ piece: piece('cylinder'), stages, diffusivity: D });
    const [cured, rinsed, rested] = results;
    if (cured === undefined || rinsed === undefined || rested === undefined)
      throw new Error('a stage is missing');
    expect(rinsed.takenKg).toBeLessThan(-1e-4);
    expect(rinsed.end.surface).toBeLessThan(cured.end.surface / 3);
    expect(Math.abs(rested.takenKg)).toBeLessThan(1e-12);
    expect(rested.end.core).toBeCloseTo(rested.end.mean, 9);
    expect(rested.to90).toBeNull();
    expect(rested.coreTo90).toBeGreaterThan(0);
    expect(Math.abs(balance)).toBeLessThan(1e-11);
    expect(history.every((state, i) => i === 0 || state.t >= history[i - 1]!.t)).toBe(true);
  });
});

describe('cure keeps salt and order', () => {
  const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  it('makes and loses none, and no place is stronger than the strongest nor weaker than the weakest', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...shapes),
        double(0.3, 0.9),
        double(0, 0.04),
        double(0.05, 20),
        double(0, 0.26),
        double(1e-3, 3),
        fc.option(double(0.05, 0.5), { nil: undefined }),
        (shape, water, salt, mass, strength, Fo, skin) => {
          const p = piece(shape, {
            water,
            salt,
            ...(skin === undefined ? {} : { skin: { thickness: skin * R, water: 0.5, diffusivity: 1e-11 } }),
          });
          const { history, balance, profile } = one(p, { kind: 'bath', mass, salt: strength }, at(Fo));
          expect(Math.abs(balance)).toBeLessThan(1e-9);
          const before = history[0]?.meanWaterPhase ?? Number.NaN;
          const low = Math.min(before, strength) - 1e-7;
          const high = Math.max(before, strength) + 1e-7;
          for (const s of history)
            for (const w of [s.coreWaterPhase, s.surfaceWaterPhase, s.meanWaterPhase]) {
              expect(w).toBeGreaterThanOrEqual(low);
              expect(w).toBeLessThanOrEqual(high);
            }
          for (const { waterPhase } of profile) {
            expect(waterPhase).toBeGreaterThanOrEqual(low);
            expect(waterPhase).toBeLessThanOrEqual(high);
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  it('a skin of the same stuff changes nothing, a tight one slows', () => {
    const plain = uptake(piece('cylinder'), kept, at(0.1));
    const skin = (diffusivity: number) =>
      uptake(piece('cylinder', { skin: { thickness: 0.002, water: 0.7576, diffusivity } }), kept, at(0.1));
    expect(skin(D)).toBeCloseTo(plain, 4);
    expect(skin(D / 20)).toBeLessThan(plain / 2);
  });

  it('a warmer cure is quicker', () => {
    const to90 = (temperature: number) =>
      firstOf(cure({ piece: piece('slab'), stages: [{ medium: kept, temperature, time: 3600 }] })).to90 ?? 0;
    expect(to90(0) / to90(5)).toBeCloseTo(2.5 / 2.051, 3);
    expect(to90(20) / to90(5)).toBeCloseTo(2.5 / 4.347, 3);
  });
});

describe('cure refuses', () => {
  it.each([
    ['piece.size', () => one(piece('slab', { size: 0 }), kept, 60)],
    ['piece.water', () => one(piece('slab', { water: 0 }), kept, 60)],
    ['piece.salt', () => one(piece('slab', { water: 0.3, salt: 0.2 }), kept, 60)],
    ['stages[0].medium.salt', () => one(piece('slab'), { kind: 'kept', salt: 0.28 }, 60)],
    ['stages[0].temperature', () => one(piece('slab'), kept, 60, 40)],
    ['stages[0].temperature', () => one(piece('slab'), { kind: 'kept', salt: 0.001 }, 60, -1)],
    ['stages[0].time', () => one(piece('slab'), kept, Number.NaN)],
    ['piece.skin.thickness', () => one(piece('slab', { skin: { thickness: 0.02, water: 0.6 } }), kept, 60)],
  ])('%s', (path, run) => {
    expect(run).toThrow(path);
  });
});
