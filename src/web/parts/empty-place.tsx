import type { ReactNode } from 'react';

export interface EmptyPlaceProps {
  /** What it is for, in one line. */
  readonly title: string;
  readonly children?: ReactNode;
  /** The one thing to do first. */
  readonly action?: ReactNode;
}

/** An empty place says what it is for and offers the one thing to do first. */
export function EmptyPlace({ title, children, action }: EmptyPlaceProps) {
  return (
    <section className="measure stack">
      <h2>{title}</h2>
      {children === undefined ? null : <div className="stack">{children}</div>}
      {action === undefined ? null : <div className="row">{action}</div>}
    </section>
  );
}
