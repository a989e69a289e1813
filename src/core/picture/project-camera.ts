import { cross } from '../math/index.ts';
import type { Camera } from './types.ts';

/** From space to the page. */
export interface Projector {
  readonly scale: number;
  /** Unit vectors: to the right of the page, up the page, out of it to the viewer. */
  readonly right: readonly [number, number, number];
  readonly up: readonly [number, number, number];
  readonly toViewer: readonly [number, number, number];
  /** n × 3 mm in space → n × 3: x and y on the page (y down, mm of paper) and how near, mm in space. */
  project(points: ArrayLike<number>): Float64Array;
  /** Height in space, mm, of what lies at a page height and is so near. */
  heightAt(y: number, depth: number): number;
}

const degrees = Math.PI / 180;
/** On paper, a tenth of true size: a form is 7 to 9 cm high. */
const TENTH = 0.1;

/**
 * The cameras of all pictures, so that a maker knows a view again. A little from the side and from above: seen straight on,
 * seams in the middle lie on the outline, and outlines of front and back on each other.
 */
export const CAMERAS = {
  front: { azimuth: 35 * degrees, elevation: 14 * degrees, scale: TENTH },
  frontLeft: { azimuth: -35 * degrees, elevation: 14 * degrees, scale: TENTH },
  back: { azimuth: 150 * degrees, elevation: 14 * degrees, scale: TENTH },
  backLeft: { azimuth: -150 * degrees, elevation: 14 * degrees, scale: TENTH },
  inside: { azimuth: 143 * degrees, elevation: 16 * degrees, scale: TENTH },
  side: { azimuth: 80 * degrees, elevation: 10 * degrees, scale: TENTH },
  sideLeft: { azimuth: -80 * degrees, elevation: 10 * degrees, scale: TENTH },
  /** The form stands on its shoulders; seen into its base. */
  turned: { azimuth: 35 * degrees, elevation: -16 * degrees, scale: TENTH, isTurned: true },
} as const satisfies Readonly<Record<string, Camera>>;

/** How a camera sees. O(1), then O(n) for n points. */
export function projectCamera({ azimuth, elevation, scale, isTurned = false }: Camera): Projector {
  const turn = isTurned ? -1 : 1;
  const right = [-turn * Math.cos(azimuth), turn * Math.sin(azimuth), 0] as const;
  const level = Math.cos(elevation);
  const toViewer = [level * Math.sin(azimuth), level * Math.cos(azimuth), Math.sin(elevation)] as const;
  const up = cross(toViewer, right);
  return {
    scale,
    right,
    up,
    toViewer,
    project(points) {
      const seen = new Float64Array(points.length);
      for (let i = 0; i < points.length; i += 3) {
        const x = points[i];
        const y = points[i + 1];
        const z = points[i + 2];
        seen[i] = scale * (right[0] * x + right[1] * y + right[2] * z);
        seen[i + 1] = -scale * (up[0] * x + up[1] * y + up[2] * z);
        seen[i + 2] = toViewer[0] * x + toViewer[1] * y + toViewer[2] * z;
      }
      return seen;
    },
    heightAt: (y, depth) => (-y / scale) * up[2] + depth * toViewer[2],
  };
}
