/** What a cure comes to: salt by place, how long until it is even, the way to the salt that is wanted, and what salt does not do. */
import { cureCautions } from '../../../../contract/cure-cautions.ts';
import { brineFor, type MethodCure, nitriteOfStep, rinsing } from '../../../../contract/method-cure.ts';
import type { StepOf } from '../../../../contract/steps.ts';
import { saltCarried } from '../../../../core/method/salt-carried.ts';
import { diffusivityBasis, skinBasis } from '../../../../core/properties/brine.ts';
import { brineReading } from '../../../../core/properties/brine-readings.ts';
import type { Foreseen as ForeseenCure } from '../../../../core/salt/foresee.ts';
import { evenSalt } from '../../../../core/salt/target.ts';
import type { Basis as BasisItem } from '../../../../core/sources.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { duration } from '../../../../documents/format.ts';
import { activityWords, neededWords, saltWords, spanWords } from '../../../../documents/salt-words.ts';
import { Basis } from '../../../parts/basis.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { evenWords, saltRows } from './cure-words.ts';
import { NitriteVerdict } from './curing-salt-fields.tsx';
import { Foreseen } from './foreseen.tsx';
import type { StepForm } from './step-form.ts';
import type { Curing } from './use-cure.ts';

type Cure = StepOf<'cure'>;

export interface CureForeseenProps extends Pick<StepForm<Cure>, 'kitchen' | 'step' | 'set' | 'readOnly'> {
  readonly cure: MethodCure | null;
  readonly curing: Curing;
  /** Of the meat that the method trims, or a kilogram. */
  readonly meatG: number;
}

export function CureForeseen(props: CureForeseenProps) {
  const { kitchen, step, cure, curing } = props;
  const { answered, current, fault } = curing;
  const nitrite = nitriteOfStep(step, kitchen.place);
  const refused = nitrite !== null && (nitrite.verdict === 'over' || nitrite.verdict === 'not known');
  return (
    <Foreseen>
      {refused ? <NitriteVerdict step={step} kitchen={kitchen} /> : null}
      {refused ? (
        <p>Nothing is weighed out for it here until the nitrite is within a limit that is known.</p>
      ) : (
        <WeighOut {...props} />
      )}
      {cure === null ? (
        <Verdict state="unknown" word="How far the salt gets is not known">
          <p>
            {step.h <= 0
              ? 'Say for how many hours it lies.'
              : 'Say how thick the piece is: twice as thick takes four times as long.'}
          </p>
        </Verdict>
      ) : fault !== null ? (
        <Verdict state="unknown" word="Cannot be reckoned">
          <p>{fault}</p>
        </Verdict>
      ) : answered === null || !current ? (
        <p className="quiet">Working it out…</p>
      ) : (
        <Answer {...props} foreseen={answered.foreseen} cure={answered.cure} />
      )}
      {refused ? null : <NitriteVerdict step={step} kitchen={kitchen} />}
      {cure === null ? <p className="small">{plain}</p> : null}
    </Foreseen>
  );
}

const plain =
  'Salt does not cook and does not kill: a cured piece is raw and is handled as raw until it has been cooked.';

/** Salt and water for the meat there is, and what the brine reads. */
function WeighOut({ kitchen, step, meatG }: CureForeseenProps) {
  const { saltKg, waterKg, strength } = brineFor(step);
  const mass = (kg: number) => formatQuantity(kg * meatG, 'mass', kitchen.units);
  const wet = step.by !== 'dry cure';
  const reads = wet && strength > 0 && strength <= 0.26395 ? brineReading(strength * 100) : null;
  return (
    <>
      <p>
        For {formatQuantity(meatG, 'mass', kitchen.units)} of meat:{' '}
        {wet ? `${mass(waterKg)} of water and ` : ''}
        <strong>{mass(saltKg)} of salt</strong>.
      </p>
      {reads === null ? null : (
        <p className="quiet small">
          The brine is {plainNumber(reads.saltPct, 2)} %, reads {plainNumber(reads.salometer, 1)}° on the
          salometer at 60 °F, {plainNumber(reads.gravity, 3)} specific gravity, {plainNumber(reads.baume, 1)}{' '}
          °Bé; weighs {plainNumber(reads.density / 1000, 3)} kg/l at 20 °C;{' '}
          {reads.comesOut === 'ice' ? 'freezes from' : 'salt falls out below'}{' '}
          {formatQuantity(reads.comesOutC, 'temperature', kitchen.units)}.
        </p>
      )}
    </>
  );
}

function Answer(props: CureForeseenProps & { readonly foreseen: ForeseenCure; readonly cure: MethodCure }) {
  const { kitchen, foreseen, cure, step } = props;
  const end = foreseen.result.history.at(-1);
  if (end === undefined) return null;
  const even = evenWords(foreseen);
  const carried = saltCarried(foreseen);
  const { stages } = foreseen.result;
  const left = stages.reduce((sum, s) => sum + s.undissolvedKg, 0);
  return (
    <>
      <table className="salt-table">
        <caption>At the end, after {duration(end.t / 60)}</caption>
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col" className="number">
              Salt
            </th>
            <th scope="col" className="number">
              in its water
            </th>
            <th scope="col" className="number">
              a_w
            </th>
          </tr>
        </thead>
        <tbody>
          {saltRows(end).map(([where, ...cells]) => (
            <tr key={where}>
              <th scope="row">{where}</th>
              {cells.map((cell, i) => (
                <td key={i} className="number">
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <Verdict state={even.state} word={even.word}>
        <p>{even.why}</p>
      </Verdict>
      {left > 0 ? (
        <p>
          {plainNumber(left * 1000, 1)} g of the salt to a kilogram still lie on it at the end, and are
          brushed off.
        </p>
      ) : null}
      <p>
        Later steps may count on no more than {saltWords(carried.waterPhase)} salt in the water, a_w{' '}
        {activityWords(carried.waterPhase)} by salt: the least salted place
        {foreseen.slowest === null ? '' : ', where the salt is slow'}. What safety rests on is measured.
      </p>
      <WantedWords {...props} />
      <Caution place={kitchen.place}>
        <ul className="caution-list">
          {cureCautions(stages, cure.problem, foreseen.slowest ?? undefined)
            .filter((words) => !words.startsWith('The word of'))
            .map((words) => (
              <li key={words}>{words}</li>
            ))}
        </ul>
      </Caution>
      <Basis items={basisOf(cure, step)} />
    </>
  );
}

/** The way to the salt that is wanted. */
function WantedWords({
  step,
  set,
  readOnly,
  foreseen,
  cure,
}: CureForeseenProps & { readonly foreseen: ForeseenCure; readonly cure: MethodCure }) {
  const { wanted } = foreseen;
  if (wanted === null) return null;
  const { time, coreTime, strength, atRest, salt } = wanted;
  const where = step.by === 'dry cure' ? 'in the salt' : 'in this brine';
  const hours = time.usual === null ? null : Math.round((time.usual / 3600) * 10) / 10;
  const more = step.brinePerKg ?? 1;
  /** What the step would say for the strength that ends there at rest. */
  const rested =
    atRest === null
      ? null
      : step.by === 'dry cure'
        ? atRest.saltKg * 100
        : step.by === 'brine'
          ? atRest.strength * 100
          : (evenSalt(cure.problem.piece, salt, more) / (1 + more)) * 100;
  const round = (pct: number) => Math.round(pct * 100) / 100;
  return (
    <section className="stack">
      <h4>For {saltWords(salt)} salt in the meat</h4>
      <p>
        {time.usual === null
          ? `It never gets there ${where}, however long it lies.`
          : `The mean gets there ${where} after ${spanWords(time)}${coreTime === null ? ', the middle never.' : `, the middle after ${neededWords(coreTime)}.`}`}
      </p>
      {readOnly || hours === null || hours <= 0 || hours > 2_000 ? null : (
        <Button onPress={() => set({ h: hours }, 'h')}>Give it {plainNumber(hours, 1)} h</Button>
      )}
      {strength === null || step.by !== 'brine' ? null : (
        <>
          <p>
            Or, in {plainNumber(step.h, 1)} h, a brine of {plainNumber(strength * 100, 2)} % (
            {plainNumber(brineReading(strength * 100).salometer, 0)}° on the salometer): take it out on time,
            it goes on salting.
          </p>
          {readOnly ? null : (
            <Button onPress={() => set({ saltPct: round(strength * 100) }, 'saltPct')}>
              Make it {plainNumber(strength * 100, 2)} %
            </Button>
          )}
        </>
      )}
      {rested === null ? (
        <p className="quiet">No brine of this weight ends there, however long it lies.</p>
      ) : (
        <>
          <p>
            {step.by === 'dry cure'
              ? `However long it lies: ${plainNumber(rested, 2)} % salt, not more.`
              : step.by === 'equilibrium'
                ? `However long it lies: ${plainNumber(rested, 2)} % of meat and water together.`
                : `However long it lies: a brine of ${plainNumber(rested, 2)} %, so that forgetting it does no harm to the salt.`}
          </p>
          {readOnly ? null : (
            <Button onPress={() => set({ saltPct: round(rested) }, 'saltPct')}>
              {step.by === 'dry cure' ? 'Weigh out' : 'Make it'} {plainNumber(rested, 2)} %
            </Button>
          )}
        </>
      )}
    </section>
  );
}

function basisOf(cure: MethodCure, step: Cure): readonly BasisItem[] {
  const skin = cure.problem.piece.skin !== undefined;
  return [
    {
      what: 'Salt moves through the water of the piece by diffusion and is shared out with the bath by weight; the piece keeps its water (meat swells in weak brine and shrinks in strong), the bath is stirred, ends and edges take nothing up, dry salt makes its brine at once',
      source: 'crank-1975',
      confidence: 'computed',
    },
    ...diffusivityBasis,
    ...(skin ? [skinBasis] : []),
    {
      what: 'Water activity by salt alone at 25 °C, to 0.0007',
      source: 'pitzer-mayorga-1973',
      confidence: 'computed',
    },
    ...(cure.names.includes('rinsed')
      ? [
          {
            what: `The rinse is taken as ${rinsing.waterKg} kg of fresh water to a kilogram, at ${rinsing.celsius} °C`,
            source: 'own-assumption',
            confidence: 'assumption' as const,
          },
        ]
      : []),
    {
      what: `Water in the meat ${plainNumber(step.piece?.waterPct ?? 0, 1)} %, as set here`,
      source: 'user-input',
      confidence: 'assumption',
    },
  ];
}
