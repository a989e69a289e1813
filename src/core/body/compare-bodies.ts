import type { Phrase } from '../base/index.ts';
import { surfaceOfBody } from './surface-of-body.ts';
import type { Body, LevelId } from './types.ts';

export interface SectionChange {
  readonly level: LevelId;
  readonly name: Phrase;
  readonly before: {
    readonly girth: number;
    readonly width: number;
    readonly depth: number;
    readonly z: number;
  };
  readonly after: {
    readonly girth: number;
    readonly width: number;
    readonly depth: number;
    readonly z: number;
  };
}

/** What differs between two fitted bodies: two versions of one body, or two bodies. mm. */
export interface BodyComparison {
  readonly sections: readonly SectionChange[];
  /** How far the surface moved outwards (negative: inwards) at the chart points asked for. */
  readonly outward: Float64Array;
}

/**
 * Compares level by level, and point by point at the same place of the chart: the shift along the first body's normal,
 * so that a change of height along an upright wall counts as none. `chart`: n × 2 (u, v). O(n).
 */
export function compareBodies(before: Body, after: Body, chart: Float64Array): BodyComparison {
  const sections = before.levels.map((level): SectionChange => {
    const other = after.levels.find((l) => l.id === level.id) ?? level;
    return {
      level: level.id,
      name: level.name,
      before: { ...before.sections[level.id], z: level.z },
      after: { ...after.sections[level.id], z: other.z },
    };
  });
  return { sections, outward: shiftOutward(before, after, chart) };
}

function shiftOutward(before: Body, after: Body, chart: Float64Array): Float64Array {
  const h = 1e-4;
  const surface = surfaceOfBody(before);
  const other = surfaceOfBody(after);
  const outward = new Float64Array(chart.length / 2);
  const stencil = new Float64Array(10);
  const p = new Float64Array(15);
  const q = new Float64Array(3);
  for (let i = 0; i < outward.length; i++) {
    const u = chart[2 * i];
    const v = chart[2 * i + 1];
    // Centre, then forward and backward in u (radians) and v (mm), for the normal by central differences.
    stencil.set([u, v, u + h, v, u - h, v, u, v + 100 * h, u, v - 100 * h]);
    surface.evaluate(stencil, p);
    other.evaluate(stencil.subarray(0, 2), q);
    const [ax, ay, az] = [p[3] - p[6], p[4] - p[7], p[5] - p[8]];
    const [bx, by, bz] = [p[9] - p[12], p[10] - p[13], p[11] - p[14]];
    const n = [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
    const size = Math.hypot(n[0], n[1], n[2]);
    outward[i] = (n[0] * (q[0] - p[0]) + n[1] * (q[1] - p[1]) + n[2] * (q[2] - p[2])) / size;
  }
  return outward;
}
