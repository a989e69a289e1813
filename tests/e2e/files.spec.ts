import { readFile } from 'node:fs/promises';
import { DOMParser } from '@xmldom/xmldom';
import svgPathCommander from 'svg-path-commander';
import { drawNothing } from './draw-nothing.ts';
import { leaveUnfilled } from './leave-unfilled.ts';
import { goTo, openPage, waitForFullForm } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

test.beforeEach(drawNothing);
test.beforeEach(leaveUnfilled);

const waist = (page: Page) => page.getByRole('textbox', { name: 'Waist girth', exact: true });

async function downloaded(page: Page, button: string): Promise<{ name: string; path: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return { name: download.suggestedFilename(), path: await download.path() };
}

test('the pieces on paper have the seam lengths of the report', async ({ undrawnPage: page }) => {
  // All files stand in one place, to which the other stages lead.
  await goTo(page, 'Panels');
  await page.getByRole('button', { name: 'Files under Cutting' }).click();
  await expect(page.getByRole('heading', { level: 2, name: 'Cutting' })).toBeVisible();
  const svgFile = await downloaded(page, 'Download pieces');
  await expect(page.locator('.mention')).toContainText(
    /^Saved: maren-ostley-average-figure-panels\.svg, \d+ kB\./,
  );
  const reportFile = await downloaded(page, 'Download report');
  const bodyFile = await downloaded(page, 'Download body');
  expect([svgFile.name, reportFile.name, bodyFile.name]).toEqual([
    'maren-ostley-average-figure-panels.svg',
    'maren-ostley-average-figure-report.json',
    'maren-ostley-average-figure-body.glb',
  ]);

  const svg = new DOMParser().parseFromString(await readFile(svgFile.path, 'utf8'), 'image/svg+xml');
  const root = svg.documentElement!;
  // True millimetres: width and height in mm equal the viewBox.
  const [, , width, height] = root.getAttribute('viewBox')!.split(/\s+/).map(Number);
  expect([root.getAttribute('width'), root.getAttribute('height')]).toEqual([`${width}mm`, `${height}mm`]);

  const report = JSON.parse(await readFile(reportFile.path, 'utf8'));
  const paths = new Map(
    Array.from(svg.getElementsByTagName('path')).map((path) => [
      path.getAttribute('id'),
      path.getAttribute('d')!,
    ]),
  );
  expect(report.seams.length).toBeGreaterThan(8);
  for (const seam of report.seams) {
    const lengths = seam.panels.map((panel: string) =>
      svgPathCommander.getTotalLength(paths.get(`${panel}/sew/${seam.letter}`)!),
    );
    expect(Math.abs(lengths[0] - lengths[1]), `${seam.name}: both sides equal`).toBeLessThan(0.1);
    for (const k of [0, 1]) {
      expect(Math.abs(lengths[k] - seam.lengthsFlat[k]), `${seam.name}: as reported`).toBeLessThan(0.05);
    }
  }
  // A GLB begins with "glTF" and says its own length (glTF 2.0 specification, 4.4.2).
  const glb = await readFile(bodyFile.path);
  expect(glb.toString('latin1', 0, 4)).toBe('glTF');
  expect(glb.readUInt32LE(8)).toBe(glb.length);
});

test('save, change, open again: the same project', async ({ undrawnPage: page }) => {
  const saved = await downloaded(page, 'Save');
  expect(saved.name).toBe('maren-ostley-average-figure.loftseam.json');
  await waist(page).fill('70');
  await waist(page).blur();
  await page.getByLabel('Open a project file').setInputFiles(saved.path);
  await expect(waist(page)).toHaveValue('76.5');
  await waitForFullForm(page);
  const again = await downloaded(page, 'Save');
  expect(await readFile(again.path, 'utf8')).toBe(await readFile(saved.path, 'utf8'));
  await page.getByRole('button', { name: /^Undo: Open/ }).click();
  await expect(waist(page)).toHaveValue('70.0');
});

test('files that are none of ours change nothing and say why', async ({ undrawnPage: page }) => {
  const open = (name: string, text: string) =>
    page
      .getByLabel('Open a project file')
      .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  const notice = page.locator('.notice');

  await open('broken.json', '{"format": "loftseam-project",');
  await expect(notice).toContainText('broken.json could not be opened. Your present project is unchanged.');
  await expect(notice).toContainText('line 1, column');
  await open('newer.json', JSON.stringify({ format: 'loftseam-project', version: 99, name: 'x' }));
  await expect(notice).toContainText('99');
  await open('huge.json', 'x'.repeat(6_000_000));
  await expect(notice).toContainText('6.0 MB');
  await page.getByRole('button', { name: 'Close this message' }).click();
  await expect(notice).toHaveCount(0);
  await expect(waist(page)).toHaveValue('76.5');
});

test('what was typed is there again after the page was closed', async ({ page, context }) => {
  await openPage(page);
  await waist(page).fill('71.3');
  await page.close();
  const next = await context.newPage();
  await openPage(next);
  await expect(waist(next)).toHaveValue('71.3');

  await next.evaluate(() => {
    window.addEventListener('pagehide', () => localStorage.setItem('loftseam.project', '{broken'));
  });
  await next.reload();
  await expect(next.locator('.notice')).toContainText('could not be read and was put aside');
  await expect(waist(next)).toHaveValue('76.5');
});

test('a list of demo bodies closed and opened again at once stays open', async ({ undrawnPage: page }) => {
  const button = page.getByRole('button', { name: 'Demo bodies' });
  await button.click();
  await expect(page.getByRole('dialog', { name: 'Demo bodies' })).toBeVisible();
  // The browser tells of the closing only after the second opening.
  const order = await button.evaluate(async (opener: HTMLButtonElement) => {
    const told: string[] = [];
    const dialog = document.querySelector('dialog[open]') as HTMLDialogElement;
    const closing = new Promise((resolve) => dialog.addEventListener('close', resolve, { once: true }));
    void closing.then(() => told.push('closed'));
    dialog.close();
    opener.click();
    told.push('opened');
    await closing;
    return told;
  });
  expect(order).toEqual(['opened', 'closed']);
  await page.evaluate(
    () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
  );
  await expect(page.getByRole('dialog', { name: 'Demo bodies' })).toBeVisible();
  await page.keyboard.press('Escape');
});

test('another demo body, dropped file and gallery', async ({ undrawnPage: page }) => {
  await page.getByRole('button', { name: 'Demo bodies' }).click();
  const dialog = page.getByRole('dialog', { name: 'Demo bodies' });
  await expect(dialog.getByRole('button').filter({ hasText: 'cm' })).toHaveCount(8);
  await dialog.getByRole('button', { name: /Corvin Hale/ }).click();
  await expect(page.getByLabel('Name of this project')).toHaveValue('Corvin Hale, male figure');
  await waitForFullForm(page);

  const text = await readFile('shared/demos/petite.loftseam.json', 'utf8');
  const transfer = await page.evaluateHandle((content) => {
    const data = new DataTransfer();
    data.items.add(new File([content], 'petite.loftseam.json', { type: 'application/json' }));
    return data;
  }, text);
  await page.dispatchEvent('body', 'dragover', { dataTransfer: transfer });
  await expect(page.getByText('Let go to open the project or photo')).toBeVisible();
  await page.dispatchEvent('body', 'drop', { dataTransfer: transfer });
  await expect(page.getByLabel('Name of this project')).toHaveValue(JSON.parse(text).name);
  await waitForFullForm(page);
});

test('a file opened before the first body has come stays open', async ({ page }) => {
  let letThrough = () => {};
  const held = new Promise<void>((resolve) => {
    letThrough = resolve;
  });
  await page.route('**/assets/average*', async (route) => {
    await held;
    await route.continue();
  });
  await page.goto('/');
  const name = page.getByRole('textbox', { name: 'Name of this project' });
  await page
    .locator('input[type=file][accept*=json]')
    .first()
    .setInputFiles('shared/demos/petite.loftseam.json');
  await expect(name).toHaveValue('Pim Vardy, petite and flat-chested');
  letThrough();
  await waitForFullForm(page);
  await page.waitForTimeout(500);
  await expect(name).toHaveValue('Pim Vardy, petite and flat-chested');
});
