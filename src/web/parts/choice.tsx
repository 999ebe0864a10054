import type { ReactNode } from 'react';
import { Field } from './field.tsx';

export interface Option<V extends string> {
  readonly value: V;
  readonly label: string;
}

export interface ChoiceProps<V extends string> {
  readonly label: ReactNode;
  readonly value: V;
  readonly options: readonly Option<V>[];
  readonly onChange: (value: V) => void;
  readonly hint?: ReactNode;
  readonly error?: ReactNode;
  readonly readOnly?: boolean;
  readonly className?: string;
}

/** One of a few. The device's own list, which every phone knows how to show. */
export function Choice<V extends string>(props: ChoiceProps<V>) {
  const chosen = props.options.find((o) => o.value === props.value);
  return (
    <Field
      label={props.label}
      hint={props.hint}
      error={props.error}
      {...(props.className === undefined ? {} : { className: props.className })}
    >
      {(tie) =>
        props.readOnly === true ? (
          <input {...tie} className="control" readOnly value={chosen?.label ?? props.value} />
        ) : (
          <select
            {...tie}
            className="control"
            value={props.value}
            onChange={(e) => props.onChange(e.target.value as V)}
          >
            {chosen === undefined ? (
              <option value={props.value}>{props.value === '' ? 'Choose…' : props.value}</option>
            ) : null}
            {props.options.map((o) => (
              <option key={o.value} value={o.value}>
                {o.label}
              </option>
            ))}
          </select>
        )
      }
    </Field>
  );
}
