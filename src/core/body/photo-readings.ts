import { findEdge, findRidge, type ShowPoint } from './find-edge.ts';
import { type ParameterId, POSE_IDS } from './parameter-ids.ts';
import type {
  BodyPhotos,
  FrontPhoto,
  PhotoClick,
  PhotoEdge,
  PhotoId,
  PhotoResidual,
  PhotoView,
  PicturePoint,
  SidePhoto,
} from './photo-types.ts';
import { projectPoint } from './project-point.ts';
import { KNOT } from './rails.ts';
import type { Reading } from './residual-of.ts';
import { reach, type TapeContext, type TapeReach } from './tape-rule.ts';
import type { ChartPoint } from './types.ts';

/** What a picture tells of one place, and which place that is. */
export interface PhotoReading extends Reading, Pick<PhotoResidual, 'photo' | 'of' | 'index' | 'axis'> {
  /** Where it was drawn. */
  readonly point: PicturePoint;
  /** +1 where what is drawn outside the body reads more, or where outside means nothing. */
  readonly outward: 1 | -1;
}

/** No hand draws better than this, mm. */
const LEAST_ERROR = 2;
/**
 * Errors of a line drawn by hand go together over about this, mm: points nearer than so tell the same again, and weigh less (in a
 * trial on made bodies 1.7 times the spread at 20 mm and 1 at 60 left least).
 */
const DRAWN_TOGETHER = 60;
/** A place shown by name is found to this, mm (common practice, no source). */
const CLICK_ERROR = 5;
/** Beyond so many spreads a point is more likely drawn wrong than true, and pulls no harder. */
const DOUBTED_BEYOND = 2;

const [FRONT, BACK] = [Math.PI / 2, -Math.PI / 2];
/** The middle of each edge in the chart. */
const MIDDLE: Readonly<Record<PhotoEdge, number>> = {
  right: 0,
  left: Math.PI,
  front: FRONT,
  back: BACK,
  rightShoulder: 0,
  leftShoulder: Math.PI,
};
const SHOULDER_ROWS = [KNOT.shoulderPoint, KNOT.neckBase] as const;
const TRUNK_ROWS = [KNOT.base, KNOT.neckBase] as const;

/** Every point of the outlines, then every place shown by name, as what the fit reads; a place may be read along both ways. */
export function listPhotoReadings(photos: BodyPhotos = {}): PhotoReading[] {
  return (['front', 'side'] as const).flatMap((photo) => {
    const drawn = photos[photo];
    if (drawn === undefined) return [];
    const seen = { photo, view: viewOf(photos, photo), drawn };
    return [...readOutline(seen), ...readClicks(seen)];
  });
}

interface Seen {
  readonly photo: PhotoId;
  readonly view: PhotoView;
  readonly drawn: FrontPhoto | SidePhoto;
}

function viewOf(photos: BodyPhotos, photo: PhotoId): PhotoView {
  return photo === 'front' ? 'front' : (photos.side?.seenFrom ?? 'right');
}

function readOutline(seen: Seen): PhotoReading[] {
  const { photo, drawn } = seen;
  return Object.entries(drawn.outline).flatMap(([edge, points]) => {
    const of = edge as PhotoEdge;
    const spread = Math.max(LEAST_ERROR, drawn.drawingError) * shareOfSpread(points);
    return points.map((point, index): PhotoReading => {
      const common = { photo, of, index, spread, point, reach: reachOf(photo, true) };
      return of === 'rightShoulder' || of === 'leftShoulder'
        ? { ...common, axis: 'q', ...readRidge(seen, of, point) }
        : { ...common, axis: 'p', ...readEdge(seen, of, point) };
    });
  });
}

/** How much wider a spread that many points of a line share is than that of each. */
function shareOfSpread(points: readonly PicturePoint[]): number {
  if (points.length < 2) return 1;
  const along = points.toSorted((a, b) => a.q - b.q || a.p - b.p);
  let length = 0;
  for (let i = 1; i < along.length; i++) {
    length += Math.hypot(along[i].p - along[i - 1].p, along[i].q - along[i - 1].q);
  }
  return Math.max(1, Math.sqrt((DRAWN_TOGETHER * (points.length - 1)) / Math.max(length, 1)));
}

type ReadOff = Pick<PhotoReading, 'read' | 'hold' | 'wanted' | 'doubtedBeyond' | 'outward'>;

/** How far out the silhouette lies at the point's height. */
function readEdge(seen: Seen, edge: PhotoEdge, { p, q }: PicturePoint): ReadOff {
  const outward = outwardOf(seen.view, edge);
  const hold = (base: TapeContext) => {
    const { u, v, slope } = findEdge(showOn(seen, base), q, MIDDLE[edge], outward, TRUNK_ROWS);
    return (context: TapeContext): number => {
      const at = new Float64Array(2);
      showOn(seen, context)(u, v, at);
      return outward * (at[0] - slope * (at[1] - q)) + context.poses.cloth;
    };
  };
  return {
    hold,
    read: (context) => hold(context)(context),
    wanted: outward * p,
    doubtedBeyond: DOUBTED_BEYOND,
    outward,
  };
}

/** How high the shoulder's line lies over the point: it runs too level to be read sideways. */
function readRidge(seen: Seen, edge: PhotoEdge, { p, q }: PicturePoint): ReadOff {
  const hold = (base: TapeContext) => {
    const { u, v, slope } = findRidge(showOn(seen, base), p, MIDDLE[edge], SHOULDER_ROWS);
    return (context: TapeContext): number => {
      const at = new Float64Array(2);
      showOn(seen, context)(u, v, at);
      return at[1] - slope * (at[0] - p) + context.poses.cloth;
    };
  };
  return {
    hold,
    read: (context) => hold(context)(context),
    wanted: q,
    doubtedBeyond: DOUBTED_BEYOND,
    outward: 1,
  };
}

/** Whether an edge looks to the picture's right. */
function outwardOf(view: PhotoView, edge: PhotoEdge): 1 | -1 {
  const toTheRight = { front: 'left', right: 'front', left: 'back' } as const;
  return toTheRight[view] === edge ? 1 : -1;
}

interface ClickRule {
  readonly place: (context: TapeContext, view: PhotoView) => ChartPoint;
  readonly axes: readonly ('p' | 'q')[];
}

const BOTH = ['p', 'q'] as const;
const CLICK_RULES: Readonly<Record<PhotoClick, ClickRule>> = {
  neckBack: { place: () => ({ u: BACK, v: KNOT.neckBase }), axes: BOTH },
  neckFront: { place: () => ({ u: FRONT, v: KNOT.neckBase }), axes: BOTH },
  neckSideRight: { place: () => ({ u: 0, v: KNOT.neckBase }), axes: BOTH },
  neckSideLeft: { place: () => ({ u: Math.PI, v: KNOT.neckBase }), axes: BOTH },
  shoulderPointRight: { place: () => ({ u: 0, v: KNOT.shoulderPoint }), axes: BOTH },
  shoulderPointLeft: { place: () => ({ u: Math.PI, v: KNOT.shoulderPoint }), axes: BOTH },
  bustPointRight: { place: ({ bust }) => bust.right, axes: BOTH },
  bustPointLeft: { place: ({ bust }) => bust.left, axes: BOTH },
  // From the side how far out it stands is the outline's to tell.
  bustPoint: { place: ({ bust }, view) => (view === 'left' ? bust.left : bust.right), axes: ['q'] },
  waist: { place: (_, view) => ({ u: MIDDLE[view], v: KNOT.waist }), axes: ['q'] },
};

function readClicks(seen: Seen): PhotoReading[] {
  const { photo, drawn, view } = seen;
  return Object.entries(drawn.clicks ?? {}).flatMap(([id, point]) => {
    const of = id as PhotoClick;
    const { place, axes } = CLICK_RULES[of];
    return axes.map((axis): PhotoReading => {
      const spread = Math.max(CLICK_ERROR, drawn.drawingError);
      const read = (context: TapeContext): number => {
        const { u, v } = place(context, view);
        const at = new Float64Array(2);
        showOn(seen, context)(u, v, at);
        return at[axis === 'p' ? 0 : 1];
      };
      return {
        ...{ photo, of, index: 0, axis, point, spread, read, wanted: point[axis] },
        ...{ reach: reachOf(photo, false), doubtedBeyond: DOUBTED_BEYOND, outward: 1 },
      };
    });
  });
}

/** An edge slides over the body: any knot may move it. */
function reachOf(photo: PhotoId, isOutline: boolean): TapeReach {
  const outside: ParameterId[] = ['floor', ...Object.values(POSE_IDS[photo])];
  if (isOutline) outside.push('cloth');
  return reach('base', 'neckTop', { bustPoint: true, armhole: true, outside });
}

/** Where the picture shows places of a body. */
function showOn({ photo, view, drawn }: Seen, { evaluator, poses, stance }: TapeContext): ShowPoint {
  const point = new Float64Array(3);
  return (u, v, out) => {
    evaluator.point(u, v, point);
    projectPoint(view, drawn.camera, poses[photo], stance.floor, point, out);
  };
}

/** How high a picture shows the row at v, in the middle of the body. */
export function showMiddle(photos: BodyPhotos = {}, photo: PhotoId, v: number, context: TapeContext): number {
  const drawn = photos[photo];
  const view = viewOf(photos, photo);
  const at = new Float64Array(2);
  if (drawn) showOn({ photo, view, drawn }, context)(MIDDLE[view], v, at);
  return at[1];
}

/** What every drawn place is off by on the fitted body. */
export function listPhotoResiduals(readings: readonly PhotoReading[], context: TapeContext): PhotoResidual[] {
  return readings.map(({ photo, of, index, axis, spread, wanted, read }) => ({
    photo,
    of,
    index,
    axis,
    off: wanted - read(context),
    spread,
  }));
}
