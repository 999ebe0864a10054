/** A step of a method in the words of paper: how long, at what, and within which limits. */
import type { StageInput } from '../contract/body.ts';
import { brineFor } from '../contract/method-cure.ts';
import type { Ask, Step, StepOf } from '../contract/steps.ts';
import { duration, length, number, temperature, type Units, weight } from './format.ts';
import { surroundingsInWords } from './surroundings-in-words.ts';

/** `at least 70 °C`, `at most 3 °C`, `between 440 and 500 g`; empty where there is no limit. */
export function limitText(ask: Pick<Ask, 'kind' | 'low' | 'high'>, units: Units): string {
  const value = (v: number) => valueText(ask.kind, v, units);
  if (ask.low !== undefined && ask.high !== undefined) return `${value(ask.low)} to ${value(ask.high)}`;
  if (ask.low !== undefined) return `at least ${value(ask.low)}`;
  if (ask.high !== undefined) return `at most ${value(ask.high)}`;
  return '';
}

/** A recorded value with its unit. */
export function valueText(kind: Ask['kind'], value: number | null, units: Units): string {
  if (value === null) return '';
  switch (kind) {
    case 'weight':
      return weight(value, units);
    case 'temperature':
    case 'core log':
      // Two decimals: 69.96 °C against a limit of 70 °C must not be printed as 70 °C.
      return temperature(value, units, 2);
    case 'duration':
      return `${number(value, 1)} min`;
    case 'count':
      return `${number(value)} pieces`;
    case 'tick':
      return value === 1 ? 'done' : 'not done';
    default:
      return number(value, 3);
  }
}

function untilText(stage: StageInput, units: Units, reckonedMin: number | undefined): string {
  const { until } = stage;
  const about = reckonedMin === undefined ? '' : ` (reckoned ${duration(Math.ceil(reckonedMin))})`;
  if ('min' in until) return duration(until.min);
  if ('coldestC' in until)
    return `until the coldest point is at ${temperature(until.coldestC, units)}${about}`;
  if ('warmestC' in until)
    return `until the warmest point is at ${temperature(until.warmestC, units)}${about}`;
  return `until the coldest point has had ${number(until.lethalityMin, 1)} min${about}`;
}

/** `steam 100 °C, 58 min`. `reckonedMin`: what the engine found for a stage that ends at a temperature. */
export function stageText(stage: StageInput, units: Units, reckonedMin?: number): string {
  const medium =
    stage.mediumC !== undefined
      ? ` ${temperature(stage.mediumC, units)}`
      : stage.mediumLog
        ? ' by its log'
        : '';
  const beside = surroundingsInWords(stage, (C) => temperature(C, units));
  return [`${stage.name}${medium}`, ...beside, untilText(stage, units, reckonedMin)].join(', ');
}

/** How much goes in, what is left empty, and how thick the filled piece may be where it is thickest. */
function fillText(step: StepOf<'fill'>, units: Units): string {
  const thickest = step.profile.reduce((best, p) => (p.diameterMm > best.diameterMm ? p : best));
  const swells = step.swellPct === undefined ? '' : `, swells ${number(step.swellPct, 1)} %`;
  return `${weight(step.gramsPerPiece, units)} a piece, ${number(step.headSpacePct, 1)} % head space${swells}; at most ${length(thickest.diameterMm, units)} across, ${length(thickest.atMm, units)} from the end`;
}

/** Salt, water, hours and cold; what is wanted in the end; how curing salt goes in. */
function cureText(step: StepOf<'cure'>, units: Units): string {
  const cold = (h: number, C: number) => `${duration(h * 60)} at ${temperature(C, units)}`;
  const { saltKg, waterKg } = brineFor(step);
  const grams = (kg: number) => `${number(kg * 1000, kg < 0.1 ? 1 : 0)} g`;
  const parts: string[] = [];
  if (step.by === 'dry cure')
    parts.push(`${number(step.saltPct, 2)} % salt, ${grams(saltKg)} to each kg of meat`);
  else if (step.by === 'brine')
    parts.push(
      `${number(step.saltPct, 2)} % brine (${grams(step.saltPct / (100 - step.saltPct))} salt to each kg of water)`,
      step.brinePerKg === undefined ? '' : `${number(step.brinePerKg, 2)} times the weight of the meat`,
    );
  else
    parts.push(
      `${number(step.saltPct, 2)} % salt of meat and water together: ${grams(waterKg)} water and ${grams(saltKg)} salt to each kg of meat`,
    );
  if (step.curingSalt !== undefined)
    parts.push(
      `of it ${number(step.curingSalt.gPerKg, 1)} g/kg curing salt with ${number(step.curingSalt.nitritePct, 2)} % sodium nitrite, weighed to a tenth of a gram`,
    );
  parts.push(cold(step.h, step.mediumC));
  if (step.rest !== undefined)
    parts.push(`then salt off, ${cold(step.rest.h, step.rest.mediumC)} to even out`);
  if (step.wantedSaltPct !== undefined) parts.push(`for ${number(step.wantedSaltPct, 2)} % salt in the meat`);
  return parts.filter((part) => part !== '').join(', ');
}

/** What the step takes and at what, in a line. `reckoned` gives the minutes of each stage where the engine has run. */
export function settingText(step: Step, units: Units, reckoned: readonly number[] = []): string {
  switch (step.kind) {
    case 'trim':
      return `${weight(step.weightG, units)} of ${step.part}, leaves ${number(step.yieldPct, 1)} %`;
    case 'cure':
      return cureText(step, units);
    case 'rinse and dry':
      return `rinse ${duration(step.rinseMin)}, dry ${duration(step.dryMin)}`;
    case 'mix':
      return `below ${temperature(step.maxC, units)}`;
    case 'fill':
      return fillText(step, units);
    case 'wrap':
      return `${step.material}, ${step.layers} × ${number(step.micrometres)} µm`;
    case 'cook':
    case 'chill':
      return step.stages.map((stage, i) => stageText(stage, units, reckoned[i])).join(' → ');
    case 'keep':
      return `up to ${number(step.days, 1)} days, at most ${temperature(step.maxC, units)}, ${step.packed}`;
    case 'finish': {
      const core = step.coreC === undefined ? '' : `, core ${temperature(step.coreC, units)}`;
      if (step.stages !== undefined && step.stages.length > 0) {
        const from = step.startC === undefined ? '' : `from ${temperature(step.startC, units)}: `;
        return `${step.by}: ${from}${step.stages.map((stage, i) => stageText(stage, units, reckoned[i])).join(' → ')}${core}`;
      }
      return `${step.by}, ${temperature(step.mediumC, units)}, ${duration(step.min)}${core}`;
    }
    case 'plate':
      return `${weight(step.portionG, units)} a portion, ${number(step.portionsPerPiece, 2)} from a piece`;
  }
}
