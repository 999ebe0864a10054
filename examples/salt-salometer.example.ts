import { brineReading, saltOnScale } from '../src/core/properties/brine-readings.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const python = kept('salt');
const degrees = [5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 95, 100] as const;

export const example: Example = {
  title: 'The salometer, degree by degree',
  story: `What a hydrometer of the curing room reads, and what it means in salt, gravity, Baumé and ice. The scale is defined by a saturated brine
at 60 °F (26.395 % is 100 degrees) and Baumé by a formula; both were seen in tables of the trade. The rows themselves are worked out elsewhere from the
printed densities by a cubic and from the printed first ices by a quartic, where the program goes straight between rows: what is left is what the two ways differ by.
Instruments with another scale exist (25 % as 100 degrees, or for 38 °F): read on one of those, these rows do not hold.`,
  equation: '°S = 100·w/26.395;  °Bé = 145 − 145/SG;  SG = ρ(60 °F)/999.0',
  sources: ['salt-solubility-table', 'brine-density-table', 'langes-handbook-5-13'],
  run(): Row[] {
    return degrees.flatMap((S): Row[] => {
      const saltPct = saltOnScale('salometer', S);
      const ours = brineReading(saltPct);
      const row = (
        what: string,
        key: string,
        value: number,
        tolerance: number,
        unit: string,
        source: string,
      ): Row => ({
        quantity: `${S}° salometer: ${what}`,
        source,
        confidence: 'computed',
        expected: python(`salometer ${S} ${key}`),
        ours: value,
        tolerance,
        unit,
        why: 'straight between rows here, a curve through all of them there',
      });
      const density = 'brine-density-table';
      return [
        {
          ...row('salt', 'salt', saltPct, 1e-9, '%', 'salt-solubility-table'),
          why: 'the definition of the scale',
        },
        row('gravity', 'gravity', ours.gravity, 0.0005, '-', density),
        row('Baumé', 'baume', ours.baume, 0.06, '°Bé', density),
        row('salt in a litre', 'litre', ours.gPerLitre, 0.15, 'g', density),
        {
          ...row(
            'salt to a kilogram of water',
            'water',
            ours.gPerKgWater,
            1e-6,
            'g',
            'salt-solubility-table',
          ),
          why: 'arithmetic',
        },
        ...(ours.comesOut === 'ice'
          ? [row('first ice', 'ice', ours.comesOutC, 0.06, '°C', 'langes-handbook-5-13')]
          : []),
      ];
    });
  },
};
