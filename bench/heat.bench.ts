/**
 * Times the engine on a tapered body of 170 mm in two layers, 70 simulated minutes in steam and ice water, beside the same mesh, steps and
 * Newton iterations in C and in scipy, all in one run on one machine. Nothing is tuned against a rival: the C is the same algorithm at -O3,
 * scipy has its own factorisations, and ours alone also makes the history, the cold spot and the account.
 *
 *     npx tsx bench/heat.bench.ts [repeats]
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Conduction } from '../src/core/heat/conduction.ts';
import { cook } from '../src/core/heat/cook.ts';
import { March } from '../src/core/heat/march.ts';
import { materialOf, tableRange } from '../src/core/heat/material.ts';
import { fineMesh, meshOf } from '../src/core/heat/mesh.ts';
import type { CookOptions, CookProblem } from '../src/core/heat/types.ts';
import { esdirk4 } from '../src/core/numerics/esdirk.ts';

const rivals = join(dirname(fileURLToPath(import.meta.url)), 'rivals');
const repeats = Number(process.argv[2] ?? 20);

const problem: CookProblem = {
  body: {
    shape: 'revolved',
    profile: [
      { at: 0, diameter: 0.04 },
      { at: 0.115, diameter: 0.056 },
      { at: 0.17, diameter: 0.05 },
    ],
    layers: [
      {
        name: 'skin',
        thickness: 0.003,
        material: {
          composition: { water: 0.6, protein: 0.15, fat: 0.24, carbohydrate: 0, fibre: 0, ash: 0.01 },
        },
      },
      {
        name: 'filling',
        material: {
          composition: { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 },
        },
      },
    ],
  },
  start: 4,
  stages: [
    { name: 'steam', medium: 100, h: 1000, until: { kind: 'time', s: 2400 } },
    { name: 'ice water', medium: 1, h: 400, until: { kind: 'time', s: 1800 } },
  ],
  target: { reference: 70, z: 7.5, s: 120 },
};

interface Timing {
  readonly best: number;
  readonly median: number;
  readonly difference?: number;
}

function time(run: () => void, count: number): Timing {
  const ms: number[] = [];
  for (let i = 0; i < count; i++) {
    const start = performance.now();
    run();
    ms.push(performance.now() - start);
  }
  ms.sort((a, b) => a - b);
  return { best: ms[0] ?? Number.NaN, median: ms[Math.floor(count / 2)] ?? Number.NaN };
}

const march = () => {
  const conduction = new Conduction(
    meshOf(problem.body, fineMesh),
    problem.body.layers.map((layer) => materialOf(layer, { lowest: 0, highest: 150, start: problem.start })),
  );
  const run = new March(conduction, problem.start, problem.target, {
    tolerance: 0.02,
    logTolerance: 0.05,
    keepLethality: false,
  });
  return { conduction, run };
};

/** What the engine did, step by step, in one file of doubles that the rivals read. */
function caseFile(path: string): void {
  const { conduction, run } = march();
  const iterations: number[][] = [];
  const step = run.stepper.step.bind(run.stepper);
  const evaluate = conduction.evaluate.bind(conduction);
  let times: number[] = [];
  conduction.evaluate = (T, t, U, F) => {
    times.push(t);
    evaluate(T, t, U, F);
  };
  run.stepper.step = (t, h, ...rest) => {
    times = [];
    const outcome = step(t, h, ...rest);
    const counts = esdirk4.c
      .slice(1)
      .map((c) => times.filter((when) => Math.abs(when - (t + c * h)) < 1e-9 * h).length);
    iterations.push(counts);
    return outcome;
  };
  for (const stage of problem.stages) run.run(stage);
  if (iterations.length !== run.steps.length)
    throw new Error('a step was refused: the case cannot be repeated as it is');
  const inside = conduction as unknown as {
    nodes: Int32Array[];
    volumes: Float64Array[];
    metric: Float64Array;
  };
  const { mesh, materials, exposed, area } = conduction;
  const { stages, c, a, b, embedded, gamma } = esdirk4;
  const numbers: number[] = [];
  const push = (...values: ArrayLike<number>[]) => {
    for (const list of values) for (let i = 0; i < list.length; i++) numbers.push(list[i] as number);
  };
  const { target } = problem;
  const tableLength = materials[0]?.table.length ?? 0;
  push([
    conduction.n,
    mesh.nu,
    mesh.nv,
    materials.length,
    exposed.length,
    run.steps.length,
    problem.stages.length,
  ]);
  push([
    tableLength,
    stages,
    tableRange.low,
    1 / tableRange.step,
    target.reference,
    target.z,
    problem.start,
    gamma,
  ]);
  for (const { table } of materials) push(table);
  materials.forEach((_, m) => {
    const nodes = inside.nodes[m] as Int32Array;
    push([nodes.length], nodes, inside.volumes[m] as Float64Array);
  });
  push(exposed, area, mesh.layerOf, inside.metric, c);
  for (let i = 0; i < stages; i++) push(Array.from({ length: stages }, (_, j) => a[i]?.[j] ?? 0));
  push(
    b,
    b.map((w, i) => (w - (embedded[i] ?? 0)) / gamma),
  );
  push(
    problem.stages.map((s) => s.h),
    problem.stages.map((s) => s.medium as number),
  );
  run.steps.forEach((s, i) => {
    push([s.h, s.stage], iterations[i] as number[], [0]);
  });
  push(run.T);
  writeFileSync(path, new Uint8Array(Float64Array.from(numbers).buffer));
}

/** The least of the bests and the middle of the medians. */
function pooled(timings: readonly Timing[]): Timing {
  const medians = timings.map((t) => t.median).sort((a, b) => a - b);
  return {
    best: Math.min(...timings.map((t) => t.best)),
    median: medians[Math.floor(medians.length / 2)] ?? Number.NaN,
    difference: Math.max(...timings.map((t) => t.difference ?? 0)),
  };
}

interface Rival {
  readonly name: string;
  readonly costly: boolean;
  readonly run: (count: number) => Timing;
}

function rivalsHere(file: string): Rival[] {
  const found: Rival[] = [];
  if (has('gcc', ['--version']))
    for (const flags of [['-O3'], ['-O3', '-march=native', '-ffast-math']]) {
      const program = join(folder, `conduction${found.length}`);
      execFileSync('gcc', [...flags, '-o', program, join(rivals, 'conduction.c'), '-lm']);
      found.push({
        name: `C, gcc ${flags.join(' ')}`,
        costly: false,
        run: (count) => JSON.parse(execFileSync(program, [file, String(count)]).toString()) as Timing,
      });
    }
  else console.log('C: no gcc on this machine, not compared');
  const env = { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' };
  const script = join(rivals, 'conduction_scipy.py');
  if (has('python3', ['-c', 'import scipy.sparse.linalg']))
    for (const kind of ['sparse', 'banded'])
      found.push({
        name: `scipy, ${kind === 'sparse' ? 'sparse LU' : 'banded Cholesky'}`,
        costly: true,
        run: (count) => {
          const output = execFileSync('python3', [script, file, kind, String(count + 1)], { env });
          return JSON.parse(output.toString()) as Timing;
        },
      });
  else console.log('scipy: not on this machine, not compared');
  return found;
}

const has = (command: string, args: string[]) => spawnSync(command, args).status === 0;
const show = (name: string, t: Timing, note = '') =>
  console.log(
    `${name.padEnd(44)} best ${t.best.toFixed(1).padStart(7)} ms   median ${t.median.toFixed(1).padStart(7)} ms  ${note}`,
  );

const folder = mkdtempSync(join(tmpdir(), 'heat-bench-'));
try {
  console.log(
    `Node ${process.version}, ${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores, ${repeats} runs each`,
  );
  const cold = time(() => cook(problem), 1);
  console.log(`first call in a cold process: ${cold.best.toFixed(0)} ms`);
  const modes: [string, CookOptions][] = [
    ['fine', {}],
    ['coarse', { mode: 'coarse' }],
  ];
  // Each mode by itself, as a page that drags a slider or waits for the answer meets it.
  const ours = new Map(
    modes.map(([name, options]) => {
      time(() => cook(problem, options), 10);
      return [name, time(() => cook(problem, options), repeats)] as const;
    }),
  );
  for (const [name, timing] of ours) {
    const r = cook(problem, name === 'coarse' ? { mode: 'coarse' } : {});
    show(`ours, ${name}, everything`, timing, `${r.mesh.nu} × ${r.mesh.nv} nodes, ${r.steps} steps`);
  }
  const marching = () => {
    const { run } = march();
    for (const stage of problem.stages) run.run(stage);
  };
  const file = join(folder, 'case.bin');
  caseFile(file);
  const rivalRuns = rivalsHere(file);
  // Turn and turn about, so that whatever else the machine does falls on all alike.
  const rounds = 6;
  const few = Math.max(2, Math.round(repeats / rounds));
  const whole: Timing[] = [];
  const alone: Timing[] = [];
  const others = new Map<string, Timing[]>(rivalRuns.map(({ name }) => [name, []]));
  time(marching, 5);
  for (let round = 0; round < rounds; round++) {
    whole.push(time(() => cook(problem), few));
    alone.push(time(marching, few));
    for (const { name, run, costly } of rivalRuns)
      if (!costly || round % 3 === 0) others.get(name)?.push(run(costly ? 2 : few));
  }
  const best = pooled(whole);
  const same = pooled(alone);
  console.log('in turns with the rivals:');
  show('ours, fine, everything', best);
  show('ours, fine, without history and cold spot', same);
  for (const [name, timings] of others) {
    const rival = pooled(timings);
    show(name, rival, `largest difference ${rival.difference?.toExponential(1)} K`);
    const ratios = [best.best, same.best].map((ms) => (ms / rival.best).toFixed(2));
    console.log(`${''.padEnd(44)} ours / it: ${ratios[0]} (everything), ${ratios[1]} (the same work)`);
    if (!((rival.difference ?? 1) < 0.01)) process.exitCode = 1;
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
