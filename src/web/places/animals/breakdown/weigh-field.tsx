import { useEffect, useId, useRef, useState, useSyncExternalStore } from 'react';
import { formatQuantity, usualUnit } from '../../../../core/units.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { type Key, keyOfKeyboard, press } from '../../line/pad.ts';
import { useContainers } from './kept-on-device.ts';
import { holdTare, type Item, nextHeld, readWeight } from './weigh-order.ts';

export interface Typed {
  readonly grossGrams: number;
  readonly tareGrams: number;
  readonly pieces: number | null;
}

export interface WeighFieldProps {
  readonly item: Item;
  /** Changes whenever the scale is turned to: the field takes the keys again. */
  readonly turn: number;
  readonly title: string;
  /** Keeps the weight, or says why it cannot be. */
  readonly onWeigh: (typed: Typed) => Promise<string | null>;
  readonly onSkip: () => void;
  readonly onMove: (by: -1 | 1) => void;
  readonly onTakeBack: () => void;
  /** How the balance stands, in a few words. */
  readonly left: string;
  /** How many are looked for; never written unless counted. */
  readonly pieces: number | null;
}

const keys: readonly Key[] = ['7', '8', '9', '⌫', '4', '5', '6', '×', '1', '2', '3', '+', '.', '0', '−', '÷'];
const spoken: Partial<Record<Key, string>> = {
  '⌫': 'Rub out the last key',
  '×': 'times',
  '+': 'plus',
  '−': 'minus',
  '÷': 'divided by',
  '.': 'point',
};

const thumb = '(pointer: coarse), (max-width: 40rem)';
function useThumb(): boolean {
  return useSyncExternalStore(
    (listener) => {
      const media = matchMedia(thumb);
      media.addEventListener('change', listener);
      return () => media.removeEventListener('change', listener);
    },
    () => matchMedia(thumb).matches,
  );
}

/** One field at the scale: Enter writes and goes on, `t` takes the container off, `p` counts pieces. */
export function WeighField(props: WeighFieldProps) {
  const { item, turn, onWeigh, onSkip, onMove, onTakeBack } = props;
  const kitchen = useKitchen();
  const [text, setText] = useState('');
  const [pieces, setPieces] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const [containers, keepContainers] = useContainers(kitchen.id);
  const [held, setHeld] = useState<number | null>(null);
  const input = useRef<HTMLInputElement>(null);
  const scale = useRef<HTMLElement>(null);
  const count = useRef<HTMLInputElement>(null);
  const id = useId();
  const pad = useThumb();
  const unit = usualUnit('mass', kitchen.units);
  const container = held === null ? undefined : containers[held];
  const read = text.trim() === '' ? null : readWeight(text, kitchen.units);
  const tare = container?.grams ?? 0;
  const mass = (grams: number) => formatQuantity(grams, 'mass', kitchen.units);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another place on the scale is another weight
  useEffect(() => {
    setWrong(null);
    input.current?.focus({ preventScroll: pad });
    if (pad) scale.current?.scrollIntoView({ block: 'start' });
  }, [item.key, turn]);

  const type = (next: string) => {
    setText(next);
    setWrong(null);
  };
  const write = async () => {
    if (text.trim() === '') {
      onSkip();
      return;
    }
    const weight = readWeight(text, kitchen.units);
    if (!weight.ok) {
      setWrong(weight.message);
      return;
    }
    if (weight.grossGrams > 0 && weight.grossGrams < tare) {
      setWrong(`${mass(weight.grossGrams)} is less than the ${container?.name}, ${mass(tare)}.`);
      return;
    }
    const counted = pieces.trim() === '' ? null : Number(pieces);
    if (counted !== null && (!Number.isInteger(counted) || counted < 0 || counted > 100_000)) {
      setWrong('Pieces are counted whole.');
      return;
    }
    const typed = { text, pieces };
    setText('');
    setPieces('');
    const said = await onWeigh({
      grossGrams: weight.grossGrams,
      tareGrams: weight.grossGrams === 0 ? 0 : tare,
      pieces: counted,
    });
    input.current?.focus();
    if (said === null) return;
    setText(typed.text);
    setPieces(typed.pieces);
    setWrong(said);
  };
  const changeTare = () => {
    if (read?.ok === true) {
      const next = holdTare(containers, read.grossGrams);
      keepContainers(next.containers);
      setHeld(next.held);
      type('');
    } else setHeld(nextHeld(containers, held));
    input.current?.focus();
  };

  return (
    <section className="scale" ref={scale} aria-labelledby={`${id}-what`}>
      <h2 className="scale-what" id={`${id}-what`}>
        {props.title}
      </h2>
      <div className="scale-row">
        <div className="scale-box">
          <input
            ref={input}
            id={id}
            className="scale-text"
            type="text"
            inputMode={pad ? 'none' : 'decimal'}
            autoComplete="off"
            aria-label={`${props.title}, weight in ${unit}`}
            aria-describedby={`${id}-comes`}
            aria-invalid={wrong === null ? undefined : true}
            aria-errormessage={wrong === null ? undefined : `${id}-wrong`}
            value={text}
            onChange={(e) => type(e.target.value)}
            onKeyDown={(e) => {
              const key = e.key.toLowerCase();
              if (e.ctrlKey || e.metaKey) {
                if (key === 'z' && text === '') {
                  e.preventDefault();
                  onTakeBack();
                }
                return;
              }
              if (key === 'enter') void write();
              else if (key === 'arrowdown') onMove(1);
              else if (key === 'arrowup') onMove(-1);
              else if (key === 't') changeTare();
              else if (key === 'p') count.current?.focus();
              else return;
              e.preventDefault();
            }}
          />
          <span className="scale-unit">{unit}</span>
        </div>
        <label className="scale-pieces">
          <span>Pieces, if counted</span>
          <input
            ref={count}
            className="control"
            type="text"
            inputMode="numeric"
            autoComplete="off"
            value={pieces}
            placeholder={props.pieces === null ? undefined : `${props.pieces} wanted`}
            onChange={(e) => setPieces(e.target.value)}
            onKeyDown={(e) => {
              if (e.key !== 'Enter') return;
              e.preventDefault();
              void write();
            }}
          />
        </label>
      </div>
      <output className="scale-comes" id={`${id}-comes`} htmlFor={id}>
        {read?.ok === true && (read.sum || tare > 0)
          ? tare > 0 && read.grossGrams > 0
            ? `${mass(read.grossGrams)} less ${container?.name} ${mass(tare)} = ${mass(Math.max(0, read.grossGrams - tare))}`
            : `= ${mass(read.grossGrams)}`
          : tare > 0
            ? `${container?.name}, ${mass(tare)}, is taken off.`
            : ' '}
      </output>
      <p className="scale-left" aria-hidden="true">
        {props.left}
      </p>
      {wrong === null ? null : (
        <p className="scale-wrong" id={`${id}-wrong`} role="alert">
          ◆ {wrong}
        </p>
      )}
      {pad ? (
        <div className="scale-keys">
          {keys.map((key) => (
            <button
              key={key}
              type="button"
              aria-label={spoken[key]}
              onClick={() => type(press(fromKeys(text), key))}
            >
              {key}
            </button>
          ))}
        </div>
      ) : null}
      <div className="row scale-doing">
        <Button kind="strong" size="line" onPress={write} keys="Enter">
          {text.trim() === '' ? 'Go on without' : 'Write and go on'}
        </Button>
        <Button size="line" onPress={changeTare} keys="T">
          {read?.ok === true
            ? `Hold ${mass(read.grossGrams)} as tare`
            : container === undefined
              ? containers.length === 0
                ? 'Tare: none'
                : 'Tare: none, change'
              : `Tare: ${container.name} ${mass(container.grams)}`}
        </Button>
        <Button kind="quiet" size="line" onPress={onTakeBack} keys="Control+Z">
          Take the last back
        </Button>
      </div>
    </section>
  );
}

/** What was typed, in the keys of the pad. */
const fromKeys = (text: string): string =>
  [...text]
    .map(keyOfKeyboard)
    .filter((k): k is Key => k !== null && k !== '⌫')
    .reduce(press, '');
