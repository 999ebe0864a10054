/** A fill: the casing, what goes into it, its shape to scale. */
import { pieceScene } from '../../../../documents/pictures/piece.ts';
import { TextField } from '../../../parts/field.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import { FillForeseen } from './fill-foreseen.tsx';
import { FillProfile } from './fill-profile.tsx';
import { type Fill, fillingDensity, held, metres } from './fill-shape.ts';
import type { StepForm } from './step-form.ts';

export function FillFields(form: StepForm<Fill>) {
  const { kitchen, method, step, set, readOnly } = form;
  const { rho, known } = fillingDensity(method, step);
  const holds = held(step, rho);
  return (
    <>
      <Drawing step={step} units={kitchen.units} />
      <div className="fields">
        <TextField
          className="whole"
          label="Casing"
          value={step.casing}
          maxLength={200}
          readOnly={readOnly}
          onChange={(casing) => set({ casing }, 'casing')}
        />
        <NumberField
          label="Skin is"
          unit="mm"
          value={step.skinMm}
          low={0}
          high={50}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ skinMm: v }, 'skinMm')}
          hint="Thickness."
        />
        <NumberField
          label="Filling in a piece"
          unit="g"
          value={step.gramsPerPiece}
          low={0}
          high={100_000}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ gramsPerPiece: v }, 'gramsPerPiece')}
        />
        <NumberField
          label="Head space"
          unit="%"
          value={step.headSpacePct}
          low={0}
          high={100}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ headSpacePct: v }, 'headSpacePct')}
          hint="Left empty, for swelling."
        />
        <NumberField
          label="Swells in the heat"
          unit="%"
          value={step.swellPct ?? null}
          low={0}
          high={100}
          optional
          readOnly={readOnly}
          onChange={(v) => set({ swellPct: v ?? undefined } as Partial<Fill>, 'swellPct')}
          hint="As you have measured it; empty where nobody has."
        />
      </div>
      <FillProfile step={step} set={set} readOnly={readOnly} />
      <FillForeseen {...form} holds={holds} rho={rho} known={known} />
    </>
  );
}

function Drawing({ step, units }: { readonly step: Fill; readonly units: 'metric' | 'US' }) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const drawable = step.profile.every(
    (p, i) => p.diameterMm > 0 && (i === 0 || p.atMm > step.profile[i - 1]!.atMm),
  );
  const material = { properties: { k: 0.5, rho: 1000, cp: 3500 } };
  const thinnest = Math.min(...step.profile.map((p) => p.diameterMm));
  const skin =
    step.skinMm > 0 && step.skinMm * 2 < thinnest
      ? [{ name: 'skin', thickness: step.skinMm / 1000, material }]
      : [];
  return (
    <div ref={ref}>
      {width > 0 && drawable ? (
        <Figure
          table="none"
          scene={pieceScene(
            {
              shape: 'revolved',
              profile: metres(step.profile),
              layers: [...skin, { name: 'filling', material }],
            },
            { width: Math.min(width, 760), units, ghost: true },
          )}
        />
      ) : null}
    </div>
  );
}
