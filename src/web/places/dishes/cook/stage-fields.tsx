/** One stage: its medium, what that must be told, and what ends it. */
import { hasLaw } from '../../../../contract/surroundings.ts';
import type { RangeMinutes } from '../../../../core/method/media-range.ts';
import { media } from '../../../../core/properties/media.ts';
import { useUnits } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { TextField } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { doubtTemperature, showQuantity } from '../../../parts/quantity.ts';
import { MediumFields, type MediumFieldsProps } from './medium-fields.tsx';
import {
  namedMedium,
  OWN,
  put,
  type UntilKind,
  untilKind,
  untilOf,
  untilValue,
  withMedium,
} from './stage-medium.ts';
import { StageRange } from './stage-range.tsx';

const mediumOptions = [
  ...Object.keys(media).map((name) => ({ value: name, label: name })),
  { value: OWN, label: 'something else: by its surface coefficient' },
];

const untilOptions: readonly { value: UntilKind; label: string }[] = [
  { value: 'min', label: 'a time has passed' },
  { value: 'coldestC', label: 'the coldest point has come up to' },
  { value: 'warmestC', label: 'the warmest point has come down to' },
  { value: 'lethalityMin', label: 'the point that got least has had' },
];

const usualEnd: Record<UntilKind, number> = { min: 20, coldestC: 70, warmestC: 5, lethalityMin: 2 };

interface StageFieldsProps extends MediumFieldsProps {
  readonly number: number;
  readonly minutes: RangeMinutes | undefined;
  /** What dries off in it, in % of the weight, once known. */
  readonly lostPct: number | undefined;
}

export function StageFields(props: StageFieldsProps) {
  const { stage, path, number, onChange, errorAt, readOnly } = props;
  const named = namedMedium(stage);
  const kind = untilKind(stage.until);
  return (
    <>
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
          onChange={(name) => onChange(withMedium(stage, name))}
          error={errorAt(`${path}.medium`)}
        />
        {stage.mediumLog === undefined ? <TemperatureField {...props} /> : <LogOfMedium {...props} />}
        <MediumFields {...props} />
        <NumberField
          label={hasLaw(stage) ? 'Coefficient of the air alone' : 'Surface coefficient'}
          unit="W/(m² K)"
          value={stage.hWm2K ?? null}
          optional={named !== undefined}
          readOnly={readOnly}
          error={errorAt(`${path}.hWm2K`)}
          onChange={(v) => onChange(put(stage, 'hWm2K', v))}
          {...(named === undefined
            ? {}
            : { hint: `Left empty: ${hasLaw(stage) ? (named.dry?.h ?? named.h) : named.h}` })}
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
      <StageRange stage={stage} minutes={props.minutes} lostPct={props.lostPct} />
    </>
  );
}

function TemperatureField({ stage, path, onChange, errorAt, readOnly }: MediumFieldsProps) {
  const units = useUnits();
  const named = namedMedium(stage);
  const boils = named?.boils === true;
  const follows =
    boils &&
    (stage.altitudeM !== undefined || stage.pressureKPa !== undefined || stage.brineSaltPct !== undefined);
  const range = named === undefined ? undefined : { low: named.coldest, high: named.hottest };
  const within =
    range === undefined
      ? undefined
      : `${stage.medium}: ${showQuantity(range.low, '°C', units)} to ${showQuantity(range.high, '°C', units)}`;
  const hint = follows ? 'Left empty: as hot as it boils' : within;
  return (
    <NumberField
      label={named?.needs === undefined ? 'At' : 'The air at'}
      unit="°C"
      value={stage.mediumC ?? (follows ? null : (named?.usual ?? null))}
      optional={follows}
      readOnly={readOnly}
      error={errorAt(`${path}.mediumC`)}
      doubt={(v, stated) => (range === undefined ? null : doubtTemperature(v, stated, range))}
      onChange={(v) => (v !== null || follows) && onChange(put(stage, 'mediumC', v))}
      {...(hint === undefined ? {} : { hint })}
    />
  );
}

function LogOfMedium({ stage, path, errorAt, onChange, readOnly }: MediumFieldsProps) {
  const log = stage.mediumLog ?? [];
  const error = errorAt(`${path}.mediumLog`);
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
