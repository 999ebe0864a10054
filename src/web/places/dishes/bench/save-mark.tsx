import type { Method } from '../../../../contract/steps.ts';
import { Button } from '../../../parts/button.tsx';
import { withClock } from '../../../parts/moment.ts';
import { Verdict } from '../../../parts/verdict.tsx';
import type { Where } from './autosave.ts';
import type { Bench } from './use-bench.ts';
import { whereText } from './where-text.ts';

function Places({ problems, method }: { readonly problems: readonly Where[]; readonly method: Method }) {
  return (
    <ul className="problem-list">
      {problems.map((p) => (
        <li key={`${p.path} ${p.found}`}>
          <strong>{whereText(p.path, method)}</strong>: found {p.found}; allowed {p.allowed}
        </li>
      ))}
    </ul>
  );
}

/** Whether the work on the bench is saved; where it is not, why and what to do. */
export function SaveMark({ bench }: { readonly bench: Bench }) {
  const { save, method } = bench;
  if (bench.readOnly) return null;
  switch (save.status) {
    case 'saved':
      return (
        <p className="save-mark quiet" role="status">
          Saved
        </p>
      );
    case 'waiting':
    case 'saving':
      return (
        <p className="save-mark" role="status">
          {save.status === 'saving' ? 'Saving…' : 'Not saved yet'}
        </p>
      );
    case 'invalid':
      return (
        <div className="save-stop" role="status">
          <Verdict state="not yet" word="Not saved yet: something is missing">
            <Places problems={save.problems} method={method} />
            <p>It is kept on this device, and saved as soon as that is put right.</p>
          </Verdict>
        </div>
      );
    default:
      return <Stopped bench={bench} />;
  }
}

function Stopped({ bench }: { readonly bench: Bench }) {
  const { save, method } = bench;
  if (save.status !== 'stopped') return null;
  switch (save.kind) {
    case 'unreachable':
      return (
        <div className="save-stop" role="status">
          <Verdict state="not yet" word="Not saved yet: no answer from the server">
            <p>Go on working. It is kept on this device, and sent as soon as the server answers.</p>
            <Button onPress={bench.saveNow}>Try now</Button>
          </Verdict>
        </div>
      );
    case 'nobody':
      return (
        <div className="save-stop" role="status">
          <Verdict state="not yet" word="Not saved yet: nobody has said who works here">
            <p>It is kept on this device.</p>
            <Button onPress={bench.saveNow}>Say who I am and save</Button>
          </Verdict>
        </div>
      );
    case 'conflict':
      return (
        <div className="save-stop" role="alert">
          <Verdict state="does not hold" word="Not saved: somebody else saved this draft in between">
            <p>{withClock(save.message)}</p>
            <p>Both are kept. Every save stays in the history, whichever goes on.</p>
            <div className="row">
              <Button onPress={bench.keepMine}>Save mine after theirs</Button>
              <Button onPress={bench.takeTheirs}>Show theirs (Undo brings mine back)</Button>
            </div>
          </Verdict>
        </div>
      );
    case 'frozen':
      return (
        <div className="save-stop" role="alert">
          <Verdict state="does not hold" word="Not saved: this version has been signed in between">
            <p>{withClock(save.message)}</p>
            <p>
              What you changed is kept on this device. Begin a new version below, then make the change there;
              a signed version never changes.
            </p>
          </Verdict>
        </div>
      );
    case 'refused':
      return (
        <div className="save-stop" role="alert">
          <Verdict state="does not hold" word="Not saved">
            <p>{withClock(save.message)}</p>
            <Places problems={save.problems} method={method} />
            <p>It is kept on this device.</p>
            <Button onPress={bench.saveNow}>Try again</Button>
          </Verdict>
        </div>
      );
  }
}
