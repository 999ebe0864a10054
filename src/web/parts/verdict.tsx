import type { ReactNode } from 'react';
import './verdict.css';

/** `unknown` is never drawn like `holds`: what nobody has shown is not fine. */
export type VerdictState = 'holds' | 'not yet' | 'does not hold' | 'unknown' | 'neutral';

export interface VerdictProps {
  readonly state: VerdictState;
  /** The word; the state's own where none is given. */
  readonly word?: string;
  readonly children?: ReactNode;
  readonly size?: 'usual' | 'large';
}

const shapes: Record<VerdictState, ReactNode> = {
  holds: (
    <>
      <circle cx="8" cy="8" r="7.2" fill="currentColor" />
      <path d="m4.6 8.3 2.4 2.4 4.5-5" fill="none" stroke="var(--paper)" strokeWidth="1.8" />
    </>
  ),
  'not yet': (
    <>
      <path
        d="M8 1.2 15.2 14.4H.8z"
        fill="none"
        stroke="currentColor"
        strokeWidth="1.7"
        strokeLinejoin="round"
      />
      <path d="M4.4 11h7.2M8 6v5" stroke="currentColor" strokeWidth="1.5" />
    </>
  ),
  'does not hold': (
    <>
      <path d="M5 .8h6L15.2 5v6L11 15.2H5L.8 11V5z" fill="currentColor" />
      <path d="m5 5 6 6m0-6-6 6" stroke="var(--paper)" strokeWidth="1.8" />
    </>
  ),
  unknown: (
    <>
      <rect
        x="1"
        y="1"
        width="14"
        height="14"
        fill="none"
        stroke="currentColor"
        strokeWidth="1.5"
        strokeDasharray="3 2"
      />
      <path
        d="M6 6.2a2 2 0 1 1 2.9 1.8c-.6.3-.9.7-.9 1.4M8 11v1.2"
        fill="none"
        stroke="currentColor"
        strokeWidth="1.5"
      />
    </>
  ),
  neutral: <path d="M1.5 8h13" stroke="currentColor" strokeWidth="2.4" />,
};

/** A word, a shape and a colour, in that order of importance. */
export function Verdict({ state, word, children, size }: VerdictProps) {
  return (
    <div
      className={`verdict verdict-${state.replaceAll(' ', '-')}${size === 'large' ? ' verdict-large' : ''}`}
    >
      <p className="verdict-word">
        <svg className="verdict-shape" viewBox="0 0 16 16" aria-hidden="true">
          {shapes[state]}
        </svg>
        {word ?? state}
      </p>
      {children === undefined ? null : <div className="verdict-why">{children}</div>}
    </div>
  );
}
