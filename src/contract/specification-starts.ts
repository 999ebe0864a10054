/**
 * What a specification may begin with, part by part. The words are common practice, without a source; the temperatures are
 * those of the table of arrival limits for the place. The kitchen changes what it likes before it is sent.
 */
import { type ArrivalClass, arrivalLimit } from '../core/properties/arrival-limits.ts';
import type { SpecificationContent } from './specification.ts';

export const openSpecification: SpecificationContent = {
  what: 'whole animal',
  ageClass: '',
  ageMonthsAtMost: null,
  breedOrSystem: '',
  pieceGrams: { low: null, high: null },
  stunning: '',
  bleeding: '',
  skin: [],
  head: 'not asked',
  feet: 'not asked',
  drawn: 'not asked',
  cut: '',
  dimensions: [],
  blood: 'not asked',
  bloodHow: '',
  chilledToC: null,
  chilledWithinHours: null,
  packed: '',
  labelled: [],
  documents: [],
  days: [],
  from: null,
  until: null,
  arrivesAtMostC: null,
  refusedIf: [],
  note: '',
};

export interface SpecificationStart {
  readonly id: string;
  readonly name: string;
  readonly species: string;
  readonly class: ArrivalClass;
  readonly words: Partial<SpecificationContent>;
}

const label = ['species and part', 'lot', 'day of slaughter', 'use-by date', 'health or identification mark'];
const forFood = 'written before the day of slaughter: this part is meant for food';

export const specificationStarts: readonly SpecificationStart[] = [
  {
    id: 'long goose necks',
    name: 'Long goose necks, skin whole',
    species: 'goose',
    class: 'poultry',
    words: {
      what: 'neck with skin',
      ageClass: 'season’s birds, fully feathered',
      bleeding: 'bled by a small cut close under the head, the neck skin not slit',
      skin: ['dry plucked', 'singed'],
      head: 'off',
      cut: 'Head cut off at the first vertebra. Skin cut round at the shoulder, as low on the breast as it goes, and drawn off with the neck; not slit along its length.',
      dimensions: [{ name: 'neck skin, from the head to the cut at the breast', lowMm: 180, highMm: null }],
      packed: 'laid straight, in lined crates, not in ice water',
      labelled: label,
      documents: [forFood],
      refusedIf: [
        'skin slit or torn',
        'pin feathers in rows',
        'bruised or blood-shot skin',
        'crop or its contents left in',
      ],
    },
  },
  {
    id: 'long-cut trotters',
    name: 'Long-cut pig’s trotters',
    species: 'pig',
    class: 'red meat',
    words: {
      what: 'hind trotter, cut long',
      skin: ['scalded', 'scraped', 'singed'],
      feet: 'on',
      cut: 'Taken off above the hock with the skin left long all round; straight cut, skin not nicked on the inside of the leg; claws drawn.',
      dimensions: [
        { name: 'from the toes to the cut', lowMm: 260, highMm: 340 },
        { name: 'across at the cut', lowMm: 60, highMm: null },
      ],
      packed: 'single layer, dry, in lined crates',
      labelled: label,
      documents: [forFood],
      refusedIf: ['skin nicked or torn', 'hair left between the toes', 'claws left on', 'swollen joints'],
    },
  },
  {
    id: 'blood for food',
    name: 'Pig’s blood for food',
    species: 'pig',
    class: 'blood',
    words: {
      what: 'blood',
      bleeding:
        'collected with a clean hollow knife or into a clean vessel for each animal, nothing from the floor',
      blood: 'kept for us',
      bloodHow:
        'Stirred at once so that it does not clot; each vessel marked with its animals and held back until all of them have passed inspection; no water added; say whether anything was added against clotting, and how much.',
      chilledWithinHours: 2,
      packed: 'in closed food containers, full to the lid',
      labelled: [...label, 'the animals in each vessel', 'what was added against clotting'],
      documents: [forFood, 'that every animal in the vessel passed inspection'],
      refusedIf: ['clotted', 'off smell', 'seal broken', 'a vessel without its animals'],
    },
  },
  {
    id: 'pig’s heads',
    name: 'Pig’s heads, whole',
    species: 'pig',
    class: 'red meat',
    words: {
      what: 'head',
      skin: ['scalded', 'scraped', 'singed'],
      head: 'on',
      cut: 'Cut straight behind the ears, jowl left on; ears and tongue left in; not split. Ears and nostrils clean.',
      packed: 'one to a bag, in crates',
      labelled: label,
      documents: [forFood],
      refusedIf: [
        'hair left in the ears or folds',
        'cheeks slit open beyond the inspection cuts',
        'shot through',
      ],
    },
  },
  {
    id: 'sheep’s heads',
    name: 'Lamb’s heads',
    species: 'lamb',
    class: 'red meat',
    words: {
      what: 'head',
      ageMonthsAtMost: 12,
      ageClass: 'no permanent incisor through the gum',
      skin: ['skinned'],
      head: 'on',
      cut: 'Cut off at the first vertebra, tongue left in, not split.',
      packed: 'one to a bag, in crates',
      labelled: [...label, 'age of the animal'],
      documents: [forFood],
      refusedIf: ['age not said', 'wool left on', 'split'],
    },
  },
  {
    id: 'feet of poultry',
    name: 'Chicken feet, peeled',
    species: 'chicken',
    class: 'poultry',
    words: {
      what: 'feet',
      skin: ['scalded'],
      feet: 'on',
      cut: 'Cut at the hock joint; outer skin and claws pulled off.',
      packed: 'in lined crates, drained',
      labelled: label,
      documents: [forFood],
      refusedIf: ['sores on the pads', 'outer skin left on', 'broken or blood-shot'],
    },
  },
  {
    id: 'whole geese',
    name: 'Whole geese, everything with them',
    species: 'goose',
    class: 'poultry',
    words: {
      what: 'whole animal',
      bleeding: 'hung and bled out',
      skin: ['dry plucked', 'singed'],
      head: 'off',
      feet: 'off, sent with it',
      drawn: 'drawn, offal sent with it',
      cut: 'Neck and neck skin left long; vent cut small.',
      packed: 'hung or single layer in lined crates; liver, heart, gizzard and neck bagged by bird',
      labelled: label,
      documents: [forFood],
      refusedIf: ['skin torn', 'bruised breast', 'offal of one bird not told from another’s'],
    },
  },
];

/** The contents to begin with, the temperatures by the place; a class without a known limit is left open. */
export function beginSpecification(start: SpecificationStart, place: string): SpecificationContent {
  const limit = arrivalLimit(start.class, place)?.atMostC ?? null;
  return { ...openSpecification, chilledToC: limit, arrivesAtMostC: limit, ...start.words };
}

export interface StartBasis {
  readonly what: string;
  readonly source: string;
  readonly confidence: string;
}

/** What the beginning rests on: said beside it, before anything of it is sent. */
export function startBasis(start: SpecificationStart, place: string): StartBasis[] {
  const limit = arrivalLimit(start.class, place);
  const words = {
    what: 'How it is bled, dressed, cut and packed, how long, and what is refused',
    source: 'common-practice',
    confidence: 'common practice',
  };
  return limit === undefined
    ? [words]
    : [
        words,
        {
          what: `Cold: ${limit.atMostC} °C or colder for ${limit.class} (${limit.citation})`,
          source: limit.source,
          confidence: limit.confidence,
        },
      ];
}
