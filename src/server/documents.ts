/** Printed documents, made from the records at the moment they are asked for. */
import type { Context, Hono } from 'hono';
import { type App, asKitchen, kitchenOf, look } from '../app/app.ts';
import { getAuthorityRequest } from '../app/authority.ts';
import { getBatch } from '../app/batches.ts';
import { getDish, getVersion } from '../app/dishes.ts';
import { AppError } from '../app/errors.ts';
import { getPhoto } from '../app/photos.ts';
import { readJournal } from '../app/proof.ts';
import { specificationOfVersion } from '../app/specifications.ts';
import { listSuppliers } from '../app/suppliers.ts';
import { Id } from '../contract/quantities.ts';
import type { PrintTask } from './printing.ts';

const idOf = (c: Context, name: string, what: string): string => {
  const id = Id.safeParse(c.req.param(name));
  if (!id.success) throw new AppError('not_found', `This kitchen has no ${what} of that id.`);
  return id.data;
};

export function documentRoutes(http: Hono, app: App, print: (task: PrintTask) => Promise<Uint8Array>): void {
  const printedFor = async (kitchenId: string) => ({
    kitchen: await look(app, async (db) => asKitchen(await kitchenOf(db, kitchenId))),
    printedAt: app.now().toISOString(),
  });

  http.get('/api/kitchens/:kitchenId/versions/:versionId/method-card.pdf', async (c) => {
    const kitchenId = idOf(c, 'kitchenId', 'kitchen');
    const version = await getVersion(app, kitchenId, idOf(c, 'versionId', 'version'));
    const dish = await getDish(app, kitchenId, version.dishId);
    const data = { ...(await printedFor(kitchenId)), dish, version };
    return pdf(c, await print({ kind: 'method card', data }), `method card ${dish.name} ${version.number}`);
  });

  http.get('/api/kitchens/:kitchenId/specification-versions/:versionId/specification.pdf', async (c) => {
    const kitchenId = idOf(c, 'kitchenId', 'kitchen');
    const versionId = idOf(c, 'versionId', 'version of a specification');
    const specification = await specificationOfVersion(app, kitchenId, versionId);
    const version = specification.versions.find((v) => v.id === versionId);
    if (version === undefined) throw new Error(`version ${versionId} is not in its specification`);
    const data = { ...(await printedFor(kitchenId)), specification, version };
    return pdf(
      c,
      await print({ kind: 'specification', data }),
      `specification ${specification.name} ${version.number}`,
    );
  });

  http.get('/api/kitchens/:kitchenId/authority-requests/:requestId/question.pdf', async (c) => {
    const kitchenId = idOf(c, 'kitchenId', 'kitchen');
    const request = await getAuthorityRequest(app, kitchenId, idOf(c, 'requestId', 'question'));
    const data = { ...(await printedFor(kitchenId)), request };
    return pdf(
      c,
      await print({ kind: 'authority request', data }),
      `question ${request.part} ${request.species}`,
    );
  });

  http.get('/api/kitchens/:kitchenId/photos/:photoId', async (c) => {
    const photo = await getPhoto(app, idOf(c, 'kitchenId', 'kitchen'), idOf(c, 'photoId', 'picture'));
    return c.body(photo.bytes as Uint8Array<ArrayBuffer>, 200, {
      'Content-Type': photo.mime,
      // A picture never changes: its id is its own.
      'Cache-Control': 'private, max-age=31536000, immutable',
    });
  });

  http.get('/api/kitchens/:kitchenId/batches/:batchId/batch-record.pdf', async (c) => {
    const kitchenId = idOf(c, 'kitchenId', 'kitchen');
    const batch = await getBatch(app, kitchenId, idOf(c, 'batchId', 'batch'));
    const [version, dish, suppliers, [last]] = await Promise.all([
      getVersion(app, kitchenId, batch.versionId),
      getDish(app, kitchenId, batch.dishId),
      listSuppliers(app, kitchenId),
      readJournal(app, kitchenId, { limit: 1 }),
    ]);
    const data = { ...(await printedFor(kitchenId)), dish, batch, version, suppliers, journal: last ?? null };
    return pdf(c, await print({ kind: 'batch record', data }), `batch record ${batch.code}`);
  });
}

function pdf(c: Context, bytes: Uint8Array, name: string): Response {
  const file = name
    .normalize('NFKD')
    .replace(/[^\w .-]+/g, '')
    .replace(/\s+/g, '-')
    .toLowerCase();
  return c.body(bytes as Uint8Array<ArrayBuffer>, 200, {
    'Content-Type': 'application/pdf',
    'Content-Disposition': `inline; filename="${file}.pdf"`,
    'Cache-Control': 'no-store',
  });
}
