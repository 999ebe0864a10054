/** The gentlest programme that is still safe: which temperature, or which two, and how long, with least of the piece overcooked. */
import { cook } from '../heat/cook.ts';
import type { CookProblem, CookResult } from '../heat/types.ts';
import { groundLoss, myoglobinLeft, waterLost } from '../properties/cook-loss.ts';
import type { Rule } from '../properties/rule.ts';
import { foreseenCooking } from './foreseen-rules.ts';
import { hottestOf, meansOver } from './hottest-field.ts';
import { endedByLethality, judgedBy, passingTime } from './passing-time.ts';
import { historyAt } from './verdict.ts';

/** A stage's medium and how long it lasts [°C, s]. */
export interface Step {
  readonly medium: number;
  readonly s: number;
}

export interface Programme {
  readonly steps: readonly Step[];
  /** All of its steps together [s]. */
  readonly s: number;
  /** Share of the piece that has been hotter than what counts as overcooked [-]. */
  readonly overcooked: number;
  /** Water no longer held, mean over the piece, unsalted lean meat at rest, no more than is in it [kg/kg]: the most that can be lost. */
  readonly loss: number;
  /** Loss of a ground meat with 2 % salt, mean over the piece [kg/kg]. */
  readonly saltedLoss: number;
  /** At the coldest point when lifted out [°C], its lethality [s at the reference], and the red that is left of beef [-]. */
  readonly core: number;
  readonly lethality: number;
  readonly red: number;
}

export interface GentleOrder {
  /** The programme with one or two steps in place of the stage whose medium is looked for. */
  readonly problemWith: (steps: readonly Step[]) => CookProblem;
  /** Index of that stage. */
  readonly stage: number;
  readonly low: number;
  readonly high: number;
  /** Longest that the stage, or both steps in its place, may last [s]. */
  readonly atMost: number;
  readonly rules: readonly Rule[];
  /** Above this a place counts as overcooked [°C]. */
  readonly overcooked: number;
  readonly twoSteps: boolean;
}

export interface Gentle {
  /** None better in all of time, overcooked share and loss; coolest first. */
  readonly front: readonly Programme[];
  readonly recommended: Programme | null;
  readonly twoSteps: readonly Programme[];
  readonly recommendedTwoSteps: Programme | null;
  /** The programme at the hottest medium, or null where not even that passes in time. */
  readonly hottest: Programme | null;
  readonly runs: number;
}

/** To a tenth of a minute and a tenth of a degree, upwards: what can be set on a clock and a dial. */
const tenthUp = (s: number) => Math.ceil(s / 6 - 1e-9) * 6;
const degreeUp = (C: number) => Math.ceil(C * 10 - 1e-6) / 10;

/**
 * Is none of the others better in one of time, overcooked share and loss, and no worse in the rest [-]?
 * @example dominates({ s: 10, overcooked: 0.1, loss: 0.1 }, { s: 10, overcooked: 0.2, loss: 0.1 }) // → true
 * Source: own-computation
 */
export function dominates(
  a: Pick<Programme, 's' | 'overcooked' | 'loss'>,
  b: Pick<Programme, 's' | 'overcooked' | 'loss'>,
): boolean {
  return (
    a.s <= b.s &&
    a.overcooked <= b.overcooked &&
    a.loss <= b.loss &&
    (a.s < b.s || a.overcooked < b.overcooked || a.loss < b.loss)
  );
}

const frontOf = <P extends Pick<Programme, 's' | 'overcooked' | 'loss'>>(all: readonly P[]): P[] =>
  all.filter((p) => !all.some((q) => dominates(q, p)));

/** Least overcooked; of those as little, least loss; of those as little, the shortest. */
function gentlest(front: readonly Programme[]): Programme | null {
  const sorted = [...front].sort((a, b) => a.overcooked - b.overcooked || a.loss - b.loss || a.s - b.s);
  return sorted[0] ?? null;
}

/** Is two steps' programme better than the single temperature that takes as long, between the ones that were tried? */
function below(front: readonly Programme[], p: Programme): boolean {
  const slower = front.filter((q) => q.s >= p.s).sort((a, b) => a.s - b.s)[0];
  const quicker = front.filter((q) => q.s <= p.s).sort((a, b) => b.s - a.s)[0];
  // Quicker than any single one: better by its time alone. Slower than all: it must beat the slowest outright.
  if (quicker === undefined) return true;
  if (slower === undefined) return !dominates(quicker, p);
  const f = slower.s === quicker.s ? 0 : (p.s - quicker.s) / (slower.s - quicker.s);
  const mid = (of: (q: Programme) => number) => of(quicker) + f * (of(slower) - of(quicker));
  return p.overcooked < mid((q) => q.overcooked) || p.loss < mid((q) => q.loss);
}

/** The first, where it overcooks or loses less than the second. */
function gentler(two: Programme | null, one: Programme | null): Programme | null {
  if (two === null || one === null) return two;
  const less = two.overcooked < one.overcooked || (two.overcooked === one.overcooked && two.loss < one.loss);
  return less ? two : null;
}

/** Two steps at a glance. */
interface Rough {
  readonly first: Step;
  readonly medium: number;
  readonly s: number;
  readonly overcooked: number;
  readonly loss: number;
}

/** Losses are those of lean meat: what has less water in it, fat or a dried skin, loses no more than that. */
const noMoreThanThere = (loss: number, { water, mass }: CookResult) => Math.min(loss, water / mass);

class Kitchen {
  runs = 0;
  constructor(private readonly order: GentleOrder) {}

  /** How long the last step must be [s], whatever went before it; Infinity where it would be too long altogether. */
  last(before: readonly Step[], medium: number, mode: 'coarse' | 'fine'): number {
    this.runs++;
    const { stage, atMost, rules } = this.order;
    const spent = before.reduce((sum, step) => sum + step.s, 0);
    if (spent >= atMost) return Number.POSITIVE_INFINITY;
    const s = passingTime(this.order.problemWith([...before, { medium, s: 0 }]), {
      stage: stage + before.length,
      rules,
      atMost: atMost - spent,
      mode,
    });
    return spent + s <= atMost + 1e-6 ? s : Number.POSITIVE_INFINITY;
  }

  /** What a programme does to the piece, and whether it passes when lifted out, by the target and every rule. */
  judged(steps: readonly Step[], mode: 'coarse' | 'fine'): { programme: Programme; passes: boolean } {
    this.runs++;
    const { stage, rules, overcooked } = this.order;
    const problem = judgedBy(this.order.problemWith(steps), rules);
    const result = cook(problem, { mode, frames: { count: mode === 'fine' ? 48 : 16 } });
    const out = result.stages[stage + steps.length - 1].end;
    const hottest = hottestOf(result);
    const { history, mesh } = result;
    const upTo = [...history.t].filter((t) => t <= out).length;
    const lethality = historyAt(history.t, history.lethality, out);
    const [over, loss, saltedLoss] = meansOver(mesh, hottest, [
      (C) => (C > overcooked ? 1 : 0),
      waterLost,
      (C) => groundLoss(C, 2),
    ]);
    const programme: Programme = {
      steps,
      s: steps.reduce((sum, step) => sum + step.s, 0),
      overcooked: over,
      loss: noMoreThanThere(loss, result),
      saltedLoss: noMoreThanThere(saltedLoss, result),
      core: historyAt(history.t, history.coldSpot, out),
      lethality,
      red: myoglobinLeft(history.t, history.coldSpot),
    };
    const passes =
      lethality >= problem.target.s &&
      foreseenCooking(cutAt(result, upTo), rules).every((v) => v.passes === true);
    return { programme, passes };
  }

  /**
   * Roughly what two steps do, in one coarse run up to lifting out: enough to see which are worth a closer look. A rule that
   * counts only from 60 °C asks for about a tenth more than the sum does. null where they take too long.
   */
  glance(first: Step, medium: number): Rough | null {
    this.runs++;
    const { stage, atMost, overcooked, problemWith } = this.order;
    if (first.s >= atMost) return null;
    const problem = problemWith([first, { medium, s: 0 }]);
    const ended = endedByLethality(problem, stage + 1, 1.1 * problem.target.s, atMost - first.s);
    const result = cook(ended, { mode: 'coarse', frames: { count: 12 } });
    const then = result.stages[stage + 1];
    if (!then.reached) return null;
    const [over, loss] = meansOver(result.mesh, hottestOf(result), [
      (C) => (C > overcooked ? 1 : 0),
      waterLost,
    ]);
    return {
      first,
      medium,
      s: first.s + then.end - then.start,
      overcooked: over,
      loss: noMoreThanThere(loss, result),
    };
  }

  /** A programme whose last step is lengthened by tenths of a minute until the fine engine passes it; null where it gets too long. */
  settled(before: readonly Step[], medium: number): Programme | null {
    let s = this.last(before, medium, 'fine');
    for (let tries = 0; tries < 8 && Number.isFinite(s); tries++) {
      const own = tenthUp(s);
      const steps = [...before, { medium, s: own }];
      if (steps.reduce((sum, step) => sum + step.s, 0) > this.order.atMost + 1e-6) return null;
      const { programme, passes } = this.judged(steps, 'fine');
      if (passes) return programme;
      s = own + Math.max(6, 0.002 * own * 2 ** tries);
    }
    return null;
  }
}

/** The result up to a moment, for rules that must hold by then. */
function cutAt(result: CookResult, n: number): CookResult {
  const { history, alsoLeast } = result;
  return {
    ...result,
    history: { ...history, t: history.t.slice(0, n), coldSpot: history.coldSpot.slice(0, n) },
    ...(alsoLeast === undefined ? {} : { alsoLeast: alsoLeast.map((C) => C.slice(0, n)) }),
  };
}

const points = 11;

/**
 * The search for the gentlest programme [share of the piece], one or a few engine runs at a time. Yields the share of the work done.
 * Equation: over media and times: least share hotter than `overcooked`, then least loss, then least time, subject to
 * P(coldest point, lifted out) ≥ P wanted, every rule, and time ≤ `atMost`; front: what nothing else beats in all three.
 * Parameters: `order.low` to `order.high` [°C]; `order.atMost` [s]; `order.overcooked` [°C].
 * Assumptions: a cooler medium needs longer; the coolest that is quick enough is found by halving, to a tenth of a degree.
 * Checked: every programme passes when run again; none of a brute grid beats the one recommended.
 * @example finish(gentleSearch(order)).recommended.steps[0].medium // 78.4 °C
 * Source: own-computation
 */
export function* gentleSearch(order: GentleOrder): Generator<number, Gentle> {
  const kitchen = new Kitchen(order);
  const { low, high, atMost } = order;
  const hottest = kitchen.settled([], high);
  yield 0.05;
  if (hottest === null)
    return {
      front: [],
      recommended: null,
      twoSteps: [],
      recommendedTwoSteps: null,
      hottest,
      runs: kitchen.runs,
    };

  // The coolest medium that is quick enough.
  let quick = high;
  if (Number.isFinite(kitchen.last([], low, 'fine'))) quick = low;
  else {
    let slow = low;
    while (quick - slow > 0.01) {
      const middle = (slow + quick) / 2;
      if (Number.isFinite(kitchen.last([], middle, 'fine'))) quick = middle;
      else slow = middle;
      yield 0.1;
    }
  }
  const coolest = Math.min(high, degreeUp(quick));
  const media = Array.from({ length: points }, (_, i) =>
    Math.min(high, degreeUp(coolest + (i / (points - 1)) ** 2 * (high - coolest))),
  );
  const singles: Programme[] = [];
  for (const [i, medium] of [...new Set(media)].entries()) {
    const programme = medium === high ? hottest : kitchen.settled([], medium);
    if (programme !== null) singles.push(programme);
    yield 0.15 + (0.35 * (i + 1)) / points;
  }
  const front = frontOf(singles);
  const recommended = gentlest(front);

  const two: Programme[] = [];
  if (order.twoSteps && high - low >= 1) {
    // Coarse over the plane of hot first, cooler after and how long hot; then the best of them finely.
    const rough: Rough[] = [];
    const hots = [0, 0.25, 0.5, 0.75, 1].map((f) => high - f * (high - coolest) * 0.8);
    for (const [h, hot] of hots.entries()) {
      const alone = kitchen.last([], hot, 'coarse');
      for (const f of [0.2, 0.4, 0.6]) {
        const first = { medium: degreeUp(hot), s: tenthUp(f * Math.min(alone, atMost)) };
        for (const g of [0, 0.2, 0.4, 0.6, 0.8]) {
          const seen = kitchen.glance(first, degreeUp(low + g * (hot - low)));
          if (seen !== null) rough.push(seen);
        }
        yield 0.5 + (0.4 * (h + f)) / hots.length;
      }
    }
    const best = frontOf(rough)
      .sort((a, b) => a.overcooked - b.overcooked || a.loss - b.loss)
      .slice(0, 6);
    for (const { first, medium } of best) {
      const programme = kitchen.settled([first], medium);
      if (programme !== null) two.push(programme);
      yield 0.95;
    }
  }
  const twoSteps = frontOf(two).filter((p) => below(front, p));
  return {
    front,
    recommended,
    twoSteps,
    recommendedTwoSteps: gentler(gentlest(twoSteps), recommended),
    hottest,
    runs: kitchen.runs,
  };
}
