import type { StepOf } from '../../../../contract/steps.ts';
import { capacityOf } from '../../../../core/filling/capacity.ts';
import { density, normalised } from '../../../../core/properties/food-components.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { pieceScene } from '../../../../documents/pictures/piece.ts';
import { Basis } from '../../../parts/basis.tsx';
import { Button } from '../../../parts/button.tsx';
import { TextField } from '../../../parts/field.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import { Foreseen } from './foreseen.tsx';
import { mixSums } from './mix-sums.ts';
import type { StepForm } from './step-form.ts';

type Fill = StepOf<'fill'>;

/** Of a filling nobody has described: between lean meat and a creamy forcemeat, assumed and said. */
const ASSUMED_DENSITY = 1_040;
const MIXED_AT_C = 5;

function fillingDensity(form: StepForm<Fill>): { rho: number; basis: 'composition' | 'assumed' } {
  const at = form.method.indexOf(form.step);
  const mix = form.method.slice(0, at === -1 ? undefined : at).findLast((s) => s.kind === 'mix');
  if (mix?.kind !== 'mix') return { rho: ASSUMED_DENSITY, basis: 'assumed' };
  const sums = mixSums(mix.lines);
  if (sums.unknown.length > 0 || sums.mixture?.composition == null)
    return { rho: ASSUMED_DENSITY, basis: 'assumed' };
  return { rho: density(normalised(sums.mixture.composition), MIXED_AT_C), basis: 'composition' };
}

const metres = (profile: Fill['profile']) =>
  profile.map((p) => ({ at: p.atMm / 1000, diameter: p.diameterMm / 1000 }));

function held(form: StepForm<Fill>, rho: number): { grams: number } | { problem: string } {
  const { profile, skinMm, headSpacePct } = form.step;
  try {
    const { mass } = capacityOf({
      profile: metres(profile),
      skin: skinMm / 1000,
      density: rho,
      headSpace: headSpacePct / 100,
    });
    return { grams: mass * 1000 };
  } catch (error) {
    if (error instanceof RangeError || error instanceof TypeError) return { problem: error.message };
    throw error;
  }
}

export function FillFields(form: StepForm<Fill>) {
  const { kitchen, step, set, readOnly } = form;
  const { rho, basis } = fillingDensity(form);
  const capacity = held(form, rho);
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
      </div>
      <ProfileTable step={step} set={set} readOnly={readOnly} />
      <Foreseen>
        {'problem' in capacity ? (
          <Verdict state="unknown" word="The shape does not add up">
            {capacity.problem}
          </Verdict>
        ) : (
          <>
            <p>
              Holds <strong>{formatQuantity(capacity.grams, 'mass', kitchen.units)}</strong> of filling at{' '}
              {plainNumber(step.headSpacePct, 1)} % head space.
            </p>
            <Compared set={step.gramsPerPiece} holds={capacity.grams} units={kitchen.units} />
            {readOnly ? null : (
              <Button onPress={() => set({ gramsPerPiece: Math.round(capacity.grams) }, 'gramsPerPiece')}>
                Fill {formatQuantity(Math.round(capacity.grams), 'mass', kitchen.units)}
              </Button>
            )}
          </>
        )}
        <Basis
          items={[
            {
              what: 'Volume of a round body, straight between the points, less its skin',
              source: 'own-computation',
              confidence: 'computed',
            },
            basis === 'composition'
              ? {
                  what: `Density ${Math.round(rho)} kg/m³ at ${MIXED_AT_C} °C from the composition of the mix, without air`,
                  source: 'choi-okos-1986',
                  confidence: 'computed',
                }
              : {
                  what: `Density ${ASSUMED_DENSITY} kg/m³, because the mix before this step is not fully described`,
                  source: 'own-assumption',
                  confidence: 'assumption',
                },
          ]}
        />
      </Foreseen>
    </>
  );
}

function Compared({
  set,
  holds,
  units,
}: {
  readonly set: number;
  readonly holds: number;
  readonly units: 'metric' | 'US';
}) {
  const over = set - holds;
  if (Math.abs(over) <= 0.03 * holds) return <Verdict state="holds" word="What is written fits" />;
  const by = formatQuantity(Math.abs(over), 'mass', units);
  return over > 0 ? (
    <Verdict state="not yet" word={`${by} too much for this shape`}>
      It would bulge or burst; a fatter piece needs longer than drawn.
    </Verdict>
  ) : (
    <Verdict state="neutral" word={`${by} less than it holds`}>
      The piece would be slimmer than drawn.
    </Verdict>
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
            { width: Math.min(width, 760), units },
          )}
        />
      ) : null}
    </div>
  );
}

function ProfileTable({ step, set, readOnly }: Pick<StepForm<Fill>, 'step' | 'set' | 'readOnly'>) {
  const put = (profile: Fill['profile'], about: string) => set({ profile }, about);
  const change = (i: number, patch: Partial<Fill['profile'][number]>) =>
    put(
      step.profile.map((p, j) => (j === i ? { ...p, ...patch } : p)),
      `point ${i} ${Object.keys(patch)[0]}`,
    );
  const add = () => {
    const last = step.profile.at(-1)!;
    const before = step.profile.at(-2) ?? last;
    put(
      [
        ...step.profile,
        { atMm: last.atMm + Math.max(10, last.atMm - before.atMm), diameterMm: last.diameterMm },
      ],
      'add point',
    );
  };
  return (
    <section>
      <h3>Shape of a filled piece</h3>
      <div className="scroll-x">
        <table className="profile-table">
          <thead>
            <tr>
              <th scope="col">From the end</th>
              <th scope="col">Across</th>
              <th scope="col">
                <span className="unseen">Remove</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {step.profile.map((p, i) => (
              <tr key={i}>
                <td>
                  <NumberField
                    label={<span className="unseen">Point {i + 1}, from the end</span>}
                    unit="mm"
                    value={p.atMm}
                    low={0}
                    high={2_000}
                    readOnly={readOnly}
                    onChange={(v) => v !== null && change(i, { atMm: v })}
                  />
                </td>
                <td>
                  <NumberField
                    label={<span className="unseen">Point {i + 1}, across</span>}
                    unit="mm"
                    value={p.diameterMm}
                    low={0}
                    high={2_000}
                    readOnly={readOnly}
                    onChange={(v) => v !== null && change(i, { diameterMm: v })}
                  />
                </td>
                <td>
                  {readOnly || step.profile.length <= 2 ? null : (
                    <Button
                      kind="quiet"
                      label={`Remove point ${i + 1}`}
                      onPress={() =>
                        put(
                          step.profile.filter((_, j) => j !== i),
                          'remove point',
                        )
                      }
                    >
                      Remove
                    </Button>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {readOnly || step.profile.length >= 60 ? null : <Button onPress={add}>Add a point</Button>}
    </section>
  );
}
