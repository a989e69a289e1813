import { type ParameterId, SKEW_IDS } from './parameter-ids.ts';
import { SECTION_LEVELS } from './shape-questions.ts';
import type { BodyInput } from './types.ts';

/** From below: a section stands on its neighbours, so a breadth or depth read there pulls them along. */
const LEVELS = ['Hip', 'HighHip', 'Waist', 'Underbust', 'Bust', 'UpperChest'] as const;
const BREASTS: readonly ParameterId[] = ['bustHeight', 'bustAngle', 'fullFront', 'armBulge'];
const NECK: readonly ParameterId[] = ['aNeck', 'dNeck', 'yNeck', 'xShoulder'];
const BACK: readonly ParameterId[] = ['yNeck', 'roundBack', 'fullFront'];

/** What a choice of the shape moves besides the sections named after it. */
const BY_CHOICE: Readonly<Record<string, readonly string[]>> = {
  upperBack: [...BACK, 'yUpperChest', 'zNape'],
  belly: ['yHighHip', 'yHip', 'kHighHip'],
  lean: [...BACK, 'yUnderbust', 'yBust', 'yUpperChest', 'zNape'],
  sway: [...BACK, 'yHip', 'yHighHip', 'yUnderbust', 'yBust', 'yUpperChest'],
  shoulderForm: ['armBulge', 'xShoulder', 'zShoulder', 'zNeckSide'],
  bustFullness: [...BREASTS, 'dBust', 'yBust', 'kBust', 'aBust'],
  bustSpread: [...BREASTS, 'dBust', 'kBust', 'aBust'],
  collarBone: ['fullFront', 'zNeckFront'],
  seat: ['yHip', 'dHip', 'kHip', 'yHighHip', 'kHighHip'],
  blade: [...BACK, 'yUpperChest', 'dUpperChest'],
};

type Seen = Pick<BodyInput, 'measures' | 'shape' | 'photos'>;

/**
 * Whether an unknown of the fit stands where the maker said more than girths and lengths: at a level with a typed breadth or
 * depth or next to one, in reach of a choice made about the shape, drawn over a picture, or between sides typed apart.
 */
export function isPulledByMaker(id: ParameterId, input: Seen): boolean {
  return parametersOfMaker(input).has(id);
}

function parametersOfMaker({ measures, shape = {}, photos = {} }: Seen): Set<string> {
  // Sides differ only where they were typed apart.
  const found = new Set<string>(SKEW_IDS);
  const add = (ids: readonly string[]): void => {
    for (const id of ids) found.add(id);
  };
  const chosen = SECTION_LEVELS.filter((level) => shape[`${level}Section`] !== undefined);
  for (const [k, level] of LEVELS.entries()) {
    const id = level[0].toLowerCase() + level.slice(1);
    const isTyped = measures[`${id}Width`] !== undefined || measures[`${id}Depth`] !== undefined;
    if (isTyped || chosen.some((section) => section === id)) {
      add(LEVELS.slice(Math.max(0, k - 1), k + 2).flatMap(sectionOf));
      if (level === 'Bust' || level === 'Underbust') add(BREASTS);
    }
  }
  if (measures.neckBaseWidth !== undefined || measures.neckBaseDepth !== undefined) add([...NECK, ...BACK]);
  if (photos.front || photos.side) add([...LEVELS.flatMap(sectionOf), ...BREASTS, ...NECK, 'zShoulder']);
  if (photos.side) add([...BACK, 'lean', 'curve', 'zNape', 'zNeckFront']);
  for (const id of Object.keys(shape)) add(BY_CHOICE[id] ?? []);
  return found;
}

function sectionOf(level: (typeof LEVELS)[number]): string[] {
  return ['a', 'd', 'y', 'k'].map((letter) => letter + level);
}
