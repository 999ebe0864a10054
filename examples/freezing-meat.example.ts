import { freezingTimePham, freezingTimePlank } from '../src/core/heat/freezing-time.ts';
import { coolingOf, coolingTime } from '../src/core/heat/precooling.ts';
import {
  apparentHeatChen,
  apparentHeatSchwartzberg,
  enthalpy,
  frozenHeat,
  iceFraction,
  iceFractionChen,
  iceFractionTchigeov,
  solidsMolarMass,
} from '../src/core/properties/freezing.ts';
import { frozenConductivity, frozenDensity } from '../src/core/properties/freezing-mixture.ts';
import { freezingFoodNamed } from '../src/core/properties/freezing-points.ts';
import type { Example, Row } from './case.ts';
import {
  breast,
  measuredFrozenChicken,
  phamCylinder,
  plankSphere,
  printedFrozenHeats,
} from './freezing-problems.ts';
import { kept } from './kept.ts';

const [scipy, python] = [kept('conduction'), kept('freezing-equations')];

const row = (
  quantity: string,
  source: string,
  expected: number,
  ours: number,
  tolerance: number,
  unit: string,
  why: string,
  confidence: Row['confidence'] = 'memory',
): Row => ({ quantity, source, expected, ours, tolerance, unit, why, confidence });

const worked = 'worked out from the published equation';
const remembered = 'the handbook’s answer as remembered, to its figures';
const handbook = 'ashrae-refrigeration-properties';

export const example: Example = {
  title: 'Meat that freezes',
  story: `How much of the water of a piece is ice at −20 °C, how much heat has to be taken out to get there, how the frozen piece conducts,
and how long that takes. The handbook's beef, pork and chicken; white chicken as it was measured; a textbook's sphere; and two hand
methods side by side. Rows of the handbook's table are from memory.`,
  equation:
    'x_ice = (x_w − x_b)(1 − t_f/t);  H(t) of Chen;  rho = 1/Σ(x/rho);  t = d/(E·h)·(ΔH1/ΔT1 + ΔH2/ΔT2)(1 + Bi/2)',
  sources: [
    handbook,
    'miles-1974',
    'chen-1985',
    'schwartzberg-1981',
    'tchigeov-1979',
    'sweat-haugh-stadelman-1973',
    'plank-1913',
    'pham-1986',
    'ball-1923',
  ],
  run() {
    const beef = freezingFoodNamed('beef carcass').composition;
    const pork = freezingFoodNamed('pork shoulder, lean').composition;
    const bird = freezingFoodNamed('chicken').composition;
    const tchigeov = iceFractionTchigeov({ ...beef, water: 0.58 }, -1.7, -20).x;
    const ice = iceFractionTchigeov(pork, -2.2, -40).x;
    const chicken = (C: number) => {
      const measured = measuredFrozenChicken(C);
      return row(
        `white chicken at ${C} °C, conductivity by Levy, ice and unfrozen water as first phase`,
        'sweat-haugh-stadelman-1973',
        measured,
        frozenConductivity(breast, iceFraction(breast, -2, C), C),
        0.08 * measured,
        'W/(m K)',
        'measured; Levy is given as within 10 % for meat',
        'secondary',
      );
    };
    const ham = coolingOf(
      [0.051, 0.0825, 0.1395].map((half) => ({ shape: 'slab', half })),
      48,
      0.379,
      0.379 / (1080 * 3740),
    );
    return [
      row(
        'ice in beef at −20 °C, Tchigeov',
        'tchigeov-1979',
        python('beef ice -20 tchigeov'),
        tchigeov,
        1e-6,
        '',
        worked,
      ),
      row('the same as printed', handbook, 0.52, tchigeov, 0.005, '', remembered),
      row('ice in 150 kg of it', handbook, 78, 150 * tchigeov, 0.75, 'kg', `${remembered}, from 0.52`),
      row(
        'ice in chicken at −5 °C',
        'miles-1974',
        python('chicken ice -5'),
        iceFraction(bird, -2.8, -5),
        1e-5,
        '',
        worked,
      ),
      row(
        'ice in chicken at −20 °C',
        'miles-1974',
        python('chicken ice -20'),
        iceFraction(bird, -2.8, -20),
        1e-5,
        '',
        worked,
      ),
      row(
        'the same by Chen with the molar mass that fits its first ice',
        'chen-1985',
        python('chicken ice -20'),
        iceFractionChen(bird, -2.8, -20, solidsMolarMass(bird, -2.8)),
        1e-5,
        '',
        'then both are the same equation',
      ),
      row(
        'heat in chicken at −20 °C',
        'chen-1985',
        python('chicken heat -20'),
        enthalpy(bird, -2.8, -20) / 1000,
        1e-4,
        'kJ/kg',
        worked,
      ),
      row(
        'heat in chicken at its first ice',
        'chen-1985',
        255.2514,
        enthalpy(bird, -2.8, -2.8) / 1000,
        1e-4,
        'kJ/kg',
        worked,
      ),
      row(
        'apparent heat of chicken at −20 °C, Chen',
        'chen-1985',
        3.34579,
        apparentHeatChen(bird, -2.8, -20) / 1000,
        1e-5,
        'kJ/(kg K)',
        worked,
      ),
      ...(
        [
          [-20, 48.79277],
          [-1.7, 243.13358],
          [10, 280.37464],
        ] as const
      ).map(([C, heat]) =>
        row(
          `heat in beef at ${C} °C`,
          'chen-1985',
          heat,
          enthalpy(beef, -1.7, C) / 1000,
          1e-4,
          'kJ/kg',
          worked,
        ),
      ),
      row(
        'heat in chicken at 20 °C',
        'chen-1985',
        python('chicken heat 20'),
        enthalpy(bird, -2.8, 20) / 1000,
        1e-4,
        'kJ/kg',
        worked,
      ),
      row(
        'heat out of 150 kg of beef, 10 to −20 °C',
        handbook,
        34740,
        (150 * (enthalpy(beef, -1.7, 10) - enthalpy(beef, -1.7, -20))) / 1000,
        10,
        'kJ',
        remembered,
      ),
      row(
        'apparent heat of chicken at −5 °C, Chen',
        'chen-1985',
        python('chicken apparent -5'),
        apparentHeatChen(bird, -2.8, -5) / 1000,
        1e-4,
        'kJ/(kg K)',
        worked,
      ),
      row(
        'the same, Schwartzberg over Chen’s frozen heat',
        'schwartzberg-1981',
        python('chicken apparent -5'),
        apparentHeatSchwartzberg(bird, -2.8, -5, 1550 + 1260 * (1 - bird.water)) / 1000,
        1e-4,
        'kJ/(kg K)',
        'then both are the same equation',
      ),
      ...Object.entries(printedFrozenHeats).map(([name, kJ]) =>
        row(
          `${name}, frozen: specific heat`,
          handbook,
          kJ,
          frozenHeat(freezingFoodNamed(name).composition, -40) / 1000,
          0.06 * kJ,
          'kJ/(kg K)',
          'the handbook’s column as remembered; 6 % for the choice of bound water',
        ),
      ),
      row(
        'pork at −40 °C: ice',
        'tchigeov-1979',
        python('pork ice -40'),
        ice,
        7e-5,
        '',
        `${worked}, a little beyond his range`,
      ),
      row(
        'pork at −40 °C: density',
        handbook,
        python('pork density -40'),
        frozenDensity(pork, ice, -40),
        0.1,
        'kg/m³',
        worked,
      ),
      row(
        'pork at −40 °C: upper bound of conductivity',
        handbook,
        python('pork parallel -40'),
        frozenConductivity(pork, ice, -40, 'parallel'),
        2e-4,
        'W/(m K)',
        worked,
      ),
      row(
        'pork at −40 °C: lower bound',
        handbook,
        python('pork perpendicular -40'),
        frozenConductivity(pork, ice, -40, 'perpendicular'),
        5e-5,
        'W/(m K)',
        worked,
      ),
      chicken(-10),
      chicken(-20),
      chicken(-40),
      row(
        'sphere of 70 mm, Plank',
        'plank-1913',
        python('plank sphere'),
        freezingTimePlank(plankSphere),
        0.26,
        's',
        worked,
      ),
      row(
        'the same as printed',
        'singh-heldman',
        0.72,
        freezingTimePlank(plankSphere) / 3600,
        0.005,
        'h',
        'the book’s answer as remembered, to its figures',
      ),
      row(
        'cylinder of 40 mm from 5 to −18 °C, Pham',
        'pham-1986',
        python('pham cylinder'),
        freezingTimePham(phamCylinder),
        0.39,
        's',
        worked,
      ),
      row(
        'short cylinder of 40 × 120 mm, surface at the medium: f',
        'ball-1923',
        scipy('f of a short cylinder'),
        coolingOf(
          [
            { shape: 'cylinder', half: 0.02 },
            { shape: 'slab', half: 0.06 },
          ],
          1e6,
          0.48,
          1.3061224e-7,
        ).f,
        0.116,
        's',
        worked,
        'computed',
      ),
      row(
        'egg of 50 mm to 70 °C by f and j',
        'cengel-heat-transfer',
        scipy('egg of 50 mm one term'),
        coolingTime(coolingOf([{ shape: 'sphere', half: 0.025 }], 1200, 0.627, 0.151e-6), 5, 95, 70),
        0.01,
        's',
        'the exact one-term answer; the book, reading its table, has 865',
        'computed',
      ),
      row(
        'ham of 102 × 165 × 279 mm from 70 to 10 °C by f and j',
        'carslaw-jaeger-1959',
        scipy('ham'),
        coolingTime(ham, 70, -1, 10),
        500,
        's',
        'one term for each side; along the ham the first while is not over, which costs 2 %',
        'computed',
      ),
    ];
  },
};
