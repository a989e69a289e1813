import { type Issue, verbatim } from '../base/index.ts';
import { distance, reversePolyline } from '../math/index.ts';
import type { AllowanceKind, NamedLine, PieceEdge, PieceInput, PieceMark } from '../pattern/index.ts';
import { checkOpenings } from './check-openings.ts';
import { lengthOnLine } from './inside-lines.ts';
import type { PlaceOnSleeve } from './places-on-sleeve.ts';
import type { BraceRung, DesignedBrace, InsideForm, InsideLine, InsideSeam } from './types.ts';
import { type FlatStrip, unrollStrip } from './unroll-strip.ts';
import { type Passage, placeOpenings, type WebOpening } from './web-openings.ts';

/**
 * A web, tie or strap as a flat piece: its upright edges are as long as the flat seams they are sewn to, mark for mark,
 * its width at every height the designed one; on the sleeve, as long as it is sewn there. `passages`: where straps pass through it. Issues as `checkOpenings`.
 */
export function braceInput(
  brace: DesignedBrace,
  form: InsideForm,
  onSleeve: PlaceOnSleeve,
  passages: readonly Passage[],
): { readonly input: PieceInput; readonly issues: readonly Issue[] } {
  const { rungs, from, to } = brace;
  const strip = layBrace(brace);
  const openings = placeOpenings(brace, strip, passages);
  const leftEdges = edgesAlong(strip.left, rungs, from, brace, onSleeve);
  const rightEdges = edgesAlong(strip.right, rungs, to, brace, onSleeve);
  const n = rungs.length;
  const cross = (k: number, id: string, isReversed: boolean): PieceEdge => {
    const ends = [at(strip.left, k), at(strip.right, k)];
    const points = Float64Array.from((isReversed ? ends.reverse() : ends).flat());
    return { kind: 'opening', id, letter: '', points, marks: [], bodyHalf: 'front' };
  };
  const input: PieceInput = {
    id: brace.id,
    name: brace.name,
    side: brace.side,
    edges: [
      cross(0, 'bottom', false),
      ...rightEdges,
      cross(n - 1, 'top', true),
      ...leftEdges.map(reverseEdge).reverse(),
    ],
    // A strap has its level at the marks of both ends, and needs its middle for the label.
    levelLines: brace.kind === 'strap' ? [] : levelLines(rungs, strip, form, openings),
    material: 'webs',
    ...(openings.length === 0
      ? {}
      : {
          cutouts: openings.map(({ id, outline }) => ({ id, name: id, points: outline })),
          stitchLines: openings.map(({ id, reinforced }) => ({
            id: `reinforce-${id}`,
            name: verbatim(`reinforce-${id}`),
            points: reinforced,
          })),
        }),
  };
  return { input, issues: checkOpenings(brace, strip, openings) };
}

function layBrace({ rungs, from, to }: DesignedBrace): FlatStrip {
  const pairs = rungs.slice(1).map((rung, k) => [rungs[k], rung] as const);
  return unrollStrip(
    rungs.map(({ length }) => length),
    pairs.map(([a, b]) => lengthOnLine(from, a.v, b.v)),
    pairs.map(([a, b]) => (to === 'sleeve' ? b.to[2] - a.to[2] : lengthOnLine(to, a.v, b.v))),
    pairs.map(([a, b]) => distance(shortened(a).to, shortened(b).from)),
  );
}

/** A rung's ends drawn together, each by half, to its designed length. */
function shortened({ from, to, length }: BraceRung): { from: number[]; to: number[] } {
  const t = 0.5 - (0.5 * length) / distance(from, to);
  const mix = (a: readonly number[], b: readonly number[]): number[] => a.map((x, i) => x + t * (b[i] - x));
  return { from: mix(from, to), to: mix(to, from) };
}

function at(points: Float64Array, k: number): [number, number] {
  return [points[2 * k], points[2 * k + 1]];
}

/** One edge per seam it is sewn to, upwards; on the sleeve a single one. */
function edgesAlong(
  points: Float64Array,
  rungs: readonly BraceRung[],
  line: InsideLine | 'sleeve',
  brace: DesignedBrace,
  { letter, before }: PlaceOnSleeve,
): PieceEdge[] {
  const bodyHalf = line === 'sleeve' || line.half === 'front' ? 'front' : 'back';
  const allowanceKind: AllowanceKind = brace.kind === 'tie' || brace.kind === 'strap' ? 'tie' : 'web';
  if (line === 'sleeve') {
    const inner = rungs.flatMap(({ levelId, mark }, index): Omit<PieceMark, 'number'>[] => {
      if (index === 0 || index === rungs.length - 1) return [];
      if (levelId !== undefined) return [{ kind: 'level', levelId, index }];
      return mark === undefined ? [] : [{ kind: 'balance', index }];
    });
    const marks = inner.map((mark, k): PieceMark => ({ number: before + k + 1, ...mark }));
    return [{ kind: 'seam', id: `sleeve-${brace.id}`, letter, points, marks, bodyHalf, allowanceKind }];
  }
  const edges: PieceEdge[] = [];
  for (let k = 0; k + 1 < rungs.length; ) {
    const seam = seamAt(line, 0.5 * (rungs[k].v + rungs[k + 1].v));
    let end = k + 1;
    while (end + 1 < rungs.length && seamAt(line, 0.5 * (rungs[end].v + rungs[end + 1].v)) === seam) end++;
    const own = rungs.slice(k, end + 1);
    const marks = seam.marks.flatMap((mark): PieceMark[] => {
      const index = own.findIndex(({ v }) => Math.abs(v - seam.v[mark.index]) < 1e-9);
      if (index <= 0 || index >= own.length - 1) return [];
      const { kind, number, levelId } = mark;
      return [{ kind, number, index, ...(levelId === undefined ? {} : { levelId }) }];
    });
    edges.push({
      kind: 'seam',
      id: seam.id,
      letter: seam.letter,
      points: points.slice(2 * k, 2 * end + 2),
      marks,
      bodyHalf,
      allowanceKind,
    });
    k = end;
  }
  return edges;
}

function seamAt(line: InsideLine, v: number): InsideSeam {
  return line.seams.find((seam) => v <= seam.v[seam.v.length - 1]) ?? line.seams[line.seams.length - 1];
}

function reverseEdge(edge: PieceEdge): PieceEdge {
  const count = edge.points.length / 2;
  return {
    ...edge,
    points: reversePolyline(edge.points),
    marks: edge.marks.map((mark) => ({ ...mark, index: count - 1 - mark.index })),
  };
}

/** Level lines from edge to edge; where an opening lies in the way, only the two ends of the line. */
function levelLines(
  rungs: readonly BraceRung[],
  strip: FlatStrip,
  form: InsideForm,
  openings: readonly WebOpening[],
): NamedLine[] {
  return rungs.flatMap(({ levelId }, k): NamedLine[] => {
    const level = form.levels.find(({ id }) => id === levelId);
    if (!level || k === 0 || k === rungs.length - 1) return [];
    const [lx, ly] = at(strip.left, k);
    const [rx, ry] = at(strip.right, k);
    const isCut = openings.some(({ low, high }) => ly > low && ly < high);
    if (!isCut) return [{ id: level.id, name: level.name, points: Float64Array.of(lx, ly, rx, ry) }];
    const dx = 15 / Math.hypot(rx - lx, ry - ly);
    const [sx, sy] = [dx * (rx - lx), dx * (ry - ly)];
    return [
      { id: level.id, name: level.name, points: Float64Array.of(lx, ly, lx + sx, ly + sy) },
      { id: `${level.id}-end`, name: level.name, points: Float64Array.of(rx - sx, ry - sy, rx, ry) },
    ];
  });
}
