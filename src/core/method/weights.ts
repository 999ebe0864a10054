/** Weight through a method: what goes into each step, what comes out, how many pieces and portions it makes. */
import { OutOfRange } from '../errors.ts';
import { piecesFrom } from '../filling/casing.ts';
import type { Amount } from '../filling/price.ts';

/** A weight, a share or a count that is not known to the gram. */
export type Spread = Amount;

export const exactly = (x: number): Spread => ({ low: x, usual: x, high: x });
const times = (a: Spread, k: Spread): Spread => ({
  low: Math.min(a.low * k.low, a.low * k.high),
  usual: a.usual * k.usual,
  high: Math.max(a.high * k.low, a.high * k.high),
});
const plus = (a: Spread, b: Spread): Spread => ({
  low: a.low + b.low,
  usual: a.usual + b.usual,
  high: a.high + b.high,
});
const by = (a: Spread, k: number): Spread => times(a, exactly(k));

export type WeightStep =
  /** A part as bought [kg], and the share of it that trimming keeps. */
  | { readonly kind: 'part'; readonly mass: number; readonly kept: number }
  /** A mix as it stands in the bowl [kg], and how much of it is what came from the steps before. */
  | { readonly kind: 'mix'; readonly mass: number; readonly carried: number }
  /** So much filling in each casing [kg]; as many pieces as said, or as whole ones come of the filling. */
  | { readonly kind: 'fill'; readonly perPiece: number; readonly pieces?: number | undefined }
  /** A share of what goes in that does not come out; negative where it takes up; null where nobody knows. */
  | { readonly kind: 'loss'; readonly loss: Spread | null }
  /** Portions: by piece where the method makes pieces, by weight [kg] where it does not. */
  | { readonly kind: 'plate'; readonly portion: number; readonly perPiece: number };

export interface StepWeight {
  /** What was in work as the step began and ended [kg]. */
  readonly into: Spread;
  readonly out: Spread;
  /** Whether every loss so far was said or reckoned; else the weight is taken through unchanged, which is too much. */
  readonly known: boolean;
}

export interface MethodWeights {
  readonly steps: readonly StepWeight[];
  /** Pieces that a fill made; null where nothing was filled. */
  readonly pieces: number | null;
  /** One piece at the end [kg]; null where nothing was filled. */
  readonly piece: Spread | null;
  /** All that there is at the end [kg]. */
  readonly mass: Spread;
  /** Filling that no casing took, and what was prepared and not weighed in again [kg]. */
  readonly leftFilling: number;
  readonly leftCarried: Spread;
  /** More was weighed in again than came from the steps before [kg]; 0 where it adds up. */
  readonly overCarried: number;
  /** Null without a plate step. */
  readonly portions: Spread | null;
  /** One portion by weight, of what there is [kg]; null without a plate step. */
  readonly portion: Spread | null;
}

function check(step: WeightStep, i: number) {
  const mass = (name: string, x: number, least = 0) => {
    if (!(x >= least && x <= 1e4))
      throw new OutOfRange(`steps[${i}].${name}`, `${x} kg`, `${least} to 10000 kg`);
  };
  if (step.kind === 'part') {
    mass('mass', step.mass);
    if (!(step.kept >= 0 && step.kept <= 1))
      throw new OutOfRange(`steps[${i}].kept`, String(step.kept), '0 to 1');
  } else if (step.kind === 'mix') {
    mass('mass', step.mass);
    if (!(step.carried >= 0 && step.carried <= step.mass))
      throw new OutOfRange(
        `steps[${i}].carried`,
        `${step.carried} kg`,
        `0 to ${step.mass} kg, the whole of the mix`,
      );
  } else if (step.kind === 'fill') mass('perPiece', step.perPiece);
  else if (step.kind === 'loss' && step.loss !== null) {
    const { low, usual, high } = step.loss;
    if (!(low <= usual && usual <= high && low >= -5 && high < 1))
      throw new OutOfRange(
        `steps[${i}].loss`,
        `${low} … ${usual} … ${high}`,
        'rising, from −5 (takes up five times its weight) to less than 1',
      );
  } else if (step.kind === 'plate') {
    mass('portion', step.portion);
    if (!(step.perPiece > 0 && step.perPiece <= 1000))
      throw new OutOfRange(`steps[${i}].perPiece`, String(step.perPiece), 'more than 0, at most 1000');
  }
}

/**
 * Weight of a batch through the steps of its method [kg].
 * Equation: trim m·k; mix: what is carried into it leaves what was in work, the mix joins it; fill: n = ⌊m_mix / m_piece⌋ pieces of one casing's share and one filling each; a loss m·(1 − l), its ends with the ends of m; portions n·p, or m / m_portion where there are no pieces.
 * Parameters: steps in order, weights [kg] 0 to 10 000, shares 0–1, losses −5 to < 1.
 * Assumptions: what was trimmed and is not carried into a mix is the casing of the next fill, or part of the dish; low with low and high with high (the widest ends).
 * Checked: conservation of mass (what went in = what came out + losses + what is left) and by properties; a whole batch by hand.
 * @example weightsThrough([{ kind: 'part', mass: 4.2, kept: 0.24 }]).mass.usual // → 1.008
 * Source: own-computation
 */
export function weightsThrough(method: readonly WeightStep[]): MethodWeights {
  method.forEach(check);
  let loose = exactly(0);
  let filling = 0;
  let pieces: number | null = null;
  let known = true;
  let leftFilling = 0;
  let leftCarried = exactly(0);
  let overCarried = 0;
  let portions: Spread | null = null;
  let portion: Spread | null = null;
  const steps: StepWeight[] = [];
  const all = () => plus(loose, exactly(filling));
  const fillAhead = (from: number) => method.slice(from).some((s) => s.kind === 'fill');

  method.forEach((step, i) => {
    const before = all();
    switch (step.kind) {
      case 'part':
        loose = plus(loose, exactly(step.mass * step.kept));
        break;
      case 'mix':
        if (step.carried > 0) {
          overCarried = Math.max(0, step.carried - loose.high);
          // What was prepared and is not in the mix stays behind, unless it is the casing of a fill to come.
          const rest = {
            low: Math.max(0, loose.low - step.carried),
            usual: Math.max(0, loose.usual - step.carried),
            high: Math.max(0, loose.high - step.carried),
          };
          if (fillAhead(i)) loose = rest;
          else {
            leftCarried = plus(leftCarried, rest);
            loose = exactly(0);
          }
        }
        filling += step.mass;
        if (!fillAhead(i)) {
          loose = plus(loose, exactly(filling));
          filling = 0;
        }
        break;
      case 'fill': {
        const whole = step.perPiece > 0 ? piecesFrom(filling, step.perPiece).pieces : 0;
        pieces = step.pieces ?? whole;
        const taken = Math.min(filling, pieces * step.perPiece);
        leftFilling += filling - taken;
        loose = plus(loose, exactly(taken));
        filling = 0;
        break;
      }
      case 'loss':
        if (step.loss === null) known = false;
        else
          loose = times(loose, {
            low: 1 - step.loss.high,
            usual: 1 - step.loss.usual,
            high: 1 - step.loss.low,
          });
        break;
      case 'plate': {
        if (pieces !== null) portions = exactly(pieces * step.perPiece);
        else if (step.portion > 0) portions = by(loose, 1 / step.portion);
        portion =
          pieces !== null && pieces > 0
            ? by(loose, 1 / (pieces * step.perPiece))
            : step.portion > 0
              ? exactly(step.portion)
              : null;
        break;
      }
    }
    steps.push({ into: before, out: all(), known });
  });
  return {
    steps,
    pieces,
    piece: pieces === null || pieces === 0 ? null : by(loose, 1 / pieces),
    mass: all(),
    leftFilling,
    leftCarried,
    overCarried,
    portions,
    portion,
  };
}
