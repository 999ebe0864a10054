/** What crosses a surface at its temperature: convection, vapour, radiation, ladled fat, through whatever is wrapped round it. */
import { bracketedRoot } from '../numerics/roots.ts';
import { humidAirExchange } from '../properties/evaporation.ts';
import { saturationTemperature } from '../properties/saturation.ts';
import { latentTable, lookUp, pressureTable } from '../properties/saturation-table.ts';
import type { CookProblem, Stage, Surface, Vapour } from './types.ts';

const zeroC = 273.15;
/** Stefan and Boltzmann's constant [W/(m² K⁴)]. */
const sigma = 5.670374e-8;
const molarMass = 18.0153;
const lewisFactor = humidAirExchange.lewis ** (2 / 3);
/** From this share of vapour on the logarithm of what is left is continued straight: it has no end where water boils. */
const nearBoiling = 0.995;
/** Between these a surface is looked for that rests [°C]. */
const coldest = -100;
const hottest = 3000;
/** Beyond this share of vapour there is no air left to speak of. */
const pure = 0.9999;

/** Pressure of the vapour in air of a temperature [Pa]; “all it can hold” is never more than its own pressure. */
function partialPressure({ pressure, relative, partial }: Vapour, C: number): number {
  return relative === undefined
    ? (partial ?? 0)
    : relative * Math.min(pressure, lookUp(pressureTable(), C).value);
}

/** Where `read` tabulates [°C], and how closely. */
const tabled = { low: -100, perDegree: 10, cells: 4200 } as const;

/** ln(1 − s) of a share of vapour, continued straight. */
const logOfRest = (s: number) =>
  s < nearBoiling ? Math.log(1 - s) : Math.log(1 - nearBoiling) - (s - nearBoiling) / (1 - nearBoiling);

/** A value and how fast it falls as the surface warms. */
interface Falling {
  value: number;
  fall: number;
}

/**
 * Where a resistance is in series with a flow that falls as its end warms: the temperature x at its far end, x = T + R·f(x).
 * Bracketed Newton's method: between T and T + R·f(T) there is exactly one.
 */
function behind(T: number, resistance: number, flow: (x: number) => Falling): number {
  const first = flow(T).value;
  let a = T;
  let b = T + resistance * first;
  let x = T;
  for (let i = 0; i < 60; i++) {
    const { value, fall } = flow(x);
    const over = x - T - resistance * value;
    if (over * (first > 0 ? 1 : -1) > 0) b = x;
    else a = x;
    let next = x - over / (1 + resistance * fall);
    if (!(next >= Math.min(a, b) && next <= Math.max(a, b))) next = (a + b) / 2;
    if (Math.abs(next - x) <= 1e-9 * (1 + Math.abs(x))) return next;
    x = next;
  }
  return x;
}

/**
 * The law of one stage. `surround` says how warm the medium is, `at` how warm the food's surface; then `q` is the heat that goes in
 * [W/m²], `fall` how fast it falls as the surface warms [W/(m² K)], `settled` the water that settles (negative: dries off) [kg/(m² s)].
 * `read` is `at` for who asks thousands of times: in steady surroundings straight between temperatures a tenth of a kelvin apart.
 */
export class SurfaceLaw {
  q = 0;
  fall = 0;
  settled = 0;
  private readonly h: number;
  private readonly surface: Surface;
  private readonly steady: boolean;
  private C = Number.NaN;
  /** Heat and water at the temperatures between which `read` runs straight; not a number where nobody has asked yet. */
  private heats: Float64Array | undefined;
  private waters: Float64Array | undefined;
  /** Of the vapour: kg/(m² s) for each unit of the logarithm, the logarithm far off, its pressure [Pa]. */
  private exchange = 0;
  private far = 0;
  private partial = 0;
  private readonly flow: Falling = { value: 0, fall: 0 };
  private readonly mass: Falling = { value: 0, fall: 0 };
  private readonly outer = (T: number) => this.face(T);
  private readonly wet = (T: number) => this.condensing(T);

  /** @param steady its surroundings stay as they are first told */
  constructor(h: number, surface: Surface, steady = false) {
    this.h = h;
    this.surface = surface;
    this.steady = steady;
  }

  surround(C: number): void {
    if (C === this.C) return;
    this.C = C;
    this.heats = undefined;
    const { vapour } = this.surface;
    if (vapour === undefined) return;
    this.partial = partialPressure(vapour, C);
    const y = Math.min(1, this.partial / vapour.pressure);
    const molarHeat = (1 - y) * humidAirExchange.airHeat + y * humidAirExchange.steamHeat;
    this.exchange = (this.h * molarMass) / (molarHeat * lewisFactor);
    this.far = logOfRest(y);
  }

  at(T: number): void {
    const R = this.surface.resistance ?? 0;
    if (R === 0) {
      const { value, fall } = this.face(T);
      this.q = value;
      this.fall = fall;
      return;
    }
    const face = behind(T, R, this.outer);
    const { value, fall } = this.face(face);
    this.q = value;
    this.fall = fall / (1 + R * fall);
  }

  read(T: number): void {
    const x = (T - tabled.low) * tabled.perDegree;
    if (!(this.steady && x >= 0 && x < tabled.cells)) {
      this.at(T);
      return;
    }
    this.heats ??= new Float64Array(tabled.cells + 1).fill(Number.NaN);
    this.waters ??= new Float64Array(tabled.cells + 1);
    const { heats, waters } = this;
    const cell = Math.floor(x);
    if (Number.isNaN(heats[cell])) this.tabulate(cell);
    if (Number.isNaN(heats[cell + 1])) this.tabulate(cell + 1);
    const rise = heats[cell + 1] - heats[cell];
    const share = x - cell;
    this.q = heats[cell] + share * rise;
    this.fall = Math.max(0, -rise * tabled.perDegree);
    this.settled = waters[cell] + share * (waters[cell + 1] - waters[cell]);
  }

  private tabulate(cell: number): void {
    this.at(tabled.low + cell / tabled.perDegree);
    if (this.heats !== undefined) this.heats[cell] = this.q;
    if (this.waters !== undefined) this.waters[cell] = this.settled;
  }

  /** Heat into the outer face at its temperature. */
  private face(T: number): Falling {
    const { flow, surface, h } = this;
    flow.value = h * (this.C - T);
    flow.fall = h;
    this.settled = 0;
    if (surface.vapour !== undefined) {
      const { value, fall } = this.vapourHeat(T, surface.vapour);
      flow.value += value;
      flow.fall += fall;
    }
    for (const { C, emissivity } of surface.radiators ?? []) {
      const K = Math.max(0, T + zeroC);
      const cube = emissivity * sigma * K ** 3;
      flow.value += emissivity * sigma * ((C ?? this.C) + zeroC) ** 4 - cube * K;
      flow.fall += 4 * cube;
    }
    flow.value += surface.flux ?? 0;
    const { ladle } = surface;
    if (ladle !== undefined) {
      const dry = 1 - ladle.share;
      flow.value = dry * flow.value + ladle.share * ladle.h * (ladle.C - T);
      flow.fall = dry * flow.fall + ladle.share * ladle.h;
      this.settled *= dry;
    }
    // A drying surface's heat of evaporation shrinks a little as it warms: never so much that less warmth would be lost.
    flow.fall = Math.max(0, flow.fall);
    return flow;
  }

  /** Heat that vapour brings or takes, and `settled`. */
  private vapourHeat(T: number, { activity, condensate, pressure }: Vapour): Falling {
    const { mass } = this;
    const own = lookUp(pressureTable(), T).value;
    if (this.partial >= pure * pressure && condensate !== undefined && own < this.partial) {
      // Steam without air: nothing but the film of water in its way.
      mass.value = condensate * (saturationTemperature(pressure) - T);
      mass.fall = condensate;
      this.settled = mass.value / lookUp(latentTable(), T).value;
      return mass;
    }
    if (own < this.partial) {
      if (condensate === undefined) {
        this.condensing(T);
        this.settled = mass.value / lookUp(latentTable(), T).value;
        return mass;
      }
      const film = behind(T, 1 / condensate, this.wet);
      const { value, fall } = this.condensing(film);
      this.settled = value / lookUp(latentTable(), film).value;
      mass.fall = fall / (1 + fall / condensate);
      return mass;
    }
    if (activity * own > this.partial) {
      this.exchanged(T, activity);
      this.settled = mass.value / lookUp(latentTable(), T).value;
      return mass;
    }
    mass.value = 0;
    mass.fall = 0;
    return mass;
  }

  private condensing(T: number): Falling {
    return this.exchanged(T, 1);
  }

  /** Heat with the vapour that goes over to a surface of this water activity. */
  private exchanged(T: number, activity: number): Falling {
    const { mass, exchange, far } = this;
    const pressure = this.surface.vapour?.pressure ?? 1;
    const { value, slope } = lookUp(pressureTable(), T);
    const share = (activity * value) / pressure;
    const falls = (activity * slope) / pressure / (1 - Math.min(nearBoiling, share));
    const more = logOfRest(share) - far;
    const heat = lookUp(latentTable(), T);
    mass.value = exchange * more * heat.value;
    mass.fall = exchange * (falls * heat.value - more * heat.slope);
    return mass;
  }
}

/** The law of a stage [W/(m² K), W/m²]; none where its film is all there is. Source: own-computation */
export function lawOf(stage: Pick<Stage, 'h' | 'surface'>, steady = false): SurfaceLaw | undefined {
  return stage.surface === undefined ? undefined : new SurfaceLaw(stage.h, stage.surface, steady);
}

/**
 * Temperature at which a surface takes up no more heat in a medium of this temperature [°C]: the medium's own where its film is all there is.
 *
 *     q(T) = 0
 *
 * @param stage its coefficient and its surface law
 * @param C temperature of the medium [°C]
 * Assumes the piece behind the surface takes none of the heat. By the maximum principle no point of the piece is ever warmer
 * than the warmest, or colder than the coldest, of its start and these.
 * Checked against the resting surface of a drying oven and against a grill in closed form.
 * @example restingAt({ h: 20 }, 100) // → 100
 * Source: own-computation
 */
export function restingAt(stage: Pick<Stage, 'h' | 'surface'>, C: number): number {
  const law = lawOf(stage);
  if (law === undefined) return C;
  law.surround(C);
  const heat = (T: number) => {
    law.at(T);
    return law.q;
  };
  // Where even white heat would still be taken up there is no end to it.
  if (heat(hottest) > 0) return Number.POSITIVE_INFINITY;
  return bracketedRoot(heat, coldest, hottest, 1e-9, 400).x;
}

/**
 * Between which temperatures a programme can bring a body [°C].
 * @param problem start and stages
 * Assumes what `restingAt` does, and that a surface rests warmer in a warmer medium.
 * @example surroundedBy({ start: 4, stages: [{ name: 'steam', medium: 100, h: 1000, until: { kind: 'time', s: 60 } }] }).high // → 100
 * Source: own-computation
 */
export function surroundedBy({ start, stages }: Pick<CookProblem, 'start' | 'stages'>): {
  low: number;
  high: number;
} {
  let low = start;
  let high = start;
  const take = (C: number) => {
    low = Math.min(low, C);
    high = Math.max(high, C);
  };
  for (const stage of stages) {
    const { medium } = stage;
    if (typeof medium === 'number') {
      take(restingAt(stage, medium));
      continue;
    }
    let least = medium[0].C;
    let most = medium[0].C;
    for (const { C } of medium) {
      least = Math.min(least, C);
      most = Math.max(most, C);
    }
    take(restingAt(stage, least));
    take(restingAt(stage, most));
  }
  return { low, high };
}
