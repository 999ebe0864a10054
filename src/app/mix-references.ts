/** What the lines of a method point at is there, and no dish is made of itself. */
import { and, asc, desc, eq, inArray, sql } from 'drizzle-orm';
import type { LineOf } from '../contract/pantry.ts';
import { lineOf } from '../contract/pantry-reckon.ts';
import type { Problem } from '../contract/problem.ts';
import type { Method } from '../contract/steps.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { AppError, invalid } from './errors.ts';
import { tableHolds } from './pantry-table.ts';

interface Reference {
  readonly of: LineOf;
  readonly path: string;
}

const referencesOf = (method: Method): Reference[] =>
  method.flatMap((step, i): Reference[] => {
    if (step.kind === 'trim') return step.of === undefined ? [] : [{ of: step.of, path: `method[${i}].of` }];
    if (step.kind !== 'mix') return [];
    return step.lines.flatMap((line, j): Reference[] => {
      const of = lineOf(line);
      return of === null ? [] : [{ of, path: `method[${i}].lines[${j}].of` }];
    });
  });

const tables = { ingredient: t.ingredient, part: t.part, dish: t.dish } as const;
const words = {
  table: 'the id of a row of the published table',
  ingredient: 'the id of an ingredient of this kitchen',
  part: 'the id of a part of this kitchen',
  dish: 'the id of another dish of this kitchen',
} as const;

/** Refuses a method that points at what is not there, or that would make a dish of itself. */
export async function checkReferences(
  db: Db,
  kitchenId: string,
  dish: { readonly id: string; readonly name: string },
  method: Method,
): Promise<void> {
  const references = referencesOf(method);
  if (references.length === 0) return;
  const problems: Problem[] = [];
  const missing = ({ of, path }: Reference) =>
    problems.push({ path, found: `${of.kind} ${of.id}, which is not there`, allowed: words[of.kind] });
  for (const kind of ['ingredient', 'part', 'dish'] as const) {
    const ids = [...new Set(references.filter((r) => r.of.kind === kind).map((r) => r.of.id))];
    if (ids.length === 0) continue;
    const table = tables[kind];
    const rows = await db
      .select({ id: table.id })
      .from(table)
      .where(and(eq(table.kitchenId, kitchenId), inArray(table.id, ids)));
    const there = new Set(rows.map((r) => r.id));
    for (const r of references) if (r.of.kind === kind && !there.has(r.of.id)) missing(r);
  }
  for (const r of references) if (r.of.kind === 'table' && !tableHolds(r.of.id)) missing(r);
  if (problems.length > 0) invalid('A line of this method points at something that is not there.', problems);
  await checkCircle(db, kitchenId, dish, references);
}

interface Trail {
  readonly names: readonly string[];
  /** The line of the method that it began with. */
  readonly path: string;
}

/** Walks from the method's own lines down the dishes that count today until it ends, or comes back. */
async function checkCircle(
  db: Db,
  kitchenId: string,
  dish: { readonly id: string; readonly name: string },
  references: readonly Reference[],
): Promise<void> {
  const seen = new Set<string>();
  let front = new Map<string, Trail>();
  for (const { of, path } of references)
    if (of.kind === 'dish' && !front.has(of.id)) front.set(of.id, { names: [dish.name], path });
  while (front.size > 0) {
    const back = front.get(dish.id);
    if (back !== undefined) {
      const round = [...back.names, dish.name].join(' → ');
      throw new AppError('invalid', `A dish cannot be made of itself: ${round}.`, [
        { path: back.path, found: round, allowed: 'a dish that is not made of this one' },
      ]);
    }
    for (const id of front.keys()) seen.add(id);
    const rows = await db
      .selectDistinctOn([t.version.dishId], {
        dishId: t.version.dishId,
        name: t.dish.name,
        uses: sql<
          string[]
        >`jsonb_path_query_array(${t.version.method}, '$[*].lines[*].of ? (@.kind == "dish").id')`,
        takes: sql<string[]>`jsonb_path_query_array(${t.version.method}, '$[*].of ? (@.kind == "dish").id')`,
      })
      .from(t.version)
      .innerJoin(t.dish, eq(t.dish.id, t.version.dishId))
      .where(and(eq(t.version.kitchenId, kitchenId), inArray(t.version.dishId, [...front.keys()])))
      .orderBy(asc(t.version.dishId), desc(sql`${t.version.status} = 'signed'`), desc(t.version.number));
    const next = new Map<string, Trail>();
    for (const { dishId, name, uses, takes } of rows) {
      const trail = front.get(dishId);
      if (trail === undefined) continue;
      for (const id of [...uses, ...takes])
        if (!seen.has(id) && !next.has(id)) next.set(id, { names: [...trail.names, name], path: trail.path });
    }
    front = next;
  }
}
