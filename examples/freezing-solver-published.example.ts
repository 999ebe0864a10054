import { cook } from '../src/core/heat/cook.ts';
import { freezingTimePham, freezingTimePlank } from '../src/core/heat/freezing-time.ts';
import type { Simple } from '../src/core/heat/series.ts';
import { density, normalised, specificHeat } from '../src/core/properties/food-components.ts';
import { frozenHeat, heatOfMelting } from '../src/core/properties/freezing.ts';
import { freezingFood } from '../src/core/properties/freezing-food.ts';
import { freezingFoodNamed } from '../src/core/properties/freezing-points.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';
import { marchSharp, type SharpIce } from './sharp-ice.ts';

type Piece = readonly [shape: Simple, half: number, h: number, start: number, end: number, medium: number];

/** Time by the engine and by Pham's equation with the same piece, both from composition. */
function both(food: string, [shape, half, h, start, end, medium]: Piece) {
  const { composition, freezing } = freezingFoodNamed(food);
  const sum = Object.values(composition).reduce((a, x) => a + x, 0);
  const { water, protein, fat, carbohydrate, ash } = composition;
  const whole = normalised({
    water: water / sum,
    protein: protein / sum,
    fat: fat / sum,
    carbohydrate: carbohydrate / sum,
    fibre: 0,
    ash: ash / sum,
  });
  const ice = freezingFood(whole, freezing);
  const layers = [{ name: food, material: { composition: whole }, freezing }];
  const engine = cook({
    body: shape === 'slab' ? { shape, thickness: 2 * half, layers } : { shape, diameter: 2 * half, layers },
    start,
    stages: [{ name: 'freezer', medium, h, until: { kind: 'warmest', C: end, atMost: 5 * 86_400 } }],
    target: { reference: 70, z: 7.5, s: 120 },
  }).stages[0]?.end;
  const pham = freezingTimePham({
    shape,
    half,
    h,
    k: ice.conductivity(-20),
    unfrozenDensity: density(whole, 5),
    unfrozenHeat: specificHeat(whole, 5),
    frozenDensity: density(whole, freezing),
    frozenHeat: frozenHeat(whole, -20),
    latent: ice.ice(end) * heatOfMelting,
    start,
    end,
    medium,
  });
  return { engine: engine ?? Number.NaN, pham };
}

const pieces: readonly (readonly [food: string, piece: Piece])[] = [
  ['lamb, lean', ['slab', 0.02, 30, 5, -18, -35]],
  ['lamb, lean', ['cylinder', 0.02, 30, 5, -18, -35]],
  ['lamb, lean', ['sphere', 0.02, 30, 5, -18, -35]],
  ['lamb, lean', ['slab', 0.04, 15, 10, -10, -30]],
  ['lamb, lean', ['cylinder', 0.04, 60, 10, -18, -30]],
  ['lamb, lean', ['sphere', 0.05, 25, 20, -18, -40]],
  ['pork shoulder, lean', ['slab', 0.03, 40, 4, -18, -35]],
  ['pork shoulder, lean', ['cylinder', 0.055, 25, 4, -18, -30]],
  ['cod', ['cylinder', 0.055, 25, 4, -18, -30]],
];

/** A textbook's meat: everything constant, all ice at −1 °C. */
const textbook: SharpIce = {
  freezing: -1,
  latent: 210e3,
  rho: 1050,
  frozen: { k: 1.5, cp: 2000 },
  unfrozen: { k: 0.5, cp: 3600 },
};
/** Plank's: no heat but that of the ice. */
const plank: SharpIce = {
  freezing: -1.25,
  latent: 250e3,
  rho: 1000,
  frozen: { k: 1.2, cp: 20 },
  unfrozen: { k: 0.5, cp: 20 },
};
const deep = 0.2;

export const example: Example = {
  title: 'The engine’s freezing against the published equations',
  story: `Three kinds. A front in half a space, whose speed and heat are known exactly (Neumann). Plank's slab, cylinder and sphere, in which nothing but
ice takes heat: his formula is exact there. And meat from fresh to −18 °C by Pham's equation, which its author puts at some ten per cent of measured times.`,
  equation:
    'e^(−λ²)/erf λ + … = λ√π·L/(c·ΔT);  t = ρL/ΔT·(P·a/h + R·a²/k);  t = d/(E·h)·(ΔH1/ΔT1 + ΔH2/ΔT2)(1 + Bi/2)',
  sources: ['carslaw-jaeger-1959', 'plank-1913', 'pham-1986', 'own-computation'],
  run() {
    const other = kept('freezing');
    const front = (name: string, start: number, wall: number): Row[] => {
      const r = marchSharp(textbook, 'slab', deep, 1e5, start, wall, { s: 3600 });
      const grown = wall < textbook.freezing ? r.ice : 1 - r.ice;
      const row = (quantity: string, expected: number, ours: number, unit: string, of: number): Row => ({
        quantity,
        source: 'carslaw-jaeger-1959',
        confidence: 'computed',
        expected,
        ours,
        tolerance: of * expected,
        unit,
        why: 'ours forms over a twentieth of a kelvin, in cells of 1 mm and more at the front; the wall is a coefficient of 100 000',
      });
      const deepest = other(`${name} front`);
      const heat = other(`${name} heat`);
      return [
        row(
          `a wall at ${wall} °C, meat at ${start.toFixed(0)} °C: depth of the front after an hour`,
          deepest,
          1e3 * deep * grown,
          'mm',
          0.02,
        ),
        row('heat through the wall', heat, Math.abs(r.heat) / 2e6, 'MJ/m²', 0.01),
      ];
    };
    const bare = (shape: Simple): Row => {
      const expected = freezingTimePlank({
        shape,
        half: 0.035,
        h: 50,
        k: 1.2,
        density: 1000,
        latent: 250e3,
        freezing: -1.25,
        medium: -40,
      });
      return {
        quantity: `${shape} of 70 mm at its first ice in air at −40 °C, all frozen`,
        source: 'plank-1913',
        confidence: 'memory',
        expected,
        ours: marchSharp(plank, shape, 0.035, 50, -1.25 + 1e-6, -40, { warmest: -1.3 }).s,
        tolerance: 0.01 * expected,
        unit: 's',
        why: 'where nothing but ice takes heat Plank’s formula is exact; ours counts a little heat beside it, and forms over a twentieth of a kelvin',
      };
    };
    return [
      ...front('at the first ice', -1 + 1e-6, -30),
      ...front('from 10 C', 10, -30),
      ...front('thawing', -20, 20),
      bare('slab'),
      bare('cylinder'),
      bare('sphere'),
      ...pieces.map(([food, piece]): Row => {
        const { engine, pham } = both(food, piece);
        const [shape, half, h, start, end, medium] = piece;
        return {
          quantity: `${food}: ${shape} of ${2000 * half} mm from ${start} to ${end} °C in air at ${medium} °C, h ${h}`,
          source: 'pham-1986',
          confidence: 'memory',
          expected: pham,
          ours: engine,
          tolerance: 0.1 * pham,
          unit: 's',
          why: 'a hand method with one conductivity and one mean freezing point; some ten per cent is what its author gives, as remembered. Latent heat: of the ice there is at the end',
        };
      }),
    ];
  },
};
