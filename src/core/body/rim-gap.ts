import { readRound } from './read-round.ts';

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
    return fade * readRound(this.gaps, Math.atan2(up, across) / (2 * Math.PI));
  }
}
