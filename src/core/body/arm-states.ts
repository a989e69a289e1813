/**
 * How the arm was held when its girths were taken: hanging, or bent with a fist. Sleeves follow: over an arm made relaxed
 * they fit at rest, over one made flexed they let it work.
 */
export const ARM_STATES = ['relaxed', 'flexed'] as const;
export type ArmState = (typeof ARM_STATES)[number];
