import type { Phrase } from '../base/index.ts';
import { type LevelSpread, measuredGrowthOf, spreadWithoutTube } from '../inside/index.ts';
import { phrase } from './phrases.ts';
import type { Form, TubeStanding } from './types.ts';

/** Levels told on paper: the widest open. */
const TOLD = 3;

/**
 * How a form stands with its test tube: by the forecast of the filled form where it has one, else by Laplace's law alone. The widest
 * open level comes first. Undefined for forms without an inside, which are not stuffed.
 */
export function standingOfTube({ project, inside, filled }: Form): TubeStanding | undefined {
  if (!inside) return undefined;
  const growth = measuredGrowthOf(project.inside);
  if (growth !== undefined) return { kind: 'measured', growth };
  const levels = filled?.band
    ? spreadOfBand(filled.band, filled.measures.levels)
    : spreadWithoutTube(inside.shape.levels, project.inside);
  return { kind: 'skipped', levels: levels.toSorted((a, b) => b.less + b.more - a.less - a.more) };
}

type Filled = NonNullable<Form['filled']>;

function spreadOfBand(
  band: NonNullable<Filled['band']>,
  levels: Filled['measures']['levels'],
): readonly LevelSpread[] {
  return band.flatMap(({ id, soft, firm }) => {
    const level = levels.find((one) => one.id === id);
    if (!level) return [];
    const { girth } = level.found;
    const [low, high] = [Math.min(soft, firm, girth), Math.max(soft, firm, girth)];
    return [{ id, level: level.name, less: girth - low, more: high - girth }];
  });
}

/** The same in words, for paper. `isAlone`: nothing but the tube is printed. */
export function tellTube(standing: TubeStanding, isAlone: boolean): Phrase {
  if (isAlone) return phrase('tube.alone');
  return standing.kind === 'measured'
    ? phrase('tube.measured', { growth: standing.growth })
    : phrase('tube.skipped', { levels: standing.levels.slice(0, TOLD) });
}
