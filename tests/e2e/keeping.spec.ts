import { readFile } from 'node:fs/promises';
import { drawNothing } from './draw-nothing.ts';
import { leaveUnfilled } from './leave-unfilled.ts';
import { openPage, waitForFullForm } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

test.beforeEach(drawNothing);
test.beforeEach(leaveUnfilled);

const waist = (page: Page) => page.getByRole('textbox', { name: 'Waist girth', exact: true });
const waistRow = (page: Page) => page.getByRole('listitem').filter({ has: waist(page) });
const notices = (page: Page) => page.locator('.notice');
const openList = async (page: Page) => {
  await page.getByRole('button', { name: 'Bodies and earlier states' }).click();
  return page.getByRole('region', { name: 'Bodies in this browser' });
};

test('a tab that dies in the middle of typing loses two seconds at most', async ({ page, context }) => {
  await openPage(page);
  await waist(page).fill('70.1');
  await page.waitForTimeout(2_000);
  await waist(page).fill('70.2');
  const session = await context.newCDPSession(page);
  const died = page.waitForEvent('crash');
  void session.send('Page.crash').catch(() => {});
  await died;
  const next = await context.newPage();
  await openPage(next);
  expect(['70.1', '70.2']).toContain(await waist(next).inputValue());
});

test('broken texts in the browser’s storage are told, put aside and can be saved', async ({ page }) => {
  await page.addInitScript(() => {
    if (sessionStorage.getItem('begun')) return;
    sessionStorage.setItem('begun', 'yes');
    localStorage.setItem('loftseam.project', '{broken');
    localStorage.setItem('loftseam.earlier', '[{"at": 1, "name": "Odile"');
    localStorage.setItem('loftseam.theme', 'purple');
  });
  await openPage(page);
  await expect(notices(page)).toHaveCount(2);
  await expect(notices(page).nth(0)).toContainText('could not be read and was put aside');
  await expect(notices(page).nth(1)).toContainText('earlier states');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    notices(page).nth(1).getByRole('button', { name: 'Save it to a file' }).click(),
  ]);
  expect(await readFile(await download.path(), 'utf8')).toBe('[{"at": 1, "name": "Odile"');
  // Opening something else does not take such a message away; closing does.
  await page.getByRole('button', { name: 'Demo bodies' }).click();
  await page.getByRole('button', { name: /Corvin Hale/ }).click();
  await expect(page.getByLabel('Name of this project')).toHaveValue('Corvin Hale, male figure');
  await expect(notices(page)).toHaveCount(2);
  await notices(page).nth(0).getByRole('button', { name: 'Close this message' }).click();
  await expect(notices(page)).toHaveCount(1);
  const kept = await page.evaluate(() => Object.values({ ...localStorage }));
  expect(kept).toContain('{broken');
  expect(kept).toContain('[{"at": 1, "name": "Odile"');
  await page.reload();
  await expect(page.getByLabel('Name of this project')).toHaveValue('Corvin Hale, male figure');
  await expect(notices(page)).toHaveCount(0);
});

const REFUSALS = {
  'is missing': () => Object.defineProperty(window, 'indexedDB', { value: undefined }),
  'throws when opened': () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('not in a private window', 'SecurityError');
    };
  },
  'fails while opening': () => {
    const open = IDBFactory.prototype.open;
    // A version lower than the one there is: VersionError (Indexed Database API 3.0, "open a database connection").
    IDBFactory.prototype.open = function (this: IDBFactory, name) {
      open.call(this, name, 1_000);
      return open.call(this, name, 1);
    };
  },
} as const;

for (const [how, refuse] of Object.entries(REFUSALS)) {
  test(`a database that ${how} is told at once, and the open body is kept all the same`, async ({ page }) => {
    await page.addInitScript(refuse);
    await openPage(page);
    await expect(notices(page)).toContainText('does not keep several bodies or photos here');
    await waist(page).fill('80');
    await waist(page).blur();
    await expect(waistRow(page)).toContainText('body reads 80.0 cm');
    const list = await openList(page);
    await expect(list.getByRole('alert')).toContainText('cannot keep bodies here');
    await page.reload();
    await expect(waist(page)).toHaveValue('80.0');
  });
}

test('storage that is really full is told, the body stands in the list, and what is open works on', async ({
  page,
}) => {
  await page.addInitScript(() => {
    let text = 'x'.repeat(1 << 20);
    for (let i = 0; text.length > 0; i++) {
      try {
        localStorage.setItem(`other ${i}`, text);
      } catch {
        text = text.slice(text.length >> 1 || 1);
      }
    }
  });
  await openPage(page);
  await expect(notices(page)).toContainText('refuses to keep the project');
  await expect(page.getByText('Not kept in this browser yet.')).toBeVisible();
  await waist(page).fill('80');
  await waist(page).blur();
  await expect(waistRow(page)).toContainText('body reads 80.0 cm');
  const list = await openList(page);
  await expect(list.getByRole('listitem')).toHaveText([/Maren Ostley.*open now/]);
  // From the list it comes back in the next visit.
  await page.reload();
  await expect(waist(page)).toHaveValue('76.5');
  await (await openList(page)).getByRole('button', { name: /^Maren Ostley/ }).click();
  await expect(waist(page)).toHaveValue('80.0');
});

test('a browser that forbids storage altogether still works, and says so', async ({ page }) => {
  await page.addInitScript(() => {
    for (const name of ['localStorage', 'sessionStorage', 'indexedDB']) {
      Object.defineProperty(window, name, {
        get() {
          throw new DOMException('storage is off', 'SecurityError');
        },
      });
    }
  });
  const complaints = await openPage(page);
  await expect(notices(page).filter({ hasText: 'refuses to keep the project' })).toBeVisible();
  await expect(notices(page).filter({ hasText: 'does not keep several bodies' })).toBeVisible();
  await waist(page).fill('80');
  await waist(page).blur();
  await waitForFullForm(page);
  await expect(waist(page)).toHaveValue('80.0');
  expect(complaints).toEqual([]);
});

test('two tabs on one body: both are told, and what each changed is kept', async ({ page, context }) => {
  await openPage(page);
  const second = await context.newPage();
  await openPage(second);
  await expect(notices(page)).toContainText('goes on there as a copy');
  await expect(notices(second)).toContainText('goes on here as a copy');
  await waist(page).fill('71');
  await waist(second).fill('81');
  for (const tab of [page, second]) await waist(tab).blur();
  await page.waitForTimeout(1_500);
  await second.close();
  const list = await openList(page);
  await expect(list.getByRole('listitem')).toHaveCount(2);
  await list
    .getByRole('button', { name: /, copy/ })
    .first()
    .click();
  await expect(waist(page)).toHaveValue('81.0');
  await (await openList(page))
    .getByRole('button', { name: /^Maren Ostley, average figure(?!, copy)/ })
    .first()
    .click();
  await expect(waist(page)).toHaveValue('71.0');
});
