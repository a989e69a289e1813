import { type Cloth, clothOfProblem } from './cloth-of-problem.ts';
import { type Body, Layout, type Stance } from './layout.ts';
import { boxOf, type ReadyOutline, readyOutline, type Shape, turnShape } from './make-shapes.ts';
import { measureOverlap } from './measure-overlap.ts';
import type { NestPlacement, NestProblem } from './types.ts';

/** Of the largest diameter: what outlines are grown by, so that rounding to single precision hides no overlap. */
const HAIR = 2.5e-7;
/** Of the diameter of an item: how far beyond it and its gap its simplified outline may reach. */
const TOLERANCE = 3e-4;

export interface Prepared {
  /** Items first, in their order, then what is taken from the start. */
  readonly layout: Layout;
  readonly cloth: Cloth;
}

/** Shapes of all items in all turns, each made once, and the layout they are laid in; nothing is laid but what stays. */
export function prepareSearch(problem: NestProblem): Prepared {
  const cloth = clothOfProblem(problem);
  const { obstacles } = cloth;
  const outlines = [...problem.items.map(({ outline }) => outline), ...obstacles];
  const hair = HAIR * Math.max(...outlines.map(reachOf));
  const shapes: Shape[] = [];
  const shapeOf = rememberShapes(hair, shapes);
  const bodies: Body[] = problem.items.map(({ outline, turns, held }) => {
    const stances = turns.map(({ angle, mirrored, latticeX, latticeY }, turn): Stance => {
      return { shape: shapeOf(outline, angle, mirrored, problem.gap / 2), turn, latticeX, latticeY };
    });
    return { stances, moves: held === undefined };
  });
  for (const outline of obstacles) {
    const shape = shapeOf(outline, 0, false, 0);
    bodies.push({ stances: [{ shape, turn: 0, latticeX: undefined, latticeY: undefined }], moves: false });
  }
  const layout = new Layout(bodies, problem.items.length, shapes, cloth.zones, measureOverlap(shapes));
  layWhatStays(problem, layout);
  return { layout, cloth };
}

/** Longer side of the box. */
function reachOf(outline: Float64Array): number {
  const [left, bottom, right, top] = boxOf(outline);
  return Math.max(right - left, top - bottom);
}

function rememberShapes(hair: number, shapes: Shape[]) {
  const outlines = new Map<string, ReadyOutline>();
  const places = new Map<string, number>();
  return (outline: Float64Array, angle: number, mirrored: boolean, margin: number): number => {
    const key = `${margin} ${outline.join()}`;
    const place = `${key} ${angle} ${mirrored}`;
    const known = places.get(place);
    if (known !== undefined) return known;
    const ready = outlines.get(key) ?? readyOutline(outline, margin + hair, TOLERANCE * reachOf(outline));
    outlines.set(key, ready);
    places.set(place, shapes.length);
    return shapes.push(turnShape(ready, angle, mirrored)) - 1;
  };
}

function layWhatStays(problem: NestProblem, layout: Layout): void {
  problem.items.forEach(({ held }, k) => {
    if (held) layAt(layout, k, held);
  });
  for (let k = problem.items.length; k < layout.count; k++) {
    const { middleX, middleY } = layout.shapes[layout.bodies[k].stances[0].shape];
    layout.lay(k, 0, middleX, middleY);
  }
}

/** Lays an item where a placement says. */
export function layAt(layout: Layout, body: number, { turn, sheet, x, y }: NestPlacement): void {
  const { middleX, middleY } = layout.shapes[layout.bodies[body].stances[turn].shape];
  const zone = layout.zones.find((one) => one.sheet === sheet) ?? layout.zones[0];
  layout.lay(body, turn, zone.originX + x + middleX, zone.originY + y + middleY);
}
