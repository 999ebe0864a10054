import { cook } from '../src/core/heat/cook.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const elements = kept('finite-elements');
const profile = [
  { at: 0, diameter: 0.036 },
  { at: 0.1, diameter: 0.058 },
  { at: 0.16, diameter: 0.05 },
];
const stages = [
  { name: 'steam', medium: 100, h: 1000, s: 1500 },
  { name: 'ice water', medium: 1, h: 400, s: 1500 },
];
const places = [
  { name: 'middle', at: 0.1, radius: 0 },
  { name: 'half way out', at: 0.1, radius: 0.013 },
  { name: 'under the skin', at: 0.1, radius: 0.026 },
  { name: 'thin end', at: 0.02, radius: 0 },
  { name: 'thick end', at: 0.15, radius: 0.01 },
];
const times = [60, 300, 600, 900, 1200, 1500, 1560, 1800, 2100, 2400, 3000];

export const example: Example = {
  title: 'A tapered body in its skin, by another method altogether',
  story: `No series describes a tapered piece in a skin. So the same case, with constant properties, was solved by a separate program that shares
nothing with the engine: linear triangles with a consistent mass matrix, fixed steps of another scheme, scipy's sparse LU.`,
  equation: '∫ ρ·cp·∂T/∂t·v r dA + ∫ k·grad T·grad v r dA + ∫ h·(T − T_medium)·v r ds = 0',
  sources: ['own-computation'],
  run(): Row[] {
    const { readings } = cook(
      {
        body: {
          shape: 'revolved',
          profile,
          layers: [
            { name: 'skin', thickness: 0.003, material: { properties: { k: 0.36, rho: 1000, cp: 3190 } } },
            { name: 'core', material: { properties: { k: 0.5, rho: 1030, cp: 3480 } } },
          ],
        },
        start: 4,
        stages: stages.map(({ s, ...stage }) => ({ ...stage, until: { kind: 'time', s } })),
        target: { reference: 70, z: 7.5, s: 120 },
        probes: places.map(({ name, at, radius }) => ({ name, place: { at, radius } })),
      },
      { at: times },
    );
    return places.map(({ name, at, radius }, q) => ({
      quantity: `${name} (${at * 1000} mm along, ${radius * 1000} mm from the axis): largest difference at ${times.length} times`,
      source: 'own-computation',
      confidence: 'computed',
      expected: 0,
      ours: Math.max(
        ...times.map((t, i) => Math.abs((readings?.[q]?.[i] ?? Number.NaN) - elements(`${name} ${t} s`))),
      ),
      tolerance: 0.15,
      unit: 'K',
      why: 'a tenth of a degree for the engine, and what the other program leaves',
    }));
  },
};
