/** What a form is changed with. */
export interface RefitOptions {
  /** mm of one layer, within `WADDING`, which says the usual. */
  readonly wadding?: number;
}

/**
 * Beyond these a form is better made anew; ours, by common practice of dress stands, no source. mm, but for layers.
 *
 * `least`: what filling, cover and tape leave open anyway. `layers`: more slide over each other. `takenIn`: on each ply of a seam; webs
 * and notches beside it no longer meet. `sunken`: what may stay too full where nothing can be taken away.
 */
export const REFIT_LIMITS = { least: 3, layers: 4, takenIn: 8, sunken: 8 } as const;
