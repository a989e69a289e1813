import type { Page } from '@playwright/test';

/** A picture of 400 × 800 pixels with lines at 1/4 and 3/4 of its height, made by the browser. */
export async function makePicture(page: Page): Promise<Buffer> {
  const base64 = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [400, 800];
    const pen = canvas.getContext('2d')!;
    pen.fillStyle = '#87a';
    pen.fillRect(0, 0, 400, 800);
    pen.fillStyle = '#fff';
    for (const y of [200, 600]) pen.fillRect(0, y - 2, 400, 4);
    return canvas.toDataURL('image/png').split(',')[1]!;
  });
  return Buffer.from(base64, 'base64');
}
