import { cook } from '../src/core/heat/cook.ts';
import type { Body, CookResult, Layer } from '../src/core/heat/types.ts';
import { density, normalised, specificHeat } from '../src/core/properties/food-components.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const other = kept('freezing');
const food = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const layers: Layer[] = [{ name: 'forcemeat', material: { composition: food }, freezing: -2 }];
const roll: Body = { shape: 'cylinder', diameter: 0.056, layers };
const slab: Body = { shape: 'slab', thickness: 0.04, layers };

interface Case {
  readonly name: string;
  readonly what: string;
  readonly body: Body;
  readonly start: number;
  readonly medium: number;
  readonly h: number;
  readonly end: number;
  readonly times: readonly number[];
}
const cases: readonly Case[] = [
  {
    name: 'forcemeat-steam',
    what: 'roll of 56 mm, 4 into 100 °C',
    body: roll,
    start: 4,
    medium: 100,
    h: 1000,
    end: 70,
    times: [600, 900, 1200, 1500],
  },
  {
    name: 'forcemeat-bath',
    what: 'slab of 40 mm, 6 into 82 °C',
    body: slab,
    start: 6,
    medium: 82,
    h: 300,
    end: 75,
    times: [600, 1200, 1800],
  },
  {
    name: 'forcemeat-chill',
    what: 'roll of 56 mm, 75 into 1 °C',
    body: roll,
    start: 75,
    medium: 1,
    h: 500,
    end: 8,
    times: [600, 1200, 1800, 2400],
  },
];

function run({ body, start, medium, h, end, times }: Case): CookResult {
  return cook(
    {
      body,
      start,
      stages: [
        {
          name: 'stage',
          medium,
          h,
          until: { kind: medium < start ? 'warmest' : 'coldest', C: end, atMost: 86_400 },
        },
      ],
      target: { reference: 70, z: 7.5, s: 120 },
      probes: [{ name: 'middle', place: body.shape === 'slab' ? { x: 0 } : { radius: 0 } }],
    },
    { at: times },
  );
}

/** Heat for a kilogram from one temperature to another, by Simpson's rule [J/kg]. */
function heatPerKilogram(from: number, to: number): number {
  const n = 100;
  let sum = 0;
  for (let i = 0; i <= n; i++)
    sum +=
      (i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2) *
      specificHeat(normalised(food), from + ((to - from) * i) / n);
  return (sum * (to - from)) / n / 3;
}

/** Heat that a kilogram has taken when the whole piece is as warm as the medium, and what it weighs to the litre. */
function heatedThrough(start: number, medium: number): { perKilogram: number; rho: number } {
  const { history, mass } = cook({
    body: roll,
    start,
    stages: [{ name: 'long', medium, h: 1000, until: { kind: 'time', s: 6 * 3600 } }],
    target: { reference: 70, z: 7.5, s: 120 },
  });
  return { perKilogram: (history.heat.at(-1) ?? Number.NaN) / mass, rho: mass / (Math.PI * 0.028 ** 2) };
}

export const example: Example = {
  title: 'Food by its composition, heated and chilled: by another method, and its mass held',
  story: `Conductivity and specific heat follow the temperature of every point; density is that of the start, because the body is not drawn again as it
swells, and so its mass stays. A separate program does the same with equal cells, the heat content as the unknown and scipy's stepper for stiff
equations; it shares nothing with the engine but the published functions of the components. Then the account by the kilogram: what a piece has
taken up, warm throughout, over its mass, is the integral of the specific heat.`,
  equation: 'ρ_start·cp(T)·∂T/∂t = div(k(T)·grad T);  Q/m = ∫ cp dT',
  sources: ['own-computation', 'choi-okos-1986', 'levy-1981'],
  run() {
    const rows = cases.flatMap((c): Row[] => {
      const { stages, readings } = run(c);
      const time = other(`${c.name} time`);
      return [
        {
          quantity: `${c.what}: until the middle is at ${c.end} °C`,
          source: 'own-computation',
          confidence: 'computed',
          expected: time,
          ours: stages[0]?.end ?? Number.NaN,
          tolerance: 0.001 * time,
          unit: 's',
          why: 'a tenth of a per cent',
        },
        ...c.times.map(
          (t, i): Row => ({
            quantity: `${c.what}: middle after ${t} s`,
            source: 'own-computation',
            confidence: 'computed',
            expected: other(`${c.name} ${t}`),
            ours: readings?.[0]?.[i] ?? Number.NaN,
            tolerance: 0.05,
            unit: '°C',
            why: 'half of the last figure that is printed',
          }),
        ),
      ];
    });
    for (const [start, medium] of [
      [4, 95],
      [75, 2],
    ] as const) {
      const { perKilogram, rho } = heatedThrough(start, medium);
      const expected = heatPerKilogram(start, medium) / 1000;
      rows.push(
        {
          quantity: `heat of a kilogram, ${start} to ${medium} °C`,
          source: 'choi-okos-1986',
          confidence: 'computed',
          expected,
          ours: perKilogram / 1000,
          tolerance: 2e-5 * Math.abs(expected),
          unit: 'kJ/kg',
          why: 'the account of the heat closes within a thousandth of a per cent, the table within another',
        },
        {
          quantity: `the same piece: its density, held at ${start} °C`,
          source: 'choi-okos-1986',
          confidence: 'computed',
          expected: density(normalised(food), start),
          ours: rho,
          tolerance: 0.001,
          unit: 'kg/m³',
          why: 'the same function at the start',
        },
      );
    }
    return rows;
  },
};
