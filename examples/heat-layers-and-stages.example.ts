import { cook } from '../src/core/heat/cook.ts';
import { layeredCylinder, stagedCylinder } from '../src/core/heat/series-composite.ts';
import type { CookResult } from '../src/core/heat/types.ts';
import type { Example, Row } from './case.ts';

const target = { reference: 70, z: 7.5, s: 120 };

/** Straight lines between the points of the history. */
function probeAt(result: CookResult, probe: number, when: number): number {
  const { t } = result.history;
  const C = result.probes[probe]?.C ?? new Float64Array();
  let i = 0;
  while (i + 2 < t.length && (t[i + 1] ?? 0) <= when) i++;
  const [t0, t1, a, b] = [t[i] ?? 0, t[i + 1] ?? 0, C[i] ?? Number.NaN, C[i + 1] ?? Number.NaN];
  return a + ((when - t0) / (t1 - t0)) * (b - a);
}

export const example: Example = {
  title: 'A filling in its skin; a piece moved from steam to air to ice',
  story: `Two problems with exact solutions that a kitchen meets every day: a cylinder of filling inside a skin that conducts less, in
steam; and a cylinder steamed for 15 min, left standing for 2, then put into ice water, whose middle goes on heating after it is lifted out.`,
  equation:
    'eigenfunctions matched at the interface; each stage’s start projected on the modes of that stage',
  sources: ['carslaw-jaeger-1959'],
  run() {
    const rows: Row[] = [];
    const push = (quantity: string, expected: number, ours: number) =>
      rows.push({
        quantity,
        source: 'carslaw-jaeger-1959',
        confidence: 'computed',
        expected,
        ours,
        tolerance: 0.1,
        unit: '°C',
        why: 'answers are printed to a tenth of a degree',
      });
    const core = { k: 0.48, rho: 1020, cp: 3470 };
    const skin = { k: 0.36, rho: 1000, cp: 3190 };
    const r = [0, 0.015, 0.0175];
    const names = ['middle', 'under the skin', 'surface'];
    const layered = cook({
      body: {
        shape: 'cylinder',
        diameter: 0.035,
        layers: [
          { name: 'skin', thickness: 0.0025, material: { properties: skin } },
          { name: 'core', material: { properties: core } },
        ],
      },
      start: 5,
      stages: [{ name: 'steam', medium: 100, h: 1000, until: { kind: 'time', s: 900 } }],
      target,
      probes: r.map((radius, i) => ({ name: names[i] ?? '', place: { radius } })),
    });
    for (const t of [60, 300, 600, 900])
      layeredCylinder(0.015, 0.0175, core, skin, 1000, 100, 5, t, r).forEach((C, q) => {
        push(`skin and filling, ${t} s, ${names[q]}`, C, probeAt(layered, q, t));
      });
    const food = { k: 0.48, rho: 1050, cp: 3500 };
    const stages = [
      { s: 900, medium: 100, h: 1000 },
      { s: 120, medium: 20, h: 10 },
      { s: 1200, medium: 0, h: 300 },
    ];
    const moved = cook({
      body: { shape: 'cylinder', diameter: 0.04, layers: [{ name: 'food', material: { properties: food } }] },
      start: 5,
      stages: stages.map((s, i) => ({
        name: String(i),
        medium: s.medium,
        h: s.h,
        until: { kind: 'time', s: s.s },
      })),
      target,
      probes: [0, 0.02].map((radius) => ({ name: String(radius), place: { radius } })),
    });
    for (const t of [900, 960, 1020, 1420, 2220])
      stagedCylinder(0.02, food, 5, stages, t, [0, 1]).forEach((C, q) => {
        push(`steam, air, ice: ${t} s, ${q === 0 ? 'middle' : 'surface'}`, C, probeAt(moved, q, t));
      });
    return rows;
  },
};
