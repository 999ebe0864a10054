import { useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import type { Dish, Kitchen, Version } from '../../../../contract/records.ts';
import type { Step } from '../../../../contract/steps.ts';
import { useActions } from '../../../actions.ts';
import { at } from '../../../addresses.ts';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { EmptyPlace } from '../../../parts/empty-place.tsx';
import { moment } from '../../../parts/moment.ts';
import { say } from '../../../parts/toast.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { StepPanel } from '../steps/step-panel.tsx';
import { AddStep } from './add-step.tsx';
import { draftOf, dropDraft } from './draft-copy.ts';
import { duplicateOf, moved } from './new-step.ts';
import { NextThing } from './next-thing.tsx';
import { RibbonNav } from './ribbon-nav.tsx';
import { SaveMark } from './save-mark.tsx';
import { type Bench, useBench } from './use-bench.ts';
import { Versions } from './versions.tsx';

export interface BenchViewProps {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly version: Version;
  readonly stepId: string | undefined;
}

/** Work that was kept on this device for a version that was signed before it could be saved. */
function Stranded({
  dish,
  bench,
  zone,
}: {
  readonly dish: Dish;
  readonly bench: Bench;
  readonly zone: string;
}) {
  const [looked, look] = useState(0);
  const copies = useMemo(() => {
    void looked;
    return dish.versions.flatMap((v) => {
      const copy = v.status === 'signed' ? draftOf(v.id) : null;
      return copy === null ? [] : [{ version: v, copy }];
    });
  }, [dish.versions, looked]);
  const [first] = copies;
  if (first === undefined || bench.readOnly) return null;
  const done = () => {
    dropDraft(first.version.id);
    look((n) => n + 1);
  };
  return (
    <Verdict state="not yet" word={`Changes to version ${first.version.number} were never saved`}>
      <p>
        It was signed before they arrived. They are kept on this device, as of {moment(first.copy.at, zone)}.
      </p>
      <div className="row">
        <Button
          onPress={() => {
            bench.change(first.copy.method);
            done();
          }}
        >
          Lay them on this draft
        </Button>
        <Button kind="quiet" onPress={done}>
          Forget them
        </Button>
      </div>
    </Verdict>
  );
}

/** The bench: the method as a ribbon, one step open below it, and what can be done with the version. */
export function BenchView({ kitchen, dish, version, stepId }: BenchViewProps) {
  const bench = useBench(kitchen.id, version);
  const [adding, setAdding] = useState(false);
  const [, navigate] = useLocation();
  const { method, readOnly, change } = bench;
  const newest = version.id === dish.current.id;
  const hrefOf = (id: string) =>
    newest ? at.step(kitchen.id, dish.id, id) : at.version(kitchen.id, dish.id, version.id, id);
  const step = method.find((s) => s.id === stepId) ?? method[0];
  const index = step === undefined ? -1 : method.indexOf(step);
  const go = (id: string | undefined) =>
    navigate(id === undefined ? at.dish(kitchen.id, dish.id) : hrefOf(id));
  const move = (from: number, to: number) => change((now) => moved(now, from, to));
  const put = (next: Step, about: string) =>
    change((now) => now.map((s) => (s.id === next.id ? next : s)), about);
  const remove = () => {
    if (step === undefined) return;
    const rest = method.filter((s) => s.id !== step.id);
    change((now) => now.filter((s) => s.id !== step.id));
    go((rest[index] ?? rest[index - 1])?.id);
    say(`${step.name} is off the method.`, () => {
      bench.undo();
      go(step.id);
    });
  };
  const duplicate = () => {
    if (step === undefined) return;
    const again = duplicateOf(step);
    change((now) => [...now.slice(0, index + 1), again, ...now.slice(index + 1)]);
    go(again.id);
  };
  const add = (made: Step, place: number) => {
    change((now) => [...now.slice(0, place), made, ...now.slice(place)]);
    setAdding(false);
    go(made.id);
  };
  const editable = !readOnly && step !== undefined;
  const full = method.length >= 40;
  useActions([
    {
      id: 'undo',
      label: 'Undo',
      keys: ['mod+z'],
      run: bench.undo,
      enabled: bench.canUndo,
      whileTyping: true,
    },
    {
      id: 'redo',
      label: 'Redo',
      keys: ['mod+shift+z', 'mod+y'],
      run: bench.redo,
      enabled: bench.canRedo,
      whileTyping: true,
    },
    { id: 'add step', label: 'Add a step', run: () => setAdding(true), enabled: !readOnly && !full },
    {
      id: 'earlier',
      label: 'Move this step earlier',
      keys: ['alt+arrowleft'],
      run: () => move(index, index - 1),
      enabled: editable && index > 0,
    },
    {
      id: 'later',
      label: 'Move this step later',
      keys: ['alt+arrowright'],
      run: () => move(index, index + 1),
      enabled: editable && index < method.length - 1,
    },
    { id: 'duplicate', label: 'Duplicate this step', run: duplicate, enabled: editable && !full },
    {
      id: 'next step',
      label: 'Next step',
      run: () => go(method[index + 1]?.id),
      enabled: index < method.length - 1,
    },
    {
      id: 'save',
      label: 'Save now',
      keys: ['mod+s'],
      run: bench.saveNow,
      enabled: !readOnly,
      whileTyping: true,
    },
  ]);
  return (
    <>
      <div className="bench-head">
        <p>
          <strong>Version {version.number}</strong>,{' '}
          {readOnly ? `signed by ${version.signedBy ?? 'somebody'}: it does not change again` : 'a draft'}
          {newest ? '' : ' (not the newest)'}
        </p>
        <NextThing kitchen={kitchen} dish={dish} version={version} method={method} hrefOf={hrefOf} />
        <SaveMark bench={bench} />
      </div>
      <Stranded dish={dish} bench={bench} zone={kitchen.zone} />
      {method.length === 0 ? (
        <EmptyPlace
          title="The bench is empty"
          action={
            readOnly ? undefined : (
              <Button kind="strong" onPress={() => setAdding(true)}>
                Add the first step
              </Button>
            )
          }
        >
          <p>A method is steps in order. Begin with what is done to the part when it comes in.</p>
        </EmptyPlace>
      ) : (
        <RibbonNav method={method} selected={step?.id} hrefOf={hrefOf} onMove={readOnly ? undefined : move} />
      )}
      {readOnly || method.length === 0 ? null : (
        <div className="bench-tools not-on-paper">
          <Button onPress={() => setAdding(true)} disabled={full}>
            Add a step
          </Button>
          <Button
            onPress={() => move(index, index - 1)}
            disabled={!editable || index <= 0}
            keys="Alt+ArrowLeft"
          >
            Move earlier
          </Button>
          <Button
            onPress={() => move(index, index + 1)}
            disabled={!editable || index >= method.length - 1}
            keys="Alt+ArrowRight"
          >
            Move later
          </Button>
          <Button onPress={duplicate} disabled={!editable || full}>
            Duplicate
          </Button>
          <Button onPress={remove} disabled={!editable}>
            Remove
          </Button>
          <Button kind="quiet" onPress={bench.undo} disabled={!bench.canUndo} keys="Control+Z">
            Undo
          </Button>
          <Button kind="quiet" onPress={bench.redo} disabled={!bench.canRedo} keys="Control+Shift+Z">
            Redo
          </Button>
        </div>
      )}
      {step === undefined ? null : (
        <StepPanel
          key={step.id}
          kitchen={kitchen}
          dish={dish}
          version={version}
          method={method}
          step={step}
          readOnly={readOnly}
          onChange={put}
        />
      )}
      <Versions kitchen={kitchen} dish={dish} version={version} bench={bench} />
      <Caution place={kitchen.place} />
      {adding ? (
        <AddStep method={method} after={step?.id} onClose={() => setAdding(false)} onAdd={add} />
      ) : null}
    </>
  );
}
