/**
 * Greenhouse gas of a kilogram of a part that is not muscle, raw [kg CO₂e/kg], from AGRIBALYSE 3.1: one value for all of
 * them in a class of animals, which is why it is a proxy. It is small for pig and bird because the animal's burden is
 * shared out by price. Source: agribalyse-3-1 (climate change). Confidence: read. Quality of the data as
 * published, 1 best to 5 worst: bird 2.6 to 3.1, pig 2.5, lamb 2.6, beef 2.2.
 */
const bird = 1.84;

export const partsProxy = {
  chicken: bird,
  'spent hen': bird,
  duck: bird,
  goose: bird,
  turkey: bird,
  // The liver of a rabbit has the bird's value, the only part of it that is listed.
  rabbit: bird,
  pig: 2.1,
  lamb: 21.6,
  beef: 22.1,
} as const;

export type ProxySpecies = keyof typeof partsProxy;

/** What has to stand beside the figure wherever it is read. */
export const proxyMeaning =
  'A proxy to one figure: what making such parts is charged with, where an animal’s burden is shared out by price. It is no measurement of this animal and no saving by itself; what is saved is what you no longer buy instead.';
