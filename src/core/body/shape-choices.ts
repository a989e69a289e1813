import { type Issue, type Phrase, plain, wordsOf } from '../base/index.ts';
import type { Figure } from './types.ts';

/** A question the tape cannot answer. Every choice is a number underneath; a typed number is used as it is. */
export interface ShapeCategory {
  readonly id: string;
  readonly name: Phrase;
  readonly why: Phrase;
  /** What the number means. */
  readonly unit: 'ratio' | 'mm' | 'degrees';
  readonly range: readonly [number, number];
  readonly choices: readonly { readonly id: string; readonly name: Phrase; readonly value: number }[];
  readonly usual: string;
  /** Asked of this figure only: the other has nothing it could change. */
  readonly onlyFigure?: Figure;
}

/** Offsets on depth / breadth for five classes of people, from the public surveys' residuals (shared/survey/SOURCE.md). */
const SECTION_CHOICES = [
  { id: 'shallow', name: plain('Shallow'), value: -0.065 },
  { id: 'fairlyShallow', name: plain('Fairly shallow'), value: -0.028 },
  { id: 'middling', name: plain('Middling'), value: 0.005 },
  { id: 'fairlyDeep', name: plain('Fairly deep'), value: 0.04 },
  { id: 'deep', name: plain('Deep'), value: 0.09 },
];

function section(level: string, name: string): ShapeCategory {
  return {
    id: `${level}Section`,
    name: plain(`${name} from above`),
    why: plain(
      `At the same girth a ${name.toLowerCase()} can be wide and shallow or narrow and deep; no tape can tell.`,
    ),
    unit: 'ratio',
    range: [-0.2, 0.25],
    choices: SECTION_CHOICES,
    usual: 'middling',
  };
}

export const SHAPE_CATEGORIES: readonly ShapeCategory[] = [
  section('bust', 'Bust or chest'),
  section('waist', 'Waist'),
  section('highHip', 'High hip'),
  section('hip', 'Hip'),
  {
    id: 'upperBack',
    name: plain('Upper back'),
    why: plain('How far the back between the shoulder blades curves out, seen from the side.'),
    unit: 'mm',
    range: [-10, 40],
    choices: [
      { id: 'straight', name: plain('Straight'), value: -7 },
      { id: 'gentle', name: plain('Gently curved'), value: 0 },
      { id: 'rounded', name: plain('Rounded'), value: 12 },
      { id: 'strong', name: plain('Strongly rounded'), value: 24 },
    ],
    usual: 'gentle',
  },
  {
    id: 'belly',
    name: plain('Belly'),
    why: plain('How far the belly stands in front of the hip bones, seen from the side.'),
    unit: 'mm',
    range: [-15, 45],
    choices: [
      { id: 'flat', name: plain('Flat'), value: -6 },
      { id: 'soft', name: plain('Soft'), value: 0 },
      { id: 'rounded', name: plain('Rounded'), value: 12 },
      { id: 'full', name: plain('Full'), value: 25 },
    ],
    usual: 'soft',
  },
  {
    id: 'lean',
    name: plain('Lean'),
    why: plain(
      'How far the neck stands in front of or behind the waist, beyond the usual, seen from the side.',
    ),
    unit: 'mm',
    range: [-60, 60],
    choices: [
      { id: 'back', name: plain('Leans back'), value: -18 },
      { id: 'upright', name: plain('Upright'), value: 0 },
      { id: 'forward', name: plain('Leans forward'), value: 18 },
    ],
    usual: 'upright',
  },
  {
    id: 'sway',
    name: plain('Small of the back'),
    why: plain('How hollow the back is at the waist, seen from the side.'),
    unit: 'mm',
    range: [-15, 35],
    choices: [
      { id: 'flat', name: plain('Flat'), value: -7 },
      { id: 'soft', name: plain('Soft'), value: 0 },
      { id: 'hollow', name: plain('Hollow'), value: 12 },
    ],
    usual: 'soft',
  },
  {
    id: 'shoulderForm',
    name: plain('Shoulder form'),
    why: plain('Whether the line from neck to shoulder point sags, runs straight or arches.'),
    unit: 'mm',
    range: [-12, 15],
    choices: [
      { id: 'hollow', name: plain('Hollow'), value: -6 },
      { id: 'straight', name: plain('Straight'), value: 0 },
      { id: 'muscular', name: plain('Muscular'), value: 7 },
    ],
    usual: 'straight',
  },
  {
    id: 'bustFullness',
    name: plain('Bust fullness'),
    why: plain('Whether the breasts are fuller above the bust level or below it.'),
    unit: 'mm',
    range: [-45, 60],
    choices: [
      { id: 'low', name: plain('Fuller below'), value: -25 },
      { id: 'even', name: plain('Even'), value: 0 },
      { id: 'high', name: plain('Fuller above'), value: 28 },
    ],
    usual: 'even',
    onlyFigure: 'bust',
  },
  {
    id: 'bustSpread',
    name: plain('Bust direction'),
    why: plain('Whether the breasts point straight forward or apart.'),
    unit: 'degrees',
    range: [-10, 20],
    choices: [
      { id: 'forward', name: plain('Forward'), value: -5 },
      { id: 'usual', name: plain('Usual'), value: 0 },
      { id: 'apart', name: plain('Apart'), value: 8 },
    ],
    usual: 'usual',
    onlyFigure: 'bust',
  },
  {
    id: 'collarBone',
    name: plain('Collar bones'),
    why: plain('How far the collar bones stand out below the neck.'),
    unit: 'mm',
    range: [0, 10],
    choices: [
      { id: 'soft', name: plain('Covered'), value: 1 },
      { id: 'plain', name: plain('Slight'), value: 2.5 },
      { id: 'clear', name: plain('Prominent'), value: 6 },
    ],
    usual: 'plain',
  },
  {
    id: 'seat',
    name: plain('Seat'),
    why: plain('How far the buttocks stand out behind, seen from the side.'),
    unit: 'mm',
    range: [0, 40],
    choices: [
      { id: 'flat', name: plain('Flat'), value: 7 },
      { id: 'soft', name: plain('Soft'), value: 15 },
      { id: 'full', name: plain('Full'), value: 24 },
    ],
    usual: 'soft',
  },
  {
    id: 'blade',
    name: plain('Shoulder blades'),
    why: plain('How far the shoulder blades stand out.'),
    unit: 'mm',
    range: [0, 25],
    choices: [
      { id: 'flat', name: plain('Flat'), value: 4 },
      { id: 'soft', name: plain('Soft'), value: 8 },
      { id: 'sharp', name: plain('Prominent'), value: 14 },
    ],
    usual: 'soft',
  },
];

/** The questions that change a body of this figure. */
export function shapeCategoriesOf(figure: Figure): readonly ShapeCategory[] {
  return SHAPE_CATEGORIES.filter(({ onlyFigure }) => onlyFigure === undefined || onlyFigure === figure);
}

/** The numbers behind the choices; unknown categories and choices are told, never guessed. */
export function readShapeChoices(shape: Readonly<Record<string, string | number>>): {
  readonly numbers: Readonly<Record<string, number>>;
  readonly issues: readonly Issue[];
} {
  const issues: Issue[] = [];
  const numbers: Record<string, number> = {};
  for (const category of SHAPE_CATEGORIES) {
    numbers[category.id] = category.choices.find((c) => c.id === category.usual)?.value ?? 0;
  }
  for (const [id, value] of Object.entries(shape)) {
    const category = SHAPE_CATEGORIES.find((c) => c.id === id);
    const path = `shape.${id}`;
    if (!category) {
      const known = SHAPE_CATEGORIES.map((c) => c.id).join(', ');
      issues.push({
        code: 'unknown-shape',
        path,
        severity: 'error',
        message: plain(`There is no shape called “${id}”. Known: ${known}.`),
      });
      continue;
    }
    const number = typeof value === 'number' ? value : category.choices.find((c) => c.id === value)?.value;
    if (number === undefined) {
      const known = category.choices.map((c) => c.id).join(', ');
      issues.push({
        code: 'unknown-choice',
        path,
        severity: 'error',
        message: plain(`${wordsOf(category.name)} can be ${known}, or a number; not “${value}”.`),
      });
    } else if (!(number >= category.range[0] && number <= category.range[1])) {
      const limit = number < category.range[0] ? category.range[0] : category.range[1];
      issues.push({
        code: 'shape-out-of-range',
        path,
        severity: 'error',
        measured: number,
        limit,
        message: plain(
          `${wordsOf(category.name)} is ${number}; it must lie between ${category.range[0]} and ${category.range[1]}.`,
        ),
      });
    } else numbers[id] = number;
  }
  return { numbers, issues };
}
