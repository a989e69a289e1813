import { execFileSync } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { strFromU8, unzipSync } from 'fflate';
import { goTo, openApp } from './open-app.ts';

async function downloaded(page: Page, button: string): Promise<{ name: string; path: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 90_000 }),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return { name: download.suggestedFilename(), path: await download.path() };
}

test('a pattern on the paper chosen, corrected for the printer', async ({ page }) => {
  const complaints = await openApp(page);
  await goTo(page, 'Cutting');
  await expect(page.getByText('Close rotary and craft knives after every cut')).toBeVisible();
  await page.getByRole('combobox', { name: 'Paper' }).selectOption('letter');
  const file = await downloaded(page, 'Download pattern');
  expect(file.name).toBe('maren-ostley-average-figure-print-letter.pdf');
  // Letter is 8.5 × 11 in, 612 × 792 points (ANSI/ASME Y14.1), read by poppler.
  expect(execFileSync('pdfinfo', [file.path], { encoding: 'utf8' })).toMatch(/Page size:\s+612 x 792 pts/);

  await page.getByText('My printer does not print true').click();
  await page.getByRole('textbox', { name: 'Bar across measures' }).fill('19.9');
  await page.getByRole('textbox', { name: 'Bar up measures' }).fill('17');
  await expect(page.getByText('scaling to fit the paper').first()).toBeVisible();
  await page.getByRole('textbox', { name: 'Bar up measures' }).fill('18');
  // 200 / 199 = 1.0050.
  await expect(page.getByText('+0.50 % across and 0.00 % up')).toBeVisible();
  expect((await downloaded(page, 'Download pattern')).name).toMatch(/print-letter-corrected\.pdf$/);
  expect(complaints).toEqual([]);
});

test('several files come as one archive', async ({ page }) => {
  const complaints = await openApp(page);
  await goTo(page, 'Cutting');
  const tables = await downloaded(page, 'Download tables');
  expect(tables.name).toBe('maren-ostley-average-figure-csv.zip');
  const files = unzipSync(await readFile(tables.path));
  expect(Object.keys(files).sort()).toEqual(['manifest.json', 'seams.csv', 'tapes.csv']);
  expect(strFromU8(files['tapes.csv'])).toContain('waistGirth');
  const outlines = await downloaded(page, 'Download outlines');
  expect(await readFile(outlines.path, 'utf8')).toContain('ENTITIES');
  expect(complaints).toEqual([]);
});

test('what is inside: sizes once filled, webs, stand, what to buy', async ({ page }) => {
  const complaints = await openApp(page);
  await goTo(page, 'Inside');
  const filled = page.getByRole('region', { name: 'Once filled', exact: true });
  await expect(filled.getByRole('row')).not.toHaveCount(0);
  await expect(page.getByRole('heading', { name: 'To buy' })).toBeVisible();
  await page.getByRole('textbox', { name: 'Pole, outside' }).fill('3.2');
  await expect(page.getByRole('button', { name: 'Undo: Set pole, outside' })).toBeEnabled();
  await expect(page.getByText('Two swallowed magnets can pierce the gut')).toBeVisible();
  expect(complaints).toEqual([]);
});
