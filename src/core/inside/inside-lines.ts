import { assertInvariant } from '../base/index.ts';
import { clamp, cubicSplineMoments, evaluateCubicSpline } from '../math/index.ts';
import type { BracePlan } from './plan-braces.ts';
import type { InsideForm, InsideLine, InsideSeam } from './types.ts';

/**
 * Shares of the half girth, from centre front and centre back, at which a front-to-back web holds best. Found by trying
 * shares of 0.09 to 0.35 on eight different bodies: the largest deviation at waist and hip is least here.
 */
const SHARES: Readonly<Record<string, readonly [front: number, back: number]>> = {
  hip: [0.13, 0.09],
  highHip: [0.14, 0.12],
  waist: [0.14, 0.13],
  underbust: [0.14, 0.12],
  bust: [0.14, 0.12],
  upperChest: [0.14, 0.12],
};

/** Chart angles counted from the centre back: −π/2 ≤ u < 3π/2. */
export function angleFromBack(u: number): number {
  const turn = 2 * Math.PI;
  const shifted = (u + Math.PI / 2 + 1e-9) % turn;
  return (shifted < 0 ? shifted + turn : shifted) - 1e-9 - Math.PI / 2;
}

/** Where the line crosses height v; null when it does not reach there. */
export function placeOnLine(
  line: InsideLine,
  v: number,
): { u: number; seam: InsideSeam; along: number } | null {
  for (const seam of line.seams) {
    const last = seam.v.length - 1;
    if (v < seam.v[0] - 1e-9 || v > seam.v[last] + 1e-9) continue;
    for (let i = 1; i <= last; i++) {
      if (v > seam.v[i] && i < last) continue;
      const t = clamp((v - seam.v[i - 1]) / (seam.v[i] - seam.v[i - 1]), 0, 1);
      const u = seam.u[i - 1] + t * (seam.u[i] - seam.u[i - 1]);
      return { u, seam, along: seam.along[i - 1] + t * (seam.along[i] - seam.along[i - 1]) };
    }
  }
  return null;
}

/** Flat length of the line between two heights, over all its seams, mm. */
export function lengthOnLine(line: InsideLine, from: number, to: number): number {
  return line.seams.reduce((sum, seam) => {
    const low = Math.max(from, seam.v[0]);
    const high = Math.min(to, seam.v[seam.v.length - 1]);
    if (high <= low) return sum;
    const one = { ...line, seams: [seam] };
    return sum + (placeOnLine(one, high)?.along ?? 0) - (placeOnLine(one, low)?.along ?? 0);
  }, 0);
}

/** True when the line can be followed over all the heights. */
export function doesLineReach(line: InsideLine | undefined, rows: readonly number[]): line is InsideLine {
  return line !== undefined && rows.every((v) => placeOnLine(line, v) !== null);
}

/** The seam line of that place, for example `princessFront` on the right. */
export function findLine(form: InsideForm, id: string, side: InsideLine['side']): InsideLine | undefined {
  return form.lines.find((line) => line.id === id && line.side === side);
}

/** A line drawn on the panels, through the chart angles given at the rows. Null where it leaves the panels. */
export function drawPanelLine(
  form: InsideForm,
  what: Pick<InsideLine, 'id' | 'name' | 'side' | 'half'>,
  rows: readonly number[],
  angleAt: (v: number) => number,
  letter: string,
): InsideLine | null {
  const u = Float64Array.from(rows, angleAt);
  const chart = new Float64Array(2 * rows.length);
  rows.forEach((v, i) => {
    chart[2 * i] = u[i];
    chart[2 * i + 1] = v;
  });
  const stretches = form.measureOnPanels(chart);
  if (stretches === null) return null;
  const along = new Float64Array(rows.length);
  for (let i = 1; i < along.length; i++) along[i] = along[i - 1] + stretches.lengths[i - 1];
  const levels = form.levels.flatMap((level) => {
    const index = rows.indexOf(level.v);
    return index > 0 && index < rows.length - 1 ? [{ levelId: level.id, index }] : [];
  });
  const marks = levels.map((level, k) => ({ kind: 'level' as const, number: k + 1, ...level }));
  const seam: InsideSeam = { id: what.id, letter, u, v: Float64Array.from(rows), along, marks };
  return { ...what, seams: [seam] };
}

/** Chart angle of a web's place at height v, by its share of the half girth there; `shares` replaces the usual ones. */
export function webAngle(
  form: InsideForm,
  half: 'front' | 'back',
  side: 'right' | 'left',
  v: number,
  shares: BracePlan['webShares'],
): number {
  const share = shareAt(form, half, v, { ...SHARES, ...shares });
  const centre = half === 'front' ? Math.PI / 2 : side === 'right' ? -Math.PI / 2 : 1.5 * Math.PI;
  const towards = (half === 'front') === (side === 'right') ? -1 : 1;
  return angleAtDistance(form, v, centre, towards, share);
}

/** Chart angle of a strap's place at height v, by its share of the half girth from centre front. */
export function strapAngle(form: InsideForm, share: number, side: 'right' | 'left', v: number): number {
  return angleAtDistance(form, v, Math.PI / 2, side === 'right' ? -1 : 1, share);
}

function shareAt(
  form: InsideForm,
  half: 'front' | 'back',
  v: number,
  shares: BracePlan['webShares'],
): number {
  const known = form.levels.filter(({ id }) => shares[id] !== undefined);
  const vs = known.map((level) => level.v);
  const own = known.map(({ id }) => shares[id][half === 'front' ? 0 : 1]);
  const inside = clamp(v, vs[0], vs[vs.length - 1]);
  return evaluateCubicSpline(vs, own, cubicSplineMoments(vs, own), inside);
}

/** Chart angle at which row v passes x (mm, to the right of the wearer) in front, by bisection; the side's where it is narrower. */
export function angleAtWidth({ surface }: InsideForm, v: number, x: number): number {
  const side = x > 0 ? 0 : Math.PI;
  let [near, far] = [Math.PI / 2, side];
  for (let k = 0; k < BISECTIONS; k++) {
    const u = 0.5 * (near + far);
    if (Math.abs(surface.evaluate(Float64Array.of(u, v))[0]) < Math.abs(x)) near = u;
    else far = u;
  }
  return 0.5 * (near + far);
}

/** Halves a quarter turn to less than a millionth of a millimetre. */
const BISECTIONS = 30;
const STEPS = 90;

/** Goes from a centre towards a side along the row until the share of the half girth is walked. */
function angleAtDistance(
  form: InsideForm,
  v: number,
  centre: number,
  towards: number,
  share: number,
): number {
  const chart = new Float64Array(2 * (STEPS + 1));
  for (let i = 0; i <= STEPS; i++) {
    chart[2 * i] = centre + (towards * Math.PI * i) / STEPS;
    chart[2 * i + 1] = v;
  }
  const points = form.surface.evaluate(chart);
  const along = new Float64Array(STEPS + 1);
  for (let i = 1; i <= STEPS; i++) {
    const [dx, dy] = [points[3 * i] - points[3 * i - 3], points[3 * i + 1] - points[3 * i - 2]];
    along[i] = along[i - 1] + Math.hypot(dx, dy);
  }
  const wanted = share * along[STEPS];
  const i = along.findIndex((length) => length >= wanted);
  assertInvariant(i > 0, 'inside', 'a share of the half girth lies on it', share);
  return centre + (towards * Math.PI * (i - 1 + (wanted - along[i - 1]) / (along[i] - along[i - 1]))) / STEPS;
}
