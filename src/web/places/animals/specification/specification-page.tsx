import { useState } from 'react';
import { Link, useLocation, useSearch } from 'wouter';
import { documents } from '../../../../contract/document-paths.ts';
import type { Specification, SpecificationVersion } from '../../../../contract/specification.ts';
import { at } from '../../../addresses.ts';
import { call, queryClient, useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Dialog } from '../../../parts/dialog.tsx';
import { TextField } from '../../../parts/field.tsx';
import { moment } from '../../../parts/moment.ts';
import { unsettledIn } from '../../../parts/number-field.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { say } from '../../../parts/toast.tsx';
import { Answers } from './answers.tsx';
import { CompareVersions } from './compare-versions.tsx';
import { DraftMark } from './draft-mark.tsx';
import { LawAsked } from './law-asked.tsx';
import { SpecificationEditor } from './specification-editor.tsx';
import { SpecificationRead } from './specification-read.tsx';
import { StandingOf } from './standing.tsx';
import { useSpecificationDraft } from './use-specification-draft.ts';

/** One thing that is asked of one supplier, in writing: its version on the table, and every version there has been. */
export function SpecificationPage({ specificationId }: { readonly specificationId: string }) {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id, specificationId };
  const asked = Number(new URLSearchParams(useSearch()).get('version'));
  const found = useOperation('specification', { params });
  if (found.data === undefined)
    return found.error === null ? (
      <p className="quiet">Reading the specification…</p>
    ) : (
      <Problem error={found.error} retry={() => found.refetch()} />
    );
  const specification = found.data;
  const version = specification.versions.find((v) => v.number === asked) ?? specification.versions.at(-1);
  if (version === undefined) return <p>This specification has no version.</p>;
  return (
    <article className="stack-wide">
      <header className="stack">
        <p className="small">
          <Link href={at.supplier(kitchen.id, specification.supplierId)}>{specification.supplierName}</Link>
        </p>
        <h2 className="supply-name">{specification.name}</h2>
        <p className="quiet">{specification.species}</p>
        <StandingOf specification={specification} />
      </header>
      <Version key={`${version.id} ${version.status}`} specification={specification} version={version} />
      <Answers specification={specification} version={version} />
      <AllVersions specification={specification} shown={version} />
      <CompareVersions key={specification.versions.length} specification={specification} />
      <End specification={specification} />
      <Caution place={kitchen.place}>
        <p>
          A sheet of paper makes nothing fit to eat: the plant’s own inspection, and what arrives, decide.
          What the law asks differs by place and changes.
        </p>
      </Caution>
    </article>
  );
}

async function readAgain(): Promise<void> {
  await Promise.all(
    ['specification', 'specifications'].map((name) => queryClient.invalidateQueries({ queryKey: [name] })),
  );
}

function Version({
  specification,
  version,
}: {
  readonly specification: Specification;
  readonly version: SpecificationVersion;
}) {
  const kitchen = useKitchen();
  const draft = useSpecificationDraft(kitchen.id, version);
  const send = async () => {
    const open = unsettledIn(document.body);
    if (open !== null)
      throw new Error(`Not sent. ${open}: what was typed was not taken; see beside the field.`);
    await draft.saveNow();
    if (!draft.isSaved()) throw new Error('The draft is not saved yet, so it was not sent. See above why.');
    await call('sendSpecification', {
      params: { kitchenId: kitchen.id, versionId: version.id },
      body: { rev: draft.rev() },
    });
    await readAgain();
    say(`Version ${version.number} is sent: print it, and write down what they answer.`);
  };
  if (version.status === 'sent')
    return (
      <section className="stack" aria-labelledby="version">
        <h2 id="version">Version {version.number}</h2>
        <p>
          Sent by {version.sentBy ?? 'somebody'}
          {version.sentAt === null ? '' : ` on ${moment(version.sentAt, kitchen.zone)}`}. It never changes
          again.
        </p>
        <Print versionId={version.id} />
        <SpecificationRead content={version.content} species={specification.species} />
        <LawAsked species={specification.species} what={version.content.what} />
      </section>
    );
  return (
    <section className="stack" aria-labelledby="version">
      <h2 id="version">Version {version.number}, not sent yet</h2>
      <p className="quiet">Because: {version.reason}</p>
      <div className="row asked-bar not-on-paper">
        <Button onPress={draft.undo} disabled={!draft.canUndo}>
          Undo
        </Button>
        <Button onPress={draft.redo} disabled={!draft.canRedo}>
          Redo
        </Button>
        <DraftMark draft={draft} />
      </div>
      <SpecificationEditor draft={draft} species={specification.species} />
      <LawAsked species={specification.species} what={draft.content.what} />
      <div className="stack">
        <p className="measure">
          Sending freezes this version, so that you and {specification.supplierName} mean the same paper.
          Carry it over as you like: printed, by mail, read out.
        </p>
        <Print versionId={version.id} />
        <Button kind="strong" onPress={send} busy="Freezing…">
          Send version {version.number}
        </Button>
      </div>
    </section>
  );
}

function Print({ versionId }: { readonly versionId: string }) {
  const kitchen = useKitchen();
  return (
    <p className="not-on-paper">
      <a className="button" href={documents.specificationSheet(kitchen.id, versionId)}>
        The sheet on paper (PDF)
      </a>
    </p>
  );
}

function AllVersions({
  specification: s,
  shown,
}: {
  readonly specification: Specification;
  readonly shown: SpecificationVersion;
}) {
  const kitchen = useKitchen();
  const [, navigate] = useLocation();
  const [asking, setAsking] = useState(false);
  const [reason, setReason] = useState('');
  const drafted = s.versions.some((v) => v.status === 'draft');
  const begin = async () => {
    if (reason.trim() === '') throw new Error('Say why: in a year nobody remembers.');
    await call('newSpecificationVersion', {
      params: { kitchenId: kitchen.id, specificationId: s.id },
      body: { reason: reason.trim() },
    });
    await readAgain();
    setAsking(false);
    setReason('');
    navigate(at.specification(kitchen.id, s.supplierId, s.id));
  };
  return (
    <section className="stack" aria-labelledby="versions">
      <h2 id="versions">All versions</h2>
      <ol className="supply-list" reversed>
        {[...s.versions].reverse().map((v) => (
          <li key={v.id}>
            <p>
              <Link
                href={at.specification(kitchen.id, s.supplierId, s.id, v.number)}
                aria-current={v.id === shown.id ? 'true' : undefined}
              >
                Version {v.number}
              </Link>
              {s.inForce === v.number ? <strong> in force</strong> : null}: {v.reason}
            </p>
            <span className="quiet small">
              {v.status === 'sent' && v.sentAt !== null
                ? `sent by ${v.sentBy ?? 'somebody'}, ${moment(v.sentAt, kitchen.zone)}`
                : `draft by ${v.createdBy}, ${moment(v.createdAt, kitchen.zone)}`}
            </span>
          </li>
        ))}
      </ol>
      {drafted || s.endedAt !== null ? null : (
        <div className="not-on-paper">
          <Button onPress={() => setAsking(true)}>New version because…</Button>
        </div>
      )}
      <Dialog open={asking} title="New version because…" onClose={() => setAsking(false)}>
        <p className="quiet">
          It begins as a copy of the newest. Until the new one is agreed, deliveries are checked against the
          one in force.
        </p>
        <TextField label="Because" value={reason} onChange={setReason} lines={3} maxLength={500} />
        <Button kind="strong" onPress={begin} busy="Copying…">
          Begin version {(s.versions.at(-1)?.number ?? 0) + 1}
        </Button>
      </Dialog>
    </section>
  );
}

function End({ specification: s }: { readonly specification: Specification }) {
  const kitchen = useKitchen();
  const [asking, setAsking] = useState(false);
  if (s.endedAt !== null)
    return <p>Ended {moment(s.endedAt, kitchen.zone)}. Everything written stays readable.</p>;
  const end = async () => {
    await call('endSpecification', { params: { kitchenId: kitchen.id, specificationId: s.id }, body: {} });
    await readAgain();
    setAsking(false);
    say(`${s.name} has ended.`);
  };
  return (
    <div className="not-on-paper">
      <Button kind="quiet" onPress={() => setAsking(true)}>
        End this specification
      </Button>
      <Dialog open={asking} title="End this specification" onClose={() => setAsking(false)}>
        <p>
          No delivery is checked against it any more, and it does not begin again: to ask for {s.name} later,
          write a new one. What was written and what came stays as it is.
        </p>
        <Button kind="danger" onPress={end} busy="Ending…">
          End {s.name}
        </Button>
      </Dialog>
    </div>
  );
}
