import type { Ask, Step } from '../../../../contract/steps.ts';
import { limitText } from '../../../../documents/pictures/step-time.ts';
import { useUnits } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { TextField, Tick } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { newAsk } from '../bench/new-step.ts';
import './asks.css';

const kindOptions: readonly { value: Ask['kind']; label: string }[] = [
  { value: 'temperature', label: 'Temperature' },
  { value: 'weight', label: 'Weight' },
  { value: 'duration', label: 'Time taken' },
  { value: 'count', label: 'Count' },
  { value: 'tick', label: 'Tick: done' },
  { value: 'note', label: 'Note' },
  { value: 'core log', label: 'Core log: the probe’s whole curve' },
];
const unitOf: Partial<Record<Ask['kind'], string>> = {
  temperature: '°C',
  weight: 'g',
  duration: 'min',
  count: 'pieces',
};

export interface AsksEditorProps {
  readonly step: Step;
  readonly readOnly: boolean;
  readonly onChange: (asks: Ask[], about: string) => void;
}

/** What whoever makes the batch records at this step, and the limits it is held to. */
export function AsksEditor({ step, readOnly, onChange }: AsksEditorProps) {
  const units = useUnits();
  const put = (i: number, patch: Partial<Ask>, drop: readonly (keyof Ask)[] = []) =>
    onChange(
      step.asks.map((a, j) => {
        if (j !== i) return a;
        const next = { ...a, ...patch };
        for (const key of drop) delete next[key];
        return next;
      }),
      `ask ${i} ${Object.keys(patch)[0] ?? drop[0] ?? ''}`,
    );
  return (
    <section className="asks" aria-labelledby={`asks-${step.id}`}>
      <h3 id={`asks-${step.id}`}>Recorded when it is made</h3>
      {step.asks.length === 0 ? (
        <p className="quiet">Nothing is recorded at this step.</p>
      ) : (
        <ol className="ask-list">
          {step.asks.map((ask, i) => {
            const limit = limitText(ask, units);
            return (
              <li key={ask.id}>
                <details className="ask" open={!readOnly && ask.label === ''}>
                  <summary>
                    <span>{ask.label === '' ? 'What is recorded?' : ask.label}</span>
                    {limit === null ? null : <strong className="ask-limit">{limit}</strong>}
                    {ask.critical === true ? <span className="ask-critical">◆ critical</span> : null}
                  </summary>
                  <div className="stack ask-fields">
                    <TextField
                      label="What"
                      value={ask.label}
                      maxLength={120}
                      readOnly={readOnly}
                      onChange={(label) => put(i, { label })}
                    />
                    <div className="fields">
                      <Choice
                        label="How"
                        value={ask.kind}
                        options={kindOptions}
                        readOnly={readOnly}
                        onChange={(kind) =>
                          put(i, { kind }, unitOf[kind] === unitOf[ask.kind] ? [] : ['low', 'high'])
                        }
                      />
                      {unitOf[ask.kind] === undefined ? null : (
                        <>
                          <NumberField
                            label="At least"
                            optional
                            unit={unitOf[ask.kind]!}
                            value={ask.low ?? null}
                            high={ask.high}
                            readOnly={readOnly}
                            onChange={(v) => (v === null ? put(i, {}, ['low']) : put(i, { low: v }))}
                          />
                          <NumberField
                            label="At most"
                            optional
                            unit={unitOf[ask.kind]!}
                            value={ask.high ?? null}
                            low={ask.low}
                            readOnly={readOnly}
                            onChange={(v) => (v === null ? put(i, {}, ['high']) : put(i, { high: v }))}
                          />
                        </>
                      )}
                    </div>
                    <Tick
                      label="Critical: out of limit stops the batch until somebody has decided what now"
                      value={ask.critical === true}
                      readOnly={readOnly}
                      onChange={(critical) => (critical ? put(i, { critical }) : put(i, {}, ['critical']))}
                    />
                    <TextField
                      label="Why this limit"
                      value={ask.basis ?? ''}
                      maxLength={300}
                      lines={2}
                      readOnly={readOnly}
                      hint="A rule of the book, the law’s figure, or common practice."
                      onChange={(basis) => (basis === '' ? put(i, {}, ['basis']) : put(i, { basis }))}
                    />
                    {readOnly ? null : (
                      <Button
                        kind="quiet"
                        onPress={() =>
                          onChange(
                            step.asks.filter((_, j) => j !== i),
                            'remove ask',
                          )
                        }
                      >
                        Record this no more
                      </Button>
                    )}
                  </div>
                </details>
              </li>
            );
          })}
        </ol>
      )}
      {readOnly || step.asks.length >= 20 ? null : (
        <Button onPress={() => onChange([...step.asks, newAsk()], 'add ask')}>Record something more</Button>
      )}
    </section>
  );
}
