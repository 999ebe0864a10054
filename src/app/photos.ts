/** Pictures of what came and how it was: kept as they were sent, with their fingerprint. */
import { createHash } from 'node:crypto';
import { and, eq } from 'drizzle-orm';
import type { PhotoInput } from '../contract/delivery.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, change, kitchenOf, look } from './app.ts';
import { AppError, notFound } from './errors.ts';
import { photoDigest } from './record-digests.ts';

const starts: Readonly<Record<PhotoInput['mime'], (b: Uint8Array) => boolean>> = {
  'image/jpeg': (b) => b[0] === 0xff && b[1] === 0xd8 && b[2] === 0xff,
  'image/png': (b) => b[0] === 0x89 && b[1] === 0x50 && b[2] === 0x4e && b[3] === 0x47,
  'image/webp': (b) => String.fromCharCode(...b.subarray(0, 4), ...b.subarray(8, 12)) === 'RIFFWEBP',
};

const subjects = { delivery: t.delivery, lot: t.lot, specification: t.specification } as const;

export const addPhoto = (
  app: App,
  actor: Actor,
  input: PhotoInput,
): Promise<{ id: string; sha256: string }> =>
  change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    const bytes = Buffer.from(input.base64, 'base64');
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    const [same] = await tx
      .select({ sha256: t.photo.sha256, kitchenId: t.photo.kitchenId })
      .from(t.photo)
      .where(eq(t.photo.id, input.id));
    // Sent twice: the first one counted.
    if (same !== undefined) {
      if (same.kitchenId === kitchen.id && same.sha256 === sha256) return { id: input.id, sha256 };
      throw new AppError('conflict', 'Another picture has this id.');
    }
    if (!starts[input.mime](bytes))
      throw new AppError('invalid', 'The picture is not what it says it is.', [
        { path: 'base64', found: 'other bytes', allowed: `a picture of type ${input.mime}` },
      ]);
    const table = subjects[input.subject];
    const [subject] = await tx
      .select({ id: table.id })
      .from(table)
      .where(and(eq(table.kitchenId, kitchen.id), eq(table.id, input.subjectId)));
    if (subject === undefined) throw notFound(input.subject);
    const [row] = await tx
      .insert(t.photo)
      .values({
        id: input.id,
        kitchenId: kitchen.id,
        subject: input.subject,
        subjectId: input.subjectId,
        mime: input.mime,
        bytes,
        sha256,
        caption: input.caption,
        takenAt: new Date(input.takenAt),
        personId: person.id,
        recordedAt: now,
      })
      .returning();
    if (row === undefined) throw new Error('the picture was not written');
    await tell({
      action: 'added',
      subject: 'photo',
      subjectId: input.id,
      summary: `Picture of a ${input.subject}${input.caption === '' ? '' : `: ${input.caption}`}.`,
      records: [{ table: 'photo', id: row.id, sha256: photoDigest(row) }],
    });
    return { id: input.id, sha256 };
  });

export const getPhoto = (
  app: App,
  kitchenId: string,
  id: string,
): Promise<{ mime: string; bytes: Uint8Array }> =>
  look(app, async (db) => {
    await kitchenOf(db, kitchenId);
    const [row] = await db
      .select({ mime: t.photo.mime, bytes: t.photo.bytes })
      .from(t.photo)
      .where(and(eq(t.photo.kitchenId, kitchenId), eq(t.photo.id, id)));
    if (row === undefined) throw notFound('picture');
    return row;
  });
