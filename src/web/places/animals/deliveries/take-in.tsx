import { useEffect, useState } from 'react';
import { v7 as newId } from 'uuid';
import { Link, useLocation, useSearch } from 'wouter';
import type { DeliveryInput } from '../../../../contract/delivery.ts';
import { pointsOf } from '../../../../contract/delivery-points.ts';
import type { Problem as Found } from '../../../../contract/problem.ts';
import { at } from '../../../addresses.ts';
import { call, queryClient, Refusal, useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { EmptyPlace } from '../../../parts/empty-place.tsx';
import { Field, TextField } from '../../../parts/field.tsx';
import { unsettledIn } from '../../../parts/number-field.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { say } from '../../../parts/toast.tsx';
import { nextLotCode } from '../lot-code.ts';
import { offeredFor } from '../specification/standing.ts';
import { Decide } from './decide.tsx';
import {
  type DraftLine,
  emptyDraft,
  inputOf,
  markKey,
  missingIn,
  newLine,
  saidAt,
  soFar,
  tagsTwice,
} from './delivery-draft.ts';
import { useKeptDelivery } from './kept-delivery.ts';
import { useKeptPhotos } from './kept-photos.ts';
import { LineForm } from './line-form.tsx';
import { PhotoField } from './photo-field.tsx';
import { PointsView } from './points-view.tsx';
import { instantOf, onTheWall } from './wall-clock.ts';

const none = 'none';

/** Taking a delivery in, at the back door: who, what, point by point, and the decision. */
export function TakeIn() {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id };
  const [, navigate] = useLocation();
  const from = new URLSearchParams(useSearch()).get('from') ?? '';
  const suppliers = useOperation('suppliers', { params });
  const specifications = useOperation('specifications', { params });
  const parts = useOperation('parts', { params });
  const lots = useOperation('lots', { params });
  const { draft, change, drop, kept } = useKeptDelivery(kitchen.id, () =>
    emptyDraft(newId(), from, new Date().toISOString()),
  );
  const photos = useKeptPhotos(kitchen.id, draft.id);
  const [problems, setProblems] = useState<readonly Found[]>([]);

  const offered = offeredFor(specifications.data ?? [], draft.supplierId);
  const chosen = offered.find((o) => o.version.id === draft.versionId);
  const content = chosen?.version.content ?? null;
  const outdated =
    typeof draft.versionId === 'string' && specifications.data !== undefined && chosen === undefined;
  // What is used up has had its code too.
  const codes = (lots.data ?? []).map((l) => l.code);
  const nextCode = (lines: readonly DraftLine[]) =>
    nextLotCode(new Date(), kitchen.zone, [...codes, ...lines.map((l) => l.code)]);
  const choose = (versionId: string | null) => {
    const one = offered.find((o) => o.version.id === versionId);
    change((now) => ({
      ...now,
      versionId,
      lines:
        now.lines.length > 0
          ? now.lines
          : [
              newLine(
                newId(),
                nextCode([]),
                one === undefined
                  ? null
                  : { species: one.specification.species, content: one.version.content },
              ),
            ],
    }));
  };
  // One specification in force comes up by itself.
  const only = offered.length === 1 ? offered[0]?.version.id : undefined;
  const ready = specifications.data !== undefined && lots.data !== undefined;
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for each supplier
  useEffect(() => {
    if (ready && draft.supplierId !== '' && draft.versionId === undefined && only !== undefined) choose(only);
  }, [ready, draft.supplierId, draft.versionId, only]);

  if (suppliers.data === undefined || !ready) {
    const error = suppliers.error ?? specifications.error ?? lots.error;
    return error === null ? <p className="quiet">Reading who delivers…</p> : <Problem error={error} />;
  }
  if (suppliers.data.length === 0)
    return (
      <EmptyPlace
        title="Nobody delivers yet"
        action={
          <Link className="button button-strong" href={at.animals(kitchen.id, 'suppliers')}>
            Add a supplier
          </Link>
        }
      >
        <p>A delivery names who brings it, so that a plate can be followed back to the farm.</p>
      </EmptyPlace>
    );

  const standing = soFar(draft, content, kitchen.place, kitchen.zone);
  const put = (id: string, part: Partial<DraftLine>) =>
    change((now) => ({ ...now, lines: now.lines.map((l) => (l.id === id ? { ...l, ...part } : l)) }));
  const again = () => {
    drop();
    for (const p of photos.photos) void photos.remove(p.id);
    change(() => emptyDraft(newId(), '', new Date().toISOString()));
    drop();
    setProblems([]);
  };
  const decide = async (decision: DeliveryInput['decision']) => {
    const open = unsettledIn(document.getElementById('taking-in'));
    if (open !== null) throw new Error(`${open}: what was typed is not settled yet. See beside the field.`);
    const missing = missingIn(draft);
    if (outdated)
      missing.push({
        path: 'specificationVersionId',
        found: 'a version that is not in force any more',
        allowed: 'the one in force',
      });
    if (decision !== 'accepted' && draft.reason.trim() === '')
      missing.push({ path: 'reason', found: 'nothing', allowed: 'why' });
    setProblems(missing);
    if (missing.length > 0)
      throw new Error(
        `${missing.length === 1 ? 'One thing is' : `${missing.length} things are`} missing or doubtful; each is said beside its field. Nothing was written.`,
      );
    try {
      const taken = await call('takeDelivery', { params, body: inputOf(draft, content, decision) });
      drop();
      for (const name of ['deliveries', 'shelf', 'lots', 'supplierTrend'])
        void queryClient.invalidateQueries({ queryKey: [name] });
      say(decision === 'refused' ? 'Refused, and written down.' : 'Taken in.');
      navigate(at.delivery(kitchen.id, taken.id), { replace: true });
    } catch (error) {
      if (error instanceof Refusal) {
        setProblems(error.problems);
        if (error.status === 409) void queryClient.invalidateQueries({ queryKey: ['specifications'] });
      }
      throw error;
    }
  };
  return (
    <div className="stack-wide taking-in" id="taking-in">
      <header className="stack">
        <h2 className="supply-name">Take in a delivery</h2>
        <p className="quiet" role="status">
          {kept
            ? 'Kept on this device as you go; written when you decide.'
            : 'This device will not keep it: a reload loses what you typed.'}
        </p>
      </header>
      <section className="fields came-fields" aria-label="Who brings it">
        <Choice
          label="Who brings it"
          value={draft.supplierId}
          options={suppliers.data.map((s) => ({ value: s.id, label: s.name }))}
          onChange={(supplierId) =>
            change((now) => ({
              ...now,
              supplierId,
              versionId: undefined,
              marks: {},
              lines: blankAgain(now.lines),
            }))
          }
          error={saidAt(problems, 'supplierId')}
        />
        {draft.supplierId === '' ? null : (
          <Choice
            label="Checked against"
            value={draft.versionId === null ? none : (draft.versionId ?? '')}
            options={[
              ...offered.map((o) => ({
                value: o.version.id,
                label: `${o.specification.name}, version ${o.version.number}${o.specification.inForce === o.version.number ? '' : ' (not agreed yet)'}`,
              })),
              { value: none, label: 'nothing was agreed in writing' },
            ]}
            onChange={(v) => choose(v === none ? null : v)}
            error={
              outdated
                ? 'That version is not in force any more: choose the one that is. What you marked stays where the point is the same.'
                : saidAt(problems, 'specificationVersionId')
            }
          />
        )}
        <Field label="Arrived" error={saidAt(problems, 'arrivedAt')}>
          {(tie) => (
            <input
              {...tie}
              className="control"
              type="datetime-local"
              value={onTheWall(draft.arrivedAt, kitchen.zone)}
              onChange={(e) => {
                const arrivedAt = instantOf(e.target.value, kitchen.zone);
                if (arrivedAt !== null) change((now) => ({ ...now, arrivedAt }));
              }}
            />
          )}
        </Field>
      </section>
      {draft.versionId === undefined ? null : (
        <>
          <section className="stack" aria-labelledby="what-came">
            <h2 id="what-came">What came</h2>
            <ol className="came">
              {draft.lines.map((l, i) => (
                <LineForm
                  key={l.id}
                  line={l}
                  index={i}
                  parts={parts.data ?? []}
                  problems={problems}
                  warm={standing.warm.find((w) => w.line === i)?.found}
                  twice={tagsTwice(draft.lines)}
                  onChange={(part) => put(l.id, part)}
                  onRemove={() =>
                    change((now) => ({ ...now, lines: now.lines.filter((x) => x.id !== l.id) }))
                  }
                />
              ))}
            </ol>
            {saidAt(problems, 'lines') === undefined || draft.lines.length > 0 ? null : (
              <p className="field-error">{saidAt(problems, 'lines')}</p>
            )}
            <div>
              <Button
                size="line"
                onPress={() =>
                  change((now) => ({
                    ...now,
                    lines: [
                      ...now.lines,
                      newLine(
                        newId(),
                        nextCode(now.lines),
                        chosen === undefined
                          ? null
                          : { species: chosen.specification.species, content: chosen.version.content },
                      ),
                    ],
                  }))
                }
              >
                Another line
              </Button>
            </div>
          </section>
          <section className="stack" aria-labelledby="point-by-point">
            <h2 id="point-by-point">Point by point</h2>
            {content === null ? (
              <p className="measure">
                Nothing was agreed in writing, so there is nothing to check it against but the limits of
                temperature.
              </p>
            ) : (
              <>
                <p role="status">
                  {standing.met} met, {standing.notMet.length} not met, {standing.notLooked} not looked at
                </p>
                <PointsView
                  points={pointsOf(content)}
                  checks={standing.checks}
                  onMark={(p, mark) =>
                    change((now) => ({ ...now, marks: { ...now.marks, [markKey(p.point, p.asked)]: mark } }))
                  }
                />
              </>
            )}
          </section>
          <section className="stack" aria-labelledby="pictures">
            <h2 id="pictures">Pictures and papers</h2>
            <PhotoField kitchenId={kitchen.id} deliveryId={draft.id} kept={photos} />
            <TextField
              label="Papers that came with it"
              value={draft.documents}
              onChange={(documents) => change((now) => ({ ...now, documents }))}
              maxLength={1_000}
              hint="Number of the delivery note, of the certificate."
            />
          </section>
          <Decide
            draft={draft}
            soFar={standing}
            problems={problems}
            onReason={(reason) => change((now) => ({ ...now, reason }))}
            decide={decide}
          />
          <div>
            <Button kind="quiet" onPress={again}>
              Put this away and begin anew
            </Button>
          </div>
        </>
      )}
      <Caution place={kitchen.place}>
        <p>
          A temperature on arrival is one place in one piece. It does not say how warm the rest is, or was.
        </p>
      </Caution>
    </div>
  );
}

/** Lines that nobody has weighed yet are laid anew for another supplier; what was weighed stays. */
const blankAgain = (lines: readonly DraftLine[]) => (lines.every((l) => l.grams === null) ? [] : lines);
