import {
  type DrawingItem,
  type DrawingLayer,
  makeLayer,
  makePath,
  makeText,
  type Placement,
  pageFromUpright,
  placeItem,
} from '../drawing/index.ts';
import { measureDistanceToPolyline } from '../math/index.ts';
import type { Piece } from './types.ts';

const ARROW = 4;

interface PieceItems {
  readonly slits: DrawingItem[];
  readonly cut: DrawingItem[];
  readonly sew: DrawingItem[];
  readonly mark: DrawingItem[];
  readonly text: DrawingItem[];
}

/**
 * Pieces as the layers `cut` (slits before outlines, so that a machine cuts the small things first), `sew`, `mark`,
 * `text`, each piece at its placement (from its own origin, y turned down). Path ids are `<piece>/cut`,
 * `<piece>/hole/pole`, `<piece>/notch/A1`, `<piece>/sew/A`, `<piece>/level/bust`, `<piece>/grain`.
 */
export function drawPieces(pieces: readonly Piece[], placements: readonly Placement[]): DrawingLayer[] {
  const nextId = createIdGiver();
  const all: PieceItems = { slits: [], cut: [], sew: [], mark: [], text: [] };
  for (const [i, piece] of pieces.entries()) {
    const own: PieceItems = { slits: [], cut: [], sew: [], mark: [], text: [] };
    drawPiece(piece, own, nextId);
    for (const name of ['slits', 'cut', 'sew', 'mark', 'text'] as const)
      for (const item of own[name]) all[name].push(placeItem(item, placements[i]));
  }
  return [
    makeLayer('cut', [...all.slits, ...all.cut]),
    makeLayer('sew', all.sew),
    makeLayer('mark', all.mark),
    makeLayer('text', all.text),
  ];
}

function drawPiece(piece: Piece, items: PieceItems, nextId: (wanted: string) => string): void {
  const path = (points: Float64Array, id: string, closed = false): DrawingItem =>
    makePath(pageFromUpright(points, 0, 0), { id: nextId(`${piece.id}/${id}`), closed });

  items.cut.push(path(piece.cutLine, 'cut', true));
  for (const hole of piece.cutouts ?? []) items.slits.push(path(hole.points, `hole/${hole.id}`, true));
  for (const notch of piece.notches) items.slits.push(path(notch.points, `notch/${notch.id}`));
  // Where nothing is added for a seam, a dashed line on the cut line would only puzzle.
  for (const line of piece.sewLines.filter(({ points }) => !liesOn(points, piece.cutLine)))
    items.sew.push(path(line.points, `sew/${line.name}`));
  // The cut line has them already; drawn over it so that a reader of the drawing finds them by name.
  for (const point of piece.notchPoints ?? []) items.mark.push(path(point.points, `notch/${point.id}`));
  for (const clip of piece.clips ?? []) items.mark.push(path(clip.points, `clip/${clip.id}`));
  for (const line of piece.levelLines) items.mark.push(path(line.points, `level/${line.id}`));
  if (piece.grainLine.length > 0) {
    items.mark.push(path(piece.grainLine, 'grain'));
    const [x0, y0, x1, y1] = piece.grainLine;
    items.mark.push(path(arrowHead(x0, y0, 1), 'grain/arrow-down'));
    items.mark.push(path(arrowHead(x1, y1, -1), 'grain/arrow-up'));
  }
  for (const { x, y, text, size, anchor, angle } of piece.texts)
    items.text.push(makeText(x, -y, text, size, { anchor, angle: -angle }));
}

/** True when every point of a line is on the closed outline, to a hundredth of a millimetre. */
function liesOn(points: Float64Array, outline: Float64Array): boolean {
  for (let i = 0; i < points.length; i += 2)
    if (measureDistanceToPolyline(outline, true, points[i], points[i + 1]) > 0.01) return false;
  return true;
}

function arrowHead(x: number, y: number, direction: number): Float64Array {
  return Float64Array.of(x - ARROW / 2, y + direction * ARROW, x, y, x + ARROW / 2, y + direction * ARROW);
}

/** Gives every id once; a second asker gets `…-2`. */
function createIdGiver(): (wanted: string) => string {
  const given = new Set<string>();
  return (wanted) => {
    let id = wanted;
    for (let i = 2; given.has(id); i++) id = `${wanted}-${i}`;
    given.add(id);
    return id;
  };
}
