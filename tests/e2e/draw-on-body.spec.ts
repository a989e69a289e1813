import { readFile } from 'node:fs/promises';
import { DOMParser } from '@xmldom/xmldom';
import { goTo, waitForFullForm } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });

test('a region drawn on the body becomes a flat piece in true size', async ({ sharedPage: page }) => {
  await goTo(page, 'Panels');
  await page.getByRole('button', { name: 'Front', exact: true }).click();
  const own = page.getByRole('region', { name: 'A piece of your own' });
  await own.getByRole('button', { name: 'Draw on the body' }).click();
  const box = await page.locator('.body-picture canvas').boundingBox();
  if (!box) throw new Error('no picture');
  // The camera takes a moment to turn.
  await page.waitForTimeout(900);
  const corners = [
    [0.42, 0.5],
    [0.56, 0.5],
    [0.55, 0.66],
    [0.43, 0.66],
  ] as const;
  for (const [count, [x, y]] of corners.entries()) {
    await page.mouse.click(box.x + box.width * x, box.y + box.height * y);
    await expect(own.getByRole('button', { name: `Point ${count + 1} of the region` })).toBeVisible();
  }
  await expect(undo(page)).toHaveAccessibleName('Undo: Draw point 4 of the region');
  // The figures of three points stand until those of four are there.
  await expect(own.locator('.flat-cut:not([data-behind])')).toBeVisible();
  const around = own.locator('dd').nth(2);
  await expect(around).toHaveText(/cm/);
  const before = await around.textContent();

  // By keyboard.
  await own.getByRole('button', { name: 'Point 4 of the region' }).focus();
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Shift+ArrowDown');
  await expect(undo(page)).toHaveAccessibleName('Undo: Move point 4 of the region');
  await expect(around).not.toHaveText(before ?? '');
  await undo(page).click();
  await expect(around).toHaveText(before ?? '');

  // The file, measured again: the outline is as long as the page says.
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    own.getByRole('button', { name: 'Download this piece' }).click(),
  ]);
  const text = await readFile(await download.path(), 'utf8');
  const outline = new DOMParser().parseFromString(text, 'image/svg+xml').getElementById('region/sew');
  const numbers = (outline?.getAttribute('d') ?? '').match(/-?\d+(\.\d+)?/g)?.map(Number) ?? [];
  let length = 0;
  for (let i = 0; i < numbers.length; i += 2) {
    const j = (i + 2) % numbers.length;
    length += Math.hypot(numbers[j]! - numbers[i]!, numbers[j + 1]! - numbers[i + 1]!);
  }
  expect(Math.abs(length / 10 - Number.parseFloat(before ?? ''))).toBeLessThan(0.11);

  // A loop that crosses itself is told, and the points stay.
  const fourth = own.getByRole('button', { name: 'Point 4 of the region' });
  for (let i = 0; i < 14; i++) await fourth.press('Shift+ArrowRight');
  // On a busy machine a key may come before the point is ready for it: so as often as it takes.
  await expect(async () => {
    await fourth.press('Shift+ArrowUp');
    await expect(own.getByRole('alert')).toContainText('crosses itself', { timeout: 250 });
  }).toPass({ timeout: 60_000, intervals: [10] });
  await own.getByRole('button', { name: 'Wipe away' }).click();
  await expect(own.getByRole('alert')).toHaveCount(0);
});

test('panels laid together unroll as one piece; a ring is refused', async ({ undrawnPage: page }) => {
  await goTo(page, 'Panels');
  const own = page.getByRole('region', { name: 'A piece of your own' });
  await own.getByRole('radio', { name: 'Panels together' }).check();
  await own.getByRole('checkbox', { name: 'centre front right' }).check();
  await own.getByRole('checkbox', { name: 'side front right' }).check();
  await expect(own.getByRole('img', { name: /laid flat/ })).toBeVisible();
  await own.getByRole('checkbox', { name: 'side back left' }).check();
  await expect(own.getByRole('alert')).toContainText('do not hang together');
});

test('a new seam is drawn by keyboard, panels divided and joined, each one undo step', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Seams');
  const own = page.getByRole('region', { name: 'More seams, or fewer' });
  const pieces = page.locator('.seams-stage dl.numbers dd').first();
  await expect(pieces).toBeVisible();
  const count = Number(await pieces.textContent());
  const places = own.getByRole('combobox', { name: 'Add a point at a named place' });
  await places.selectOption('Base, centre front');
  await places.selectOption('Waist, centre front');
  await own.getByRole('button', { name: 'Point 1 of the line' }).focus();
  for (let i = 0; i < 2; i++) await page.keyboard.press('Shift+ArrowLeft');
  await own.getByRole('button', { name: 'Point 2 of the line' }).focus();
  for (let i = 0; i < 2; i++) await page.keyboard.press('Shift+ArrowLeft');
  const sew = own.getByRole('button', { name: 'Sew it in' });
  await sew.click();
  await expect(own.getByRole('alert')).toContainText('Both ends must lie on something');
  await places.selectOption('Neck, front');
  await own.getByRole('button', { name: 'Point 3 of the line' }).focus();
  for (let i = 0; i < 2; i++) await page.keyboard.press('Shift+ArrowLeft');
  await sew.click();
  await expect(undo(page)).toHaveAccessibleName('Undo: Sew in own line 1');
  await waitForFullForm(page);
  await expect(page.locator('.seam-list')).toContainText('own line 1');
  await undo(page).click();
  await waitForFullForm(page);
  await expect(page.locator('.seam-list')).not.toContainText('own line 1');
  await own.getByRole('button', { name: 'Wipe away' }).click();

  await own.getByRole('combobox', { name: 'Divide lengthwise' }).selectOption('centre front');
  await own.getByRole('button', { name: 'Divide' }).click();
  await expect(undo(page)).toHaveAccessibleName('Undo: Divide centre front');
  await waitForFullForm(page);
  await expect(pieces).toHaveText(String(count + 2));
  const joints = own.getByRole('combobox', { name: 'Join across a seam' });
  const divided = joints.getByRole('option', { name: /middle of centre front/ });
  await joints.selectOption((await divided.textContent()) ?? '');
  await own.getByRole('button', { name: 'Join' }).click();
  await waitForFullForm(page);
  await expect(pieces).toHaveText(String(count));
});
