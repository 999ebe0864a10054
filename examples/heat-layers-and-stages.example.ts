import { cook } from '../src/core/heat/cook.ts';
import type { Body, Place, Stage } from '../src/core/heat/types.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const scipy = kept('conduction');
const core = { k: 0.48, rho: 1020, cp: 3470 };
const skin = { k: 0.36, rho: 1000, cp: 3190 };
const food = { k: 0.48, rho: 1050, cp: 3500 };

const filled: Body = {
  shape: 'cylinder',
  diameter: 0.035,
  layers: [
    { name: 'skin', thickness: 0.0025, material: { properties: skin } },
    { name: 'core', material: { properties: core } },
  ],
};
const plain: Body = {
  shape: 'cylinder',
  diameter: 0.04,
  layers: [{ name: 'food', material: { properties: food } }],
};
const stage = (medium: number, h: number, s: number): Stage => ({
  name: `${medium} °C`,
  medium,
  h,
  until: { kind: 'time', s },
});

/** Temperatures at places, by time [°C]; with them the mean over the piece at the end of each stage. */
function run(body: Body, stages: readonly Stage[], places: readonly Place[], at: readonly number[]) {
  const result = cook(
    {
      body,
      start: 5,
      stages,
      target: { reference: 70, z: 7.5, s: 120 },
      probes: places.map((place, i) => ({ name: String(i), place })),
    },
    { at },
  );
  return { C: result.readings ?? [], means: result.stages.map((s) => s.mean) };
}

export const example: Example = {
  title: 'A filling in its skin; a piece moved from steam to air to ice',
  story: `Two problems with exact solutions that a kitchen meets every day: a cylinder of filling inside a skin that conducts less, in strong
and in weak steam; and a cylinder steamed for 15 min, left standing for 2, then put into ice water, whose middle goes on heating by almost
6 °C after it is lifted out. The expected temperatures were worked out with scipy.`,
  equation:
    'eigenfunctions matched at the interface; each stage’s start projected on the modes of that stage',
  sources: ['carslaw-jaeger-1959'],
  run() {
    const rows: Row[] = [];
    const push = (quantity: string, expected: number, ours = Number.NaN) =>
      rows.push({
        quantity,
        source: 'carslaw-jaeger-1959',
        confidence: 'computed',
        expected,
        ours,
        tolerance: 0.05,
        unit: '°C',
        why: 'half of the last figure that is printed',
      });
    const radii = [0, 0.01, 0.015, 0.0175];
    const names = ['middle', '10 mm', 'under the skin', 'surface'];
    for (const [h, times] of [
      [1000, [60, 120, 300, 600, 900]],
      [100, [300, 600, 1200]],
    ] as const) {
      const last = times.at(-1) ?? 0;
      const { C, means } = run(
        filled,
        [stage(100, h, last)],
        radii.map((radius) => ({ radius })),
        times,
      );
      times.forEach((t, i) => {
        names.forEach((name, q) => {
          push(
            `skin and filling, h ${h}, ${t} s: ${name}`,
            scipy(`layered h ${h} ${t} s ${name}`),
            C[q]?.[i],
          );
        });
      });
      push(`skin and filling, h ${h}, ${last} s: mean`, scipy(`layered h ${h} ${last} s mean`), means[0]);
    }
    const capacity =
      Math.PI * (core.rho * core.cp * 0.015 ** 2 + skin.rho * skin.cp * (0.0175 ** 2 - 0.015 ** 2));
    for (const t of [300, 600]) {
      const { history } = cook({
        body: filled,
        start: 5,
        stages: [stage(100, 1000, t)],
        target: { reference: 70, z: 7.5, s: 120 },
      });
      push(
        `skin and filling, h 1000, ${t} s: mean by the heat it holds`,
        scipy(`layered h 1000 ${t} s mean of the heat`),
        5 + (history.heat.at(-1) ?? Number.NaN) / capacity,
      );
    }
    const times = [300, 600, 900, 960, 1020, 1420, 1820, 2220];
    const places = ['centre', 'half', 'surface'];
    const moved = run(
      plain,
      [stage(100, 1000, 900), stage(20, 10, 120), stage(0, 300, 1200)],
      [0, 0.01, 0.02].map((radius) => ({ radius })),
      times,
    );
    times.forEach((t, i) => {
      places.forEach((name, q) => {
        push(`steam, air, ice: ${t} s, ${name}`, scipy(`staged ${t} s ${name}`), moved.C[q]?.[i]);
      });
    });
    [900, 1020, 2220].forEach((t, i) => {
      push(`steam, air, ice: ${t} s, mean`, scipy(`staged ${t} s mean`), moved.means[i]);
    });
    return rows;
  },
};
