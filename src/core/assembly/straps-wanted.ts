import type { FilledMeasures } from '../filled/index.ts';
import type { InsideShape } from '../inside/index.ts';
import { judgeFilled } from './judge-filled.ts';

/**
 * What the fewest parts must hold beside the sizes of every level (`judgeFilled`), so that they come out as near as all parts do: these
 * hold the worst of eight demos within 2.7 mm and 99.2 % (ours).
 */
const MOST_RMS = 3;
const LEAST_WITHIN = 0.99;

/** Where straps can take hold at the side; over the bust armholes and shoulders hold the cloth. */
const LEVELS = ['hip', 'highHip', 'waist', 'underbust', 'bust'];

/** Whether a filled form comes out as asked: girths, widths and depths, and how near its surface lies as a whole. */
export function doesHold(measures: FilledMeasures): boolean {
  const { rms, within } = measures.distance;
  const isSizeOff = judgeFilled(measures, []).some(({ code }) => code === 'filled-size-off');
  return !isSizeOff && rms <= MOST_RMS && within >= LEAST_WITHIN;
}

/** The level farthest off in width that has no straps yet and may have some; undefined where none is left. */
export function levelForStraps(
  { levels }: FilledMeasures,
  { braces }: Pick<InsideShape, 'braces'>,
  mayHave: (levelId: string) => boolean,
): string | undefined {
  const isHeld = (id: string): boolean => braces.some((brace) => brace.id.startsWith(`strap-${id}-`));
  const free = levels.filter(({ id }) => LEVELS.includes(id) && !isHeld(id) && mayHave(id));
  const off = ({ asked, found }: (typeof levels)[number]): number => Math.abs(found.width - asked.width);
  return free.toSorted((a, b) => off(b) - off(a))[0]?.id;
}
