import { useEffect, useSyncExternalStore } from 'react';
import { Button } from './button.tsx';
import './toast.css';

interface Said {
  readonly id: number;
  readonly text: string;
  readonly undo: (() => unknown) | undefined;
}

let said: readonly Said[] = [];
let count = 0;
const listeners = new Set<() => void>();
const put = (next: readonly Said[]) => {
  said = next;
  for (const listener of listeners) listener();
};

/** Says what has just happened, with a way back where there is one. */
export function say(text: string, undo?: () => unknown): void {
  count += 1;
  put([...said.slice(-2), { id: count, text, undo }]);
}

const unsay = (id: number) => put(said.filter((s) => s.id !== id));

export function Toasts() {
  const list = useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => said,
  );
  return (
    <div className="toasts" role="status" aria-live="polite">
      {list.map((s) => (
        <Toast key={s.id} said={s} />
      ))}
    </div>
  );
}

function Toast({ said: { id, text, undo } }: { readonly said: Said }) {
  useEffect(() => {
    const timer = setTimeout(() => unsay(id), undo === undefined ? 5_000 : 12_000);
    return () => clearTimeout(timer);
  }, [id, undo]);
  return (
    <div className="toast">
      <span>{text}</span>
      {undo === undefined ? null : (
        <Button
          onPress={() => {
            unsay(id);
            return undo();
          }}
        >
          Undo
        </Button>
      )}
      <Button kind="quiet" onPress={() => unsay(id)} label="Put this note away">
        Close
      </Button>
    </div>
  );
}
