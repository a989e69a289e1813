import AxeBuilder from '@axe-core/playwright';
import { MEASURES, SHAPE_CATEGORIES } from '../../src/core/body/index.ts';
import { CAUTIONS } from '../../src/core/inside/index.ts';
import { LAYOUTS } from '../../src/core/seams/index.ts';
import { words as english } from '../../src/language/english/app.ts';
import { words as german } from '../../src/language/german/app.ts';
import { inEnglish } from '../in-english.ts';
import { drawNothing } from './draw-nothing.ts';
import { leaveUnfilled } from './leave-unfilled.ts';
import { openApp, openPage, WHOLE, watchComplaints } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

const STAGES = Object.values(german.stages.names);

async function goToGerman(page: Page, stage: string): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Stationen' })
    .getByRole('button', { name: new RegExp(`^${stage}`) })
    .click();
  await expect(page.getByRole('heading', { level: 2, name: stage, exact: true })).toBeVisible();
}

async function waitUntilSettled(page: Page): Promise<void> {
  await expect(page.locator('p.status-work')).toHaveAttribute('data-standing', WHOLE, { timeout: 60_000 });
}

const MARK = '\u0001';

/** Every English text of the app as a pattern; what changes in it may be anything. Texts alike in German are left out. */
function englishTexts(a: unknown, b: unknown): RegExp[] {
  const literal = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  if (typeof a === 'string') {
    return a === b || !/[A-Za-z]{2}/.test(a) ? [] : [new RegExp(`^${literal(a)}$`)];
  }
  if (typeof a === 'function' && typeof b === 'function') {
    const [x, y] = [a, b].map((f) => String(f(...Array.from({ length: f.length }, () => MARK))));
    // One short word, as “and”, also stands in names that makers give.
    if (!x || x === y || (x.match(/[A-Za-z]/g) ?? []).length < 6) return [];
    return [new RegExp(`^${x.split(MARK).map(literal).join('.+')}$`)];
  }
  return Object.keys(a as object).flatMap((key) =>
    englishTexts((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]),
  );
}

const {
  core: _,
  making: { range: _range, ...making },
  ...words
} = english;
const ofCore = [
  ...MEASURES.flatMap(({ name, how }) => [name, how]).map(inEnglish),
  ...SHAPE_CATEGORIES.flatMap(({ name, why, choices }) => [name, why, ...choices.map((one) => one.name)]).map(
    inEnglish,
  ),
  ...LAYOUTS.flatMap(({ name, description }) => [name, description]).map(inEnglish),
  ...CAUTIONS.flatMap(({ title, text }) => [title, text]).map(inEnglish),
];
const ENGLISH = [...englishTexts({ ...words, making }, german)];
const ENGLISH_OF_CORE = new Set(ofCore);

/** All that can be read or is read out on the page, but the names of the languages and what is printed on the pieces. */
async function textsShown(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const skipped = '[lang="en"]:not(html), .piece-text, script, style, noscript';
    const texts: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      if (node instanceof Element) {
        if (node.closest(skipped)) continue;
        for (const name of ['aria-label', 'aria-valuetext', 'title', 'placeholder', 'alt']) {
          texts.push(node.getAttribute(name) ?? '');
        }
        // A sentence may be broken into several text nodes.
        if (node.children.length === 0) texts.push(node.textContent ?? '');
      } else if (!node.parentElement?.closest(skipped)) texts.push(node.textContent ?? '');
    }
    return [...new Set(texts.map((text) => text.replace(/\s+/g, ' ').trim()))].filter((text) => text !== '');
  });
}

async function expectNoEnglish(page: Page, where: string): Promise<void> {
  const shown = await textsShown(page);
  expect(shown.length, where).toBeGreaterThan(30);
  const left = shown.filter(
    (text) => ENGLISH_OF_CORE.has(text) || ENGLISH.some((pattern) => pattern.test(text)),
  );
  expect(left, where).toEqual([]);
}

/** The same look at an English page finds what it looks for. */
async function expectEnglish(page: Page): Promise<void> {
  const shown = await textsShown(page);
  const found = shown.filter((text) => ENGLISH.some((pattern) => pattern.test(text)));
  expect(found.length).toBeGreaterThan(40);
  expect(shown.filter((text) => ENGLISH_OF_CORE.has(text)).length).toBeGreaterThan(5);
}

/** What other words can spoil; the rest of the page is that of accessibility.spec.ts. */
const RULES_OF_WORDS = [
  'aria-command-name',
  'aria-input-field-name',
  'aria-meter-name',
  'aria-progressbar-name',
  'aria-toggle-field-name',
  'button-name',
  'document-title',
  'empty-heading',
  'html-has-lang',
  'html-lang-valid',
  'image-alt',
  'label',
  'label-title-only',
  'landmark-unique',
  'link-name',
  'select-name',
  'summary-name',
  'svg-img-alt',
  'target-size',
  'valid-lang',
];

async function expectAllNamed(page: Page, where: string): Promise<void> {
  const { violations, passes } = await new AxeBuilder({ page }).withRules(RULES_OF_WORDS).analyze();
  expect(passes.length).toBeGreaterThan(5);
  const found = violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
  );
  expect(found, where).toEqual([]);
}

test('German is chosen, shown in every stage, accessible, and kept', async ({ page, context }) => {
  await leaveUnfilled({ context });
  test.setTimeout(240_000);
  await openApp(page);
  expect(await page.locator('html').getAttribute('lang')).toBe('en-US');
  await expectEnglish(page);
  await page.getByRole('combobox', { name: 'Language' }).selectOption('Deutsch');
  await expect(page.getByRole('heading', { level: 2, name: 'Maße' })).toBeVisible();
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
  await waitUntilSettled(page);
  for (const stage of STAGES) {
    await goToGerman(page, stage);
    if (stage === 'Prüfen') {
      await page.getByRole('button', { name: 'Gefüllte Form messen' }).click();
      await page.getByRole('textbox', { name: 'Taille, Umfang', exact: true }).fill('90');
      await expect(page.getByRole('region', { name: 'Was zu tun ist' }).getByRole('listitem')).toHaveCount(1);
    }
    await page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
    await expectNoEnglish(page, stage);
    await expectAllNamed(page, stage);
  }
  await page.getByRole('button', { name: 'Beispielkörper' }).click();
  await expect(page.getByRole('button', { name: /Corvin Hale/ })).toBeVisible();
  await expectNoEnglish(page, 'gallery');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Körper und frühere Stände' }).click();
  await page.getByRole('dialog').getByText('Frühere Stände', { exact: true }).click();
  await expectNoEnglish(page, 'earlier states');
  await page.keyboard.press('Escape');

  await page.reload();
  await expect(page.getByRole('combobox', { name: /Sprache/ })).toHaveValue('de');
  await expect(page.getByRole('heading', { level: 2, name: 'Maße' })).toBeVisible();
  await expectNoEnglish(page, 'after loading again');

  await page.getByRole('combobox', { name: /Sprache/ }).selectOption('English');
  await expect(page.getByRole('heading', { level: 2, name: 'Tape' })).toBeVisible();
  await page.reload();
  await expect(page.getByRole('heading', { level: 2, name: 'Tape' })).toBeVisible();
});

test.describe('where German is read', () => {
  test.use({ locale: 'de-DE' });

  test('the page begins in German, with a decimal comma, and reads either mark', async ({
    page,
    context,
  }) => {
    await drawNothing({ context });
    await leaveUnfilled({ context });
    const complaints = watchComplaints(page);
    await page.goto('/');
    await waitUntilSettled(page);
    expect(await page.locator('html').getAttribute('lang')).toBe('de-DE');
    const waist = page.getByRole('textbox', { name: 'Taillenumfang', exact: true });
    await expect(waist).toHaveValue(/^\d+,\d$/);
    for (const typed of ['77,5', '77.5', '775 mm']) {
      await waist.fill('80');
      await waist.fill(typed);
      await waist.blur();
      await expect(waist).toHaveValue('77,5');
    }
    await page.getByRole('radio', { name: 'Zoll' }).check({ force: true });
    // 775 mm are 30.51 in: to the sixteenth, 30 1/2.
    await expect(waist).toHaveValue('30 1/2');
    await page.getByRole('radio', { name: 'Zentimeter' }).check({ force: true });

    await waist.fill('7,5');
    await waist.blur();
    await expect(page.getByRole('alert')).toHaveText(
      /^Taillenumfang ist 7,5 cm; möglich ist alles zwischen \d+,\d cm und \d+,\d cm\./,
    );
    await page.getByRole('button', { name: /^Zurücknehmen: unbrauchbare Eingaben$/ }).click();
    await waitUntilSettled(page);
    await goToGerman(page, 'Körper');
    const table = page.locator('.tape-table');
    await expect(table.getByRole('row', { name: /^Taillenumfang/ })).toContainText('77,5 cm');
    await expect(table).not.toContainText(/\d\.\d/);
    expect(complaints).toEqual([]);
  });

  test('German that cannot be fetched is told, and the page goes on in English', async ({ page }) => {
    await page.route(/\/german-[^/]*\.js$/, (route) => route.abort());
    await page.goto('/');
    await expect(page.getByText(/^Deutsch could not be loaded/)).toBeVisible();
    await page.unroute(/\/german-[^/]*\.js$/);
    await page.reload();
    await expect(page.getByRole('heading', { level: 2, name: 'Maße' })).toBeVisible();
  });
});

test.describe('where neither is read', () => {
  test.use({ locale: 'it-IT' });

  test('the page is in English', async ({ page }) => {
    await openPage(page);
    await expect(page.getByRole('heading', { level: 2, name: 'Tape' })).toBeVisible();
    expect(await page.locator('html').getAttribute('lang')).toBe('en');
  });
});
