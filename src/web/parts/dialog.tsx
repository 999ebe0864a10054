import { type ReactNode, useEffect, useId, useRef } from 'react';
import { Button } from './button.tsx';
import './dialog.css';

export interface DialogProps {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly title: string;
  readonly children: ReactNode;
  readonly wide?: boolean;
}

/** A question that has to be answered before going on. Escape and the word Close put it away. */
export function Dialog({ open, onClose, title, children, wide }: DialogProps) {
  const ref = useRef<HTMLDialogElement>(null);
  const heading = useId();
  useEffect(() => {
    const dialog = ref.current;
    if (dialog === null || !open) return undefined;
    const before = document.activeElement;
    if (!dialog.open) dialog.showModal();
    // What is asked for comes first, not the word that puts the question away.
    const body = dialog.querySelector('.dialog-body');
    (body?.querySelector<HTMLElement>('input, textarea, select') ?? body?.querySelector('button'))?.focus();
    return () => {
      if (dialog.open) dialog.close();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, [open]);
  if (!open) return null;
  return (
    <dialog
      ref={ref}
      className={wide === true ? 'dialog dialog-wide' : 'dialog'}
      aria-labelledby={heading}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <div className="dialog-head">
        <h2 id={heading}>{title}</h2>
        <Button kind="quiet" onPress={onClose}>
          Close
        </Button>
      </div>
      <div className="stack dialog-body">{children}</div>
    </dialog>
  );
}
