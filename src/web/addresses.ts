/** Every screen has its own address; nothing else spells one. */
export const places = [
  { slug: 'animals', name: 'Animals' },
  { slug: 'dishes', name: 'Dishes' },
  { slug: 'week', name: 'Week' },
  { slug: 'line', name: 'Line' },
  { slug: 'proof', name: 'Proof' },
] as const;
export type PlaceSlug = (typeof places)[number]['slug'];

export const at = {
  door: () => '/',
  place: (kitchenId: string, slug: PlaceSlug) => `/k/${kitchenId}/${slug}`,
  settings: (kitchenId: string) => `/k/${kitchenId}/settings`,
  animals: (kitchenId: string, tab: 'parts' | 'shelf' | 'suppliers' | 'deliveries' | 'yields' | 'law') =>
    `/k/${kitchenId}/animals/${tab}`,
  supplier: (kitchenId: string, supplierId: string) => `/k/${kitchenId}/animals/suppliers/${supplierId}`,
  newSpecification: (kitchenId: string, supplierId: string) =>
    `/k/${kitchenId}/animals/suppliers/${supplierId}/specifications/new`,
  /** Versions count from 1; the newest where none is named. */
  specification: (kitchenId: string, supplierId: string, specificationId: string, version?: number) =>
    `/k/${kitchenId}/animals/suppliers/${supplierId}/specifications/${specificationId}${version === undefined ? '' : `?version=${version}`}`,
  deliveries: (kitchenId: string) => `/k/${kitchenId}/animals/deliveries`,
  takeIn: (kitchenId: string, supplierId?: string) =>
    `/k/${kitchenId}/animals/deliveries/take-in${supplierId === undefined ? '' : `?from=${supplierId}`}`,
  delivery: (kitchenId: string, deliveryId: string) => `/k/${kitchenId}/animals/deliveries/${deliveryId}`,
  shelf: (kitchenId: string) => `/k/${kitchenId}/animals/shelf`,
  lot: (kitchenId: string, lotId: string) => `/k/${kitchenId}/animals/shelf/${lotId}`,
  law: (kitchenId: string, asked?: { species: string; part: string }) =>
    `/k/${kitchenId}/animals/law${asked === undefined ? '' : `?${new URLSearchParams(asked)}`}`,
  /** A question to the authority, begun for a dish or for a part. */
  askAuthority: (kitchenId: string, about: { dish?: string; species: string; part: string }) =>
    `/k/${kitchenId}/animals/law/ask?${new URLSearchParams(about)}`,
  authorityRequest: (kitchenId: string, requestId: string) =>
    `/k/${kitchenId}/animals/law/asked/${requestId}`,
  breakdowns: (kitchenId: string) => `/k/${kitchenId}/animals/breakdowns`,
  startBreakdown: (kitchenId: string, lotId?: string) =>
    `/k/${kitchenId}/animals/breakdowns/start${lotId === undefined ? '' : `?lot=${lotId}`}`,
  importBreakdowns: (kitchenId: string) => `/k/${kitchenId}/animals/breakdowns/import`,
  breakdown: (kitchenId: string, breakdownId: string) => `/k/${kitchenId}/animals/breakdowns/${breakdownId}`,
  finishBreakdown: (kitchenId: string, breakdownId: string) =>
    `/k/${kitchenId}/animals/breakdowns/${breakdownId}/finish`,
  newDish: (kitchenId: string) => `/k/${kitchenId}/dishes/new`,
  dish: (kitchenId: string, dishId: string) => `/k/${kitchenId}/dishes/${dishId}`,
  step: (kitchenId: string, dishId: string, stepId: string) =>
    `/k/${kitchenId}/dishes/${dishId}/steps/${stepId}`,
  version: (kitchenId: string, dishId: string, versionId: string, stepId?: string) =>
    `/k/${kitchenId}/dishes/${dishId}/versions/${versionId}${stepId === undefined ? '' : `/steps/${stepId}`}`,
  price: (kitchenId: string, dishId: string) => `/k/${kitchenId}/dishes/${dishId}/price`,
  compare: (kitchenId: string, dishId: string, fromId: string, toId: string) =>
    `/k/${kitchenId}/dishes/${dishId}/compare/${fromId}/${toId}`,
  ingredients: (kitchenId: string) => `/k/${kitchenId}/dishes/ingredients`,
  ingredient: (kitchenId: string, ingredientId: string) =>
    `/k/${kitchenId}/dishes/ingredients/${ingredientId}`,
  rates: (kitchenId: string) => `/k/${kitchenId}/dishes/rates`,
  allergens: (kitchenId: string) => `/k/${kitchenId}/dishes/allergens`,
  batch: (kitchenId: string, batchId: string) => `/k/${kitchenId}/line/${batchId}`,
  /** Steps count from 1. */
  batchStep: (kitchenId: string, batchId: string, step: number) => `/k/${kitchenId}/line/${batchId}/${step}`,
  startBatch: (kitchenId: string, dishId?: string) =>
    `/k/${kitchenId}/line/start${dishId === undefined ? '' : `?dish=${dishId}`}`,
  journal: (kitchenId: string) => `/k/${kitchenId}/proof/journal`,
  checks: (kitchenId: string) => `/k/${kitchenId}/proof/checks`,
};
