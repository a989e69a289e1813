import { verbatim } from '../base/index.ts';
import { boundsOfPolyline } from '../math/index.ts';
import type { NamedLine, PieceInput, PieceLine } from '../pattern/index.ts';
import { makeOval } from './make-oval.ts';

/** Cloth turned to the inside round a hole, mm; a hole hardly larger is cut as a star from its middle. Common practice, no source. */
const TURNING = 12;
/** Least radius of what is cut out in the middle, mm: below, the star's cuts meet there. */
const LEAST_CUTOUT = 8;
/** A star cut ends so far before the fold, mm, so that the turned edge shows no end of a cut. */
const BEFORE_FOLD = 1;
/** Along the fold from one cut to the next about so much, mm; never fewer than six cuts. */
const BETWEEN_CUTS = 14;

export type HolesOfCover = Pick<PieceInput, 'cutouts' | 'stitchLines' | 'clipLines'>;

/**
 * The holes of a cover over a plate's holes: the plate's own outline as the fold, what is cut away inside it, and the cuts up to the
 * fold between which the cloth is turned in. A slot is cut along its middle with a fork at each end.
 */
export function turnedHoles(holes: readonly PieceLine[]): HolesOfCover {
  if (holes.length === 0) return {};
  const folds = holes.map(({ id, points }): NamedLine => {
    return { id: `turn-${id}`, name: verbatim(`turn-${id}`), points: closed(points) };
  });
  const made = holes.map((hole) => (isSlot(hole) ? cutSlot(hole) : cutRound(hole)));
  const cutouts = made.flatMap((each) => each.cutouts);
  return {
    stitchLines: folds,
    clipLines: made.flatMap(({ clips }) => clips),
    ...(cutouts.length > 0 && { cutouts }),
  };
}

interface CutHole {
  readonly cutouts: readonly PieceLine[];
  readonly clips: readonly PieceLine[];
}

function isSlot({ points }: PieceLine): boolean {
  return points.length === 8;
}

function closed(points: Float64Array): Float64Array {
  return Float64Array.of(...points, points[0], points[1]);
}

function cutRound({ id, points }: PieceLine): CutHole {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(points);
  const [x, y, fold] = [0.5 * (minX + maxX), 0.5 * (minY + maxY), 0.5 * (maxX - minX)];
  const inner = fold - TURNING >= LEAST_CUTOUT ? fold - TURNING : 0;
  const count = Math.max(6, Math.round((2 * Math.PI * fold) / BETWEEN_CUTS));
  const clips = Array.from({ length: count }, (_, k): PieceLine => {
    const angle = (2 * Math.PI * k) / count;
    const at = (r: number): number[] => [x + r * Math.cos(angle), y + r * Math.sin(angle)];
    return line(`star-${id}-${k + 1}`, at(inner), at(fold - BEFORE_FOLD));
  });
  return { cutouts: inner > 0 ? [{ id, name: id, points: makeOval(x, y, inner, inner) }] : [], clips };
}

/** Corners of a slot run along it, then back: 0–1 and 2–3 are its long sides. */
function cutSlot({ id, points }: PieceLine): CutHole {
  const corner = (k: number): number[] => [points[2 * k], points[2 * k + 1]];
  const middle = (a: number[], b: number[]): number[] => [0.5 * (a[0] + b[0]), 0.5 * (a[1] + b[1])];
  const [start, end] = [middle(corner(0), corner(3)), middle(corner(1), corner(2))];
  const length = Math.hypot(end[0] - start[0], end[1] - start[1]);
  const width = Math.hypot(points[6] - points[0], points[7] - points[1]);
  const fork = Math.min(0.25, (1.5 * width) / length);
  const mix = (t: number): number[] => [
    start[0] + t * (end[0] - start[0]),
    start[1] + t * (end[1] - start[1]),
  ];
  return {
    cutouts: [],
    clips: [
      line(`slit-${id}`, mix(fork), mix(1 - fork)),
      line(`slit-${id}-1`, corner(0), mix(fork)),
      line(`slit-${id}-2`, corner(3), mix(fork)),
      line(`slit-${id}-3`, corner(1), mix(1 - fork)),
      line(`slit-${id}-4`, corner(2), mix(1 - fork)),
    ],
  };
}

function line(id: string, from: number[], to: number[]): PieceLine {
  return { id, name: id, points: Float64Array.of(...from, ...to) };
}
