/**
 * How warm a delivery may be when it arrives, by what it is and where. Limits of the law bind the plant and the carrier; a
 * kitchen checks the same figure at its door.
 */
import type { Confidence } from '../sources.ts';

/** What a temperature limit is written for. */
export type ArrivalClass =
  | 'poultry'
  | 'red meat'
  | 'offal'
  | 'blood'
  | 'large game'
  | 'small game'
  | 'rabbit'
  | 'fish'
  | 'fat and bone';

export interface ArrivalLimit {
  readonly class: ArrivalClass;
  readonly book: 'GB and EU' | 'US';
  /** Chilled: at most this [°C]. */
  readonly atMostC: number;
  readonly citation: string;
  readonly source: string;
  readonly confidence: Confidence;
}

const europe = (
  kind: ArrivalClass,
  atMostC: number,
  where: string,
  confidence: Confidence = 'memory',
): ArrivalLimit => ({
  class: kind,
  book: 'GB and EU',
  atMostC,
  citation: `Reg (EC) 853/2004 Annex III ${where}`,
  source: 'eu-853-2004',
  confidence,
});

const america = (kind: ArrivalClass): ArrivalLimit => ({
  class: kind,
  book: 'US',
  atMostC: 5,
  citation: 'FDA Food Code 3-202.11: received at 5 °C (41 °F) or below',
  source: 'us-food-code',
  confidence: 'memory',
});

export const arrivalLimits: readonly ArrivalLimit[] = [
  europe('poultry', 4, 'Section II Chapters IV–V'),
  europe('rabbit', 4, 'Section II Chapters IV–V'),
  europe('red meat', 7, 'Section I Chapter VII'),
  europe('offal', 3, 'Section I Chapter VII'),
  europe('blood', 3, 'Section I Chapter VII, blood being offal'),
  europe('large game', 7, 'Section IV Chapter II'),
  europe('small game', 4, 'Section IV Chapter III', 'read'),
  europe('fat and bone', 7, 'Section XII'),
  europe('fish', 2, 'Section VIII: about the temperature of melting ice'),
  america('poultry'),
  america('rabbit'),
  america('red meat'),
  america('offal'),
  america('blood'),
  america('large game'),
  america('small game'),
  america('fat and bone'),
  america('fish'),
];

/** Frozen food: at most this [°C]. Reg (EC) 853/2004 Annex III Section V Chapter III, and the rules on quick-frozen food. */
export const frozenAtMostC = -18;

/** No chilled or frozen food arrives outside these; a figure beyond them is a slip of the unit or the pen until it is said again [°C]. */
export const plausibleArrival = { lowC: -35, highC: 15 } as const;

/**
 * The limit for a class of product at a place [°C], undefined where none is known.
 * @param kind what it is
 * @param place the kitchen's
 * Assumes a chilled delivery. Checked on every row of the table.
 * @example arrivalLimit('poultry', 'GB-ENG')?.atMostC // → 4
 * @example arrivalLimit('offal', 'US')?.atMostC // → 5
 * Source: eu-853-2004
 */
export function arrivalLimit(kind: ArrivalClass, place: string): ArrivalLimit | undefined {
  const book = place === 'US' ? 'US' : 'GB and EU';
  return arrivalLimits.find((row) => row.class === kind && row.book === book);
}
