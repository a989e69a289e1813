import { readFile } from 'node:fs/promises';
import { goTo, waitForFullForm } from './open-app.ts';
import { expect, type Page, test } from './shared-page.ts';

const picture = (page: Page) => page.getByRole('group', { name: /^Picture of the body/ });

/** The picture once it stands still, so that what differs from it afterwards is what was done. */
async function stillPicture(page: Page): Promise<Buffer> {
  let last = await picture(page).screenshot();
  await expect(async () => {
    const before = last;
    last = await picture(page).screenshot();
    expect(Buffer.compare(last, before)).toBe(0);
  }).toPass();
  return last;
}

test('the body in space: tapes pointed at, its picture saved, arms taken off', async ({
  sharedPage: page,
}) => {
  await test.step('a tape pointed at on the body lights its row, and the row its tape', async () => {
    const row = page.locator('li.measure', { hasText: 'Hip girth' }).first();
    const before = await stillPicture(page);
    await row.hover();
    await expect(row).toHaveAttribute('data-lit', 'true');
    await expect.poll(async () => Buffer.compare(await picture(page).screenshot(), before)).not.toBe(0);
    // Up along the middle of the picture from below: the first tape met is the lowest, the hip's.
    const box = await picture(page).boundingBox();
    if (!box) throw new Error('no picture');
    await page.mouse.move(box.x + 5, box.y + 5);
    await expect(row).not.toHaveAttribute('data-lit', 'true');
    for (let y = 0.98; y > 0.6; y -= 0.004) {
      await page.mouse.move(box.x + box.width * 0.5, box.y + box.height * y);
      if ((await page.locator('li.measure[data-lit]').count()) > 0) break;
    }
    await expect(row).toHaveAttribute('data-lit', 'true');
  });
  await test.step('the picture of the body is saved as PNG, and a problem report without the name', async () => {
    const picturePromise = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save this picture' }).click();
    const png = await readFile(await (await picturePromise).path());
    // PNG signature and size: W3C PNG specification, 5.2 and 11.2.2.
    expect([...png.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
    expect(png.readUInt32BE(16)).toBeGreaterThan(300);
    // An empty picture of this size packs to a few kilobytes.
    expect(png.length).toBeGreaterThan(20_000);
    const reportPromise = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save a problem report' }).click();
    const text = await readFile(await (await reportPromise).path(), 'utf8');
    expect(JSON.parse(text)).toMatchObject({
      format: 'loftseam-problem',
      stage: 'tape',
      project: { name: '' },
    });
    expect(text).not.toContain('Maren');
  });
  await test.step('arms are drawn where the five arm measures are given, and can be taken off', async () => {
    const arms = page.getByRole('checkbox', { name: 'Arms' });
    await expect(arms).toBeChecked();
    const withArms = await stillPicture(page);
    await arms.uncheck();
    await expect.poll(async () => Buffer.compare(await picture(page).screenshot(), withArms)).not.toBe(0);
    await goTo(page, 'Seams');
    await expect(arms).toHaveCount(0);
    await goTo(page, 'Tape');
    await page.getByRole('textbox', { name: 'Wrist girth' }).fill('');
    await page.getByRole('textbox', { name: 'Elbow girth' }).focus();
    await expect(arms).toHaveCount(0);
  });
});

test('the tools of Body: level cut, comparing, thread, right and left', async ({ sharedPage: page }) => {
  await goTo(page, 'Body');
  await test.step('a level cut at the waist reads the waist girth; another height reads another', async () => {
    const view = page.getByRole('region', { name: 'Cut level at any height' });
    const girth = async () => Number.parseFloat((await view.locator('dd').first().textContent()) ?? '');
    // Where it stood for the test before.
    await view.getByRole('slider', { name: /Height/ }).fill('0');
    expect(Math.abs((await girth()) - 76.5)).toBeLessThan(0.25);
    await view.getByRole('slider', { name: /Height/ }).fill('-205');
    await expect(view).toContainText('20.5 cm below the waist');
    expect(Math.abs((await girth()) - 101)).toBeLessThan(0.4);
    await view.getByRole('button', { name: 'Take the line off the body' }).click();
    await expect(view).toContainText('at the waist');
  });
  await test.step('another body is laid over this one with the differences by level', async () => {
    const view = page.getByRole('region', { name: 'Compare with another body' });
    const before = await stillPicture(page);
    const choose = view.getByLabel('Saved project to compare with');
    // It shows where it is the larger; the one after it is smaller all over.
    await choose.setInputFiles('shared/demos/large-bust.loftseam.json');
    await expect.poll(async () => Buffer.compare(await picture(page).screenshot(), before)).not.toBe(0);
    await choose.setInputFiles('shared/demos/petite.loftseam.json');
    const other = JSON.parse(await readFile('shared/demos/petite.loftseam.json', 'utf8'));
    await expect(view).toContainText(`${other.name} is drawn over this body`);
    const row = view.getByRole('row', { name: /^Waist/ });
    const shown = ((await row.getByRole('cell').first().textContent()) ?? '').split(' ')[0];
    expect(Math.abs(Number(shown) - other.body.measures.waistGirth / 10)).toBeLessThan(0.3);
    // The map of distances is a picture that can be drawn, with figures that agree with the waist: a rounder waist by 11 cm
    // lies inside by about 11 / 2π cm there, and by more elsewhere.
    const map = view.getByRole('img', { name: /coloured by how far Pim Vardy/ });
    await expect
      .poll(() => map.evaluate((image: HTMLImageElement) => image.naturalWidth))
      .toBeGreaterThan(100);
    const figure = async (name: string) =>
      Number.parseFloat(
        (await view.locator('dl div').filter({ hasText: name }).locator('dd').textContent()) ?? '',
      );
    const meanInside = (76.5 - other.body.measures.waistGirth / 10) / (2 * Math.PI);
    expect(await figure('At most inside')).toBeGreaterThan(meanInside);
    expect(await figure('On average')).toBeLessThan(await figure('At most inside'));
    await view.getByRole('button', { name: 'Stop comparing' }).click();
    await expect(row).toHaveCount(0);
  });
  await test.step('a thread laid between two named places is longer over the body than straight through', async () => {
    const tool = page.getByRole('region', { name: 'Lay a thread' });
    const before = await stillPicture(page);
    await tool.getByLabel('From').selectOption('Bust point, right');
    await tool.getByLabel('To').selectOption('Bust point, left');
    const number = async (what: string) =>
      Number.parseFloat(
        (await tool.locator('dl > div', { hasText: what }).locator('dd').first().textContent()) ?? '',
      );
    await expect(tool.getByText('Over the surface', { exact: true })).toBeVisible();
    const [over, straight] = [await number('Over the surface'), await number('Straight through')];
    // The demo's bust points are 19 cm apart (its own measure); over the hollow between them it cannot be less.
    expect(straight).toBeGreaterThan(10);
    expect(over).toBeGreaterThanOrEqual(straight);
    await expect.poll(async () => Buffer.compare(await picture(page).screenshot(), before)).not.toBe(0);
    await tool.getByRole('button', { name: 'Take it off' }).click();
    await expect(tool.getByText('Over the surface', { exact: true })).toHaveCount(0);
  });
  await test.step('right and left are told apart at any height, and the mirror image lies over the body', async () => {
    const view = page.getByRole('region', { name: 'Cut level at any height' });
    await expect(view).toContainText('Both halves are alike');
    await expect(page.getByRole('checkbox', { name: 'Mirror image', exact: true })).toHaveCount(0);
    await page.getByLabel('Open a project file').setInputFiles('shared/demos/uneven-shoulders.loftseam.json');
    await expect(page.getByLabel('Name of this project')).toHaveValue(/Isolde/);
    await waitForFullForm(page);
    const cells = async (row: string) =>
      Promise.all(
        (
          await view
            .getByRole('row', { name: new RegExp(`^${row}`) })
            .getByRole('cell')
            .all()
        ).map(async (cell) => Number.parseFloat(((await cell.textContent()) ?? '').replace('−', '-'))),
      );
    await view.getByRole('slider', { name: /Height/ }).fill('200');
    const whole = (await view.locator('.section-result dd').allTextContents()).map(Number.parseFloat);
    // Halves add up to the whole as the page shows it, each rounded to a millimetre.
    for (const [row, size] of [
      ['Half girth', 0],
      ['Half width', 1],
    ] as const) {
      const [right, left, difference] = await cells(row);
      expect(Math.abs(right! + left! - whole[size]!)).toBeLessThan(0.16);
      expect(Math.abs(right! - left! - difference!)).toBeLessThan(0.11);
    }
    // The right shoulder is 20 mm the higher one, so at this height the right half reaches farther round: by 2 mm as shown.
    expect((await cells('Half girth'))[2]).toBeGreaterThan(0.1);
    // A test before may have left it laid.
    await view.getByRole('checkbox', { name: /Lay the mirror image/ }).uncheck();
    const before = await stillPicture(page);
    await view.getByRole('checkbox', { name: /Lay the mirror image/ }).check();
    await expect(page.getByRole('checkbox', { name: 'Mirror image', exact: true })).toBeChecked();
    await expect.poll(async () => Buffer.compare(await picture(page).screenshot(), before)).not.toBe(0);
    await page.getByRole('checkbox', { name: 'Mirror image', exact: true }).uncheck();
    await expect(view.getByRole('checkbox', { name: /Lay the mirror image/ })).not.toBeChecked();
  });
});
