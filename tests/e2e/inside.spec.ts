import { goTo, waitForFullForm } from './open-app.ts';
import { expect, test } from './shared-page.ts';

test('Inside: girths of the test tube become growth, are kept, and what cannot be is named', async ({
  undrawnPage: page,
}) => {
  await goTo(page, 'Inside');
  const tube = page.getByRole('region', { name: 'Test tube' });
  const field = (number: number) => tube.getByRole('textbox', { name: `Girth at line ${number}` });
  await expect(tube).toContainText('Nothing is typed in');

  // 200π mm sewn, 0.6π mm of cloth: 64.1 cm is (641 − 1.885)/628.319 − 1 = 1.72 %.
  await field(1).fill('64.0');
  await field(2).fill('64.1');
  await field(3).fill('64.2');
  await expect(tube).toContainText('It grew by 1.72 %');
  await waitForFullForm(page);

  // Shorter than it was sewn: refused in the field, with its limits.
  await field(2).fill('60');
  await field(2).blur();
  await expect(tube.getByRole('alert')).toHaveText(/Girth at line 2.*60\.0 cm.*63\.0 cm.*75\.5 cm/);
  await field(2).fill('');
  await field(2).blur();
  await expect(tube).toContainText('It grew by 1.72 %');

  // As every part of the project, they come back with what the browser keeps; files.spec.ts loads it again.
  const kept = () => page.evaluate(() => JSON.parse(localStorage.getItem('loftseam.project') ?? '{}'));
  await expect.poll(async () => (await kept()).inside?.testTube).toEqual({ measure1: 640, measure3: 642 });

  // The throat webs are left out and taken back by a tick.
  const braces = page.getByRole('region', { name: 'Webs, ties and straps' });
  await expect(braces.getByText('throat web')).toHaveCount(2);
  const tick = page.getByRole('checkbox', { name: 'Throat webs' });
  await tick.uncheck();
  await expect(braces.getByText('throat web')).toHaveCount(0);
  await tick.check();
  await expect(braces.getByText('throat web')).toHaveCount(2);
  await expect(braces.getByText('the straps added there bring')).not.toHaveCount(0);

  // Panels as unrolled want all parts, which is told; a pair of straps goes by a tick.
  const parts = page.getByRole('region', { name: 'How much goes inside' });
  await expect(parts).toContainText('all are taken');
  const straps = parts.getByRole('checkbox', { name: 'Straps at the hip' });
  await expect(straps).toBeChecked();
  await straps.uncheck();
  await expect(braces.getByText(/^hip strap/)).toHaveCount(0);

  // A pole too thick for the neck: named in the stage, with what would fit.
  await page.getByRole('textbox', { name: 'Pole, outside' }).fill('10');
  await expect(page.getByRole('region', { name: 'Please look at' })).toContainText(
    /A pole of 10\.0 cm does not fit through the neck plate: at most [\d.]+ cm/,
  );
});
