import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BandCholesky } from './band.ts';
import { esdirk3, esdirk4, ImplicitStepper, type StoredSystem, type Tableau } from './esdirk.ts';
import { gauss4 } from './gauss.ts';
import { hermite, hermiteIntegral, hermiteWeights } from './hermite.ts';
import { bracketedRoot } from './roots.ts';
import { besselJ0, besselJ1, besselY0, besselY1, besselZero, erfcx } from './special.ts';
import { Vectors } from './vectors.ts';

type Seven = [Float64Array, ...Six];
type Six = [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];

describe('BandCholesky', () => {
  test('solves any diagonally dominant band system of any size', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 1, max: 20 }),
        fc.infiniteStream(fc.double({ min: -1, max: 1, noNaN: true })),
        (n, band, stream) => {
          const next = () => stream.next().value as number;
          const full = Array.from({ length: n }, () => new Array<number>(n).fill(0));
          const matrix = new BandCholesky(n, band);
          matrix.clear();
          for (let i = 0; i < n; i++)
            for (let j = Math.max(0, i - band); j < i; j++) {
              const v = next();
              (full[i] as number[])[j] = v;
              (full[j] as number[])[i] = v;
              matrix.a[matrix.at(i, j)] = v;
            }
          full.forEach((row, i) => {
            row[i] = row.reduce((s, v) => s + Math.abs(v), 0.1);
            matrix.a[matrix.at(i, i)] = row[i] as number;
          });
          const x = Array.from({ length: n }, next);
          const b = Float64Array.from(full, (row) => row.reduce((s, v, j) => s + v * (x[j] as number), 0));
          expect(matrix.factorise()).toBe(true);
          matrix.solve(b);
          b.forEach((v, i) => {
            expect(Math.abs(v - (x[i] as number))).toBeLessThan(1e-9);
          });
        },
      ),
      { numRuns: 60 },
    );
  });
  test('says when a matrix is not positive definite', () => {
    const matrix = new BandCholesky(2, 1);
    matrix.clear();
    matrix.a[matrix.at(0, 0)] = 1;
    matrix.a[matrix.at(1, 0)] = 2;
    matrix.a[matrix.at(1, 1)] = 1;
    expect(matrix.factorise()).toBe(false);
  });
  test('one at a time: who comes back after another has begun is told so, and a system too large is refused', () => {
    const [first, second] = [new BandCholesky(1, 1), new BandCholesky(1, 1)];
    first.clear();
    first.a[first.at(0, 0)] = 4;
    expect(first.factorise()).toBe(true);
    second.clear();
    expect(() => first.solve(new Float64Array(1))).toThrow('another system');
    // Taking the memory back does not bring the factor back.
    expect(first.take()).toBe(true);
    expect(() => first.solve(new Float64Array(1))).toThrow('another system');
    expect(first.take()).toBe(false);
    expect(() => new BandCholesky(1e6, 100)).toThrow('too large');
  });
});

describe('Vectors', () => {
  const entries = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 6, maxLength: 6 });
  test('do what they say, entry by entry, whether their length is even or odd', () => {
    fc.assert(
      fc.property(
        fc.array(entries, { minLength: 1, maxLength: 9 }),
        fc.double({ min: -9, max: 9, noNaN: true }),
        (rows, w) => {
          const vectors = new Vectors(rows.length, 7);
          const [out, ...x] = Array.from({ length: 7 }, () => vectors.next()) as Seven;
          vectors.begin();
          x.forEach((v, j) => {
            v.set(rows.map((row) => row[j] as number));
          });
          const [a, b, c, d, e] = x;
          const is = (of: (r: number[]) => number) => {
            expect([...out]).toEqual(rows.map(of));
          };
          vectors.combine(out, a, b, [w, 2, 3]);
          is(([a, b, c, d]) => a! + w * b! + 2 * c! + 3 * d!);
          vectors.cubic(out, [w, 2, 3, 4], a, b, c, d, e);
          is(([a, b, c, d, e]) => w * a! + 2 * b! + 3 * c! + (4 * d!) / e!);
          vectors.residual(out, a, b, c, w);
          is(([a, b, c]) => a! - (b! - c!) * w);
          vectors.difference(out, a, b, w);
          is(([a, b]) => (a! - b!) * w);
          vectors.quotient(out, a, b);
          is(([a, b]) => a! / b!);
          out.set(a);
          expect(vectors.correct(out, b)).toBe(Math.max(...b.map(Math.abs)));
          is(([a, b]) => a! + b!);
        },
      ),
    );
  });
  test('a correction that is not a number is not lost, and too many unknowns are refused', () => {
    for (const n of [1, 2, 5]) {
      const vectors = new Vectors(n, 2);
      const [x, d] = [vectors.next(), vectors.next()];
      vectors.begin();
      d[0] = Number.NaN;
      expect(vectors.correct(x, d)).toBeNaN();
    }
    expect(() => new Vectors(1e6, 18)).toThrow('too many');
  });
});

describe.each<[string, Tableau]>([
  ['esdirk3', esdirk3],
  ['esdirk4', esdirk4],
])('%s', (_, tableau) => {
  const a = (i: number, j: number) => tableau.a[i]?.[j] ?? 0;
  const c = tableau.c;
  const all = tableau.c.map((_v, i) => i);
  const sum = (f: (i: number) => number) => all.reduce((s, i) => s + f(i), 0);
  const conditions = (b: readonly number[], order: number) => {
    const w = (i: number) => b[i] as number;
    const t = (i: number) => c[i] as number;
    expect(sum(w)).toBeCloseTo(1, 14);
    expect(sum((i) => w(i) * t(i))).toBeCloseTo(1 / 2, 14);
    if (order >= 3) {
      expect(sum((i) => w(i) * t(i) ** 2)).toBeCloseTo(1 / 3, 14);
      expect(sum((i) => w(i) * sum((j) => a(i, j) * t(j)))).toBeCloseTo(1 / 6, 14);
    }
    if (order >= 4) {
      expect(sum((i) => w(i) * t(i) ** 3)).toBeCloseTo(1 / 4, 14);
      expect(sum((i) => w(i) * t(i) * sum((j) => a(i, j) * t(j)))).toBeCloseTo(1 / 8, 14);
      expect(sum((i) => w(i) * sum((j) => a(i, j) * t(j) ** 2))).toBeCloseTo(1 / 12, 14);
      expect(sum((i) => w(i) * sum((j) => a(i, j) * sum((k) => a(j, k) * t(k))))).toBeCloseTo(1 / 24, 14);
    }
  };
  test('order conditions, embedded one lower, rows consistent, stiffly accurate', () => {
    conditions(tableau.b, tableau.order);
    conditions(tableau.embedded, tableau.order - 1);
    all.forEach((i) => {
      expect(sum((j) => a(i, j))).toBeCloseTo(c[i] as number, 14);
    });
    expect(tableau.a.at(-1)).toBe(tableau.b);
  });

  /** d(T + T³/30)/dt = −(T − cos t) + what makes T = cos t exact. */
  const manufactured = (): StoredSystem => {
    let diagonal = 1;
    const store = (T: number) => T + T ** 3 / 30;
    return {
      n: 1,
      store: (T, U) => {
        U[0] = store(T[0] as number);
      },
      evaluate: (T, t, U, F) => {
        U[0] = store(T[0] as number);
        F[0] = -50 * ((T[0] as number) - Math.cos(t)) - Math.sin(t) * (1 + Math.cos(t) ** 2 / 10);
      },
      factorise: (T, tau, capacity) => {
        capacity[0] = 1 + (T[0] as number) ** 2 / 10;
        diagonal = capacity[0] / tau + 50;
        return true;
      },
      solve: (x) => {
        x[0] = (x[0] as number) / diagonal;
      },
    };
  };
  const errorWith = (steps: number) => {
    const system = manufactured();
    const stepper = new ImplicitStepper(tableau, system);
    const state = {
      T: new Float64Array([1]),
      U: new Float64Array(1),
      rate: new Float64Array(1),
      slope: new Float64Array(1),
    };
    system.store(state.T, state.U);
    stepper.begin(state.T, 0, state.rate, state.slope);
    const h = 2 / steps;
    for (let i = 0; i < steps; i++) {
      expect(stepper.step(i * h, h, state.T, state.U, state.rate, state.slope, 1e-13).converged).toBe(true);
      state.T.set(stepper.T);
      state.U.set(stepper.U);
      state.rate.set(stepper.rate);
      state.slope.set(stepper.slope);
    }
    return Math.abs((state.T[0] as number) - Math.cos(2));
  };
  test('halving the step of a stiff nonlinear problem gains the order it claims, less what stiffness takes', () => {
    const order = Math.log2(errorWith(40) / errorWith(80));
    expect(order).toBeGreaterThan(tableau.order - 1.2);
  });
});

describe('special functions', () => {
  // Abramowitz & Stegun, Handbook of Mathematical Functions, tables 9.1 and 9.5.
  test.each([
    [besselJ0, 1, 0.7651976866],
    [besselJ0, 10, -0.2459357645],
    [besselJ1, 1, 0.4400505857],
    [besselJ1, 10, 0.0434727462],
    [besselY0, 1, 0.0882569642],
    [besselY0, 10, 0.0556711673],
    [besselY1, 1, -0.7812128213],
    [besselY1, 10, 0.2490154242],
    [(x: number) => besselZero(0, x), 1, 2.4048255577],
    [(x: number) => besselZero(1, x), 1, 3.8317059702],
  ])('%# known value', (f, x, wanted) => {
    expect(f(x)).toBeCloseTo(wanted, 9);
  });
  test('both expansions meet where one hands over to the other', () => {
    for (const f of [besselJ0, besselJ1, besselY0, besselY1])
      expect(Math.abs(f(14 + 1e-9) - f(14 - 1e-9))).toBeLessThan(2e-9);
  });
  test('Wronskian J1·Y0 − J0·Y1 = 2/(πx)', () => {
    for (const x of [0.1, 1, 5, 13, 15, 40, 900])
      expect(besselJ1(x) * besselY0(x) - besselJ0(x) * besselY1(x)).toBeCloseTo(2 / (Math.PI * x), 9);
  });
  test('erfcx', () => {
    expect(erfcx(0)).toBe(1);
    expect(erfcx(1)).toBeCloseTo(0.427583576, 9);
    expect(erfcx(2.0001)).toBeCloseTo(erfcx(1.9999), 4);
    expect(erfcx(50)).toBeCloseTo(0.0112815363, 9);
  });
});

describe('cubics, quadrature, roots', () => {
  const f = (s: number) => 3 - 2 * s + 5 * s * s - 4 * s ** 3;
  const h = 2.5;
  const ends = [f(0), f(1), -2 / h, (-2 + 10 - 12) / h] as const;
  test('hermite reproduces a cubic and its integral', () => {
    for (const s of [0, 0.3, 0.77, 1]) {
      expect(hermite(s, h, ...ends)).toBeCloseTo(f(s), 12);
      const w = hermiteWeights(s, h);
      expect(ends.reduce((sum, e, i) => sum + e * (w[i] as number), 0)).toBeCloseTo(f(s), 12);
    }
    expect(hermiteIntegral(h, ...ends)).toBeCloseTo(h * (3 - 1 + 5 / 3 - 1), 12);
  });
  test('four Gauss points are exact to degree 7', () => {
    for (let d = 0; d <= 7; d++)
      expect(gauss4.x.reduce((s, x, i) => s + (gauss4.w[i] as number) * x ** d, 0)).toBeCloseTo(
        1 / (d + 1),
        14,
      );
  });
  test('bracketedRoot stays in its bracket and says when there is none', () => {
    expect(bracketedRoot((x) => x ** 9 - 1e-9, 0, 1, 1e-14).x).toBeCloseTo(0.1, 10);
    expect(bracketedRoot((x) => x * x + 1, -1, 1, 1e-9).status).toBe('not bracketed');
  });
});
