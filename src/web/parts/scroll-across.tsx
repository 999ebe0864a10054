import type { ReactNode } from 'react';

export interface ScrollAcrossProps {
  /** What is inside, for who reads by ear. */
  readonly label: string;
  readonly className?: string;
  readonly children: ReactNode;
}

/** What is wider than a phone scrolls in its own frame, by finger or, once it has the focus, by the arrow keys. */
export function ScrollAcross({ label, className = '', children }: ScrollAcrossProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling frame must take the focus, or the keyboard cannot scroll it
    <section className={`scroll-x ${className}`} aria-label={label} tabIndex={0}>
      {children}
    </section>
  );
}
