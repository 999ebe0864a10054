import { v7 as uuid } from 'uuid';
import { beforeAll, expect, it } from 'vitest';
import { checkJournal } from '../../src/app/proof.ts';
import { addSupplier, changeSupplier, listSuppliers, supplierHistory } from '../../src/app/suppliers.ts';
import { appOn, openKitchen, type TestKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

eachStore('the record of a supplier', (making) => {
  let k: TestKitchen;
  let other: TestKitchen;
  beforeAll(async () => {
    const app = appOn(await making.fresh());
    k = await openKitchen(app);
    other = await openKitchen(app);
  });

  it('is changed in place, and what it was stands in the journal', async () => {
    const added = await addSupplier(k.app, k.actor, { name: 'Hill Farm (invented)', note: 'Tuesdays.' });
    expect(added).toMatchObject({ contact: '', address: '', approval: '' });
    const changed = await changeSupplier(k.app, k.actor, added.id, {
      note: 'Wednesdays.',
      approval: 'ZZ 0001',
    });
    expect(changed).toEqual({ ...added, note: 'Wednesdays.', approval: 'ZZ 0001' });
    expect(await listSuppliers(k.app, k.kitchen.id)).toContainEqual(changed);
    const [newest, first] = await supplierHistory(k.app, k.kitchen.id, added.id);
    expect(newest?.summary).toBe(
      'Supplier Hill Farm (invented): approval number was nothing, is “ZZ 0001”; note was “Tuesdays.”, is “Wednesdays.”.',
    );
    expect(first?.summary).toBe('Supplier Hill Farm (invented) added.');
    expect(newest?.by).toBe(k.person.name);
  });

  it('written as it stands writes nothing', async () => {
    const added = await addSupplier(k.app, k.actor, { name: 'Marsh (invented)', note: '' });
    await changeSupplier(k.app, k.actor, added.id, { contact: 'Ring at six' });
    await changeSupplier(k.app, k.actor, added.id, { contact: 'Ring at six' });
    expect(await supplierHistory(k.app, k.kitchen.id, added.id)).toHaveLength(2);
  });

  it('tells of an empty change and of a supplier of another kitchen', async () => {
    const added = await addSupplier(k.app, k.actor, { name: 'Wood (invented)', note: '' });
    await expect(changeSupplier(k.app, k.actor, added.id, {})).rejects.toThrow('Nothing is to be changed.');
    const missing = expect.objectContaining({ code: 'not_found' });
    await expect(changeSupplier(other.app, other.actor, added.id, { note: 'x' })).rejects.toEqual(missing);
    await expect(changeSupplier(k.app, k.actor, uuid(), { note: 'x' })).rejects.toEqual(missing);
    await expect(supplierHistory(other.app, other.kitchen.id, added.id)).rejects.toEqual(missing);
    expect(await checkJournal(k.app, k.kitchen.id)).toMatchObject({ holds: true });
  });
});
