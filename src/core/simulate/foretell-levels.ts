import { growthOfGirth, type InsideOptions, type LevelFinding, type SectionSize } from '../supports/index.ts';

/** What a tape and a pair of set squares will find on the finished, filled form at one level. mm. */
export interface ForetoldLevel {
  readonly id: string;
  readonly name: string;
  readonly z: number;
  readonly body: SectionSize;
  /** With nothing inside: a circle. */
  readonly free: SectionSize & { readonly deviation: number };
  /** Neutral surface of the shell, before the cloth grows: what the panels were drawn to. */
  readonly held: LevelFinding['held'];
  readonly slack: readonly string[];
  /** By which the girth grows under the filling, a fraction. */
  readonly growth: number;
  /** Over the finished cloth: the held section grown, and one thickness of cloth further out than its inner face. */
  readonly finished: SectionSize;
}

/**
 * Adds to the balanced sections what the cloth does: it grows by its hoop tension (Laplace, Hooke, or the maker's own test
 * tube), and its outside is half its thickness further out than its middle, 2π(t/2) more in girth.
 * Girth growth spreads over width and depth alike, less where webs hold the depth: an upper bound there.
 */
export function foretellLevels(levels: readonly LevelFinding[], options: InsideOptions): ForetoldLevel[] {
  const thickness = options.clothThickness ?? 0.6;
  return levels.map(({ id, name, z, body, free, held, slack }) => {
    const growth = growthOfGirth(held.girth, options);
    const finished = {
      width: held.width * (1 + growth) + thickness,
      depth: held.depth * (1 + growth) + thickness,
      girth: held.girth * (1 + growth) + Math.PI * thickness,
    };
    return { id, name, z, body, free, held, slack, growth, finished };
  });
}
