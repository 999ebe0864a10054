/** Warming through in the same engine as the cook: the portion cut through, its verdict by the rules of reheating, and all that can be changed. */
import { lazy, memo, Suspense, useMemo, useState } from 'react';
import { reheatBodyOf, reheatStartOf } from '../../../../contract/method-reheat.ts';
import { isReheating, rulesHeld, withRules } from '../../../../contract/step-rules.ts';
import type { FinishStep } from '../../../../contract/steps.ts';
import { foreseenReheat } from '../../../../core/method/reheat.ts';
import { findRule } from '../../../../core/properties/rules.ts';
import { Basis } from '../../../parts/basis.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { say } from '../../../parts/toast.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { temperatureWords } from '../../../pictures/words.ts';
import { PicturePanel } from '../cook/picture-panel.tsx';
import { PieceEditor } from '../cook/piece-editor.tsx';
import { faultWords, whereWords } from '../cook/programme.ts';
import { StagesEditor } from '../cook/stages-editor.tsx';
import { useCooking } from '../cook/use-cooking.ts';
import { useDraft } from '../cook/use-draft.ts';
import '../cook/cook.css';
import { GrowthPanel } from './growth-panel.tsx';
import { reheatWords } from './reheat-words.ts';
import type { StepForm } from './step-form.ts';
import { warmestCourse, warmingOf } from './warming.ts';

const CurvesView = lazy(async () => ({
  default: memo((await import('../../../pictures/curves-view.tsx')).CurvesView),
}));

const steam = { name: 'steam', medium: 'steam', mediumC: 100, until: { min: 30 } } as const;
const thaw = { name: 'thaw in the fridge', medium: 'still air', mediumC: 3, until: { min: 1_440 } } as const;

export function ReheatPanel(form: StepForm<FinishStep>) {
  const { step, set, readOnly } = form;
  if ((step.stages ?? []).length > 0) return <Warmed {...form} />;
  return (
    <section className="stack" aria-label="Warming through">
      <h3>Warming through</h3>
      <p>
        Nothing is computed of it: whether its middle gets hot is not known until the programme is said, or a
        probe has shown it.
      </p>
      {readOnly ? null : (
        <Button onPress={() => set({ stages: [steam] }, 'stages')}>Work out the warming through</Button>
      )}
    </section>
  );
}

function Warmed({ kitchen, dish, method, step, putStep, readOnly }: StepForm<FinishStep>) {
  const [draft, edit] = useDraft<FinishStep>(step, (next) => putStep(next, `${next.id} warming`));
  const whole = useMemo(() => method.map((s) => (s.id === draft.id ? draft : s)), [method, draft]);
  const subject = useMemo(
    () => ({ species: dish.species, part: dish.part, place: kitchen.place }),
    [dish.species, dish.part, kitchen.place],
  );
  const warming = useMemo(() => warmingOf(withRules(whole, subject), draft.id), [whole, subject, draft.id]);
  const rules = useMemo(
    () => rulesHeld(draft, whole, subject).flatMap((id) => findRule(id) ?? []),
    [draft, whole, subject],
  );
  const cooking = useCooking(warming);
  const { cooked, current } = cooking;
  const [scrubbed, setScrubbed] = useState<number | null>(null);
  const seen = useMemo(
    () =>
      cooked === null || !current
        ? null
        : foreseenReheat(cooked.problem, cooked.result, rules, draft.coreC ?? null),
    [cooked, current, rules, draft.coreC],
  );
  const course = useMemo(
    () => (cooked === null || seen === null ? [] : warmestCourse(cooked.result, seen.liftOut)),
    [cooked, seen],
  );
  const end = cooked?.result.stages.at(-1)?.end ?? 0;
  const time = Math.min(end, scrubbed ?? seen?.liftOut ?? 0);
  const errorAt = (path: string) => {
    const fault = warming.ok ? undefined : warming.faults.find((f) => f.path === path);
    return fault === undefined ? undefined : faultWords(fault);
  };
  const start = reheatStartOf(whole, draft);
  const body = reheatBodyOf(whole, draft);
  const stages = draft.stages ?? [];
  const frozen = (start?.value ?? 0) < -1;
  const words = seen === null ? null : reheatWords(seen, cooked?.problem.start ?? 0, kitchen.units);
  return (
    <section className="cook-panel stack-wide" aria-label="Warming through">
      <h3>Warming through</h3>
      {cooked === null ? null : (
        <PicturePanel cooked={cooked} current={current} time={time} onTime={setScrubbed} />
      )}
      <div className="cook-verdict" aria-live="polite">
        {!warming.ok ? (
          <Verdict state="unknown" word="Cannot be worked out yet" size="large">
            <ul className="cook-why">
              {warming.faults.map((fault) => (
                <li key={`${fault.path} ${fault.found}`}>
                  <strong>{whereWords(fault.path)}</strong>: {faultWords(fault)}.
                </li>
              ))}
            </ul>
          </Verdict>
        ) : cooking.failure !== null ? (
          <Verdict state="unknown" word="Not known: the engine stopped" size="large">
            {cooking.failure}
          </Verdict>
        ) : words === null ? (
          <p className="quiet">Working it out…</p>
        ) : (
          <>
            <Verdict state={words.state} word={words.word} size="large">
              {words.why.map((line) => (
                <p key={line}>{line}</p>
              ))}
            </Verdict>
            <p className="small quiet">{cooking.settling ? 'Working it out…' : 'Predicted, not measured.'}</p>
          </>
        )}
      </div>
      {isReheating(draft, whole) ? null : (
        <p className="small">
          No chill or keep step stands between the cook and this: it is not taken for reheating, and is held
          to what it names alone.
        </p>
      )}
      <Caution place={kitchen.place}>
        <p>
          Reheat once only. Reheating does not undo what grew while it was chilled or kept too warm: toxins
          and spores live through it.
        </p>
      </Caution>
      {cooked === null ? null : (
        <div className={current ? undefined : 'cook-old-drawn'}>
          <Suspense fallback={<p className="quiet">Drawing the curves…</p>}>
            <CurvesView
              result={cooked.result}
              target={cooked.problem.target}
              time={time}
              onTime={setScrubbed}
              units={kitchen.units}
            />
          </Suspense>
        </div>
      )}
      {readOnly || !frozen || stages.some((s) => s.name === thaw.name) ? null : (
        <p>
          It goes in frozen.{' '}
          <Button onPress={() => edit((s) => ({ ...s, stages: [thaw, ...(s.stages ?? [])] }))}>
            Thaw it in the fridge first
          </Button>
        </p>
      )}
      <StagesEditor
        kind="cook"
        stages={stages}
        errorAt={errorAt}
        readOnly={readOnly}
        onChange={(next) => edit((s) => ({ ...s, stages: next }))}
        ranges={cooking.ranges}
        from={0}
        run={warming.ok ? warming.stages : []}
        lostPct={[]}
      />
      <NumberField
        label="Goes in at"
        unit="°C"
        optional
        value={draft.startC ?? null}
        low={-40}
        high={60}
        readOnly={readOnly}
        error={errorAt('startC')}
        hint={
          start?.from == null
            ? 'Right through.'
            : `From “${start.from.name}”: ${temperatureWords(start.value, kitchen.units)} right through. A colder one needs longer: say your own.`
        }
        onChange={(v) => edit(({ startC: _, ...s }) => (v === null ? s : { ...s, startC: v }))}
      />
      {body === null ? null : body.from !== null ? (
        <p>
          The whole piece, as “{body.from.name}” has it.{' '}
          {readOnly ? null : (
            <Button onPress={() => edit((s) => ({ ...s, body: body.value }))}>It is cut smaller</Button>
          )}
        </p>
      ) : (
        <>
          <PieceEditor
            body={body.value}
            method={method}
            stepId={draft.id}
            errorAt={errorAt}
            readOnly={readOnly}
            onChange={(next) => edit((s) => ({ ...s, body: next }))}
          />
          {readOnly ? null : (
            <Button
              onPress={() => {
                const { body: own } = draft;
                edit(({ body: _, ...s }) => s);
                if (own !== undefined)
                  say('The whole piece again.', () => edit((s) => ({ ...s, body: own })));
              }}
            >
              Not cut: the whole piece as cooked
            </Button>
          )}
        </>
      )}
      {course.length < 2 ? null : (
        <GrowthPanel
          heading="What may grow on the way"
          organisms={['clostridium-perfringens', 'listeria-monocytogenes']}
          log={course}
          pH={null}
          waterActivity={null}
          level={1}
        >
          <p className="small">
            Along the warmest point as predicted, from when it is no longer frozen until it is lifted out.
            What grew before is not in it, and what the heat kills is not taken off.
          </p>
        </GrowthPanel>
      )}
      {readOnly ? null : (
        <Button
          onPress={() => {
            const before = draft;
            edit(({ stages: _, startC: __, body: ___, ...s }) => s);
            say('Nothing is computed of it now.', () => edit(() => before));
          }}
        >
          Do not work it out
        </Button>
      )}
      {cooked === null ? null : <Basis title="What the warming rests on" items={[...cooked.result.basis]} />}
    </section>
  );
}
