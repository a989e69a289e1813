import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import type { Locator } from '@playwright/test';
import { drawNothing } from './draw-nothing.ts';
import { leaveUnfilled } from './leave-unfilled.ts';
import { openPage, waitForFullForm } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

test.beforeEach(drawNothing);
test.beforeEach(leaveUnfilled);

const name = (page: Page) => page.getByRole('textbox', { name: 'Name of this project' });
const waist = (page: Page) => page.getByRole('textbox', { name: 'Waist girth', exact: true });
const openList = async (page: Page) => {
  await page.getByRole('button', { name: 'Bodies and earlier states' }).click();
  return page.getByRole('region', { name: 'Bodies in this browser' });
};
/** The card of one body. */
const cardOf = (list: Locator, called: string) => list.getByRole('article', { name: called, exact: true });
/** Unfolds what can be done with a body. */
const more = (list: Locator, called: string) => cardOf(list, called).getByText('More').click();
const closeList = (page: Page) => page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();

test('several bodies: kept from the first change, duplicated, renamed, deleted and taken back', async ({
  page,
}) => {
  const complaints = await openPage(page);
  let list = await openList(page);
  await expect(list).toContainText('None yet');
  await closeList(page);

  await name(page).fill('Odile');
  await name(page).blur();
  await page.waitForTimeout(1200);
  list = await openList(page);
  await expect(list.getByRole('listitem')).toHaveText([/Odile.*open now/]);
  await more(list, 'Odile');
  await list.getByRole('button', { name: 'Duplicate Odile' }).click();
  await expect(list.getByRole('listitem')).toHaveCount(2);
  await more(list, 'Odile, copy');
  await list.getByRole('button', { name: 'Name and person of Odile, copy' }).click();
  await list.getByRole('textbox', { name: 'Name, on every sheet' }).fill('Bram');
  await page.keyboard.press('Enter');
  await list.getByRole('button', { name: /^Bram/ }).click();
  await expect(name(page)).toHaveValue('Bram');
  await waist(page).fill('81');
  await waist(page).blur();

  // Both are there after the page is opened anew, each with its own waist.
  await page.waitForTimeout(1200);
  await page.reload();
  await expect(name(page)).toHaveValue('Bram');
  await expect(waist(page)).toHaveValue('81.0');
  list = await openList(page);
  const changed = await cardOf(list, 'Odile').locator('time').getAttribute('datetime');
  await list.getByRole('button', { name: /^Odile/ }).click();
  await expect(waist(page)).toHaveValue('76.5');
  // Looking at it is no change of it.
  await page.waitForTimeout(1200);
  list = await openList(page);
  await expect(cardOf(list, 'Odile').locator('time')).toHaveAttribute('datetime', changed ?? '');
  await expect(cardOf(list, 'Odile')).toContainText('open now');
  await closeList(page);

  list = await openList(page);
  await more(list, 'Bram');
  await list.getByRole('button', { name: 'Delete Bram' }).click();
  await expect(list.getByRole('listitem')).toHaveCount(1);
  await list.getByRole('button', { name: 'Take it back' }).click();
  await expect(list.getByRole('listitem')).toHaveCount(2);
  expect(complaints).toEqual([]);
});

test('a full database is told once, and nothing open is lost', async ({ page }) => {
  await page.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('no room left', 'QuotaExceededError');
    };
  });
  await openPage(page);
  await waist(page).fill('80');
  await waist(page).blur();
  await expect(page.locator('.notice.warning')).toContainText('no room left');
  await expect(waist(page)).toHaveValue('80.0');
});

test('a broken entry is left out of the list and the rest can be opened', async ({ page }) => {
  const complaints = await openPage(page);
  await name(page).fill('Odile');
  await name(page).blur();
  await page.waitForTimeout(1200);
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('loftseam');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const transaction = request.result.transaction('bodies', 'readwrite');
          transaction.objectStore('bodies').put({ id: 'broken', name: 7 });
          transaction.objectStore('bodies').put({ id: 'hurt', name: 'Hurt', at: 1, text: '{"format":' });
          transaction.oncomplete = () => resolve();
        };
      }),
  );
  const list = await openList(page);
  await expect(list.getByRole('listitem')).toHaveCount(2);
  await expect(list.getByRole('status').first()).toContainText('One entry here cannot be read');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    list.getByRole('button', { name: 'Save it to a file' }).click(),
  ]);
  expect(JSON.parse(await readFile(await download.path(), 'utf8'))).toEqual([{ id: 'broken', name: 7 }]);
  await list.getByRole('button', { name: /^Hurt/ }).click();
  await expect(page.locator('.notice.warning')).toContainText('could not be opened');
  await expect(name(page)).toHaveValue('Odile');
  expect(complaints).toEqual([]);
});

/** Any page of the same origin that does not run the program, to lay something into its database first. */
const BESIDE = '/THIRD-PARTY-NOTICES.txt';

/** What a database of that version held; of version 2, as it was before there were cards. */
async function layDatabase(page: Page, version: number, bodies: readonly object[]): Promise<void> {
  await page.goto(BESIDE);
  await page.evaluate(
    ([version, bodies]) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('loftseam', version);
        request.onerror = () => reject(request.error);
        request.onupgradeneeded = () => {
          request.result.createObjectStore('bodies', { keyPath: 'id' });
          request.result.createObjectStore('photos');
        };
        request.onsuccess = () => {
          const transaction = request.result.transaction(['bodies', 'photos'], 'readwrite');
          for (const body of bodies) transaction.objectStore('bodies').put(body);
          transaction.objectStore('photos').put({ file: new Blob(['x']) }, 'old front');
          transaction.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
    [version, bodies] as const,
  );
}

/** Keys of what is kept in one place of the database. */
async function keysIn(page: Page, place: string): Promise<unknown> {
  return page.evaluate(
    (place) =>
      new Promise((resolve, reject) => {
        const request = indexedDB.open('loftseam');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const asked = request.result.transaction(place).objectStore(place).getAllKeys();
          asked.onsuccess = () => {
            request.result.close();
            resolve(asked.result);
          };
        };
      }),
    place,
  );
}

const demo = async (id: string): Promise<string> => readFile(`shared/demos/${id}.loftseam.json`, 'utf8');

test('bodies of one person share a card; they are found, put in order, looked at and compared', async ({
  page,
}) => {
  const complaints = await openPage(page);
  await name(page).fill('Odile');
  await name(page).blur();
  await waitForFullForm(page);
  await expect.poll(() => keysIn(page, 'cards')).toHaveLength(1);
  let list = await openList(page);
  // The picture of the open body came from its form, with its seams.
  await expect(cardOf(list, 'Odile').locator('path')).toHaveCount(3);
  expect(await cardOf(list, 'Odile').locator('.outline-thread').getAttribute('d')).toMatch(/^M.*L/);
  await expect(cardOf(list, 'Odile')).toContainText('94.0 · 76.5 · 101.0 cm');

  await more(list, 'Odile');
  await list.getByRole('button', { name: 'New version of Odile' }).click();
  const label = list.getByRole('combobox', { name: 'What sets it apart' });
  await expect(label).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(label).toBeHidden();
  await expect(page.getByRole('dialog')).toBeVisible();
  await list.getByRole('button', { name: 'New version of Odile' }).click();
  await label.fill('Over the corset');
  await page.keyboard.press('Enter');
  const person = list.getByRole('list', { name: 'Odile' });
  await expect(person.getByRole('listitem')).toHaveText([/^Over the corset/, /^Odile.*open now/]);
  // The one that was there is now named as hers too, by a step that undo takes back.
  await closeList(page);
  await expect(page.getByRole('button', { name: /^Undo/ })).toHaveAccessibleName('Undo: Rename');

  await page.waitForTimeout(1200);
  list = await openList(page);
  await list.getByRole('button', { name: 'Add bodies from such a file…' }).waitFor();
  await expect(list.getByRole('listitem')).toHaveCount(3);
  await list.getByRole('searchbox', { name: 'Search names' }).fill('CORSET');
  await expect(list.getByRole('article')).toHaveAccessibleName('Odile, Over the corset');
  await expect(list.getByText('1 of 2 bodies')).toBeVisible();
  await list.getByRole('searchbox').fill('nobody');
  await expect(list.getByText('No body here is called so.')).toBeVisible();
  await list.getByRole('searchbox').fill('');
  await list.getByRole('combobox', { name: 'In order of' }).selectOption('size');
  await expect(list.getByRole('article')).toHaveCount(2);

  await list.getByRole('checkbox', { name: 'Compare Odile', exact: true }).check();
  await list.getByRole('checkbox', { name: 'Compare Odile, Over the corset' }).check();
  await more(list, 'Odile, Over the corset');
  await list.getByRole('button', { name: 'Name and person of Odile, Over the corset' }).click();
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const { violations, passes } = await new AxeBuilder({ page }).analyze();
    expect(passes.length).toBeGreaterThan(10);
    expect(violations.map(({ id, nodes }) => `${id} ${nodes.map(({ target }) => target)}`)).toEqual([]);
  }
  await list.getByRole('button', { name: 'Compare these two' }).click();
  await expect(page.getByRole('heading', { name: 'Compare with another body' })).toBeFocused();
  await expect(page.getByText('Odile, Over the corset is drawn over this body.')).toBeVisible();
  await expect(name(page)).toHaveValue('Odile');
  expect(complaints).toEqual([]);
});

test('all bodies as one file, and back in another browser; what is no such file changes nothing', async ({
  page,
  browser,
}, {
  project: {
    use: { baseURL = '' },
  },
}) => {
  const at = Date.UTC(2026, 10, 30);
  await layDatabase(page, 2, [
    { id: 'old', name: 'Maren', at, text: await demo('average') },
    { id: 'hurt', name: 'Hurt', at, text: '{"format":' },
  ]);
  const complaints = await openPage(page);
  const list = await openList(page);
  // Kept by an earlier version of the program, and there as before, with pictures made now.
  await expect(list.getByRole('article')).toHaveCount(2);
  await expect.poll(() => keysIn(page, 'cards')).toEqual(['old']);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    list.getByRole('button', { name: 'Save all to one file' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^loftseam-bodies-\d{4}-\d\d-\d\d\.zip$/);
  const archive = await readFile(await download.path());

  await more(list, 'Maren');
  await list.getByRole('button', { name: 'Delete Maren' }).click();
  expect(await keysIn(page, 'photos')).toEqual([]);
  await list.getByRole('button', { name: 'Take it back' }).click();
  await expect(list.getByRole('article')).toHaveCount(2);
  expect(await keysIn(page, 'photos')).toEqual(['old front']);
  expect(complaints).toEqual([]);

  const context = await browser.newContext({ baseURL, serviceWorkers: 'block' });
  await drawNothing({ context });
  await leaveUnfilled({ context });
  const other = await context.newPage();
  const noticed = await openPage(other);
  const empty = await openList(other);
  await expect(empty).toContainText('None yet');
  const give = (name: string, buffer: Buffer) =>
    empty.getByLabel('File with several bodies').setInputFiles({ name, mimeType: 'application/zip', buffer });
  const hostile: Readonly<Record<string, readonly [Buffer, string]>> = {
    'letter.zip': [Buffer.from('Dear Odile'), 'it is no archive, or a damaged one'],
    'half.zip': [archive.subarray(0, archive.length >> 1), 'it is no archive, or a damaged one'],
  };
  for (const [file, [buffer, told]] of Object.entries(hostile)) {
    await give(file, buffer);
    await expect(empty).toContainText(`${file} could not be opened`);
    await expect(empty).toContainText(told);
    await expect(empty).toContainText('Nothing was changed.');
    await expect(empty.getByRole('article')).toHaveCount(0);
  }
  await give('all.zip', archive);
  await expect(empty).toContainText('1 body was added.');
  await expect(empty).toContainText('Hurt could not be read as a body');
  await expect(cardOf(empty, 'Maren Ostley, average figure')).toContainText('94.0 · 76.5 · 101.0 cm');
  await give('all.zip', archive);
  await expect(empty).toContainText('1 is here already, just the same.');
  await expect(empty.getByRole('article')).toHaveCount(1);
  await closeList(other);
  // Opened like any other file, it does the same.
  await other
    .getByLabel('Open a project file')
    .setInputFiles({ name: 'again.zip', mimeType: 'application/zip', buffer: archive });
  await expect(other.locator('.notice')).toContainText('No body was new.');
  expect(noticed).toEqual([]);
  await context.close();
});

test('a database of a newer version of the program is told, and left as it is', async ({ page }) => {
  await layDatabase(page, 9, [{ id: 'new', name: 'Later', at: 1, text: 'of another kind' }]);
  await openPage(page);
  await expect(page.locator('.notice.warning')).toContainText('a newer version of this program');
  const list = await openList(page);
  await expect(list.getByRole('alert')).toContainText('a newer version of this program');
  expect(await keysIn(page, 'bodies')).toEqual(['new']);
});
