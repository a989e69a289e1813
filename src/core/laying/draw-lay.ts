import type { Say } from '../base/index.ts';
import {
  type DrawingItem,
  type DrawingLayer,
  foldText,
  makeLayer,
  makePath,
  makeText,
  measureText,
} from '../drawing/index.ts';
import { boundsOfPoints } from '../math/index.ts';
import type { Piece } from '../pattern/index.ts';
import { drawPrint } from './draw-print.ts';
import { innermostPoint } from './innermost-point.ts';
import type { LaidPiece, LayPlan, LayView, Stock } from './types.ts';

/** One to this. */
const SCALES = [1, 2, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100] as const;
/** mm on the page; 8 pt, the smallest that is read at arm's length beside a machine (common practice, no source). */
const LETTERS = 2.9;
/** In true size, read standing at the table. */
const LARGE_LETTERS = 12;
const ROW = 1.25;
const ARROW = 0.55;

/** A box on the page, mm, y down. */
export interface LayBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** The cloth's length goes up the page, its cut end below; else to the right. */
  readonly isUpright?: boolean;
}

export interface LayDrawing {
  readonly layers: readonly DrawingLayer[];
  /** One to this. */
  readonly scale: number;
  /** mm on the page. */
  readonly width: number;
  readonly height: number;
  /** Pieces with a number instead of their name, in the order of the numbers. */
  readonly numbered: readonly string[];
}

/** Every sheet of a plan, or the roll. */
export function viewsOfPlan({ ground, sheetsUsed, length }: LayPlan): LayView[] {
  if (ground.kind === 'roll') return [{ length, width: ground.width, sheet: 0 }];
  return ground.sheets.slice(0, sheetsUsed).map(({ outline }, sheet) => {
    const { maxX = 0, maxY = 0 } = boundsOfPoints([outline]) ?? {};
    return { length: maxX, width: maxY, sheet };
  });
}

/** The largest scale, one to so many, at which a view fits a box. */
export function scaleForView(view: LayView, box: Pick<LayBox, 'width' | 'height' | 'isUpright'>): number {
  const [across, up] = box.isUpright ? [view.width, view.length] : [view.length, view.width];
  const needed = Math.max(across / box.width, up / box.height);
  return SCALES.find((scale) => scale >= needed) ?? Math.ceil(needed);
}

/**
 * One view of a plan to scale, at the top left of the box: cloth with its selvedges, print, flaws and folds, every piece with its
 * name, or a number where the name has no room, and an arrow along its grain to its top. The cloth's cut end lies on the left, its
 * far end to the right, the selvedge at y = 0 below; upright, all that a quarter turn to the left. Path ids are `<use>/<piece>/cut`.
 */
export function drawLay(
  plan: LayPlan,
  view: LayView,
  pieces: readonly Piece[],
  stock: Stock,
  box: LayBox,
  say: Say,
): LayDrawing {
  const scale = scaleForView(view, box);
  const letters = scale === 1 ? LARGE_LETTERS : LETTERS;
  const [width, height] = (box.isUpright ? [view.width, view.length] : [view.length, view.width]).map(
    (side) => side / scale,
  );
  const onPage = (points: Float64Array): Float64Array =>
    points.map((value, i) => {
      if (!box.isUpright) return i % 2 === 0 ? box.x + value / scale : box.y + height - value / scale;
      return i % 2 === 0 ? box.x + width - points[i + 1] / scale : box.y + height - points[i - 1] / scale;
    });
  const ground = drawGround(plan, view, onPage);
  const [cut, mark, text]: DrawingItem[][] = [[], [], []];
  const numbered: string[] = [];
  for (const laid of plan.placed.filter(({ sheet }) => sheet === view.sheet)) {
    const piece = pieces.find(({ id }) => id === laid.piece);
    if (!piece) continue;
    const outline = onPage(placePiece(piece.cutLine, laid));
    const holes = (piece.cutouts ?? []).map(({ points }) => onPage(placePiece(points, laid)));
    cut.push(makePath(outline, { closed: true, id: `${plan.use}/${piece.id}/cut` }));
    for (const hole of holes) cut.push(makePath(hole, { closed: true }));
    const middle = innermostPoint(outline, holes);
    const words = nameOn(middle.radius, say(piece.name), letters);
    if (!words) numbered.push(piece.id);
    const rows = words ?? [String(numbered.length)];
    rows.forEach((row, i) => {
      const y = middle.y + letters * (ROW * (i - (rows.length - 1) / 2) + 0.35);
      text.push(makeText(middle.x, y, row, letters, { anchor: 'middle' }));
    });
    const angle = laid.angle + (box.isUpright ? Math.PI / 2 : 0);
    mark.push(...arrowOf(angle, middle, rows.length, letters));
  }
  return {
    layers: [
      makeLayer('fill', [...ground.fill, ...drawPrint(stock, view, scale, onPage)]),
      makeLayer('cut', cut),
      makeLayer('mark', [...ground.mark, ...mark]),
      makeLayer('text', text),
    ],
    scale,
    width,
    height,
    numbered,
  };
}

/** Points of a piece where it lies on the cloth. n × 2 mm. */
export function placePiece(
  points: Float64Array,
  { x, y, angle }: Pick<LaidPiece, 'x' | 'y' | 'angle'>,
): Float64Array {
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const placed = new Float64Array(points.length);
  for (let i = 0; i < points.length; i += 2) {
    placed[i] = cos * points[i] - sin * points[i + 1] + x;
    placed[i + 1] = sin * points[i] + cos * points[i + 1] + y;
  }
  return placed;
}

/** The name in rows that fit the piece beside each other and its arrow, or none. */
function nameOn(radius: number, name: string, letters: number): string[] | undefined {
  const row = ROW * letters;
  const most = Math.floor((1.6 * radius) / row) - 1;
  for (let count = 1; count <= Math.min(most, 4); count++) {
    // Half of the rows' height leaves so much of the widest inscribed circle.
    const half = ((count + 1) * row) / 2;
    const room = 2 * Math.sqrt(Math.max(0, radius * radius - half * half)) + 0.2 * radius;
    const rows = foldText(name, letters, room);
    if (rows.length <= count && rows.every((text) => measureText(text, letters) <= room)) return rows;
  }
  return undefined;
}

/** An arrow to the piece's top, under its name. */
function arrowOf(
  angle: number,
  { x, y, radius }: { x: number; y: number; radius: number },
  rows: number,
  letters: number,
): DrawingItem[] {
  const half = Math.min(1.6 * letters, 0.4 * radius);
  const [ux, uy] = [-Math.sin(angle), -Math.cos(angle)];
  // Under the name, whichever way it points.
  const down = letters * ((ROW * rows) / 2 + 0.3) + half * Math.abs(uy);
  const [cx, cy] = [x, y + down];
  const [tx, ty] = [cx + half * ux, cy + half * uy];
  const head = (ARROW * letters) / Math.SQRT2;
  const [ax, ay] = [-ux - uy, -uy + ux];
  const [bx, by] = [-ux + uy, -uy - ux];
  return [
    makePath([cx - half * ux, cy - half * uy, tx, ty]),
    makePath([
      tx + head * 0.7 * ax,
      ty + head * 0.7 * ay,
      tx,
      ty,
      tx + head * 0.7 * bx,
      ty + head * 0.7 * by,
    ]),
  ];
}

const CLOTH_TINT = { fill: '#f4f1ea', stroke: 'none' } as const;
const FLAW_TINT = { fill: '#d8c7c0', stroke: 'none' } as const;

function drawGround(
  { ground }: LayPlan,
  view: LayView,
  onPage: (points: Float64Array) => Float64Array,
): { fill: DrawingItem[]; mark: DrawingItem[] } {
  const sheet = ground.sheets[view.sheet];
  const isRoll = ground.kind === 'roll';
  const edge = isRoll
    ? Float64Array.of(0, 0, view.length, 0, view.length, view.width, 0, view.width)
    : sheet.outline;
  const line = (y: number): DrawingItem =>
    makePath(onPage(Float64Array.of(0, y, view.length, y)), { style: { dash: [2, 1.2] } });
  const usable = [ground.usableFrom, ground.usableFrom + ground.usableWidth];
  const flaws = isRoll ? ground.flaws : sheet.flaws;
  return {
    fill: [
      makePath(onPage(edge), { closed: true, style: CLOTH_TINT }),
      ...flaws.map((flaw) => makePath(onPage(flaw), { closed: true, style: FLAW_TINT })),
    ],
    mark: [
      makePath(onPage(edge), { closed: true }),
      ...(isRoll ? usable.filter((y) => y > 0 && y < view.width).map(line) : []),
      ...(sheet?.folds ?? []).map((fold) => makePath(onPage(fold), { style: { dash: [3, 1.5] } })),
    ],
  };
}
