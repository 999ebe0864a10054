/** The programme: one stage after another, each a medium, its temperature and what ends it. */
import { memo } from 'react';
import type { StageInput, UntilInput } from '../../../../contract/body.ts';
import { type MediumName, media } from '../../../../core/properties/media.ts';
import { useUnits } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { TextField } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { doubtTemperature, showQuantity } from '../../../parts/quantity.ts';
import { say } from '../../../parts/toast.tsx';
import type { ErrorAt } from './programme.ts';

export interface StagesEditorProps {
  readonly stages: readonly StageInput[];
  readonly onChange: (stages: StageInput[]) => void;
  readonly errorAt: ErrorAt;
  readonly readOnly: boolean;
  /** What a new stage is like. */
  readonly kind: 'cook' | 'chill';
}

const OWN = 'own';
const mediumOptions = [
  ...Object.keys(media).map((name) => ({ value: name, label: name })),
  { value: OWN, label: 'something else: by its surface coefficient' },
];

type UntilKind = 'min' | 'coldestC' | 'warmestC' | 'lethalityMin';
const untilOptions: readonly { value: UntilKind; label: string }[] = [
  { value: 'min', label: 'a time has passed' },
  { value: 'coldestC', label: 'the coldest point has come up to' },
  { value: 'warmestC', label: 'the warmest point has come down to' },
  { value: 'lethalityMin', label: 'the point that got least has had' },
];

export const untilKind = (until: UntilInput): UntilKind =>
  'min' in until
    ? 'min'
    : 'coldestC' in until
      ? 'coldestC'
      : 'warmestC' in until
        ? 'warmestC'
        : 'lethalityMin';

function untilOf(kind: UntilKind, value: number): UntilInput {
  switch (kind) {
    case 'min':
      return { min: value };
    case 'coldestC':
      return { coldestC: value };
    case 'warmestC':
      return { warmestC: value };
    case 'lethalityMin':
      return { lethalityMin: value };
  }
}

const usualEnd: Record<UntilKind, number> = { min: 20, coldestC: 70, warmestC: 5, lethalityMin: 2 };

const untilValue = (until: UntilInput): number =>
  'min' in until
    ? until.min
    : 'coldestC' in until
      ? until.coldestC
      : 'warmestC' in until
        ? until.warmestC
        : until.lethalityMin;

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
              onChange={(next) => change(i, next)}
            />
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

interface StageFieldsProps {
  readonly stage: StageInput;
  readonly path: string;
  readonly number: number;
  readonly onChange: (stage: StageInput) => void;
  readonly errorAt: ErrorAt;
  readonly readOnly: boolean;
}

function StageFields({ stage, path, number, onChange, errorAt, readOnly }: StageFieldsProps) {
  const units = useUnits();
  const named =
    stage.medium !== undefined && Object.hasOwn(media, stage.medium)
      ? media[stage.medium as MediumName]
      : undefined;
  const kind = untilKind(stage.until);
  const pickMedium = (value: string) => {
    if (value === OWN) {
      const { medium: _, ...rest } = stage;
      onChange({
        ...rest,
        hWm2K: stage.hWm2K ?? named?.h ?? 100,
        ...(stage.mediumC === undefined ? { mediumC: 100 } : {}),
      });
      return;
    }
    const next = media[value as MediumName];
    const usual: number | undefined = 'usual' in next ? next.usual : undefined;
    const fits =
      stage.mediumC !== undefined && stage.mediumC >= next.coldest && stage.mediumC <= next.hottest;
    const { hWm2K: _, mediumLog: __, ...rest } = stage;
    onChange({
      ...rest,
      name: stage.name === stage.medium || stage.name === '' ? value : stage.name,
      medium: value,
      mediumC: fits ? stage.mediumC : (usual ?? Math.round((next.coldest + next.hottest) / 2)),
    });
  };
  const setH = (v: number | null) => {
    const { hWm2K: _, ...rest } = stage;
    onChange(v === null ? rest : { ...rest, hWm2K: v });
  };
  const lowHigh = named === undefined ? undefined : { low: named.coldest, high: named.hottest };
  return (
    <div className="fields fields-stage">
      <TextField
        label={`Stage ${number}`}
        value={stage.name}
        maxLength={80}
        readOnly={readOnly}
        error={errorAt(`${path}.name`)}
        onChange={(name) => onChange({ ...stage, name })}
      />
      <Choice
        label="In"
        value={stage.medium ?? OWN}
        options={mediumOptions}
        readOnly={readOnly}
        onChange={pickMedium}
        error={errorAt(`${path}.medium`)}
      />
      {stage.mediumLog === undefined ? (
        <NumberField
          label="At"
          unit="°C"
          value={stage.mediumC ?? (named !== undefined && 'usual' in named ? named.usual : null)}
          readOnly={readOnly}
          error={errorAt(`${path}.mediumC`)}
          doubt={(v, stated) => (lowHigh === undefined ? null : doubtTemperature(v, stated, lowHigh))}
          onChange={(v) => v !== null && onChange({ ...stage, mediumC: v })}
          {...(lowHigh === undefined
            ? {}
            : {
                hint: `${stage.medium}: ${showQuantity(lowHigh.low, '°C', units)} to ${showQuantity(lowHigh.high, '°C', units)}`,
              })}
        />
      ) : (
        <LogOfMedium
          stage={stage}
          error={errorAt(`${path}.mediumLog`)}
          onChange={onChange}
          readOnly={readOnly}
        />
      )}
      <NumberField
        label="Surface coefficient"
        unit="W/(m² K)"
        value={stage.hWm2K ?? null}
        optional={named !== undefined}
        readOnly={readOnly}
        error={errorAt(`${path}.hWm2K`)}
        onChange={setH}
        {...(named === undefined
          ? {}
          : {
              hint: `Left empty: ${named.h}, published from ${named.low} to ${named.high}`,
            })}
      />
      <Choice
        label="Until"
        value={kind}
        options={untilOptions}
        readOnly={readOnly}
        error={errorAt(`${path}.until`)}
        onChange={(next: UntilKind) => onChange({ ...stage, until: untilOf(next, usualEnd[next]) })}
      />
      <NumberField
        label={
          kind === 'min' ? 'Minutes' : kind === 'lethalityMin' ? 'Minutes at the reference' : 'Temperature'
        }
        unit={kind === 'min' || kind === 'lethalityMin' ? 'min' : '°C'}
        value={untilValue(stage.until)}
        readOnly={readOnly}
        error={errorAt(`${path}.until.${kind}`)}
        onChange={(v) => v !== null && onChange({ ...stage, until: untilOf(kind, v) })}
      />
    </div>
  );
}

interface LogOfMediumProps {
  readonly stage: StageInput;
  readonly error: string | undefined;
  readonly onChange: (stage: StageInput) => void;
  readonly readOnly: boolean;
}

function LogOfMedium({ stage, error, onChange, readOnly }: LogOfMediumProps) {
  const log = stage.mediumLog ?? [];
  const drop = () => {
    const { mediumLog: _, ...rest } = stage;
    onChange({ ...rest, mediumC: Math.round(log.at(-1)?.C ?? 100) });
  };
  return (
    <div className="field">
      <p className="field-label">At</p>
      <p>a measured log of {log.length} readings</p>
      {error === undefined ? null : <p className="field-error">{error}</p>}
      {readOnly ? null : <Button onPress={drop}>Use one temperature instead</Button>}
    </div>
  );
}
