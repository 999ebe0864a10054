import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cure } from './cure.ts';
import type { CureMedium, CurePiece } from './cure-piece.ts';
import { cureEquilibrium } from './equilibrium.ts';
import { pumpedPiece } from './pumped.ts';
import { evenSalt, saltForTarget, strengthForTime, timeToTarget } from './target.ts';

const piece = (more: Partial<CurePiece> = {}): CurePiece => ({
  shape: 'cylinder',
  size: 0.04,
  exposedFaces: 2,
  mass: 1,
  water: 0.75,
  salt: 0,
  ...more,
});
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const endOf = (p: CurePiece, medium: CureMedium, time: number, temperature = 4) => {
  const [stage] = cure({ piece: p, stages: [{ medium, temperature, time }] }).stages;
  if (stage === undefined) throw new Error('no stage');
  return stage.end;
};

describe('saltForTarget', () => {
  it('is the equilibrium the other way round, to 1e-12', () => {
    fc.assert(
      fc.property(
        double(0.3, 0.9),
        double(0, 0.01),
        double(0.011, 0.04),
        double(0.3, 10),
        fc.boolean(),
        (water, salt, wanted, brineKg, dry) => {
          const p = piece({ water, salt });
          const { strength, saltKg } = saltForTarget(p, wanted, dry ? undefined : brineKg);
          const medium = dry ? saltKg : brineKg;
          const rest = cureEquilibrium({ meat: 1, water, saltBefore: salt, medium, mediumSalt: strength });
          expect(Math.abs(rest.saltOfSalted - wanted)).toBeLessThan(1e-12);
          expect(saltKg).toBeCloseTo(medium * strength, 12);
        },
      ),
    );
  });

  it('refuses more than a saturated brine gives, and less than the piece has', () => {
    expect(() => saltForTarget(piece(), 0.1, 0.2)).toThrow(/saturated/);
    expect(() => saltForTarget(piece({ salt: 0.03 }), 0.02)).toThrow(/has more already/);
    expect(() => saltForTarget(piece(), Number.NaN)).toThrow(RangeError);
  });
});

describe('evenSalt', () => {
  it('meat and water with it end at what was wanted, to 1e-12', () => {
    fc.assert(
      fc.property(double(0.3, 0.9), double(0.005, 0.05), double(0, 5), (water, wanted, waterKg) => {
        const saltKg = evenSalt(piece({ water }), wanted, waterKg);
        const medium = waterKg + saltKg;
        const rest = cureEquilibrium({ meat: 1, water, medium, mediumSalt: saltKg / medium });
        expect(Math.abs(rest.saltOfSalted - wanted)).toBeLessThan(1e-12);
      }),
    );
    expect(() => evenSalt(piece(), 0.02, -1)).toThrow(RangeError);
  });
});

describe('timeToTarget', () => {
  it.each(['bath', 'kept', 'dry'] as const)('%s: the cure of that time has what was wanted', (kind) => {
    const medium: CureMedium =
      kind === 'bath'
        ? { kind, mass: 2, salt: 0.08 }
        : kind === 'kept'
          ? { kind, salt: 0.08 }
          : { kind, salt: 0.025 };
    const time = timeToTarget({ piece: piece(), medium, temperature: 4 }, 0.018);
    expect(time).toBeGreaterThan(1000);
    expect(endOf(piece(), medium, time ?? 0).mean).toBeCloseTo(0.018, 5);
    const core = timeToTarget({ piece: piece(), medium, temperature: 4 }, 0.018, 'core');
    expect(core).toBeGreaterThan(time ?? 0);
    expect(endOf(piece(), medium, core ?? 0).core).toBeCloseTo(0.018, 5);
  });

  it('never, where the brine ends below it; the slowest takes longest', () => {
    const medium: CureMedium = { kind: 'bath', mass: 1, salt: 0.03 };
    expect(timeToTarget({ piece: piece(), medium, temperature: 4 }, 0.018)).toBeNull();
    const strong: CureMedium = { kind: 'bath', mass: 1, salt: 0.1 };
    const times = (['quickest', 'usual', 'slowest'] as const).map(
      (pace) => timeToTarget({ piece: piece(), medium: strong, temperature: 4, pace }, 0.018) ?? Number.NaN,
    );
    expect(times[1]! / times[0]!).toBeCloseTo(4 / 2.5, 6);
    expect(times[2]! / times[1]!).toBeCloseTo(2.5 / 1.5, 6);
  });

  it('the dry salt that is just what is wanted gets there', () => {
    const { saltKg } = saltForTarget(piece(), 0.018);
    const time = timeToTarget(
      { piece: piece(), medium: { kind: 'dry', salt: saltKg }, temperature: 4 },
      0.018,
    );
    expect(time).not.toBeNull();
  });
});

describe('strengthForTime', () => {
  it.each([2, undefined])('brine of %s kg: the cure with that strength has what was wanted', (kg) => {
    const strength = strengthForTime({ piece: piece(), temperature: 4 }, kg, 12 * 3600, 0.018);
    const salt = strength ?? Number.NaN;
    const medium: CureMedium = kg === undefined ? { kind: 'kept', salt } : { kind: 'bath', mass: kg, salt };
    expect(endOf(piece(), medium, 12 * 3600).mean).toBeCloseTo(0.018, 5);
  });

  it('none, where even a saturated brine is too slow', () => {
    expect(strengthForTime({ piece: piece({ size: 0.2 }), temperature: 4 }, 2, 3600, 0.03)).toBeNull();
  });
});

describe('pumpedPiece', () => {
  it('holds the salt and the water of piece and brine', () => {
    const p = pumpedPiece(piece({ salt: 0.002 }), 0.12, 0.15);
    expect(p.mass * p.salt).toBeCloseTo(0.002 + 0.12 * 0.15, 12);
    expect(p.mass * p.water).toBeCloseTo(0.75 + 0.12 * 0.85, 12);
    expect(p.mass).toBeCloseTo(1.12, 12);
    expect(() => pumpedPiece(piece(), -0.1, 0.1)).toThrow(RangeError);
    expect(() => pumpedPiece(piece(), 0.1, 0.4)).toThrow(RangeError);
  });
});
