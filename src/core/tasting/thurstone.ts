import { OutOfRange } from '../errors.ts';
import { bracketedRoot } from '../numerics/roots.ts';
import { erfcx } from '../numerics/special.ts';
import { exactShare } from './binomial.ts';
import { chanceOf, type DiscriminationTest } from './discrimination.ts';

/** Beyond this nobody is ever wrong. */
const farthest = 12;

/** Φ(x). */
function normal(x: number): number {
  const lower = 0.5 * Math.exp((-x * x) / 2) * erfcx(Math.abs(x) / Math.SQRT2);
  return x < 0 ? lower : 1 - lower;
}
const density = (x: number) => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);

/** Simpson's rule over 0 to 9, where what is left of a normal density is 1e-19. */
function overNormal(f: (z: number) => number): number {
  const [panels, end] = [1200, 9];
  const h = end / panels;
  let sum = 0;
  for (let i = 0; i <= panels; i++) {
    const weight = i === 0 || i === panels ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * f(i * h) * density(i * h);
  }
  return (sum * h) / 3;
}

/**
 * Share of right answers at a distance d′ between two samples [-].
 *
 * triangle: 2·∫₀^∞ [Φ(−z√3 + d√⅔) + Φ(−z√3 − d√⅔)]·φ(z) dz; paired: Φ(d/√2);
 * duo-trio: 1 − Φ(d/√2) − Φ(d/√6) + 2·Φ(d/√2)·Φ(d/√6)
 *
 * `dPrime` 0 to 12, in standard deviations of one taste of one sample. Assumes equal normal scatter of both samples.
 * Checked: the figures of the examples, to four places.
 * @example shareCorrect('triangle', 1) // → 0.4180
 * Source: ennis-1993
 */
export function shareCorrect(test: DiscriminationTest, dPrime: number): number {
  if (!(dPrime >= 0 && dPrime <= farthest))
    throw new OutOfRange('dPrime', String(dPrime), `0 to ${farthest}`);
  const [two, six] = [normal(dPrime / Math.SQRT2), normal(dPrime / Math.sqrt(6))];
  if (test === 'paired') return two;
  if (test === 'duo-trio') return 1 - two - six + 2 * two * six;
  const shift = dPrime * Math.sqrt(2 / 3);
  return 2 * overNormal((z) => normal(-z * Math.sqrt(3) + shift) + normal(-z * Math.sqrt(3) - shift));
}

/**
 * Distance d′ at which a share of right answers is had [standard deviations of a taste]; 0 at chance and below, null where all are
 * right, which no finite distance gives.
 *
 * shareCorrect(test, d′) = pc, solved for d′
 *
 * `share` 0 to 1. Checked: the inverse figures of the examples, to three places.
 * @example dPrimeOf('triangle', 0.5) // → 1.466
 * Source: ennis-1993
 */
export function dPrimeOf(test: DiscriminationTest, share: number): number | null {
  if (!(share >= 0 && share <= 1)) throw new OutOfRange('share', String(share), '0 to 1');
  if (share <= chanceOf[test]) return 0;
  if (share >= shareCorrect(test, farthest)) return null;
  return bracketedRoot((d) => shareCorrect(test, d) - share, 0, farthest, 1e-10).x;
}

export interface Distance {
  readonly dPrime: number | null;
  readonly low: number;
  /** Null: the tasting sets no upper limit. */
  readonly high: number | null;
}

/**
 * Distance between two samples as a tasting shows it, with its 95 % interval [standard deviations of a taste].
 *
 * d′ of x/n; its ends are the d′ of the exact ends of the share
 *
 * `assessors` 1 to 5000; `correct` 0 to all. Checked: holds d′ between its ends; ends at the figures of the exact share.
 * @example distanceShown('duo-trio', 20, 12).dPrime // → 1.115
 * Source: clopper-pearson-1934
 */
export function distanceShown(test: DiscriminationTest, assessors: number, correct: number): Distance {
  const { low, high } = exactShare(assessors, correct, 0.95);
  return {
    dPrime: dPrimeOf(test, correct / assessors),
    low: dPrimeOf(test, low) ?? farthest,
    high: dPrimeOf(test, high),
  };
}
