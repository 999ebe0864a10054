/** Gentlest: the temperatures and times that are safe, from the quickest to the kindest, and one of them taken over. */
import { type ReactNode, useId, useMemo, useState } from 'react';
import type { GentleAnswer } from '../../../../contract/gentle.ts';
import { media, mediumNamed } from '../../../../core/properties/media.ts';
import {
  type GentlePoint,
  gentleFrontScene,
  gentlePoints,
} from '../../../../documents/pictures/gentle-front.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Basis } from '../../../parts/basis.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { showQuantity } from '../../../parts/quantity.ts';
import { say } from '../../../parts/toast.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import { type GentleMedium, gentleMedia, inMedium } from './gentle-steps.ts';
import { Answered, StudyBar } from './study-parts.tsx';
import { heatOf, type ProgrammeInput } from './sure-spreads.ts';
import { useStudy } from './use-study.ts';

export interface GentlePanelProps {
  readonly programme: ProgrammeInput | null;
  readonly stageIndex: number;
  /** How long that stage lasts as it stands [min]. */
  readonly nowMin: number | null;
  readonly rules: readonly string[];
  readonly readOnly: boolean;
  /** Puts one or two steps in the stage's place, in another medium where one is named; gives back what undoes it. */
  readonly onSteps: (
    steps: readonly { mediumC: number; min: number }[],
    medium: GentleMedium | null,
  ) => () => void;
}

interface Bounds {
  readonly low: number;
  readonly high: number;
  readonly atMostMin: number;
  readonly overcookedC: number;
}

/** From the coolest that can be safe to what the heat is now, as far as the medium goes. */
function usualBounds(
  programme: ProgrammeInput,
  stageIndex: number,
  nowMin: number | null,
  other: GentleMedium | null,
): Bounds {
  const stage = programme.stages[stageIndex];
  const name = other ?? stage?.medium;
  const named = name !== undefined && Object.hasOwn(media, name) ? mediumNamed(name) : undefined;
  const now = (stage === undefined ? undefined : heatOf(stage)) ?? 90;
  const low = Math.max(named?.coldest ?? 60, 60);
  return {
    low: Math.min(low, now),
    high: Math.max(Math.min(now, named?.hottest ?? now), low),
    atMostMin: Math.max(10, Math.ceil(((nowMin ?? 40) * 1.5) / 5) * 5),
    overcookedC: Math.max(75, programme.target.referenceC + 5),
  };
}

/** What cannot be had cool is cooked gently in its milder sibling. */
const milder: Readonly<Record<string, GentleMedium>> = {
  steam: 'low-temperature steam',
  'simmering water': 'water bath',
  'boiling water': 'water bath',
};

export function GentlePanel(props: GentlePanelProps) {
  const { programme, stageIndex, nowMin, rules, readOnly, onSteps } = props;
  const [open, setOpen] = useState(false);
  const [own, setOwn] = useState<Partial<Bounds>>({});
  const [picked, setPicked] = useState<GentleMedium | 'own' | null>(null);
  const rulesKey = rules.join(' ');
  const stage = programme?.stages[stageIndex];
  const choice = picked ?? milder[stage?.medium ?? ''] ?? 'own';
  const medium = choice === 'own' || choice === stage?.medium ? null : choice;
  const usual = programme === null ? null : usualBounds(programme, stageIndex, nowMin, medium);
  const bounds = usual === null ? null : { ...usual, ...own };
  const boundsKey = JSON.stringify(bounds);
  const input = useMemo(() => {
    const b = JSON.parse(boundsKey) as Bounds | null;
    if (programme === null || b === null) return null;
    return {
      ...programme,
      stages: programme.stages.map((s, i) => {
        if (i !== stageIndex) return s;
        return {
          ...inMedium(s, medium),
          mediumC: { low: Math.min(b.low, b.high), high: Math.max(b.low, b.high) },
        };
      }),
      atMostMin: b.atMostMin,
      overcookedC: b.overcookedC,
      rules: [...new Set([...rulesKey.split(' ').filter(Boolean), 'us-come-up-6h'])],
    };
  }, [programme, stageIndex, medium, boundsKey, rulesKey]);
  const study = useStudy('gentle', input);
  const set = (over: Partial<Bounds>) => setOwn((before) => ({ ...before, ...over }));
  return (
    <section className="stack" aria-labelledby="gentle-heading">
      <h3 id="gentle-heading">Gentlest</h3>
      <p className="study-words">
        Cooler and longer overcooks less of the piece. Which of all the safe ways suits your day?
      </p>
      <Button onPress={() => setOpen(!open)} expanded={open} controls="gentle-fields">
        {open ? 'Put this away' : 'Look for the gentlest'}
      </Button>
      <div id="gentle-fields" className="stack" hidden={!open}>
        {open && bounds !== null ? (
          <BoundFields bounds={bounds} onChange={set}>
            <Choice
              label="In"
              value={choice}
              options={optionsFor(stage)}
              onChange={(value) => {
                setPicked(value);
                setOwn(({ low: _low, high: _high, ...kept }) => kept);
              }}
            />
          </BoundFields>
        ) : null}
        {open ? (
          <StudyBar study={study} ready={input !== null}>
            Find the gentlest
          </StudyBar>
        ) : null}
        {open && study.answer !== null ? (
          <Answered current={study.current} label="The gentlest programmes">
            <GentleWords
              answer={study.answer}
              onSteps={readOnly || !study.current ? null : (steps) => onSteps(steps, medium)}
            />
          </Answered>
        ) : null}
      </div>
    </section>
  );
}

function optionsFor(stage: ProgrammeInput['stages'][number] | undefined) {
  const now = stage?.medium ?? 'the heat as it is';
  return [
    { value: 'own' as const, label: `${now}, as now` },
    ...gentleMedia.filter((m) => m !== stage?.medium).map((m) => ({ value: m, label: m })),
  ];
}

interface BoundFieldsProps {
  readonly bounds: Bounds;
  readonly onChange: (over: Partial<Bounds>) => void;
  readonly children: ReactNode;
}

function BoundFields({ bounds, onChange, children }: BoundFieldsProps) {
  return (
    <div className="fields study-fields">
      {children}
      <NumberField
        label="Between"
        unit="°C"
        value={bounds.low}
        low={40}
        high={280}
        onChange={(v) => v !== null && onChange({ low: v })}
      />
      <NumberField
        label="and"
        unit="°C"
        value={bounds.high}
        low={40}
        high={280}
        onChange={(v) => v !== null && onChange({ high: v })}
      />
      <NumberField
        label="No longer than"
        unit="min"
        value={bounds.atMostMin}
        low={1}
        high={10_000}
        onChange={(v) => v !== null && onChange({ atMostMin: v })}
      />
      <NumberField
        label="Overcooked is hotter than"
        unit="°C"
        value={bounds.overcookedC}
        low={40}
        high={150}
        hint="At 75 °C the muscle’s proteins have all but gone; yours to say."
        onChange={(v) => v !== null && onChange({ overcookedC: v })}
      />
    </div>
  );
}

interface GentleWordsProps {
  readonly answer: GentleAnswer;
  readonly onSteps: ((steps: GentlePoint['steps']) => () => void) | null;
}

function GentleWords({ answer, onSteps }: GentleWordsProps) {
  const [box, width] = useWidth<HTMLDivElement>();
  const { units, place } = useKitchen();
  const id = useId();
  const points = useMemo(() => gentlePoints(answer), [answer]);
  const best = Math.max(
    0,
    points.findIndex((p) => p.recommended),
  );
  const [slid, setSlid] = useState<{ readonly of: GentleAnswer; readonly at: number } | null>(null);
  const chosen = slid?.of === answer ? slid.at : best;
  const overcooked = together(showQuantity(answer.overcookedC, '°C', units));
  const stepsText = useMemo(
    () => (p: GentlePoint) =>
      p.steps
        .map((s) => `${together(showQuantity(s.mediumC, '°C', units))} for ${minutes(s.min)}`)
        .join(', then '),
    [units],
  );
  const scene = useMemo(
    () =>
      width < 100 || points.length === 0
        ? null
        : gentleFrontScene(points, stepsText, { width: Math.min(720, width), chosen, overcooked }),
    [points, stepsText, width, chosen, overcooked],
  );
  const point = points[chosen];
  return (
    <div ref={box} className="stack">
      {point === undefined ? (
        <>
          <p className="study-number">Not in that time</p>
          <p className="study-words">{answer.why}</p>
        </>
      ) : (
        <>
          <p className={point.steps.length > 1 ? 'study-number study-number-long' : 'study-number'}>
            {stepsText(point)}
          </p>
          <p className="study-words">
            {point.recommended ? 'The gentlest of what passes in that time. ' : ''}
            {share(point.overcookedPct)} of the piece is ever hotter than {overcooked}.
          </p>
          {scene === null ? null : (
            <Figure
              scene={scene}
              caption="Every mark is safe by the target and the rules when lifted out. Round: one temperature. Square: two, one after the other."
            />
          )}
          <div className="slide study-slide">
            <label htmlFor={id}>Along the curve: kinder to the left, quicker to the right</label>
            <output htmlFor={id}>{minutes(point.min)}</output>
            <input
              id={id}
              type="range"
              min={0}
              max={points.length - 1}
              step={1}
              value={chosen}
              aria-valuetext={`${stepsText(point)}, ${share(point.overcookedPct)} hotter than ${overcooked}`}
              onChange={(e) => setSlid({ of: answer, at: Number(e.target.value) })}
            />
          </div>
          <dl className="study-facts">
            <div>
              <dt>In all</dt>
              <dd>{minutes(point.min)}</dd>
            </div>
            <div>
              <dt>Coldest point when lifted out</dt>
              <dd>{showQuantity(point.coreC, '°C', units)}</dd>
            </div>
            <div>
              <dt>Loses, ground and salted</dt>
              <dd>about {point.saltedLossPct.toFixed(1)} %</dd>
            </div>
            <div>
              <dt>Loses, plain and lean</dt>
              <dd>at most {point.meanLossPct.toFixed(0)} %</dd>
            </div>
          </dl>
          {onSteps === null ? null : (
            <Button
              onPress={() => {
                const undo = onSteps(point.steps);
                say(`“${answer.stage}” is ${stepsText(point)} now.`, undo);
              }}
            >
              Cook it this way: {stepsText(point)}
            </Button>
          )}
        </>
      )}
      <Caution place={place}>
        <p>Predicted, not measured: the probe decides. A slow way up is watched the more closely.</p>
      </Caution>
      <Basis title="What this rests on" items={answer.basis} />
    </div>
  );
}

/** They are tenths, rounded up already. */
const minutes = (min: number) => `${Number(min.toFixed(1))}\u00a0min`;
/** A number and its unit stay on one line. */
const together = (text: string) => text.replaceAll(' ', '\u00a0');
const share = (pct: number) =>
  pct <= 0 ? 'None' : pct < 1 ? 'Less than 1\u00a0%' : `${Math.ceil(pct)}\u00a0%`;
