/** How sure: how long the heat must last so that the worst piece of a batch is safe, as often as is asked. */
import { useMemo, useState } from 'react';
import type { SureAnswer } from '../../../../contract/sure.ts';
import { mattersScene, sureStripScene, timesWords } from '../../../../documents/pictures/sure-strip.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Basis } from '../../../parts/basis.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Tick } from '../../../parts/field.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { say } from '../../../parts/toast.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import { Answered, StudyBar } from './study-parts.tsx';
import {
  hasCoefficient,
  isComposed,
  type ProgrammeInput,
  publishedRange,
  type Spreads,
  sureInput,
  usualSpreads,
  varyingWords,
} from './sure-spreads.ts';
import { useStudy } from './use-study.ts';

export interface SurePanelProps {
  /** The programme as it stands; null while it cannot be worked out. */
  readonly programme: ProgrammeInput | null;
  readonly stageIndex: number;
  readonly rules: readonly string[];
  readonly readOnly: boolean;
  /** Sets how long the stage lasts; gives back what undoes it. */
  readonly onMinutes: (min: number) => () => void;
}

export function SurePanel({ programme, stageIndex, rules, readOnly, onMinutes }: SurePanelProps) {
  const [open, setOpen] = useState(false);
  const [spreads, setSpreads] = useState(usualSpreads);
  const rulesKey = rules.join(' ');
  const input = useMemo(
    () =>
      programme === null
        ? null
        : sureInput(programme, stageIndex, spreads, rulesKey.split(' ').filter(Boolean)),
    [programme, stageIndex, spreads, rulesKey],
  );
  const study = useStudy('sure', input);
  return (
    <section className="stack" aria-labelledby="sure-heading">
      <h3 id="sure-heading">How sure</h3>
      <p className="study-words">
        No two pieces are quite alike, and the heat strays. How long, so that the worst piece of the batch is
        safe?
      </p>
      <Button onPress={() => setOpen(!open)} expanded={open} controls="sure-fields">
        {open ? 'Put this away' : 'Say what strays, and find out'}
      </Button>
      <div id="sure-fields" className="stack" hidden={!open}>
        {open && programme !== null ? (
          <SpreadFields
            programme={programme}
            stageIndex={stageIndex}
            spreads={spreads}
            onChange={setSpreads}
          />
        ) : null}
        {open ? (
          <StudyBar study={study} ready={input !== null}>
            How long, to be sure
          </StudyBar>
        ) : null}
        {open && study.answer !== null && programme !== null ? (
          <Answered current={study.current} label="How long, to be sure">
            <SureWords answer={study.answer} programme={programme} stageIndex={stageIndex} />
            {readOnly || study.answer.minutesForConfidence === null || !study.current ? null : (
              <SetMinutes answer={study.answer} onMinutes={onMinutes} />
            )}
          </Answered>
        ) : null}
      </div>
    </section>
  );
}

const confidences = [
  { value: '0.9', label: '9 times in 10' },
  { value: '0.95', label: '95 times in 100' },
  { value: '0.99', label: '99 times in 100' },
  { value: '0.999', label: '999 times in 1000' },
];

const lookings = [
  { value: '100', label: 'a quick look: 100 pieces' },
  { value: '1000', label: 'as usual: 1000 pieces' },
  { value: '4000', label: 'carefully: 4000 pieces' },
];

interface SpreadFieldsProps {
  readonly programme: ProgrammeInput;
  readonly stageIndex: number;
  readonly spreads: Spreads;
  readonly onChange: (spreads: Spreads) => void;
}

const practice = 'Common practice, no source: measure your own.';

function SpreadFields({ programme, stageIndex, spreads, onChange }: SpreadFieldsProps) {
  const stage = programme.stages[stageIndex];
  const range = publishedRange(stage);
  const skin = programme.body.layers.length > 1 ? programme.body.layers[0] : undefined;
  const set = (over: Partial<Spreads>) => onChange({ ...spreads, ...over });
  const field = (
    key: 'thickMm' | 'skinMm' | 'startC' | 'probeC' | 'mediumC' | 'hPct' | 'conductPct',
    label: string,
    unit: 'mm' | 'degrees C' | '%',
    high: number,
    hint: string,
  ) => (
    <NumberField
      label={label}
      unit={unit}
      value={spreads[key]}
      low={0}
      high={high}
      hint={hint}
      onChange={(v) => v !== null && set({ [key]: v })}
    />
  );
  return (
    <>
      <p className="small quiet">
        Each ±: two pieces in three, or two days in three, are no further out than this.
      </p>
      <div className="fields study-fields">
        <NumberField
          label="Pieces in the batch"
          unit=""
          whole
          value={spreads.pieces}
          low={1}
          high={1_000}
          onChange={(v) => v !== null && set({ pieces: v })}
        />
        <Choice
          label="The worst of them is to be safe"
          value={String(spreads.confidence)}
          options={confidences}
          onChange={(v) => set({ confidence: Number(v) })}
        />
        {field('thickMm', 'How thick the piece is, ±', 'mm', 8, `Each piece for itself. ${practice}`)}
        {skin === undefined
          ? null
          : field(
              'skinMm',
              `How thick the ${skin.name} is, ±`,
              'mm',
              3,
              `Each piece for itself. ${practice}`,
            )}
        {field('startC', 'How cold it goes in, ±', 'degrees C', 5, `Each piece for itself. ${practice}`)}
        {field(
          'mediumC',
          `How hot “${stage?.name ?? 'the heat'}” is, ±`,
          'degrees C',
          8,
          `The same for the whole batch. ${practice}`,
        )}
        {hasCoefficient(stage) && (range === undefined || !spreads.published)
          ? field(
              'hPct',
              'How well it heats the surface, ±',
              '%',
              24,
              'The same for the whole batch. An assumption.',
            )
          : null}
        {field(
          'probeC',
          'The probe, never out by more than',
          'degrees C',
          3,
          `The same for the whole batch. ${practice}`,
        )}
        {isComposed(programme.body)
          ? field(
              'conductPct',
              'Conductivity, at most out by',
              '%',
              50,
              'The same for the whole batch. Worked out from the mix: meat, offal and fat were measured within 10 % of that.',
            )
          : null}
        <Choice
          label="How closely to look"
          value={String(spreads.samples)}
          options={lookings}
          onChange={(v) => set({ samples: Number(v) })}
        />
      </div>
      {range === undefined ? null : (
        <Tick
          label={`Its surface coefficient anywhere in the published range, ${range.low} to ${range.high} W/(m² K)`}
          value={spreads.published}
          onChange={(published) => set({ published })}
        />
      )}
    </>
  );
}

const whole = (min: number) => Math.ceil(min - 1e-9);
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function SureWords({
  answer,
  programme,
  stageIndex,
}: {
  readonly answer: SureAnswer;
  readonly programme: ProgrammeInput;
  readonly stageIndex: number;
}) {
  const [box, width] = useWidth<HTMLDivElement>();
  const { place } = useKitchen();
  const until = programme.stages[stageIndex]?.until;
  const writtenMin = until !== undefined && 'min' in until ? until.min : null;
  const strip = useMemo(
    () => (width < 100 ? null : sureStripScene(answer, { width: Math.min(720, width), writtenMin })),
    [answer, width, writtenMin],
  );
  const matters = useMemo(
    () =>
      width < 100
        ? null
        : mattersScene(answer.sensitivity, (i) => varyingWords(i, programme), Math.min(560, width)),
    [answer, programme, width],
  );
  const who = answer.pieces === 1 ? 'a piece' : `the worst of ${answer.pieces} pieces`;
  const { minutesForConfidence: min, lethality } = answer;
  return (
    <div ref={box} className="stack">
      {min === null ? (
        <>
          <p className="study-number">No time will do</p>
          <p className="study-words">{answer.why}</p>
        </>
      ) : (
        <>
          <p className="study-number">{whole(min)} min</p>
          <p className="study-words">
            {capital(answer.stage)} {whole(min)} min and {who} is safe {timesWords(answer.confidence)}, if
            things stray as said above. A piece just as drawn needs {whole(answer.nominalMin ?? min)} min.
            Only what it has had when lifted out is counted.
          </p>
        </>
      )}
      {writtenMin === null || lethality === null ? null : (
        <p>
          As it is written, {writtenMin} min: {oftenWords(lethality.passesPct)} of single pieces pass
          {answer.pieces === 1
            ? ''
            : `, and ${oftenWords(lethality.batchPassesPct)} of batches of ${answer.pieces}`}
          .{min !== null && writtenMin < min ? ' That is less often than you ask.' : ''}
        </p>
      )}
      {strip === null ? null : <Figure scene={strip} />}
      {matters === null || answer.sensitivity.length === 0 ? null : (
        <>
          <h4>What matters most</h4>
          <Figure
            scene={matters}
            caption="Share of the spread in time that it causes. Solid: the same for the whole batch. Hatched: each piece’s own."
          />
        </>
      )}
      <Caution place={place}>
        <p>
          Predicted, not measured: the probe decides. What is broken or forgotten (a valve shut, a piece left
          out) is in no spread.
        </p>
      </Caution>
      <p className="small quiet">
        {answer.engine.samples} pieces and {answer.engine.fineRuns} fine runs
        {answer.standardErrorMin === null
          ? '.'
          : `; the time itself is known to ± ${Math.max(0.01, 2 * answer.standardErrorMin).toFixed(2)} min, and is stated at the upper end of that.`}
      </p>
      <Basis title="What this rests on" items={answer.basis} />
    </div>
  );
}

/** A share, never rounded up to all. */
function oftenWords(pct: number): string {
  if (pct >= 100) return 'all that were drawn';
  if (pct > 99.9) return 'more than 99.9 %';
  return pct < 0.1 ? 'hardly any' : `${(Math.floor(pct * 10) / 10).toFixed(1)} %`;
}

function SetMinutes({
  answer,
  onMinutes,
}: {
  readonly answer: SureAnswer;
  readonly onMinutes: SurePanelProps['onMinutes'];
}) {
  const min = whole(answer.minutesForConfidence ?? 0);
  return (
    <Button
      onPress={() => {
        const undo = onMinutes(min);
        say(`“${answer.stage}” lasts ${min} min now.`, undo);
      }}
    >
      Set “{answer.stage}” to {min} min
    </Button>
  );
}
