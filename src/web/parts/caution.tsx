import type { ReactNode } from 'react';
import type { Place } from '../../contract/records.ts';
import './fold.css';

const authorities: Record<Place, string> = {
  'GB-ENG': 'your local authority’s food officers and the Food Standards Agency',
  'GB-WLS': 'your local authority’s food officers and the Food Standards Agency',
  'GB-SCT': 'your local authority’s food officers and Food Standards Scotland',
  'GB-NIR': 'your district council’s food officers and the Food Standards Agency',
  EU: 'your competent authority',
  US: 'your local health department and, for an inspected plant, the inspection service',
};

/** The usual cautions, wherever a result is read. `children`: what is special to this result. */
export function Caution({ place, children }: { readonly place?: Place; readonly children?: ReactNode }) {
  return (
    <div className="caution" role="note" aria-label="Caution">
      {children}
      <p>
        Advice, not a licence. Measure the core of the piece itself with a checked probe. What{' '}
        {place === undefined ? 'your local authority' : authorities[place]} and qualified people say stands
        above anything shown here.
      </p>
    </div>
  );
}
