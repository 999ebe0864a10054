/**
 * A mix made larger or smaller, and rounded to what the kitchen's scale can show. Salt and curing salt keep to within one per
 * cent of what they should be; where the scale cannot show that, the line stays as it is and is named.
 */
import { Contradiction, OutOfRange } from '../errors.ts';

export interface ScaledLine {
  readonly name: string;
  /** As written [kg]. */
  readonly mass: number;
  /** How it was meant, where not by weight: a share of the meat, or a weight for each piece [kg]. */
  readonly amount?:
    | { readonly by: 'of the meat'; readonly share: number }
    | { readonly by: 'per piece'; readonly mass: number }
    | undefined;
  /** Counts as the meat that shares are taken of. */
  readonly meat?: boolean | undefined;
  /** Salt or curing salt: kept within a hundredth. */
  readonly salt?: boolean | undefined;
  /** What there is of it [kg]; absent: enough. */
  readonly available?: number | undefined;
}

export type ScaleTo =
  | { readonly by: 'times'; readonly times: number }
  | { readonly by: 'pieces'; readonly pieces: number }
  /** Filling for so many casings of a capacity [kg]. */
  | { readonly by: 'casings'; readonly pieces: number; readonly capacity: number }
  /** Weight of the whole batch [kg]. */
  | { readonly by: 'batch'; readonly mass: number }
  /** As much as the scarcest of what there is allows. */
  | { readonly by: 'scarcest' };

export interface Scaled {
  /** Of the plain lines, to the mix as written. */
  readonly times: number;
  /** Null where nobody has said how many pieces the mix as written makes. */
  readonly pieces: number | null;
  /** In the order of the lines [kg]. */
  readonly masses: readonly number[];
  readonly total: number;
  /** Index of the line that allows no more. */
  readonly scarcest: number | null;
}

const finite = (x: number, path: string, unit: string, positive = true): number => {
  if (!(positive ? x > 0 : x >= 0) || !(x < 1e9))
    throw new OutOfRange(path, `${x}${unit}`, positive ? `more than 0${unit}` : `0${unit} or more`);
  return x;
};

/** Weights with the plain lines taken so many times, for so many pieces [kg]. */
function massesAt(lines: readonly ScaledLine[], times: number, pieces: number | null): number[] {
  const each = lines.map(({ mass, amount }) =>
    amount?.by === 'per piece' ? amount.mass * (pieces ?? 0) : amount === undefined ? mass * times : 0,
  );
  const meat = lines.reduce((sum, line, i) => sum + (line.meat === true ? each[i]! : 0), 0);
  return lines.map(({ amount }, i) => (amount?.by === 'of the meat' ? amount.share * meat : each[i]!));
}

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

function check(lines: readonly ScaledLine[], pieces: number | null): void {
  lines.forEach((line, i) => {
    const path = `lines[${i}] (${line.name})`;
    finite(line.mass, path, ' kg', false);
    if (line.available !== undefined) finite(line.available, `${path}, what there is`, ' kg', false);
    if (line.amount?.by === 'of the meat') {
      finite(line.amount.share, `${path}, share of the meat`, '', false);
      if (line.meat === true)
        throw new Contradiction(path, 'is a share of the meat and counts as meat', 'one of the two');
      if (!lines.some((l) => l.meat === true && l.amount?.by !== 'of the meat'))
        throw new Contradiction(
          path,
          'is a share of the meat, and no line counts as meat',
          'a line that does',
        );
    }
    if (line.amount?.by === 'per piece') {
      finite(line.amount.mass, `${path}, for each piece`, ' kg', false);
      if (pieces === null)
        throw new Contradiction(
          path,
          'is for each piece, and nobody has said how many pieces the mix makes',
          'a number of pieces',
        );
    }
  });
}

/**
 * A mix scaled to what is wanted [kg].
 *
 *     plain m·t; of the meat p·Σ meat; per piece g·P; t from pieces P/P₀, from a batch of M, or from what there is
 *
 * @param lines masses ≥ 0 kg
 * @param to what is wanted
 * @param written pieces that the mix as written makes (P₀), above 0; null where nobody has said
 * Assumes that pieces follow the mix: twice of it makes twice as many. For casings the lines per piece are fixed by their number
 * and the rest fills what is left.
 * Checked by properties: linear, sums to what is asked, and no line over what there is.
 * @example scaleMix([{ name: 'meat', mass: 2, meat: true }, { name: 'salt', mass: 0.03, amount: { by: 'of the meat', share: 0.018 } }], { by: 'times', times: 2 }).masses[1] // → 0.072
 * @example scaleMix([{ name: 'meat', mass: 2, available: 3 }, { name: 'cream', mass: 1, available: 1.2 }], { by: 'scarcest' }).times // → 1.2
 * Source: own-computation
 */
export function scaleMix(lines: readonly ScaledLine[], to: ScaleTo, written: number | null = null): Scaled {
  if (written !== null) finite(written, 'pieces as written', '');
  check(lines, to.by === 'casings' ? to.pieces : written);
  const { times, scarcest } = timesOf(lines, to, written);
  const pieces = to.by === 'casings' ? to.pieces : written === null ? null : written * times;
  const masses = massesAt(lines, times, pieces);
  return { times, pieces, masses, total: sum(masses), scarcest };
}

function timesOf(
  lines: readonly ScaledLine[],
  to: ScaleTo,
  written: number | null,
): { times: number; scarcest: number | null } {
  const none = { scarcest: null };
  switch (to.by) {
    case 'times':
      return { times: finite(to.times, 'times', ''), ...none };
    case 'pieces':
      if (written === null)
        throw new Contradiction(
          'pieces',
          'nobody has said how many pieces the mix as written makes',
          'a number of pieces, or another way to scale',
        );
      return { times: finite(to.pieces, 'pieces', '') / written, ...none };
    case 'batch': {
      const whole = sum(massesAt(lines, 1, written));
      if (!(whole > 0)) throw new Contradiction('lines', 'weigh nothing', 'a mix that weighs something');
      return { times: finite(to.mass, 'batch', ' kg') / whole, ...none };
    }
    case 'casings': {
      const wanted = finite(to.pieces, 'pieces', '') * finite(to.capacity, 'capacity', ' kg');
      const fixed = sum(massesAt(lines, 0, to.pieces));
      const rest = sum(massesAt(lines, 1, to.pieces)) - fixed;
      if (!(rest > 0)) throw new Contradiction('lines', 'are all for each piece', 'a line that is not');
      if (!(wanted > fixed))
        throw new Contradiction(
          'capacity',
          `${to.pieces} pieces take ${wanted} kg, and what goes into each by number weighs ${fixed} kg already`,
          'larger casings',
        );
      return { times: (wanted - fixed) / rest, ...none };
    }
    case 'scarcest': {
      const once = massesAt(lines, 1, written);
      let times = Number.POSITIVE_INFINITY;
      let scarcest: number | null = null;
      lines.forEach(({ available }, i) => {
        if (available === undefined || !(once[i]! > 0)) return;
        if (available / once[i]! < times) {
          times = available / once[i]!;
          scarcest = i;
        }
      });
      if (scarcest === null)
        throw new Contradiction(
          'available',
          'nobody has said what there is of anything',
          'what there is of one line at least',
        );
      if (!(times > 0))
        throw new Contradiction(
          `lines[${scarcest}] (${lines[scarcest as number]!.name})`,
          'there is none of it',
          'more than 0 kg',
        );
      return { times, scarcest };
    }
  }
}
