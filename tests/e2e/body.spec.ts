import { expect, type Page, test } from '@playwright/test';
import { goTo, openApp } from './open-app.ts';

const picture = (page: Page) => page.getByRole('group', { name: /^Picture of the body/ });

test('arms are drawn where the five arm measures are given, and can be taken off', async ({ page }) => {
  const complaints = await openApp(page);
  const arms = page.getByRole('checkbox', { name: 'Arms' });
  await expect(arms).toBeChecked();
  const withArms = await picture(page).screenshot();
  await arms.uncheck();
  await expect.poll(async () => Buffer.compare(await picture(page).screenshot(), withArms)).not.toBe(0);
  await goTo(page, 'Seams');
  await expect(arms).toHaveCount(0);
  await goTo(page, 'Tape');
  await page.getByRole('textbox', { name: 'Wrist girth' }).fill('');
  await page.getByRole('textbox', { name: 'Elbow girth' }).focus();
  await expect(arms).toHaveCount(0);
  expect(complaints).toEqual([]);
});
