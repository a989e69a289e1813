import { type Issue, type Phrase, withUsual } from '../base/index.ts';
import {
  boundsOfPolyline,
  isInsidePolygon,
  measureDistanceToPolyline,
  measurePolyline,
} from '../math/index.ts';
import type { PieceEdge, PieceInput, PieceLine } from '../pattern/index.ts';
import { makeArmJoint, poleOfMagnets } from './arm-joint.ts';
import { armPlates, wristPlates } from './arm-plates.ts';
import { boardCover, boardLayers, quarterOf } from './board-pieces.ts';
import { depthOfShell } from './cloth-growth.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { joinSides } from './join-sides.ts';
import { makeOval } from './make-oval.ts';
import { hasPlateCovers } from './parts-of-inside.ts';
import { phrase } from './phrases.ts';
import {
  BOARD_BESIDE_HOLE,
  largestInset,
  type OpeningId,
  outlinePlate,
  type PlateOutline,
} from './plate-outline.ts';
import { type PlateRings, plateRings, ringInSewnEdge } from './plate-rings.ts';
import { placeTabSlots } from './tab-slots.ts';
import type { InsideForm, InsideOptions, InsideShape, Side } from './types.ts';

/** Play of the pole in a plate's hole, mm on the diameter (common practice: 0.5 to 1). */
const POLE_PLAY = 1;
/** Between board and the outside of the shell: the shell, its allowance turned in, and the cover or the tape round the rim. */
const CLOTH_LAYERS = 3;
const STUFFING_RADIUS = 38;
const LID_OVERLAP = 14;
/** Board kept beside a hole, mm. */
const BOARD_MARGIN = 12;

/** Ids of the plates that fill the openings. */
const PLATES: Readonly<Record<OpeningId, string>> = {
  base: 'base-plate',
  neck: 'neck-plate',
  armholeRight: 'armhole-plate-right',
  armholeLeft: 'armhole-plate-left',
};
type EdgeOfPlate = 'right' | 'left' | 'front' | 'back' | 'up' | 'down';
/** The four edges as a maker names them, from the right hand of the drawing counter-clockwise. */
const EDGES: Readonly<Record<OpeningId, readonly [EdgeOfPlate, EdgeOfPlate, EdgeOfPlate, EdgeOfPlate]>> = {
  base: ['right', 'front', 'left', 'back'],
  neck: ['right', 'front', 'left', 'back'],
  armholeRight: ['front', 'up', 'back', 'down'],
  armholeLeft: ['back', 'up', 'front', 'down'],
};

export interface PlateSet {
  readonly inputs: readonly PieceInput[];
  readonly issues: readonly Issue[];
  readonly rims: readonly PlateRim[];
}

/** How the shell stands to a plate's rim where it leans most, inwards (a bevel) or outwards (a gap behind the rim). */
export interface PlateRim {
  /** The opening it fills. */
  readonly plate: OpeningId;
  readonly where: EdgeOfPlate;
  readonly kind: 'bevel' | 'gap';
  /** Radians, positive. */
  readonly angle: number;
  /** Over the whole thickness of the board, mm. */
  readonly depth: number;
}

/**
 * Board plates for every opening, each as two layers whose flutes cross, the base with pole and stuffing holes and their
 * lids, the neck with a pole hole; and a cloth cover for each that is to have one. A plate is the shell's edge less the shell's cloth (with
 * its turned-in allowance) and the cover's: 3 layers of cloth; see `plateRings` for what the board's thickness takes.
 */
export function plateInputs(form: InsideForm, shape: InsideShape, options: InsideOptions): PlateSet {
  const { clothThickness, boardThickness } = withUsual(INSIDE_OPTIONS, options);
  const inset = CLOTH_LAYERS * clothThickness + depthOfShell(options);
  const areCovered = hasPlateCovers(options, form.arms.length > 0);
  const issues: Issue[] = [];
  const rims: PlateRim[] = [];
  const inputs = (Object.keys(PLATES) as OpeningId[]).flatMap((id) => {
    const outline = outlinePlate(form, id);
    if (!outline) return [];
    const rings = plateRings(outline, boardThickness, inset);
    if (!rings) {
      issues.push(vanishedPlate(plateAt(id), outline.edge, clothThickness, depthOfShell(options)));
      return [];
    }
    rims.push(...rimsOf(id, outline, rings));
    const { outer: ring, inner } = rings;
    const { side } = plateAt(id);
    const board = {
      id: PLATES[id],
      name: nameOfPlate(id),
      side: side ?? 'centre',
      edgeNames: EDGES[id],
      ring,
      ...(inner && { innerRing: inner }),
    } as const;
    const arm = form.arms.find((one) => one.side === side);
    if (side && arm) {
      // The arm's own edge comes out a little other than the torso's; holes keep from the smaller plate's edge.
      const excess = arm.armholeLength - measurePolyline(outline.edge, true);
      const armRing = ringInSewnEdge(outline.edge, excess, CLOTH_LAYERS * clothThickness) ?? ring;
      const isArmSmaller = measurePolyline(armRing, true) < measurePolyline(ring, true);
      const joint = makeArmJoint(isArmSmaller ? armRing : ring, side, options);
      issues.push(...joint.issues);
      const pole = poleOfMagnets(side, 'torso');
      const own = armPlates(side, armRing, joint.holes);
      const peg = joint.holes.filter(({ id: hole }) => hole === 'peg');
      return [...boardLayers(board, joint.holes, pole), boardCover(board, peg), ...own];
    }
    const holes = id === 'base' || id === 'neck' ? holesOf(id, outline, ring, shape) : [];
    const tight = holes.filter(({ line }) => isTight(line.points, inner ?? ring));
    issues.push(...tight.map(tightHole));
    const round = holes.map(({ line }) => line);
    const lines = id === 'base' ? [...round, ...slotsOf(inner ?? ring, round, shape)] : round;
    return [...boardLayers(board, lines), ...(areCovered ? [boardCover(board, lines)] : [])];
  });
  // Arms are cut to the body: nothing is taken off them.
  const wrists = wristPlates(form.arms, CLOTH_LAYERS * clothThickness);
  for (const { side, edge } of wrists.vanished)
    issues.push(vanishedPlate({ plate: 'wrist', side }, edge, clothThickness, 0));
  return { inputs: [...inputs, ...lidInputs(inputs), ...wrists.inputs], issues: joinSides(issues), rims };
}

/** Which plate, told apart from its side. */
interface PlatePlace {
  readonly plate: 'base' | 'neck' | 'armhole' | 'wrist';
  readonly side?: Side;
}

function plateAt(id: OpeningId): PlatePlace {
  if (id === 'base' || id === 'neck') return { plate: id };
  return { plate: 'armhole', side: id === 'armholeRight' ? 'right' : 'left' };
}

function nameOfPlate(id: OpeningId): Phrase {
  if (id === 'base' || id === 'neck') return phrase(`plate.${id}`);
  return phrase('plate.armhole', { side: id === 'armholeRight' ? 'right' : 'left' });
}

function vanishedPlate(
  plate: PlatePlace,
  edge: Float64Array,
  clothThickness: number,
  shellDepth: number,
): Issue {
  const room = largestInset(edge);
  const cloth = CLOTH_LAYERS * clothThickness;
  const code = 'plate-vanishes';
  if (shellDepth > cloth) {
    // Half the shell's own thickness is in the depth.
    const most = Math.max(0, Math.floor(room - cloth - clothThickness / 2));
    const cover = shellDepth - clothThickness / 2;
    const message = phrase('inside.plate-vanishes-under-cover', { ...plate, cover, most });
    return { code, path: 'coverThickness', message, severity: 'error', measured: cover, limit: most };
  }
  const most = Math.max(0, room - shellDepth) / CLOTH_LAYERS;
  const message = phrase('inside.plate-vanishes', {
    ...plate,
    layers: CLOTH_LAYERS,
    cloth: clothThickness,
    most: Math.floor(10 * most) / 10,
  });
  const path = 'clothThickness';
  return { code, path, message, severity: 'error', measured: clothThickness, limit: most };
}

function rimsOf(id: OpeningId, { edge }: PlateOutline, { bevel, gap }: PlateRings): PlateRim[] {
  const rim = (kind: PlateRim['kind'], index: number, angle: number, depth: number): PlateRim => {
    return { plate: id, where: EDGES[id][quarterOf(edge, index)], kind, angle, depth };
  };
  return [
    ...(bevel ? [rim('bevel', bevel.index, bevel.angle, bevel.step)] : []),
    ...(gap ? [rim('gap', gap.index, gap.angle, gap.wedge)] : []),
  ];
}

/** A hole of the base or neck plate. */
interface PlateHole {
  readonly plate: 'base' | 'neck';
  readonly hole: 'pole' | 'stuffing';
  readonly side?: Side;
  readonly line: PieceLine;
}

function holesOf(
  plate: 'base' | 'neck',
  outline: PlateOutline,
  ring: Float64Array,
  shape: InsideShape,
): PlateHole[] {
  const { y, radius, zBottom, zTop } = shape.pole;
  const [px, py] = outline.flatten(0, y, plate === 'base' ? zBottom : zTop);
  const round = (id: string, x: number, r: number): PieceLine => {
    return { id, name: id, points: makeOval(x, py, r, r) };
  };
  const pole: PlateHole = { plate, hole: 'pole', line: round('pole', px, radius + POLE_PLAY / 2) };
  if (plate === 'neck') return [pole];
  const { minX, maxX } = boundsOfPolyline(ring);
  const halfWidth = 0.5 * (maxX - minX);
  const x = 0.5 * (halfWidth + radius);
  const r = Math.min(STUFFING_RADIUS, 0.5 * (halfWidth - radius) - 2 * BOARD_MARGIN);
  const stuffing = (['right', 'left'] as const).map((side): PlateHole => {
    const line = round(`stuffing-${side}`, side === 'right' ? x : -x, r);
    return { plate, hole: 'stuffing', side, line };
  });
  return [pole, ...stuffing];
}

/** Slots in the base plate for the tabs of the sleeve. */
function slotsOf(
  ring: Float64Array,
  [pole, ...others]: readonly PieceLine[],
  shape: InsideShape,
): PieceLine[] {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(pole.points);
  const hole = { x: 0.5 * (minX + maxX), y: 0.5 * (minY + maxY), radius: 0.5 * (maxX - minX) };
  return placeTabSlots(ring, hole, others, shape.pole.sleeveGirth);
}

function isTight(hole: Float64Array, ring: Float64Array): boolean {
  for (let i = 0; i < hole.length; i += 2) {
    if (!isInsidePolygon(ring, hole[i], hole[i + 1])) return true;
    if (measureDistanceToPolyline(ring, true, hole[i], hole[i + 1]) < BOARD_BESIDE_HOLE) return true;
  }
  return false;
}

function tightHole({ hole, side, plate }: PlateHole): Issue {
  const message = phrase('inside.hole-near-edge', {
    hole,
    plate,
    least: BOARD_BESIDE_HOLE,
    ...(side && { side }),
  });
  return {
    code: 'hole-near-edge',
    path: 'tubeDiameter',
    message,
    severity: 'warning',
    limit: BOARD_BESIDE_HOLE,
  };
}

/** A lid for each stuffing hole of the base: larger all round, glued or laced on from below. */
function lidInputs(inputs: readonly PieceInput[]): PieceInput[] {
  const base = inputs.find(({ id }) => id === 'base-plate-1');
  return (['right', 'left'] as const).flatMap((side): PieceInput[] => {
    const hole = base?.cutouts?.find(({ id }) => id === `stuffing-${side}`);
    if (!hole) return [];
    const { minX, maxX } = boundsOfPolyline(hole.points);
    const radius = 0.5 * (maxX - minX) + LID_OVERLAP;
    const ring = makeOval(0, 0, radius, radius, true);
    const half = 2 * ((ring.length / 2 - 1) >> 1) + 2;
    const edge = (part: Float64Array): PieceEdge => {
      return { kind: 'opening', id: 'lid', letter: '', points: part, marks: [], bodyHalf: 'front' };
    };
    return [
      {
        id: `lid-${hole.id}`,
        name: phrase('plate.lid', { side }),
        side: 'centre',
        edges: [edge(ring.slice(0, half)), edge(ring.slice(half - 2))],
        levelLines: [],
        material: 'card',
        grainWord: phrase('grain.flutes'),
      },
    ];
  });
}
