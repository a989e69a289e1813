import type { Phrase } from '../base/index.ts';
import type { Body } from '../body/index.ts';
import type { GapGrid } from './gap-grid.ts';
import { REFIT_LIMITS } from './refit-options.ts';

/** What is done to one zone of the form. mm. */
export type RefitStep =
  | { readonly kind: 'pads'; readonly layers: number; readonly thickness: number }
  /** Every one of these seams, `each` on each of its plies; the girth is then `girth`. */
  | {
      readonly kind: 'take-in';
      readonly letters: readonly string[];
      readonly each: number;
      readonly girth: number;
    }
  /** Nothing can be taken away here: it stays too full by so much. */
  | { readonly kind: 'stays-full'; readonly by: number }
  /** Better made anew: what passes which limit. */
  | {
      readonly kind: 'anew';
      readonly why: 'too-thick' | 'too-much-to-take-in' | 'too-full';
      readonly measured: number;
      readonly limit: number;
    };

/** The body between the middles to its neighbours above and below; the last one is what lies above, up to the neck. */
export interface RefitZone {
  readonly id: string;
  /** Null for the shoulders. */
  readonly level: Phrase | null;
  /** Farthest outside and inside, mm, both positive. */
  readonly outside: number;
  readonly inside: number;
  /** mm; absent where there is no level. */
  readonly girth?: { readonly before: number; readonly after: number };
  readonly steps: readonly RefitStep[];
}

/** Seams that cross a level, by their letters: those at the sides, and all upright ones. */
export type SeamsAcross = Readonly<
  Record<string, { readonly sides: readonly string[]; readonly all: readonly string[] }>
>;

/** Zone by zone what makes the form of `before` serve the body `after`; see `REFIT_LIMITS`. `wadding`: of a layer, mm. O(grid). */
export function judgeRefit(
  before: Body,
  after: Body,
  grids: readonly GapGrid[],
  across: SeamsAcross,
  wadding: number,
): RefitZone[] {
  const vs = before.levels.map(({ v }) => v);
  const bounds = [Number.NEGATIVE_INFINITY, ...vs.slice(1).map((v, i) => (vs[i] + v) / 2)];
  const top = vs[vs.length - 1] + (vs[vs.length - 1] - bounds[bounds.length - 1]);
  const zones = before.levels.map((level, i): RefitZone => {
    const reach = extremes(grids, bounds[i], bounds[i + 1] ?? top);
    const girth = { before: before.sections[level.id].girth, after: after.sections[level.id].girth };
    const steps = stepsFor(reach, girth, across[level.id], wadding);
    return { id: level.id, level: level.name, ...reach, girth, steps };
  });
  // The neck leans as it likes: no garment is fitted there.
  const neck = Math.min(before.landmarks.neckFront.v, before.landmarks.neckBack.v);
  const reach = extremes(grids, top, neck);
  const above = { id: 'shoulders', level: null, ...reach };
  return [...zones, { ...above, steps: stepsFor(reach, undefined, undefined, wadding) }];
}

function extremes(grids: readonly GapGrid[], low: number, high: number) {
  let [outside, inside] = [0, 0];
  for (const { chart, gaps, thickness } of grids) {
    for (const [i, gap] of gaps.entries()) {
      const v = chart[2 * i + 1];
      if (v < low || v >= high) continue;
      outside = Math.max(outside, thickness[i]);
      inside = Math.max(inside, -gap);
    }
  }
  return { outside, inside };
}

function stepsFor(
  { outside, inside }: { readonly outside: number; readonly inside: number },
  girth: RefitZone['girth'],
  across: SeamsAcross[string] | undefined,
  wadding: number,
): RefitStep[] {
  const steps: RefitStep[] = [];
  if (inside > REFIT_LIMITS.least) steps.push(takeAway(inside, girth, across));
  const layers = Math.round(outside / wadding);
  if (layers > REFIT_LIMITS.layers) {
    const limit = (REFIT_LIMITS.layers + 0.5) * wadding;
    steps.push({ kind: 'anew', why: 'too-thick', measured: outside, limit });
  } else if (layers > 0 && outside > REFIT_LIMITS.least)
    steps.push({ kind: 'pads', layers, thickness: layers * wadding });
  return steps;
}

/** Each seam takes its stitching's move from two plies: 2 n · each of the girth. Sides first, where nothing is shaped. */
function takeAway(
  inside: number,
  girth: RefitZone['girth'],
  across: SeamsAcross[string] | undefined,
): RefitStep {
  const off = girth ? girth.before - girth.after : 0;
  if (!girth || !across || across.all.length === 0 || off <= REFIT_LIMITS.least) {
    if (inside <= REFIT_LIMITS.sunken) return { kind: 'stays-full', by: inside };
    return { kind: 'anew', why: 'too-full', measured: inside, limit: REFIT_LIMITS.sunken };
  }
  for (const letters of [across.sides, across.all]) {
    const each = off / (2 * letters.length);
    if (letters.length > 0 && each <= REFIT_LIMITS.takenIn)
      return { kind: 'take-in', letters, each, girth: girth.before - 2 * letters.length * each };
  }
  const measured = off / (2 * across.all.length);
  return { kind: 'anew', why: 'too-much-to-take-in', measured, limit: REFIT_LIMITS.takenIn };
}

/** True where some zone is better made anew. */
export function isBetterAnew(zones: readonly RefitZone[]): boolean {
  return zones.some(({ steps }) => steps.some(({ kind }) => kind === 'anew'));
}
