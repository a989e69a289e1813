import type { Say } from '../base/index.ts';
import { type Drawing, type DrawingItem, makePath, makeText } from '../drawing/index.ts';
import { boundsOfPolyline } from '../math/index.ts';
import type { Piece } from '../pattern/index.ts';
import { finishDrawing } from './finish-drawing.ts';
import { GHOST_DASH, LETTER_SIZE, lineStyle, TINTS, WORD_SIZE } from './line-styles.ts';

/** Boards no wider than this are drawn a quarter of true size, others an eighth; mm. */
const SMALL = 200;
const SCALES = { small: 1 / 4, large: 1 / 8 } as const;
/** A level plate is seen so flat. */
const FLAT = 0.42;
/** Of two layers' heights so much is between their middles, and this besides; the thickness of a board. mm of paper. */
const SHARE = 0.42;
const APART = 5;
const BOARD = 0.9;
/** From a plate to its name. */
const TO_NAME = 3;

/**
 * Boards and covers pulled apart, the first one on top: outlines with their holes, dotted lines through the holes' middles, the
 * outward pole of a board's magnets beside each, and every layer's name to its right. Each lies as it is drawn on its
 * sheet, second layers turned back by the quarter they are drawn turned. mm of paper.
 */
export function stackBoards(pieces: readonly Piece[], title: string, say: Say): Drawing {
  const layers = placeLayers(pieces);
  const right = Math.max(...layers.map(({ outline }) => boundsOfPolyline(outline).maxX));
  const items = layers.toReversed().flatMap((layer) => drawLayer(layer, right, say));
  return finishDrawing(title, [...axesOf(layers), ...items], []);
}

interface Layer {
  readonly piece: Piece;
  readonly outline: Float64Array;
  readonly holes: readonly { readonly id: string; readonly points: Float64Array }[];
}

function placeLayers(pieces: readonly Piece[]): Layer[] {
  const boxes = pieces.map(({ cutLine }) => boundsOfPolyline(cutLine));
  const widest = Math.max(...boxes.map(({ minX, maxX, minY, maxY }) => Math.max(maxX - minX, maxY - minY)));
  const scale = widest <= SMALL ? SCALES.small : SCALES.large;
  const flat = pieces.map((piece) => flattenBoard(piece, scale));
  let y = 0;
  return flat.map((layer, k) => {
    const before = flat[k - 1];
    if (before) y += SHARE * (heightOf(before) + heightOf(layer)) + APART;
    const move = (points: Float64Array): Float64Array =>
      points.map((value, i) => (i % 2 === 0 ? value : value + y));
    const holes = layer.holes.map((hole) => ({ ...hole, points: move(hole.points) }));
    return { ...layer, outline: move(layer.outline), holes };
  });
}

function heightOf({ outline }: Layer): number {
  const { minY, maxY } = boundsOfPolyline(outline);
  return maxY - minY;
}

/** A board about its own middle, as it is seen lying level. */
function flattenBoard(piece: Piece, scale: number): Layer {
  const isTurned = piece.follows?.how === 'layer';
  const { minX, maxX, minY, maxY } = boundsOfPolyline(piece.cutLine);
  const [cx, cy] = [(minX + maxX) / 2, (minY + maxY) / 2];
  const place = (points: Float64Array): Float64Array => {
    const placed = new Float64Array(points.length);
    for (let i = 0; i < points.length; i += 2) {
      const [dx, dy] = [points[i] - cx, points[i + 1] - cy];
      const [x, y] = isTurned ? [-dy, dx] : [dx, dy];
      placed[i] = scale * x;
      placed[i + 1] = -scale * FLAT * y;
    }
    return placed;
  };
  return {
    piece,
    outline: place(piece.cutLine),
    holes: (piece.cutouts ?? []).map(({ id, points }) => ({ id, points: place(points) })),
  };
}

function drawLayer({ piece, outline, holes }: Layer, right: number, say: Say): DrawingItem[] {
  const isCloth = piece.material === 'covers';
  const fill = isCloth ? TINTS.right : TINTS.paper;
  const under = outline.map((value, i) => (i % 2 === 0 ? value : value + BOARD));
  const { maxX, minY, maxY } = boundsOfPolyline(outline);
  const y = (minY + maxY) / 2;
  const style = { ...lineStyle('seam'), fill };
  const pole = piece.name.values.pole;
  return [
    ...(isCloth ? [] : [makePath(under, { closed: true, style })]),
    makePath(outline, { closed: true, style }),
    ...holes.flatMap(({ id, points }) => [
      makePath(points, { closed: true, style: { ...lineStyle('thin'), fill: TINTS.web } }),
      ...(id.startsWith('magnet') && typeof pole === 'string' ? [poleBeside(points, pole)] : []),
    ]),
    makePath([maxX + 0.8, y, right + TO_NAME, y], { style: lineStyle('thin') }),
    makeText(right + TO_NAME + 1, y + 0.36 * WORD_SIZE, say(piece.name), WORD_SIZE, { colour: '#000000' }),
  ];
}

function poleBeside(hole: Float64Array, pole: string): DrawingItem {
  const { maxX, minY, maxY } = boundsOfPolyline(hole);
  return makeText(maxX + 0.8, (minY + maxY) / 2 + 0.36 * LETTER_SIZE, pole, LETTER_SIZE, {
    colour: '#000000',
  });
}

/** From each hole of the first layer that has any down to the same one of the last. */
function axesOf(layers: readonly Layer[]): DrawingItem[] {
  const first = layers.find(({ holes }) => holes.length > 0);
  const last = layers.findLast(({ holes }) => holes.length > 0);
  if (!first || !last || first === last) return [];
  return first.holes.flatMap(({ id, points }) => {
    const other = last.holes.find((hole) => hole.id === id);
    if (!other) return [];
    const ends = [points, other.points].map((hole) => {
      const { minX, maxX, minY, maxY } = boundsOfPolyline(hole);
      return [(minX + maxX) / 2, (minY + maxY) / 2];
    });
    return [makePath(ends.flat(), { style: lineStyle('seam', GHOST_DASH) })];
  });
}
