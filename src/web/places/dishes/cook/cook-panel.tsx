/**
 * The cook step, and the chill step that takes over from it: the piece drawn as the engine sees it, the verdict in words,
 * the numbers that matter under the hand, then everything that can be changed, what was measured, and what it rests on.
 */
import { lazy, memo, Suspense, useCallback, useMemo, useState } from 'react';
import type { BodyInput, StageInput, TargetInput } from '../../../../contract/body.ts';
import { productOf } from '../../../../contract/product-of.ts';
import type { Dish, Kitchen, Version } from '../../../../contract/records.ts';
import { rulesAround, rulesHeld, withRules } from '../../../../contract/step-rules.ts';
import type { Food, Method } from '../../../../contract/steps.ts';
import type { MeasuredCurve } from '../../../../documents/pictures/curves.ts';
import { Caution } from '../../../parts/caution.tsx';
import { ChillGrowth } from './chill-growth.tsx';
import { ChillSize } from './chill-size.tsx';
import { CookBasis } from './cook-basis.tsx';
import { FoodFields } from './food-fields.tsx';
import { MachineChoice } from './machine-choice.tsx';
import { Measured, type Overlay } from './measured.tsx';
import { PicturePanel } from './picture-panel.tsx';
import { PieceEditor } from './piece-editor.tsx';
import { predictedRules } from './predicted-rules.ts';
import { type Chill, type Cook, errorsOf, programmeWith } from './programme.ts';
import { RulesEditor } from './rules-editor.tsx';
import { Sliders } from './sliders.tsx';
import { StagesEditor } from './stages-editor.tsx';
import { StartAndTarget } from './start-and-target.tsx';
import { Studies } from './studies.tsx';
import { type Cooked, useCooking } from './use-cooking.ts';
import { type Edit, useDraft } from './use-draft.ts';
import { VerdictPanel } from './verdict-panel.tsx';
import './cook.css';

const CurvesView = lazy(async () => ({
  default: memo((await import('../../../pictures/curves-view.tsx')).CurvesView),
}));

const LogSays = lazy(async () => ({ default: (await import('./log-says.tsx')).LogSays }));

export interface CookPanelProps {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly version: Version;
  readonly method: Method;
  readonly step: Cook | Chill;
  readonly onChange: (step: Cook | Chill) => void;
  readonly readOnly: boolean;
}

export function CookPanel({ kitchen, dish, method, step, onChange, readOnly }: CookPanelProps) {
  const [draft, edit] = useDraft<Cook | Chill>(step, onChange);
  const subject = useMemo(
    () => ({ species: dish.species, part: dish.part, place: kitchen.place }),
    [dish.species, dish.part, kitchen.place],
  );
  // A cook answers to what is usual here for such food, whether the step names it or not.
  const whole = useMemo(() => method.map((s) => (s.id === draft.id ? draft : s)), [method, draft]);
  const answers = useMemo(() => rulesHeld(draft, whole, subject), [draft, whole, subject]);
  const programme = useMemo(() => {
    const held = withRules(whole, subject);
    return programmeWith(held, held.find((s) => s.id === draft.id) as Cook | Chill);
  }, [whole, draft.id, subject]);
  const cooking = useCooking(programme);
  const [scrubbed, setScrubbed] = useState<number | null>(null);
  const [overlaid, setOverlaid] = useState<readonly Overlay[]>([]);
  const { cooked, current } = cooking;
  const end = cooked?.result.stages.at(-1)?.end ?? 0;
  const time = Math.min(end, scrubbed ?? cooked?.verdict.liftOut ?? 0);
  const fine = cooked !== null && current && cooked.mode === 'fine' ? cooked : null;
  const { rules, kind } = draft;
  const answersKey = answers.join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the list is made anew each time; its key says whether it changed
  const predicted = useMemo(
    () =>
      fine === null ? [] : predictedRules(fine.result, answers, fine.verdict.heatingStage, fine.cookStages),
    [fine, answersKey],
  );
  const around = useMemo(() => rulesAround(draft, whole, subject), [draft, whole, subject]);
  const fixed = useMemo(
    () =>
      new Set(
        answers.filter((id) =>
          rulesHeld({ ...draft, rules: draft.rules.filter((r) => r !== id) }, whole, subject).includes(id),
        ),
      ),
    [answers, draft, whole, subject],
  );
  const peakC = useMemo(
    () => fine?.result.history.coldSpot.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY) ?? null,
    [fine],
  );
  const measured = useMemo(() => overlaid.map(curveOf), [overlaid]);
  const errorAt = useMemo(() => errorsOf(programme, kind), [programme, kind]);
  const lostPct = useMemo(() => (fine === null ? nothing : lostOf(fine)), [fine]);
  const put = usePuts(edit);
  const kitchenId = kitchen.id;
  const beside = useCallback(
    (stage: StageInput, change: (stage: StageInput) => void) => (
      <MachineChoice kitchenId={kitchenId} stage={stage} onChange={change} />
    ),
    [kitchenId],
  );
  return (
    <div className="cook-panel stack-wide">
      {cooked === null ? null : (
        <PicturePanel cooked={cooked} current={current} time={time} onTime={setScrubbed} />
      )}
      <VerdictPanel programme={programme} cooking={cooking} kind={kind} predicted={predicted} />
      {readOnly ? null : <Sliders step={draft} onChange={edit} />}
      <Caution place={kitchen.place} />
      {cooked === null ? null : (
        <section className={current ? undefined : 'cook-old-drawn'} aria-label="Temperatures against time">
          <Suspense fallback={<p className="quiet">Drawing the curves…</p>}>
            <CurvesView
              result={cooked.result}
              target={cooked.problem.target}
              time={time}
              onTime={setScrubbed}
              units={kitchen.units}
              measured={measured}
            />
          </Suspense>
        </section>
      )}
      <StagesEditor
        kind={kind}
        stages={draft.stages}
        errorAt={errorAt}
        readOnly={readOnly}
        onChange={put.stages}
        beside={beside}
        ranges={cooking.ranges}
        from={draft.kind === 'cook' || !programme.ok ? 0 : programme.cookStages}
        run={programme.ok ? programme.stages : noStages}
        lostPct={lostPct}
      />
      {draft.kind === 'cook' ? (
        <>
          <StartAndTarget
            startC={draft.startC}
            target={draft.target}
            errorAt={errorAt}
            readOnly={readOnly}
            onStart={put.startC}
            onTarget={put.target}
          />
          <PieceEditor
            body={draft.body}
            method={method}
            stepId={draft.id}
            errorAt={errorAt}
            readOnly={readOnly}
            onChange={put.body}
          />
        </>
      ) : null}
      {draft.kind === 'cook' ? (
        <FoodFields
          step={draft}
          method={whole}
          species={dish.species}
          part={dish.part}
          readOnly={readOnly}
          onChange={put.food}
        />
      ) : null}
      <RulesEditor
        kind={kind}
        named={rules}
        held={answers}
        around={around}
        fixed={fixed}
        predicted={predicted}
        peakC={kind === 'cook' ? peakC : null}
        readOnly={readOnly}
        onChange={put.rules}
      />
      {kind === 'chill' && fine !== null ? (
        <ChillGrowth
          cooked={fine}
          product={productOf(subject, whole, draft.id)}
          method={whole}
          stepId={draft.id}
        />
      ) : null}
      {draft.kind === 'chill' && programme.ok && draft.stages.length > 0 ? (
        <ChillSize
          method={whole}
          step={draft}
          rules={answers}
          warmestC={warmestOf(fine)}
          shape={programme.cook.body.shape}
        />
      ) : null}
      <Studies method={method} step={draft} cooking={cooking} readOnly={readOnly} onChange={edit} />
      <Measured
        kitchen={kitchen}
        dishId={dish.id}
        stepId={draft.id}
        rules={answers}
        overlaid={overlaid}
        onOverlay={setOverlaid}
      />
      {overlaid.length === 0 || !programme.ok ? null : (
        <Suspense fallback={<p className="quiet">Opening…</p>}>
          <LogSays
            kitchen={kitchen}
            method={method}
            cookId={programme.cook.id}
            step={draft}
            cookStages={programme.cookStages}
            predictedMin={minutesOf(cooked)}
            coldAtMm={(cooked?.result.coldSpot.at ?? 0) * 1000}
            overlaid={overlaid}
            readOnly={readOnly}
            onStages={put.stages}
          />
        </Suspense>
      )}
      {cooked === null ? null : <CookBasis cooked={cooked} programme={programme} />}
    </div>
  );
}

const noStages: readonly StageInput[] = [];
const nothing: readonly undefined[] = [];

/** What dries off in each stage, in % of the weight; nothing where no vapour is exchanged. */
const lostOf = ({ result }: Cooked): (number | undefined)[] =>
  result.stages.map(({ water }) => (water === undefined ? undefined : (100 * water.lost) / result.mass));

/** One setter for each part of the step; they stay the same from render to render, so that scrubbing redraws no field. */
function usePuts(edit: Edit<Cook | Chill>) {
  const cook = useCallback(
    (part: Partial<Cook>) => edit((s) => (s.kind === 'cook' ? { ...s, ...part } : s)),
    [edit],
  );
  return useMemo(
    () => ({
      stages: (stages: StageInput[]) => edit((s) => ({ ...s, stages })),
      rules: (rules: string[]) => edit((s) => ({ ...s, rules })),
      food: (food: Food) => edit((s) => (s.kind === 'cook' ? { ...s, food } : s)),
      startC: (startC: number) => cook({ startC }),
      target: (target: TargetInput) => cook({ target }),
      body: (body: BodyInput) => cook({ body }),
    }),
    [edit, cook],
  );
}

/** The warmest point when each stage of the chill step begins [°C]. */
const warmestOf = (cooked: Cooked | null): number[] =>
  cooked === null ? [] : cooked.result.stages.slice(cooked.cookStages - 1, -1).map((stage) => stage.warmest);

/** How long each stage lasts by the prediction [min]. */
const minutesOf = (cooked: Cooked | null): number[] =>
  cooked?.result.stages.map((stage) => (stage.end - stage.start) / 60) ?? [];

function curveOf({ log, fromMin }: Overlay): MeasuredCurve {
  const from = fromMin * 60;
  const min = log.judgements.find((j) => j.decidingMin !== null)?.decidingMin ?? null;
  return {
    name: log.name,
    points: log.points.map((p) => ({ s: p.s + from, C: p.C })).filter((p) => p.s >= 0),
    decidingS: min === null ? null : min * 60 + from,
  };
}
