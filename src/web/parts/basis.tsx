import { cite, sources } from '../../core/sources.ts';
import './fold.css';

export interface BasisItem {
  readonly what: string;
  /** A key of the bibliography, or a citation in full. */
  readonly source: string;
  readonly confidence: string;
}

/** What an answer rests on, folded: rule or figure, its source, how sure it is. */
export function Basis({ items, title }: { readonly items: readonly BasisItem[]; readonly title?: string }) {
  if (items.length === 0) return null;
  return (
    <details className="fold">
      <summary>{title ?? 'What this rests on'}</summary>
      <ul className="fold-list">
        {items.map((item) => (
          <li key={`${item.what} ${item.source}`}>
            {item.what}.{' '}
            <span className="quiet">
              {sources[item.source] === undefined ? item.source : cite(item.source)}
            </span>{' '}
            <span className="quiet">({confidenceWord(item.confidence)})</span>
          </li>
        ))}
      </ul>
    </details>
  );
}

const words: Record<string, string> = {
  read: 'read in the source',
  secondary: 'read in a source that quotes it',
  memory: 'from memory, not read again',
  computed: 'computed',
  'common practice': 'common practice, no source',
  assumption: 'an assumption',
};

export function confidenceWord(confidence: string): string {
  return words[confidence] ?? confidence;
}
