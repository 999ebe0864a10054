/**
 * How long a kitchen usually keeps a frozen piece, by what it is: common practice, no source. It is about how it eats, not
 * about safety: what was past its day when it was frozen, or grew warm, is not made fit by the freezer.
 */
import type { ArrivalClass } from './arrival-limits.ts';

export interface FreezingLimit {
  readonly class: ArrivalClass;
  /** Usually used within [months]. */
  readonly months: number;
  readonly confidence: 'common practice';
}

const practice = (kind: ArrivalClass, months: number): FreezingLimit => ({
  class: kind,
  months,
  confidence: 'common practice',
});

/** At −18 °C or below, wrapped without air. */
export const freezingLimits: readonly FreezingLimit[] = [
  practice('poultry', 6),
  practice('red meat', 6),
  practice('offal', 3),
  practice('blood', 1),
  practice('large game', 6),
  practice('small game', 6),
  practice('rabbit', 6),
  practice('fish', 3),
  practice('fat and bone', 6),
];
