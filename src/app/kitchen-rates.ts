/** What hands, energy and shelf space cost and what is added to a price: only added to, each entry from its day on. */
import { desc, eq } from 'drizzle-orm';
import type { BodyOf } from '../contract/operations.ts';
import type { Problem } from '../contract/problem.ts';
import type { KitchenRates, RatesEntry } from '../contract/rates.ts';
import type { Db } from '../store/store.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change } from './app.ts';
import { digest } from './digest.ts';
import { nameOf, namesIn } from './dishes.ts';
import { AppError, invalid } from './errors.ts';
import { kitchenRatesDigest } from './record-digests.ts';

/** Every entry, the newest day first; of two from one day, the later entry. */
export async function readRates(db: Db, kitchenId: string): Promise<RatesEntry[]> {
  const names = await namesIn(db, kitchenId);
  const rows = await db
    .select()
    .from(t.kitchenRates)
    .where(eq(t.kitchenRates.kitchenId, kitchenId))
    .orderBy(desc(t.kitchenRates.fromDay), desc(t.kitchenRates.line));
  return rows.map((row) => ({
    ...(row.content as Omit<KitchenRates, 'from'>),
    from: row.fromDay,
    id: row.id,
    recordedAt: row.recordedAt.toISOString(),
    by: nameOf(names, row.personId),
    note: row.note,
  }));
}

/** The newest whose day has come. */
export const ratesOn = (entries: readonly RatesEntry[], day: string): RatesEntry | null =>
  entries.find((e) => e.from <= day) ?? null;

/** Two lines of one name would leave it open which one holds. */
function checkOnce(input: BodyOf<'setRates'>): void {
  const problems: Problem[] = [];
  const seen = new Set<string>();
  const see = (path: string, name: string) => {
    if (seen.has(name)) problems.push({ path, found: `${name} twice`, allowed: 'each once' });
    seen.add(name);
  };
  input.labour.forEach((l, i) => {
    see(`labour[${i}].grade`, l.grade);
  });
  input.machines.forEach((m, i) => {
    see(`machines[${i}]`, `${m.use}, ${m.fuel}`);
  });
  if (problems.length > 0) invalid('The rates do not hold together.', problems);
}

export const setRates = (app: App, actor: Actor, input: BodyOf<'setRates'>): Promise<RatesEntry> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const read = async () => {
      const found = (await readRates(tx, kitchen.id)).find((e) => e.id === input.id);
      if (found === undefined)
        throw new AppError('conflict', 'Rates of another kitchen were already kept under this id.');
      return found;
    };
    const [before] = await tx.select().from(t.kitchenRates).where(eq(t.kitchenRates.id, input.id));
    checkOnce(input);
    const { id, from, note, ...content } = input;
    if (before !== undefined) {
      if (before.fromDay !== from || digest(before.content) !== digest(content))
        throw new AppError('conflict', 'Different rates were already kept under this id.');
      return read();
    }
    const row = {
      id,
      kitchenId: kitchen.id,
      fromDay: from,
      content,
      note,
      personId: person.id,
      recordedAt: now,
    };
    await tx.insert(t.kitchenRates).values(row);
    await tell({
      action: 'set',
      subject: 'rates',
      subjectId: id,
      summary: `Rates from ${from}: ${input.labour.map((l) => `${l.grade} ${(l.perHour / 100).toFixed(2)} an hour`).join(', ') || 'no hands'}${note === '' ? '' : `; ${note}`}.`,
      records: [{ table: 'kitchen_rates', id, sha256: kitchenRatesDigest(row) }],
    });
    return read();
  });
