/** A line of the journal: its hash covers what it says and the line before it, so that no line can be changed or left out. */
import { desc, eq, sql } from 'drizzle-orm';
import type { Person } from '../contract/records.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { channel } from './changes.ts';
import { digest } from './digest.ts';

export interface Entry {
  readonly action: string;
  readonly subject: string;
  readonly subjectId: string;
  readonly summary: string;
  /** Fingerprints of the records written with this line, by table and id: changing a record shows too. */
  readonly records?: readonly { readonly table: RecordTable; readonly id: string; readonly sha256: string }[];
}

export type RecordTable =
  | 'reading'
  | 'decision'
  | 'probe_log'
  | 'machine_fit'
  | 'version_save'
  | 'signature'
  | 'batch_start'
  | 'batch_close'
  | 'specification_version'
  | 'specification_answer'
  | 'delivery'
  | 'photo'
  | 'lot_move'
  | 'weighing'
  | 'breakdown'
  | 'authority_request'
  | 'authority_answer'
  | 'ingredient_change'
  | 'ingredient_price'
  | 'allergen_looked'
  | 'declared_risk'
  | 'declared_risk_end'
  | 'kitchen_rates';

export const firstHash = '0'.repeat(64);

type Row = typeof t.journal.$inferSelect;

/** What a line's hash is taken over. */
export const hashOf = (line: Omit<Row, 'hash'>): string => digest(line);

export async function writeLine(
  tx: Db,
  who: { readonly kitchenId: string; readonly person: Person; readonly at: Date },
  entry: Entry,
): Promise<void> {
  const [last] = await tx
    .select({ seq: t.journal.seq, hash: t.journal.hash })
    .from(t.journal)
    .where(eq(t.journal.kitchenId, who.kitchenId))
    .orderBy(desc(t.journal.seq))
    .limit(1);
  const line = {
    kitchenId: who.kitchenId,
    seq: (last?.seq ?? 0) + 1,
    at: who.at,
    personId: who.person.id,
    byName: who.person.name,
    action: entry.action,
    subject: entry.subject,
    subjectId: entry.subjectId,
    summary: entry.summary,
    details: { records: entry.records ?? [] },
    prevHash: last?.hash ?? firstHash,
  };
  await tx.insert(t.journal).values({ ...line, hash: hashOf(line) });
  const change = {
    kitchenId: who.kitchenId,
    subject: entry.subject,
    subjectId: entry.subjectId,
    seq: line.seq,
  };
  await tx.execute(sql`SELECT pg_notify(${channel}, ${JSON.stringify(change)})`);
}
