import { type FitAnswer, runFit } from '../src/contract/fit.ts';
import { finiteCylinder, theta } from '../src/core/heat/series.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const scipy = kept('fit');
const food = { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 };
const alpha = food.kWmK / food.rhoKgM3 / food.cpJkgK;
const layers = [{ name: 'food', properties: food }];
type Readings = { min: number; C: number }[];

const bodies = {
  slab: { shape: 'slab', thicknessMm: 50, layers },
  cylinder: { shape: 'cylinder', diameterMm: 50, layers },
  sphere: { shape: 'sphere', diameterMm: 50, layers },
  'finite cylinder': {
    shape: 'revolved',
    profile: [
      { atMm: 0, diameterMm: 50 },
      { atMm: 120, diameterMm: 50 },
    ],
    layers,
  },
} as const;
type Shape = keyof typeof bodies;

/** A probe at `x` of the way from the middle to the surface, half way along. */
function fitted(shape: Shape, x: number, log: Readings, fit: string[], startH = 500): FitAnswer {
  const probe =
    shape === 'slab'
      ? { xMm: 25 * x }
      : shape === 'finite cylinder'
        ? { atMm: 60, radiusMm: 25 * x }
        : { radiusMm: 25 * x };
  return runFit({
    body: bodies[shape],
    startC: 5,
    stages: [{ name: 'heat', mediumC: 95, hWm2K: startH, until: { min: 60 } }],
    probe,
    log,
    fit,
  });
}

const times = Array.from({ length: 60 }, (_, i) => i + 1);
const seriesLog = (shape: Shape, x: number, h: number): Readings =>
  times.map((min) => {
    const t = 60 * min;
    const left =
      shape === 'finite cylinder'
        ? finiteCylinder(0.025, 0.06, h, food.kWmK, alpha, t, 0.025 * x, 0)
        : theta(shape, (h * 0.025) / food.kWmK, (alpha * t) / 0.025 ** 2, x);
    return { min, C: 95 - 90 * left };
  });

/** Logs without noise, made from the exact series: what went in must come out. */
function exact(rows: Row[]): void {
  for (const shape of Object.keys(bodies) as Shape[])
    for (const [h, x] of [
      [25, 0],
      [150, 0],
      [600, 0.8],
    ] as const) {
      const { hWm2K, diffusivity } = fitted(shape, x, seriesLog(shape, x, h), [
        'hWm2K',
        'diffusivity',
      ]).fitted;
      const meshed = shape === 'finite cylinder';
      const place = x === 0 ? 'in the middle' : 'near the surface';
      const common = { source: 'carslaw-jaeger-1959', confidence: 'computed', unit: '' } as const;
      rows.push(
        {
          ...common,
          quantity: `${shape}, probe ${place}: surface coefficient`,
          expected: h,
          ours: hWm2K?.value ?? Number.NaN,
          tolerance: (meshed ? 0.012 : 0.005) * h,
          unit: 'W/(m² K)',
          why: meshed
            ? 'one per cent and a bit: the mesh in two directions is off by up to 0.05 K, which is worth that'
            : 'half a per cent, from a first guess of 500',
        },
        {
          ...common,
          quantity: `${shape}, ${h} W/(m² K), probe ${place}: diffusivity`,
          expected: 1e8 * alpha,
          ours: 1e8 * (diffusivity?.value ?? Number.NaN),
          tolerance: 0.005 * 1e8 * alpha,
          unit: '10⁻⁸ m²/s',
          why: 'half a per cent',
        },
      );
    }
}

interface Noisy {
  readonly name: string;
  readonly shape: Shape;
  readonly x: number;
  readonly values: readonly [scipy: string, fit: string, ofThem: number, unit: string][];
}

const noisy: readonly Noisy[] = [
  {
    name: 'cylinder, middle',
    shape: 'cylinder',
    x: 0,
    values: [
      ['h', 'hWm2K', 1, 'W/(m² K)'],
      ['k', 'diffusivity', alpha, 'm²/s'],
    ],
  },
  { name: 'slab, off the middle', shape: 'slab', x: 0.6, values: [['h', 'hWm2K', 1, 'W/(m² K)']] },
  {
    name: 'sphere, half way',
    shape: 'sphere',
    x: 0.5,
    values: [
      ['h', 'hWm2K', 1, 'W/(m² K)'],
      ['R', 'radiusMm', 1000, 'mm'],
    ],
  },
  {
    name: 'cylinder, h so high that it hardly matters',
    shape: 'cylinder',
    x: 0,
    values: [['h', 'hWm2K', 1, 'W/(m² K)']],
  },
];

/** Logs with noise, fitted apart with scipy: value and both ends of the interval. */
function againstScipy(rows: Row[]): void {
  for (const { name, shape, x, values } of noisy) {
    const log = times.map((min, i) => ({ min, C: scipy(`${name} C ${i}`) }));
    const answer = fitted(
      shape,
      x,
      log,
      values.map(([, fit]) => fit),
    );
    for (const [key, fit, scale, unit] of values) {
      const ours = answer.fitted[fit];
      // Ends are held to a tenth of the interval's half: walking to them stops a thirtieth short.
      const half = (scipy(`${name} ${key} high`) - scipy(`${name} ${key} low`)) / 2;
      for (const [end, value] of [
        ['', ours?.value],
        [' low', ours?.low95],
        [' high', ours?.high95],
      ] as const)
        rows.push({
          quantity: `${name}: ${fit}${end === '' ? '' : `,${end} end`}`,
          source: 'bates-watts-1988',
          confidence: 'computed',
          expected: scipy(`${name} ${key}${end}`),
          ours: (value ?? Number.NaN) / scale,
          tolerance: 0.1 * half,
          unit: scale === alpha ? 'of the given' : scale === 1000 ? 'm' : unit,
          why: 'a tenth of the half interval, fitted apart with scipy from the exact series',
        });
    }
  }
}

/** A textbook's problem: a copper ball of 12.7 mm, from 66 °C into air of 27 °C, is at 55 °C after 69 s. */
function copperBall(rows: Row[]): void {
  const tau = 69 / Math.log(39 / 28);
  const log = Array.from({ length: 24 }, (_, i) => {
    const s = 15 * (i + 1);
    return { min: s / 60, C: 27 + 39 * Math.exp(-s / tau) };
  });
  const copper = { kWmK: 398, rhoKgM3: 8933, cpJkgK: 389 };
  const { fitted: found } = runFit({
    body: { shape: 'sphere', diameterMm: 12.7, layers: [{ name: 'copper', properties: copper }] },
    startC: 66,
    stages: [{ name: 'air', mediumC: 27, hWm2K: 10, until: { min: 6 } }],
    probe: { radiusMm: 6.35 },
    log,
    fit: ['hWm2K'],
  });
  rows.push({
    quantity: 'copper ball in a stream of air: surface coefficient from its temperature after 69 s',
    source: 'incropera-dewitt',
    confidence: 'memory',
    expected: 35.3,
    ours: found.hWm2K?.value ?? Number.NaN,
    tolerance: 0.1,
    unit: 'W/(m² K)',
    why: 'printed to three figures, as remembered',
  });
}

export const example: Example = {
  title: 'Coefficients from a probe log',
  story: `What a kitchen's own steamer does is fitted from the log of a probe. Logs made from the exact series with known coefficients must give
them back; logs with noise must give what scipy gives, fitted apart from the same readings, with the same intervals; and a textbook's
copper ball must have its coefficient.`,
  equation: 'min Σ(C_i − T(t_i; h, α, R))²;  interval: Σ ≤ Σ_min + t²·(s²·(1 + ρ)/(1 − ρ) + n·own²)',
  sources: ['carslaw-jaeger-1959', 'bates-watts-1988', 'incropera-dewitt'],
  run() {
    const rows: Row[] = [];
    exact(rows);
    againstScipy(rows);
    copperBall(rows);
    return rows;
  },
};
