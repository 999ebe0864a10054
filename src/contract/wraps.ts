/** What lies between a stage's medium and the food: film, a mould's wall, trapped air. */
import { filmResistance, wrapNamed } from '../core/properties/media.ts';
import type { StageInput } from './body.ts';

/** Its resistance [m² K/W]: as given, and by what it is wrapped in. */
export function resistanceOf({ resistanceM2KW = 0, wraps = [] }: StageInput, path: string): number {
  return wraps.reduce((sum, { of, thicknessMm, layers }, i) => {
    const { k } = wrapNamed(of, `${path}.wraps[${i}].of`);
    return sum + filmResistance(thicknessMm / 1000, k, layers);
  }, resistanceM2KW);
}

/** Can nothing dry off the food? */
export const isWrapped = ({ wrapped, wraps = [] }: StageInput): boolean => wrapped ?? wraps.length > 0;
