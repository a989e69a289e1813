import { goTo, waitForFullForm } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

const pulling = (page: Page) => page.getByRole('region', { name: 'Pull the lines' });
const strain = async (page: Page) =>
  Number.parseFloat((await pulling(page).locator('dd').first().textContent()) ?? '');
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });

test('a point moved by keyboard changes the seams, can be undone, and the layout had back; one is added and left out', async ({
  sharedPage: page,
}) => {
  await goTo(page, 'Seams');
  const point = pulling(page).getByRole('button', { name: 'princess front, point 3' });
  await expect(point).toBeVisible();
  const length = page.locator('.seam-list li', { hasText: 'princess front' }).first();
  const [before, strainBefore] = [await length.textContent(), await strain(page)];
  // A key that comes while points are found anew moves none.
  await expect(page.locator('.pull-list[data-behind]')).toHaveCount(0);
  await point.focus();
  await page.keyboard.press('Shift+ArrowRight');
  await expect(undo(page)).toHaveAccessibleName('Undo: Move princess front');
  await waitForFullForm(page);
  await expect(length).not.toHaveText(before ?? '');
  await expect(pulling(page)).toContainText('Before');
  expect(await strain(page)).not.toBe(strainBefore);
  await undo(page).click();
  await waitForFullForm(page);
  await expect(length).toHaveText(before ?? '');

  // Points are found anew for the lines undo brought back.
  await expect(page.locator('.pull-list[data-behind]')).toHaveCount(0);
  await point.focus();
  await page.keyboard.press('Shift+ArrowLeft');
  await waitForFullForm(page);
  await expect(length).not.toHaveText(before ?? '');
  await pulling(page).getByRole('button', { name: 'Back to eight upright panels' }).click();
  await waitForFullForm(page);
  await expect(length).toHaveText(before ?? '');

  // A point can be added to a line, and left out again.
  await pulling(page).getByRole('button', { name: 'princess front, point 3' }).click();
  await pulling(page).getByRole('button', { name: 'Add a point' }).click();
  await expect(pulling(page).getByRole('button', { name: 'princess front, point 7' })).toBeVisible();
  await expect(undo(page)).toHaveAccessibleName('Undo: Add a point to princess front');
  await pulling(page).getByRole('button', { name: 'princess front, point 4' }).click();
  await pulling(page).getByRole('button', { name: 'Leave this point out' }).click();
  await expect(pulling(page).getByRole('button', { name: 'princess front, point 7' })).toHaveCount(0);
});

test('a bead dragged on the body is one undo step, and the body does not turn with it', async ({
  sharedPage: page,
}) => {
  await goTo(page, 'Seams');
  await page.getByRole('button', { name: 'Front', exact: true }).click();
  await expect(pulling(page)).toBeVisible();
  const canvas = page.locator('.body-picture canvas');
  const box = await canvas.boundingBox();
  if (!box) throw new Error('no picture');
  // Beads announce themselves by the cursor. Those of the right princess seam lie left of the middle.
  const bead = await findBead(page, box);
  await page.mouse.move(bead.x, bead.y);
  await page.mouse.down();
  for (let i = 1; i <= 6; i++) await page.mouse.move(bead.x + 3 * i, bead.y, { steps: 2 });
  await expect(undo(page)).toHaveAccessibleName(/^Undo: Open/);
  await page.mouse.up();
  await expect(undo(page)).toHaveAccessibleName(/^Undo: Move /);
  await waitForFullForm(page);
  await undo(page).click();
  await expect(undo(page)).toHaveAccessibleName(/^Undo: Open/);
});

async function findBead(page: Page, box: { x: number; y: number; width: number; height: number }) {
  for (let y = 0.7; y > 0.3; y -= 0.012) {
    for (let x = 0.3; x < 0.47; x += 0.008) {
      const at = { x: box.x + box.width * x, y: box.y + box.height * y };
      await page.mouse.move(at.x, at.y);
      const cursor = await page
        .locator('.body-picture canvas')
        .evaluate((el) => (el as HTMLElement).style.cursor);
      if (cursor === 'grab') return at;
    }
  }
  throw new Error('no bead found');
}

test('the verdict stands in every stage, leads to its worst place, and has advice sought', async ({
  undrawnPage: page,
}) => {
  const verdict = page.getByRole('region', { name: 'Can it be sewn?' });
  for (const stage of ['Tape', 'Body', 'Inside', 'Making', 'Checking'] as const) {
    await goTo(page, stage);
    await expect(verdict).toContainText(
      /Can be sewn, but the cloth will wrinkle in (one place|\d+ places)\./,
    );
  }
  const place = verdict.locator('.verdict-place button');
  const piece = (await place.textContent())?.split(',')[0] ?? '';
  await place.click();
  await expect(page.getByRole('heading', { level: 2, name: 'Panels' })).toBeVisible();
  // The piece is lit among the others.
  await expect(page.locator('tr[data-lit]', { hasText: piece })).toBeVisible();
  await verdict.getByRole('button', { name: 'Look for a better seam' }).click();
  await expect(page.getByRole('heading', { level: 2, name: 'Seams' })).toBeVisible();
  const advice = page.getByRole('region', { name: 'Ask for advice' });
  await expect(advice.getByRole('heading')).toBeFocused();
  await expect(advice.getByRole('button', { name: 'Stop looking' })).toBeVisible();
  await expect(advice.getByRole('button', { name: 'Look for better seams' })).toBeVisible({
    timeout: 60_000,
  });
  // The first place of the list is the one of the verdict.
  await expect(advice.locator('.advice-place').first()).toContainText(piece, { ignoreCase: true });
});

test('cards tell what a layout would come to on this body, and another layout changes the verdict', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Seams');
  const cards = page.locator('.layout-card');
  await expect(
    cards.locator('.layout-figures', {
      hasText: /^about \d\.\d % strainabout \d+ cm of clothabout \d+ h$|fit/,
    }),
  ).toHaveCount(await cards.count());
  const strain = async (name: string) =>
    Number.parseFloat(
      /about (\d\.\d)/.exec((await cards.filter({ hasText: name }).first().textContent()) ?? '')?.[1] ?? '',
    );
  expect(await strain('Twelve upright panels with a bust seam')).toBeLessThan(
    await strain('Eight upright panels'),
  );
  await page.getByRole('radio', { name: /^Twelve upright panels with a bust seam/ }).check({ force: true });
  await waitForFullForm(page);
  await expect(page.getByRole('region', { name: 'Can it be sewn?' })).toContainText('Can be sewn as it is');
});

test('advice names places, tries changes out, and changes nothing until it is taken', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Seams');
  const advice = page.getByRole('region', { name: 'Ask for advice' });
  await advice.getByRole('button', { name: 'Look for better seams' }).click();
  await expect(advice.getByRole('button', { name: 'Look for better seams' })).toBeVisible({
    timeout: 60_000,
  });
  await expect(undo(page)).toHaveAccessibleName(/^Undo: Open/);
  const take = advice.getByRole('button', { name: 'Take this advice' });
  await expect(take.first()).toBeEnabled();
  await expect(advice).toContainText(/falls from \d+\.\d+ % to \d+\.\d+ %/);
  await take.first().click();
  await expect(undo(page)).toBeEnabled();
  await waitForFullForm(page);
  await expect(advice).toContainText('look again');
  await expect(take.first()).toBeDisabled();
  await undo(page).click();
  await waitForFullForm(page);
  await expect(take.first()).toBeEnabled();
});
