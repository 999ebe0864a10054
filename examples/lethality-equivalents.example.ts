import {
  decimalReductionTime,
  equivalentTime,
  fitZ,
  impliedZ,
  processLethality,
} from '../src/core/microbes/lethality.ts';
import { heatResistances } from '../src/core/properties/organisms-heat.ts';
import type { Example, Row } from './case.ts';

const at = (z: number) => ({ reference: 70, z });
const held = (C: number, min: number) => [
  { s: 0, C },
  { s: min * 60, C },
];

export const example: Example = {
  title: 'What 70 °C for two minutes is worth elsewhere',
  story:
    'Caterers are told five pairs of temperature and time that kill Listeria alike: 60 °C for 45 min, 65 °C for 10 min, 70 °C for 2 min, 75 °C for 30 s, 80 °C for 6 s. They are rounded: no single z gives all five, and each is worth a little more than 2 min by z 7.5 °C. For burgers the committee that looked into them asks for z 6 °C, which asks for longer below 70 °C.',
  equation: 't(T) = t_ref · 10^((T_ref − T)/z);  z = (T2 − T1)/log10(t1/t2);  P = ∫ 10^((T − T_ref)/z) dt',
  sources: [
    'fsa-cooking-safely',
    'acmsf-burgers-2007',
    'bigelow-1921',
    'juneja-marmer-1998',
    'mackey-bratchell-1989',
  ],
  run(): Row[] {
    const rounded = 'the committee prints it rounded';
    const rows: Row[] = [
      {
        quantity: '65 °C held for as long as 70 °C for 2 min, z 6 °C',
        source: 'acmsf-burgers-2007',
        confidence: 'read',
        expected: 13.6,
        ours: equivalentTime(65, at(6), 120) / 60,
        tolerance: 0.05,
        unit: 'min',
        why: rounded,
      },
      {
        quantity: '75 °C held for as long as 70 °C for 2 min, z 6 °C',
        source: 'acmsf-burgers-2007',
        confidence: 'read',
        expected: 18,
        ours: equivalentTime(75, at(6), 120),
        tolerance: 0.5,
        unit: 's',
        why: rounded,
      },
    ];
    const pairs: [number, number][] = [
      [60, 45],
      [65, 10],
      [75, 0.5],
      [80, 0.1],
    ];
    for (const [C, min] of pairs) {
      rows.push({
        quantity: `${C} °C for ${min} min, worth at 70 °C by z 7.5 °C`,
        source: 'fsa-cooking-safely',
        confidence: 'secondary',
        expected: { low: 2, high: 2.35 },
        ours: processLethality(held(C, min), at(7.5)) / 60,
        tolerance: 0,
        unit: 'min',
        why: 'a printed equal must be worth at least the 2 min it stands for, and not much more',
      });
      rows.push({
        quantity: `z that ${C} °C for ${min} min implies`,
        source: 'fsa-cooking-safely',
        confidence: 'secondary',
        expected: { low: 7, high: 8.5 },
        ours: impliedZ({ C, s: min * 60 }, { C: 70, s: 120 }),
        tolerance: 0,
        unit: '°C',
        why: 'the pairs are rounded, so each implies a z of its own near 7.5 °C',
      });
    }
    const beef = fitZ(
      heatResistances.find((h) => h.organism.startsWith('Clostridium') && h.measuredIn === 'minced beef')
        ?.D ?? [],
    );
    rows.push({
      quantity: 'z of Clostridium perfringens cells in minced beef',
      source: 'juneja-marmer-1998',
      confidence: 'read',
      expected: { low: 6.22, high: 6.77 },
      ours: beef.z,
      tolerance: 0.05,
      unit: '°C',
      why: 'the authors’ range over all their treatments; a straight line through their four D-values lies at its upper edge',
    });
    rows.push({
      quantity: 'D of Listeria monocytogenes at 65 °C',
      source: 'mackey-bratchell-1989',
      confidence: 'memory',
      expected: 10 ** (10.888 - 0.14519 * 65),
      ours: decimalReductionTime(65, { reference: 70, z: 1 / 0.14519 }, 10 ** (10.888 - 0.14519 * 70)),
      tolerance: 1e-6,
      unit: 's',
      why: 'the published regression at another temperature: exact but for rounding',
    });
    return rows;
  },
};
