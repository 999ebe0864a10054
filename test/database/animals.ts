/** What the tests of Animals begin with: a supplier, an agreed specification, geese in the house. All invented. */
import { v7 as uuid } from 'uuid';
import { askAuthority } from '../../src/app/authority.ts';
import { startBreakdown } from '../../src/app/breakdowns.ts';
import { takeDelivery } from '../../src/app/deliveries.ts';
import { addSpecification, answerSpecification, sendSpecification } from '../../src/app/specifications.ts';
import { addSupplier } from '../../src/app/suppliers.ts';
import type { TreeNode } from '../../src/contract/breakdown.ts';
import type { DeliveryInput, DeliveryLine } from '../../src/contract/delivery.ts';
import type { SpecificationContent } from '../../src/contract/specification.ts';
import type { TestKitchen } from './kitchen.ts';

export const content = (more: Partial<SpecificationContent> = {}): SpecificationContent => ({
  what: 'whole animal',
  ageClass: 'over 22 weeks',
  ageMonthsAtMost: 12,
  breedOrSystem: '',
  pieceGrams: { low: 3_500, high: 6_000 },
  stunning: '',
  bleeding: 'hung and bled out',
  skin: ['dry plucked', 'singed'],
  head: 'on',
  feet: 'off',
  drawn: 'drawn, offal sent with it',
  cut: 'neck left long, skin whole',
  dimensions: [{ name: 'neck skin', lowMm: 160, highMm: null }],
  blood: 'not asked',
  bloodHow: '',
  chilledToC: 4,
  chilledWithinHours: 24,
  packed: 'crates, lined',
  labelled: ['lot', 'day of slaughter'],
  documents: [],
  days: [3],
  from: '07:00',
  until: '11:00',
  arrivesAtMostC: 4,
  refusedIf: ['torn neck skin'],
  note: '',
  ...more,
});

export async function agreedSpecification(k: TestKitchen, more: Partial<SpecificationContent> = {}) {
  const supplier = await addSupplier(k.app, k.actor, {
    name: `Geese ${uuid().slice(-6)} (invented)`,
    note: '',
  });
  const begun = await addSpecification(k.app, k.actor, {
    supplierId: supplier.id,
    species: 'goose',
    name: 'Geese, long necks',
    content: content(more),
  });
  const version = begun.versions[0]!;
  await sendSpecification(k.app, k.actor, version.id, 0);
  const specification = await answerSpecification(k.app, k.actor, version.id, {
    id: uuid(),
    answer: 'agreed',
    saidBy: 'the farmer (invented)',
    note: '',
    at: '2026-11-10T09:00:00.000Z',
  });
  return { supplier, specification, versionId: version.id };
}

export const deliveryLine = (more: Partial<DeliveryLine> = {}): DeliveryLine => ({
  id: uuid(),
  kind: 'whole',
  what: 'Geese, six',
  species: 'goose',
  partId: null,
  class: 'poultry',
  count: 6,
  grams: 27_000,
  arrivalC: 3,
  arrivalCMeant: false,
  frozen: false,
  code: `G-${uuid().slice(-8)}`,
  tradeLot: null,
  tags: [],
  ageMonthsAtMost: 8,
  slaughteredOn: '2026-11-18',
  useBy: '2026-11-27',
  cost: 25_200,
  refused: false,
  note: '',
  ...more,
});

/** A Thursday, nine in the morning. */
export const thursday = '2026-11-19T09:00:00.000Z';

export const delivery = (
  supplierId: string,
  specificationVersionId: string | null,
  lines: DeliveryLine[],
  more: Partial<DeliveryInput> = {},
): DeliveryInput => ({
  id: uuid(),
  supplierId,
  specificationVersionId,
  arrivedAt: thursday,
  documents: '',
  lines,
  checks: [],
  decision: 'accepted',
  reason: '',
  ...more,
});

const node = (
  id: string,
  parent: string | null,
  name: string,
  becomes: TreeNode['becomes'],
  use: TreeNode['use'] = 'menu',
): TreeNode => ({ id, parent, name, becomes, class: 'poultry', use, piecesPerAnimal: null });

export const gooseTree: TreeNode[] = [
  node('whole', null, 'goose', 'step'),
  node('breast', 'whole', 'breast', 'part'),
  node('legs', 'whole', 'legs', 'part'),
  node('neck', 'whole', 'neck', 'step'),
  node('neck skin', 'neck', 'neck skin', 'part'),
  node('neck bone', 'neck', 'neck bone', 'bone', 'thrown away'),
  node('feet', 'whole', 'feet', 'by-product', 'thrown away'),
  node('fat', 'whole', 'fat', 'sold', 'kitchen'),
];

/** Six geese delivered as agreed; the lot they make. */
export async function geeseInTheHouse(k: TestKitchen, more: Partial<DeliveryLine> = {}) {
  const { supplier, specification, versionId } = await agreedSpecification(k);
  const taken = await takeDelivery(k.app, k.actor, delivery(supplier.id, versionId, [deliveryLine(more)]));
  return { supplier, specification, versionId, taken, lotId: taken.lotIds[0]! };
}

export const cutUp = (k: TestKitchen, lotId: string, grams = 27_000, animals = 6) =>
  startBreakdown(k.app, k.actor, {
    id: uuid(),
    species: 'goose',
    animals,
    nodes: gooseTree,
    lots: [{ lotId, grams }],
    cutterId: null,
  });

/** The ids that the addresses of reading operations need. */
export async function oneOfEach(k: TestKitchen): Promise<Record<string, string>> {
  const { supplier, specification, taken, lotId } = await geeseInTheHouse(k);
  const breakdown = await cutUp(k, lotId);
  const request = await askAuthority(k.app, k.actor, {
    dishId: null,
    species: 'goose',
    part: 'head',
    content: {
      versionNumber: null,
      supplier: supplier.name,
      specification: '',
      process: [],
      predicted: [],
      measured: [],
      laboratory: '',
      question: 'May the heads be served?',
    },
  });
  return {
    supplierId: supplier.id,
    specificationId: specification.id,
    deliveryId: taken.id,
    lotId,
    breakdownId: breakdown.id,
    requestId: request.id,
  };
}
