import AxeBuilder from '@axe-core/playwright';
import { makePicture } from './make-picture.ts';
import { goTo, STAGE_NAMES, waitForFilledForm, waitForFullForm } from './open-app.ts';
import { expect, openAverage, type Page, test } from './shared-page.ts';

/** What depends on the colours of the page: of all rules, these are asked again in dark. */
const RULES_OF_COLOUR = ['color-contrast', 'link-in-text-block'];

async function expectNoViolations(page: Page, where: string): Promise<void> {
  expect(await violations(new AxeBuilder({ page }), 10), where).toEqual([]);
}

/** All rules in light, and those about colours once more in dark. */
async function expectNoneInLightAndDark(page: Page, where: string): Promise<void> {
  await page.emulateMedia({ colorScheme: 'light' });
  await expectNoViolations(page, `${where}, light`);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await violations(new AxeBuilder({ page }).withRules(RULES_OF_COLOUR), 0), `${where}, dark`).toEqual(
    [],
  );
}

async function openAllDetails(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
}

/** Rules broken and where; more than `least` rules must have found something to judge. */
async function violations(axe: AxeBuilder, least: number): Promise<string[]> {
  const { violations: broken, passes } = await axe.analyze();
  expect(passes.length).toBeGreaterThan(least);
  return broken.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
}

test.describe('in light and in dark', () => {
  // Colours are judged where they end, not on their way.
  test.beforeEach(({ sharedPage }) => sharedPage.emulateMedia({ reducedMotion: 'reduce' }));

  test('axe finds nothing in any stage', async ({ sharedPage: page }) => {
    test.setTimeout(300_000);
    await openAverage(page, 'filled.json', {});
    for (const stage of STAGE_NAMES) {
      await goTo(page, stage);
      if (stage === 'Inside') await waitForFilledForm(page);
      await openAllDetails(page);
      await expectNoneInLightAndDark(page, stage);
    }
  });

  test('axe finds nothing in readings, the gallery, and what cannot be read', async ({
    sharedPage: page,
  }) => {
    test.setTimeout(300_000);
    await goTo(page, 'Checking');
    await page.getByRole('button', { name: 'Measure the filled form' }).click();
    await page.getByRole('textbox', { name: 'Waist girth', exact: true }).fill('90');
    await expect(page.getByRole('region', { name: 'What to do' }).getByRole('listitem')).toHaveCount(1);
    await expectNoneInLightAndDark(page, 'readings');
    await page.getByRole('button', { name: 'Demo bodies' }).click();
    await expect(page.getByRole('button', { name: /Corvin Hale/ })).toBeVisible();
    await expectNoneInLightAndDark(page, 'gallery');
    await page.keyboard.press('Escape');
    await goTo(page, 'Tape');
    await page.getByRole('textbox', { name: 'Waist girth', exact: true }).fill('9');
    await page.getByRole('textbox', { name: 'Hip girth', exact: true }).focus();
    await expect(page.getByRole('alert')).toBeVisible();
    await expectNoneInLightAndDark(page, 'bad input');
  });

  test('axe finds nothing with the tools of the stages open', async ({ sharedPage: page }) => {
    test.setTimeout(300_000);
    await page.getByLabel('Open a project file').setInputFiles('shared/demos/uneven-shoulders.loftseam.json');
    await expect(page.getByLabel('Name of this project')).toHaveValue(/Isolde/);
    await waitForFullForm(page);
    await goTo(page, 'Body');
    await page.getByRole('slider', { name: /Height/ }).fill('200');
    await page.getByRole('checkbox', { name: /Lay the mirror image/ }).check();
    await page.getByRole('combobox', { name: 'From' }).selectOption('Neck, front');
    await page.getByRole('combobox', { name: 'To', exact: true }).selectOption('Waist, centre back');
    await expect(page.getByText('Over the surface', { exact: true })).toBeVisible();
    await page.getByLabel('Saved project to compare with').setInputFiles('shared/demos/petite.loftseam.json');
    await expect(page.getByRole('img', { name: /coloured by how far/ })).toBeVisible();
    await expectNoneInLightAndDark(page, 'sides, thread, comparing');
    await page
      .getByLabel('Photo from the front')
      .setInputFiles({ name: 'front.png', mimeType: 'image/png', buffer: await makePicture(page) });
    const photo = page.getByRole('group', { name: 'Front' });
    await photo.getByRole('button', { name: 'Set its scale' }).click();
    for (const index of [1, 2])
      await photo.getByRole('button', { name: `Point ${index} on the photo` }).click();
    await expectNoneInLightAndDark(page, 'photo');

    await goTo(page, 'Seams');
    await page.getByRole('button', { name: 'princess front, point 3' }).click();
    const own = page.getByRole('region', { name: 'More seams, or fewer' });
    const places = own.getByRole('combobox', { name: 'Add a point at a named place' });
    for (const place of ['Base, centre front', 'Waist, centre front']) await places.selectOption(place);
    await own.getByRole('button', { name: 'Draw on the body' }).click();
    await own.getByRole('button', { name: 'Sew it in' }).click();
    await expect(own.getByRole('alert')).toBeVisible();
    const advice = page.getByRole('region', { name: 'Ask for advice' });
    await advice.getByRole('button', { name: 'Look for better seams' }).click();
    await expect(advice.getByRole('button', { name: 'Stop' })).toBeVisible();
    await expectNoneInLightAndDark(page, 'drawing a line, advice at work');
    await expect(advice.getByRole('button', { name: 'Look for better seams' })).toBeVisible({
      timeout: 120_000,
    });
    await expectNoneInLightAndDark(page, 'advice');

    await goTo(page, 'Panels');
    await page.getByRole('textbox', { name: /^Degrees/ }).fill('100');
    await page.keyboard.press('Enter');
    const piece = page.getByRole('region', { name: 'A piece of your own' });
    const regionPlaces = piece.getByRole('combobox', { name: 'Add a point at a named place' });
    for (const place of ['Bust point, right', 'Waist, centre front', 'Neck, front'])
      await regionPlaces.selectOption(place);
    await expect(piece.getByRole('img', { name: /laid flat/ })).toBeVisible();
    await expectNoneInLightAndDark(page, 'grain refused, region');
    await piece.getByRole('radio', { name: 'Panels together' }).check();
    await expectNoneInLightAndDark(page, 'panels together');
  });
});

test('on a phone nothing sticks out; light by hand', async ({ sharedPage: page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  for (const stage of STAGE_NAMES) {
    await goTo(page, stage);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width, stage).toBeLessThanOrEqual(390);
  }
  await expectNoViolations(page, 'phone');

  const paper = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const light = await paper();
  await page.getByRole('button', { name: /Change to light/ }).click();
  expect(await paper()).toBe(light);
  await page.getByRole('button', { name: /Change to dark/ }).click();
  expect(await paper()).not.toBe(light);
});
