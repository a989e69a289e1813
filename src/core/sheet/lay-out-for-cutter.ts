import {
  failure,
  type Issue,
  type OptionsOf,
  type Result,
  type Say,
  success,
  withUsual,
} from '../base/index.ts';
import {
  type Drawing,
  type DrawingItem,
  type DrawingLayer,
  type DrawingPath,
  strokeLetters,
} from '../drawing/index.ts';
import { boundsOfPolyline, isInsidePolygon, measurePolygonArea } from '../math/index.ts';
import { arrangePieces, type Piece } from '../pattern/index.ts';
import { arrangeForTiles } from './arrange-for-tiles.ts';
import { offsetPolygon } from './clip-polygon.ts';
import { phrase } from './phrases.ts';
import { FOOTER, type TileGrid } from './plan-tiles.ts';
import { CUTTER_OPTIONS, MAT_SIDE } from './sheet-options.ts';
import { tileOnGrid } from './tile-drawing.ts';
import { trailBlade } from './trail-blade.ts';

const MARGIN = 6;

export interface CutterOptions extends OptionsOf<typeof CUTTER_OPTIONS> {
  /** Size of the mat or bed, mm; absent = one sheet as large as needed. */
  readonly mat?: { readonly width: number; readonly height: number };
  readonly title: string;
  /** Words on sheets. */
  readonly say: Say;
  /** The pieces laid out on one sheet already, to be used where there is no mat. */
  readonly laid?: Drawing;
}

export interface CutterSheet {
  /** `A1` …, or '' when there is one sheet. */
  readonly name: string;
  readonly drawing: Drawing;
}

/**
 * Pieces of one material on sheets for a cutting machine: inner cuts before outer ones, cut lines moved by half a kerf, and
 * pieces larger than the mat divided, their parts closed along the division and marked with diamonds that meet: boards always, which
 * is told, and cloth where that is asked for. Fails when the kerf or the mat cannot be, and on cloth that would have to be divided.
 */
export function layOutForCutter(pieces: readonly Piece[], options: CutterOptions): Result<CutterSheet[]> {
  const { mat, title, say } = options;
  const { kerf, bladeOffset, overcut, strokeText, divides } = withUsual(CUTTER_OPTIONS, options);
  const issues = checkOptions(mat, { kerf, bladeOffset, overcut });
  if (issues.length > 0) return failure(issues);
  const missing = new Set<string>();
  const finish = (drawing: Drawing): Drawing => {
    const ordered = orderCuts(widenCuts(drawing, kerf / 2));
    const trailed = mapCuts(ordered, (items) => items.map((item) => trailBlade(item, bladeOffset, overcut)));
    if (!strokeText) return trailed;
    const stroked = strokeLetters(trailed);
    for (const character of stroked.missing) missing.add(character);
    return stroked.drawing;
  };
  const finishAll = (sheets: readonly CutterSheet[], warnings: readonly Issue[]) => {
    const finished = sheets.map(({ name, drawing }) => ({ name, drawing: finish(drawing) }));
    return success(finished, [...warnings, ...lackingLetters([...missing])]);
  };
  if (!mat) {
    const sheet = options.laid ? success(options.laid) : arrangePieces(pieces, { title, say });
    return sheet.ok ? finishAll([{ name: '', drawing: sheet.value }], sheet.issues) : sheet;
  }
  const grid: TileGrid = {
    paperId: 'mat',
    pageWidth: mat.width,
    pageHeight: mat.height,
    margin: MARGIN,
    overlap: 0,
    cellWidth: mat.width - 2 * MARGIN,
    cellHeight: mat.height - 2 * MARGIN - FOOTER,
    isRoll: false,
  };
  const large = piecesLargerThan(pieces, grid);
  const [cloth, boards] = [large.filter((piece) => !isBoard(piece)), large.filter(isBoard)];
  if (cloth.length > 0 && !divides) return failure([refuseDividing(cloth)]);
  const { drawing, words } = arrangeForTiles(pieces, grid, title, say, { keepsGrain: true });
  const tiled = tileOnGrid(drawing, grid, words, true);
  return finishAll(
    tiled.pages.map((drawing, i) => ({ name: tiled.tiles[i].name, drawing })),
    boards.length > 0 ? [tellOfJoints(boards)] : [],
  );
}

const BOARDS = ['card', 'foam', 'gauge'];
const isBoard = ({ material }: Piece): boolean => BOARDS.includes(material);
/** A strip glued over where a board was parted reaches so far to both sides, mm (common practice, no source). */
const LAP = 40;

function piecesLargerThan(pieces: readonly Piece[], { cellWidth, cellHeight }: TileGrid): Piece[] {
  return pieces.filter(({ cutLine }) => {
    const { minX, minY, maxX, maxY } = boundsOfPolyline(cutLine);
    return maxX - minX > cellWidth || maxY - minY > cellHeight;
  });
}

function refuseDividing(large: readonly Piece[]): Issue {
  const boxes = large.map(({ cutLine }) => boundsOfPolyline(cutLine));
  const message = phrase('cutter.would-divide', {
    pieces: large.map(({ name }) => name),
    width: Math.max(...boxes.map(({ minX, maxX }) => maxX - minX)) + 2 * MARGIN,
    height: Math.max(...boxes.map(({ minY, maxY }) => maxY - minY)) + 2 * MARGIN + FOOTER,
  });
  return { code: 'would-divide', path: 'divides', message, severity: 'error' };
}

function tellOfJoints(boards: readonly Piece[]): Issue {
  const message = phrase('cutter.divided-boards', { pieces: boards.map(({ name }) => name), lap: LAP });
  return { code: 'divided-boards', path: 'mat', message, severity: 'warning' };
}

function lackingLetters(missing: readonly string[]): Issue[] {
  if (missing.length === 0) return [];
  const message = phrase('cutter.letters-lacking', { letters: missing });
  return [{ code: 'letters-lacking', path: 'strokeText', message, severity: 'warning' }];
}

function checkOptions(
  mat: CutterOptions['mat'],
  { kerf, bladeOffset, overcut }: { kerf: number; bladeOffset: number; overcut: number },
): Issue[] {
  const issues: Issue[] = [];
  const lengths = [
    { path: 'bladeOffset', code: 'blade-out-of-range', measured: bladeOffset },
    { path: 'overcut', code: 'blade-out-of-range', measured: overcut },
    { path: 'kerf', code: 'kerf-out-of-range', measured: kerf },
  ] as const;
  for (const { path, code, measured } of lengths) {
    const limit = CUTTER_OPTIONS[path].max;
    if (measured >= 0 && measured <= limit) continue;
    const message = phrase('cutter.length', { what: path, length: measured, most: limit });
    issues.push({ code, path, message, severity: 'error', measured, limit });
  }
  const smallest = mat ? Math.min(mat.width, mat.height) : MAT_SIDE.min;
  if (!(smallest >= MAT_SIDE.min)) {
    const limit = MAT_SIDE.min;
    const message = phrase('cutter.mat-too-small', { width: smallest, least: limit });
    issues.push({
      code: 'mat-too-small',
      path: 'mat',
      message,
      severity: 'error',
      measured: smallest,
      limit,
    });
  }
  return issues;
}

function mapCuts(
  drawing: Drawing,
  change: (items: readonly DrawingItem[]) => readonly DrawingItem[],
): Drawing {
  const layers = drawing.layers.map(
    (layer): DrawingLayer => (layer.name === 'cut' ? { ...layer, items: change(layer.items) } : layer),
  );
  return { ...drawing, layers };
}

function isClosed(item: DrawingItem): item is DrawingPath {
  return item.kind === 'path' && item.closed;
}

/** How many closed cuts a closed cut lies inside. */
function depthOf(path: DrawingPath, closed: readonly DrawingPath[]): number {
  const [x, y] = path.points;
  return closed.filter((other) => other !== path && isInsidePolygon(other.points, x, y)).length;
}

function widenCuts(drawing: Drawing, distance: number): Drawing {
  if (distance === 0) return drawing;
  return mapCuts(drawing, (items) => {
    const closed = items.filter(isClosed);
    return items.map((item) => {
      if (!isClosed(item)) return item;
      const isHole = depthOf(item, closed) % 2 === 1;
      const turns = Math.sign(measurePolygonArea(item.points));
      const upright = turns < 0 ? reversed(item.points) : item.points;
      return { ...item, points: offsetPolygon(upright, isHole ? -distance : distance) };
    });
  });
}

function reversed(points: Float64Array): Float64Array {
  const count = points.length / 2;
  return Float64Array.from(points, (_, i) => points[2 * (count - 1 - Math.floor(i / 2)) + (i % 2)]);
}

/** Open cuts first, then closed ones from the innermost outwards: what is cut loose moves. */
function orderCuts(drawing: Drawing): Drawing {
  return mapCuts(drawing, (items) => {
    const closed = items.filter(isClosed);
    const depths = new Map(closed.map((path) => [path, depthOf(path, closed)]));
    const open = items.filter((item) => !isClosed(item));
    return [...open, ...closed.sort((a, b) => (depths.get(b) ?? 0) - (depths.get(a) ?? 0))];
  });
}
