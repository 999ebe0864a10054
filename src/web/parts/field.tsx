import { type ReactNode, useId } from 'react';
import './field.css';

export interface FieldProps {
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly error?: ReactNode;
  readonly className?: string;
  /** Gets the ids that tie the control to its label, hint and error. */
  readonly children: (tie: {
    id: string;
    'aria-describedby': string | undefined;
    'aria-invalid': true | undefined;
  }) => ReactNode;
}

/** A label, a control, a hint and an error, tied together. */
export function Field({ label, hint, error, className, children }: FieldProps) {
  const id = useId();
  const wrong = error !== undefined && error !== null && error !== '';
  const described = [hint === undefined ? '' : `${id}-hint`, wrong ? `${id}-error` : ''].filter(
    (x) => x !== '',
  );
  return (
    <div className={className === undefined ? 'field' : `field ${className}`}>
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      {children({
        id,
        'aria-describedby': described.length === 0 ? undefined : described.join(' '),
        'aria-invalid': wrong ? true : undefined,
      })}
      {hint === undefined ? null : (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {wrong ? (
        <p className="field-error" id={`${id}-error`} role="alert">
          {error}
        </p>
      ) : null}
    </div>
  );
}

export interface TextFieldProps {
  readonly label: ReactNode;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: ReactNode;
  readonly error?: ReactNode;
  readonly lines?: number;
  readonly maxLength?: number;
  readonly readOnly?: boolean;
  readonly autoFocus?: boolean;
  readonly autoComplete?: string;
  readonly suggestions?: readonly string[];
  readonly onEnter?: () => void;
  readonly onBlur?: () => void;
  readonly className?: string;
}

export function TextField(props: TextFieldProps) {
  const list = useId();
  const { value, onChange, readOnly, maxLength, onEnter, onBlur } = props;
  return (
    <Field
      label={props.label}
      hint={props.hint}
      error={props.error}
      className={`field-text ${props.className ?? ''}`}
    >
      {(tie) =>
        props.lines !== undefined && props.lines > 1 ? (
          <textarea
            {...tie}
            className="control"
            rows={props.lines}
            value={value}
            maxLength={maxLength}
            readOnly={readOnly}
            onChange={(e) => onChange(e.target.value)}
            onBlur={onBlur}
          />
        ) : (
          <>
            <input
              {...tie}
              className="control"
              type="text"
              value={value}
              maxLength={maxLength}
              readOnly={readOnly}
              // biome-ignore lint/a11y/noAutofocus: the first field of a dialog that has just been opened
              autoFocus={props.autoFocus}
              autoComplete={props.autoComplete ?? 'off'}
              list={props.suggestions === undefined ? undefined : list}
              onChange={(e) => onChange(e.target.value)}
              onBlur={onBlur}
              onKeyDown={(e) => {
                if (e.key === 'Enter' && onEnter !== undefined) {
                  e.preventDefault();
                  onEnter();
                }
              }}
            />
            {props.suggestions === undefined ? null : (
              <datalist id={list}>
                {props.suggestions.map((s) => (
                  <option key={s} value={s} />
                ))}
              </datalist>
            )}
          </>
        )
      }
    </Field>
  );
}

export interface TickProps {
  readonly label: ReactNode;
  readonly value: boolean;
  readonly onChange: (value: boolean) => void;
  readonly readOnly?: boolean;
}

/** Yes or no. */
export function Tick({ label, value, onChange, readOnly }: TickProps) {
  return (
    <label className="tick">
      <input
        type="checkbox"
        checked={value}
        disabled={readOnly}
        onChange={(e) => onChange(e.target.checked)}
      />
      <span>{label}</span>
    </label>
  );
}
