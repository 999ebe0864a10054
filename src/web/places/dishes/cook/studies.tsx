/** How sure and how gentle: two questions of the whole programme, asked when somebody wants to know. */
import { memo, useMemo } from 'react';
import type { StageInput } from '../../../../contract/body.ts';
import { programmeInputOf } from '../../../../contract/method-cook.ts';
import { rulesOfStep } from '../../../../contract/step-rules.ts';
import type { Method } from '../../../../contract/steps.ts';
import { findRule } from '../../../../core/properties/rules.ts';
import { GentlePanel } from './gentle-panel.tsx';
import { inSteps } from './gentle-steps.ts';
import type { Chill, Cook } from './programme.ts';
import { SurePanel } from './sure-panel.tsx';
import type { Cooking } from './use-cooking.ts';
import type { Edit } from './use-draft.ts';

export interface StudiesProps {
  readonly method: Method;
  readonly step: Cook | Chill;
  readonly cooking: Cooking;
  readonly readOnly: boolean;
  readonly onChange: Edit<Cook | Chill>;
}

const ofCooking = new Set(['lethality', 'hold', 'come-up']);

export const Studies = memo(function Studies({ method, step, cooking, readOnly, onChange }: StudiesProps) {
  const { cooked, current } = cooking;
  // The stage that ends with lifting out of the heat, as long as it is one of this step's own.
  const stageIndex = Math.min(cooked?.verdict.heatingStage ?? 0, Math.max(0, step.stages.length - 1));
  const known = cooked !== null && current;
  const programme = useMemo(
    () =>
      known && step.kind === 'cook'
        ? programmeInputOf(
            method.map((s) => (s.id === step.id ? step : s)),
            step.id,
          )
        : null,
    [known, method, step],
  );
  if (step.kind !== 'cook') return null;
  const rules = rulesOfStep(step).filter((id) => ofCooking.has(findRule(id)?.kind ?? ''));
  const stage = cooked?.result.stages[stageIndex];
  const nowMin = stage === undefined ? null : (stage.end - stage.start) / 60;
  /** Other stages in place of this step's own; gives back what puts them back. */
  const put = (change: (stages: readonly StageInput[]) => StageInput[]) => {
    const before = step.stages;
    onChange((s) => ({ ...s, stages: change(s.stages) }));
    return () => onChange((s) => ({ ...s, stages: before }));
  };
  const common = { programme, stageIndex, rules, readOnly };
  return (
    <>
      <SurePanel
        {...common}
        onMinutes={(min) =>
          put((stages) => stages.map((s, i) => (i === stageIndex ? { ...s, until: { min } } : s)))
        }
      />
      <GentlePanel
        {...common}
        nowMin={nowMin}
        onSteps={(steps, medium) =>
          put((stages) => stages.flatMap((s, i) => (i === stageIndex ? inSteps(s, steps, medium) : [s])))
        }
      />
    </>
  );
});
