import type { ReactNode } from 'react';

/** What should happen, set apart from what is set. */
export function Foreseen({ children }: { readonly children: ReactNode }) {
  return (
    <section className="foreseen" aria-label="What to expect">
      <h3>Expect</h3>
      <div className="stack">{children}</div>
    </section>
  );
}
