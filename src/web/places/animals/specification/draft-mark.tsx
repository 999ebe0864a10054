import { Button } from '../../../parts/button.tsx';
import { withClock } from '../../../parts/moment.ts';
import { Verdict } from '../../../parts/verdict.tsx';
import type { Where } from '../../dishes/bench/autosave.ts';
import { fieldAt } from './field-at.ts';
import type { SpecificationDraft } from './use-specification-draft.ts';

const Places = ({ problems }: { readonly problems: readonly Where[] }) => (
  <ul className="problem-list">
    {problems.map((p) => (
      <li key={`${p.path} ${p.found}`}>
        <strong>{fieldAt(p.path)}</strong>: found {p.found}; allowed {p.allowed}
      </li>
    ))}
  </ul>
);

/** Whether the specification as written is saved; where it is not, why and what to do. */
export function DraftMark({ draft }: { readonly draft: SpecificationDraft }) {
  const { save } = draft;
  if (draft.readOnly) return null;
  if (save.status === 'saved' || save.status === 'waiting' || save.status === 'saving')
    return (
      <p className={save.status === 'saved' ? 'quiet' : ''} role="status">
        {save.status === 'saved' ? 'Saved' : save.status === 'saving' ? 'Saving…' : 'Not saved yet'}
      </p>
    );
  if (save.status === 'invalid')
    return (
      <div role="status">
        <Verdict state="not yet" word="Not saved yet: something is missing">
          <Places problems={save.problems} />
          <p>It is kept on this device, and saved as soon as that is put right.</p>
        </Verdict>
      </div>
    );
  if (save.kind === 'conflict')
    return (
      <div role="alert">
        <Verdict state="does not hold" word="Not saved: somebody else saved this draft in between">
          <p>{withClock(save.message)}</p>
          <p>Both are kept; the journal has every save.</p>
          <div className="row">
            <Button onPress={draft.keepMine}>Save mine after theirs</Button>
            <Button onPress={draft.takeTheirs}>Show theirs (Undo brings mine back)</Button>
          </div>
        </Verdict>
      </div>
    );
  if (save.kind === 'frozen')
    return (
      <div role="alert">
        <Verdict state="does not hold" word="Not saved: it has been sent in between">
          <p>{withClock(save.message)}</p>
          <p>What you changed is kept on this device. Begin a new version, and make the change there.</p>
        </Verdict>
      </div>
    );
  return (
    <div role={save.kind === 'refused' ? 'alert' : 'status'}>
      <Verdict
        state={save.kind === 'refused' ? 'does not hold' : 'not yet'}
        word={
          save.kind === 'unreachable'
            ? 'Not saved yet: no answer from the server'
            : save.kind === 'nobody'
              ? 'Not saved yet: nobody has said who works here'
              : 'Not saved'
        }
      >
        {save.kind === 'refused' ? (
          <>
            <p>{withClock(save.message)}</p>
            <Places problems={save.problems} />
          </>
        ) : null}
        <p>It is kept on this device.</p>
        <Button onPress={draft.saveNow}>
          {save.kind === 'nobody' ? 'Say who I am and save' : 'Try now'}
        </Button>
      </Verdict>
    </div>
  );
}
