import type { BraceRung, DesignedBrace } from './types.ts';

/** By which names a brace is sewn to the sleeve. */
export interface PlaceOnSleeve {
  readonly letter: string;
  /** How many marks of that letter other braces have below it: its own are counted on from there. */
  readonly before: number;
}

/** Rungs at which brace and sleeve are marked, from below. */
export function markedRungs({ rungs }: DesignedBrace): BraceRung[] {
  return rungs.filter(
    ({ levelId, mark }, k) => k > 0 && k < rungs.length - 1 && (levelId !== undefined || mark !== undefined),
  );
}

/**
 * Several braces share an upright line of the sleeve and its letter; their marks are numbered through from below, so that each name
 * is one place.
 */
export function placesOnSleeve(
  braces: readonly DesignedBrace[],
  letterOfBrace: (brace: DesignedBrace) => string,
): Map<DesignedBrace, PlaceOnSleeve> {
  const counts = new Map<string, number>();
  const upwards = braces
    .filter(({ to }) => to === 'sleeve')
    .sort((a, b) => a.rungs[0].to[2] - b.rungs[0].to[2]);
  return new Map(
    upwards.map((brace) => {
      const letter = letterOfBrace(brace);
      // What is caught in the closing seam has that seam's own numbers.
      const before = (brace.sleeveShare ?? 0) > 0 ? (counts.get(letter) ?? 0) : 0;
      counts.set(letter, before + markedRungs(brace).length);
      return [brace, { letter, before }];
    }),
  );
}
