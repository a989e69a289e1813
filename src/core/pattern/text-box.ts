import { measureText, TEXT_ASCENT, TEXT_DESCENT } from '../drawing/index.ts';
import { shareOfSegment } from '../math/index.ts';
import type { PieceText } from './types.ts';

/** A rectangle of given size about its centre, turned counter-clockwise (radians, y up). mm. */
export interface TurnedBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly angle: number;
}

/** The box one line of text occupies on the piece. */
export function boxOfPieceText(text: PieceText): TurnedBox {
  const width = measureText(text.text, text.size);
  const height = (TEXT_ASCENT + TEXT_DESCENT) * text.size;
  const along = text.anchor === 'start' ? width / 2 : text.anchor === 'middle' ? 0 : -width / 2;
  const up = ((TEXT_ASCENT - TEXT_DESCENT) / 2) * text.size;
  const cos = Math.cos(text.angle);
  const sin = Math.sin(text.angle);
  return {
    x: text.x + along * cos - up * sin,
    y: text.y + along * sin + up * cos,
    width,
    height,
    angle: text.angle,
  };
}

/** Text may lean back beyond upright by this much: along one upright edge all of it then reads the same way. */
const LEAN = Math.PI / 9;

/** One line of text whose box is centred on (x, y). The angle is turned by half a turn where it would read upside down. */
export function centreText(x: number, y: number, text: string, size: number, angle: number): PieceText {
  const readable = Math.cos(angle - LEAN) < 0 ? angle + Math.PI : angle;
  const down = ((TEXT_ASCENT - TEXT_DESCENT) / 2) * size;
  return {
    x: x + down * Math.sin(readable),
    y: y - down * Math.cos(readable),
    text,
    size,
    anchor: 'middle',
    angle: Math.atan2(Math.sin(readable), Math.cos(readable)),
  };
}

/** True when some part of the polyline (n × 2) is nearer to the box than `clearance`. O(n). */
export function isBoxNearLine(
  box: TurnedBox,
  points: Float64Array,
  closed: boolean,
  clearance: number,
): boolean {
  const cos = Math.cos(box.angle);
  const sin = Math.sin(box.angle);
  const [w, h] = [box.width / 2, box.height / 2];
  const [farX, farY] = [w + clearance, h + clearance];
  const count = points.length / 2;
  let [px, py] = [Number.NaN, Number.NaN];
  for (let k = closed ? -1 : 0; k < count; k++) {
    const i = k < 0 ? count - 1 : k;
    const dx = points[2 * i] - box.x;
    const dy = points[2 * i + 1] - box.y;
    const x = dx * cos + dy * sin;
    const y = dy * cos - dx * sin;
    // Both ends beyond the same side: the usual case, settled without a distance.
    const isBeyond =
      Math.min(x, px) > farX || Math.max(x, px) < -farX || Math.min(y, py) > farY || Math.max(y, py) < -farY;
    const isFirst = k === (closed ? -1 : 0);
    if (!isFirst && !isBeyond && distanceRectToSegment(w, h, px, py, x, y) < clearance) return true;
    px = x;
    py = y;
  }
  return false;
}

/** True when two boxes overlap or come nearer than `gap`. */
export function isBoxNearBox(a: TurnedBox, b: TurnedBox, gap: number): boolean {
  const reach = (Math.hypot(a.width, a.height) + Math.hypot(b.width, b.height)) / 2;
  if (Math.hypot(a.x - b.x, a.y - b.y) > reach + gap) return false;
  return holdsCentre(a, b) || holdsCentre(b, a) || isBoxNearLine(a, cornersOfBox(b), true, gap);
}

function holdsCentre(outer: TurnedBox, inner: TurnedBox): boolean {
  const dx = inner.x - outer.x;
  const dy = inner.y - outer.y;
  const along = dx * Math.cos(outer.angle) + dy * Math.sin(outer.angle);
  const up = dy * Math.cos(outer.angle) - dx * Math.sin(outer.angle);
  return Math.abs(along) <= outer.width / 2 && Math.abs(up) <= outer.height / 2;
}

/** Four corners, counter-clockwise (4 × 2). */
function cornersOfBox(box: TurnedBox): Float64Array {
  const cos = Math.cos(box.angle);
  const sin = Math.sin(box.angle);
  const corners = new Float64Array(8);
  [-1, -1, 1, -1, 1, 1, -1, 1].forEach((_, i, signs) => {
    if (i % 2 === 1) return;
    const along = (signs[i] * box.width) / 2;
    const up = (signs[i + 1] * box.height) / 2;
    corners[i] = box.x + along * cos - up * sin;
    corners[i + 1] = box.y + along * sin + up * cos;
  });
  return corners;
}

/** Rectangle |x| ≤ w, |y| ≤ h against the segment from (ax, ay) to (bx, by). */
function distanceRectToSegment(w: number, h: number, ax: number, ay: number, bx: number, by: number): number {
  if (crossesRect(w, h, ax, ay, bx, by)) return 0;
  let best = Math.min(distanceToRect(w, h, ax, ay), distanceToRect(w, h, bx, by));
  const dx = bx - ax;
  const dy = by - ay;
  if (dx === 0 && dy === 0) return best;
  for (let corner = 0; corner < 4; corner++) {
    const px = corner % 2 === 0 ? -w : w;
    const py = corner < 2 ? -h : h;
    const t = shareOfSegment(ax, ay, bx, by, px, py);
    best = Math.min(best, Math.hypot(ax + t * dx - px, ay + t * dy - py));
  }
  return best;
}

function distanceToRect(w: number, h: number, x: number, y: number): number {
  return Math.hypot(Math.max(0, Math.abs(x) - w), Math.max(0, Math.abs(y) - h));
}

/** Liang and Barsky's clipping test (ACM Trans. Graphics 3, 1984): some part of the segment is in the rectangle. */
function crossesRect(w: number, h: number, ax: number, ay: number, bx: number, by: number): boolean {
  let from = 0;
  let to = 1;
  for (const [start, delta, half] of [
    [ax, bx - ax, w],
    [ay, by - ay, h],
  ]) {
    if (delta === 0) {
      if (Math.abs(start) > half) return false;
      continue;
    }
    const t1 = (-half - start) / delta;
    const t2 = (half - start) / delta;
    from = Math.max(from, Math.min(t1, t2));
    to = Math.min(to, Math.max(t1, t2));
  }
  return from <= to;
}
