/**
 * Saving a draft while it is worked on. Every change is kept on this device at once and sent after a short rest; one save
 * at a time; nothing is dropped here before the server has acknowledged it. Free of the page: how to save, keep and wait
 * is handed in.
 */
import { same } from './same.ts';

export interface Kept<M> {
  readonly rev: number;
  readonly method: M;
}

export interface Where {
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
}

/** What came of one attempt to save. */
export type Outcome<M> =
  | { readonly kind: 'saved'; readonly rev: number }
  /** Somebody saved in between; `theirs` is what stands there now. */
  | { readonly kind: 'conflict'; readonly message: string; readonly theirs: Kept<M> }
  | { readonly kind: 'frozen'; readonly message: string }
  | { readonly kind: 'unreachable'; readonly message: string }
  | { readonly kind: 'refused'; readonly message: string; readonly problems: readonly Where[] }
  | { readonly kind: 'nobody'; readonly message: string };

export type SaveState<M> =
  | { readonly status: 'saved' }
  | { readonly status: 'waiting' }
  | { readonly status: 'saving' }
  | { readonly status: 'invalid'; readonly problems: readonly Where[] }
  | (Exclude<Outcome<M>, { kind: 'saved' }> & { readonly status: 'stopped' });

export interface AutosaveTools<M> {
  /** Sends; never throws. */
  readonly save: (kept: Kept<M>) => Promise<Outcome<M>>;
  readonly keep: (kept: Kept<M>) => void;
  readonly drop: () => void;
  /** What is wrong with it before it is sent; empty when nothing is. */
  readonly check: (method: M) => readonly Where[];
  readonly after: (ms: number, run: () => void) => () => void;
}

export const REST_MS = 1_500;
const BACK_OFF_MS = [2_000, 5_000, 15_000, 30_000];

export class Autosave<M> {
  private state: SaveState<M> = { status: 'saved' };
  private method: M;
  private rev: number;
  /** What stood on the server when this edit began, as last acknowledged; null where that is not known any more. */
  private base: M | null;
  private cancel: (() => void) | null = null;
  private sending: Promise<void> | null = null;
  private tries = 0;
  private readonly listeners = new Set<() => void>();

  constructor(
    private readonly tools: AutosaveTools<M>,
    from: Kept<M>,
  ) {
    this.rev = from.rev;
    this.method = from.method;
    this.base = from.method;
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };
  readonly snapshot = (): SaveState<M> => this.state;
  get currentRev(): number {
    return this.rev;
  }

  private set(state: SaveState<M>): void {
    this.state = state;
    for (const listener of this.listeners) listener();
  }

  private schedule(ms: number): void {
    this.cancel?.();
    this.cancel = this.tools.after(ms, () => {
      this.cancel = null;
      void this.flush();
    });
  }

  /** A change: kept here at once, sent after a rest. In a conflict it is kept and waits for the way out. */
  change(method: M): void {
    if (method === this.method) return;
    this.method = method;
    this.tools.keep({ rev: this.rev, method });
    if (this.state.status === 'stopped' && (this.state.kind === 'conflict' || this.state.kind === 'frozen'))
      return;
    if (this.sending === null) this.set({ status: 'waiting' });
    if (this.state.status === 'stopped' && this.state.kind === 'nobody') return;
    this.schedule(REST_MS);
  }

  /** Sends now what has not been sent; resolves when this attempt is over. */
  async flush(): Promise<void> {
    this.cancel?.();
    this.cancel = null;
    if (this.sending !== null) {
      await this.sending;
      if (this.state.status === 'waiting') await this.flush();
      return;
    }
    if (this.state.status === 'saved') return;
    if (this.state.status === 'stopped' && (this.state.kind === 'conflict' || this.state.kind === 'frozen'))
      return;
    this.sending = this.send().finally(() => {
      this.sending = null;
    });
    await this.sending;
  }

  private async send(): Promise<void> {
    const sent = { rev: this.rev, method: this.method };
    const problems = this.tools.check(sent.method);
    if (problems.length > 0) {
      this.set({ status: 'invalid', problems });
      return;
    }
    this.set({ status: 'saving' });
    const outcome = await this.tools.save(sent);
    // A save whose answer was lost on the way comes back as a conflict with ourselves.
    const acknowledged =
      outcome.kind === 'conflict' && same(outcome.theirs.method, sent.method)
        ? outcome.theirs.rev
        : outcome.kind === 'saved'
          ? outcome.rev
          : null;
    // Somebody saved in between, but what stands there is what this edit began from: nothing of theirs is written over.
    if (
      acknowledged === null &&
      outcome.kind === 'conflict' &&
      this.base !== null &&
      same(outcome.theirs.method, this.base)
    ) {
      this.rev = outcome.theirs.rev;
      this.tools.keep({ rev: this.rev, method: this.method });
      this.set({ status: 'waiting' });
      this.schedule(0);
      return;
    }
    if (acknowledged !== null) {
      this.rev = acknowledged;
      this.base = sent.method;
      this.tries = 0;
      if (this.method === sent.method) {
        this.tools.drop();
        this.set({ status: 'saved' });
      } else {
        this.tools.keep({ rev: this.rev, method: this.method });
        this.set({ status: 'waiting' });
        this.schedule(REST_MS);
      }
      return;
    }
    this.set({ status: 'stopped', ...(outcome as Exclude<Outcome<M>, { kind: 'saved' }>) });
    if (outcome.kind === 'unreachable') {
      this.schedule(BACK_OFF_MS[Math.min(this.tries, BACK_OFF_MS.length - 1)]!);
      this.tries += 1;
    } else if (outcome.kind === 'refused' && this.method !== sent.method) this.schedule(REST_MS);
  }

  /** Out of a conflict with mine: it is saved after theirs; theirs stays in the history of saves. */
  keepMine(): Promise<void> {
    if (this.state.status === 'stopped' && this.state.kind === 'conflict') {
      this.rev = this.state.theirs.rev;
      this.base = this.state.theirs.method;
      this.tools.keep({ rev: this.rev, method: this.method });
    }
    this.set({ status: 'waiting' });
    return this.flush();
  }

  /** Out of a conflict with theirs. The caller puts it on the bench, so that mine stays one undo away. */
  takeTheirs(): M | null {
    if (this.state.status !== 'stopped' || this.state.kind !== 'conflict') return null;
    const { theirs } = this.state;
    this.rev = theirs.rev;
    this.method = theirs.method;
    this.base = theirs.method;
    this.tools.drop();
    this.set({ status: 'saved' });
    return theirs.method;
  }

  /** The count of saves that kept work started from, when it comes back to the bench. */
  startFrom(rev: number): void {
    if (rev !== this.rev) this.base = null;
    this.rev = rev;
  }

  /** Somebody else's save, taken while nothing waited here. */
  adopt(theirs: Kept<M>): void {
    if (this.state.status !== 'saved') return;
    this.rev = theirs.rev;
    this.method = theirs.method;
    this.base = theirs.method;
  }

  /** The page closes: what was not sent is still kept on this device. */
  stop(): void {
    this.cancel?.();
    this.cancel = null;
  }
}
