import {
  type Drawing,
  type DrawingItem,
  makeLayer,
  makePath,
  makeRectangle,
  makeText,
  measureText,
  translateItem,
} from '../drawing/index.ts';

/** Paper of a booklet, mm. */
export interface BookletPaper {
  readonly pageWidth: number;
  readonly pageHeight: number;
  readonly margin: number;
}

/** How a paragraph is written. mm. */
export interface ParagraphStyle {
  /** Letters, at least 2.83 (8 pt). */
  readonly size: number;
  readonly indent?: number;
  /** A box to tick before it. */
  readonly hasBox?: boolean;
  /** A line behind its last row to write a reading on. */
  readonly hasLine?: boolean;
  /** Empty under it. */
  readonly below?: number;
}

/** Pages that are filled from the top down; text runs beside a picture as long as it stands there. mm. */
export interface PageFlow {
  readonly title: string;
  readonly paper: BookletPaper;
  /** Borders of what is written. */
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  /** Items of each layer, a page each. */
  readonly pages: Map<string, DrawingItem[]>[];
  /** Where the next row begins. */
  y: number;
  /** The picture that text runs beside: its left border, and how far down it goes. */
  beside: { readonly left: number; readonly bottom: number } | null;
}

/** Rows stand this far apart, of their letters' size. */
export const LEADING = 1.36;
/** Layers in the order of painting: what hides first, letters last. */
const LAYERS = ['fill', 'thin', 'seam', 'outline', 'bold', 'cut', 'sew', 'mark', 'text'];
/** Text beside a picture is at least this wide. */
const LEAST_BESIDE = 62;
const GAP = 6;
const BELOW_PICTURE = 3;
const BOX = 3.2;
const BEHIND_BOX = 2.2;
/** To write a reading on. */
const LINE = 20;
const BEFORE_LINE = 2;
/** A list stands two abreast from this width on. */
const TWO_ABREAST = 150;
/** A paragraph of so many rows is not divided. */
const FEW_ROWS = 4;
/** Kept free at the foot of a page for its number. */
export const FOOT_ROOM = 5;

/** A flow with its first page open. */
export function flowPages(title: string, paper: BookletPaper): PageFlow {
  const { pageWidth, pageHeight, margin } = paper;
  const borders = { left: margin, right: pageWidth - margin, bottom: pageHeight - margin - FOOT_ROOM };
  const flow: PageFlow = { title, paper, ...borders, pages: [], y: 0, beside: null };
  turnPage(flow);
  return flow;
}

export function turnPage(flow: PageFlow): void {
  flow.pages.push(new Map());
  flow.beside = null;
  flow.y = flow.paper.margin;
}

/** So much stands together: on a new page where it does not fit on this one. */
export function keepTogether(flow: PageFlow, height: number): void {
  if (flow.y > flow.paper.margin && flow.y + height > flow.bottom) turnPage(flow);
}

/** Goes on below the picture. */
export function clearPicture(flow: PageFlow): void {
  if (flow.beside) flow.y = Math.max(flow.y, flow.beside.bottom);
  flow.beside = null;
}

/** Items where they are, on the present page. */
export function putItems(flow: PageFlow, layer: string, items: readonly DrawingItem[]): void {
  const page = flow.pages[flow.pages.length - 1];
  page.set(layer, [...(page.get(layer) ?? []), ...items]);
}

export function ruleAcross(flow: PageFlow): void {
  putItems(flow, 'thin', [makePath([flow.left, flow.y, flow.right, flow.y])]);
}

/** A paragraph over the width that the picture leaves, the first row that does not fit beginning a page. */
export function writeParagraph(flow: PageFlow, words: string, style: ParagraphStyle): void {
  const { size, below = 0 } = style;
  const height = heightOf(words, style, rightBorder(flow) - flow.left) - below;
  // No row of a paragraph stands alone on a page.
  keepTogether(flow, Math.min(height, FEW_ROWS * LEADING * size));
  writeRows(flow, words, style, flow.left, null);
}

/** Short paragraphs, two abreast where nothing stands beside them and the page is wide enough. */
export function writeList(flow: PageFlow, rows: readonly string[], style: ParagraphStyle): void {
  const rest = [...rows];
  while (rest.length > 0) {
    const isWide = flow.right - flow.left >= TWO_ABREAST && rightBorder(flow) === flow.right;
    const here = rest.splice(0, isWide ? 2 : 1);
    if (here.length === 1) writeParagraph(flow, here[0], style);
    else writeAbreast(flow, here, style);
  }
}

function writeAbreast(flow: PageFlow, [one, other]: readonly string[], style: ParagraphStyle): void {
  const { left, right } = flow;
  const middle = (left + right) / 2;
  const width = (right - left - GAP) / 2;
  const height = Math.max(heightOf(one, style, width), heightOf(other, style, width));
  keepTogether(flow, height);
  const from = flow.y;
  writeRows(flow, one, style, left, middle - GAP / 2);
  flow.y = from;
  writeRows(flow, other, style, middle + GAP / 2, right);
  flow.y = from + height;
}

/** A picture: at the right, with text beside it, or over the whole width where it leaves too little. */
export function placePicture(flow: PageFlow, { width, height, layers }: Drawing): void {
  clearPicture(flow);
  const { left, right } = flow;
  const isBeside = right - left - width - GAP >= LEAST_BESIDE;
  keepTogether(flow, height + (isBeside ? 0 : BELOW_PICTURE));
  const x = isBeside ? right - width : left + Math.max(0, (right - left - width) / 2);
  for (const { name, items } of layers)
    putItems(
      flow,
      name,
      items.map((item) => translateItem(item, x, flow.y)),
    );
  const bottom = flow.y + height + BELOW_PICTURE;
  if (isBeside) flow.beside = { left: x, bottom };
  else flow.y = bottom;
}

/** All pages so far. */
export function pagesOfFlow({ pages, title, paper }: PageFlow): Drawing[] {
  return pages.map((own) => ({
    width: paper.pageWidth,
    height: paper.pageHeight,
    title,
    layers: LAYERS.flatMap((name) => {
      const items = own.get(name);
      return items ? [makeLayer(name, items)] : [];
    }),
  }));
}

/** How far a row may go. */
function rightBorder({ beside, right, y }: PageFlow): number {
  return beside && y < beside.bottom ? beside.left - GAP : right;
}

/** Rows between two borders; without a right one as far as the picture lets them. */
function writeRows(
  flow: PageFlow,
  words: string,
  { size, indent = 0, hasBox = false, hasLine = false, below = 0 }: ParagraphStyle,
  left: number,
  border: number | null,
): void {
  const row = LEADING * size;
  const start = left + indent + (hasBox ? BOX + BEHIND_BOX : 0);
  const rest = wordsOf(words);
  // What is written on a line belongs to the column its words began in, though the picture beside them ends meanwhile.
  let column = border;
  for (let isFirst = true; rest.length > 0; isFirst = false) {
    keepTogether(flow, row);
    if (hasLine) column ??= rightBorder(flow);
    const end = (column ?? rightBorder(flow)) - (hasLine ? LINE + BEFORE_LINE : 0);
    const baseline = flow.y + size;
    putItems(flow, 'text', [makeText(start, baseline, takeRow(rest, size, end - start), size)]);
    if (isFirst && hasBox)
      putItems(flow, 'mark', [makeRectangle(left + indent, baseline - BOX + 0.4, BOX, BOX)]);
    if (rest.length === 0 && hasLine) {
      const from = end + BEFORE_LINE;
      putItems(flow, 'thin', [makePath([from, baseline + 0.6, from + LINE, baseline + 0.6])]);
    }
    flow.y += row;
  }
  flow.y += below;
}

/** A sentence in rows no longer than the room, mm, but for a word that is. */
export function breakWords(sentence: string, size: number, room: number): string[] {
  const rest = wordsOf(sentence);
  const rows: string[] = [];
  while (rest.length > 0) rows.push(takeRow(rest, size, room));
  return rows;
}

/** Words of a sentence; a number stays with its fraction, its unit, the sign before it, and its other limit behind a stroke. */
function wordsOf(sentence: string): string[] {
  return sentence.split(/(?<![\d±/]) (?!\/|\d+\/\d)|(?<![±/]) (?!\/|\d+\/\d|(?:mm|cm|in|kg|g|lb|oz|yd)\b)/);
}

/** Takes as many words as fit, at least one. */
function takeRow(rest: string[], size: number, room: number): string {
  let line = rest.shift() ?? '';
  while (rest.length > 0 && measureText(`${line} ${rest[0]}`, size) <= room) line += ` ${rest.shift()}`;
  return line;
}

/** What a paragraph takes of a column. */
function heightOf(words: string, style: ParagraphStyle, width: number): number {
  const { size, indent = 0, hasBox = false, hasLine = false, below = 0 } = style;
  const room = width - indent - (hasBox ? BOX + BEHIND_BOX : 0) - (hasLine ? LINE + BEFORE_LINE : 0);
  return breakWords(words, size, room).length * LEADING * size + below;
}
