/** `brine`: one brine read on every scale, from whichever the kitchen has an instrument for. */
import { z } from 'zod';
import { OutOfRange } from '../core/errors.ts';
import {
  type BrineScale,
  brineReading,
  saltOfDensity,
  saltOfFreezing,
  saltOnScale,
} from '../core/properties/brine-readings.ts';
import { accept, InputProblems } from './problem.ts';

const wrong =
  'one of saltPct, salometer, gravity, baume, densityKgM3 (with atC, 20 where nothing is said), freezesC';
export const BrineInput = z.union(
  [
    z.strictObject({ saltPct: z.number() }),
    z.strictObject({ salometer: z.number() }),
    z.strictObject({ gravity: z.number() }),
    z.strictObject({ baume: z.number() }),
    z.strictObject({ densityKgM3: z.number(), atC: z.number().optional() }),
    z.strictObject({ freezesC: z.number() }),
  ],
  wrong,
);
export type BrineInput = z.infer<typeof BrineInput>;

const scales: Readonly<Record<string, BrineScale>> = {
  saltPct: '%',
  salometer: 'salometer',
  gravity: 'gravity',
  baume: 'Baumé',
};

function saltOf(input: BrineInput): number {
  if ('densityKgM3' in input) return saltOfDensity(input.densityKgM3, input.atC ?? 20);
  if ('freezesC' in input) return saltOfFreezing(input.freezesC);
  const [[key, value]] = Object.entries(input) as [[string, number]];
  return saltOnScale(scales[key] ?? '%', value);
}

/** The keys of the input that the engine calls otherwise. */
const names: Readonly<Record<string, string>> = {
  '%': 'saltPct',
  Baumé: 'baume',
  degrees: 'salometer',
  density: 'densityKgM3',
};

/** Runs `brine` from JSON to JSON. Throws `InputProblems` for anything wrong with the input. */
export function runBrine(json: unknown) {
  const input = accept(BrineInput, json);
  try {
    const { saltPct, salometer, gravity, baume, density, gPerLitre, gPerKgWater, comesOutC, comesOut } =
      brineReading(saltOf(input));
    return {
      saltPct,
      salometer,
      gravity,
      baume,
      densityKgM3: density,
      gPerLitre,
      gPerKgWater,
      comesOutC,
      comesOut,
      basis: [
        {
          what: 'density at 20 °C with its slope; gravity, salometer, Baumé and g/L at 60 °F',
          source: 'brine-density-table',
          confidence: 'read',
        },
        { what: 'ice begins', source: 'langes-handbook-5-13', confidence: 'read' },
        {
          what: 'salometer of 26.395 % full scale, and salt coming out past 23.3 %',
          source: 'salt-solubility-table',
          confidence: 'secondary',
        },
      ],
    };
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    const key = 'freezesC' in input ? 'freezesC' : (names[error.path] ?? error.path);
    const path = key === 'celsius' ? 'atC' : key;
    throw new InputProblems([{ path, found: error.found, allowed: error.allowed }]);
  }
}
