/** New steps and new methods. The numbers are somewhere to begin, common practice without a source, and there to be changed. */
import { v7 } from 'uuid';
import type { Place } from '../../../../contract/records.ts';
import type { Ask, Method, Step, StepKind, StepOf } from '../../../../contract/steps.ts';

export const newId = (): string => v7();

/** What each kind of step is for, in a chef's words. */
export const kindWords: Record<StepKind, { readonly name: string; readonly what: string }> = {
  trim: { name: 'Trim', what: 'bone, skin, clean, cut to size' },
  cure: { name: 'Cure', what: 'dry salt or brine' },
  'rinse and dry': { name: 'Rinse and dry', what: 'off with the salt, dry for the fill' },
  mix: { name: 'Mix', what: 'a filling, by weight' },
  fill: { name: 'Fill', what: 'into a skin, a casing, a mould' },
  wrap: { name: 'Wrap', what: 'film, cloth, caul, a lid' },
  cook: { name: 'Cook', what: 'heat, until the coldest point is safe' },
  chill: { name: 'Chill', what: 'down through the warm zone in time' },
  keep: { name: 'Keep', what: 'cold, packed, for so many days' },
  finish: { name: 'Finish', what: 'crisp, glaze, reheat for the plate' },
  plate: { name: 'Plate', what: 'portion and send' },
};

const ask = (kind: Ask['kind'], label: string, more: Partial<Ask> = {}): Ask => ({
  id: newId(),
  kind,
  label,
  ...more,
});

export const newAsk = (kind: Ask['kind'] = 'temperature'): Ask => ask(kind, '');

/** Raw pork, arm picnic, made to sum to one: the body has to be made of something until the chef says of what. */
const pork = {
  name: 'pork, USDA SR28 10074: put in your own',
  composition: { water: 0.6797, protein: 0.1861, fat: 0.1244, carbohydrate: 0, fibre: 0, ash: 0.0098 },
};

const lethality = { referenceC: 70, zC: 7.5, min: 2 };
/** In the United States the rule follows from the food, which is not known yet: the step is held to what is usual for it. */
const cookRules = (place: Place) => (place === 'US' ? [] : ['gb-70c-2min']);
const chillRules = (place: Place) => (place === 'US' ? ['us-food-code-cooling'] : ['gb-chill-90min-8c']);

/** A step of a kind, ready to be filled in. */
export function newStep<K extends StepKind>(kind: K, place: Place, more?: Partial<StepOf<K>>): StepOf<K> {
  const common = { id: newId(), name: kindWords[kind].name, how: '', handsMin: 10, asks: [] as Ask[] };
  return { ...(blank(kind, place, common) as StepOf<K>), ...more };
}

function blank(
  kind: StepKind,
  place: Place,
  common: Pick<Step, 'id' | 'name' | 'how' | 'handsMin' | 'asks'>,
): Step {
  switch (kind) {
    case 'trim':
      return {
        kind,
        ...common,
        part: 'the part',
        weightG: 1_000,
        yieldPct: 80,
        asks: [ask('weight', 'Trimmed weight')],
      };
    case 'cure':
      return {
        kind,
        ...common,
        by: 'dry cure',
        saltPct: 1.8,
        h: 12,
        mediumC: 3,
        asks: [ask('weight', 'Salt weighed out')],
      };
    case 'rinse and dry':
      return { kind, ...common, rinseMin: 2, dryMin: 20 };
    case 'mix':
      return {
        kind,
        ...common,
        lines: [],
        maxC: 12,
        asks: [
          ask('temperature', 'Filling when mixed', {
            high: 12,
            basis: 'Cold, so that it binds: common practice, no source.',
          }),
        ],
      };
    case 'fill':
      return {
        kind,
        ...common,
        casing: 'casing',
        profile: [
          { atMm: 0, diameterMm: 50 },
          { atMm: 180, diameterMm: 50 },
        ],
        skinMm: 0.5,
        gramsPerPiece: 300,
        headSpacePct: 5,
        asks: [ask('weight', 'One filled piece')],
      };
    case 'wrap':
      return { kind, ...common, material: 'film for cooking', layers: 4, micrometres: 10, kWmK: 0.3 };
    case 'cook':
      return {
        kind,
        ...common,
        body: { shape: 'cylinder', diameterMm: 50, layers: [pork] },
        startC: 5,
        stages: [{ name: 'steam', medium: 'steam', mediumC: 100, until: { min: 40 } }],
        target: lethality,
        rules: cookRules(place),
        asks: [
          ask('core log', 'Core at the coldest point', { critical: true, basis: 'The rules of this step.' }),
        ],
      };
    case 'chill':
      return {
        kind,
        ...common,
        handsMin: 5,
        stages: [
          { name: 'ice water', medium: 'ice water', mediumC: 1, until: { warmestC: 5, atMostMin: 240 } },
        ],
        rules: chillRules(place),
        asks: [ask('core log', 'Core while chilling', { critical: true, basis: 'The rules of this step.' })],
      };
    case 'keep':
      return {
        kind,
        ...common,
        handsMin: 5,
        maxC: 5,
        days: 3,
        packed: 'open or covered',
        asks: [
          ask('temperature', 'Cold room', { high: 5, critical: true, basis: 'The kitchen’s own limit.' }),
        ],
      };
    case 'finish':
      return { kind, ...common, by: 'hot oven', mediumC: 200, min: 10 };
    case 'plate':
      return { kind, ...common, handsMin: 3, portionG: 150, portionsPerPiece: 1 };
  }
}

/** A step again, with ids of its own. */
export function duplicateOf<S extends Step>(step: S): S {
  return {
    ...structuredClone(step),
    id: newId(),
    name: `${step.name} (again)`.slice(0, 120),
    asks: step.asks.map((a) => ({ ...a, id: newId() })),
  };
}

export interface StartingMethod {
  readonly id: string;
  readonly name: string;
  readonly what: string;
  readonly method: (place: Place) => Method;
}

const kinds = (place: Place, list: readonly StepKind[]): Method => list.map((k) => newStep(k, place));

/** Where a dish can begin. */
export const startingMethods: readonly StartingMethod[] = [
  { id: 'blank', name: 'An empty bench', what: 'Add the steps one by one.', method: () => [] },
  {
    id: 'filled',
    name: 'A skin that is filled',
    what: 'Trotter, neck, casing: trimmed, cured, filled, wrapped, steamed, chilled, crisped.',
    method: (place) =>
      kinds(place, [
        'trim',
        'cure',
        'rinse and dry',
        'mix',
        'fill',
        'wrap',
        'cook',
        'chill',
        'keep',
        'finish',
        'plate',
      ]),
  },
  {
    id: 'roll',
    name: 'A roll',
    what: 'Heart, breast of lamb, belly: cured, laid out, rolled in film, cooked gently, sliced.',
    method: (place) =>
      kinds(place, ['trim', 'cure', 'rinse and dry', 'wrap', 'cook', 'chill', 'keep', 'plate']),
  },
  {
    id: 'mould',
    name: 'In a mould',
    what: 'Brawn, terrine, blood pudding: mixed, into the mould, cooked, pressed and chilled, sliced.',
    method: (place) => [
      newStep('trim', place),
      newStep('mix', place),
      newStep('cook', place, {
        body: { shape: 'block', widthMm: 90, heightMm: 80, layers: [pork] },
        stages: [{ name: 'water bath', medium: 'water bath', mediumC: 85, until: { min: 120 } }],
      }),
      newStep('chill', place),
      newStep('keep', place),
      newStep('plate', place),
    ],
  },
  {
    id: 'in fat',
    name: 'In its own fat',
    what: 'Gizzards, legs, tongue: cured, cooked slowly in fat, kept, crisped.',
    method: (place) => [
      ...kinds(place, ['trim', 'cure', 'rinse and dry']),
      newStep('cook', place, {
        body: { shape: 'sphere', diameterMm: 40, layers: [pork] },
        stages: [{ name: 'fat', medium: 'confit fat', mediumC: 90, until: { min: 150 } }],
      }),
      ...kinds(place, ['chill', 'keep', 'finish', 'plate']),
    ],
  },
];

/** The method with a step moved to another place in the order. */
export function moved(method: Method, from: number, to: number): Method {
  const step = method[from];
  const target = Math.max(0, Math.min(method.length - 1, to));
  if (step === undefined || target === from) return method;
  const rest = method.filter((_, i) => i !== from);
  return [...rest.slice(0, target), step, ...rest.slice(target)];
}
