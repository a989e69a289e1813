/** Samples round the rim. */
const SAMPLES = 64;
/** The shift ends at this many times the oval (squared). */
export const RIM_FADES_AT = 3;

/**
 * What a faired trunk still misses the armhole's plane by, all along the rim, mm: taken from the skin outside, most at the
 * rim and fading away from it, so that skin and plate meet without a step and the skin keeps its slope.
 */
export class RimGap {
  private readonly gaps: Float64Array;

  /** `gapAt`: at a point of the rim, given in half axes of the oval, to the front and up. */
  constructor(gapAt: (across: number, up: number) => number) {
    this.gaps = Float64Array.from({ length: SAMPLES }, (_, i) => {
      const angle = (2 * Math.PI * i) / SAMPLES;
      return gapAt(Math.cos(angle), Math.sin(angle));
    });
  }

  /** What to take from x at a place outside the rim, mm. */
  shiftAt(across: number, up: number): number {
    const q = across * across + up * up;
    if (q >= RIM_FADES_AT) return 0;
    const t = (q - 1) / (RIM_FADES_AT - 1);
    const fade = 1 - t * t * t * (t * (6 * t - 15) + 10);
    return fade * this.read((Math.atan2(up, across) / (2 * Math.PI)) * SAMPLES);
  }

  /** Between samples by Catmull and Rom's cubics. */
  private read(at: number): number {
    const cell = Math.floor(at);
    const f = at - cell;
    const a = this.gaps[(cell - 1 + 2 * SAMPLES) % SAMPLES];
    const b = this.gaps[(cell + 2 * SAMPLES) % SAMPLES];
    const c = this.gaps[(cell + 1 + 2 * SAMPLES) % SAMPLES];
    const d = this.gaps[(cell + 2 + 2 * SAMPLES) % SAMPLES];
    return b + 0.5 * f * (c - a + f * (2 * a - 5 * b + 4 * c - d + f * (3 * (b - c) + d - a)));
  }
}
