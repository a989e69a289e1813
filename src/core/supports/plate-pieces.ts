import type { Issue } from '../base/index.ts';
import { isInsidePolygon, measureDistanceToPolyline } from '../math/index.ts';
import type { PieceEdge, PieceInput, PieceLine } from '../pattern/index.ts';
import { makeArmJoint, poleOfMagnets } from './arm-joint.ts';
import { armPlates, wristPlates } from './arm-plates.ts';
import { boardCover, boardLayers } from './board-pieces.ts';
import { makeOval } from './make-oval.ts';
import { insetRing, type OpeningId, outlinePlate, type PlateOutline } from './plate-outline.ts';
import type { InsideForm, InsideOptions, InsideShape } from './types.ts';

/** Play of the pole in a plate's hole, mm on the diameter (common practice: 0.5 to 1). */
const POLE_PLAY = 1;
const STUFFING_RADIUS = 38;
const LID_OVERLAP = 14;
/** Board kept beside a hole, mm. */
const BOARD_MARGIN = 12;

const NAMES: Readonly<Record<OpeningId, string>> = {
  base: 'base plate',
  neck: 'neck plate',
  armholeRight: 'armhole plate right',
  armholeLeft: 'armhole plate left',
};
/** The four edges as a maker names them, from the right hand of the drawing counter-clockwise. */
const EDGES: Readonly<Record<OpeningId, readonly [string, string, string, string]>> = {
  base: ['right', 'front', 'left', 'back'],
  neck: ['right', 'front', 'left', 'back'],
  armholeRight: ['front', 'up', 'back', 'down'],
  armholeLeft: ['back', 'up', 'front', 'down'],
};

export interface PlateSet {
  readonly inputs: readonly PieceInput[];
  readonly issues: readonly Issue[];
}

/**
 * Board plates for every opening, each as two layers whose flutes cross, the base with pole and stuffing holes and their
 * lids, the neck with a pole hole; and a cloth cover for each. A plate is the shell's edge less the shell's cloth (with
 * its turned-in allowance) and the cover's: 3 layers of cloth.
 */
export function plateInputs(form: InsideForm, shape: InsideShape, options: InsideOptions): PlateSet {
  const clothThickness = options.clothThickness ?? 0.6;
  const inset = 3 * clothThickness;
  const issues: Issue[] = [];
  const inputs = (Object.keys(NAMES) as OpeningId[]).flatMap((id) => {
    const outline = outlinePlate(form, id);
    if (!outline) return [];
    const ring = insetRing(outline.edge, inset);
    const side = id === 'armholeRight' ? 'right' : id === 'armholeLeft' ? 'left' : null;
    const board = {
      id: NAMES[id].replaceAll(' ', '-'),
      name: NAMES[id],
      side: side ?? 'centre',
      edgeNames: EDGES[id],
      ring,
    } as const;
    if (side && form.arms.some((arm) => arm.side === side)) {
      const joint = makeArmJoint(ring, side, options);
      issues.push(...joint.issues);
      const note = ` – ${poleOfMagnets(side, 'torso')} out`;
      const own = armPlates(side, ring, joint.holes);
      return [...boardLayers(board, joint.holes, note), boardCover(board), ...own];
    }
    const holes = side ? [] : holesOf(id, outline, ring, shape);
    const tight = holes.filter((hole) => isTight(hole.points, ring));
    for (const hole of tight) issues.push(tightHole(NAMES[id], hole.name));
    return [...boardLayers(board, holes), boardCover(board)];
  });
  return { inputs: [...inputs, ...lidInputs(inputs), ...wristPlates(form.arms, inset)], issues };
}

function holesOf(id: OpeningId, outline: PlateOutline, ring: Float64Array, shape: InsideShape): PieceLine[] {
  const { y, radius, zBottom, zTop } = shape.pole;
  const [px, py] = outline.flatten(0, y, id === 'base' ? zBottom : zTop);
  const pole = {
    id: 'pole',
    name: 'pole',
    points: makeOval(px, py, radius + POLE_PLAY / 2, radius + POLE_PLAY / 2),
  };
  if (id === 'neck') return [pole];
  const xs = ring.filter((_, i) => i % 2 === 0);
  const halfWidth = 0.5 * (Math.max(...xs) - Math.min(...xs));
  const x = 0.5 * (halfWidth + radius);
  const r = Math.min(STUFFING_RADIUS, 0.5 * (halfWidth - radius) - 2 * BOARD_MARGIN);
  const stuffing = [x, -x].map((cx, i) => {
    const side = i === 0 ? 'right' : 'left';
    return { id: `stuffing-${side}`, name: `stuffing ${side}`, points: makeOval(cx, py, r, r) };
  });
  return [pole, ...stuffing];
}

function isTight(hole: Float64Array, ring: Float64Array): boolean {
  for (let i = 0; i < hole.length; i += 2) {
    if (!isInsidePolygon(ring, hole[i], hole[i + 1])) return true;
    if (measureDistanceToPolyline(ring, true, hole[i], hole[i + 1]) < 6) return true;
  }
  return false;
}

function tightHole(plate: string, hole: string): Issue {
  const message = `The ${hole} hole comes nearer than 6 mm to the edge of the ${plate}: take a thinner tube, or thin ply instead of card.`;
  return { code: 'hole-near-edge', path: 'tubeDiameter', message, severity: 'warning', limit: 6 };
}

/** A lid for each stuffing hole of the base: larger all round, glued or laced on from below. */
function lidInputs(inputs: readonly PieceInput[]): PieceInput[] {
  const base = inputs.find(({ id }) => id === 'base-plate-1');
  return (base?.cutouts ?? [])
    .filter(({ id }) => id.startsWith('stuffing'))
    .map(({ id, name, points }): PieceInput => {
      const xs = points.filter((_, i) => i % 2 === 0);
      const radius = 0.5 * (Math.max(...xs) - Math.min(...xs)) + LID_OVERLAP;
      const ring = makeOval(0, 0, radius, radius, true);
      const half = 2 * ((ring.length / 2 - 1) >> 1) + 2;
      const edge = (part: Float64Array): PieceEdge => {
        return { kind: 'opening', id: 'lid', letter: '', points: part, marks: [], bodyHalf: 'front' };
      };
      return {
        id: `lid-${id}`,
        name: `lid ${name}`,
        side: 'centre',
        edges: [edge(ring.slice(0, half)), edge(ring.slice(half - 2))],
        levelLines: [],
        material: 'card',
        grainWord: 'flutes',
      };
    });
}
