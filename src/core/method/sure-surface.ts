/** A smooth stand-in for the engine over the spreads of its inputs: a polynomial in what varies, fitted to the engine's own answers. */
import { inverseNormal } from '../numerics/inverse-normal.ts';
import { leastSquares } from '../numerics/least-squares.ts';

/** `normal`: mean and standard deviation, cut at four of them. `uniform`: anywhere between two ends, equally likely. */
export type SpreadKind = 'normal' | 'uniform';

/** A normal spread is cut off here [standard deviations]: beyond lies one piece in sixteen thousand. */
export const cutAt = 4;

const most = 0.9999683287581669;

/**
 * The standard coordinate of a spread [-]: standard deviations from the mean, or −1 to 1 between two ends.
 * Equation: Φ⁻¹ of u mapped into what lies within four standard deviations; 2u − 1 for a uniform spread.
 * Parameters: `u` 0 to 1.
 * Checked: the ends are ±4 and ±1; the middle is 0.
 * @example standardOf('uniform', 0.75) // → 0.5
 * @example standardOf('normal', 0.975) // → 1.959
 * Source: wichura-1988
 */
export function standardOf(kind: SpreadKind, u: number): number {
  if (kind === 'uniform') return 2 * u - 1;
  const x = inverseNormal(1 - most + u * (2 * most - 1));
  return Math.max(-cutAt, Math.min(cutAt, x));
}

/** First three polynomials that are orthonormal under the spread: Hermite's, Legendre's. */
function polynomials(kind: SpreadKind, x: number): readonly [number, number, number] {
  return kind === 'normal'
    ? [x, (x * x - 1) / Math.SQRT2, (x * x * x - 3 * x) / Math.sqrt(6)]
    : [Math.sqrt(3) * x, (Math.sqrt(5) * (3 * x * x - 1)) / 2, (Math.sqrt(7) * (5 * x * x * x - 3 * x)) / 2];
}

/** A term of the polynomial: which inputs, each with its degree. */
type Factor = readonly [input: number, degree: number];
type Term = readonly [Factor, Factor?];

/** As many terms as the runs can bear: at least three runs a term. */
function termsFor(inputs: number, runs: number): Term[] {
  const single = (degree: number): Term[] => Array.from({ length: inputs }, (_, i) => [[i, degree] as const]);
  const pairs: Term[] = [];
  for (let i = 0; i < inputs; i++)
    for (let j = i + 1; j < inputs; j++)
      pairs.push([
        [i, 1],
        [j, 1],
      ]);
  const bent: Term[] = [];
  for (let i = 0; i < inputs; i++)
    for (let j = 0; j < inputs; j++)
      if (i !== j)
        bent.push([
          [i, 2],
          [j, 1],
        ]);
  const choices: Term[][] = [
    [...single(1), ...single(2), ...pairs, ...single(3), ...bent],
    [...single(1), ...single(2), ...pairs, ...single(3)],
    [...single(1), ...single(2), ...pairs],
    [...single(1), ...single(2)],
    single(1),
  ];
  return choices.find((terms) => 3 * (terms.length + 1) <= runs) ?? [];
}

export interface Surface {
  readonly kinds: readonly SpreadKind[];
  readonly terms: readonly Term[];
  readonly mean: number;
  readonly coefficients: readonly number[];
}

const factorsOf = ([a, b]: Term): Factor[] => (b === undefined ? [a] : [a, b]);

function columnsAt(terms: readonly Term[], phi: readonly (readonly number[])[]): number[] {
  return terms.map((term) => factorsOf(term).reduce((p, [i, degree]) => p * phi[i][degree - 1], 1));
}

const phiAt = (kinds: readonly SpreadKind[], x: ArrayLike<number>) =>
  kinds.map((kind, i) => polynomials(kind, x[i]));

/**
 * The polynomial that comes nearest to answers at points of the standard coordinates [the answers' unit].
 * Equation: y ≈ mean + Σ c · Π polynomials, orthonormal under the spreads; least squares.
 * Parameters: `points` one per answer; `y`; as many terms are used as leave three answers to each.
 * Assumptions: y is smooth in its inputs; how well it is met is told by `leftOut`.
 * Checked: reproduces a polynomial of its own kind to rounding.
 * @example surfaceOf(['uniform'], [[-1], [0], [1]], [5, 5, 5]).mean // → 5
 * Source: sudret-2008
 */
export function surfaceOf(
  kinds: readonly SpreadKind[],
  points: readonly ArrayLike<number>[],
  y: readonly number[],
): Surface {
  const terms = termsFor(kinds.length, y.length);
  const [mean = Number.NaN, ...coefficients] = leastSquares(
    points.map((x) => [1, ...columnsAt(terms, phiAt(kinds, x))]),
    y,
  );
  return { kinds, terms, mean, coefficients };
}

/**
 * What gives the surface's answer at any point of the standard coordinates [the answers' unit].
 * @example answering({ kinds: ['uniform'], terms: [], mean: 7, coefficients: [] })([0.3]) // → 7
 * Source: sudret-2008
 */
export function answering({ kinds, terms, mean, coefficients }: Surface): (x: ArrayLike<number>) => number {
  const d = kinds.length;
  // No term has more than two inputs: laid out flat, so that millions of answers cost little. Place 0 holds a one.
  const first = new Int32Array(terms.length);
  const second = new Int32Array(terms.length);
  terms.forEach((term, t) => {
    const [a, b] = term;
    first[t] = 1 + a[0] * 3 + a[1] - 1;
    second[t] = b === undefined ? 0 : 1 + b[0] * 3 + b[1] - 1;
  });
  const c = Float64Array.from(coefficients);
  const phi = new Float64Array(1 + 3 * d).fill(1);
  return (x) => {
    for (let i = 0; i < d; i++) {
      const [p1, p2, p3] = polynomials(kinds[i], x[i]);
      phi[1 + 3 * i] = p1;
      phi[2 + 3 * i] = p2;
      phi[3 + 3 * i] = p3;
    }
    let sum = mean;
    for (let t = 0; t < c.length; t++) sum += c[t] * phi[first[t]] * phi[second[t]];
    return sum;
  };
}

/**
 * The surface's answer at a point of the standard coordinates [the answers' unit].
 * @example answerAt({ kinds: ['uniform'], terms: [], mean: 7, coefficients: [] }, [0.3]) // → 7
 * Source: sudret-2008
 */
export function answerAt(surface: Surface, x: ArrayLike<number>): number {
  return answering(surface)(x);
}

/** The surfaces that each leave out one part in so many of the answers, and how far each is off at those it has not seen. */
export interface LeftOut {
  readonly surfaces: readonly Surface[];
  /** Root mean square of what they miss by, in the answers' unit. */
  readonly error: number;
}

/**
 * Surfaces fitted without one part of the answers each, and their error at what they have not seen [the answers' unit].
 * Equation: root mean square of y − surface without y's own part.
 * Parameters: `parts` ≥ 2.
 * Checked: nothing but rounding for a polynomial of its own kind; the noise for noise.
 * @example leftOut(['uniform'], [[-1], [0], [1], [0.5]], [5, 5, 5, 5], 2).error // → 0
 * Source: own-computation
 */
export function leftOut(
  kinds: readonly SpreadKind[],
  points: readonly ArrayLike<number>[],
  y: readonly number[],
  parts = 8,
): LeftOut {
  let sum = 0;
  const surfaces = Array.from({ length: parts }, (_, part) => {
    const others = y.flatMap((_, i) => (i % parts === part ? [] : [i]));
    const surface = surfaceOf(
      kinds,
      others.map((i) => points[i]),
      others.map((i) => y[i]),
    );
    const answer = answering(surface);
    y.forEach((own, i) => {
      if (i % parts === part) sum += (own - answer(points[i])) ** 2;
    });
    return surface;
  });
  return { surfaces, error: Math.sqrt(sum / Math.max(1, y.length)) };
}

/**
 * How much of the answers' variance each input causes [-]: by itself, and with all that it shares with others.
 * Equation: first = Σ c² over terms of that input alone / Σ c²; total = Σ c² over all terms it is in / Σ c².
 * Assumptions: the spreads are independent of one another.
 * Checked against Ishigami's function, whose shares are known.
 * @example sharesOf({ kinds: ['normal'], terms: [[[0, 1]]], mean: 0, coefficients: [2] })[0].first // → 1
 * Source: sudret-2008
 */
export function sharesOf(surface: Surface): { first: number; total: number }[] {
  const squares = surface.coefficients.map((c) => c * c);
  const whole = squares.reduce((a, b) => a + b, 0);
  return surface.kinds.map((_, i) => {
    let first = 0;
    let total = 0;
    surface.terms.forEach((term, t) => {
      const factors = factorsOf(term);
      if (!factors.some(([input]) => input === i)) return;
      total += squares[t];
      if (factors.every(([input]) => input === i)) first += squares[t];
    });
    return whole > 0 ? { first: first / whole, total: total / whole } : { first: 0, total: 0 };
  });
}
