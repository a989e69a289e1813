import { WHOLE, waitForFullForm } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

const status = (page: Page) => page.locator('p[role="status"]');

async function openDemo(page: Page, name: RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Demo bodies' }).click();
  await page.getByRole('dialog', { name: 'Demo bodies' }).getByRole('button', { name }).click();
  await expect(page.getByLabel('Name of this project')).toHaveValue(name);
}

test('demos opened one after the other, stopped and taken up again, come to the full form of the last', async ({
  undrawnPage: page,
}) => {
  const names = [/Corvin Hale/, /Pim Vardy/, /Maren Ostley/, /Corvin Hale/, /Pim Vardy/];
  for (const [k, name] of names.entries()) {
    await openDemo(page, name);
    await page.waitForTimeout(300 * k);
  }
  await waitForFullForm(page);

  // One not opened before, so that its panels are not known yet.
  await openDemo(page, /Oriel Bexcombe/);
  // Sent at once, whatever it is at: a click waits for the row to stand still, and by then the work may be done.
  await page.getByRole('button', { name: 'Stop', exact: true }).dispatchEvent('click');
  await expect(status(page)).not.toHaveAttribute('data-standing', WHOLE);
  await page.getByRole('button', { name: 'Work it out again' }).click();
  await waitForFullForm(page);
});
