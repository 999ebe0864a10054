/** A probe's log asked what it says of the kitchen's steamer: fitted, used in the step, kept for the machine, seen with its history, offered again. */
import type { Dish, DishSummary, Kitchen, Person } from '../../src/contract/records.ts';
import { accessible, expect, fits, test } from './stage.ts';

test('a log says what the steamer does, and the next stage knows it', async ({ page, server }) => {
  const json = async <T>(route: string) => (await page.request.get(`${server.url}/api${route}`)).json() as T;
  const [kitchen] = await json<Kitchen[]>('/kitchens');
  const home = `/kitchens/${kitchen!.id}`;
  const [person] = await json<Person[]>(`${home}/people`);
  const dishes = await json<DishSummary[]>(`${home}/dishes`);
  const trotter = dishes.find((d) => /trotter/i.test(d.name))!;
  const begun = await page.request.post(`${server.url}/api${home}/dishes/${trotter.id}/versions`, {
    headers: { 'x-person': person!.id },
    data: { reason: 'What the steamer does.' },
  });
  expect(begun.status()).toBe(200);
  const dish = await json<Dish>(`${home}/dishes/${trotter.id}`);
  const cook = dish.current.method.find((step) => step.kind === 'cook')!;
  await page.addInitScript(
    ([key, id]) => localStorage.setItem(key!, id!),
    [`fq.person.${kitchen!.id}`, person!.id],
  );
  await page.goto(`${server.url}/k/${kitchen!.id}/dishes/${dish.id}/steps/${cook.id}`);
  await page.locator('.measured').getByRole('checkbox').first().check();
  const says = page.getByRole('region', { name: /^What this log says about your/ });

  await test.step('asked, it answers with an interval, what it left over and what to know', async () => {
    await says.getByRole('button', { name: 'Ask the log' }).click();
    await expect(says.locator('.fit-value').first()).toContainText(/W\/\(m² K\)/, { timeout: 60_000 });
    await expect(says.getByRole('img', { name: /^Measured less model/ })).toBeVisible();
    await expect(says).toContainText(/local authority/);
    await accessible(page, 'what a log says');
    await page.setViewportSize({ width: 390, height: 844 });
    // The pictures are drawn anew for the narrower page.
    await expect(() => fits(page, 'what a log says, on a phone')).toPass({ timeout: 10_000 });
    await page.setViewportSize({ width: 1440, height: 1000 });
  });

  const stage = page.locator('.stages > .stage').first();
  const coefficient = stage.getByRole('textbox', { name: 'Surface coefficient' });

  await test.step('used in the step, with where it comes from; undone', async () => {
    const before = await coefficient.inputValue();
    await says
      .getByRole('button', { name: /the cautious end$/ })
      .first()
      .click();
    await expect(coefficient).not.toHaveValue(before);
    await page.getByText('What this answer rests on').click();
    await expect(
      page
        .getByText(/W\/\(m² K\), the cautious end of what was fitted from log/)
        .filter({ visible: true })
        .first(),
    ).toBeVisible();
    await page.getByRole('status').getByRole('button', { name: 'Undo' }).click();
    await expect(coefficient).toHaveValue(before);
  });

  await test.step('kept for a machine named here, and seen with its history', async () => {
    await says.getByRole('textbox', { name: 'Its name' }).first().fill('Steamer by the wall');
    await says.getByRole('button', { name: 'Keep it for this machine' }).first().click();
    await expect(says.getByText(/^Kept for Steamer by the wall/)).toBeVisible({ timeout: 60_000 });
    await stage.getByRole('combobox', { name: 'In which machine' }).selectOption({ index: 1 });
    await expect(stage.getByText(/said of Steamer by the wall\.$/)).toBeVisible();
    await page.goto(`${server.url}/k/${kitchen!.id}/settings`);
    const machines = page.getByRole('region', { name: 'Machines' });
    await expect(machines.getByRole('heading', { name: 'Steamer by the wall' })).toBeVisible();
    await machines.getByText('1 log has spoken').click();
    await expect(machines.getByRole('img', { name: /fit by fit/ })).toBeVisible();
    await accessible(page, 'the machines');
  });
});
