import { describe, expect, test } from 'vitest';
import {
  brick,
  coefficient,
  eigenvalue,
  finiteCylinder,
  type Simple,
  semiInfinite,
  theta,
  thetaMean,
} from './series.ts';
import { layeredCylinder, stagedCylinder } from './series-composite.ts';

// One-term coefficients as tabulated (Incropera table 5.1, Çengel table 4-1), to six figures.
const table: [number, number, number, number, number, number, number][] = [
  [0.01, 0.099834, 1.001661, 0.141245, 1.002496, 0.173032, 1.002998],
  [0.1, 0.311053, 1.016094, 0.441682, 1.024579, 0.542281, 1.029798],
  [0.5, 0.653271, 1.070128, 0.940771, 1.114255, 1.165561, 1.144106],
  [1, 0.860334, 1.119132, 1.255784, 1.207092, 1.570796, 1.27324],
  [2, 1.076874, 1.178456, 1.599449, 1.338377, 2.028758, 1.479319],
  [5, 1.313838, 1.240249, 1.989815, 1.502869, 2.570432, 1.787001],
  [10, 1.42887, 1.261963, 2.179497, 1.567692, 2.8363, 1.924909],
  [50, 1.540006, 1.272652, 2.357242, 1.600221, 3.078842, 1.996221],
  [100, 1.555245, 1.273088, 2.380902, 1.601524, 3.110187, 1.999033],
];

test.each(table)('one-term coefficients at Bi %s', (Bi, zs, cs, zc, cc, zb, cb) => {
  const rows: [Simple, number, number][] = [
    ['slab', zs, cs],
    ['cylinder', zc, cc],
    ['sphere', zb, cb],
  ];
  for (const [shape, z, c] of rows) {
    const got = eigenvalue(shape, Bi, 0);
    expect(Math.abs(got - z)).toBeLessThan(1e-6);
    expect(Math.abs(coefficient(shape, got) - c)).toBeLessThan(1e-6);
  }
});

test('the first six eigenvalues of a cylinder at Bi 10', () => {
  [2.179497, 5.033212, 7.956883, 10.93633, 13.95803, 17.009878].forEach((z, n) => {
    expect(Math.abs(eigenvalue('cylinder', 10, n) - z)).toBeLessThan(1e-6);
  });
});

test.each([
  [0.1, 0.2, 0.983674, 0.972945, 0.938584, 0.961549],
  [1, 0.1, 0.976817, 0.920502, 0.684565, 0.843266],
  [1, 1, 0.24938, 0.225399, 0.160338, 0.203347],
  [5, 0.2, 0.671418, 0.522225, 0.158917, 0.396197],
  [10, 0.5, 0.1458, 0.105625, 0.017758, 0.074765],
  [100, 0.2, 0.51271, 0.348782, 0.006484, 0.227303],
])(
  'infinite cylinder at Bi %s, Fo %s: centre, half, surface, mean',
  (Bi, Fo, centre, half, surface, mean) => {
    expect(theta('cylinder', Bi, Fo, 0)).toBeCloseTo(centre, 5);
    expect(theta('cylinder', Bi, Fo, 0.5)).toBeCloseTo(half, 5);
    expect(theta('cylinder', Bi, Fo, 1)).toBeCloseTo(surface, 5);
    expect(thetaMean('cylinder', Bi, Fo)).toBeCloseTo(mean, 5);
  },
);

describe('worked problems', () => {
  test('an egg of 50 mm, 5 to 70 °C in water at 95 °C (Çengel): 861.5 s by the whole series, book 865 by one term', () => {
    const [k, alpha, R, h] = [0.627, 0.151e-6, 0.025, 1200];
    const at = (t: number) => 95 - 90 * theta('sphere', (h * R) / k, (alpha * t) / R ** 2, 0);
    expect(at(861.468)).toBeCloseTo(70, 3);
    expect(at(865)).toBeGreaterThan(70);
  });
  test('steaks of 20 mm to 2 °C at the surface in air at −11 °C (Çengel): 93.1 min', () => {
    const [k, alpha, L, h] = [0.45, 0.91e-7, 0.01, 9];
    const surface = -11 + 36 * theta('slab', (h * L) / k, (alpha * 5590) / L ** 2, 1);
    expect(Math.abs(surface - 2)).toBeLessThan(0.02);
  });
  test('an apple of 60 mm, 15 to 3 °C in a slow stream at 2 °C (Singh & Heldman): about 3778 s', () => {
    const [k, rho, cp, R, h] = [0.355, 820, 3600, 0.03, 50];
    const centre = 2 + 13 * theta('sphere', (h * R) / k, ((k / rho / cp) * 3777.7) / R ** 2, 0);
    expect(Math.abs(centre - 3)).toBeLessThan(0.001);
  });
  test('a ham of 102 × 165 × 279 mm, 70 to 10 °C in air at −1 °C: 6.590 h', () => {
    const halves = [0.051, 0.0825, 0.1395];
    const C = -1 + 71 * brick(halves, [0, 0, 0], 48, 0.379, 0.379 / 1080 / 3740, 6.5898 * 3600);
    expect(Math.abs(C - 10)).toBeLessThan(0.005);
  });
  test.each([
    [0, 5, 89.0922],
    [0, 30, 130.2537],
    [0.001, 10, 51.0588],
    [0.002, 20, 41.8219],
    [0.003, 5, 5.3621],
  ])('hot oil on a thick piece, %s m deep after %s s', (x, t, C) => {
    expect(5 + 175 * semiInfinite(x, t, 400, 0.45, 1.3e-7)).toBeCloseTo(C, 3);
  });
  test('a finite cylinder of 40 × 120 mm', () => {
    const alpha = 0.48 / 1050 / 3500;
    expect(100 - 95 * finiteCylinder(0.02, 0.06, 1000, 0.48, alpha, 900, 0, 0)).toBeCloseTo(69.9531, 3);
    expect(100 - 95 * finiteCylinder(0.02, 0.06, 100, 0.48, alpha, 1800, 0, 0)).toBeCloseTo(84.1764, 3);
  });
});

describe('cylinders that are moved, and cylinders in a skin', () => {
  const food = { k: 0.48, rho: 1050, cp: 3500 };
  const stages = [
    { s: 900, medium: 100, h: 1000 },
    { s: 120, medium: 20, h: 10 },
    { s: 1200, medium: 0, h: 300 },
  ];
  test.each([
    [900, 69.94827, 79.42733, 99.09954],
    [1020, 75.76034, 82.60177, 84.35419],
    [1420, 65.63471, 49.23117, 7.15305],
    [2220, 18.88686, 13.49645, 1.85643],
  ])('stages, at %s s', (t, ...wanted) => {
    stagedCylinder(0.02, food, 5, stages, t, [0, 0.5, 1]).forEach((C, i) => {
      expect(C).toBeCloseTo(wanted[i] as number, 4);
    });
  });
  const core = { k: 0.48, rho: 1020, cp: 3470 };
  const skin = { k: 0.36, rho: 1000, cp: 3190 };
  test.each([
    [1000, 60, 5.0073, 10.1934, 46.8053, 93.118],
    [1000, 600, 60.8311, 75.1899, 89.2808, 98.7047],
    [100, 1200, 76.6439, 82.528, 88.8017, 93.4007],
  ])('a skin, h %s at %s s', (h, t, ...wanted) => {
    const got = layeredCylinder(0.015, 0.0175, core, skin, h, 100, 5, t, [0, 0.01, 0.015, 0.0175]);
    got.forEach((C, i) => {
      expect(C).toBeCloseTo(wanted[i] as number, 3);
    });
  });
  test('a skin of the same stuff is no skin', () => {
    const got = layeredCylinder(0.015, 0.02, food, food, 1000, 100, 5, 600, [0, 0.02]);
    const Bi = (1000 * 0.02) / 0.48;
    const Fo = ((0.48 / 1050 / 3500) * 600) / 0.02 ** 2;
    expect(got[0]).toBeCloseTo(100 - 95 * theta('cylinder', Bi, Fo, 0), 5);
    expect(got[1]).toBeCloseTo(100 - 95 * theta('cylinder', Bi, Fo, 1), 5);
  });
});
