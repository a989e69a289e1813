/**
 * npm run bench:page: how soon the built page is there, in Chromium. Told are, in ms: from asking for the page, with nothing in
 * the cache, to the first body and to its full form; from opening Body and Seams to the last of their pictures; from a key
 * struck in a tape to the body that reads it; and every stretch over 50 ms in which the page could not answer (Long Tasks
 * API), by what was under way. Needs `npm run build` before.
 */
import { loadavg } from 'node:os';
import { chromium, type Page } from '@playwright/test';
import { preview } from 'vite';
import { chromiumFlags, findChromium } from '../find-chromium.ts';

const KEYS = 20;
const PATIENCE_MS = 300_000;
const QUIET_MS = 20_000;

const server = await preview({ preview: { host: '127.0.0.1', port: 4790 }, logLevel: 'error' });
const browser = await chromium.launch({ executablePath: await findChromium(), args: chromiumFlags });
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  page.setDefaultTimeout(PATIENCE_MS);
  // What tsx puts round functions, for those sent to the page.
  await page.addInitScript('globalThis.__name = (made) => made');
  await page.addInitScript(noteLongTasks);
  console.log(`load of this computer before: ${loadavg()[0].toFixed(1)}`);
  await timeOpening(page);
  await timePictures(page, 'Body', '.shape-picture', '.outline-edge');
  await timePictures(page, 'Seams', '.layout-picture svg', '.outline-thread');
  await timeTyping(page);
} finally {
  await browser.close();
  await server.close();
}

function noteLongTasks(): void {
  const tasks: number[] = [];
  Object.assign(window, { tasks });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) tasks.push(Math.round(duration));
  }).observe({ type: 'longtask', buffered: true });
}

async function timeOpening(page: Page): Promise<void> {
  await page.goto(`${server.resolvedUrls?.local[0]}`);
  const sinceAsked = async (isThere: () => boolean) =>
    (await page.waitForFunction(isThere, undefined, { polling: 'raf' })).evaluate(() => performance.now());
  const first = await sinceAsked(() =>
    /every tape met/.test(document.querySelector('nav')?.textContent ?? ''),
  );
  tell('first body', first);
  const whole = await sinceAsked(() => {
    const line = document.querySelector<HTMLElement>('p.status-work');
    return line?.dataset.standing === 'unfilled' || line?.dataset.standing === 'upToDate';
  });
  tell('full form', whole);
  await tellLongTasks(page, 'opening');
}

/** From opening a stage to the last of its pictures, and how many of them came after it said that all is there. */
async function timePictures(page: Page, stage: string, picture: string, drawn: string): Promise<void> {
  await page
    .getByRole('navigation')
    .getByRole('button', { name: new RegExp(`^${stage}`) })
    .click();
  const found = await page.evaluate(watchPictures, { picture, drawn, quietMs: QUIET_MS });
  tell(`${found.count} pictures of ${stage}`, found.lastMs);
  console.log(`  of them after it said that all is there: ${found.late}`);
  await tellLongTasks(page, stage);
}

interface Watched {
  readonly picture: string;
  readonly drawn: string;
  /** When no more has come for so long, and it says that all is there, that was the last. */
  readonly quietMs: number;
}

function watchPictures({ picture, drawn, quietMs }: Watched) {
  const began = performance.now();
  return new Promise<{ count: number; late: number; lastMs: number }>((done) => {
    let [count, lastAt, countWhenReady] = [0, began, -1];
    const look = () => {
      const now = performance.now();
      const there = [...document.querySelectorAll(picture)].filter((one) => one.querySelector(drawn)).length;
      if (there > count) [count, lastAt] = [there, now];
      const standing = document.querySelector<HTMLElement>('p.status-work')?.dataset.standing;
      const saysReady = standing === 'unfilled' || standing === 'upToDate';
      if (saysReady && countWhenReady < 0) countWhenReady = count;
      if (saysReady && now - lastAt > quietMs)
        done({ count, late: count - countWhenReady, lastMs: lastAt - began });
      else requestAnimationFrame(look);
    };
    look();
  });
}

async function timeTyping(page: Page): Promise<void> {
  await page.getByRole('navigation').getByRole('button', { name: /^Tape/ }).click();
  const field = page.getByRole('textbox', { name: 'Waist girth', exact: true });
  const times: number[] = [];
  for (let i = 0; i < KEYS; i++) {
    const text = `${(74 + (i % 10) / 10 + (i % 2)).toFixed(1)}`;
    await field.fill(text.slice(0, -1));
    await page.waitForTimeout(150);
    times.push(await page.evaluate(readBack, text));
  }
  const sorted = times.toSorted((a, b) => a - b);
  tell('a key to the body that reads it, median', sorted[sorted.length >> 1]);
  tell('a key to the body that reads it, 95 of 100', sorted[Math.floor(0.95 * (sorted.length - 1))]);
  await tellLongTasks(page, 'typing');
}

/** Sets the field as a key does, and waits for the row to say what the body reads. */
function readBack(text: string): Promise<number> {
  const field = document.activeElement as HTMLInputElement;
  const row = field.closest('li');
  const began = performance.now();
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(field, text);
  field.dispatchEvent(new Event('input', { bubbles: true }));
  return new Promise((done) => {
    const look = () => {
      if (row?.textContent?.includes(`body reads ${text}`)) done(performance.now() - began);
      else requestAnimationFrame(look);
    };
    look();
  });
}

async function tellLongTasks(page: Page, what: string): Promise<void> {
  const tasks = await page.evaluate(() => (window as unknown as { tasks: number[] }).tasks.splice(0));
  console.log(
    `  over 50 ms while ${what}: ${tasks.length > 0 ? tasks.sort((a, b) => b - a).join(', ') : 'none'}`,
  );
}

function tell(what: string, ms: number): void {
  console.log(`${what}: ${ms.toFixed(0)} ms`);
}
