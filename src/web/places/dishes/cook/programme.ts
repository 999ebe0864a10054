/** From the method and the step as it is being edited to what the engine is asked, or what stands in the way. */

import type { z } from 'zod';
import type { StageInput } from '../../../../contract/body.ts';
import { stageRanges } from '../../../../contract/media-range.ts';
import { chillStepOf, cookStepOf, programmeInputOf, programmeOf } from '../../../../contract/method-cook.ts';
import { InputProblems, type Problem } from '../../../../contract/problem.ts';
import type { ChillStep, CookStep, Method, StepOf } from '../../../../contract/steps.ts';
import type { CookProblem } from '../../../../core/heat/types.ts';
import type { StageRange } from '../../../../core/method/media-range.ts';
import { plainNumber } from '../../../../core/units.ts';

export type Cook = z.infer<typeof CookStep>;
export type Chill = z.infer<typeof ChillStep>;

/** Something wrong with the input, at a path of the cook step or of the chill step. */
export interface Fault extends Problem {
  readonly step: 'cook' | 'chill';
}

export type Programme =
  | {
      readonly ok: true;
      readonly problem: CookProblem;
      /** How many of its stages are the cook step's own. */
      readonly cookStages: number;
      readonly cook: Cook;
      readonly chill: Chill | undefined;
      /** Its stages at both ends of their media's published ranges. */
      readonly ranges: readonly StageRange[];
      /** Its stages as they are run: wraps of the steps before included. */
      readonly stages: readonly StageInput[];
      /** Equal for equal problems. */
      readonly key: string;
    }
  | { readonly ok: false; readonly faults: readonly Fault[]; readonly cook: Cook | undefined };

function faultOf(problem: Problem, cookStages: number): Fault {
  const stage = /^stages\[(\d+)\](.*)$/.exec(problem.path);
  const index = Number(stage?.[1]);
  if (stage === null || index < cookStages) return { ...problem, step: 'cook' };
  return { ...problem, path: `stages[${index - cookStages}]${stage[2]}`, step: 'chill' };
}

/** The programme of the method with this step as it is now. */
export function programmeWith(method: Method, step: Cook | Chill): Programme {
  const edited = method.map((s) => (s.id === step.id ? step : s));
  const cook: StepOf<'cook'> | undefined = step.kind === 'cook' ? step : cookStepOf(edited, step.id);
  if (cook === undefined)
    return {
      ok: false,
      cook: undefined,
      faults: [
        {
          path: 'method',
          found: 'no cook step before this chill',
          allowed: 'a cook step first: the chill begins with the temperatures it leaves',
          step: 'chill',
        },
      ],
    };
  try {
    const { problem, cookStages } = programmeOf(edited, cook.id);
    const { stages } = programmeInputOf(edited, cook.id);
    return {
      ok: true,
      problem,
      cookStages,
      cook,
      chill: chillStepOf(edited, cook.id),
      ranges: stageRanges(stages, problem),
      stages,
      key: JSON.stringify(problem),
    };
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    return { ok: false, cook, faults: error.problems.map((p) => faultOf(p, cook.stages.length)) };
  }
}

/** What is wrong at a field, in words; undefined where nothing is. */
export type ErrorAt = (path: string) => string | undefined;

export function errorsOf(programme: Programme, step: 'cook' | 'chill'): ErrorAt {
  if (programme.ok) return () => undefined;
  const mine = programme.faults.filter((f) => f.step === step);
  return (path) => {
    const fault = mine.find((f) => f.path === path);
    return fault === undefined ? undefined : faultWords(fault);
  };
}

const items: Record<string, string> = { profile: 'point', layers: 'layer', stages: 'stage' };

const number = /-?\d+(?:\.\d+)?(?:e[+-]?\d+)?/;
const endings = [
  ['Wm2K', ' W/(m² K)'],
  ['Wm2', ' W/m²'],
  ['KPa', ' kPa'],
  ['altitudeM', ' m'],
  ['Pct', ' %'],
] as const;
/** The unit of a field, by how its key ends. */
const unitOf = (path: string): string =>
  /mm$/i.test(path)
    ? ' mm'
    : /C$/.test(path)
      ? ' °C'
      : /min$/i.test(path)
        ? ' min'
        : (endings.find(([ending]) => path.endsWith(ending))?.[1] ?? '');

/** A bare number, or a bound that ends in one, gets the unit of its field. */
const withUnit = (words: string, unit: string): string =>
  new RegExp(`^(?:(?:at least|at most|more than|less than) )?${number.source}$`).test(words)
    ? words + unit
    : words;

/** What was found and what is allowed; places are counted from 1, as the fields are. */
export function faultWords(fault: Problem): string {
  if (/composition$/.test(fault.path)) {
    const sum = /^fractions that sum to ([\d.]+)$/.exec(fault.found)?.[1];
    if (sum !== undefined)
      return `together ${plainNumber(Number(sum) * 100, 2)} %. Allowed: 100 %, give or take 0.5`;
  }
  const unit = unitOf(fault.path);
  return `${withUnit(fault.found, unit)}. Allowed: ${withUnit(fault.allowed, unit)}`.replaceAll(
    /\b(profile|layers|stages)\[(\d+)\]/g,
    (_, list: string, index: string) => `${items[list] ?? list} ${Number(index) + 1}`,
  );
}

const fields: Record<string, string> = {
  atMm: 'distance',
  diameterMm: 'diameter',
  thicknessMm: 'thickness',
  widthMm: 'width',
  heightMm: 'height',
  lengthMm: 'length',
  composition: 'composition',
  properties: 'properties',
  name: 'name',
  medium: 'medium',
  mediumC: 'temperature',
  mediumLog: 'temperature log',
  hWm2K: 'surface coefficient',
  resistanceM2KW: 'resistance of film or mould',
  wraps: 'wraps',
  of: 'what it is wrapped in',
  altitudeM: 'height above the sea',
  pressureKPa: 'pressure',
  brineSaltPct: 'salt of the brine',
  humidityPct: 'relative humidity',
  dewPointC: 'dew point',
  wetBulbC: 'wet bulb',
  surfaceWaterActivity: 'water activity of the surface',
  emissivity: 'emissivity',
  wallC: 'temperature of the walls',
  fluxWm2: 'radiant heat absorbed',
  radiantC: 'temperature of what glows',
  radiantShare: 'share of it that is exchanged',
  ladle: 'ladled fat',
  fatC: 'temperature of the fat',
  onS: 'how long it is ladled',
  everyS: 'how long a turn lasts',
  until: 'until',
  startC: 'start temperature',
  target: 'target',
  referenceC: 'reference temperature',
  zC: 'z',
  profile: 'shape',
  layers: 'layers',
  stages: 'programme',
  body: 'piece',
  stage: 'what it goes into',
  machine: 'machine',
  powerKW: 'power',
  ratedKg: 'rated load',
  iceKg: 'ice',
  waterKg: 'water',
  waterC: 'temperature of the water',
  pieceG: 'weight of a piece',
  rules: 'rule',
};

/** `body.profile[2].diameterMm` → "point 3, diameter". */
export function whereWords(path: string): string {
  const parts = path.split('.').flatMap((part) => {
    const [, key = part, index] = /^(\w+)(?:\[(\d+)\])?$/.exec(part) ?? [];
    if (key === 'body' && path !== 'body') return [];
    if (index !== undefined) return [`${items[key] ?? key} ${Number(index) + 1}`];
    return [fields[key] ?? key];
  });
  return parts.join(', ');
}
