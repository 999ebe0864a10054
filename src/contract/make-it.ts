/** *Make it…*: a mix step's lines made cheaper, leaner, less salty or better bound, within limits, as a proposal to take or leave. */
import { type PantryItem, pantryOf, reckon } from '../core/filling/flatten.ts';
import { formulate } from '../core/filling/formulate.ts';
import type { ClashMember } from '../core/filling/formulate-clash.ts';
import {
  attained,
  type Choosable,
  type Clause,
  type Goal,
  type Limit,
} from '../core/filling/formulate-model.ts';
import type { Solve } from '../core/numerics/linear-programme.ts';
import {
  about,
  bindRanges,
  type Held,
  type HeldName,
  heldAs,
  heldNames,
  type LimitCost,
  type Made,
  type MakeGoal,
  type MakeQuestion,
  usualNear,
} from './make-it-question.ts';
import { boughtPrices, itemsOf, recipeOf, type TableFood } from './pantry-reckon.ts';
import type { Method, MixLine } from './steps.ts';

const curing = /\bcur(?:e|ing)\b|nitrit|nitrat|saltpet|pökelsalz|pink salt|prague powder/i;
export const isCuringSalt = (line: MixLine): boolean =>
  curing.test(line.ingredient) || (line.of?.kind === 'table' && curing.test(line.of.id.replaceAll('-', ' ')));

/** A method whose keeping may rest on salt: any keep step that lasts. */
export const keepsOnSalt = (method: Method): boolean => method.some((s) => s.kind === 'keep' && s.days > 0);

const goalsOf = (goal: MakeGoal): Goal[] => {
  const first: Goal =
    goal === 'cheaper'
      ? { make: 'least', quantity: { of: 'cost' } }
      : goal === 'leaner'
        ? { make: 'least', quantity: { of: 'nutrient', nutrient: 'fat' } }
        : goal === 'less salty'
          ? { make: 'least', quantity: { of: 'nutrient', nutrient: 'salt' } }
          : { make: 'best bind', ranges: bindRanges };
  return [first, { make: 'least change' }];
};

/** What a kilogram of each line brings, by the pantry as it stands. */
function choosables(question: MakeQuestion, tableFood: TableFood): Choosable[] {
  const { lines, pantry } = question;
  const dish = {
    id: 'the mix',
    name: 'the mix',
    species: '',
    part: '',
    versionId: '',
    number: 0,
    signed: false,
    lines: [...lines],
    bought: [],
    yieldPct: 100,
    lossNotSaid: [],
  };
  const items = new Map<string, PantryItem>();
  for (const item of itemsOf({ ...pantry, dishes: [...pantry.dishes, dish] }, tableFood))
    items.set(item.id, item);
  const { recipe } = recipeOf(boughtPrices(pantry), dish);
  const held = pantryOf(items.values());
  const meat = lines.some((l) => l.meat === true);
  const move = question.movePct / 100;
  return lines.map((line, i): Choosable => {
    const { mass, nutrients, cost } = reckon(
      {
        kind: 'recipe',
        id: `the mix ${i}`,
        name: line.ingredient,
        lines: [{ ...recipe.lines[i]!, mass: 1 }],
      },
      held,
    );
    const now = line.g / 1000;
    const why =
      fixedWhy(line, meat) ??
      (nutrients.fat.unknown > 0 ||
      nutrients.salt.unknown > 0 ||
      nutrients.water.unknown > 0 ||
      nutrients.protein.unknown > 0
        ? 'what it is made of is not known'
        : cost.unknown > 0 && (question.goal === 'cheaper' || question.held.cost !== undefined)
          ? 'it has no price'
          : undefined);
    const unknown = (['fat', 'salt', 'water', 'protein'] as const).some((n) => nutrients[n].unknown > 0);
    const tied = isCuringSalt(line) && meat && !unknown;
    return {
      id: String(i),
      name: line.ingredient,
      per: { mass, nutrients, cost },
      low: tied ? 0 : why === undefined ? now * Math.max(0, 1 - move) : now,
      high: tied ? Infinity : why === undefined ? now * (1 + move) : now,
      now,
      hard: why,
    };
  });
}

const fixedWhy = (line: MixLine, meat: boolean): string | undefined =>
  isCuringSalt(line)
    ? meat
      ? 'tied to the weight of the meat'
      : 'curing salt stays as it is: no line is marked as the meat'
    : line.carried === true
      ? 'it comes from the steps before'
      : undefined;

/** What is held: as said, and close to what it is where nothing is said. */
function heldOf(question: MakeQuestion, ingredients: readonly Choosable[], name: HeldName): Held {
  const said = question.held[name];
  if (said !== undefined && (said.low !== null || said.high !== null)) return said;
  const near = about[question.goal].includes(name) ? undefined : usualNear[name];
  const { quantity, per } = heldAs[name];
  const span =
    near === undefined
      ? null
      : attained(
          quantity,
          ingredients,
          ingredients.map((c) => c.now),
        );
  if (near === undefined || span === null || !Number.isFinite(span.most)) return { low: null, high: null };
  return {
    low: near.less === undefined ? null : Math.max(0, span.least * per - near.less),
    high: near.more === undefined ? null : span.most * per + near.more,
  };
}

function limitsOf(question: MakeQuestion, ingredients: readonly Choosable[]): Limit[] {
  const { lines } = question;
  const weighed = ingredients.map((c) => c.now);
  const meats = lines.flatMap((l, i) => (l.meat === true && !isCuringSalt(l) ? [String(i)] : []));
  const meatNow = meats.reduce((s, id) => s + weighed[Number(id)]!, 0);
  const limits = heldNames.flatMap((name): Limit[] => {
    const { low, high } = heldOf(question, ingredients, name);
    if (low === null && high === null) return [];
    const { quantity, per } = heldAs[name];
    return [
      {
        id: name,
        name,
        quantity,
        ...(low === null ? {} : { low: low / per }),
        ...(high === null ? {} : { high: high / per }),
      },
    ];
  });
  if (meats.length > 0 && meatNow > 0) {
    const all = weighed.reduce((s, x) => s + x, 0);
    limits.push({
      id: 'meat',
      name: 'the meat’s share',
      quantity: { of: 'share', ids: meats },
      low: (question.meatPct / 100) * (meatNow / all),
    });
    lines.forEach((line, i) => {
      if (!isCuringSalt(line)) return;
      const share = weighed[i]! / meatNow;
      limits.push({
        id: `curing ${i}`,
        name: `${line.ingredient} by the meat’s weight`,
        quantity: { of: 'share', ids: [String(i)], among: meats },
        // Against the meat and not against the whole: the quotient of the two sums.
        low: share,
        high: share,
        hard: 'curing salt is fixed to the meat’s weight',
      });
    });
  }
  // Whether what is not known of a fixed line is nothing or all of it: between the two it holds as well.
  for (const ofKnown of question.saltIsKept ? ([undefined, true] as const) : []) {
    const quantity = { of: 'salt in the water', ofKnown } as const;
    const now = attained(quantity, ingredients, weighed);
    if (now !== null && now.least > 0)
      limits.push({
        id: `kept ${ofKnown}`,
        name: 'salt in the water',
        quantity,
        low: now.least * (1 - 1e-7),
        hard: 'the keeping rests on it',
      });
  }
  return limits;
}

const figure = (v: number, per = 1) => Number((v * per).toPrecision(4));

function shownOf(clause: Clause, value: number): string {
  if (clause.kind === 'limit') {
    const as = heldNames.find((n) => n === clause.limit.name);
    if (as === 'cost') return `${(value / 100).toFixed(2)} a kg`;
    if (as !== undefined) return `${figure(value, heldAs[as].per)} ${heldAs[as].unit}`;
    return `${figure(value, 100)} %`;
  }
  return `${figure(value, 1000)} g`;
}

function wordsOf(clause: Clause): string {
  if (clause.kind === 'steps') return `${clause.ingredient.name} in steps of the scale`;
  const side = clause.side === 'low' ? 'at least' : 'at most';
  if (clause.kind === 'total') return `the whole mix as heavy as it is`;
  if (clause.kind === 'bound') {
    const { ingredient } = clause;
    return ingredient.low === ingredient.high
      ? `${ingredient.name} as it is, ${shownOf(clause, ingredient.low)}${ingredient.hard === undefined ? '' : ` (${ingredient.hard})`}`
      : `${ingredient.name} ${side} ${shownOf(clause, ingredient[clause.side])}`;
  }
  return `${clause.limit.name} ${side} ${shownOf(clause, clause.limit[clause.side]!)}`;
}

const becomes = ({ clause, alone, hard }: ClashMember): string | null =>
  hard || alone === null || clause.kind === 'steps'
    ? null
    : `${clause.side === 'low' ? 'no more than' : 'no less than'} ${shownOf(clause, alone)}`;

/** What one unit is, in which each goal counts what a limit costs, for a kilogram of the mix. */
const goalPer = (goal: MakeGoal): number => (goal === 'cheaper' ? 1 : 100);

/** A proposal, or why there is none. The pantry answers what it can; the lines say the rest. */
export function makeIt(question: MakeQuestion, tableFood: TableFood, solve: Solve): Made {
  const { lines, goal } = question;
  const ingredients = choosables(question, tableFood);
  const mass = ingredients.reduce((s, c) => s + c.now * c.per.mass, 0);
  if (!(mass > 0)) return { status: 'not known', why: 'Nothing is weighed in yet.' };
  const limits = limitsOf(question, ingredients);
  const answer = formulate(
    { ingredients, limits, total: { low: mass, high: mass }, goals: goalsOf(goal) },
    solve,
    { seconds: 1 },
  );
  if (answer.status === 'stopped')
    return { status: 'not known', why: 'No answer within a second: hold fewer lines.' };
  if (answer.status === 'not known')
    return {
      status: 'not known',
      why: `What it costs cannot be promised: no price for ${answer.unpriced.map((u) => u.ingredient.name).join(', ')}.`,
    };
  if (answer.status === 'clash')
    return {
      status: 'impossible',
      clash: answer.clash.members.map((m) => ({
        words: wordsOf(m.clause),
        becomes: becomes(m),
        hard: m.hard ? (m.clause.kind === 'limit' ? m.clause.limit.hard! : 'it is not for the taking') : null,
      })),
      together: (answer.clash.together ?? []).map(
        (t) => `${wordsOf(t.clause)} would become ${shownOf(t.clause, t.becomes)}`,
      ),
    };
  const nowKg = ingredients.map((c) => c.now);
  const figures = heldNames.map((name) => {
    const { quantity, per } = heldAs[name];
    const at = (kg: readonly number[]) => {
      const span = attained(quantity, ingredients, kg);
      return span === null || span.most - span.least > 1e-3 * (1 + span.least) ? null : span.least * per;
    };
    return { name, before: at(nowKg), after: at(answer.kg) };
  });
  const costs = answer.limits.flatMap(({ limit, price }) =>
    (['low', 'high'] as const).flatMap((side): LimitCost[] => {
      const p = price[side];
      if (p === null || limit[side] === undefined) return [];
      const as = heldNames.find((n) => n === limit.name);
      const per = as === undefined ? 100 : heldAs[as].per;
      // Tighter: a low one unit up, a high one unit down.
      const each = ((side === 'low' ? p : -p) / per / answer.mass) * goalPer(goal);
      return each > 1e-6 ? [{ name: limit.name, side, each, hard: limit.hard ?? null }] : [];
    }),
  );
  return {
    status: 'made',
    goal,
    lines: lines.map((line, i) => ({
      ingredient: line.ingredient,
      nowG: line.g,
      newG: answer.kg[i]! * 1000,
      fixed: ingredients[i]!.hard ?? null,
    })),
    figures,
    held: heldNames
      .map((name) => ({ name, ...heldOf(question, ingredients, name) }))
      .filter((h) => h.low !== null || h.high !== null),
    costs: costs
      .sort((a, b) => b.each - a.each)
      .filter((c, i, all) => all.findIndex((o) => o.name === c.name && o.side === c.side) === i),
    notes: answer.notKnown.map(
      (n) => `${n.ingredient.name}: not all of it is known; it was counted the worst way.`,
    ),
    proven: answer.proven,
  };
}

/** The lines with the proposal's weights, to a tenth of a gram. What was meant as a share of the meat or by the piece is then by weight. */
export const taken = (lines: readonly MixLine[], made: Extract<Made, { status: 'made' }>): MixLine[] =>
  lines.map((line, i) => {
    const g =
      Math.round(made.lines[i]!.newG * (isCuringSalt(line) ? 100 : 10)) / (isCuringSalt(line) ? 100 : 10);
    if (Math.abs(g - line.g) < 0.05) return line;
    const { amount: _, ...rest } = line;
    return { ...rest, g };
  });
