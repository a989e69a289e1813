import type { Phrase } from '../base/index.ts';
import { TEST_TUBE_DIAMETER } from '../inside/index.ts';
import { compareReading, FILLING_TOLERANCE, type LevelReading, type LevelTarget } from './filling-targets.ts';
import type { FillZone } from './filling-zones.ts';
import { findTieChange, type HeldSection, type TieChange } from './find-tie-change.ts';

/** What is wrong with the form, and what to do. Lengths mm, masses kg. */
export type Correction =
  /** A tape cannot read so much or so little round anything so wide and deep. */
  | {
      readonly kind: 'misread';
      readonly levelId: string;
      readonly girth: number;
      readonly least: number;
      readonly most: number;
    }
  /** Every girth is over by about one share: the cloth gave. `growth`: of a test tube of it, the value to type; a fraction. */
  | { readonly kind: 'growth'; readonly share: number; readonly growth: number }
  /** Every girth is off by the same share, and cloth cannot do it: printed or cut to another scale. */
  | { readonly kind: 'scale'; readonly share: number }
  /** Fill in or take out, in these zones. */
  | {
      readonly kind: 'fill';
      readonly levelId: string;
      readonly off: number;
      readonly mass: number;
      readonly zones: readonly string[];
      /** All other measured levels are right: if it stays so, the measure itself is to be taken again. */
      readonly isAlone: boolean;
    }
  /** Right girth, wrong shape. `change` of all ties from front to back; null when no tie brings it. */
  | {
      readonly kind: 'shape';
      readonly levelId: string;
      readonly widthOff: number;
      readonly depthOff: number;
      readonly change: TieChange | null;
      /** Names of the ties, and what each takes of the change, mm. */
      readonly ties: readonly { readonly name: Phrase; readonly change: number }[];
    }
  /** Take in (positive) or let out every one of these seams at this level: how far its stitching moves on each ply. */
  | {
      readonly kind: 'seam';
      readonly levelId: string;
      readonly off: number;
      readonly letters: readonly string[];
      readonly each: number;
      /** False when letting out would leave less than `LEAST_ALLOWANCE` of the allowance. */
      readonly isPossible: boolean;
      /** The form is full: empty it first. */
      readonly isFilled: boolean;
    };

/** A held row with the names of its ties. */
export interface NamedSection extends HeldSection {
  readonly names: readonly Phrase[];
}

/** All that judging needs of a form; plain data. */
export interface FillingContext {
  readonly targets: readonly LevelTarget[];
  readonly zones: readonly FillZone[];
  /** Letters of the seams that cross each level. */
  readonly lettersAcross: Readonly<Record<string, readonly string[]>>;
  readonly allowance: number;
  readonly clothThickness: number;
  /** How each level is held inside, for `findTieChange`; levels without ties have none. */
  readonly sections: Readonly<Record<string, NamedSection>>;
}

/** Woven cloth does not grow by more under a firm filling (common practice: 1 to 3 % plain, half of it fused). */
const MOST_GROWTH = 0.035;
/** Smallest share that counts as one, and how far the levels may differ from their mean. */
const LEAST_SHARE = 0.004;
const SHARE_SPREAD = 0.0035;
const LEVELS_FOR_SHARE = 3;
/** An empty shell may be off by this, mm all round (common practice: 2 mm of its flat width). */
const EMPTY_TOLERANCE = 4;
/** Of the allowance, to be left when a seam is let out, mm. */
const LEAST_ALLOWANCE = 5;

/**
 * Corrections for one round of measuring. Readings that contradict each other are named first and left out. Then: all girths
 * over by one share are the cloth (`growth`) or, on the empty shell, the scale; a single girth is filling, or a seam where no
 * filling could do it; a right girth with wrong width and depth is roundness, for the ties. Nothing wrong gives []. Cost: a
 * dozen balances of a row for every level whose shape is off, some milliseconds each.
 */
export function judgeFilling(
  readings: Readonly<Record<string, LevelReading>>,
  state: 'empty' | 'filled',
  context: FillingContext,
): Correction[] {
  const read = context.targets.flatMap((target) => {
    const reading = readings[target.id];
    return reading ? [{ target, reading }] : [];
  });
  const misread = read.flatMap(({ target, reading }) => findMisreading(target.id, reading));
  const sound = read.filter(({ target }) => misread.every(({ levelId }) => levelId !== target.id));
  const found = state === 'empty' ? judgeEmpty(sound, context) : judgeFilled(sound, context);
  return [...misread, ...found];
}

type Read = { readonly target: LevelTarget; readonly reading: LevelReading };

/**
 * A convex outline w wide and d deep is at least 2√(w² + d²) round, a slanting sliver, and at most 2(w + d), its box
 * (Cauchy: of nested convex curves the outer is longer). 2 mm for the tape.
 */
function findMisreading(levelId: string, reading: LevelReading): (Correction & { kind: 'misread' })[] {
  const { girth, width, depth } = reading;
  if (girth === undefined || width === undefined || depth === undefined) return [];
  const least = 2 * Math.hypot(width, depth);
  const most = 2 * (width + depth);
  return girth < least - 2 || girth > most + 2 ? [{ kind: 'misread', levelId, girth, least, most }] : [];
}

function judgeEmpty(read: readonly Read[], context: FillingContext): Correction[] {
  const girths = read.flatMap(({ target, reading: { girth } }) =>
    girth === undefined
      ? []
      : [{ target, share: girth / target.emptyGirth - 1, off: girth - target.emptyGirth }],
  );
  const share = commonShare(girths.map((entry) => entry.share));
  if (share !== null) return [{ kind: 'scale', share }];
  return girths
    .filter(({ off }) => Math.abs(off) > EMPTY_TOLERANCE)
    .map(({ target, off }) => shareOverSeams(target.id, off, context, false));
}

/** Moving a seam's stitching by s takes s from both plies: 2 s of the girth, over all seams that cross the level. */
function shareOverSeams(
  levelId: string,
  off: number,
  { lettersAcross, allowance }: FillingContext,
  isFilled: boolean,
): Correction {
  const letters = lettersAcross[levelId] ?? [];
  const each = letters.length === 0 ? 0 : off / (2 * letters.length);
  const isPossible = letters.length > 0 && (each > 0 || allowance + each >= LEAST_ALLOWANCE);
  return { kind: 'seam', levelId, off, letters, each, isPossible, isFilled };
}

function judgeFilled(read: readonly Read[], context: FillingContext): Correction[] {
  const girths = read.flatMap(({ target, reading: { girth } }) => {
    if (girth === undefined) return [];
    // Outside of the cloth, half its thickness out from its middle: π t.
    const growth = (girth - Math.PI * context.clothThickness) / target.emptyGirth - 1;
    return [
      { target, growth, share: girth / target.girth - 1, ...compareReading('girth', girth, target.girth) },
    ];
  });
  const isOver = girths.filter(({ standing }) => standing === 'over');
  const common = isOver.length >= LEVELS_FOR_SHARE ? commonShare(girths.map(({ share }) => share)) : null;
  const corrections: Correction[] = [];
  if (common !== null && common > 0) {
    const mean = girths.reduce((sum, entry) => sum + entry.growth, 0) / girths.length;
    if (mean > MOST_GROWTH) corrections.push({ kind: 'scale', share: common });
    else corrections.push({ kind: 'growth', share: common, growth: growthOfTube(girths) });
  } else {
    const wrong = girths.filter(({ standing }) => standing !== 'good');
    const isAlone = wrong.length === 1 && girths.length >= LEVELS_FOR_SHARE;
    for (const { target, growth, off } of wrong) {
      // Filling cannot stretch the cloth so far: the seams were sewn wide.
      if (growth > MOST_GROWTH) corrections.push(shareOverSeams(target.id, off, context, true));
      else corrections.push(fillAt(target, off, context, isAlone));
    }
  }
  const isWrong = (id: string): boolean =>
    girths.some(({ target, standing }) => target.id === id && standing !== 'good');
  const shaped = read.filter(({ target }) => common !== null || !isWrong(target.id));
  return [...corrections, ...shaped.flatMap((entry) => judgeShape(entry, common ?? 0, context))];
}

/**
 * Growth of the test tube of this cloth. A girth H grows to H/(1 − kH), k = p/(2πEt) (Laplace's law, Hooke's for the hoop),
 * so each level tells k = γ/((1 + γ)H); the mean k gives the tube's.
 */
function growthOfTube(girths: readonly { readonly target: LevelTarget; readonly growth: number }[]): number {
  const sum = girths.reduce((total, { target, growth }) => {
    return total + growth / ((1 + growth) * target.emptyGirth);
  }, 0);
  const drawn = (sum / girths.length) * Math.PI * TEST_TUBE_DIAMETER;
  return drawn / (1 - drawn);
}

/** The share all have in common; null when they differ, are too few, or it is too small to be one. */
function commonShare(shares: readonly number[]): number | null {
  if (shares.length < LEVELS_FOR_SHARE) return null;
  const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
  const spread = Math.max(SHARE_SPREAD, 0.35 * Math.abs(mean));
  const isOne = shares.every((share) => Math.abs(share - mean) <= spread);
  return isOne && Math.abs(mean) > LEAST_SHARE ? mean : null;
}

/** Section areas go by the square of the girth: over by x of it, the two zones next to the level hold 2x too much. */
function fillAt(target: LevelTarget, off: number, { zones }: FillingContext, isAlone: boolean): Correction {
  const next = zones.filter(({ upper, lower }) => upper === target.id || lower === target.id);
  const held = next.reduce((sum, { low, high }) => sum + (low + high) / 2, 0);
  const mass = (-2 * off * held) / target.girth;
  return { kind: 'fill', levelId: target.id, off, mass, zones: next.map(({ id }) => id), isAlone };
}

/** Width and depth against the targets, grown by the share that the girth has grown by. */
function judgeShape({ target, reading }: Read, share: number, context: FillingContext): Correction[] {
  const { width, depth } = reading;
  const widthOff = width === undefined ? 0 : width - target.width * (1 + share);
  const depthOff = depth === undefined ? 0 : depth - target.depth * (1 + share);
  const limit = FILLING_TOLERANCE.depth.above + 0.5;
  if (Math.abs(widthOff) <= limit && Math.abs(depthOff) <= limit) return [];
  // Without a depth, what the width lacks went into it: round for round.
  const wanted = depth === undefined ? widthOff : -depthOff;
  const section = context.sections[target.id];
  const change = section ? findTieChange(section, wanted) : null;
  const ties = (change ? section.shares : []).flatMap((share, k) =>
    change && share > 0 ? [{ name: section.names[k], change: share * change.change }] : [],
  );
  return [{ kind: 'shape', levelId: target.id, widthOff, depthOff, change, ties }];
}
