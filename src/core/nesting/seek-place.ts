import type { Layout } from './layout.ts';

/** How hard places are sought. Ours, by trial on the instances of `shared/nesting`. */
export interface Effort {
  /** Places anywhere. */
  readonly wide: number;
  /** Places about the present one. */
  readonly near: number;
  /** How many of the best are bettered. */
  readonly starts: number;
}

const USUAL_EFFORT: Effort = { wide: 30, near: 15, starts: 3 };

interface Found {
  loss: number;
  stance: number;
  zone: number;
  x: number;
  y: number;
}

/** Steps of the pattern search, as shares of the smaller half side: first, last of every start, last of the best. */
const FIRST_STEP = 0.5;
const ROUGH_STEP = 0.04;
const LAST_STEP = 0.002;
/** So many first steps the pattern search seldom leaves. */
const REACH = 2;

/**
 * Seeks a place of less weighted overlap for one body at a time: places anywhere and about the present one, of which the best
 * are bettered step by step. The way is that of arXiv:2509.13329, from memory.
 */
export class Seeker {
  private readonly best: Found[];
  private readonly place = { x: 0, y: 0 };
  private held = 0;

  constructor(
    private readonly layout: Layout,
    private readonly random: () => number,
    private readonly effort: Effort = USUAL_EFFORT,
  ) {
    this.best = Array.from({ length: effort.starts }, () => ({ loss: 0, stance: 0, zone: 0, x: 0, y: 0 }));
  }

  /** Lays the body at the best place found, which may be where it was. */
  move(body: number): void {
    const { layout } = this;
    this.held = 0;
    layout.aim(body);
    const zone = layout.zoneAt(layout.x[body]);
    const before = layout.weightedLossOf(body);
    this.keep(before, layout.stance[body], zone, layout.x[body], layout.y[body], body);
    this.sampleNear(body);
    this.sampleAnywhere(body);
    for (let k = 0; k < this.held; k++) this.better(body, this.best[k], FIRST_STEP, ROUGH_STEP);
    let found = this.best[0];
    for (let k = 1; k < this.held; k++) if (this.best[k].loss < found.loss) found = this.best[k];
    this.better(body, found, ROUGH_STEP, LAST_STEP);
    if (found.loss < before) layout.lay(body, found.stance, found.x, found.y);
  }

  /** Seeks a place anywhere, for a body that has none. False when no turn fits any zone. */
  settle(body: number): boolean {
    this.held = 0;
    this.layout.aim(body);
    this.sampleAnywhere(body);
    if (this.held === 0) return false;
    const [found] = this.best;
    this.better(body, found, FIRST_STEP, LAST_STEP);
    this.layout.lay(body, found.stance, found.x, found.y);
    return true;
  }

  private sampleAnywhere(body: number): void {
    const { layout, random, place } = this;
    const { stances } = layout.bodies[body];
    for (let k = 0; k < this.effort.wide; k++) {
      const stance = Math.floor(random() * stances.length);
      const zone = this.anyZone();
      const { left, right, bottom, top } = layout.zones[zone];
      const { halfWidth, halfHeight } = layout.shapes[stances[stance].shape];
      const end = Math.min(right, layout.limit);
      const x = left + halfWidth + random() * (end - left - 2 * halfWidth);
      const y = bottom + halfHeight + random() * (top - bottom - 2 * halfHeight);
      if (layout.fit(body, stance, zone, x, y, place)) this.sample(body, stance, zone);
    }
  }

  /** One zone with room within the limit, by its area. */
  private anyZone(): number {
    const { zones, limit } = this.layout;
    if (zones.length === 1) return 0;
    const area = ({ left, right, bottom, top }: (typeof zones)[number]): number =>
      Math.max(0, Math.min(right, limit) - left) * (top - bottom);
    let share = this.random() * zones.reduce((sum, zone) => sum + area(zone), 0);
    let zone = 0;
    while (zone + 1 < zones.length) {
      share -= area(zones[zone]);
      if (share < 0) break;
      zone++;
    }
    return zone;
  }

  private sampleNear(body: number): void {
    const { layout, random, place } = this;
    const { stances } = layout.bodies[body];
    const { halfWidth, halfHeight } = layout.shapes[stances[layout.stance[body]].shape];
    const zone = layout.zoneAt(layout.x[body]);
    layout.narrow(body, layout.stance[body], layout.x[body], layout.y[body], halfWidth, halfHeight);
    for (let k = 0; k < this.effort.near; k++) {
      const stance = Math.floor(random() * stances.length);
      const x = layout.x[body] + (2 * random() - 1) * halfWidth;
      const y = layout.y[body] + (2 * random() - 1) * halfHeight;
      if (layout.fit(body, stance, zone, x, y, place)) this.sample(body, stance, zone);
    }
  }

  /** Judges the place, only so far as it may be kept. */
  private sample(body: number, stance: number, zone: number): void {
    const { x, y } = this.place;
    const bound = this.held < this.best.length ? Infinity : this.best[this.held - 1].loss;
    const loss = this.layout.judge(body, stance, x, y, bound);
    if (loss < bound) this.keep(loss, stance, zone, x, y, body);
  }

  /** Into the list, which is in order of loss; of places alike only the best. */
  private keep(loss: number, stance: number, zone: number, x: number, y: number, body: number): void {
    const { best, layout } = this;
    const shape = layout.shapes[layout.bodies[body].stances[stance].shape];
    const near = 0.1 * Math.min(shape.halfWidth, shape.halfHeight);
    let at = this.held;
    for (let k = 0; k < this.held; k++) {
      const other = best[k];
      if (other.stance !== stance || Math.abs(other.x - x) + Math.abs(other.y - y) > near) continue;
      if (other.loss <= loss) return;
      at = k;
      break;
    }
    if (at === this.held) {
      if (this.held < best.length) this.held++;
      else at--;
    }
    const found = best[at];
    found.loss = loss;
    found.stance = stance;
    found.zone = zone;
    found.x = x;
    found.y = y;
    for (; at > 0 && best[at - 1].loss > best[at].loss; at--)
      [best[at - 1], best[at]] = [best[at], best[at - 1]];
  }

  /** Pattern search: to and fro along x, y or a diagonal, farther after a gain and half as far after none. */
  private better(body: number, found: Found, first: number, last: number): void {
    const { layout, random, place } = this;
    const { halfWidth, halfHeight } = layout.shapes[layout.bodies[body].stances[found.stance].shape];
    const size = Math.min(halfWidth, halfHeight);
    const far = REACH * first * size;
    layout.narrow(body, found.stance, found.x, found.y, far, far);
    let stepX = first * size;
    let stepY = stepX;
    while ((stepX > last * size || stepY > last * size) && found.loss > 0) {
      const axis = Math.floor(4 * random());
      const dx = axis === 1 ? 0 : stepX;
      const dy = axis === 0 ? 0 : axis === 3 ? -stepY : stepY;
      const { x, y } = found;
      let gained = false;
      for (let side = -1; side <= 1; side += 2) {
        if (!layout.fit(body, found.stance, found.zone, x + side * dx, y + side * dy, place)) continue;
        if (place.x === x && place.y === y) continue;
        const loss = layout.judge(body, found.stance, place.x, place.y, found.loss);
        if (!(loss < found.loss)) continue;
        found.loss = loss;
        found.x = place.x;
        found.y = place.y;
        gained = true;
      }
      const factor = gained ? 1.1 : axis > 1 ? Math.SQRT1_2 : 0.5;
      if (axis !== 1) stepX *= factor;
      if (axis !== 0) stepY *= factor;
    }
  }
}
