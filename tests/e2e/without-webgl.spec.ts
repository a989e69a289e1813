import { goTo } from './open-app.ts';
import { expect, test } from './shared-page.ts';

test('without WebGL the body is an outline, a message says so, and the panels work', async ({
  undrawnPage: page,
}) => {
  await expect(page.getByText('This browser cannot draw in three dimensions here')).toBeVisible();
  await expect(page.getByRole('img', { name: 'The body from the front' })).toBeVisible();
  await goTo(page, 'Panels');
  const pieces = page.locator('.flat-piece');
  expect(await pieces.count()).toBeGreaterThanOrEqual(8);
  await expect(pieces.first().locator('image')).toBeAttached();
  await goTo(page, 'Cutting');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download pieces' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/panels\.svg$/);
});
