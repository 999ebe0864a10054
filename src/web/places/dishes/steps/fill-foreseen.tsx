/** What a fill comes to: what it holds, how many pieces, how it swells, what its shape costs in the heat. */
import { piecesFrom } from '../../../../core/filling/casing.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { Basis } from '../../../parts/basis.tsx';
import { Button } from '../../../parts/button.tsx';
import { say } from '../../../parts/toast.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import {
  ASSUMED_DENSITY,
  cookAfter,
  cooksShape,
  cookWithShape,
  type Fill,
  type Held,
  MIXED_AT_C,
  metres,
  mixBefore,
  shapeToCook,
} from './fill-shape.ts';
import { overfullWords, thickestOf, unevenWords } from './fill-words.ts';
import { Foreseen } from './foreseen.tsx';
import type { StepForm } from './step-form.ts';
import { useShapeCost } from './use-shape-cost.ts';

type Units = 'metric' | 'US';

export interface FillForeseenProps extends StepForm<Fill> {
  readonly holds: Held;
  readonly rho: number;
  readonly known: boolean;
}

export function FillForeseen(props: FillForeseenProps) {
  const { kitchen, step, set, readOnly, holds, rho, known } = props;
  const { units } = kitchen;
  return (
    <Foreseen>
      {holds.ok ? (
        <>
          <p>
            Holds <strong>{formatQuantity(holds.capacity.mass * 1000, 'mass', units)}</strong> of filling at{' '}
            {plainNumber(step.headSpacePct, 1)} % head space.
          </p>
          <Compared step={step} holds={holds} units={units} />
          {readOnly || Math.round(holds.capacity.mass * 1000) === step.gramsPerPiece ? null : (
            <Button
              onPress={() => set({ gramsPerPiece: Math.round(holds.capacity.mass * 1000) }, 'gramsPerPiece')}
            >
              Fill {formatQuantity(Math.round(holds.capacity.mass * 1000), 'mass', units)}
            </Button>
          )}
          <Pieces {...props} />
          <InTheHeat {...props} holds={holds} />
        </>
      ) : (
        <Verdict state="unknown" word="The shape does not add up">
          {holds.problem}
        </Verdict>
      )}
      <Basis
        items={[
          {
            what: 'Volume of a round body, straight between the points, less its skin; too full, it widens evenly and keeps its length',
            source: 'own-computation',
            confidence: 'computed',
          },
          known
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
  );
}

function Compared({
  step,
  holds,
  units,
}: {
  readonly step: Fill;
  readonly holds: Extract<Held, { ok: true }>;
  readonly units: Units;
}) {
  const full = holds.capacity.mass * 1000;
  const over = step.gramsPerPiece - full;
  const by = formatQuantity(Math.abs(over), 'mass', units);
  const { cold, hot } = holds;
  if (cold.room < 0)
    return (
      <Verdict state="not yet" word={`${by} too much for this shape`}>
        <p>It bulges or bursts: more than the casing holds without any head space.</p>
      </Verdict>
    );
  if (hot.room < 0)
    return (
      <Verdict state="not yet" word="No room to swell">
        <p>
          It swells {plainNumber(step.swellPct ?? 0, 1)} % and has {plainNumber(cold.room * 100, 1)} % of
          room: it comes out {plainNumber(hot.bulge * 1000, 1)} mm thicker, or bursts.
        </p>
      </Verdict>
    );
  if (Math.abs(over) <= 0.03 * full) return <Verdict state="holds" word="What is written fits" />;
  return over > 0 ? (
    <Verdict state="not yet" word={`${by} into the head space`}>
      <p>
        {step.swellPct === undefined
          ? 'It fits cold; how much it swells has not been said.'
          : 'It fits, with less room than was meant.'}
      </p>
    </Verdict>
  ) : (
    <Verdict state="neutral" word={`${by} less than it holds`}>
      <p>The piece is slimmer than drawn, or has air in it.</p>
    </Verdict>
  );
}

/** How far the batch goes. */
function Pieces({ kitchen, method, step }: FillForeseenProps) {
  const mix = mixBefore(method, step);
  const batchG = mix?.lines.reduce((sum, line) => sum + line.g, 0) ?? 0;
  if (mix === undefined || batchG <= 0 || step.gramsPerPiece <= 0) return null;
  const { pieces, left, missing } = piecesFrom(batchG / 1000, step.gramsPerPiece / 1000);
  const mass = (kg: number) => formatQuantity(kg * 1000, 'mass', kitchen.units);
  return (
    <p>
      “{mix.name}” makes {mass(batchG / 1000)}:{' '}
      <strong>{pieces === 1 ? '1 piece' : `${pieces} pieces`}</strong>
      {left * 1000 < 0.5
        ? ', nothing left over.'
        : `, ${mass(left)} left over; ${mass(missing)} more would fill another.`}
    </p>
  );
}

/** What the shape costs in the heat, and the shape handed on to the cook step. */
function InTheHeat(props: FillForeseenProps & { readonly holds: Extract<Held, { ok: true }> }) {
  const { kitchen, method, step, holds, readOnly, putStep } = props;
  const { units } = kitchen;
  const before = cookAfter(method, step);
  // Swollen, which is the fattest it gets: nothing is reckoned slimmer than it becomes.
  const profile = shapeToCook(step, holds.hot);
  const cook = before === undefined ? undefined : cookWithShape(before, step, profile);
  const costing = useShapeCost(method, cook);
  const same = before !== undefined && cooksShape(before, step, profile);
  const hand = () => {
    if (before === undefined || cook === undefined) return;
    putStep(cook, `${cook.id} shape from fill`);
    say(`“${cook.name}” is now reckoned for this shape.`, () => putStep(before, `${cook.id} shape back`));
  };
  return (
    <section className="stack" aria-live="polite">
      <h4>In the heat</h4>
      {costing.state === 'not known' ? (
        <p className="quiet">{costing.why}</p>
      ) : costing.state === 'working' ? (
        <p className="quiet">Working out what the shape costs…</p>
      ) : (
        <Costs
          costing={costing.costed}
          step={step}
          holds={holds}
          units={units}
          cookName={before?.name ?? ''}
        />
      )}
      {before === undefined ? null : same ? (
        <p className="quiet">“{before.name}” is reckoned for this shape.</p>
      ) : (
        <>
          <Verdict state="not yet" word={`“${before.name}” is reckoned for another shape`}>
            <p>Its times hold for the piece that stands there, not for this one.</p>
          </Verdict>
          {readOnly ? null : <Button onPress={hand}>Give “{before.name}” this shape</Button>}
        </>
      )}
    </section>
  );
}

function Costs({
  costing,
  step,
  holds,
  units,
  cookName,
}: {
  readonly costing: Extract<ReturnType<typeof useShapeCost>, { state: 'known' }>['costed'];
  readonly step: Fill;
  readonly holds: Extract<Held, { ok: true }>;
  readonly units: Units;
  readonly cookName: string;
}) {
  const { stage, cost, advice, verdict, now } = costing;
  const from = (step.profile[0]?.atMm ?? 0) / 1000;
  const thickest = thickestOf(holds.hot.profile.map((p) => ({ at: p.at - from, diameter: p.diameter })));
  const drawn = metres(step.profile);
  const over = overfullWords(holds.hot.bulge, cost.perMetre, stage, units);
  const needs = advice.heating.status === 'found' ? Math.ceil(advice.heating.duration / 60) : null;
  return (
    <>
      {drawn.length < 2
        ? null
        : unevenWords(cost, thickest, stage, units).map((words) => <p key={words}>{words}</p>)}
      {over === null ? null : (
        <p>
          {step.swellPct === undefined || step.swellPct === 0 ? '' : 'Once it has swollen: '}
          {over}
        </p>
      )}
      {verdict.word === 'holds' ? (
        <p className="quiet">
          By the target of “{cookName}” this shape needs {needs === null ? 'an unknown time' : `${needs} min`}{' '}
          of “{stage}”; the step gives it {Math.floor(now / 60)}. A quick reckoning: the cook step’s own panel
          and its rules decide.
        </p>
      ) : (
        <Verdict
          state={verdict.word === 'short' ? 'does not hold' : 'unknown'}
          word={verdict.word === 'short' ? 'Too short for this shape' : 'Not known for this shape'}
        >
          <p>
            {verdict.word === 'short'
              ? `“${stage}” gives it ${Math.floor(now / 60)} min${needs === null ? '' : `; this shape needs ${needs} min`}.`
              : verdict.doubts.map((d) => d.what).join('; ')}
          </p>
        </Verdict>
      )}
    </>
  );
}
