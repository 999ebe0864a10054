import { cardinalPH, cardinalTemperature, cardinalWaterActivity } from '../src/core/microbes/cardinal.ts';
import { growthRateAt } from '../src/core/microbes/growth-rate.ts';
import { findGrowthOrganism } from '../src/core/properties/organisms-growth.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const scipy = kept('microbes');
const perfringens = findGrowthOrganism('clostridium-perfringens')?.sets ?? [];
const rate = (set: string, C: number) => {
  const found = perfringens.find((s) => s.id === set);
  if (found === undefined) throw new RangeError(`no set ${set}`);
  return growthRateAt(found.temperature, C) * 3600;
};

export const example: Example = {
  title: 'The published forms of growth over temperature, pH and water activity',
  story:
    'Each published curve at the temperatures, acidities and water activities that matter in a kitchen, here and in another program, both written from the equation as published. A curve that is right says nothing of how fast an organism grows in another food than the one measured.',
  equation:
    'γ(T) = (T − Tmax)(T − Tmin)²/{(Topt − Tmin)[(Topt − Tmin)(T − Topt) − (Topt − Tmax)(Topt + Tmin − 2T)]}',
  sources: [
    'rosso-1993',
    'rosso-1995',
    'rosso-robinson-2001',
    'augustin-2005',
    'roasted-chicken-braised-beef-cooling',
    'juneja-huang-thippareddi-2006',
    'icmsf-1996',
  ],
  run(): Row[] {
    const rows: Row[] = [];
    const why = 'the same equation with the same constants, to the last digits';
    const add = (
      quantity: string,
      id: string,
      ours: number,
      source: string,
      confidence: Row['confidence'],
      unit: string,
    ) =>
      rows.push({
        quantity,
        source,
        confidence,
        expected: scipy(id),
        ours,
        tolerance: 1e-10,
        unit,
        why,
      });
    const cooling = 'roasted-chicken-braised-beef-cooling';
    for (const C of [10, 15, 20, 25, 30, 35, 40, 45, 46.4, 48, 50, 51])
      add(
        `Clostridium perfringens in roasted chicken at ${C} °C`,
        `chicken ${C}`,
        rate('roasted-chicken', C),
        cooling,
        'computed',
        '1/h',
      );
    for (const C of [12, 20, 30, 40, 43.5, 48])
      add(
        `Clostridium perfringens in braised beef at ${C} °C`,
        `beef ${C}`,
        rate('braised-beef', C),
        cooling,
        'computed',
        '1/h',
      );
    for (const C of [15, 20, 25, 30, 35, 40, 45, 48, 50])
      add(
        `Clostridium perfringens in cured pork at ${C} °C`,
        `cured ${C}`,
        rate('cured-pork', C),
        'juneja-huang-thippareddi-2006',
        'computed',
        '1/h',
      );
    for (const C of [2, 4, 5, 8, 10, 20, 37, 43])
      add(
        `Listeria monocytogenes, γ at ${C} °C`,
        `listeria T ${C}`,
        cardinalTemperature(C, { min: -1.72, opt: 37, max: 45.5 }),
        'augustin-2005',
        'memory',
        '-',
      );
    for (const pH of [5.0, 5.6, 6.0, 6.5, 7.1, 8.0])
      add(
        `Listeria monocytogenes, γ at pH ${pH}`,
        `listeria pH ${pH.toFixed(1)}`,
        cardinalPH(pH, { min: 4.71, opt: 7.1, max: 9.61 }),
        'augustin-2005',
        'memory',
        '-',
      );
    for (const a of [0.92, 0.94, 0.96, 0.97, 0.98, 0.99, 0.997])
      add(
        `Listeria monocytogenes, γ at water activity ${a}`,
        `listeria aw ${a}`,
        cardinalWaterActivity(a, { min: 0.913, opt: 0.997, max: 1 }),
        'augustin-2005',
        'memory',
        '-',
      );
    for (const C of [8, 10, 15, 20, 30, 43])
      add(
        `Salmonella, γ at ${C} °C`,
        `salmonella T ${C}`,
        cardinalTemperature(C, { min: 5.2, opt: 38, max: 46.2 }),
        'icmsf-1996',
        'computed',
        '-',
      );
    for (const [C, set] of [
      [8.8, 'roasted-chicken'],
      [51.5, 'roasted-chicken'],
      [2, 'braised-beef'],
      [60, 'cured-pork'],
    ] as const)
      rows.push({
        quantity: `at ${C} °C, at or outside the ends of ${set}`,
        source: cooling,
        confidence: 'read',
        expected: 0,
        ours: rate(set, C),
        tolerance: 0,
        unit: '1/h',
        why: 'none grows at its lowest and highest temperature or outside them',
      });
    return rows;
  },
};
