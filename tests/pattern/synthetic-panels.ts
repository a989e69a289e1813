import { verbatim } from '../../src/core/base/index.ts';
import type { NamedLine, PieceEdge, PieceInput, PieceMark } from '../../src/core/pattern/index.ts';
import { inEnglish } from '../in-english.ts';

/** Flat panels made up for tests: shapes a form's panels take, without a body behind them. mm, y up. */

type Point = readonly [number, number];

/** Points every `step` mm or less along straight lines through the given ones. */
export function straight(through: readonly Point[], step = 6): Float64Array {
  const points: number[] = [];
  for (let i = 1; i < through.length; i++) {
    const [ax, ay] = through[i - 1];
    const [bx, by] = through[i];
    const count = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / step));
    for (let k = 0; k < count; k++) points.push(ax + ((bx - ax) * k) / count, ay + ((by - ay) * k) / count);
  }
  points.push(...through[through.length - 1]);
  return Float64Array.from(points);
}

/** A curve x(t), y(t) for t from 0 to 1, `count` segments. */
export function curve(at: (t: number) => Point, count: number): Float64Array {
  return Float64Array.from(Array.from({ length: count + 1 }, (_, i) => at(i / count)).flat());
}

export function edge(
  id: string,
  letter: string,
  points: Float64Array,
  marks: readonly PieceMark[] = [],
  bodyHalf: 'front' | 'back' = 'front',
): PieceEdge {
  return { kind: letter ? 'seam' : 'opening', id, letter, points, marks, bodyHalf };
}

export function piece(
  id: string,
  name: string,
  edges: readonly PieceEdge[],
  levelLines: readonly NamedLine[] = [],
  side: PieceInput['side'] = 'right',
): PieceInput {
  return { id, name: verbatim(name), side, edges, levelLines, material: 'outer cloth' };
}

/** A polygon as a piece with one seam per side. */
export function polygonPiece(corners: readonly Point[], step = 6): PieceInput {
  const edges = corners.map((corner, i) =>
    edge(
      `side-${i}`,
      String.fromCharCode(65 + i),
      straight([corner, corners[(i + 1) % corners.length]], step),
    ),
  );
  return piece('polygon', 'Polygon', edges);
}

const LEVELS: readonly { readonly id: string; readonly name: string; readonly y: number }[] = [
  { id: 'hip', name: 'hip', y: 60 },
  { id: 'waist', name: 'waist', y: 260 },
  { id: 'underbust', name: 'underbust', y: 345 },
  { id: 'bust', name: 'bust', y: 420 },
];

/** Width factor of a trunk: wide at hip and bust, narrow at the waist. */
function trunk(y: number): number {
  return 0.86 + 0.16 * Math.cos(((y - 60) / 200) * Math.PI) + 0.02 * Math.sin(y / 90);
}

/**
 * An upright panel `width` mm wide at the hip. `top`: 'straight' (cut at the bust), 'neck' (shoulder slope and a
 * hollow neck edge) or 'armhole' (a concave armhole curve on the right side up to a narrow shoulder).
 */
export function upright(
  id: string,
  name: string,
  letters: readonly [string, string],
  width: number,
  top: 'straight' | 'neck' | 'armhole',
  bodyHalf: 'front' | 'back' = 'front',
  side: PieceInput['side'] = 'right',
): PieceInput {
  const half = width / 2;
  const reach = top === 'straight' ? 560 : top === 'neck' ? 560 : 470;
  const count = Math.round(reach / 6);
  const leftAt = (y: number): Point => [-half * trunk(y) - 0.00006 * y * y * (half / 60), y];
  const rightAt = (y: number): Point => [half * trunk(y), y];
  const shoulderTop: Point = [leftAt(reach)[0] + half * 0.75, 640];
  const right = curve((t) => rightAt(t * reach), count);
  const left = curve((t) => {
    const y = reach * (1 - t);
    return leftAt(y);
  }, count);
  const a = rightAt(reach);
  const b = leftAt(reach);
  const edges: PieceEdge[] = [
    edge('base', '', straight([leftAt(0), rightAt(0)]), [], bodyHalf),
    edge(`seam-${letters[1]}`, letters[1], right, marksOf(right, false), bodyHalf),
  ];
  if (top === 'straight') {
    edges.push(edge('top', 'T', straight([a, b]), [{ kind: 'balance', index: 4, number: 1 }], bodyHalf));
  } else if (top === 'neck') {
    const shoulder: Point = [half * 0.35, 640];
    const neck = curve((t) => {
      const x = shoulder[0] + (b[0] - shoulder[0]) * t;
      return [x, 640 - 80 * t ** 0.5 * t + 0 * x];
    }, 20);
    edges.push(edge('shoulder', 'S', straight([a, shoulder]), [], bodyHalf));
    edges.push(edge('neck', '', neck, [], bodyHalf));
  } else {
    // A quarter-like hollow from the side up to the shoulder.
    const armhole = curve((t) => {
      const s = (t * Math.PI) / 2;
      return [a[0] - (a[0] - shoulderTop[0]) * Math.sin(s), a[1] + (640 - a[1]) * (1 - Math.cos(s))];
    }, 40);
    edges.push(edge('armholeRight', '', armhole, [{ kind: 'balance', index: 16, number: 1 }], bodyHalf));
    edges.push(edge('shoulder', 'S', straight([shoulderTop, [b[0] + half * 0.1, 652]]), [], bodyHalf));
    const first: Point = [b[0] + half * 0.1, 652];
    const whole = Float64Array.from([...straight([first, b]).slice(0, -2), ...left]);
    edges.push(edge(`seam-${letters[0]}`, letters[0], whole, marksOf(whole, true), bodyHalf));
    return piece(id, name, edges, levelsOf(edges), side);
  }
  edges.push(edge(`seam-${letters[0]}`, letters[0], left, marksOf(left, true), bodyHalf));
  return piece(id, name, edges, levelsOf(edges), side);
}

/** A level mark where the edge comes nearest to each level, and a balance mark between waist and hip. */
function marksOf(points: Float64Array, isDownwards: boolean): PieceMark[] {
  const wanted = [...LEVELS.map(({ id, y }) => ({ id, y })), { id: '', y: 160 }].sort((p, q) => p.y - q.y);
  const marks = wanted.map(({ id, y }, i): PieceMark => {
    let index = 1;
    for (let k = 1; k < points.length / 2 - 1; k++) {
      if (Math.abs(points[2 * k + 1] - y) < Math.abs(points[2 * index + 1] - y)) index = k;
    }
    return id
      ? { kind: 'level', levelId: id, index, number: i + 1 }
      : { kind: 'balance', index, number: i + 1 };
  });
  return isDownwards ? marks.reverse() : marks;
}

function levelsOf(edges: readonly PieceEdge[]): NamedLine[] {
  const sides = edges.filter(({ id }) => /^seam-/.test(id));
  return LEVELS.map(({ id, name }) => {
    const ends = sides.map((side) => {
      const mark = side.marks.find(({ levelId }) => levelId === id)!;
      return [side.points[2 * mark.index], side.points[2 * mark.index + 1]] as const;
    });
    const [[bx, by], [ax, ay]] = ends;
    const points = curve((t) => [ax + (bx - ax) * t, ay + (by - ay) * t - 5 * Math.sin(Math.PI * t)], 16);
    return { id, name: verbatim(name), points };
  });
}

/** A long wedge with a 30° tip. */
function wedge(): PieceInput {
  const height = 60 / Math.tan(Math.PI / 12);
  return {
    ...polygonPiece([
      [-60, 0],
      [60, 0],
      [0, height],
    ]),
    id: 'wedge',
    name: verbatim('Wedge with a sharp tip'),
  };
}

/** A panel on whose straight right edge another seam ends: a corner of 180° where two seams meet. */
function teePiece(): PieceInput {
  const edges = [
    edge(
      'base',
      '',
      straight([
        [0, 0],
        [150, 0],
      ]),
    ),
    edge(
      'lower',
      'C',
      straight([
        [150, 0],
        [150, 120],
      ]),
      [{ kind: 'balance', index: 10, number: 1 }],
    ),
    edge(
      'upper',
      'D',
      straight([
        [150, 120],
        [150, 260],
      ]),
      [{ kind: 'balance', index: 12, number: 1 }],
    ),
    edge(
      'top',
      'E',
      straight([
        [150, 260],
        [10, 240],
      ]),
    ),
    edge(
      'side',
      'F',
      straight([
        [10, 240],
        [0, 0],
      ]),
      [{ kind: 'level', levelId: 'waist', index: 20, number: 1 }],
    ),
  ];
  return piece('tee', 'Side with a crossing seam', edges);
}

/** What a whole sheet holds: wide and narrow panels, armhole, neck, sharp tip, seam ending on an edge. */
export function samplePanels(): PieceInput[] {
  return [
    upright('front-right', 'Front right', ['A', 'B'], 150, 'neck', 'front', 'right'),
    upright('side-front-right', 'Side front right', ['B', 'C'], 130, 'armhole', 'front', 'right'),
    upright('side-back-right', 'Side back right', ['C', 'D'], 130, 'armhole', 'back', 'right'),
    upright('back-right', 'Back right', ['D', 'E'], 150, 'neck', 'back', 'right'),
    upright('gore-left', 'Gore left', ['F', 'G'], 74, 'straight', 'back', 'left'),
    upright('sliver-left', 'Sliver left', ['G', 'H'], 44, 'straight', 'front', 'left'),
    wedge(),
    teePiece(),
  ];
}

export const LABEL = {
  say: inEnglish,
  project: 'Winter play, leading part',
  body: 'Wren Halloway',
  date: '2026-02-14',
};
