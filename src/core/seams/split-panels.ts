import { nextHalfedge, previousHalfedge } from '../mesh/index.ts';
import type { WholeMesh } from './mirror-half.ts';

/** The whole mesh cut along its seams: which panel each triangle belongs to, and each corner's vertex in it. */
export interface PanelSplit {
  readonly panelCount: number;
  /** #F. */
  readonly panelOf: Int32Array;
  /** #F × 3: panel vertex of every corner. */
  readonly cornerVertex: Uint32Array;
  /** Per panel: shell vertex of every panel vertex. */
  readonly sourceVertices: readonly Uint32Array[];
  /** Per panel: a corner that shows every panel vertex. */
  readonly sampleCorners: readonly Uint32Array[];
  /** Per panel: the panel this one mirrors, or −1. */
  readonly mirrorOf: Int32Array;
  /** Per panel: V − E + F. */
  readonly euler: Int32Array;
}

/**
 * Floods triangles over edges that are not seams; vertices are split where a seam runs between their corners.
 * A left panel that is a right one's image gets the same vertex numbers. O(#F).
 */
export function splitPanels(whole: WholeMesh, twins: Int32Array, isSeam: Uint8Array): PanelSplit {
  const { triangles } = whole.mesh;
  const faceCount = triangles.length / 3;
  const half = whole.halfTriangleCount;
  const panelOf = new Int32Array(faceCount).fill(-1);
  const mirrorOf: number[] = [];
  for (let start = 0; start < faceCount; start++) {
    if (panelOf[start] !== -1) continue;
    const panel = mirrorOf.length;
    const image = start >= half ? panelOf[start - half] : -1;
    mirrorOf.push(image);
    const stack = [start];
    panelOf[start] = panel;
    for (let f = stack.pop(); f !== undefined; f = stack.pop()) {
      for (let e = 3 * f; e < 3 * f + 3; e++) {
        if (isSeam[e] || twins[e] === -1) continue;
        const g = Math.floor(twins[e] / 3);
        if (panelOf[g] !== -1) continue;
        panelOf[g] = panel;
        stack.push(g);
      }
    }
  }
  const corners = numberCorners(whole, twins, isSeam, panelOf, mirrorOf);
  return { panelCount: mirrorOf.length, panelOf, mirrorOf: Int32Array.from(mirrorOf), ...corners };
}

type CornerNumbers = Pick<PanelSplit, 'cornerVertex' | 'sourceVertices' | 'sampleCorners' | 'euler'>;

function numberCorners(
  whole: WholeMesh,
  twins: Int32Array,
  isSeam: Uint8Array,
  panelOf: Int32Array,
  mirrorOf: readonly number[],
): CornerNumbers {
  const { triangles } = whole.mesh;
  const isNumbered = new Uint8Array(triangles.length);
  const cornerVertex = new Uint32Array(triangles.length);
  const sources = mirrorOf.map((): number[] => []);
  const samples = mirrorOf.map((): number[] => []);
  const euler = new Int32Array(mirrorOf.length);
  const imageStart = 3 * whole.halfTriangleCount;
  for (let e = 0; e < triangles.length; e++) {
    const panel = panelOf[Math.floor(e / 3)];
    // Faces count 2, inner edges −1 from each side, border edges −2: twice F − E.
    euler[panel] -= twins[e] === -1 || isSeam[e] ? 2 : 1;
    if (e % 3 === 0) euler[panel] += 2;
    if (isNumbered[e]) continue;
    // The corner of the mirror image: second and third corners are exchanged there.
    const turned = e % 3 === 0 ? e : e % 3 === 1 ? e + 1 : e - 1;
    const number = mirrorOf[panel] === -1 ? sources[panel].length : cornerVertex[turned - imageStart];
    sources[panel][number] = triangles[e];
    samples[panel][number] = e;
    numberFan(e, number, twins, isSeam, cornerVertex, isNumbered);
  }
  sources.forEach((list, panel) => {
    euler[panel] = euler[panel] / 2 + list.length;
  });
  return {
    cornerVertex,
    sourceVertices: sources.map((list) => Uint32Array.from(list)),
    sampleCorners: samples.map((list) => Uint32Array.from(list)),
    euler,
  };
}

/** Gives a number to every corner round the same vertex that can be reached without crossing a seam. */
function numberFan(
  start: number,
  number: number,
  twins: Int32Array,
  isSeam: Uint8Array,
  cornerVertex: Uint32Array,
  isNumbered: Uint8Array,
): void {
  let e = start;
  // Counter-clockwise over the incoming edge, until round or at a border …
  while (!isNumbered[e]) {
    isNumbered[e] = 1;
    cornerVertex[e] = number;
    const incoming = previousHalfedge(e);
    if (twins[incoming] === -1 || isSeam[incoming]) break;
    e = twins[incoming];
  }
  // … then clockwise over the outgoing edge.
  for (e = start; twins[e] !== -1 && !isSeam[e]; ) {
    e = nextHalfedge(twins[e]);
    if (isNumbered[e]) break;
    isNumbered[e] = 1;
    cornerVertex[e] = number;
  }
}
