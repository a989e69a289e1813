import { execFileSync } from 'node:child_process';
import { openPage, waitForFullForm } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

/** Not one click in this file: the whole job with nothing but keys. */

interface Focused {
  readonly name: string;
  readonly tag: string;
}

/** What has the focus, by its accessible name as far as a page can tell it. */
async function focused(page: Page): Promise<Focused> {
  return page.evaluate(() => {
    const element = document.activeElement as HTMLElement | null;
    const labels = (element as HTMLInputElement | null)?.labels;
    const name =
      element?.getAttribute('aria-label') ?? labels?.[0]?.textContent ?? element?.textContent ?? '';
    return { name: name.replace(/\s+/g, ' ').trim(), tag: element?.tagName ?? '' };
  });
}

/** Tabs on until something of that name has the focus; fails when the page was gone through without. */
async function tabTo(page: Page, name: RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  const passed: string[] = [];
  for (let i = 0; i < 250; i++) {
    await page.keyboard.press(key);
    const now = await focused(page);
    if (name.test(now.name)) return;
    passed.push(now.name.slice(0, 30));
  }
  throw new Error(`${name} was not reached; passed ${passed.slice(-40).join(' | ')}`);
}

test('from an empty page to the printed pattern by keyboard alone', async ({ page }) => {
  test.setTimeout(300_000);
  const complaints = await openPage(page);

  // A dialog gives the focus back to where it came from.
  await tabTo(page, /^Demo bodies$/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Demo bodies' })).toBeFocused();

  // A new body: its first field has the focus, Enter goes on to the next, and nothing is said to be wrong.
  await tabTo(page, /^New body$/, 'Shift+Tab');
  await page.keyboard.press('Enter');
  const grown = page.locator('.waiting');
  await expect(grown).toContainText('A body of usual measures');
  await expect(page.getByRole('navigation', { name: 'Stages' })).toContainText('0 measured');
  for (const [place, [field, typed]] of [
    ['Bust or chest girth', '96'],
    ['Waist girth', '78,5'],
    ['Hip girth', '40 1/2 in'],
    ['Back waist length', '41'],
    ['Neck base girth', '38'],
  ].entries()) {
    const now = page.getByRole('textbox', { name: field!, exact: true });
    await expect(now).toBeFocused();
    // What is not known yet is estimated, in grey, with how far it may be off.
    await expect(now).toHaveAttribute('placeholder', /^\d+\.\d ± \d+\.\d$/);
    await expect(page.locator('.notice, .doubt, [role=alert]')).toHaveCount(0);
    await page.keyboard.type(typed!);
    await page.keyboard.press('Enter');
    if (place === 2) await expect(grown).toContainText('Grown from 3 of the first 5 measures');
  }
  // Its name.
  await tabTo(page, /^Name of this project$/, 'Shift+Tab');
  await page.keyboard.type('Odile');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('textbox', { name: 'Waist girth', exact: true })).toHaveValue('78.5');
  // 40 1/2 in are 102.87 cm.
  await expect(page.getByRole('textbox', { name: 'Hip girth', exact: true })).toHaveValue('102.9');
  await waitForFullForm(page);

  // The body in space: turned, and left again.
  const picture = page.getByRole('group', { name: /^Picture of the body/ });
  await tabTo(page, /^Picture of the body/);
  const before = await picture.screenshot();
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('+');
  await expect.poll(async () => Buffer.compare(await picture.screenshot(), before)).not.toBe(0);
  await page.keyboard.press('Tab');
  await expect(picture).not.toBeFocused();

  // A seam moved by a point.
  await page.keyboard.press('Alt+3');
  await expect(page.getByRole('heading', { level: 2, name: 'Seams' })).toBeVisible();
  await expect(page.getByRole('region', { name: 'Pull the lines' })).toBeVisible();
  await tabTo(page, /^princess front, point 3$/);
  await page.keyboard.press('Shift+ArrowLeft');
  await expect(page.getByRole('button', { name: 'Undo: Move princess front' })).toBeEnabled();
  await waitForFullForm(page);

  // Pieces brought nearer, a grain turned, and on to paper.
  await page.keyboard.press('Alt+4');
  await expect(page.getByRole('heading', { level: 2, name: 'Panels' })).toBeVisible();
  const flat = page.locator('.flat-svg');
  await tabTo(page, /^Pieces laid flat/);
  const viewBox = await flat.getAttribute('viewBox');
  await page.keyboard.press('+');
  await expect(flat).not.toHaveAttribute('viewBox', viewBox ?? '');
  await tabTo(page, /degrees|Turned to the left/i);
  await page.keyboard.type('10');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /^Undo: Turn the grain/ })).toBeEnabled();
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Undo: Move princess front' })).toBeEnabled();
  await page.keyboard.press('Alt+6');
  await expect(page.getByRole('heading', { level: 2, name: 'Cutting' })).toBeVisible();
  await waitForFullForm(page);
  await tabTo(page, /^Download pattern$/);
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 120_000 }),
    page.keyboard.press('Enter'),
  ]);
  expect(download.suggestedFilename()).toBe('odile-print-a4.pdf');
  // Read by poppler: A4 is 210 × 297 mm (ISO 216), 595.28 × 841.89 points.
  const info = execFileSync('pdfinfo', [await download.path()], { encoding: 'utf8' });
  expect(info).toMatch(/Page size:\s+595\.\d+ x 841\.\d+ pts/);
  expect(Number(/Pages:\s+(\d+)/.exec(info)?.[1])).toBeGreaterThan(8);
  expect(complaints).toEqual([]);
});

test('Tab goes through every stage and comes round again, to everything that can be used', async ({
  sharedPage: page,
}) => {
  test.setTimeout(240_000);
  for (const [digit, name] of ['Tape', 'Body', 'Seams', 'Panels', 'Inside', 'Cutting'].entries()) {
    await page.keyboard.press(`Alt+${digit + 1}`);
    await expect(page.getByRole('heading', { level: 2, name })).toBeVisible();
    await expect(page.locator('.work button, .work input, .work select').first()).toBeVisible();
    // What stops long work is there only as long as that.
    await expect(page.locator('.status-now[data-working]')).toHaveCount(0);
    // Radio buttons of one group are one stop; arrow keys go on inside.
    const stops = await page.evaluate(() => {
      const all = [
        ...document.querySelectorAll<HTMLElement>('button, input, select, a[href], summary, [tabindex="0"]'),
      ];
      const usable = all.filter(
        (element) =>
          element.tabIndex >= 0 &&
          !(element as HTMLButtonElement).disabled &&
          element.closest('[inert], [hidden]') === null &&
          element.checkVisibility({ visibilityProperty: true }),
      );
      const radios = new Map<string, HTMLElement>();
      return usable.filter((element) => {
        if (!(element instanceof HTMLInputElement) || element.type !== 'radio') return true;
        if (radios.has(element.name)) return false;
        radios.set(element.name, element);
        return true;
      }).length;
    });
    const reached = await page.evaluate(() => {
      Reflect.set(window, 'reached', new Set());
      document.addEventListener('focusin', (event) => Reflect.get(window, 'reached').add(event.target));
      return 0;
    });
    expect(reached).toBe(0);
    for (let i = 0; i < stops + 6; i++) await page.keyboard.press('Tab');
    const count = await page.evaluate(() => Reflect.get(window, 'reached').size);
    expect(count, `${name}: ${count} reached of ${stops}`).toBeGreaterThanOrEqual(stops);
  }
});
