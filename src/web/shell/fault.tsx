import { Component, type ReactNode } from 'react';

interface State {
  readonly error: Error | null;
}

/** A fault of the program is said plainly and stays inside its own part of the page. */
export class Fault extends Component<{ readonly children: ReactNode }, State> {
  override state: State = { error: null };

  static getDerivedStateFromError(error: Error): State {
    return { error };
  }

  override render() {
    const { error } = this.state;
    if (error === null) return this.props.children;
    return (
      <section className="page stack" role="alert">
        <h1>This part of the program has failed</h1>
        <p>
          It is our fault, not yours. What the server has acknowledged is kept, and what you had typed on the
          bench is kept on this device. Load the page again to go on.
        </p>
        <p className="quiet small">{error.message}</p>
        <p>
          <button type="button" className="button button-strong" onClick={() => window.location.reload()}>
            Load again
          </button>
        </p>
      </section>
    );
  }
}
