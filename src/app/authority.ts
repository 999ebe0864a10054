/** What the competent authority was asked about a part, and what it answered: the only thing that lifts a stop. */
import { and, asc, desc, eq, inArray } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type {
  AuthorityAnswerInput,
  AuthorityRequest,
  AuthorityRequestContent,
} from '../contract/authority.ts';
import type { BodyOf } from '../contract/operations.ts';
import type { Place } from '../contract/records.ts';
import { lawOf } from '../core/properties/parts-law.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, asKitchen, change, kitchenOf, look } from './app.ts';
import { dayIn } from './civil-day.ts';
import { dishRow, nameOf, namesIn } from './dishes.ts';
import { notFound } from './errors.ts';
import { agreementFor, lastAnswers } from './law.ts';
import { authorityAnswerDigest, authorityRequestDigest } from './record-digests.ts';

async function read(db: Db, kitchenId: string, today: string, id?: string): Promise<AuthorityRequest[]> {
  const kitchen = asKitchen(await kitchenOf(db, kitchenId));
  const own = eq(t.authorityRequest.kitchenId, kitchenId);
  const rows = await db
    .select()
    .from(t.authorityRequest)
    .where(id === undefined ? own : and(own, eq(t.authorityRequest.id, id)))
    .orderBy(desc(t.authorityRequest.line))
    .limit(500);
  if (rows.length === 0) return [];
  const names = await namesIn(db, kitchenId);
  const last = await lastAnswers(db, kitchenId);
  const answers = await db
    .select()
    .from(t.authorityAnswer)
    .where(
      inArray(
        t.authorityAnswer.requestId,
        rows.map((r) => r.id),
      ),
    )
    .orderBy(asc(t.authorityAnswer.line));
  return rows.map((r) => {
    const its = answers.filter((a) => a.requestId === r.id);
    return {
      id: r.id,
      dishId: r.dishId,
      species: r.species,
      part: r.part,
      content: r.content as AuthorityRequestContent,
      askedAt: r.askedAt.toISOString(),
      askedBy: nameOf(names, r.askedBy),
      answers: its.map((a) => ({
        id: a.id,
        answer: a.answer as AuthorityAnswerInput['answer'],
        authority: a.authority,
        saidBy: a.saidBy,
        reference: a.reference,
        conditions: a.conditions,
        dated: a.dated,
        until: a.untilDate,
        by: nameOf(names, a.personId),
        recordedAt: a.recordedAt.toISOString(),
      })),
      lifts: agreementFor(last, r, lawOf(r.species, r.part, kitchen.place).status, today)?.requestId === r.id,
    };
  });
}

export const listAuthorityRequests = (app: App, kitchenId: string): Promise<AuthorityRequest[]> =>
  look(app, async (db) => read(db, kitchenId, dayIn((await kitchenOf(db, kitchenId)).zone, app.now())));

export const getAuthorityRequest = (app: App, kitchenId: string, id: string): Promise<AuthorityRequest> =>
  look(app, async (db) => {
    const [one] = await read(db, kitchenId, dayIn((await kitchenOf(db, kitchenId)).zone, app.now()), id);
    if (one === undefined) throw notFound('request');
    return one;
  });

export const askAuthority = (
  app: App,
  actor: Actor,
  input: BodyOf<'askAuthority'>,
): Promise<AuthorityRequest> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const dish = input.dishId === null ? null : await dishRow(tx, kitchen.id, input.dishId);
    const place = kitchen.place as Place;
    const content: AuthorityRequestContent = {
      ...input.content,
      kitchenName: kitchen.name,
      place,
      // As the table has it today, whatever the page thought.
      law: lawOf(input.species, input.part, place),
      dishName: dish?.name ?? null,
    };
    const [row] = await tx
      .insert(t.authorityRequest)
      .values({
        id: uuid(),
        kitchenId: kitchen.id,
        dishId: input.dishId,
        species: input.species,
        part: input.part,
        content,
        askedAt: now,
        askedBy: person.id,
      })
      .returning();
    if (row === undefined) throw new Error('the request was not written');
    await tell({
      action: 'asked',
      subject: 'authority request',
      subjectId: row.id,
      summary: `The authority is asked about ${input.part} of ${input.species}${dish === null ? '' : ` for ${dish.name}`}.`,
      records: [{ table: 'authority_request', id: row.id, sha256: authorityRequestDigest(row) }],
    });
    const [one] = await read(tx, kitchen.id, dayIn(kitchen.zone, now), row.id);
    if (one === undefined) throw new Error('the request was not read back');
    return one;
  });

export const answerAuthority = (
  app: App,
  actor: Actor,
  requestId: string,
  input: AuthorityAnswerInput,
): Promise<AuthorityRequest> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const today = dayIn(kitchen.zone, now);
    const [request] = await read(tx, kitchen.id, today, requestId);
    if (request === undefined) throw notFound('request');
    // Sent twice: the first one counted.
    if (request.answers.some((a) => a.id === input.id)) return request;
    const { until, ...rest } = input;
    const [row] = await tx
      .insert(t.authorityAnswer)
      .values({
        ...rest,
        untilDate: until,
        kitchenId: kitchen.id,
        requestId,
        personId: person.id,
        recordedAt: now,
      })
      .returning();
    if (row === undefined) throw new Error('the answer was not written');
    await tell({
      action: 'recorded',
      subject: 'authority request',
      subjectId: requestId,
      summary: `${input.authority} ${input.answer} (${input.saidBy}, ${input.dated}, ${input.reference}) about ${request.part} of ${request.species}.`,
      records: [{ table: 'authority_answer', id: row.id, sha256: authorityAnswerDigest(row) }],
    });
    const [one] = await read(tx, kitchen.id, today, requestId);
    if (one === undefined) throw new Error('the request was not read back');
    return one;
  });
