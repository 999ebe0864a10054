/** Weights rounded to the steps of a kitchen's scales. */
import { OutOfRange } from '../errors.ts';

export interface ToWeigh {
  readonly name: string;
  /** As it should be [kg]. */
  readonly mass: number;
  /** Salt or curing salt: on the finer scale, within a hundredth. */
  readonly salt?: boolean | undefined;
  /** No more than that [kg]. */
  readonly available?: number | undefined;
}

export interface Weighing {
  /** A multiple of its scale's step; as it should be, where the scale cannot show it [kg]. */
  readonly mass: number;
  /** Of the scale that it is weighed on [kg]. */
  readonly step: number;
  /** The scale can show it well enough. */
  readonly weighable: boolean;
}

export interface Weighed {
  readonly lines: readonly Weighing[];
  readonly total: number;
  /** By name, what the scale cannot do and what would. */
  readonly problems: readonly string[];
}

/** Most that salt and curing salt may be off, a share. */
export const saltTolerance = 0.01;

/** Steps of scales that are sold [kg]. */
const scales = [0.001, 0.0001, 0.00001, 0.000001] as const;

const nearest = (x: number, step: number) => Math.round(x / step) * step;
const clean = (x: number) => Number(x.toFixed(9));
const grams = (kg: number) => `${Number((1000 * kg).toPrecision(kg * 1000 < 10 ? 2 : 3))} g`;
const off = (x: number, step: number) => Math.abs(nearest(x, step) - x) / x;

/** Steps put on or taken off, where a line is furthest from what it should be; gives back what could not be placed. */
function even(lines: readonly ToWeigh[], out: Weighing[], step: number, missing: number): number {
  let short = missing;
  const way = Math.sign(missing);
  const order = lines
    .map((line, i) => ({ i, rest: (line.mass - out[i]!.mass) * way }))
    .filter(({ i }) => out[i]!.weighable && lines[i]!.salt !== true && lines[i]!.mass > 0)
    .sort((a, b) => b.rest - a.rest || a.i - b.i);
  for (const { i } of order) {
    if (short === 0) break;
    const next = out[i]!.mass + way * step;
    const most = (lines[i]!.available ?? Number.POSITIVE_INFINITY) + 1e-12;
    if (next < step * (1 - 1e-9) || (way > 0 && next > most)) continue;
    // No line is brought further from what it should be than a step: rather the whole is named as off.
    if (Math.abs(next - lines[i]!.mass) > step * (1 + 1e-9)) continue;
    out[i] = { ...out[i]!, mass: next };
    short -= way;
  }
  return short;
}

/**
 * Weights as the scales can show them [kg].
 * Equation: salt to the nearest step of the finer scale; the rest down to a step, and then as many steps back as bring the sum
 * nearest to what it should be, to the largest remainders first.
 * Parameters: lines ≥ 0 kg; step of the scale and of the finer one [kg], above 0.
 * Assumptions: a line is never rounded away; one that the scale cannot show (salt off by more than a hundredth, anything under
 * half a step) stays as it should be and is named with the scale that could.
 * Checked by properties: the sum within a step, salt within a hundredth or named, nothing over what there is.
 * @example weighed([{ name: 'curing salt', mass: 0.0024, salt: true }], 0.001, 0.001).problems[0] // → '2.4 g of curing salt on a 1 g scale is 17 % off: use a scale that reads 0.1 g'
 * @example weighed([{ name: 'a', mass: 0.0104 }, { name: 'b', mass: 0.0104 }, { name: 'c', mass: 0.0104 }], 0.001, 0.001).total // → 0.031
 * Source: own-computation
 */
export function weighed(lines: readonly ToWeigh[], step: number, fineStep = step): Weighed {
  for (const [path, value] of [
    ['step', step],
    ['fineStep', fineStep],
  ] as const)
    if (!(value > 0 && value <= 1)) throw new OutOfRange(path, `${value} kg`, 'more than 0 to 1 kg');
  const fine = Math.min(step, fineStep);
  const problems: string[] = [];
  const out: Weighing[] = lines.map(({ name, mass, salt, available }, i) => {
    if (!(mass >= 0 && mass < 1e9))
      throw new OutOfRange(`lines[${i}] (${name})`, `${mass} kg`, '0 kg or more');
    const own = salt === true ? fine : step;
    const kept = { mass, step: own, weighable: false };
    if (mass === 0) return { ...kept, weighable: true };
    if (salt === true) {
      const shown = nearest(mass, own);
      const most = available ?? Number.POSITIVE_INFINITY;
      if (off(mass, own) <= saltTolerance + 1e-9 && shown <= most + 1e-12)
        return { mass: shown, step: own, weighable: true };
      const could = scales.find((s) => s < own && off(mass, s) <= saltTolerance + 1e-9);
      problems.push(
        `${grams(mass)} of ${name} on a ${grams(own)} scale is ${Math.round(100 * off(mass, own))} % off: ${could === undefined ? 'no kitchen scale shows so little' : `use a scale that reads ${grams(could)}`}`,
      );
      return kept;
    }
    if (nearest(mass, own) > 0)
      return { mass: Math.max(1, Math.floor(mass / own + 1e-9)) * own, step: own, weighable: true };
    const could =
      scales.find((s) => s < own && mass / s >= 9.5) ?? scales.find((s) => s < own && mass / s >= 0.5);
    problems.push(
      `${grams(mass)} of ${name} does not show on a ${grams(own)} scale: ${could === undefined ? 'no kitchen scale shows so little' : `use a scale that reads ${grams(could)}`}`,
    );
    return kept;
  });
  const wanted = lines.reduce((s, l) => s + l.mass, 0);
  const short = even(lines, out, step, Math.round((wanted - out.reduce((s, l) => s + l.mass, 0)) / step));
  if (short !== 0)
    problems.push(
      `The whole is ${grams(Math.abs(short) * step)} too ${short > 0 ? 'light' : 'heavy'} on a ${grams(step)} scale.`,
    );
  const shown = out.map((l) => (l.weighable ? { ...l, mass: clean(l.mass) } : l));
  return { lines: shown, total: clean(shown.reduce((s, l) => s + l.mass, 0)), problems };
}
