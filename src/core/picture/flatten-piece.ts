import { boundsOfPolyline, thinPolyline } from '../math/index.ts';
import type { NamedLine, Piece } from '../pattern/index.ts';

/** A sewn edge on paper, with the places of its marks in `points`. */
export interface FlatEdge {
  readonly letter: string;
  /** n × 2 mm of paper. */
  readonly points: Float64Array;
  readonly marks: readonly { readonly number: number; readonly index: number }[];
}

/** A piece on paper, y down; its waist, else its lower edge, is at height 0. mm of paper. */
export interface FlatPiece {
  readonly id: string;
  /** Of the inside: not cloth of the shell. */
  readonly isInner: boolean;
  readonly cut: Float64Array;
  readonly holes: readonly Float64Array[];
  readonly edges: readonly FlatEdge[];
  /** `seam`: the letter of the edge that each notch is on. */
  readonly notches: readonly { readonly seam: string; readonly points: Float64Array }[];
  readonly levels: readonly Float64Array[];
  /** Lines on the piece to which another one is sewn. */
  readonly lines: readonly { readonly letter: string; readonly points: Float64Array }[];
}

/** At a tenth of true size a line may be so far off, mm of paper. */
const OFF = 0.06;
const SHELL_MATERIALS: ReadonlySet<string> = new Set(['shell', 'arms', 'test-tube']);

/** A piece as it lies on paper, seen from its wrong side unless right side up. O(points). */
export function flattenPiece(piece: Piece, scale: number, isRightSideUp: boolean): FlatPiece {
  const down = heightOfPiece(piece);
  const place = (points: Float64Array): Float64Array => {
    return points.map((value, i) => scale * (i % 2 === 0 ? (isRightSideUp ? value : -value) : down - value));
  };
  const edges = piece.draft?.input.edges ?? [];
  const lettered = piece.levelLines.filter((line) => letterOfLine(line) !== undefined);
  // Ticks across lettered lines have no words.
  const levels = piece.levelLines.filter(
    (line) => letterOfLine(line) === undefined && !line.id.includes('/'),
  );
  return {
    id: piece.id,
    isInner: !SHELL_MATERIALS.has(piece.material),
    cut: thinLine(place(piece.cutLine), true),
    holes: (piece.cutouts ?? []).map(({ points }) => place(points)),
    edges: edges
      .filter(({ kind }) => kind === 'seam')
      .map(({ letter, points, marks }) => ({ letter, points: place(points), marks })),
    notches: piece.notches
      // Of a double or triple notch the first slit stands for all: on paper they would run together.
      .filter(({ id }) => !/\/(?!1$)/.test(id))
      .map(({ id, points }) => ({ seam: id.replace(/\d+.*$/, ''), points: place(points) })),
    levels: levels.map(({ points }) => thinLine(place(points), false)),
    lines: lettered.map((line) => ({ letter: letterOfLine(line) ?? '', points: place(line.points) })),
  };
}

/** Letters of the seams along its edges, and of the lines on it to which something is sewn. */
export function lettersOnPiece({ draft, levelLines }: Piece): string[] {
  return [
    ...(draft?.input.edges ?? []).filter(({ kind }) => kind === 'seam').map(({ letter }) => letter),
    ...levelLines.flatMap((line) => letterOfLine(line) ?? []),
  ];
}

/** A line with fewer points, within 0.06 mm of paper. */
export function thinLine(points: Float64Array, closed: boolean): Float64Array {
  const kept = thinPolyline(points, closed, OFF);
  return Float64Array.from({ length: 2 * kept.length }, (_, i) => points[2 * kept[i >> 1] + (i % 2)]);
}

/** The piece's height that is laid level with the others': its waist, else its lower edge, mm. */
function heightOfPiece({ levelLines, cutLine }: Piece): number {
  const waist = levelLines.find(({ id }) => id === 'waist');
  if (!waist) return boundsOfPolyline(cutLine).minY;
  const { minY, maxY } = boundsOfPolyline(waist.points);
  return (minY + maxY) / 2;
}

/** The letter in the name of a line to which something is sewn. */
function letterOfLine({ name }: NamedLine): string | undefined {
  const { letter } = name.values;
  return typeof letter === 'string' ? letter : undefined;
}
