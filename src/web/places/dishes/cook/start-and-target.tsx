import { memo } from 'react';
import { NumberField } from '../../../parts/number-field.tsx';
import { doubtTemperature } from '../../../parts/quantity.ts';
import { TargetEditor, type TargetEditorProps } from './target-editor.tsx';

export interface StartAndTargetProps extends Omit<TargetEditorProps, 'onChange'> {
  readonly startC: number;
  readonly onStart: (startC: number) => void;
  readonly onTarget: TargetEditorProps['onChange'];
}

/** How cold the piece goes in, and what its coldest point must have had when it comes out. */
export const StartAndTarget = memo(function StartAndTarget(props: StartAndTargetProps) {
  const { startC, target, errorAt, readOnly, onStart, onTarget } = props;
  return (
    <section className="stack" aria-labelledby="start-heading">
      <h3 id="start-heading">Start and target</h3>
      <NumberField
        label="Into the heat at"
        unit="°C"
        value={startC}
        readOnly={readOnly}
        error={errorAt('startC')}
        doubt={(v, stated) => doubtTemperature(v, stated, { low: -25, high: 30 })}
        onChange={(v) => v !== null && onStart(v)}
      />
      <TargetEditor target={target} errorAt={errorAt} readOnly={readOnly} onChange={onTarget} />
    </section>
  );
});
