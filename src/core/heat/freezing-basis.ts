/** What an answer says about freezing: by which model, how the first ice was had, and which layers do not freeze although they might. */
import { firstIceRange } from '../properties/freezing-food.ts';
import type { Material } from './material.ts';
import type { Basis, Layer } from './types.ts';

/** Above this no food has begun to freeze [°C]; egg white, the first to, begins at −0.6. */
const freezingStarts = -0.5;
/** The ice is stated for this coldest by its author's comparison [°C]. */
const coldestIce = -45;

function firstIceBasis(layer: Layer, C: number): Basis {
  const at = `first ice of ${layer.name} at ${C.toFixed(1)} °C`;
  if (layer.freezing !== undefined)
    return { what: `${at}, as given`, source: 'user-input', confidence: 'assumption' };
  if (layer.freezesAs !== undefined)
    return {
      what: `${at}, that of ${layer.freezesAs} in the handbook’s table, raw and unsalted`,
      source: 'ashrae-refrigeration-properties',
      confidence: 'memory',
    };
  return {
    what: `${at}, from its composition (Pham); such points stray by up to 1 K: give a measured one where it matters`,
    source: 'pham-1996',
    confidence: 'secondary',
  };
}

/**
 * What an answer rests on where a programme goes below a first ice [°C].
 * @param layers of the body
 * @param materials of the layers, as computed
 * @param lowest coldest temperature that was met [°C]
 * Checked by tests for a layer that freezes, one of constant properties and one without water. Source: schwartzberg-1981
 */
export function freezingBasis(
  layers: readonly Layer[],
  materials: readonly Material[],
  lowest: number,
): Basis[] {
  const basis: Basis[] = [];
  const frozen = materials.filter((m) => m.freezing !== undefined && lowest < m.freezing.freezing);
  layers.forEach((layer, i) => {
    const freezing = materials[i].freezing;
    if (freezing === undefined || lowest >= freezing.freezing) return;
    basis.push(firstIceBasis(layer, freezing.freezing));
  });
  if (frozen.length > 0)
    basis.push(
      {
        what: `ice and its heat in ${frozen.map((m) => m.name).join(', ')}: apparent heat of Schwartzberg over the heats of the components, bound water 0.4 of the protein, no undercooling; its author’s like model gives freezing times and heat loads within 10 %`,
        source: 'schwartzberg-1981',
        confidence: 'memory',
      },
      {
        what: 'conductivity with ice by the layer’s rule, ice counted with its water: by Levy’s within 2.1 % of frozen chicken as measured; mass and size stay as at the start, though ice swells a piece by some 6 %',
        source: 'sweat-haugh-stadelman-1973',
        confidence: 'secondary',
      },
    );
  if (frozen.length > 0 && lowest < coldestIce)
    basis.push({
      what: `extrapolated: ${lowest.toFixed(0)} °C is colder than the ${coldestIce} °C that the ice is stated for`,
      source: 'miles-1974',
      confidence: 'assumption',
    });
  if (lowest < freezingStarts) {
    const constant = layers.filter((l) => 'properties' in l.material).map((l) => l.name);
    if (constant.length > 0)
      basis.push({
        what: `NOT VALID below about ${freezingStarts} °C for ${constant.join(', ')}: constant properties know no ice, and it reaches ${lowest.toFixed(1)} °C; give its composition`,
        source: 'own-assumption',
        confidence: 'assumption',
      });
    const dry = layers
      .filter(
        (l, i) =>
          'composition' in l.material && materials[i].freezing === undefined && lowest < firstIceRange.low,
      )
      .map((l) => l.name);
    if (dry.length > 0)
      basis.push({
        what: `no ice in ${dry.join(', ')}: little or no water that could freeze; what there is is taken as unfrozen`,
        source: 'own-assumption',
        confidence: 'assumption',
      });
  }
  return basis;
}
