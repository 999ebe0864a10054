/** What the engine says of every cook step of a method, worked out fine, one after the other. */
import { useEffect, useState } from 'react';
import { programmeOf } from '../../../../contract/method-cook.ts';
import type { Method } from '../../../../contract/steps.ts';
import { verdictOf } from '../../../../core/method/verdict.ts';
import type { UnitSystem } from '../../../../core/units.ts';
import { engineLane } from '../../../workers/engine.ts';
import { predictedLine } from './request-draft.ts';

/** Null while it is being worked out. */
export function usePredicted(method: Method | null, units: UnitSystem): readonly string[] | null {
  const [lines, setLines] = useState<readonly string[] | null>(null);
  useEffect(() => {
    if (method === null) return undefined;
    let wanted = true;
    const lane = engineLane();
    const work = async () => {
      const found: string[] = [];
      for (const step of method) {
        if (step.kind !== 'cook') continue;
        try {
          const { problem, cookStages } = programmeOf(method, step.id);
          const { result } = await lane.ask({ kind: 'cook', problem, mode: 'fine', frames: 0 });
          found.push(predictedLine(step, verdictOf(problem, result, cookStages), units));
        } catch {
          found.push(`${step.name}: not known; the engine could not work it out as it is written.`);
        }
        if (!wanted) return;
      }
      setLines(found);
    };
    void work();
    return () => {
      wanted = false;
      lane.close();
    };
  }, [method, units]);
  return lines;
}
