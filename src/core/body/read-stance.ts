import type { Issue, Phrase } from '../base/index.ts';
import { nameOfMeasure } from './measures.ts';
import type { StanceId } from './parameter-ids.ts';
import { phrase } from './phrases.ts';
import { TAPE_RULES } from './tapes.ts';
import type { BodyInput } from './types.ts';

/**
 * What a distance from the wall or the floor is read to with a set square or a book, one standard deviation in mm. Read to 5 (common
 * practice, no source), 4 left the least error on scanned women: the rows' own spreads hold a little too fast (shared/survey/RESULTS.md).
 */
export const READ_TO = 4;

/** Whether anything was read from there. */
export function isStanceRead({ measures }: Pick<BodyInput, 'measures'>, stance: StanceId): boolean {
  return Object.keys(measures).some((id) => TAPE_RULES[id]?.reach.stance === stance);
}

/** Whether anything tells how the person leans: a wall, or a picture from the side. */
export function isLeanRead(input: Pick<BodyInput, 'measures' | 'photos'>): boolean {
  return isStanceRead(input, 'wall') || input.photos?.side !== undefined;
}

/** Where the wall stands is not known: two readings go to that and to how the person leans (common practice, no source). */
const LEAST_OF_WALL = 3;

/** Too few readings from the wall to tell how a person stands; heights over a floor of which nothing is known. */
export function checkStance({ measures }: Pick<BodyInput, 'measures'>): Issue[] {
  const from = (stance: StanceId): string[] =>
    Object.keys(measures).filter((id) => TAPE_RULES[id]?.reach.stance === stance);
  const [wall, floor] = [from('wall'), from('floor')];
  const issues: Issue[] = [];
  if (wall.length > 0 && wall.length < LEAST_OF_WALL) {
    issues.push(
      lacking(
        'wall-alone',
        wall[0],
        [wall.length, LEAST_OF_WALL],
        phrase('body.wall-alone', { count: wall.length, least: LEAST_OF_WALL }),
      ),
    );
  }
  if (floor.length > 0 && measures.waistHeight === undefined) {
    const [first] = floor;
    issues.push(
      lacking(
        'height-alone',
        first,
        [0, 1],
        phrase('body.height-alone', { measure: nameOfMeasure(first), needed: nameOfMeasure('waistHeight') }),
      ),
    );
  }
  return issues;
}

function lacking(
  code: string,
  id: string,
  [measured, limit]: readonly [number, number],
  message: Phrase,
): Issue {
  return {
    code,
    path: `measures.${id}`,
    severity: 'warning',
    message,
    measured,
    limit,
  };
}
