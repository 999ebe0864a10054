import { cook } from '../src/core/heat/cook.ts';
import type { Body, ConstantProperties, Layer, Until } from '../src/core/heat/types.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const scipy = kept('conduction');

const of = (k: number, rho: number, cp: number): Layer[] => [
  { name: 'food', material: { properties: { k, rho, cp } } },
];
const byDiffusivity = (k: number, alpha: number): ConstantProperties => ({
  k,
  rho: 1000,
  cp: k / alpha / 1000,
});

function seconds(body: Body, start: number, medium: number, h: number, until: Until): number {
  const r = cook({
    body,
    start,
    stages: [{ name: 'stage', medium, h, until }],
    target: { reference: 70, z: 7.5, s: 120 },
  });
  return r.stages[0]?.reached ? r.stages[0].end : Number.NaN;
}

export const example: Example = {
  title: 'Textbook problems',
  story: `Problems that students of heat transfer and of food engineering are set: an egg in hot water, steaks in a freezer, an apple in a stream of
cold water. The books answer with one term of the series or a chart; the exact answers are used here, and the book's own beside them.`,
  equation: 'ρ·cp·∂T/∂t = div(k·grad T), −k·∂T/∂n = h·(T − T_medium)',
  sources: ['cengel-heat-transfer', 'singh-heldman'],
  run(): Row[] {
    const egg = byDiffusivity(0.627, 0.151e-6);
    const second = byDiffusivity(0.6, 0.14e-6);
    const secondTime = seconds(
      { shape: 'sphere', diameter: 0.055, layers: of(second.k, second.rho, second.cp) },
      8,
      97,
      1400,
      { kind: 'coldest', C: 70 },
    );
    const steak = byDiffusivity(0.45, 0.91e-7);
    const eggTime = seconds(
      { shape: 'sphere', diameter: 0.05, layers: of(egg.k, egg.rho, egg.cp) },
      5,
      95,
      1200,
      { kind: 'coldest', C: 70 },
    );
    const steakRun = cook({
      body: { shape: 'slab', thickness: 0.02, layers: of(steak.k, steak.rho, steak.cp) },
      start: 25,
      stages: [{ name: 'freezer', medium: -11, h: 9, until: { kind: 'coldest', C: 60, atMost: 5590 } }],
      target: { reference: 70, z: 7.5, s: 120 },
      probes: [{ name: 'surface', place: { x: 0.01 } }],
    });
    const apple = seconds({ shape: 'sphere', diameter: 0.06, layers: of(0.355, 820, 3600) }, 15, 2, 50, {
      kind: 'warmest',
      C: 3,
    });
    return [
      {
        quantity: 'egg of 50 mm to 70 °C in the middle: exact series',
        source: 'cengel-heat-transfer',
        confidence: 'computed',
        expected: scipy('egg of 50 mm'),
        ours: eggTime,
        tolerance: 1,
        unit: 's',
        why: 'a tenth of a per cent',
      },
      {
        quantity: 'the same: the book, one term and table',
        source: 'cengel-heat-transfer',
        confidence: 'memory',
        expected: 865,
        ours: eggTime,
        tolerance: 5,
        unit: 's',
        why: 'the book rounds its table and keeps one term where Fo is just above 0.2',
      },
      {
        quantity: 'egg of 55 mm from 8 to 70 °C in water at 97 °C: exact series',
        source: 'cengel-heat-transfer',
        confidence: 'computed',
        expected: scipy('egg of 55 mm'),
        ours: secondTime,
        tolerance: 1,
        unit: 's',
        why: 'a tenth of a per cent',
      },
      {
        quantity: 'surface of steaks of 20 mm after 93.1 min at −11 °C',
        source: 'cengel-heat-transfer',
        confidence: 'read',
        expected: 2,
        ours: steakRun.probes[0]?.C.at(-1) ?? Number.NaN,
        tolerance: 0.05,
        unit: '°C',
        why: 'the book rounds the time to a tenth of a minute',
      },
      {
        quantity: 'apple of 60 mm to 3 °C in the middle',
        source: 'singh-heldman',
        confidence: 'computed',
        expected: scipy('apple'),
        ours: apple,
        tolerance: 8,
        unit: 's',
        why: 'a fifth of a per cent; the book reads a chart (about an hour)',
      },
    ];
  },
};
