/** How hot every place of a body has ever been, and what shares of the body that makes. */
import type { CookResult, FieldMesh } from '../heat/types.ts';

/** A value and the volume it stands for. */
type Cells = (each: (value: number, volume: number) => void) => void;

const power = { slab: 0, cylinder: 1, sphere: 2 } as const;
const split = 4;

/** A nodal field, straight between nodes, as many small cells with their volume. */
function cellsOf({ shape, nu, nv, x, y }: FieldMesh, field: ArrayLike<number>): Cells {
  if (shape !== 'revolved' && shape !== 'block')
    return (each) => {
      const p = power[shape] + 1;
      const parts = 2 * split;
      for (let i = 0; i + 1 < nu; i++)
        for (let q = 0; q < parts; q++) {
          const a = x[i] + (q / parts) * (x[i + 1] - x[i]);
          const b = x[i] + ((q + 1) / parts) * (x[i + 1] - x[i]);
          const s = (q + 0.5) / parts;
          each((1 - s) * field[i] + s * field[i + 1], b ** p - a ** p);
        }
    };
  return (each) => {
    for (let j = 0; j + 1 < nv; j++)
      for (let i = 0; i + 1 < nu; i++) {
        const n = j * nu + i;
        const m = n + nu;
        for (let b = 0; b < split; b++)
          for (let a = 0; a < split; a++) {
            const s = (a + 0.5) / split;
            const r = (b + 0.5) / split;
            const of = (list: ArrayLike<number>) =>
              (1 - r) * ((1 - s) * list[n] + s * list[n + 1]) + r * ((1 - s) * list[m] + s * list[m + 1]);
            const along = (list: Float64Array) =>
              (1 - r) * (list[n + 1] - list[n]) + r * (list[m + 1] - list[m]);
            const up = (list: Float64Array) =>
              (1 - s) * (list[m] - list[n]) + s * (list[m + 1] - list[n + 1]);
            const area = Math.abs(along(x) * up(y) - along(y) * up(x));
            each(of(field), area * (shape === 'revolved' ? of(y) : 1));
          }
      }
  };
}

/**
 * The hottest that every node has been, by the snapshots of a run [°C].
 * Parameters: `result` of a run with frames.
 * Assumptions: snapshots at the ends of stages and often enough between them.
 * @example hottestOf({ frames: [{ C: [4, 5] }, { C: [6, 3] }] })[0] // → 6
 * Source: own-computation
 */
export function hottestOf(result: Pick<CookResult, 'frames'>): Float64Array {
  const [first, ...rest] = result.frames;
  const hottest = Float64Array.from(first?.C ?? []);
  for (const frame of rest)
    for (let i = 0; i < hottest.length; i++) if (frame.C[i] > hottest[i]) hottest[i] = frame.C[i];
  return hottest;
}

/**
 * Volume means of several things over the body [their units].
 * Equation: Σ f(T) V / Σ V over cells of a sixteenth of a mesh quadrilateral (an eighth of an interval).
 * Parameters: `mesh`; `field` one value a node; `of` what of it is averaged.
 * Checked: the mean of a straight field over a plate; the volume share of a shell of sphere and cylinder.
 * @example meansOver({ shape: 'slab', nu: 2, nv: 1, x: [0, 1], y: [0, 0], interfaces: [] }, [0, 10], [(C) => C])[0] // → 5
 * Source: own-computation
 */
export function meansOver(
  mesh: FieldMesh,
  field: ArrayLike<number>,
  of: readonly ((value: number) => number)[],
): number[] {
  const sums = of.map(() => 0);
  let whole = 0;
  cellsOf(
    mesh,
    field,
  )((value, volume) => {
    for (let i = 0; i < of.length; i++) sums[i] += of[i](value) * volume;
    whole += volume;
  });
  return sums.map((sum) => sum / whole);
}
