import { type DisplayUnit, formatLength, kgPerPound, wordsOf } from '../base/index.ts';
import type { Correction } from './judge-stuffing.ts';

export interface CorrectionWords {
  readonly title: string;
  readonly text: string;
}

/**
 * A correction in plain words and the maker's units. `nameOf`: names of levels and zones by id. Small lengths are given to
 * the millimetre or the sixteenth of an inch.
 */
export function wordCorrection(
  correction: Correction,
  nameOf: (id: string) => string,
  unit: DisplayUnit,
): CorrectionWords {
  const small = (mm: number): string => formatSmall(Math.abs(mm), unit);
  switch (correction.kind) {
    case 'misread': {
      const { girth, least, most } = correction;
      const isShort = girth < least;
      return {
        title: `${nameOf(correction.levelId)}: these readings cannot be true together`,
        text: `What is so wide and deep is at least ${formatLength(least, unit)} and at most ${formatLength(most, unit)} round, and you typed ${formatLength(girth, unit)}. Measure ${isShort ? 'the girth' : 'width and depth'} again, with set squares against the form.`,
      };
    }
    case 'growth': {
      const { share, growth } = correction;
      return {
        title: `The cloth has grown: every girth is over by about ${percent(share)}`,
        text: `One share everywhere is the cloth, not the filling. A test tube of it would grow by ${percent(growth)}: take that as measured growth, and the panels are cut smaller. On this form, take filling out until the girths are right.`,
      };
    }
    case 'scale':
      return {
        title: `Everything is ${correction.share > 0 ? 'larger' : 'smaller'} by ${percent(Math.abs(correction.share))}`,
        text: 'One share everywhere, and more than cloth does by itself: measure the bars of the print and the seam allowances before anything else.',
      };
    case 'fill':
      return wordFill(correction, nameOf, unit);
    case 'shape':
      return wordShape(correction, nameOf, unit);
    case 'seam': {
      const { off, each, letters, isPossible, isFilled } = correction;
      const isOver = off > 0;
      const first = isFilled
        ? 'Filling alone does not stretch cloth so far, so the seams are wide. Take the filling out first: no seam is sewn over filling. Then '
        : '';
      const act = isOver
        ? `sew each of the ${letters.length} seams ${letters.join(', ')} deeper by ${small(each)} there, running out to nothing at the next levels`
        : `let each of the ${letters.length} seams ${letters.join(', ')} out by ${small(each)} there`;
      const limit = isPossible ? '' : ' Its allowance is too narrow for that: put in a new panel instead.';
      return {
        title: `${nameOf(correction.levelId)}: the shell is ${small(off)} too ${isOver ? 'wide' : 'narrow'} all round`,
        text: `${capitalise(`${first}${act}.`)}${limit}`,
      };
    }
  }
}

function wordFill(
  { levelId, off, mass, zones, isAlone }: Correction & { kind: 'fill' },
  nameOf: (id: string) => string,
  unit: DisplayUnit,
): CorrectionWords {
  const where = zones.map((id) => `“${nameOf(id)}”`).join(' and ');
  const amount = formatMass(Math.abs(mass), unit);
  const again =
    isAlone && Math.abs(off) > 10
      ? ' All other girths measured are right: if it stays so, measure the person here again.'
      : '';
  return off > 0
    ? {
        title: `${nameOf(levelId)}: ${formatSmall(off, unit)} too large all round`,
        text: `Take filling out, about ${amount} from ${where}, and measure again. Do not tighten the seam.${again}`,
      }
    : {
        title: `${nameOf(levelId)}: ${formatSmall(-off, unit)} too small all round`,
        text: `Put filling in, about ${amount} into ${where}, from the surface inwards.${again}`,
      };
}

function wordShape(
  { levelId, widthOff, depthOff, change, ties }: Correction & { kind: 'shape' },
  nameOf: (id: string) => string,
  unit: DisplayUnit,
): CorrectionWords {
  const part = (off: number, word: string): string[] =>
    Math.abs(off) < 0.5 ? [] : [`${formatSmall(Math.abs(off), unit)} too ${word}`];
  const offs = [
    ...part(depthOff, depthOff > 0 ? 'deep' : 'shallow'),
    ...part(widthOff, widthOff > 0 ? 'wide' : 'narrow'),
  ];
  const title = `${nameOf(levelId)}: ${offs.join(' and ')}, with the right girth`;
  if (!change || ties.length === 0) {
    const text =
      'No tie alone brings that: move filling from where it bulges to where it is flat, and measure width and depth again.';
    return { title, text };
  }
  const isShorter = change.change < 0;
  const list = ties
    .map((tie) => `${wordsOf(tie.name)} by ${formatSmall(Math.abs(tie.change), unit)}`)
    .join(', ');
  return {
    title,
    text: `${isShorter ? 'Shorten' : 'Lengthen'} at this level: ${list}. That makes it ${formatSmall(Math.abs(change.depth), unit)} ${change.depth < 0 ? 'shallower' : 'deeper'} and ${formatSmall(Math.abs(change.width), unit)} ${change.width < 0 ? 'narrower' : 'wider'}. Take the filling out of the zone first.`,
  };
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

/** Millimetres, or sixteenths of an inch. */
function formatSmall(length: number, unit: DisplayUnit): string {
  return unit === 'in'
    ? formatLength(length, 'in', { fraction: 16 })
    : `${length.toFixed(length < 9.95 ? 1 : 0)} mm`;
}

/** Kilograms, below one grams; beside inches pounds, below one ounces. */
export function formatMass(kg: number, unit: DisplayUnit): string {
  const amount = unit === 'in' ? kg / kgPerPound : kg;
  if (amount < 1) return unit === 'in' ? `${(16 * amount).toFixed(1)} oz` : `${(1000 * amount).toFixed(0)} g`;
  return `${amount.toFixed(amount < 10 ? 2 : 1)} ${unit === 'in' ? 'lb' : 'kg'}`;
}

function capitalise(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
