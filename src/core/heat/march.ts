/** Marches a body through its stages: chooses the steps, finds where a stage ends, keeps the record and the heat account. */
import { esdirk4, ImplicitStepper } from '../numerics/esdirk.ts';
import { hermite } from '../numerics/hermite.ts';
import { bracketedRoot } from '../numerics/roots.ts';
import { coldSpotOf } from './cold-spot.ts';
import type { Conduction } from './conduction.ts';
import { lethalityAt } from './history.ts';
import { courseOf, pieceAt } from './medium.ts';
import { addLethality, cubicLethality, fieldWithin, type StepRecord } from './record.ts';
import { lawOf } from './surface.ts';
import type { Stage, Target, Until, Water } from './types.ts';
import { waterWithin } from './water.ts';

/** Thrown out of a run whose caller asked it to stop. */
export class Cancelled extends Error {
  override readonly name = 'Cancelled';
  constructor() {
    super('the run was stopped');
  }
}

export interface MarchSettings {
  /** Largest error of a step [K]. */
  readonly tolerance: number;
  /** Largest distance of a medium's log from the straight lines that replace it [K]. */
  readonly logTolerance: number;
  readonly keepLethality: boolean;
  readonly onProgress?: (simulated: number) => boolean | undefined;
}

export interface StageEnd {
  readonly name: string;
  readonly start: number;
  readonly end: number;
  readonly reached: boolean;
  /** Temperatures at its end [°C]. */
  readonly T: Float64Array;
  readonly water?: Water;
}

const longest = 86_400;

function extremes(T: ArrayLike<number>): { low: number; high: number } {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < T.length; i++) {
    if (T[i] < low) low = T[i];
    if (T[i] > high) high = T[i];
  }
  return { low, high };
}

export class March {
  readonly steps: StepRecord[] = [];
  /** Lethality at every node so far [s at the reference]. */
  readonly P: Float64Array;
  /** The same by further references and z, where they are asked for. */
  readonly also: readonly { readonly P: Float64Array; readonly target: Target }[];
  T: Float64Array;
  t = 0;
  lowest: number;
  highest: number;
  /** Heat that came in through the surface [J], the same with every step's counted as positive, and what was stored at the start [J]. */
  supplied = 0;
  exchanged = 0;
  readonly storedAtStart: number;
  attempts = 0;
  readonly stepper: ImplicitStepper;
  private readonly body: Conduction;
  private readonly target: Target;
  private readonly settings: MarchSettings;
  private readonly U: Float64Array;
  private readonly rate: Float64Array;
  private readonly slope: Float64Array;
  private stageIndex = -1;
  /** Largest error of a step [K] in the present stage. */
  private tolerance: number;

  constructor(
    body: Conduction,
    start: number,
    target: Target,
    settings: MarchSettings,
    also: readonly Pick<Target, 'reference' | 'z'>[] = [],
  ) {
    this.body = body;
    this.target = target;
    this.settings = settings;
    this.tolerance = settings.tolerance;
    this.stepper = new ImplicitStepper(esdirk4, body);
    this.T = new Float64Array(body.n).fill(start);
    this.P = new Float64Array(body.n);
    this.also = also.map((by) => ({ P: new Float64Array(body.n), target: { ...by, s: target.s } }));
    this.U = new Float64Array(body.n);
    this.rate = new Float64Array(body.n);
    this.slope = new Float64Array(body.n);
    this.lowest = start;
    this.highest = start;
    body.store(this.T, this.U);
    this.storedAtStart = this.stored();
  }

  stored(): number {
    let sum = 0;
    for (const u of this.U) sum += u;
    return sum;
  }

  /** Runs one stage to its end. */
  run(stage: Stage): StageEnd {
    this.stageIndex++;
    const start = this.t;
    const { until } = stage;
    const limit = start + (until.kind === 'time' ? until.s : (until.atMost ?? longest));
    const course = courseOf(stage.medium, this.settings.logTolerance);
    this.body.h = stage.h;
    const law = lawOf(stage, typeof stage.medium === 'number');
    this.body.law = law;
    // Where a hundredth of a kelvin is hundreds of watts a coarse step would take in and give off again what never came.
    this.tolerance = Math.min(this.settings.tolerance, law === undefined ? Number.POSITIVE_INFINITY : 0.1);
    const firstStep = this.steps.length;
    const condition = until.kind === 'time' ? undefined : until;
    let reached = condition !== undefined && this.holds(condition);
    let h = 0;
    let errorBefore = 1;
    let fresh = true;
    // On the log's own clock: `start` added and taken away again may fall short of a corner, and never pass it.
    let corner = 0;
    while (!reached && this.t < limit) {
      const piece = pieceAt(course, Math.max(corner, this.t - start));
      corner = piece.until;
      this.body.medium = { C: piece.C, slope: piece.slope, from: this.t };
      const end = Math.min(limit, start + piece.until);
      // A piece that is shorter than the clock can tell is over at once.
      if (!(end > this.t)) continue;
      if (fresh) {
        this.stepper.begin(this.T, this.t, this.rate, this.slope);
        h = this.firstStep(0);
        fresh = false;
      } else h = Math.min(h, this.firstStep(piece.slope));
      while (!reached && this.t < end) {
        const left = end - this.t;
        const wanted = h;
        const length = left <= wanted * 1.01 ? left : left < 2 * wanted ? left / 2 : wanted;
        const last = length === left;
        const outcome = this.attempt(length);
        const ratio = outcome.error / this.tolerance;
        if (!outcome.converged || !(ratio <= 1)) {
          h = outcome.converged ? length * Math.max(0.2, 0.9 * ratio ** -0.25) : length / 4;
          if (h < 1e-12 * Math.max(1, this.t))
            throw new Error(`the time step fell to ${h} s at ${this.t} s without converging`);
          continue;
        }
        if (length > 1e-9 * Math.max(1, this.t) && this.swings(length)) {
          h = length / 2;
          continue;
        }
        const ended = condition && this.endWithin(condition, length);
        if (condition !== undefined && ended !== undefined) {
          // Taken again, to end there; then nudged until it truly holds.
          this.accept(this.settle(condition, ended, length));
          reached = this.finish(condition, limit);
          break;
        }
        this.accept(length, last ? end : undefined);
        const grow =
          0.9 * Math.max(ratio, 1e-4) ** -0.2 * (Math.max(errorBefore, 1e-4) / Math.max(ratio, 1e-4)) ** 0.08;
        errorBefore = ratio;
        // A step that was cut short to meet a corner says nothing against the length that was wanted.
        h = Math.max(length * Math.min(4, Math.max(0.3, grow)), length < wanted && ratio < 1 ? wanted : 0);
      }
    }
    return {
      name: stage.name,
      start,
      end: this.t,
      reached: reached || condition === undefined,
      T: this.T,
      ...(law === undefined || stage.surface?.vapour === undefined
        ? {}
        : { water: waterWithin(this.steps.slice(firstStep), law, this.body) }),
    };
  }

  /** A first step so short that no node moves far, nor the medium [°C/s] that it follows. */
  private firstStep(mediumSlope: number): number {
    let fastest = Math.abs(mediumSlope);
    for (const s of this.slope) fastest = Math.max(fastest, Math.abs(s));
    const move = 40 * this.settings.tolerance;
    return Math.min(60, Math.max(1e-4, move / Math.max(fastest, 1e-9)));
  }

  /**
   * Does the cubic of the step just computed swing out beyond its own ends? Where a fast change dies away within a step the
   * ends may be right and the cubic between them far off; lethality and history are read from the cubic.
   */
  private swings(h: number): boolean {
    const { T, stepper, slope, settings } = this;
    const most = (this.body.corners === undefined ? 12 : 6) * settings.tolerance;
    for (let i = 0; i < T.length; i++) {
      const y0 = T[i];
      const y1 = stepper.T[i];
      const d0 = slope[i];
      const d1 = stepper.slope[i];
      const rise = y1 - y0;
      if ((Math.abs(h * d0 - rise) + Math.abs(h * d1 - rise)) * (4 / 27) <= most) continue;
      const low = Math.min(y0, y1) - most;
      const high = Math.max(y0, y1) + most;
      for (const s of [0.125, 0.25, 0.5, 0.75, 0.875]) {
        const y = hermite(s, h, y0, y1, d0, d1);
        if (y < low || y > high) return true;
      }
    }
    return false;
  }

  private attempt(h: number) {
    this.attempts++;
    const before = this.steps[this.steps.length - 1];
    const smooth = before !== undefined && before.stage === this.stageIndex && h <= 4 * before.h;
    const ahead = smooth
      ? (after: number, out: Float64Array) => {
          fieldWithin(before, 1 + after / before.h, out);
        }
      : undefined;
    // The steeper the law, the more heat stands for the same residue.
    const { law, steepest } = this.body;
    const newton = (law === undefined ? 0.2 : 0.02 / Math.max(1, steepest / 1000)) * this.tolerance;
    return this.stepper.step(this.t, h, this.T, this.U, this.rate, this.slope, newton, ahead);
  }

  /**
   * The step retaken so that it ends where the condition begins to hold: the dense output has said roughly where. A step
   * that overshoots by more than a thousandth of a kelvin is shortened by what its own end says.
   */
  private settle(until: Exclude<Until, { kind: 'time' }>, ended: number, whole: number): number {
    let h = ended;
    // Where something freezes a slope says little: more tries, and half of the length where it points before the step.
    const most = this.body.corners === undefined ? 4 : 16;
    for (let tries = 1; tries <= most; tries++) {
      // A step that does not come to an answer is tried at half its length: what then is missing is marched by `finish`.
      while (h < whole && !this.attempt(h).converged) {
        h /= 2;
        if (h < 1e-9 * Math.max(1, this.t))
          throw new Error(`the step that ends a stage at ${this.t + h} s did not converge`);
      }
      if (until.kind === 'lethality') return h;
      const { T, slope } = this.stepper;
      const heating = until.kind === 'coldest';
      let worst = 0;
      for (let i = 1; i < T.length; i++) if (heating ? T[i] < T[worst] : T[i] > T[worst]) worst = i;
      const over = heating ? T[worst] - until.C : until.C - T[worst];
      let shorter = h - over / Math.max(1e-9, Math.abs(slope[worst]));
      if (most > 4 && !(shorter > 0)) shorter = h / 2;
      if (over <= 1e-3 || !(shorter > 0) || tries === most) return h;
      h = shorter;
    }
    return h;
  }

  /** Takes the stepper's result as the new state. `end` is given where the step must meet a time to the last digit. */
  private accept(h: number, end?: number): void {
    const t = end ?? this.t + h;
    const { body, stepper, settings } = this;
    const before = this.steps[this.steps.length - 1];
    const d0 =
      before !== undefined && before.stage === this.stageIndex ? before.d1 : new Float32Array(this.slope);
    const T1 = new Float64Array(stepper.T);
    addLethality(this.P, h, this.T, T1, this.slope, stepper.slope, 1, this.target);
    for (const also of this.also)
      addLethality(also.P, h, this.T, T1, this.slope, stepper.slope, 1, also.target);
    const m0 = body.mediumAt(this.t);
    const m1 = body.mediumAt(t);
    const step: StepRecord = {
      t: this.t,
      h: t - this.t,
      stage: this.stageIndex,
      T0: this.T,
      T1,
      d0,
      d1: new Float32Array(stepper.slope),
      supplied: stepper.supplied,
      m0,
      m1,
      ...(settings.keepLethality ? { lethality: new Float32Array(this.P) } : {}),
    };
    this.supplied += stepper.supplied;
    this.exchanged += Math.abs(stepper.supplied);
    this.steps.push(step);
    this.T = T1;
    this.U.set(stepper.U);
    this.rate.set(stepper.rate);
    this.slope.set(stepper.slope);
    this.t = t;
    const { low, high } = extremes(T1);
    this.lowest = Math.min(this.lowest, low);
    this.highest = Math.max(this.highest, high);
    if (settings.onProgress?.(t) === false) throw new Cancelled();
  }

  /** Whether a stage's condition holds now. */
  private holds(until: Exclude<Until, { kind: 'time' }>): boolean {
    if (until.kind === 'coldest') return extremes(this.T).low >= until.C;
    if (until.kind === 'warmest') return extremes(this.T).high <= until.C;
    return until.s <= 0 || this.leastLethality().P >= until.s;
  }

  /** Lethality at the cold spot, refined between nodes as the answer will be, and its temperature. */
  private leastLethality(): { P: number; C: number } {
    const { mesh, exposed } = this.body;
    const spot = coldSpotOf(mesh, exposed, this.P);
    const P = lethalityAt(this.steps, spot.weights, this.target);
    const C = spot.weights.nodes.reduce((sum, n, q) => sum + spot.weights.w[q] * this.T[n], 0);
    return { P, C };
  }

  /** Length after which the condition first holds within the step just computed, or undefined. */
  private endWithin(until: Exclude<Until, { kind: 'time' }>, h: number): number | undefined {
    const { stepper, P, target } = this;
    if (until.kind === 'lethality') {
      const waiting: number[] = [];
      for (let i = 0; i < P.length; i++) if (P[i] < until.s) waiting.push(i);
      const lacking = (s: number) => {
        let least = Number.POSITIVE_INFINITY;
        for (const i of waiting) {
          const added = cubicLethality(
            h,
            this.T[i],
            stepper.T[i],
            this.slope[i],
            stepper.slope[i],
            s,
            target,
          );
          least = Math.min(least, P[i] + added);
        }
        return least - until.s;
      };
      if (lacking(1) < 0) return undefined;
      return h * bracketedRoot(lacking, 0, 1, 1e-9).x;
    }
    const step: StepRecord = {
      t: this.t,
      h,
      stage: this.stageIndex,
      T0: this.T,
      T1: stepper.T,
      d0: new Float32Array(this.slope),
      d1: new Float32Array(stepper.slope),
      supplied: 0,
      m0: 0,
      m1: 0,
    };
    const scratch = new Float64Array(this.T.length);
    const missing = (s: number) => {
      const { low, high } = extremes(s === 1 ? stepper.T : fieldWithin(step, s, scratch));
      return until.kind === 'coldest' ? low - until.C : until.C - high;
    };
    const parts = 4;
    for (let p = 1; p <= parts; p++)
      if (missing(p / parts) >= 0) {
        const a = (p - 1) / parts;
        return missing(a) >= 0 ? h * a || h * 1e-3 : h * bracketedRoot(missing, a, p / parts, 1e-9).x;
      }
    return undefined;
  }

  /** The dense output says that the condition holds here; short steps until the state itself says so. */
  private finish(until: Exclude<Until, { kind: 'time' }>, limit: number): boolean {
    for (let tries = 0; tries < 60 && !this.holds(until) && this.t < limit; tries++) {
      let h = Math.min(limit - this.t, Math.max(1e-3, this.deficit(until)) * 1.2 ** tries);
      while (!this.attempt(h).converged) {
        h /= 2;
        if (h < 1e-9 * Math.max(1, this.t)) return false;
      }
      this.accept(h);
    }
    return this.holds(until);
  }

  /** How long what is missing would take at the present rate [s]. */
  private deficit(until: Exclude<Until, { kind: 'time' }>): number {
    if (until.kind === 'lethality') {
      const { P, C } = this.leastLethality();
      return Math.min(60, ((until.s - P) * 1.0001) / 10 ** ((C - this.target.reference) / this.target.z));
    }
    const heating = until.kind === 'coldest';
    let worst = 0;
    for (let i = 1; i < this.T.length; i++)
      if (heating ? this.T[i] < this.T[worst] : this.T[i] > this.T[worst]) worst = i;
    const missing = Math.abs(until.C - this.T[worst]);
    return Math.min(60, (1.01 * missing) / Math.max(1e-9, Math.abs(this.slope[worst])));
  }
}
