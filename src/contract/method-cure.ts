/** From a cure step, and the rinse that follows it, to what the engine is asked; and the law on the nitrite in it. */

import type { CuringMethod, NitritePlace } from '../core/properties/brine-nitrite.ts';
import type { CureProblem } from '../core/salt/cure.ts';
import type { CureStage } from '../core/salt/cure-piece.ts';
import { ingoingNitrite, judgeNitrite, type NitriteVerdict } from '../core/salt/nitrite.ts';
import { cite } from '../core/sources.ts';
import type { Problem } from './problem.ts';
import type { Place } from './records.ts';
import type { Method, StepOf } from './steps.ts';

type Cure = StepOf<'cure'>;

/** Fresh water that the rinse is taken to be, to a kilogram of meat, and its temperature [kg, °C]: assumed. */
export const rinsing = { waterKg: 5, celsius: 10 } as const;

export interface MethodCure {
  readonly problem: CureProblem;
  /** Names of the stages, in their order. */
  readonly names: readonly string[];
}

/** What is weighed out for a kilogram of meat: the bath or the dry salt [kg], and the strength of the bath, mass fraction. */
export function brineFor(step: Pick<Cure, 'by' | 'saltPct' | 'brinePerKg'>) {
  const share = step.saltPct / 100;
  const much = step.brinePerKg ?? 1;
  switch (step.by) {
    case 'dry cure':
      return { saltKg: share, waterKg: 0, bathKg: 0, strength: 1 };
    case 'brine':
      return { saltKg: share * much, waterKg: (1 - share) * much, bathKg: much, strength: share };
    case 'equilibrium': {
      const saltKg = share * (1 + much);
      return { saltKg, waterKg: much, bathKg: much + saltKg, strength: saltKg / (much + saltKg) };
    }
  }
}

/** The rinse that takes the salt off: the step right after the cure, where it is one. */
function rinseAfter(method: Method, step: Cure): StepOf<'rinse and dry'> | undefined {
  const next = method[method.findIndex((s) => s.id === step.id) + 1];
  return next?.kind === 'rinse and dry' ? next : undefined;
}

/** The cure of a kilogram of meat; null where the step does not say yet what piece the salt has to get into, or for how long. */
export function cureProblemOf(method: Method, step: Cure): MethodCure | null {
  const { piece } = step;
  if (piece === undefined || step.h <= 0) return null;
  const { saltKg, bathKg, strength } = brineFor(step);
  const stages: (CureStage & { name: string })[] = [
    {
      name: step.by === 'dry cure' ? 'in salt' : 'in brine',
      medium:
        step.by === 'dry cure'
          ? { kind: 'dry', salt: saltKg }
          : { kind: 'bath', mass: bathKg, salt: strength },
      temperature: step.mediumC,
      time: step.h * 3600,
    },
  ];
  const rinse = rinseAfter(method, step);
  if (rinse !== undefined && rinse.rinseMin > 0)
    stages.push({
      name: 'rinsed',
      medium: { kind: 'bath', mass: rinsing.waterKg, salt: 0 },
      temperature: rinsing.celsius,
      time: rinse.rinseMin * 60,
    });
  if (rinse !== undefined && rinse.dryMin > 0)
    stages.push({
      name: 'drying',
      medium: { kind: 'rest' },
      temperature: step.mediumC,
      time: rinse.dryMin * 60,
    });
  if (step.rest !== undefined)
    stages.push({
      name: 'resting',
      medium: { kind: 'rest' },
      temperature: step.rest.mediumC,
      time: step.rest.h * 3600,
    });
  return {
    problem: {
      piece: {
        shape: piece.shape,
        size: piece.acrossMm / 1000,
        exposedFaces: piece.faces,
        mass: 1,
        water: piece.waterPct / 100,
        salt: 0,
        ...(piece.skinMm === undefined
          ? {}
          : { skin: { thickness: piece.skinMm / 1000, water: piece.waterPct / 100 } }),
      },
      stages: stages.map(({ medium, temperature, time }) => ({ medium, temperature, time })),
    },
    names: stages.map(({ name }) => name),
  };
}

/** Whose nitrite limits hold in a kitchen; null where none were found. */
const lawPlaces: Readonly<Record<Place, NitritePlace | null>> = {
  'GB-ENG': 'GB',
  'GB-WLS': 'GB',
  'GB-SCT': 'GB',
  'GB-NIR': null,
  EU: 'EU',
  US: 'US',
};

export interface StepNitrite extends NitriteVerdict {
  /** Ingoing, as sodium nitrite to the green weight [mg/kg]. */
  readonly ppm: number;
  readonly method: CuringMethod;
}

/** The nitrite that a step's curing salt puts into the meat, and what the law of the place says; null where there is none. */
export function nitriteOfStep(step: Cure, place: Place): StepNitrite | null {
  const { curingSalt } = step;
  if (curingSalt === undefined) return null;
  const { waterKg, bathKg } = brineFor(step);
  const share = (curingSalt.gPerKg / 1000) * (curingSalt.nitritePct / 100);
  const dry = step.by === 'dry cure';
  const method: CuringMethod = dry ? 'dry' : 'immersion to equilibrium';
  // In a brine it cannot take up more than its part of all there is: the formula for long immersion is the most.
  const ppm = dry
    ? ingoingNitrite({ method, nitrite: share, meat: 1 })
    : ingoingNitrite({
        method,
        nitrite: share * (step.by === 'equilibrium' ? 1 + waterKg : bathKg),
        meat: 1,
        pickle: bathKg,
      });
  const law = lawPlaces[place];
  if (law === null) return { ppm, method, verdict: 'not known', amount: null, limit: null };
  return { ppm, method, ...judgeNitrite(ppm, law, curingSalt.product, method) };
}

/** Nitrite that the law of the place does not let in, or of which no limit is known: such a method is not signed. */
export function nitriteProblems(method: Method, place: Place): Problem[] {
  return method.flatMap((step, i): Problem[] => {
    if (step.kind !== 'cure') return [];
    const nitrite = nitriteOfStep(step, place);
    if (nitrite === null || nitrite.verdict === 'within' || nitrite.verdict === 'at the limit') return [];
    const path = `method[${i}].curingSalt`;
    const { limit, amount } = nitrite;
    if (limit === null || amount === null)
      return [
        {
          path,
          found: `nitrite in a ${step.curingSalt?.product}, ${nitrite.method}, in ${place}: no published limit is known here`,
          allowed: 'not known is not allowed: ask your local authority in writing',
        },
      ];
    const as = limit.as === 'NO2' ? 'nitrite ion' : 'sodium nitrite';
    return [
      {
        path,
        found: `${Math.ceil(amount * 10) / 10} mg/kg of ${as} going in`,
        allowed: `${limit.most === 0 ? 'none' : `at most ${limit.most} mg/kg of ${as}`} for a ${limit.product}, ${nitrite.method}, in ${limit.place} (${cite(limit.source)})`,
      },
    ];
  });
}
