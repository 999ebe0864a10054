/** What an uneven or a too full piece costs, in words. Pure. */
import type { ShapeCost } from '../../../../core/method/shape-cost.ts';
import { plainNumber } from '../../../../core/units.ts';
import type { LengthUnits } from '../../../../documents/pictures/piece-layout.ts';

const lengthWords = (m: number, units: LengthUnits): string =>
  units === 'US' ? `${(m / 0.0254).toFixed(2)} in` : `${plainNumber(m * 1000, 1)} mm`;

/** Minutes that are needed, rounded up. */
const minutesWords = (s: number): string =>
  s < 90 ? `${Math.max(1, Math.ceil(s))} s` : `${Math.ceil(s / 60 - 1e-6)} min`;

export interface Thickest {
  /** Along the axis and across [m]. */
  readonly at: number;
  readonly diameter: number;
}

export function thickestOf(profile: readonly { readonly at: number; readonly diameter: number }[]): Thickest {
  return profile.reduce((best, p) => (p.diameter > best.diameter ? p : best), { at: 0, diameter: 0 });
}

/** `The 6 mm bulge at 120 mm costs 7 min of “Steam”`, and each millimetre. */
export function unevenWords(
  cost: ShapeCost,
  thickest: Thickest,
  stage: string,
  units: LengthUnits,
): string[] {
  const words: string[] = [];
  const { even, perMetre } = cost;
  if (even !== null && even.saves > 15) {
    const bulge = thickest.diameter - even.diameter;
    words.push(
      `The ${lengthWords(bulge, units)} bulge at ${lengthWords(thickest.at, units)} costs ${minutesWords(even.saves)} of “${stage}”: ${lengthWords(even.diameter, units)} throughout, the same filling is done in ${minutesWords(even.heating.duration)}.`,
    );
  } else if (even !== null)
    words.push('Even enough: evening it out would save no more than a quarter of a minute.');
  else words.push('Even throughout.');
  if (perMetre !== null && perMetre > 0) {
    const step = units === 'US' ? 0.003175 : 0.001;
    const s = perMetre * step;
    words.push(
      `Each ${units === 'US' ? 'eighth of an inch' : 'millimetre'} more where it is coldest costs ${s < 90 ? `${Math.ceil(s)} s` : `${plainNumber(Math.ceil(s / 6 - 1e-6) / 10, 1)} min`}.`,
    );
  }
  return words;
}

/** What a piece that is too full costs; null where it fits. */
export function overfullWords(
  bulge: number,
  perMetre: number | null,
  stage: string,
  units: LengthUnits,
): string | null {
  if (bulge < 5e-5) return null;
  const thicker = `It comes out ${lengthWords(bulge, units)} thicker than drawn at its thickest`;
  if (perMetre === null || perMetre <= 0) return `${thicker}; what that costs is not known.`;
  return `${thicker}: about ${minutesWords(bulge * perMetre)} more of “${stage}”, if the casing gives way evenly and does not burst.`;
}
