import type { Issue, Phrase } from '../base/index.ts';
import { phrase } from './phrases.ts';
import type { Figure } from './types.ts';

/** A question the tape cannot answer. Every choice is a number underneath; a typed number is used as it is. */
export interface ShapeCategory {
  readonly id: ShapeCategoryId;
  readonly name: Phrase;
  readonly why: Phrase;
  /** What the number means. */
  readonly unit: 'ratio' | 'mm' | 'degrees';
  readonly range: readonly [number, number];
  readonly choices: readonly { readonly id: ShapeChoiceId; readonly name: Phrase; readonly value: number }[];
  readonly usual: ShapeChoiceId;
  /** Asked of this figure only: the other has nothing it could change. */
  readonly onlyFigure?: Figure;
}

/** Levels whose section is asked for. */
const SECTION_LEVELS = ['bust', 'waist', 'highHip', 'hip'] as const;
type SectionLevel = (typeof SECTION_LEVELS)[number];

/** Offsets on depth / breadth for five classes of people, from the public surveys' residuals (shared/survey/SOURCE.md). */
const SECTION_CHOICES = [
  { id: 'shallow', value: -0.065 },
  { id: 'fairlyShallow', value: -0.028 },
  { id: 'middling', value: 0.005 },
  { id: 'fairlyDeep', value: 0.04 },
  { id: 'deep', value: 0.09 },
] as const;

const QUESTIONS = [
  {
    id: 'upperBack',
    unit: 'mm',
    range: [-10, 40],
    choices: [
      { id: 'straight', value: -7 },
      { id: 'gentle', value: 0 },
      { id: 'rounded', value: 12 },
      { id: 'strong', value: 24 },
    ],
    usual: 'gentle',
  },
  {
    id: 'belly',
    unit: 'mm',
    range: [-15, 45],
    choices: [
      { id: 'flat', value: -6 },
      { id: 'soft', value: 0 },
      { id: 'rounded', value: 12 },
      { id: 'full', value: 25 },
    ],
    usual: 'soft',
  },
  {
    id: 'lean',
    unit: 'mm',
    range: [-60, 60],
    choices: [
      { id: 'back', value: -18 },
      { id: 'upright', value: 0 },
      { id: 'forward', value: 18 },
    ],
    usual: 'upright',
  },
  {
    id: 'sway',
    unit: 'mm',
    range: [-15, 35],
    choices: [
      { id: 'flat', value: -7 },
      { id: 'soft', value: 0 },
      { id: 'hollow', value: 12 },
    ],
    usual: 'soft',
  },
  {
    id: 'shoulderForm',
    unit: 'mm',
    range: [-12, 15],
    choices: [
      { id: 'hollow', value: -6 },
      { id: 'straight', value: 0 },
      { id: 'muscular', value: 7 },
    ],
    usual: 'straight',
  },
  {
    id: 'bustFullness',
    unit: 'mm',
    range: [-45, 60],
    choices: [
      { id: 'low', value: -25 },
      { id: 'even', value: 0 },
      { id: 'high', value: 28 },
    ],
    usual: 'even',
    onlyFigure: 'bust',
  },
  {
    id: 'bustSpread',
    unit: 'degrees',
    range: [-10, 20],
    choices: [
      { id: 'forward', value: -5 },
      { id: 'usual', value: 0 },
      { id: 'apart', value: 8 },
    ],
    usual: 'usual',
    onlyFigure: 'bust',
  },
  {
    id: 'collarBone',
    unit: 'mm',
    range: [0, 10],
    choices: [
      { id: 'soft', value: 1 },
      { id: 'plain', value: 2.5 },
      { id: 'clear', value: 6 },
    ],
    usual: 'plain',
  },
  {
    id: 'seat',
    unit: 'mm',
    range: [0, 40],
    choices: [
      { id: 'flat', value: 7 },
      { id: 'soft', value: 15 },
      { id: 'full', value: 24 },
    ],
    usual: 'soft',
  },
  {
    id: 'blade',
    unit: 'mm',
    range: [0, 25],
    choices: [
      { id: 'flat', value: 4 },
      { id: 'soft', value: 8 },
      { id: 'sharp', value: 14 },
    ],
    usual: 'soft',
  },
] as const;
type Question = (typeof QUESTIONS)[number];

/** What a question of shape is called in the file. */
export type ShapeCategoryId = `${SectionLevel}Section` | Question['id'];
/** What an answer is called in the file, whatever the question. */
export type ShapeChoiceId = SectionChoiceId | Question['choices'][number]['id'];

type SectionChoiceId = (typeof SECTION_CHOICES)[number]['id'];
type AnswerTo<One> = One extends Question ? `shape.${One['id']}.${One['choices'][number]['id']}` : never;
/** Ids of the phrases of all answers; the four sections share theirs. */
export type ShapeChoicePhraseId = `shape.section.${SectionChoiceId}` | AnswerTo<Question>;

export const SHAPE_CATEGORIES: readonly ShapeCategory[] = [
  ...SECTION_LEVELS.map(askSection),
  ...QUESTIONS.map(askQuestion),
];

function askSection(level: SectionLevel): ShapeCategory {
  return {
    id: `${level}Section`,
    name: phrase(`shape.${level}Section.name`),
    why: phrase(`shape.${level}Section.why`),
    unit: 'ratio',
    range: [-0.2, 0.25],
    choices: SECTION_CHOICES.map((choice) => ({ ...choice, name: phrase(`shape.section.${choice.id}`) })),
    usual: 'middling',
  };
}

function askQuestion(question: Question): ShapeCategory {
  return {
    ...question,
    name: phrase(`shape.${question.id}.name`),
    why: phrase(`shape.${question.id}.why`),
    choices: question.choices.map((choice) => ({
      ...choice,
      // The type of both ids together forgets which choice belongs to which question.
      name: phrase(`shape.${question.id}.${choice.id}` as AnswerTo<Question>),
    })),
  };
}

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
      const known = SHAPE_CATEGORIES.map((c) => c.id);
      issues.push({
        code: 'unknown-shape',
        path,
        severity: 'error',
        message: phrase('body.shape-unknown', { id, known }),
      });
      continue;
    }
    const number = typeof value === 'number' ? value : category.choices.find((c) => c.id === value)?.value;
    if (number === undefined) {
      const choices = category.choices.map((c) => c.id);
      issues.push({
        code: 'unknown-choice',
        path,
        severity: 'error',
        message: phrase('body.choice-unknown', { category: category.name, choices, given: String(value) }),
      });
    } else if (!(number >= category.range[0] && number <= category.range[1])) {
      const [least, most] = category.range;
      issues.push({
        code: 'shape-out-of-range',
        path,
        severity: 'error',
        measured: number,
        limit: number < least ? least : most,
        message: phrase('body.shape-out-of-range', { category: category.name, value: number, least, most }),
      });
    } else numbers[id] = number;
  }
  return { numbers, issues };
}
