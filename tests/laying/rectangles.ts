import { verbatim } from '../../src/core/base/index.ts';
import type { Piece } from '../../src/core/pattern/index.ts';

/** A rectangle about its own middle, mm; sewn at its sides where letters are given: right, then left; a waist line across its middle. */
export function rectangle(
  id: string,
  width: number,
  height: number,
  { material = 'shell', right, left }: { material?: string; right?: string; left?: string } = {},
): Piece {
  const [w, h] = [width / 2, height / 2];
  const sides = [
    ...(right ? [{ id: `seam-${right}`, name: right, points: Float64Array.of(w, -h, w, h) }] : []),
    ...(left ? [{ id: `seam-${left}`, name: left, points: Float64Array.of(-w, h, -w, -h) }] : []),
  ];
  return {
    id,
    name: verbatim(id),
    side: 'centre',
    material,
    cutLine: Float64Array.of(-w, -h, w, -h, w, h, -w, h),
    sewLines: sides,
    notches: [],
    levelLines: [{ id: 'waist', name: verbatim('waist'), points: Float64Array.of(-w, 0, w, 0) }],
    grainLine: Float64Array.of(0, -h, 0, h),
    texts: [],
  } as unknown as Piece;
}
