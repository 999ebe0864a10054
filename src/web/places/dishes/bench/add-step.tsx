import { useState } from 'react';
import { type Method, type Step, type StepKind, stepKinds } from '../../../../contract/steps.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Dialog } from '../../../parts/dialog.tsx';
import { kindWords, newStep } from './new-step.ts';
import './add-step.css';

export interface AddStepProps {
  readonly method: Method;
  /** Offered first: after this step. */
  readonly after: string | undefined;
  readonly onClose: () => void;
  readonly onAdd: (step: Step, at: number) => void;
}

/** Any of the eleven kinds, anywhere. */
export function AddStep({ method, after, onClose, onAdd }: AddStepProps) {
  const kitchen = useKitchen();
  const found = method.findIndex((s) => s.id === after);
  const [at, setAt] = useState(String(found === -1 ? method.length : found + 1));
  const add = (kind: StepKind) => onAdd(newStep(kind, kitchen.place), Number(at));
  return (
    <Dialog open title="Add a step" onClose={onClose} wide>
      {method.length === 0 ? null : (
        <Choice
          label="Where"
          value={at}
          onChange={setAt}
          options={[
            { value: '0', label: 'At the beginning' },
            ...method.map((s, i) => ({ value: String(i + 1), label: `After ${i + 1} ${s.name}` })),
          ]}
        />
      )}
      <ul className="kinds">
        {stepKinds.map((kind) => (
          <li key={kind}>
            <button type="button" className="kind" onClick={() => add(kind)}>
              <span className="kind-name">{kindWords[kind].name}</span>
              <span className="quiet">{kindWords[kind].what}</span>
            </button>
          </li>
        ))}
      </ul>
    </Dialog>
  );
}
