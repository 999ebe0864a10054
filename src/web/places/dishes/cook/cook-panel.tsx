/**
 * The cook step, and the chill step that takes over from it: the piece drawn as the engine sees it, the verdict in words,
 * the numbers that matter under the hand, then everything that can be changed, what was measured, and what it rests on.
 */
import { lazy, Suspense, useMemo, useState } from 'react';
import type { Dish, Kitchen, ProbeLog, Version } from '../../../../contract/records.ts';
import type { Method } from '../../../../contract/steps.ts';
import { Caution } from '../../../parts/caution.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { doubtTemperature } from '../../../parts/quantity.ts';
import { CookBasis } from './cook-basis.tsx';
import { Measured } from './measured.tsx';
import { PicturePanel } from './picture-panel.tsx';
import { PieceEditor } from './piece-editor.tsx';
import { predictedRules } from './predicted-rules.ts';
import { type Chill, type Cook, errorsOf, programmeWith } from './programme.ts';
import { RulesEditor } from './rules-editor.tsx';
import { ChillSliders, CookSliders } from './sliders.tsx';
import { StagesEditor } from './stages-editor.tsx';
import { TargetEditor } from './target-editor.tsx';
import { useCooking } from './use-cooking.ts';
import { useDraft } from './use-draft.ts';
import { VerdictPanel } from './verdict-panel.tsx';
import './cook.css';

const CurvesView = lazy(async () => ({
  default: (await import('../../../pictures/curves-view.tsx')).CurvesView,
}));

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
  const programme = useMemo(() => programmeWith(method, draft), [method, draft]);
  const cooking = useCooking(programme);
  const [scrubbed, setScrubbed] = useState<number | null>(null);
  const [overlaid, setOverlaid] = useState<ProbeLog[]>([]);
  const { cooked, current } = cooking;
  const end = cooked?.result.stages.at(-1)?.end ?? 0;
  const time = Math.min(end, scrubbed ?? cooked?.verdict.liftOut ?? 0);
  const fine = cooked !== null && current && cooked.mode === 'fine' ? cooked : null;
  const predicted = useMemo(
    () =>
      fine === null
        ? []
        : predictedRules(fine.result, draft.rules, fine.verdict.heatingStage, fine.cookStages),
    [fine, draft.rules],
  );
  const measured = useMemo(
    () =>
      overlaid.map((log) => ({
        name: log.name,
        points: log.points,
        decidingS: minutesToS(log.judgements.find((j) => j.decidingMin !== null)?.decidingMin ?? null),
      })),
    [overlaid],
  );
  const errorAt = errorsOf(programme, draft.kind);
  return (
    <div className="cook-panel stack-wide">
      {cooked === null ? null : (
        <PicturePanel cooked={cooked} current={current} time={time} onTime={setScrubbed} />
      )}
      <VerdictPanel programme={programme} cooking={cooking} />
      {readOnly ? null : draft.kind === 'cook' ? (
        <CookSliders step={draft} onChange={edit} />
      ) : (
        <ChillSliders step={draft} onChange={edit} />
      )}
      <Caution place={kitchen.place} />
      {cooked === null ? null : (
        <section className={current ? undefined : 'cook-picture-old'} aria-label="Temperatures against time">
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
        kind={draft.kind}
        stages={draft.stages}
        errorAt={errorAt}
        readOnly={readOnly}
        onChange={(stages) => edit({ ...draft, stages })}
      />
      {draft.kind === 'cook' ? (
        <CookOnly draft={draft} method={method} errorAt={errorAt} readOnly={readOnly} edit={edit} />
      ) : null}
      <RulesEditor
        kind={draft.kind}
        rules={draft.rules}
        place={kitchen.place}
        predicted={predicted}
        readOnly={readOnly}
        onChange={(rules) => edit({ ...draft, rules })}
      />
      <Measured
        kitchen={kitchen}
        dishId={dish.id}
        stepId={draft.id}
        rules={draft.rules}
        overlaid={overlaid}
        onOverlay={setOverlaid}
      />
      {cooked === null ? null : <CookBasis cooked={cooked} programme={programme} />}
    </div>
  );
}

const minutesToS = (min: number | null) => (min === null ? null : min * 60);

interface CookOnlyProps {
  readonly draft: Cook;
  readonly method: Method;
  readonly errorAt: ReturnType<typeof errorsOf>;
  readonly readOnly: boolean;
  readonly edit: (step: Cook) => void;
}

function CookOnly({ draft, method, errorAt, readOnly, edit }: CookOnlyProps) {
  return (
    <>
      <section className="stack" aria-labelledby="start-heading">
        <h3 id="start-heading">Start and target</h3>
        <NumberField
          label="Into the heat at"
          unit="°C"
          value={draft.startC}
          readOnly={readOnly}
          error={errorAt('startC')}
          doubt={(v, stated) => doubtTemperature(v, stated, { low: -2, high: 30 })}
          onChange={(v) => v !== null && edit({ ...draft, startC: v })}
        />
        <TargetEditor
          target={draft.target}
          errorAt={errorAt}
          readOnly={readOnly}
          onChange={(target) => edit({ ...draft, target })}
        />
      </section>
      <PieceEditor
        body={draft.body}
        method={method}
        stepId={draft.id}
        errorAt={errorAt}
        readOnly={readOnly}
        onChange={(body) => edit({ ...draft, body })}
      />
    </>
  );
}
