import { readFile } from 'node:fs/promises';
import { goTo, WHOLE } from './open-app.ts';
import { expect, test } from './shared-page.ts';

test('Making: steps are ticked and kept, pieces and seams light up on the body, all of it prints', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Making');
  const stage = page.getByRole('navigation', { name: 'Stages' }).getByRole('button', { name: /^Making/ });
  await expect(stage).toContainText(/0 of \d+ done/);
  // The first step is open, and the next when it is done, with what to check in numbers.
  await expect(page.getByText('Outside of the pole, by caliper')).toBeVisible();
  await page.getByRole('checkbox', { name: /^Done: Settle what the form is for/ }).check();
  await expect(page.getByText('Tapes that do not fit together')).toBeVisible();
  await page.getByRole('checkbox', { name: /^Done: Measure twice/ }).check();
  await expect(stage).toContainText(/2 of \d+ done/);
  await expect(page.getByText('Tapes that do not fit together')).toBeHidden();
  await expect(page.getByRole('button', { name: /^Undo: Done: measure twice/ })).toBeEnabled();
  // A tick leaves the form as it is: nothing is computed again.
  await expect(page.locator('p[role="status"]')).toHaveAttribute('data-standing', WHOLE);

  await page.getByText('Sew the front, lying flat').click();
  const seam = page.getByRole('button', { name: /princess front right/ });
  await expect(seam).toContainText('8 notches');
  await seam.focus();
  await expect(seam).toHaveAttribute('data-lit', 'true');

  // Closing comes last, after every other seam of the shell.
  const titles = await page.locator('.step-title').allTextContents();
  const place = (text: string) => titles.findIndex((title) => title.startsWith(text));
  expect(place('Sew tie and webs to the front')).toBeLessThan(place('Sew the shoulders'));
  expect(place('Sew the shoulders')).toBeLessThan(place('Close the centre back'));
  expect(place('Close the centre back')).toBeLessThan(place('Put pole, neck block and neck plate in'));

  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  await expect(page.getByText('Lay them dry into the boards')).toBeVisible();
  await expect(page.getByRole('navigation', { name: 'Stages' })).toBeHidden();
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await page.emulateMedia({ media: 'screen' });

  // The same as a booklet: a PDF with a picture for every step.
  const booklet = page.waitForEvent('download', { timeout: 90_000 });
  await page.getByRole('button', { name: 'Download the booklet, with pictures' }).click();
  const file = await booklet;
  expect(file.suggestedFilename()).toMatch(/print-booklet\.pdf$/);
  expect((await readFile(await file.path())).subarray(0, 5).toString()).toBe('%PDF-');

  // As every part of the project, ticks come back with what the browser keeps; files.spec.ts loads it again.
  const kept = () => page.evaluate(() => JSON.parse(localStorage.getItem('loftseam.project') ?? '{}'));
  await expect.poll(async () => (await kept()).making?.done?.length).toBe(2);
});

test('Checking: readings are judged at once, in either unit, and kept as a log', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Checking');
  await page.getByRole('button', { name: 'Measure the filled form' }).click();
  const field = (name: string) => page.getByRole('textbox', { name, exact: true });
  // Nothing read is no reading: Enter in an empty field is refused by its name, and so is another round.
  await field('Waist girth').press('Enter');
  await expect(
    page.getByRole('alert').filter({ hasText: 'Waist girth: nothing is typed yet' }),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Measure the filled form' }).click();
  await expect(page.getByRole('alert')).toContainText(
    /Nothing is read in this round yet\. Begin with “.+ girth”/,
  );
  await expect(page.getByRole('navigation', { name: 'Stages' })).toContainText('not measured');
  const todo = page.getByRole('region', { name: 'What to do' });

  // Average demo: waist 76.5 cm. Half a centimetre over is fine, a whole one is not.
  await field('Waist girth').fill('77');
  await expect(todo).toContainText('Nothing to mend');
  // The rounds so far stand as lists where the work is narrow: nothing scrolls sideways.
  const place = page.getByRole('region', { name: 'So far, table' });
  await expect(place).toBeVisible();
  const [shown, whole] = await place.evaluate((element) => [element.clientWidth, element.scrollWidth]);
  expect(whole).toBeLessThanOrEqual(shown!);
  const work = await page.locator('#work').evaluate((el) => el.scrollWidth - el.clientWidth);
  expect(work).toBeLessThanOrEqual(0);
  await field('Waist girth').fill('77,7');
  await expect(todo).toContainText('Waist: 1.2 cm too large all round');
  const beside = (level: string) => page.locator(`#reading-${level}`);
  await expect(beside('waist')).toContainText('Do not tighten the seam');
  // 30 1/8 in = 765.2 mm.
  await field('Waist girth').fill('30 1/8 in');
  await expect(todo).toContainText('Nothing to mend');
  await field('Waist width').fill('26.8');
  await field('Waist depth').fill('20.9');
  await expect(todo).toContainText('with the right girth');
  await expect(beside('waist')).toContainText(/Shorten at this level: .*right web by/);

  // What cannot be true together is named before anything else: 20 cm round nothing that is 27 wide.
  await field('Hip girth').fill('60');
  await field('Hip width').fill('35.7');
  await field('Hip depth').fill('24.8');
  await expect(todo.getByRole('listitem').first()).toContainText(
    'Hip: these readings cannot be true together',
  );
  await field('Hip girth').fill('');
  await field('Hip girth').press('Tab');
  await expect(todo).not.toContainText('cannot be true');

  // 1 kg = 2.2046 lb (NIST Handbook 44, appendix C); leaving the field as it was changes nothing.
  const undo = page.getByRole('button', { name: /^Undo/ });
  await page.getByRole('spinbutton', { name: 'Filling so far, kg' }).fill('1');
  await page.getByRole('spinbutton', { name: 'Filling so far, kg' }).press('Tab');
  await expect(undo).toHaveAccessibleName('Undo: Set filling weighed in');
  await page.getByRole('radio', { name: 'Inches' }).check({ force: true });
  const pounds = page.getByRole('spinbutton', { name: 'Filling so far, lb' });
  await expect(pounds).toHaveValue('2.2');
  await pounds.focus();
  await pounds.press('Tab');
  await expect(undo).toHaveAccessibleName('Undo: Show inches');
  await expect(page.getByRole('region', { name: 'So far', exact: true })).toContainText('filled, 2.20 lb');
  await page.getByRole('radio', { name: 'Centimetres' }).check({ force: true });

  await page.getByRole('button', { name: 'Measure the empty shell' }).click();
  // 17 mm wider laid flat is 34 mm round, over the seams that cross there.
  await field('Hip, laid flat').fill('52.2');
  await expect(todo).toContainText(/Hip: the shell is [\d.]+ cm too wide all round/);
  await expect(beside('hip')).toContainText(/Sew each of the 8 seams/);
  // The line of the list leads to the field.
  await todo.getByRole('button', { name: /^Hip: the shell/ }).click();
  await expect(field('Hip, laid flat')).toBeFocused();
  const log = page.getByRole('region', { name: 'So far', exact: true });
  await expect(log.getByRole('row')).toHaveCount(3);
  await log
    .getByRole('button', { name: /^Remove/ })
    .first()
    .click();
  await expect(log.getByRole('row')).toHaveCount(2);
  await expect(field('Waist depth')).toHaveValue('20.9');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(log.getByRole('row')).toHaveCount(3);
});
