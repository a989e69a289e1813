import { gzipSync } from 'node:zlib';
import type { Response } from '@playwright/test';
import { drawNothing } from './draw-nothing.ts';
import { goTo, openPage } from './open-app.ts';
import { expect, test } from './shared-page.ts';

test('the first screen needs at most 450 kB, compressed, besides what works behind the page', async ({
  page,
}) => {
  const loaded: Promise<[string, number]>[] = [];
  const weigh = (response: Response): void => {
    const { pathname } = new URL(response.url());
    // Workers make the form, stages after the first are loaded once it is there.
    if (!/\.(js|css)$/.test(pathname) || /worker|late-stages/.test(pathname)) return;
    loaded.push(response.body().then((body) => [pathname, gzipSync(body).length]));
  };
  page.on('response', weigh);
  await page.goto('/');
  await expect(page.locator('.body-picture canvas')).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Waist girth', exact: true })).toBeVisible();
  // What comes later is not of the first screen, and would still be read when this test is over.
  page.off('response', weigh);
  const sizes = new Map(await Promise.all(loaded));
  const total = [...sizes.values()].reduce((sum, size) => sum + size, 0);
  // React, three.js and our own are in it, or this would count nothing.
  expect(sizes.size).toBeGreaterThan(5);
  expect(total).toBeGreaterThan(250_000);
  expect(total, JSON.stringify([...sizes])).toBeLessThan(450_000);
});

// Once it has run, the worker that serves the program offline would give the part out.
test.use({ serviceWorkers: 'block' });

test('a part of the program that cannot be loaded says so, and the page can be loaded again', async ({
  page,
  context,
}) => {
  await drawNothing({ context });
  await page.route('**/late-stages-*.js', (route) => route.abort());
  await openPage(page);
  await page.getByRole('textbox', { name: 'Waist girth', exact: true }).fill('80');
  await page
    .getByRole('navigation', { name: 'Stages' })
    .getByRole('button', { name: /^Seams/ })
    .click();
  await expect(page.getByRole('alert')).toContainText('could not be loaded');
  await page.unroute('**/late-stages-*.js');
  await page.getByRole('button', { name: 'Load the page again' }).click();
  await expect(page.getByRole('textbox', { name: 'Waist girth', exact: true })).toHaveValue('80.0');
  await goTo(page, 'Seams');
});
