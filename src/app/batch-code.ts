/** What a batch is called on its label. */
import { and, eq, like } from 'drizzle-orm';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';

/** The day in the kitchen's zone and a number: 251125-1. */
export async function nextCode(tx: Db, kitchen: { id: string; zone: string }, now: Date): Promise<string> {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: kitchen.zone,
    year: '2-digit',
    month: '2-digit',
    day: '2-digit',
  }).formatToParts(now);
  const of = (type: string) => parts.find((p) => p.type === type)?.value ?? '';
  const day = `${of('year')}${of('month')}${of('day')}`;
  const rows = await tx
    .select({ code: t.batch.code })
    .from(t.batch)
    .where(and(eq(t.batch.kitchenId, kitchen.id), like(t.batch.code, `${day}-%`)));
  const highest = Math.max(0, ...rows.map((row) => Number(row.code.slice(day.length + 1)) || 0));
  return `${day}-${highest + 1}`;
}
