/** What the physics cannot stand is refused here, with the place, what was found and what is allowed. */
import { Contradiction, OutOfRange } from '../errors.ts';
import { normalised } from '../properties/food-components.ts';
import { checkSurface } from './check-surface.ts';
import { radiusAt } from './mesh.ts';
import type { Body, CookProblem, Layer, MediumTemperature, Stage } from './types.ts';

/** Limits in SI: sizes [m], times [s], temperatures [°C], surface coefficients [W/(m² K)]. */
export const limits = {
  size: { low: 1e-3, high: 2 },
  thickness: { low: 1e-5, high: 1 },
  start: { low: -40, high: 150 },
  medium: { low: -80, high: 300 },
  h: { low: 0, high: 100_000 },
  time: { low: 0, high: 14 * 86_400 },
  reference: { low: -40, high: 150 },
  z: { low: 1, high: 60 },
  lethality: { low: 0, high: 1e7 },
  k: { low: 0.01, high: 500 },
  rho: { low: 10, high: 20_000 },
  cp: { low: 50, high: 10_000 },
  layers: 4,
  stages: 100,
  logPoints: 200_000,
  profilePoints: 400,
} as const;

interface Range {
  readonly low: number;
  readonly high: number;
}

function within(value: number, range: Range, unit: string, path: string, open = false): void {
  const fits = open ? value > range.low && value <= range.high : value >= range.low && value <= range.high;
  if (!fits || !Number.isFinite(value))
    throw new OutOfRange(
      path,
      `${value} ${unit}`,
      open
        ? `more than ${range.low} ${unit}, at most ${range.high} ${unit}`
        : `${range.low} ${unit} to ${range.high} ${unit}`,
    );
}

function checkLayers(layers: readonly Layer[], path: string): void {
  if (layers.length < 1 || layers.length > limits.layers)
    throw new OutOfRange(path, `${layers.length} layers`, `1 to ${limits.layers} layers`);
  layers.forEach((layer, i) => {
    const here = `${path}[${i}]`;
    const last = i === layers.length - 1;
    if (last && layer.thickness !== undefined)
      throw new Contradiction(
        `${here}.thickness`,
        `${layer.thickness} m on the innermost layer`,
        'none: it fills what is left',
      );
    if (!last && layer.thickness === undefined)
      throw new Contradiction(`${here}.thickness`, 'no thickness', 'every layer but the innermost has one');
    if (layer.thickness !== undefined) within(layer.thickness, limits.thickness, 'm', `${here}.thickness`);
    if ('composition' in layer.material) normalised(layer.material.composition, `${here}.composition`);
    else {
      const { k, rho, cp } = layer.material.properties;
      within(k, limits.k, 'W/(m K)', `${here}.properties.k`);
      within(rho, limits.rho, 'kg/m³', `${here}.properties.rho`);
      within(cp, limits.cp, 'J/(kg K)', `${here}.properties.cp`);
    }
  });
}

function checkProfile(body: Extract<Body, { shape: 'revolved' }>, path: string): void {
  const { profile } = body;
  if (profile.length < 2 || profile.length > limits.profilePoints)
    throw new OutOfRange(
      `${path}.profile`,
      `${profile.length} points`,
      `2 to ${limits.profilePoints} points`,
    );
  profile.forEach((point, i) => {
    const here = `${path}.profile[${i}]`;
    const end = i === 0 || i === profile.length - 1;
    if (i === 0 && point.at !== 0)
      throw new OutOfRange(`${here}.at`, `${point.at} m`, '0 m at the first point');
    if (i > 0 && !(point.at > profile[i - 1].at))
      throw new OutOfRange(
        `${here}.at`,
        `${point.at} m`,
        `more than the point before, ${profile[i - 1].at} m`,
      );
    within(point.diameter, { low: 0, high: limits.size.high }, 'm', `${here}.diameter`, !end);
  });
  within(profile[profile.length - 1].at, limits.size, 'm', `${path}.profile[${profile.length - 1}].at`);
  const widest = Math.max(...profile.map((p) => p.diameter));
  if (!(widest >= limits.size.low))
    throw new OutOfRange(
      `${path}.profile`,
      `a largest diameter of ${widest} m`,
      `at least ${limits.size.low} m`,
    );
}

function checkThickness(body: Body, path: string): void {
  const outer = body.layers.slice(0, -1).reduce((sum, layer) => sum + (layer.thickness ?? 0), 0);
  if (outer === 0) return;
  const names = body.layers.slice(0, -1).map((l) => l.name);
  const refuse = (where: string, half: number) => {
    throw new Contradiction(
      `${path}.layers`,
      `${names.join(' + ')} ${outer} m thick, but only ${half} m to the middle ${where}`,
      'layers that leave something inside them everywhere',
    );
  };
  if (body.shape === 'revolved') {
    body.profile.forEach((point, i) => {
      const R = radiusAt(body.profile, point.at);
      if (!(R - outer > 1e-5)) refuse(`at ${point.at} m along the axis (profile[${i}])`, R);
    });
    return;
  }
  const half =
    body.shape === 'block'
      ? Math.min(body.width, body.height) / 2
      : (body.shape === 'slab' ? body.thickness : body.diameter) / 2;
  if (!(half - outer > 1e-5)) refuse('of the body', half);
}

/**
 * Refuses a body that cannot be [m].
 * @param body in SI
 * @param path what to call it in an error
 * Throws `OutOfRange` or `Contradiction`. Checked by a test for every limit. Source: own-assumption
 */
export function checkBody(body: Body, path = 'body'): void {
  checkLayers(body.layers, `${path}.layers`);
  if (body.shape === 'revolved') checkProfile(body, path);
  else if (body.shape === 'slab') within(body.thickness, limits.size, 'm', `${path}.thickness`);
  else if (body.shape === 'block') {
    within(body.width, limits.size, 'm', `${path}.width`);
    within(body.height, limits.size, 'm', `${path}.height`);
  } else within(body.diameter, limits.size, 'm', `${path}.diameter`);
  checkThickness(body, path);
}

function checkMedium(medium: MediumTemperature, path: string): void {
  if (typeof medium === 'number') {
    within(medium, limits.medium, '°C', path);
    return;
  }
  if (medium.length < 1 || medium.length > limits.logPoints)
    throw new OutOfRange(path, `${medium.length} points`, `1 to ${limits.logPoints} points`);
  medium.forEach((point, i) => {
    if (!Number.isFinite(point.t) || point.t < 0)
      throw new OutOfRange(`${path}[${i}].t`, `${point.t} s`, '0 s or more, from the start of the stage');
    if (i > 0 && !(point.t > medium[i - 1].t))
      throw new OutOfRange(
        `${path}[${i}].t`,
        `${point.t} s`,
        `more than the point before, ${medium[i - 1].t} s`,
      );
    within(point.C, limits.medium, '°C', `${path}[${i}].C`);
  });
}

function checkStage(stage: Stage, path: string): void {
  checkMedium(stage.medium, `${path}.medium`);
  within(stage.h, limits.h, 'W/(m² K)', `${path}.h`, true);
  checkSurface(stage, path);
  const { until } = stage;
  if (until.kind === 'time') within(until.s, limits.time, 's', `${path}.until.s`);
  else {
    if (until.kind === 'lethality') within(until.s, limits.lethality, 's', `${path}.until.s`);
    else within(until.C, limits.medium, '°C', `${path}.until.C`);
    if (until.atMost !== undefined) within(until.atMost, limits.time, 's', `${path}.until.atMost`);
  }
}

/**
 * Refuses a problem that the engine cannot work with, or that cannot be [SI units].
 * @param problem as given to `cook`
 * Throws `OutOfRange` or `Contradiction` for the first thing wrong. Checked by a test for every limit. Source: own-assumption
 */
export function checkProblem(problem: CookProblem): void {
  checkBody(problem.body);
  within(problem.start, limits.start, '°C', 'start');
  if (problem.stages.length < 1 || problem.stages.length > limits.stages)
    throw new OutOfRange('stages', `${problem.stages.length} stages`, `1 to ${limits.stages} stages`);
  problem.stages.forEach((stage, i) => {
    checkStage(stage, `stages[${i}]`);
  });
  within(problem.target.reference, limits.reference, '°C', 'target.reference');
  within(problem.target.z, limits.z, '°C', 'target.z');
  within(problem.target.s, limits.lethality, 's', 'target.s', true);
  for (const [i, { reference, z }] of (problem.alsoLeast ?? []).entries()) {
    within(reference, limits.reference, '°C', `alsoLeast[${i}].reference`);
    within(z, limits.z, '°C', `alsoLeast[${i}].z`);
  }
}
