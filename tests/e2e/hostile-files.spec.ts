import { readFile, truncate, writeFile } from 'node:fs/promises';
import { DOMParser } from '@xmldom/xmldom';
import { goTo, waitForFullForm } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

const waist = (page: Page) => page.getByRole('textbox', { name: 'Waist girth', exact: true });
const notice = (page: Page) => page.locator('.notice');
const good = async () => JSON.parse(await readFile('shared/demos/average.loftseam.json', 'utf8'));

/** Markup that would run, load or break out of an attribute if it were ever taken for markup. */
const MARKUP = `"><img src=x onerror="window.hit=1"><script>window.hit=1</script>&amp;'</svg>`;

test('a file of 50 MB is told wherever files are chosen, and nothing changes', async ({
  undrawnPage: page,
}, info) => {
  const path = info.outputPath('large.loftseam.json');
  await writeFile(path, '{');
  await truncate(path, 50_000_000);
  await page.getByLabel('Open a project file').setInputFiles(path);
  await expect(notice(page)).toContainText('large.loftseam.json is 50.0 MB');
  await page.getByRole('button', { name: 'Close this message' }).click();
  await goTo(page, 'Body');
  await page.getByLabel('Saved project to compare with').setInputFiles(path);
  await expect(notice(page)).toContainText('large.loftseam.json is 50.0 MB');
  await page.getByRole('button', { name: 'Close this message' }).click();
  await page.getByLabel('Photo from the front').setInputFiles(path);
  await expect(notice(page)).toContainText('50.0 MB; a photo may have 30 MB at most');
  await goTo(page, 'Tape');
  await expect(waist(page)).toHaveValue('76.5');
  await expect(page.getByRole('button', { name: /^Undo/ })).toHaveAccessibleName(/^Undo: Open/);
});

test('files made to do harm are told and change nothing', async ({ undrawnPage: page }) => {
  const file = await good();
  const text = JSON.stringify(file);
  const inMeasures = (entries: string) => text.replace('"measures":{', `"measures":{${entries},`);
  const many = Array.from({ length: 100_000 }, (_, i) => `"m${i}":500`).join(',');
  const hostile: Readonly<Record<string, readonly [string, RegExp]>> = {
    'deep.json': ['['.repeat(2_400_000), /nested more than 100 deep/],
    'deep-inside.json': [inMeasures(`"x":${'{"a":'.repeat(200_000)}1${'}'.repeat(200_000)}`), /nested more/],
    'types.json': [
      JSON.stringify({ ...file, name: {}, body: [], seams: 'x', cloth: null, inside: 3 }),
      /name is an object; it must be text/,
    ],
    'list.json': ['[1,2,3]', /holds no project/],
    'proto.json': [text.replace('{', '{"__proto__":{"hit":1},'), /“__proto__” is not known/],
    'infinite.json': [text.replace(/"waistGirth":\d+/, '"waistGirth":1e999'), /waistGirth is Infinity/],
    'long-name.json': [JSON.stringify({ ...file, name: 'x'.repeat(3_000_000) }), /at most 200 characters/],
    'many.json': [inMeasures(many), /body.measures .* names more than 1000/],
    'keys.json': [text.replace('{', `{${JSON.stringify(MARKUP)}:1,`), /is not known/],
  };
  for (const [name, [content, told]] of Object.entries(hostile)) {
    await page
      .getByLabel('Open a project file')
      .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(content) });
    await expect(notice(page), name).toContainText(`${name} could not be opened`);
    await expect(notice(page), name).toContainText(told);
    await expect(waist(page), name).toHaveValue('76.5');
  }
  await expect(page.getByRole('button', { name: /^Undo/ })).toHaveAccessibleName(/^Undo: Open/);
  expect(await page.evaluate(() => [Reflect.get(window, 'hit'), Reflect.get({}, 'hit')])).toEqual([
    undefined,
    undefined,
  ]);
  await waitForFullForm(page);
});

test('names of the language itself as measures and pieces are told, and undo goes back', async ({
  undrawnPage: page,
}) => {
  const file = await good();
  file.body.measures.constructor = 800;
  file.body.measures.toString = 800;
  file.cloth = { ...file.cloth, grain: { constructor: 0.2 } };
  const text = JSON.stringify(file).replace('"measures":{', '"measures":{"__proto__":{"left":1,"right":2},');
  await page
    .getByLabel('Open a project file')
    .setInputFiles({ name: 'words.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await expect(notice(page)).toContainText(/constructor|__proto__/);
  const undo = page.getByRole('button', { name: /^Undo: Open/ });
  if (await undo.isEnabled()) await undo.click();
  await expect(waist(page)).toHaveValue('76.5');
  await waitForFullForm(page);
});

test('markup in names is shown and written as the text it is', async ({ undrawnPage: page }) => {
  const file = await good();
  file.name = MARKUP;
  await page.getByLabel('Open a project file').setInputFiles({
    name: `${MARKUP.replace(/\//g, '')}.json`,
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(file)),
  });
  await expect(page.getByLabel('Name of this project')).toHaveValue(MARKUP);
  await waitForFullForm(page);
  await page.waitForTimeout(1_000);
  await page.getByRole('button', { name: 'Bodies and earlier states' }).click();
  await expect(page.getByRole('dialog')).toContainText(MARKUP);
  await page.keyboard.press('Escape');
  await goTo(page, 'Cutting');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download pieces' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^[\p{L}\p{N}-]+-panels\.svg$/u);
  const svg = await readFile(await download.path(), 'utf8');
  const found = new DOMParser().parseFromString(svg, 'image/svg+xml');
  expect(found.getElementsByTagName('script')).toHaveLength(0);
  expect(found.getElementsByTagName('img')).toHaveLength(0);
  expect(found.documentElement?.textContent).toContain('<script>window.hit=1</script>');
  expect(await page.locator('img[src="x"]').count()).toBe(0);
  expect(await page.evaluate(() => Reflect.get(window, 'hit'))).toBeUndefined();
});
