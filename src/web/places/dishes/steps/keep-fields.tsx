/** Keeping: how cold, how packed, what was measured of the food; how long that lets it be kept, and what may grow meanwhile. */
import { useMemo } from 'react';
import type { StepOf } from '../../../../contract/steps.ts';
import { saltWaterActivity } from '../../../../core/salt/water-activity.ts';
import { Choice } from '../../../parts/choice.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { temperatureWords } from '../../../pictures/words.ts';
import { GrowthPanel } from './growth-panel.tsx';
import { LifePanel } from './life-panel.tsx';
import { mixSums } from './mix-sums.ts';
import { SaltBeforeWords } from './salt-before.tsx';
import type { StepForm } from './step-form.ts';
import { StepRulesEditor } from './step-rules-editor.tsx';
import { useSaltBefore, wettest } from './use-salt-before.ts';
import { WhoGrows } from './who-grows.tsx';

type Keep = StepOf<'keep'>;

/** Salt in the water of the mix, where every line's is known [%]. */
function mixSalt(form: StepForm<Keep>): number | null {
  const mix = form.method.find((s) => s.kind === 'mix');
  if (mix?.kind !== 'mix') return null;
  const { mixture, unknown, saltUnknown } = mixSums(mix.lines);
  const salt = mixture?.waterPhaseSalt ?? null;
  return salt === null || unknown.length > 0 || saltUnknown.length > 0 ? null : Math.floor(1e4 * salt) / 100;
}

export function KeepFields(form: StepForm<Keep>) {
  const { step, set, readOnly } = form;
  const salt = mixSalt(form);
  const measured = (key: 'pH' | 'waterActivity' | 'waterPhaseSaltPct') => (v: number | null) =>
    set((v === null ? { [key]: undefined } : { [key]: v }) as Partial<Keep>, key);
  const cured = useSaltBefore(form.method, step.id);
  const saltPct = step.waterPhaseSaltPct ?? cured?.pct ?? null;
  const waterActivity =
    step.waterActivity ??
    (step.waterPhaseSaltPct === undefined
      ? (cured?.waterActivity ?? null)
      : Math.min(wettest, saltWaterActivity(step.waterPhaseSaltPct / 100)));
  const log = useMemo(
    () => [
      { min: 0, C: step.maxC },
      { min: Math.max(1, step.days) * 1440, C: step.maxC },
    ],
    [step.maxC, step.days],
  );
  return (
    <>
      <div className="fields">
        <NumberField
          label="Never warmer than"
          unit="°C"
          value={step.maxC}
          low={-30}
          high={20}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ maxC: v }, 'maxC')}
        />
        <NumberField
          label="Keeps"
          unit="days"
          value={step.days}
          low={0}
          high={365}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ days: v }, 'days')}
        />
        <Choice
          label="Packed"
          value={step.packed}
          readOnly={readOnly}
          options={[
            { value: 'open or covered', label: 'Open or covered, in air' },
            { value: 'vacuum-packed', label: 'Vacuum-packed' },
            { value: 'gas-packed', label: 'Packed under gas' },
          ]}
          onChange={(packed) => set({ packed }, 'packed')}
        />
        <NumberField
          label="pH, as measured"
          unit=""
          optional
          value={step.pH ?? null}
          low={1}
          high={12}
          readOnly={readOnly}
          onChange={measured('pH')}
          hint="Of the part that is least sour. Empty: not known, the worst is counted."
        />
        <NumberField
          label="Water activity, as measured"
          unit=""
          optional
          value={step.waterActivity ?? null}
          low={0.2}
          high={1}
          readOnly={readOnly}
          onChange={measured('waterActivity')}
          hint="Of the wettest part. Empty: taken from the salt, or the worst."
        />
        <NumberField
          label="Salt in its water"
          unit="%"
          optional
          value={step.waterPhaseSaltPct ?? null}
          low={0}
          high={26}
          readOnly={readOnly}
          onChange={measured('waterPhaseSaltPct')}
          hint={
            salt === null
              ? 'Of the least salty part, measured or from a cure that has come to rest.'
              : `The mix alone comes to ${salt} %; what surrounds it may have less. Of the least salty part.`
          }
        />
      </div>
      <SaltBeforeWords
        salt={cured}
        overruled={step.waterPhaseSaltPct !== undefined || step.waterActivity !== undefined}
        overruleBy="To overrule it, put in what you measured, or 0 for none."
      />
      <LifePanel {...form} />
      {step.maxC <= -18 ? null : (
        <GrowthPanel
          heading={`What may grow in ${Math.max(1, step.days)} days at ${temperatureWords(step.maxC, form.kitchen.units)}`}
          organisms={['listeria-monocytogenes']}
          log={log}
          pH={step.pH ?? null}
          waterActivity={waterActivity}
          level={2}
        >
          <p className="small">
            Two logs is from 1 to 100 of them a gram, the European criterion’s limit for food that is ready to
            eat.
          </p>
        </GrowthPanel>
      )}
      <WhoGrows
        C={step.maxC}
        pH={step.pH ?? null}
        waterActivity={waterActivity}
        waterPhaseSalt={saltPct === null ? null : saltPct / 100}
      />
      <StepRulesEditor {...(form as unknown as StepForm<Keep | StepOf<'finish'>>)} />
    </>
  );
}
