import {
  type Component,
  type Composition,
  componentConductivity,
  componentDensity,
  componentHeat,
  density,
  normalised,
  specificHeat,
} from '../src/core/properties/food-components.ts';
import { conductivity, kopelman, levy, maxwellEucken } from '../src/core/properties/mixture-conductivity.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const python = kept('properties');
const mix = (water: number, protein: number, fat: number, carbohydrate: number, ash: number): Composition =>
  normalised({ water, protein, fat, carbohydrate, fibre: 0, ash });
const foods = {
  breast: mix(0.7426, 0.22054, 0.02568, 0, 0.01117),
  skin: mix(0.54052, 0.13289, 0.3225, 0, 0.00409),
  mousse: mix(0.67833, 0.12884, 0.16253, 0.01204, 0.01826),
};
const temperatures = [-20, 5, 20, 65, 100];

export const example: Example = {
  title: 'Thermal properties of meat from its composition',
  story: `A handbook gives conductivity, density and specific heat of each component of food as a function of temperature, and rules by
which they add up. The components at five temperatures, a lean breast, a fatty skin and a mousse at three were worked out again in
Python from the coefficients typed in anew. The handbook's own lamb, remembered, is met to its last figure.`,
  equation: 'k, rho, cp = a + b·T + c·T²;  cp = Σ x·cp;  rho = 1/Σ(x/rho);  k by Levy, Σ φ·k (parallel), …',
  sources: ['choi-okos-1986', 'ashrae-refrigeration-properties', 'levy-1981', 'eucken-1940', 'kopelman-1966'],
  run() {
    const rows: Row[] = [];
    const row = (
      quantity: string,
      source: string,
      expected: number,
      ours: number,
      unit: string,
      confidence: Row['confidence'] = 'computed',
    ) =>
      rows.push({
        quantity,
        source,
        confidence,
        expected,
        ours,
        tolerance: 1e-6 * Math.abs(expected),
        unit,
        why: 'the functions are polynomials: a millionth',
      });
    const names: readonly Component[] = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash', 'ice'];
    const largest = (of: (name: Component, C: number) => readonly [ours: number, theirs: number]) =>
      Math.max(
        ...names.flatMap((name) =>
          temperatures
            .filter((C) => name !== 'ice' || C < 0)
            .map((C) => {
              const [a, b] = of(name, C);
              return Math.abs(a / b - 1);
            }),
        ),
      );
    const relative = (quantity: string, ours: number) =>
      rows.push({
        quantity: `${quantity} of seven components, −20 to 100 °C: largest relative difference`,
        source: 'choi-okos-1986',
        confidence: 'computed',
        expected: 0,
        ours,
        tolerance: 1e-9,
        unit: '-',
        why: 'the same polynomials, typed in twice',
      });
    relative(
      'conductivity',
      largest((name, C) => [componentConductivity(name, C), python(`k ${name} ${C}`)]),
    );
    relative(
      'density',
      largest((name, C) => [componentDensity(name, C), python(`rho ${name} ${C}`)]),
    );
    relative(
      'specific heat',
      largest((name, C) => [componentHeat(name, C) / 1000, python(`cp ${name} ${C}`)]),
    );
    row(
      'fat at 65 °C, where a known misprint gives nothing',
      'choi-okos-1986',
      python('k fat 65'),
      componentConductivity('fat', 65),
      'W/(m K)',
    );
    const handbook = 'ashrae-refrigeration-properties';
    for (const [name, food] of Object.entries(foods))
      for (const C of [5, 20, 65]) {
        const of = (what: string) => python(`${name} ${C} ${what}`);
        row(`${name} at ${C} °C: density`, handbook, of('density'), density(food, C), 'kg/m³');
        row(
          `${name} at ${C} °C: specific heat`,
          handbook,
          of('heat'),
          specificHeat(food, C) / 1000,
          'kJ/(kg K)',
        );
        row(
          `${name} at ${C} °C: conductivity, parallel`,
          handbook,
          of('parallel'),
          conductivity(food, C, 'parallel'),
          'W/(m K)',
        );
        row(
          `${name} at ${C} °C: perpendicular`,
          handbook,
          of('perpendicular'),
          conductivity(food, C, 'perpendicular'),
          'W/(m K)',
        );
        row(
          `${name} at ${C} °C: Maxwell–Eucken`,
          'eucken-1940',
          of('eucken'),
          conductivity(food, C, 'maxwell-eucken'),
          'W/(m K)',
        );
        row(
          `${name} at ${C} °C: Levy, the engine’s rule`,
          'levy-1981',
          of('levy'),
          conductivity(food, C),
          'W/(m K)',
          'memory',
        );
      }
    row(
      'two phases, 0.6 and 0.18 at 0.7: Levy',
      'levy-1981',
      python('levy spot'),
      levy(0.6, 0.18, 0.7),
      'W/(m K)',
      'memory',
    );
    row(
      'the same: Maxwell–Eucken',
      'eucken-1940',
      python('eucken spot'),
      maxwellEucken(0.6, 0.18, 0.3),
      'W/(m K)',
    );
    row(
      'the same: Kopelman',
      'kopelman-1966',
      python('kopelman spot'),
      kopelman(0.6, 0.18, 0.3),
      'W/(m K)',
      'memory',
    );
    const lamb = { water: 0.7342, protein: 0.2029, fat: 0.0525, carbohydrate: 0, fibre: 0, ash: 0.0106 };
    rows.push(
      {
        quantity: 'the handbook’s lamb at 5 °C',
        source: handbook,
        confidence: 'memory',
        expected: 3.59,
        ours: specificHeat(lamb, 5) / 1000,
        tolerance: 0.005,
        unit: 'kJ/(kg K)',
        why: 'printed to two decimals',
      },
      {
        quantity: 'heat out of 150 kg of it, 10 to 0 °C',
        source: handbook,
        confidence: 'memory',
        expected: 5385,
        ours: (150 * 10 * specificHeat(lamb, 5)) / 1000,
        tolerance: 8,
        unit: 'kJ',
        why: 'the handbook multiplies its rounded 3.59',
      },
    );
    return rows;
  },
};
