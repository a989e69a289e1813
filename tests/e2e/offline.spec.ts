import { drawNothing } from './draw-nothing.ts';
import { leaveUnfilled } from './leave-unfilled.ts';
import { goTo, openPage } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

const waist = (page: Page) => page.getByRole('textbox', { name: 'Waist girth', exact: true });

test('once opened it opens again with the network cut, and prints', async ({ page, context }) => {
  await openPage(page);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await context.setOffline(true);
  await expect(page.evaluate(() => fetch('./not-kept').then(() => 'answered'))).rejects.toThrow();
  await page.reload();
  await expect(page.locator('.body-picture canvas')).toBeVisible();
  await waist(page).fill('75');
  await goTo(page, 'Cutting');
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 90_000 }),
    page.getByRole('button', { name: 'Download pattern' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/print-a4\.pdf$/);
});

test('an earlier state can be opened again, and that undone', async ({ page, context }) => {
  await drawNothing({ context });
  await leaveUnfilled({ context });
  await page.clock.install();
  await openPage(page);
  await page.clock.runFor(1_000);
  await page.clock.fastForward(120_000);
  await waist(page).fill('71.5');
  await waist(page).blur();
  await page.clock.runFor(2_000);
  await page.getByRole('button', { name: 'Bodies and earlier states' }).click();
  await page.getByText('Earlier states', { exact: true }).click();
  // The dialog lists the bodies of this browser above the states.
  const states = page.locator('.earlier-list').last().getByRole('listitem');
  await expect(states).toHaveCount(2);
  await states.nth(1).getByRole('button').click();
  await expect(waist(page)).toHaveValue('76.5');
  await page.getByRole('button', { name: /^Undo: Open the state of/ }).click();
  await expect(waist(page)).toHaveValue('71.5');
});
