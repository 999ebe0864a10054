import { Refusal, Unreachable } from '../api.ts';
import { NobodyChosen } from '../person.ts';
import './button.css';
import { withClock } from './moment.ts';
import './problem.css';

export interface ProblemProps {
  readonly error: unknown;
  /** What to do about it, when the error itself does not say. */
  readonly todo?: string;
  readonly retry?: () => unknown;
}

const headline = (error: unknown): string => {
  if (error instanceof Unreachable || error instanceof NobodyChosen) return error.message;
  if (error instanceof Error && error.message !== '') return error.message;
  return typeof error === 'string' ? error : 'Something went wrong, and it did not say what.';
};

/** What was wrong, where, and what to do. */
export function Problem({ error, todo, retry }: ProblemProps) {
  const problems = error instanceof Refusal ? error.problems : [];
  return (
    <div className="problem" role="alert">
      <p className="problem-what">
        <ProblemMark /> {withClock(headline(error))}
      </p>
      {problems.length === 0 ? null : (
        <ul className="problem-list">
          {problems.map((p) => (
            <li key={`${p.path} ${p.found}`}>
              <strong>{p.path}</strong>: found {p.found}; allowed {p.allowed}
            </li>
          ))}
        </ul>
      )}
      {todo === undefined ? null : <p>{todo}</p>}
      {retry === undefined ? null : (
        <button type="button" className="button button-plain" onClick={() => void retry()}>
          Try again
        </button>
      )}
    </div>
  );
}

function ProblemMark() {
  return (
    <svg className="problem-mark" viewBox="0 0 16 16" aria-hidden="true">
      <path d="M8 1 15 8 8 15 1 8z" fill="none" stroke="currentColor" strokeWidth="1.6" />
      <path d="M8 4.5v4.4M8 10.6v1.2" stroke="currentColor" strokeWidth="1.6" />
    </svg>
  );
}
