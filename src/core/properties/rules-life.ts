/** How long a food may be kept by published rules, as data. What grows in it meanwhile is a model and stands beside them. */
import { britain, type RuleConfidence, type RulePlace, type RuleType } from './rule.ts';

export type Scheme = 'cook-chill' | 'sealed at once and kept at 1 °C';

export interface LifeRule {
  readonly id: string;
  readonly title: string;
  readonly place: string;
  readonly places: readonly RulePlace[];
  readonly appliesTo: string;
  readonly type: RuleType;
  readonly source: string;
  readonly confidence: RuleConfidence;
  readonly cautions: readonly string[];
  /** Days of 24 hours from making; the day of making is the first of them. */
  readonly days: number;
  /** Kept warmer than this it limits, and speaks of food up to the other [°C]. */
  readonly overC: number | null;
  readonly upToC: number;
  readonly packed: 'without air' | null;
  /** One of the controlling factors lifts it. */
  readonly lifted: boolean;
  /** Only where the kitchen works by this scheme: it then takes the place of the others of its place named here. */
  readonly scheme: Scheme | null;
  readonly insteadOf: readonly string[];
}

const authority =
  'Advice, not a licence: your local authority’s officer and a qualified person decide for your kitchen.';

export const lifeRules: readonly LifeRule[] = [
  {
    id: 'gb-airless-10-days',
    title: 'Ten days without air at 3 to 8 °C, unless a controlling factor holds',
    place: 'United Kingdom',
    places: britain,
    appliesTo:
      'vacuum- and gas-packed chilled food (non-proteolytic Clostridium botulinum); fresh beef, lamb and pork are left out of it since December 2020, cooked food and poultry are not',
    type: 'guidance',
    source: 'fsa-vacuum-packing-2020',
    confidence: 'secondary',
    cautions: [authority],
    days: 10,
    overC: 3,
    upToC: 8,
    packed: 'without air',
    lifted: true,
    scheme: null,
    insteadOf: [],
  },
  {
    id: 'gb-cook-chill-5-days',
    title: 'Cook-chill: five days at 0 to 3 °C, the days of cooking and of eating included',
    place: 'United Kingdom',
    places: britain,
    appliesTo: 'food of the cook-chill scheme',
    type: 'guidance',
    source: 'doh-cook-chill-1989',
    confidence: 'memory',
    cautions: ['The scheme also asks how it was cooked, chilled and reheated.', authority],
    days: 5,
    overC: null,
    upToC: 3,
    packed: null,
    lifted: false,
    scheme: 'cook-chill',
    insteadOf: [],
  },
  {
    id: 'us-7-days',
    title: 'Seven days at 41 °F (5 °C), the day of preparation being the first',
    place: 'United States, retail and restaurants (model code, as adopted by the state)',
    places: ['US'],
    appliesTo: 'ready-to-eat food that needs time and temperature control and is held for more than a day',
    type: 'statutory',
    source: 'us-food-code-keeping',
    confidence: 'secondary',
    cautions: [
      'Freezing stops the days and does not give back those that are used. Packing without air in a restaurant asks for the code’s own plan or a variance.',
      authority,
    ],
    days: 7,
    overC: null,
    upToC: 5,
    packed: null,
    lifted: false,
    scheme: null,
    insteadOf: [],
  },
  {
    id: 'us-sealed-30-days',
    title: 'Thirty days at 34 °F (1 °C), reached within 48 hours of 41 °F',
    place: 'United States, retail and restaurants (model code, as adopted by the state)',
    places: ['US'],
    appliesTo:
      'food sealed without air before cooking or while at 135 °F or more, cooled by the code, its cold watched by a recorder',
    type: 'statutory',
    source: 'us-food-code-keeping',
    confidence: 'secondary',
    cautions: [
      'Asks for a written plan, a recorder that is looked at twice a day, and records kept for six months.',
      authority,
    ],
    days: 30,
    overC: null,
    upToC: 1,
    packed: 'without air',
    lifted: false,
    scheme: 'sealed at once and kept at 1 °C',
    insteadOf: ['us-7-days'],
  },
];

/** What, throughout the food, keeps non-proteolytic Clostridium botulinum from growing. Any one of them is enough. */
export const controllingFactors = {
  pH: 5.0,
  waterPhaseSalt: 0.035,
  waterActivity: 0.97,
  source: 'fsa-vacuum-packing-2020',
} as const;

/** Where the European criteria take Listeria monocytogenes not to grow; from memory of the regulation. */
export const noListeria = {
  pH: 4.4,
  waterActivity: 0.92,
  both: { pH: 5.0, waterActivity: 0.94 },
  source: 'eu-2073-2005',
} as const;

/** Food kept at or below this is frozen, and nothing grows in it [°C]. */
export const frozenAt = -18;
