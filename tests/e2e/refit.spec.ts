import { readFile } from 'node:fs/promises';
import { PDFDocument } from '@cantoo/pdf-lib';
import type { Download } from '@playwright/test';
import { unzipSync } from 'fflate';
import { goTo } from './open-app.ts';
import { expect, test } from './shared-page.ts';

/** A form is made for the body that has changed. */
const LONG = 150_000;

const contentOf = async (file: Download): Promise<Uint8Array> =>
  new Uint8Array(await readFile(await file.path()));
const namesIn = async (file: Download): Promise<string[]> => Object.keys(unzipSync(await contentOf(file)));

test('Beside the machine: a booklet to fold, gauges of card, and what makes a form serve a body that has changed', async ({
  undrawnPage: page,
}) => {
  test.setTimeout(2 * LONG);
  await test.step('two pages of the booklet lie on a side of A4, four on a sheet', async () => {
    await goTo(page, 'Making');
    await page.getByLabel('Pages of the booklet').selectOption('folded');
    const made = page.waitForEvent('download', { timeout: LONG });
    await page.getByRole('button', { name: 'Download the booklet, with pictures' }).click();
    const pages = (await PDFDocument.load(await contentOf(await made))).getPages();
    expect(pages.length % 2).toBe(0);
    // ISO 216 A4 across; 1 pt = 25.4 / 72 mm.
    for (const page of pages)
      expect([page.getWidth(), page.getHeight()].map((points) => Math.round((points * 25.4) / 72))).toEqual([
        297, 210,
      ]);
  });

  await test.step('gauges come as pages and as outlines, the waist’s alone where it alone is wanted', async () => {
    await goTo(page, 'Cutting');
    await page.locator('summary', { hasText: 'Gauges' }).click();
    const choices = page.locator('.gauge-choices');
    for (const box of await choices.locator('.gauge-levels input').all()) await box.uncheck();
    await choices.getByRole('checkbox', { name: 'Waist', exact: true }).check();
    const made = page.waitForEvent('download', { timeout: LONG });
    await choices.getByRole('button', { name: /gauges/i }).click();
    const file = await made;
    expect(await namesIn(file)).toEqual(expect.arrayContaining(['gauges-a4.pdf', 'gauges.svg']));
    const svg = Buffer.from(unzipSync(await contentOf(file))['gauges.svg']).toString();
    expect(svg).toMatch(/>[^<]*waist/i);
    expect(svg).not.toMatch(/>[^<]*\bhip\b/i);
  });

  await test.step('a form of a slimmer self is padded, with a new cover', async () => {
    await goTo(page, 'Body');
    const raw = JSON.parse(await readFile('shared/demos/average.loftseam.json', 'utf8'));
    const measures = { ...raw.body.measures, waistGirth: 730, bustGirth: 910 };
    const before = { ...raw, name: 'Before the holidays', body: { ...raw.body, measures } };
    const view = page.getByRole('region', { name: 'Compare with another body' });
    await view.getByLabel('Saved project to compare with').setInputFiles({
      name: 'before.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(before)),
    });
    await view.getByText('A form of the other one stands').click();
    await view.getByRole('button', { name: 'Work it out' }).click();
    const found = view.locator('.refit-found');
    await expect(found).toContainText('can be changed to serve this body', { timeout: LONG });
    // 35 mm more round the waist are 35 / 2π = 5.6 mm all over: a layer of 8 mm.
    await expect(found.locator('dl div').filter({ hasText: 'Waist' })).toContainText('pad: 1 layer');
    const made = page.waitForEvent('download');
    await found.getByRole('button', { name: 'Save pads and cover' }).click();
    expect(await namesIn(await made)).toEqual(expect.arrayContaining(['panels.svg', 'wadding.svg']));
    await view.getByRole('button', { name: 'Stop comparing' }).click();
    await expect(found).toHaveCount(0);
  });
});
