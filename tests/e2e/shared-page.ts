import { readFile } from 'node:fs/promises';
import { type Browser, test as base, expect, type Page, type WorkerInfo } from '@playwright/test';
import { drawNothing } from './draw-nothing.ts';
import { leaveUnfilled } from './leave-unfilled.ts';
import { goTo, openPage, waitForFullForm, watchComplaints } from './open-app.ts';

export { expect, type Page };

interface OfTests {
  /** The page all tests share, on the average demo, unfilled, with nothing to complain of at the end. */
  readonly sharedPage: Page;
  /** The same on a page that draws nothing in space. */
  readonly undrawnPage: Page;
}

interface OfWorkers {
  readonly drawnRoom: Page;
  readonly undrawnRoom: Page;
}

/**
 * All browser tests are made by this one, or Playwright would end the shared pages between two files. A page that is warm, with
 * its programs compiled and its code run in, makes a form in a few seconds of processor time; a fresh one takes 20 to its first.
 * `page` is still a fresh one: for what is about beginning, about storage, or told before the program runs. After a failure the
 * next test has new pages.
 */
export const test = base.extend<OfTests, OfWorkers>({
  drawnRoom: [
    async ({ browser }, use, { project }) => await withRoom(browser, project, [leaveUnfilled], use),
    { scope: 'worker' },
  ],
  undrawnRoom: [
    async ({ browser }, use, { project }) =>
      await withRoom(browser, project, [leaveUnfilled, drawNothing], use),
    { scope: 'worker' },
  ],
  sharedPage: async ({ drawnRoom }, use, { testId, project }) => {
    await withNothingToComplain(drawnRoom, async () => {
      await beginAnew(drawnRoom, project, testId);
      await drawnRoom.getByRole('button', { name: 'Three-quarter', exact: true }).click();
      await use(drawnRoom);
    });
  },
  undrawnPage: async ({ undrawnRoom }, use, { testId, project }) => {
    await withNothingToComplain(undrawnRoom, async () => {
      await beginAnew(undrawnRoom, project, testId);
      await use(undrawnRoom);
    });
  },
});

type Project = WorkerInfo['project'];

async function withRoom(
  browser: Browser,
  { use: { baseURL = '', viewport = null } }: Project,
  preparations: readonly (typeof drawNothing)[],
  use: (page: Page) => Promise<void>,
): Promise<void> {
  // A worker that serves the program offline would give out what the preparations change.
  const context = await browser.newContext({ baseURL, viewport, serviceWorkers: 'block' });
  for (const prepare of preparations) await prepare({ context });
  const page = await context.newPage();
  await openPage(page);
  await use(page);
  await context.close();
}

async function withNothingToComplain(page: Page, run: () => Promise<void>): Promise<void> {
  const complaints = watchComplaints(page);
  await run();
  expect(complaints).toEqual([]);
}

/** What a test may have left behind is taken off: its body, its stage, what the page was made to look like. */
async function beginAnew(page: Page, { use: { viewport } }: Project, name: string): Promise<void> {
  await page.emulateMedia({ media: null, colorScheme: 'light', reducedMotion: null });
  if (viewport) await page.setViewportSize(viewport);
  await openAverage(page, `${name}.json`, { recut: false });
  await goTo(page, 'Tape');
  await waitForFullForm(page);
}

/** Opens the average demo as a file of that name, which the next undo step is then called by. */
export async function openAverage(page: Page, fileName: string, inside: object): Promise<void> {
  const project = JSON.parse(await readFile('shared/demos/average.loftseam.json', 'utf8'));
  const text = JSON.stringify({ ...project, inside: { ...project.inside, ...inside } });
  await page
    .getByLabel('Open a project file')
    .setInputFiles({ name: fileName, mimeType: 'application/json', buffer: Buffer.from(text) });
  await expect(page.getByRole('button', { name: `Undo: Open ${fileName}` })).toBeEnabled();
}
