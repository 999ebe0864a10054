/** Whether what a dish is made of may be served, and by whose word a stop is lifted. */
import { and, asc, eq, inArray } from 'drizzle-orm';
import type { Agreement } from '../contract/agreement.ts';
import { provenBy } from '../contract/lot-origin.ts';
import { type NamedPart, partOfLot, partsNamedBy } from '../contract/parts-named.ts';
import type { Problem } from '../contract/problem.ts';
import type { PartUsed, Place } from '../contract/records.ts';
import type { Method } from '../contract/steps.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { AppError } from './errors.ts';

interface Answered {
  readonly requestId: string;
  readonly dishId: string | null;
  readonly species: string;
  readonly part: string;
  readonly answer: typeof t.authorityAnswer.$inferSelect;
}

/** The last answer to each question, by its date and then by when it was written down; the latest last. */
export async function lastAnswers(db: Db, kitchenId: string): Promise<Answered[]> {
  const rows = await db
    .select({
      requestId: t.authorityRequest.id,
      dishId: t.authorityRequest.dishId,
      species: t.authorityRequest.species,
      part: t.authorityRequest.part,
      answer: t.authorityAnswer,
    })
    .from(t.authorityAnswer)
    .innerJoin(t.authorityRequest, eq(t.authorityRequest.id, t.authorityAnswer.requestId))
    .where(eq(t.authorityAnswer.kitchenId, kitchenId))
    .orderBy(asc(t.authorityAnswer.dated), asc(t.authorityAnswer.line));
  const last = new Map<string, Answered>();
  for (const row of rows) {
    last.delete(row.requestId);
    last.set(row.requestId, row);
  }
  return [...last.values()];
}

const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase();

/**
 * The agreement that stands on a day for a part in a dish. What was agreed for one dish says nothing of another; the
 * latest word decides, so that a refusal ends an earlier agreement; what is prohibited stays so.
 */
export function agreementFor(
  answers: readonly Answered[],
  asked: { readonly species: string; readonly part: string; readonly dishId: string | null },
  status: string,
  today: string,
): Agreement | null {
  if (status === 'prohibited') return null;
  const last = answers.findLast(
    (a) =>
      a.answer.answer !== 'asked for more' &&
      same(a.species, asked.species) &&
      same(a.part, asked.part) &&
      (a.dishId === null || a.dishId === asked.dishId),
  );
  if (last === undefined) return null;
  const { answer, untilDate, authority, saidBy, reference, conditions, dated } = last.answer;
  if (answer !== 'agreed' && answer !== 'agreed on conditions') return null;
  if (untilDate !== null && untilDate < today) return null;
  return {
    requestId: last.requestId,
    answer,
    authority,
    saidBy,
    reference,
    conditions,
    dated,
    until: untilDate,
  };
}

interface DishNamed {
  readonly id: string;
  readonly species: string;
  readonly part: string;
}

/** Every part that a dish is made of, and whether anything stops it today. */
export async function partsUsed(
  db: Db,
  kitchen: { readonly id: string; readonly place: string },
  dish: DishNamed,
  method: Method,
  today: string,
): Promise<PartUsed[]> {
  const place = kitchen.place as Place;
  const lots = await db
    .selectDistinct({ species: t.part.species, part: t.part.name })
    .from(t.batchLot)
    .innerJoin(t.batch, eq(t.batch.id, t.batchLot.batchId))
    .innerJoin(t.version, eq(t.version.id, t.batch.versionId))
    .innerJoin(t.lot, eq(t.lot.id, t.batchLot.lotId))
    .innerJoin(t.part, eq(t.part.id, t.lot.partId))
    .where(and(eq(t.version.kitchenId, kitchen.id), eq(t.version.dishId, dish.id)))
    .orderBy(asc(t.part.species), asc(t.part.name));
  const named = [
    ...partsNamedBy(dish, method, place),
    ...lots.map((lot) => partOfLot(lot.species, lot.part, 'lots its batches were made of', place)),
  ];
  const answers = named.some((n) => n.stops) ? await lastAnswers(db, kitchen.id) : [];
  return merged(named).map((n) => ({
    ...n,
    agreed: n.stops ? agreementFor(answers, { ...n, dishId: dish.id }, n.law.status, today) : null,
  }));
}

/** The parts that these lots are of, for a batch of a dish. */
export async function partsOfLots(
  db: Db,
  kitchen: { readonly id: string; readonly place: string },
  dish: DishNamed,
  lots: readonly (typeof t.lot.$inferSelect)[],
  today: string,
): Promise<PartUsed[]> {
  const ids = lots.flatMap((lot) => lot.partId ?? []);
  if (ids.length === 0) return [];
  const parts = await db
    .select()
    .from(t.part)
    .where(and(eq(t.part.kitchenId, kitchen.id), inArray(t.part.id, ids)));
  const answers = await lastAnswers(db, kitchen.id);
  return lots.flatMap((lot) => {
    const part = parts.find((p) => p.id === lot.partId);
    if (part === undefined) return [];
    const { species, name } = part;
    const place = kitchen.place as Place;
    const named = partOfLot(species, name, `lot ${lot.code}`, place, provenBy([lot]));
    const asked = { species, part: name, dishId: dish.id };
    return [{ ...named, agreed: agreementFor(answers, asked, named.law.status, today) }];
  });
}

/** A part named twice is one part; where it is named first is where it is said. */
function merged(named: readonly NamedPart[]): NamedPart[] {
  const seen = new Map<string, NamedPart>();
  for (const n of named) {
    const key = `${n.species} ${n.part}`.toLowerCase();
    const before = seen.get(key);
    if (before === undefined) seen.set(key, n);
    else if (n.stops && !before.stops) seen.set(key, { ...before, stops: true });
  }
  return [...seen.values()];
}

const whatToDo: Readonly<Record<string, string>> = {
  prohibited: 'It cannot be signed here.',
  'by-product by default: ask':
    'Ask the official veterinarian and your local authority in writing before you buy it; until they have agreed it stays an idea.',
  'not known: ask':
    'Ask your local authority in writing, and give the animal and the part by the names the trade uses.',
};

/** What stands in the way. A stop is lifted by nothing but the authority's own answer, what is prohibited by nothing. */
export const stopsOf = (used: readonly PartUsed[], place: string): Problem[] =>
  used
    .filter((u) => u.stops && u.agreed === null)
    .map((u) => ({
      path: u.path,
      found: `${u.part} of ${u.species} in ${place}: ${u.law.status} (${u.law.citation})`,
      allowed: `${u.law.reason} ${whatToDo[u.law.status]}`,
    }));

export function unlawful(problems: readonly Problem[]): AppError {
  return new AppError(
    'unlawful',
    `The law stops this dish: ${problems.map((p) => p.found).join('; ')}.`,
    problems,
  );
}
