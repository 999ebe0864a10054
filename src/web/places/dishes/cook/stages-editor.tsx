/** The programme: one stage after another, each a medium, its temperature and what ends it. */
import { memo, type ReactNode } from 'react';
import type { StageInput } from '../../../../contract/body.ts';
import type { RangeMinutes } from '../../../../core/method/media-range.ts';
import { Button } from '../../../parts/button.tsx';
import { say } from '../../../parts/toast.tsx';
import type { ErrorAt } from './programme.ts';
import { StageFields } from './stage-fields.tsx';

export interface StagesEditorProps {
  readonly stages: readonly StageInput[];
  readonly onChange: (stages: StageInput[]) => void;
  readonly errorAt: ErrorAt;
  readonly readOnly: boolean;
  /** What a new stage is like. */
  readonly kind: 'cook' | 'chill';
  /** What else may be chosen for a stage: the kitchen's own machines. */
  readonly beside?: (stage: StageInput, change: (stage: StageInput) => void) => ReactNode;
  /** What the ranges of the media mean in minutes, by index of the whole programme's stages; the first here is number `from`. */
  readonly ranges: readonly RangeMinutes[];
  readonly from: number;
  /** The stages as they are run, wraps of the steps before included, and what dries off in each [% of the weight]. */
  readonly run: readonly StageInput[];
  readonly lostPct: readonly (number | undefined)[];
}

const newStage = (kind: 'cook' | 'chill'): StageInput =>
  kind === 'cook'
    ? { name: 'steam', medium: 'steam', mediumC: 100, until: { min: 30 } }
    : { name: 'ice water', medium: 'ice water', mediumC: 1, until: { warmestC: 5 } };

export const StagesEditor = memo(function StagesEditor({
  stages,
  onChange,
  errorAt,
  readOnly,
  kind,
  beside,
  ranges,
  from,
  run,
  lostPct,
}: StagesEditorProps) {
  const change = (index: number, stage: StageInput) =>
    onChange(stages.map((s, i) => (i === index ? stage : s)));
  const move = (index: number, by: -1 | 1) => {
    const next = [...stages];
    const [stage] = next.splice(index, 1);
    if (stage !== undefined) next.splice(index + by, 0, stage);
    onChange(next);
  };
  const remove = (index: number) => {
    const before = [...stages];
    onChange(stages.filter((_, i) => i !== index));
    say(`Stage “${stages[index]?.name ?? ''}” taken out.`, () => onChange(before));
  };
  return (
    <section className="stack" aria-labelledby="programme-heading">
      <h3 id="programme-heading">{kind === 'cook' ? 'The programme' : 'The chill'}</h3>
      {errorAt('stages') === undefined ? null : (
        <p className="field-error" role="alert">
          {errorAt('stages')}
        </p>
      )}
      <ol className="stages">
        {stages.map((stage, i) => (
          <li key={i} className="stage">
            <StageFields
              stage={stage}
              path={`stages[${i}]`}
              number={i + 1}
              errorAt={errorAt}
              readOnly={readOnly}
              minutes={ranges.find((row) => row.stage === from + i)}
              wrappedBefore={run[from + i]?.wrapped === true && stage.wrapped !== true}
              lostPct={lostPct[from + i]}
              onChange={(next) => change(i, next)}
            />
            {readOnly ? null : beside?.(stage, (next) => change(i, next))}
            {readOnly ? null : (
              <div className="row">
                {stages.length < 2 ? null : (
                  <>
                    <Button
                      onPress={() => move(i, -1)}
                      disabled={i === 0}
                      label={`Move stage ${i + 1} earlier`}
                    >
                      Earlier
                    </Button>
                    <Button
                      onPress={() => move(i, 1)}
                      disabled={i === stages.length - 1}
                      label={`Move stage ${i + 1} later`}
                    >
                      Later
                    </Button>
                  </>
                )}
                <Button onPress={() => remove(i)} label={`Take out stage ${i + 1}`}>
                  Take out
                </Button>
              </div>
            )}
          </li>
        ))}
      </ol>
      {readOnly || stages.length >= 12 ? null : (
        <Button onPress={() => onChange([...stages, newStage(kind)])}>Add a stage</Button>
      )}
    </section>
  );
});
