import { cook } from '../src/core/heat/cook.ts';
import type { CookProblem, CookResult } from '../src/core/heat/types.ts';
import { filmResistance, throughResistance } from '../src/core/properties/media.ts';
import type { Example, Row } from './case.ts';

const skin = { water: 0.541, protein: 0.133, fat: 0.322, carbohydrate: 0, fibre: 0, ash: 0.004 };
// 500 g breast, 400 g cream of 36 % fat, 66 g egg white, 10 g salt.
const mousse = { water: 0.678, protein: 0.129, fat: 0.163, carbohydrate: 0.012, fibre: 0, ash: 0.018 };
// Five turns of 10 µm film.
const film = filmResistance(10e-6, 0.36, 5);

interface Kitchen {
  readonly diameter: number;
  readonly start: number;
  readonly h: number;
}

function problem({ diameter, start, h }: Kitchen, stages: 'steam' | 'and stand'): CookProblem {
  const steam = throughResistance(h, film);
  return {
    body: {
      shape: 'revolved',
      profile: [
        { at: 0, diameter: diameter - 0.008 },
        { at: 0.06, diameter },
        { at: 0.15, diameter: diameter - 0.004 },
      ],
      layers: [
        { name: 'skin', thickness: 0.0025, material: { composition: skin } },
        { name: 'mousse', material: { composition: mousse } },
      ],
    },
    start,
    stages: [
      { name: 'steam', medium: 100, h: steam, until: { kind: 'coldest', C: 65, atMost: 7200 } },
      ...(stages === 'and stand'
        ? [
            { name: 'stand', medium: 20, h: 10, until: { kind: 'time', s: 300 } as const },
            { name: 'ice water', medium: 1, h: 200, until: { kind: 'warmest', C: 5 } as const },
          ]
        : []),
    ],
    target: { reference: 70, z: 7.5, s: 120 },
  };
}

const minutes = (r: CookResult) => (r.stages[0]?.end ?? Number.NaN) / 60;
const wrapped =
  'a rule of thumb of professional kitchens; its diameter, steamer and start are known only as ranges';

export const example: Example = {
  title: 'A filled poultry neck in the steamer',
  story: `Kitchens say that a poultry neck filled with mousse, 46 to 56 mm thick, wrapped in film, from the fridge into a steamer at 100 °C, is at
about 65 °C in the middle after 20 to 25 min. That has no published source and proves nothing, but the engine must not contradict it. What the kitchen does not say:
65 °C at the moment of lifting out is not yet the equivalent of 70 °C for 2 min; the heat that goes on creeping inwards counts too, and only if the piece
is left to stand before it is chilled. Invented data of an everyday kind; not a validation of safety.`,
  equation:
    'two layers, Choi–Okos properties, film in series with the steam; P = ∫ 10^((T − 70)/7.5) dt at the point that gets least',
  sources: ['common-practice', 'choi-okos-1986', 'bigelow-1921'],
  run(): Row[] {
    const quickest = cook(problem({ diameter: 0.046, start: 8, h: 5000 }, 'steam'));
    const slowest = cook(problem({ diameter: 0.056, start: 4, h: 400 }, 'steam'));
    const usual = cook(problem({ diameter: 0.05, start: 6, h: 1000 }, 'and stand'));
    const lifted = usual.stages[0]?.end ?? Number.NaN;
    const at = usual.history.t.findIndex((t) => t >= lifted);
    const then = usual.history.lethality[at] ?? Number.NaN;
    const row = (
      quantity: string,
      low: number,
      high: number,
      ours: number,
      unit: string,
      why: string,
    ): Row => ({
      quantity,
      source: 'common-practice',
      confidence: 'common practice',
      expected: { low, high },
      ours,
      tolerance: 0,
      unit,
      why,
    });
    return [
      row(
        'thin, warm, brisk steam: the engine’s least time to 65 °C is no later than practice',
        0,
        25,
        minutes(quickest),
        'min',
        wrapped,
      ),
      row('thick, cold, weak steam: its longest is no earlier', 20, 90, minutes(slowest), 'min', wrapped),
      row('50 mm, 6 °C, usual steam', 15, 30, minutes(usual), 'min', wrapped),
      row(
        'lethality at lifting out at 65 °C is below 2 min at 70 °C',
        0,
        1.999,
        then / 60,
        'min',
        'so that 65 °C alone must not be called safe',
      ),
      row(
        'lethality after standing 5 min and chilling: what carry-over adds',
        then / 60 + 0.1,
        1000,
        usual.lethality.s / 60,
        'min',
        'the middle goes on rising after lifting out',
      ),
      row(
        'highest temperature in the middle, after lifting out',
        65.5,
        90,
        Math.max(...usual.history.coldSpot),
        '°C',
        'carry-over',
      ),
    ];
  },
};
