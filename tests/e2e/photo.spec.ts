import { makePicture } from './make-picture.ts';
import { goTo } from './open-app.ts';
import { expect, test } from './shared-page.ts';

test('a photo lies under the body, is scaled by two points, kept with the body and not in the file', async ({
  sharedPage: page,
}) => {
  await goTo(page, 'Body');
  const tools = page.getByRole('region', { name: 'Photo under the body' });
  const front = tools.getByRole('group', { name: 'Front' });
  const input = front.locator('input[type=file]');

  // Files that are no photo are told, and nothing changes.
  await input.setInputFiles({ name: 'notes.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
  await expect(page.getByText('notes.png is no picture this browser can read')).toBeVisible();
  await input.setInputFiles({ name: 'huge.jpg', mimeType: 'image/jpeg', buffer: Buffer.alloc(30_100_000) });
  await expect(page.getByText(/huge.jpg is 30.1 MB; a photo may have 30 MB at most/)).toBeVisible();

  const buffer = await makePicture(page);
  await input.setInputFiles({ name: 'front.png', mimeType: 'image/png', buffer });
  const view = page.getByRole('group', { name: /The body over the photo/ });
  await expect(view).toBeVisible();
  const image = view.locator('image');

  // What cannot be drawn over a photo says so; level lines can be taken off.
  const layers = page.getByRole('group', { name: 'Drawn on the body' });
  await expect(layers.getByRole('checkbox', { name: 'Seam lines' })).toBeDisabled();
  await expect(layers.getByRole('checkbox', { name: 'Seam lines' })).toHaveAccessibleDescription(
    /Over a photo only/,
  );
  await expect(view.locator('.photo-levels')).toHaveCount(1);
  await layers.getByRole('checkbox', { name: 'Level lines' }).uncheck();
  await expect(view.locator('.photo-levels')).toHaveCount(0);
  await layers.getByRole('checkbox', { name: 'Level lines' }).check();

  // Scale: the two lines are 400 of 800 pixels apart; 90 cm makes the whole photo 180 cm high.
  await front.getByRole('button', { name: 'Set its scale' }).click();
  for (const index of [1, 2])
    await front.getByRole('button', { name: `Point ${index} on the photo` }).click();
  await front.getByRole('textbox', { name: 'Distance between the points' }).fill('90');
  await front.getByRole('button', { name: 'Scale the photo' }).click();
  await expect(image).toHaveAttribute('height', '1800');

  // Nearer, round the middle, and all of it again.
  const shownHeight = async () =>
    Number((await view.locator('svg').first().getAttribute('viewBox'))?.split(' ')[3]);
  const wholeHeight = await shownHeight();
  await view.getByRole('button', { name: 'Nearer' }).click();
  await expect.poll(shownHeight).toBeCloseTo(wholeHeight / 1.4, 3);
  await view.focus();
  await page.keyboard.press('0');
  await expect.poll(shownHeight).toBeCloseTo(wholeHeight, 3);
  await expect(image).toHaveAttribute('height', '1800');

  // Moving by keyboard and pointer.
  const before = await image.getAttribute('transform');
  await view.focus();
  await page.keyboard.press('Shift+ArrowRight');
  await expect(image).not.toHaveAttribute('transform', before ?? '');
  const moved = await image.getAttribute('transform');
  const box = await view.boundingBox();
  if (!box) throw new Error('no view');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 + 30, box.y + box.height / 2, { steps: 3 });
  await page.mouse.up();
  await expect(image).not.toHaveAttribute('transform', moved ?? '');

  // Only straight from the front: from elsewhere the body itself is seen.
  await page.getByRole('button', { name: 'Three-quarter' }).click();
  await expect(view).toHaveCount(0);
  await expect(layers.getByRole('checkbox', { name: 'Seam lines' })).toBeEnabled();
  await front.getByRole('button', { name: 'Look at it' }).click();
  await expect(view).toBeVisible();

  // Kept with the body.
  await page.waitForTimeout(1500);
  await page.reload();
  await goTo(page, 'Body');
  await tools.getByRole('group', { name: 'Front' }).getByRole('button', { name: 'Look at it' }).click();
  await expect(view.locator('image')).toHaveAttribute('height', '1800');
  const kept = await page.evaluate(() => JSON.stringify({ ...localStorage }));
  expect(kept).not.toContain('front.png');
  await tools.getByRole('button', { name: 'Take it away' }).click();
  await expect(view).toHaveCount(0);
});
