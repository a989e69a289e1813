import { goTo, openApp, STAGE_NAMES, waitForFullForm } from './open-app.ts';
import { expect, test } from './shared-page.ts';

declare global {
  interface Window {
    /** Programs of the graphics processor linked, and triangles drawn, since the page began. */
    graphics: { programs: number; draws: number };
  }
}

test('every program of the graphics processor is made before the first picture', async ({ page }) => {
  await page.addInitScript(() => {
    window.graphics = { programs: 0, draws: 0 };
    const context = WebGL2RenderingContext.prototype;
    const { linkProgram, drawElements } = context;
    context.linkProgram = function (program) {
      window.graphics.programs += 1;
      linkProgram.call(this, program);
    };
    context.drawElements = function (...call) {
      window.graphics.draws += 1;
      drawElements.apply(this, call);
    };
  });
  await openApp(page);
  const before = await page.evaluate(() => ({ ...window.graphics }));
  // The kinds of cloth, lines, beads and tags: with fewer this would see nothing.
  expect(before.programs).toBeGreaterThan(10);

  await page.getByRole('textbox', { name: 'Waist girth', exact: true }).fill('80');
  await goTo(page, 'Body');
  const section = page.getByRole('slider', { name: /Height/ });
  for (let i = 0; i < 3; i++) await section.press('ArrowRight');
  for (const layer of await page.locator('.layer-tools').getByRole('checkbox').all()) await layer.check();
  const others = page.getByRole('region', { name: 'Compare with another body' });
  await others.getByLabel('Saved project to compare with').setInputFiles('shared/demos/petite.loftseam.json');
  await expect(others).toContainText('is drawn over this body');
  await waitForFullForm(page);
  for (const stage of STAGE_NAMES) {
    await goTo(page, stage);
    await page.evaluate(
      () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
    );
  }
  // The cloth's own print takes the place of its weave.
  await goTo(page, 'Laying');
  await page.getByRole('combobox', { name: 'Cloth' }).selectOption('checks');
  await expect(page.locator('.lay-print-gaps')).toBeVisible();
  await page.getByRole('checkbox', { name: 'Print' }).uncheck();
  await page.getByRole('checkbox', { name: 'Print' }).check();
  await page.evaluate(
    () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
  );
  const after = await page.evaluate(() => window.graphics);
  expect(after.draws).toBeGreaterThan(before.draws);
  expect(after.programs).toBe(before.programs);
});
