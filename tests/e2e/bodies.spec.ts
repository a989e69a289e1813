import { readFile } from 'node:fs/promises';
import { drawNothing } from './draw-nothing.ts';
import { leaveUnfilled } from './leave-unfilled.ts';
import { openPage } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

test.beforeEach(drawNothing);
test.beforeEach(leaveUnfilled);

const name = (page: Page) => page.getByRole('textbox', { name: 'Name of this project' });
const waist = (page: Page) => page.getByRole('textbox', { name: 'Waist girth', exact: true });
const openList = async (page: Page) => {
  await page.getByRole('button', { name: 'Bodies and earlier states' }).click();
  return page.getByRole('region', { name: 'Bodies in this browser' });
};
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
  await list.getByRole('button', { name: 'Duplicate Odile' }).click();
  await expect(list.getByRole('listitem')).toHaveCount(2);
  await list.getByRole('button', { name: 'Rename Odile, copy' }).click();
  await list.getByRole('textbox', { name: /New name/ }).fill('Bram');
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
  await list.getByRole('button', { name: /^Odile/ }).click();
  await expect(waist(page)).toHaveValue('76.5');

  list = await openList(page);
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
  await expect(list.getByRole('status')).toContainText('One entry here cannot be read');
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
