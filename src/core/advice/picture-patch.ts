import type { Say } from '../base/index.ts';
import {
  boundsOfItems,
  type Drawing,
  makeLayer,
  makePath,
  pageFromUpright,
  translateItem,
} from '../drawing/index.ts';
import { pictureStrain } from '../flatten/index.ts';
import { drawTestBars, TEST_BARS_SIZE } from '../pattern/index.ts';
import type { FlatPatch } from './flatten-region.ts';

const MARGIN = 10;

/** A flat patch in the colours of its strain and its outline to cut, without allowance, true size, with bars to measure. */
export function picturePatch({ flat, mesh, border }: FlatPatch, title: string, say: Say): Drawing {
  const points = new Float64Array(2 * border.length);
  border.forEach((v, i) => {
    points.set(flat.positions.subarray(2 * v, 2 * v + 2), 2 * i);
  });
  const outline = makePath(pageFromUpright(points, 0, 0), { closed: true, id: 'region/sew' });
  const { minX, minY, maxX, maxY } = boundsOfItems([outline]) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const place = (items: ReturnType<typeof pictureStrain>) =>
    items.map((item) => translateItem(item, MARGIN - minX, MARGIN - minY));
  const width = maxX - minX + 3 * MARGIN + TEST_BARS_SIZE;
  const height = Math.max(maxY - minY, TEST_BARS_SIZE) + 2 * MARGIN;
  const bars = drawTestBars(maxX - minX + 2 * MARGIN, MARGIN, width, height, say);
  return {
    width,
    height,
    title,
    layers: [
      makeLayer('picture', place(pictureStrain(flat, mesh))),
      makeLayer('sew', place([outline])),
      makeLayer('mark', bars.marks),
      makeLayer('text', bars.texts),
    ],
  };
}
