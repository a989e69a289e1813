import { execFileSync } from 'node:child_process';
import { copyFileSync, cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { drawNothing } from './draw-nothing.ts';
import { walkMainPath } from './main-path.ts';
import { goTo, waitForFullForm } from './open-app.ts';
import { serveFolder } from './serve-folder.ts';

const ONE_FILE = 'dist/loftseam.html';

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const notices = (page: Page) => page.locator('.notice');

/** The file alone in a folder, as it is handed on; names of folders hold anything. */
function putAlone(folder: string): string {
  mkdirSync(folder, { recursive: true });
  const file = path.join(folder, 'loftseam.html');
  copyFileSync(ONE_FILE, file);
  return pathToFileURL(file).href;
}

/** Everything a page says and asks for, but the page itself and what it makes of its own bytes. */
function watchEverything(page: Page, url: string): string[] {
  const noticed: string[] = [];
  page.on('console', (message) => noticed.push(`${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => noticed.push(String(error)));
  page.on('request', (request) => {
    if (request.url() !== url && !/^(blob|data):/.test(request.url())) noticed.push(`asked ${request.url()}`);
  });
  return noticed;
}

async function openOffline(context: BrowserContext, url: string) {
  await context.setOffline(true);
  const page = await context.newPage();
  const noticed = watchEverything(page, url);
  await page.goto(url);
  return { page, noticed };
}

test('from disk and without a network: five measures, the body, a pattern on A4; kept for the next time', async ({
  playwright,
  launchOptions,
}, info) => {
  test.setTimeout(600_000);
  const url = putAlone(info.outputPath('Schnitte & 100 % Nähen #1'));
  // The browser itself is closed in between, as it is overnight.
  const openBrowser = () =>
    playwright.chromium.launchPersistentContext(info.outputPath('browser'), {
      ...launchOptions,
      viewport: { width: 1280, height: 800 },
    });
  const evening = await openBrowser();
  const { page, noticed } = await openOffline(evening, url);
  await test.step('five measures make a body, and a pattern is printed, in few steps', async () => {
    const { download, interactions } = await walkMainPath(page, 'Odile');
    expect(interactions).toBeLessThanOrEqual(25);
    expect(download.suggestedFilename()).toBe('odile-print-a4.pdf');
    const file = await download.path();
    const ask = (tool: string, ...args: string[]) => execFileSync(tool, args, { encoding: 'utf8' });
    // Read by poppler: A4 is 210 × 297 mm (ISO 216), 595.28 × 841.89 points.
    const about = ask('pdfinfo', file);
    expect(about).toMatch(/Page size:\s+595\.\d+ x 841\.\d+ pts/);
    expect(Number(/Pages:\s+(\d+)/.exec(about)?.[1])).toBeGreaterThan(8);
    expect(ask('pdftotext', file, '-')).toContain('Odile');
    expect(ask('pdffonts', file)).toMatch(/DejaVu/);
    await goTo(page, 'Tape');
    const row = page.getByRole('listitem').filter({ has: field(page, 'Waist girth') });
    await expect(row).toContainText('met, body reads 78.5 cm');
    await expect(page.locator('.body-picture canvas')).toBeVisible();
  });
  await test.step('whose work is in it can be read', async () => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Third-party notices' }).click(),
    ]);
    expect(readFileSync(await download.path(), 'utf8')).toBe(
      readFileSync('dist/THIRD-PARTY-NOTICES.txt', 'utf8'),
    );
  });
  await evening.close();
  const morning = await openBrowser();
  const again = await openOffline(morning, url);
  await expect(field(again.page, 'Waist girth')).toHaveValue('78.5');
  await expect(again.page.getByLabel('Name of this project')).toHaveValue('Odile');
  await again.page.getByRole('button', { name: 'Bodies and earlier states' }).click();
  await expect(again.page.getByRole('region', { name: 'Bodies in this browser' })).toContainText('Odile');
  await expect(notices(again.page)).toHaveCount(0);
  await test.step('the same on a phone, in as few', async () => {
    await again.page.keyboard.press('Escape');
    await again.page.setViewportSize({ width: 390, height: 844 });
    const { download, interactions } = await walkMainPath(again.page, 'Odile again');
    expect(interactions).toBeLessThanOrEqual(25);
    expect(download.suggestedFilename()).toBe('odile-again-print-a4.pdf');
  });
  await morning.close();
  expect([...noticed, ...again.noticed]).toEqual([]);
});

test('where a browser keeps nothing for pages from disk, that is told, and saving to a file works', async ({
  context,
}, info) => {
  await drawNothing({ context });
  await context.addInitScript(() => {
    for (const name of ['localStorage', 'sessionStorage', 'indexedDB'])
      Object.defineProperty(window, name, {
        get() {
          throw new DOMException('not for files', 'SecurityError');
        },
      });
  });
  const { page, noticed } = await openOffline(context, putAlone(info.outputPath('alone')));
  await expect(notices(page).filter({ hasText: 'refuses to keep the project' })).toContainText(
    'Use Save often',
  );
  await expect(notices(page).filter({ hasText: 'Save each body to a file' })).toBeVisible();
  await expect(page.getByText('Not kept in this browser yet.')).toBeVisible();
  await field(page, 'Waist girth').fill('80');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  const saved = JSON.parse(readFileSync(await download.path(), 'utf8'));
  expect(saved.body.measures.waistGirth).toBe(800);
  expect(noticed).toEqual([]);
});

test('the file lets nothing run but itself, and asks nobody', async ({ context }, info) => {
  await drawNothing({ context });
  const url = putAlone(info.outputPath('alone'));
  writeFileSync(info.outputPath('alone', 'beside.js'), 'document.title = "ran";');
  const { page } = await openOffline(context, url);
  await expect(field(page, 'Waist girth')).not.toHaveValue('');
  const tried = await page.evaluate(async () => {
    const refused: string[] = [];
    document.addEventListener('securitypolicyviolation', (event) => refused.push(event.effectiveDirective));
    const put = (tag: string, parts: object) =>
      document.body.append(Object.assign(document.createElement(tag), parts));
    put('script', { textContent: 'document.title = "ran"' });
    put('script', { src: 'beside.js' });
    put('img', { src: 'https://example.org/a.png' });
    put('iframe', { src: 'https://example.org/' });
    await fetch('https://example.org/').catch(() => {});
    // What a test sends may eval, what runs in the page later may not.
    setTimeout(() => {
      // biome-ignore lint/security/noGlobalEval: it is to be refused
      globalThis.eval('document.title = "ran"');
    });
    await new Promise((done) => setTimeout(done, 500));
    return { refused: refused.sort(), title: document.title };
  });
  // Names of directives as in Content Security Policy Level 3.
  expect(tried.refused).toEqual(
    ['connect-src', 'frame-src', 'img-src', 'script-src', 'script-src-elem', 'script-src-elem'].sort(),
  );
  expect(tried.title).toBe('Loftseam');
});

test('the site lies in any folder of a plain host, hands out the one file, and tells of a newer version', async ({
  page,
  context,
}, info) => {
  await drawNothing({ context });
  const folder = info.outputPath('site');
  cpSync('dist', folder, { recursive: true });
  const host = await serveFolder(folder, '/some/where/loftseam/');
  const noticed = watchEverything(page, '');
  await page.goto(host.url);
  await waitForFullForm(page);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await expect(notices(page).filter({ hasText: 'newer version' })).toHaveCount(0);
  await test.step('the one file is handed out', async () => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'Program as one file' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('loftseam.html');
    expect(readFileSync(await download.path()).equals(readFileSync(ONE_FILE))).toBe(true);
  });
  await test.step('a newer version is told; the page opened before goes on until it is loaded again', async () => {
    const change = (name: string, from: string | RegExp, to: string) => {
      const file = path.join(folder, name);
      const text = readFileSync(file, 'utf8');
      expect(text).toMatch(from);
      writeFileSync(file, text.replace(from, to));
    };
    change('index.html', '<title>Loftseam', '<title>Newer');
    change('offline-worker.js', /STATE = '\w+'/, "STATE = 'newer'");
    // Parts of a newer version are called otherwise.
    for (const name of readdirSync(path.join(folder, 'assets')).filter((name) => /^german/.test(name))) {
      rmSync(path.join(folder, 'assets', name));
      change('offline-worker.js', `"assets/${name}",`, '');
    }
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    const told = notices(page).filter({ hasText: 'There is a newer version' });
    await expect(told).toBeVisible();
    await page.getByRole('combobox', { name: 'Language' }).selectOption('Deutsch');
    await expect(page.getByRole('heading', { level: 2, name: 'Maße' })).toBeVisible();
    await page.getByRole('combobox', { name: 'Sprache' }).selectOption('English');
    await expect(page).toHaveTitle('Loftseam');
    await context.setOffline(true);
    await told.getByRole('button', { name: 'Load the page again' }).click();
    await expect(page).toHaveTitle('Newer');
    await expect(field(page, 'Waist girth')).toHaveValue('76.5');
  });
  host.close();
  expect(host.missed).toEqual([]);
  expect(noticed.filter((line) => !line.startsWith(`asked ${host.url}`))).toEqual([]);
});
