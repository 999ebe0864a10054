/**
 * The temperature ramp: one path through OKLab from dark slate-blue (cold) by oxblood and ember to bone (hot).
 * Lightness only ever rises, so that the picture still reads in grey and to a colour-blind eye, and equal steps in
 * temperature are equal steps in perceived colour (the path is walked by its own arc length).
 * OKLab: Björn Ottosson's published matrices (2020).
 */

/** Lightness, green–red, blue–yellow. */
export type Oklab = readonly [L: number, a: number, b: number];

const ENTRIES = 256;

/** The hues the ramp passes, as OKLCh: lightness 0–1, chroma, hue [degrees]. */
const waypoints: readonly Oklab[] = (
  [
    [0.25, 0.045, 250],
    [0.35, 0.06, 290],
    [0.44, 0.105, 10],
    [0.53, 0.125, 25],
    [0.64, 0.115, 45],
    [0.76, 0.09, 65],
    [0.87, 0.055, 80],
    [0.955, 0.02, 88],
  ] as const
).map(([L, chroma, hue]) => {
  const angle = (hue * Math.PI) / 180;
  return [L, chroma * Math.cos(angle), chroma * Math.sin(angle)];
});

/** Catmull–Rom through the waypoints in a and b; lightness is straight between them, so that it cannot turn back. */
function onPath(u: number): Oklab {
  const last = waypoints.length - 1;
  const k = Math.min(last - 1, Math.max(0, Math.floor(u * last)));
  const t = u * last - k;
  const p1 = waypoints[k]!;
  const p2 = waypoints[k + 1]!;
  const p0 = waypoints[Math.max(0, k - 1)]!;
  const p3 = waypoints[Math.min(last, k + 2)]!;
  const smooth = (i: 1 | 2) =>
    0.5 *
    (2 * p1[i] +
      (p2[i] - p0[i]) * t +
      (2 * p0[i] - 5 * p1[i] + 4 * p2[i] - p3[i]) * t * t +
      (3 * p1[i] - p0[i] - 3 * p2[i] + p3[i]) * t * t * t);
  return [p1[0] + (p2[0] - p1[0]) * t, smooth(1), smooth(2)];
}

export const oklabDistance = (p: Oklab, q: Oklab): number =>
  Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);

/** Linear sRGB, each 0–1 where the colour can be shown. */
export function linearRgbOf([L, a, b]: Oklab): readonly [number, number, number] {
  const l = (L + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (L - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (L - 0.0894841775 * a - 1.291485548 * b) ** 3;
  return [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ];
}

function byteOf(linear: number): number {
  const v = Math.min(1, Math.max(0, linear));
  return Math.round(255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055));
}

function walk(): Oklab[] {
  const fine = 4096;
  const length = new Float64Array(fine + 1);
  let before = onPath(0);
  for (let i = 1; i <= fine; i++) {
    const here = onPath(i / fine);
    length[i] = length[i - 1]! + oklabDistance(before, here);
    before = here;
  }
  const total = length[fine]!;
  const path: Oklab[] = [];
  let i = 0;
  for (let n = 0; n < ENTRIES; n++) {
    const wanted = (total * n) / (ENTRIES - 1);
    while (i < fine - 1 && length[i + 1]! < wanted) i++;
    const span = length[i + 1]! - length[i]!;
    path.push(onPath(Math.min(1, (i + (span > 0 ? (wanted - length[i]!) / span : 0)) / fine)));
  }
  return path;
}

/** The ramp in OKLab, cold to hot. */
export const rampPath: readonly Oklab[] = walk();

/** Red, green, blue of each of the 256 entries, cold to hot. */
export const rampBytes: Uint8ClampedArray = new Uint8ClampedArray(
  rampPath.flatMap((colour) => linearRgbOf(colour).map(byteOf)),
);

/** Entry of the ramp for a value 0 (cold end) … 1 (hot end); values beyond are held at the ends, NaN at the cold end. */
export function rampEntry(x: number): number {
  return x > 0 ? Math.round(Math.min(1, x) * (ENTRIES - 1)) : 0;
}

/** Colour of a value 0 (cold end) … 1 (hot end), as `#rrggbb`. */
export function rampColour(x: number): string {
  const at = 3 * rampEntry(x);
  let hex = '#';
  for (let c = 0; c < 3; c++) hex += rampBytes[at + c]!.toString(16).padStart(2, '0');
  return hex;
}
