/** What is asked of suppliers in writing: drafts, versions that were sent and never change, and what was answered. */
import { and, asc, eq, inArray } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type { BodyOf } from '../contract/operations.ts';
import type {
  Specification,
  SpecificationAnswer,
  SpecificationContent,
  SpecificationVersion,
} from '../contract/specification.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, kitchenOf, look } from './app.ts';
import { digest } from './digest.ts';
import { nameOf, namesIn } from './dishes.ts';
import { AppError, notFound } from './errors.ts';
import { specificationAnswerDigest, specificationVersionDigest } from './record-digests.ts';

type VersionRow = typeof t.specificationVersion.$inferSelect;

/** The newest version that was sent and whose last answer was yes; null where none was. */
export function inForceOf(versions: readonly SpecificationVersion[]): number | null {
  const agreed = versions.filter(
    (v) => v.status === 'sent' && /^agreed/.test(v.answers.at(-1)?.answer ?? ''),
  );
  return agreed.length === 0 ? null : Math.max(...agreed.map((v) => v.number));
}

async function read(db: Db, kitchenId: string, ids?: readonly string[]): Promise<Specification[]> {
  const own = eq(t.specification.kitchenId, kitchenId);
  const rows = await db
    .select({ specification: t.specification, supplierName: t.supplier.name })
    .from(t.specification)
    .innerJoin(t.supplier, eq(t.supplier.id, t.specification.supplierId))
    .where(ids === undefined ? own : and(own, inArray(t.specification.id, [...ids])))
    .orderBy(asc(t.supplier.name), asc(t.specification.createdAt));
  if (rows.length === 0) return [];
  const names = await namesIn(db, kitchenId);
  const versions = await db
    .select()
    .from(t.specificationVersion)
    .where(
      inArray(
        t.specificationVersion.specificationId,
        rows.map((r) => r.specification.id),
      ),
    )
    .orderBy(asc(t.specificationVersion.number));
  const answers =
    versions.length === 0
      ? []
      : await db
          .select()
          .from(t.specificationAnswer)
          .where(
            inArray(
              t.specificationAnswer.versionId,
              versions.map((v) => v.id),
            ),
          )
          .orderBy(asc(t.specificationAnswer.line));
  return rows.map(({ specification: s, supplierName }) => {
    const own = versions
      .filter((v) => v.specificationId === s.id)
      .map(
        (v): SpecificationVersion => ({
          id: v.id,
          specificationId: v.specificationId,
          number: v.number,
          rev: v.rev,
          status: v.status as SpecificationVersion['status'],
          reason: v.reason,
          content: v.content as SpecificationContent,
          createdAt: v.createdAt.toISOString(),
          createdBy: nameOf(names, v.createdBy),
          sentAt: v.sentAt?.toISOString() ?? null,
          sentBy: v.sentBy === null ? null : nameOf(names, v.sentBy),
          answers: answers
            .filter((a) => a.versionId === v.id)
            .map((a) => ({
              id: a.id,
              answer: a.answer as SpecificationAnswer['answer'],
              saidBy: a.saidBy,
              note: a.note,
              at: a.at.toISOString(),
              by: nameOf(names, a.personId),
            })),
        }),
      );
    return {
      id: s.id,
      supplierId: s.supplierId,
      supplierName,
      species: s.species,
      name: s.name,
      createdAt: s.createdAt.toISOString(),
      endedAt: s.endedAt?.toISOString() ?? null,
      inForce: inForceOf(own),
      versions: own,
    };
  });
}

async function readOne(db: Db, kitchenId: string, id: string): Promise<Specification> {
  const [one] = await read(db, kitchenId, [id]);
  if (one === undefined) throw notFound('specification');
  return one;
}

export const listSpecifications = (app: App, kitchenId: string): Promise<Specification[]> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    return read(db, kitchenId);
  });

export const getSpecification = (app: App, kitchenId: string, id: string): Promise<Specification> =>
  look(app, (db) => readOne(db, kitchenId, id));

export const addSpecification = (
  app: App,
  actor: Actor,
  input: BodyOf<'addSpecification'>,
): Promise<Specification> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const [supplier] = await tx
      .select()
      .from(t.supplier)
      .where(and(eq(t.supplier.kitchenId, kitchen.id), eq(t.supplier.id, input.supplierId)));
    if (supplier === undefined)
      throw new AppError('invalid', 'The specification names a supplier that this kitchen does not have.', [
        { path: 'supplierId', found: input.supplierId, allowed: 'the id of a supplier of this kitchen' },
      ]);
    const id = uuid();
    await tx.insert(t.specification).values({
      id,
      kitchenId: kitchen.id,
      supplierId: supplier.id,
      species: input.species,
      name: input.name,
      createdAt: now,
      createdBy: person.id,
      endedAt: null,
    });
    await insertVersion(tx, kitchen.id, id, 1, 'The first draft.', input.content, person.id, now);
    await tell({
      action: 'began',
      subject: 'specification',
      subjectId: id,
      summary: `Specification ${input.name} to ${supplier.name} begun.`,
    });
    return readOne(tx, kitchen.id, id);
  });

const insertVersion = (
  tx: Db,
  kitchenId: string,
  specificationId: string,
  number: number,
  reason: string,
  content: SpecificationContent,
  personId: string,
  now: Date,
) =>
  tx.insert(t.specificationVersion).values({
    id: uuid(),
    kitchenId,
    specificationId,
    number,
    rev: 0,
    status: 'draft',
    reason,
    content,
    createdAt: now,
    createdBy: personId,
    savedAt: now,
    savedBy: personId,
    sentAt: null,
    sentBy: null,
  });

async function versionRow(db: Db, kitchenId: string, versionId: string): Promise<VersionRow> {
  const [row] = await db
    .select()
    .from(t.specificationVersion)
    .where(and(eq(t.specificationVersion.kitchenId, kitchenId), eq(t.specificationVersion.id, versionId)));
  if (row === undefined) throw notFound('version of a specification');
  return row;
}

async function draftRow(db: Db, kitchenId: string, versionId: string, rev: number): Promise<VersionRow> {
  const row = await versionRow(db, kitchenId, versionId);
  const names = await namesIn(db, kitchenId);
  if (row.status === 'sent')
    throw new AppError(
      'frozen',
      `Version ${row.number} was sent by ${nameOf(names, row.sentBy)} at ${row.sentAt?.toISOString()} and does not change again; begin a new version.`,
    );
  if (row.rev !== rev)
    throw new AppError(
      'conflict',
      `${nameOf(names, row.savedBy)} saved this draft at ${row.savedAt.toISOString()}, after you opened it; look at theirs before you save yours.`,
      [{ path: 'rev', found: String(rev), allowed: String(row.rev) }],
    );
  return row;
}

export const saveSpecification = (
  app: App,
  actor: Actor,
  versionId: string,
  input: BodyOf<'saveSpecification'>,
): Promise<Specification> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const row = await draftRow(tx, kitchen.id, versionId, input.rev);
    await tx
      .update(t.specificationVersion)
      .set({ content: input.content, rev: row.rev + 1, savedAt: now, savedBy: person.id })
      .where(eq(t.specificationVersion.id, versionId));
    const specification = await readOne(tx, kitchen.id, row.specificationId);
    await tell({
      action: 'saved',
      subject: 'specification',
      subjectId: specification.id,
      summary: `Specification ${specification.name}, version ${row.number}, saved (${row.rev + 1}; ${digest(input.content).slice(0, 12)}).`,
    });
    return specification;
  });

export const newSpecificationVersion = (
  app: App,
  actor: Actor,
  specificationId: string,
  input: BodyOf<'newSpecificationVersion'>,
): Promise<Specification> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const before = await readOne(tx, kitchen.id, specificationId);
    const newest = before.versions.at(-1);
    if (newest === undefined) throw new Error(`specification ${specificationId} has no version`);
    if (newest.status === 'draft')
      throw new AppError(
        'conflict',
        `Version ${newest.number} is still a draft: change that one, or send it first.`,
      );
    await insertVersion(
      tx,
      kitchen.id,
      specificationId,
      newest.number + 1,
      input.reason,
      newest.content,
      person.id,
      now,
    );
    await tell({
      action: 'began',
      subject: 'specification',
      subjectId: specificationId,
      summary: `Specification ${before.name}, version ${newest.number + 1}, begun: ${input.reason}`,
    });
    return readOne(tx, kitchen.id, specificationId);
  });

export const sendSpecification = (
  app: App,
  actor: Actor,
  versionId: string,
  rev: number,
): Promise<Specification> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    await draftRow(tx, kitchen.id, versionId, rev);
    const [sent] = await tx
      .update(t.specificationVersion)
      .set({ status: 'sent', sentAt: now, sentBy: person.id })
      .where(eq(t.specificationVersion.id, versionId))
      .returning();
    if (sent === undefined) throw new Error('the version was not sent');
    const specification = await readOne(tx, kitchen.id, sent.specificationId);
    await tell({
      action: 'sent',
      subject: 'specification',
      subjectId: specification.id,
      summary: `Specification ${specification.name}, version ${sent.number}, sent to ${specification.supplierName}.`,
      records: [{ table: 'specification_version', id: versionId, sha256: specificationVersionDigest(sent) }],
    });
    return specification;
  });

export const answerSpecification = (
  app: App,
  actor: Actor,
  versionId: string,
  input: BodyOf<'answerSpecification'>,
): Promise<Specification> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const row = await versionRow(tx, kitchen.id, versionId);
    if (row.status !== 'sent')
      throw new AppError('conflict', `Version ${row.number} was never sent; there is nothing to answer.`);
    const [same] = await tx
      .select({ versionId: t.specificationAnswer.versionId })
      .from(t.specificationAnswer)
      .where(eq(t.specificationAnswer.id, input.id));
    // Sent twice: the first one counted.
    if (same?.versionId === versionId) return readOne(tx, kitchen.id, row.specificationId);
    const [answer] = await tx
      .insert(t.specificationAnswer)
      .values({
        ...input,
        kitchenId: kitchen.id,
        versionId,
        at: new Date(input.at),
        personId: person.id,
        recordedAt: now,
      })
      .returning();
    if (answer === undefined) throw new Error('the answer was not written');
    const specification = await readOne(tx, kitchen.id, row.specificationId);
    await tell({
      action: 'recorded',
      subject: 'specification',
      subjectId: specification.id,
      summary: `${specification.supplierName} ${input.answer} to version ${row.number} of ${specification.name}${input.note === '' ? '' : `: ${input.note.slice(0, 200)}`}`,
      records: [{ table: 'specification_answer', id: answer.id, sha256: specificationAnswerDigest(answer) }],
    });
    return specification;
  });

/** The specification that a version belongs to, draft or sent. */
export const specificationOfVersion = (
  app: App,
  kitchenId: string,
  versionId: string,
): Promise<Specification> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    return readOne(db, kitchenId, (await versionRow(db, kitchenId, versionId)).specificationId);
  });

/** The version that a delivery may be checked against today; anything else is told clearly. */
export async function versionInForce(
  db: Db,
  kitchenId: string,
  supplierId: string,
  versionId: string,
): Promise<{ specification: Specification; version: SpecificationVersion }> {
  const row = await versionRow(db, kitchenId, versionId);
  const specification = await readOne(db, kitchenId, row.specificationId);
  const version = specification.versions.find((v) => v.id === versionId);
  if (version === undefined) throw new Error(`version ${versionId} is not in its specification`);
  const refuse = (found: string, allowed: string): never => {
    throw new AppError('conflict', `The delivery is checked against ${found}; ${allowed}.`, [
      { path: 'specificationVersionId', found, allowed },
    ]);
  };
  if (specification.supplierId !== supplierId)
    refuse(`a specification of ${specification.supplierName}`, 'one of the supplier who delivered');
  if (version.status === 'draft')
    refuse(`version ${version.number}, which is still a draft`, 'a version that was sent');
  if (specification.endedAt !== null)
    refuse(`${specification.name}, which has ended`, 'one that is in force');
  const newestSent = Math.max(
    ...specification.versions.filter((v) => v.status === 'sent').map((v) => v.number),
  );
  const wanted = specification.inForce ?? newestSent;
  if (version.number !== wanted)
    refuse(
      `version ${version.number} of ${specification.name}`,
      `version ${wanted} is ${specification.inForce === null ? 'the last one sent' : 'the one agreed'}`,
    );
  return { specification, version };
}

export const endSpecification = (app: App, actor: Actor, specificationId: string): Promise<Specification> =>
  change(app, actor, async ({ tx, kitchen, now, tell }) => {
    const before = await readOne(tx, kitchen.id, specificationId);
    if (before.endedAt !== null) return before;
    await tx.update(t.specification).set({ endedAt: now }).where(eq(t.specification.id, specificationId));
    await tell({
      action: 'ended',
      subject: 'specification',
      subjectId: specificationId,
      summary: `Specification ${before.name} to ${before.supplierName} ended.`,
    });
    return readOne(tx, kitchen.id, specificationId);
  });
