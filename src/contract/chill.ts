/** `chill`: whether a piece cools as the rules ask, how large it may be, and how many go in at once. */
import { z } from 'zod';
import { Contradiction, OutOfRange } from '../core/errors.ts';
import { checkBody } from '../core/heat/check.ts';
import type { Basis, Body } from '../core/heat/types.ts';
import {
  type Coupled,
  coupled,
  type Load,
  type Machine,
  mostPiecesSearch,
} from '../core/method/chill-load.ts';
import {
  type Chilled,
  type Chilling,
  checkChilling,
  chill,
  largestScaleSearch,
} from '../core/method/chilling.ts';
import { heatOfMelting } from '../core/properties/freezing.ts';
import type { CoolingRule } from '../core/properties/rule.ts';
import { findRule, rules } from '../core/properties/rules.ts';
import { chillCautions } from './chill-cautions.ts';
import { ChillInput, type MachineInput } from './chill-input.ts';
import { refuseComparedOnly } from './compared-only.ts';
import { inInputTerms, toBody } from './cook.ts';
import { asRuleVerdict, RuleVerdict } from './judge.ts';
import { nearNames } from './near-names.ts';
import { accept, InputProblems } from './problem.ts';
import { refuse } from './refuse.ts';
import { stageBasis } from './stage-basis.ts';
import { surroundingsOf } from './surroundings.ts';

const Sizes = z.strictObject({
  diameterMm: z.number().optional(),
  thicknessMm: z.number().optional(),
  widthMm: z.number().optional(),
  heightMm: z.number().optional(),
  lengthMm: z.number().optional(),
});

const Loaded = z.strictObject({
  pieces: z.int(),
  /** true only where every rule holds; null where that cannot be told. */
  passes: z.boolean().nullable(),
  /** Until the last temperature that the rules ask for, of the warmest point. */
  min: z.number().nullable(),
  /** The warmest that air or water gets, and its course until then. */
  mediumPeakC: z.number(),
  medium: z.array(z.strictObject({ min: z.number(), C: z.number() })),
  /** What all pieces give off. */
  heatKJ: z.number(),
  verdicts: z.array(RuleVerdict),
});

export const ChillAnswer = z.strictObject({
  /** One piece as drawn, in a medium that stays as it is. */
  asDrawn: z.strictObject({
    passes: z.boolean().nullable(),
    min: z.number().nullable(),
    /** Of one piece; null for an endless shape without `pieceG`. */
    massG: z.number().nullable(),
    heatKJ: z.number().nullable(),
    verdicts: z.array(RuleVerdict),
  }),
  /** The largest of this shape that passes there: every length times `scale`. null: none. */
  largest: z
    .strictObject({
      scale: z.number(),
      atLimit: z.boolean(),
      min: z.number().nullable(),
      sizes: Sizes,
      massG: z.number().nullable(),
    })
    .nullable(),
  /** The most at once that pass; 0 pieces: not even one, and then `load` is of one. */
  most: z.strictObject({ pieces: z.int(), atLimit: z.boolean(), load: Loaded }).optional(),
  /** As many as were asked about. */
  asked: Loaded.optional(),
  /** A bath: what one piece melts until it is done, and what the water melts before. */
  iceKgPerPiece: z.number().optional(),
  iceKgForWater: z.number().optional(),
  /** A machine: what it was counted with. */
  powerKW: z.number().optional(),
  cautions: z.array(z.string()),
  basis: z.array(z.strictObject({ what: z.string(), source: z.string(), confidence: z.string() })),
});
export type ChillAnswer = z.infer<typeof ChillAnswer>;

/** Specific heat of what a machine is rated with [J/(kg K)]. */
const ratedHeat = 3600;

/** What a machine is rated for, with what is usual where it does not say. */
function ratingOf(input: Extract<MachineInput, { ratedKg: number }>) {
  const { ratedKg, ratedFromC = 70, ratedToC = 3, ratedMin = 90 } = input;
  return { ratedKg, ratedFromC, ratedToC, ratedMin };
}
const usualWaterC = 10;

function coolingRules(ids: readonly string[]): CoolingRule[] {
  return ids.map((id, i): CoolingRule => {
    const rule = findRule(id);
    if (rule?.kind === 'cooling') return rule;
    const cooling = rules.filter((r) => r.kind === 'cooling').map((r) => r.id);
    const near = nearNames(id, cooling);
    return refuse(
      `rules[${i}]`,
      rule === undefined ? `an unknown rule ${JSON.stringify(id)}` : `${id}, which is not about cooling`,
      `a rule of cooling: ${(near.length > 0 ? near : cooling).join(', ')}`,
    );
  });
}

function machineOf(input: MachineInput): Machine {
  if ('powerKW' in input) return { kind: 'power', W: 1000 * input.powerKW };
  if ('iceKg' in input)
    return { kind: 'ice', ice: input.iceKg, water: input.waterKg, waterC: input.waterC ?? usualWaterC };
  const { ratedKg, ratedFromC, ratedToC, ratedMin } = ratingOf(input);
  if (!(ratedFromC > ratedToC))
    refuse('machine.ratedFromC', `${ratedFromC} °C`, `warmer than ratedToC, ${ratedToC} °C`);
  return { kind: 'power', W: (ratedKg * ratedHeat * (ratedFromC - ratedToC)) / (ratedMin * 60) };
}

/** What the engine refuses, by the paths of this verb. */
function inTerms<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof OutOfRange || error instanceof Contradiction)) throw error;
    const { path, found, allowed } = inInputTerms(error);
    const own: Readonly<Record<string, string>> = {
      medium: 'stage.mediumC',
      mediumC: 'stage.mediumC',
      'machine.W': 'machine.powerKW',
    };
    throw new InputProblems([
      { path: own[path] ?? path.replace(/^stages\[0\]\./, 'stage.'), found, allowed },
    ]);
  }
}

const all = (chilled: Chilled): boolean | null =>
  chilled.meets ? true : chilled.verdicts.some((v) => v.passes === false) ? false : null;

function minutesOf({ result }: Chilled): number | null {
  const stage = result.stages[0];
  return stage?.reached === true ? stage.end / 60 : null;
}

function sizesOf(body: Body): z.infer<typeof Sizes> {
  const mm = (m: number) => 1000 * m;
  switch (body.shape) {
    case 'revolved':
      return {
        diameterMm: mm(Math.max(...body.profile.map((p) => p.diameter))),
        lengthMm: mm(body.profile.at(-1)?.at ?? 0),
      };
    case 'slab':
      return { thicknessMm: mm(body.thickness) };
    case 'block':
      return { widthMm: mm(body.width), heightMm: mm(body.height) };
    default:
      return { diameterMm: mm(body.diameter) };
  }
}

function loaded(load: Coupled, pieces: number): z.infer<typeof Loaded> {
  const end = load.result.stages[0]?.end ?? 0;
  return {
    pieces,
    passes: load.settled ? all(load) : null,
    min: minutesOf(load),
    mediumPeakC: load.peak,
    medium: load.medium.filter((p) => p.t <= end).map((p) => ({ min: p.t / 60, C: p.C })),
    heatKJ: (pieces * load.heat) / 1000,
    verdicts: load.verdicts.map(asRuleVerdict),
  };
}

const endless = new Set<Body['shape']>(['cylinder', 'slab', 'block']);

function machineBasis(input: ChillInput, machine: Machine): Basis[] {
  const basis: Basis[] = [
    {
      what: 'all pieces alike, put in at once, the same medium all round each; the medium’s course and theirs worked out in turns until they agree within 0.03 K a turn; no heat from the room, the walls or the trays',
      source: 'own-assumption',
      confidence: 'assumption',
    },
  ];
  if (machine.kind === 'ice')
    basis.push({
      what: `the bath stays at the medium’s temperature while there is ice (melting takes ${heatOfMelting / 1000} kJ/kg) and then warms evenly: stirred`,
      source: 'ashrae-refrigeration-properties',
      confidence: 'memory',
    });
  else if (input.machine !== undefined && 'ratedKg' in input.machine) {
    const { ratedKg, ratedFromC, ratedToC, ratedMin } = ratingOf(input.machine);
    basis.push({
      what: `${(machine.W / 1000).toFixed(2)} kW: the even power that chills ${ratedKg} kg (${ratedHeat / 1000} kJ/(kg K)) from ${ratedFromC} to ${ratedToC} °C in ${ratedMin} min; at first a machine does more, later less`,
      source: 'common-practice',
      confidence: 'common practice',
    });
  } else
    basis.push({
      what: `${(machine.W / 1000).toFixed(2)} kW at any temperature, as given`,
      source: 'user-input',
      confidence: 'assumption',
    });
  return basis;
}

export interface ChillOptions {
  /** Called now and then with how far it is, 0 to 1, by a guess. */
  readonly onProgress?: (done: number) => void;
}

/** Some twenty runs find a size, some twenty more a number of pieces. */
const usualRuns = { size: 14, pieces: 22 } as const;

/** A search to its end, telling how far it is between two shares of the whole. */
function through<T>(
  search: Generator<unknown, T>,
  from: number,
  to: number,
  usual: number,
  onProgress: (done: number) => void,
): T {
  for (let runs = 0; ; runs++) {
    const step = search.next();
    if (step.done === true) return step.value;
    onProgress(from + (to - from) * (1 - Math.exp((-2 * runs) / usual)));
  }
}

/** Runs `chill` from JSON to JSON. Throws `InputProblems` for anything wrong with the input. */
export function runChill(json: unknown, { onProgress = () => {} }: ChillOptions = {}): ChillAnswer {
  const input = accept(ChillInput, json);
  refuseComparedOnly(input.body);
  const body = toBody(input.body);
  const stage = { name: 'chill', until: { min: 0 }, ...input.stage };
  const chosen = coolingRules(input.rules);
  const { medium, h, surface } = inTerms(() => surroundingsOf(stage, 'stage'));
  if (typeof medium !== 'number') refuse('stage.mediumC', 'a log', 'one temperature');
  const isEndless = endless.has(body.shape);
  if (!isEndless && input.pieceG !== undefined)
    refuse('pieceG', `${input.pieceG} g`, `nothing: a ${body.shape} has its own weight`);
  if (input.machine !== undefined && isEndless && input.pieceG === undefined)
    refuse('pieceG', 'nothing', `the weight of one piece: a ${body.shape} is endless`);
  if (input.pieces !== undefined && input.machine === undefined)
    refuse('machine', 'nothing', 'the machine or the bath that so many pieces go into');
  const chilling: Chilling = {
    body,
    start: input.startC,
    stage: { name: 'chill', medium, h, ...(surface === undefined ? {} : { surface }) },
    rules: chosen,
  };
  return inTerms(() => {
    checkBody(body);
    checkChilling(chilling);
    return answer(input, chilling, onProgress);
  });
}

function answer(input: ChillInput, chilling: Chilling, onProgress: (done: number) => void): ChillAnswer {
  const drawn = chill(chilling, 'fine');
  const { result } = drawn;
  const pieceMass = input.pieceG === undefined ? undefined : input.pieceG / 1000;
  const isEndless = endless.has(chilling.body.shape);
  const mass = isEndless ? pieceMass : result.mass;
  const heat = -(result.history.heat.at(-1) ?? 0);
  const half = input.machine === undefined ? 1 : 0.3;
  const largest = through(largestScaleSearch(chilling), 0, half, usualRuns.size, onProgress);
  const machine = input.machine === undefined ? undefined : machineOf(input.machine);
  const load: Load | undefined =
    machine === undefined
      ? undefined
      : { chilling, machine, ...(pieceMass === undefined ? {} : { pieceMass }) };
  const most =
    load === undefined ? undefined : through(mostPiecesSearch(load), half, 1, usualRuns.pieces, onProgress);
  const asked =
    load === undefined || input.pieces === undefined ? undefined : coupled(load, input.pieces, 'fine');
  const { chilled, body, scale } = largest;
  return {
    asDrawn: {
      passes: all(drawn),
      min: minutesOf(drawn),
      massG: mass === undefined ? null : 1000 * mass,
      heatKJ: mass === undefined ? null : (heat * mass) / result.mass / 1000,
      verdicts: drawn.verdicts.map(asRuleVerdict),
    },
    largest:
      scale === null || chilled === null || body === null
        ? null
        : {
            scale,
            atLimit: largest.atLimit,
            min: minutesOf(chilled),
            sizes: sizesOf(body),
            massG: isEndless ? null : 1000 * chilled.result.mass,
          },
    ...(most === undefined
      ? {}
      : {
          most: {
            pieces: most.pieces,
            atLimit: most.atLimit,
            load: loaded(most.load, Math.max(1, most.pieces)),
          },
        }),
    ...(asked === undefined || input.pieces === undefined ? {} : { asked: loaded(asked, input.pieces) }),
    ...(machine?.kind === 'ice' && most !== undefined
      ? {
          iceKgPerPiece: most.load.heat / heatOfMelting,
          iceKgForWater: (machine.water * 4190 * machine.waterC) / heatOfMelting,
        }
      : {}),
    ...(machine?.kind === 'power' ? { powerKW: machine.W / 1000 } : {}),
    cautions: chillCautions(drawn, machine, most),
    basis: [
      ...result.basis.filter((b) => !b.what.startsWith('lethality')),
      ...stageBasis({ name: 'chill', until: { min: 0 }, ...input.stage }),
      {
        what: 'the piece goes in at one temperature throughout, and the clock of the rules runs from then',
        source: 'own-assumption',
        confidence: 'assumption',
      },
      ...(machine === undefined ? [] : machineBasis(input, machine)),
    ],
  };
}
