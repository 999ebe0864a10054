/** What the coldest point must have had: named targets with their source, or one's own. */
import type { TargetInput } from '../../../../contract/body.ts';
import { sources } from '../../../../core/sources.ts';
import { Choice } from '../../../parts/choice.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import type { ErrorAt } from './programme.ts';

interface Named {
  readonly id: string;
  readonly label: string;
  readonly target: TargetInput;
  readonly source: string;
  readonly note: string;
}

/** The usual one first. Which applies is for the local authority to say. */
export const namedTargets: readonly Named[] = [
  {
    id: '70-2',
    label: '70 °C for 2 min, or its equal (z 7.5 °C)',
    target: { referenceC: 70, zC: 7.5, min: 2 },
    source: 'fsa-cooking-safely',
    note: 'Food cooked through, poultry and its offal included.',
  },
  {
    id: '70-2-z6',
    label: '70 °C for 2 min, z 6 °C: minced, stuffed or rolled beef, lamb, goat, deer',
    target: { referenceC: 70, zC: 6, min: 2 },
    source: 'acmsf-burgers-2007',
    note: 'Stricter below 70 °C. Above 70 °C it is the laxer of the two: hold such meat to both.',
  },
  {
    id: '90-10',
    label: '90 °C for 10 min, or its equal (z 9 °C): to be kept packed and chilled for long',
    target: { referenceC: 90, zC: 9, min: 10 },
    source: 'cfa-chilled-foods-2006',
    note: 'Spores of non-proteolytic Clostridium botulinum. Above 90 °C the printed table asks a little more than z 9 °C does: judge the log by it.',
  },
];

const same = (a: TargetInput, b: TargetInput) =>
  a.referenceC === b.referenceC && a.zC === b.zC && a.min === b.min;

export interface TargetEditorProps {
  readonly target: TargetInput;
  readonly onChange: (target: TargetInput) => void;
  readonly errorAt: ErrorAt;
  readonly readOnly: boolean;
}

export function TargetEditor({ target, onChange, errorAt, readOnly }: TargetEditorProps) {
  const named = namedTargets.find((n) => same(n.target, target));
  const OWN = 'own';
  const source = named === undefined ? undefined : sources[named.source];
  return (
    <div className="stack">
      <Choice
        label="What the coldest point must have had"
        value={named?.id ?? OWN}
        options={[
          ...namedTargets.map((n) => ({ value: n.id, label: n.label })),
          { value: OWN, label: 'our own target' },
        ]}
        readOnly={readOnly}
        hint={
          named === undefined
            ? 'Your own: say in the step where it comes from.'
            : `${named.note} ${source?.citation ?? named.source}`
        }
        onChange={(id) => {
          const next = namedTargets.find((n) => n.id === id);
          if (next !== undefined) onChange(next.target);
        }}
      />
      <div className="fields fields-small">
        <NumberField
          label="Minutes"
          unit="min"
          value={target.min}
          readOnly={readOnly}
          error={errorAt('target.min')}
          onChange={(v) => v !== null && onChange({ ...target, min: v })}
        />
        <NumberField
          label="At"
          unit="°C"
          value={target.referenceC}
          readOnly={readOnly}
          error={errorAt('target.referenceC')}
          onChange={(v) => v !== null && onChange({ ...target, referenceC: v })}
        />
        <NumberField
          label="z, in Celsius degrees"
          unit="degrees"
          value={target.zC}
          readOnly={readOnly}
          error={errorAt('target.zC')}
          onChange={(v) => v !== null && onChange({ ...target, zC: v })}
        />
      </div>
    </div>
  );
}
