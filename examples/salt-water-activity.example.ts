import { brineFreezing, brineGravity, saltOfSalometer } from '../src/core/properties/brine.ts';
import { osmoticCoefficient, saltWaterActivity } from '../src/core/salt/water-activity.ts';
import type { Example, Row } from './case.ts';

const ofMolality = (m: number) => saltWaterActivity((m * 0.0584428) / (1 + m * 0.0584428));

export const example: Example = {
  title: 'Water activity and freezing of brine against published values',
  story: `The activity of water in brine by the equation of Pitzer and Mayorga, against osmotic coefficients of Robinson and Stokes
and published activities, and the freezing point and density of brine, the density against a second table.`,
  equation: 'ln a_w = −2·0.0180153·m·φ(m)',
  sources: ['pitzer-mayorga-1973', 'robinson-stokes-1959', 'langes-handbook-5-13', 'salt-solubility-table'],
  run: (): Row[] => [
    {
      quantity: 'φ at 1 mol/kg',
      source: 'robinson-stokes-1959',
      expected: 0.9355,
      ours: osmoticCoefficient(1),
      tolerance: 0.001,
      unit: '-',
      why: 'agreement of the fit with the measurements',
    },
    {
      quantity: 'φ at 6 mol/kg',
      source: 'robinson-stokes-1959',
      expected: 1.2706,
      ours: osmoticCoefficient(6),
      tolerance: 0.003,
      unit: '-',
      why: 'agreement of the fit with the measurements at the end of its range',
    },
    {
      quantity: 'a_w at 6 mol/kg',
      source: 'robinson-stokes-1959',
      expected: 0.76,
      ours: ofMolality(6),
      tolerance: 0.001,
      unit: '-',
      why: 'printed to three digits',
    },
    {
      quantity: 'a_w of saturated brine at 25 °C',
      source: 'labuza-saturated-salts',
      expected: Math.exp(23.1092 / 298.15 - 0.3607),
      ours: saltWaterActivity(0.264),
      tolerance: 0.001,
      unit: '-',
      why: 'published values of saturated brine lie from 0.7529 to 0.755',
    },
    {
      quantity: 'freezing of brine at 12 % (quartic; no row of the table)',
      source: 'langes-handbook-5-13',
      expected: { low: -10.88, high: -5.77 },
      ours: brineFreezing(12),
      tolerance: 0,
      unit: '°C',
      why: 'lies between its neighbours',
    },
    {
      quantity: 'freezing at 20° salometer',
      source: 'langes-handbook-5-13',
      expected: -3.16,
      ours: brineFreezing(saltOfSalometer(20)),
      tolerance: 0.05,
      unit: '°C',
      why: 'straight between rows',
    },
    {
      quantity: 'specific gravity at 20 % and 15.6 °C',
      source: 'langes-handbook-5-13',
      expected: 1.152,
      ours: brineGravity(20),
      tolerance: 0.002,
      unit: '-',
      why: 'two independent tables, printed to three digits',
    },
    {
      quantity: 'specific gravity at 8 % and 15.6 °C',
      source: 'langes-handbook-5-13',
      expected: 1.059,
      ours: brineGravity(8),
      tolerance: 0.002,
      unit: '-',
      why: 'two independent tables, printed to three digits',
    },
  ],
};
