import type { Phrase } from '../base/index.ts';
import {
  cutGirth,
  growthOfGirth,
  type InsideOptions,
  type LevelFinding,
  outsideOfCloth,
  type SectionSize,
} from '../inside/index.ts';

/** What a tape and a pair of set squares will find on the finished, filled form at one level. mm. */
export interface PredictedLevel {
  readonly id: string;
  readonly name: Phrase;
  readonly z: number;
  readonly body: SectionSize;
  /** With nothing inside: a circle. */
  readonly free: SectionSize & { readonly deviation: number };
  /** Neutral surface of the shell, before the cloth grows: what the panels were drawn to. */
  readonly held: LevelFinding['held'];
  readonly slack: readonly Phrase[];
  /** By which the panels are cut smaller for growth and layers, mm of girth. */
  readonly takenOff: number;
  /** By which the girth grows under the filling, a fraction. */
  readonly growth: number;
  /** Over the finished cloth and its cover: the held section as cut, grown, and half the cloth and all the cover further out. */
  readonly finished: SectionSize;
}

/**
 * Adds to the balanced sections what the cloth does: it grows by its hoop tension (Laplace, Hooke, or the maker's own test
 * tube), and its outside lies half its thickness and the whole cover further out than its middle, 2π times that in girth.
 * What was taken off the panels for both comes back so.
 * Girth growth spreads over width and depth alike, less where webs hold the depth: an upper bound there.
 */
export function predictLevels(levels: readonly LevelFinding[], options: InsideOptions): PredictedLevel[] {
  const outside = outsideOfCloth(options);
  return levels.map(({ id, name, z, body, free, held, slack }) => {
    const cut = cutGirth(body.girth, options);
    const asCut = (held.girth * cut) / body.girth;
    const growth = growthOfGirth(asCut, options);
    const grown = (asCut * (1 + growth)) / held.girth;
    const finished = {
      width: held.width * grown + 2 * outside,
      depth: held.depth * grown + 2 * outside,
      girth: held.girth * grown + 2 * Math.PI * outside,
    };
    return { id, name, z, body, free, held, slack, takenOff: body.girth - cut, growth, finished };
  });
}
