/** Temperature and lethality in a body through its stages: the engine's one verb. */
import { Contradiction } from '../errors.ts';
import { choiOkosRange, normalised } from '../properties/food-components.ts';
import { checkProblem, limits } from './check.ts';
import { type ColdSpot, coldSpotOf, surfaceBeside } from './cold-spot.ts';
import { Conduction } from './conduction.ts';
import { conductivityBasis } from './conductivity-basis.ts';
import { framesOf } from './frames.ts';
import { freezingBasis } from './freezing-basis.ts';
import { historyOf, lethalityAt, reachedAt } from './history.ts';
import { Cancelled, March, type StageEnd } from './march.ts';
import { type Material, materialOf, type Span } from './material.ts';
import { coarseLine, coarseMesh, type Fineness, fineLine, fineMesh, meshOf } from './mesh.ts';
import { weightsAt } from './place.ts';
import { readingsAt } from './readings.ts';
import { valueAt } from './record.ts';
import { surroundedBy } from './surface.ts';
import { surfaceBasis } from './surface-basis.ts';
import type { Basis, CookOptions, CookProblem, CookResult, StageResult } from './types.ts';
import { bounded, type Wet } from './water.ts';

export { Cancelled };

/** What the programme can bring a body to [°C]. */
function spanOf({ start, stages }: CookProblem): Span {
  const { low: lowest, high: highest } = surroundedBy({ start, stages });
  return { lowest, highest: Math.min(highest, limits.medium.high), start };
}

function finenessOf(problem: CookProblem, options: CookOptions): Fineness {
  const line = problem.body.shape !== 'revolved' && problem.body.shape !== 'block';
  const coarse = options.mode === 'coarse';
  const base = line ? (coarse ? coarseLine : fineLine) : coarse ? coarseMesh : fineMesh;
  return { ...base, refine: options.refine ?? 1 };
}

/**
 * Temperature and lethality in a body through its stages [°C, s at the reference].
 *
 *     ρ_start·cp(T)·∂T/∂t = div(k(T)·grad T);  −k·∂T/∂n = h·(T − T_medium) at the surface;  P = ∫ 10^((T − T_ref)/z) dt
 *
 * @param problem body, start, stages and target, in SI with °C; limits in `check.ts`
 * @param options mode, refinement, tolerance, frames, progress
 * Assumes perfect contact between layers; one law of the surface over all of it within a stage; what dries off takes its
 * heat and no substance; no heat of melting fat or denaturing protein; the body keeps its size and its mass:
 * density is that of the start.
 * Checked against the series of slab, cylinder, sphere, bar and finite cylinder at Biot 0.1 to 100 (0.1 K), an exact two-layer cylinder, exact
 * stages, its own refined limit, and a finite-element solution of another kind.
 * Deterministic to the last digit. Throws `OutOfRange` or `Contradiction` for what cannot be, `Cancelled` when asked to stop.
 * Source: carslaw-jaeger-1959, choi-okos-1986, bigelow-1921
 */
export function cook(problem: CookProblem, options: CookOptions = {}): CookResult {
  checkProblem(problem);
  const { body, target } = problem;
  const { at } = options;
  const coarse = options.mode === 'coarse';
  const mesh = meshOf(body, finenessOf(problem, options));
  const probePlaces = (problem.probes ?? []).map((p, i) => weightsAt(mesh, p.place, `probes[${i}].place`));
  const span = spanOf(problem);
  const materials = body.layers.map((layer, i) => materialOf(layer, span, `body.layers[${i}]`));
  const conduction = new Conduction(mesh, materials);
  const march = new March(
    conduction,
    problem.start,
    target,
    {
      // Where a front passes, a temperature bends within a step.
      tolerance:
        options.tolerance ??
        (coarse ? 0.3 : conduction.corners !== undefined && mesh.nv === 1 ? 0.005 : 0.02),
      logTolerance: coarse ? 0.25 : 0.05,
      keepLethality: options.frames !== undefined,
      ...(options.onProgress ? { onProgress: options.onProgress } : {}),
    },
    problem.alsoLeast,
  );
  const startField = march.T;
  const asWet: StageEnd[] = problem.stages.map((stage) => march.run(stage));
  checkBounded(problem, march, Math.max(1, coarse ? 4 : 0));

  const spot = coldSpotOf(mesh, conduction.exposed, march.P);
  const surface = { nodes: [surfaceBeside(mesh, conduction.exposed, spot)], w: [1] };
  let total = 0;
  for (const v of conduction.volume) total += v;
  const share = Float64Array.from(conduction.volume, (v) => v / total);
  const firstMedium = problem.stages[0].medium;
  const also = march.also.map(({ P }) => coldSpotOf(mesh, conduction.exposed, P).weights);
  const { history, probes } = historyOf({
    start: startField,
    medium0: typeof firstMedium === 'number' ? firstMedium : firstMedium[0].C,
    steps: march.steps,
    share,
    coldSpot: spot.weights,
    surface,
    probes: [...probePlaces, ...also],
    target,
    tolerance: coarse ? 0.2 : 0.03,
    ice: conduction.iceShare,
  });
  const lethality = lethalityAt(march.steps, spot.weights, target);
  const wet = wetOf(conduction, problem);
  const dried = bounded(
    asWet.map(({ water }) => water?.lost ?? 0),
    wet.water,
  );
  const ends = asWet.map((end, i) =>
    end.water === undefined ? end : { ...end, water: { ...end.water, lost: dried[i] } },
  );
  const stored = march.stored();
  const imbalance = stored - march.storedAtStart - march.supplied;
  // What is exchanged in the first instant is less than the digits of what is stored: it is held against those.
  const exchanged = Math.max(
    march.exchanged,
    1e-9 * Math.max(Math.abs(stored), Math.abs(march.storedAtStart)),
  );
  return {
    coldSpot: { ...spot.place, node: spot.node },
    stages: ends.map((end) => ({
      ...stageResult(end, spot, surface.nodes[0], share),
      ...(conduction.iceShare === undefined ? {} : { ice: conduction.iceShare(end.T) }),
    })),
    lethality: {
      s: lethality,
      reachedAt: reachedAt(march.steps, spot.weights, target.s, target),
      passes: lethality >= target.s,
    },
    history,
    ...(also.length === 0 ? {} : { alsoLeast: probes.slice(probePlaces.length).map((probe) => probe.C) }),
    heatBalancePct: exchanged > 0 ? (100 * Math.abs(imbalance)) / exchanged : 0,
    probes: (problem.probes ?? []).map((p, i) => ({ name: p.name, ...probes[i] })),
    ...(at === undefined
      ? {}
      : { readings: probePlaces.map((place) => readingsAt(march.steps, place, at, problem.start)) }),
    mesh: { shape: mesh.shape, nu: mesh.nu, nv: mesh.nv, x: mesh.x, y: mesh.y, interfaces: mesh.interfaces },
    frames: options.frames ? framesOf(march.steps, startField, options.frames.count) : [],
    mass: wet.mass,
    water: wet.water,
    area: conduction.area.reduce((sum, a) => sum + a, 0),
    steps: march.steps.length,
    basis: basisOf(problem, materials, march, surfaceBasis(problem, asWet, wet, march.highest)),
  };
}

/**
 * Without a source inside, nothing is ever hotter than the hottest or colder than the coldest of start and surroundings: the
 * medium, or where its surface rests that dries, is steamed on or radiated at. A mesh so skewed that it breaks this by more
 * than `slack` [K] gives no answer, and neither does a fire under which food burns.
 */
function checkBounded(problem: CookProblem, march: March, slack: number): void {
  const { body } = problem;
  const { low, high } = surroundedBy(problem);
  if (march.highest > limits.medium.high + slack)
    throw new Contradiction(
      'stages',
      `a surface that reaches ${march.highest.toFixed(0)} °C`,
      `at most ${limits.medium.high} °C: less radiant heat, or for a shorter time; a crust that burns is not computed`,
    );
  if (march.lowest >= low - slack && march.highest <= high + slack) return;
  const { lowest, highest } = march;
  throw new Contradiction(
    body.shape === 'revolved' ? 'body.profile' : 'body',
    `a shape so steep or flat that it cannot be computed: ${lowest.toFixed(0)} to ${highest.toFixed(0)} °C where nothing is outside ${tidy(low)} to ${tidy(high)} °C`,
    'a profile whose diameter changes less from point to point',
  );
}

/** A temperature as given, or one that was computed to a tenth. */
const tidy = (C: number) => Number(C.toFixed(1));

function stageResult(end: StageEnd, spot: ColdSpot, surface: number, share: Float64Array): StageResult {
  let coldest = Number.POSITIVE_INFINITY;
  let warmest = Number.NEGATIVE_INFINITY;
  let mean = 0;
  end.T.forEach((T, i) => {
    coldest = Math.min(coldest, T);
    warmest = Math.max(warmest, T);
    mean += share[i] * T;
  });
  // The cold spot lies between nodes: the parabola may leave theirs by a hair, which no such place does.
  const coldSpot = Math.min(warmest, Math.max(coldest, valueAt(end.T, spot.weights)));
  return {
    name: end.name,
    start: end.start,
    end: end.end,
    reached: end.reached,
    coldest,
    warmest,
    surface: end.T[surface],
    mean,
    coldSpot,
    ...(end.water === undefined ? {} : { water: end.water }),
  };
}

/** Mass and the water in it; of constant properties nobody knows how much of it is water, so it is all counted. */
function wetOf(conduction: Conduction, { body }: CookProblem): Wet {
  let mass = 0;
  let water = 0;
  conduction.volumeOf().forEach((v, m) => {
    const kg = v * conduction.materials[m].rho;
    const { material } = body.layers[m];
    mass += kg;
    water += 'composition' in material ? kg * normalised(material.composition).water : kg;
  });
  return { mass, water };
}

function basisOf(
  problem: CookProblem,
  materials: readonly Material[],
  march: March,
  surface: readonly Basis[],
): Basis[] {
  const { layers } = problem.body;
  const basis: Basis[] = [];
  const composed = layers.filter((l) => 'composition' in l.material).map((l) => l.name);
  const constant = layers.filter((l) => 'properties' in l.material).map((l) => l.name);
  if (composed.length > 0) {
    basis.push({
      what: `specific heat and conductivity of ${composed.join(', ')} from composition and temperature, density from composition at the start (Choi–Okos)`,
      source: 'choi-okos-1986',
      confidence: 'secondary',
    });
    basis.push(...conductivityBasis(layers));
  }
  if (constant.length > 0)
    basis.push({
      what: `constant properties of ${constant.join(', ')} as given`,
      source: 'user-input',
      confidence: 'assumption',
    });
  basis.push({
    what: 'heat conduction with a surface coefficient, the same over the whole surface within a stage, and perfect contact between layers',
    source: 'carslaw-jaeger-1959',
    confidence: 'computed',
  });
  basis.push(...surface);
  basis.push({
    what: `lethality as 10^((T − ${problem.target.reference} °C)/${problem.target.z} °C) integrated over time`,
    source: 'bigelow-1921',
    confidence: 'secondary',
  });
  const { low, high } = choiOkosRange;
  if (composed.length > 0 && (march.lowest < low || march.highest > high))
    basis.push({
      what: `extrapolated: temperatures from ${march.lowest.toFixed(0)} to ${march.highest.toFixed(0)} °C leave the ${low} to ${high} °C of the property functions; values at the nearer end are used`,
      source: 'choi-okos-1986',
      confidence: 'assumption',
    });
  basis.push(...freezingBasis(problem.body.layers, materials, march.lowest));
  return basis;
}
