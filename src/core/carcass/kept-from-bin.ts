/** What a part kept from the bin stands for in greenhouse gas: a proxy, to be shown with what it does not say. */
import { OutOfRange } from '../errors.ts';
import { type ProxySpecies, partsProxy, proxyMeaning } from '../properties/parts-proxy.ts';

export interface KeptFromBin {
  /** [kg CO₂e], to one figure: it is not known better. */
  readonly kgCO2e: number;
  readonly perKg: number;
  /** What it says and what not: stands wherever the figure is read. */
  readonly meaning: string;
}

/**
 * Greenhouse gas that parts stand for which were eaten and not thrown away [kg CO₂e].
 * Equation: E = m e, rounded to one figure.
 * @param species of the animal
 * @param kg weight of the parts kept, 0 to 1,000,000 kg
 * Assumes one figure for all that is not muscle of a class of animals, by economic allocation: a part that sells for little is
 * charged little. It is what making such a part counts for, no saving: only what is no longer bought instead is saved.
 * null where no figure was published.
 * Checked: by hand.
 * @example keptFromBin('pig', 12).kgCO2e // → 30
 * Source: agribalyse-3-1
 */
export function keptFromBin(species: string, kg: number): KeptFromBin | null {
  if (!(kg >= 0 && kg <= 1e6)) throw new OutOfRange('kg', `${kg} kg`, '0 to 1000000 kg');
  const perKg = Object.hasOwn(partsProxy, species) ? partsProxy[species as ProxySpecies] : undefined;
  if (perKg === undefined) return null;
  return { kgCO2e: Number((kg * perKg).toPrecision(1)), perKg, meaning: proxyMeaning };
}
