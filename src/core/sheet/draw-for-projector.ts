import {
  assertInvariant,
  type DisplayUnit,
  failure,
  mmPerInch,
  type Phrase,
  type Result,
  type Say,
  success,
} from '../base/index.ts';
import {
  type Drawing,
  type DrawingItem,
  type DrawingStyle,
  foldText,
  makeLayer,
  makePath,
  makeRectangle,
  makeText,
  pageFromUpright,
  translateItem,
} from '../drawing/index.ts';
import { type Bounds, boundsOfPoints, boundsOfPolyline } from '../math/index.ts';
import { drawPieces, type Piece, packOutlines, packPages } from '../pattern/index.ts';
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
const LETTERS = 14;
/** A projector's picture at working height, 16 : 9, mm. */
const FRAME: Frame = { width: 1200, height: 675 };
/** Arms of the crosses at the square's corners, mm. */
const CROSS = 12;

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
 * What to project on cloth. One page: a grid of squares with a large square of known side, its lines named by colour, and below it all
 * pieces as they lie on cloth, the grain up. With a measured square several, for what a projector does to a line depends on where in the
 * picture it is: a page with the grid and then pages with whole pieces, all of one size with the square's corners in the same
 * place, drawn so that they come out true when they are shown there. Fails as `findHomography` does.
 */
export function drawForProjector(pieces: readonly Piece[], options: ProjectorOptions): Result<Drawing[]> {
  const { projectedSquare, unit } = options;
  if (!projectedSquare) return success([drawWhole(pieces, options)]);
  const side = PROJECTED_SIDES[unit];
  const frame = frameFor(pieces);
  const [x, y] = [0.5 * (frame.width - side), 0.5 * (frame.height - side)];
  const map = findHomography(projectedSquare, x, y, side);
  if (!map.ok) return failure(map.issues);
  return success(drawFrames(pieces, options, frame, x, y, map.value));
}

/** All pieces on one page, below the grid. */
function drawWhole(pieces: readonly Piece[], { title, unit, ground, say }: ProjectorOptions): Drawing {
  const colours = COLOURS[ground];
  const side = PROJECTED_SIDES[unit];
  const top = MARGIN + side + 2 * GAP;
  const { offsets, width, height } = layOut(pieces);
  const placements = offsets.map(({ dx, dy }) => ({ dx: dx + MARGIN, dy: dy + top }));
  const drawn = drawPieces(pieces, placements).flatMap(({ items }) => items);
  const how = phrase('projector.how', { side, square: SQUARE[unit], unit });
  const items = [
    ...drawGrid(MARGIN, MARGIN, unit, colours),
    ...drawWords(MARGIN + side + GAP, MARGIN, width - side, how, say, colours),
    ...drawKey(MARGIN + side + GAP, MARGIN + side, say, colours),
    ...drawn.flatMap((item) => colourItem(item, ground)),
  ];
  return onGround(items, width + 2 * MARGIN, top + height + MARGIN, title, colours.ground);
}

interface Frame {
  readonly width: number;
  readonly height: number;
}

/** As large as a projector's picture, or as the largest piece needs. */
function frameFor(pieces: readonly Piece[]): Frame {
  const sizes = pieces.map(({ cutLine }) => {
    const { minX, minY, maxX, maxY } = boundsOfPolyline(cutLine);
    return [maxX - minX, maxY - minY].sort((a, b) => a - b);
  });
  const most = (k: number): number => Math.max(0, ...sizes.map((size) => size[k])) + 2 * GAP + 1;
  return { width: Math.max(FRAME.width, most(1)), height: Math.max(FRAME.height, most(0)) };
}

function drawFrames(
  pieces: readonly Piece[],
  { title, unit, ground, say }: ProjectorOptions,
  frame: Frame,
  x: number,
  y: number,
  map: Homography,
): Drawing[] {
  const colours = COLOURS[ground];
  const side = PROJECTED_SIDES[unit];
  const outlines = pieces.map((piece) => pageFromUpright(piece.cutLine, 0, 0));
  const { pages } = packPages(outlines, frame.width, frame.height, GAP);
  const how = phrase('projector.frames', { side, unit, pages: pages.length });
  const room = x - 2 * GAP;
  const first = [
    ...drawGrid(x, y, unit, colours),
    ...drawWords(GAP, y, room, how, say, colours),
    ...drawKey(x + side + GAP, y + side, say, colours),
  ];
  const frames = pages.map((members) => {
    const here = members.map(({ index }) => pieces[index]);
    const drawn = drawPieces(
      here,
      members.map(({ place }) => place),
    ).flatMap(({ items }) => items);
    return [...drawCorners(x, y, side, colours), ...drawn.flatMap((item) => colourItem(item, ground))];
  });
  return [first, ...frames].map((items) => ({
    ...frame,
    title,
    layers: [
      makeLayer('fill', [groundOf(frame.width, frame.height, colours.ground)]),
      makeLayer(
        'cut',
        items.map((item) => mapItem(item, map)),
      ),
    ],
  }));
}

/** Crosses at the corners of the large square: where they lie, the page is where it was measured. */
function drawCorners(x: number, y: number, side: number, colours: Colours): DrawingItem[] {
  const style: DrawingStyle = { stroke: colours.level, strokeWidth: 1 };
  return [x, x + side].flatMap((cx) =>
    [y, y + side].flatMap((cy) => [
      makePath([cx - CROSS, cy, cx + CROSS, cy], { style }),
      makePath([cx, cy - CROSS, cx, cy + CROSS], { style }),
    ]),
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

/** Squares, and the large one round them with its dashed diagonal. */
function drawGrid(x: number, y: number, unit: DisplayUnit, colours: Colours): DrawingItem[] {
  const side = PROJECTED_SIDES[unit];
  const thin: DrawingStyle = { stroke: colours.level, strokeWidth: 0.8 };
  const strong: DrawingStyle = { stroke: colours.cut, strokeWidth: 3 };
  const lines = Array.from({ length: SQUARES - 1 }, (_, k) => (k + 1) * SQUARE[unit]).flatMap((at, k) => [
    makePath([x + at, y, x + at, y + side], { id: `grid/upright-${k + 1}`, style: thin }),
    makePath([x, y + at, x + side, y + at], { id: `grid/level-${k + 1}`, style: thin }),
  ]);
  const dashed = { ...thin, dash: [12, 8] };
  return [
    ...lines,
    makeRectangle(x, y, side, side, { id: 'grid/square', style: strong }),
    makePath([x, y, x + side, y + side], { id: 'grid/diagonal', style: dashed }),
  ];
}

/** What to do, folded to the room. */
function drawWords(
  x: number,
  y: number,
  room: number,
  words: Phrase,
  say: Say,
  colours: Colours,
): DrawingItem[] {
  const rows = say(words)
    .split('\n')
    .flatMap((paragraph) => foldText(paragraph, LETTERS, room));
  return rows.map((text, i) =>
    makeText(x, y + LETTERS + 1.6 * LETTERS * i, text, LETTERS, { colour: colours.text }),
  );
}

/** What each colour means, upwards from (x, bottom). */
function drawKey(x: number, bottom: number, say: Say, colours: Colours): DrawingItem[] {
  return KINDS.flatMap((kind, i) => {
    const y = bottom - 2 * LETTERS * (KINDS.length - 1 - i);
    const words = say(phrase('projector.line', { kind }));
    return [
      makePath([x, y - 5, x + 50, y - 5], { id: `key/${kind}`, style: styleOf(kind, colours) }),
      makeText(x + 60, y, words, LETTERS, { colour: colours.text }),
    ];
  });
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

function groundOf(width: number, height: number, fill: string): DrawingItem {
  return makeRectangle(0, 0, width, height, { id: 'ground', style: { stroke: 'none', fill } });
}

/** On a page that holds everything. */
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
  return {
    width: w,
    height: h,
    title,
    layers: [
      makeLayer('fill', [groundOf(w, h, ground)]),
      makeLayer(
        'cut',
        items.map((item) => translateItem(item, dx, dy)),
      ),
    ],
  };
}
