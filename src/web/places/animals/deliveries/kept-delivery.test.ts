import { expect, test } from 'vitest';
import { emptyDraft, newLine } from './delivery-draft.ts';
import { readDelivery } from './kept-delivery.ts';

test('what was kept comes back as it was', () => {
  const draft = {
    ...emptyDraft('id', 'supplier', '2026-11-19T09:00:00.000Z'),
    lines: [newLine('l', 'G-1', null)],
  };
  // Not chosen yet is not the same as nothing agreed, on either side of a reload.
  expect(readDelivery(JSON.stringify(draft))?.versionId).toBeUndefined();
  expect(readDelivery(JSON.stringify({ ...draft, versionId: null }))?.versionId).toBeNull();
  expect(readDelivery(JSON.stringify(draft))).toMatchObject({ id: 'id', lines: [{ code: 'G-1' }] });
});

test('something else under the key is no delivery, and no error', () => {
  for (const text of [
    null,
    '',
    'null',
    '{}',
    '{"id":1}',
    '[]',
    '{"id":"x","supplierId":"y","arrivedAt":"z","lines":[3],"marks":{}}',
  ])
    expect(readDelivery(text)).toBeNull();
});
