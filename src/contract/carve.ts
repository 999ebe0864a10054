/** `carve`: a breakdown of weighed animals, from JSON to JSON (kg, major units of money). */

import {
  type CostedNode,
  type CostRule,
  jointCost,
  type PieceMoney,
  usableCost,
} from '../core/carcass/joint-cost.ts';
import type { BalancedNode } from '../core/carcass/mass-balance.ts';
import { Contradiction } from '../core/errors.ts';
import type { CarveAnswer } from './carve-answer.ts';
import { basisOf, carveCautions } from './carve-cautions.ts';
import { type AnimalInput, CarveInput } from './carve-input.ts';
import { balanced, idOf, kilograms, lotOf, piecesOf } from './carve-tree.ts';
import { priorsOf, yieldsOf } from './carve-yields.ts';
import { accept, InputProblems, type Problem } from './problem.ts';

/** One weighing on scales that show whole grams. */
const usualAccuracyG = 0.5;

const animalName = (animal: AnimalInput, index: number) => animal.name ?? `animal ${index + 1}`;

/** Money to whole hundredths, and prices per kg in hundredths. */
const hundredths = (money: number) => Math.round(money * 100);

function costed(
  lot: BalancedNode,
  total: number,
  rule: CostRule,
  input: CarveInput,
  path: string,
): CostedNode {
  const money: Record<string, PieceMoney> = {};
  const values = new Map(Object.entries(input.values ?? {}));
  for (const { id, name, becomes, children } of piecesOf(lot)) {
    if (children.length > 0) continue;
    const value = values.get(name);
    const credited = input.credited?.includes(name) === true;
    // By value a part without a price is worth nothing; that is said in the cautions.
    if (value !== undefined || (rule.by === 'value' && becomes === 'part'))
      money[id] = { pricePerKg: (value ?? 0) * 100, credited };
  }
  try {
    return jointCost(lot, total, rule, money);
  } catch (error) {
    if (error instanceof Contradiction)
      throw new InputProblems([
        {
          path,
          found: `no part that carries cost by ${rule.by}, and a cost of ${total / 100}`,
          allowed: `at least one part that weighs something${rule.by === 'weight' ? ' and is neither wasted nor credited' : rule.by === 'value' ? ' and is worth more than 0' : ' and has a share above 0'}`,
        },
      ]);
    throw error;
  }
}

const ruled = (node: CostedNode | null) =>
  node === null
    ? null
    : {
        perKg: Object.fromEntries(
          piecesOf(node).map((c) => [c.name, c.perKg === null ? null : c.perKg / 100] as const),
        ),
        whole: Object.fromEntries(
          piecesOf(node)
            .filter((c) => c.children.length === 0)
            .map((c) => [c.name, c.cost] as const),
        ),
      };

/** What went into each further cut and what came out, over all animals. */
function cutsOf(lot: BalancedNode): CarveAnswer['cuts'] {
  return piecesOf(lot).flatMap(({ name, mg, children }) => {
    if (children.length === 0 || mg === null) return [];
    const out = children.reduce((sum, c) => sum + (c.mg ?? 0), 0);
    return [
      {
        part: name,
        inKg: kilograms(mg),
        outKg: kilograms(out),
        unaccountedKg: kilograms(mg - out),
        unaccountedPct: mg === 0 ? 0 : (100 * (mg - out)) / mg,
      },
    ];
  });
}

type Ruled = ReturnType<typeof ruled>;

function usableParts(
  { finish = {}, labourPerHour = 0 }: CarveInput,
  lot: BalancedNode,
  rules: readonly [Ruled, Ruled, Ruled],
): CarveAnswer['usable'] {
  return piecesOf(lot).flatMap(({ name, mg }) => {
    if (!Object.hasOwn(finish, name) || mg === null || mg === 0) return [];
    const { trimPct = 0, cookingLossPct = 0, labourMinPerKg = 0 } = finish[name]!;
    const kg = kilograms(mg);
    const by = (rule: Ruled) => {
      const perKg = rule?.perKg[name];
      if (perKg === undefined || perKg === null) return null;
      return usableCost({
        cost: perKg * kg,
        kg,
        trimLoss: trimPct / 100,
        cookingLoss: cookingLossPct / 100,
        labourMin: labourMinPerKg * kg,
        labourPerHour,
      });
    };
    const [weight, value, shares] = rules.map(by);
    if (weight === null || weight === undefined) return [];
    return [
      {
        part: name,
        kgTotal: weight.kg,
        costPerKg: { weight: weight.perKg, value: value?.perKg ?? null, shares: shares?.perKg ?? null },
        labourPerKg: weight.labourPerKg,
      },
    ];
  });
}

/** Runs `carve` from JSON to JSON. Throws `InputProblems` for anything wrong with the input. */
export function runCarve(json: unknown): CarveAnswer {
  const input = accept(CarveInput, json);
  const accuracy = input.scaleAccuracyG ?? usualAccuracyG;
  const balances: BalancedNode[] = [];
  const problems: Problem[] = [];
  input.animals.forEach((animal, i) => {
    const found = balanced(animal, i, animalName(animal, i), accuracy);
    if (Array.isArray(found)) problems.push(...found);
    else balances.push(found);
  });
  if (problems.length > 0) throw new InputProblems(problems);
  const priors = priorsOf(input);
  const yields = yieldsOf(input, priors, accuracy, animalName);
  const lot = lotOf(input.species, input.animals, input.wasted ?? []);
  const total = hundredths(input.animals.reduce((sum, { costTotal }) => sum + costTotal, 0));
  const weight = ruled(costed(lot, total, { by: 'weight' }, input, 'animals'))!;
  const value = ruled(
    input.values === undefined ? null : costed(lot, total, { by: 'value' }, input, 'values'),
  );
  const shares = ruled(
    input.shares === undefined
      ? null
      : costed(
          lot,
          total,
          {
            by: 'shares',
            shares: Object.fromEntries(Object.entries(input.shares).map(([part, x]) => [idOf(part), x])),
          },
          input,
          'shares',
        ),
  );
  const unaccounted = balances.map((b) => b.balance?.unaccounted ?? 0);
  const dressed = balances.reduce((sum, b) => sum + (b.mg ?? 0), 0);
  const live = input.animals.filter((a) => a.liveKg !== undefined);
  const answer = {
    species: input.species,
    animals: input.animals.reduce((sum, { count = 1 }) => sum + count, 0),
    dressedKg: kilograms(dressed),
    dressingPct:
      live.length === 0
        ? null
        : (100 * live.reduce((sum, a) => sum + a.dressedKg, 0)) /
          live.reduce((sum, a) => sum + (a.liveKg ?? 0), 0),
    ...yields,
    unaccountedPct: (100 * unaccounted.reduce((a, b) => a + b, 0)) / dressed,
    unaccounted: balances.map((b, i) => ({
      animal: b.name,
      kg: kilograms(unaccounted[i]!),
      pct: (100 * unaccounted[i]!) / b.mg!,
    })),
    cuts: cutsOf(lot),
    costTotal: total / 100,
    costPerKg: { weight: weight.perKg, value: value?.perKg ?? null, shares: shares?.perKg ?? null },
    costHundredths: {
      total,
      weight: weight.whole,
      value: value?.whole ?? null,
      shares: shares?.whole ?? null,
    },
    usable: usableParts(input, lot, [weight, value, shares]),
  };
  return { ...answer, basis: basisOf(input, priors), cautions: carveCautions(input, answer, accuracy) };
}
