import { lazy, Suspense } from 'react';
import type { Dish, Kitchen, Version } from '../../../../contract/records.ts';
import type { CookStep, Method, Step, StepOf } from '../../../../contract/steps.ts';
import { TextField } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Fault } from '../../../shell/fault.tsx';
import { kindWords } from '../bench/new-step.ts';
import { AsksEditor } from './asks-editor.tsx';
import { CureFields } from './cure-fields.tsx';
import { FillFields } from './fill-fields.tsx';
import { FinishFields } from './finish-fields.tsx';
import { KeepFields } from './keep-fields.tsx';
import { MixFields } from './mix-fields.tsx';
import { PlateFields, RinseFields, TrimFields, WrapFields } from './plain-fields.tsx';
import type { StepForm } from './step-form.ts';
import './step-panel.css';

const CookPanel = lazy(async () => ({ default: (await import('../cook/cook-panel.tsx')).CookPanel }));

export interface StepPanelProps {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly version: Version;
  readonly method: Method;
  readonly step: Step;
  readonly readOnly: boolean;
  readonly onChange: (step: Step, about: string) => void;
}

function Fields(props: StepPanelProps) {
  const { step } = props;
  const form = <S extends Step>(of: S): StepForm<S> => ({
    ...props,
    step: of,
    putStep: props.onChange,
    set: (patch, about) => {
      const next = { ...of, ...patch };
      for (const [key, value] of Object.entries(next))
        if (value === undefined) delete next[key as keyof typeof next];
      props.onChange(next, `${of.id} ${about}`);
    },
  });
  switch (step.kind) {
    case 'trim':
      return <TrimFields {...form(step)} />;
    case 'cure':
      return <CureFields {...form(step)} />;
    case 'rinse and dry':
      return <RinseFields {...form(step)} />;
    case 'mix':
      return <MixFields {...form(step)} />;
    case 'fill':
      return <FillFields {...form(step)} />;
    case 'wrap':
      return <WrapFields {...form(step)} />;
    case 'keep':
      return <KeepFields {...form(step)} />;
    case 'finish':
      return <FinishFields {...form(step)} />;
    case 'plate':
      return <PlateFields {...form(step)} />;
    case 'cook':
    case 'chill':
      return <Cooking {...props} step={step} />;
  }
}

function Cooking({
  kitchen,
  dish,
  version,
  method,
  step,
  readOnly,
  onChange,
}: StepPanelProps & { readonly step: CookStep | StepOf<'chill'> }) {
  return (
    <Fault>
      <Suspense fallback={<p className="quiet waiting">Laying out the piece…</p>}>
        <CookPanel
          kitchen={kitchen}
          dish={dish}
          version={version}
          method={method}
          step={step}
          readOnly={readOnly}
          onChange={(next) => onChange(next, `${step.id} cooking`)}
        />
      </Suspense>
    </Fault>
  );
}

/** One step: what is done, its settings, what to expect, what is recorded. */
export function StepPanel(props: StepPanelProps) {
  const { method, step, readOnly, onChange } = props;
  const index = method.findIndex((s) => s.id === step.id);
  return (
    <section className="step" aria-labelledby={`step-${step.id}`}>
      <header className="step-head">
        <p className="quiet">
          Step {index + 1} of {method.length} · {step.kind}, {kindWords[step.kind].what}
        </p>
        <h2 id={`step-${step.id}`}>{step.name === '' ? 'A step without a name' : step.name}</h2>
      </header>
      <div className="step-fields">
        <Fields {...props} />
      </div>
      <div className="step-common">
        <div className="stack">
          <h3>On the method card</h3>
          <TextField
            label="Name"
            value={step.name}
            maxLength={120}
            readOnly={readOnly}
            onChange={(name) => onChange({ ...step, name }, `${step.id} name`)}
          />
          <TextField
            label="What to do"
            value={step.how}
            lines={3}
            maxLength={2_000}
            readOnly={readOnly}
            onChange={(how) => onChange({ ...step, how }, `${step.id} how`)}
          />
          <NumberField
            label="Hands"
            unit="min"
            value={step.handsMin}
            low={0}
            high={10_080}
            readOnly={readOnly}
            onChange={(v) => v !== null && onChange({ ...step, handsMin: v }, `${step.id} hands`)}
          />
        </div>
        <AsksEditor
          step={step}
          readOnly={readOnly}
          onChange={(asks, about) => onChange({ ...step, asks }, `${step.id} ${about}`)}
        />
      </div>
    </section>
  );
}
