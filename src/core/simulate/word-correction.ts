import type { Phrase } from '../base/index.ts';
import type { Correction } from './judge-filling.ts';
import { phrase } from './phrases.ts';

export interface CorrectionWords {
  readonly title: Phrase;
  readonly text: Phrase;
}

/** Less than this is not told of a width or depth, mm. */
const LEAST_TOLD = 0.5;
/** A girth further off than this, mm, with all others right, is rather measured wrong on the person. */
const DOUBTED_FROM = 10;

/** A correction in words: what is wrong, and what to do. `nameOf`: names of levels and zones by id. */
export function wordCorrection(correction: Correction, nameOf: (id: string) => Phrase): CorrectionWords {
  switch (correction.kind) {
    case 'misread': {
      const { levelId, girth, least, most } = correction;
      const again = girth < least ? 'girth' : 'width-and-depth';
      return {
        title: phrase('correction.misread.title', { level: nameOf(levelId) }),
        text: phrase('correction.misread.text', { girth, least, most, again }),
      };
    }
    case 'growth': {
      const { share, growth } = correction;
      return {
        title: phrase('correction.growth.title', { share }),
        text: phrase('correction.growth.text', { growth }),
      };
    }
    case 'scale': {
      const { share } = correction;
      const size = share > 0 ? 'larger' : 'smaller';
      return {
        title: phrase('correction.scale.title', { share: Math.abs(share), size }),
        text: phrase('correction.scale.text'),
      };
    }
    case 'fill':
      return wordFill(correction, nameOf);
    case 'shape':
      return wordShape(correction, nameOf);
    case 'seam': {
      const { levelId, off, each, letters, isPossible, isFilled } = correction;
      const isOver = off > 0;
      const [size, act] = isOver ? (['wide', 'take-in'] as const) : (['narrow', 'let-out'] as const);
      const seams = { act, letters, each: Math.abs(each), isPossible, isFilled } as const;
      return {
        title: phrase('correction.seam.title', { level: nameOf(levelId), by: Math.abs(off), size }),
        text: phrase('correction.seam.text', seams),
      };
    }
  }
}

function wordFill(
  { levelId, off, mass, zones, isAlone }: Correction & { kind: 'fill' },
  nameOf: (id: string) => Phrase,
): CorrectionWords {
  const where = { level: nameOf(levelId), by: Math.abs(off) };
  const filling = {
    mass: Math.abs(mass),
    zones: zones.map(nameOf),
    isMeasureDoubted: isAlone && Math.abs(off) > DOUBTED_FROM,
  };
  return off > 0
    ? {
        title: phrase('correction.take-out.title', where),
        text: phrase('correction.take-out.text', filling),
      }
    : { title: phrase('correction.put-in.title', where), text: phrase('correction.put-in.text', filling) };
}

function wordShape(
  { levelId, widthOff, depthOff, change, ties }: Correction & { kind: 'shape' },
  nameOf: (id: string) => Phrase,
): CorrectionWords {
  const title = phrase('correction.shape.title', {
    level: nameOf(levelId),
    ...(Math.abs(depthOff) < LEAST_TOLD ? {} : { depth: depthOff }),
    ...(Math.abs(widthOff) < LEAST_TOLD ? {} : { width: widthOff }),
  });
  if (!change || ties.length === 0) return { title, text: phrase('correction.shape.without-tie') };
  const { width, depth } = change;
  const text = phrase('correction.shape.text', {
    act: change.change < 0 ? 'shorten' : 'lengthen',
    ties: ties.map((tie) => ({ name: tie.name, by: Math.abs(tie.change) })),
    width,
    depth,
  });
  return { title, text };
}
