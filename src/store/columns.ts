/** Columns that most tables have. */
import { bigint, customType, timestamp, uuid } from 'drizzle-orm/pg-core';

export const id = () => uuid('id').primaryKey();
export const kitchenId = () => uuid('kitchen_id').notNull();
export const instant = (name: string) => timestamp(name, { withTimezone: true, mode: 'date' });
/** Written by the database, in the order of arrival. */
export const line = () => bigint('line', { mode: 'number' }).generatedAlwaysAsIdentity().notNull();
/** Bytes as they are. */
export const bytea = customType<{ data: Uint8Array }>({ dataType: () => 'bytea' });
