/** What the chill step asks of the engine when somebody wants to know how large and how many: from the method and a few fields; pure. */
import type { StageInput } from '../../../../contract/body.ts';
import { chillStepOf, cookStepOf, programmeInputOf } from '../../../../contract/method-cook.ts';
import type { Method } from '../../../../contract/steps.ts';
import { findRule } from '../../../../core/properties/rules.ts';

export type MachineKind = 'none' | 'power' | 'rated' | 'ice';

export interface ChillAsked {
  /** Stage of the chill step, from 0. */
  readonly stage: number;
  readonly startC: number;
  readonly kind: MachineKind;
  readonly powerKW: number;
  readonly ratedKg: number;
  readonly ratedMin: number;
  readonly iceKg: number;
  readonly waterKg: number;
  readonly waterC: number;
  readonly pieceG: number;
  /** Judge so many as well; null: not asked. */
  readonly pieces: number | null;
}

/** Colder than this a medium chills, and does not just let it stand [°C]. */
const cold = 10;

/** The stage that chills: the first into something cold, else the first. */
export function chillingStage(stages: readonly StageInput[]): number {
  const usuallyCold = new Set(['ice water', 'still fridge', 'blast chiller', 'freezer']);
  const at = stages.findIndex((s) =>
    s.mediumC === undefined ? usuallyCold.has(s.medium ?? '') : s.mediumC < cold,
  );
  return Math.max(0, at);
}

/** Where several go in at once: what the medium of the stage usually is. */
export function usualMachine(stage: StageInput | undefined): MachineKind {
  if (stage?.medium === 'ice water') return 'ice';
  return stage?.medium === 'blast chiller' ? 'rated' : 'none';
}

/** The rules of cooling among those a step names. */
export const coolingAmong = (rules: readonly string[]): string[] =>
  rules.filter((id) => findRule(id)?.kind === 'cooling');

/** The highest temperature at which one of the rules starts its clock [°C]. */
export function clockStartsAt(rules: readonly string[]): number {
  const tops = coolingAmong(rules).flatMap((id) => {
    const rule = findRule(id);
    return rule?.kind === 'cooling' ? rule.limbs.map((limb) => limb.fromC) : [];
  });
  return Math.max(...tops);
}

/** A shape without ends: how heavy a piece is cut of it has to be said. */
export const isEndless = (shape: string): boolean => shape !== 'revolved' && shape !== 'sphere';

function machineOf(asked: ChillAsked): object | undefined {
  switch (asked.kind) {
    case 'none':
      return undefined;
    case 'power':
      return { powerKW: asked.powerKW };
    case 'rated':
      return { ratedKg: asked.ratedKg, ratedMin: asked.ratedMin };
    case 'ice':
      return { iceKg: asked.iceKg, waterKg: asked.waterKg, waterC: asked.waterC };
  }
}

/** The command's input; null where the step cannot be asked about: no cook before it, no stage, no rule of cooling, or a medium that follows a log. */
export function chillQuestion(
  method: Method,
  chillStepId: string,
  rules: readonly string[],
  asked: ChillAsked,
) {
  const cook = cookStepOf(method, chillStepId);
  const named = coolingAmong(rules);
  if (cook === undefined || named.length === 0) return null;
  const { body, stages } = programmeInputOf(method, cook.id);
  const own = chillStepOf(method, cook.id)?.stages.length ?? 0;
  const stage = stages.slice(stages.length - own)[asked.stage];
  if (stage === undefined || stage.mediumLog !== undefined) return null;
  const { medium, mediumC, hWm2K, resistanceM2KW, wraps } = stage;
  const machine = machineOf(asked);
  return {
    body,
    startC: asked.startC,
    stage: {
      ...(medium === undefined ? {} : { medium }),
      ...(mediumC === undefined ? {} : { mediumC }),
      ...(hWm2K === undefined ? {} : { hWm2K }),
      ...(resistanceM2KW === undefined ? {} : { resistanceM2KW }),
      ...(wraps === undefined ? {} : { wraps }),
    },
    rules: named,
    ...(machine === undefined ? {} : { machine }),
    ...(machine !== undefined && isEndless(body.shape) ? { pieceG: asked.pieceG } : {}),
    ...(machine !== undefined && asked.pieces !== null ? { pieces: asked.pieces } : {}),
  };
}
