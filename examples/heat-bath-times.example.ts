import { cook } from '../src/core/heat/cook.ts';
import type { Example, Row } from './case.ts';

/** Lean breast. The table names no food. */
const breast = { water: 0.7426, protein: 0.22054, fat: 0.02568, carbohydrate: 0, fibre: 0, ash: 0.01118 };
/** Diameter [mm], time [min]. */
const remembered = [
  [20, 30],
  [30, 50],
  [40, 75],
  [50, 120],
  [60, 150],
] as const;
const bath = 60;
/** The lowest that was used for food in pouches [W/(m² K)]. */
const h = 95;

function minutes(mm: number): number {
  const { stages } = cook({
    body: {
      shape: 'cylinder',
      diameter: mm / 1000,
      layers: [{ name: 'meat', material: { composition: breast } }],
    },
    start: 5,
    stages: [{ name: 'bath', medium: bath, h, until: { kind: 'coldest', C: bath - 0.5 } }],
    target: { reference: 60, z: 7.5, s: 120 },
  });
  return (stages[0]?.end ?? Number.NaN) / 60;
}

export const example: Example = {
  title: 'Heating times of a table for baths, as remembered',
  story: `A review of cooking in pouches has a table of times by thickness, from 5 °C until the middle is half a degree below the bath. It is only remembered, is rounded,
and we do not know its food nor its bath, so that it proves little; ours, for breast at 60 °C with the weakest of the bath's published coefficients, are all
shorter, by up to a sixth. Half a degree below a bath says nothing of safety: only time at temperature does.`,
  equation: 'ρ·cp·∂T/∂t = div(k·grad T), −k·∂T/∂n = h·(T − T_bath)',
  sources: ['baldwin-2012', 'choi-okos-1986'],
  run(): Row[] {
    return remembered.map(([mm, min]) => ({
      quantity: `roll of ${mm} mm, 5 °C to half a degree below the bath`,
      source: 'baldwin-2012',
      confidence: 'memory',
      expected: min,
      ours: minutes(mm),
      tolerance: 0.2 * min,
      unit: 'min',
      why: 'rounded to 5 or 30 min, of another food, at another bath: a fifth',
    }));
  },
};
