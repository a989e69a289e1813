import type { Phrase } from '../base/index.ts';
import { hoursOfBrace } from '../sewing/index.ts';
import { phrase } from './phrases.ts';
import type { DesignedBrace, InsideForm, InsideOptions, InsideShape } from './types.ts';

/** Levels at which straps may be put on or left out. */
export type StrapLevel = keyof NonNullable<InsideOptions['strapsAt']>;

/** A part of the inside beside webs, ties and sleeve that may be there or not: what it buys, and what it costs. */
export interface FurtherPart {
  /** Throat webs, or straps at the level. */
  readonly id: 'throat' | StrapLevel;
  readonly name: Phrase;
  readonly isIn: boolean;
  /** It was added because this form would not come out as asked without it. */
  readonly isNeeded: boolean;
  /** From cutting to both ends sewn on, of both sides: our estimate. */
  readonly hours: number;
  /** Without and with it, in the mean of the demos that were tried: see `GAINS`. Absent where it was not measured. */
  readonly gain?: PartGain;
}

/** mm. */
export interface PartGain {
  /** How far the filled form lies off the body, root mean square. */
  readonly without: number;
  readonly with: number;
  /** Where it tells most: the width or depth of a level that is farthest off, or how far the throat stands out. */
  readonly at: 'size' | 'throat';
  readonly atWithout: number;
  readonly atWith: number;
}

/**
 * What each part buys on forms of the fewest parts, each cut anew for its filling: the mean of the demos average and round-belly, `shared/filled/RESULTS.md`, “The fewest parts”.
 */
const GAINS: Readonly<Partial<Record<FurtherPart['id'], PartGain>>> = {
  throat: { without: 3.1, with: 2.6, at: 'throat', atWithout: 10, atWith: 4.5 },
  bust: { without: 3.3, with: 2.6, at: 'size', atWithout: 3.9, atWith: 2.3 },
  underbust: { without: 2.6, with: 2.2, at: 'size', atWithout: 2.3, atWith: 0.5 },
  hip: { without: 2.6, with: 2.6, at: 'size', atWithout: 2.3, atWith: 2 },
};

/** Height of a strap and of a throat web where there is none to measure, mm. */
const HEIGHTS = { strap: 40, throat: 150 } as const;

/** Every part that may be there or not: throat webs, then straps from the hip up; those nobody measured only where they are there. */
export function furtherParts(
  form: Pick<InsideForm, 'levels'>,
  { braces, strapsNeeded }: Pick<InsideShape, 'braces' | 'strapsNeeded'>,
): FurtherPart[] {
  const own = (start: string): DesignedBrace[] => braces.filter(({ id }) => id.startsWith(start));
  const throat = own('throat-');
  const parts: FurtherPart[] = [
    {
      id: 'throat',
      name: phrase('part.throat'),
      isIn: throat.length > 0,
      isNeeded: false,
      hours: hoursOf(throat, HEIGHTS.throat, false),
      ...(GAINS.throat && { gain: GAINS.throat }),
    },
  ];
  for (const { id, name: level } of form.levels) {
    if (!isStrapLevel(id)) continue;
    const straps = own(`strap-${id}-`);
    const gain = GAINS[id];
    if (straps.length === 0 && !gain) continue;
    parts.push({
      id,
      name: phrase('part.straps', { level }),
      isIn: straps.length > 0,
      isNeeded: straps.length > 0 && strapsNeeded.includes(id),
      hours: hoursOf(straps, HEIGHTS.strap, true),
      ...(gain && { gain }),
    });
  }
  return parts;
}

const STRAP_LEVELS: Readonly<Record<StrapLevel, true>> = {
  hip: true,
  highHip: true,
  waist: true,
  underbust: true,
  bust: true,
  upperChest: true,
};

function isStrapLevel(id: string): id is StrapLevel {
  return Object.hasOwn(STRAP_LEVELS, id);
}

/** Of one right and one left where there is none yet. */
function hoursOf(braces: readonly DesignedBrace[], height: number, isStrap: boolean): number {
  const heights =
    braces.length > 0 ? braces.map(({ rungs }) => rungs[rungs.length - 1].z - rungs[0].z) : [height, height];
  return heights.reduce((sum, high) => {
    return sum + hoursOfBrace({ onSleeve: high, onShell: high, isStrap });
  }, 0);
}
