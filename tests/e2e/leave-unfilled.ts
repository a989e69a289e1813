import { readFile } from 'node:fs/promises';
import type { BrowserContext } from '@playwright/test';

/**
 * Demos that come with the page are not cut for their filling, as if the maker had chosen so: filling takes a dozen seconds of
 * processor time behind a page, as soon as it is left alone for a while. For tests that look at nothing filled.
 */
export async function leaveUnfilled({ context }: { readonly context: BrowserContext }): Promise<void> {
  await context.route(/\/assets\/[\w-]+\.loftseam-[\w-]+\.js$/, async (route) => {
    const [, id] = /\/([\w-]+)\.loftseam-/.exec(route.request().url()) ?? [];
    const project = JSON.parse(await readFile(`shared/demos/${id}.loftseam.json`, 'utf8'));
    const text = JSON.stringify({ ...project, inside: { ...project.inside, recut: false } }, null, 2);
    await route.fulfill({
      contentType: 'text/javascript',
      body: `export default ${JSON.stringify(`${text}\n`)};`,
    });
  });
}
