import { cook } from '../src/core/heat/cook.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const scipy = kept('conduction');
const times = [5, 10, 20, 30];

export const example: Example = {
  title: 'The first half minute under a hot surface',
  story: `A slab of 60 mm from 5 °C into oil at 180 °C, before its surface boils: in half a minute the heat comes a few millimetres deep, so that it
may be taken as endless. This is the hardest moment for a mesh. (Real frying boils the surface dry; this case does not.)`,
  equation: '1 − θ = erfc η − exp(h·x/k + h²αt/k²)·erfc(η + h√(αt)/k),  η = x/(2√(αt))',
  sources: ['incropera-dewitt'],
  run() {
    const depths = [0, 1, 2, 3];
    const { readings } = cook(
      {
        body: {
          shape: 'slab',
          thickness: 0.06,
          layers: [
            { name: 'food', material: { properties: { k: 0.45, rho: 1000, cp: 0.45 / 1.3e-7 / 1000 } } },
          ],
        },
        start: 5,
        stages: [{ name: 'oil', medium: 180, h: 400, until: { kind: 'time', s: 30 } }],
        target: { reference: 70, z: 7.5, s: 120 },
        probes: depths.map((mm) => ({ name: `${mm} mm`, place: { x: 0.03 - mm / 1000 } })),
      },
      { at: times },
    );
    return depths.flatMap((mm, q) =>
      times.map(
        (t, i): Row => ({
          quantity: `${mm} mm deep after ${t} s`,
          source: 'incropera-dewitt',
          confidence: 'computed',
          expected: scipy(`oil ${mm} mm ${t} s`),
          ours: readings?.[q]?.[i] ?? Number.NaN,
          tolerance: 0.1,
          unit: '°C',
          why: 'answers are printed to a tenth of a degree',
        }),
      ),
    );
  },
};
