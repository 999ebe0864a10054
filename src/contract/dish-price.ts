/** What a batch of a dish costs as its method is written: parts, ingredients, hands, energy, packaging, overheads, each with why. */
import {
  breakEven,
  type CostLine,
  costPerPortion,
  dearerBy,
  marginAt,
  netOf,
  type PriceRules,
  priceFor,
  restMustEarn,
} from '../core/filling/price.ts';
import { energyPaid, latentHeatOf, sensibleHeat } from '../core/method/energy.ts';
import { exactly, type Spread } from '../core/method/weights.ts';
import type { Composition } from '../core/properties/food-components.ts';
import type { StageInput } from './body.ts';
import type { DishWeights } from './method-weights.ts';
import type { EnergyUse, KitchenRates } from './rates.ts';
import type { Method, MixLine, StepOf } from './steps.ts';

/** A line of cost, of which step, and on what it rests. */
export interface DishCostLine extends CostLine {
  readonly stepId: string;
  readonly why: string;
}

/** Hands and energy are not known to the penny: by how much they are taken to vary. Assumed, no source. */
export const costSpreads = { hands: [0.85, 1.25], energy: [0.7, 1.6] } as const;

const spread = (usual: number, [low, high]: readonly [number, number]): Spread => ({
  low: usual * low,
  usual,
  high: usual * high,
});

/** What heats or cools at a stage: read from its medium and its name. */
export function energyUseOf(stage: StageInput, cooling: boolean): EnergyUse {
  const text = `${stage.medium ?? ''} ${stage.name}`.toLowerCase();
  if (cooling || /ice|chill|fridge|blast|cold/.test(text)) return 'chiller';
  if (/freez/.test(text)) return 'freezer';
  if (/steam/.test(text)) return 'steamer';
  if (/oven|roast|dry air|grill|radiant/.test(text)) return 'oven';
  if (/fry|deep/.test(text)) return 'fryer';
  if (/water bath|circulator/.test(text)) return 'water bath';
  return 'hob';
}

/** Of a forcemeat or meat about which nothing is known; enough for pennies of energy. Assumed. */
const meat: Composition = {
  water: 0.7,
  protein: 0.17,
  fat: 0.12,
  carbohydrate: 0,
  fibre: 0,
  ash: 0.01,
};

const hottest = (stage: StageInput): number =>
  stage.mediumC ?? Math.max(...(stage.mediumLog ?? []).map((p) => p.C), 0);

/** Temperatures that water boils out of food at, and where food stops being warmed by more. */
const boiling = 100;

/** As food comes out of the heat, where a step does not say [°C]. Assumed. */
const cookedC = 70;

function energyLine(
  step: StepOf<'cook'> | StepOf<'chill'> | StepOf<'finish'>,
  weights: DishWeights,
  rates: KitchenRates,
): DishCostLine | null {
  const own = weights.losses.find((l) => l.stepId === step.id);
  if (own === undefined) return null;
  const stages: readonly StageInput[] =
    step.kind === 'finish' && (step.stages === undefined || step.stages.length === 0)
      ? [{ name: step.by, mediumC: step.mediumC, until: { min: step.min } }]
      : (step.stages ?? []);
  if (stages.length === 0) return null;
  const cooling = step.kind === 'chill';
  const startC = step.kind === 'cook' ? step.startC : step.kind === 'finish' ? (step.startC ?? 5) : undefined;
  // Of a chill the programme before it says how warm it begins; here it is taken to be cooked food: assumed, for pennies.
  let from = Math.max(0, startC ?? cookedC);
  let minor = 0;
  let kwh = 0;
  const unknown: string[] = [];
  const pay = (use: EnergyUse, heat: number) => {
    const machine = rates.machines.find((m) => m.use === use);
    const tariff = machine?.fuel === 'gas' ? rates.gasPerKwh : rates.electricityPerKwh;
    if (machine === undefined || tariff === null) {
      unknown.push(use);
      return;
    }
    const paid = energyPaid(heat, machine.efficiencyPct / 100);
    kwh += paid;
    minor += paid * tariff;
  };
  for (const stage of stages) {
    if (hottest(stage) < 0) {
      unknown.push('freezing, which is not reckoned');
      continue;
    }
    const to = Math.min(boiling, hottest(stage));
    pay(energyUseOf(stage, cooling), sensibleHeat(own.into.usual, meat, from, to));
    from = to;
  }
  const lost = own.loss === null ? 0 : Math.max(0, own.into.usual * own.loss.usual);
  const last = stages.findLast((s) => ['oven', 'fryer'].includes(energyUseOf(s, cooling)));
  if (last !== undefined && lost > 0) pay(energyUseOf(last, cooling), latentHeatOf(lost, boiling));
  const name = `${step.name}: energy`;
  if (unknown.length > 0)
    return {
      stepId: step.id,
      name,
      kind: 'energy',
      cost: null,
      why: `no efficiency or tariff for the ${[...new Set(unknown)].join(', ')}`,
    };
  return {
    stepId: step.id,
    name,
    kind: 'energy',
    cost: spread(minor, costSpreads.energy),
    why: `${kwh.toFixed(2)} kWh at the most: all of the food to the medium’s temperature${last !== undefined && lost > 0 ? ', and what it loses driven off as vapour' : ''}, by the machine’s efficiency`,
  };
}

export interface PricedBy {
  /** A kilogram of a line as weighed in [minor units]; null where nobody has said. */
  readonly lineCostPerKg: (line: MixLine) => number | null;
  /** A kilogram of what a trim step takes, as it is bought. */
  readonly trimCostPerKg: (step: StepOf<'trim'>) => number | null;
}

/** Lines of cost of the batch as written. Salt of cures, water and what is carried from earlier steps are not counted again. */
export function dishCosts(
  method: Method,
  weights: DishWeights,
  rates: KitchenRates | null,
  priced: PricedBy,
): DishCostLine[] {
  const lines: DishCostLine[] = [];
  const cost = (perKg: number | null, g: number) => (perKg === null ? null : exactly((perKg * g) / 1000));
  for (const step of method) {
    if (step.kind === 'trim' && step.weightG > 0) {
      const perKg = priced.trimCostPerKg(step);
      lines.push({
        stepId: step.id,
        name: step.part,
        kind: 'part',
        cost: cost(perKg, step.weightG),
        why: perKg === null ? 'nobody has said what it costs' : `${Math.round(step.weightG)} g as bought`,
      });
    }
    if (step.kind === 'mix')
      for (const line of step.lines) {
        if (line.carried === true || line.g === 0) continue;
        const perKg = priced.lineCostPerKg(line);
        lines.push({
          stepId: step.id,
          name: line.ingredient,
          kind: line.of?.kind === 'part' ? 'part' : 'ingredient',
          cost: cost(perKg, line.g),
          why: perKg === null ? 'nobody has said what it costs' : `${Math.round(line.g * 10) / 10} g`,
        });
      }
    if (step.handsMin > 0) {
      const grade =
        step.grade === undefined ? rates?.labour[0] : rates?.labour.find((l) => l.grade === step.grade);
      lines.push({
        stepId: step.id,
        name: `${step.name}: hands`,
        kind: 'hands',
        cost: grade === undefined ? null : spread((grade.perHour * step.handsMin) / 60, costSpreads.hands),
        why:
          grade === undefined
            ? `${step.handsMin} min, and no pay ${step.grade === undefined ? 'is entered' : `for ${step.grade}`}`
            : `${step.handsMin} min of a ${grade.grade}`,
      });
    }
    if (rates !== null && (step.kind === 'cook' || step.kind === 'chill' || step.kind === 'finish')) {
      const line = energyLine(step, weights, rates);
      if (line !== null) lines.push(line);
    }
  }
  const plate = method.findLast((s) => s.kind === 'plate');
  if (
    rates !== null &&
    rates.packagingPerPortion !== null &&
    weights.portions !== null &&
    plate !== undefined
  )
    lines.push({
      stepId: plate.id,
      name: 'Packaging',
      kind: 'packaging',
      cost: {
        low: rates.packagingPerPortion * weights.portions.low,
        usual: rates.packagingPerPortion * weights.portions.usual,
        high: rates.packagingPerPortion * weights.portions.high,
      },
      why: 'for each portion',
    });
  if (rates !== null && rates.overheadPct !== null && rates.overheadPct > 0 && plate !== undefined) {
    const base = lines.reduce((sum, l) => sum + (l.cost?.usual ?? 0), 0);
    lines.push({
      stepId: plate.id,
      name: 'Overheads',
      kind: 'overhead',
      cost: exactly((base * rates.overheadPct) / 100),
      why: `${rates.overheadPct} % on what is known of the rest`,
    });
  }
  return lines;
}

export interface DishPrice {
  readonly total: Spread;
  readonly perPortion: Spread;
  readonly byKind: ReturnType<typeof costPerPortion>['byKind'];
  readonly missing: readonly string[];
  /** What the wanted margin is taken of: food alone, or all but overheads [minor units a portion]. */
  readonly counted: number;
  /** Menu price for the wanted margin; null where no margin or tax is entered, or a cost is missing. */
  readonly wanted: { readonly price: number; readonly net: number; readonly margin: number } | null;
  /** The same for a price that the chef names. */
  readonly at: (price: number) => {
    readonly net: number;
    readonly margin: number;
    readonly breakEven: number | null;
  } | null;
  /** The dearest things: what a tenth more on each does to a portion [minor units]. */
  readonly sensitive: readonly {
    readonly name: string;
    readonly shareOfCost: number;
    readonly tenthMore: number;
  }[];
  /** What the rest of an animal must bring in, of which this dish sells so much [minor units without tax]. */
  readonly rest: (paid: number, broughtIn: number) => number | null;
}

/** From the lines of cost to prices; null where there are no portions to spread them over. */
export function dishPrice(
  lines: readonly DishCostLine[],
  portions: Spread | null,
  rates: KitchenRates | null,
): DishPrice | null {
  if (portions === null || !(portions.low > 0)) return null;
  const sum = costPerPortion(lines, portions);
  const { byKind } = sum;
  const food = byKind.part + byKind.ingredient;
  const all = food + byKind.hands + byKind.energy + byKind.packaging + byKind.overhead;
  const counted = rates?.marginAfter === 'food' ? food : all;
  const rules: PriceRules | null =
    rates === null || rates.vatPct === null
      ? null
      : {
          margin: (rates.marginPct ?? 0) / 100,
          vat: rates.vatPct / 100,
          includesVat: rates.pricesIncludeVat,
          step: rates.priceStep,
        };
  const at = (price: number) => {
    if (rules === null || !(price > 0)) return null;
    const net = netOf(price, rules);
    return {
      net,
      margin: marginAt(price, counted, rules),
      breakEven:
        rates === null || rates.fixedPerService === null ? null : breakEven(rates.fixedPerService, net, all),
    };
  };
  const missesFood = lines.some((l) => l.cost === null && (l.kind === 'part' || l.kind === 'ingredient'));
  const misses = rates?.marginAfter === 'food' ? missesFood : sum.missing.length > 0;
  const price = rules === null || rates?.marginPct === null || misses ? null : priceFor(counted, rules);
  const wanted = price === null || price === 0 ? null : { price, ...at(price)! };
  return {
    total: sum.total,
    perPortion: sum.perPortion,
    byKind,
    missing: sum.missing,
    counted,
    wanted: wanted === null ? null : { price: wanted.price, net: wanted.net, margin: wanted.margin },
    at,
    sensitive: lines
      .flatMap((l) =>
        l.cost === null || l.cost.usual === 0
          ? []
          : [
              {
                name: l.name,
                shareOfCost: l.cost.usual / sum.total.usual,
                tenthMore: dearerBy(l.cost.usual, 0.1, portions.usual),
              },
            ],
      )
      .sort((a, b) => b.tenthMore - a.tenthMore),
    rest: (paid, broughtIn) =>
      rules === null || rates?.marginPct === null ? null : restMustEarn(paid, rules.margin, broughtIn),
  };
}
