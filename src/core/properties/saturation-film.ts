/** Pure steam condensing on a piece: the film of water that runs off it is all the resistance there is. */
import { OutOfRange } from '../errors.ts';
import { componentConductivity, componentHeat } from './food-components.ts';
import { boilingWaterDensity, latentHeat, steamDensity } from './saturation.ts';

/**
 * Viscosity of liquid water at a tenth of a megapascal [Pa s].
 *
 *     μ = 1e-6·Σ a_i·(T/300 K)^b_i
 *
 * @param C temperature [°C], −20 to 110
 * Assumes pure water; the pressures of a kitchen make no difference.
 * Checked against the release's 889.996e-6 at 298.15 K (from memory).
 * @example waterViscosity(25) * 1e6 // → 889.997
 * Source: iapws-sr6-08
 */
export function waterViscosity(C: number): number {
  if (!(C >= -20 && C <= 110)) throw new OutOfRange('film of water', `${C} °C`, '-20 to 110 °C');
  const t = (C + 273.15) / 300;
  return 1e-6 * (280.68 * t ** -1.9 + 511.45 * t ** -7.7 + 61.131 * t ** -19.6 + 0.45903 * t ** -40);
}

/**
 * Surface coefficient of pure steam condensing on a cylinder that lies [W/(m² K)].
 *
 *     h = 0.729·[g·ρ_l·(ρ_l − ρ_v)·h'·k³/(μ·D·(T_sat − T_s))]^¼,  h' = h_fg + 0.68·c·(T_sat − T_s)
 *
 * @param diameter of the cylinder [m], above 0 to 2
 * @param surface temperature of the surface [°C], 0 to below saturation
 * @param saturation temperature of the steam [°C], above the surface to 180; the film's mean at most 110
 * Assumes still steam without any air and a smooth laminar film. A little air takes most of it away: a real steamer gives
 * 400 to 5000, and this is its upper bound, not a default.
 * Checked against four values worked out from the equation, within 1 %.
 * @example steamOnCylinder(0.04, 60, 100) // → 7567
 * Source: incropera-dewitt
 */
export function steamOnCylinder(diameter: number, surface: number, saturation: number): number {
  if (!(diameter > 0 && diameter <= 2)) throw new OutOfRange('diameter', `${diameter} m`, '0 to 2 m');
  if (!(saturation > 0 && saturation <= 180))
    throw new OutOfRange('steam', `${saturation} °C`, '0 to 180 °C');
  const cooler = saturation - surface;
  if (!(surface >= 0 && cooler > 0))
    throw new OutOfRange('surface', `${surface} °C`, `0 °C to below the steam's ${saturation} °C`);
  const film = (surface + saturation) / 2;
  const rho = boilingWaterDensity(film);
  const k = componentConductivity('water', film);
  const mu = waterViscosity(film);
  const heat = latentHeat(saturation) + 0.68 * componentHeat('water', film) * cooler;
  return (
    0.729 *
    ((9.80665 * rho * (rho - steamDensity(saturation)) * heat * k ** 3) / (mu * diameter * cooler)) ** 0.25
  );
}
