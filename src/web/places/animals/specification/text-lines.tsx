import { useRef } from 'react';
import { flushSync } from 'react-dom';
import { Button } from '../../../parts/button.tsx';
import { linesAfter } from './lines-after.ts';

export interface TextLinesProps {
  readonly label: string;
  readonly values: readonly string[];
  readonly onChange: (values: string[]) => void;
  readonly maxLength: number;
  readonly most: number;
  readonly add: string;
  readonly suggestions?: readonly string[];
}

/** One thing a line. Enter adds the next; a pasted list becomes lines; an emptied line is gone when it is left. */
export function TextLines({ label, values, onChange, maxLength, most, add, suggestions }: TextLinesProps) {
  const list = useRef<HTMLOListElement>(null);
  /** The line is there before the next key is pressed, however fast somebody types. */
  const changeTo = (next: string[], index: number) => {
    flushSync(() => onChange(next));
    list.current?.querySelectorAll<HTMLInputElement>('input')[index]?.focus();
  };
  const put = (index: number, text: string) => {
    const next = linesAfter(values, index, text, most);
    if (next.length > values.length) changeTo(next, index + next.length - values.length);
    else onChange(next);
  };
  const offered = suggestions?.filter((s) => !values.includes(s)) ?? [];
  return (
    <fieldset className="text-lines">
      <legend className="field-label">{label}</legend>
      <ol ref={list}>
        {values.map((value, i) => (
          <li key={i}>
            <input
              className="control"
              type="text"
              aria-label={`${label}, line ${i + 1}`}
              value={value}
              maxLength={maxLength}
              autoComplete="off"
              onChange={(e) => put(i, e.target.value)}
              onPaste={(e) => {
                const text = e.clipboardData.getData('text');
                if (!/[\r\n]/.test(text.trim())) return;
                e.preventDefault();
                put(i, value === '' ? text : `${value}\n${text}`);
              }}
              onBlur={() => {
                if (value.trim() === '') onChange(values.filter((_, j) => j !== i));
              }}
              onKeyDown={(e) => {
                if (e.key !== 'Enter' || value.trim() === '' || values.length >= most) return;
                e.preventDefault();
                changeTo([...values.slice(0, i + 1), '', ...values.slice(i + 1)], i + 1);
              }}
            />
            <Button
              kind="quiet"
              label={`Take out ${value}`}
              onPress={() => onChange(values.filter((_, j) => j !== i))}
            >
              Take out
            </Button>
          </li>
        ))}
      </ol>
      <div className="row">
        {values.length >= most ? (
          <p className="quiet small">{most} lines are the most.</p>
        ) : (
          <>
            <Button onPress={() => changeTo([...values, ''], values.length)}>{add}</Button>
            {offered.map((s) => (
              <Button key={s} kind="quiet" onPress={() => onChange([...values, s])}>
                + {s}
              </Button>
            ))}
          </>
        )}
      </div>
    </fieldset>
  );
}
