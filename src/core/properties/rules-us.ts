/** Rules of the United States for cooking: the retail code, and the inspection service's tables for plants. */
import { type Animal, mammals, poultry, wild } from './product.ts';
import {
  fahrenheit,
  type HoldRule,
  hours,
  minutes,
  type Rule,
  type RuleScope,
  type TimeAtTemperature,
} from './rule.ts';
import { meatRows } from './rules-meat-tables.ts';
import { chickenRows, type PoultryRow, turkeyRows } from './rules-poultry-tables.ts';

const authority =
  'Advice, not a licence: the state’s code, the inspector and a qualified person decide for your kitchen.';
const coldest =
  'Holds only if the probe was in the point that got least; the slowest piece of the batch decides.';
const toxin = 'No cook undoes toxins formed before it: food left warm too long stays unsafe.';
const variance =
  'In a restaurant, cooking to these tables instead of the retail code needs a variance and a written plan.';
const humidity =
  'The guideline also asks for a moist oven (or immersion, a sealed bag, or a casing that holds moisture); a log cannot show that.';

/** Total time between 50 and 130 °F on the way up, at most 6 hours. */
export const comeUpLimit = { lowC: fahrenheit(50), highC: fahrenheit(130), s: hours(6) };

/** The guideline prints a row in both units; a reading that meets either is at the row. */
function row(F: number, C: number, s: number): TimeAtTemperature {
  return { C: Math.min(C, fahrenheit(F)), s, printed: `${F} °F (${C} °C)` };
}

const seconds = (value: number, unit: 'min' | 's') => (unit === 'min' ? minutes(value) : value);

function poultryRow([F, C, unit, dwell]: PoultryRow, fat: number): TimeAtTemperature {
  return row(F, C, seconds(dwell[fat - 1]!, unit));
}

/** Dwell times [s] for one bird and one fat content (1 to 12 %), from the table as printed. Source: fsis-appendix-a-2021 */
export function poultryRows(bird: 'chicken' | 'turkey' | 'other', fat: number): TimeAtTemperature[] {
  if (bird === 'chicken') return chickenRows.map((r) => poultryRow(r, fat));
  if (bird === 'turkey') return turkeyRows.map((r) => poultryRow(r, fat));
  const turkey = poultryRows('turkey', fat);
  return poultryRows('chicken', fat).map((r, i) => ({ ...r, s: Math.max(r.s, turkey[i]!.s) }));
}

const birds = {
  chicken: 'chicken',
  turkey: 'turkey',
  other:
    'duck, goose, squab and other birds, or birds mixed: the longer time of the chicken and the turkey table',
};

/** In a restaurant the plants' tables stand for the code's row only under a variance; in a plant they are the guideline. */
const inPlants = (product: RuleScope['product']): RuleScope => ({
  places: ['US'],
  steps: ['cook'],
  role: 'instead',
  insteadOf: ['us-food-code-165f-stuffed', 'us-food-code-155f-comminuted', 'us-food-code-145f-whole'],
  needs: 'a variance from the regulator and a written plan, where it is a restaurant',
  ...(product === undefined ? {} : { product }),
});

const inKitchens = (more: Partial<RuleScope> = {}): RuleScope => ({
  places: ['US'],
  steps: ['cook'],
  role: 'usual',
  ...more,
});

const birdsOf: Readonly<Record<keyof typeof birds, readonly Animal[]>> = {
  chicken: ['chicken'],
  turkey: ['turkey'],
  other: poultry,
};
/** Fowl that the table of one bird does not speak of: of a mixture the longer time counts. */
const otherThan = (bird: keyof typeof birds): readonly Animal[] =>
  bird === 'other' ? [] : poultry.filter((a) => !birdsOf[bird].includes(a));

function poultryRule(bird: keyof typeof birds, fat: number): HoldRule {
  return {
    id: `us-poultry-7log-${bird}-${fat}pct-fat`,
    kind: 'hold',
    title: `7-log10 fall of Salmonella, ${bird === 'other' ? 'other birds' : bird}, ${fat} % fat`,
    place: 'United States, inspected plants',
    appliesTo: `${birds[bird]}; up to ${fat} % fat${fat === 12 ? ', more than that, or fat unknown' : ''}`,
    scope: inPlants({
      animals: birdsOf[bird],
      noneOf: otherThan(bird),
      fat: { over: fat === 1 ? -1 : fat - 1, upTo: fat === 12 ? null : fat },
    }),
    type: 'guidance',
    rows: poultryRows(bird, fat),
    comeUp: comeUpLimit,
    source: 'fsis-appendix-a-2021',
    confidence: 'read',
    cautions: [coldest, humidity, variance, authority, toxin],
  };
}

function meat(key: 'log65' | 'log7' | 'log5', logs: string, what: string): HoldRule {
  return {
    id: `us-meat-${logs}log`,
    kind: 'hold',
    title: `${logs}-log10 fall of Salmonella, meat`,
    place: 'United States, inspected plants',
    appliesTo: what,
    scope: inPlants({ animals: mammals, noneOf: poultry }),
    type: 'guidance',
    rows: meatRows.map((r) => row(r.F, r.C, seconds(r[key], r.unit))),
    comeUp: comeUpLimit,
    source: 'fsis-appendix-a-2021',
    confidence: 'read',
    cautions: [coldest, humidity, variance, authority, toxin],
  };
}

const fats = Array.from({ length: 12 }, (_, i) => i + 1);

const retail = {
  kind: 'hold',
  place: 'United States, retail and restaurants (model code, as adopted by the state)',
  type: 'statutory',
  source: 'us-food-code',
  confidence: 'secondary',
  cautions: [coldest, authority, toxin],
} as const;

export const usCookingRules: readonly Rule[] = [
  ...fats.map((fat) => poultryRule('chicken', fat)),
  ...fats.map((fat) => poultryRule('turkey', fat)),
  ...fats.map((fat) => poultryRule('other', fat)),
  meat('log65', '6.5', 'cooked beef, pork, lamb and other meat'),
  meat(
    'log7',
    '7',
    'cooked meat where a 7-log10 fall is wanted; a mixture with poultry needs the poultry tables',
  ),
  meat('log5', '5', 'meat products for which a 5-log10 fall is accepted'),
  {
    id: 'us-come-up-6h',
    kind: 'come-up',
    title: 'No more than 6 hours between 50 and 130 °F on the way up',
    place: 'United States, inspected plants',
    appliesTo: 'cooked meat and poultry (toxin of Staphylococcus aureus, which no cook destroys)',
    scope: { places: ['US'], steps: ['cook'], role: 'beside' },
    type: 'guidance',
    ...comeUpLimit,
    source: 'fsis-appendix-a-2021',
    confidence: 'read',
    cautions: [authority],
  },
  {
    id: 'us-90c-10min',
    kind: 'lethality',
    title: '90 °C for 10 minutes or its equal (z 7 °C below 90 °C, 10 °C above)',
    place: 'United States',
    appliesTo:
      'food packed without air and kept cold, against non-proteolytic Clostridium botulinum (6-log10)',
    scope: { places: ['US'], steps: ['cook'], role: 'beside', product: { packed: 'without air' } },
    type: 'guidance',
    referenceC: 90,
    s: minutes(10),
    floorC: 85,
    rate: { by: 'z', below: 7, above: 10 },
    source: 'fda-hazards-guide',
    confidence: 'memory',
    cautions: [
      'Stricter below 90 °C than the British table; the figures are from memory.',
      coldest,
      authority,
      toxin,
    ],
  },
  {
    id: 'us-plant-poultry-160f',
    kind: 'hold',
    title: 'Cooked poultry at 160 °F (71.1 °C), at once',
    place: 'United States, inspected plants',
    appliesTo: 'cooked poultry rolls and other cooked, uncured poultry (an older option still allowed)',
    scope: inPlants({ animals: poultry }),
    type: 'guidance',
    rows: [row(160, 71.1, 0)],
    source: 'fsis-appendix-a-2021',
    confidence: 'read',
    cautions: [coldest, authority, toxin],
  },
  {
    id: 'us-plant-cured-poultry-155f',
    kind: 'hold',
    title: 'Cured and smoked poultry at 155 °F (68.3 °C), at once',
    place: 'United States, inspected plants',
    appliesTo: 'cured and smoked poultry (an older option still allowed)',
    scope: inPlants({ animals: poultry, nitritePpm: 100 }),
    type: 'guidance',
    rows: [row(155, 68.3, 0)],
    source: 'fsis-appendix-a-2021',
    confidence: 'read',
    cautions: [coldest, authority, toxin],
  },
  {
    ...retail,
    id: 'us-food-code-165f-stuffed',
    title: '165 °F (74 °C), at once',
    appliesTo:
      'poultry, wild game, stuffed meat, poultry, fish or pasta, and stuffing with meat, poultry or fish in it',
    scope: inKitchens({
      product: { forms: ['stuffed or rolled'], orOf: [...poultry, ...wild] },
    }),
    rows: [row(165, 74, 0)],
    cautions: [
      'Editions up to 2013 ask for 15 seconds: see which edition your state has adopted.',
      ...retail.cautions,
    ],
  },
  {
    ...retail,
    id: 'us-food-code-165f-15s-stuffed',
    title: '165 °F (74 °C) for 15 seconds',
    appliesTo: 'the same foods, where the edition of 2013 or an older one is in force',
    scope: inKitchens({
      role: 'instead',
      insteadOf: ['us-food-code-165f-stuffed'],
      product: { forms: ['stuffed or rolled'], orOf: [...poultry, ...wild] },
    }),
    rows: [row(165, 74, 15)],
  },
  {
    ...retail,
    id: 'us-food-code-155f-comminuted',
    title: '155 °F (68 °C) for 17 seconds or its printed equals',
    appliesTo: 'minced or tenderised or injected meat and fish, ratites, eggs not for immediate service',
    scope: inKitchens({ product: { forms: ['minced', 'injected or tenderised'] } }),
    rows: [row(145, 63, minutes(3)), row(150, 66, minutes(1)), row(155, 68, 17), row(158, 70, 0)],
    cautions: ['The 17 seconds are from memory; older editions print 15.', ...retail.cautions],
  },
  {
    ...retail,
    id: 'us-food-code-145f-whole',
    title: '145 °F (63 °C) for 15 seconds',
    appliesTo:
      'whole pieces of meat, farmed game and fish, eggs for immediate service; not poultry, not stuffed, not minced',
    scope: inKitchens({
      product: {
        noneOf: [...poultry, ...wild],
        noForms: ['minced', 'stuffed or rolled', 'injected or tenderised'],
      },
    }),
    rows: [row(145, 63, 15)],
  },
  {
    ...retail,
    id: 'us-food-code-roasts',
    title: 'Whole roasts: 130 °F (54.4 °C) for 112 minutes or its printed equals',
    appliesTo: 'whole meat roasts, cured ones included',
    scope: inKitchens({
      role: 'instead',
      insteadOf: ['us-food-code-145f-whole'],
      product: {
        animals: mammals,
        noneOf: [...poultry, ...wild],
        noForms: ['minced', 'stuffed or rolled'],
      },
    }),
    rows: [
      row(130, 54.4, minutes(112)),
      row(131, 55, minutes(89)),
      row(133, 56.1, minutes(56)),
      row(135, 57.2, minutes(36)),
      row(136, 57.8, minutes(28)),
      row(138, 58.9, minutes(18)),
      row(140, 60, minutes(12)),
      row(142, 61.1, minutes(8)),
      row(144, 62.2, minutes(5)),
      row(145, 62.8, minutes(4)),
      row(147, 63.9, 134),
      row(149, 65, 85),
      row(151, 66.1, 54),
      row(153, 67.2, 34),
      row(155, 68.3, 22),
      row(157, 69.4, 14),
      row(158, 70, 0),
    ],
  },
  {
    ...retail,
    id: 'us-food-code-reheat-165f',
    title: 'Reheated to 165 °F (74 °C) for 15 seconds within 2 hours',
    appliesTo: 'cooked and cooled food reheated for hot holding',
    scope: inKitchens({ steps: ['reheat'], product: { cooked: true } }),
    rows: [row(165, 74, 15)],
    within: { fromC: 5, s: hours(2) },
  },
  {
    ...retail,
    id: 'us-food-code-microwave-165f',
    title: 'Cooked or reheated in a microwave oven: 165 °F (74 °C) in every part, then 2 minutes covered',
    appliesTo: 'raw animal food cooked in a microwave oven, and food reheated in one',
    scope: inKitchens({ steps: ['cook', 'reheat'], role: 'beside' }),
    rows: [row(165, 74, 0)],
    cautions: [
      'It must be turned or stirred, covered, and stand covered for 2 minutes afterwards: a log cannot show that.',
      ...retail.cautions,
    ],
  },
  {
    ...retail,
    id: 'us-food-code-reheat-135f',
    title: 'Ready-made food reheated to 135 °F (57 °C) within 2 hours',
    appliesTo:
      'food that came ready to eat from an inspected plant in an intact package; not what was cooked here',
    scope: inKitchens({ steps: ['reheat'], role: 'beside', product: { cooked: true } }),
    rows: [row(135, 57, 0)],
    within: { fromC: 5, s: hours(2) },
  },
];
