/** What the filled shape costs in the heat: the cook step with it, run coarse, then the even piece and the bulge. */
import { useEffect, useRef, useState } from 'react';
import { programmeOf } from '../../../../contract/method-cook.ts';
import { InputProblems } from '../../../../contract/problem.ts';
import type { Method, StepOf } from '../../../../contract/steps.ts';
import type { Advice } from '../../../../core/method/advice.ts';
import type { ShapeCost } from '../../../../core/method/shape-cost.ts';
import { type CookVerdict, verdictOf } from '../../../../core/method/verdict.ts';
import { engineLane, type Lane, Stale } from '../../../workers/engine.ts';

export interface Costed {
  readonly stage: string;
  readonly verdict: CookVerdict;
  readonly advice: Advice;
  readonly cost: ShapeCost;
  /** How long the heat lasts as the cook step has it [s]. */
  readonly now: number;
}

export type ShapeCosting =
  | { readonly state: 'known'; readonly costed: Costed }
  | { readonly state: 'working' }
  | { readonly state: 'not known'; readonly why: string };

const SETTLE_MS = 400;

export function useShapeCost(method: Method, cook: StepOf<'cook'> | undefined): ShapeCosting {
  const lane = useRef<Lane | null>(null);
  const [answer, setAnswer] = useState<{ readonly key: string; readonly costing: ShapeCosting } | null>(null);
  const asked = askedOf(method, cook);
  const { key } = asked;
  const latest = useRef(asked);
  latest.current = asked;

  useEffect(
    () => () => {
      lane.current?.close();
      lane.current = null;
    },
    [],
  );

  useEffect(() => {
    const { programme } = latest.current;
    if (programme === null || key === null) return undefined;
    let still = true;
    const run = async (): Promise<ShapeCosting> => {
      lane.current ??= engineLane();
      const { problem, cookStages } = programme;
      const { result } = await lane.current.ask({ kind: 'cook', problem, mode: 'coarse', frames: 0 });
      const verdict = verdictOf(problem, result, cookStages);
      const stage = result.stages[verdict.heatingStage];
      if (stage === undefined) return { state: 'not known', why: 'The cook step has no heat in it yet.' };
      const now = stage.end - stage.start;
      const { advice, cost } = await lane.current.ask({
        kind: 'advise',
        problem,
        mode: 'coarse',
        heatingStage: verdict.heatingStage,
        now,
        coldSpot: verdict.coldSpot,
      });
      if (cost === null) return { state: 'not known', why: 'The engine gave no answer.' };
      return { state: 'known', costed: { stage: stage.name, verdict, advice, cost, now } };
    };
    const timer = setTimeout(
      () =>
        void run()
          .catch((error: unknown): ShapeCosting | null =>
            error instanceof Stale
              ? null
              : { state: 'not known', why: error instanceof Error ? error.message : String(error) },
          )
          .then((costing) => {
            if (still && costing !== null) setAnswer({ key, costing });
          }),
      SETTLE_MS,
    );
    return () => {
      still = false;
      clearTimeout(timer);
      lane.current?.drop();
    };
  }, [key]);

  if (asked.programme === null) return { state: 'not known', why: asked.why };
  return answer !== null && answer.key === key ? answer.costing : { state: 'working' };
}

type Asked =
  | { readonly programme: ReturnType<typeof programmeOf>; readonly key: string; readonly why: '' }
  | { readonly programme: null; readonly key: null; readonly why: string };

function askedOf(method: Method, cook: StepOf<'cook'> | undefined): Asked {
  const none = (why: string): Asked => ({ programme: null, key: null, why });
  if (cook === undefined)
    return none('No cook step after this one yet: what the shape costs in the heat is not known.');
  try {
    const programme = programmeOf(
      method.map((s) => (s.id === cook.id ? cook : s)),
      cook.id,
    );
    return { programme, key: JSON.stringify(programme), why: '' };
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    return none(
      `“${cook.name}” cannot be reckoned with this shape: ${error.problems.map((p) => `${p.path}, ${p.found}; allowed ${p.allowed}`).join('. ')}.`,
    );
  }
}
