import { Clipper, FillRule } from 'clipper2-ts';
import type { LaidPiece, LayPlan } from '../../src/core/laying/index.ts';
import type { Piece } from '../../src/core/pattern/index.ts';

interface Vertex {
  readonly x: number;
  readonly y: number;
}

/** Micrometres, in which the polygon library reckons. */
const FINE = 1000;

/** Where a point of a piece comes to lie, by complex numbers: z ↦ e^{iα} z + t. */
export function placed([px, py]: readonly [number, number], { x, y, angle }: LaidPiece): [number, number] {
  const [re, im] = [Math.cos(angle), Math.sin(angle)];
  return [re * px - im * py + x, im * px + re * py + y];
}

/** Cut outline of every piece on the cloth. */
export function outlinesOf(plan: LayPlan, pieces: readonly Piece[]): Vertex[][] {
  return plan.placed.map((laid) => {
    const piece = pieces.find(({ id }) => id === laid.piece);
    if (!piece) throw new Error(laid.piece);
    const { cutLine } = piece;
    return Array.from({ length: cutLine.length / 2 }, (_, i) => {
      const [x, y] = placed([cutLine[2 * i], cutLine[2 * i + 1]], laid);
      return { x, y };
    });
  });
}

/** Largest overlap of two pieces on one sheet, mm², by the intersection of polygons of an independent library (Clipper2). */
export function largestOverlap(plan: LayPlan, pieces: readonly Piece[]): number {
  const fine = outlinesOf(plan, pieces).map((outline) =>
    outline.map(({ x, y }) => ({ x: Math.round(FINE * x), y: Math.round(FINE * y) })),
  );
  let worst = 0;
  for (let i = 0; i < fine.length; i++)
    for (let j = 0; j < i; j++) {
      if (plan.placed[i].sheet !== plan.placed[j].sheet) continue;
      const common = Clipper.intersect([fine[i]], [fine[j]], FillRule.NonZero);
      const area = common.reduce((sum, path) => sum + Math.abs(Clipper.area(path)), 0);
      worst = Math.max(worst, area / FINE ** 2);
    }
  return worst;
}
