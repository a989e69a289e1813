/**
 * A repeatable source of numbers in [0, 1): the same seed gives the same sequence on every machine.
 * Mulberry32, Tommy Ettinger 2017, public domain: a 32-bit counter stepped by 0x6d2b79f5 and mixed by
 * multiply-and-shift. Period 2³². Not for secrets.
 */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
