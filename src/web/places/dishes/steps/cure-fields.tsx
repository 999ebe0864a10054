/** A cure: by dry salt, by brine or to equilibrium; how strong, how long, how cold, and the rest after. */
import { useState } from 'react';
import { cureProblemOf } from '../../../../contract/method-cure.ts';
import type { StepOf } from '../../../../contract/steps.ts';
import { type BrineScale, brineReading, saltOnScale } from '../../../../core/properties/brine-readings.ts';
import { Choice } from '../../../parts/choice.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { CureForeseen } from './cure-foreseen.tsx';
import { CurePieceFields } from './cure-piece-fields.tsx';
import { CuringSaltFields } from './curing-salt-fields.tsx';
import { SaltFrontPanel } from './salt-front-panel.tsx';
import type { StepForm } from './step-form.ts';
import { useCure } from './use-cure.ts';

type Cure = StepOf<'cure'>;
type By = Cure['by'];

const ways: readonly { value: By; label: string }[] = [
  { value: 'dry cure', label: 'Dry cure' },
  { value: 'brine', label: 'Brine' },
  { value: 'equilibrium', label: 'Equilibrium: meat and water salted as one' },
];

/** Where each way begins, when the strength of another makes no sense for it. */
function begin(by: By, { saltPct, brinePerKg }: Cure): Partial<Cure> {
  if (by === 'brine') return { by, brinePerKg: brinePerKg ?? 1, saltPct: saltPct < 3 ? 6 : saltPct };
  if (by === 'equilibrium') return { by, brinePerKg: brinePerKg ?? 1, saltPct: saltPct > 4 ? 1.8 : saltPct };
  return { by, saltPct: saltPct > 4 ? 1.8 : saltPct };
}

const scales: readonly { value: BrineScale; label: string; unit: string; high: number; low: number }[] = [
  { value: '%', label: '% of its weight', unit: '%', low: 0, high: 26 },
  { value: 'salometer', label: 'Salometer degrees', unit: '°', low: 0, high: 98.5 },
  { value: 'gravity', label: 'Specific gravity', unit: '', low: 1, high: 1.2 },
  { value: 'Baumé', label: 'Baumé degrees', unit: '°Bé', low: 0, high: 24.2 },
  { value: 'density', label: 'Density at 20 °C', unit: 'kg/m³', low: 998.2, high: 1197 },
];

function onScale(scale: BrineScale, saltPct: number): number | null {
  if (scale === '%') return saltPct;
  if (!(saltPct >= 0 && saltPct <= 26.395)) return null;
  const reads = brineReading(saltPct);
  const rounded = (x: number, digits: number) => Number(x.toFixed(digits));
  const on = {
    salometer: rounded(reads.salometer, 1),
    gravity: rounded(reads.gravity, 3),
    Baumé: rounded(reads.baume, 1),
    density: rounded(reads.density, 0),
  };
  return on[scale];
}

/** The strength of the brine, on whichever instrument the kitchen has. */
function Strength({ step, set, readOnly }: Pick<StepForm<Cure>, 'step' | 'set' | 'readOnly'>) {
  const [scale, setScale] = useState<BrineScale>('%');
  const chosen = scales.find((s) => s.value === scale) ?? scales[0]!;
  return (
    <>
      <NumberField
        key={scale}
        label="Brine strength"
        unit={chosen.unit}
        value={onScale(scale, step.saltPct)}
        low={chosen.low}
        high={chosen.high}
        readOnly={readOnly}
        onChange={(v) =>
          v !== null &&
          set({ saltPct: scale === '%' ? v : Math.round(saltOnScale(scale, v) * 1e4) / 1e4 }, 'saltPct')
        }
        hint={
          scale === '%' ? 'Salt of the whole brine’s weight.' : 'Plain salt brine; kept as % of its weight.'
        }
      />
      <Choice
        label="Read as"
        value={scale}
        options={scales.map(({ value, label }) => ({ value, label }))}
        onChange={setScale}
      />
    </>
  );
}

export function CureFields(form: StepForm<Cure>) {
  const { method, step, set, readOnly } = form;
  const trim = method.find((s) => s.kind === 'trim');
  const meatG = trim?.kind === 'trim' ? (trim.weightG * trim.yieldPct) / 100 : 1_000;
  const cure = cureProblemOf(method, step);
  const wanted = step.wantedSaltPct === undefined ? undefined : step.wantedSaltPct / 100;
  const curing = useCure(cure, wanted);
  const { answered } = curing;
  return (
    <>
      {cure === null || answered === null ? null : (
        <SaltFrontPanel cure={answered.cure} foreseen={answered.foreseen} current={curing.current} />
      )}
      <div className="fields">
        <Choice
          label="By"
          value={step.by}
          readOnly={readOnly}
          options={ways}
          onChange={(by) => set(begin(by, step), 'by')}
        />
        {step.by === 'brine' ? (
          <Strength step={step} set={set} readOnly={readOnly} />
        ) : (
          <NumberField
            label={step.by === 'equilibrium' ? 'Salt, of meat and water' : 'Salt, of the meat’s weight'}
            unit="%"
            value={step.saltPct}
            low={0}
            high={step.by === 'equilibrium' ? 20 : 100}
            readOnly={readOnly}
            onChange={(v) => v !== null && set({ saltPct: v }, 'saltPct')}
          />
        )}
        {step.by === 'dry cure' ? null : (
          <NumberField
            label={step.by === 'brine' ? 'Brine for each kg of meat' : 'Water for each kg of meat'}
            unit="kg"
            value={step.brinePerKg ?? 1}
            low={0.01}
            high={100}
            readOnly={readOnly}
            onChange={(v) => v !== null && set({ brinePerKg: v }, 'brinePerKg')}
          />
        )}
        <NumberField
          label="For"
          unit="h"
          value={step.h}
          low={0}
          high={2_000}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ h: v }, 'h')}
        />
        <NumberField
          label="At"
          unit="°C"
          value={step.mediumC}
          low={-5}
          high={30}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ mediumC: v }, 'mediumC')}
        />
        <NumberField
          label="Then lies, salt off"
          unit="h"
          value={step.rest?.h ?? null}
          low={0}
          high={2_000}
          optional
          readOnly={readOnly}
          onChange={(h) =>
            set(
              {
                rest:
                  h === null || h === 0
                    ? undefined
                    : { h, mediumC: step.rest?.mediumC ?? Math.min(step.mediumC, 5) },
              } as Partial<Cure>,
              'rest',
            )
          }
          hint="To even out; a rinse right after this step counts too."
        />
        {step.rest === undefined ? null : (
          <NumberField
            label="Lies at"
            unit="°C"
            value={step.rest.mediumC}
            low={-5}
            high={30}
            readOnly={readOnly}
            onChange={(mediumC) =>
              mediumC !== null &&
              step.rest !== undefined &&
              set({ rest: { h: step.rest.h, mediumC } }, 'rest at')
            }
          />
        )}
        <NumberField
          label="Salt wanted in the meat"
          unit="%"
          value={step.wantedSaltPct ?? null}
          low={0.01}
          high={26}
          optional
          readOnly={readOnly}
          onChange={(v) => set({ wantedSaltPct: v ?? undefined } as Partial<Cure>, 'wanted salt')}
          hint="Of the cured meat; gives the hours and the brine."
        />
      </div>
      <CurePieceFields step={step} set={set} readOnly={readOnly} />
      <CuringSaltFields step={step} set={set} readOnly={readOnly} />
      <CureForeseen {...form} cure={cure} curing={curing} meatG={meatG} />
    </>
  );
}
