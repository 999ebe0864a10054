import {
  forcedConvectionOnCylinder,
  freeConvectionOnCylinder,
  radiationCoefficient,
} from '../src/core/properties/humid-air-convection.ts';
import { filmResistance, throughResistance } from '../src/core/properties/media.ts';
import { steamOnCylinder } from '../src/core/properties/saturation-film.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const python = kept('steam');

export const example: Example = {
  title: 'How much heat a surface gets, W/(m² K)',
  story: `Pure steam, still and moving air, warm walls, and what film or trapped air takes away again. Equations of the textbooks worked out in Python
with other tables of air and water, and three of a textbook's own problems, two of them read in copies of its solutions. That pure steam gives 5900 to 11 000
does not mean that a kitchen's steamer does: a little air in it takes most of that away, and published figures for food go from 400 up.`,
  equation:
    'Nu of Churchill and Chu, of Churchill and Bernstein; Nusselt’s film; ε·σ·(T_s² + T_w²)(T_s + T_w); 1/h = 1/h₀ + Σ e/k',
  sources: ['incropera-dewitt', 'churchill-chu-1975', 'churchill-bernstein-1977', 'cengel-heat-transfer'],
  run() {
    const rows: Row[] = [];
    const row = (
      quantity: string,
      source: string,
      confidence: Row['confidence'],
      expected: number,
      ours: number,
      share: number,
      why: string,
    ) =>
      rows.push({
        quantity,
        source,
        confidence,
        expected,
        ours,
        tolerance: share * expected,
        unit: 'W/(m² K)',
        why,
      });
    const book = 'the book’s own table of water or air, read in a copy: one per cent';
    row(
      'steam at 50 °C on a tube of 15 mm at 20 °C: a textbook’s problem',
      'cengel-heat-transfer',
      'secondary',
      8425,
      steamOnCylinder(0.015, 20, 50),
      0.01,
      book,
    );
    row(
      'steam at 40 °C on a tube of 30 mm at 30 °C: an example’s data',
      'cengel-heat-transfer',
      'memory',
      9292,
      steamOnCylinder(0.03, 30, 40),
      0.01,
      book,
    );
    row(
      'air at 4 m/s across a pipe of 116 mm, film at 10 °C: a textbook’s problem, Nu 107.0',
      'cengel-heat-transfer',
      'secondary',
      (107 * 0.02439) / 0.116,
      forcedConvectionOnCylinder(0.116, 4, 10),
      0.01,
      book,
    );
    for (const [D, C] of [
      [0.04, 20],
      [0.04, 60],
      [0.04, 90],
      [0.02, 60],
    ] as const)
      row(
        `pure steam at 100 °C on a cylinder of ${D * 1000} mm at ${C} °C`,
        'incropera-dewitt',
        'memory',
        python(`steam on ${D} at ${C}`),
        steamOnCylinder(D, C, 100),
        0.02,
        'another table of water: two per cent',
      );
    for (const [surface, air] of [
      [60, 20],
      [70, 3],
      [20, 3],
      [5, 180],
    ] as const)
      row(
        `still air, cylinder of 40 mm, ${surface} in ${air} °C`,
        'churchill-chu-1975',
        'memory',
        python(`still air ${surface} in ${air}`),
        freeConvectionOnCylinder(0.04, surface, air),
        0.02,
        'another description of air, whose conductivity is 2 % higher',
      );
    for (const speed of [0.5, 1, 2, 3, 5, 8])
      row(
        `air at ${speed} m/s across it`,
        'churchill-bernstein-1977',
        'memory',
        python(`air at ${speed} m/s`),
        forcedConvectionOnCylinder(0.04, speed, 20),
        0.02,
        'another description of air, whose conductivity is 2 % higher',
      );
    for (const [a, b] of [
      [60, 20],
      [70, 3],
      [5, 180],
      [60, 180],
    ] as const)
      row(
        `warm walls, ${a} to ${b} °C, emissivity 0.9`,
        'incropera-dewitt',
        'computed',
        python(`radiation ${a} to ${b}`),
        radiationCoefficient(a, b),
        1e-4,
        'a law of nature; a ten-thousandth',
      );
    for (const k of [0.13, 0.3])
      for (const n of [3, 5, 10, 20])
        for (const h of n === 10 ? [1000, 300, 100, 20] : [1000])
          row(
            `${n} layers of 10 µm film at ${k} W/(m K) over ${h}`,
            'incropera-dewitt',
            'computed',
            python(`${n} layers k ${k === 0.3 ? '0.3' : k} h ${h}`),
            throughResistance(h, filmResistance(10e-6, k, n)),
            1e-4,
            'resistances add; a ten-thousandth',
          );
    row(
      'a tenth of a millimetre of trapped air over 1000',
      'incropera-dewitt',
      'computed',
      python('0.1 mm of air h 1000'),
      throughResistance(1000, filmResistance(1e-4, 0.026)),
      1e-4,
      'resistances add; a ten-thousandth',
    );
    return rows;
  },
};
