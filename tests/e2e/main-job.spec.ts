import { leaveUnfilled } from './leave-unfilled.ts';
import { goTo, openApp, waitForFullForm } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

test.beforeEach(leaveUnfilled);

const waist = (page: Page) => page.getByRole('textbox', { name: 'Waist girth', exact: true });
const waistRow = (page: Page) => page.getByRole('listitem').filter({ has: waist(page) });

test('opens on a demo body, every tape met, asking nobody else for anything; typed measures change the body', async ({
  page,
}) => {
  const complaints = await openApp(page);
  await test.step('opens on a demo body, every tape met', async () => {
    await expect(waist(page)).toHaveValue('76.5');
    await expect(waistRow(page)).toContainText('met, body reads 76.5 cm');
    await expect(page.locator('.body-picture canvas')).toBeVisible();
    await expect(page.getByText('Nothing leaves this computer.')).toBeVisible();
  });
  await test.step('bad measures are told and kept; undo takes them back', async () => {
    await waist(page).fill('70');
    await expect(waistRow(page)).toContainText('body reads 70.0 cm');
    await waist(page).blur();

    await waist(page).fill('27 1/2 in');
    await waist(page).blur();
    await expect(waist(page)).toHaveValue('69.9');
    await expect(waistRow(page)).toContainText('body reads 69.9 cm');

    await waist(page).fill('765');
    await expect(waistRow(page).getByRole('alert')).toHaveText(
      'Waist girth is 765.0 cm; it must lie between 36.4 cm and 201.5 cm. If you meant millimetres, type 765 mm.',
    );
    await goTo(page, 'Body');
    await goTo(page, 'Tape');
    await expect(waist(page)).toHaveValue('765');
    await expect(waist(page)).toHaveAttribute('aria-invalid', 'true');

    await page.keyboard.press('Control+z');
    await expect(waist(page)).toHaveValue('69.9');
    await page.keyboard.press('Control+z');
    await expect(waist(page)).toHaveValue('70.0');
    await page.getByRole('button', { name: 'Undo: Set waist girth' }).click();
    await expect(waist(page)).toHaveValue('76.5');
    await page.getByRole('button', { name: 'Redo: Set waist girth' }).click();
    await expect(waist(page)).toHaveValue('70.0');
    await waitForFullForm(page);
    await expect(waistRow(page)).toContainText('body reads 70.0 cm');
  });
  expect(complaints).toEqual([]);
});

test('inches with fractions; left and right apart', async ({ undrawnPage: page }) => {
  await page.getByRole('radio', { name: 'Inches' }).check();
  // 765 mm is 30.118 in, nearest sixteenth 30 1/8; 940 mm is 37.008 in (1 in = 25.4 mm).
  await expect(waist(page)).toHaveValue('30 1/8');
  await expect(page.getByRole('textbox', { name: 'Bust or chest girth' })).toHaveValue('37');
  await waist(page).fill('28 3/8');
  await expect(waistRow(page)).toContainText('body reads 28 3/8 in');

  await page.getByRole('radio', { name: 'Centimetres' }).check();
  await page.getByRole('button', { name: 'Shoulder drop: left and right apart' }).click();
  await page.getByRole('textbox', { name: 'Shoulder drop, right' }).fill('6.6');
  await page.getByRole('textbox', { name: 'Shoulder drop, left' }).fill('4.6');
  const row = page.getByRole('listitem').filter({ hasText: 'Shoulder drop' });
  await expect(row).toContainText('difference 2.0 cm');
  await expect(row).toContainText('right met, body reads 6.6 cm');
  await expect(row).toContainText('left met, body reads 4.6 cm');
  await waitForFullForm(page);
});

test('all four stages by keyboard alone', async ({ sharedPage: page }) => {
  for (const [stage, next] of [
    ['Body', 'Front'],
    ['Seams', 'Side'],
    ['Panels', 'Back'],
    ['Tape', 'Three-quarter'],
  ] as const) {
    await tabTo(page, new RegExp(`^${stage}`));
    await page.keyboard.press('Enter');
    await expect(page.getByRole('heading', { level: 2, name: stage })).toBeVisible();
    await expect(page.getByRole('button', { name: new RegExp(`^${stage}`) })).toHaveAttribute(
      'aria-current',
      'step',
    );
    await tabTo(page, new RegExp(`^${next}$`));
    await page.keyboard.press('Enter');
    await expect(page.getByRole('button', { name: next, exact: true })).toBeFocused();
  }
  const picture = page.getByRole('group', { name: /^Picture of the body/ });
  await picture.focus();
  const before = await picture.screenshot();
  await page.keyboard.press('ArrowRight');
  await expect.poll(async () => Buffer.compare(await picture.screenshot(), before)).not.toBe(0);
  await page.keyboard.press('Alt+4');
  await expect(page.getByRole('heading', { level: 2, name: 'Panels' })).toBeVisible();
});

/** Tabs on until a button of that name has the focus; fails when the whole page was gone through. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let i = 0; i < 150; i++) {
    await page.keyboard.press('Tab');
    const text = await page.evaluate(() => {
      const element = document.activeElement;
      return element instanceof HTMLButtonElement
        ? (element.getAttribute('aria-label') ?? element.textContent ?? '')
        : '';
    });
    if (name.test(text.trim())) return;
  }
  throw new Error(`no button ${name} was reached by Tab`);
}

test('a seam pointed at lights up everywhere; another layout makes other pieces', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Panels');
  const row = page.locator('.seam-table tbody tr').nth(1);
  await row.hover();
  await expect(row).toHaveAttribute('data-lit', 'true');
  await expect(page.locator('.sew-line[data-lit]')).toHaveCount(2);
  const lit = page.locator('.sew-line[data-lit] text').first();
  await expect(lit).toHaveText(((await row.locator('.seam-tag').textContent()) ?? '').trim());
  await page.locator('.sew-line circle').first().hover();
  await expect(page.locator('.seam-table tbody tr[data-lit]')).toHaveCount(1);

  await goTo(page, 'Seams');
  const layouts = page.locator('.layout-card').getByRole('radio');
  expect(await layouts.count()).toBeGreaterThan(1);
  const before = await page.getByRole('button', { name: /^Panels/ }).textContent();
  await layouts.nth(1).check();
  await expect(page.getByRole('button', { name: /^Panels/ })).not.toHaveText(before ?? '');
  await waitForFullForm(page);
});
