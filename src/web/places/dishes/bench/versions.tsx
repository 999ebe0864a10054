import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { documents } from '../../../../contract/document-paths.ts';
import type { Dish, Kitchen, Version } from '../../../../contract/records.ts';
import type { Method } from '../../../../contract/steps.ts';
import { at } from '../../../addresses.ts';
import { call, queryClient, Refusal } from '../../../api.ts';
import { Button } from '../../../parts/button.tsx';
import { Dialog } from '../../../parts/dialog.tsx';
import { TextField } from '../../../parts/field.tsx';
import { moment, withClock } from '../../../parts/moment.ts';
import { unsettledIn } from '../../../parts/number-field.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { say } from '../../../parts/toast.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { stopsLine } from '../law-fold.tsx';
import { TakeAway } from '../take-away.tsx';
import { Evidence } from './evidence.tsx';
import { settleAll } from './settle.ts';
import type { Bench } from './use-bench.ts';
import { whereText } from './where-text.ts';

export interface VersionsProps {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly version: Version;
  readonly bench: Bench;
}

const todoFor: Record<string, string> = {
  unsafe: 'Open the cook step: it says how many minutes more would do. Change it, and sign again.',
  unlawful: 'See “May it be served?” at the top for what to do. Until then the dish stays an idea.',
  unfinished: 'Put right what is named, and sign again.',
  conflict: 'Somebody saved in between. Look at the draft again before you sign it.',
};

/** Sign, print, begin anew, make it; and every version there has been. */
export function Versions({ kitchen, dish, version, bench }: VersionsProps) {
  const [asking, setAsking] = useState(false);
  const draft = dish.versions.find((v) => v.status === 'draft');
  return (
    <section className="bench-rule stack" aria-labelledby="versions">
      <h2 id="versions">Version {version.number}</h2>
      {version.status === 'draft' ? (
        <Sign kitchen={kitchen} dish={dish} version={version} bench={bench} />
      ) : (
        <Signed kitchen={kitchen} dish={dish} version={version} />
      )}
      <div className="row not-on-paper">
        <Link className="button" href={at.price(kitchen.id, dish.id)}>
          Weights and price
        </Link>
        <a className="button" href={documents.methodCard(kitchen.id, version.id)}>
          Method card (PDF)
        </a>
        {draft === undefined ? (
          <Button onPress={() => setAsking(true)}>New version because…</Button>
        ) : draft.id === version.id ? null : (
          <Link className="button" href={at.dish(kitchen.id, dish.id)}>
            Go to the draft, version {draft.number}
          </Link>
        )}
      </div>
      <TakeAway kitchenId={kitchen.id} dish={dish} version={version} />
      <h3>All versions</h3>
      <ol className="version-list" reversed>
        {[...dish.versions].reverse().map((v) => (
          <li key={v.id}>
            <Link
              href={
                v.id === dish.current.id
                  ? at.dish(kitchen.id, dish.id)
                  : at.version(kitchen.id, dish.id, v.id)
              }
              aria-current={v.id === version.id ? 'true' : undefined}
            >
              Version {v.number}
            </Link>
            <span>{v.reason === '' ? 'No reason given.' : v.reason}</span>
            {v.id === version.id ? null : (
              <Link
                className="small not-on-paper"
                href={at.compare(
                  kitchen.id,
                  dish.id,
                  v.number < version.number ? v.id : version.id,
                  v.number < version.number ? version.id : v.id,
                )}
              >
                What changed between {Math.min(v.number, version.number)} and{' '}
                {Math.max(v.number, version.number)}
              </Link>
            )}
            <span className="quiet small">
              {v.status === 'signed' && v.signedAt !== null
                ? `signed by ${v.signedBy ?? 'somebody'}, ${moment(v.signedAt, kitchen.zone)}`
                : `draft by ${v.createdBy}, ${moment(v.createdAt, kitchen.zone)}`}
            </span>
          </li>
        ))}
      </ol>
      {asking ? (
        <NewVersion kitchen={kitchen} dish={dish} from={version} onClose={() => setAsking(false)} />
      ) : null}
    </section>
  );
}

async function readAgain(): Promise<void> {
  await Promise.all(
    ['dish', 'dishes', 'version'].map((name) => queryClient.invalidateQueries({ queryKey: [name] })),
  );
}

function Sign({ kitchen, dish, version, bench }: VersionsProps) {
  const [error, setError] = useState<unknown>(null);
  const stops = stopsLine(dish);
  const sign = async () => {
    setError(null);
    const open = settleAll();
    const typed = unsettledIn(document.body);
    if (typed !== null) open.push(`${typed}: what was typed was not taken; see beside the field`);
    if (open.length > 0) {
      setError(new Error(`Not signed. ${open.join('. ')}.`));
      return;
    }
    await bench.saveNow();
    if (bench.isSaved()) {
      try {
        await call('signVersion', {
          params: { kitchenId: kitchen.id, versionId: version.id },
          body: { rev: bench.rev() },
        });
        await readAgain();
        say(`Version ${version.number} is signed.`);
      } catch (caught) {
        setError(caught);
      }
    } else
      setError(new Error('The draft is not saved yet, so it was not signed. See above why, and what to do.'));
  };
  return (
    <div className="stack">
      <p className="measure">
        Signing freezes this version: the engine is run once more on every cook step, and the answer is kept
        with your name. It is refused when the coldest point does not hold, or when the law stops the part.
      </p>
      {stops === null ? null : (
        <p className="measure">
          <strong>It cannot be signed now:</strong> {stops}. See “May it be served?” at the top for the way
          on.
        </p>
      )}
      {stops !== null ? null : (
        <div>
          <Button kind="strong" onPress={sign} busy="Running the engine…">
            Sign this version
          </Button>
        </div>
      )}
      {error === null ? null : <NotSigned error={error} method={bench.method} />}
    </div>
  );
}

/** Why it was not signed, word for word, each with its step, and what to do. */
function NotSigned({ error, method }: { readonly error: unknown; readonly method: Method }) {
  if (!(error instanceof Refusal)) return <Problem error={error} />;
  const todo = todoFor[error.code];
  return (
    <div className="problem" role="alert">
      <Verdict state="does not hold" word="Not signed">
        <p>{withClock(error.message)}</p>
        <ul className="problem-list">
          {error.problems.map((p) => (
            <li key={`${p.path} ${p.found}`}>
              <strong>{whereText(p.path.replace(/^method/, ''), method)}</strong>:{' '}
              {p.found.replace(/\.+$/, '')}.
              <br />
              {error.code === 'unlawful' ? p.allowed : `Allowed: ${p.allowed}`}
            </li>
          ))}
        </ul>
        {todo === undefined ? null : (
          <p>
            <strong>{todo}</strong>
          </p>
        )}
      </Verdict>
    </div>
  );
}

function Signed({ kitchen, dish, version }: Omit<VersionsProps, 'bench'>) {
  return (
    <div className="stack">
      <p>
        Signed by {version.signedBy ?? 'somebody'}
        {version.signedAt === null ? '' : ` on ${moment(version.signedAt, kitchen.zone)}`}.
      </p>
      {version.evidence === null ? null : <Evidence evidence={version.evidence} kitchen={kitchen} />}
      {version.number === dish.signedVersion ? (
        <div>
          <Link className="button button-strong" href={at.startBatch(kitchen.id, dish.id)}>
            Start a batch
          </Link>
        </div>
      ) : (
        <p className="quiet">A batch is made from version {dish.signedVersion}, the newest that is signed.</p>
      )}
    </div>
  );
}

function NewVersion({
  kitchen,
  dish,
  from,
  onClose,
}: {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly from: Version;
  readonly onClose: () => void;
}) {
  const [reason, setReason] = useState('');
  const [, navigate] = useLocation();
  const begin = async () => {
    if (reason.trim() === '') throw new Error('Say why: in a year nobody remembers.');
    await call('newVersion', {
      params: { kitchenId: kitchen.id, dishId: dish.id },
      body: { reason: reason.trim(), from: from.id },
    });
    await readAgain();
    onClose();
    navigate(at.dish(kitchen.id, dish.id));
  };
  return (
    <Dialog open title="New version because…" onClose={onClose}>
      <p className="quiet">
        It begins as a copy of version {from.number}
        {from.id === dish.current.id
          ? ''
          : ', which is brought back this way; what came after it stays on the list'}
        . Change one thing.
      </p>
      <TextField label="Because" value={reason} onChange={setReason} lines={3} maxLength={500} autoFocus />
      <Button kind="strong" onPress={begin} busy="Copying…">
        Begin version {Math.max(...dish.versions.map((v) => v.number)) + 1}
      </Button>
    </Dialog>
  );
}
