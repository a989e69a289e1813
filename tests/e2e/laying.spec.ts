import AxeBuilder from '@axe-core/playwright';
import { makePicture } from './make-picture.ts';
import { goTo, waitForFilledForm } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

/** A use and the searches for it have come to their end. */
async function waitForPlan(page: Page): Promise<void> {
  await expect(page.locator('.lay-progress')).toHaveCount(0, { timeout: 60_000 });
  await expect(page.locator('[data-laid]').first()).toBeVisible();
}

const pieceOf = (page: Page, name: string) => page.getByRole('button', { name: new RegExp(`^${name}, `) });

test('pieces are laid, kept, moved by keys and pointer, locked, and laid again round what is locked', async ({
  undrawnPage: page,
}) => {
  test.setTimeout(240_000);
  await goTo(page, 'Laying');
  await waitForFilledForm(page);
  await waitForPlan(page);
  const undo = page.getByRole('button', { name: /^Undo/ });
  await expect(page.locator('[data-laid]')).toHaveCount(9);
  await expect(page.locator('.lay-facts')).toContainText(/Takes \d+\.\d cm of cloth 114\.0 cm wide/);
  await expect(undo).toHaveAccessibleName(/^Undo: Open/);

  await test.step('keep', async () => {
    await page.getByRole('button', { name: 'Keep this plan' }).click();
    await expect(page.getByText('This plan is kept with the body.')).toBeVisible();
    await expect(undo).toHaveAccessibleName('Undo: Keep the lay plan');
    await expect(page.locator('.lay-faults')).toHaveCount(0);
  });

  await test.step('by keys', async () => {
    const front = pieceOf(page, 'centre front right');
    const along = async () =>
      Number(/, (\d+\.\d) cm from the cut end/.exec((await front.getAttribute('aria-label')) ?? '')?.[1]);
    const before = await along();
    await front.focus();
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('ArrowRight');
    await expect.poll(along).toBeCloseTo(before + 1.1, 5);
    await expect(undo).toHaveAccessibleName('Undo: Move centre front right');
    await page.keyboard.press('l');
    await expect(front).toHaveAccessibleName(/, locked/);
  });

  await test.step('by pointer, onto another', async () => {
    const [a, b] = [pieceOf(page, 'side back left'), pieceOf(page, 'centre back left')];
    const middle = async (piece: typeof a) => {
      await piece.scrollIntoViewIfNeeded();
      const box = await piece.locator('.laid-cloth').boundingBox();
      if (!box) throw new Error('not on the plan');
      return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    };
    const [from, to] = [await middle(a), await middle(b)];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 5 });
    await expect(a).toHaveAccessibleName(/lies over another$/);
    await page.mouse.up();
    await expect(undo).toHaveAccessibleName('Undo: Move side back left');
    await expect(page.locator('.lay-faults')).toContainText(
      /side back left lies over|lies over side back left/,
    );
  });

  await test.step('the rest anew', async () => {
    const front = pieceOf(page, 'centre front right');
    const place = await front.getAttribute('aria-label');
    await page.getByRole('button', { name: 'Lay the rest anew' }).click();
    await waitForPlan(page);
    await page.getByRole('button', { name: 'Keep this plan' }).click();
    await expect(front).toHaveAccessibleName(place?.replace(', lies over another', '') ?? '');
    await expect(page.locator('.lay-faults')).toHaveCount(0);
  });

  await test.step('narrow cloth', async () => {
    const width = page.getByRole('textbox', { name: 'Width, selvedges included' });
    await width.fill('12');
    await expect(page.locator('.lay-refusals')).toContainText(/too narrow for “.+”\. It takes .+ at least/);
    await width.fill('');
    await width.blur();
    await waitForPlan(page);
  });
});

test('a print is met at the waist, a photo is scaled by two points, and both come back', async ({
  undrawnPage: page,
}) => {
  test.setTimeout(240_000);
  await goTo(page, 'Laying');
  await waitForPlan(page);

  await test.step('checks', async () => {
    await page.getByRole('combobox', { name: 'Cloth' }).selectOption('checks');
    await expect(page.locator('.lay-print-gaps')).toContainText(/at the waist/i);
    await expect(page.locator('pattern image')).not.toHaveCount(0);
  });

  await test.step('a photo', async () => {
    await page.getByRole('combobox', { name: 'Cloth' }).selectOption('photo');
    const file = { name: 'cloth.png', mimeType: 'image/png', buffer: await makePicture(page) };
    await page.getByLabel('Choose a photo of the cloth').last().setInputFiles(file);
    await page.getByRole('button', { name: 'Scale it by two points' }).click();
    const photo = page.getByRole('img', { name: /^Photo of the cloth/ });
    await photo.scrollIntoViewIfNeeded();
    const box = await photo.boundingBox();
    if (!box) throw new Error('no photo');
    // 400 × 800 pixels, fitted by its height; its lines lie at a quarter and at three quarters, 400 pixels apart.
    for (const share of [0.25, 0.75])
      await page.mouse.click(box.x + box.width / 2, box.y + share * box.height);
    await page.getByRole('textbox', { name: 'Distance of the points' }).fill('30');
    await page.getByRole('button', { name: 'Scale', exact: true }).click();
    // Twice as long as from line to line, and half as wide as long.
    await expect
      .poll(async () => Number(await page.getByRole('textbox', { name: 'One repeat, along' }).inputValue()))
      .toBeCloseTo(60, 0);
    await expect
      .poll(async () => Number(await page.getByRole('textbox', { name: 'One repeat, across' }).inputValue()))
      .toBeCloseTo(30, 0);
  });

  await test.step('to be read by everybody, on a telephone too', async () => {
    await waitForPlan(page);
    await page.locator('[data-laid]').first().focus();
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      const { violations, passes } = await new AxeBuilder({ page }).analyze();
      expect(passes.length).toBeGreaterThan(10);
      expect(
        violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' '))}`),
      ).toEqual([]);
    }
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  });

  await test.step('after the page was loaded again', async () => {
    await page.waitForTimeout(1_000);
    await expect(page.locator('.status-promise')).toContainText('Kept in this browser.');
    await page.reload();
    await goTo(page, 'Laying');
    await expect(page.getByRole('img', { name: /^Photo of the cloth/ })).toBeVisible({ timeout: 60_000 });
    await expect(
      page.getByText(/^The photo shows 30\.\d cm × 60\.\d cm|^The photo shows 29\.\d cm × 5\d\.\d cm/),
    ).toBeVisible();
  });
});
