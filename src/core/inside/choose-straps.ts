import { phrase } from './phrases.ts';
import { type BracePlan, isOff } from './plan-braces.ts';
import type { LevelFinding, StrapGain } from './types.ts';

/** What straps are to take off the largest error of width and depth: at least so many mm, and such a share of it. */
const LEAST_GAIN = 3;
const LEAST_SHARE = 1 / 3;
/** The farthest place may lie so much further off for it, mm. */
const PLACE_LOSS = 1;
/**
 * There the sections foretell too much width: in space armholes and shoulders hold it, and straps hang all but slack (0 to 12 N,
 * less than 2 mm, on five filled demos).
 */
const HELD_BY_ARMHOLES = 'upperChest';

interface Try {
  readonly plan: BracePlan;
  /** The level with that plan. */
  readonly level: LevelFinding;
}

/**
 * Of plans with straps added at a level, the simplest first, the one to sew: the first that brings the level within its limit;
 * where none does, the last that is worth its sewing beside the one taken before. None: the level stays as it was.
 */
export function chooseStraps(before: LevelFinding, tries: readonly Try[], wanted: number): Try | undefined {
  const within = tries.find(({ level }) => !isOff(level, wanted));
  if (within || before.id === HELD_BY_ARMHOLES) return within;
  let best: Try | undefined;
  for (const other of tries) if (isWorth(best?.level ?? before, other.level)) best = other;
  return best;
}

/** True when the larger error of width and depth becomes smaller by enough, and the farthest place lies hardly further off. */
function isWorth(before: LevelFinding, after: LevelFinding): boolean {
  const [was, is] = [before, after].map((level) =>
    Math.max(errorOf(level, 'width'), errorOf(level, 'depth')),
  );
  const gain = was - is;
  return (
    gain >= LEAST_GAIN &&
    gain >= LEAST_SHARE * was &&
    errorOf(after, 'place') <= errorOf(before, 'place') + PLACE_LOSS
  );
}

/** What straps buy: of width, depth and farthest place the one that comes nearer by most. */
export function gainOfStraps(before: LevelFinding, after: LevelFinding): StrapGain {
  const gains = (['width', 'depth', 'place'] as const).map((of) => {
    return { of, before: errorOf(before, of), after: errorOf(after, of) };
  });
  const best = gains.reduce((a, b) => (b.before - b.after > a.before - a.after ? b : a));
  const { name: level } = before;
  return { levelId: before.id, ...best, text: phrase('inside.strap-gain', { level, ...best }) };
}

function errorOf({ held, body }: LevelFinding, of: StrapGain['of']): number {
  return Math.abs(of === 'place' ? held.deviation : held[of] - body[of]);
}
