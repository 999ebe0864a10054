/**
 * How long a food may be kept: the earliest of every rule that applies and of what a model lets grow, with the one that
 * decides named. What is not known about the food counts as the worst it could be.
 */
import { OutOfRange } from '../errors.ts';
import { growthAlong } from '../microbes/growth.ts';
import { growthRateAt, setFactor } from '../microbes/growth-rate.ts';
import type { Log } from '../microbes/log.ts';
import { integralFor } from '../microbes/shelf-life.ts';
import type { GrowthSet } from '../properties/organisms-growth.ts';
import type { RuleConfidence, RulePlace, RuleType } from '../properties/rule.ts';
import {
  controllingFactors,
  frozenAt,
  type LifeRule,
  lifeRules,
  noListeria,
  type Scheme,
} from '../properties/rules-life.ts';
import { saltWaterActivity } from '../salt/water-activity.ts';

export interface Keeping {
  readonly place: RulePlace;
  /** Cooked, or ready to eat; raw food is not answered by the Listeria model. */
  readonly ready: boolean;
  readonly packed: 'air' | 'without air' | null;
  /** Never kept warmer than this [°C]. */
  readonly keptC: number;
  readonly pH: number | null;
  readonly waterActivity: number | null;
  /** Salt in the water phase, mass fraction. */
  readonly waterPhaseSalt: number | null;
  /** 90 °C for 10 min or its equal was shown in the pack, in every part. */
  readonly heat90: boolean;
  readonly scheme: Scheme | null;
  readonly listeria: {
    readonly set: GrowthSet;
    readonly startLog10: number;
    readonly limitLog10: number;
    readonly h0: number;
  };
  /** Temperatures since it was made, where they were logged; after its end it is kept at `keptC`. */
  readonly before?: Log;
}

/** One thing that limits the life, or does not. */
export interface LifeLimit {
  readonly id: string;
  readonly title: string;
  readonly place: string;
  readonly type: RuleType;
  /** Days of 24 hours from making; null: it does not limit this food. */
  readonly days: number | null;
  readonly why: string;
  readonly source: string;
  readonly confidence: RuleConfidence;
  readonly cautions: readonly string[];
}

export interface Life {
  /** Whole days, that of making being the first; null: not known, or not limited (see `word`). */
  readonly days: number | null;
  readonly word: 'days' | 'not limited by these rules' | 'not known';
  readonly deciding: LifeLimit | null;
  /** Every limit looked at, the earliest first. */
  readonly limits: readonly LifeLimit[];
  /** Why no life is given, where none is. */
  readonly why: string;
  /** What was not known and counted as the worst. */
  readonly assumed: readonly string[];
}

const day = 86_400;
/** No rule of keeping cold speaks of food kept warmer than this [°C]; in the American code no warmer than 5. */
const warmest: Readonly<Record<RulePlace, number>> = {
  'GB-ENG': 8,
  'GB-SCT': 8,
  'GB-WLS': 8,
  'GB-NIR': 8,
  EU: 8,
  US: 5,
};

/** The food as Listeria finds it; the best for it where nothing is known. Salt alone lowers the water activity by no less than this. */
function foodOf({ pH, waterActivity, waterPhaseSalt, listeria }: Keeping): {
  pH: number;
  waterActivity: number;
} {
  const effect = listeria.set.effect;
  return {
    pH: pH ?? effect?.pH?.opt ?? 7,
    waterActivity:
      waterActivity ??
      (waterPhaseSalt === null ? (effect?.waterActivity.opt ?? 1) : saltWaterActivity(waterPhaseSalt)),
  };
}

/** The controlling factors that are shown [-], in words. */
function shown({ heat90, pH, waterActivity, waterPhaseSalt }: Keeping): string[] {
  const factors: string[] = [];
  if (heat90) factors.push('90 °C for 10 min in the pack');
  if (pH !== null && pH <= controllingFactors.pH) factors.push(`pH ${pH}`);
  if (waterPhaseSalt !== null && waterPhaseSalt >= controllingFactors.waterPhaseSalt)
    factors.push(`${(100 * waterPhaseSalt).toFixed(1)} % salt in its water`);
  if (waterActivity !== null && waterActivity <= controllingFactors.waterActivity)
    factors.push(`water activity ${waterActivity}`);
  return factors;
}

function byRule(rule: LifeRule, keeping: Keeping): LifeLimit | null {
  const { place, ready, packed, keptC, scheme } = keeping;
  const { id, title, type, source, confidence, cautions } = rule;
  const said = (days: number | null, why: string): LifeLimit => ({
    id,
    title,
    place: rule.place,
    type,
    source,
    confidence,
    cautions,
    days,
    why,
  });
  if (!rule.places.includes(place)) return null;
  if (rule.scheme !== null && rule.scheme !== scheme) return null;
  if (id === 'us-7-days' && !ready) return said(null, 'For ready-to-eat food; this is raw.');
  if (rule.packed !== null && packed === 'air') return said(null, 'It is kept in air.');
  if (rule.scheme !== null && keptC > rule.upToC)
    return said(null, `The scheme asks for ${rule.upToC} °C or below; this is kept at up to ${keptC} °C.`);
  const replaced = lifeRules.find(
    (r) =>
      r.scheme !== null &&
      r.scheme === scheme &&
      r.insteadOf.includes(id) &&
      keptC <= r.upToC &&
      (r.packed === null || packed === 'without air'),
  );
  if (replaced !== undefined) return said(null, `“${replaced.title}” takes its place.`);
  if (rule.overC !== null && keptC <= rule.overC)
    return said(null, `At ${rule.overC} °C or below it does not grow.`);
  const factors = rule.lifted ? shown(keeping) : [];
  if (factors.length > 0) return said(null, `Lifted by ${factors.join(' and ')}, throughout.`);
  const open =
    packed === null && rule.packed !== null ? ' Whether it is packed without air is not known.' : '';
  const none = rule.lifted ? ' No controlling factor is shown.' : '';
  return said(rule.days, `${rule.days} days, kept at ${rule.upToC} °C or below.${none}${open}`);
}

/** Days until Listeria monocytogenes has grown from the start to the limit; null where it does not grow. */
function listeriaDays(keeping: Keeping): number | null {
  const { listeria, keptC, before } = keeping;
  const { set, startLog10, limitLog10, h0 } = listeria;
  if (startLog10 >= limitLog10) return 0;
  const food = foodOf(keeping);
  const wanted = integralFor(limitLog10 - startLog10, h0);
  let spent = 0;
  let gone = 0;
  if (before !== undefined && before.length > 1) {
    const course = growthAlong(before, set, { ...food, startLog10, h0 });
    spent = before.at(-1)!.s - before[0]!.s;
    gone = course.integral;
    if (gone >= wanted) {
      // The last point of the course at which it was still under the limit.
      const under = course.log10.findLastIndex((x) => x < limitLog10 - 1e-6);
      return Math.max(0, (course.s[Math.max(0, under)]! - before[0]!.s) / day);
    }
  }
  const rate = setFactor(set, food.pH, food.waterActivity) * growthRateAt(set.temperature, keptC);
  return rate > 0 ? (spent + (wanted - gone) / rate) / day : null;
}

const listeriaId = 'listeria-limit';
/** The longest life that is given where nothing but the model of Listeria limits it [days]. */
const mostByModel = 10;
const byModelAlone: LifeLimit = {
  id: 'by-a-model-alone',
  title: `No more than ${mostByModel} days on a model alone`,
  place: 'this program’s own limit',
  type: 'model',
  days: mostByModel,
  why: 'No rule known here limits it sooner, and the model of one organism is no ground for more: a longer life has to be shown by tests of the food.',
  source: 'own-assumption',
  confidence: 'assumption',
  cautions: [],
};

function byListeria(keeping: Keeping): LifeLimit {
  const { listeria, place, ready, keptC } = keeping;
  const { startLog10, limitLog10 } = listeria;
  const number = (log10: number) => String(Number((10 ** log10).toPrecision(2)));
  const limit = (days: number | null, why: string): LifeLimit => ({
    id: listeriaId,
    title: `Listeria monocytogenes from ${number(startLog10)} to ${number(limitLog10)} cfu/g`,
    place:
      place === 'US'
        ? 'a model; no American rule'
        : 'a model, against the criterion of the European Union, retained in Great Britain',
    type: 'model',
    source: 'fda-fsis-listeria-2003',
    confidence: 'memory',
    days,
    why,
    cautions: [
      `${number(startLog10)} cfu/g at the start is assumed, not measured. Growth is a mean of many products: single ones grew several times faster.`,
      ...(place === 'EU' || place === 'GB-NIR'
        ? [
            'From 1 July 2026 “not detected in 25 g” holds throughout the life unless 100 cfu/g is shown to be kept (from copies of the regulation).',
          ]
        : []),
    ],
  });
  if (!ready) return limit(null, 'For cooked and ready-to-eat food; this is raw.');
  const { pH, waterActivity } = foodOf(keeping);
  const { both } = noListeria;
  if (
    pH <= noListeria.pH ||
    waterActivity <= noListeria.waterActivity ||
    (pH <= both.pH && waterActivity <= both.waterActivity)
  )
    return limit(null, 'So sour or so dry that it is taken not to grow.');
  const days = listeriaDays(keeping);
  if (days === null) return limit(null, `It does not grow at ${keptC} °C by the published rate.`);
  return limit(
    days,
    `${(Math.floor(days * 10) / 10).toFixed(1)} days at up to ${keptC} °C, pH ${pH}, water activity ${waterActivity.toFixed(3)}, without ${listeria.h0 === 0 ? 'lag' : 'more lag than stated'}.`,
  );
}

function check(keeping: Keeping): void {
  const { keptC, pH, waterActivity, waterPhaseSalt, listeria } = keeping;
  const within = (path: string, value: number | null, low: number, high: number) => {
    if (value !== null && !(value >= low && value <= high))
      throw new OutOfRange(path, `${value}`, `${low} to ${high}`);
  };
  within('keptC', keptC, -60, 60);
  within('pH', pH, 0, 14);
  within('waterActivity', waterActivity, 0, 1);
  within('waterPhaseSalt', waterPhaseSalt, 0, 0.26);
  within('listeria.startLog10', listeria.startLog10, -6, 12);
  within('listeria.limitLog10', listeria.limitLog10, -6, 12);
}

/**
 * How long a food may be kept [days of 24 hours, the day of making being the first].
 *
 *     life = ⌊min over every rule that applies and the model⌋;  t_Listeria = ln(1 + e^h0 (10^Δ − 1))/(γ µ(T)) after what was logged
 *
 * @param keeping place, packing, warmest temperature [°C], pH, water activity, salt in the water (null: not known), what was shown
 * Assumes that it is never warmer than `keptC`, that the factors hold in every part, and one organism at a time. Not known counts
 * as the worst: pH and water activity as the best for growth, packing as without air, a factor as not there. Where only the model
 * limits, no more than ten days are given.
 * Checked: every rule at its edges; the published 7.09 and 3.21 days of Listeria at 5 and 8 °C; no life ever grows when a
 * temperature rises or something becomes unknown.
 * Source: fsa-vacuum-packing-2020
 * Source: us-food-code-keeping
 * Source: fda-fsis-listeria-2003
 */
export function lifeOf(keeping: Keeping): Life {
  check(keeping);
  const assumed = [
    ...(keeping.pH === null ? ['pH not known: counted as the best for growth'] : []),
    ...(keeping.waterActivity !== null
      ? []
      : keeping.waterPhaseSalt === null
        ? ['water activity and salt in the water not known: counted as the best for growth']
        : ['water activity not known: taken from the salt in the water alone']),
    ...(keeping.packed === null ? ['packing not known: counted as without air'] : []),
  ];
  const none = { days: null, deciding: null, assumed };
  if (keeping.keptC <= frozenAt)
    return {
      ...none,
      word: 'not limited by these rules',
      limits: [],
      why: `Frozen at ${frozenAt} °C or below nothing grows; how long it stays good to eat is another question. Freezing stops the days and does not give back those that are used.`,
    };
  if (keeping.keptC > warmest[keeping.place])
    return {
      ...none,
      word: 'not known',
      limits: [],
      why: `No rule gives a life to food kept warmer than ${warmest[keeping.place]} °C where you are; this may come to ${keeping.keptC} °C.`,
    };
  const far = Number.POSITIVE_INFINITY;
  const limits = [...lifeRules.map((rule) => byRule(rule, keeping)), byListeria(keeping)]
    .filter((limit): limit is LifeLimit => limit !== null)
    .sort((a, b) => (a.days ?? far) - (b.days ?? far));
  // A model alone gives no long life: what it leaves out (other organisms, spoilage) comes in by then.
  const first = limits[0]!;
  const deciding = first.id === listeriaId && (first.days ?? 0) > mostByModel ? byModelAlone : first;
  if (deciding.days === null)
    return {
      ...none,
      word: 'not known',
      limits,
      why: 'None of the rules known here limits it. That is no proof that it keeps: the life has to be shown by tests.',
    };
  return {
    days: Math.floor(deciding.days + 1e-9),
    word: 'days',
    deciding,
    limits: deciding === first ? limits : [deciding, ...limits],
    why: deciding.why,
    assumed,
  };
}

export interface Longer {
  readonly what: string;
  readonly life: Life;
}

const changes: readonly { readonly what: string; readonly to: (k: Keeping) => Partial<Keeping> | null }[] = [
  { what: 'kept at 3 °C or below', to: (k) => (k.keptC > 3 ? { keptC: 3 } : null) },
  { what: 'kept at 1 °C or below', to: (k) => (k.keptC > 1 ? { keptC: 1 } : null) },
  { what: 'kept in air', to: (k) => (k.packed === 'air' ? null : { packed: 'air' }) },
  { what: '90 °C for 10 min in the pack, shown', to: (k) => (k.heat90 ? null : { heat90: true }) },
  {
    what: 'pH 5.0 or lower throughout, measured',
    to: (k) => (k.pH !== null && k.pH <= 5 ? null : { pH: 5 }),
  },
  {
    what: '3.5 % salt in its water throughout, measured',
    to: (k) => ((k.waterPhaseSalt ?? 0) >= 0.035 ? null : { waterPhaseSalt: 0.035 }),
  },
  {
    what: 'water activity 0.97 or lower throughout, measured',
    to: (k) => ((k.waterActivity ?? 1) <= 0.97 ? null : { waterActivity: 0.97 }),
  },
];

/**
 * What, each by itself, would lengthen the life, the most first [days].
 *
 *     life of the food with one thing changed > life of the food as it is
 *
 * @param keeping as of `lifeOf`
 * Assumes that only that one thing changes. What makes the life unknown or unlimited is not called longer.
 * Checked against `lifeOf` of the changed food.
 * Source: own-computation
 */
export function longerBy(keeping: Keeping): Longer[] {
  const now = lifeOf(keeping).days;
  if (now === null) return [];
  return changes
    .flatMap(({ what, to }): Longer[] => {
      const change = to(keeping);
      if (change === null) return [];
      const life = lifeOf({ ...keeping, ...change });
      return life.days !== null && life.days > now ? [{ what, life }] : [];
    })
    .sort((a, b) => (b.life.days ?? 0) - (a.life.days ?? 0));
}
