import {
  componentConductivity,
  componentDensity,
  componentHeat,
  specificHeat,
} from '../src/core/properties/food-components.ts';
import { conductivity, levy } from '../src/core/properties/mixture-conductivity.ts';
import type { Example, Row } from './case.ts';

const exact = 'the functions are polynomials; the last printed figure';
const row = (
  quantity: string,
  expected: number,
  ours: number,
  tolerance: number,
  unit: string,
  source: string,
  confidence: Row['confidence'],
): Row => ({
  quantity,
  source,
  expected,
  ours,
  tolerance,
  unit,
  why: exact,
  confidence,
});

export const example: Example = {
  title: 'Thermal properties of meat from its composition',
  story: `A handbook gives conductivity, density and specific heat of each component of food as a function of temperature, and rules
by which they add up. We reproduce its components, its lamb, and a mixture rule; then ask how the rules compare with chicken as measured.`,
  equation: 'k, rho, cp = a + b·T + c·T²;  cp = Σ x·cp;  rho = 1/Σ(x/rho);  k = Σ φ·k (parallel), Levy, …',
  sources: ['choi-okos-1986', 'ashrae-refrigeration-properties', 'levy-1981', 'sweat-haugh-stadelman-1973'],
  run() {
    const lamb = { water: 0.7342, protein: 0.2029, fat: 0.0525, carbohydrate: 0, fibre: 0, ash: 0.0106 };
    const breast = { water: 0.7426, protein: 0.22054, fat: 0.02568, carbohydrate: 0, fibre: 0, ash: 0.01117 };
    return [
      row(
        'fat at 65 °C',
        0.162018,
        componentConductivity('fat', 65),
        1e-6,
        'W/(m K)',
        'choi-okos-1986',
        'computed',
      ),
      row(
        'water at 20 °C',
        0.603659,
        componentConductivity('water', 20),
        1e-6,
        'W/(m K)',
        'choi-okos-1986',
        'computed',
      ),
      row(
        'protein at 65 °C',
        1296.204,
        componentDensity('protein', 65),
        1e-3,
        'kg/m³',
        'choi-okos-1986',
        'computed',
      ),
      row(
        'carbohydrate at 20 °C',
        1585.674,
        componentHeat('carbohydrate', 20),
        1e-3,
        'J/(kg K)',
        'choi-okos-1986',
        'computed',
      ),
      row(
        'lamb at 5 °C',
        3.59,
        specificHeat(lamb, 5) / 1000,
        0.005,
        'kJ/(kg K)',
        'ashrae-refrigeration-properties',
        'memory',
      ),
      row(
        'Levy, 0.6 and 0.18 at 0.7',
        0.434624,
        levy(0.6, 0.18, 0.7),
        1e-6,
        'W/(m K)',
        'levy-1981',
        'memory',
      ),
      {
        quantity: 'white chicken meat at 20 °C, Levy',
        source: 'sweat-haugh-stadelman-1973',
        confidence: 'secondary',
        expected: 0.476 + 0.0006 * 20,
        ours: conductivity(breast, 20, 'levy'),
        tolerance: 0.02,
        unit: 'W/(m K)',
        why: 'measurements of meat scatter by a few per cent',
      },
      {
        quantity: 'white chicken meat at 20 °C, parallel (our default, the upper bound)',
        source: 'sweat-haugh-stadelman-1973',
        confidence: 'secondary',
        expected: 0.476 + 0.0006 * 20,
        ours: conductivity(breast, 20),
        tolerance: 0.04,
        unit: 'W/(m K)',
        why: 'an upper bound: 6 % above what was measured',
      },
    ];
  },
};
