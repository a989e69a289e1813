import { describe, expect, it } from 'vitest';
import { boundsOfPolyline } from '../../src/core/math/index.ts';
import { mapPoints } from '../../src/core/sheet/find-homography.ts';
import { drawForProjector, findHomography, type ProjectedSquare } from '../../src/core/sheet/index.ts';
import { inEnglish } from '../in-english.ts';
import { samplePieces } from './sample-pieces.ts';

type Corner = readonly [number, number];

/**
 * The homography through four pairs of points by the eight linear equations of its entries (Hartley and Zisserman, Multiple view geometry in
 * computer vision, 2004, section 4.1, with the last entry 1), solved by elimination here.
 */
function solveFourPoints(from: readonly Corner[], to: readonly Corner[]): number[] {
  const rows = from.flatMap(([x, y], k) => {
    const [u, v] = to[k];
    return [
      [x, y, 1, 0, 0, 0, -u * x, -u * y, u],
      [0, 0, 0, x, y, 1, -v * x, -v * y, v],
    ];
  });
  for (let c = 0; c < 8; c++) {
    const pivot = rows
      .slice(c)
      .reduce((best, row, i) => (Math.abs(row[c]) > Math.abs(rows[best][c]) ? c + i : best), c);
    [rows[c], rows[pivot]] = [rows[pivot], rows[c]];
    for (let r = 0; r < 8; r++) {
      if (r === c) continue;
      const factor = rows[r][c] / rows[c][c];
      for (let k = c; k < 9; k++) rows[r][k] -= factor * rows[c][k];
    }
  }
  return [...rows.map((row, c) => row[8] / row[c]), 1];
}

function put([a, b, c, d, e, f, g, h, i]: readonly number[], [x, y]: Corner): Corner {
  const w = g * x + h * y + i;
  return [(a * x + b * y + c) / w, (d * x + e * y + f) / w];
}

const distance = ([ax, ay]: Corner, [bx, by]: Corner): number => Math.hypot(bx - ax, by - ay);

const [X, Y, SIDE] = [350, 87.5, 500];
const SQUARE: readonly Corner[] = [
  [X, Y],
  [X + SIDE, Y],
  [X + SIDE, Y + SIDE],
  [X, Y + SIDE],
];

/** What tapes would read on a square seen with these corners: upper left, upper right, lower right, lower left. */
function measure([a, b, c, d]: readonly Corner[]): ProjectedSquare {
  return {
    top: distance(a, b),
    right: distance(b, c),
    bottom: distance(c, d),
    left: distance(d, a),
    diagonal: distance(a, c),
  };
}

/** Corners of projections that are off: wider above, leaning, too large, all at once. */
const SEEN: readonly (readonly Corner[])[] = [
  SQUARE,
  [
    [340, 90],
    [870, 84],
    [845, 570],
    [362, 580],
  ],
  [
    [350, 60],
    [830, 110],
    [875, 590],
    [330, 610],
  ],
  [
    [300, 40],
    [890, 40],
    [890, 630],
    [300, 630],
  ],
];

describe('a projected square that was measured', () => {
  it.each(SEEN.map((corners, i) => [i, corners] as const))(
    'is drawn so that it comes out true (%i)',
    (_, seen) => {
      const found = findHomography(measure(seen), X, Y, SIDE);
      if (!found.ok) throw new Error(inEnglish(found.issues[0].message));
      // The projector itself, known here alone: what is drawn at a corner of the square is seen at a corner of the quadrilateral.
      const projector = solveFourPoints(SQUARE, seen);
      const drawn = (corner: Corner): Corner => {
        const [x, y] = mapPoints(Float64Array.from(corner), found.value);
        return put(projector, [x, y]);
      };
      // Any points of the table, far from the corners too: distances come out as wanted.
      const places: Corner[] = [...SQUARE, [X + 250, Y + 250], [X - 200, Y + 30], [X + 700, Y + 480]];
      for (const [k, place] of places.entries())
        for (const other of places.slice(k + 1))
          expect(distance(drawn(place), drawn(other))).toBeCloseTo(distance(place, other), 6);
    },
  );

  it('is refused, by the line it is about, when it is far from the square or none', () => {
    const good = measure(SQUARE);
    const far = findHomography({ ...good, left: 800 }, X, Y, SIDE);
    expect(far.issues).toMatchObject([{ path: 'projectedSquare.left', measured: 800, limit: 625 }]);
    // Sides of 400 mm cannot hold a diagonal of 840.
    const flat = { top: 400, right: 400, bottom: 400, left: 400, diagonal: 840 };
    expect(findHomography(flat, X, Y, SIDE).issues).toMatchObject([{ path: 'projectedSquare.diagonal' }]);
  });
});

describe('the pages to project', () => {
  const options = { say: inEnglish, title: 'Test', unit: 'cm', ground: 'dark' } as const;
  const pathsOf = (page: { layers: readonly { items: readonly unknown[] }[] }) =>
    page.layers.flatMap(({ items }) => items) as {
      kind: string;
      id?: string;
      points: Float64Array;
      style?: { stroke?: string };
    }[];

  it('hold every piece once, in its own colour by kind of line, and a square of known side', () => {
    const pieces = samplePieces();
    for (const [unit, side] of [
      ['cm', 500],
      ['in', 508],
    ] as const) {
      const made = drawForProjector(pieces, { ...options, unit });
      if (!made.ok) throw new Error('not drawn');
      expect(made.value).toHaveLength(1);
      const paths = pathsOf(made.value[0]).filter(({ kind }) => kind === 'path');
      for (const { id, cutLine } of pieces) {
        const [own, ...others] = paths.filter((path) => path.id === `${id}/cut`);
        expect(others).toEqual([]);
        const [wanted, found] = [boundsOfPolyline(cutLine), boundsOfPolyline(own.points)];
        expect(found.maxX - found.minX).toBeCloseTo(wanted.maxX - wanted.minX, 9);
      }
      const square = boundsOfPolyline(paths.find(({ id }) => id === 'grid/square')!.points);
      expect(square.maxX - square.minX).toBeCloseTo(side, 9);
      const strokeOf = (part: string): Set<string | undefined> =>
        new Set(paths.filter(({ id }) => id?.split('/')[1] === part).map(({ style }) => style?.stroke));
      const colours = ['cut', 'notch', 'sew', 'level', 'grain'].map((part) => [...strokeOf(part)]);
      for (const own of colours) expect(own).toHaveLength(1);
      expect(new Set(colours.flat()).size).toBe(5);
    }
  });

  it('are of one size, each with the crosses where the square is, once a square was measured', () => {
    const projectedSquare = { top: 510, right: 500, bottom: 495, left: 500, diagonal: 710 };
    const made = drawForProjector(samplePieces(), { ...options, projectedSquare });
    if (!made.ok) throw new Error('not drawn');
    const [grid, ...frames] = made.value;
    expect(frames.length).toBeGreaterThan(0);
    for (const { width, height } of frames) expect([width, height]).toEqual([grid.width, grid.height]);
    const cuts = frames.flatMap((frame) => pathsOf(frame).filter(({ id }) => id?.endsWith('/cut')));
    expect(cuts).toHaveLength(samplePieces().length);
  });
});
