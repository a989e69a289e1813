import { expect, test } from '@playwright/test';
import { drawNothing } from './draw-nothing.ts';
import { leaveUnfilled } from './leave-unfilled.ts';
import { goTo, openApp } from './open-app.ts';

test.beforeEach(drawNothing);
test.beforeEach(leaveUnfilled);

test('without WebGL the body is an outline, a message says so, and the panels work', async ({ page }) => {
  const complaints = await openApp(page);
  await expect(page.getByText('This browser cannot draw in three dimensions here')).toBeVisible();
  await expect(page.getByRole('img', { name: 'The body from the front' })).toBeVisible();
  await goTo(page, 'Panels');
  const pieces = page.locator('.flat-piece');
  expect(await pieces.count()).toBeGreaterThanOrEqual(8);
  await expect(pieces.first().locator('image')).toBeAttached();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download pieces' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/panels\.svg$/);
  expect(complaints).toEqual([]);
});
