/** How long a rule of cooking asks for at one temperature: by this rules are compared. */
import type { HoldRule, LethalityRule } from '../properties/rule.ts';
import { curveOf } from './judge-lethality.ts';
import { rateAt } from './lethal-rate.ts';
import { hair } from './log.ts';

export type CookingRule = LethalityRule | HoldRule;

/**
 * Time that a rule of cooking asks for at one temperature held steadily [s]; Infinity where no time is enough.
 *
 *     t(T) = t_ref / L(T) from the lowest published temperature up;  of a table the row at or below T
 *
 * @param rule of cooking: a process lethality or a table of holds
 * @param C temperature held [°C]
 * Assumes a core that is at C all along; how it comes there and what it gathers on the way is not in it.
 * Checked by the judge: a log held for that long passes, one held for a twentieth of a second less does not.
 * @example timeAsked({ kind: 'hold', rows: [{ C: 60, s: 2700 }, { C: 65, s: 600 }] }, 64) // → 2700
 * Source: own-computation
 */
export function timeAsked(rule: CookingRule, C: number): number {
  if (rule.kind === 'hold') {
    const row = rule.rows.findLast((r) => r.C - hair <= C);
    return row === undefined ? Number.POSITIVE_INFINITY : row.s;
  }
  if (C < rule.floorC - hair) return Number.POSITIVE_INFINITY;
  const rate = rateAt(curveOf(rule), C);
  return rate > 0 ? rule.s / rate : Number.POSITIVE_INFINITY;
}

/** Temperatures at which rules are compared: where food is cooked, every half degree [°C]. */
const compared = Array.from({ length: 93 }, (_, i) => 54 + i / 2);

/**
 * Does one rule of cooking ask for at least as much as another at every temperature from 54 to 100 °C [-]?
 *
 *     t_a(T) ≥ t_b(T) for T = 54, 54.5 … 100 °C
 *
 * @param a rule of cooking
 * @param b rule of cooking
 * Assumes steady temperatures. Two rules may each ask for more somewhere: then neither is the stricter.
 * Checked: the burger rule asks for at least as much as 70 °C for 2 min everywhere, and not the other way about.
 * Source: own-computation
 */
export function atLeastAsStrict(a: CookingRule, b: CookingRule): boolean {
  return compared.every((C) => timeAsked(a, C) >= timeAsked(b, C) * (1 - 1e-9));
}
