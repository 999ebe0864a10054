/** Where salt ends when there is time enough: the balance of mass between meat and brine or dry salt. */
import { OutOfRange } from '../errors.ts';

export interface CureBalance {
  /** Weight of the meat [kg]. */
  readonly meat: number;
  /** Water in the meat, mass fraction. */
  readonly water: number;
  /** Salt already in the meat, mass fraction; 0 where nobody has said. */
  readonly saltBefore?: number;
  /** Weight of the brine [kg], or of the dry salt. */
  readonly medium: number;
  /** Salt in the medium, mass fraction: the strength of the brine, 1 for dry salt. */
  readonly mediumSalt: number;
}

export interface CureEquilibrium {
  /** Salt in all free water, salt/(salt + water), mass fraction: in the brine and in the meat's water alike. */
  readonly waterPhaseSalt: number;
  /** Salt in the meat [kg]. */
  readonly salt: number;
  /** Salt in the salted meat, mass fraction of its weight with that salt. */
  readonly saltOfSalted: number;
}

/**
 * Salt in meat that has come to rest with its brine or dry cure [mass fractions and kg].
 * Equation: C = S/(S + W), S = m_b w_b + m_m s₀, W = m_m x_w + m_b (1 − w_b); salt in the meat = C/(1 − C) · m_m x_w.
 * Parameters: meat [kg] > 0, water 0–1, saltBefore 0–1, medium [kg] ≥ 0, mediumSalt 0–1.
 * Assumptions: salt is equally strong in all free water; proteins exclude none; the meat takes up and gives off no water;
 * time enough. It says nothing of how long that takes, nor whether it is safe on the way.
 * Checked: against balances worked out beforehand for meat of 75.76 % water in 3.5 to 10 % brine at 1:0.5 to 1:3, and by conservation of salt.
 * @example cureEquilibrium({ meat: 1, water: 0.7576, medium: 1, mediumSalt: 0.06 }).salt // → 0.0267766
 * Source: own-computation (conservation of mass).
 */
export function cureEquilibrium(cure: CureBalance): CureEquilibrium {
  const { meat, water, medium, mediumSalt } = cure;
  const before = cure.saltBefore ?? 0;
  if (!(meat > 0)) throw new OutOfRange('meat', `${meat} kg`, 'more than 0 kg');
  if (!(medium >= 0)) throw new OutOfRange('medium', `${medium} kg`, '0 kg or more');
  for (const [name, fraction] of [
    ['water', water],
    ['saltBefore', before],
    ['mediumSalt', mediumSalt],
  ] as const)
    if (!(fraction >= 0 && fraction <= 1)) throw new OutOfRange(name, String(fraction), '0 to 1');
  const S = medium * mediumSalt + meat * before;
  const W = meat * water + medium * (1 - mediumSalt);
  if (S === 0) return { waterPhaseSalt: 0, salt: 0, saltOfSalted: 0 };
  if (W === 0) throw new OutOfRange('water', String(water), 'more than 0: salt needs water to enter');
  const C = S / (S + W);
  const salt = (S / W) * meat * water;
  return { waterPhaseSalt: C, salt, saltOfSalted: salt / (meat * (1 - before) + salt) };
}
