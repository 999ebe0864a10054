/** The trees by which a kitchen cuts, what the law never lets into them, and the breakdowns of before. */
import { and, asc, eq, gte, isNull, lte, sql } from 'drizzle-orm';
import { v7 as uuid } from 'uuid';
import type { BreakdownOutcome, BreakdownTree, TreeNode } from '../contract/breakdown.ts';
import { type LotPapers, provenBy } from '../contract/lot-origin.ts';
import type { BodyOf } from '../contract/operations.ts';
import type { Problem } from '../contract/problem.ts';
import type { Place } from '../contract/records.ts';
import { lawOf } from '../core/properties/parts-law.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, kitchenOf, look } from './app.ts';
import { checkTree, outcomeOf } from './breakdown-standing.ts';
import { nameOf, namesIn } from './dishes.ts';
import { AppError, invalid, notFound } from './errors.ts';
import { breakdownDigest } from './record-digests.ts';

/**
 * What the law never lets become food is not offered as a part. `lots`: what is cut up, with the age and the origin that its
 * papers show; what they do not show counts as the stricter; left out where no animal is cut up yet.
 */
export function checkLaw(
  nodes: readonly TreeNode[],
  species: string,
  place: Place,
  { path = 'nodes', lots }: { path?: string; lots?: readonly LotPapers[] } = {},
): void {
  const origin = lots === undefined ? {} : provenBy(lots);
  const problems = nodes.flatMap((n, i): Problem[] => {
    if (n.becomes !== 'part' && n.becomes !== 'sold') return [];
    const law = lawOf(species, n.name, place, origin);
    if (law.status !== 'prohibited') return [];
    return [
      {
        path: `${path}[${i}].becomes`,
        found: `${n.name} of ${species} as a part: prohibited (${law.citation})`,
        allowed: `by-product: ${law.reason}`,
      },
    ];
  });
  if (problems.length > 0) invalid(`This may never become food: ${problems[0]?.found}.`, problems);
}

export const listTrees = (app: App, kitchenId: string): Promise<BreakdownTree[]> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const names = await namesIn(db, kitchenId);
    const rows = await db
      .select()
      .from(t.breakdownTree)
      .where(and(eq(t.breakdownTree.kitchenId, kitchenId), isNull(t.breakdownTree.putAwayAt)))
      .orderBy(asc(t.breakdownTree.species), asc(t.breakdownTree.name));
    return rows.map((row) => asTree(row, names));
  });

const asTree = (
  row: typeof t.breakdownTree.$inferSelect,
  names: ReadonlyMap<string, string>,
): BreakdownTree => ({
  id: row.id,
  species: row.species,
  name: row.name,
  nodes: row.nodes as TreeNode[],
  createdAt: row.createdAt.toISOString(),
  createdBy: nameOf(names, row.createdBy),
});

/** A tree of the same name takes the place of the one before it, which is put away and not lost. */
export const addTree = (app: App, actor: Actor, input: BodyOf<'addTree'>): Promise<BreakdownTree> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    checkTree(input.nodes);
    checkLaw(input.nodes, input.species, kitchen.place as Place);
    await tx
      .update(t.breakdownTree)
      .set({ putAwayAt: now })
      .where(
        and(
          eq(t.breakdownTree.kitchenId, kitchen.id),
          eq(t.breakdownTree.species, input.species),
          eq(t.breakdownTree.name, input.name),
          isNull(t.breakdownTree.putAwayAt),
        ),
      );
    const row = {
      id: uuid(),
      kitchenId: kitchen.id,
      ...input,
      createdAt: now,
      createdBy: person.id,
      putAwayAt: null,
    };
    await tx.insert(t.breakdownTree).values(row);
    await tell({
      action: 'kept',
      subject: 'breakdown tree',
      subjectId: row.id,
      summary: `Breakdown tree ${input.name} of ${input.species}, ${input.nodes.length} places.`,
    });
    return asTree(row, await namesIn(tx, kitchen.id));
  });

/** Breakdowns of before, pasted from a spreadsheet: for the yields only; no lots are made of them. */
export const importBreakdowns = (
  app: App,
  actor: Actor,
  input: BodyOf<'importBreakdowns'>,
): Promise<{ imported: number }> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    if (input.supplierId !== null) {
      const [supplier] = await tx
        .select({ id: t.supplier.id })
        .from(t.supplier)
        .where(and(eq(t.supplier.kitchenId, kitchen.id), eq(t.supplier.id, input.supplierId)));
      if (supplier === undefined) throw notFound('supplier');
    }
    const twice = await hereAlready(tx, kitchen.id, input);
    const records: { table: 'breakdown'; id: string; sha256: string }[] = [];
    for (const [i, past] of input.rows.entries()) {
      const nodes: TreeNode[] = [
        {
          id: 'whole',
          parent: null,
          name: input.species,
          becomes: 'step',
          class: null,
          use: 'menu',
          piecesPerAnimal: null,
        },
        ...past.parts.map(
          (p, j): TreeNode => ({
            id: `part-${j + 1}`,
            parent: 'whole',
            name: p.name,
            becomes: p.becomes,
            class: null,
            use: p.becomes === 'part' || p.becomes === 'sold' ? 'menu' : 'thrown away',
            piecesPerAnimal: null,
          }),
        ),
      ];
      const { outcome } = outcomeOf({
        nodes,
        inGrams: past.inGrams,
        weights: new Map(
          past.parts.map((p, j) => [`part-${j + 1}`, { grams: p.grams, pieces: null, weighings: 1 }]),
        ),
        paid: null,
        costBy: 'weight',
        money: [],
        path: `rows[${i}]`,
      });
      const at = new Date(past.at);
      const [row] = await tx
        .insert(t.breakdown)
        .values({
          id: uuid(),
          kitchenId: kitchen.id,
          species: input.species,
          supplierId: input.supplierId,
          origin: 'imported',
          animals: past.animals,
          nodes,
          status: 'finished',
          startedAt: at,
          startedBy: person.id,
          cutterId: person.id,
          finishedAt: now,
          finishedBy: person.id,
          note: input.note,
          outcome,
        })
        .returning();
      if (row === undefined) throw new Error('the breakdown was not written');
      records.push({ table: 'breakdown', id: row.id, sha256: breakdownDigest(row) });
    }
    if (twice.length > 0)
      throw new AppError('conflict', 'Some of these were brought in before; nothing was kept.', twice);
    await tell({
      action: 'imported',
      subject: 'breakdown',
      subjectId: records[0]?.id ?? kitchen.id,
      summary: `${records.length} past breakdowns of ${input.species} imported${input.note === '' ? '' : `: ${input.note.slice(0, 200)}`}`,
      records,
    });
    return { imported: records.length };
  });

/** Rows that were brought in before: the same day, animals, whole and parts. */
async function hereAlready(tx: Db, kitchenId: string, input: BodyOf<'importBreakdowns'>): Promise<Problem[]> {
  const keyOf = (at: string, animals: number, grams: number, parts: readonly [string, number][]) =>
    JSON.stringify([at, animals, grams, [...parts].sort(([a], [b]) => (a < b ? -1 : 1))]);
  const days = input.rows.map((r) => Date.parse(r.at));
  const before = await tx
    .select({ startedAt: t.breakdown.startedAt, animals: t.breakdown.animals, outcome: t.breakdown.outcome })
    .from(t.breakdown)
    .where(
      and(
        eq(t.breakdown.kitchenId, kitchenId),
        eq(t.breakdown.origin, 'imported'),
        sql`lower(${t.breakdown.species}) = lower(${input.species})`,
        gte(t.breakdown.startedAt, new Date(Math.min(...days))),
        lte(t.breakdown.startedAt, new Date(Math.max(...days))),
      ),
    );
  const here = new Set(
    before.map(({ startedAt, animals, outcome }) => {
      const { inGrams, nodes } = outcome as BreakdownOutcome;
      const parts = nodes.slice(1).map((n): [string, number] => [n.name.toLowerCase(), n.grams]);
      return keyOf(startedAt.toISOString(), animals, inGrams, parts);
    }),
  );
  return input.rows.flatMap((r, i): Problem[] => {
    const parts = r.parts.map((p): [string, number] => [p.name.toLowerCase(), p.grams]);
    if (!here.has(keyOf(new Date(r.at).toISOString(), r.animals, r.inGrams, parts))) return [];
    return [
      {
        path: `rows[${i}]`,
        found: `a ${input.species} of ${r.at.slice(0, 10)} that is here already`,
        allowed: 'each breakdown once',
      },
    ];
  });
}
