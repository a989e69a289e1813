import type { Phrase } from '../base/index.ts';
import type { PieceEdge, PieceInput } from '../pattern/index.ts';
import { makeOval } from './make-oval.ts';
import { phrase } from './phrases.ts';
import type { InsideForm, InsideShape } from './types.ts';

/** Heights sampled along a profile. */
const SAMPLES = 60;
/** Height of the shoulder support below the shoulder line, mm. */
const SUPPORT_DEPTH = 45;
const FOAM_INSET = 2;
/** Rise over run at which the shoulder line becomes the neck. */
const STEEPEST = 1;

/**
 * Templates of the neck's filler block, cut from foam: its outline from above, and its profiles from front and side, all
 * inside the cloth. And the shoulder supports of board: upright bridges from the neck block to the armhole plates right
 * under the shoulder seams, so that a garment hangs on neck plate and pole and not on the filling.
 */
export function blockInputs(
  form: InsideForm,
  shape: InsideShape,
  clothThickness: number,
  shellDepth: number,
): PieceInput[] {
  const inset = clothThickness + FOAM_INSET + shellDepth;
  return [
    footOfNeck(form, shape, inset),
    profileOfNeck(form, 'side', inset),
    profileOfNeck(form, 'front', inset),
    shoulderSupport(form, 'right', 2 * clothThickness + shellDepth),
    shoulderSupport(form, 'left', 2 * clothThickness + shellDepth),
  ];
}

function edge(id: string, points: number[] | Float64Array): PieceEdge {
  return { kind: 'opening', id, letter: '', points: Float64Array.from(points), marks: [], bodyHalf: 'front' };
}

function piece(
  id: string,
  name: Phrase,
  side: PieceInput['side'],
  edges: PieceEdge[],
  material: string,
): PieceInput {
  return {
    id,
    name,
    side,
    edges,
    levelLines: [],
    material,
    grainWord: phrase(material === 'card' ? 'grain.flutes' : 'grain.up'),
  };
}

/** Seen from above, drawn in by the inset along the way to its middle; the pole in its sleeve goes through it. */
function footOfNeck(form: InsideForm, { pole }: InsideShape, inset: number): PieceInput {
  const count = 192;
  const chart = new Float64Array(2 * count);
  for (let i = 0; i < count; i++) chart.set([(2 * Math.PI * i) / count, form.neckBaseV], 2 * i);
  const points = form.surface.evaluate(chart);
  const y0 = 0.5 * (points[3 * (count / 4) + 1] + points[3 * ((3 * count) / 4) + 1]);
  const ring = Array.from({ length: count }, (_, i) => {
    const [x, y] = [points[3 * i], points[3 * i + 1] - y0];
    const t = 1 - inset / Math.hypot(x, y);
    return [t * x, t * y];
  });
  const part = (from: number, to: number): number[] => {
    return Array.from({ length: to - from + 1 }, (_, i) => ring[(from + i) % count]).flat();
  };
  const eighth = count / 8;
  const names = ['right', 'front', 'left', 'back'];
  const edges = names.map((name, q) =>
    edge(name, part((2 * q - 1) * eighth + count, (2 * q + 1) * eighth + count)),
  );
  const radius = pole.sleeveGirth / (2 * Math.PI);
  const hole = { id: 'pole', name: 'pole', points: makeOval(0, pole.y - y0, radius, radius) };
  const foot = piece('neck-block-foot', phrase('neck-block.from-above'), 'centre', edges, 'foam');
  return { ...foot, cutouts: [hole] };
}

/** The block's outline in the middle plane (side) or through its sides (front); up is up. */
function profileOfNeck(form: InsideForm, view: 'side' | 'front', inset: number): PieceInput {
  const top = form.surface.vRange[1];
  const angles = view === 'side' ? ([-Math.PI / 2, Math.PI / 2] as const) : ([Math.PI, 0] as const);
  const line = (u: number, sign: 1 | -1): number[][] => {
    const chart = new Float64Array(2 * (SAMPLES + 1));
    for (let i = 0; i <= SAMPLES; i++)
      chart.set([u, form.neckBaseV + ((top - form.neckBaseV) * i) / SAMPLES], 2 * i);
    const points = form.surface.evaluate(chart);
    return Array.from({ length: SAMPLES + 1 }, (_, i) => {
      return [points[3 * i + (view === 'side' ? 1 : 0)] - sign * inset, points[3 * i + 2]];
    });
  };
  const near = line(angles[0], -1);
  const far = line(angles[1], 1);
  const last = SAMPLES;
  const [nearName, farName] = view === 'side' ? ['back', 'front'] : ['left', 'right'];
  const edges = [
    edge('foot', [...near[0], ...far[0]]),
    edge(farName, far.flat()),
    edge('neck plate', [...far[last], ...near[last]]),
    edge(nearName, near.toReversed().flat()),
  ];
  return piece(`neck-block-${view}`, phrase(`neck-block.from-${view}`), 'centre', edges, 'foam');
}

/** Upright board under the shoulder seam, from the foot of the neck to the shoulder point; seen from the front. */
function shoulderSupport(form: InsideForm, side: 'right' | 'left', inset: number): PieceInput {
  const u = side === 'right' ? 0 : Math.PI;
  const chart = new Float64Array(2 * (SAMPLES + 1));
  const low = form.shoulderPointV;
  for (let i = 0; i <= SAMPLES; i++) chart.set([u, low + ((form.neckBaseV - low) * i) / SAMPLES], 2 * i);
  const points = form.surface.evaluate(chart);
  const whole = Array.from({ length: SAMPLES + 1 }, (_, i) => [points[3 * i], points[3 * i + 2] - inset]);
  // Where it climbs the neck it would be a spike that bends and carries nothing: the neck block is there.
  const climbs = whole.findIndex(([x, z], i) => {
    return i > 0 && z - whole[i - 1][1] > STEEPEST * Math.abs(x - whole[i - 1][0]);
  });
  const line = climbs > 1 ? whole.slice(0, climbs) : whole;
  const outer = line[0];
  const inner = line[line.length - 1];
  const floor = outer[1] - SUPPORT_DEPTH;
  // Counter-clockwise with the outer end on its own side.
  const upper = side === 'right' ? line : line.toReversed();
  const [left, right] = side === 'right' ? [inner, outer] : [outer, inner];
  const names = side === 'right' ? ['neck', 'armhole plate'] : ['armhole plate', 'neck'];
  const edges = [
    edge('down', [left[0], floor, right[0], floor]),
    edge(names[1], [right[0], floor, ...right]),
    edge('shoulder seam', upper.flat()),
    edge(names[0], [...left, left[0], floor]),
  ];
  return piece(`shoulder-support-${side}`, phrase('shoulder-support.name', { side }), side, edges, 'card');
}
