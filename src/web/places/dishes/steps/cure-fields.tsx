import { useState } from 'react';
import type { StepOf } from '../../../../contract/steps.ts';
import { cureEquilibrium } from '../../../../core/salt/equilibrium.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { Basis } from '../../../parts/basis.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Foreseen } from './foreseen.tsx';
import type { StepForm } from './step-form.ts';

/** Chicken breast 74 %, pork arm picnic 68 %, chicken skin 54 % (USDA SR28): a middle to begin with, said as such. */
const ASSUMED_WATER_PCT = 70;

export function CureFields({ kitchen, method, step, set, readOnly }: StepForm<StepOf<'cure'>>) {
  const [waterPct, setWater] = useState(ASSUMED_WATER_PCT);
  const trim = method.find((s) => s.kind === 'trim');
  const meatG = trim?.kind === 'trim' ? (trim.weightG * trim.yieldPct) / 100 : 1_000;
  const brinePerKg = step.by === 'brine' ? (step.brinePerKg ?? 1) : null;
  const medium =
    brinePerKg === null
      ? { medium: step.saltPct / 100, mediumSalt: 1 }
      : { medium: brinePerKg, mediumSalt: step.saltPct / 100 };
  const rest = waterPct > 0 ? cureEquilibrium({ meat: 1, water: waterPct / 100, ...medium }) : null;
  const saltG = (medium.medium * medium.mediumSalt * meatG) / 1;
  return (
    <>
      <div className="fields">
        <Choice
          label="By"
          value={step.by}
          readOnly={readOnly}
          options={[
            { value: 'dry cure', label: 'Dry cure' },
            { value: 'brine', label: 'Brine' },
          ]}
          onChange={(by) =>
            set(
              by === 'brine'
                ? { by, brinePerKg: step.brinePerKg ?? 1, saltPct: step.saltPct < 3 ? 6 : step.saltPct }
                : { by, saltPct: step.saltPct > 4 ? 1.8 : step.saltPct },
              'by',
            )
          }
        />
        <NumberField
          label={step.by === 'brine' ? 'Brine strength' : 'Salt, of the meat’s weight'}
          unit="%"
          value={step.saltPct}
          low={0}
          high={step.by === 'brine' ? 26 : 100}
          readOnly={readOnly}
          onChange={(v) => v !== null && set({ saltPct: v }, 'saltPct')}
          hint={step.by === 'brine' ? 'Salt of the whole brine’s weight.' : undefined}
        />
        {step.by === 'brine' ? (
          <NumberField
            label="Brine for each kg of meat"
            unit="kg"
            value={step.brinePerKg ?? null}
            low={0.01}
            high={100}
            readOnly={readOnly}
            onChange={(v) => v !== null && set({ brinePerKg: v }, 'brinePerKg')}
          />
        ) : null}
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
      </div>
      <Foreseen>
        <NumberField
          label="Water in the meat (assumed, not kept)"
          unit="%"
          value={waterPct}
          low={1}
          high={95}
          onChange={(v) => v !== null && setWater(v)}
          hint="Chicken breast 74, pork arm 68, chicken skin 54 (USDA SR28)."
        />
        {rest === null ? null : (
          <table>
            <caption>When the salt has come to rest, if it is given time enough</caption>
            <tbody>
              <tr>
                <th scope="row">Salt to weigh out</th>
                <td className="number">
                  {formatQuantity(saltG, 'mass', kitchen.units)} for{' '}
                  {formatQuantity(meatG, 'mass', kitchen.units)} of meat
                </td>
              </tr>
              <tr>
                <th scope="row">Salt in the cured meat</th>
                <td className="number">{plainNumber(rest.saltOfSalted * 100, 2)} %</td>
              </tr>
              <tr>
                <th scope="row">Salt in its water</th>
                <td className="number">{plainNumber(rest.waterPhaseSalt * 100, 2)} %</td>
              </tr>
            </tbody>
          </table>
        )}
        <p className="quiet">
          Whether {formatQuantity(step.h * 60, 'time', kitchen.units)} are time enough for the middle of the
          piece is not reckoned here yet. Neither is nitrite: this is plain salt.
        </p>
        <Basis
          items={[
            {
              what: 'Salt shared out by weight among all the water there is; no uptake or loss of water, no salt held back by protein',
              source: 'own-computation',
              confidence: 'computed',
            },
          ]}
        />
      </Foreseen>
    </>
  );
}
