import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runCarve } from './carve.ts';
import { CarveAnswer } from './carve-answer.ts';
import { InputProblems } from './problem.ts';

/** Three geese, invented. */
const geese = {
  species: 'goose',
  animals: [
    {
      liveKg: 5.4,
      dressedKg: 3.7,
      costTotal: 42,
      parts: [
        { part: 'legs', kg: 0.8 },
        { part: 'breast', kg: 1.2 },
        { part: 'neck', kg: 0.2 },
        { part: 'frame', kg: 1.4 },
      ],
    },
    {
      liveKg: 5.2,
      dressedKg: 3.6,
      costTotal: 41,
      parts: [
        { part: 'legs', kg: 0.76 },
        { part: 'breast', kg: 1.2 },
        { part: 'neck', kg: 0.18 },
        { part: 'frame', kg: 1.4 },
      ],
    },
    {
      liveKg: 5.6,
      dressedKg: 3.9,
      costTotal: 44,
      parts: [
        { part: 'legs', kg: 0.9 },
        { part: 'breast', kg: 1.25 },
        { part: 'neck', kg: 0.22 },
        { part: 'frame', kg: 1.45 },
      ],
    },
  ],
};
const problemsOf = (input: unknown) => {
  try {
    runCarve(input);
  } catch (error) {
    if (error instanceof InputProblems)
      return error.problems.map((p) => `${p.path}: ${p.found} | ${p.allowed}`);
    throw error;
  }
  return [];
};
const changed = (change: (copy: typeof geese & Record<string, unknown>) => void) => {
  const copy = structuredClone(geese) as typeof geese & Record<string, unknown>;
  change(copy);
  return copy;
};

describe('runCarve', () => {
  test('means, spread, interval and animals still to weigh, by hand', () => {
    const answer = runCarve({ ...geese, precisionPct: 10 });
    expect(CarveAnswer.parse(answer)).toEqual(answer);
    const legs = answer.parts[0]!;
    const x = [80 / 3.7, 76 / 3.6, 90 / 3.9];
    const mean = (x[0]! + x[1]! + x[2]!) / 3;
    const sd = Math.sqrt(x.reduce((s, v) => s + (v - mean) ** 2, 0) / 2);
    expect(legs.meanPct).toBeCloseTo(mean, 10);
    expect(legs.sdPct).toBeCloseTo(sd, 10);
    // Student's t for 2 degrees of freedom, as tables have it: 4.303.
    expect(legs.high95! - mean).toBeCloseTo((4.302653 * sd) / Math.sqrt(3), 5);
    expect(mean - legs.low95!).toBeCloseTo((4.302653 * sd) / Math.sqrt(3), 5);
    // 3.182 sd/2 and 2.776 sd/√5 against a tenth of the mean.
    expect((3.182 * sd) / 2 <= mean / 10).toBe(true);
    expect(legs).toMatchObject({ animals: 3, kgTotal: 2.46, animalsForPrecision: 4, moreAnimals: 1 });
    expect(answer.unaccountedPct).toBeCloseTo((100 * (0.1 + 0.06 + 0.08)) / 11.2, 10);
    expect(answer.dressingPct).toBeCloseTo((100 * 11.2) / 16.2, 10);
    expect(answer.middleAnimal?.shares.reduce((s, p) => s + p.pct, 0)).toBeCloseTo(100, 9);
  });
  test('cost by weight, by value and by shares; in hundredths it closes', () => {
    const answer = runCarve({
      ...geese,
      values: { legs: 14, breast: 26, neck: 3, frame: 0 },
      shares: { legs: 1, breast: 2, neck: 0.5, frame: 0 },
    });
    const kg = { legs: 2.46, breast: 3.65, neck: 0.6, frame: 4.25 };
    const worth = 2.46 * 14 + 3.65 * 26 + 0.6 * 3;
    for (const name of Object.keys(kg)) expect(answer.costPerKg.weight[name]).toBeCloseTo(127 / 10.96, 9);
    expect(answer.costPerKg.value?.legs).toBeCloseTo((127 * 14) / worth, 9);
    expect(answer.costPerKg.value?.frame).toBe(0);
    expect(answer.costPerKg.shares?.breast).toBeCloseTo((127 * 2) / 3.5 / 3.65, 9);
    const { total, ...rules } = answer.costHundredths;
    expect(total).toBe(12_700);
    for (const rule of Object.values(rules))
      expect(Object.values(rule!).reduce((a, b) => a + b, 0)).toBe(12_700);
  });
  test('waste carries nothing, a credit is taken off, disposal is put on', () => {
    const money = { values: { legs: 14, breast: 26, neck: 3, frame: -0.4 }, credited: ['neck'] };
    const { costPerKg, cautions } = runCarve({ ...geese, ...money });
    const rest = 127 - 0.6 * 3 + 4.25 * 0.4;
    expect(costPerKg.weight).toEqual({
      legs: expect.closeTo(rest / 6.11, 9),
      breast: expect.closeTo(rest / 6.11, 9),
      neck: expect.closeTo(3, 9),
      frame: expect.closeTo(-0.4, 9),
    });
    expect(cautions.join()).toMatch(/rid of frame/);
    expect(runCarve({ ...geese, wasted: ['frame'] }).costPerKg.weight).toMatchObject({
      frame: 0,
      legs: expect.closeTo(127 / 6.71, 9),
    });
  });
  test('one animal: a mean, and no spread made up', () => {
    const answer = runCarve({ ...geese, animals: geese.animals.slice(0, 1) });
    expect(answer.parts[2]).toMatchObject({
      part: 'neck',
      sdPct: null,
      low95: null,
      high95: null,
      animalsForPrecision: null,
      moreAnimals: null,
    });
    expect(answer.costPerKg).toMatchObject({ value: null, shares: null });
    expect(answer.cautions[0]).toMatch(/^One animal/);
  });
  test('a published study counts as animals, and is cited', () => {
    const { parts, basis, cautions } = runCarve({
      ...geese,
      published: { study: 'goose-india-dressed', animals: 4 },
    });
    const neck = parts.find((p) => p.part === 'neck')!;
    expect(neck.byRatio).toMatchObject({ publishedPct: expect.closeTo(10.587, 9), publishedAnimals: 4 });
    expect(neck.byRatio.centrePct).toBeGreaterThan(neck.meanPct);
    expect(neck.byRatio.publishedFits).toBe(false);
    expect(cautions.join()).toMatch(/no figure by the name of legs, frame.*outside of what your own.*neck/);
    expect(parts.find((p) => p.part === 'frame')!.byRatio.publishedPct).toBe(null);
    expect(basis.some((b) => b.source === 'geese-india-2013' && b.citation.length > 20)).toBe(true);
    expect(problemsOf({ ...geese, published: { study: 'goose-india', animals: 4 } })[0]).toMatch(
      /published\.study: an unknown study.*perhaps goose-india-dressed/,
    );
    expect(problemsOf({ ...geese, published: { study: 'ahdb-pig', animals: 4 } })[0]).toMatch(/of the live/);
    expect(runCarve({ ...geese, published: { study: 'us-pig-cuts', animals: 4 } }).cautions.join()).toMatch(
      /another animal, by its name: pig, and not goose/,
    );
  });
  test('a slip of the scale is told and kept; suppliers and cutters apart; learning', () => {
    const animals = Array.from({ length: 8 }, (_, i) => ({
      dressedKg: 4,
      costTotal: 40,
      supplier: i % 2 === 0 ? 'Hill' : 'Vale',
      cutter: 'Ash',
      parts: [{ part: 'neck', kg: i === 7 ? 0.6 : 0.2 + 0.004 * Math.log2(i + 1) }],
    }));
    const { apart, groups, learning, parts } = runCarve({ species: 'goose', animals });
    expect(apart).toEqual([expect.objectContaining({ animal: 'animal 8', index: 7, part: 'neck', pct: 15 })]);
    expect(parts[0]?.animals).toBe(8);
    expect(groups.map((g) => [g.by, g.name, g.animals])).toEqual([
      ['supplier', 'Hill', 4],
      ['supplier', 'Vale', 4],
      ['cutter', 'Ash', 8],
    ]);
    expect(groups[0]?.againstRest?.verdict).toBe('not shown');
    const apartBy = runCarve({
      species: 'goose',
      animals: animals.slice(0, 6).map((a, i) => ({
        ...a,
        parts: [{ part: 'neck', kg: (i % 2 === 0 ? 0.26 : 0.2) + 0.001 * i }],
      })),
    });
    expect(apartBy.groups.map((g) => g.againstRest?.verdict ?? null)).toEqual(['more', 'less', null]);
    // 6.5 against 5 % of 4 kg, a little spread.
    expect(apartBy.groups[0]!.againstRest!.low95).toBeGreaterThan(1);
    expect(apartBy.groups[0]!.againstRest!.high95).toBeLessThan(2);
    const taught = runCarve({ species: 'goose', animals: animals.slice(0, 7) });
    expect(taught.learning[0]).toMatchObject({ cutter: 'Ash', verdict: 'rising' });
    expect(taught.learning[0]!.perDoublingPct).toBeCloseTo(0.1, 2);
    expect(learning).toHaveLength(1);
  });
  test('animals cut together count as so many, and say nothing of spread alone', () => {
    const together = { ...geese.animals[0]!, count: 3 };
    const alone = runCarve({ species: 'goose', animals: [together] });
    expect(alone).toMatchObject({
      animals: 3,
      parts: [{ animals: 3, weighings: 1, sdPct: null }, {}, {}, {}],
    });
    expect(alone.cautions[0]).toMatch(/^3 animals in one weighing/);
    const { parts } = runCarve({ species: 'goose', animals: [together, geese.animals[1]!] });
    expect(parts[0]?.meanPct).toBeCloseTo((3 * (80 / 3.7) + 76 / 3.6) / 4, 10);
  });
  test('a kilogram to serve costs its losses and its work', () => {
    const finish = { neck: { trimPct: 10, cookingLossPct: 27, labourMinPerKg: 30 } };
    const values = { legs: 14, breast: 26, neck: 0, frame: 0 };
    const [neck] = runCarve({ ...geese, values, finish, labourPerHour: 15 }).usable;
    expect(neck?.kgTotal).toBeCloseTo(0.6 * 0.9 * 0.73, 10);
    expect(neck?.costPerKg.weight).toBeCloseTo((127 / 10.96 + 7.5) / 0.657, 9);
    // Free by value: what is left to pay is the work.
    expect(neck?.costPerKg.value).toBeCloseTo(7.5 / 0.657, 9);
    expect(neck?.labourPerKg).toBeCloseTo(7.5 / 0.657, 9);
    expect(problemsOf({ ...geese, finish })[0]).toMatch(/^labourPerHour: nothing/);
    expect(problemsOf({ ...geese, finish: { nek: {} } })[0]).toMatch(/^finish\.nek: a part that no animal/);
  });
  test('pieces of a part: balance, shares and cost at every cut', () => {
    const cut = (neckKg: number, skin: number, meat: number) => ({
      dressedKg: 4,
      costTotal: 40,
      parts: [
        { part: 'neck', kg: neckKg },
        { part: 'neck skin', kg: skin, from: 'neck' },
        { part: 'neck meat', kg: meat, from: 'neck' },
        { part: 'rest', kg: 3.7 },
      ],
    });
    const animals = [cut(0.2, 0.08, 0.1), cut(0.22, 0.09, 0.12)];
    const values = { 'neck skin': 10, 'neck meat': 2, rest: 12 };
    const { parts, cuts, costPerKg, costHundredths, middleAnimal } = runCarve({
      species: 'goose',
      animals,
      values,
    });
    expect(cuts).toEqual([
      {
        part: 'neck',
        inKg: 0.42,
        outKg: 0.39,
        unaccountedKg: 0.03,
        unaccountedPct: expect.closeTo(300 / 42, 9),
      },
    ]);
    expect(parts[1]).toMatchObject({ from: 'neck', pctOfFrom: expect.closeTo(1700 / 42, 9) });
    expect(parts[1]?.meanPct).toBeCloseTo((2 + 2.25) / 2, 9);
    expect(middleAnimal?.shares.map((s) => s.part)).toEqual(['neck', 'rest', 'unaccounted']);
    // By weight the neck costs its 0.42 of 7.82 kg, and its pieces carry that.
    const neck = (80 * 0.42) / 7.82;
    expect(costPerKg.weight.neck).toBeCloseTo(80 / 7.82, 9);
    expect(costPerKg.weight['neck skin']).toBeCloseTo(neck / 0.39, 9);
    const worth = 0.17 * 10 + 0.22 * 2 + 7.4 * 12;
    expect(costPerKg.value?.['neck skin']).toBeCloseTo((80 * 10) / worth, 9);
    expect(Object.keys(costHundredths.weight)).toEqual(['neck skin', 'neck meat', 'rest']);
    for (const rule of [costHundredths.weight, costHundredths.value!])
      expect(Object.values(rule).reduce((a, b) => a + b, 0)).toBe(8000);

    const wrong = (change: (copy: typeof animals) => void, more = {}) => {
      const copy = structuredClone(animals);
      change(copy);
      return problemsOf({ species: 'goose', animals: copy, ...more });
    };
    expect(wrong((a) => (a[1]!.parts[1]!.kg = 0.2))).toEqual([
      'animals[1].parts[0].kg: 0.32 kg of pieces from neck | at most 0.22 kg, what it weighed, and 0.0015 kg for the scales',
    ]);
    expect(wrong((a) => (a[0]!.parts[1]!.from = 'nek'))[0]).toMatch(/^animals\[0\]\.parts\[1\]\.from: "nek"/);
    expect(wrong((a) => (a[1]!.parts[2]!.from = 'rest'))[0]).toMatch(
      /^animals\[1\]\.parts\[2\]\.from: neck meat/,
    );
    expect(wrong((a) => a[1]!.parts.splice(1, 2))[0]).toMatch(/neck left whole, and cut on in another/);
    const ring = [
      { part: 'a', kg: 1, from: 'b' },
      { part: 'b', kg: 1, from: 'a' },
    ];
    expect(
      problemsOf({ species: 'x', animals: [{ dressedKg: 4, costTotal: 1, parts: ring }] }).join(),
    ).toMatch(/comes from itself/);
    expect(wrong(() => {}, { wasted: ['neck'] })[0]).toMatch(/^wasted\[0\]: "neck", which is cut on/);
    expect(wrong(() => {}, { values: { neck: 3 } })[0]).toMatch(/^values\.neck: a price for what is cut on/);
  });
  test('refuses what is wrong, with place, finding and what is allowed', () => {
    const parts = (i: number) => (g: typeof geese) => g.animals[i]!.parts;
    expect(problemsOf(changed((g) => parts(1)(g).push({ part: 'liver', kg: 0.1 })))).toEqual([
      'animals[1].parts: 3.64 kg of parts | at most 3.6 kg, what the animal weighed dressed, and 0.003 kg for the scales',
    ]);
    expect(problemsOf(changed((g) => parts(0)(g).push({ part: 'neck', kg: 0.01 })))[0]).toMatch(
      /^animals\[0\]\.parts\[4\]\.part: "neck" a second time/,
    );
    expect(problemsOf(changed((g) => (parts(2)(g)[1]!.kg = -0.1)))).toEqual([
      'animals[2].parts[1].kg: -0.1 | at least 0',
    ]);
    expect(problemsOf(changed((g) => (g.animals[0]!.dressedKg = 6)))[0]).toMatch(
      /animals\[0\]\.dressedKg: 6 kg \| at most 5\.4 kg/,
    );
    expect(problemsOf(changed((g) => (g.mood = 3)))[0]).toMatch(/^mood: an unknown key/);
    expect(problemsOf({ ...geese, values: { leg: 14 } })[0]).toMatch(
      /values\.leg: a part that no animal.*legs/,
    );
    expect(problemsOf({ ...geese, credited: ['neck'] })[0]).toMatch(/credited\[0\]: "neck" without a price/);
    expect(problemsOf({ ...geese, shares: { legs: 1 } })).toHaveLength(3);
    expect(problemsOf({ ...geese, values: { legs: 0 } })[0]).toMatch(/^values: no part that carries cost/);
    expect(problemsOf({ ...geese, animals: [] })[0]).toMatch(/^animals: an empty list/);
    expect(problemsOf(changed((g) => (g.animals[0]!.dressedKg = Number.NaN))).length).toBeGreaterThan(0);
  });
  test('whatever the names and weights: an answer without NaN, or problems', () => {
    const name = fc.oneof(fc.constantFrom('constructor', '__proto__', 'toString', 'neck', ' '), fc.string());
    const animal = fc.record({
      dressedKg: fc.double({ min: 0.001, max: 300, noNaN: true }),
      costTotal: fc.double({ min: 0, max: 5000, noNaN: true }),
      parts: fc.array(fc.record({ part: name, kg: fc.double({ min: 0, max: 60, noNaN: true }) }), {
        minLength: 1,
        maxLength: 6,
      }),
    });
    let answered = 0;
    fc.assert(
      fc.property(fc.array(animal, { minLength: 1, maxLength: 5 }), (animals) => {
        const fit = animals.map((a) => {
          const sum = a.parts.reduce((s, p) => s + p.kg, 0);
          return sum > a.dressedKg ? { ...a, dressedKg: Math.min(5000, sum * 1.05) } : a;
        });
        const input = { species: 'pig', animals: fit, values: { neck: 3 } };
        const text = JSON.stringify(input);
        const found = problemsOf(JSON.parse(text));
        if (found.length > 0) return;
        answered++;
        const walk = (value: unknown): void => {
          if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
          else if (typeof value === 'object' && value !== null) Object.values(value).forEach(walk);
        };
        walk(runCarve(JSON.parse(text)));
      }),
      { numRuns: 400 },
    );
    expect(answered).toBeGreaterThan(5);
  });
});
