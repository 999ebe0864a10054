/** Reading a field of the engine's mesh anywhere: at a place, along the line where it has a value, as coloured cells. */
import type { FieldMesh, Place } from '../../core/heat/types.ts';
import type { Point } from './piece-section.ts';

const MM = 1000;

/** Where a place lies in the mesh: node indices and their weights; null outside. */
export interface Located {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

const coordinates = (mesh: FieldMesh, place: Place): Point => {
  switch (mesh.shape) {
    case 'revolved':
      return [place.at ?? 0, place.radius ?? 0];
    case 'block':
      return [Math.abs(place.x ?? 0), Math.abs(place.y ?? 0)];
    case 'slab':
      return [Math.abs(place.x ?? place.radius ?? 0), 0];
    default:
      return [place.radius ?? 0, 0];
  }
};

function inTriangle(mesh: FieldMesh, [px, py]: Point, a: number, b: number, c: number): Located | null {
  const { x, y } = mesh;
  const ax = x[a]!;
  const ay = y[a]!;
  const abx = x[b]! - ax;
  const aby = y[b]! - ay;
  const acx = x[c]! - ax;
  const acy = y[c]! - ay;
  const area = abx * acy - acx * aby;
  if (area === 0) return null;
  const wb = ((px - ax) * acy - acx * (py - ay)) / area;
  const wc = (abx * (py - ay) - (px - ax) * aby) / area;
  const wa = 1 - wb - wc;
  const slack = -1e-6;
  return wa >= slack && wb >= slack && wc >= slack ? { nodes: [a, b, c], weights: [wa, wb, wc] } : null;
}

/** Finds a place in the mesh; each cell counts as two triangles. */
export function locate(mesh: FieldMesh, place: Place): Located | null {
  const at = coordinates(mesh, place);
  const { nu, nv, x } = mesh;
  if (nv === 1) {
    if (at[0] < -1e-9 || at[0] > x[nu - 1]! * (1 + 1e-6)) return null;
    let i = 0;
    while (i < nu - 2 && x[i + 1]! < at[0]) i++;
    const w = Math.min(1, Math.max(0, (at[0] - x[i]!) / (x[i + 1]! - x[i]!)));
    return { nodes: [i, i + 1], weights: [1 - w, w] };
  }
  for (let j = 0; j < nv - 1; j++)
    for (let i = 0; i < nu - 1; i++) {
      const a = j * nu + i;
      const found = inTriangle(mesh, at, a, a + 1, a + nu + 1) ?? inTriangle(mesh, at, a, a + nu + 1, a + nu);
      if (found !== null) return found;
    }
  return null;
}

/** The field's value there, weighted over the nodes of the cell. */
export function valueAt(field: ArrayLike<number>, located: Located): number {
  let value = 0;
  for (let k = 0; k < located.nodes.length; k++) value += field[located.nodes[k]!]! * located.weights[k]!;
  return value;
}

/**
 * Pieces of the line on which the field has the value `level`, in the mesh's own quadrant [mm]; for a mesh in one
 * direction, the distances from the middle as points on the x-axis.
 */
export function levelLines(mesh: FieldMesh, field: ArrayLike<number>, level: number): Point[][] {
  const { nu, nv, x, y } = mesh;
  const between = (a: number, b: number): Point => {
    const w = (level - field[a]!) / (field[b]! - field[a]!);
    return [(x[a]! + w * (x[b]! - x[a]!)) * MM, (y[a]! + w * (y[b]! - y[a]!)) * MM];
  };
  const crosses = (a: number, b: number) => field[a]! < level !== field[b]! < level;
  const lines: Point[][] = [];
  if (nv === 1) {
    for (let i = 0; i < nu - 1; i++) if (crosses(i, i + 1)) lines.push([between(i, i + 1)]);
    return lines;
  }
  for (let j = 0; j < nv - 1; j++)
    for (let i = 0; i < nu - 1; i++) {
      const a = j * nu + i;
      for (const [p, q, r] of [
        [a, a + 1, a + nu + 1],
        [a, a + nu + 1, a + nu],
      ] as const) {
        const ends: Point[] = [];
        if (crosses(p, q)) ends.push(between(p, q));
        if (crosses(q, r)) ends.push(between(q, r));
        if (crosses(r, p)) ends.push(between(r, p));
        if (ends.length === 2) lines.push(ends);
      }
    }
  return joined(lines);
}

/** Pieces that meet end to end as few long lines. */
function joined(pieces: readonly Point[][]): Point[][] {
  const key = ([x, y]: Point) => `${x.toFixed(4)} ${y.toFixed(4)}`;
  const open = new Map<string, Set<Point[]>>();
  const enter = (line: Point[]) => {
    for (const end of [line[0]!, line.at(-1)!]) {
      const there = open.get(key(end));
      if (there === undefined) open.set(key(end), new Set([line]));
      else there.add(line);
    }
  };
  const leave = (line: Point[]) => {
    for (const end of [line[0]!, line.at(-1)!]) open.get(key(end))?.delete(line);
  };
  const meeting = (end: Point) => open.get(key(end))?.values().next().value;
  for (const piece of pieces) {
    let line: Point[] = [...piece];
    if (key(line[0]!) === key(line.at(-1)!)) continue;
    const after = meeting(line.at(-1)!);
    if (after !== undefined) {
      leave(after);
      const onward = key(after[0]!) === key(line.at(-1)!) ? after : after.reverse();
      line = line.concat(onward.slice(1));
    }
    const before = meeting(line[0]!);
    if (before !== undefined && before !== after) {
      leave(before);
      const upTo = key(before.at(-1)!) === key(line[0]!) ? before : before.reverse();
      line = upTo.concat(line.slice(1));
    }
    enter(line);
  }
  return [...new Set([...open.values()].flatMap((lines) => [...lines]))];
}

/** A patch of one colour in the mesh's own quadrant [mm], with the field's mean there. */
export interface Patch {
  readonly points: readonly Point[];
  readonly value: number;
}

/** The mesh as patches of nearly one value: neighbouring cells of a row that `same` calls alike are one patch. */
export function patchesOf(
  mesh: FieldMesh,
  field: ArrayLike<number>,
  same: (a: number, b: number) => boolean,
): Patch[] {
  const { nu, nv, x, y } = mesh;
  const patches: Patch[] = [];
  const at = (i: number, j: number): Point => [x[j * nu + i]! * MM, y[j * nu + i]! * MM];
  for (let j = 0; j < nv - 1; j++) {
    let from = 0;
    let value = Number.NaN;
    const close = (to: number) => {
      const points: Point[] = [];
      for (let i = from; i <= to; i++) points.push(at(i, j));
      for (let i = to; i >= from; i--) points.push(at(i, j + 1));
      patches.push({ points, value });
    };
    for (let i = 0; i < nu - 1; i++) {
      const a = j * nu + i;
      const mean = (field[a]! + field[a + 1]! + field[a + nu]! + field[a + nu + 1]!) / 4;
      if (i === 0) value = mean;
      else if (!same(value, mean)) {
        close(i);
        from = i;
        value = mean;
      }
    }
    close(nu - 1);
  }
  return patches;
}
