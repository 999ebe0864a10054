/** Changing a piece: another kind of shape, points of a profile, layers; pasted profiles. All in the contract's units. */
import type { BodyInput } from '../../../../contract/body.ts';

export type Shape = BodyInput['shape'];
export type Layer = BodyInput['layers'][number];
export type ProfilePoint = { readonly atMm: number; readonly diameterMm: number };
export type Revolved = Extract<BodyInput, { shape: 'revolved' }>;

export const shapeNames: readonly { value: Shape; label: string }[] = [
  { value: 'revolved', label: 'Round, tapering: a filled skin, a neck, a trotter' },
  { value: 'cylinder', label: 'Long and round: a ballotine, a sausage' },
  { value: 'sphere', label: 'A ball, or nearly: gizzards, faggots' },
  { value: 'slab', label: 'Flat: a tray, a slice' },
  { value: 'block', label: 'A bar: a terrine' },
];

/** The thickness that counts most: what a change of shape keeps. */
export function thickestMm(body: BodyInput): number {
  switch (body.shape) {
    case 'cylinder':
    case 'sphere':
      return body.diameterMm;
    case 'slab':
      return body.thicknessMm;
    case 'block':
      return Math.min(body.widthMm, body.heightMm);
    case 'revolved':
      return Math.max(...body.profile.map((p) => p.diameterMm));
  }
}

/** The same layers and about the same thickness in another shape. */
export function asShape(body: BodyInput, shape: Shape): BodyInput {
  if (body.shape === shape) return body;
  const size = Math.max(1, Math.round(thickestMm(body)));
  const layers = body.layers;
  switch (shape) {
    case 'cylinder':
    case 'sphere':
      return { shape, diameterMm: size, layers };
    case 'slab':
      return { shape, thicknessMm: size, layers };
    case 'block':
      return { shape, widthMm: Math.round(size * 1.3), heightMm: size, layers };
    case 'revolved':
      return {
        shape,
        profile: [
          { atMm: 0, diameterMm: Math.round(size * 0.8) },
          { atMm: size * 2, diameterMm: size },
          { atMm: size * 3, diameterMm: Math.round(size * 0.9) },
        ],
        layers,
      };
  }
}

const tenths = (mm: number) => Math.round(mm * 10) / 10;

/** The piece made thicker or thinner everywhere, its thickest place at `mm`. */
export function withThickest(body: BodyInput, mm: number): BodyInput {
  switch (body.shape) {
    case 'cylinder':
    case 'sphere':
      return { ...body, diameterMm: mm };
    case 'slab':
      return { ...body, thicknessMm: mm };
    case 'block':
      return body.widthMm < body.heightMm ? { ...body, widthMm: mm } : { ...body, heightMm: mm };
    case 'revolved': {
      const factor = mm / Math.max(1e-9, thickestMm(body));
      return {
        ...body,
        profile: body.profile.map((p) => ({
          ...p,
          diameterMm: Math.round(p.diameterMm * factor * 100) / 100,
        })),
      };
    }
  }
}

/** A body of revolution with another profile; its stated length follows. */
export function withProfile(body: Revolved, profile: readonly ProfilePoint[]): Revolved {
  const last = profile.at(-1)?.atMm;
  return {
    ...body,
    profile: [...profile],
    ...(body.lengthMm === undefined || last === undefined ? {} : { lengthMm: last }),
  };
}

/** The gap between neighbours when a point is dragged [mm]. */
const GAP = 1;

/** One point moved; it stays between its neighbours, the first at 0. */
export function movePoint(
  profile: readonly ProfilePoint[],
  index: number,
  to: { readonly atMm?: number; readonly diameterMm?: number },
): ProfilePoint[] {
  const point = profile[index];
  if (point === undefined) return [...profile];
  const before = profile[index - 1];
  const after = profile[index + 1];
  let atMm = tenths(to.atMm ?? point.atMm);
  if (before === undefined) atMm = point.atMm;
  else {
    atMm = Math.max(before.atMm + GAP, atMm);
    if (after !== undefined) atMm = Math.min(after.atMm - GAP, atMm);
  }
  const diameterMm = Math.min(2_000, Math.max(1, tenths(to.diameterMm ?? point.diameterMm)));
  return profile.map((p, i) => (i === index ? { atMm, diameterMm } : p));
}

/** A new point in the middle of the gap after `index`, or of the longest gap; where it is: the shape does not change. */
export function addPoint(
  profile: readonly ProfilePoint[],
  index?: number,
): { readonly profile: ProfilePoint[]; readonly at: number } {
  let gap = index ?? 0;
  if (index === undefined || index >= profile.length - 1) {
    gap = 0;
    for (let i = 1; i < profile.length - 1; i++)
      if (profile[i + 1]!.atMm - profile[i]!.atMm > profile[gap + 1]!.atMm - profile[gap]!.atMm) gap = i;
  }
  const a = profile[gap];
  const b = profile[gap + 1];
  if (a === undefined || b === undefined || b.atMm - a.atMm < 2 * GAP)
    return { profile: [...profile], at: gap };
  const point = {
    atMm: tenths((a.atMm + b.atMm) / 2),
    diameterMm: tenths((a.diameterMm + b.diameterMm) / 2),
  };
  return { profile: [...profile.slice(0, gap + 1), point, ...profile.slice(gap + 1)], at: gap + 1 };
}

/** A point taken out; two must stay. The first that stays is at 0. */
export function removePoint(profile: readonly ProfilePoint[], index: number): ProfilePoint[] {
  if (profile.length <= 2) return [...profile];
  const left = profile.filter((_, i) => i !== index);
  const from = left[0]?.atMm ?? 0;
  return left.map((p) => ({ ...p, atMm: tenths(p.atMm - from) }));
}

export type Pasted =
  | { readonly ok: true; readonly profile: ProfilePoint[] }
  | { readonly ok: false; readonly message: string };

function cellNumber(cell: string): number {
  const text = cell.trim().replace(/\s*(mm|cm|in|")$/i, '');
  const factor = /cm$/i.test(cell.trim()) ? 10 : /(in|")$/i.test(cell.trim()) ? 25.4 : 1;
  return /^-?\d+([.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) * factor : Number.NaN;
}

/** Two columns from a spreadsheet: distance and diameter, in mm unless written otherwise. */
export function parseProfile(text: string, unitMm = 1): Pasted {
  const lines = text.split(/\r\n|\r|\n/).filter((line) => line.trim() !== '');
  const points: ProfilePoint[] = [];
  for (const [i, line] of lines.entries()) {
    const cells = (
      /[\t;]/.test(line) ? line.split(/[\t;]/) : line.trim().split(/\s+|,\s+|,(?=\d+\s*$)/)
    ).filter((cell) => cell.trim() !== '');
    const [at, diameter] = cells.map((cell) => {
      const bare = cellNumber(cell);
      return /[a-z"]/i.test(cell) ? bare : bare * unitMm;
    });
    const numbers = cells.length === 2 && Number.isFinite(at) && Number.isFinite(diameter);
    if (!numbers && i === 0 && lines.length > 1 && /[a-z]/i.test(line)) continue;
    if (!numbers)
      return {
        ok: false,
        message: `line ${i + 1}, “${line.trim().slice(0, 40)}”: two numbers are wanted, distance and diameter`,
      };
    points.push({ atMm: tenths(at!), diameterMm: tenths(diameter!) });
  }
  if (points.length < 2) return { ok: false, message: `${points.length} rows: at least two are wanted` };
  if (points.length > 400) return { ok: false, message: `${points.length} rows: at most 400 are taken` };
  const from = points[0]!.atMm;
  const profile = points.map((p) => ({ ...p, atMm: tenths(p.atMm - from) }));
  for (const [i, p] of profile.entries()) {
    const before = profile[i - 1];
    if (before !== undefined && p.atMm <= before.atMm)
      return {
        ok: false,
        message: `row ${i + 1}: ${points[i]!.atMm} mm does not come after ${points[i - 1]!.atMm} mm; distances must rise`,
      };
    if (!(p.diameterMm > 0 && p.diameterMm <= 2_000))
      return {
        ok: false,
        message: `row ${i + 1}: a diameter of ${p.diameterMm} mm; 1 to 2000 mm is possible`,
      };
  }
  return { ok: true, profile };
}
