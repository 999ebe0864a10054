import { expect, it } from 'vitest';
import { migrate, readMigrations } from '../../src/store/migrate.ts';
import { eachStore } from './stores.ts';

const all = readMigrations();
const kitchen = '01900000-0000-7000-8000-000000000001';
const id = (n: number) => `01900000-0000-7000-8000-0000000001${String(n).padStart(2, '0')}`;

eachStore('ingredients of before the pantry', (making) => {
  it('are carried over as they were: what nobody said stays unsaid, words that are not understood are kept', async () => {
    const [session] = await making.bare(1);
    await migrate(session!, all.slice(0, 7));
    await session!.query(
      `INSERT INTO kitchen VALUES ('${kitchen}', 'Old', false, 'GB-ENG', 'Europe/London', 'GBP', 'metric', '2026-01-05T10:00:00Z')`,
    );
    const composition = '{"water":0.58,"protein":0.03,"fat":0.36,"carbohydrate":0.03,"fibre":0,"ash":0.0}';
    const row = (n: number, name: string, made: string, salt: string, price: string, allergens: string) =>
      session!.query(
        `INSERT INTO ingredient (id, kitchen_id, name, composition, salt, source, price_per_kg, allergens, created_at)
         VALUES ('${id(n)}', '${kitchen}', '${name}', ${made}, ${salt}, 'A book.', ${price}, '${allergens}', '2026-01-05T10:00:00Z')`,
      );
    await row(1, 'Cream', `'${composition}'`, '0.001', '520', '["milk"]');
    await row(2, 'Crumbs', 'NULL', 'NULL', 'NULL', '["Wheat","soya"]');
    await row(3, 'Sauce', 'NULL', 'NULL', '90', '["milk","garum"]');
    await row(4, 'Onion', 'NULL', '0', '0', '[]');
    await migrate(session!, all);
    const rows = await session!.query<Record<string, unknown>>(
      'SELECT name, nutrients, allergens, note, table_id, trim_pct, rev, put_away_at, source FROM ingredient ORDER BY id',
    );
    const same = { table_id: null, trim_pct: 0, rev: 0, put_away_at: null, source: 'A book.' };
    expect(rows).toEqual([
      {
        ...same,
        name: 'Cream',
        nutrients: { ...JSON.parse(composition), salt: 0.001 },
        allergens: [{ allergen: 'milk' }],
        note: '',
      },
      {
        ...same,
        name: 'Crumbs',
        nutrients: {},
        allergens: [{ allergen: 'gluten', as: 'wheat' }, { allergen: 'soybeans' }],
        note: '',
      },
      {
        ...same,
        name: 'Sauce',
        nutrients: {},
        allergens: null,
        note: 'Allergens as they were typed before: milk, garum. Say which of the fourteen they are.',
      },
      { ...same, name: 'Onion', nutrients: { salt: 0 }, allergens: null, note: '' },
    ]);
    const prices = await session!.query<Record<string, unknown>>(
      `SELECT ingredient_id, pack_g, price::int AS price, from_day::text AS from_day, person_id FROM ingredient_price ORDER BY ingredient_id`,
    );
    const price = { pack_g: 1_000, from_day: '2026-01-05', person_id: null };
    expect(prices).toEqual([
      { ...price, ingredient_id: id(1), price: 520 },
      { ...price, ingredient_id: id(3), price: 90 },
      { ...price, ingredient_id: id(4), price: 0 },
    ]);
    // From here on a price is somebody's.
    await expect(
      session!.query(
        `INSERT INTO ingredient_price (id, kitchen_id, ingredient_id, pack_g, price, from_day, note, recorded_at)
         VALUES ('${id(9)}', '${kitchen}', '${id(1)}', 1000, 1, '2026-01-06', '', now())`,
      ),
    ).rejects.toThrow(/somebodys/);
  });
});
