import { type Issue, mmPerInch } from '../base/index.ts';
import { listWeigher } from './judge-list.ts';
import { knownToSurvey, meanValues } from './known-to-survey.ts';
import { isConfirmed } from './limit-of-readings.ts';
import { findMeasure } from './measures.ts';
import { phrase } from './phrases.ts';
import { SURVEY_VARIABLES } from './survey-of-waist.ts';
import type { BodyInput, Figure } from './types.ts';

/** A tape begun at its first inch instead of its end, or counted from there. */
const OFFSETS = [mmPerInch, -mmPerInch];
/** The list must be this much likelier with the girths mended: 30 times. About one true list in a hundred is. */
const LIKELIER = Math.log(30);
const LEAST_GIRTHS = 4;

/** A girth over the ellipse in its box, and one standard deviation, of the 1988 survey's people (navel level for high hip). */
const FULLNESS: Readonly<Record<Figure, Readonly<Record<string, readonly [mean: number, spread: number]>>>> =
  {
    bust: { bust: [1.11, 0.026], highHip: [1.013, 0.019], hip: [1.069, 0.018] },
    chest: { bust: [1.113, 0.026], highHip: [1.019, 0.017], hip: [1.053, 0.017] },
  };
/** Off by at least this much, and this many standard deviations of the levels' mean: about two true lists in a hundred go beyond. */
const LEAST_OFF = 0.025;
const SURE = 2.8;
const LEAST_BOXES = 2;

/**
 * A hint when all girths look too large or too small together, as with a worn or shrunken tape, a tape begun at its first inch, or
 * one laid over clothes. Lengths alone cannot tell 3 or 4 per cent: bodies of one length differ by more. Widths and depths
 * can, on two levels or more.
 */
export function findGirthsOff(input: BodyInput): readonly Issue[] {
  const off = offOfBoxes(input) ?? offOfList(input);
  if (off === undefined) return [];
  return [
    {
      code: 'girths-off',
      path: 'measures',
      severity: 'warning',
      message: phrase('body.girths-off', {
        size: off.share > 0 ? 'large' : 'small',
        share: Math.abs(off.share),
        seenBy: off.seenBy,
      }),
      measured: off.share,
      limit: 0,
    },
  ];
}

interface Off {
  /** Of a girth, above 0 where too large. */
  readonly share: number;
  readonly seenBy: 'boxes' | 'list';
}

function offOfBoxes({ figure, measures, ...input }: BodyInput): Off | undefined {
  const typed = meanValues(measures);
  const seen = Object.entries(FULLNESS[figure]).flatMap(([level, [mean, spread]]) => {
    const [girth, width, depth] = ['Girth', 'Width', 'Depth'].map((part) => typed[level + part]);
    if (girth === undefined || width === undefined || depth === undefined) return [];
    return [{ girth: `${level}Girth`, share: girth / (mean * ellipseGirth(width, depth)) - 1, spread }];
  });
  if (seen.length < LEAST_BOXES) return undefined;
  if (seen.some(({ girth }) => isConfirmed({ figure, measures, ...input }, girth))) return undefined;
  const share = seen.reduce((sum, level) => sum + level.share, 0) / seen.length;
  const spread = Math.hypot(...seen.map((level) => level.spread)) / seen.length;
  const isOff = Math.abs(share) > Math.max(LEAST_OFF, SURE * spread);
  return isOff && seen.every((level) => level.share * share > 0) ? { share, seenBy: 'boxes' } : undefined;
}

function offOfList(input: BodyInput): Off | undefined {
  const known = knownToSurvey(meanValues(input.measures));
  const ids = SURVEY_VARIABLES.filter((id) => known[id] !== undefined);
  const girths = ids.filter((id) => findMeasure(id)?.kind === 'girth');
  if (girths.length < LEAST_GIRTHS || girths.some((id) => isConfirmed(input, id))) return undefined;
  const { logLikelihood } = listWeigher(input.figure, ids, input.waist);
  const before = logLikelihood(known);
  const mean = girths.reduce((sum, id) => sum + known[id], 0) / girths.length;
  for (const offset of OFFSETS) {
    const mended = { ...known };
    for (const id of girths) mended[id] -= offset;
    if (logLikelihood(mended) - before > LIKELIER) return { share: offset / mean, seenBy: 'list' };
  }
  return undefined;
}

/** Ramanujan's first formula for the girth of an ellipse in a box; wrong by less than 1 in 10 000 here. */
function ellipseGirth(width: number, depth: number): number {
  return 0.5 * Math.PI * (3 * (width + depth) - Math.sqrt((3 * width + depth) * (width + 3 * depth)));
}
