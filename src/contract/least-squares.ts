/** The solver of least squares that the engine's fit is handed: the library's Levenberg–Marquardt step, kept only where it is better. */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import type { LeastSquaresOrder } from '../core/method/fit.ts';

const same = (a: readonly number[], b: readonly number[]) => a.every((v, i) => v === b[i]);

/** Remembers the last few answers: the library asks for the same ones again and again. */
function remembered<T>(ask: (x: readonly number[]) => T): (x: readonly number[]) => T {
  let kept: { x: number[]; answer: T }[] = [];
  return (x) => {
    const before = kept.find((k) => same(k.x, x));
    if (before !== undefined) return before.answer;
    const answer = ask(x);
    kept = [{ x: [...x], answer }, ...kept.slice(0, 2)];
    return answer;
  };
}

/** What a step would take off the sum of squares if the slopes held. */
function promised(
  slopes: readonly Float64Array[],
  y: Float64Array,
  C: Float64Array,
  next: readonly number[],
  x: readonly number[],
): number {
  return slopes.reduce((total, s, j) => {
    const fall = s.reduce((sum, v, i) => sum + v * (y[i]! - C[i]!), 0);
    return total + fall * (next[j]! - x[j]!);
  }, 0);
}

const mostSteps = 40;

/**
 * One step of the library at a time: it goes on from a step that made things worse and never ends before its count is
 * full, so that which steps are kept, how far they are damped and when it is done are decided here.
 */
export function leastSquares(order: LeastSquaresOrder): { x: number[]; converged: boolean } {
  const { y, low, high, enough } = order;
  const model = remembered(order.model);
  const slopes = remembered(order.slopes);
  const indices = Array.from(y, (_, i) => i);
  let x = [...order.start];
  const sum = (at: readonly number[]) => {
    const C = model(at);
    return y.reduce((total, v, i) => total + (v - C[i]!) ** 2, 0);
  };
  let before = sum(x);
  const size = Math.max(...slopes(x).map((s) => s.reduce((total, v) => total + v * v, 0)), 1e-12);
  let damping = 1e-6 * size;
  for (let step = 0; step < mostSteps; step++) {
    const J = slopes(x);
    // The library gives back where it began when its step gained nothing; where it tried is seen on the way.
    let tried: readonly number[] = x;
    const { parameterValues: next } = levenbergMarquardt(
      { x: indices, y },
      (at) => {
        tried = [...at];
        const C = model(at);
        return (i) => C[i]!;
      },
      {
        initialValues: x,
        minValues: low,
        maxValues: high,
        damping,
        maxIterations: 1,
        errorTolerance: Number.MIN_VALUE,
        jacobianFunction: () => (i) => J.map((s) => s[i]!),
      },
    );
    const after = sum(next);
    const moved = Math.max(...next.map((v, i) => Math.abs(v - x[i]!)));
    if (same(next, x) || !(after < before)) {
      // Nothing gained: done where by the slopes there was nothing to gain either, else a shorter step.
      if (damping > size || promised(J, y, model(x), tried, x) < enough) return { x, converged: true };
      damping = Math.max(damping * 10, 1e-6 * size);
      continue;
    }
    const gained = before - after;
    x = next;
    if (moved < 1e-4 || gained < Math.max(enough, 1e-5 * before)) return { x, converged: true };
    before = after;
    damping = Math.max(damping / 10, 1e-9 * size);
  }
  return { x, converged: false };
}
