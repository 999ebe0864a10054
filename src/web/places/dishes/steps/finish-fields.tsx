/** Finishing: reheated, crisped, kept hot; held to the rules for that, whose limits are recorded with every batch. */
import { lazy, Suspense } from 'react';
import type { StepOf } from '../../../../contract/steps.ts';
import { TextField } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Fault } from '../../../shell/fault.tsx';
import type { StepForm } from './step-form.ts';
import { StepRulesEditor } from './step-rules-editor.tsx';

const ReheatPanel = lazy(async () => ({ default: (await import('./reheat-panel.tsx')).ReheatPanel }));

export function FinishFields(form: StepForm<StepOf<'finish'>>) {
  const { step, set, readOnly } = form;
  return (
    <>
      <div className="fields">
        <TextField
          className="whole"
          label="By"
          value={step.by}
          maxLength={200}
          readOnly={readOnly}
          onChange={(by) => set({ by }, 'by')}
          hint="Hot oven, its own fat, salamander…"
        />
        <NumberField
          label="At"
          unit="°C"
          value={step.mediumC}
          low={-80}
          high={300}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ mediumC: v }, 'mediumC')}
        />
        <NumberField
          label="For"
          unit="min"
          value={step.min}
          low={0}
          high={10_080}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ min: v }, 'min')}
        />
        <NumberField
          label="Core when done"
          unit="°C"
          optional
          value={step.coreC ?? null}
          low={0}
          high={100}
          readOnly={readOnly}
          onChange={(v) =>
            set(v === null ? ({ coreC: undefined } as Partial<StepOf<'finish'>>) : { coreC: v }, 'coreC')
          }
          hint="Leave empty where it is not measured."
        />
      </div>
      <Fault>
        <Suspense fallback={<p className="quiet waiting">Laying out the portion…</p>}>
          <ReheatPanel {...form} />
        </Suspense>
      </Fault>
      <StepRulesEditor {...(form as unknown as StepForm<StepOf<'keep'> | StepOf<'finish'>>)} />
    </>
  );
}
