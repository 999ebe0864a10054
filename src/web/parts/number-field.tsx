import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useUnits } from '../kitchen.tsx';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import { type Doubt, type HeldUnit, readNumber, showNumber, unitLabel } from './quantity.ts';

export interface NumberFieldProps {
  readonly label: ReactNode;
  /** In `unit`; null: not given. */
  readonly value: number | null;
  readonly onChange: (value: number | null) => void;
  /** The unit in which the value is held; the field shows and takes the kitchen's own. */
  readonly unit: HeldUnit;
  /** Bounds, in `unit`. */
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  readonly whole?: boolean;
  /** May be left empty. */
  readonly optional?: boolean;
  readonly readOnly?: boolean;
  readonly hint?: ReactNode;
  readonly error?: ReactNode;
  /** Asked once before an unlikely number is taken. */
  readonly doubt?: (value: number, stated: boolean) => Doubt | null;
  readonly onEnter?: () => void;
  readonly className?: string;
}

/** The label of the first number in a form that was typed but not taken; null where all are settled. */
export function unsettledIn(form: HTMLElement | null): string | null {
  const field = form?.querySelector('.unsettled');
  return field === null || field === undefined
    ? null
    : (field.querySelector('.field-label')?.textContent ?? 'a number');
}

/** A number as a cook types it: arithmetic, any unit; what cannot be meant is said beside the field and not taken. */
export function NumberField(props: NumberFieldProps) {
  const system = useUnits();
  const { value, unit, low, high, optional, doubt } = props;
  const [text, setText] = useState<string | null>(null);
  const [told, setTold] = useState<string | null>(null);
  const [asked, setAsked] = useState<{ doubt: Doubt; value: number } | null>(null);
  const before = useRef(value);
  const sent = useRef(value);
  const send = (next: number | null) => {
    sent.current = next;
    props.onChange(next);
  };
  // The value has changed from elsewhere (undo, another hand): what was typed here is no longer what it says.
  useEffect(() => {
    if (value === sent.current) return;
    sent.current = value;
    setText(null);
    setTold(null);
    setAsked(null);
  }, [value]);

  const take = (typed: string, leaving: boolean): void => {
    if (typed.trim() === '' && optional === true) {
      setTold(null);
      setAsked(null);
      if (value !== null) send(null);
      return;
    }
    const read = readNumber(typed, unit, system, { low, high });
    const message = !read.ok
      ? read.message
      : props.whole === true && !Number.isInteger(read.value)
        ? 'a whole number'
        : null;
    if (message !== null || !read.ok) {
      setTold(leaving ? `Not taken: ${message}` : null);
      return;
    }
    const question = doubt?.(read.value, read.stated) ?? null;
    setAsked(question === null ? null : { doubt: question, value: read.value });
    setTold(null);
    if (question === null && read.value !== value) send(read.value);
  };
  const settle = (chosen: number) => {
    setAsked(null);
    setText(null);
    send(chosen);
  };

  return (
    <Field
      label={props.label}
      hint={props.hint}
      error={told ?? props.error}
      className={`${props.className ?? ''}${told === null && asked === null ? '' : ' unsettled'}`}
    >
      {(tie) => (
        <>
          <div className="number-box">
            <input
              {...tie}
              className="control"
              type="text"
              inputMode="decimal"
              autoComplete="off"
              readOnly={props.readOnly}
              value={text ?? showNumber(value, unit, system)}
              onFocus={(e) => {
                if (text === null) before.current = value;
                if (props.readOnly !== true) e.target.select();
              }}
              onChange={(e) => {
                setText(e.target.value);
                take(e.target.value, false);
              }}
              onBlur={(e) => {
                if (text === null) return;
                const read = readNumber(text, unit, system, { low, high });
                take(e.target.value, true);
                const kept = read.ok && (doubt?.(read.value, read.stated) ?? null) === null;
                if (kept || (text.trim() === '' && optional === true)) setText(null);
                // "3" on the way to an unlikely or impossible "38" is not what was meant.
                else if (before.current !== value) send(before.current);
              }}
              onKeyDown={(e) => {
                if (e.key === 'Enter') {
                  e.currentTarget.blur();
                  props.onEnter?.();
                } else if (e.key === 'Escape' && text !== null) {
                  setText(null);
                  setTold(null);
                  setAsked(null);
                }
              }}
            />
            <span className="number-unit">{unitLabel(unit, system)}</span>
          </div>
          {asked === null ? null : (
            <div className="number-doubt" role="alert">
              <p>{asked.doubt.ask}</p>
              <div className="row">
                <Button onPress={() => settle(asked.doubt.instead.value)}>{asked.doubt.instead.label}</Button>
                <Button onPress={() => settle(asked.value)}>Keep what I typed</Button>
              </div>
            </div>
          )}
        </>
      )}
    </Field>
  );
}
