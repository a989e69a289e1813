import type { Download, Page } from '@playwright/test';

/** Common practice, no source: what a maker does to a page, a click, a tap or a field filled in, each counted as one. */
export interface CountedPath {
  readonly download: Download;
  readonly interactions: number;
}

/**
 * From any page to a pattern on paper as a maker goes who has five numbers: every field is typed where the focus already is, and
 * nothing but what the page itself points to is touched.
 */
export async function walkMainPath(page: Page, name: string): Promise<CountedPath> {
  let interactions = 0;
  const act = async <T>(doing: Promise<T>): Promise<T> => {
    interactions++;
    return await doing;
  };
  await act(page.getByRole('button', { name: 'New body' }).click());
  for (const [field, typed] of [
    ['Bust or chest girth', '96'],
    ['Waist girth', '78.5'],
    ['Hip girth', '103'],
    ['Back waist length', '41'],
    ['Neck base girth', '38'],
  ] as const) {
    await focusIn(page, field);
    await act(page.keyboard.type(typed));
    await act(page.keyboard.press('Enter'));
  }
  await act(page.getByLabel('Name of this project').fill(name));
  await act(
    page
      .getByRole('navigation', { name: 'Stages' })
      .getByRole('button', { name: /^Cutting/ })
      .click(),
  );
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 180_000 }),
    act(page.getByRole('button', { name: 'Download pattern' }).click({ timeout: 60_000 })),
  ]);
  return { download, interactions };
}

async function focusIn(page: Page, field: string): Promise<void> {
  await page.waitForFunction((name) => document.activeElement?.getAttribute('aria-label') === name, field);
}
