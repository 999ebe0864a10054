/** Curing salt in a cure, and what the law of the kitchen's place says of it. */
import type { CuringSalt } from '../../../../contract/cure-parts.ts';
import { nitriteOfStep } from '../../../../contract/method-cure.ts';
import type { Kitchen } from '../../../../contract/records.ts';
import type { StepOf } from '../../../../contract/steps.ts';
import { nitriteProducts } from '../../../../core/properties/brine-nitrite.ts';
import { ionOf } from '../../../../core/salt/nitrite.ts';
import { plainNumber } from '../../../../core/units.ts';
import { Basis } from '../../../parts/basis.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Tick } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import type { StepForm } from './step-form.ts';

type Cure = StepOf<'cure'>;

/** Where a curing salt that nobody has described begins: the weakest sold in Europe. */
const BEGIN: CuringSalt = { gPerKg: 10, nitritePct: 0.5, product: 'meat product' };
const of: Readonly<Record<Cure['by'], string>> = {
  'dry cure': 'g/kg of meat',
  brine: 'g/kg of brine',
  equilibrium: 'g/kg of meat and water',
};

export function CuringSaltFields({ step, set, readOnly }: Pick<StepForm<Cure>, 'step' | 'set' | 'readOnly'>) {
  const { curingSalt } = step;
  const put = (patch: Partial<CuringSalt>, about: string) =>
    set({ curingSalt: { ...BEGIN, ...curingSalt, ...patch } }, about);
  return (
    <section>
      <Tick
        label="Some of the salt is curing salt with nitrite"
        value={curingSalt !== undefined}
        readOnly={readOnly}
        onChange={(on) => set({ curingSalt: on ? BEGIN : undefined } as Partial<Cure>, 'curing salt')}
      />
      {curingSalt === undefined ? null : (
        <div className="fields">
          <NumberField
            label="Curing salt"
            unit={of[step.by]}
            value={curingSalt.gPerKg}
            low={0.01}
            high={1_000}
            readOnly={readOnly}
            onChange={(v) => v !== null && put({ gPerKg: v }, 'curing salt weight')}
            hint="Part of the salt above, not on top of it."
          />
          <NumberField
            label="Sodium nitrite in it"
            unit="%"
            value={curingSalt.nitritePct}
            low={0.01}
            high={100}
            readOnly={readOnly}
            onChange={(v) => v !== null && put({ nitritePct: v }, 'curing salt strength')}
            hint="As its label says: 0.4 to 0.6 in Europe, 6.25 for the pink salt of the US."
          />
          <Choice
            label="Becomes"
            value={curingSalt.product}
            options={nitriteProducts.map((p) => ({ value: p, label: `a ${p}` }))}
            readOnly={readOnly}
            onChange={(product) => put({ product }, 'curing salt product')}
          />
        </div>
      )}
    </section>
  );
}

export function NitriteVerdict({ step, kitchen }: { readonly step: Cure; readonly kitchen: Kitchen }) {
  const nitrite = nitriteOfStep(step, kitchen.place);
  if (nitrite === null) return null;
  const { ppm, limit, amount, verdict, method } = nitrite;
  const ion = `${plainNumber(ionOf('NaNO2', ppm), 1)} mg/kg as the ion`;
  const going = `${plainNumber(Math.ceil(ppm * 10 - 1e-6) / 10, 1)} mg/kg of sodium nitrite go in (${ion}), reckoned for ${method}.`;
  const tooMuch = step.curingSalt !== undefined && step.curingSalt.gPerKg > step.saltPct * 10 + 1e-9;
  return (
    <div className="stack">
      {limit === null || amount === null || verdict === 'not known' ? (
        <Verdict state="unknown" word="Nitrite: no limit known here">
          <p>
            {going} For a {step.curingSalt?.product}, {method}, where you are, no published limit was found.
            Not known is not allowed: ask your local authority in writing. A method with it cannot be signed.
          </p>
        </Verdict>
      ) : (
        <Verdict
          state={verdict === 'over' ? 'does not hold' : verdict === 'within' ? 'neutral' : 'not yet'}
          word={
            verdict === 'over'
              ? limit.most === 0
                ? 'Nitrite is not let in'
                : 'Too much nitrite'
              : verdict === 'within'
                ? 'Nitrite within the law'
                : 'Nitrite at the limit'
          }
        >
          <p>
            {going}{' '}
            {limit.most === 0
              ? `None may, into a ${limit.product}: ${limit.note}.`
              : `At most ${limit.most} mg/kg as ${limit.as === 'NO2' ? 'the ion' : 'sodium nitrite'} may, into a ${limit.product} in ${limit.place}; ${limit.note}.`}
            {verdict === 'over' ? ' Not to be made. A method with it cannot be signed.' : ''}
            {verdict === 'at the limit' ? ' Over by rounding: weigh in a little less.' : ''}
          </p>
        </Verdict>
      )}
      {tooMuch ? (
        <Verdict state="not yet" word="More curing salt than salt">
          <p>Curing salt counts as salt: the salt above cannot be less than it.</p>
        </Verdict>
      ) : null}
      <p className="small">
        Nitrite is a poison: a few grams of the pure salt can kill. Use ready-mixed curing salt, coloured and
        labelled, on a scale that reads a tenth of a gram, locked away from the table salt. What may be left
        in the finished product is another limit; it is measured, not reckoned.
      </p>
      {limit === null ? null : (
        <Basis
          title="The law it is held to"
          items={[
            {
              what: `${limit.product}, ${method}, ${limit.place}: ${limit.note}`,
              source: limit.source,
              confidence: limit.confidence,
            },
          ]}
        />
      )}
    </div>
  );
}
