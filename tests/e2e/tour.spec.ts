import AxeBuilder from '@axe-core/playwright';
import { goTo, STAGE_NAMES, waitForFullForm } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

/** As many as the round says it has. */
const STOPS = 9;

async function expectNothingBroken(page: Page, part: string): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const { violations, passes } = await new AxeBuilder({ page }).include(part).analyze();
    expect(passes.length, part).toBeGreaterThan(3);
    expect(
      violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`),
      `${part}, ${colorScheme}`,
    ).toEqual([]);
  }
}

async function beginRound(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Keys and words' }).click();
  await page
    .getByRole('dialog', { name: 'Keys and words' })
    .getByRole('button', { name: 'Show me round' })
    .click();
}

test('every stage says what to do there when asked, with its picture, and stays as it was left', async ({
  undrawnPage: page,
}) => {
  const told = new Set<string>();
  const guide = page.locator('.stage-guide');
  for (const stage of STAGE_NAMES) {
    await goTo(page, stage);
    const button = page.getByRole('button', { name: 'What to do here' });
    await expect(button).toHaveAttribute('aria-expanded', 'false');
    await expect(guide).toHaveCount(0);
    await button.click();
    await expect(guide).toContainText('Done:');
    await expect(guide.getByRole('listitem').first()).toBeVisible();
    // A plan to lay by is sought for a while.
    if (stage !== 'Laying') await expect(guide.locator('svg path').first()).toHaveAttribute('d', /^M.+L/);
    told.add((await guide.textContent()) ?? '');
  }
  expect(told.size).toBe(STAGE_NAMES.length);
  await goTo(page, 'Seams');
  await expect(guide).toContainText('layout');
  await expectNothingBroken(page, '.stage-head');
  for (const stage of STAGE_NAMES) {
    await goTo(page, stage);
    await page.getByRole('button', { name: 'What to do here' }).click();
    await expect(guide).toHaveCount(0);
  }
});

test('the round of the page lights a real thing at every stop, over which nothing lies, and changes nothing', async ({
  undrawnPage: page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await waitForFullForm(page);
  const undo = page.locator('.tool-group button[aria-label^="Undo"]');
  const before = await undo.getAttribute('aria-label');
  const round = page.getByRole('region', { name: 'A round of the page' });
  const ring = page.locator('.round-ring');
  await beginRound(page);
  const texts = new Set<string>();
  for (let stop = 1; stop <= STOPS; stop++) {
    await expect(round).toContainText(`${stop} of ${STOPS}`);
    await expect(round.locator('[aria-live]')).not.toBeEmpty();
    await expect(ring).toBeVisible();
    // In sight, whole, over the sheet. The ring of a thing that is not there lies round a stage's name, under it.
    await expect
      .poll(async () => {
        const [lit, sheet] = [(await ring.boundingBox())!, (await round.boundingBox())!];
        return lit.y >= 0 && lit.height > 20 && lit.y + lit.height <= sheet.y;
      })
      .toBe(true);
    texts.add((await round.locator('[aria-live]').textContent()) ?? '');
    if (stop === 3) await expectNothingBroken(page, '.round');
    // By thumb and by key.
    if (stop % 2 === 1) await round.locator('.main').click();
    else await page.keyboard.press('Enter');
  }
  expect(texts.size).toBe(STOPS);
  await expect(round).toHaveCount(0);
  await expect(page.getByRole('heading', { level: 2, name: 'Tape' })).toBeVisible();
  expect(await undo.getAttribute('aria-label')).toBe(before);
});

test('the round can be left at any time, and goes back', async ({ undrawnPage: page }) => {
  const round = page.getByRole('region', { name: 'A round of the page' });
  await beginRound(page);
  await expect(round.getByRole('button', { name: 'Back' })).toBeDisabled();
  await expect(round.getByRole('button', { name: 'Next' })).toBeFocused();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('heading', { level: 2, name: 'Body' })).toBeVisible();
  await expect(round.getByRole('button', { name: 'Next' })).toBeFocused();
  await page.keyboard.press('ArrowLeft');
  await expect(page.getByRole('heading', { level: 2, name: 'Tape' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(round).toHaveCount(0);
  await expect(page.locator('.round-ring')).toHaveCount(0);
  await expect(page.locator('#work')).toBeFocused();
  await beginRound(page);
  await round.getByRole('button', { name: 'Leave' }).click();
  await expect(round).toHaveCount(0);
});
