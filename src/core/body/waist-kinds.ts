/**
 * Where a person ties the waist: at the narrowest place, where an elastic band settles by itself, or at the navel. On the
 * survey's women the navel's girth is 66 mm larger and lies 74 mm lower, so the same number tells of another body.
 */
export const WAIST_KINDS = ['narrowest', 'elastic', 'navel'] as const;
export type WaistKind = (typeof WAIST_KINDS)[number];

/** What a project that does not say is taken to mean. */
export const USUAL_WAIST: WaistKind = 'narrowest';
