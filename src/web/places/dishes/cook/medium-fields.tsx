/** What a medium must be told beside its temperature: vapour, pressure, what glows, ladled fat. */
import type { StageInput } from '../../../../contract/body.ts';
import { boilingOf, isHumid } from '../../../../contract/surroundings.ts';
import { ladledFat } from '../../../../core/properties/media.ts';
import { useUnits } from '../../../kitchen.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { showQuantity } from '../../../parts/quantity.ts';
import type { ErrorAt } from './programme.ts';
import {
  glowing,
  isAir,
  type Measure,
  measureOf,
  namedMedium,
  placeOf,
  put,
  underPressure,
  type Wetness,
  wetnessOf,
  withMeasure,
  withWetness,
} from './stage-medium.ts';

export interface MediumFieldsProps {
  readonly stage: StageInput;
  readonly path: string;
  readonly onChange: (stage: StageInput) => void;
  readonly errorAt: ErrorAt;
  readonly readOnly: boolean;
  /** A step before has wrapped the piece. */
  readonly wrappedBefore: boolean;
}

export function MediumFields(props: MediumFieldsProps) {
  const { stage } = props;
  const named = namedMedium(stage);
  return (
    <>
      {named?.boils === true ? <PressureFields {...props} /> : null}
      {named?.needs === 'radiation' ? <GlowFields {...props} /> : null}
      {named?.needs === 'ladle' ? <LadleFields {...props} /> : null}
      {isAir(stage) ? <VapourFields {...props} /> : null}
      {isAir(stage) && isHumid(stage) ? <HeightField {...props} /> : null}
    </>
  );
}

function HeightField({ stage, path, onChange, errorAt, readOnly }: MediumFieldsProps) {
  return (
    <NumberField
      label="Height of the kitchen"
      unit="m"
      value={stage.altitudeM ?? null}
      optional
      low={-450}
      high={6000}
      readOnly={readOnly}
      error={errorAt(`${path}.altitudeM`)}
      onChange={(v) => onChange(underPressure(stage, v === null ? {} : { altitudeM: v }))}
      hint="Left empty: sea level"
    />
  );
}

function PressureFields(props: MediumFieldsProps) {
  const { stage, path, onChange, errorAt, readOnly } = props;
  const units = useUnits();
  const place = placeOf(stage);
  // Both told: the contract says so beside the field.
  const both = stage.altitudeM !== undefined && stage.pressureKPa !== undefined;
  const boils = both ? null : Number(boilingOf(stage, path).toFixed(1));
  return (
    <>
      <Choice
        label="Under the pressure of"
        value={place}
        readOnly={readOnly}
        options={[
          { value: 'height', label: 'the open kitchen' },
          { value: 'vessel', label: 'a closed vessel' },
        ]}
        onChange={(next) => onChange(underPressure(stage, next === 'vessel' ? { pressureKPa: 150 } : {}))}
        {...(boils === null ? {} : { hint: `Boils at ${showQuantity(boils, '°C', units)}` })}
      />
      {place === 'height' ? (
        <HeightField {...props} />
      ) : (
        <NumberField
          label="Pressure, the air’s included"
          unit="kPa"
          value={stage.pressureKPa ?? null}
          low={20}
          high={400}
          readOnly={readOnly}
          error={errorAt(`${path}.pressureKPa`)}
          onChange={(v) => v !== null && onChange(underPressure(stage, { pressureKPa: v }))}
          hint="101 is open at the sea"
        />
      )}
      {stage.medium === 'boiling water' ? (
        <NumberField
          label="Salt in it"
          unit="%"
          value={stage.brineSaltPct ?? null}
          optional
          low={0}
          high={26.4}
          readOnly={readOnly}
          error={errorAt(`${path}.brineSaltPct`)}
          onChange={(v) => onChange(put(stage, 'brineSaltPct', v))}
          hint="Of the brine; left empty: none"
        />
      ) : null}
    </>
  );
}

const measures = (saturated: boolean): readonly { value: Measure; label: string }[] => [
  { value: 'none', label: saturated ? 'saturated with steam' : 'not known' },
  { value: 'humidityPct', label: 'by its relative humidity' },
  { value: 'dewPointC', label: 'by its dew point' },
  { value: 'wetBulbC', label: 'by its wet bulb' },
];

const measureFields = {
  humidityPct: { label: 'Relative humidity', unit: '%', low: 0, high: 100 },
  dewPointC: { label: 'Dew point', unit: '°C', low: -60, high: 143 },
  wetBulbC: { label: 'Wet bulb', unit: '°C', low: 0, high: 143 },
} as const;

const measureHints = {
  humidityPct: 'Above boiling: the share of steam',
  dewPointC: 'Where its steam begins to settle',
  wetBulbC: 'What a wet probe reads in it',
} as const;

function VapourFields({ stage, path, onChange, errorAt, readOnly, wrappedBefore }: MediumFieldsProps) {
  const measure = measureOf(stage);
  const humid = isHumid(stage);
  const wetness = wrappedBefore ? 'wrapped' : wetnessOf(stage);
  const fixed = wrappedBefore || (stage.wraps ?? []).length > 0;
  return (
    <>
      <Choice
        label="Vapour in the air"
        value={measure}
        options={measures(humid && measure === 'none')}
        readOnly={readOnly}
        onChange={(next: Measure) => onChange(withMeasure(stage, next))}
        {...(humid ? {} : { hint: 'Told, the surface dries or is steamed on' })}
      />
      {measure === 'none' ? null : (
        <NumberField
          {...measureFields[measure]}
          value={stage[measure] ?? null}
          readOnly={readOnly}
          error={errorAt(`${path}.${measure}`)}
          onChange={(v) => v !== null && onChange(put(stage, measure, v))}
          hint={measureHints[measure]}
        />
      )}
      {humid ? (
        <Choice
          label="The surface"
          value={wetness}
          readOnly={readOnly || fixed}
          {...(wetness === 'wrapped'
            ? { hint: wrappedBefore ? 'By a step before: nothing dries off' : 'Nothing dries off' }
            : {})}
          options={[
            { value: 'wet', label: 'wet, and dries' },
            { value: 'drier', label: 'less than wet' },
            { value: 'wrapped', label: 'wrapped' },
          ]}
          onChange={(next: Wetness) => onChange(withWetness(stage, next))}
          error={errorAt(`${path}.wrapped`)}
        />
      ) : null}
      {humid && wetness === 'drier' ? (
        <NumberField
          label="Its water activity"
          unit=""
          value={stage.surfaceWaterActivity ?? null}
          low={0}
          high={1}
          readOnly={readOnly}
          error={errorAt(`${path}.surfaceWaterActivity`)}
          onChange={(v) => v !== null && onChange(put(stage, 'surfaceWaterActivity', v))}
          hint="1 is wet"
        />
      ) : null}
    </>
  );
}

function GlowFields({ stage, path, onChange, errorAt, readOnly }: MediumFieldsProps) {
  const by = stage.radiantC === undefined ? 'flux' : 'source';
  return (
    <>
      <Choice
        label="Radiant heat"
        value={by}
        readOnly={readOnly}
        options={[
          { value: 'flux', label: 'as taken up' },
          { value: 'source', label: 'by its glow' },
        ]}
        onChange={(next) => onChange(glowing(stage, next))}
      />
      {by === 'flux' ? (
        <NumberField
          label="Taken up"
          unit="W/m²"
          value={stage.fluxWm2 ?? null}
          low={0}
          high={100_000}
          readOnly={readOnly}
          error={errorAt(`${path}.fluxWm2`)}
          onChange={(v) => v !== null && onChange(put(stage, 'fluxWm2', v))}
          hint="All over the surface; no published figure"
        />
      ) : (
        <>
          <NumberField
            label="It glows at"
            unit="°C"
            value={stage.radiantC ?? null}
            low={50}
            high={1500}
            readOnly={readOnly}
            error={errorAt(`${path}.radiantC`)}
            onChange={(v) => v !== null && onChange(put(stage, 'radiantC', v))}
            hint="Dull red about 600 °C (from memory)"
          />
          <NumberField
            label="Of which the food gets"
            unit=""
            value={stage.radiantShare ?? null}
            low={0}
            high={1}
            readOnly={readOnly}
            error={errorAt(`${path}.radiantShare`)}
            onChange={(v) => v !== null && onChange(put(stage, 'radiantShare', v))}
            hint="0 to 1: how much of it the food sees"
          />
        </>
      )}
    </>
  );
}

function LadleFields({ stage, path, onChange, errorAt, readOnly }: MediumFieldsProps) {
  const { ladle } = stage;
  if (ladle === undefined) return null;
  const set = (over: Partial<typeof ladle>) => onChange({ ...stage, ladle: { ...ladle, ...over } });
  const seconds = (key: 'onS' | 'everyS', label: string, hint: string) => (
    <NumberField
      label={label}
      unit="s"
      value={ladle[key]}
      low={0.5}
      high={3600}
      readOnly={readOnly}
      error={errorAt(`${path}.ladle.${key}`)}
      onChange={(v) => v !== null && set({ [key]: v })}
      hint={hint}
    />
  );
  return (
    <>
      <NumberField
        label="Fat at"
        unit="°C"
        value={ladle.fatC}
        low={20}
        high={250}
        readOnly={readOnly}
        error={errorAt(`${path}.ladle.fatC`)}
        onChange={(v) => v !== null && set({ fatC: v })}
      />
      {seconds('onS', 'Runs over it for', 'Of every turn')}
      {seconds('everyS', 'A turn lasts', 'From one ladle to the next')}
      <NumberField
        label="Coefficient under the fat"
        unit="W/(m² K)"
        value={ladle.hWm2K ?? null}
        optional
        low={1}
        high={5000}
        readOnly={readOnly}
        error={errorAt(`${path}.ladle.hWm2K`)}
        onChange={(v) => {
          const { hWm2K: _, ...rest } = ladle;
          onChange({ ...stage, ladle: v === null ? rest : { ...rest, hWm2K: v } });
        }}
        hint={`Left empty: ${ladledFat.h}, an assumption`}
      />
    </>
  );
}
