import type { Say } from '../base/index.ts';
import { type Body, compareBodies, surfaceOfBody } from '../body/index.ts';
import {
  boundsOfItems,
  type Drawing,
  type DrawingItem,
  makeLayer,
  makeRectangle,
  makeText,
  translateItem,
} from '../drawing/index.ts';
import { strainCss } from '../flatten/index.ts';
import { type Mesh, pictureMesh, type View } from '../mesh/index.ts';
import { phrase } from './phrases.ts';

/** Where one body lies outside or inside another, as figures and as a picture. mm. */
export interface DistanceMap {
  /** Root mean square over the grid. */
  readonly rms: number;
  /** Furthest outside (positive) and furthest inside (negative) the first body. */
  readonly mostOutside: number;
  readonly mostInside: number;
  /** The first body from front, side and back, true size, coloured by the distance to the second, with a legend. */
  readonly drawing: Drawing;
}

const ROUND = 84;
const ROW_HEIGHT = 7;
const MARGIN = 12;
/** The colour scale ends at the first of these that 95 in 100 places stay within, mm. */
const SCALE_ENDS = [2, 5, 10, 20, 40, 80];
const VIEWS: readonly View[] = ['front', 'side', 'back'];

/** Maps the distance from `before` to `after` along the normal of `before`; `say` letters the picture. Some 20 ms. */
export function mapDistance(before: Body, after: Body, say: Say): DistanceMap {
  const { mesh, chart } = gridMesh(before);
  const { outward } = compareBodies(before, after, chart);
  const sizes = outward.map(Math.abs).sort();
  const ninetyFifth = sizes[Math.floor(0.95 * (sizes.length - 1))];
  const end = SCALE_ENDS.find((limit) => ninetyFifth <= limit) ?? SCALE_ENDS[SCALE_ENDS.length - 1];
  const colourOf = (f: number): string => {
    const [a, b, c] = mesh.triangles.subarray(3 * f, 3 * f + 3);
    return strainCss((outward[a] + outward[b] + outward[c]) / 3, end);
  };
  return {
    rms: Math.sqrt(outward.reduce((sum, x) => sum + x * x, 0) / outward.length),
    mostOutside: Math.max(...outward),
    mostInside: Math.min(...outward),
    drawing: drawMap(mesh, colourOf, end, say),
  };
}

/** The surface from base to neck top as a grid, without what lies in the armholes. */
function gridMesh(body: Body): { mesh: Mesh; chart: Float64Array } {
  const [low, high] = body.shape.vRange;
  const rows = Math.round((high - low) / ROW_HEIGHT);
  const chart = new Float64Array(2 * ROUND * (rows + 1));
  for (let i = 0, k = 0; i <= rows; i++) {
    for (let j = 0; j < ROUND; j++) {
      // From the side line round: both armholes then lie whole within the chart's turn.
      chart[k++] = -Math.PI / 2 + (2 * Math.PI * j) / ROUND;
      chart[k++] = low + ((high - low) * i) / rows;
    }
  }
  const triangles: number[] = [];
  const { right, left } = body.armholes;
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j < ROUND; j++) {
      const [u, v] = [
        -Math.PI / 2 + (2 * Math.PI * (j + 0.5)) / ROUND,
        chart[2 * i * ROUND + 1] + 0.5 * ROW_HEIGHT,
      ];
      if (isWithin(right, u, v) || isWithin(left, u, v)) continue;
      const [a, b] = [i * ROUND + j, i * ROUND + ((j + 1) % ROUND)];
      triangles.push(a, b, b + ROUND, a, b + ROUND, a + ROUND);
    }
  }
  const positions = surfaceOfBody(body).evaluate(chart);
  return { mesh: { positions, triangles: Uint32Array.from(triangles) }, chart };
}

/** Even-odd rule on a loop of (u, v). */
function isWithin(loop: Float64Array, u: number, v: number): boolean {
  let inside = false;
  for (let i = 0, j = loop.length - 2; i < loop.length; j = i, i += 2) {
    const crosses = loop[i + 1] > v !== loop[j + 1] > v;
    if (!crosses) continue;
    const at = loop[i] + ((v - loop[i + 1]) / (loop[j + 1] - loop[i + 1])) * (loop[j] - loop[i]);
    if (u < at) inside = !inside;
  }
  return inside;
}

function drawMap(mesh: Mesh, colourOf: (triangle: number) => string, end: number, say: Say): Drawing {
  const items: DrawingItem[] = [];
  const words: DrawingItem[] = [];
  let x = MARGIN;
  let height = 0;
  for (const view of VIEWS) {
    const figure = pictureMesh(mesh, view, colourOf);
    const bounds = boundsOfItems(figure)!;
    items.push(...figure.map((item) => translateItem(item, x - bounds.minX, MARGIN + 18 - bounds.minY)));
    words.push(makeText(x, MARGIN + 8, say(phrase(`distance-map.${view}`)), 12));
    x += bounds.maxX - bounds.minX + 2 * MARGIN;
    height = Math.max(height, bounds.maxY - bounds.minY);
  }
  const top = MARGIN + 18 + height + MARGIN;
  const steps = 40;
  const step = Math.min(8, (x - 2 * MARGIN) / steps);
  for (let i = 0; i < steps; i++) {
    const fill = strainCss(((2 * (i + 0.5)) / steps - 1) * end, end);
    items.push(
      makeRectangle(MARGIN + i * step, top, step, 10, { style: { fill, stroke: fill, strokeWidth: 0.2 } }),
    );
  }
  const [inside, outside] = [phrase('distance-map.inside', { end }), phrase('distance-map.outside', { end })];
  words.push(makeText(MARGIN, top + 22, say(inside), 9));
  words.push(makeText(MARGIN + steps * step, top + 22, say(outside), 9, { anchor: 'end' }));
  return {
    width: x,
    height: top + 22 + MARGIN,
    title: say(phrase('distance-map.title')),
    layers: [makeLayer('fill', items), makeLayer('text', words)],
  };
}
