import { surroundingsOf } from '../src/contract/surroundings.ts';
import { cook } from '../src/core/heat/cook.ts';
import { restingAt, SurfaceLaw } from '../src/core/heat/surface.ts';
import type { Surface } from '../src/core/heat/types.ts';
import { erfcx } from '../src/core/numerics/special.ts';
import { vapourOfWetBulb } from '../src/core/properties/humid-air.ts';
import { ladledCoefficient, meatEffusivity } from '../src/core/properties/ladle.ts';
import type { Example, Row } from './case.ts';

const pressure = 101_325;
const meat = { k: 0.48, rho: 1050, cp: 3500 };

function heat(h: number, surface: Surface, C: number, T: number): number {
  const law = new SurfaceLaw(h, surface);
  law.surround(C);
  law.at(T);
  return law.q;
}

/** Air temperature, surface temperature and effective coefficient of saturated air, 15 W/(m² K) dry. */
const saturated = [
  [60, 10, 117],
  [60, 30, 157],
  [60, 50, 226],
  [80, 10, 224],
  [80, 30, 288],
  [80, 70, 601],
  [85, 30, 349],
  [85, 70, 716],
  [90, 50, 593],
  [95, 10, 488],
  [95, 70, 1228],
  [98, 30, 856],
] as const;

/** Dry bulb, vapour pressure [kPa] and thermodynamic wet bulb. */
const bulbs = [
  [100, 5, 42.88],
  [120, 12.35, 55.53],
  [150, 12.35, 57.48],
  [180, 31.2, 73.5],
  [200, 47.4, 82.19],
  [230, 70.2, 91.13],
] as const;

/** Layers of 10 µm, conductivity, coefficient without and with them. */
const films = [
  [10, 0.3, 1000, 750],
  [10, 0.13, 1000, 565.2],
  [20, 0.3, 300, 250],
  [5, 0.3, 100, 98.36],
] as const;

const condensing = (): Row[] =>
  saturated.map(([air, T, expected]) => ({
    quantity: `saturated air of ${air} °C on a surface of ${T} °C: heat over difference of temperature`,
    source: 'chilton-colburn-1934',
    confidence: 'memory',
    expected,
    ours: heat(15, { vapour: { pressure, relative: 1, activity: 1 } }, air, T) / (air - T),
    tolerance: 0.01 * expected,
    unit: 'W/(m² K)',
    why: 'worked out apart with rounded figures of steam; three figures kept',
  }));

const drying = (): Row[] =>
  bulbs.flatMap(([air, kPa, expected]): Row[] => {
    const partial = 1000 * kPa;
    return [
      {
        quantity: `air of ${air} °C with ${kPa} kPa of vapour: where a wet surface rests`,
        source: 'ashrae-fundamentals-psychrometrics',
        confidence: 'memory',
        expected,
        ours: restingAt({ h: 20, surface: { vapour: { pressure, partial, activity: 1 } } }, air),
        tolerance: 1.1,
        unit: '°C',
        why: 'the thermodynamic wet bulb is a definition, the resting surface an exchange by a film: they are known to differ by about a degree',
      },
    ];
  });

const given = (): Row[] =>
  bulbs.slice(0, 3).map(([air, kPa, bulb]) => ({
    quantity: `vapour in air of ${air} °C with a wet bulb of ${bulb} °C`,
    source: 'ashrae-fundamentals-psychrometrics',
    confidence: 'memory',
    expected: kPa,
    ours: vapourOfWetBulb(air, bulb, pressure) / 1000,
    tolerance: 0.01,
    unit: 'kPa',
    why: 'the wet bulb is rounded to a hundredth of a degree',
  }));

const wrapped = (): Row[] =>
  films.map(([layers, k, h, expected]) => ({
    quantity: `${layers} layers of 10 µm at ${k} W/(m K), ${h} W/(m² K) without`,
    source: 'incropera-dewitt',
    confidence: 'computed',
    expected,
    ours: heat(h, { resistance: (layers * 1e-5) / k }, 100, 20) / 80,
    tolerance: 0.06,
    unit: 'W/(m² K)',
    why: 'a series of two resistances, to the figures kept',
  }));

const boiling = (): Row[] =>
  (
    [
      [0, 99.974],
      [1500, 94.983],
      [3000, 89.972],
    ] as const
  ).map(([altitudeM, expected]) => ({
    quantity: `steam in a kitchen at ${altitudeM} m`,
    source: 'iso-2533-atmosphere',
    confidence: 'memory',
    expected,
    ours: surroundingsOf({ name: 'steam', medium: 'steam', altitudeM, until: { min: 1 } }, 'stage')
      .medium as number,
    tolerance: 0.002,
    unit: '°C',
    why: 'the last figure kept',
  }));

/** Semi-infinite body that takes up a constant flux: Carslaw and Jaeger, §2.9. */
function fluxed(): Row[] {
  const q = 5000;
  const s = 120;
  const depths = [0, 0.002, 0.005, 0.01];
  const { readings } = cook(
    {
      body: { shape: 'slab', thickness: 0.1, layers: [{ name: 'meat', material: { properties: meat } }] },
      start: 10,
      stages: [{ name: 'grill', medium: 10, h: 1e-6, surface: { flux: q }, until: { kind: 'time', s } }],
      target: { reference: 70, z: 7.5, s: 120 },
      probes: depths.map((x, i) => ({ name: String(i), place: { x: 0.05 - x } })),
    },
    { at: [s] },
  );
  const alpha = meat.k / (meat.rho * meat.cp);
  return depths.map((x, i) => {
    const u = x / (2 * Math.sqrt(alpha * s));
    const bell = Math.exp(-u * u);
    return {
      quantity: `5 kW/m² for two minutes: ${x * 1000} mm below the surface`,
      source: 'carslaw-jaeger-1959',
      confidence: 'memory',
      expected: 10 + (q / meat.k) * bell * (2 * Math.sqrt((alpha * s) / Math.PI) - x * erfcx(u)),
      ours: readings?.[i]?.[0] ?? Number.NaN,
      tolerance: 0.1,
      unit: '°C',
      why: 'a tenth of a degree, as for every body',
    };
  });
}

/** Fat that is ladled, averaged over time, against every ladle as a stage of its own. */
function ladled(): Row[] {
  const body = {
    shape: 'cylinder',
    diameter: 0.05,
    layers: [{ name: 'meat', material: { properties: meat } }],
  } as const;
  const target = { reference: 70, z: 7.5, s: 120 };
  const cases = [
    [2, 10, 33],
    [4, 10, 33],
    [12, 30, 30],
    [5, 60, 15],
  ] as const;
  return cases.map(([on, every, count]): Row => {
    const wait = { name: 'air', medium: 30, h: 8, until: { kind: 'time', s: (every - on) / 2 } } as const;
    const fat = { name: 'fat', medium: 180, h: 300, until: { kind: 'time', s: on } } as const;
    const each = cook({
      body,
      start: 20,
      stages: Array.from({ length: count }, () => [wait, fat, wait]).flat(),
      target,
    });
    const h = ladledCoefficient(300, on, every, meatEffusivity.value);
    const averaged = cook({
      body,
      start: 20,
      stages: [
        {
          name: 'basted',
          medium: 30,
          h: 8,
          surface: { ladle: { C: 180, h, share: on / every } },
          until: { kind: 'time', s: count * every },
        },
      ],
      target,
    });
    const rise = (each.stages.at(-1)?.mean ?? Number.NaN) - 20;
    return {
      quantity: `${count} ladles, ${on} s in every ${every}: mean rise of a roll of 50 mm`,
      source: 'own-computation',
      confidence: 'computed',
      expected: rise,
      ours: (averaged.stages[0]?.mean ?? Number.NaN) - 20,
      tolerance: 0.02 * rise,
      unit: 'K',
      why: 'two per cent: what the average still leaves out, on the hot side',
    };
  });
}

export const example: Example = {
  title: 'What steam, air, wraps, a grill and a ladle do to a surface',
  story: `Saturated air of 60 to 98 °C brings ten to a hundred times what its convection does, because its steam condenses; a wet surface in a dry
oven rests near the wet bulb; ten layers of film take a quarter of a steamer's coefficient; steam is as hot as the height of the kitchen lets it be. A grill is heat
that is absorbed; ladled fat is averaged over time, and how much that leaves out is measured against every ladle as a stage of its own.`,
  equation: 'q(T) = h·(T_a − T) + N·h_fg + ε·σ·(T_w⁴ − T⁴) + q_r;  T_o = T + R·q(T_o)',
  sources: [
    'chilton-colburn-1934',
    'ashrae-fundamentals-psychrometrics',
    'incropera-dewitt',
    'iso-2533-atmosphere',
    'carslaw-jaeger-1959',
  ],
  run(): Row[] {
    return [...condensing(), ...drying(), ...given(), ...wrapped(), ...boiling(), ...fluxed(), ...ladled()];
  },
};
