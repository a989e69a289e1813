import { execFileSync } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { strFromU8, unzipSync } from 'fflate';
import { goTo } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

async function downloaded(page: Page, button: string): Promise<{ name: string; path: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 90_000 }),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return { name: download.suggestedFilename(), path: await download.path() };
}

test('a pattern on the paper chosen, corrected for the printer; several files come as one archive', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Cutting');
  await test.step('several files come as one archive', async () => {
    const tables = await downloaded(page, 'Download tables');
    expect(tables.name).toBe('maren-ostley-average-figure-csv.zip');
    const files = unzipSync(await readFile(tables.path));
    expect(Object.keys(files).sort()).toEqual(['manifest.json', 'seams.csv', 'tapes.csv']);
    expect(strFromU8(files['tapes.csv'])).toContain('waistGirth');
    const outlines = await downloaded(page, 'Download outlines');
    expect(await readFile(outlines.path, 'utf8')).toContain('ENTITIES');
  });
  await test.step('a pattern on the paper chosen, corrected for the printer', async () => {
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
  });
});

test('the test tube comes first: what going without it leaves open, its pages alone, then its growth', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Cutting');
  const tube = page.getByRole('region', { name: 'First the test tube' });
  await expect(tube).toContainText('Not measured yet');
  await expect(tube.getByRole('row', { name: /^Waist −\d\.\d cm \+\d\.\d cm$/ })).toBeVisible();
  const main = page.locator('.cutting-stage button.main');
  await expect(main).toHaveText(['Download only the test tube']);
  const { path } = await downloaded(page, 'Download only the test tube');
  const text = execFileSync('pdftotext', [path, '-'], { encoding: 'utf8' });
  expect(text.replace(/\s+/g, ' ')).toContain('Only the test tube. Sew, stuff and measure it');
  expect(text).toContain('test tube');
  expect(text).not.toContain('side front');
  await tube.getByText('Type in what the tube measures').click();
  await tube.getByRole('textbox', { name: 'Girth at line 1' }).fill('64.1');
  await expect(tube).toContainText('Done: your cloth grows by 1.72 %');
  await expect(main).toHaveText(['Download pattern']);
});

test('pages and joints are told and shown before anything is downloaded, with what a choice saves', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Cutting');
  const told = page.getByText(/^\d+ pages on A4, \d+ of them pattern, with \d+ joints to tape\.$/);
  await expect(told).toBeVisible({ timeout: 90_000 });
  const count = async () => Number(/^\d+/.exec((await told.textContent()) ?? '')?.[0]);
  const before = await count();
  expect(before).toBeLessThanOrEqual(50);
  const twins = page.getByRole('checkbox', { name: 'Draw right and left pieces that are alike once' });
  const saving = page.locator('label', { has: twins }).getByText(/^saves \d+ pages$/);
  await expect(saving).toBeVisible({ timeout: 60_000 });
  const saved = Number(/\d+/.exec((await saving.textContent()) ?? '')?.[0]);
  await page.getByText('Look at the pages').click();
  await expect(page.locator('.page-pictures svg')).toHaveCount(before);
  await twins.uncheck();
  await expect(page.getByRole('button', { name: 'Undo: Set alike pieces' })).toBeEnabled();
  await expect(async () => expect(await count()).toBe(before + saved)).toPass({ timeout: 60_000 });
  // Open, they would be drawn anew at every change of the tests after this.
  await page.getByText('Look at the pages').click();
  await expect(page.locator('.page-pictures svg')).toHaveCount(0);
});

test('cutting machine, notches, one edge and left-out pieces are kept in the project and undone by name', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Cutting');
  await page.getByRole('combobox', { name: 'Notches' }).selectOption('outward');
  await expect(page.getByRole('button', { name: 'Undo: Set shape of notches' })).toBeEnabled();
  await page.getByText('Other allowances').click();
  await page.getByRole('combobox', { name: 'One edge' }).selectOption('base');
  await page.getByRole('textbox', { name: 'Base opening' }).fill('2.0');
  await page.getByText('My cutting machine').click();
  await page.getByRole('combobox', { name: 'Mat or bed' }).selectOption('mat24x36');
  await page.getByRole('textbox', { name: 'Blade offset' }).fill('0.05');
  await page.getByRole('checkbox', { name: 'Letters of single strokes' }).check();
  await page.getByRole('checkbox', { name: 'Sew lines' }).uncheck();
  for (const material of ['webs', 'plates (card)', 'covers', 'foam', 'arms', 'test tube']) {
    await page.locator('.cut-list summary', { hasText: material }).click();
    await page.getByRole('checkbox', { name: `all: ${material}` }).uncheck();
  }
  const sheets = await downloaded(page, 'Download cutter sheets');
  const files = unzipSync(await readFile(sheets.path));
  const names = Object.keys(files).filter((name) => name.endsWith('.svg'));
  expect(names.length).toBeGreaterThan(1);
  for (const name of names) {
    expect(name).toMatch(/^cutter-shell-/);
    const svg = strFromU8(files[name]);
    // 24 × 36 in.
    expect(svg).toContain('width="609.6mm" height="914.4mm"');
    expect(svg).not.toContain('<text');
    expect(svg).not.toContain('data-layer="sew"');
  }
});

test('what is inside: sizes once filled, webs, stand, what to buy', async ({ undrawnPage: page }) => {
  await goTo(page, 'Inside');
  const filled = page.getByRole('region', { name: 'Once filled', exact: true });
  await expect(filled.getByRole('row')).not.toHaveCount(0);
  await expect(page.getByRole('heading', { name: 'To buy' })).toBeVisible();
  await page.getByRole('textbox', { name: 'Pole, outside' }).fill('3.2');
  await expect(page.getByRole('button', { name: 'Undo: Set pole, outside' })).toBeEnabled();
  await expect(page.getByText('Two swallowed magnets can pierce the gut')).toBeVisible();
});
