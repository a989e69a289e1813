import { makePath } from './make-items.ts';
import { measureText } from './measure-text.ts';
import { STROKE_FOLDS, STROKE_FONT } from './stroke-font.ts';
import type { Drawing, DrawingItem, DrawingPath, DrawingText } from './types.ts';

/** Height of a capital in ems, as in the fonts texts are measured by (DejaVu Sans 2.37: 0.729). */
const CAPITAL = 0.729;
/** Units of the table from baseline to capital height. */
const UNITS = 6;
const BASELINE = 2;
/** Between two letters, units. */
const GAP = 1.4;
const BLANK = 2.2;
/** Stands for a letter that has no strokes. */
const BOX = '02 42 48 08 02';

export interface StrokedDrawing {
  readonly drawing: Drawing;
  /** Characters drawn as empty boxes because the stroke letters lack them, each once, in order. */
  readonly missing: readonly string[];
}

/** The drawing with every text drawn in single strokes, as paths of the same layer. Ids of texts are kept by no path. */
export function strokeLetters(drawing: Drawing): StrokedDrawing {
  const missing = new Set<string>();
  const layers = drawing.layers.map((layer) => ({
    ...layer,
    items: layer.items.flatMap((item): DrawingItem[] => {
      if (item.kind === 'path') return [item];
      const { paths, missing: own } = strokesOfText(item);
      for (const character of own) missing.add(character);
      return [...paths];
    }),
  }));
  return { drawing: { ...drawing, layers }, missing: [...missing] };
}

/**
 * One line of text as open strokes in its place, never wider than `measureText` says, so that what was clear of lines stays
 * so. Accents are left off (Unicode NFKD), a few letters folded (ß → ss); what is lacking becomes a box. O(letters).
 */
export function strokesOfText(item: DrawingText): {
  readonly paths: readonly DrawingPath[];
  readonly missing: readonly string[];
} {
  const missing: string[] = [];
  const scale = (CAPITAL / UNITS) * item.size;
  const strokes: number[][] = [];
  let at = 0;
  for (const character of fold(item.text)) {
    const known = STROKE_FONT[character];
    if (known === undefined) missing.push(character);
    const glyph = readGlyph(known ?? BOX);
    if (glyph.length === 0) at += BLANK;
    else {
      const xs = glyph.flatMap((line) => line.filter((_, i) => i % 2 === 0));
      const left = Math.min(...xs);
      for (const line of glyph)
        strokes.push(line.map((v, i) => (i % 2 === 0 ? at + v - left : v - BASELINE)));
      at += Math.max(...xs) - left + GAP;
    }
  }
  const width = Math.max(0, at - GAP) * scale;
  const squeeze = width === 0 ? 1 : Math.min(1, measureText(item.text, item.size) / width);
  const anchor = item.anchor ?? 'start';
  const back = anchor === 'start' ? 0 : (anchor === 'middle' ? width / 2 : width) * squeeze;
  const [cos, sin] = [Math.cos(item.angle ?? 0), Math.sin(item.angle ?? 0)];
  const paths = strokes.map((line) => {
    const points = new Float64Array(line.length);
    for (let i = 0; i < line.length; i += 2) {
      const x = line[i] * scale * squeeze - back;
      const y = -line[i + 1] * scale;
      points[i] = item.x + x * cos - y * sin;
      points[i + 1] = item.y + x * sin + y * cos;
    }
    return makePath(points);
  });
  return { paths, missing };
}

/** Accents off, except where that would change a sign of the table; control characters become blanks. */
function fold(text: string): string {
  return [...text.replace(/[\s\p{Cc}]/gu, ' ')]
    .map((character) => {
      if (character in STROKE_FONT) return character;
      const plain = STROKE_FOLDS[character] ?? character.normalize('NFKD').replace(/\p{M}/gu, '');
      return [...plain].map((part) => STROKE_FOLDS[part] ?? part).join('');
    })
    .join('');
}

function readGlyph(glyph: string): number[][] {
  if (glyph === '') return [];
  return glyph
    .split(',')
    .map((line) => line.split(' ').flatMap((point) => [Number(point[0]), Number(point[1])]));
}
