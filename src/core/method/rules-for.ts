/** Which rules of the book a food is held to at a step and a place, which may stand in their stead, and why the others do not apply. */
import { atLeastAsStrict, type CookingRule } from '../microbes/asked-time.ts';
import type { Animal, Form, Product } from '../properties/product.ts';
import type { ProductTest, Rule, RulePlace, RuleStep } from '../properties/rule.ts';
import { rules } from '../properties/rules.ts';

/** How a rule stands to a food at a place. */
export type RuleStanding =
  | 'held to'
  /** It applies, but another that is held to asks for at least as much everywhere. */
  | 'covered'
  | 'may stand instead'
  | 'one hazard'
  | 'another place'
  | 'not for this food';

export interface RuleForFood {
  readonly rule: Rule;
  readonly standing: RuleStanding;
  /** null: something about the food is not known, and the rule is taken to apply. */
  readonly applies: boolean | null;
  /** Why it does not apply, or what is not known. Empty where it plainly applies. */
  readonly why: string;
}

interface Tested {
  readonly applies: boolean | null;
  readonly why: string;
}

const yes: Tested = { applies: true, why: '' };
const no = (why: string): Tested => ({ applies: false, why });
const unknown = (why: string): Tested => ({ applies: null, why });
const listed = (words: readonly string[]) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;

function ofAnimals(asked: readonly Animal[], product: Product): Tested {
  if (product.animals.length === 0) return unknown('whose meat it is is not known');
  return product.animals.some((a) => asked.includes(a))
    ? yes
    : no(`for ${listed(asked)}; this is ${product.animals.join(' and ')}`);
}

function ofForms(asked: readonly Form[], product: Product): Tested {
  if (asked.some((form) => product.forms[form] === true)) return yes;
  const open = asked.filter((form) => product.forms[form] === null);
  return open.length > 0
    ? unknown(`whether it is ${listed(open)} is not known`)
    : no(`for what is ${listed(asked)}; this is not`);
}

function without(forms: readonly Form[], product: Product): Tested {
  const found = forms.find((form) => product.forms[form] === true);
  if (found !== undefined) return no(`not for what is ${found}`);
  const open = forms.filter((form) => product.forms[form] === null);
  return open.length > 0 ? unknown(`whether it is ${listed(open)} is not known`) : yes;
}

function ofFat({ over, upTo }: NonNullable<ProductTest['fat']>, fatPct: number | null): Tested {
  const range = upTo === null ? `over ${over} % fat, or fat unknown` : `up to ${upTo} % fat`;
  if (fatPct === null) return upTo === null ? yes : no(`for ${range}; the fat is not known`);
  return fatPct > over && (upTo === null || fatPct <= upTo)
    ? yes
    : no(`for ${range}${over > 0 && upTo !== null ? ` and over ${over} %` : ''}; this has ${fatPct} %`);
}

function ofOne(is: boolean | null, wanted: boolean, what: string): Tested {
  if (is === null) return unknown(`whether it is ${what} is not known`);
  return is === wanted ? yes : no(wanted ? `for what is ${what}` : `not for what is ${what}`);
}

/** Every condition of a rule on the food: one that fails decides, then one that is not known. */
function tested(test: ProductTest, product: Product): Tested {
  const found: Tested[] = [];
  if (test.animals !== undefined) found.push(ofAnimals(test.animals, product));
  if (test.noneOf !== undefined) {
    const wrong = product.animals.find((a) => test.noneOf?.includes(a));
    if (wrong !== undefined) found.push(no(`not where ${wrong} is in it`));
    else if (product.animals.length === 0 && test.noneOf.length > 0)
      found.push(unknown('whose meat it is is not known'));
  }
  if (test.forms !== undefined) {
    const by = ofForms(test.forms, product);
    const or = test.orOf === undefined ? no('') : ofAnimals(test.orOf, product);
    if (by.applies === true || or.applies === true) found.push(yes);
    else if (by.applies === null || or.applies === null) found.push(by.applies === null ? by : or);
    else found.push(test.orOf === undefined ? by : no(`${by.why}, nor ${listed(test.orOf)}`));
  }
  if (test.noForms !== undefined) found.push(without(test.noForms, product));
  if (test.fat !== undefined) found.push(ofFat(test.fat, product.fatPct));
  if (test.nitritePpm !== undefined)
    found.push(
      product.nitritePpm === null
        ? no(`only with at least ${test.nitritePpm} ppm nitrite put in, which is not known here`)
        : product.nitritePpm >= test.nitritePpm
          ? yes
          : no(`only with at least ${test.nitritePpm} ppm nitrite put in; here it is ${product.nitritePpm}`),
    );
  if (test.packed !== undefined)
    found.push(
      ofOne(product.packed === null ? null : product.packed === test.packed, true, 'packed without air'),
    );
  if (test.cooked !== undefined) found.push(ofOne(product.cooked, test.cooked, 'cooked before'));
  if (test.offal !== undefined) found.push(ofOne(product.offal, test.offal, 'offal'));
  return found.find((t) => t.applies === false) ?? found.find((t) => t.applies === null) ?? yes;
}

const isCooking = (rule: Rule): rule is Rule & CookingRule =>
  rule.kind === 'lethality' || rule.kind === 'hold';

/** Of usual rules that apply, those that no other covers; of two alike the first. */
function strictest(usual: readonly Rule[]): Set<Rule> {
  const covers = (a: Rule, b: Rule) => isCooking(a) && isCooking(b) && atLeastAsStrict(a, b);
  return new Set(
    usual.filter(
      (rule, i) =>
        !usual.some((other, j) => other !== rule && covers(other, rule) && (!covers(rule, other) || j < i)),
    ),
  );
}

/** Whose advice is used where a place publishes no figure for cooking. */
const lender: RulePlace = 'GB-ENG';
const borrowed =
  'no figure for cooking is published for your place: this advice of the United Kingdom is used in its stead';

/**
 * The rules that speak of a step, each with how it stands to a food at a place [-].
 * Equation: a rule is held to where place, step and food are its own and no other that is held to asks for as much at every
 * temperature; where the place has none for cooking, those of the United Kingdom.
 * Parameters: `product` with null for what is not known; `place` one of the six; `step` of the method.
 * Assumptions: not known counts as the stricter answer: the rule applies. What may stand instead of another, and rules of one
 * hazard, are never held to by themselves.
 * Checked: the rules for ten foods at four places, by hand from the texts.
 * @example rulesFor({ animals: ['other bird'], forms: { minced: true, 'stuffed or rolled': true, 'injected or tenderised': null }, fatPct: null, nitritePpm: null, packed: null, cooked: null, offal: null }, 'US', 'cook').filter((r) => r.standing === 'held to')[0].rule.id // → 'us-food-code-165f-stuffed'
 * Source: us-food-code, fsa-cooking-safely, acmsf-burgers-2007
 */
export function rulesFor(product: Product, place: RulePlace, step: RuleStep): RuleForFood[] {
  const spoken = rules.filter((rule) => rule.scope.steps.includes(step));
  const seen = spoken.map((rule) => {
    const here = rule.scope.places.length === 0 || rule.scope.places.includes(place);
    return { rule, here, ...(rule.scope.product === undefined ? yes : tested(rule.scope.product, product)) };
  });
  const usualAt = (where: RulePlace) =>
    seen.filter(
      ({ rule, applies }) =>
        applies !== false && rule.scope.role === 'usual' && rule.scope.places.includes(where),
    );
  const own = usualAt(place);
  const borrows = step === 'cook' && own.length === 0;
  const held = strictest((borrows ? usualAt(lender) : own).map((r) => r.rule));
  return seen.map(({ rule, here, applies, why }): RuleForFood => {
    if (borrows && held.has(rule))
      return { rule, standing: 'held to', applies, why: why === '' ? borrowed : `${borrowed}; ${why}` };
    if (applies === false) return { rule, standing: 'not for this food', applies, why };
    if (!here) return { rule, standing: 'another place', applies, why };
    const { role } = rule.scope;
    if (role === 'beside') return { rule, standing: 'one hazard', applies, why };
    if (role === 'instead') return { rule, standing: 'may stand instead', applies, why };
    return { rule, standing: held.has(rule) ? 'held to' : 'covered', applies, why };
  });
}

/**
 * The rules that a step is held to: those it names, and of the usual ones every one that no named rule stands for [-].
 * Equation: a usual rule is left out only where a named one that applies here may stand instead of it or asks for as much
 * at every temperature.
 * Parameters: `named` ids; the rest as of `rulesFor`.
 * Assumptions: a rule of another place is held beside one's own, never instead of it.
 * Checked: by the same table of foods.
 * @example heldTo(['us-poultry-7log-other-12pct-fat'], { animals: ['other bird'], forms: { minced: true, 'stuffed or rolled': true, 'injected or tenderised': null }, fatPct: null, nitritePpm: null, packed: null, cooked: null, offal: null }, 'US', 'cook').length // → 1
 * Source: own-assumption
 */
export function heldTo(
  named: readonly string[],
  product: Product,
  place: RulePlace,
  step: RuleStep,
): readonly string[] {
  const all = rulesFor(product, place, step);
  const chosen = all.filter(
    (r) => named.includes(r.rule.id) && r.applies !== false && r.standing !== 'another place',
  );
  const stands = (usual: Rule) =>
    chosen.some(
      ({ rule, applies }) =>
        rule.id === usual.id ||
        (applies === true && rule.scope.insteadOf?.includes(usual.id) === true) ||
        (isCooking(rule) && rule.scope.role === 'usual' && isCooking(usual) && atLeastAsStrict(rule, usual)),
    );
  const more = all.filter((r) => r.standing === 'held to' && !stands(r.rule)).map((r) => r.rule.id);
  return [...named, ...more];
}
