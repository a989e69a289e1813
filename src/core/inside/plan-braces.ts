import { withUsual } from '../base/index.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { partsOfInside } from './parts-of-inside.ts';
import type { InsideForm, InsideOptions, LevelFinding } from './types.ts';

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

/**
 * Straps that are always there. With all parts at the two fullest levels; more are added where a section stays too far off. With the fewest,
 * on panels cut for the filling, at the bust alone: `shared/filled/RESULTS.md`, “The fewest parts”.
 */
const STRAPS = { all: ['hip', 'bust'], fewest: ['bust'] } as const;

/**
 * Webs of one pair where they usually hold best, and one pair of straps at every level that has them from the start: where the
 * options ask for them, at the usual levels, and where they are `needed` besides.
 */
export function usualPlan(
  levels: readonly { readonly id: string }[],
  options: InsideOptions,
  needed: readonly string[],
): BracePlan {
  const usual: readonly string[] = [...STRAPS[partsOfInside(options)], ...needed];
  const isWanted = (id: string): boolean => {
    const chosen = choiceOfStraps(id, options);
    return mayHaveStraps(id, options) && (chosen === 'with' || usual.includes(id));
  };
  const straps = Object.fromEntries(
    levels.flatMap(({ id }) => (isWanted(id) ? [[id, [placeOfPair(id)]]] : [])),
  );
  return { straps, webShares: {} };
}

/**
 * A level above the waist whose section, held by webs and ties, comes out so much too wide, mm, keeps something of it on panels cut for
 * the filling too: `shared/filled/RESULTS.md`, “The fewest parts”.
 */
const SWELLS = { underbust: 17 } as const;

/** With the fewest parts, levels without straps in the plan that want some by what their sections foretell. */
export function levelsToHold(
  levels: readonly LevelFinding[],
  options: InsideOptions,
  { straps }: BracePlan,
): string[] {
  if (partsOfInside(options) === 'all') return [];
  return Object.entries(SWELLS).flatMap(([id, most]) => {
    const level = levels.find((one) => one.id === id);
    const isTooWide = level !== undefined && level.held.width - level.body.width > most;
    return isTooWide && !straps[id] && mayHaveStraps(id, options) ? [id] : [];
  });
}

/** Whether more straps may be tried at a level that stays too far off by its section. */
export function mayAddStraps(levelId: string, options: InsideOptions): boolean {
  return partsOfInside(options) === 'all' && mayHaveStraps(levelId, options);
}

/** Nobody chose otherwise. */
export function mayHaveStraps(levelId: string, options: InsideOptions): boolean {
  return withUsual(INSIDE_OPTIONS, options).straps && choiceOfStraps(levelId, options) !== 'without';
}

function choiceOfStraps(levelId: string, { strapsAt = {} }: InsideOptions): 'with' | 'without' | undefined {
  return Object.entries(strapsAt).find(([id]) => id === levelId)?.[1];
}

/** Where one pair alone stands: at the side, and over the armholes' lower edge a little before it. */
function placeOfPair(levelId: string): number {
  return levelId === 'upperChest' ? 0.44 : 0.5;
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
