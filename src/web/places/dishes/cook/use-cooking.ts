/** The engine's answers to the programme as it stands: coarse at once, fine when the hand rests, then advice. */
import { useEffect, useRef, useState } from 'react';
import type { CookProblem, CookResult } from '../../../../core/heat/types.ts';
import type { Advice } from '../../../../core/method/advice.ts';
import type { RangeMinutes, StageRange } from '../../../../core/method/media-range.ts';
import type { ShapeCost } from '../../../../core/method/shape-cost.ts';
import { type CookVerdict, verdictOf } from '../../../../core/method/verdict.ts';
import { EngineRefusal, engineLane, type Lane, Stale } from '../../../workers/engine.ts';

/** What the engine is asked, whichever step it comes from. */
export type Asked =
  | {
      readonly ok: true;
      readonly problem: CookProblem;
      readonly cookStages: number;
      readonly ranges: readonly StageRange[];
      /** Equal for equal problems. */
      readonly key: string;
    }
  | { readonly ok: false };

export interface Cooked {
  readonly key: string;
  readonly mode: 'coarse' | 'fine';
  readonly problem: CookProblem;
  readonly cookStages: number;
  readonly result: CookResult;
  readonly verdict: CookVerdict;
}

export interface Advised {
  readonly key: string;
  readonly advice: Advice;
  readonly cost: ShapeCost | null;
}

export interface Cooking {
  /** The last answer there was; of the current input only when `current`. */
  readonly cooked: Cooked | null;
  readonly advised: Advised | null;
  /** What the published ranges of the media mean in minutes, once known for the current input. */
  readonly ranges: readonly RangeMinutes[];
  readonly current: boolean;
  /** Simulated minutes so far, of a run that takes its time; null while nothing runs or it is not known. */
  readonly progressMin: number | null;
  readonly settling: boolean;
  /** The engine failed although the input passed its checks. */
  readonly failure: string | null;
}

/** One and the same, so that what it is handed to is not drawn again. */
const none: readonly RangeMinutes[] = [];

const SETTLE_MS = 180;
const COARSE_FRAMES = 28;
const FINE_FRAMES = 96;

interface Lanes {
  readonly quick: Lane;
  readonly settle: Lane;
}

export function useCooking(programme: Asked): Cooking {
  const lanes = useRef<Lanes | null>(null);
  const [cooked, setCooked] = useState<Cooked | null>(null);
  const [advised, setAdvised] = useState<Advised | null>(null);
  const [ranged, setRanged] = useState<{
    readonly key: string;
    readonly minutes: readonly RangeMinutes[];
  } | null>(null);
  const [progressMin, setProgress] = useState<number | null>(null);
  const [failed, setFailed] = useState<{ readonly key: string; readonly words: string } | null>(null);
  const key = programme.ok ? programme.key : null;
  const latest = useRef(programme);
  latest.current = programme;

  useEffect(
    () => () => {
      lanes.current?.quick.close();
      lanes.current?.settle.close();
      lanes.current = null;
    },
    [],
  );

  useEffect(() => {
    const asked = latest.current;
    if (key === null || !asked.ok) return undefined;
    lanes.current ??= { quick: engineLane(), settle: engineLane() };
    const { quick, settle } = lanes.current;
    const { problem, cookStages, ranges } = asked;
    let wanted = true;
    const fail = (error: unknown) => {
      if (!wanted || error instanceof Stale) return;
      const words =
        error instanceof EngineRefusal && error.fault.found !== undefined
          ? `${error.fault.path}: ${error.fault.found}. Allowed: ${error.fault.allowed}`
          : error instanceof Error
            ? error.message
            : String(error);
      setFailed({ key, words });
    };
    const take = (mode: Cooked['mode'], result: CookResult): CookVerdict => {
      const verdict = verdictOf(problem, result, cookStages);
      setCooked({ key, mode, problem, cookStages, result, verdict });
      return verdict;
    };
    settle.drop();
    setProgress(null);
    let fine = false;
    quick
      .ask({ kind: 'cook', problem, mode: 'coarse', frames: COARSE_FRAMES })
      .then(({ result }) => {
        if (wanted && !fine) take('coarse', result);
      })
      .catch(fail);
    const settled = async () => {
      const { result } = await settle.ask(
        { kind: 'cook', problem, mode: 'fine', frames: FINE_FRAMES },
        { onProgress: (s) => wanted && setProgress(s / 60) },
      );
      if (!wanted) return;
      fine = true;
      setProgress(null);
      const verdict = take('fine', result);
      const stage = result.stages[verdict.heatingStage];
      if (stage === undefined) return;
      const { advice, cost } = await settle.ask(
        {
          kind: 'advise',
          problem,
          mode: 'fine',
          heatingStage: verdict.heatingStage,
          now: stage.end - stage.start,
          coldSpot: verdict.coldSpot,
        },
        { onPart: (part) => wanted && setAdvised({ key, advice: part.advice, cost: null }) },
      );
      if (!wanted) return;
      setAdvised({ key, advice, cost });
      const { heatingStage } = verdict;
      const { minutes } = await settle.ask({ kind: 'ranges', problem, heatingStage, ranges });
      if (wanted) setRanged({ key, minutes });
    };
    const timer = setTimeout(() => void settled().catch(fail), SETTLE_MS);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [key]);

  const failure = failed !== null && failed.key === key ? failed.words : null;
  const current = cooked !== null && cooked.key === key;
  return {
    cooked,
    advised: advised !== null && advised.key === key ? advised : null,
    ranges: ranged !== null && ranged.key === key ? ranged.minutes : none,
    current,
    progressMin,
    settling: key !== null && failure === null && !(current && cooked.mode === 'fine'),
    failure,
  };
}
