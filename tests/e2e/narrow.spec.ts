import { expect, test } from '@playwright/test';
import { goTo, openApp, STAGE_NAMES } from './open-app.ts';

test('on a phone every stage can be reached, names do not overlap, and the present one is in sight', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openApp(page);
  const names = page.getByRole('navigation', { name: 'Stages' }).locator('.stage-name');
  for (const [index, stage] of STAGE_NAMES.entries()) {
    await goTo(page, stage);
    const spans = await names.evaluateAll((all) =>
      all.map((name) => name.getBoundingClientRect()).map(({ left, right }) => [left, right] as const),
    );
    for (let k = 1; k < spans.length; k++) expect(spans[k]![0]).toBeGreaterThan(spans[k - 1]![1]);
    expect(spans[index]![0]).toBeGreaterThanOrEqual(0);
    expect(spans[index]![1]).toBeLessThanOrEqual(390);
  }
});

test('the table of earlier measurings scrolls inside its place', async ({ page }) => {
  await openApp(page);
  await goTo(page, 'Checking');
  await page.getByRole('button', { name: 'Measure the filled form' }).click();
  await page.getByRole('textbox', { name: 'Waist girth', exact: true }).fill('77');
  const place = page.getByRole('region', { name: 'So far, table' });
  await expect(place).toBeVisible();
  const [shown, whole] = await place.evaluate((element) => [element.clientWidth, element.scrollWidth]);
  expect(whole).toBeGreaterThan(shown!);
  const work = await page.locator('#work').evaluate((el) => el.scrollWidth - el.clientWidth);
  expect(work).toBeLessThanOrEqual(0);
});
