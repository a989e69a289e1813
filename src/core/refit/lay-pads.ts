import { flattenRegion } from '../advice/index.ts';
import { failure, type Issue, type Phrase, type Result, success } from '../base/index.ts';
import { isInsidePolygon, measurePolygonArea } from '../math/index.ts';
import { type ChartSurface, sliceMesh } from '../mesh/index.ts';
import { type NamedLine, type PieceInput, WADDING } from '../pattern/index.ts';
import type { SeamForm } from '../seams/index.ts';
import { contourLoops } from './contour-loops.ts';
import { type GapGrid, gapGrid, HALVES, type Half } from './gap-grid.ts';
import { offsetSurface } from './offset-surface.ts';
import { phrase } from './phrases.ts';
import { REFIT_LIMITS, type RefitOptions } from './refit-options.ts';

/** A smaller piece of wadding is not worth laying, mm². */
const SMALLEST = 2500;
/** Sides of the triangles a pad is unrolled by, mm. */
const SPACING = 8;

/** One piece of wadding. */
export interface Pad {
  /** From 1. */
  readonly number: number;
  readonly half: Half;
  /** From 1, which lies on the form. */
  readonly layer: number;
  /** Number of the pad it lies on; absent where that is the form. */
  readonly liesOn?: number;
  /** Its edge on the form, n × 2 (u, v). */
  readonly loop: Float64Array;
  /** mm on the form: heights over the waist, and how far to the wearer's right (negative: left) of the middle. */
  readonly place: {
    readonly low: number;
    readonly high: number;
    readonly right: number;
    readonly left: number;
  };
  /** mm², of wadding. */
  readonly area: number;
  /** To be drafted without allowance; of the material `wadding`. */
  readonly input: PieceInput;
}

export interface PaddedForm {
  readonly surface: ChartSurface;
  readonly form: SeamForm;
  readonly levels: readonly { readonly id: string; readonly name: Phrase; readonly v: number }[];
}

export interface LaidPads {
  readonly pads: readonly Pad[];
  readonly grids: readonly GapGrid[];
}

/**
 * Layers of wadding that make the form as large as another body where that is larger. Layer k covers where more than k − ½ layers
 * lack, so that thickness and gap part by half a layer at most; it is unrolled off the form with k − 1 layers on it, level lines and
 * middle drawn on. Nothing is laid where `REFIT_LIMITS` are passed: what is thicker is told by the gap. Fails where wadding
 * is out of its range. Some seconds.
 */
export function layPads(
  { surface, form, levels }: PaddedForm,
  target: ChartSurface,
  options: RefitOptions = {},
): Result<LaidPads> {
  const { wadding = WADDING.usual } = options;
  const { min, max } = WADDING;
  if (!(wadding >= min && wadding <= max)) return failure([waddingOutOfRange(wadding)]);
  const grids = HALVES.map((half) => gapGrid(surface, target, form, half));
  const pads: Pad[] = [];
  const issues: Issue[] = [];
  for (const grid of grids) {
    for (let layer = 1; layer <= REFIT_LIMITS.layers; layer++) {
      const under = offsetSurface(surface, (layer - 1) * wadding);
      for (const loop of contourLoops(grid, (layer - 0.5) * wadding)) {
        const within = clampLoop(loop, surface.vRange);
        const flat = flattenRegion(under, form, within, { spacing: SPACING });
        if (!flat.ok) {
          issues.push(...flat.issues.map((issue): Issue => ({ ...issue, severity: 'warning' })));
          continue;
        }
        const outline = pick(flat.value.flat.positions, flat.value.border);
        const area = Math.abs(measurePolygonArea(outline));
        if (area < SMALLEST) continue;
        const below = pads.find(
          (pad) =>
            pad.half === grid.half &&
            pad.layer === layer - 1 &&
            isInsidePolygon(pad.loop, ...middleOf(within)),
        );
        const padded = { surface, form, levels };
        const number = pads.length + 1;
        const { mesh, chart } = flat.value;
        const lines = linesOn(flat.value.flat.positions, mesh.triangles, chart, grid.half, padded);
        const place = placeOf(surface, within);
        const seat = { number, half: grid.half, layer, ...(below && { liesOn: below.number }), place };
        pads.push({ ...seat, loop: within, area, input: inputOf(outline, lines, seat, wadding) });
      }
    }
  }
  return success({ pads, grids }, issues);
}

function clampLoop(loop: Float64Array, [low, high]: readonly [number, number]): Float64Array {
  return loop.map((x, i) => (i % 2 === 0 ? x : Math.min(high, Math.max(low, x))));
}

/** Of the points of a loop the one deepest in it would do; the first is on the edge, so the mean, which lies within most. */
function middleOf(loop: Float64Array): [number, number] {
  const count = loop.length / 2;
  let [u, v] = [0, 0];
  for (let i = 0; i < loop.length; i += 2) [u, v] = [u + loop[i] / count, v + loop[i + 1] / count];
  return [u, v];
}

function placeOf(surface: ChartSurface, loop: Float64Array): Pad['place'] {
  const p = surface.evaluate(loop);
  const of = (axis: number) => p.filter((_, i) => i % 3 === axis);
  const [xs, zs] = [of(0), of(2)];
  return { low: Math.min(...zs), high: Math.max(...zs), right: Math.max(...xs), left: -Math.min(...xs) };
}

/** Levels and the middle where they cross the flat piece. */
function linesOn(
  flat: Float64Array,
  triangles: Uint32Array,
  chart: Float64Array,
  half: Half,
  { levels }: PaddedForm,
): NamedLine[] {
  const along = (axis: 0 | 1, at: number, id: string, name: Phrase): NamedLine[] => {
    const positions = Float64Array.from({ length: (flat.length / 2) * 3 }, (_, i) => {
      const vertex = Math.floor(i / 3);
      return i % 3 === 2 ? chart[2 * vertex + axis] : flat[2 * vertex + (i % 3)];
    });
    const lines = sliceMesh({ positions, triangles }, 2, at).filter(({ points }) => points.length >= 4);
    return lines.map(({ points }, k) => ({ id: `${id}-${k + 1}`, name, points }));
  };
  const middle = half === 'front' ? Math.PI / 2 : (3 * Math.PI) / 2;
  return [
    ...levels.flatMap(({ id, name, v }) => along(1, v, id, name)),
    ...along(0, middle, 'middle', phrase('pad.middle', { half })),
  ];
}

function inputOf(
  outline: Float64Array,
  levelLines: readonly NamedLine[],
  { number, half, layer, liesOn, place }: Omit<Pad, 'loop' | 'area' | 'input'>,
  wadding: number,
): PieceInput {
  const count = outline.length / 2;
  const cut = count >> 1;
  const stretch = (from: number, to: number) =>
    Float64Array.from({ length: 2 * (to - from + 1) }, (_, i) => {
      return outline[(2 * from + i) % outline.length];
    });
  return {
    id: `pad-${number}`,
    name: phrase('pad.name', { number, half, layer }),
    side: 'centre',
    material: 'wadding',
    edges: [stretch(0, cut), stretch(cut, count)].map((points) => {
      return { kind: 'opening', id: 'outer', letter: '', points, marks: [], bodyHalf: 'front' };
    }),
    levelLines,
    grainWord: phrase('pad.up'),
    notes: [
      phrase('pad.place', { half, ...place }),
      liesOn === undefined
        ? phrase('pad.on-form', { wadding })
        : phrase('pad.on-pad', { wadding, number: liesOn }),
    ],
  };
}

function pick(points: Float64Array, indices: Uint32Array): Float64Array {
  return Float64Array.from({ length: 2 * indices.length }, (_, i) => points[2 * indices[i >> 1] + (i % 2)]);
}

function waddingOutOfRange(wadding: number): Issue {
  const { min: least, max: most } = WADDING;
  const message = phrase('refit.wadding-out-of-range', { wadding, least, most });
  return {
    ...{ code: 'wadding-out-of-range', path: 'wadding', message, severity: 'error' },
    ...{ measured: wadding, limit: wadding > most ? most : least },
  };
}
