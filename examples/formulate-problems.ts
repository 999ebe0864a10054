/** The random mixes of `independent/formulate.py` as the engine is asked them. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Nutrient } from '../src/core/filling/food.ts';
import { nutrients } from '../src/core/filling/food.ts';
import type { Choosable, Limit, MixProblem, Quantity } from '../src/core/filling/formulate-model.ts';
import { independent } from './kept.ts';

interface Asked {
  readonly foods: readonly {
    readonly nutrients: Readonly<Partial<Record<Nutrient, number>>>;
    readonly pricePerKg: number;
    readonly lowKg: number;
    readonly highKg: number;
    readonly stepKg?: number;
  }[];
  readonly totalKg: number;
  readonly limits: readonly {
    readonly of: 'fat' | 'protein' | 'salt' | 'water:protein' | 'share';
    readonly of_these?: readonly number[];
    readonly low?: number;
    readonly high?: number;
  }[];
  readonly least: 'cost' | 'fat' | 'salt';
}

const quantityOf = (l: Asked['limits'][number]): Quantity =>
  l.of === 'share'
    ? { of: 'share', ids: (l.of_these ?? []).map(String) }
    : l.of === 'water:protein'
      ? { of: 'ratio', over: 'water', under: 'protein' }
      : { of: 'nutrient', nutrient: l.of };

const mixOf = (asked: Asked): MixProblem => ({
  ingredients: asked.foods.map(
    (f, i): Choosable => ({
      id: String(i),
      name: `food ${i}`,
      per: {
        mass: 1,
        nutrients: Object.fromEntries(
          nutrients.map((n) => [n, { known: f.nutrients[n] ?? 0, unknown: 0 }]),
        ) as Choosable['per']['nutrients'],
        cost: { known: f.pricePerKg, unknown: 0 },
      },
      low: f.lowKg,
      high: f.highKg,
      now: 0,
      step: f.stepKg,
    }),
  ),
  limits: asked.limits.map(
    (l, i): Limit => ({
      id: String(i),
      name: `${l.of} ${i}`,
      quantity: quantityOf(l),
      low: l.low,
      high: l.high,
    }),
  ),
  total: { low: asked.totalKg, high: asked.totalKg },
  goals: [
    {
      make: 'least',
      quantity: asked.least === 'cost' ? { of: 'cost' } : { of: 'nutrient', nutrient: asked.least },
    },
  ],
});

export const keptMixes = (): MixProblem[] =>
  (JSON.parse(readFileSync(join(independent, 'formulate-problems.json'), 'utf8')) as Asked[]).map(mixOf);
