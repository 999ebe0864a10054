import { cook } from '../src/core/heat/cook.ts';
import { layeredCylinder } from '../src/core/heat/series-composite.ts';
import type { CookProblem } from '../src/core/heat/types.ts';
import type { Example, Row } from './case.ts';

const skin = { water: 0.6, protein: 0.15, fat: 0.24, carbohydrate: 0, fibre: 0, ash: 0.01 };
const filling = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };

const tapered: CookProblem = {
  body: {
    shape: 'revolved',
    profile: [
      { at: 0, diameter: 0.04 },
      { at: 0.115, diameter: 0.056 },
      { at: 0.17, diameter: 0.05 },
    ],
    layers: [
      { name: 'skin', thickness: 0.003, material: { composition: skin } },
      { name: 'filling', material: { composition: filling } },
    ],
  },
  start: 4,
  stages: [{ name: 'steam', medium: 100, h: 1000, until: { kind: 'time', s: 900 } }],
  target: { reference: 70, z: 7.5, s: 120 },
  probes: [{ name: 'middle', place: { at: 0.115, radius: 0 } }],
};

export const example: Example = {
  title: 'How fast the mesh converges',
  story: `The same question on three meshes, each with twice the lines of the one before. In a tapered body of two layers with properties that follow
temperature nothing exact is known, so the order is read from the differences; in the layered cylinder it is read from the error itself.`,
  equation: 'order = log2(|T2 − T1|/|T4 − T2|), and log2(error1/error2)',
  sources: ['own-computation'],
  run(): Row[] {
    const values = [1, 2, 4].map((refine) => {
      const r = cook(tapered, { mode: 'coarse', refine, tolerance: 0.002 });
      return r.probes[0]?.C.at(-1) ?? Number.NaN;
    });
    const [a = Number.NaN, b = Number.NaN, c = Number.NaN] = values;
    const core = { k: 0.48, rho: 1020, cp: 3470 };
    const outer = { k: 0.36, rho: 1000, cp: 3190 };
    const exact = layeredCylinder(0.025, 0.028, core, outer, 1000, 100, 5, 900, [0])[0] ?? Number.NaN;
    const errors = [0.25, 0.5, 1].map((refine) => {
      const r = cook(
        {
          ...tapered,
          start: 5,
          probes: [],
          body: {
            shape: 'cylinder',
            diameter: 0.056,
            layers: [
              { name: 'skin', thickness: 0.003, material: { properties: outer } },
              { name: 'core', material: { properties: core } },
            ],
          },
        },
        { refine, tolerance: 2e-5 },
      );
      return Math.abs((r.history.coldSpot.at(-1) ?? Number.NaN) - exact);
    });
    const [e = Number.NaN, f = Number.NaN, g = Number.NaN] = errors;
    const order = (quantity: string, ours: number): Row => ({
      quantity,
      source: 'own-computation',
      confidence: 'computed',
      expected: { low: 1.8, high: 2.6 },
      ours,
      tolerance: 0,
      unit: '-',
      why: 'a scheme of second order; where lines fall moves it a little',
    });
    return [
      order('order in space, tapered body, middle at 15 min', Math.log2(Math.abs(b - a) / Math.abs(c - b))),
      order('order in space, layered cylinder, coarser pair', Math.log2(e / f)),
      order('order in space, layered cylinder, finer pair', Math.log2(f / g)),
    ];
  },
};
