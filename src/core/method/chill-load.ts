/**
 * How many pieces a chiller or a bath takes at once: the medium warms by what they give off, and chills them the slower. The
 * medium's course and the pieces' are worked out in turns until they agree.
 */
import { Contradiction, OutOfRange } from '../errors.ts';
import type { CookResult } from '../heat/types.ts';
import { heatOfMelting } from '../properties/freezing.ts';
import {
  type Chilled,
  type Chilling,
  checkChilling,
  chill,
  finished,
  horizonOf,
  type Mode,
} from './chilling.ts';

/** A machine that takes away at most so much heat, or a bath of water with ice. */
export type Machine =
  | {
      readonly kind: 'power';
      /** Heat it can take away at the temperature it is set to [W]. */
      readonly W: number;
    }
  | {
      readonly kind: 'ice';
      /** Ice and water [kg], the water's temperature before the ice goes in [°C]. */
      readonly ice: number;
      readonly water: number;
      readonly waterC: number;
    };

export interface Load {
  readonly chilling: Chilling;
  readonly machine: Machine;
  /** Mass of one piece [kg]: of the body itself, or what is cut of it where it is endless. */
  readonly pieceMass?: number;
}

export interface Coupled extends Chilled {
  /** The medium's course that agrees with what the pieces give off [s, °C]. */
  readonly medium: readonly { readonly t: number; readonly C: number }[];
  /** It has settled: another turn changes it by less than a tenth of a kelvin. */
  readonly settled: boolean;
  readonly turns: number;
  /** Warmest that the medium gets [°C]. */
  readonly peak: number;
  /** Heat that one piece gave off until it was done [J]. */
  readonly heat: number;
}

/** Specific heat of water, near 0 °C [J/(kg K)]. */
const waterHeat = 4190;
const points = 72;
const mostTurns = 60;
/** A turn that changes the medium by less [K]; the coarse mode's own steps leave more. */
const settledWithin = { coarse: 0.1, fine: 0.03 } as const;

/** Times of a course, dense where it moves most [s]. */
const timesTo = (end: number) => Array.from({ length: points + 1 }, (_, i) => end * (i / points) ** 2);

/** Heat given off by a piece up to each of these times [J]; level after the end of the run. */
function givenOff(result: CookResult, per: number, times: readonly number[]): number[] {
  const { t, heat } = result.history;
  let i = 1;
  return times.map((when) => {
    while (i + 1 < t.length && t[i] < when) i++;
    const span = t[i] - t[i - 1];
    const s = span > 0 ? Math.min(1, Math.max(0, (when - t[i - 1]) / span)) : 1;
    return -per * (heat[i - 1] + s * (heat[i] - heat[i - 1]));
  });
}

/**
 * The bath's temperature when it has taken up so much heat [°C].
 *
 *     E = m_w·c·T_w − m_i·L + Q;  T = E/((m_w + m_i)·c), but not below its temperature with ice
 *
 * @param bath ice and water [kg], water's temperature before [°C]
 * @param heat taken up so far [J]
 * @param withIce its temperature while there is ice [°C]
 * Assumes it stirred, no heat from the room, nothing that runs over. Checked by hand.
 * @example bathTemperature({ kind: 'ice', ice: 1, water: 1, waterC: 0 }, 333600 + 83800, 0) // → 10
 * Source: ashrae-refrigeration-properties
 */
export function bathTemperature(
  bath: Extract<Machine, { kind: 'ice' }>,
  heat: number,
  withIce: number,
): number {
  const { ice, water, waterC } = bath;
  const E = water * waterHeat * waterC - ice * heatOfMelting + heat;
  return Math.max(withIce, E / ((ice + water) * waterHeat));
}

/** Refuses a machine or a number of pieces that cannot be. */
function check(load: Load, pieces: number): void {
  const { machine } = load;
  if (!(pieces >= 1 && Number.isInteger(pieces)))
    throw new OutOfRange('pieces', String(pieces), 'a whole number, 1 or more');
  if (machine.kind === 'power') {
    if (!(machine.W > 0)) throw new OutOfRange('machine.W', `${machine.W} W`, 'more than 0 W');
    return;
  }
  if (!(machine.ice >= 0 && machine.water >= 0 && machine.ice + machine.water > 0))
    throw new OutOfRange(
      'machine',
      `${machine.ice} kg of ice and ${machine.water} kg of water`,
      'some of either',
    );
  if (!(machine.waterC >= 0 && machine.waterC <= 40))
    throw new OutOfRange('machine.waterC', `${machine.waterC} °C`, '0 to 40 °C');
}

/**
 * So many pieces at once in this machine: their course and the medium's, that agree [°C].
 *
 *     power: T_m = max(set, T_m + (n·q − P)/(n·h·A));  ice: `bathTemperature` of all heat given off so far; again until it settles
 *
 * @param load chill, machine and mass of a piece
 * @param pieces how many, 1 or more
 * @param mode of the engine
 * @param near a like one that has settled: the turns begin from its medium
 * Assumes all pieces alike and put in at once, the same medium round each of them, no touching; air that stores no heat; a machine with
 * the same power at any temperature; no heat from the room, the walls and the trays.
 * Checked against the closed form of a thin piece under constant power, and of a thin piece and water that come to one temperature.
 * Source: own-computation
 */
export function coupled(load: Load, pieces: number, mode: Mode, near?: Coupled): Coupled {
  check(load, pieces);
  const { chilling, machine } = load;
  if (chilling.stage.surface !== undefined)
    throw new Contradiction(
      'stage',
      'a surface with a law of its own',
      'a plain coefficient, where many pieces share a medium',
    );
  const set = chilling.stage.medium;
  const times = timesTo(horizonOf(chilling.rules));
  const middles = times.slice(1).map((t, i) => (t + times[i]) / 2);
  let course =
    near?.medium.slice(1).map((point) => point.C) ??
    middles.map(() => (machine.kind === 'ice' ? bathTemperature(machine, 0, set) : set));
  let turns = 0;
  for (;;) {
    const medium = [{ t: 0, C: course[0] }, ...middles.map((t, i) => ({ t, C: course[i] }))];
    const chilled = chill(chilling, mode, medium);
    const { result } = chilled;
    const per = load.pieceMass === undefined ? 1 : load.pieceMass / result.mass;
    const conductance = pieces * per * chilling.stage.h * result.area;
    const end = result.stages[0].end;
    const off = givenOff(result, per, times);
    const next = course.map((C, i) => {
      if (times[i] >= end) return machine.kind === 'ice' ? course[i] : set;
      if (machine.kind === 'ice') return bathTemperature(machine, (pieces * (off[i] + off[i + 1])) / 2, set);
      const until = Math.min(end, times[i + 1]);
      const power = (pieces * (off[i + 1] - off[i])) / (until - times[i]);
      return Math.max(set, C + (power - machine.W) / conductance);
    });
    turns++;
    const change = Math.max(...next.map((C, i) => Math.abs(C - course[i])));
    if (change < settledWithin[mode] || turns === mostTurns)
      return {
        ...chilled,
        medium,
        settled: change < settledWithin[mode],
        turns,
        peak: Math.max(...course),
        heat: -per * result.history.heat[result.history.heat.length - 1],
      };
    // What a bath takes up is less the warmer it is: a full turn would overshoot.
    const part = machine.kind === 'ice' ? 0.6 : 1;
    course = course.map((C, i) => C + part * (next[i] - C));
  }
}

export interface MostPieces {
  /** 0: not even one. */
  readonly pieces: number;
  /** As many as are looked for: more may go in, as far as the machine's power counts. */
  readonly atLimit: boolean;
  /** So many, in the fine mode; where none meets the rules, one. */
  readonly load: Coupled;
}

const mostLookedFor = 4096;

/** The search behind `mostPieces` [-], one coupled run at a time. Source: own-computation */
export function* mostPiecesSearch(load: Load): Generator<number, MostPieces> {
  checkChilling(load.chilling);
  let near: Coupled | undefined;
  const fits = (n: number, mode: Mode) => {
    const found = coupled(load, n, mode, near);
    if (found.settled) near = found;
    return { found, ok: found.meets && found.settled };
  };
  let runs = 0;
  let low = 0;
  let high = 1;
  for (;;) {
    yield ++runs;
    if (!fits(high, 'coarse').ok) break;
    low = high;
    if (high === mostLookedFor) break;
    high *= 2;
  }
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    yield ++runs;
    if (fits(middle, 'coarse').ok) low = middle;
    else high = middle;
  }
  // Tried on the fine mesh, and taken down until it holds there.
  for (let n = Math.max(1, low); ; n = Math.max(1, Math.min(n - 1, Math.floor(0.98 * n)))) {
    yield ++runs;
    const { found, ok } = fits(n, 'fine');
    if (ok) return { pieces: n, atLimit: n === mostLookedFor, load: found };
    if (n === 1) return { pieces: 0, atLimit: false, load: found };
  }
}

/**
 * The most pieces at once with which every rule holds [pieces].
 *
 *     largest n with `coupled(load, n)` settled and every verdict at the warmest point: holds
 *
 * @param load chill, machine and mass of a piece
 * Assumes what `coupled` does, and that more pieces are never quicker. Nothing is said of the room that they take.
 * Checked: twice the power takes twice the pieces; with power to spare there is no limit.
 * Source: own-computation
 */
export function mostPieces(load: Load): MostPieces {
  return finished(mostPiecesSearch(load));
}
