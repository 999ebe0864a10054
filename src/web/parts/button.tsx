import { type ReactNode, useRef, useState } from 'react';
import { Problem } from './problem.tsx';
import './button.css';

export interface ButtonProps {
  readonly children: ReactNode;
  /** A promise makes the button wait: it shows that it works, and shows what went wrong. */
  readonly onPress?: () => unknown;
  readonly kind?: 'plain' | 'strong' | 'quiet' | 'danger';
  readonly size?: 'usual' | 'line';
  readonly type?: 'button' | 'submit';
  /** Shown while it works. */
  readonly busy?: string;
  /** From outside: a form that is being sent. */
  readonly pending?: boolean;
  readonly disabled?: boolean;
  readonly pressed?: boolean;
  readonly expanded?: boolean;
  readonly controls?: string;
  readonly label?: string;
  readonly keys?: string;
  readonly className?: string;
}

/** A button that owns its waiting and its error. */
export function Button(props: ButtonProps) {
  const [working, setWorking] = useState(false);
  const [error, setError] = useState<unknown>(null);
  const latest = useRef(0);
  const busy = working || props.pending === true;

  const press = async () => {
    if (busy) return;
    const result = props.onPress?.();
    if (!(result instanceof Promise)) return;
    const run = ++latest.current;
    setWorking(true);
    setError(null);
    try {
      await result;
    } catch (caught) {
      if (run === latest.current) setError(caught);
    } finally {
      if (run === latest.current) setWorking(false);
    }
  };

  const classes = ['button', `button-${props.kind ?? 'plain'}`];
  if (props.size === 'line') classes.push('button-line');
  if (props.className !== undefined) classes.push(props.className);
  return (
    <>
      <button
        type={props.type ?? 'button'}
        className={classes.join(' ')}
        onClick={props.onPress === undefined ? undefined : () => void press()}
        disabled={props.disabled}
        aria-busy={busy || undefined}
        aria-pressed={props.pressed}
        aria-expanded={props.expanded}
        aria-controls={props.controls}
        aria-label={props.label}
        aria-keyshortcuts={props.keys}
      >
        {busy ? (props.busy ?? 'Working…') : props.children}
      </button>
      {error === null ? null : <Problem error={error} />}
    </>
  );
}
