import { goTo, waitForFullForm } from './open-app.ts';
import { expect, test } from './shared-page.ts';

test('the grain of a piece is turned by pointer, keys and number, each one undo step', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Panels');
  const grain = page.getByRole('region', { name: 'Grain' });
  await grain.getByRole('combobox', { name: 'Panel' }).selectOption({ label: 'side front right' });
  const dial = grain.getByRole('slider', { name: 'Grain of side front right' });
  const field = grain.getByRole('textbox', { name: /Degrees to the left/ });
  const undo = page.getByRole('button', { name: /^Undo/ });
  await expect(dial).toHaveAttribute('aria-valuetext', 'upright');
  const usage = grain.getByRole('row', { name: /Used of its limits/ });
  const before = await usage.textContent();

  // Pointer: to the bias, by the arrow's bead at the top of the dial.
  // Clear of the pieces that stay in sight above it.
  await grain.locator('svg').evaluate((element) => element.scrollIntoView({ block: 'end' }));
  const bead = await grain.locator('.grain-arrow circle').boundingBox();
  const band = await grain.locator('.grain-band').boundingBox();
  if (!bead || !band) throw new Error('no dial');
  const [cx, cy] = [band.x + band.width / 2, band.y + band.height / 2];
  const r = cy - (bead.y + bead.height / 2);
  await page.mouse.move(cx, cy - r);
  await page.mouse.down();
  for (let deg = 10; deg <= 43; deg += 11) {
    const a = (deg * Math.PI) / 180;
    await page.mouse.move(cx - r * Math.sin(a), cy - r * Math.cos(a));
  }
  await expect(field).toHaveValue('45');
  await expect(usage).not.toHaveText(before ?? '');
  await expect(undo).toHaveAccessibleName(/^Undo: Open/);
  await page.mouse.up();
  await expect(undo).toHaveAccessibleName('Undo: Turn the grain of side front right');
  await waitForFullForm(page);
  await grain.getByRole('combobox', { name: 'Panel' }).selectOption({ label: 'side front left' });
  await expect(field).toHaveValue('−45');
  await undo.click();
  await expect(field).toHaveValue('0');
  await expect(undo).toHaveAccessibleName(/^Undo: Open/);

  // Keys: one visit, one step. The other side is left alone when asked.
  await grain.getByRole('checkbox', { name: /side front right as its mirror image/ }).uncheck();
  const left = grain.getByRole('slider', { name: 'Grain of side front left' });
  await left.focus();
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('ArrowLeft');
  await expect(left).toHaveAttribute('aria-valuetext', '14° to the right');
  await undo.click();
  await expect(field).toHaveValue('0');
  await expect(undo).toHaveAccessibleName(/^Undo: Open/);

  // Number: what cannot be used is told.
  await field.fill('120');
  await field.press('Enter');
  await expect(grain.getByRole('alert')).toContainText('−90 to 90');
  await field.fill('7,5');
  await field.press('Enter');
  await expect(left).toHaveAttribute('aria-valuetext', '7.5° to the left');
  // The best of a rough form is not quite that of the full one.
  await waitForFullForm(page);
  await grain.getByRole('button', { name: /^Best: / }).click();
  await waitForFullForm(page);
  // The form may stand as whole for a moment before the turned piece is unrolled again.
  await expect
    .poll(async () => {
      const said = (await usage.textContent()) ?? '';
      const [used, best] = [...said.matchAll(/(\d+) %/g)].map((match) => Number(match[1]));
      return Math.abs((used ?? 0) - (best ?? 100));
    })
    .toBeLessThanOrEqual(1);
});

test('the cloth is chosen, and what it takes judges the grain; undo names it', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Panels');
  const usage = page.getByRole('region', { name: 'Grain' }).getByRole('row', { name: /Used of its limits/ });
  const used = async () => Number(/(\d+) %/.exec((await usage.textContent()) ?? '')?.[1]);
  const plain = await used();
  const cloth = page.getByRole('combobox', { name: 'Cloth', exact: true });
  await expect(cloth).toHaveValue('plainCotton');
  await cloth.selectOption({ value: 'fusedCotton' });
  await waitForFullForm(page);
  // Every limit of the fused cloth is between 1/3 and 4/5 of the plain one's (the cloths' own table), so it is used more.
  await expect.poll(async () => (await used()) / plain).toBeGreaterThan(1.2);
  expect((await used()) / plain).toBeLessThan(3.1);
  const undo = page.getByRole('button', { name: /^Undo/ });
  await expect(undo).toHaveAccessibleName('Undo: Set cloth');
  await undo.click();
  await expect(cloth).toHaveValue('plainCotton');
});
