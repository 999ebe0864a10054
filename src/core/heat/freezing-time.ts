/** How long a simple shape takes to freeze, by the two hand methods: Plank's bound and Pham's estimate. */
import { OutOfRange } from '../errors.ts';
import type { Simple } from './series.ts';

/** What a shape gives each of its sides: how much sooner than a slab of the same half thickness it freezes [-]. */
const sides = { slab: 1, cylinder: 2, sphere: 3 } as const satisfies Record<Simple, number>;

function positive(values: Readonly<Record<string, number>>, units: Readonly<Record<string, string>>): void {
  for (const [path, value] of Object.entries(values))
    if (!(value > 0 && Number.isFinite(value)))
      throw new OutOfRange(
        path,
        `${value} ${units[path] ?? ''}`.trim(),
        `more than 0 ${units[path] ?? ''}`.trim(),
      );
}

const units = {
  half: 'm',
  h: 'W/(m² K)',
  k: 'W/(m K)',
  density: 'kg/m³',
  latent: 'J/kg',
  unfrozenDensity: 'kg/m³',
  unfrozenHeat: 'J/(kg K)',
  frozenDensity: 'kg/m³',
  frozenHeat: 'J/(kg K)',
} as const;

export interface PlankFreezing {
  readonly shape: Simple;
  /** Half thickness or radius [m]. */
  readonly half: number;
  /** Surface coefficient [W/(m² K)]. */
  readonly h: number;
  /** Conductivity frozen [W/(m K)]. */
  readonly k: number;
  readonly density: number;
  /** Heat of freezing of a kilogram of food [J/kg]. */
  readonly latent: number;
  /** First ice [°C]. */
  readonly freezing: number;
  /** Air or brine round it [°C], colder than the first ice. */
  readonly medium: number;
}

/**
 * Time in which a shape freezes that is already at its first ice [s], by Plank.
 *
 *     t = ρ·L/(t_f − t_a)·(P·a/h + R·a²/k),  a = 2·half;  P ½, ¼, 1/6;  R ⅛, 1/16, 1/24
 *
 * @param f shape, half thickness [m], h [W/(m² K)], k frozen [W/(m K)], density [kg/m³], latent heat [J/kg], first ice
 * and medium [°C], all above 0 but the temperatures
 * Assumes all heat is given up at the first ice: no cooling to it, none below it, so that it is too short.
 * Checked against a textbook sphere of 70 mm, 0.72 h.
 * @example freezingTimePlank({ shape: 'sphere', half: 0.035, h: 50, k: 1.2, density: 1000, latent: 250e3, freezing: -1.25, medium: -40 }) // → 2603.05
 * Source: plank-1913
 */
export function freezingTimePlank(f: PlankFreezing): number {
  const { shape, half, h, k, density, latent, freezing, medium } = f;
  positive({ half, h, k, density, latent }, units);
  if (!(freezing >= -10 && freezing <= 0)) throw new OutOfRange('freezing', `${freezing} °C`, '-10 to 0 °C');
  if (!(medium < freezing && medium >= -200))
    throw new OutOfRange('medium', `${medium} °C`, `-200 °C to below the first ice at ${freezing} °C`);
  const a = 2 * half;
  const n = sides[shape];
  return ((density * latent) / (freezing - medium)) * (a / (2 * n * h) + (a * a) / (8 * n * k));
}

export interface PhamFreezing {
  readonly shape: Simple;
  /** Half thickness or radius [m]. */
  readonly half: number;
  /** Surface coefficient [W/(m² K)]. */
  readonly h: number;
  /** Conductivity frozen [W/(m K)]. */
  readonly k: number;
  readonly unfrozenDensity: number;
  readonly unfrozenHeat: number;
  readonly frozenDensity: number;
  readonly frozenHeat: number;
  /**
   * Heat of freezing of a kilogram of food [J/kg]: of the water that is ice at the end. With that of all its water, as
   * textbooks take it, the answer is longer by a quarter for lean meat.
   */
  readonly latent: number;
  /** Start, centre at the end, and medium [°C]. */
  readonly start: number;
  readonly end: number;
  readonly medium: number;
}

/**
 * Mean temperature at which a food freezes [°C], by Pham.
 *
 *     t_fm = 1.8 + 0.263·t_c + 0.105·t_a
 *
 * @param end temperature of the centre at the end [°C], −40 to −5
 * @param medium air or brine round it [°C], −60 to below `end`
 * Assumes a moist food, more than half water. Checked by hand.
 * @example meanFreezing(-18, -35) // → -6.609
 * Source: pham-1986
 */
export function meanFreezing(end: number, medium: number): number {
  if (!(end >= -40 && end <= -5)) throw new OutOfRange('end', `${end} °C`, '-40 to -5 °C');
  if (!(medium >= -60 && medium < end))
    throw new OutOfRange('medium', `${medium} °C`, `-60 °C to below ${end} °C`);
  return 1.8 + 0.263 * end + 0.105 * medium;
}

/**
 * Time in which a shape freezes to a given temperature in its centre [s], by Pham.
 *
 *     t = d/(E·h)·(ΔH1/ΔT1 + ΔH2/ΔT2)·(1 + Bi/2),  Bi = h·d/k,  E 1, 2, 3
 *     ΔH1 = ρ·c·(t_i − t_fm),  ΔH2 = ρ_s·[L + c_s·(t_fm − t_c)]
 *     ΔT1 = (t_i + t_fm)/2 − t_a,  ΔT2 = t_fm − t_a
 *
 * @param f shape, half thickness [m], h [W/(m² K)], k frozen [W/(m K)], densities [kg/m³], heats [J/(kg K)], latent heat
 * [J/kg], all above 0; start above the mean freezing point to 40 °C, end −40 to −5, medium −60 to below the end
 * Assumes a moist food, one coefficient all round, no cover of frost. Its author reports about 10 % against measured times
 * (from memory).
 * Checked against a cylinder worked out from the published equations, against Plank where nothing but ice is made, and
 * against lamb computed step by step: 5 to 9 % longer.
 * @example freezingTimePham({ shape: 'cylinder', half: 0.02, h: 30, k: 1.4, unfrozenDensity: 1050, unfrozenHeat: 3500, frozenDensity: 980, frozenHeat: 2000, latent: 220e3, start: 5, end: -18, medium: -35 }) // → 3897.03
 * Source: pham-1986
 */
export function freezingTimePham(f: PhamFreezing): number {
  const { shape, half, h, k, unfrozenDensity, unfrozenHeat, frozenDensity, frozenHeat, latent } = f;
  positive({ half, h, k, unfrozenDensity, unfrozenHeat, frozenDensity, frozenHeat, latent }, units);
  const mean = meanFreezing(f.end, f.medium);
  if (!(f.start > mean && f.start <= 40))
    throw new OutOfRange(
      'start',
      `${f.start} °C`,
      `above the mean freezing point, ${mean.toFixed(1)}, to 40 °C`,
    );
  const cooling = (unfrozenDensity * unfrozenHeat * (f.start - mean)) / ((f.start + mean) / 2 - f.medium);
  const freezing = (frozenDensity * (latent + frozenHeat * (mean - f.end))) / (mean - f.medium);
  return (half / (sides[shape] * h)) * (cooling + freezing) * (1 + (h * half) / k / 2);
}
