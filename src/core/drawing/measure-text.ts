import type { DrawingText } from './types.ts';

/**
 * Advance widths of ASCII 32–126 in thousandths of an em: per character the wider of two open fonts,
 * Liberation Sans 2 and DejaVu Sans 2.37 (their `hmtx` tables), because the reader's generic sans font
 * is not ours to choose. Text is never wider than measured in either.
 */
const ADVANCES = [
  318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636,
  636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 556, 1015, 684, 686, 722, 770, 667, 611, 778, 752, 295,
  500, 667, 557, 863, 748, 787, 667, 787, 722, 667, 611, 732, 684, 989, 685, 667, 685, 390, 337, 390, 838,
  556, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521,
  392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838,
];
/** German and French letters that in both fonts are as wide as without their mark. */
const MARKED_LETTERS = 'ÄÖÜäöüÀÂÇÈÉÊËÎÏÔÙÛŸàâçèéêëîïôùûÿ';
/** By the same two fonts; the narrow space, which one of them lacks, no wider than a whole one. */
const FURTHER_ADVANCES: Readonly<Record<string, number>> = {
  ...Object.fromEntries([...MARKED_LETTERS].map((letter) => [letter, advanceOf(letter.normalize('NFD')[0])])),
  ß: 630,
  œ: 1023,
  Œ: 1070,
  '«': 612,
  '»': 612,
  '\u00a0': advanceOf(' '),
  '\u202f': advanceOf(' '),
};
const WIDE_ADVANCE = 1000;
const OTHER_ADVANCE = 850;

/** Heights over and under the baseline, in ems, that no glyph of common Latin text exceeds. */
export const TEXT_ASCENT = 0.76;
export const TEXT_DESCENT = 0.24;

function advanceOf(ascii: string): number {
  return ADVANCES[(ascii.codePointAt(0) ?? 0) - 32];
}

/** Upper bound of the width in mm of one line of text at a font size in mm. */
export function measureText(text: string, size: number): number {
  let thousandths = 0;
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    if (code >= 32 && code < 127) thousandths += ADVANCES[code - 32];
    else thousandths += FURTHER_ADVANCES[character] ?? (code >= 0x2e80 ? WIDE_ADVANCE : OTHER_ADVANCE);
  }
  return (thousandths / 1000) * size;
}

/** Corners (4 × 2, page coordinates) of the box a text occupies, from its top left one clockwise on the page. */
export function cornersOfText(item: DrawingText): Float64Array {
  const width = measureText(item.text, item.size);
  const anchor = item.anchor ?? 'start';
  const left = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  const top = -TEXT_ASCENT * item.size;
  const bottom = TEXT_DESCENT * item.size;
  const cos = Math.cos(item.angle ?? 0);
  const sin = Math.sin(item.angle ?? 0);
  const corners = new Float64Array(8);
  const local = [left, top, left + width, top, left + width, bottom, left, bottom];
  for (let i = 0; i < 8; i += 2) {
    corners[i] = item.x + local[i] * cos - local[i + 1] * sin;
    corners[i + 1] = item.y + local[i] * sin + local[i + 1] * cos;
  }
  return corners;
}
