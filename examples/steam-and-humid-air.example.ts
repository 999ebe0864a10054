import { humidAirHeat, restingSurface } from '../src/core/properties/evaporation.ts';
import { vapourPressure, wetBulb } from '../src/core/properties/humid-air.ts';
import {
  forcedConvectionOnCylinder,
  freeConvectionOnCylinder,
  radiationCoefficient,
} from '../src/core/properties/humid-air-convection.ts';
import {
  boilingPointAtHeight,
  icePressure,
  latentHeat,
  saturationPressure,
  saturationTemperature,
  steamDensity,
} from '../src/core/properties/saturation.ts';
import { steamOnCylinder } from '../src/core/properties/saturation-film.ts';
import type { Example, Row } from './case.ts';

const sea = 101325;

const row = (
  quantity: string,
  source: string,
  expected: Row['expected'],
  ours: number,
  tolerance: number,
  unit: string,
  why: string,
  confidence: Row['confidence'] = 'memory',
): Row => ({ quantity, source, expected, ours, tolerance, unit, why, confidence });

const figures = 'the last figure of the release, whose values we remember';
const tables =
  'steam tables, remembered, to a tenth; the slope of the pressure is good to a few parts in ten thousand';
const worked = 'worked out from the published equation';

export const example: Example = {
  title: 'Steam, humid air and what they bring to a surface',
  story: `At which temperature water boils in this kitchen, how much heat a gram of steam carries, why an oven at 150 °C dries a roast
at 57 °C, and why “steam at 85 °C”, which is steam with air in it, cooks like a bath and not like an oven. The check values of the
releases are from memory and come out to their last figure; the others are worked out from the equations named.`,
  equation:
    'p_sat(T), T_sat(p): IF97 region 4;  h_fg = T·Δv·dp/dT;  q = h·ΔT + N·h_fg,  N = h/(c·Le^⅔)·ln[(1 − p_s/P)/(1 − p_v/P)]',
  sources: [
    'iapws-if97',
    'iapws-sr1-86',
    'iapws-r14-08',
    'iso-2533-atmosphere',
    'ashrae-fundamentals-psychrometrics',
    'chilton-colburn-1934',
    'churchill-chu-1975',
    'churchill-bernstein-1977',
    'incropera-dewitt',
  ],
  run() {
    const wet = (C: number, Pa: number, expected: number) =>
      row(
        `wet bulb of air at ${C} °C with ${Pa / 1000} kPa of vapour`,
        'ashrae-fundamentals-psychrometrics',
        expected,
        wetBulb(C, Pa, sea),
        0.1,
        '°C',
        worked,
      );
    const saturated = (air: number, surface: number, expected: number) =>
      row(
        `effective coefficient of saturated air at ${air} °C on ${surface} °C, 15 dry`,
        'chilton-colburn-1934',
        expected,
        humidAirHeat({ air, vapour: saturationPressure(air), pressure: sea, h: 15 }, surface) /
          (air - surface),
        0.03 * expected,
        'W/(m² K)',
        `${worked}; molar heats of handbooks differ by 3 %`,
      );
    return [
      row('p_sat(300 K)', 'iapws-if97', 3536.58941, saturationPressure(300 - 273.15), 1e-5, 'Pa', figures),
      row('p_sat(500 K)', 'iapws-if97', 2638897.76, saturationPressure(500 - 273.15), 0.01, 'Pa', figures),
      row('p_sat(600 K)', 'iapws-if97', 12344314.6, saturationPressure(600 - 273.15), 0.1, 'Pa', figures),
      row(
        'T_sat(0.1 MPa)',
        'iapws-if97',
        372.755919,
        saturationTemperature(1e5) + 273.15,
        1e-6,
        'K',
        figures,
      ),
      row('T_sat(1 MPa)', 'iapws-if97', 453.035632, saturationTemperature(1e6) + 273.15, 1e-6, 'K', figures),
      row('T_sat(10 MPa)', 'iapws-if97', 584.149488, saturationTemperature(1e7) + 273.15, 1e-6, 'K', figures),
      row(
        'vapour over ice at 230 K',
        'iapws-r14-08',
        8.94735,
        icePressure(230 - 273.15),
        1e-5,
        'Pa',
        figures,
      ),
      row('steam at 99.974 °C', 'iapws-sr1-86', 0.597586, steamDensity(99.9743), 1e-6, 'kg/m³', figures),
      row('latent heat at 60 °C', 'iapws-sr1-86', 2357.7, latentHeat(60) / 1000, 0.3, 'kJ/kg', tables),
      row('latent heat at 100 °C', 'iapws-sr1-86', 2256.4, latentHeat(100) / 1000, 0.3, 'kJ/kg', tables),
      row(
        'water boils at the sea',
        'iso-2533-atmosphere',
        99.974,
        boilingPointAtHeight(0),
        0.002,
        '°C',
        worked,
      ),
      row(
        'water boils at 1500 m',
        'iso-2533-atmosphere',
        94.983,
        boilingPointAtHeight(1500),
        0.01,
        '°C',
        worked,
      ),
      row(
        'water boils at 3000 m',
        'iso-2533-atmosphere',
        89.972,
        boilingPointAtHeight(3000),
        0.01,
        '°C',
        worked,
      ),
      row(
        'wet bulb of a room, 25 °C at 50 %',
        'ashrae-fundamentals-psychrometrics',
        17.9,
        wetBulb(25, vapourPressure(25, 0.5), sea),
        0.05,
        '°C',
        'tables of moist air, remembered to a tenth',
      ),
      wet(150, 12350, 57.48),
      wet(180, 1200, 44.97),
      wet(230, 70200, 91.13),
      row(
        'a wet surface in 150 °C, walls that do not radiate, against the wet bulb',
        'own-computation',
        wetBulb(150, 12350, sea),
        restingSurface({ air: 150, vapour: 12350, pressure: sea, h: 20, walls: 150, hRadiation: 0 }),
        1,
        '°C',
        'the balance with Lewis number 0.865 need not be the thermodynamic wet bulb, but lies beside it',
        'computed',
      ),
      saturated(60, 30, 157),
      saturated(80, 30, 288),
      saturated(95, 50, 817),
      row(
        'pure steam at 100 °C on a cylinder of 40 mm at 60 °C',
        'incropera-dewitt',
        7590,
        steamOnCylinder(0.04, 60, 100),
        76,
        'W/(m² K)',
        `${worked}; one per cent for the film's properties`,
      ),
      row(
        'still air, cylinder of 40 mm, 60 in 20 °C',
        'churchill-chu-1975',
        6.3,
        freeConvectionOnCylinder(0.04, 60, 20),
        0.1,
        'W/(m² K)',
        `${worked} with another table of air`,
      ),
      row(
        'air at 3 m/s across it',
        'churchill-bernstein-1977',
        30.3,
        forcedConvectionOnCylinder(0.04, 3, 20),
        0.45,
        'W/(m² K)',
        `${worked} with another table of air`,
      ),
      row(
        'radiation, 5 to 180 °C',
        'incropera-dewitt',
        10.55,
        radiationCoefficient(5, 180),
        0.006,
        'W/(m² K)',
        worked,
        'computed',
      ),
    ];
  },
};
