import { decimalReductionTime, fitZ, impliedZ } from '../src/core/microbes/lethality.ts';
import { logReduction } from '../src/core/microbes/log-reduction.ts';
import { findHeatResistance } from '../src/core/properties/organisms-heat.ts';
import type { HoldRule } from '../src/core/properties/rule.ts';
import { findRule } from '../src/core/properties/rules.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const scipy = kept('microbes');
const resistance = (id: string) => {
  const found = findHeatResistance(id);
  if (found === undefined) throw new RangeError(`no resistance ${id}`);
  return found;
};
const table = (id: string) => (findRule(id) as HoldRule).rows;

export const example: Example = {
  title: 'How fast organisms die: lines through published D-values, and decades along a hold',
  story:
    'Published decimal reduction times are fitted by a straight line in log time here and by a library’s regression elsewhere. What they were measured at bounds what they say: decades are counted between those temperatures only, and no more than twelve are told.',
  equation: 'log10 D = a − T/z;  S = ∫ dt/D(T(t))',
  sources: [
    'juneja-marmer-1998',
    'juneja-eblen-ransom-2001',
    'mackey-bratchell-1989',
    'us-9cfr-318-10',
    'woah-avian-influenza',
  ],
  run(): Row[] {
    const rows: Row[] = [];
    const fits = [
      ['perfringens beef', 'perfringens-beef', 'juneja-marmer-1998', 'Clostridium perfringens cells in beef'],
      ['salmonella broth', 'salmonella-broth', 'juneja-eblen-ransom-2001', 'Salmonella in broth'],
    ] as const;
    const regression = 'the same regression by a library, to twelve figures';
    for (const [name, id, source, words] of fits) {
      const fit = fitZ(resistance(id).D);
      rows.push(
        {
          quantity: `z of ${words}`,
          source,
          confidence: 'computed',
          expected: scipy(`${name} z`),
          ours: fit.z,
          tolerance: 1e-9,
          unit: '°C',
          why: regression,
        },
        {
          quantity: `fitted D at 60 °C of ${words}`,
          source,
          confidence: 'computed',
          expected: scipy(`${name} D60`),
          ours: fit.timeAt(60) / 60,
          tolerance: 1e-9,
          unit: 'min',
          why: regression,
        },
      );
    }
    const worm = table('us-trichinella-heating').filter((row) => row.s > 0 && row.C < 61);
    rows.push({
      quantity: 'z that the list for Trichinella in pork implies',
      source: 'us-9cfr-318-10',
      confidence: 'computed',
      expected: scipy('trichinella z'),
      ours: fitZ(worm).z,
      tolerance: 1e-9,
      unit: '°C',
      why: `${regression}; times as printed, 49 to 60 °C`,
    });
    const virus = table('woah-avian-influenza');
    virus.slice(1).forEach((row, i) => {
      const before = virus[i]!;
      rows.push({
        quantity: `z of avian influenza virus, ${before.C} to ${row.C} °C`,
        source: 'woah-avian-influenza',
        confidence: 'memory',
        expected: scipy(`influenza z ${before.C}`),
        ours: impliedZ(before, row),
        tolerance: 1e-9,
        unit: '°C',
        why: 'the pairs are remembered; the arithmetic is exact',
      });
    });
    for (const [C, expected] of [
      [60, 150.18],
      [65, 28.23],
      [70, 5.305],
    ] as const)
      rows.push({
        quantity: `D of Listeria monocytogenes at ${C} °C by its regression`,
        source: 'mackey-bratchell-1989',
        confidence: 'memory',
        expected,
        ours: decimalReductionTime(C, { reference: 70, z: 1 / 0.14519 }, 10 ** (10.888 - 0.14519 * 70)),
        tolerance: 0.001 * expected,
        unit: 's',
        why: 'worked out from the remembered equation to four figures',
      });
    const turkey = resistance('perfringens-turkey');
    const held = (C: number, min: number) => [
      { s: 0, C },
      { s: min * 60, C },
    ];
    rows.push(
      {
        quantity: 'Clostridium perfringens cells in turkey, 62.5 °C for 10.4 min',
        source: 'juneja-marmer-1998',
        confidence: 'read',
        expected: 8,
        ours: logReduction(held(62.5, 10.4), turkey, 3600).log10,
        tolerance: 1e-9,
        unit: 'log10',
        why: 'eight times the D of 1.3 min that was measured there',
      },
      {
        quantity:
          'Clostridium perfringens cells in turkey, 65 °C for 1 min, where more than 8 log10 were found',
        source: 'juneja-marmer-1998',
        confidence: 'read',
        expected: { low: 8, high: 100 },
        ours: logReduction(held(65, 1), turkey, 3600).log10,
        tolerance: 0,
        unit: 'log10',
        why: 'found to be more than eight',
        differs: {
          by: -7.23,
          why: 'above the temperatures at which D was measured nothing more is counted: less is told than was found, never more',
        },
      },
    );
    return rows;
  },
};
