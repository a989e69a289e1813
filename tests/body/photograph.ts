import { seededRandom } from '../../src/core/base/index.ts';
import {
  type Body,
  type BodyPhotos,
  type FrontClick,
  type PicturePoint,
  type SideClick,
  surfaceOfBody,
} from '../../src/core/body/index.ts';

/** How a made picture is taken: mm and radians. */
export interface Shot {
  readonly view: 'front' | 'right' | 'left';
  readonly distance: number;
  readonly lensHeight: number;
  readonly waistHeight: number;
  readonly shift: number;
  /** Of the person, anticlockwise from above. */
  readonly turn: number;
  /** What the rule shows of a true millimetre. */
  readonly scale: number;
}

type Rows = readonly (readonly number[])[];

const times = (a: Rows, b: Rows): number[][] =>
  a.map((row) => b[0].map((_, j) => row.reduce((sum, value, k) => sum + value * b[k][j], 0)));

/**
 * The camera as a homogeneous 3 × 4 matrix, P = S K [R | t] (Hartley and Zisserman, Multiple View Geometry, ch. 6; from memory): the
 * body's axes to the room's (right, up, towards the lens), turned and shifted; the lens at (0, h, D), its picture on the plane through
 * the origin; a rule that stands nearer or further than that plane shows all of it larger or smaller about the lens's own height.
 */
export function matrixOf({
  view,
  distance: D,
  lensHeight: h,
  waistHeight,
  shift,
  turn,
  scale,
}: Shot): number[][] {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const turned = [
    [c, -s, 0, 0],
    [s, c, 0, 0],
    [0, 0, 1, 0],
    [0, 0, 0, 1],
  ];
  const axes = {
    front: [
      [-1, 0, 0, shift],
      [0, 0, 1, waistHeight],
      [0, 1, 0, 0],
      [0, 0, 0, 1],
    ],
    right: [
      [0, 1, 0, shift],
      [0, 0, 1, waistHeight],
      [1, 0, 0, 0],
      [0, 0, 0, 1],
    ],
    left: [
      [0, -1, 0, shift],
      [0, 0, 1, waistHeight],
      [-1, 0, 0, 0],
      [0, 0, 0, 1],
    ],
  }[view];
  const lens = [
    [D, 0, 0, 0],
    [0, D, -h, 0],
    [0, 0, -1, D],
  ];
  const rule = [
    [scale, 0, 0],
    [0, scale, h * (1 - scale)],
    [0, 0, 1],
  ];
  return times(rule, times(lens, times(axes, turned)));
}

export function project(matrix: Rows, [x, y, z]: ArrayLike<number> & Iterable<number>): PicturePoint {
  const [p, q, w] = matrix.map(([a, b, c, d]) => a * x + b * y + c * z + d);
  return { p: p / w, q: q / w };
}

/** All of the body's surface as the picture shows it, column by column of the chart. */
export function projectAll(body: Body, shot: Shot): PicturePoint[][] {
  const surface = surfaceOfBody(body);
  const matrix = matrixOf(shot);
  const [low, high] = surface.vRange;
  const [around, rows] = [240, 240];
  return Array.from({ length: around }, (_, k) => {
    const chart = Float64Array.from(
      Array.from({ length: rows + 1 }, (__, i) => [
        (2 * Math.PI * k) / around,
        low + ((high - low) * i) / rows,
      ]).flat(),
    );
    const points = surface.evaluate(chart);
    return Array.from({ length: rows + 1 }, (__, i) => project(matrix, points.subarray(3 * i, 3 * i + 3)));
  });
}

/** How far the silhouette reaches at a height of the picture, to its right (1) or left (−1): over all of the surface. */
export function reachAt(columns: readonly (readonly PicturePoint[])[], q: number, way: 1 | -1): number {
  let best = -Infinity;
  for (const column of columns) {
    for (let i = 1; i < column.length; i++) {
      const [a, b] = [column[i - 1], column[i]];
      if ((a.q - q) * (b.q - q) > 0 || a.q === b.q) continue;
      best = Math.max(best, way * (a.p + ((b.p - a.p) * (q - a.q)) / (b.q - a.q)));
    }
  }
  return way * best;
}

export interface Draughtsman {
  /** One standard deviation of a drawn point along the picture's p, mm. */
  readonly noise: number;
  readonly seed: number;
  /** How far clothes stand off, mm. */
  readonly cloth?: number;
  readonly points?: number;
}

const FRONT_CLICKS: Readonly<Record<Exclude<FrontClick, 'waist'>, keyof Body['landmarks']>> = {
  neckFront: 'neckFront',
  neckSideRight: 'neckSideRight',
  neckSideLeft: 'neckSideLeft',
  shoulderPointRight: 'shoulderPointRight',
  shoulderPointLeft: 'shoulderPointLeft',
  bustPointRight: 'bustPointRight',
  bustPointLeft: 'bustPointLeft',
};

/** Both pictures of a body, drawn over by hand: `count` points along each edge of the trunk, and the places shown by name. */
export function photograph(body: Body, front: Shot, side: Shot, drawn: Draughtsman): Required<BodyPhotos> {
  const { noise, seed, cloth = 0, points: count = 10 } = drawn;
  const random = seededRandom(seed);
  // Box and Muller.
  const error = (spread: number): number =>
    spread * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const surface = surfaceOfBody(body);
  const level = (id: string): number => body.levels.find((one) => one.id === id)!.v;
  const place = (shot: Shot, u: number, v: number): PicturePoint =>
    project(matrixOf(shot), surface.evaluate(Float64Array.of(u, v)));
  const mark = (shot: Shot, id: keyof Body['landmarks']): PicturePoint => {
    const { p, q } = place(shot, body.landmarks[id].u, body.landmarks[id].v);
    return { p: p + error(noise), q: q + error(noise) };
  };
  const seen = new Map([front, side].map((shot) => [shot, projectAll(body, shot)]));
  const edge = (shot: Shot, way: 1 | -1, low: number, high: number): PicturePoint[] => {
    const columns = seen.get(shot)!;
    return Array.from({ length: count }, (_, i) => {
      const q = low + ((high - low) * (i + 0.5)) / count;
      return { q, p: reachAt(columns, q, way) + way * cloth + error(noise) };
    });
  };
  const base = (shot: Shot, u: number): number => place(shot, u, surface.vRange[0]).q + 5;
  const chest = (shot: Shot, u: number): number => place(shot, u, level('upperChest')).q;
  const faces = side.view === 'right' ? 1 : -1;
  const nearest = side.view === 'right' ? 0 : Math.PI;
  const elastic = (shot: Shot, u: number): PicturePoint => {
    const { p, q } = place(shot, u, level('waist'));
    return { p, q: q + error(noise) };
  };
  return {
    front: {
      camera: { distance: front.distance, lensHeight: front.lensHeight, isRuleInPlane: true },
      drawingError: noise,
      outline: {
        right: edge(front, -1, base(front, 0), chest(front, 0)),
        left: edge(front, 1, base(front, Math.PI), chest(front, Math.PI)),
      },
      clicks: {
        ...(Object.fromEntries(
          Object.entries(FRONT_CLICKS).map(([id, landmark]) => [id, mark(front, landmark)]),
        ) as Record<FrontClick, PicturePoint>),
        waist: elastic(front, Math.PI / 2),
      },
    },
    side: {
      seenFrom: side.view === 'left' ? 'left' : 'right',
      camera: { distance: side.distance, lensHeight: side.lensHeight, isRuleInPlane: true },
      drawingError: noise,
      outline: {
        front: edge(side, faces, base(side, Math.PI / 2), mark(side, 'neckFront').q),
        back: edge(side, faces === 1 ? -1 : 1, base(side, -Math.PI / 2), mark(side, 'neckBack').q),
      },
      clicks: {
        neckBack: mark(side, 'neckBack'),
        neckFront: mark(side, 'neckFront'),
        bustPoint: mark(side, side.view === 'right' ? 'bustPointRight' : 'bustPointLeft'),
        waist: elastic(side, nearest),
      } satisfies Record<SideClick, PicturePoint>,
    },
  };
}
