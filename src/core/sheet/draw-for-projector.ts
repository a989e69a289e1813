import {
  assertInvariant,
  type DisplayUnit,
  failure,
  mmPerInch,
  type Result,
  type Say,
  success,
} from '../base/index.ts';
import {
  type Drawing,
  type DrawingItem,
  type DrawingStyle,
  makeLayer,
  makePath,
  makeRectangle,
  makeText,
  pageFromUpright,
  translateItem,
} from '../drawing/index.ts';
import { type Bounds, boundsOfPoints } from '../math/index.ts';
import { drawPieces, type Piece, packOutlines } from '../pattern/index.ts';
import { findHomography, type Homography, mapPoints, type ProjectedSquare } from './find-homography.ts';
import { phrase, type SheetPhrases } from './phrases.ts';

/** Widths of the page tried, mm, until what is on it is no longer than the longest page of a PDF. */
const WIDTHS = [1800, 2700, 4400];
const LONGEST_LAYOUT = 3600;
/** Orders tried to lay pieces close: room costs nothing here. */
const ATTEMPTS = 20;
/** Between pieces, and round the page, mm. */
const GAP = 40;
const MARGIN = 60;
/** Squares of the grid, and of how many the large one is a side. */
const SQUARE: Readonly<Record<DisplayUnit, number>> = { cm: 50, in: 2 * mmPerInch };
const SQUARES = 10;

/** Side of the large square, mm. */
export const PROJECTED_SIDES: Readonly<Record<DisplayUnit, number>> = {
  cm: SQUARES * SQUARE.cm,
  in: SQUARES * SQUARE.in,
};
/** Letters of the instructions, mm. */
const LETTERS = 16;

/** Kinds of lines that are told apart. */
const KINDS: readonly Kind[] = ['cut', 'notch', 'sew', 'level', 'grain'];
type Kind = SheetPhrases['projector.line']['kind'];
const KIND_OF_PART: Readonly<Record<string, Kind>> = {
  ...{ cut: 'cut', hole: 'cut', notch: 'notch', sew: 'sew', level: 'level', grain: 'grain' },
};

/**
 * Colours told apart by people of every colour sight, on light and on dark: of Okabe and Ito (Color universal design, 2008), the
 * darker five for a light ground, the lighter for a dark one.
 */
const COLOURS: Readonly<Record<'light' | 'dark', Readonly<Record<Kind | 'ground' | 'text', string>>>> = {
  light: {
    ...{ ground: '#ffffff', text: '#000000', cut: '#000000', notch: '#cc79a7' },
    ...{ sew: '#0072b2', level: '#d55e00', grain: '#009e73' },
  },
  dark: {
    ...{ ground: '#000000', text: '#ffffff', cut: '#ffffff', notch: '#cc79a7' },
    ...{ sew: '#56b4e9', level: '#e69f00', grain: '#009e73' },
  },
};
/** mm; a pixel of a projector two metres up is about a millimetre. */
const WIDTH: Readonly<Record<Kind, number>> = { cut: 2, notch: 2, sew: 1.4, level: 1.4, grain: 1.4 };
const DASHES: Readonly<Partial<Record<Kind, readonly number[]>>> = { sew: [12, 8] };

export interface ProjectorOptions {
  readonly say: Say;
  readonly title: string;
  readonly unit: DisplayUnit;
  readonly ground: 'light' | 'dark';
  /** What the large square measures as projected; absent = it is true. */
  readonly projectedSquare?: ProjectedSquare;
}

/**
 * One page to project on cloth: a grid of squares with a large square of known side, its lines named by colour, and below it all pieces as
 * they lie on cloth, the grain up. With a measured square all is drawn so that it comes out true. Fails as `findHomography` does.
 */
export function drawForProjector(pieces: readonly Piece[], options: ProjectorOptions): Result<Drawing> {
  const { title, unit, ground, say, projectedSquare } = options;
  const side = PROJECTED_SIDES[unit];
  const found = projectedSquare ? findHomography(projectedSquare, MARGIN, MARGIN, side) : success(null);
  if (!found.ok) return failure(found.issues);
  const top = MARGIN + side + 2 * GAP;
  const { offsets, width, height } = layOut(pieces);
  const placements = offsets.map(({ dx, dy }) => ({ dx: dx + MARGIN, dy: dy + top }));
  const drawn = drawPieces(pieces, placements).flatMap(({ items }) => items);
  const items = [
    ...drawGrid(unit, side, say, COLOURS[ground]),
    ...drawn.flatMap((item) => colourItem(item, ground)),
  ];
  const map = found.value;
  const corrected = map ? items.map((item) => mapItem(item, map)) : items;
  return success(
    onGround(corrected, width + 2 * MARGIN, top + height + MARGIN, title, COLOURS[ground].ground),
  );
}

type Colours = (typeof COLOURS)['light'];

/** Beside each other on a page as narrow as its length allows. */
function layOut(pieces: readonly Piece[]) {
  const outlines = pieces.map((piece) => pageFromUpright(piece.cutLine, 0, 0));
  let widest: { offsets: readonly { dx: number; dy: number }[]; width: number; height: number } | null = null;
  for (const width of WIDTHS) {
    const packing = packOutlines(outlines, width, GAP, ATTEMPTS);
    if ('tooWide' in packing) continue;
    widest = { ...packing, width };
    if (packing.height <= LONGEST_LAYOUT) break;
  }
  assertInvariant(widest !== null, 'sheet', 'a piece fits on the widest page', pieces.length);
  return widest;
}

/** Squares, the large one round them with its side told, and what each colour means. */
function drawGrid(unit: DisplayUnit, side: number, say: Say, colours: Colours): DrawingItem[] {
  const thin: DrawingStyle = { stroke: colours.level, strokeWidth: 0.8 };
  const items: DrawingItem[] = [];
  for (let k = 1; k < SQUARES; k++) {
    const at = MARGIN + k * SQUARE[unit];
    items.push(makePath([at, MARGIN, at, MARGIN + side], { id: `grid/upright-${k}`, style: thin }));
    items.push(makePath([MARGIN, at, MARGIN + side, at], { id: `grid/level-${k}`, style: thin }));
  }
  const strong: DrawingStyle = { stroke: colours.cut, strokeWidth: 3 };
  items.push(makeRectangle(MARGIN, MARGIN, side, side, { id: 'grid/square', style: strong }));
  const diagonal = [MARGIN, MARGIN, MARGIN + side, MARGIN + side];
  items.push(makePath(diagonal, { id: 'grid/diagonal', style: { ...thin, dash: [12, 8] } }));
  const x = MARGIN + side + GAP;
  const how = say(phrase('projector.how', { side, square: SQUARE[unit], unit })).split('\n');
  for (const [i, text] of how.entries())
    items.push(makeText(x, MARGIN + 24 + 32 * i, text, LETTERS, { colour: colours.text }));
  for (const [i, kind] of KINDS.entries()) {
    const y = MARGIN + side - 32 * (KINDS.length - 1 - i);
    items.push(makePath([x, y - 7, x + 90, y - 7], { id: `key/${kind}`, style: styleOf(kind, colours) }));
    const words = say(phrase('projector.line', { kind }));
    items.push(makeText(x + 105, y, words, LETTERS, { colour: colours.text }));
  }
  return items;
}

function styleOf(kind: Kind, colours: Colours): DrawingStyle {
  const dash = DASHES[kind];
  return { stroke: colours[kind], strokeWidth: WIDTH[kind], ...(dash && { dash }) };
}

/** In the colour of its kind; marks for clipping are left out, which are of no use before the seam is sewn. */
function colourItem(item: DrawingItem, ground: 'light' | 'dark'): DrawingItem[] {
  const colours = COLOURS[ground];
  if (item.kind === 'text') return [{ ...item, colour: colours.text }];
  const [, part = ''] = item.id?.split('/') ?? [];
  if (part === 'clip') return [];
  return [{ ...item, style: styleOf(KIND_OF_PART[part] ?? 'level', colours) }];
}

function mapItem(item: DrawingItem, map: Homography): DrawingItem {
  if (item.kind === 'path') return { ...item, points: mapPoints(item.points, map) };
  // Letters stay letters: moved and turned as the point they begin at is, and the direction they run in.
  const [cos, sin] = [Math.cos(item.angle ?? 0), Math.sin(item.angle ?? 0)];
  const [x, y, x1, y1] = mapPoints(Float64Array.of(item.x, item.y, item.x + cos, item.y + sin), map);
  const size = item.size * Math.hypot(x1 - x, y1 - y);
  return { ...item, x, y, size, angle: Math.atan2(y1 - y, x1 - x) };
}

/** On a page that holds everything, whatever it was put through. */
function onGround(
  items: readonly DrawingItem[],
  width: number,
  height: number,
  title: string,
  ground: string,
): Drawing {
  const paths = items.flatMap((item) => (item.kind === 'path' ? [item.points] : []));
  const { minX, minY, maxX, maxY } = boundsOfPoints(paths) as Bounds;
  const [dx, dy] = [Math.max(0, MARGIN - minX), Math.max(0, MARGIN - minY)];
  const [w, h] = [Math.max(width, maxX + MARGIN) + dx, Math.max(height, maxY + MARGIN) + dy];
  const style = { stroke: 'none', fill: ground };
  return {
    width: w,
    height: h,
    title,
    layers: [
      makeLayer('fill', [makeRectangle(0, 0, w, h, { id: 'ground', style })]),
      makeLayer(
        'cut',
        items.map((item) => translateItem(item, dx, dy)),
      ),
    ],
  };
}
