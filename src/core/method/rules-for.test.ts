import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atLeastAsStrict, type CookingRule, timeAsked } from '../microbes/asked-time.ts';
import { judge } from '../microbes/judge.ts';
import { animalsIn, type Product } from '../properties/product.ts';
import type { RulePlace, RuleStep } from '../properties/rule.ts';
import { findRule, rules } from '../properties/rules.ts';
import { heldTo, rulesFor } from './rules-for.ts';

const food = (more: Partial<Product>): Product => ({
  animals: [],
  forms: { minced: false, 'stuffed or rolled': false, 'injected or tenderised': false },
  fatPct: null,
  nitritePpm: null,
  packed: null,
  cooked: false,
  offal: false,
  ...more,
});
const stuffed = { minced: true, 'stuffed or rolled': true, 'injected or tenderised': null };
const minced = { minced: true, 'stuffed or rolled': false, 'injected or tenderised': false };
const goose = food({ animals: ['other bird'], forms: stuffed });
const held = (product: Product, place: RulePlace, step: RuleStep = 'cook') =>
  rulesFor(product, place, step)
    .filter((r) => r.standing === 'held to')
    .map((r) => r.rule.id);
const of = (id: string, product: Product, place: RulePlace, step: RuleStep = 'cook') =>
  rulesFor(product, place, step).find((r) => r.rule.id === id);

describe('rulesFor', () => {
  it('is what the texts ask of ten foods, by place', () => {
    expect(held(goose, 'GB-ENG')).toEqual(['gb-70c-2min']);
    expect(held(goose, 'US')).toEqual(['us-food-code-165f-stuffed']);
    const heart = food({ animals: ['cattle'], forms: stuffed, offal: true });
    expect(held(heart, 'GB-WLS')).toEqual(['gb-70c-2min-comminuted']);
    expect(held(heart, 'US')).toEqual(['us-food-code-165f-stuffed']);
    expect(of('us-food-code-155f-comminuted', heart, 'US')?.standing).toBe('covered');
    const roast = food({ animals: ['cattle'] });
    expect(held(roast, 'GB-ENG')).toEqual(['gb-70c-2min']);
    expect(held(roast, 'US')).toEqual(['us-food-code-145f-whole']);
    expect(held(food({ animals: ['pig'], forms: minced }), 'US')).toEqual(['us-food-code-155f-comminuted']);
    expect(held(food({ animals: ['deer'] }), 'US')).toEqual(['us-food-code-165f-stuffed']);
    expect(held(food({ animals: ['deer'], forms: minced }), 'GB-ENG')).toEqual(['gb-70c-2min-comminuted']);
    expect(held(food({ animals: ['chicken'] }), 'US')).toEqual(['us-food-code-165f-stuffed']);
    expect(held(food({ animals: ['sheep or goat'], forms: minced }), 'EU')).toEqual([
      'gb-70c-2min-comminuted',
    ]);
  });
  it('borrows British advice where the place has no figure, and says so', () => {
    const found = of('gb-70c-2min', goose, 'EU');
    expect(found).toMatchObject({ standing: 'held to', applies: true });
    expect(found?.why).toMatch(/no figure for cooking is published for your place/);
  });
  it('takes what is not known as the stricter, and says what is not known', () => {
    const nobody = food({});
    expect(held(nobody, 'US')).toContain('us-food-code-165f-stuffed');
    expect(of('us-food-code-165f-stuffed', nobody, 'US')).toMatchObject({ applies: null });
    const perhaps = food({
      animals: ['cattle'],
      forms: { minced: null, 'stuffed or rolled': false, 'injected or tenderised': false },
    });
    expect(held(perhaps, 'GB-ENG')).toEqual(['gb-70c-2min-comminuted']);
    expect(of('gb-70c-2min-comminuted', perhaps, 'GB-ENG')?.why).toBe('whether it is minced is not known');
  });
  it('says why a rule is not for a food', () => {
    expect(of('us-poultry-7log-chicken-12pct-fat', goose, 'US')).toMatchObject({
      standing: 'not for this food',
      why: 'for chicken; this is other bird',
    });
    expect(of('us-plant-cooling-cured', goose, 'US', 'chill')?.why).toMatch(/100 ppm nitrite/);
    expect(of('gb-70c-2min', goose, 'US')).toMatchObject({ standing: 'another place' });
  });
  it('offers the table of the fat that was measured, and of the most where it was not', () => {
    const fats = (fatPct: number | null) =>
      rulesFor({ ...goose, fatPct }, 'US', 'cook')
        .filter((r) => r.standing === 'may stand instead' && r.rule.id.startsWith('us-poultry-7log'))
        .map((r) => r.rule.id);
    expect(fats(null)).toEqual(['us-poultry-7log-other-12pct-fat']);
    expect(fats(4.2)).toEqual(['us-poultry-7log-other-5pct-fat']);
    expect(fats(30)).toEqual(['us-poultry-7log-other-12pct-fat']);
  });
  it('reheats by the law of the place', () => {
    const cooked = { ...goose, cooked: true };
    expect(held(cooked, 'GB-ENG', 'reheat')).toEqual(['gb-70c-2min']);
    expect(held(cooked, 'GB-SCT', 'reheat')).toContain('scotland-reheat-82c');
    expect(held(cooked, 'US', 'reheat')).toEqual(['us-food-code-reheat-165f']);
    expect(held(cooked, 'GB-SCT', 'keep hot')).toEqual(['scotland-hot-hold-63c']);
  });
  it('does not accept freezing for wild boar', () => {
    const boar = food({ animals: ['wild boar'] });
    expect(of('eu-trichinella-freezing-middle', boar, 'EU', 'freeze')?.standing).toBe('not for this food');
    expect(of('eu-trichinella-freezing-middle', food({ animals: ['pig'] }), 'EU', 'freeze')?.standing).toBe(
      'one hazard',
    );
  });
});

describe('heldTo', () => {
  it('adds what is usual unless a named rule may stand for it', () => {
    const beef = food({ animals: ['cattle'], forms: minced });
    expect(heldTo(['gb-70c-2min'], beef, 'GB-ENG', 'cook')).toEqual([
      'gb-70c-2min',
      'gb-70c-2min-comminuted',
    ]);
    expect(heldTo(['gb-70c-2min-comminuted'], beef, 'GB-ENG', 'cook')).toHaveLength(1);
    expect(heldTo(['gb-70c-2min-printed-pairs'], goose, 'GB-ENG', 'cook')).toHaveLength(1);
    expect(heldTo(['us-poultry-7log-other-12pct-fat'], goose, 'GB-ENG', 'cook')).toContain('gb-70c-2min');
    expect(heldTo(['gb-70c-2min'], goose, 'US', 'cook')).toContain('us-food-code-165f-stuffed');
    expect(heldTo(['us-poultry-7log-chicken-1pct-fat'], goose, 'US', 'cook')).toContain(
      'us-food-code-165f-stuffed',
    );
    expect(heldTo(['woah-avian-influenza'], goose, 'GB-ENG', 'cook')).toContain('gb-70c-2min');
  });
  it('holds every food everywhere to a rule of cooking', () => {
    const flag = fc.constantFrom(true, false, null);
    fc.assert(
      fc.property(
        fc.subarray(
          animalsIn('chicken turkey goose pheasant beef lamb venison pork wild boar horse hare fish'),
        ),
        fc.tuple(flag, flag, flag),
        fc.constantFrom<RulePlace>('GB-ENG', 'GB-SCT', 'GB-WLS', 'GB-NIR', 'EU', 'US'),
        fc.subarray(rules.map((r) => r.id)),
        (animals, [a, b, c], place, named) => {
          const product = food({
            animals,
            forms: { minced: a, 'stuffed or rolled': b, 'injected or tenderised': c },
          });
          const got = heldTo(named, product, place, 'cook').flatMap((id) => findRule(id) ?? []);
          return got.some((r) => (r.kind === 'lethality' || r.kind === 'hold') && r.scope.role !== 'beside');
        },
      ),
    );
  });
});

const cooking = rules.filter((r): r is CookingRule => r.kind === 'lethality' || r.kind === 'hold');

describe('timeAsked', () => {
  it('is what the judge asks for', () => {
    for (const rule of cooking.filter((r) => r.kind === 'lethality' || !(r.comeUp || r.within)))
      for (const C of [61.3, 66, 72.4, 81, 92]) {
        const s = timeAsked(rule, C);
        const passes = (t: number) =>
          judge(
            [
              { s: 0, C },
              { s: t, C },
            ],
            [rule],
            { gap: 1e9 },
          )[0]!.passes;
        if (!Number.isFinite(s)) expect(passes(1e6)).toBe(false);
        else {
          expect(passes(Math.max(s, 0.01))).toBe(true);
          if (s > 0.1) expect(passes(s - 0.05)).toBe(false);
        }
      }
  });
});

describe('atLeastAsStrict', () => {
  it('is one way for the burger rule, and no way for two that cross', () => {
    const rule = (id: string) => findRule(id) as CookingRule;
    expect(atLeastAsStrict(rule('gb-70c-2min-comminuted'), rule('gb-70c-2min'))).toBe(true);
    expect(atLeastAsStrict(rule('gb-70c-2min'), rule('gb-70c-2min-comminuted'))).toBe(false);
    expect(atLeastAsStrict(rule('us-food-code-165f-stuffed'), rule('gb-70c-2min'))).toBe(false);
    expect(atLeastAsStrict(rule('gb-70c-2min'), rule('us-food-code-165f-stuffed'))).toBe(false);
  });
});

describe('animalsIn', () => {
  it('reads the words of a kitchen', () => {
    expect(animalsIn('Geese')).toEqual(['other bird']);
    expect(animalsIn('wild duck')).toEqual(['game bird']);
    expect(animalsIn("Pig's trotter with chicken liver")).toEqual(['chicken', 'pig']);
    expect(animalsIn('wild boar')).toEqual(['wild boar']);
    expect(animalsIn('Ox cheek')).toEqual(['cattle']);
    expect(animalsIn('cream, salt, nutmeg')).toEqual([]);
  });
});
