/** What a cloth takes before it fails or looks wrong, fractions. Stretch is given way to; shrink is eased in, or wrinkles. */
export interface AxisLimits {
  readonly stretch: number;
  readonly shrink: number;
}

/**
 * Stretch: middle of the ranges that fabric tests and common practice give. Plain wool, 168 g/m², by the FAST test at
 * 20 gf/cm: warp 1.9 %, weft 1.9 %, bias 4.7 % at only 5 gf/cm (a published laboratory report). Tight cotton: warp 1–2 %,
 * weft 2–5 %, bias 8–20 % before shear wrinkles; fused: warp and weft 0.5–1.5 %, bias 2–4 % (common practice, no source).
 * Shrink: a woven edge eases 1–2 % without a pucker (common practice, no source).
 */
export const CLOTH_LIMITS = [
  {
    id: 'plainCotton',
    warp: { stretch: 0.02, shrink: 0.015 },
    weft: { stretch: 0.03, shrink: 0.015 },
    bias: { stretch: 0.08, shrink: 0.03 },
  },
  {
    id: 'fusedCotton',
    warp: { stretch: 0.012, shrink: 0.01 },
    weft: { stretch: 0.015, shrink: 0.01 },
    bias: { stretch: 0.03, shrink: 0.015 },
  },
  {
    id: 'plainWool',
    warp: { stretch: 0.02, shrink: 0.02 },
    weft: { stretch: 0.02, shrink: 0.02 },
    bias: { stretch: 0.08, shrink: 0.04 },
  },
] as const;

/** What a cloth is called in the file. */
export type ClothId = (typeof CLOTH_LIMITS)[number]['id'];
