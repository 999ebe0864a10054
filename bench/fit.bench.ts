/**
 * Times a fit of 240 readings, from JSON to JSON: in one direction and on a mesh in two, with one, two and three values.
 *
 *     npx tsx bench/fit.bench.ts [repeats]
 */
import os from 'node:os';
import { runCook } from '../src/contract/cook.ts';
import { runFit } from '../src/contract/fit.ts';

const repeats = Number(process.argv[2] ?? 5);
const meat = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const skin = { water: 0.6, protein: 0.15, fat: 0.24, carbohydrate: 0, fibre: 0, ash: 0.01 };
const stages = (hWm2K: number) => [
  { name: 'steam', mediumC: 100, hWm2K, until: { min: 40 } },
  { name: 'ice water', mediumC: 1, hWm2K: 400, until: { min: 20 } },
];
const pieces = {
  'a cylinder': {
    body: { shape: 'cylinder', diameterMm: 50, layers: [{ name: 'meat', composition: meat }] },
    probe: { radiusMm: 2 },
  },
  'a tapered piece in its skin': {
    body: {
      shape: 'revolved',
      profile: [
        { atMm: 0, diameterMm: 40 },
        { atMm: 120, diameterMm: 56 },
        { atMm: 180, diameterMm: 50 },
      ],
      layers: [
        { name: 'skin', thicknessMm: 3, composition: skin },
        { name: 'filling', composition: meat },
      ],
    },
    probe: { atMm: 110, radiusMm: 2 },
  },
} as const;

/** The engine's own log with a scatter of about 0.2 K that is the same every time. */
function logOf({ body, probe }: (typeof pieces)[keyof typeof pieces]) {
  const { history, probes } = runCook({
    body,
    startC: 4,
    stages: stages(400),
    target: { referenceC: 70, zC: 7.5, min: 2 },
    probes: [{ name: 'core', ...probe }],
  });
  const C = probes[0]?.C ?? [];
  return Array.from({ length: 240 }, (_, i) => {
    const min = (i + 1) / 4;
    const next = Math.max(
      1,
      history.min.findIndex((m) => m >= min),
    );
    const [a, b] = [history.min[next - 1] ?? 0, history.min[next] ?? 1];
    const straight = (C[next - 1] ?? 0) + (((C[next] ?? 0) - (C[next - 1] ?? 0)) * (min - a)) / (b - a);
    return { min, C: straight + 0.28 * Math.sin(1 + 7919 * i * i) };
  });
}

console.log(
  `fit of 240 readings (${os.cpus()[0]?.model}, ${os.cpus().length} cores, Node ${process.versions.node}), wanted ≤ 3 s`,
);
for (const [name, piece] of Object.entries(pieces)) {
  const log = logOf(piece);
  for (const fit of [['hWm2K'], ['hWm2K', 'diffusivity'], ['hWm2K', 'diffusivity', 'radiusMm']]) {
    let runs = 0;
    const before = process.cpuUsage().user;
    const times = Array.from({ length: repeats }, () => {
      const began = performance.now();
      runs = runFit({ ...piece, startC: 4, stages: stages(1000), log, fit }).runs;
      return performance.now() - began;
    });
    const cpu = (process.cpuUsage().user - before) / 1e6 / repeats;
    const [first = Number.NaN] = times;
    times.sort((a, b) => a - b);
    console.log(
      `  ${name}, ${fit.join(' + ')}: first ${(first / 1000).toFixed(2)} s, median ${((times[times.length >> 1] ?? 0) / 1000).toFixed(2)} s, slowest ${((times.at(-1) ?? 0) / 1000).toFixed(2)} s (${cpu.toFixed(2)} s of the processor, ${runs} runs of the engine)`,
    );
  }
}
