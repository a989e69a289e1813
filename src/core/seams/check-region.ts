import type { Issue, Phrase } from '../base/index.ts';
import { doSegmentsTouch, locateInPolygon } from '../math/index.ts';
import type { ChartSurface } from '../mesh/index.ts';
import { phrase } from './phrases.ts';
import type { SeamForm } from './types.ts';

const TURN = 2 * Math.PI;

/**
 * What keeps a loop on the body from being cut out as one piece: it leaves the body, goes round it, crosses itself, or
 * runs over an armhole or round one. `loop`: n × 2 chart points, u running on without jumps (see `unwindLoop`), closed by
 * its first point. O(n²) boxes.
 */
export function checkRegion(loop: Float64Array, surface: ChartSurface, form: SeamForm): Issue[] {
  const issues: Issue[] = [];
  const tell = (code: string, message: Phrase, place?: number): void => {
    const path = place === undefined ? 'loop' : `loop.${place}`;
    issues.push({ code, path, message, severity: 'error' });
  };
  const n = loop.length / 2;
  if (n < 3) {
    tell('region-too-few-points', phrase('seams.region-too-few-points', { count: n }));
    return issues;
  }
  const [low, high] = surface.vRange;
  const outside = findIndex(n, (i) => !(loop[2 * i + 1] >= low && loop[2 * i + 1] <= high));
  if (outside >= 0) {
    tell('region-leaves-body', phrase('seams.region-leaves-body', { point: outside + 1 }), outside);
    return issues;
  }
  const width = spanOf(loop);
  if (Math.abs(loop[0] - loop[2 * n - 2]) > Math.PI || width >= TURN) {
    tell('region-goes-round', phrase('seams.region-goes-round'));
    return issues;
  }
  const crossing = findCrossing(loop);
  if (crossing) {
    const [i, j] = crossing;
    tell('region-crosses-itself', phrase('seams.region-crosses-itself', { points: [i + 1, j + 1] }), i);
  }
  for (const side of ['right', 'left'] as const) {
    if (meetsArmhole(loop, form.armholes[side])) {
      tell('region-over-armhole', phrase('seams.region-over-armhole', { side }));
    }
  }
  return issues;
}

/** The same loop with u running on: every step goes the shorter way round. */
export function unwindLoop(loop: ArrayLike<number>): Float64Array {
  const out = Float64Array.from(loop);
  for (let i = 2; i < out.length; i += 2) {
    const step = out[i] - out[i - 2];
    out[i] -= TURN * Math.round(step / TURN);
  }
  return out;
}

function findIndex(count: number, isMeant: (i: number) => boolean): number {
  for (let i = 0; i < count; i++) if (isMeant(i)) return i;
  return -1;
}

function spanOf(loop: Float64Array): number {
  let [least, most] = [loop[0], loop[0]];
  for (let i = 2; i < loop.length; i += 2) {
    least = Math.min(least, loop[i]);
    most = Math.max(most, loop[i]);
  }
  return most - least;
}

/** Two sides that touch although they are not neighbours, or neighbours of which one lies on the other. */
function findCrossing(loop: Float64Array): [number, number] | undefined {
  const n = loop.length / 2;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const isNext = j === i + 1 || (i === 0 && j === n - 1);
      if (isNext ? doNeighboursOverlap(loop, i, j) : doSidesTouch(loop, i, loop, j, 0)) return [i, j];
    }
  }
  return undefined;
}

/** Neighbours share a point; they overlap when one's far end lies on the other. */
function doNeighboursOverlap(loop: Float64Array, i: number, j: number): boolean {
  const n = loop.length / 2;
  const [first, second] = (i + 1) % n === j ? [i, j] : [j, i];
  const end = (second + 1) % n;
  const at = (k: number): [number, number] => [loop[2 * k], loop[2 * k + 1]];
  const isOn = (p: [number, number], from: number, to: number): boolean =>
    doSegmentsTouch(...p, ...p, ...at(from), ...at(to));
  return isOn(at(end), first, (first + 1) % n) || isOn(at(first), second, end);
}

function doSidesTouch(a: Float64Array, i: number, b: Float64Array, j: number, shift: number): boolean {
  const [p, q] = [2 * i, (2 * i + 2) % a.length];
  const [r, s] = [2 * j, (2 * j + 2) % b.length];
  if (Math.max(a[p + 1], a[q + 1]) < Math.min(b[r + 1], b[s + 1])) return false;
  if (Math.max(b[r + 1], b[s + 1]) < Math.min(a[p + 1], a[q + 1])) return false;
  return doSegmentsTouch(a[p], a[p + 1], a[q], a[q + 1], b[r] + shift, b[r + 1], b[s] + shift, b[s + 1]);
}

/** Sides meet, or one lies inside the other; at every turn of the chart. */
function meetsArmhole(loop: Float64Array, armhole: Float64Array): boolean {
  return [-TURN, 0, TURN].some((shift) => {
    for (let i = 0; i < loop.length / 2; i++) {
      for (let j = 0; j < armhole.length / 2; j++) {
        if (doSidesTouch(loop, i, armhole, j, shift)) return true;
      }
    }
    return (
      locateInPolygon(loop, armhole[0] + shift, armhole[1]) > 0 ||
      locateInPolygon(armhole, loop[0] - shift, loop[1]) > 0
    );
  });
}
