import { freezingTimePham, freezingTimePlank } from '../src/core/heat/freezing-time.ts';
import type { Simple } from '../src/core/heat/series.ts';
import { density } from '../src/core/properties/food-components.ts';
import {
  apparentHeatChen,
  enthalpy,
  frozenHeat,
  heatOfMelting,
  iceFraction,
} from '../src/core/properties/freezing.ts';
import { frozenConductivity, frozenDensity } from '../src/core/properties/freezing-mixture.ts';
import { freezingFoodNamed } from '../src/core/properties/freezing-points.ts';
import { conductivity } from '../src/core/properties/mixture-conductivity.ts';
import type { Example, Row } from './case.ts';

const { composition: lamb, freezing, latent: allWater } = freezingFoodNamed('lamb, lean');
const [start, end, medium] = [5, -18, -35];
const iceAt = (C: number) => iceFraction(lamb, freezing, C);
const rho = frozenDensity(lamb, iceAt(-20), -20);

/** Temperature and conductivity against the heat in the lamb, every fiftieth of a degree. */
const table = Array.from({ length: 2251 }, (_, i) => {
  const C = -40 + i / 50;
  return {
    C,
    heat: enthalpy(lamb, freezing, C),
    k: C < freezing ? frozenConductivity(lamb, iceAt(C), C) : conductivity(lamb, Math.max(0, C)),
  };
});

function at(heat: number): { C: number; k: number } {
  let low = 0;
  let high = table.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (table[middle]!.heat <= heat) low = middle;
    else high = middle;
  }
  const a = table[low]!;
  const b = table[high]!;
  const share = (heat - a.heat) / (b.heat - a.heat);
  return { C: a.C + share * (b.C - a.C), k: a.k + share * (b.k - a.k) };
}

/** Time until the innermost cell is at `end` [s]: heat carried from cell to cell in small steps. */
function stepped(shape: Simple, half: number, h: number, cells: number): number {
  const power = { slab: 0, cylinder: 1, sphere: 2 }[shape];
  const dx = half / cells;
  const area = Array.from({ length: cells + 1 }, (_, i) => (i * dx) ** power);
  const volume = Array.from(
    { length: cells },
    (_, i) => (((i + 1) * dx) ** (power + 1) - (i * dx) ** (power + 1)) / (power + 1),
  );
  const heat = new Array<number>(cells).fill(enthalpy(lamb, freezing, start));
  const dt = (0.2 * dx * dx * rho * 1900) / 1.6;
  for (let step = 0; step < 2e6; step++) {
    const now = heat.map(at);
    if (now[0]!.C <= end) return step * dt;
    for (let i = 0; i < cells; i++) {
      const here = now[i]!;
      const next = now[i + 1];
      const flow =
        next === undefined
          ? (area[i + 1]! * (here.C - medium)) / (1 / h + dx / (2 * here.k))
          : (area[i + 1]! * (here.C - next.C)) / (dx / (2 * here.k) + dx / (2 * next.k));
      heat[i]! -= (flow * dt) / (rho * volume[i]!);
      if (next !== undefined) heat[i + 1]! += (flow * dt) / (rho * volume[i + 1]!);
    }
  }
  return Number.NaN;
}

function pham(shape: Simple, half: number, h: number, latent = iceAt(end) * heatOfMelting): number {
  return freezingTimePham({
    shape,
    half,
    h,
    k: frozenConductivity(lamb, iceAt(-20), -20),
    unfrozenDensity: density(lamb, start),
    unfrozenHeat: apparentHeatChen(lamb, freezing, start),
    frozenDensity: rho,
    frozenHeat: frozenHeat(lamb, -20),
    latent,
    start,
    end,
    medium,
  });
}

export const example: Example = {
  title: 'Freezing time: a hand method against a computation step by step',
  story: `Lean lamb from 5 to −18 °C in its middle, in air at −35 °C. Pham's equation needs one line; beside it the same piece is
computed cell by cell with Chen's heat and Levy's conductivity at every temperature. They share the lamb, not the method. Plank's
time, which leaves out the cooling before and after, stands below both.`,
  equation: 't = d/(E·h)·(ΔH1/ΔT1 + ΔH2/ΔT2)(1 + Bi/2)  against  ρ·∂H/∂t = div(k(T)·grad T)',
  sources: ['pham-1986', 'plank-1913', 'chen-1985', 'levy-1981'],
  run() {
    const cases: readonly (readonly [Simple, number, number])[] = [
      ['slab', 0.02, 30],
      ['cylinder', 0.02, 30],
      ['sphere', 0.02, 30],
      ['slab', 0.04, 15],
      ['cylinder', 0.04, 60],
    ];
    const rows = cases.map(([shape, half, h]): Row => {
      const computed = stepped(shape, half, h, 20);
      return {
        quantity: `${shape}, half ${half * 1000} mm, h ${h}: Pham against the computation`,
        source: 'own-computation',
        confidence: 'computed',
        expected: computed,
        ours: pham(shape, half, h),
        tolerance: 0.1 * computed,
        unit: 's',
        why: 'a hand method with one conductivity and one mean freezing point; some ten per cent is what its author gives, as remembered',
      };
    });
    const fine = stepped('cylinder', 0.02, 30, 40);
    const plank = freezingTimePlank({
      shape: 'cylinder',
      half: 0.02,
      h: 30,
      k: frozenConductivity(lamb, iceAt(-20), -20),
      density: rho,
      latent: iceAt(end) * heatOfMelting,
      freezing,
      medium,
    });
    return [
      ...rows,
      {
        quantity: 'cylinder, half 20 mm, h 30: 20 cells against 40',
        source: 'own-computation',
        confidence: 'computed',
        expected: fine,
        ours: stepped('cylinder', 0.02, 30, 20),
        tolerance: 0.01 * fine,
        unit: 's',
        why: 'twice the cells change it by less than a hundredth',
      },
      {
        quantity:
          'the same by Pham with the heat of all its water, as a textbook takes it: longer by a quarter',
        source: 'own-computation',
        confidence: 'computed',
        expected: { low: 1.2 * fine, high: 1.35 * fine },
        ours: pham('cylinder', 0.02, 30, allWater * 1000),
        tolerance: 0,
        unit: 's',
        why: 'a tenth of the water is held by protein and a tenth of the rest is not yet ice at the end',
      },
      {
        quantity: 'the same by Plank: below the computation, above half of it',
        source: 'own-computation',
        confidence: 'computed',
        expected: { low: 0.5 * fine, high: fine },
        ours: plank,
        tolerance: 0,
        unit: 's',
        why: 'Plank leaves out all heat but that of the ice',
      },
    ];
  },
};
