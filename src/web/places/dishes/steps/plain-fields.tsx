/** The steps that are a handful of fields: trim, rinse and dry, wrap, plate. */
import type { StepOf } from '../../../../contract/steps.ts';
import { filmResistance, mediumNamed, throughResistance, wraps } from '../../../../core/properties/media.ts';
import { formatQuantity } from '../../../../core/units.ts';
import { Choice } from '../../../parts/choice.tsx';
import { TextField } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Foreseen } from './foreseen.tsx';
import type { StepForm } from './step-form.ts';

export function TrimFields({ kitchen, step, set, readOnly }: StepForm<StepOf<'trim'>>) {
  const left = (step.weightG * step.yieldPct) / 100;
  return (
    <>
      <div className="fields">
        <TextField
          className="whole"
          label="Part"
          value={step.part}
          maxLength={200}
          readOnly={readOnly}
          onChange={(part) => set({ part }, 'part')}
        />
        <NumberField
          label="Weight as it comes"
          unit="g"
          value={step.weightG}
          low={0}
          high={1_000_000}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ weightG: v }, 'weightG')}
        />
        <NumberField
          label="Yield"
          unit="%"
          value={step.yieldPct}
          low={0}
          high={100}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ yieldPct: v }, 'yieldPct')}
          hint="What is left after trimming."
        />
      </div>
      <Foreseen>
        <p>
          Leaves <strong>{formatQuantity(left, 'mass', kitchen.units)}</strong>;{' '}
          {formatQuantity(step.weightG - left, 'mass', kitchen.units)} goes elsewhere: stock, fat, bin.
        </p>
      </Foreseen>
    </>
  );
}

export function RinseFields({ step, set, readOnly }: StepForm<StepOf<'rinse and dry'>>) {
  return (
    <div className="fields">
      <NumberField
        label="Rinse"
        unit="min"
        value={step.rinseMin}
        low={0}
        high={10_080}
        readOnly={readOnly}
        onChange={(v) => v !== null && set({ rinseMin: v }, 'rinseMin')}
      />
      <NumberField
        label="Dry"
        unit="min"
        value={step.dryMin}
        low={0}
        high={10_080}
        readOnly={readOnly}
        onChange={(v) => v !== null && set({ dryMin: v }, 'dryMin')}
        hint="Uncovered, cold."
      />
    </div>
  );
}

/** The coefficient that steam brings before any wrap: the default of the published table, for comparison. */
const steamH = mediumNamed('steam').h;

const wrapNames = Object.keys(wraps) as (keyof typeof wraps)[];
const ownWrap = 'something else';

export function WrapFields({ step, set, readOnly }: StepForm<StepOf<'wrap'>>) {
  const resistance =
    step.layers === 0 || step.micrometres === 0
      ? 0
      : filmResistance(step.micrometres * 1e-6, step.kWmK, step.layers);
  const through = throughResistance(steamH, resistance);
  return (
    <>
      <div className="fields">
        <TextField
          className="whole"
          label="Wrapped in"
          value={step.material}
          maxLength={200}
          readOnly={readOnly}
          onChange={(material) => set({ material }, 'material')}
        />
        <NumberField
          label="Layers"
          unit=""
          whole
          value={step.layers}
          low={0}
          high={40}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ layers: v }, 'layers')}
        />
        <NumberField
          label="One layer is"
          unit="µm"
          value={step.micrometres}
          low={0}
          high={2_000}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ micrometres: v }, 'micrometres')}
          hint="Kitchen film is about 10 µm. 0: no hindrance to heat."
        />
        <Choice
          label="Lets heat through like"
          value={wrapNames.find((name) => wraps[name].k === step.kWmK) ?? ownWrap}
          options={[...wrapNames, ownWrap].map((name) => ({ value: name, label: name }))}
          readOnly={readOnly}
          onChange={(name) => {
            const known = wrapNames.find((n) => n === name);
            if (known !== undefined) set({ kWmK: wraps[known].k }, 'kWmK');
          }}
        />
        <NumberField
          label="Conductivity"
          unit="W/(m K)"
          value={step.kWmK}
          low={0.01}
          high={500}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ kWmK: v }, 'kWmK')}
          hint="The named ones are from memory of handbooks."
        />
      </div>
      <Foreseen>
        <p>
          {resistance === 0
            ? 'Heat passes as if there were no wrap.'
            : `In steam the wrap takes the heat that reaches the surface from ${steamH} to ${Math.round(through)} W/(m² K). The cook step reckons with it. A tenth of a millimetre of trapped air does more than all the film.`}
        </p>
      </Foreseen>
    </>
  );
}

export function PlateFields({ kitchen, method, step, set, readOnly }: StepForm<StepOf<'plate'>>) {
  const fill = method.find((s) => s.kind === 'fill');
  const served = step.portionG * step.portionsPerPiece;
  return (
    <>
      <div className="fields">
        <NumberField
          label="A portion"
          unit="g"
          value={step.portionG}
          low={0}
          high={5_000}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ portionG: v }, 'portionG')}
        />
        <NumberField
          label="Portions from a piece"
          unit=""
          value={step.portionsPerPiece}
          low={0.01}
          high={1_000}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ portionsPerPiece: v }, 'portionsPerPiece')}
        />
      </div>
      <Foreseen>
        <p>
          A piece gives {formatQuantity(served, 'mass', kitchen.units)} on plates
          {fill?.kind === 'fill'
            ? `; ${formatQuantity(fill.gramsPerPiece, 'mass', kitchen.units)} of filling went into it.`
            : '.'}
        </p>
      </Foreseen>
    </>
  );
}
