/** What a stage's numbers rest on: the table, the correlation, what was given and what was taken for granted. */
import type { Basis } from '../core/heat/types.ts';
import {
  condensateFilm,
  foodEmissivity,
  ladledFat,
  type Medium,
  mediumNamed,
  wrapNamed,
} from '../core/properties/media.ts';
import { saturationPressure } from '../core/properties/saturation.ts';
import type { StageInput } from './body.ts';
import { pressureOf } from './pressure.ts';
import { boilingOf, hasLaw, isHumid } from './surroundings.ts';
import { isWrapped } from './wraps.ts';

const user = (what: string): Basis => ({ what, source: 'user-input', confidence: 'assumption' });
const kPa = (Pa: number) => `${(Pa / 1000).toFixed(1)} kPa`;

function coefficient(stage: StageInput, named: Medium | undefined): Basis {
  const law = hasLaw(stage);
  if (stage.hFrom !== undefined && stage.hFrom.hWm2K === stage.hWm2K)
    return {
      what: `surface coefficient${law ? ' of the dry air' : ''} ${stage.hWm2K} W/(m² K), ${stage.hFrom.text}`,
      source: 'own-computation',
      confidence: 'computed',
    };
  if (named === undefined || stage.hWm2K !== undefined)
    return user(
      law
        ? `surface coefficient of the dry air, ${stage.hWm2K} W/(m² K), as given`
        : `surface coefficient ${stage.hWm2K} W/(m² K) as given`,
    );
  if (law && named.dry !== undefined) {
    const { h, low, high, source, what } = named.dry;
    return {
      what: `surface coefficient of ${stage.medium} without its vapour and its radiation, ${h} W/(m² K) (${low} to ${high}): ${what}`,
      source,
      confidence: 'computed',
    };
  }
  const { h, low, high, source, confidence, note } = named;
  return {
    what: `surface coefficient of ${stage.medium}, ${h} W/(m² K) (${low} to ${high}${note === undefined ? '' : `; ${note}`})`,
    source,
    confidence,
  };
}

/** Under which pressure, and what that does to the temperature; nothing where the pressure plays no part. */
function pressure(stage: StageInput, named: Medium | undefined): Basis[] {
  if (named?.boils !== true && !isHumid(stage)) return [];
  const Pa = pressureOf(stage, stage.name);
  const where =
    stage.pressureKPa !== undefined
      ? `${kPa(Pa)} as given`
      : stage.altitudeM !== undefined
        ? `${kPa(Pa)}, the standard atmosphere at ${stage.altitudeM} m`
        : `${kPa(Pa)}: sea level, as no altitude is given`;
  const basis: Basis[] = [{ what: `under ${where}`, source: 'iso-2533-atmosphere', confidence: 'secondary' }];
  if (named?.boils !== true) return basis;
  const boiling = boilingOf(stage);
  const salt = stage.brineSaltPct === undefined ? 'water' : `brine of ${stage.brineSaltPct} % salt`;
  basis.push({
    what: `${salt} boils there at ${boiling.toFixed(1)} °C`,
    source: 'iapws-if97',
    confidence: 'memory',
  });
  const { mediumC } = stage;
  if (mediumC === undefined || stage.medium !== 'steam') return basis;
  if (mediumC < boiling - 0.5)
    basis.push({
      what: `steam at ${mediumC} °C under that pressure is ${(100 * (1 - saturationPressure(mediumC) / Pa)).toFixed(0)} % air by volume, which the coefficient of steam does not allow for: see low-temperature steam`,
      source: 'iapws-if97',
      confidence: 'memory',
    });
  else if (mediumC > boiling + 0.5)
    basis.push({
      what: `steam at ${mediumC} °C needs a closed vessel at ${kPa(saturationPressure(mediumC))}; no pressure is given, so this is not checked`,
      source: 'iapws-if97',
      confidence: 'memory',
    });
  return basis;
}

function air(stage: StageInput): Basis[] {
  if (!isHumid(stage)) return [];
  const measure =
    stage.dewPointC !== undefined
      ? `a dew point of ${stage.dewPointC} °C as given`
      : stage.wetBulbC !== undefined
        ? `a wet bulb of ${stage.wetBulbC} °C as given`
        : stage.humidityPct !== undefined
          ? `${stage.humidityPct} % humidity as given: of what the air can hold, above boiling of its pressure`
          : 'saturated with steam, as low-temperature steam is taken to be';
  const surface = isWrapped(stage)
    ? 'wrapped: nothing dries off, steam condenses on the wrap'
    : stage.surfaceWaterActivity === undefined
      ? 'the surface is taken to be wet'
      : `water activity of the surface ${stage.surfaceWaterActivity} as given`;
  return [
    user(`${measure}; ${surface}`),
    {
      what: `what condenses runs off as a film of ${condensateFilm.h} W/(m² K)`,
      source: condensateFilm.source,
      confidence: condensateFilm.confidence,
    },
  ];
}

function radiation(stage: StageInput): Basis[] {
  if (!hasLaw(stage)) return [];
  const walls = stage.wallC === undefined ? 'the air' : `${stage.wallC} °C`;
  const basis: Basis[] = [
    stage.emissivity === undefined
      ? {
          what: `radiation to walls as warm as ${walls}, emissivity ${foodEmissivity.value}`,
          source: foodEmissivity.source,
          confidence: foodEmissivity.confidence,
        }
      : user(`radiation to walls as warm as ${walls}, emissivity ${stage.emissivity} as given`),
  ];
  if (stage.fluxWm2 !== undefined)
    basis.push(user(`${stage.fluxWm2} W/m² of radiant heat absorbed all over the surface, as given`));
  if (stage.radiantC !== undefined)
    basis.push(
      user(
        `a source at ${stage.radiantC} °C of which ${stage.radiantShare} of black radiation is exchanged with the whole surface, as given`,
      ),
    );
  return basis;
}

function wrapped({ wraps = [] }: StageInput): Basis[] {
  return wraps.map(({ of, thicknessMm, layers = 1 }) => {
    const { k, low, high, source, confidence } = wrapNamed(of);
    return {
      what: `${layers === 1 ? '' : `${layers} × `}${thicknessMm} mm of ${of}, ${k} W/(m K) (${low} to ${high}), in series with it; air trapped under it costs more than the film`,
      source,
      confidence,
    };
  });
}

function ladle({ ladle: fat }: StageInput): Basis[] {
  if (fat === undefined) return [];
  const share = ((100 * fat.onS) / fat.everyS).toFixed(0);
  const h = fat.hWm2K ?? ladledFat.h;
  return [
    {
      what: `fat of ${fat.fatC} °C over the whole surface for ${share} % of the time at ${h} W/(m² K), averaged over time and lessened by the surface's own warming under each ladle, as if of lean meat: no measurement of ladling was found`,
      source: fat.hWm2K === undefined ? ladledFat.source : 'user-input',
      confidence: 'assumption',
    },
  ];
}

/** Air from here on cooks [°C]: colder air only chills or rests, and there leaving out what dries off errs on the safe side. */
const driesFrom = 60;

/**
 * What takes from a stage its standing: hot air of the table, of which nothing is said and in which nothing is wrapped, computed as if
 * nothing dried off. A coefficient of one's own may have the drying in it.
 */
export function dryingDoubt(stage: StageInput): { what: string; source: string } | undefined {
  const named = stage.medium === undefined ? undefined : mediumNamed(stage.medium);
  if (named?.dry === undefined || isHumid(stage) || isWrapped(stage)) return undefined;
  if (stage.hWm2K !== undefined && !hasLaw(stage)) return undefined;
  const hottest = Math.max(stage.mediumC ?? named.usual ?? 0, ...(stage.mediumLog ?? []).map(({ C }) => C));
  if (hottest < driesFrom && named.needs === undefined) return undefined;
  return {
    what: `${stage.name}: computed as if nothing dried off. A wet piece that is not wrapped stays cooler in hot air and may take twice as long: say how much vapour there is, or that it is wrapped`,
    source: 'own-assumption',
  };
}

/** What a stage's numbers rest on [-], every line beginning with its name. */
export function stageBasis(stage: StageInput): Basis[] {
  const named = stage.medium === undefined ? undefined : mediumNamed(stage.medium);
  const resistance = stage.resistanceM2KW ?? 0;
  const doubt = dryingDoubt(stage);
  return [
    coefficient(stage, named),
    ...wrapped(stage),
    ...(resistance > 0 ? [user(`${resistance} m² K/W of wrap or mould in series with it`)] : []),
    ...pressure(stage, named),
    ...air(stage),
    ...radiation(stage),
    ...ladle(stage),
  ]
    .map((basis): Basis => ({ ...basis, what: `${stage.name}: ${basis.what}` }))
    .concat(doubt === undefined ? [] : [{ ...doubt, confidence: 'assumption' }]);
}
