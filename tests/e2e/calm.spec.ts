import AxeBuilder from '@axe-core/playwright';
import { goTo } from './open-app.ts';
import { expect, test } from './shared-page.ts';

test('a row is lit by the pointer or the focus, not by a page that scrolls beneath the pointer', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Tape');
  const lit = page.locator('li.measure[data-lit]');
  const waist = page.locator('li.measure[data-measure="waistGirth"]');
  await waist.hover();
  await expect(waist).toHaveAttribute('data-lit', 'true');
  const before = await waist.boundingBox();
  await page.mouse.wheel(0, 400);
  await expect.poll(async () => (await waist.boundingBox())!.y).toBeLessThan(before!.y - 100);
  // The browser now has another row beneath the pointer, and tells so.
  await page.waitForTimeout(400);
  await expect(lit).toHaveCount(1);
  await expect(waist).toHaveAttribute('data-lit', 'true');
  // The pointer moves: what lies beneath it is meant.
  const { width, height } = page.viewportSize()!;
  await page.mouse.move(width - 20, height - 8);
  await expect(lit).toHaveCount(0);
  // What has the focus is lit, whatever the pointer leaves.
  await page.getByRole('textbox', { name: 'Waist girth', exact: true }).focus();
  await expect(waist).toHaveAttribute('data-lit', 'true');
  await page.locator('li.measure[data-measure="hipGirth"]').hover();
  await page.mouse.move(width - 20, height - 8);
  await expect(waist).toHaveAttribute('data-lit', 'true');
  await expect(lit).toHaveCount(1);
});

test('undo says what it changes, goes to where that was made and lights it', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Tape');
  const hip = page.getByRole('textbox', { name: 'Hip girth', exact: true });
  const asItWas = await hip.inputValue();
  await hip.fill('103');
  await hip.press('Tab');
  await goTo(page, 'Checking');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.locator('.mention')).toHaveText('Undone: Set hip girth.');
  await expect(page.getByRole('heading', { level: 2, name: 'Tape' })).toBeVisible();
  const row = page.locator('[data-retraced]');
  await expect(row).toHaveAttribute('data-measure', 'hipGirth');
  await expect(hip).toBeInViewport();
  await expect(hip).toHaveValue(asItWas);
  // Only for a moment.
  await expect(row).toHaveCount(0);

  await goTo(page, 'Body');
  await page.getByRole('button', { name: /^Redo/ }).click();
  await expect(page.locator('.mention')).toHaveText('Done again: Set hip girth.');
  await expect(hip).toHaveValue('103.0');
  await page.getByRole('button', { name: /^Undo/ }).click();
});

test('keys and words are told where they are asked for', async ({ undrawnPage: page }) => {
  await page.locator('#work').focus();
  await page.keyboard.press('?');
  const help = page.getByRole('dialog', { name: 'Keys and words' });
  await expect(help).toBeVisible();
  await expect(help).toContainText('takes the last step back');
  await help.getByRole('link', { name: /Words of the trade/ }).click();
  await expect(help.getByText('selvedge', { exact: true })).toBeInViewport();
  const { violations } = await new AxeBuilder({ page }).include('.help').analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
  await page.keyboard.press('Escape');
  await expect(help).toBeHidden();
  // A question mark that is typed is no question.
  await page.getByLabel('Name of this project').focus();
  await page.keyboard.press('?');
  await expect(help).toBeHidden();
  await page.keyboard.press('Control+z');
  await page.getByRole('button', { name: 'Keys and words' }).click();
  await expect(help).toBeVisible();
  await page.keyboard.press('Escape');
});
