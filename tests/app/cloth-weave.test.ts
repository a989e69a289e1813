import { expect, it } from 'vitest';
import { makeClothWeave } from '../../src/app/scene/cloth-weave.ts';

/** Light of each pixel as the standard of sRGB (IEC 61966-2-1) decodes it, row by row. */
function lightOf({ texture }: ReturnType<typeof makeClothWeave>): { light: Float64Array; size: number } {
  const { data, width } = texture.image as { data: Uint8Array; width: number };
  const light = new Float64Array(data.length / 4);
  for (let i = 0; i < light.length; i++) {
    const c = data[4 * i]! / 255;
    light[i] = c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }
  return { light, size: width };
}

it('woven cloth is from afar as light as cloth without weave', () => {
  const weave = makeClothWeave();
  const { light } = lightOf(weave);
  const mean = light.reduce((sum, one) => sum + one, 0) / light.length;
  // A hundredth is under what the eye tells apart (Weber, common practice).
  expect(Math.abs(mean * weave.brightness - 1)).toBeLessThan(0.01);
});

it('the weave goes on over the edge of its picture as inside it', () => {
  const { light, size } = lightOf(makeClothWeave());
  const at = (x: number, y: number) => light[(y % size) * size + (x % size)]!;
  const step = (x: number) => {
    let sum = 0;
    for (let y = 0; y < size; y++) sum += Math.abs(at(x + 1, y) - at(x, y));
    return sum / size;
  };
  const inside = Math.max(...Array.from({ length: size - 1 }, (_, x) => step(x)));
  expect(step(size - 1)).toBeLessThanOrEqual(inside * 1.05);
  expect(step(size - 1)).toBeGreaterThan(0);
});
