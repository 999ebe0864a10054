import { describe, expect, test } from 'vitest';
import { ingredientById } from '../core/properties/ingredients/table.ts';
import { makeIt, taken } from './make-it.ts';
import type { Made, MakeQuestion } from './make-it-question.ts';
import { loadSolver } from './solver.ts';
import type { MixLine } from './steps.ts';

const solve = await loadSolver();
const tableFood = (id: string) => {
  const row = ingredientById(id);
  return row === undefined
    ? undefined
    : {
        kind: 'food' as const,
        id,
        name: row.name,
        nutrients: row.nutrients,
        allergens: row.allergens,
        costPerKg: null,
      };
};
const of = (water: number, protein: number, fat: number, ash = 0) => ({
  composition: { water, protein, fat, carbohydrate: 0, fibre: 0, ash },
});
const lines: MixLine[] = [
  { ingredient: 'goose leg', g: 600, meat: true, ...of(0.7, 0.2, 0.09, 0.01), salt: 0.002, pricePerKg: 1800 },
  { ingredient: 'back fat', g: 250, ...of(0.08, 0.03, 0.88, 0.01), salt: 0, pricePerKg: 300 },
  { ingredient: 'ice', g: 130, ...of(1, 0, 0), salt: 0, pricePerKg: 0 },
  { ingredient: 'salt', g: 12, ...of(0, 0, 0, 1), salt: 1, pricePerKg: 60 },
  { ingredient: 'curing salt no. 1', g: 1.5, ...of(0, 0, 0, 1), salt: 0.94, pricePerKg: 500 },
  { ingredient: 'mace', g: 1, pricePerKg: 9000 },
];
const ask = (over: Partial<MakeQuestion> = {}): Made =>
  makeIt(
    {
      lines,
      pantry: { ingredients: [], parts: [], dishes: [] },
      goal: 'cheaper',
      held: { fat: { low: null, high: 32 } },
      movePct: 50,
      meatPct: 80,
      saltIsKept: true,
      ...over,
    },
    tableFood,
    solve,
  );
const made = (over: Partial<MakeQuestion> = {}) => {
  const answer = ask(over);
  if (answer.status !== 'made') throw new Error(JSON.stringify(answer));
  return answer;
};
const figure = (m: ReturnType<typeof made>, name: string) => m.figures.find((f) => f.name === name)!;

describe('make it', () => {
  test('cheaper, within the limits, as heavy as before', () => {
    const m = made();
    expect(m.lines.reduce((s, l) => s + l.newG, 0)).toBeCloseTo(994.5, 6);
    expect(figure(m, 'cost').after!).toBeLessThan(figure(m, 'cost').before!);
    expect(m.costs.length).toBeGreaterThan(0);
  });

  test.each(['cheaper', 'leaner', 'less salty', 'better bound'] as const)(
    '%s: curing salt keeps to the meat’s weight, and the salt that the keeping rests on does not fall',
    (goal) => {
      const m = made({ goal, held: {} });
      const [meat, fat, ice, salt, cure] = m.lines.map((l) => l.newG) as [
        number,
        number,
        number,
        number,
        number,
      ];
      expect(cure / meat).toBeCloseTo(1.5 / 600, 8);
      const inWater = (a: number, b: number, c: number, s: number, n: number) => {
        const all = s + 0.94 * n + 0.002 * a;
        return all / (all + 0.7 * a + 0.08 * b + c);
      };
      expect(inWater(meat, fat, ice, salt, cure)).toBeGreaterThanOrEqual(
        inWater(600, 250, 130, 12, 1.5) * (1 - 1e-6),
      );
    },
  );

  test('leaner has less fat; less salty has less salt where no keeping rests on it', () => {
    expect(figure(made({ goal: 'leaner' }), 'fat').after!).toBeLessThan(23);
    const m = made({ goal: 'less salty', saltIsKept: false });
    expect(m.lines[3]!.newG).toBeCloseTo(6, 4);
  });

  test('what is not known of a line leaves that line as it is, and says so', () => {
    const mace = made().lines[5]!;
    expect(mace).toMatchObject({ newG: 1, fixed: 'what it is made of is not known' });
  });

  test('what comes from the steps before stays, and with it its curing salt', () => {
    const m = made({ lines: lines.map((l, i) => (i === 0 ? { ...l, carried: true } : l)) });
    expect(m.lines[0]!.newG).toBeCloseTo(600, 8);
    expect(m.lines[4]!.newG).toBeCloseTo(1.5, 8);
  });

  test('impossible names what clashes, and what would make it possible', () => {
    const answer = ask({ held: { fat: { low: null, high: 5 } } });
    if (answer.status !== 'impossible') throw new Error(answer.status);
    expect(
      answer.clash.some((c) => c.words === 'fat at most 5 %' && c.becomes?.startsWith('no less than')),
    ).toBe(true);
  });

  test('a table row is reckoned by the table', () => {
    const m = made({
      lines: [
        ...lines.slice(0, 5),
        { ingredient: 'cream', of: { kind: 'table', id: 'water' }, g: 10, pricePerKg: 0 },
      ],
    });
    expect(m.lines[5]!.fixed).toBeNull();
  });

  test('what is taken has the proposed weights and is left alone where nothing changed', () => {
    const m = made();
    const next = taken(lines, m);
    expect(next[5]).toBe(lines[5]);
    expect(next[0]!.g).toBeCloseTo(m.lines[0]!.newG, 1);
  });
});
