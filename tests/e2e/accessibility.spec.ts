import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { goTo, openApp, STAGE_NAMES } from './open-app.ts';

async function expectNoViolations(page: Page, where: string): Promise<void> {
  const { violations, passes } = await new AxeBuilder({ page }).analyze();
  expect(passes.length).toBeGreaterThan(10);
  const found = violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
  );
  expect(found, where).toEqual([]);
}

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(colorScheme, () => {
    test.use({ colorScheme, reducedMotion: 'reduce' });

    test(`axe finds nothing in any stage, ${colorScheme}`, async ({ page }) => {
      await openApp(page);
      for (const stage of STAGE_NAMES) {
        await goTo(page, stage);
        await expectNoViolations(page, stage);
      }
      await page.getByRole('button', { name: 'Measure the filled form' }).click();
      await page.getByRole('textbox', { name: 'Waist girth', exact: true }).fill('90');
      await expect(page.getByRole('region', { name: 'What to do' }).getByRole('listitem')).toHaveCount(1);
      await expectNoViolations(page, 'readings');
      await page.getByRole('button', { name: 'Demo bodies' }).click();
      await expect(page.getByRole('button', { name: /Corvin Hale/ })).toBeVisible();
      await expectNoViolations(page, 'gallery');
      await page.keyboard.press('Escape');
      await goTo(page, 'Tape');
      await page.getByRole('textbox', { name: 'Waist girth', exact: true }).fill('9');
      await page.getByRole('textbox', { name: 'Hip girth', exact: true }).focus();
      await expect(page.getByRole('alert')).toBeVisible();
      await expectNoViolations(page, 'bad input');
    });
  });
}

test('nothing sticks out of a phone; the light can be changed by hand', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openApp(page);
  for (const stage of STAGE_NAMES) {
    await goTo(page, stage);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width, stage).toBeLessThanOrEqual(390);
  }
  await expectNoViolations(page, 'phone');

  const paper = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const light = await paper();
  await page.getByRole('button', { name: /Change to light/ }).click();
  expect(await paper()).toBe(light);
  await page.getByRole('button', { name: /Change to dark/ }).click();
  expect(await paper()).not.toBe(light);
});
