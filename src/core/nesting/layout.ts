import { isOneInside, type Shape } from './make-shapes.ts';
import { HEAD } from './overlap-proxy.ts';
import type { NestLattice } from './types.ts';

/** A rectangle in which items may lie. Sheets lie beside each other along x, so that one coordinate tells how much is used. */
export interface Zone {
  readonly left: number;
  /** Infinity: an endless strip. */
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
  /** Where the origin of strip or sheet lies: lattices count from it. */
  readonly originX: number;
  readonly originY: number;
  readonly sheet: number;
}

/** One way an item may lie. */
export interface Stance {
  /** Index into the shapes. */
  readonly shape: number;
  readonly turn: number;
  readonly latticeX: NestLattice | undefined;
  readonly latticeY: NestLattice | undefined;
}

/** Something that lies on the cloth: an item, or what is taken from the start. */
export interface Body {
  readonly stances: readonly Stance[];
  /** False: it stays where it is. */
  readonly moves: boolean;
}

/** Overlap of two shapes, as `overlapProxy`; places in heads. */
export type OverlapOf = (
  a: number,
  b: number,
  dx: number,
  dy: number,
  epsilon: number,
  enough: number,
) => number;

export interface Snapshot {
  readonly isLaid: Uint8Array;
  readonly stance: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** What is asked of the others while places of one body are judged, the heaviest first. */
interface Aimed {
  readonly other: Int32Array;
  readonly shape: Int32Array;
  readonly heaviness: Float64Array;
  readonly left: Float64Array;
  readonly bottom: Float64Array;
  readonly right: Float64Array;
  readonly top: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Weight of the pair times both sizes. */
  readonly factor: Float64Array;
  readonly epsilon: Float64Array;
}

/** Beyond this share of the height an item may stand out of its zone: what rounding to single precision takes. */
const SLACK = 1e-6;
/** Of the larger diameter: how deep an overlap is where its measure begins to decay. As in arXiv:2509.13329. */
const DECAY = 0.01;

/**
 * Where everything lies (x, y of the middle of each shape's box), how much each pair overlaps, and what each pair weighs.
 * Bodies not yet laid have no box and meet nobody.
 */
export class Layout {
  readonly count: number;
  readonly stance: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly isLaid: Uint8Array;
  readonly weights: Float64Array;
  /** Unweighted, count × count, symmetric. */
  readonly losses: Float64Array;
  evaluations = 0;
  limit = Infinity;

  /** Boxes of the grown outlines; of a body not laid, from Infinity on. */
  private readonly lefts: Float64Array;
  private readonly bottoms: Float64Array;
  private readonly rights: Float64Array;
  private readonly tops: Float64Array;
  private readonly shapeOf: Int32Array;
  private readonly aimed: Aimed;
  private aimedCount = 0;
  /** Those of the aimed, in their order, whose boxes meet the region; and the region. */
  private readonly near: Int32Array;
  private nearCount = 0;
  private readonly region = new Float64Array(4);
  private readonly shapeBoxes: Float64Array;
  private readonly diameters: Float64Array;
  private readonly sizes: Float64Array;

  constructor(
    readonly bodies: readonly Body[],
    /** The first so many are items. */
    readonly items: number,
    readonly shapes: readonly Shape[],
    readonly zones: readonly Zone[],
    private readonly overlapOf: OverlapOf,
  ) {
    const n = bodies.length;
    this.count = n;
    this.stance = new Int32Array(n);
    this.shapeOf = new Int32Array(n);
    this.aimed = {
      ...{ other: new Int32Array(n), shape: new Int32Array(n), heaviness: new Float64Array(n) },
      ...{ left: new Float64Array(n), bottom: new Float64Array(n) },
      ...{ right: new Float64Array(n), top: new Float64Array(n) },
      ...{ x: new Float64Array(n), y: new Float64Array(n) },
      ...{ factor: new Float64Array(n), epsilon: new Float64Array(n) },
    };
    this.near = new Int32Array(n);
    this.x = new Float64Array(n);
    this.y = new Float64Array(n);
    this.isLaid = new Uint8Array(n);
    this.weights = new Float64Array(n * n).fill(1);
    this.losses = new Float64Array(n * n);
    this.lefts = new Float64Array(n).fill(Infinity);
    this.bottoms = new Float64Array(n);
    this.rights = new Float64Array(n);
    this.tops = new Float64Array(n);
    this.shapeBoxes = Float64Array.from(shapes.flatMap(({ box }) => [...box]));
    const first = bodies.map(({ stances }) => shapes[stances[0].shape].of);
    this.diameters = Float64Array.from(first, ({ diameter }) => Math.fround(diameter));
    this.sizes = Float64Array.from(first, ({ hullArea }) => Math.sqrt(Math.sqrt(hullArea)));
  }

  /**
   * Makes ready to judge places of a body: the others, what weighs most and is largest first, since most places are dismissed
   * after few of them. To be called again when another has moved or weights have changed.
   */
  aim(body: number): void {
    const { count, sizes, weights, aimed } = this;
    let n = 0;
    for (let j = 0; j < count; j++) {
      if (!this.isLaid[j] || j === body) continue;
      const heaviness = weights[body * count + j] * sizes[j];
      let at = n++;
      for (; at > 0 && aimed.heaviness[at - 1] < heaviness; at--) {
        aimed.heaviness[at] = aimed.heaviness[at - 1];
        aimed.other[at] = aimed.other[at - 1];
      }
      aimed.heaviness[at] = heaviness;
      aimed.other[at] = j;
    }
    for (let k = 0; k < n; k++) {
      const j = aimed.other[k];
      aimed.left[k] = this.lefts[j];
      aimed.bottom[k] = this.bottoms[j];
      aimed.right[k] = this.rights[j];
      aimed.top[k] = this.tops[j];
      aimed.x[k] = this.x[j];
      aimed.y[k] = this.y[j];
      aimed.shape[k] = this.shapeOf[j];
      aimed.factor[k] = weights[body * count + j] * sizes[j] * sizes[body];
      aimed.epsilon[k] = this.epsilonOf(body, j);
    }
    this.aimedCount = n;
    this.region.fill(Infinity);
  }

  /**
   * Says that places are to be judged within so far of this one: whom they cannot meet is then not asked each time. Others may be
   * judged as well, and what is judged stays the same.
   */
  narrow(body: number, stance: number, x: number, y: number, farX: number, farY: number): void {
    const { aimed, aimedCount, shapeBoxes, region, near } = this;
    const { shape } = this.bodies[body].stances[stance];
    const left = x + shapeBoxes[4 * shape] - farX;
    const bottom = y + shapeBoxes[4 * shape + 1] - farY;
    const right = x + shapeBoxes[4 * shape + 2] + farX;
    const top = y + shapeBoxes[4 * shape + 3] + farY;
    let n = 0;
    for (let k = 0; k < aimedCount; k++) {
      if (aimed.left[k] >= right || aimed.right[k] <= left) continue;
      if (aimed.bottom[k] < top && aimed.top[k] > bottom) near[n++] = k;
    }
    this.nearCount = n;
    region[0] = left;
    region[1] = bottom;
    region[2] = right;
    region[3] = top;
  }

  /** Weighted loss, at a place, of the body aimed at; or Infinity once it is above `bound`. */
  judge(body: number, stance: number, x: number, y: number, bound: number): number {
    this.evaluations++;
    const { aimed, aimedCount, shapeBoxes, region, near, nearCount } = this;
    const { left: lefts, bottom: bottoms, right: rights, top: tops } = aimed;
    const { shape } = this.bodies[body].stances[stance];
    const left = x + shapeBoxes[4 * shape];
    const bottom = y + shapeBoxes[4 * shape + 1];
    const right = x + shapeBoxes[4 * shape + 2];
    const top = y + shapeBoxes[4 * shape + 3];
    const isNear = left >= region[0] && bottom >= region[1] && right <= region[2] && top <= region[3];
    const count = isNear ? nearCount : aimedCount;
    let total = 0;
    for (let n = 0; n < count; n++) {
      const k = isNear ? near[n] : n;
      if (lefts[k] >= right || rights[k] <= left || bottoms[k] >= top || tops[k] <= bottom) continue;
      const dx = aimed.x[k] - x;
      const dy = aimed.y[k] - y;
      const epsilon = aimed.epsilon[k];
      // Overlap from which on the loss is above the bound, so that it need not be known any better.
      const rest = (bound - total) / aimed.factor[k];
      const enough = Math.fround(rest * rest - epsilon * epsilon);
      const overlap = this.overlapAt(shape, aimed.shape[k], dx, dy, epsilon, enough);
      if (overlap === 0) continue;
      if (overlap > enough) return Infinity;
      total += Math.sqrt(overlap + epsilon * epsilon) * aimed.factor[k];
      if (total > bound) return Infinity;
    }
    return total;
  }

  private epsilonOf(a: number, b: number): number {
    return Math.fround(DECAY * Math.max(this.diameters[a], this.diameters[b]));
  }

  private lossOf(body: number, j: number): number {
    const epsilon = this.epsilonOf(body, j);
    const dx = this.x[j] - this.x[body];
    const dy = this.y[j] - this.y[body];
    const overlap = this.overlapAt(this.shapeOf[body], this.shapeOf[j], dx, dy, epsilon, Infinity);
    return overlap === 0 ? 0 : Math.sqrt(overlap + epsilon * epsilon) * this.sizes[body] * this.sizes[j];
  }

  /** 0 where shapes a and b, moved by (dx, dy), do not meet. */
  private overlapAt(a: number, b: number, dx: number, dy: number, epsilon: number, enough: number): number {
    const overlap = this.overlapOf(HEAD * a, HEAD * b, Math.fround(dx), Math.fround(dy), epsilon, enough);
    if (overlap > 0) return overlap;
    if (!this.mayHold(a, b, dx, dy) || !isOneInside(this.shapes[a], this.shapes[b], dx, dy)) return 0;
    return -overlap;
  }

  /** True when the box of one lies in that of the other. */
  private mayHold(a: number, b: number, dx: number, dy: number): boolean {
    const boxes = this.shapeBoxes;
    const left = boxes[4 * a] - boxes[4 * b] - dx;
    const bottom = boxes[4 * a + 1] - boxes[4 * b + 1] - dy;
    const right = boxes[4 * a + 2] - boxes[4 * b + 2] - dx;
    const top = boxes[4 * a + 3] - boxes[4 * b + 3] - dy;
    return (
      (left >= 0 && bottom >= 0 && right <= 0 && top <= 0) ||
      (left <= 0 && bottom <= 0 && right >= 0 && top >= 0)
    );
  }

  /** Lays a body there and brings the losses up to date. */
  lay(body: number, stance: number, x: number, y: number): void {
    const { lefts, bottoms, rights, tops, count, losses } = this;
    this.put(body, stance, x, y);
    const left = lefts[body];
    const bottom = bottoms[body];
    const right = rights[body];
    const top = tops[body];
    for (let j = 0; j < count; j++) {
      const isApart = lefts[j] >= right || rights[j] <= left || bottoms[j] >= top || tops[j] <= bottom;
      const areBothHeld = !this.bodies[body].moves && !this.bodies[j].moves;
      const loss = isApart || areBothHeld || j === body ? 0 : this.lossOf(body, j);
      losses[body * count + j] = loss;
      losses[j * count + body] = loss;
    }
  }

  private put(body: number, stance: number, x: number, y: number): void {
    const { shape } = this.bodies[body].stances[stance];
    this.stance[body] = stance;
    this.shapeOf[body] = shape;
    this.x[body] = x;
    this.y[body] = y;
    this.isLaid[body] = 1;
    this.lefts[body] = x + this.shapeBoxes[4 * shape];
    this.bottoms[body] = y + this.shapeBoxes[4 * shape + 1];
    this.rights[body] = x + this.shapeBoxes[4 * shape + 2];
    this.tops[body] = y + this.shapeBoxes[4 * shape + 3];
  }

  lift(body: number): void {
    this.isLaid[body] = 0;
    this.lefts[body] = Infinity;
    for (let j = 0; j < this.count; j++) {
      this.losses[body * this.count + j] = 0;
      this.losses[j * this.count + body] = 0;
    }
  }

  weightedLossOf(body: number): number {
    const { count, losses, weights } = this;
    let sum = 0;
    for (let k = body * count; k < (body + 1) * count; k++) sum += losses[k] * weights[k];
    return sum;
  }

  totalLoss(): number {
    const { count, losses } = this;
    let sum = 0;
    for (let i = 1; i < count; i++) for (let j = 0; j < i; j++) sum += losses[i * count + j];
    return sum;
  }

  snapshot(): Snapshot {
    return { isLaid: this.isLaid.slice(), stance: this.stance.slice(), x: this.x.slice(), y: this.y.slice() };
  }

  /** Everything is where it was; what is out of reach of the limit is pulled in. Losses are taken anew. */
  restore({ isLaid, stance, x, y }: Snapshot): void {
    for (let i = 0; i < this.count; i++) {
      if (isLaid[i]) this.put(i, stance[i], x[i], y[i]);
      else this.lift(i);
    }
    for (let i = 0; i < this.count; i++) if (isLaid[i]) this.pullIn(i);
    for (let i = 0; i < this.count; i++) if (isLaid[i]) this.lay(i, this.stance[i], this.x[i], this.y[i]);
  }

  /** Into the nearest place of its zone, at its lattice; into the first zone with room where its own has none. */
  private pullIn(body: number): void {
    if (!this.bodies[body].moves) return;
    const zone = this.zoneAt(this.x[body]);
    const place = { x: 0, y: 0 };
    const tries = [zone, ...this.zones.keys()];
    // In another turn only where its own has no place left.
    const stances = [this.stance[body], ...this.bodies[body].stances.keys()];
    for (const stance of stances)
      for (const one of tries) {
        if (!this.fit(body, stance, one, this.x[body], this.y[body], place)) continue;
        this.put(body, stance, place.x, place.y);
        return;
      }
  }

  zoneAt(x: number): number {
    let zone = 0;
    while (zone + 1 < this.zones.length && this.zones[zone + 1].left <= x) zone++;
    return zone;
  }

  /** The nearest allowed place to (x, y) in a zone; false when there is none. */
  fit(
    body: number,
    stance: number,
    zone: number,
    x: number,
    y: number,
    place: { x: number; y: number },
  ): boolean {
    const { left, right, bottom, top, originX, originY } = this.zones[zone];
    const { shape, latticeX, latticeY } = this.bodies[body].stances[stance];
    const { halfWidth, halfHeight, middleX, middleY } = this.shapes[shape];
    const slack = SLACK * (top - bottom);
    const end = Math.min(right + slack, this.limit);
    place.x = nearest(x, left - slack + halfWidth, end - halfWidth, originX + middleX, latticeX);
    place.y = nearest(y, bottom - slack + halfHeight, top + slack - halfHeight, originY + middleY, latticeY);
    // Not a number where there is no room.
    return place.x + place.y < Infinity;
  }

  /** Right end of the rightmost item. */
  used(): number {
    let right = 0;
    for (let i = 0; i < this.items; i++) if (this.isLaid[i]) right = Math.max(right, this.rightOf(i));
    return right;
  }

  rightOf(body: number): number {
    return this.x[body] + this.shapes[this.shapeOf[body]].halfWidth;
  }
}

/** The value of [low, high] nearest to x, on the lattice from `origin` where there is one; NaN when there is none. */
function nearest(
  x: number,
  low: number,
  high: number,
  origin: number,
  lattice: NestLattice | undefined,
): number {
  if (!(low <= high)) return NaN;
  const inside = x < low ? low : Math.min(x, high);
  if (!lattice) return inside;
  const start = origin + lattice.phase;
  const first = Math.ceil((low - start) / lattice.period);
  const last = Math.floor((high - start) / lattice.period);
  if (first > last) return NaN;
  const k = Math.round((inside - start) / lattice.period);
  return start + lattice.period * Math.min(last, Math.max(first, k));
}
