import { useEffect, useId, useRef, useState } from 'react';
import type { Ask } from '../../../contract/steps.ts';
import { Button } from '../../parts/button.tsx';
import { type Measure, say, toBase, type Unit, type Units, unitsFor } from './measures.ts';
import { type Doubt, doubtOf, impossible, isSum, type Key, keyOfKeyboard, press, total } from './pad.ts';
import './pad.css';

const keys: readonly Key[] = ['7', '8', '9', '⌫', '4', '5', '6', '×', '1', '2', '3', '+', '−', '0', '.', '÷'];
const spoken: Partial<Record<Key, string>> = {
  '⌫': 'Rub out the last key',
  '×': 'times',
  '+': 'plus',
  '−': 'minus',
  '÷': 'divided by',
  '.': 'point',
};

export interface PadProps {
  readonly ask: Ask;
  readonly measure: Measure;
  readonly units: Units;
  /** What the step says it should be near, where the ask has no limit of its own. */
  readonly expected: number | null;
  readonly limit: string | null;
  /** Keeps the value, in the ask's own unit. Resolves when this device has it. */
  readonly onKeep: (value: number) => Promise<void>;
  readonly keepWord?: string;
}

/** A number pad for one wet thumb: big keys, the unit always in sight, one question for what cannot well be meant. */
export function Pad({ ask, measure, units, expected, limit, onKeep, keepWord }: PadProps) {
  const offered = unitsFor(measure, units, ask.low ?? ask.high ?? expected ?? undefined);
  const [unit, setUnit] = useState<Unit>(offered[0] as Unit);
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const [doubt, setDoubt] = useState<Doubt | null>(null);
  const input = useRef<HTMLInputElement>(null);
  const id = useId();
  const n = total(text);
  const question = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (doubt !== null) question.current?.focus();
  }, [doubt]);

  const type = (key: Key) => {
    setText((was) => press(was, key));
    setWrong(null);
    setDoubt(null);
  };
  const keepThis = async (amount: number, inUnit: Unit) => {
    await onKeep(toBase(amount, inUnit));
    setText('');
    setDoubt(null);
    setWrong(null);
    setUnit(inUnit);
  };
  const keep = async () => {
    if (n === null) {
      setWrong(text === '' ? 'Type a number first.' : 'That sum is not finished.');
      input.current?.focus();
      return;
    }
    const never = impossible(measure, n, unit);
    if (never !== null) {
      setWrong(never);
      return;
    }
    const asked = doubtOf(ask, n, unit, expected);
    if (asked !== null) setDoubt(asked);
    else await keepThis(n, unit);
  };

  return (
    <div className="pad">
      <div className={text.length > 6 ? 'pad-shown pad-shown-long' : 'pad-shown'}>
        <input
          ref={input}
          id={id}
          className="pad-text"
          inputMode="none"
          autoComplete="off"
          aria-label={`${ask.label}, ${unit}`}
          aria-describedby={limit === null ? undefined : `${id}-limit`}
          aria-invalid={wrong === null ? undefined : true}
          aria-errormessage={wrong === null ? undefined : `${id}-wrong`}
          value={text}
          onChange={(e) => {
            const typed = [...e.target.value]
              .map(keyOfKeyboard)
              .filter((k): k is Key => k !== null && k !== '⌫');
            setText(typed.reduce(press, ''));
            setWrong(null);
            setDoubt(null);
          }}
          onKeyDown={(e) => {
            if (e.key === 'Enter') {
              e.preventDefault();
              void keep();
            }
          }}
        />
        <span className="pad-unit">{unit}</span>
      </div>
      {isSum(text) ? (
        <output className="pad-sum" htmlFor={id}>
          {n === null ? '= …' : `= ${say(toBase(n, unit), unit)}`}
        </output>
      ) : null}
      {limit === null ? null : (
        <p className="pad-limit" id={`${id}-limit`}>
          Limit: <strong>{limit}</strong>
        </p>
      )}
      {wrong === null ? null : (
        <p className="pad-wrong" id={`${id}-wrong`} role="alert">
          ◆ {wrong}
        </p>
      )}
      {doubt === null || n === null ? (
        <>
          {offered.length < 2 ? null : (
            <fieldset className="pad-units">
              <legend className="unseen">Unit</legend>
              {offered.map((u) => (
                <button key={u} type="button" aria-pressed={u === unit} onClick={() => setUnit(u)}>
                  {u}
                </button>
              ))}
            </fieldset>
          )}
          <div className="pad-keys">
            {keys.map((key) => (
              <button key={key} type="button" aria-label={spoken[key]} onClick={() => type(key)}>
                {key}
              </button>
            ))}
          </div>
          <Button kind="strong" size="line" className="pad-keep" onPress={keep}>
            {n === null ? (keepWord ?? 'Keep') : `${keepWord ?? 'Keep'} ${say(toBase(n, unit), unit)}`}
          </Button>
        </>
      ) : (
        <div
          className="pad-doubt"
          role="alertdialog"
          aria-labelledby={`${id}-doubt`}
          tabIndex={-1}
          ref={question}
        >
          <p id={`${id}-doubt`}>{doubt.question}</p>
          {doubt.instead.map((i) => (
            <Button key={i.label} size="line" className="pad-keep" onPress={() => keepThis(i.n, i.unit)}>
              {i.label} was meant
            </Button>
          ))}
          <Button size="line" className="pad-keep" onPress={() => keepThis(n, unit)}>
            Keep {say(toBase(n, unit), unit)}: that is what it shows
          </Button>
          <Button kind="quiet" size="line" className="pad-keep" onPress={() => setDoubt(null)}>
            Type it again
          </Button>
        </div>
      )}
    </div>
  );
}
