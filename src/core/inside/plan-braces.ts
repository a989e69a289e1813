import type { InsideForm, LevelFinding } from './types.ts';

/** Which straps there are, and where webs stand in or out at a level. */
export interface BracePlan {
  /** Per level: places of the straps of either side, as shares of the half girth from centre front. */
  readonly straps: Readonly<Record<string, readonly number[]>>;
  /** Per level: shares of the half girth, from centre front and from centre back, at which the webs stand there. */
  readonly webShares: Readonly<Record<string, readonly [front: number, back: number]>>;
}

/** What may be added at one level when it stays too far off. */
type Addition = { readonly straps: readonly number[]; readonly webs?: readonly [number, number] };

/**
 * Additions that helped at each level, the simplest first. Found by trying places of straps (0.36 to 0.75) and webs
 * (0.03 to 0.26) on eight different bodies. Between the breasts a web further in lets each breast bow out on its own,
 * and straps further back keep the sides flat meanwhile.
 */
const ADDITIONS: Readonly<Record<string, readonly Addition[]>> = {
  hip: [{ straps: [0.45, 0.6] }],
  highHip: [{ straps: [0.5] }],
  waist: [{ straps: [0.5] }],
  underbust: [{ straps: [0.5] }, { straps: [0.5], webs: [0.14, 0.16] }],
  bust: [
    { straps: [0.48, 0.66], webs: [0.07, 0.14] },
    { straps: [0.44, 0.52, 0.7], webs: [0.07, 0.14] },
  ],
  upperChest: [{ straps: [0.44] }, { straps: [0.44], webs: [0.07, 0.14] }],
};

/** Webs of one pair where they usually hold best, and straps at the two fullest levels. */
export function usualPlan(hasStraps: boolean): BracePlan {
  return { straps: hasStraps ? { hip: [0.5], bust: [0.5] } : {}, webShares: {} };
}

/** The plan with each addition known for the level, the simplest first. */
export function plansWith(plan: BracePlan, levelId: string): BracePlan[] {
  return (ADDITIONS[levelId] ?? []).map(({ straps, webs }) => ({
    straps: { ...plan.straps, [levelId]: straps },
    webShares: webs ? { ...plan.webShares, [levelId]: webs } : plan.webShares,
  }));
}

/** Bust and upper chest may deviate by this, mm: the cloth is there more bent than a sleeve can be (ours). */
const CHEST_LIMIT = 6.5;

export function limitOf(levelId: string, wanted: number): number {
  return levelId === 'bust' || levelId === 'upperChest' ? Math.max(wanted, CHEST_LIMIT) : wanted;
}

export function isOff({ id, held }: LevelFinding, wanted: number): boolean {
  return Math.abs(held.deviation) > limitOf(id, wanted);
}

/** Cloth of the webs above a strap that passes through them at the uppermost level, mm of chart height. */
const OVER_STRAP = 36;

/** How far up webs and ties reach: to the uppermost level, and over the straps there if there are any. */
export function topOfWebs(form: InsideForm, plan: BracePlan): number {
  const top = form.levels[form.levels.length - 1];
  return top.v + (plan.straps[top.id] ? OVER_STRAP : 0);
}
