import { v7 as uuid } from 'uuid';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Changes, openChanges } from '../../src/app/changes.ts';
import { getSpecification } from '../../src/app/specifications.ts';
import { documents } from '../../src/contract/document-paths.ts';
import { openHttp } from '../../src/server/http.ts';
import { print } from '../../src/server/printing.ts';
import { readPdf } from '../paper/read-pdf.ts';
import { oneOfEach } from './animals.ts';
import { appOn, openKitchen, type TestKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

eachStore('the papers of Animals', (making) => {
  let k: TestKitchen;
  let changes: Changes;
  let http: ReturnType<typeof openHttp>['http'];
  let ids: Record<string, string>;
  beforeAll(async () => {
    const app = appOn(await making.fresh());
    k = await openKitchen(app);
    ids = await oneOfEach(k);
    changes = await openChanges(app.store);
    http = openHttp({ app, changes, checkAnswers: true, print, resetDemo: async () => k.kitchen }).http;
  });
  afterAll(() => changes.close());

  const get = (path: string) =>
    http.request(`http://127.0.0.1:3000${path}`, {
      headers: { host: '127.0.0.1:3000', 'x-person': k.person.id },
    });
  const textAt = async (path: string) => {
    const response = await get(path);
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe('application/pdf');
    const { text, pages } = readPdf(new Uint8Array(await response.arrayBuffer()));
    return { pages, text: text.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ') };
  };

  it('prints the specification as it was sent, on one page', async () => {
    const { versions } = await getSpecification(k.app, k.kitchen.id, ids.specificationId!);
    const { text, pages } = await textAt(documents.specificationSheet(k.kitchen.id, versions[0]!.id));
    expect(pages).toBe(1);
    for (const words of [
      'Geese, long necks',
      'Version 1',
      'torn neck skin',
      'in force',
      'What the law asks of the supplier',
    ])
      expect(text).toContain(words);
  });

  it('prints the question to the authority as it was asked', async () => {
    const { text } = await textAt(documents.authorityRequest(k.kitchen.id, ids.requestId!));
    for (const words of ['May the heads be served?', '1069/2009 Article 10(b)(ii)', 'The authority’s answer'])
      expect(text).toContain(words);
  });

  it('has no paper of what is not there, nor of another kitchen’s', async () => {
    for (const path of [
      documents.specificationSheet(k.kitchen.id, uuid()),
      documents.authorityRequest(k.kitchen.id, uuid()),
      documents.authorityRequest(uuid(), ids.requestId!),
    ])
      expect((await get(path)).status, path).toBe(404);
  });
});
