import type { Say } from '../base/index.ts';
import { type DrawingItem, makePath, makeRectangle } from '../drawing/index.ts';
import { GHOST_DASH, LEVEL_DASH, lineStyle, STROKES, tintStyle } from '../picture/index.ts';
import {
  clearPicture,
  keepTogether,
  LEADING,
  type PageFlow,
  putItems,
  writeParagraph,
} from './flow-pages.ts';
import { PICTURE_KEYS, type PictureKey, phrase } from './phrases.ts';

const WORDS = 3.4;
const SAMPLE = { width: 9, height: 4.4 } as const;
const BESIDE_SAMPLE = 3;
const BELOW = 2.2;

/** What tints and lines of the pictures mean: a sample of each, and words. */
export function drawKey(flow: PageFlow, say: Say): void {
  clearPicture(flow);
  flow.y += 6;
  keepTogether(flow, (PICTURE_KEYS.length + 3) * (SAMPLE.height + BELOW));
  writeParagraph(flow, say(phrase('booklet.key-title')), { size: 4.2, below: 2.5 });
  for (const of of PICTURE_KEYS) {
    const middle = flow.y + (LEADING * WORDS) / 2;
    for (const [layer, items] of Object.entries(drawSample(of, flow.left, middle)))
      putItems(flow, layer, items);
    const indent = SAMPLE.width + BESIDE_SAMPLE;
    writeParagraph(flow, say(phrase('booklet.key', { of })), { size: WORDS, indent, below: BELOW });
  }
  writeParagraph(flow, say(phrase('booklet.key-side')), { size: WORDS });
}

/** By layers: a tinted oblong with its outline, or a line as the pictures draw it. */
function drawSample(of: PictureKey, left: number, middle: number): Record<string, DrawingItem[]> {
  if (of === 'right' || of === 'wrong' || of === 'web') {
    const { width, height } = SAMPLE;
    const top = middle - height / 2;
    return {
      fill: [makeRectangle(left, top, width, height, { style: tintStyle(of) })],
      outline: [makeRectangle(left, top, width, height, { style: { strokeWidth: STROKES.seam } })],
    };
  }
  const line = [left, middle, left + SAMPLE.width, middle];
  if (of === 'bold') return { bold: [makePath(line, { style: lineStyle('bold') })] };
  const dash = of === 'level' ? LEVEL_DASH : GHOST_DASH;
  return { seam: [makePath(line, { style: lineStyle('seam', dash) })] };
}
