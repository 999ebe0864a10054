/**
 * The list of ingredients of what a kitchen makes, by the rules of its place: order, compound ingredients, meat, quantities,
 * allergens. What a computer cannot know is handed back as a decision that the kitchen takes, with the rule it takes it by.
 */
import {
  type AllergensFound,
  allergensOf,
  type DeclaredRisk,
  routeWords,
  usAllergensOf,
} from './allergens.ts';
import { type Pantry, type PantryRecipe, type RecipeLine, reckon } from './flatten.ts';
import type { AllergenMark, UsAllergen } from './food.ts';
import {
  type LabelFacts,
  type LabelPlace,
  type LabelRuleName,
  type MeatGroup,
  meatLimits,
} from './label-facts.ts';
import { type DeclaredQuantity, declaredQuantity } from './label-quantity.ts';
import { emphasised, joined, type Run } from './label-words.ts';
import { meatContent } from './meat-content.ts';

export interface Listed {
  readonly name: string;
  /** By which it is ordered [kg]. */
  readonly mass: number;
  /** Share of the finished food, or of the compound ingredient that it stands in, 0–1. */
  readonly share: number;
  readonly marks: readonly AllergenMark[];
  readonly quantity: DeclaredQuantity | null;
  /** Its own list, where it is a compound ingredient. */
  readonly inside: readonly Listed[];
  /** A list as the label of what was bought has it. */
  readonly madeOf: string | null;
}

export interface Decision {
  readonly rule: LabelRuleName;
  readonly what: string;
}

export interface Label {
  readonly name: string;
  readonly ingredients: readonly Listed[];
  /** The list as it is printed, after the word *Ingredients*. */
  readonly runs: readonly Run[];
  /** The statement of the nine; empty elsewhere than in the US. */
  readonly contains: readonly UsAllergen[];
  readonly allergens: AllergensFound;
  /** Weight of the finished food [kg]. */
  readonly finished: number;
  /** What the kitchen decides before it is printed. */
  readonly decisions: readonly Decision[];
  /** Nobody has said what these hold, or the pantry does not have them: the list may not be printed as it is. */
  readonly complete: boolean;
}

export interface LabelQuestion {
  readonly recipe: PantryRecipe;
  readonly pantry: Pantry;
  readonly place: LabelPlace;
  /** Weight of the finished food [kg], where it was weighed; absent: as it is reckoned. */
  readonly finished?: number | undefined;
  readonly risks?: readonly DeclaredRisk[] | undefined;
  /** Leave out the brackets that may be left out. */
  readonly short?: boolean | undefined;
}

interface Entry {
  name: string;
  mass: number;
  marks: AllergenMark[];
  declared: boolean;
  facts: LabelFacts;
  /** [kg], of meat; null where a part of it is not known. */
  fat: number | null;
  inside: Listed[];
}

class Level {
  readonly entries = new Map<string, Entry>();
  constructor(
    private readonly question: LabelQuestion,
    private readonly decide: (rule: LabelRuleName, what: string) => void,
  ) {}

  private put(key: string, entry: Entry): void {
    const before = this.entries.get(key);
    if (before === undefined) {
      this.entries.set(key, entry);
      return;
    }
    before.mass += entry.mass;
    before.fat = before.fat === null || entry.fat === null ? null : before.fat + entry.fat;
    before.declared ||= entry.declared;
    before.marks = union(before.marks, entry.marks);
  }

  /** All lines of a recipe, so many times. */
  add(recipe: PantryRecipe, times: number, declared: boolean): void {
    for (const line of recipe.lines) if (line.mass > 0) this.addLine(line, times, declared);
  }

  private addLine(line: RecipeLine, times: number, above: boolean): void {
    const { pantry, place } = this.question;
    const item = pantry.items.get(line.of);
    const facts = item?.label ?? {};
    if (facts.notEaten === true) return;
    const declared = above || line.declared === true;
    const name = facts.name ?? item?.name ?? line.name ?? line.of;
    const added = line.stated?.allergens ?? [];
    if (item?.kind === 'recipe') {
      const outcome = reckon(item, pantry);
      const mass = line.mass * times;
      const inner = outcome.mass > 0 ? mass / outcome.mass : 0;
      if (facts.spreadOut === true) {
        this.add(item, inner, declared);
        for (const mark of added)
          this.decide('allergens', `${mark.allergen} was added to ${name}, which is spread out.`);
        return;
      }
      const below = new Level(this.question, this.decide);
      below.add(item, inner, false);
      this.put(`recipe ${item.id}`, {
        name,
        mass,
        marks: union([...added], [...(item.outcome?.stated?.allergens ?? [])]),
        declared,
        facts,
        fat: null,
        inside: below.listed(mass, false),
      });
      return;
    }
    const left = facts.counts === undefined ? 1 : (line.reduced?.to ?? 1);
    const marks = union([...(item?.allergens ?? [])], [...added]);
    const fatShare = (line.stated?.nutrients ?? item?.nutrients)?.fat ?? null;
    const mass = line.mass * times * left;
    if (facts.counts === 'volatile' && line.reduced === undefined)
      this.decide(
        'water',
        `How much of ${name} is left in the finished food: it stands by the weight it was poured in.`,
      );
    const meat = place === 'US' ? undefined : facts.meat;
    this.put(meat === undefined ? `food ${name.toLowerCase()}` : `meat ${meat.word}`, {
      name: meat?.word ?? name,
      mass,
      marks,
      declared,
      facts,
      fat: fatShare === null ? null : fatShare * mass,
      inside: [],
    });
  }

  /** Muscle over its limit of fat becomes meat and fat. */
  private standardise(): void {
    if (this.question.place === 'US') return;
    for (const [key, entry] of [...this.entries]) {
      const meat = entry.facts.meat;
      if (meat === undefined) continue;
      this.decide(
        'meat',
        `Connective tissue of the ${meat.word}: most collagen is ${percent(meatLimits[meat.group].collagenToProtein)} of its protein; no composition here shows it.`,
      );
      if (entry.fat === null) {
        this.decide(
          'meat',
          `The fat of the ${meat.word} is not known: whether it is meat within ${percent(meatLimits[meat.group].fat)} of fat.`,
        );
        continue;
      }
      const { meat: kept, excessFat } = meatContent(entry.mass, entry.fat / entry.mass, meat.group);
      if (!(excessFat > 1e-9 * entry.mass)) continue;
      entry.mass = kept;
      const name = fatName(meat);
      this.put(`food ${name}`, {
        name,
        mass: excessFat,
        marks: [],
        declared: false,
        facts: {},
        fat: null,
        inside: [],
      });
      this.entries.set(key, entry);
    }
  }

  listed(finished: number, top: boolean): Listed[] {
    this.standardise();
    const all = [...this.entries.values()];
    const others = all.filter((e) => e.facts.counts !== 'water').reduce((s, e) => s + e.mass, 0);
    const poured = all.filter((e) => e.facts.counts === 'water');
    const water = poured.reduce((s, e) => s + e.mass, 0);
    const kept = Math.max(0, Math.min(finished - others, water));
    for (const entry of poured) entry.mass = water > 0 ? (entry.mass / water) * kept : 0;
    if (top) this.aboutWater(poured.length > 0 ? kept / finished : 0, water);
    return all
      .filter((e) => e.facts.counts !== 'water' || e.mass > 1e-9 * finished)
      .sort((a, b) => b.mass - a.mass || a.name.localeCompare(b.name))
      .map((e) => this.one(e, finished, top));
  }

  private one(e: Entry, finished: number, top: boolean): Listed {
    const share = finished > 0 ? e.mass / finished : 0;
    const declared = e.declared && this.question.place !== 'US';
    if (e.declared && e.facts.counts === 'volatile')
      this.decide('volatileQuantity', `The quantity of ${e.name} is that in the finished food.`);
    for (const { allergen, as, checkLabel } of e.marks) {
      if (checkLabel === true)
        this.decide(
          'allergens',
          `Look at the label of ${e.name} for ${as ?? allergen}; until then it counts as there.`,
        );
      if (as === undefined && (allergen === 'gluten' || allergen === 'nuts'))
        this.decide(
          'allergens',
          `Which ${allergen === 'gluten' ? 'cereal' : 'nut'} is in ${e.name}: the kind has to stand.`,
        );
    }
    return {
      name: e.name,
      mass: e.mass,
      share,
      marks: e.marks,
      quantity: declared && top && finished > 0 ? declaredQuantity(e.mass, finished) : null,
      inside:
        this.question.short === true && e.facts.seasoning === true && top && share < 0.02
          ? held(e)
          : e.inside,
      madeOf: e.facts.madeOf ?? null,
    };
  }

  private aboutWater(share: number, poured: number): void {
    const { place } = this.question;
    if (place === 'US' || poured === 0) return;
    const meat = [...this.entries.values()].some((e) => e.facts.meat !== undefined);
    if (share > 0.05 && meat)
      this.decide(
        'addedWater',
        `${percent(share)} of water is added: the name says so if the food looks like a cut, joint, slice, portion or carcase.`,
      );
    else if (share > 0 && share <= 0.05 && !meat)
      this.decide(
        'water',
        `${percent(share)} of water is added and stands in the list; up to 5 % it need not.`,
      );
  }
}

/** Of a seasoning without its brackets only what has to stand: its allergens. */
const held = (e: Entry): Listed[] =>
  e.inside.filter((i) => i.marks.length > 0 || i.inside.some((x) => x.marks.length > 0));

const percent = (x: number) => `${Number((100 * x).toFixed(1))} %`;

const fatName = ({ word, group }: { word: string; group: MeatGroup }) =>
  group === 'bird or rabbit' ? `${word} fat and skin` : `${word} fat`;

function union(a: readonly AllergenMark[], b: readonly AllergenMark[]): AllergenMark[] {
  const all = new Map<string, AllergenMark>();
  for (const mark of [...a, ...b]) {
    const key = `${mark.allergen} ${mark.as ?? ''}`;
    const before = all.get(key);
    if (before === undefined || before.checkLabel === true) all.set(key, mark);
  }
  return [...all.values()];
}

/** In the US the statement below the list names the nine; elsewhere the list itself names the fourteen. */
function runsOf(list: readonly Listed[], place: LabelPlace): Run[] {
  const plain = (text: string): Run => ({ text, emphasised: false });
  const named = (text: string, entry: Listed) =>
    place === 'US' ? [plain(text)] : emphasised(text, entry.marks);
  return list.flatMap((entry, i): Run[] => [
    ...(i === 0 ? [] : [plain(', ')]),
    ...(entry.madeOf === null
      ? named(entry.name, entry)
      : [plain(`${entry.name} (`), ...named(entry.madeOf, entry), plain(')')]),
    ...(entry.quantity === null ? [] : [plain(` (${entry.quantity.text})`)]),
    ...(entry.inside.length === 0 ? [] : [plain(' ('), ...runsOf(entry.inside, place), plain(')')]),
  ]);
}

/**
 * The list of ingredients with what goes with it [kg, shares, and runs of text].
 * Parameters: recipe and pantry as for `reckon`; place; the finished weight [kg] for the recipe as written, above 0; declared risks.
 * Equation: order by weight as used; water m = M − Σ others, not below 0 nor above what was poured in; declared q = 100·m/M.
 * Assumptions: muscle of one animal in one list is one ingredient, its limits taken over all of it; a recipe stands as a compound
 * ingredient with its own list unless it is spread out; what a name or the law's categories ask beyond this is the kitchen's.
 * It informs and licenses nothing: the authority of the place and people who know its law stand above it.
 * Checked: ordering and quantities of published examples; by property every allergen at the bottom stands emphasised.
 * @example labelOf({ recipe: { kind: 'recipe', id: 'r', name: 'r', lines: [] }, pantry: { items: new Map(), reckoned: new Map(), expanded: new Map() }, place: 'GB' }).ingredients.length // → 0
 * Source: eu-1169-2011-labels
 * Source: cfr-21-101-4
 */
export function labelOf(question: LabelQuestion): Label {
  const { recipe, pantry, place } = question;
  const outcome = reckon(recipe, pantry);
  const finished = question.finished ?? outcome.mass;
  const decisions = new Map<string, Decision>();
  const decide = (rule: LabelRuleName, what: string) => void decisions.set(`${rule} ${what}`, { rule, what });
  const level = new Level(question, decide);
  level.add(recipe, 1, false);
  const ingredients = level.listed(finished, true);
  const allergens = allergensOf(recipe, pantry, question.risks);
  for (const path of allergens.notSaid)
    decide(
      'allergens',
      `Nobody has said which allergens are in ${routeWords(path)}: ask before this is printed.`,
    );
  for (const id of outcome.missing)
    decide('order', `The pantry does not have ${id}: what stands for it is its name alone.`);
  const alcohol = outcome.nutrients.alcohol;
  if (finished > 0 && (alcohol.known / finished > 0.0095 || alcohol.unknown > 0) && place !== 'US')
    decide(
      'alcohol',
      alcohol.unknown > 0
        ? 'How much alcohol is left is not known; a guest may ask.'
        : `${percent(alcohol.known / finished)} of alcohol by weight is left; a guest may ask.`,
    );
  if (ingredients.some((i) => i.inside.length > 0) && place !== 'US')
    decide(
      'compound',
      'Whether the names of compound ingredients are ones that law or custom gives; else spread them out.',
    );
  if (place !== 'US' && !ingredients.some((i) => i.quantity !== null))
    decide(
      'quantity',
      'Which ingredient is in the name or makes the food what it is: no quantity is declared yet.',
    );
  if (place === 'US')
    decide('usMeat', 'Whether this is a product of the meat inspection service, which has rules of its own.');
  return {
    name: recipe.label?.name ?? recipe.name,
    ingredients,
    runs: joined(runsOf(ingredients, place)),
    contains: place === 'US' ? usAllergensOf(allergens.contains) : [],
    allergens,
    finished,
    decisions: [...decisions.values()],
    complete: allergens.notSaid.length === 0 && outcome.missing.length === 0,
  };
}
