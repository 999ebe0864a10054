/**
 * Implicit Runge–Kutta for systems in conservative form, dU(T)/dt = F(T, t), where U is what is stored at a given T.
 * The first stage is explicit, every other solves U(T) − hγF(T, t) = known by Newton's method with one factorisation a
 * step. Stiffly accurate (the last stage is the answer) and L-stable. What is stored changes by exactly what the stages
 * supplied, whatever is left of Newton's residual.
 *
 * Tableau: ARK4(3)6L[2]SA and ARK3(2)4L[2]SA, the implicit parts (Kennedy & Carpenter, Applied Numerical Mathematics 44
 * (2003) 139–181). The order conditions are checked by a test.
 */
import { Vectors } from './vectors.ts';

export interface Tableau {
  readonly stages: number;
  readonly order: number;
  readonly gamma: number;
  readonly c: readonly number[];
  readonly a: readonly (readonly number[])[];
  readonly b: readonly number[];
  /** Weights of the embedded solution one order lower. */
  readonly embedded: readonly number[];
}

export const esdirk4: Tableau = (() => {
  const b = [82889 / 524892, 0, 15625 / 83664, 69875 / 102672, -2260 / 8211, 1 / 4];
  return {
    stages: 6,
    order: 4,
    gamma: 1 / 4,
    c: [0, 1 / 2, 83 / 250, 31 / 50, 17 / 20, 1],
    a: [
      [],
      [1 / 4, 1 / 4],
      [8611 / 62500, -1743 / 31250, 1 / 4],
      [5012029 / 34652500, -654441 / 2922500, 174375 / 388108, 1 / 4],
      [15267082809 / 155376265600, -71443401 / 120774400, 730878875 / 902184768, 2285395 / 8070912, 1 / 4],
      b,
    ],
    b,
    embedded: [
      4586570599 / 29645900160,
      0,
      178811875 / 945068544,
      814220225 / 1159782912,
      -3700637 / 11593932,
      61727 / 225920,
    ],
  };
})();

export const esdirk3: Tableau = (() => {
  const gamma = 1767732205903 / 4055673282236;
  // The weights are fixed by order 3 and stage order 2; solving for them keeps every digit.
  const c2 = 2 * gamma;
  const c3 = 3 / 5;
  const p = 1 / 2 - gamma;
  const q = 1 / 3 - gamma;
  const b3 = (q - c2 * p) / (c3 * (c3 - c2));
  const b2 = (p - b3 * c3) / c2;
  const b = [1 - b2 - b3 - gamma, b2, b3, gamma];
  return {
    stages: 4,
    order: 3,
    gamma,
    c: [0, 2 * gamma, 3 / 5, 1],
    a: [[], [gamma, gamma], [2746238789719 / 10658868560708, -640167445237 / 6845629431997, gamma], b],
    b,
    embedded: [
      2756255671327 / 12835298489170,
      -10771552573575 / 22201958757719,
      9247589265047 / 10645013368117,
      2193209047091 / 5459859503100,
    ],
  };
})();

/** A system in conservative form. All arrays have length `n`. */
export interface StoredSystem {
  readonly n: number;
  /** U(T). */
  store(T: Float64Array, U: Float64Array): void;
  /** U(T) and F(T, t) in one pass. */
  evaluate(T: Float64Array, t: number, U: Float64Array, F: Float64Array): void;
  /** Factorises C(T)/τ − ∂F/∂T (symmetric positive definite) and leaves C = dU/dT in `capacity`; false if it cannot. */
  factorise(T: Float64Array, tau: number, capacity: Float64Array): boolean;
  /** Solves with the last factorisation, in place. */
  solve(x: Float64Array): void;
  /** What comes in from outside, summed over the system: for the account of what was stored and what was supplied. */
  intake?(T: Float64Array, t: number): number;
  /** Set where U(T) has corners, as where something melts: Newton's method then renews its matrix and minds the corners. */
  readonly corners?: Corners;
}

export interface Corners {
  /** What is stored per unit of T away from the corners; a residual is held against it. */
  readonly usual: Float64Array;
  /** T = T + dT, but no unknown passes a corner of its own without stopping just behind it; dU/dT of the new T in `capacity`. */
  correct(T: Float64Array, dT: Float64Array): void;
  capacityAt(T: Float64Array, capacity: Float64Array): void;
}

export interface StepOutcome {
  /** False when Newton's method did not converge; the step must then be retried shorter. */
  readonly converged: boolean;
  /** Largest estimated local error [unit of T]. */
  readonly error: number;
}

/** One step at a time; the caller holds the state and decides on the length. */
export class ImplicitStepper {
  /** Result of the last step: temperatures, stored amounts, dU/dt and dT/dt at its end. */
  readonly T: Float64Array;
  readonly U: Float64Array;
  readonly rate: Float64Array;
  readonly slope: Float64Array;
  /** What came in from outside over the last step, by the step's own weights. */
  supplied = 0;
  newtonIterations = 0;
  factorisations = 0;
  private readonly tableau: Tableau;
  private readonly system: StoredSystem;
  /** The step's own vectors, all of one room: nothing in them outlives a step. */
  private readonly vectors: Vectors;
  private readonly rates: Float64Array[];
  private readonly zero: Float64Array;
  private readonly start: Float64Array;
  private readonly startStored: Float64Array;
  private readonly startSlope: Float64Array;
  private readonly now: Float64Array;
  private readonly known: Float64Array;
  private readonly stored: Float64Array;
  private readonly supply: Float64Array;
  private readonly residual: Float64Array;
  private readonly capacity: Float64Array;
  private readonly guessAt: Float64Array;
  private readonly late: Float64Array;
  private contraction = 0.1;

  constructor(tableau: Tableau, system: StoredSystem) {
    const { n } = system;
    this.tableau = tableau;
    this.system = system;
    this.T = new Float64Array(n);
    this.U = new Float64Array(n);
    this.rate = new Float64Array(n);
    this.slope = new Float64Array(n);
    const vectors = new Vectors(n, tableau.stages + 12);
    this.vectors = vectors;
    this.rates = Array.from({ length: tableau.stages }, () => vectors.next());
    this.zero = vectors.next();
    this.start = vectors.next();
    this.startStored = vectors.next();
    this.startSlope = vectors.next();
    this.now = vectors.next();
    this.known = vectors.next();
    this.stored = vectors.next();
    this.supply = vectors.next();
    this.residual = vectors.next();
    this.capacity = vectors.next();
    this.guessAt = vectors.next();
    this.late = vectors.next();
  }

  /** dU/dt and dT/dt at a state, to start from (after a jump in the surroundings nothing older may be used). */
  begin(T: Float64Array, t: number, rate: Float64Array, slope: Float64Array): void {
    this.system.evaluate(T, t, this.stored, rate);
    this.system.factorise(T, 1, this.capacity);
    for (let i = 0; i < slope.length; i++) slope[i] = rate[i] / this.capacity[i];
  }

  private take(T: Float64Array, t: number, weight: number): void {
    if (weight === 0 || this.system.intake === undefined) return;
    this.supplied += weight * this.system.intake(T, t);
  }

  /** Newton's method for one stage with the factorisation of the step: U(T) − τF(T, t) = known, from the guess in `now`. */
  private solveSmooth(t: number, inverseTau: number, newton: number): boolean {
    const { system, vectors, known, stored, supply, residual } = this;
    const T = this.now;
    let previous = 0;
    for (let k = 0; k < 10; k++) {
      system.evaluate(T, t, stored, supply);
      vectors.residual(residual, supply, stored, known, inverseTau);
      system.solve(residual);
      const size = vectors.correct(T, residual);
      this.newtonIterations++;
      if (!Number.isFinite(size)) return false;
      if (k > 0) {
        const q = size / previous;
        if (q > 0.9 && size > newton) return false;
        this.contraction = Math.max(0.02, Math.min(0.5, q));
      }
      const left = (this.contraction / (1 - this.contraction)) * size;
      if (left <= newton) return true;
      previous = size;
    }
    return false;
  }

  /**
   * The same where U(T) has corners. What is left is measured in what is stored, not in T: beside a corner a little of T is much of U.
   * The matrix is made anew at the present T whenever the last correction with it did not shrink what is left to a quarter.
   */
  private solveCornered(corners: Corners, t: number, tau: number, newton: number): boolean {
    const { system, vectors, known, stored, supply, residual, capacity } = this;
    const T = this.now;
    const { usual } = corners;
    let previous = Number.POSITIVE_INFINITY;
    for (let k = 0; k < 40; k++) {
      system.evaluate(T, t, stored, supply);
      vectors.residual(residual, supply, stored, known, 1 / tau);
      let size = 0;
      for (let i = 0; i < usual.length; i++) size = Math.max(size, (Math.abs(residual[i]) * tau) / usual[i]);
      if (!Number.isFinite(size)) return false;
      if (size <= newton) return true;
      if (size > previous / 4) {
        this.factorisations++;
        if (!system.factorise(T, tau, capacity)) return false;
      }
      system.solve(residual);
      corners.correct(T, residual);
      this.newtonIterations++;
      previous = size;
    }
    return false;
  }

  /**
   * A step from (T0, U0) at t over h. `rate0` and `slope0` are dU/dt and dT/dt there; `ahead`, where given, fills its
   * argument with a guess of T at a time after t, extrapolated from the step before.
   * @param newton largest error left in T by Newton's method
   */
  step(
    t: number,
    h: number,
    T0: Float64Array,
    U0: Float64Array,
    rate0: Float64Array,
    slope0: Float64Array,
    newton: number,
    ahead?: (after: number, out: Float64Array) => void,
  ): StepOutcome {
    const { tableau, system, vectors, rates, known, stored, supply, residual, capacity, guessAt } = this;
    const { corners } = system;
    const T = this.now;
    const tau = h * tableau.gamma;
    const inverseTau = 1 / tau;
    vectors.begin();
    this.start.set(T0);
    this.startStored.set(U0);
    this.startSlope.set(slope0);
    rates[0].set(rate0);
    this.supplied = 0;
    this.take(T0, t, h * tableau.b[0]);
    if (ahead) ahead(h / 2, guessAt);
    else guessAt.set(T0);
    this.factorisations++;
    if (!system.factorise(guessAt, tau, capacity))
      return { converged: false, error: Number.POSITIVE_INFINITY };
    // Latest stage in time, from which the next one is guessed.
    let latest = 0;
    for (let s = 1; s < tableau.stages; s++) {
      const row = tableau.a[s];
      vectors.combine(
        known,
        this.startStored,
        rates[0],
        row.slice(0, s).map((w) => h * w),
      );
      const c = tableau.c[s];
      if (latest > 0) {
        // Cubic through the start and the latest stage.
        const cl = tableau.c[latest];
        const hl = cl * h;
        const x = c / cl;
        const y = 1 - x;
        const weights = [(1 + 2 * x) * y * y, x * x * (3 - 2 * x), hl * x * y * y, -hl * x * x * y] as const;
        vectors.cubic(T, weights, this.start, this.late, this.startSlope, rates[latest], capacity);
      } else if (ahead && c !== 1 / 2) ahead(c * h, T);
      // The guess that was factorised at is of the middle of the step.
      else T.set(guessAt);
      const solved =
        corners === undefined
          ? this.solveSmooth(t + c * h, inverseTau, newton)
          : this.solveCornered(corners, t + c * h, tau, newton / 30);
      if (!solved) return { converged: false, error: Number.POSITIVE_INFINITY };
      this.take(T, t + c * h, h * tableau.b[s]);
      system.store(T, stored);
      vectors.difference(rates[s], stored, known, inverseTau);
      if (latest === 0 || c > tableau.c[latest]) {
        latest = s;
        this.late.set(T);
      }
    }
    const last = rates[tableau.stages - 1];
    this.T.set(T);
    this.U.set(stored);
    this.rate.set(last);
    vectors.combine(
      residual,
      this.zero,
      rates[0],
      tableau.b.map((b, j) => (b - tableau.embedded[j]) / tableau.gamma),
    );
    system.solve(residual);
    corners?.capacityAt(T, capacity);
    vectors.quotient(supply, last, capacity);
    this.slope.set(supply);
    return { converged: true, error: vectors.correct(T, residual) };
  }
}
