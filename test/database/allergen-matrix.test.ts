/** Every ingredient of every demo dish is changed in turn: the matrix must change with it, and what is not known must say so. */
import { beforeAll, expect, it } from 'vitest';
import { demoKitchen } from '../../demo/kitchen.ts';
import type { App } from '../../src/app/app.ts';
import { layDemoIfEmpty } from '../../src/app/demo.ts';
import { engineOver, perform } from '../../src/app/engine.ts';
import { pantry } from '../../src/app/pantry.ts';
import { tableFood } from '../../src/app/pantry-table.ts';
import { type MatrixRow, matrixRow } from '../../src/contract/allergen-matrix.ts';
import { numbersOf } from '../../src/contract/dish-numbers.ts';
import type { Pantry, PantryDish } from '../../src/contract/pantry-answer.ts';
import { lineOf, type TableFood } from '../../src/contract/pantry-reckon.ts';
import type { AllergenMark } from '../../src/core/filling/food.ts';
import { eachStore } from './stores.ts';

const rowOf = (dish: PantryDish, held: Pantry, table: TableFood = tableFood): MatrixRow => {
  const whole = held.dishes.map((mix) => ({
    dishId: mix.id,
    name: mix.name,
    versionId: mix.versionId,
    number: mix.number,
    signed: mix.signed,
    species: mix.species,
    mix,
    bought: mix.bought,
    weightG: null,
    portions: null,
  }));
  const numbers = numbersOf(held, whole, table);
  return matrixRow(
    dish,
    numbers.find((n) => n.dishId === dish.id),
    held,
    'GB-ENG',
  );
};

const wordOf = (row: MatrixRow, column: string) => row.cells.find((c) => c.column === column)?.word;

type Marks = AllergenMark[] | null;

/** The pantry with other allergens on what a line points at; a line that points at nothing is changed itself. */
function changed(held: Pantry, dish: PantryDish, index: number, to: (was: Marks) => Marks) {
  const of = lineOf(dish.lines[index]!);
  const next = structuredClone(held);
  if (of === null) {
    const line = next.dishes.find((d) => d.id === dish.id)!.lines[index]!;
    const marks = to((line.allergens ?? []).map((allergen) => ({ allergen }) as AllergenMark));
    if (marks === null) delete line.allergens;
    else line.allergens = marks.map((m) => m.allergen);
    return { held: next, table: tableFood };
  }
  for (const food of [...next.ingredients, ...next.parts])
    if (food.id === of.id) food.allergens = to(food.allergens as Marks);
  const table: TableFood = (id) => {
    const food = tableFood(id);
    return food === undefined || of.kind !== 'table' || id !== of.id
      ? food
      : { ...food, allergens: to(food.allergens as Marks) };
  };
  return { held: next, table };
}

eachStore('the allergen matrix of the demo kitchen', (making) => {
  let held: Pantry;
  beforeAll(async () => {
    const store = await making.fresh();
    const app: App = {
      store,
      engine: engineOver(async (task) => perform(task)),
      version: '0.1.0',
      now: () => new Date('2026-11-25T15:00:00Z'),
    };
    const kitchen = await layDemoIfEmpty(app, demoKitchen);
    held = await pantry(app, kitchen!.id);
  });

  const each = (visit: (dish: PantryDish, index: number) => void) => {
    let lines = 0;
    for (const dish of held.dishes)
      dish.lines.forEach((line, index) => {
        if (!(line.g > 0) || lineOf(line)?.kind === 'dish') return;
        lines += 1;
        visit(dish, index);
      });
    expect(lines).toBeGreaterThan(20);
  };

  it('an allergen added to any ingredient stands in the row, and in the rows of the dishes above', () => {
    each((dish, index) => {
      const now = changed(held, dish, index, (was) => [...(was ?? []), { allergen: 'lupin' }]);
      expect(wordOf(rowOf(dish, held), 'lupin')).not.toBe('yes');
      const users = held.dishes.filter((d) => d.lines.some((l) => l.g > 0 && lineOf(l)?.id === dish.id));
      for (const d of [dish, ...users])
        expect(
          wordOf(rowOf(d, now.held, now.table), 'lupin'),
          `${d.name}: ${dish.lines[index]!.ingredient}`,
        ).toBe('yes');
    });
  });

  it('an ingredient of which nobody has said anything leaves no cell at no or may', () => {
    each((dish, index) => {
      // What a line says of itself is said.
      if (lineOf(dish.lines[index]!) !== null && (dish.lines[index]!.allergens ?? []).length > 0) return;
      const now = changed(held, dish, index, () => null);
      const words = rowOf(dish, now.held, now.table).cells.map((c) => c.word);
      expect(words.filter((w) => w === 'no' || w === 'may')).toEqual([]);
      expect(words).toContain('not known');
    });
  });

  it('an ingredient that was put away leaves no cell at no', () => {
    each((dish, index) => {
      const of = lineOf(dish.lines[index]!);
      if (of?.kind !== 'ingredient') return;
      const next = structuredClone(held);
      for (const i of next.ingredients) if (i.id === of.id) i.putAway = true;
      expect(rowOf(dish, next).cells.map((c) => c.word)).not.toContain('no');
    });
  });

  it('some dish of the demo is known through and through', () => {
    const rows = held.dishes.map((d) => rowOf(d, held));
    expect(rows.some((r) => r.ask.length === 0 && r.cells.some((c) => c.word === 'no'))).toBe(true);
  });
});
