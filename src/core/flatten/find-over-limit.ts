import { findTwins, type Mesh, measureTriangleAreas, nextHalfedge } from '../mesh/index.ts';
import { CLOTH_AXES, type ClothAxis, type ClothStrain } from './measure-cloth-strain.ts';

/** A connected part of a piece where the cloth is asked for more than it takes. */
export interface OverLimitZone {
  readonly triangles: Uint32Array;
  /** mm² on the body. */
  readonly area: number;
  /** Axis and strain of its worst triangle. */
  readonly axis: ClothAxis;
  readonly worst: number;
  readonly usage: number;
  /** A mesh vertex nearest to the worst place. */
  readonly vertex: number;
  /** Outline as vertex pairs, every pair one border edge. */
  readonly outline: Uint32Array;
}

/** Smaller zones are single triangles at corners rather than places, mm². */
const SMALL_ZONE = 150;

/**
 * Zones of usage over `limit` (1: all the cloth takes), worst first; zones under `smallest` mm² are left out (150: single triangles
 * at corners). O(#F).
 */
export function findOverLimit(
  mesh: Mesh,
  cloth: ClothStrain,
  { limit = 1, smallest = SMALL_ZONE }: { readonly limit?: number; readonly smallest?: number } = {},
): OverLimitZone[] {
  const { triangles } = mesh;
  const twins = findTwins(triangles, mesh.positions.length / 3);
  const areas = measureTriangleAreas(mesh);
  const zoneOf = new Int32Array(areas.length).fill(-1);
  const zones: OverLimitZone[] = [];
  let count = 0;
  for (let start = 0; start < areas.length; start++) {
    if (zoneOf[start] !== -1 || !(cloth.usage[start] > limit)) continue;
    const members = [start];
    zoneOf[start] = count;
    for (let i = 0; i < members.length; i++) {
      for (let e = 3 * members[i]; e < 3 * members[i] + 3; e++) {
        const g = twins[e] < 0 ? -1 : Math.floor(twins[e] / 3);
        if (g < 0 || zoneOf[g] !== -1 || !(cloth.usage[g] > limit)) continue;
        zoneOf[g] = count;
        members.push(g);
      }
    }
    count++;
    const area = members.reduce((sum, f) => sum + areas[f], 0);
    if (area >= smallest) zones.push(describeZone(mesh, cloth, members, area, twins, zoneOf));
  }
  return zones.sort((a, b) => b.usage - a.usage);
}

function describeZone(
  { triangles }: Mesh,
  cloth: ClothStrain,
  members: readonly number[],
  area: number,
  twins: Int32Array,
  zoneOf: Int32Array,
): OverLimitZone {
  const worst = members.reduce((best, f) => (cloth.usage[f] > cloth.usage[best] ? f : best));
  const axis = CLOTH_AXES[cloth.axis[worst]];
  const outline: number[] = [];
  for (const f of members) {
    for (let e = 3 * f; e < 3 * f + 3; e++) {
      const isInner = twins[e] >= 0 && zoneOf[Math.floor(twins[e] / 3)] === zoneOf[f];
      if (!isInner) outline.push(triangles[e], triangles[nextHalfedge(e)]);
    }
  }
  return {
    triangles: Uint32Array.from(members),
    area,
    axis,
    worst: cloth[axis][worst],
    usage: cloth.usage[worst],
    vertex: triangles[3 * worst],
    outline: Uint32Array.from(outline),
  };
}
