/** What the log laid over the prediction says of the kitchen's own machine: asked, fitted, used in the step or kept. */
import { useMemo, useState } from 'react';
import type { StageInput } from '../../../../contract/body.ts';
import type { FitAnswer } from '../../../../contract/fit.ts';
import type { Kitchen } from '../../../../contract/records.ts';
import type { Method } from '../../../../contract/steps.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Tick } from '../../../parts/field.tsx';
import { dayOf } from '../../../parts/moment.ts';
import { NumberField } from '../../../parts/number-field.tsx';
import { say } from '../../../parts/toast.tsx';
import { FitFound } from './fit-answer.tsx';
import {
  type Also,
  logOf,
  orderOf,
  type Probe,
  type ProbeKey,
  probeKeys,
  roundedDown,
  runOf,
  stagesSeen,
} from './fit-order.ts';
import { KeepFit } from './keep-fit.tsx';
import type { Overlay } from './measured.tsx';
import type { Chill, Cook } from './programme.ts';
import { useFit } from './use-fit.ts';
import './log-says.css';

export interface LogSaysProps {
  readonly kitchen: Kitchen;
  readonly method: Method;
  readonly cookId: string;
  readonly step: Cook | Chill;
  /** How many stages of the programme are the cook step's own. */
  readonly cookStages: number;
  /** Minutes each stage lasts by the prediction: what is asked for begins with them. */
  readonly predictedMin: readonly number[];
  /** Where along the piece the coldest point is [mm]. */
  readonly coldAtMm: number;
  readonly overlaid: readonly Overlay[];
  readonly readOnly: boolean;
  readonly onStages: (stages: StageInput[]) => void;
}

const probeLabels: Record<ProbeKey, string> = {
  atMm: 'Probe tip along the piece',
  radiusMm: 'Probe tip from the middle',
  xMm: 'Probe tip from the middle, across',
  yMm: 'Probe tip from the middle, up or down',
};
const alsoLabels: Record<Also, string> = {
  diffusivity: 'how fast heat runs through the piece',
  radiusMm: 'the true size of the piece',
  probeMm: 'where the probe really was',
};
const alsoKinds = Object.keys(alsoLabels) as Also[];

/** What a kitchen calls the thing that a medium is in. */
const machineWords: Record<string, string> = {
  steam: 'steamer',
  'low-temperature steam': 'steamer',
  'boiling water': 'pot of boiling water',
  'simmering water': 'pot of simmering water',
  'ice water': 'ice water',
  'still fridge': 'fridge',
};
const machineWord = (medium: string) => machineWords[medium] ?? medium;

export function LogSays(props: LogSaysProps) {
  const { kitchen, method, cookId, step, cookStages, overlaid } = props;
  const [logId, setLogId] = useState<string | null>(null);
  const overlay = overlaid.find((o) => o.log.id === logId) ?? overlaid[0];
  const edited = useMemo(() => method.map((s) => (s.id === step.id ? step : s)), [method, step]);
  const run = useMemo(() => runOf(edited, cookId), [edited, cookId]);
  const [told, setTold] = useState<readonly (number | null)[]>([]);
  const lasted = run.stages.map((_, i) => told[i] ?? Math.round((props.predictedMin[i] ?? 0) * 10) / 10);
  const [probe, setProbe] = useState<Probe>({ atMm: Math.round(props.coldAtMm) });
  const [picked, setPicked] = useState<readonly number[] | null>(null);
  const [also, setAlso] = useState<readonly Also[]>([]);
  const fitting = useFit();
  const [asked, setAsked] = useState<{ order: ReturnType<typeof orderOf>; overlay: Overlay } | null>(null);
  if (overlay === undefined) return null;
  const seen = stagesSeen(overlay, lasted);
  // What is seen and not asked for is taken as given: if that is wrong it pulls the rest off.
  const hStages = (picked ?? seen.slice(0, 4)).filter((i) => seen.includes(i));
  const keys = probeKeys(run.body.shape);
  const place: Probe = Object.fromEntries(keys.map((key) => [key, probe[key] ?? 0]));
  const begin = () => {
    const order = orderOf({ run, lasted, probe: place, hStages, also });
    setAsked({ order, overlay });
    fitting.begin({ ...order, log: logOf(overlay) });
  };
  const nameOf = (i: number) => run.stages[i]?.name ?? `stage ${i + 1}`;
  const leading = step.kind === 'cook' ? 0 : cookStages;
  const medium = run.stages[leading]?.medium ?? nameOf(leading);
  return (
    <section className="log-says stack" aria-labelledby="log-says-heading">
      <h3 id="log-says-heading">What this log says about your {machineWord(medium)}</h3>
      <p className="measure">
        The table knows steamers and baths in general. A log of a piece whose size you know tells what yours
        does: the surface coefficient, by which heat crosses from the medium into the food.
      </p>
      {overlaid.length < 2 ? null : (
        <Choice
          label="Which log"
          value={overlay.log.id}
          options={overlaid.map((o) => ({ value: o.log.id, label: o.log.name }))}
          onChange={setLogId}
        />
      )}
      <div className="fields">
        {keys.map((key) => (
          <NumberField
            key={key}
            label={probeLabels[key]}
            unit="mm"
            value={probe[key] ?? 0}
            low={key === 'atMm' || key === 'radiusMm' ? 0 : -2_000}
            high={2_000}
            onChange={(v) => v !== null && setProbe({ ...probe, [key]: v })}
          />
        ))}
        {run.stages.map((stage, i) => (
          <NumberField
            key={`${stage.name} ${i}`}
            label={`${stage.name} lasted`}
            hint={i === 0 ? 'As it was run, not as it was meant.' : undefined}
            unit="min"
            value={lasted[i] ?? 0}
            low={0}
            high={10_080}
            onChange={(v) =>
              v !== null && setTold(run.stages.map((_, q) => (q === i ? v : (told[q] ?? null))))
            }
          />
        ))}
      </div>
      <fieldset className="fit-what">
        <legend>What it is asked for</legend>
        {run.stages.map((stage, i) =>
          seen.includes(i) ? (
            <Tick
              key={`${stage.name} ${i}`}
              label={`the surface coefficient of ${stage.name}`}
              value={hStages.includes(i)}
              onChange={(on) =>
                setPicked(on ? [...hStages, i].sort((a, b) => a - b) : hStages.filter((q) => q !== i))
              }
            />
          ) : null,
        )}
        {alsoKinds.map((kind) => (
          <Tick
            key={kind}
            label={alsoLabels[kind]}
            value={also.includes(kind)}
            onChange={(on) => setAlso(on ? [...also, kind] : also.filter((k) => k !== kind))}
          />
        ))}
      </fieldset>
      {seen.length === 0 ? (
        <p>
          The log sees fewer than four readings of any stage. Put its first reading on the minute at which it
          belongs, and the minutes that the stages lasted.
        </p>
      ) : null}
      <div className="row">
        <Button
          kind="strong"
          onPress={begin}
          disabled={fitting.state === 'working' || seen.length === 0 || hStages.length + also.length === 0}
        >
          Ask the log
        </Button>
        {fitting.state !== 'working' ? null : (
          <>
            <progress aria-label="How far the fit is" value={fitting.share} max={1} />
            <Button onPress={fitting.stop}>Stop</Button>
          </>
        )}
      </div>
      <div aria-live="polite">
        {fitting.failure === null ? null : (
          <p className="field-error" role="alert">
            The engine could not do this. {fitting.failure}
          </p>
        )}
        {fitting.answer === null || asked === null ? null : (
          <>
            <FitFound answer={fitting.answer} />
            {props.readOnly ? null : (
              <UseIt {...props} answer={fitting.answer} asked={asked} kitchen={kitchen} />
            )}
          </>
        )}
      </div>
    </section>
  );
}

interface UseItProps extends LogSaysProps {
  readonly answer: FitAnswer;
  readonly asked: { readonly order: ReturnType<typeof orderOf>; readonly overlay: Overlay };
}

function UseIt({ kitchen, step, cookStages, answer, asked, onStages }: UseItProps) {
  const { order, overlay } = asked;
  const hStages = order.hStages ?? [];
  const offset = step.kind === 'cook' ? 0 : cookStages;
  const joint = order.fit.filter((name) => name === 'diffusivity' || name === 'radiusMm');
  const use = (index: number, hWm2K: number, which: string) => {
    const before = [...step.stages];
    const value = answer.fitted[index === hStages[0] ? 'hWm2K' : `stages[${index}].hWm2K`];
    if (value === undefined) return;
    const range = value.highOpen
      ? `at least ${roundedDown(value.low95)}`
      : `${roundedDown(value.low95)} to ${Math.ceil(value.high95)}`;
    const day = dayOf(overlay.log.startedAt ?? overlay.log.importedAt, kitchen.zone);
    const text = `${which} fitted from log ${overlay.log.name} of ${day} (95 in 100: ${range})`.slice(0, 300);
    onStages(
      before.map((stage, i) => (i === index - offset ? { ...stage, hWm2K, hFrom: { hWm2K, text } } : stage)),
    );
    say(`The stage now has ${hWm2K} W/(m² K).`, () => onStages(before));
  };
  return (
    <div className="fit-use stack">
      {hStages.map((index, q) => {
        const value = answer.fitted[q === 0 ? 'hWm2K' : `stages[${index}].hWm2K`];
        const stage = order.stages[index];
        const here = step.stages[index - offset];
        if (value === undefined || stage === undefined) return null;
        const cautious = roundedDown(value.low95);
        const usable =
          (value.told || value.highOpen) && !value.lowOpen && joint.length === 0 && here !== undefined;
        return (
          <div key={index} className="stack">
            {usable ? (
              <div className="row">
                <Button kind="strong" onPress={() => use(index, cautious, 'the cautious end of what was')}>
                  Use {cautious} for {stage.name}, the cautious end
                </Button>
                {value.highOpen || value.atBound ? null : (
                  <Button onPress={() => use(index, roundedDown(value.value), 'what was')}>
                    Use {roundedDown(value.value)}, the likeliest
                  </Button>
                )}
              </div>
            ) : null}
            {joint.length > 0 && here !== undefined ? (
              <p>
                This coefficient goes with the size and the diffusivity that were fitted with it, which the
                step does not have. For the step, ask for the coefficient alone.
              </p>
            ) : null}
            <KeepFit
              key={`${overlay.log.id} ${index} ${answer.runs} ${answer.rmseC}`}
              kitchenId={kitchen.id}
              logId={overlay.log.id}
              fromMin={overlay.fromMin}
              stage={index}
              stageName={stage.name}
              medium={(stage.medium ?? stage.name).slice(0, 40)}
              order={order}
              value={value}
            />
          </div>
        );
      })}
    </div>
  );
}
