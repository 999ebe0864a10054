/** Fitted values in the contract's names and units, each with a sentence that says no more than is known. */

import { ruleOf } from '../core/heat/material.ts';
import type { FittedValue as CoreValue, FitParameter, FitProblem, FitResult } from '../core/method/fit.ts';
import { highestH, reachOf } from '../core/method/fit-model.ts';
import { density, normalised, specificHeat } from '../core/properties/food-components.ts';
import { conductivity } from '../core/properties/mixture-conductivity.ts';
import type { FitInput, FittedValue } from './fit.ts';

export interface Named {
  readonly name: string;
  readonly parameter: FitParameter;
  /** What it is called in a sentence. */
  readonly words: string;
  readonly value: FittedValue;
}

/** Properties of the innermost layer at a temperature [°C]. */
function innermost({ body }: FitProblem, C: number): { k: number; diffusivity: number } {
  const layer = body.layers.at(-1);
  if (layer === undefined) throw new Error('a body without layers');
  if ('properties' in layer.material) {
    const { k, rho, cp } = layer.material.properties;
    return { k, diffusivity: k / (rho * cp) };
  }
  const food = normalised(layer.material.composition, 'body.layers');
  const k = conductivity(food, C, ruleOf(layer));
  return { k, diffusivity: k / (density(food, C) * specificHeat(food, C)) };
}

const figures = (x: number, places = 3): string => {
  const rounded = Number(x.toPrecision(places));
  return Math.abs(rounded) >= 1e-3 ? String(rounded) : rounded.toExponential(places - 1);
};

/** The end of an interval, never rounded towards its middle. */
function end(x: number, places: number, side: 'low' | 'high'): string {
  if (!(x > 0)) return figures(x, places);
  const unit = 10 ** (Math.floor(Math.log10(x)) - places + 1);
  const whole = x / unit;
  return figures((side === 'low' ? Math.floor(whole + 1e-9) : Math.ceil(whole - 1e-9)) * unit, places);
}

/** How many figures of a number its interval is worth. */
function worth({ value, low95, high95 }: Ends): number {
  const width = Math.max(1e-12, (high95 - low95) / Math.max(Math.abs(value), 1e-12));
  return Math.min(4, Math.max(2, Math.ceil(-Math.log10(width)) + 2));
}

type Ends = Pick<FittedValue, 'value' | 'low95' | 'high95' | 'lowOpen' | 'highOpen'>;

function says(words: string, unit: string, v: Ends): string {
  const tail = unit === '' ? '' : ` ${unit}`;
  if (v.lowOpen && v.highOpen) return `${words}: this log does not tell it.`;
  if (v.highOpen)
    return `${words}: at least ${end(v.low95, 3, 'low')}${tail}; this log puts no end to it above.`;
  if (v.lowOpen)
    return `${words}: at most ${end(v.high95, 3, 'high')}${tail}; this log puts no end to it below.`;
  const places = worth(v);
  return `${words}: ${figures(v.value, places)}${tail}, 95 in 100 between ${end(v.low95, places, 'low')} and ${end(v.high95, places, 'high')}.`;
}

/** A film or mould wall in series was folded into what was fitted; taken out again, there may be nothing left to limit it. */
const withoutResistance = (h: number, resistance: number): number =>
  h * resistance >= 1 - h / highestH ? highestH : h / (1 - h * resistance);

interface Terms {
  readonly name: string;
  readonly words: string;
  readonly unit: string;
  readonly given: number;
  readonly of: (v: number) => number;
  readonly more: (fitted: CoreValue) => Partial<FittedValue>;
}

function termsOf(order: FitProblem, input: FitInput, parameter: FitParameter): Terms {
  const { body, place, stages, C } = order;
  const reach = reachOf(body, place);
  if (parameter.kind === 'h') {
    const stage = stages[parameter.stage];
    const resistance = input.stages[parameter.stage]?.resistanceM2KW ?? 0;
    const of = (v: number) => withoutResistance(v, resistance);
    const first = input.hStages?.[0] ?? 0;
    const name = stage?.name ?? '';
    return {
      name: parameter.stage === first ? 'hWm2K' : `stages[${parameter.stage}].hWm2K`,
      words: `Surface coefficient of ${name}`,
      unit: 'W/(m² K)',
      given: of(stage?.h ?? Number.NaN),
      of,
      more: ({ value }) => ({ stage: name, biot: (value * reach) / innermost(order, 60).k }),
    };
  }
  if (parameter.kind === 'diffusivity') {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (const c of C) {
      low = Math.min(low, c);
      high = Math.max(high, c);
    }
    const atC = Math.round((low + high) / 2);
    const { diffusivity } = innermost(order, atC);
    return {
      name: 'diffusivity',
      words: `Diffusivity of ${body.layers.at(-1)?.name ?? 'the food'}`,
      unit: 'm²/s',
      given: diffusivity,
      of: (v) => v * diffusivity,
      more: (f) => ({ atC, factor: { value: f.value, low95: f.low, high95: f.high } }),
    };
  }
  const mm = (v: number) => v * 1000;
  if (parameter.kind === 'radius')
    return {
      name: 'radiusMm',
      words: body.shape === 'slab' || body.shape === 'block' ? 'Half thickness' : 'Radius beside the probe',
      unit: 'mm',
      given: mm(reach),
      of: mm,
      more: () => ({}),
    };
  const flat = body.shape === 'slab' || body.shape === 'block';
  return {
    name: 'probeMm',
    words: 'The probe’s distance from the middle',
    unit: 'mm',
    given: mm(Math.abs((flat ? place.x : place.radius) ?? 0)),
    of: mm,
    more: () => ({}),
  };
}

/** Every fitted value by its name, in the order they were asked for. */
export function fittedValues(order: FitProblem, result: FitResult, input: FitInput): Named[] {
  // Alone in its group a value may still be known on one side.
  const untold = new Set(result.confounded.filter((group) => group.length > 1).flat());
  return result.fitted.map((fitted, i) => {
    const { name, words, unit, given, of, more } = termsOf(order, input, fitted.parameter);
    const ends = {
      value: of(fitted.value),
      low95: of(fitted.low),
      high95: of(fitted.high),
      lowOpen: fitted.lowOpen && fitted.parameter.kind !== 'probe',
      highOpen: fitted.highOpen,
      atBound: fitted.atBound,
    };
    return {
      name,
      parameter: fitted.parameter,
      words,
      value: {
        ...ends,
        unit,
        told: !(untold.has(i) || (fitted.lowOpen && fitted.highOpen)),
        says: says(words, unit, ends),
        given,
        ...more(fitted),
      },
    };
  });
}
