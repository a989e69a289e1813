import { expect, type Page, test } from './shared-page.ts';

/** A small phone, usual ones upright and on the side, tablets, screens of a lap and of a desk: CSS pixels. */
const SCREENS = [
  ...[320, 360, 390, 600, 768, 834].map((width) => ({ width, height: 844 })),
  { width: 844, height: 390 },
  ...[919, 1024, 1280, 1920, 2560].map((width) => ({ width, height: 800 })),
];

/** Everything of the bars that can be pressed or is read, and what is wrong with where it stands. */
async function findMisplaced(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    const find = (selector: string) =>
      [...document.querySelectorAll<HTMLElement>(selector)].filter((element) => element.checkVisibility());
    const nameOf = (element: Element) =>
      (element.getAttribute('aria-label') ?? element.textContent ?? '').trim() || element.tagName;
    const controls = find(
      '.top-bar :is(button, select, .segments label, .project-name input), .stage-bar button',
    );
    if (controls.length < 20) faults.push(`${controls.length} controls only`);
    const boxes = controls.map((element) => ({
      name: nameOf(element),
      box: element.getBoundingClientRect(),
    }));
    for (const { name, box } of boxes) {
      const isInside =
        box.left >= 0 && box.top >= 0 && box.right <= innerWidth + 0.5 && box.bottom <= innerHeight + 0.5;
      if (!isInside) faults.push(`${name} lies outside the window`);
      // The least a target may be, WCAG 2.2, 2.5.8.
      if (box.width < 24 || box.height < 24) faults.push(`${name} is ${box.width} × ${box.height}`);
    }
    boxes.forEach(({ name, box }, index) => {
      for (const other of boxes.slice(index + 1)) {
        const across = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
        const down = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
        // Choices side by side share an edge.
        if (across > 1.5 && down > 1.5) faults.push(`${name} overlaps ${other.name}`);
      }
    });
    // Words stay inside what they name, and each tool and stage has one in sight.
    for (const word of find('.tool > span, .stage-name, .to-parts > span')) {
      const box = word.getBoundingClientRect();
      const around = word.parentElement!.getBoundingClientRect();
      const sticksOut = Math.max(around.left - box.left, box.right - around.right);
      if (sticksOut > 2) faults.push(`${word.textContent} sticks out by ${sticksOut}`);
      if (box.width < 8) faults.push(`${word.textContent} is not to be seen`);
    }
    if (document.documentElement.scrollWidth > innerWidth) faults.push('the page is wider than the window');
    return faults;
  });
}

test('every control of the bars is in sight and clear of the others, from a small phone to a wide screen', async ({
  undrawnPage: page,
}) => {
  const speak = (language: string) => page.locator('.language-choice').selectOption(language);
  for (const language of ['de', 'en']) {
    await speak(language);
    await expect(page.locator('html')).toHaveAttribute('lang', new RegExp(`^${language}`));
    for (const screen of SCREENS) {
      await page.setViewportSize(screen);
      expect(await findMisplaced(page), `${language} ${screen.width} × ${screen.height}`).toEqual([]);
    }
  }
});

test('on a phone the five first fields stand in one view, names stand in dialogs, and a list leads to the parts of a page', async ({
  undrawnPage: page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.getByRole('button', { name: 'New body' }).click();
  const fields = page.locator('.first-five input');
  await expect(fields).toHaveCount(5);
  await expect(fields.first()).toBeFocused();
  const bar = await page.getByRole('navigation', { name: 'Stages' }).boundingBox();
  for (const field of await fields.all()) {
    const box = await field.boundingBox();
    expect(box!.y + box!.height).toBeLessThanOrEqual(bar!.y);
  }
  await page.getByRole('button', { name: 'Demo bodies' }).click();
  const card = page.getByRole('dialog').getByText('Maren Ostley, average figure');
  expect((await card.boundingBox())!.width).toBeGreaterThan(100);
  await page.keyboard.press('Escape');

  await page.getByRole('button', { name: 'Go to a part of this page' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Widths and depths' }).click();
  const group = page.getByRole('group').filter({ hasText: 'A girth cannot tell wide from deep' });
  await expect(group).toHaveAttribute('open', '');
  const summary = await group.locator('summary').first().boundingBox();
  const picture = await page.locator('.body-frame').boundingBox();
  // Not under the picture that stays in sight.
  expect(summary!.y).toBeGreaterThanOrEqual(picture!.y + picture!.height - 1);
  expect(summary!.y + summary!.height).toBeLessThan(bar!.y);
});
