/** What air and warm walls do to the surface of a round piece: free and forced convection, and radiation. */
import { OutOfRange } from '../errors.ts';

/** Properties of dry air at one atmosphere. */
export interface AirProperties {
  /** Conductivity [W/(m K)]. */
  readonly k: number;
  /** Kinematic viscosity [m²/s]. */
  readonly nu: number;
  /** Prandtl number [-]. */
  readonly Pr: number;
}

/**
 * Dry air at one atmosphere, as tabulated: °C, W/(m K), 1e-6 m²/s, Prandtl number.
 * Source: cengel-heat-transfer, table of air; confidence: secondary to 140 °C; above it viscosity and Prandtl number are
 * from memory and agree with the diffusivities of the same table, ν = Pr·α.
 */
const air: readonly (readonly [C: number, k: number, nu: number, Pr: number])[] = [
  [-50, 0.01979, 9.319, 0.744],
  [-40, 0.02057, 10.08, 0.7436],
  [-30, 0.02134, 10.87, 0.7425],
  [-20, 0.02211, 11.69, 0.7408],
  [-10, 0.02288, 12.52, 0.7387],
  [0, 0.02364, 13.38, 0.7362],
  [10, 0.02439, 14.26, 0.7336],
  [20, 0.02514, 15.16, 0.7309],
  [30, 0.02588, 16.08, 0.7282],
  [40, 0.02662, 17.02, 0.7255],
  [50, 0.02735, 17.98, 0.7228],
  [60, 0.02808, 18.96, 0.7202],
  [70, 0.02881, 19.95, 0.7177],
  [80, 0.02953, 20.97, 0.7154],
  [90, 0.03024, 22.01, 0.7132],
  [100, 0.03095, 23.06, 0.7111],
  [120, 0.03235, 25.22, 0.7073],
  [140, 0.03374, 27.45, 0.7041],
  [160, 0.03511, 29.75, 0.7014],
  [180, 0.03646, 32.12, 0.6992],
  [200, 0.03779, 34.55, 0.6974],
  [250, 0.04104, 40.91, 0.6946],
];

/**
 * Conductivity [W/(m K)], kinematic viscosity [m²/s] and Prandtl number [-] of dry air at one atmosphere.
 *
 *     straight lines between the tabulated temperatures
 *
 * @param C temperature [°C], −50 to 250
 * Assumes dry air: steam in it conducts a little worse.
 * Checked at tabulated temperatures and between them.
 * @example airProperties(40).k // → 0.02662
 * Source: cengel-heat-transfer
 */
export function airProperties(C: number): AirProperties {
  if (!(C >= -50 && C <= 250)) throw new OutOfRange('film of air', `${C} °C`, '-50 to 250 °C');
  const i = Math.min(
    air.length - 1,
    Math.max(
      1,
      air.findIndex(([T]) => T >= C),
    ),
  );
  const [lowC, lowK, lowNu, lowPr] = air[i - 1];
  const [highC, highK, highNu, highPr] = air[i];
  const share = (C - lowC) / (highC - lowC);
  const between = (a: number, b: number) => a + share * (b - a);
  return { k: between(lowK, highK), nu: 1e-6 * between(lowNu, highNu), Pr: between(lowPr, highPr) };
}

function checkDiameter(diameter: number): void {
  if (!(diameter > 0 && diameter <= 2)) throw new OutOfRange('diameter', `${diameter} m`, '0 to 2 m');
}

/**
 * Surface coefficient of still air round a cylinder that lies [W/(m² K)], without radiation.
 *
 *     Nu = {0.60 + 0.387·Ra^⅙/[1 + (0.559/Pr)^(9/16)]^(8/27)}²,  Ra = g·β·|T_s − T_a|·D³·Pr/ν²,  β = 1/T_film
 *
 * @param diameter of the cylinder [m], above 0 to 2; Ra at most 1e12
 * @param surface temperature of the surface [°C]
 * @param airC temperature of the air [°C]; the mean of both within −50 to 250
 * Assumes a long cylinder alone in a large room of dry air at one atmosphere. Where both temperatures agree the published
 * equation's limit Nu = 0.36 remains.
 * Checked against four values worked out from the equation with another table of air, within 1.5 %.
 * @example freeConvectionOnCylinder(0.04, 60, 20) // → 6.24
 * Source: churchill-chu-1975
 */
export function freeConvectionOnCylinder(diameter: number, surface: number, airC: number): number {
  checkDiameter(diameter);
  const film = (surface + airC) / 2;
  const { k, nu, Pr } = airProperties(film);
  const Ra = (9.80665 * Math.abs(surface - airC) * diameter ** 3 * Pr) / ((film + 273.15) * nu * nu);
  if (!(Ra <= 1e12)) throw new OutOfRange('Rayleigh number', Ra.toExponential(2), 'at most 1e12');
  const Nu = (0.6 + (0.387 * Ra ** (1 / 6)) / (1 + (0.559 / Pr) ** (9 / 16)) ** (8 / 27)) ** 2;
  return (Nu * k) / diameter;
}

/**
 * Surface coefficient of air blown across a cylinder [W/(m² K)], without radiation.
 *
 *     Nu = 0.3 + 0.62·√Re·∛Pr/[1 + (0.4/Pr)^⅔]^¼·[1 + (Re/282 000)^⅝]^⅘,  Re = u·D/ν
 *
 * @param diameter of the cylinder [m], above 0 to 2
 * @param speed of the air before it meets the piece [m/s], such that Re·Pr ≥ 0.2
 * @param film mean of the surface's and the air's temperature [°C], −50 to 250
 * Assumes a long cylinder alone across a stream of dry air at one atmosphere; a crowded rack has less.
 * Checked against six speeds worked out from the equation with another table of air, within 1.5 %.
 * @example forcedConvectionOnCylinder(0.04, 2, 20) // → 24.10
 * Source: churchill-bernstein-1977
 */
export function forcedConvectionOnCylinder(diameter: number, speed: number, film: number): number {
  checkDiameter(diameter);
  const { k, nu, Pr } = airProperties(film);
  if (!(speed >= 0 && speed <= 100)) throw new OutOfRange('speed', `${speed} m/s`, '0 to 100 m/s');
  const Re = (speed * diameter) / nu;
  if (!(Re * Pr >= 0.2))
    throw new OutOfRange(
      'speed',
      `${speed} m/s`,
      `${((0.2 * nu) / (Pr * diameter)).toPrecision(2)} m/s or more`,
    );
  const Nu =
    0.3 +
    ((0.62 * Math.sqrt(Re) * Math.cbrt(Pr)) / (1 + (0.4 / Pr) ** (2 / 3)) ** 0.25) *
      (1 + (Re / 282000) ** 0.625) ** 0.8;
  return (Nu * k) / diameter;
}

/** Stefan and Boltzmann's constant [W/(m² K⁴)]. */
const sigma = 5.670374e-8;

/**
 * Surface coefficient of the warmth exchanged with walls [W/(m² K)].
 *
 *     h_r = ε·σ·(T_s² + T_w²)·(T_s + T_w), kelvin
 *
 * @param surface temperature of the surface [°C], −100 to 1500
 * @param walls temperature of the walls [°C], −100 to 1500
 * @param emissivity of the surface, above 0 to 1
 * Assumes a small grey piece in a large enclosure: it sees nothing but walls.
 * Checked against four values worked out from the law.
 * @example radiationCoefficient(5, 180, 0.9) // → 10.55
 * Source: incropera-dewitt
 */
export function radiationCoefficient(surface: number, walls: number, emissivity = 0.9): number {
  for (const [path, C] of [
    ['surface', surface],
    ['walls', walls],
  ] as const)
    if (!(C >= -100 && C <= 1500)) throw new OutOfRange(path, `${C} °C`, '-100 to 1500 °C');
  if (!(emissivity > 0 && emissivity <= 1))
    throw new OutOfRange('emissivity', String(emissivity), 'more than 0 to 1');
  const s = surface + 273.15;
  const w = walls + 273.15;
  return emissivity * sigma * (s * s + w * w) * (s + w);
}
