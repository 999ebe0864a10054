/** How large a piece and how many at once cool as the rules ask: asked of the chill step when somebody wants to know. */
import { useMemo, useState } from 'react';
import type { ChillAnswer } from '../../../../contract/chill.ts';
import type { Method } from '../../../../contract/steps.ts';
import { useUnits } from '../../../kitchen.tsx';
import { Basis } from '../../../parts/basis.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { showQuantity } from '../../../parts/quantity.ts';
import { Verdict } from '../../../parts/verdict.tsx';
import {
  type ChillAsked,
  chillingStage,
  chillQuestion,
  clockStartsAt,
  coolingAmong,
  isEndless,
  type MachineKind,
  usualMachine,
} from './chill-question.ts';
import type { Chill } from './programme.ts';
import { Answered, StudyBar } from './study-parts.tsx';
import { useStudy } from './use-study.ts';

export interface ChillSizeProps {
  readonly method: Method;
  readonly step: Chill;
  readonly rules: readonly string[];
  /** The warmest point when each of this step's stages begins, by the prediction [°C]. */
  readonly warmestC: readonly number[];
  readonly shape: string;
}

const machines: readonly { value: MachineKind; label: string }[] = [
  { value: 'none', label: 'One piece alone' },
  { value: 'ice', label: 'Ice and water' },
  { value: 'rated', label: 'Chiller, rated in kg' },
  { value: 'power', label: 'Chiller, known in kW' },
];

function usualAsked(step: Chill, rules: readonly string[], warmestC: readonly number[]): ChillAsked {
  const stage = chillingStage(step.stages);
  const top = clockStartsAt(rules);
  return {
    stage,
    startC: Math.ceil(Math.max(warmestC[stage] ?? 75, Number.isFinite(top) ? top : 0)),
    kind: usualMachine(step.stages[stage]),
    powerKW: 1,
    ratedKg: 20,
    ratedMin: 90,
    iceKg: 5,
    waterKg: 10,
    waterC: 10,
    pieceG: 500,
    pieces: null,
  };
}

export function ChillSize({ method, step, rules, warmestC, shape }: ChillSizeProps) {
  const [open, setOpen] = useState(false);
  const [own, setOwn] = useState<Partial<ChillAsked>>({});
  const asked = { ...usualAsked(step, rules, warmestC), ...own };
  const askedKey = JSON.stringify(asked);
  const rulesKey = rules.join(' ');
  const input = useMemo(
    () =>
      open
        ? chillQuestion(
            method.map((s) => (s.id === step.id ? step : s)),
            step.id,
            rulesKey.split(' ').filter(Boolean),
            JSON.parse(askedKey) as ChillAsked,
          )
        : null,
    [open, method, step, rulesKey, askedKey],
  );
  const study = useStudy('chill', input);
  // What is asked stays as it is shown: a finer prediction that comes in meanwhile does not stop the work.
  const pinned = {
    ...study,
    begin: () => {
      setOwn(asked);
      study.begin();
    },
  };
  const lacks = coolingAmong(rules).length === 0;
  return (
    <section className="stack" aria-labelledby="chill-size-heading">
      <h3 id="chill-size-heading">How large, how many</h3>
      <p className="study-words">
        A thicker piece and a fuller chiller cool slower. How far can you go and still meet the rule?
      </p>
      <Button onPress={() => setOpen(!open)} expanded={open} controls="chill-size-fields">
        {open ? 'Put this away' : 'Find the largest and the most'}
      </Button>
      <div id="chill-size-fields" className="stack" hidden={!open}>
        {open && lacks ? (
          <p>Name a rule of cooling above first: without one there is nothing to meet.</p>
        ) : null}
        {open && !lacks ? (
          <>
            <AskedFields
              asked={asked}
              step={step}
              shape={shape}
              onChange={(over) => setOwn((before) => ({ ...before, ...over }))}
            />
            <StudyBar study={pinned} ready={input !== null}>
              Work it out
            </StudyBar>
          </>
        ) : null}
        {open && study.answer !== null ? (
          <Answered current={study.current} label="How large and how many">
            <SizeWords answer={study.answer} />
          </Answered>
        ) : null}
      </div>
    </section>
  );
}

interface AskedFieldsProps {
  readonly asked: ChillAsked;
  readonly step: Chill;
  readonly shape: string;
  readonly onChange: (over: Partial<ChillAsked>) => void;
}

function AskedFields({ asked, step, shape, onChange }: AskedFieldsProps) {
  const number = (
    key: 'startC' | 'powerKW' | 'ratedKg' | 'ratedMin' | 'iceKg' | 'waterKg' | 'waterC' | 'pieceG',
    label: string,
    unit: string,
    low: number,
    high: number,
    hint?: string,
  ) => (
    <NumberField
      label={label}
      unit={unit}
      value={asked[key]}
      low={low}
      high={high}
      hint={hint}
      onChange={(v) => v !== null && onChange({ [key]: v })}
    />
  );
  return (
    <div className="fields">
      {step.stages.length < 2 ? null : (
        <Choice
          label="Goes into"
          value={String(asked.stage)}
          options={step.stages.map((s, i) => ({ value: String(i), label: s.name }))}
          onChange={(v) => onChange({ stage: Number(v) })}
        />
      )}
      {number('startC', 'As warm as', '°C', 0, 150, 'Its warmest place when it goes in; counted throughout.')}
      <Choice
        label="How it is chilled"
        value={asked.kind}
        options={machines}
        onChange={(kind) => onChange({ kind })}
      />
      {asked.kind === 'power'
        ? number('powerKW', 'Power', 'kW', 0.01, 1_000, 'Heat it takes away, not what it draws.')
        : null}
      {asked.kind === 'rated' ? (
        <>
          {number('ratedKg', 'Rated for', 'kg', 0.1, 10_000, 'From 70 to 3 °C, as it says on the plate.')}
          {number('ratedMin', 'in', 'min', 5, 1_440)}
        </>
      ) : null}
      {asked.kind === 'ice' ? (
        <>
          {number('iceKg', 'Ice', 'kg', 0, 10_000)}
          {number('waterKg', 'Water', 'kg', 0, 10_000)}
          {number('waterC', 'Water from the tap', '°C', 0, 40)}
        </>
      ) : null}
      {asked.kind !== 'none' && isEndless(shape)
        ? number('pieceG', 'One piece weighs', 'g', 1, 1_000_000)
        : null}
      {asked.kind === 'none' ? null : (
        <NumberField
          label="Would so many do?"
          unit="pieces"
          whole
          optional
          value={asked.pieces}
          low={1}
          high={4_096}
          onChange={(pieces) => onChange({ pieces })}
        />
      )}
    </div>
  );
}

/** How long, as a kitchen says it; rounded up, so that no limit is met by rounding. */
function lasting(min: number | null): string {
  if (min === null) return 'not within two days';
  if (min < 120) return `${Math.ceil(min)} min`;
  return `${Math.floor(Math.ceil(min) / 60)} h ${Math.ceil(min) % 60} min`;
}

const stateOf = (passes: boolean | null) =>
  passes === true ? 'holds' : passes === false ? 'does not hold' : 'unknown';

/** The largest of this shape: the number that matters where no machine was asked about. */
function SizeLine({ largest, alone }: { readonly largest: ChillAnswer['largest']; readonly alone: boolean }) {
  const number =
    largest === null
      ? 'No size'
      : `${(Math.floor(largest.scale * 100) / 100).toFixed(2)} × this size${largest.atLimit ? ' and more' : ''}`;
  const words =
    largest === null
      ? 'However small, this shape does not cool as the rule asks in there.'
      : largest.scale < 1
        ? 'As drawn it is too large: every length has to be that much smaller.'
        : 'The largest of this shape that still meets the rule, alone, where nothing warms.';
  return alone ? (
    <div>
      <p className="study-number">{number}</p>
      <p className="study-words">{words}</p>
    </div>
  ) : (
    <p className="study-words">
      <strong>{number}.</strong> {words}
    </p>
  );
}

function SizeWords({ answer }: { readonly answer: ChillAnswer }) {
  const units = useUnits();
  const { asDrawn, largest, most, asked, iceKgPerPiece, iceKgForWater, powerKW } = answer;
  const mm = (x: number | undefined) =>
    x === undefined ? null : showQuantity(Math.floor(x * 10) / 10, 'mm', units);
  const sizes =
    largest === null
      ? []
      : [
          ['Across', mm(largest.sizes.diameterMm)],
          ['Thick', mm(largest.sizes.thicknessMm)],
          ['Wide', mm(largest.sizes.widthMm)],
          ['High', mm(largest.sizes.heightMm)],
          ['Long', mm(largest.sizes.lengthMm)],
        ].filter((pair): pair is [string, string] => pair[1] !== null);
  const facts: (readonly [string, string])[] = [
    ['As drawn, alone, from going in', lasting(asDrawn.min)],
    ...(asDrawn.heatKJ === null ? [] : [['It gives off', `${Math.round(asDrawn.heatKJ)} kJ`] as const]),
    ...(most === undefined
      ? []
      : [
          [most.pieces === 0 ? 'One alone takes' : 'They take', lasting(most.load.min)] as const,
          [
            iceKgPerPiece === undefined ? 'Warmest the air gets' : 'Warmest the bath gets',
            showQuantity(Math.ceil(most.load.mediumPeakC * 10) / 10, '°C', units),
          ] as const,
        ]),
    ...(iceKgPerPiece === undefined
      ? []
      : [['Ice that each melts', `${(Math.ceil(iceKgPerPiece * 100) / 100).toFixed(2)} kg`] as const]),
    ...(iceKgForWater === undefined
      ? []
      : [
          [
            'Ice that the water melts first',
            `${(Math.ceil(iceKgForWater * 10) / 10).toFixed(1)} kg`,
          ] as const,
        ]),
    ...(powerKW === undefined ? [] : [['Counted with', `${powerKW.toFixed(2)} kW`] as const]),
  ];
  return (
    <>
      {most === undefined ? null : (
        <div>
          <p className="study-number">
            {most.pieces === 0 ? 'Not even one' : `${most.pieces}${most.atLimit ? ' and more' : ''} at once`}
          </p>
          <p className="study-words">
            {most.pieces === 0
              ? 'Not one piece cools as the rule asks this way.'
              : 'At the very limit, with nothing in hand, and only as far as heat counts: whether so many have room is yours to see.'}
          </p>
        </div>
      )}
      {asked === undefined ? null : (
        <Verdict
          state={stateOf(asked.passes)}
          word={`${asked.pieces} at once: ${asked.passes === true ? 'would do' : asked.passes === false ? 'too many' : 'cannot be told'}, ${lasting(asked.min)}`}
        />
      )}
      <SizeLine largest={largest} alone={most === undefined} />
      <dl className="study-facts">
        {sizes.map(([what, size]) => (
          <div key={what}>
            <dt>{what}, at most</dt>
            <dd>{size}</dd>
          </div>
        ))}
        {facts.map(([what, value]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {asDrawn.verdicts.map((v) => (
        <Verdict key={v.rule} state={stateOf(v.passes)} word={`As drawn, alone: ${v.verdict}`}>
          {v.title} ({v.place}, {v.type}). {v.why}
        </Verdict>
      ))}
      <ul className="stack small quiet">
        {answer.cautions.map((c) => (
          <li key={c}>{c}</li>
        ))}
      </ul>
      <Basis title="What this rests on" items={answer.basis} />
    </>
  );
}
