import { cook } from '../src/core/heat/cook.ts';
import type { Surface } from '../src/core/heat/types.ts';
import { latentHeatOf, sensibleHeat } from '../src/core/method/energy.ts';
import { normalised } from '../src/core/properties/food-components.ts';
import { latentHeat } from '../src/core/properties/saturation.ts';
import type { Example, Row } from './case.ts';

/** 500 g of breast, 400 g of cream of 36 % fat, 66 g of egg white, 10 g of salt. */
const mousse = normalised({
  water: 0.67833,
  protein: 0.12884,
  fat: 0.16253,
  carbohydrate: 0.01204,
  fibre: 0,
  ash: 0.01826,
});
const water = { water: 1, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
const kWh = 3.6e6;

/** A roll of mousse until it is as warm as what is round it: heat by the kilogram [J], and steam that has settled on it [kg/kg]. */
function warmedThrough(medium: number, surface?: Surface): { heat: number; settled: number } {
  const { history, mass, stages } = cook({
    body: {
      shape: 'cylinder',
      diameter: 0.04,
      layers: [{ name: 'mousse', material: { composition: mousse } }],
    },
    start: 5,
    stages: [
      {
        name: 'through',
        medium,
        h: surface === undefined ? 1000 : 15,
        ...(surface === undefined ? {} : { surface }),
        until: { kind: 'time', s: 3 * 3600 },
      },
    ],
    target: { reference: 70, z: 7.5, s: 120 },
  });
  return {
    heat: (history.heat.at(-1) ?? Number.NaN) / mass,
    settled: (stages[0]?.water?.settled ?? Number.NaN) / mass,
  };
}

export const example: Example = {
  title: 'Energy for a kilogram',
  story: `What it takes to heat a kilogram of mousse, to boil a kilogram of water away and to bring one to the boil; and how much steam has to settle on the mousse to
heat it. First by the formula of a kitchen's costs, then by the engine: a roll of 40 mm, heated until it is as warm as what is round it, and the same
under pure steam, whose water is counted as it settles. What a machine draws beyond this is the kitchen's own figure.`,
  equation: 'Q = m·∫cp dT;  Q = m·h_fg;  steam = Q/h_fg',
  sources: ['choi-okos-1986', 'iapws-if97', 'iapws-sr1-86', 'own-computation'],
  run(): Row[] {
    const by = warmedThrough(70);
    const steamed = warmedThrough(99.9743, {
      vapour: { pressure: 101_325, relative: 1, activity: 1, condensate: 5000 },
    });
    const toSteam = sensibleHeat(1, mousse, 5, 99.9743);
    return [
      {
        quantity: 'a kilogram of mousse, 5 to 70 °C, reckoned with 3.49 kJ/(kg K)',
        source: 'choi-okos-1986',
        confidence: 'computed',
        expected: (3.49 * 65) / 3600,
        ours: sensibleHeat(1, mousse, 5, 70) / kWh,
        tolerance: 0.0007,
        unit: 'kWh',
        why: 'one specific heat, that of 65 °C, for all of the way: a hundredth',
      },
      {
        quantity: 'the same by the engine, from its account of the heat',
        source: 'own-computation',
        confidence: 'computed',
        expected: sensibleHeat(1, mousse, 5, 70) / kWh,
        ours: by.heat / kWh,
        tolerance: 3e-6,
        unit: 'kWh',
        why: 'two ways through the same functions: a twentieth of a per mille',
      },
      {
        quantity: 'steam of 100 °C for it',
        source: 'iapws-sr1-86',
        confidence: 'computed',
        expected: (3.49 * 65) / 2256.4,
        ours: sensibleHeat(1, mousse, 5, 70) / latentHeat(100),
        tolerance: 0.001,
        unit: 'kg',
        why: 'as above: a hundredth',
      },
      {
        quantity: 'steam that settles on a kilogram of mousse, 5 °C until it is through, by the engine',
        source: 'iapws-sr1-86',
        confidence: 'computed',
        expected: toSteam / latentHeat(99.9743),
        ours: steamed.settled,
        tolerance: (0.02 * toSteam) / latentHeat(99.9743),
        unit: 'kg',
        why: 'it settles on a film that is cooler than the steam at first, where a kilogram gives up to 2 % more',
      },
      {
        quantity: 'a kilogram of water boiled away at 100 °C',
        source: 'iapws-sr1-86',
        confidence: 'computed',
        expected: 2256.4 / 3600,
        ours: latentHeatOf(1, 100) / kWh,
        tolerance: 1e-4,
        unit: 'kWh',
        why: 'the formula’s latent heat is within 0.3 kJ/kg',
      },
      {
        quantity: 'a kilogram of water, 10 to 100 °C',
        source: 'choi-okos-1986',
        confidence: 'computed',
        expected: 0.105,
        ours: sensibleHeat(1, water, 10, 100) / kWh,
        tolerance: 5e-4,
        unit: 'kWh',
        why: 'given to a thousandth',
      },
    ];
  },
};
