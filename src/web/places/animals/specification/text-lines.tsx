import { useRef } from 'react';
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
  const focus = (index: number) =>
    requestAnimationFrame(() =>
      list.current?.querySelectorAll<HTMLInputElement>('input')[Math.max(0, index)]?.focus(),
    );
  const put = (index: number, text: string) => {
    const next = linesAfter(values, index, text, most);
    onChange(next);
    if (next.length > values.length) focus(index + next.length - values.length);
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
                onChange([...values.slice(0, i + 1), '', ...values.slice(i + 1)]);
                focus(i + 1);
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
            <Button
              onPress={() => {
                onChange([...values, '']);
                focus(values.length);
              }}
            >
              {add}
            </Button>
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
